import { describe, expect, test } from 'vitest';
import { type FeasiblePoint, type Load, type OperatingPointInput, operatingPoint } from '../../../src/circuit/operating-point.ts';
import { as, expectInputError, expectPlain, expectWithin, frozen, NOT_NUMBERS } from '../../helpers/expectations.ts';

function feasible(input: OperatingPointInput): FeasiblePoint {
  const point = operatingPoint(input);
  if (!point.feasible) expect.fail(`not feasible: ${JSON.stringify(input)}`);
  expectPlain(point);
  return point;
}

describe('constant power', () => {
  test('30 W from 50 V over 12.5 Ω is 25.5 W at 42.5 V and 0.6 A (TI SLVS885G Table 2)', () => {
    expect(feasible({ supplyVoltage: 50, resistance: 12.5, load: { power: 25.5 } })).toStrictEqual({
      feasible: true,
      current: 0.6,
      loadVoltage: 42.5,
      loadPower: 25.5,
      voltageDrop: 7.5,
      dropFraction: 0.15,
      lineLoss: 4.5,
      supplyPower: 30,
      efficiency: 0.85,
    });
  });

  test('no load: the full voltage, no current, nothing lost, efficiency 1', () => {
    expect(feasible({ supplyVoltage: 50, resistance: 12.5, load: { power: 0 } })).toStrictEqual({
      feasible: true,
      current: 0,
      loadVoltage: 50,
      loadPower: 0,
      voltageDrop: 0,
      dropFraction: 0,
      lineLoss: 0,
      supplyPower: 0,
      efficiency: 1,
    });
  });

  test('no line: everything arrives, whatever is asked', () => {
    for (const power of [0, 1e-12, 25.5, 1e12]) {
      const point = feasible({ supplyVoltage: 50, resistance: 0, load: { power } });
      expect(point).toMatchObject({ loadVoltage: 50, voltageDrop: 0, dropFraction: 0, lineLoss: 0, efficiency: 1 });
      expectWithin(point.current, power / 50, 1e-15);
    }
  });

  test('at the limit V²/4R exactly: half the voltage, half the power lost, and the next double is a no', () => {
    const line = { supplyVoltage: 50, resistance: 12.5 };
    expect(feasible({ ...line, load: { power: 50 } })).toMatchObject({
      current: 2,
      loadVoltage: 25,
      lineLoss: 50,
      supplyPower: 100,
      efficiency: 0.5,
    });
    expect(operatingPoint({ ...line, load: { power: 50.00000000000001 } })).toStrictEqual({
      feasible: false,
      maximumLoadPower: 50,
      maximumCurrent: 4,
    });
  });

  test('a no carries the figures that explain it, as plain data', () => {
    const point = operatingPoint({ supplyVoltage: 44, resistance: 20, load: { power: 30 } });
    expectPlain(point);
    expect(point.feasible).toBe(false);
    if (point.feasible) return;
    expectWithin(point.maximumLoadPower, 24.2, 1e-15);
    expectWithin(point.maximumCurrent, 2.2, 1e-15);
  });

  test('the root returned is the upper one: never less than half the supply voltage', () => {
    for (const power of [1, 10, 49, 49.999999, 50]) {
      expect(feasible({ supplyVoltage: 50, resistance: 12.5, load: { power } }).loadVoltage).toBeGreaterThanOrEqual(25);
    }
  });
});

describe('constant current', () => {
  test('0.35 A over 20 Ω from 44 V leaves 37 V and 12.95 W (IEEE 802.3af reflector, power_study msg00509)', () => {
    const point = feasible({ supplyVoltage: 44, resistance: 20, load: { current: 0.35 } });
    expectWithin(point.loadVoltage, 37, 1e-15);
    expectWithin(point.loadPower, 12.95, 1e-15);
    expectWithin(point.supplyPower, 15.4, 1e-15);
  });

  test('no load, no line, and a short at the far end', () => {
    expect(feasible({ supplyVoltage: 24, resistance: 10, load: { current: 0 } })).toMatchObject({
      loadVoltage: 24,
      loadPower: 0,
      efficiency: 1,
    });
    expect(feasible({ supplyVoltage: 24, resistance: 0, load: { current: 5 } })).toMatchObject({
      loadVoltage: 24,
      loadPower: 120,
      efficiency: 1,
    });
    expect(feasible({ supplyVoltage: 24, resistance: 12, load: { current: 2 } })).toMatchObject({
      loadVoltage: 0,
      loadPower: 0,
      efficiency: 0,
      dropFraction: 1,
    });
  });

  test('more than a short would draw is a no', () => {
    expect(operatingPoint({ supplyVoltage: 24, resistance: 12, load: { current: 2.0000000000000004 } })).toStrictEqual({
      feasible: false,
      maximumLoadPower: 12,
      maximumCurrent: 2,
    });
  });
});

describe('resistance', () => {
  test('divides the voltage', () => {
    expect(feasible({ supplyVoltage: 24, resistance: 2, load: { resistance: 10 } })).toMatchObject({
      current: 2,
      loadVoltage: 20,
      loadPower: 40,
      voltageDrop: 4,
      lineLoss: 8,
      supplyPower: 48,
    });
  });

  test('a short takes all and leaves nothing', () => {
    expect(feasible({ supplyVoltage: 24, resistance: 12, load: { resistance: 0 } })).toMatchObject({
      current: 2,
      loadVoltage: 0,
      loadPower: 0,
      dropFraction: 1,
      efficiency: 0,
    });
  });

  test('no line: the full voltage', () => {
    expect(feasible({ supplyVoltage: 24, resistance: 0, load: { resistance: 12 } })).toMatchObject({
      current: 2,
      loadVoltage: 24,
      efficiency: 1,
    });
  });

  test('a short on no line has no answer, and says so', () => {
    expectInputError(() => operatingPoint({ supplyVoltage: 24, resistance: 0, load: { resistance: 0 } }), 'load.resistance', 'range');
  });

  test('at the corners of the domain nothing overflows', () => {
    for (const supplyVoltage of [1e-12, 1, 1e12]) {
      for (const resistance of [0, 1e-12, 1, 1e12]) {
        for (const size of [0, 1e-12, 1, 1e12]) {
          for (const load of [{ power: size }, { current: size }, { resistance: size }] satisfies Load[]) {
            if (load.resistance === 0 && resistance === 0) continue;
            expectPlain(operatingPoint({ supplyVoltage, resistance, load }));
          }
        }
      }
    }
  });
});

test('undefined means absent, and a frozen input is left alone', () => {
  const load = as<Load>({ power: 25.5, current: undefined, resistance: undefined });
  expect(operatingPoint(frozen({ supplyVoltage: 50, resistance: 12.5, load }))).toStrictEqual(
    operatingPoint({ supplyVoltage: 50, resistance: 12.5, load: { power: 25.5 } }),
  );
});

describe('refuses', () => {
  test.each(NOT_NUMBERS)('%s for any number', (_label, value, code) => {
    const number = as<number>(value);
    expectInputError(() => operatingPoint({ supplyVoltage: number, resistance: 1, load: { power: 1 } }), 'supplyVoltage', code);
    expectInputError(() => operatingPoint({ supplyVoltage: 1, resistance: number, load: { power: 1 } }), 'resistance', code);
    for (const kind of ['power', 'current', 'resistance']) {
      expectInputError(() => operatingPoint({ supplyVoltage: 1, resistance: 1, load: as<Load>({ [kind]: number }) }), `load.${kind}`, code);
    }
  });

  test('what lies outside the domain', () => {
    for (const supplyVoltage of [0, -48, 1e13]) {
      expectInputError(() => operatingPoint({ supplyVoltage, resistance: 1, load: { power: 1 } }), 'supplyVoltage', 'range');
    }
    for (const wrong of [-1, 1e-13, 1e13]) {
      expectInputError(() => operatingPoint({ supplyVoltage: 1, resistance: wrong, load: { power: 1 } }), 'resistance', 'range');
      for (const kind of ['power', 'current', 'resistance']) {
        expectInputError(
          () => operatingPoint({ supplyVoltage: 1, resistance: 1, load: as<Load>({ [kind]: wrong }) }),
          `load.${kind}`,
          'range',
        );
      }
    }
  });

  test('two loads, no load, and what is no load', () => {
    const asked =
      (load: unknown): (() => unknown) =>
      () =>
        operatingPoint({ supplyVoltage: 1, resistance: 1, load: as<Load>(load) });
    for (const load of [
      {},
      { power: 1, current: 1 },
      { power: 1, resistance: 1 },
      { current: 1, resistance: 1 },
      { watts: 1 },
      Object.create(null),
    ]) {
      expectInputError(asked(load), 'load', 'conflict');
    }
    for (const load of [null, 7, '25 W', [25]]) expectInputError(asked(load), 'load', 'type');
    expectInputError(asked(undefined), 'load', 'missing');
  });

  test('absent numbers and an input that is no object', () => {
    expectInputError(() => operatingPoint(as<OperatingPointInput>({ resistance: 1, load: { power: 1 } })), 'supplyVoltage', 'missing');
    expectInputError(() => operatingPoint(as<OperatingPointInput>({ supplyVoltage: 1, load: { power: 1 } })), 'resistance', 'missing');
    for (const input of [null, 7, 'x', []]) expectInputError(() => operatingPoint(as<OperatingPointInput>(input)), 'input', 'type');
    expectInputError(() => operatingPoint(as<OperatingPointInput>(undefined)), 'input', 'missing');
  });
});
