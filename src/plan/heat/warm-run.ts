/** A run to a powered device in a bundle that warms it: current, heat, resistance and current again, solved together. @module */
import { BUNDLE_RISE_FIELDS, type Installation } from '../../cable/heat/bundle-rise.ts';
import { CONDUCTOR_TEMPERATURE } from '../../conductor/resistance-per-metre.ts';
import type { Check } from '../../limits/check.ts';
import { type Verdict, worse, worstVerdict } from '../../limits/verdict.ts';
import { type Fields, readInput } from '../../quantity/fields.ts';
import type { Celsius, Kelvins, Millimetres } from '../../quantity/units.ts';
import { type LookedUp, POWERED_RUN_FIELDS, type PoweredFilled, type PoweredRunInput } from '../powered-input.ts';
import { judgePoweredRun, type PoweredRun, poweredAssumptions } from '../powered-run.ts';
import { BUNDLE_LIMIT_FIELDS, type BundleLimits, type CheckedBundle, checkBundle } from './check-bundle.ts';

/** A run whose installed cable lies in a bundle of its like. The temperatures of its pieces are those of the air. */
export interface WarmRunInput extends PoweredRunInput, BundleLimits {
  /** Cables in the bundle, every one loaded as this one; a whole number. */
  readonly bundle: number;
  readonly installation: Installation;
  /** Over the sheath of one cable; the cable's own if absent. [mm] */
  readonly outsideDiameter?: Millimetres | undefined;
}

type Filled = PoweredFilled | 'temperatureRating' | 'recommendedRise';

/** The bundle itself is read piece by piece. @internal */
export const WARM_RUN_FIELDS: Fields<WarmRunInput, Filled, LookedUp> = /* @__PURE__ */ (() => ({
  ...POWERED_RUN_FIELDS,
  ...BUNDLE_LIMIT_FIELDS,
  bundle: BUNDLE_RISE_FIELDS.bundle,
  installation: { check: () => undefined, type: 'Installation' },
  outsideDiameter: BUNDLE_RISE_FIELDS.outsideDiameter,
}))();

/** One installed piece in its bundle. */
export interface WarmPiece {
  /** [°C] */
  readonly ambient: Celsius;
  /** [K] */
  readonly rise: Kelvins;
  /** Of the conductors, as used for its resistance. [°C] */
  readonly temperature: Celsius;
  readonly bundle: CheckedBundle;
}

/** A run that settles, or why it does not. */
export type WarmRun =
  | {
      readonly feasible: true;
      /** As warm as it gets. */
      readonly run: PoweredRun;
      readonly pieces: readonly WarmPiece[];
      /** Heat: rating, recommended rise and ampacity of every piece. Power and cabling are judged in `run`. */
      readonly checks: readonly Check[];
      /** Of heat. */
      readonly verdict: Verdict;
    }
  | {
      readonly feasible: false;
      /** `collapse`: warm, the line cannot carry the device. The others as for a bundle. */
      readonly reason: 'collapse' | 'no-steady-state' | 'wound-drum';
      /** As warm as it was when that showed; a piece without a figure for its heat at its ambient. */
      readonly run: PoweredRun;
      readonly verdict: 'fail' | 'uncertain';
    };

/** Finer than any thermometer, far above the rounding of a temperature. [K] */
const STILL: Kelvins = 1e-9;
/** A loop that gains less than 0.9 a turn is still after 200; what gains more is close to having no steady state at all. */
const TURNS = 400;

/**
 * Judges a run to a powered device with its cable as warm as its bundle makes it.
 *
 * A device draws constant power, so warm copper means more current, and that more heat: both are solved together, from the
 * cool side, to the lowest temperature at which the heat of the bundle is shed. The current is that of the device on this
 * run at the highest resistance of its cable; all cables of the bundle are taken to be like it. Within 1e-9 K; a loop so
 * near to running away that it has not settled after 400 turns is called `no-steady-state`. Cords lie in the open and keep
 * their temperature. For limits and errors of the model see {@link checkBundle}; its cautions hold here too.
 *
 * @param input - The run as for {@link checkPoweredRun}, its installed pieces at the temperature of the air [°C]; the bundle.
 * @returns The run when warm, rise [K] and temperature [°C] of each installed piece, the checks of heat, and their verdict.
 * @throws {@link InputError} As {@link checkPoweredRun} and {@link checkBundle}.
 * @example 80 m of Category 6 to a class 8 device, 61 cables in a ceiling at 40 °C
 * const warm = warmRun({
 *   installed: [{ cable: cable('cat6'), length: 80, temperature: 40 }], poeClass: 8, bundle: 61, installation: 'open-air',
 * });
 * warm.feasible && [warm.pieces[0]?.rise.toFixed(1), warm.run.verdict.power, warm.verdict]; // => ['6.1', 'pass', 'pass']
 */
export function warmRun(input: WarmRunInput): WarmRun {
  const facts = readInput(WARM_RUN_FIELDS, input);
  const { installed, bundle, installation, outsideDiameter } = facts;
  // As they were given: what was left out is an assumption of each bundle.
  const { temperatureRating, recommendedRise, code } = input;
  const ambients = installed.map(({ temperature = CONDUCTOR_TEMPERATURE.default }) => temperature);
  const cool = judgePoweredRun(facts);
  const assumptions = poweredAssumptions(input, cool);
  let run: PoweredRun = { ...cool, assumptions };
  const energisedPairs = run.classLimits.pairs;
  let rises: Kelvins[] = installed.map(() => 0);

  for (let turn = 0; turn < TURNS; turn++) {
    const pairCurrent = run.pairsetCurrent;
    if (pairCurrent === undefined) return { feasible: false, reason: 'collapse', run, verdict: 'fail' };
    const loaded = { bundle, pairCurrent, energisedPairs, installation, outsideDiameter, temperatureRating, recommendedRise, code };
    const judged = installed.map(({ cable }, index) => checkBundle({ cable, ambient: ambients[index], ...loaded }));
    const next: Kelvins[] = [];
    for (const { rise } of judged) {
      if (!rise.feasible) {
        return { feasible: false, reason: rise.reason, run, verdict: rise.reason === 'wound-drum' ? 'uncertain' : 'fail' };
      }
      next.push(rise.rise);
    }
    if (next.every((rise, index) => Math.abs(rise - (rises[index] as Kelvins)) <= STILL)) {
      const checks = judged.flatMap((one) => one.checks);
      return {
        feasible: true,
        run,
        pieces: judged.map((one, index) => {
          const [ambient, rise] = [ambients[index] as Celsius, rises[index] as Kelvins];
          return { ambient, rise, temperature: ambient + rise, bundle: one };
        }),
        checks,
        verdict: judged.reduce<Verdict>((worst, { verdict }) => worse(worst, verdict), worstVerdict(checks)),
      };
    }
    rises = next;
    const warm = installed.map((piece, index) => ({ ...piece, temperature: (ambients[index] as Celsius) + (rises[index] as Kelvins) }));
    run = { ...judgePoweredRun({ ...facts, installed: warm }), assumptions };
  }
  return { feasible: false, reason: 'no-steady-state', run, verdict: 'fail' };
}
