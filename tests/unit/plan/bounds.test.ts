/** Bounds of what is only known between limits, by hand arithmetic. */
import { describe, expect, test } from 'vitest';
import { operatingPoint } from '../../../src/circuit/index.ts';
import { conductorFromResistance } from '../../../src/conductor/index.ts';
import { type Bounds, bounds, checkTwoWireRun } from '../../../src/plan/index.ts';
import { expectInputError } from '../../helpers/expectations.ts';

/** Least and most of one figure. */
function between(found: Bounds<unknown>, path: string): [number, number] {
  const { low, high } = found.fields[path] ?? expect.fail(`${path} is not bounded`);
  return [low, high];
}
const range = (low: number, high: number) => ({ low, high });

describe('1 to 2 A over 1 to 2 Ω from 20 to 24 V', () => {
  const found = bounds(operatingPoint, { supplyVoltage: range(20, 24), resistance: range(1, 2), load: { current: range(1, 2) } });

  test('each figure has its own corners', () => {
    expect(between(found, 'voltageDrop')).toEqual([1, 4]);
    expect(between(found, 'loadVoltage')).toEqual([16, 23]);
    expect(between(found, 'lineLoss')).toEqual([1, 8]);
    expect(between(found, 'supplyPower')).toEqual([20, 48]);
  });

  test('and says which they are', () => {
    expect(found.fields['loadVoltage']?.lowAt).toEqual({ supplyVoltage: 20, resistance: 2, 'load.current': 2 });
    expect(found.fields['loadVoltage']?.highAt).toEqual({ supplyVoltage: 24, resistance: 1, 'load.current': 1 });
  });

  test('the middle is the nominal', () => {
    expect(found.corners.nominal).toEqual({ supplyVoltage: 22, resistance: 1.5, 'load.current': 1.5 });
    expect(found.nominal).toMatchObject({ feasible: true, loadVoltage: 22 - 2.25 });
  });
});

describe('what peaks between the corners', () => {
  test('the loss in a line to a resistance, where both are alike', () => {
    // 24² · R/(R + 8)²: 11.52 W at 2 Ω, 18 W at 8 Ω, 14.69 W at 20 Ω.
    const found = bounds(operatingPoint, { supplyVoltage: 24, resistance: range(2, 20), load: { resistance: 8 } });
    const [least, most] = between(found, 'lineLoss');
    expect(least).toBeCloseTo(11.52, 12);
    expect(most).toBeCloseTo(18, 12);
    expect(found.fields['lineLoss']).not.toHaveProperty('highAt');
  });

  test('the power of a current, where half the voltage is dropped', () => {
    // (24 - 8·I) · I: 16 W at 1 A, 18 W at 1.5 A, 10 W at 2.5 A.
    const found = bounds(operatingPoint, { supplyVoltage: 24, resistance: 8, load: { current: range(1, 2.5) } });
    expect(between(found, 'loadPower')[0]).toBeCloseTo(10, 12);
    expect(between(found, 'loadPower')[1]).toBeCloseTo(18, 12);
  });

  test('not where the peak lies outside the range', () => {
    const found = bounds(operatingPoint, { supplyVoltage: 24, resistance: range(9, 20), load: { resistance: 8 } });
    expect(between(found, 'lineLoss')[1]).toBeCloseTo((576 * 9) / 17 ** 2, 12);
  });
});

describe('a verdict over a range of lengths', () => {
  // 0.02 Ω/m and 2 A: 0.04 V for each metre, 5 V of 24 V at 125 m.
  const judged = (low: number, high: number) =>
    bounds(checkTwoWireRun, {
      supplyVoltage: range(24, 24),
      conductor: conductorFromResistance({ ohmsPerKilometre: 10 }),
      length: range(low, high),
      load: { current: 2 },
      minimumVoltage: 19,
    });

  test('passes, fails or is open, and says what would settle it', () => {
    // A margin under 5 % of 19 V is marginal: over 101.25 m.
    expect(judged(50, 101).verdict).toBe('pass');
    expect(judged(50, 102).verdict).toBe('marginal');
    expect(judged(126, 130).verdict).toBe('fail');
    expect(judged(120, 130)).toMatchObject({ verdict: 'uncertain', deciding: [{ parameter: 'length' }] });
  });

  test('each check has its own best and worst', () => {
    const check = judged(50, 100).checks.find(({ name }) => name === 'device-voltage');
    expect(check?.best.value).toBeCloseTo(22, 12);
    expect(check?.worst?.value).toBeCloseTo(20, 12);
    expect([check?.bestAt, check?.worstAt]).toEqual([{ length: 50 }, { length: 100 }]);
  });
});

describe('ranges', () => {
  const at = (resistance: unknown) => bounds(operatingPoint, { supplyVoltage: 24, resistance, load: { current: 1 } } as never);

  test('may be given as a middle and what it may be off', () => {
    expect(between(at({ nominal: 4, plusMinus: 1 }), 'voltageDrop')).toEqual([3, 5]);
  });

  test('upside down, not of numbers, or too many are refused', () => {
    expectInputError(() => at(range(2, 1)), 'resistance.high');
    expectInputError(() => at({ low: 'a', high: 1 }), 'resistance.low');
    expectInputError(() => at({ nominal: 1, plusMinus: -1 }), 'resistance.plusMinus');
    expectInputError(() => bounds(undefined as never, {}), 'fn', 'type');
  });
});
