/** One two-wire DC run, judged: does enough voltage reach the device at every supply voltage it will see. @module */
import { type FeasiblePoint, type OperatingPoint, operatingPoint } from '../circuit/operating-point.ts';
import { legsOf, twoWirePerMetre } from '../circuit/voltage-drop.ts';
import { COLLAPSE } from '../limits/all.ts';
import type { Check, Draft } from '../limits/check.ts';
import { held, heldInOhms, MARGINAL_BELOW } from '../limits/held.ts';
import { assumptionsOf, readInput } from '../quantity/fields.ts';
import { requireNonNegative } from '../quantity/guards.ts';
import type { Metres, Ohms } from '../quantity/units.ts';
import { cautionsOf } from './cautions.ts';
import { type Doubt, type JudgedRun, judgement } from './judged-run.ts';
import {
  legsAtMaximum,
  requireTwoWire,
  supplyRange,
  TWO_WIRE_RUN_FIELDS,
  type TwoWireRunInput,
  twoWireJoints,
  type UnequalTwoWireRunInput,
} from './two-wire-input.ts';
import { twoWireLimits } from './two-wire-limits.ts';

/** A two-wire run, judged. */
export interface TwoWireRun extends JudgedRun {
  readonly kind: 'two-wire';
  /** At the lowest supply voltage. */
  readonly operating: OperatingPoint;
  /** At the highest supply voltage. */
  readonly atHighest: OperatingPoint;
  /** Out and back, conductors at their maximum, at the stated temperature. [Ω] */
  readonly resistance: Ohms;
  /** What a meter should show with the far end shorted: the conductor as given, and its maximum. [Ω] */
  readonly meterReading: { readonly nominal: Ohms; readonly maximum: Ohms };
  /** [m] */
  readonly length: Metres;
}

/**
 * Judges one two-wire DC run at the lowest supply voltage it will see.
 *
 * Out and back alike, or `out` and `back` on their own. DC, steady state; inrush and protective devices are not considered. A single supply figure, or
 * no limit to hold the result against, makes a pass `uncertain` and says which input would settle it.
 *
 * @param input - Supply voltage [V] or range, conductor (or `out` and `back`), length one way [m], temperature [°C], load,
 *   device limits.
 * @returns Verdict and checks, loop resistance [Ω], operating points at the lowest and highest supply, cautions, and what was assumed.
 * @throws {@link InputError} If a key is not known, a number is outside its domain or the range is upside down.
 * @example A 6 W cue light on 60 m of 18 AWG, on a battery-backed 24 V supply
 * const cue = checkTwoWireRun({
 *   supplyVoltage: { low: 21, high: 27.6 }, conductor: awg(18), length: 60, load: { power: 6 }, minimumVoltage: 19,
 * });
 * [cue.resistance.toFixed(2), cue.verdict.power]; // => ['2.56', 'pass']
 */
export function checkTwoWireRun(input: TwoWireRunInput | UnequalTwoWireRunInput): TwoWireRun {
  const run = judgeTwoWireRun(readInput(TWO_WIRE_RUN_FIELDS, input) as TwoWireRunInput);
  return { ...run, assumptions: assumptionsOf(TWO_WIRE_RUN_FIELDS, input) };
}

/** Judges a run; what was assumed is left to the caller. @internal */
export function judgeTwoWireRun(input: TwoWireRunInput | UnequalTwoWireRunInput): TwoWireRun {
  requireTwoWire(input);
  const { length, temperature, load, minimumVoltage, permittedDrop, label, marginalBelow = MARGINAL_BELOW } = input;
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
    const value = measure(point, resistance);
    const isMet = limit === COLLAPSE ? atLowest.feasible : undefined;
    // Where ohms play no part in what is no matter of arrival, the figures themselves are compared.
    const check =
      ohms === undefined && !arrives
        ? held(limit, value, bound, marginalBelow)
        : heldInOhms(limit, value, bound, marginalBelow, ohms, resistance, isMet);
    check.unit = unit;
    // A line is judged by power alone, also where its current would warm a bundle.
    check.aspect = COLLAPSE.aspect;
    checks.push(check);
  }

  const doubts: Doubt[] = [];
  if (single) doubts.push({ code: 'one-figure', parameter: 'supplyVoltage', aspect: 'power' });
  if (minimumVoltage === undefined && permittedDrop === undefined) {
    doubts.push({ code: 'not-stated', parameter: 'minimumVoltage', aspect: 'power' });
  }
  const deciding = doubts.map(({ parameter }) => ({ parameter }));
  // A doubt about the supply bears on every check of it; one that fails anyway settles the matter.
  const isOpen = doubts.length > 0 && checks.every(({ verdict }) => verdict !== 'fail');
  const shown = isOpen ? checks.map((check): Check => ({ ...check, verdict: 'uncertain', deciding })) : checks;
  const run: Draft<TwoWireRun> = {
    kind: 'two-wire',
    ...judgement(shown, doubts, false),
    checks: shown,
    operating: atLowest,
    atHighest,
    resistance,
    meterReading: { nominal: twoWirePerMetre(legsOf(input), temperature) * length + joints, maximum: resistance },
    length: length + 0, // no -0
    assumptions: [],
    cautions: cautionsOf(high, [atLowest, atHighest]),
    doubts,
  };
  if (label !== undefined) run.label = label;
  return run;
}
