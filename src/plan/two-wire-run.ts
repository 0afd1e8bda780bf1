/** One two-wire DC run, judged: does enough voltage reach the device at every supply voltage it will see. @module */
import { type FeasiblePoint, type OperatingPoint, operatingPoint } from '../circuit/operating-point.ts';
import { legsOf, twoWirePerMetre } from '../circuit/voltage-drop.ts';
import type { Check } from '../limits/check.ts';
import { COLLAPSE } from '../limits/collapse.ts';
import { held, MARGINAL_BELOW } from '../limits/held.ts';
import { NO_LINE } from '../limits/resistance-at.ts';
import { type Verdict, worstVerdict } from '../limits/verdict.ts';
import { requireNonNegative } from '../quantity/guards.ts';
import type { Metres, Ohms } from '../quantity/units.ts';
import { governingCheck } from './governing-check.ts';
import { twoWireCautions } from './two-wire-cautions.ts';
import {
  legsAtMaximum,
  requireTwoWire,
  supplyRange,
  type TwoWireRunInput,
  twoWireJoints,
  type UnequalTwoWireRunInput,
} from './two-wire-input.ts';
import { twoWireLimits } from './two-wire-limits.ts';

/** A two-wire run, judged. */
export interface TwoWireRun {
  /** Out and back, conductors at their maximum, at the stated temperature. [Ω] */
  readonly resistance: Ohms;
  /** What a meter should show with the far end shorted: the conductor as given, and its maximum. [Ω] */
  readonly meterReading: { readonly nominal: Ohms; readonly maximum: Ohms };
  /** [m] */
  readonly length: Metres;
  /** At the lowest supply voltage. */
  readonly atLowest: OperatingPoint;
  /** At the highest supply voltage. */
  readonly atHighest: OperatingPoint;
  readonly checks: readonly Check[];
  readonly verdict: Verdict;
  /** The check that is closest to its limit; absent where there is no limit at all. */
  readonly governing?: Check;
  /** What a person must know before building it. */
  readonly cautions: readonly string[];
}

/**
 * Judges one two-wire DC run at the lowest supply voltage it will see.
 *
 * Out and back alike, or `out` and `back` on their own. DC, steady state; inrush and protective devices are not considered. A single supply figure, or
 * no limit to hold the result against, makes a pass `uncertain` and says which input would settle it.
 *
 * @param input - Supply voltage [V] or range, conductor (or `out` and `back`), length one way [m], temperature [°C], load,
 *   device limits.
 * @returns Loop resistance [Ω], operating points at the lowest and highest supply, checks and verdict.
 * @throws {@link InputError} If a number is outside its domain or the range is upside down.
 * @example A 6 W cue light on 60 m of 18 AWG, on a battery-backed 24 V supply
 * const cue = checkTwoWireRun({
 *   supplyVoltage: { low: 21, high: 27.6 }, conductor: awg(18), length: 60, load: { power: 6 }, minimumVoltage: 19,
 * });
 * [cue.resistance.toFixed(2), cue.verdict]; // => ['2.56', 'pass']
 */
export function checkTwoWireRun(input: TwoWireRunInput | UnequalTwoWireRunInput): TwoWireRun {
  requireTwoWire(input);
  const { length, temperature, load, minimumVoltage, permittedDrop } = input;
  const { marginalBelow = MARGINAL_BELOW } = input;
  const { low, high, single } = supplyRange(input.supplyVoltage);
  const joints = twoWireJoints(input);
  requireNonNegative(length, 'length', 'm');
  const resistance = twoWirePerMetre(legsAtMaximum(input), temperature) * length + joints;
  const atLowest = operatingPoint({ supplyVoltage: low, resistance, load });
  const atHighest = operatingPoint({ supplyVoltage: high, resistance, load });

  const checks: Check[] = [];
  for (const { limit, bound, unit, ohms, at, measure, arrives } of twoWireLimits(input, low, high)) {
    if ((arrives && !atLowest.feasible) || (limit === COLLAPSE && ohms === undefined)) continue;
    const point = (at === high && atHighest.feasible ? atHighest : atLowest) as FeasiblePoint;
    const inOhms = ohms === undefined ? arrives || undefined : resistance <= ohms;
    const check = held(limit, measure(point, resistance), bound, marginalBelow, limit === COLLAPSE ? atLowest.feasible : inOhms);
    check.unit = unit;
    // A line is judged by power alone, also where its current would warm a bundle.
    check.aspect = COLLAPSE.aspect;
    if (ohms !== undefined && ohms !== NO_LINE) check.loop = { limit: ohms, margin: ohms - resistance };
    checks.push(check);
  }

  const worst = worstVerdict(checks);
  const deciding = [
    ...(single ? [{ parameter: 'supplyVoltage' }] : []),
    ...(minimumVoltage === undefined && permittedDrop === undefined ? [{ parameter: 'minimumVoltage' }] : []),
  ];
  const verdict = worst === 'fail' || deciding.length === 0 ? worst : 'uncertain';
  const settled = verdict === 'uncertain' ? checks.map((check): Check => ({ ...check, verdict: 'uncertain', deciding })) : checks;
  return {
    resistance,
    meterReading: { nominal: twoWirePerMetre(legsOf(input), temperature) * length + joints, maximum: resistance },
    length: length + 0, // no -0
    atLowest,
    atHighest,
    checks: settled,
    verdict,
    ...(settled.length === 0 ? {} : { governing: governingCheck(settled) }),
    cautions: twoWireCautions(high, atHighest),
  };
}
