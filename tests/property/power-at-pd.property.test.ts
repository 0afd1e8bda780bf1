/** Laws of power over Ethernet: every margin falls with the line, the checks agree with one another, and currents add up. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { runResistance } from '../../src/cable/run-resistance.ts';
import { operatingPoint } from '../../src/circuit/operating-point.ts';
import type { PoeClassNumber, PseType } from '../../src/ethernet/class-table.ts';
import { poeClass } from '../../src/ethernet/poe-class.ts';
import { type PowerAtPd, type PowerAtPdInput, powerAtPd } from '../../src/ethernet/power-at-pd.ts';
import { expectPlain, expectWithin, frozen } from '../helpers/expectations.ts';
import { between, decades, rising, segments } from './arbitraries.ts';

const classes = fc.integer({ min: 0, max: 8 }) as fc.Arbitrary<PoeClassNumber>;

/** A class with a type and number of pairs that may serve it. */
const served = classes.chain((number) => {
  const weakest = poeClass(number).type;
  const types = ([1, 2, 3, 4] as const).filter((type) => type >= weakest);
  return fc
    .tuple(fc.constantFrom<PseType>(...types), fc.constantFrom<2 | 4>(2, 4))
    .map(([pseType, pairs]) => ({ poeClass: number, pseType, pairs: pseType < 3 ? (2 as const) : number > 4 ? (4 as const) : pairs }));
});

const ohms = fc.oneof(fc.constant(0), between(0, 60), decades(1e-6, 1e6));
const pdVolts = fc.oneof(fc.constant(undefined), between(30, 57));
const watts = fc.oneof(fc.constant(undefined), fc.constant(0), between(0.1, 100));

const inputs: fc.Arbitrary<PowerAtPdInput> = fc
  .tuple(served, ohms, pdVolts, watts, fc.oneof(fc.constant(undefined), between(20, 57)))
  .map(([who, resistance, pseVoltage, pdPower, minimumVoltage]) => ({ ...who, resistance, pseVoltage, pdPower, minimumVoltage }));

const marginsOf = (result: PowerAtPd): Record<string, number> =>
  Object.fromEntries(result.checks.map(({ name, margin }) => [name, margin]));

test('plain data; the verdict of the whole is the worst of its checks; a fail has a negative margin and no other has', () => {
  fc.assert(
    fc.property(inputs, (input) => {
      const result = powerAtPd(frozen(input));
      expectPlain(result);
      const verdicts = result.checks.map(({ verdict }) => verdict);
      expect(result.verdict).toBe(verdicts.includes('fail') ? 'fail' : verdicts.includes('marginal') ? 'marginal' : 'pass');
      for (const check of result.checks) expect(check.margin < 0).toBe(check.verdict === 'fail');
    }),
    { numRuns: 2000 },
  );
});

test('agrees with operatingPoint on what flows', () => {
  fc.assert(
    fc.property(inputs, (input) => {
      const { operating, pseVoltage, resistance, limits } = powerAtPd(input);
      const load = { power: input.pdPower ?? limits.pdPower };
      expect(operating).toStrictEqual(operatingPoint({ supplyVoltage: pseVoltage, resistance, load }));
    }),
    { numRuns: 500 },
  );
});

test('the pairsets share the current and the conductors share the pairset', () => {
  fc.assert(
    fc.property(inputs, (input) => {
      const result = powerAtPd(input);
      if (!result.feasible) return;
      expect(result.totalCurrent).toBe(result.operating.current);
      expect(result.pairsetCurrent * (result.limits.pairs / 2)).toBe(result.totalCurrent);
      expect(result.conductorCurrent * result.limits.pairs).toBe(result.totalCurrent);
    }),
    { numRuns: 500 },
  );
});

test('a loop limit in ohms settles its check: within it the check passes, beyond it the check fails', () => {
  fc.assert(
    fc.property(inputs, (input) => {
      for (const { name, loop, verdict } of powerAtPd(input).checks) {
        if (loop === undefined || name === 'collapse') continue;
        expect(verdict === 'fail').toBe(loop.margin < 0);
        expect(loop.margin).toBe(loop.limit - (input.resistance as number));
      }
    }),
    { numRuns: 1000 },
  );
});

test('more resistance never leaves a larger margin, nor more available', () => {
  fc.assert(
    fc.property(inputs, rising(ohms), (input, [near, far]) => {
      const one = powerAtPd({ ...input, resistance: near });
      const other = powerAtPd({ ...input, resistance: far });
      expect(other.available).toBeLessThanOrEqual(one.available * (1 + 4 * Number.EPSILON));
      const margins = marginsOf(one);
      for (const [name, margin] of Object.entries(marginsOf(other))) {
        if (margins[name] !== undefined) expect(margin).toBeLessThanOrEqual(margins[name] + 1e-12 * (1 + Math.abs(margins[name])));
      }
    }),
    { numRuns: 1000 },
  );
});

test('a device that draws more never leaves a larger margin', () => {
  fc.assert(
    fc.property(inputs, rising(between(0.1, 60).filter((power) => power !== 13)), (input, [small, large]) => {
      const margins = marginsOf(powerAtPd({ ...input, pdPower: small }));
      for (const [name, margin] of Object.entries(marginsOf(powerAtPd({ ...input, pdPower: large })))) {
        if (margins[name] !== undefined) expect(margin).toBeLessThanOrEqual(margins[name] + 1e-12 * (1 + Math.abs(margins[name])));
      }
    }),
    { numRuns: 1000 },
  );
});

test('a higher voltage at the port never leaves a smaller margin', () => {
  fc.assert(
    fc.property(inputs, rising(between(30, 57)), (input, [low, high]) => {
      const weak = marginsOf(powerAtPd({ ...input, pseVoltage: low }));
      for (const [name, margin] of Object.entries(marginsOf(powerAtPd({ ...input, pseVoltage: high })))) {
        if (weak[name] !== undefined) expect(margin).toBeGreaterThanOrEqual(weak[name] - 1e-12 * (1 + Math.abs(weak[name])));
      }
    }),
    { numRuns: 1000 },
  );
});

describe('available and allowed', () => {
  test('are never less than a device at its class power finds on a compliant channel, but for the printed rounding', () => {
    fc.assert(
      fc.property(served, between(0, 1), (who, share) => {
        const { channelResistance, pdPower } = poeClass(who.poeClass, { pseType: who.pseType, pairs: who.pairs });
        const result = powerAtPd({ ...who, resistance: channelResistance * share });
        expect(result.verdict).not.toBe('fail');
        expect(result.allowed).toBe(pdPower);
        // Class 5 prints 40 W where 45 W delivers 39.94.
        expect(result.available).toBeGreaterThan(pdPower * 0.998);
      }),
      { numRuns: 1000 },
    );
  });

  test('drawing all that is available takes just the printed power from the port, until the line collapses', () => {
    fc.assert(
      fc.property(served, between(0.1, 60), (who, resistance) => {
        const { available, limits, pseVoltage } = powerAtPd({ ...who, resistance });
        const collapses = resistance > (pseVoltage * pseVoltage) / (2 * limits.psePower);
        // A hair less, for rounding at the limit itself.
        const point = operatingPoint({ supplyVoltage: pseVoltage, resistance, load: { power: available * (1 - 1e-9) } });
        if (!point.feasible) expect.fail('what is available is not carried');
        if (collapses) expectWithin(point.supplyPower, 2 * available, 1e-4);
        else expect(point.supplyPower).toBeLessThanOrEqual(limits.psePower);
        if (!collapses && point.efficiency > 0.55) expectWithin(point.supplyPower, limits.psePower, 1e-7);
      }),
      { numRuns: 1000 },
    );
  });
});

test('a run hands its loop to the pairs that carry power', () => {
  fc.assert(
    fc.property(served, fc.array(segments, { maxLength: 4 }), fc.integer({ min: 0, max: 6 }), (who, pieces, connections) => {
      const run = runResistance({ segments: pieces, connections });
      const loop = who.pairs === 4 ? run.fourPair : run.twoPair;
      expect(powerAtPd({ ...who, resistance: run })).toStrictEqual(powerAtPd({ ...who, resistance: loop }));
    }),
    { numRuns: 300 },
  );
});
