import { describe, expect, test } from 'vitest';
import { operatingPoint } from '../../../src/circuit/operating-point.ts';
import { type VoltageDropInput, voltageDrop } from '../../../src/circuit/voltage-drop.ts';
import { awg } from '../../../src/conductor/awg.ts';
import { conductorFromResistance } from '../../../src/conductor/conductor-from-resistance.ts';
import { loopResistance } from '../../../src/conductor/loop-resistance.ts';
import { as, expectInputError, expectPlain, expectWithin, frozen, NOT_NUMBERS } from '../../helpers/expectations.ts';

const conductor = frozen(awg(18));
const base = frozen({ supplyVoltage: 24, conductor, length: 100, load: { power: 6 } });

test('is the operating point behind the loop of two conductors', () => {
  const point = voltageDrop(base);
  expectPlain(point);
  expect(point).toStrictEqual(
    operatingPoint({ supplyVoltage: 24, resistance: loopResistance({ conductor, length: 100 }), load: { power: 6 } }),
  );
});

test('a hot run drops more, by the temperature of the copper', () => {
  const hot = voltageDrop({ ...base, temperature: 60 });
  expect(hot).toStrictEqual(
    operatingPoint({ supplyVoltage: 24, resistance: loopResistance({ conductor, length: 100, temperature: 60 }), load: { power: 6 } }),
  );
});

test('out and back may differ: a thin core and a paralleled return', () => {
  const out = conductorFromResistance({ ohmsPerKilometre: 96 });
  const back = conductorFromResistance({ ohmsPerKilometre: 20 });
  const point = voltageDrop({ supplyVoltage: 24, out, back, length: 50, load: { current: 0.5 } });
  expect(point.feasible).toBe(true);
  if (point.feasible) expectWithin(point.voltageDrop, 0.116 * 50 * 0.5, 1e-15);
});

test('equal out and back are the same as one conductor', () => {
  const { conductor: _, ...rest } = base;
  expect(voltageDrop({ ...rest, out: conductor, back: conductor })).toStrictEqual(voltageDrop(base));
});

test('no length: no drop', () => {
  expect(voltageDrop({ ...base, length: 0 })).toMatchObject({ feasible: true, voltageDrop: 0, loadVoltage: 24 });
});

test('a run that cannot carry the load says what it could carry', () => {
  const point = voltageDrop({ ...base, length: 5000 });
  expect(point.feasible).toBe(false);
  if (!point.feasible) expectWithin(point.maximumLoadPower, 24 ** 2 / (4 * loopResistance({ conductor, length: 5000 })), 1e-15);
});

test('undefined means absent, and a frozen input is left alone', () => {
  expect(voltageDrop(frozen({ ...base, temperature: undefined, out: undefined, back: undefined }))).toStrictEqual(voltageDrop(base));
});

describe('refuses', () => {
  test.each(NOT_NUMBERS)('%s for any number', (_label, value, code) => {
    const number = as<number>(value);
    expectInputError(() => voltageDrop({ ...base, supplyVoltage: number }), 'supplyVoltage', code);
    expectInputError(() => voltageDrop({ ...base, length: number }), 'length', code);
    expectInputError(() => voltageDrop({ ...base, temperature: number }), 'temperature', code);
    expectInputError(() => voltageDrop({ ...base, load: { power: number } }), 'load.power', code);
  });

  test('both forms, neither form, and half of one', () => {
    const { conductor: _, ...rest } = base;
    expectInputError(() => voltageDrop(as<VoltageDropInput>({ ...base, out: conductor })), 'conductor', 'conflict');
    expectInputError(() => voltageDrop(as<VoltageDropInput>({ ...base, out: conductor, back: conductor })), 'conductor', 'conflict');
    expectInputError(() => voltageDrop(as<VoltageDropInput>(rest)), 'conductor', 'missing');
    expectInputError(() => voltageDrop(as<VoltageDropInput>({ ...rest, out: conductor })), 'back', 'missing');
    expectInputError(() => voltageDrop(as<VoltageDropInput>({ ...rest, back: conductor })), 'out', 'missing');
  });

  test('what is no conductor', () => {
    expectInputError(() => voltageDrop(as<VoltageDropInput>({ ...base, conductor: 18 })), 'conductor', 'type');
    expectInputError(() => voltageDrop(as<VoltageDropInput>({ ...base, conductor: {} })), 'conductor.resistancePerMetre', 'missing');
  });

  test('an input that is no object', () => {
    for (const input of [7, 'x']) expectInputError(() => voltageDrop(as<VoltageDropInput>(input)), 'input', 'type');
  });
});
