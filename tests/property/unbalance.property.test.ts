/** Laws of unlike conductors: what divides adds up, likeness evens out, and the larger resistance takes the smaller current. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { unbalance, unbalancedPairs } from '../../src/cable/index.ts';
import { pairUnbalance } from '../../src/ethernet/index.ts';
import { powerAtPd } from '../../src/index.ts';
import { expectPlain, expectWithin } from '../helpers/expectations.ts';

const ohms = fc.double({ min: 0.1, max: 12, noNaN: true });
const pair = fc.tuple(ohms, ohms);
const pairs = fc.record({ '1,2': pair, '3,6': pair, '4,5': pair, '7,8': pair });
const fraction = fc.double({ min: 0, max: 0.3, noNaN: true }).map((value) => (value < 1e-12 ? 0 : value));

describe('division of the current', () => {
  test('conductors add up to their pair, pairs of one polarity to the whole, heat to the loss of the line', () => {
    fc.assert(
      fc.property(pairs, fc.double({ min: 0.01, max: 1, noNaN: true }), (conductors, share) => {
        const result = pairUnbalance({ poeClass: 8, pairs: conductors, pdPower: 71.3 * share });
        expectPlain(result);
        fc.pre(result.feasible);
        if (!result.feasible) return;
        for (const polarity of ['positive', 'negative'] as const) {
          const side = result.pairs.filter((one) => one.polarity === polarity);
          expectWithin(
            side.reduce((sum, { current }) => sum + current, 0),
            result.operating.current,
            1e-12,
          );
          expectWithin(
            side.reduce((sum, one) => sum + one.share, 0),
            1,
            1e-12,
          );
        }
        for (const { current, conductorCurrents } of result.pairs)
          expectWithin(conductorCurrents[0] + conductorCurrents[1], current, 1e-12);
        expectWithin(
          result.pairs.reduce((sum, { cableHeat }) => sum + cableHeat, 0),
          result.operating.lineLoss,
          1e-9,
        );
      }),
      { numRuns: 1000 },
    );
  });

  test('the voltage is the same along every conductor of a pair, and along every pair of a polarity', () => {
    fc.assert(
      fc.property(pairs, (conductors) => {
        const result = pairUnbalance({ poeClass: 6, pairs: conductors });
        fc.pre(result.feasible);
        if (!result.feasible) return;
        for (const polarity of ['positive', 'negative'] as const) {
          const drops = result.pairs
            .filter((one) => one.polarity === polarity)
            .flatMap((one) => one.conductorCurrents.map((amperes, wire) => amperes * (conductors[one.pair][wire] as number)));
          for (const drop of drops) expectWithin(drop, drops[0] as number, 1e-12);
        }
      }),
      { numRuns: 1000 },
    );
  });

  test('without any unbalance it is powerAtPd: a half to each pair, a quarter to each conductor', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 12.5, noNaN: true }), (conductor) => {
        const even = pairUnbalance({ poeClass: 8, pairs: unbalancedPairs({ conductorResistance: conductor }) });
        const equal = powerAtPd({ poeClass: 8, resistance: conductor / 2 });
        if (!even.feasible || !equal.feasible) expect.fail('not feasible');
        expectWithin(even.operating.current, equal.totalCurrent, 1e-12);
        for (const one of even.pairs) {
          expectWithin(one.current, equal.pairsetCurrent, 1e-12);
          expectWithin(one.conductorCurrents[0], equal.conductorCurrent, 1e-12);
        }
        expect(even.largestBiasCurrent).toBe(0);
      }),
    );
  });

  test('resistance in port and device evens the currents out, and never makes them more unlike', () => {
    fc.assert(
      fc.property(pairs, fc.double({ min: 0.01, max: 2, noNaN: true }), (conductors, added) => {
        const alone = pairUnbalance({ poeClass: 5, pairs: conductors, pdPower: 10 });
        const both = pairUnbalance({ poeClass: 5, pairs: conductors, pdPower: 10, psePairResistance: added, pdPairResistance: added });
        if (!alone.feasible || !both.feasible) expect.fail('not feasible');
        const most = (result: typeof alone): number => Math.max(...result.pairs.map(({ share }) => share));
        expect(most(both)).toBeLessThanOrEqual(most(alone) * (1 + 1e-12));
        expect([alone.scope, both.scope]).toEqual(['channel alone', 'channel, PSE and PD']);
      }),
      { numRuns: 500 },
    );
  });

  test('swapping the conductors of a pair, or the two pairsets, swaps the currents and changes nothing else', () => {
    fc.assert(
      fc.property(pairs, (p) => {
        const before = pairUnbalance({ poeClass: 6, pairs: p, pdPower: 20 });
        const after = pairUnbalance({
          poeClass: 6,
          pdPower: 20,
          pairs: { '1,2': [p['4,5'][1], p['4,5'][0]], '3,6': p['7,8'], '4,5': p['1,2'], '7,8': p['3,6'] },
        });
        if (!before.feasible || !after.feasible) expect.fail('not feasible');
        expectWithin(after.operating.current, before.operating.current, 1e-12);
        expectWithin(after.pairs[0]?.conductorCurrents[0] as number, before.pairs[2]?.conductorCurrents[1] as number, 1e-12);
        expectWithin(after.largestConductorCurrent, before.largestConductorCurrent, 1e-12);
      }),
      { numRuns: 500 },
    );
  });
});

describe('unbalance of resistance', () => {
  test('a stated unbalance is found again, within and between', () => {
    fc.assert(
      fc.property(ohms, fraction, fraction, (conductorResistance, within, between) => {
        const made = unbalancedPairs({ conductorResistance, within, between });
        const found = unbalance({ pairs: made });
        for (const one of found.pairs) expect(one.fraction).toBeCloseTo(within, 12);
        // Positive pairs 1,2 and 4,5, negative pairs 3,6 and 7,8.
        for (const two of [found.pairToPair[1], found.pairToPair[4]]) expect(two?.fraction).toBeCloseTo(between, 12);
        expectWithin((made['1,2'][0] + made['1,2'][1] + made['4,5'][0] + made['4,5'][1]) / 4, conductorResistance, 1e-12);
      }),
      { numRuns: 1000 },
    );
  });

  test('a limit is the fraction of the sum or the floor, whichever is more', () => {
    fc.assert(
      fc.property(pairs, fc.double({ min: 0, max: 0.2, noNaN: true }), (conductors, part) => {
        const pairFraction = part < 1e-12 ? 0 : part;
        const limits = { pairFraction, pairFloor: 0.2, pairToPairFraction: 0.07, pairToPairFloor: 0.1 };
        for (const one of unbalance({ pairs: conductors, limits }).pairs) {
          const [first, second] = conductors[one.pair];
          expect(one.limit).toBe(Math.max(pairFraction * (first + second), 0.2));
          expect(one.withinLimit).toBe(Math.abs(first - second) <= one.limit);
          expect(one.margin).toBe(one.limit - one.difference);
          expectWithin(1 / one.parallel, 1 / first + 1 / second, 1e-12);
        }
      }),
      { numRuns: 1000 },
    );
  });
});
