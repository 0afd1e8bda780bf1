/** Laws of a load behind a line: nothing is created, more line never helps, and no figure is ever not a number. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type FeasiblePoint, type Load, type OperatingPoint, operatingPoint } from '../../src/circuit/operating-point.ts';
import { voltageDrop } from '../../src/circuit/voltage-drop.ts';
import { loopResistance } from '../../src/conductor/loop-resistance.ts';
import { expectPlain, expectWithin, frozen } from '../helpers/expectations.ts';
import { between, conductors, decades, metres, ohms, rising, shares, temperatures, volts } from './arbitraries.ts';

/** Everything the domain allows, the corners included. */
const anySize = fc.oneof(fc.constantFrom(0, 1e-12, 1e12), decades(1e-12, 1e12));
const anyLoad: fc.Arbitrary<Load> = fc.oneof(
  anySize.map((power) => ({ power })),
  anySize.map((current) => ({ current })),
  anySize.map((resistance) => ({ resistance })),
);

const limit = (supplyVoltage: number, resistance: number): number => (supplyVoltage * supplyVoltage) / (4 * resistance);

/** A line and a power it carries, up to a hair below collapse. */
const carried = fc
  .tuple(volts, decades(1e-6, 1e6), shares)
  .map(([supplyVoltage, resistance, share]) => ({
    supplyVoltage,
    resistance,
    power: atLeastTiny(limit(supplyVoltage, resistance) * share),
  }))
  .filter(({ supplyVoltage, resistance, power }) => operatingPoint({ supplyVoltage, resistance, load: { power } }).feasible);

function atLeastTiny(power: number): number {
  return power < 1e-12 ? 0 : power;
}

function point(supplyVoltage: number, resistance: number, load: Load): FeasiblePoint | undefined {
  const found = operatingPoint({ supplyVoltage, resistance, load });
  return found.feasible ? found : undefined;
}

test('over the whole domain: plain data, no NaN, no Infinity, nothing negative', () => {
  fc.assert(
    fc.property(decades(1e-12, 1e12), anySize, anyLoad, (supplyVoltage, resistance, load) => {
      fc.pre(!(resistance === 0 && load.resistance === 0));
      const found: OperatingPoint = operatingPoint(frozen({ supplyVoltage, resistance, load }));
      expectPlain(found);
      for (const value of Object.values(found)) if (typeof value === 'number') expect(value).toBeGreaterThanOrEqual(0);
      if (found.feasible) {
        expect(found.efficiency).toBeLessThanOrEqual(1);
        expect(found.dropFraction).toBeLessThanOrEqual(1);
      }
    }),
    { numRuns: 2000 },
  );
});

describe('what the supply gives is what the load and the line take', () => {
  const balanced = (supplyVoltage: number, resistance: number, load: Load): void => {
    const found = point(supplyVoltage, resistance, load);
    fc.pre(found !== undefined);
    // Each side is a sum of rounded terms: 1e-14 of the larger side, no more.
    expectWithin(found.loadPower + found.lineLoss, found.supplyPower, 1e-14);
    expectWithin(found.loadVoltage + found.voltageDrop, supplyVoltage, 1e-14);
    expectWithin(found.efficiency + found.dropFraction, 1, 1e-14);
    expectWithin(found.loadVoltage * found.current, found.loadPower, found.loadVoltage > supplyVoltage * 1e-3 ? 1e-14 : 1e-11);
  };

  test('constant power, up to collapse', () => {
    fc.assert(
      fc.property(carried, ({ supplyVoltage, resistance, power }) => balanced(supplyVoltage, resistance, { power })),
      { numRuns: 2000 },
    );
  });

  test('constant current, up to a short', () => {
    fc.assert(
      fc.property(volts, decades(1e-6, 1e6), between(0, 1), (supplyVoltage, resistance, share) => {
        const current = atLeastTiny((supplyVoltage / resistance) * share);
        balanced(supplyVoltage, resistance, { current });
      }),
      { numRuns: 1000 },
    );
  });

  test('resistance', () => {
    fc.assert(
      fc.property(volts, ohms, decades(1e-6, 1e6), (supplyVoltage, resistance, load) =>
        balanced(supplyVoltage, resistance, { resistance: load }),
      ),
      { numRuns: 1000 },
    );
  });
});

/** Monotone up to the rounding of the two figures: 4 ulp each. */
function expectNotLess(more: number, less: number): void {
  expect(more).toBeGreaterThanOrEqual(less * (1 - 8 * Number.EPSILON));
}

describe('a constant power', () => {
  const rises = (less: FeasiblePoint, more: FeasiblePoint): void => {
    expectNotLess(more.current, less.current);
    expectNotLess(more.voltageDrop, less.voltageDrop);
    expectNotLess(more.lineLoss, less.lineLoss);
    expectNotLess(more.supplyPower, less.supplyPower);
  };
  const factors = rising(between(1, 2));

  test('over a longer line draws more, drops more, loses more', () => {
    fc.assert(
      fc.property(carried, factors, ({ supplyVoltage, resistance, power }, [low, high]) => {
        const near = point(supplyVoltage, resistance / high, { power });
        const far = point(supplyVoltage, resistance / low, { power });
        if (near === undefined || far === undefined) expect.fail('a shorter line refused what a longer one carries');
        rises(near, far);
        expectNotLess(near.loadVoltage, far.loadVoltage);
        expectNotLess(near.efficiency, far.efficiency);
      }),
      { numRuns: 1000 },
    );
  });

  test('that is larger draws more, drops more, loses more', () => {
    fc.assert(
      fc.property(carried, factors, ({ supplyVoltage, resistance, power }, [low, high]) => {
        const small = point(supplyVoltage, resistance, { power: atLeastTiny(power / high) });
        const large = point(supplyVoltage, resistance, { power: atLeastTiny(power / low) });
        if (small === undefined || large === undefined) expect.fail('a smaller load was refused where a larger one runs');
        rises(small, large);
        expectNotLess(small.loadVoltage, large.loadVoltage);
      }),
      { numRuns: 1000 },
    );
  });

  test('from a higher voltage draws less current and loses less', () => {
    fc.assert(
      fc.property(carried, factors, ({ supplyVoltage, resistance, power }, [low, high]) => {
        const weak = point(supplyVoltage * low, resistance, { power });
        const strong = point(supplyVoltage * high, resistance, { power });
        if (weak === undefined || strong === undefined) expect.fail('a higher voltage refused what a lower one carries');
        expectNotLess(weak.current, strong.current);
        expectNotLess(weak.lineLoss, strong.lineLoss);
        expectNotLess(weak.supplyPower, strong.supplyPower);
        expectNotLess(strong.loadVoltage, weak.loadVoltage);
      }),
      { numRuns: 1000 },
    );
  });

  test('settles on the stable side: at least half the supply voltage', () => {
    fc.assert(
      fc.property(carried, ({ supplyVoltage, resistance, power }) => {
        expect(point(supplyVoltage, resistance, { power })?.loadVoltage).toBeGreaterThanOrEqual(supplyVoltage / 2);
      }),
    );
  });

  test('is where a load of the same current, or of the same resistance, would settle', () => {
    fc.assert(
      fc.property(carried, ({ supplyVoltage, resistance, power }) => {
        const settled = point(supplyVoltage, resistance, { power });
        fc.pre(settled !== undefined && settled.current >= 1e-12);
        const asCurrent = point(supplyVoltage, resistance, { current: settled.current });
        expectWithin(asCurrent?.loadVoltage as number, settled.loadVoltage, 1e-14);
        const equivalent = settled.loadVoltage / settled.current;
        fc.pre(equivalent <= 1e12);
        const asResistance = point(supplyVoltage, resistance, { resistance: equivalent });
        expectWithin(asResistance?.current as number, settled.current, 1e-14);
      }),
      { numRuns: 1000 },
    );
  });

  test('feasibility is a threshold: a line that refuses a power refuses every larger one', () => {
    fc.assert(
      fc.property(volts, decades(1e-6, 1e6), rising(between(0.5, 1.5)), (supplyVoltage, resistance, [low, high]) => {
        const most = limit(supplyVoltage, resistance);
        if (point(supplyVoltage, resistance, { power: most * low }) !== undefined) return;
        expect(point(supplyVoltage, resistance, { power: most * high })).toBeUndefined();
      }),
    );
  });
});

test('a two-wire run in two pieces is the run in one: the far piece starts where the near one ends', () => {
  fc.assert(
    fc.property(
      volts,
      conductors,
      metres,
      between(0, 1),
      temperatures,
      between(0, 0.9),
      (supplyVoltage, conductor, length, share, temperature, part) => {
        const resistance = loopResistance({ conductor, length, temperature });
        fc.pre(resistance >= 1e-9 && resistance <= 1e9 && length * Math.min(share, 1 - share) >= 1e-9);
        const load = { current: (supplyVoltage / resistance) * part };
        fc.pre(load.current >= 1e-12 && load.current <= 1e12);
        const whole = voltageDrop({ supplyVoltage, conductor, length, temperature, load });
        const near = voltageDrop({ supplyVoltage, conductor, length: length * share, temperature, load });
        if (!whole.feasible || !near.feasible) expect.fail('not feasible');
        const far = voltageDrop({ supplyVoltage: near.loadVoltage, conductor, length: length * (1 - share), temperature, load });
        if (!far.feasible) expect.fail('not feasible');
        expectWithin(far.loadVoltage, whole.loadVoltage, 1e-12);
        expectWithin(near.lineLoss + far.lineLoss, whole.lineLoss, 1e-12);
      },
    ),
    { numRuns: 500 },
  );
});

test('scaling voltage and current together scales power by the product and leaves the fractions alone', () => {
  fc.assert(
    fc.property(carried, fc.integer({ min: -3, max: 3 }), ({ supplyVoltage, resistance, power }, exponent) => {
      const k = 2 ** exponent; // exact in binary, so the result must be exact too
      fc.pre(power === 0 || (power * k * k >= 1e-12 && power * k * k <= 1e12));
      const one = point(supplyVoltage, resistance, { power });
      const other = point(supplyVoltage * k, resistance, { power: power * k * k });
      expect(other).toMatchObject({ dropFraction: one?.dropFraction, efficiency: one?.efficiency });
      expect(other?.current).toBe((one?.current as number) * k);
      expect(other?.lineLoss).toBe((one?.lineLoss as number) * k * k);
    }),
  );
});
