/** How unlike conductors and pairs are, and a run made so on purpose: by hand arithmetic. */
import { describe, expect, test } from 'vitest';
import { type RunUnbalance, type UnbalanceInput, unbalance, unbalancedPairs } from '../../../src/cable/index.ts';
import { expectInputError, expectPlain, frozen } from '../../helpers/expectations.ts';

const of = (pairs: UnbalanceInput['pairs'], limits?: UnbalanceInput['limits']): RunUnbalance => unbalance(frozen({ pairs, limits }));

describe('a run made unequal', () => {
  test('keeps the mean of each pair, and the mean of all', () => {
    // 10 Ω less 5 % is 9.5 Ω, and 3 % to either side of it; 10 Ω and 5 % more is 10.5 Ω.
    const pairs = unbalancedPairs({ conductorResistance: 10, within: 0.03, between: 0.05 });
    const expected = { '1,2': [9.215, 9.785], '3,6': [9.215, 9.785], '4,5': [10.185, 10.815], '7,8': [10.185, 10.815] };
    expect(Object.keys(pairs)).toEqual(Object.keys(expected));
    for (const [pair, ohms] of Object.entries(expected)) {
      const [first, second] = pairs[pair as '1,2'];
      expect([first, second].map((one) => Math.round(one * 1e9) / 1e9)).toEqual(ohms);
    }
  });

  test('is equal where no unbalance is stated', () => {
    const pairs = unbalancedPairs({ conductorResistance: 10 });
    for (const [first, second] of Object.values(pairs)) expect([first, second]).toEqual([10, 10]);
  });

  test('shows the unbalance that went in', () => {
    const { pairs, pairToPair } = of(unbalancedPairs({ conductorResistance: 7, within: 0.04, between: 0.06 }));
    for (const { fraction } of pairs) expect(fraction).toBeCloseTo(0.04, 12);
    expect(pairToPair.map(({ pairs: two, fraction }) => [two.join(' '), Math.round(fraction * 1e9) / 1e9])).toEqual([
      ['1,2 3,6', 0],
      ['1,2 4,5', 0.06],
      ['1,2 7,8', 0.06],
      ['3,6 4,5', 0.06],
      ['3,6 7,8', 0.06],
      ['4,5 7,8', 0],
    ]);
  });

  test('nonsense is named', () => {
    expectInputError(() => unbalancedPairs({ conductorResistance: 0 }), 'conductorResistance', 'range');
    expectInputError(() => unbalancedPairs({ conductorResistance: 1, within: 1 }), 'within', 'range');
    expectInputError(() => unbalancedPairs({ conductorResistance: 1, between: -0.01 }), 'between', 'range');
  });
});

describe('within a pair', () => {
  test('3 % of the sum: 9.0 and 9.3 Ω may differ by 0.549 Ω', () => {
    const [pair] = of({ '1,2': [9, 9.3] }).pairs;
    expect(pair?.difference).toBeCloseTo(0.3, 12);
    expect(pair?.limit).toBeCloseTo(0.549, 12);
    expect(pair?.margin).toBeCloseTo(0.249, 12);
    expect(pair?.fraction).toBeCloseTo(0.3 / 18.3, 12);
    expect(pair?.parallel).toBeCloseTo((9 * 9.3) / 18.3, 12);
    expect(pair?.withinLimit).toBe(true);
  });

  test('or 0.2 Ω, where that is more: up to 6.67 Ω of both', () => {
    expect(of({ '1,2': [3.2, 3.4] }).pairs[0]?.limit).toBe(0.2);
    expect(of({ '1,2': [3.3, 3.4] }).pairs[0]?.limit).toBeCloseTo(0.201, 12);
    expect(of({ '1,2': [1, 1.25] })).toMatchObject({ withinLimits: false, pairs: [{ withinLimit: false }] });
  });

  test('at the limit it is within', () => {
    // 0.25 Ω and 1 Ω are exact in binary.
    expect(of({ '1,2': [1, 1.25] }, { pairFloor: 0.25 }).withinLimits).toBe(true);
  });
});

describe('between pairs, each with its conductors in parallel', () => {
  test('7 % of the sum: 5 and 5.5 Ω may differ by 0.735 Ω', () => {
    const [two] = of({ '1,2': [10, 10], '3,6': [11, 11] }).pairToPair;
    expect(two?.difference).toBeCloseTo(0.5, 12);
    expect(two?.limit).toBeCloseTo(0.735, 12);
    expect(two?.withinLimit).toBe(true);
  });

  test('or 0.1 Ω, where that is more', () => {
    expect(of({ '1,2': [1, 1], '3,6': [1.25, 1.25] }).pairToPair[0]).toMatchObject({ limit: 0.1, withinLimit: false });
    expect(of({ '1,2': [1, 1], '3,6': [1.25, 1.25] }, { pairToPairFloor: 0.125 }).withinLimits).toBe(true);
  });

  test('every two of them, in the order of the pins', () => {
    const { pairToPair, withinLimits } = of({ '7,8': [20, 20], '4,5': [10, 10], '1,2': [10, 10] });
    expect(pairToPair.map(({ pairs, withinLimit }) => [...pairs, withinLimit])).toEqual([
      ['1,2', '4,5', true],
      ['1,2', '7,8', false],
      ['4,5', '7,8', false],
    ]);
    expect(withinLimits).toBe(false);
  });

  test('none of one pair alone', () => {
    expect(of({ '4,5': [3, 3] }).pairToPair).toEqual([]);
    expectPlain(of({ '4,5': [3, 3] }));
  });
});

test('limits may be stated', () => {
  expect(of({ '1,2': [9, 9.3] }, { pairFraction: 0.01, pairFloor: 0 }).pairs[0]).toMatchObject({ withinLimit: false });
  expect(of({ '1,2': [10, 10], '3,6': [11, 11] }, { pairToPairFraction: 0.04 }).withinLimits).toBe(false);
});

test('nonsense is named', () => {
  expectInputError(() => unbalance({ pairs: {} }), 'pairs', 'missing');
  expectInputError(() => unbalance({ pairs: { '1,2': [0, 1] } }), "pairs['1,2'][0]");
});
