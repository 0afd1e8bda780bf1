/** A bundle of powered cables judged: rating of the cable, recommended rise, ampacity. @module */
import { type Ampacity, type AmpacityCode, ampacity, TEMPERATURE_RATING } from '../../cable/heat/ampacity.ts';
import { BUNDLE_RISE_FIELDS, type BundleRise, type BundleRiseInput, type ReadBundle, riseOf } from '../../cable/heat/bundle-rise.ts';
import { type RemotePowering, remotePowering } from '../../cable/heat/remote-powering.ts';
import { AMPACITY } from '../../limits/ampacity.ts';
import { BUNDLE_RISE } from '../../limits/bundle-rise.ts';
import type { Check, CheckName } from '../../limits/check.ts';
import { CONDUCTOR_TEMPERATURE } from '../../limits/conductor-temperature.ts';
import { held, MARGINAL_BELOW } from '../../limits/held.ts';
import type { Limit } from '../../limits/limit.ts';
import { type Verdict, worstVerdict } from '../../limits/verdict.ts';
import { type Assumption, assumptionsOf, type Fields, readInput } from '../../quantity/fields.ts';
import { HOTTEST } from '../../quantity/guards.ts';
import type { SourceKey } from '../../sources/sources.ts';

/** What a bundle is held against. */
export interface BundleLimits {
  /** What the cable is rated for; 60 if absent. [°C] */
  readonly temperatureRating?: 60 | 75 | 90 | undefined;
  /** Recommended rise: 15 (TSB-184-A) if absent, or 10 (of the time of IEEE 802.3at). [K] */
  readonly recommendedRise?: 10 | 15 | undefined;
  /** The code whose ampacities apply where the bundle is; none if absent. */
  readonly code?: AmpacityCode | undefined;
}

/** A bundle, and what it is held against. */
export interface CheckBundleInput extends BundleRiseInput, BundleLimits {}

/** @internal */
export const BUNDLE_LIMIT_FIELDS: Fields<BundleLimits, 'temperatureRating' | 'recommendedRise'> = {
  temperatureRating: () => TEMPERATURE_RATING,
  recommendedRise: { oneOf: () => [10, 15], unit: 'K', default: 15, source: 'bundle-rise-15' },
  code: { oneOf: () => ['NEC 2017'], optional: true },
};

/** @internal */
export const CHECK_BUNDLE_FIELDS: Fields<CheckBundleInput, 'ambient' | 'basis' | 'temperatureRating' | 'recommendedRise', ReadBundle> =
  /* @__PURE__ */ (() => ({ ...BUNDLE_RISE_FIELDS, ...BUNDLE_LIMIT_FIELDS }))();

/** Something about a bundle that no check says. */
export type BundleFinding =
  /** Unwind the cable before it is powered: it sheds its heat from the outer layer alone. */
  | 'wound-drum'
  /** Every kelvin adds more heat than the bundle sheds: there is no temperature at which it settles below 400 °C. */
  | 'no-steady-state'
  /** More than 192 cables: the model was held against nothing of that size, and no verdict is better than uncertain. */
  | 'beyond-validity'
  /** The code leaves a bundle of this size, or wire this thin, to an engineer. */
  | 'engineering-supervision'
  /** The code has no figure for this wire in a bundle of this size. */
  | 'no-ampacity'
  /** The code has no factor for air this warm at this rating. */
  | 'too-warm-for-code';

/** A bundle, judged. */
export interface CheckedBundle {
  readonly rise: BundleRise;
  /** Rating, recommended rise and, where a code was chosen, ampacity: in this order. */
  readonly checks: readonly Check[];
  readonly verdict: Verdict;
  readonly findings: readonly BundleFinding[];
  /** What was taken for what the caller left out. */
  readonly assumptions: readonly Assumption[];
  /** By what the code allows, where one was chosen. */
  readonly ampacity?: Ampacity;
  /** Mean current of all conductors, if every cable of the bundle is like this one. */
  readonly remotePowering: RemotePowering;
}

/**
 * Holds a bundle against the temperature rating of its cable, the recommended rise and, where a code is chosen, its ampacity.
 *
 * The model is taken as ±10 % from 7 to 192 cables: where a limit lies within that the verdict is `uncertain`, and above 192
 * cables it is never better. The ampacities of a code apply only where that code does, so none is applied unless chosen.
 * Heat can start a fire: the local code, the ratings of the cable and a licensed practitioner decide, not this.
 *
 * @param input - The bundle as for {@link bundleRise}, rating [°C], recommended rise [K], code.
 * @returns The rise [K], the checks and the worst verdict, findings, and the remote-powering category.
 * @throws {@link InputError} As {@link bundleRise} and {@link ampacity}.
 * @example 100 Category 5e cables at 0.96 A a pair in a ceiling at 45 °C
 * const bundle = { cable: cable('cat5e'), bundle: 100, pairCurrent: 0.96, ambient: 45, installation: 'open-air' } as const;
 * checkBundle(bundle).checks.map(({ name, verdict }) => [name, verdict]); // => [['conductor-temperature', 'fail'], ['bundle-rise', 'fail']]
 */
export function checkBundle(input: CheckBundleInput): CheckedBundle {
  const read = readInput(CHECK_BUNDLE_FIELDS, input);
  const { temperatureRating, recommendedRise, code, cable, bundle, ambient, energisedPairs = cable.pairs } = read;
  const rise = riseOf(read);
  const findings: BundleFinding[] = [];
  const checks: Check[] = [];
  if (rise.feasible) {
    const range = rise.range;
    if (range === undefined) findings.push('beyond-validity');
    checks.push(
      judged(CONDUCTOR_TEMPERATURE, rise.conductorTemperature, temperatureRating, 'data-sheet', range && shifted(range, ambient)),
    );
    checks.push(judged(BUNDLE_RISE, rise.rise, recommendedRise, recommendedRise === 15 ? 'bundle-rise-15' : 'bundle-rise-10', range));
  } else {
    findings.push(rise.reason);
    if (rise.reason === 'no-steady-state') checks.push(judged(CONDUCTOR_TEMPERATURE, HOTTEST, temperatureRating, 'data-sheet', EXACT));
  }
  const allowed =
    code === undefined
      ? undefined
      : ampacity({ code, gauge: cable.gauge, bundle, temperatureRating, ambient, halfLoaded: 2 * energisedPairs <= cable.pairs });
  if (allowed !== undefined) {
    if (allowed.feasible) checks.push(judged(AMPACITY, rise.conductorCurrent, allowed.ampacity, allowed.source, EXACT));
    else if (allowed.reason === 'no-figure') findings.push('no-ampacity');
    else findings.push(allowed.reason === 'too-warm' ? 'too-warm-for-code' : allowed.reason);
  }
  const worst = worstVerdict(checks);
  return {
    rise,
    checks,
    // What has no figure is not passed.
    verdict: findings.length > 0 && worst !== 'fail' ? 'uncertain' : worst,
    findings,
    assumptions: assumptionsOf(CHECK_BUNDLE_FIELDS, input),
    ...(allowed === undefined ? {} : { ampacity: allowed }),
    remotePowering: remotePowering([(rise.conductorCurrent * energisedPairs) / cable.pairs]),
  };
}

/** A figure that is taken as it is. */
const EXACT = 'exact';

function judged(
  limit: Limit<CheckName>,
  value: number,
  bound: number,
  source: SourceKey,
  range: { readonly low: number; readonly high: number } | typeof EXACT | undefined,
): Check {
  const check = held(limit, value, bound, MARGINAL_BELOW);
  check.source = source;
  if (range === EXACT) return check;
  if (range === undefined)
    return check.verdict === 'fail' ? check : { ...check, verdict: 'uncertain', deciding: [{ parameter: 'bundle' }] };
  if (range.low > bound || range.high <= bound) return check;
  return { ...check, verdict: 'uncertain', deciding: [{ parameter: 'pairCurrent' }, { parameter: 'installation' }] };
}

function shifted({ low, high }: { readonly low: number; readonly high: number }, by: number): { low: number; high: number } {
  return { low: low + by, high: high + by };
}
