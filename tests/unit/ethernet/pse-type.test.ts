import { describe, expect, test } from 'vitest';
import { type PortVoltage, pseType, pseVoltageCheck } from '../../../src/ethernet/index.ts';
import { type PseType, poeClass, powerAtPd } from '../../../src/index.ts';
import { source } from '../../../src/sources/index.ts';
import { as, expectInputError, expectPlain, NOT_NUMBERS } from '../../helpers/expectations.ts';

const TYPES: readonly PseType[] = [1, 2, 3, 4];

describe('pseType', () => {
  test.each(TYPES)('type %d is plain data, every group of figures with a source, and agrees with the classes it serves', (type) => {
    const facts = pseType(type);
    expectPlain(facts);
    for (const key of Object.values(facts.sources)) expect(source(key).title).not.toBe('');
    const strongest = ([3, 4, 6, 8] as const)[type - 1] as 3 | 4 | 6 | 8;
    const limits = poeClass(strongest, { pseType: type });
    expect(facts.pseVoltageMin).toBe(limits.pseVoltageMin);
    expect(facts.channelResistance).toBe(limits.channelResistance);
    expect(facts.psePowerFourPair ?? facts.psePowerTwoPair).toBe(limits.psePower);
    // The class power at the lowest voltage is what the type's pairset current allows, within the digits printed.
    expect(limits.psePower / limits.pseVoltageMin).toBeLessThanOrEqual(facts.totalCurrent * (1 + 1e-12));
  });

  test('three currents: all pairsets, one pairset, one wire of a pair', () => {
    expect(
      TYPES.map((type) => pseType(type)).map(({ totalCurrent, pairsetCurrent, conductorCurrent }) => [
        totalCurrent,
        pairsetCurrent,
        conductorCurrent,
      ]),
    ).toEqual([
      [0.35, 0.35, 0.175],
      [0.6, 0.6, 0.3],
      [1.2, 0.6, 0.3],
      [1.92, 0.96, 0.48],
    ]);
  });

  test('types 1 and 2 power two pairs, types 3 and 4 two or four', () => {
    expect(TYPES.map((type) => pseType(type).pairs)).toEqual([[2], [2], [2, 4], [2, 4]]);
    expect(TYPES.map((type) => Object.hasOwn(pseType(type), 'psePowerFourPair'))).toEqual([false, false, true, true]);
  });

  test('refuses types that do not exist', () => {
    for (const type of [0, 5, 1.5, '1', null, Number.NaN, [1]]) expectInputError(() => pseType(as<PseType>(type)), 'type', 'unknown');
    expectInputError(() => pseType(as<PseType>(undefined)), 'type', 'missing');
  });
});

describe('pseVoltageCheck', () => {
  const of = (pseVoltage: PortVoltage, type: PseType) => pseVoltageCheck({ pseVoltage, pseType: type });

  test.each([
    [1, 44],
    [2, 50],
    [3, 50],
    [4, 52],
  ] as const)('type %d: from %d V to 57 V passes, ends included, and nothing outside', (type, lowest) => {
    expect(of(lowest, type)).toMatchObject({ name: 'pse-voltage', verdict: 'pass', limit: lowest, margin: 0, unit: 'V' });
    expect(of(57, type)).toMatchObject({ verdict: 'pass', limit: 57, margin: 0 });
    expect(of(lowest - 0.1, type)).toMatchObject({ verdict: 'fail', value: lowest - 0.1, limit: lowest });
    expect(of(57.1, type)).toMatchObject({ verdict: 'fail', value: 57.1, limit: 57 });
    expectPlain(of(54, type));
  });

  test('a range inside passes, one outside fails, one across an end is uncertain and says what would settle it', () => {
    expect(of({ low: 51, high: 56 }, 3).verdict).toBe('pass');
    expect(of({ low: 42, high: 48 }, 3).verdict).toBe('fail');
    expect(of({ low: 58, high: 60 }, 3).verdict).toBe('fail');
    expect(of({ low: 48, high: 54 }, 3)).toMatchObject({
      verdict: 'uncertain',
      value: 48,
      limit: 50,
      deciding: [{ parameter: 'pseVoltage' }],
    });
    expect(of({ low: 53, high: 60 }, 4)).toMatchObject({
      verdict: 'uncertain',
      value: 60,
      limit: 57,
      deciding: [{ parameter: 'pseVoltage' }],
    });
    expect(of({ low: 48, high: 48 }, 3).verdict).toBe('fail');
  });

  test('powerAtPd tells it beside the verdict of the run, and only where a voltage is stated', () => {
    expect(powerAtPd({ poeClass: 4, resistance: 5, pseVoltage: 48 }).portVoltage).toMatchObject({ verdict: 'fail', limit: 50, margin: -2 });
    expect(powerAtPd({ poeClass: 4, resistance: 5, pseVoltage: 54 }).portVoltage).toStrictEqual(
      pseVoltageCheck({ pseVoltage: 54, pseType: 2 }),
    );
    expect(Object.hasOwn(powerAtPd({ poeClass: 4, resistance: 5 }), 'portVoltage')).toBe(false);
    expect(powerAtPd({ poeClass: 4, resistance: 5, pseVoltage: 48 }).checks.map(({ name }) => name)).not.toContain('pse-voltage');
  });

  test('refuses what is no voltage, no range and no type', () => {
    for (const [, value] of NOT_NUMBERS) {
      expect(() => of(as<PortVoltage>(value), 1)).toThrow(RangeError);
      if (typeof value !== 'object') expectInputError(() => of(as<PortVoltage>(value), 1), 'pseVoltage');
    }
    expectInputError(() => of({ low: 50, high: 49 }, 2), 'pseVoltage.high', 'conflict');
    expectInputError(() => of({ low: 0, high: 49 }, 2), 'pseVoltage.low', 'range');
    expectInputError(() => of(as<PortVoltage>([50, 57]), 2), 'pseVoltage', 'type');
    expectInputError(() => of(50, as<PseType>(9)), 'pseType', 'unknown');
  });
});
