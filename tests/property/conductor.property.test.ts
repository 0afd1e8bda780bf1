/** Laws of conductors and runs: longer, hotter and thinner is never less; pieces add up; order does not matter. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type RunResistance, runResistance } from '../../src/cable/run-resistance.ts';
import { awg } from '../../src/conductor/awg.ts';
import { conductorFromResistance } from '../../src/conductor/conductor-from-resistance.ts';
import { loopResistance } from '../../src/conductor/loop-resistance.ts';
import { resistancePerMetre } from '../../src/conductor/resistance-per-metre.ts';
import { toMaximum } from '../../src/conductor/to-maximum.ts';
import { expectPlain, expectWithin, frozen } from '../helpers/expectations.ts';
import { between, conductors, decades, metres, rising, segments, temperatures } from './arbitraries.ts';

const gauges = fc.integer({ min: -3, max: 40 });
const bases = fc.constantFrom('nominal' as const, 'maximum' as const);
const connections = fc.integer({ min: 0, max: 1000 });
const connectionOhms = fc.oneof(fc.constant(0), between(0.001, 1));

describe('conductors', () => {
  test('a higher gauge is thinner and has more resistance', () => {
    fc.assert(
      fc.property(rising(gauges), ([thick, thin]) => {
        expect(awg(thin).diameter).toBeLessThan(awg(thick).diameter);
        expect(awg(thin).resistancePerMetre).toBeGreaterThan(awg(thick).resistancePerMetre);
      }),
    );
  });

  test('hotter copper never has less resistance', () => {
    fc.assert(
      fc.property(conductors, rising(temperatures), (conductor, [cold, hot]) => {
        expect(resistancePerMetre(conductor, hot)).toBeGreaterThanOrEqual(resistancePerMetre(conductor, cold));
        expect(resistancePerMetre(conductor, cold)).toBeGreaterThan(0);
      }),
    );
  });

  test('a data-sheet figure comes back at its own temperature', () => {
    fc.assert(
      fc.property(decades(1e-3, 1e6), temperatures, (ohmsPerKilometre, temperature) => {
        const conductor = conductorFromResistance({ ohmsPerKilometre, temperature });
        expectWithin(resistancePerMetre(conductor, temperature) * 1000, ohmsPerKilometre, 1e-15);
      }),
    );
  });

  test('the most a conductor may have is never less than what it should have', () => {
    fc.assert(
      fc.property(conductors, (conductor) => {
        expect(toMaximum({ conductor }).resistancePerMetre).toBeGreaterThanOrEqual(conductor.resistancePerMetre);
        expectPlain(toMaximum({ conductor: frozen(conductor) }));
      }),
    );
  });

  test('a longer loop never has less resistance, and twice the length has exactly twice', () => {
    fc.assert(
      fc.property(conductors, rising(metres), temperatures, (conductor, [short, long], temperature) => {
        const loop = (length: number): number => loopResistance({ conductor, length, temperature });
        expect(loop(long)).toBeGreaterThanOrEqual(loop(short));
        expect(loop(2 * short)).toBe(2 * loop(short));
      }),
    );
  });
});

describe('runs', () => {
  const pieces = fc.array(segments, { maxLength: 8 });
  const loops = ({ pairLoop, twoPair, fourPair }: RunResistance): number[] => [pairLoop, twoPair, fourPair];

  test('pairLoop is exactly twice twoPair, and four times fourPair', () => {
    fc.assert(
      fc.property(pieces, connections, connectionOhms, bases, (list, count, connectionResistance, basis) => {
        const run = runResistance(frozen({ segments: list, connections: count, connectionResistance, basis }));
        expectPlain(run);
        expect(run.pairLoop).toBe(2 * run.twoPair);
        expect(run.pairLoop).toBe(4 * run.fourPair);
        expect(run.twoPair).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test('one pair of a run of one cable is a loop of two of its conductors', () => {
    fc.assert(
      fc.property(segments, (segment) => {
        const conductor = conductorFromResistance({ ohmsPerKilometre: segment.cable.maximumResistancePerMetre * 1000 });
        const loop = loopResistance({ conductor, length: segment.length, temperature: segment.temperature });
        expectWithin(runResistance({ segments: [segment] }).pairLoop, loop, 1e-15);
      }),
    );
  });

  test('the order of the pieces changes nothing beyond 1e-12', () => {
    fc.assert(
      fc.property(
        pieces.chain((list) => fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length }))),
        connections,
        ([list, shuffled], count) => {
          const one = runResistance({ segments: list, connections: count });
          const other = runResistance({ segments: shuffled, connections: count });
          expectWithin(other.pairLoop, one.pairLoop, 1e-12);
          expectWithin(other.length, one.length, 1e-12);
        },
      ),
    );
  });

  test('cutting a piece in two changes nothing beyond 1e-12', () => {
    fc.assert(
      fc.property(segments, between(0.001, 0.999), (segment, share) => {
        fc.pre(segment.length * Math.min(share, 1 - share) >= 1e-12);
        const first = { ...segment, length: segment.length * share };
        const second = { ...segment, length: segment.length - first.length };
        const whole = runResistance({ segments: [segment] });
        const cut = runResistance({ segments: [first, second] });
        expectWithin(cut.pairLoop, whole.pairLoop, 1e-12);
        expectWithin(cut.length, whole.length, 1e-12);
      }),
    );
  });

  test('two runs end to end are the sum of the two', () => {
    fc.assert(
      fc.property(pieces, pieces, fc.integer({ min: 0, max: 10 }), fc.integer({ min: 0, max: 10 }), (near, far, a, b) => {
        const joined = runResistance({ segments: [...near, ...far], connections: a + b });
        const apart = [runResistance({ segments: near, connections: a }), runResistance({ segments: far, connections: b })] as const;
        expectWithin(joined.twoPair, apart[0].twoPair + apart[1].twoPair, 1e-12);
        expectWithin(joined.length, apart[0].length + apart[1].length, 1e-12);
      }),
    );
  });

  test('longer, hotter, one more connection, worse connections: never less', () => {
    fc.assert(
      fc.property(
        segments,
        rising(metres),
        rising(temperatures),
        rising(fc.integer({ min: 0, max: 20 })),
        rising(connectionOhms),
        (segment, length, temperature, count, joint) => {
          const run = (i: 0 | 1, j: 0 | 1, k: 0 | 1, l: 0 | 1): RunResistance =>
            runResistance({
              segments: [{ ...segment, length: length[i], temperature: temperature[j] }],
              connections: count[k],
              connectionResistance: joint[l],
            });
          const least = loops(run(0, 0, 0, 0));
          for (const more of [run(1, 0, 0, 0), run(0, 1, 0, 0), run(0, 0, 1, 0), run(0, 0, 0, 1), run(1, 1, 1, 1)]) {
            for (const [i, value] of loops(more).entries()) expect(value).toBeGreaterThanOrEqual(least[i] as number);
          }
        },
      ),
    );
  });

  test('the usual copper never has more than the maximum', () => {
    fc.assert(
      fc.property(pieces, connections, (list, count) => {
        const nominal = runResistance({ segments: list, connections: count, basis: 'nominal' });
        expect(nominal.twoPair).toBeLessThanOrEqual(runResistance({ segments: list, connections: count }).twoPair);
      }),
    );
  });
});
