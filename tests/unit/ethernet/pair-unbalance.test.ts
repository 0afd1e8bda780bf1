import { describe, expect, test } from 'vitest';
import { unbalance, unbalancedPairs } from '../../../src/cable/index.ts';
import { type PairUnbalanceInput, pairUnbalance } from '../../../src/ethernet/index.ts';
import type { ConductorsByPair, RunPair } from '../../../src/index.ts';
import { source } from '../../../src/sources/index.ts';
import { as, expectInputError, expectPlain, expectWithin, frozen, NOT_NUMBERS } from '../../helpers/expectations.ts';

const EVEN = unbalancedPairs({ conductorResistance: 12.5 });

describe('unbalance of resistance', () => {
  // S. Maniktala, Power Over Ethernet Interoperability Guide, ch. 9: a branch that is 6 % larger is 3 % of unbalance.
  test('6 % between two conductors is 3 % of unbalance', () => {
    expect(unbalance({ pairs: { '1,2': [10, 10.6] } }).pairs[0]?.fraction.toFixed(2)).toBe('0.03');
  });

  test('on a long run the percentage decides, on a short one the floor: 3 % or 0.2 ohm, 7 % or 0.1 ohm (from memory)', () => {
    const long = unbalance({ pairs: { '1,2': [9, 9.5], '4,5': [8, 8.4] } });
    expectPlain(long);
    expectWithin(long.pairs[0]?.limit as number, 0.03 * 18.5, 1e-15);
    expect(long.pairToPair).toHaveLength(1);
    const [first, second] = [(9 * 9.5) / 18.5, (8 * 8.4) / 16.4];
    expectWithin(long.pairToPair[0]?.difference as number, first - second, 1e-12);
    expectWithin(long.pairToPair[0]?.limit as number, 0.07 * (first + second), 1e-12);
    const short = unbalance({ pairs: { '1,2': [1, 1.19], '4,5': [1.1, 1.1] } });
    expect(short.pairs[0]).toMatchObject({ limit: 0.2, withinLimit: true });
    expect(short.pairToPair[0]?.limit).toBe(0.1);
    expect(source(short.source).status).toBe('memory');
  });

  test('the floors and the percentages can be set', () => {
    const limits = { pairFraction: 0, pairFloor: 0.05, pairToPairFraction: 0, pairToPairFloor: 0 };
    const result = unbalance({ pairs: { '1,2': [1, 1.1], '4,5': [1, 1.1] }, limits });
    expect(result.pairs[0]).toMatchObject({ limit: 0.05, withinLimit: false });
    expect(result.pairToPair[0]).toMatchObject({ limit: 0, difference: 0, withinLimit: true });
    expect(result.withinLimits).toBe(false);
  });

  test('every two pairs are compared, and one pair with none', () => {
    expect(unbalance({ pairs: EVEN }).pairToPair.map(({ pairs }) => pairs.join(' '))).toEqual([
      '1,2 3,6',
      '1,2 4,5',
      '1,2 7,8',
      '3,6 4,5',
      '3,6 7,8',
      '4,5 7,8',
    ]);
    expect(unbalance({ pairs: { '7,8': [1, 1] } }).pairToPair).toEqual([]);
  });

  test('refuses', () => {
    for (const [, value, code] of NOT_NUMBERS) {
      expectInputError(() => unbalance({ pairs: { '1,2': [as<number>(value), 1] } }), "pairs['1,2'][0]", code);
      expectInputError(() => unbalancedPairs({ conductorResistance: as<number>(value) }), 'conductorResistance', code);
    }
    expectInputError(() => unbalance({ pairs: {} }), 'pairs', 'missing');
    expectInputError(() => unbalance({ pairs: as<ConductorsByPair>({ '1,3': [1, 1] }) }), "pairs['1,3']", 'unknown');
    expectInputError(() => unbalance({ pairs: as<ConductorsByPair>({ '1,2': [1] }) }), "pairs['1,2']", 'range');
    expectInputError(() => unbalance({ pairs: as<ConductorsByPair>({ '1,2': 1 }) }), "pairs['1,2']", 'type');
    expectInputError(() => unbalance({ pairs: { '1,2': [0, 1] } }), "pairs['1,2'][0]", 'range');
    expectInputError(() => unbalance({ pairs: EVEN, limits: { pairFraction: 3 } }), 'limits.pairFraction', 'range');
    expectInputError(() => unbalance({ pairs: EVEN, limits: { pairToPairFloor: -1 } }), 'limits.pairToPairFloor', 'range');
    expectInputError(() => unbalancedPairs({ conductorResistance: 5, within: 1 }), 'within', 'range');
    expectInputError(() => unbalancedPairs({ conductorResistance: 5, between: -0.1 }), 'between', 'range');
  });
});

describe('division of the current', () => {
  test('7 % between pairs: the lower takes (1 + 0.07)/2 of the current', () => {
    const result = pairUnbalance(frozen({ poeClass: 8, pairs: unbalancedPairs({ conductorResistance: 12.5, between: 0.07 }) }));
    expectPlain(result);
    if (!result.feasible) expect.fail('not feasible');
    expect(result.pairs.map(({ pair, polarity, share }) => [pair, polarity, share.toFixed(3)])).toEqual([
      ['1,2', 'positive', '0.535'],
      ['3,6', 'negative', '0.535'],
      ['4,5', 'positive', '0.465'],
      ['7,8', 'negative', '0.465'],
    ]);
    expect(result.scope).toBe('channel alone');
    expect(result.assumptions).toEqual([
      { parameter: 'pdPower', value: 71.3, unit: 'W', source: 'ieee-802.3-class' },
      { parameter: 'pseVoltage', value: 52, unit: 'V', source: 'ieee-802.3-pse-voltage' },
      { parameter: 'pseType', value: 4, source: 'ieee-802.3-class' },
      { parameter: 'positive', value: '1,2 and 4,5', source: 'library-default' },
      { parameter: 'psePairResistance', value: 0, unit: 'Ω', source: 'library-default' },
      { parameter: 'pdPairResistance', value: 0, unit: 'Ω', source: 'library-default' },
    ]);
    expectWithin(result.largestPairCurrent, 0.535 * result.operating.current, 1e-12);
  });

  test('3 % within a pair: the conductors take 51.5 and 48.5 % and the transformer sees half of the difference', () => {
    const result = pairUnbalance({ poeClass: 4, pairs: { '1,2': [9.7, 10.3], '3,6': [10, 10] } });
    if (!result.feasible) expect.fail('not feasible');
    const [first] = result.pairs;
    expectWithin(first?.conductorCurrents[0] as number, 0.515 * result.operating.current, 1e-12);
    expectWithin(result.largestBiasCurrent, 0.015 * result.operating.current, 1e-12);
    expect(result.checked).toEqual([['1,2'], ['3,6']]);
    expect(result.checks.map(({ name }) => name)).toEqual(['pair-unbalance', 'pair-unbalance']);
  });

  test('only pairs of one polarity are held against each other, and polarity can be stated', () => {
    const checked = (positive?: readonly RunPair[]) =>
      pairUnbalance({ poeClass: 8, pairs: EVEN, positive }).checked.filter((about) => about.length === 2);
    expect(checked()).toEqual([
      ['1,2', '4,5'],
      ['3,6', '7,8'],
    ]);
    expect(checked(['3,6', '4,5'])).toEqual([
      ['1,2', '7,8'],
      ['3,6', '4,5'],
    ]);
  });

  test('beyond the limits the checks fail in ohms, and the currents are still told', () => {
    const result = pairUnbalance({ poeClass: 8, pairs: unbalancedPairs({ conductorResistance: 12, within: 0.04, between: 0.08 }) });
    expect(result.feasible).toBe(true);
    expect(result.checks.map(({ verdict }) => verdict)).toEqual(Array.from({ length: 6 }, () => 'fail'));
    for (const check of result.checks) {
      expect(check.unit).toBe('Ω');
      expectWithin(check.margin, check.limit - check.value, 1e-9);
    }
  });

  test('what port and device add is named in the scope; by pair or one figure for all', () => {
    const scope = (more: Partial<PairUnbalanceInput>) => pairUnbalance({ poeClass: 8, pairs: EVEN, ...more }).scope;
    expect(scope({ psePairResistance: 0.1 })).toBe('channel and PSE');
    expect(scope({ pdPairResistance: 0.1 })).toBe('channel and PD');
    const each = { '1,2': 0.1, '3,6': 0.1, '4,5': 0.1, '7,8': 0.1 };
    expect(scope({ psePairResistance: each, pdPairResistance: 0 })).toBe('channel, PSE and PD');
    expect(pairUnbalance({ poeClass: 8, pairs: EVEN, psePairResistance: each }).resistance).toBe(
      pairUnbalance({ poeClass: 8, pairs: EVEN, psePairResistance: 0.1 }).resistance,
    );
  });

  test('past collapse: a plain no', () => {
    const result = pairUnbalance({ poeClass: 8, pairs: unbalancedPairs({ conductorResistance: 30 }) });
    expectPlain(result);
    expect(result.feasible).toBe(false);
    expect(Object.hasOwn(result, 'pairs')).toBe(false);
  });

  test('refuses', () => {
    const base = { poeClass: 8, pairs: EVEN } as const;
    expectInputError(() => pairUnbalance({ poeClass: 4, pairs: { '1,2': [1, 1], '4,5': [1, 1] } }), 'pairs', 'conflict');
    expectInputError(() => pairUnbalance({ poeClass: 4, pairs: { '1,2': [1, 1] } }), 'pairs', 'conflict');
    expectInputError(() => pairUnbalance({ poeClass: 8, pairs: { '1,2': [1, 1], '3,6': [1, 1] } }), 'pairs', 'conflict');
    expectInputError(() => pairUnbalance({ ...base, positive: ['1,2', '3,6'] }), 'positive', 'conflict');
    expectInputError(() => pairUnbalance({ ...base, positive: ['1,2'] }), 'positive', 'conflict');
    for (const pair of [Object.create(null), '2,1', 1, null])
      expectInputError(() => pairUnbalance({ ...base, positive: ['1,2', as<RunPair>(pair)] }), 'positive[1]', 'unknown');
    expectInputError(() => pairUnbalance({ ...base, positive: [as<RunPair>(undefined)] }), 'positive[0]', 'missing');
    expectInputError(() => pairUnbalance({ ...base, psePairResistance: { '1,2': 0.1 } }), "psePairResistance['3,6']", 'missing');
    expectInputError(() => pairUnbalance({ ...base, pdPairResistance: -0.1 }), 'pdPairResistance', 'range');
    expectInputError(() => pairUnbalance({ ...base, pseVoltage: 0 }), 'pseVoltage', 'range');
    expectInputError(() => pairUnbalance({ ...base, pdPower: Number.NaN }), 'pdPower', 'range');
    expectInputError(() => pairUnbalance({ ...base, marginalBelow: 2 }), 'marginalBelow', 'range');
  });
});
