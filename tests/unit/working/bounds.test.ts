/** Bounds as a worked example: three ends side by side, and a no at the worst of them. */
import { describe, expect, test } from 'vitest';
import { operatingPoint } from '../../../src/circuit/operating-point.ts';
import { awg } from '../../../src/conductor/awg.ts';
import { bounds } from '../../../src/plan/bounds/bounds.ts';
import { reviewAnswer, showWorking, workingText } from '../../../src/working/index.ts';
import { as, expectInputError } from '../../helpers/expectations.ts';

const input = { supplyVoltage: { low: 21, high: 27.6 }, resistance: { nominal: 4, plusMinus: 0.5 }, load: { power: 6 } };

describe('a line known between limits', () => {
  test('its least is the core at the worst corner, its most at the best', () => {
    const working = showWorking('bounds', { fn: 'operatingPoint', input });
    const core = bounds(operatingPoint, input);
    expect(working.result.value).toBeCloseTo(core.fields['loadVoltage']?.low ?? Number.NaN, 12);
    expect(working.results.find((result) => result.core === 'fields.loadVoltage.high')?.value).toBeCloseTo(
      core.fields['loadVoltage']?.high ?? Number.NaN,
      12,
    );
  });

  test('is read as one table of three rows, with no givens beside it', () => {
    const working = showWorking('bounds', { fn: 'operatingPoint', input });
    expect(working.tables.map(({ rows }) => rows.map(({ label }) => label))).toEqual([['best', 'middle', 'worst']]);
    const text = workingText(working);
    expect(text).not.toContain('Given');
    expect(text).toMatch(/^ +worst +21 +4\.5 +6 /m);
  });

  test('the worst end may be more than the line carries, and that row ends there', () => {
    const working = showWorking('bounds', {
      fn: 'operatingPoint',
      input: { supplyVoltage: { low: 40, high: 57 }, resistance: { low: 10, high: 30 }, load: { power: 25 } },
    });
    expect(working).toMatchObject({ feasible: false, no: 'at the worst the line cannot carry the load: there is no such current' });
    // 40² / (4 · 30).
    expect(working.result).toMatchObject({ symbol: 'Pmax_3', unit: 'W' });
    expect(working.result.value).toBeCloseTo(40 / 3, 12);
    expect(working.steps.some(({ symbol }) => symbol === 'I_2')).toBe(true);
    expect(working.steps.at(-1)).not.toHaveProperty('table');
  });

  test('the middle handed in for the worst is known', () => {
    const middle = showWorking('bounds', { fn: 'operatingPoint', input }).results.find(({ core }) => core === 'nominal.loadVoltage');
    expect(reviewAnswer('bounds', { fn: 'operatingPoint', input }, middle?.value ?? 0).slips.map(({ slip }) => slip)).toContain(
      'middle-for-worst',
    );
  });

  test('what it cannot show it refuses', () => {
    expectInputError(() => showWorking('bounds', as({ fn: 'solveNetwork', input })), 'fn', 'unknown');
    for (const fn of ['operatingPoint', 'voltageDrop', 'powerAtPd']) {
      for (const none of [undefined, null, 7, 'text']) expectInputError(() => showWorking('bounds', as({ fn, input: none })), 'input');
    }
    const line = { supplyVoltage: 24, out: awg(18), back: awg(20), length: { low: 1, high: 2 }, load: { power: 1 } };
    expectInputError(() => showWorking('bounds', { fn: 'voltageDrop', input: line }), 'input.out', 'conflict');
  });
});
