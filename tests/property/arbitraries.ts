/** What the laws are tried on: numbers of every size that the library accepts, and the ordinary things made of them. @module */
import fc, { type Arbitrary } from 'fast-check';
import { type Cable, cable } from '../../src/cable/cable.ts';
import type { CableName } from '../../src/cable/cables.ts';
import type { Segment } from '../../src/cable/run-resistance.ts';
import { awg } from '../../src/conductor/awg.ts';
import type { Conductor } from '../../src/conductor/conductor.ts';
import { conductorFromResistance } from '../../src/conductor/conductor-from-resistance.ts';

/**
 * A number from `low` to `high`, evenly, both ends included, nothing between 0 and 1e-12.
 * `fc.double` would be even over bit patterns: nearly all of 0 to 1 is then under 1e-12.
 */
export function between(low: number, high: number): Arbitrary<number> {
  return fc.maxSafeNat().map((n) => {
    const value = Math.min(low + (high - low) * (n / Number.MAX_SAFE_INTEGER), high);
    return Math.abs(value) < 1e-12 ? 0 : value;
  });
}

/** A number from `low` to `high`, every decade equally likely. */
export function decades(low: number, high: number): Arbitrary<number> {
  return between(Math.log10(low), Math.log10(high)).map((exponent) => Math.min(Math.max(10 ** exponent, low), high));
}

/** Supply voltages people use, and some they do not. [V] */
export const volts: Arbitrary<number> = fc.oneof(between(1, 1000), fc.constantFrom(12, 24, 44, 48, 50, 52, 57));

/** Line resistances, from a busbar to nonsense. [Ω] */
export const ohms: Arbitrary<number> = fc.oneof(fc.constant(0), decades(1e-6, 1e6), between(0.1, 30));

/** Conductor temperatures, over the whole range. [°C] */
export const temperatures: Arbitrary<number> = between(-100, 400);

/** Lengths of a run. [m] */
export const metres: Arbitrary<number> = fc.oneof(fc.constant(0), decades(1e-3, 1e5), between(1, 150));

/** Any conductor: a gauge or a data sheet. */
export const conductors: Arbitrary<Conductor> = fc.oneof(
  fc
    .tuple(fc.integer({ min: -3, max: 40 }), fc.constantFrom('solid' as const, 'stranded' as const))
    .map(([gauge, stranding]) => awg(gauge, { stranding })),
  fc
    .tuple(decades(0.01, 1e5), temperatures)
    .map(([ohmsPerKilometre, temperature]) => conductorFromResistance({ ohmsPerKilometre, temperature })),
);

/** Any named cable. */
export const cables: Arbitrary<Cable> = fc
  .constantFrom<CableName>('cat5e', 'cat6', 'cat6a', 'cord-24', 'cord-26', 'cord-28')
  .map((name) => cable(name));

/** One piece of a run. */
export const segments: Arbitrary<Segment> = fc.record({
  cable: cables,
  length: metres,
  temperature: fc.oneof(fc.constant(undefined), temperatures),
});

/** Two different numbers in rising order. */
export function rising(of: Arbitrary<number>): Arbitrary<readonly [number, number]> {
  return fc
    .tuple(of, of)
    .filter(([a, b]) => a !== b)
    .map(([a, b]) => (a < b ? [a, b] : [b, a]));
}

/** A constant-power load as a share of the most that the line carries. */
export const shares: Arbitrary<number> = fc.oneof(
  between(0, 1),
  decades(1e-9, 1),
  decades(1e-12, 1).map((gap) => 1 - gap),
);
