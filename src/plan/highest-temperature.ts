/** How hot: the highest conductor temperature at which a run still holds. @module */
import { COLDEST, HOTTEST } from '../quantity/guards.ts';
import type { Celsius } from '../quantity/units.ts';
import { openRun } from './open-run.ts';
import type { PoweredRunInput } from './powered-input.ts';
import { type Answered, answered, solveUnknown } from './solve-unknown.ts';
import type { TwoWireRunInput, UnequalTwoWireRunInput } from './two-wire-input.ts';

/** Rules for warm cable speak from 20 °C up to the 60 °C that cabling is for. [°C] */
const WARM_RULES: readonly Celsius[] = [20, 60];

/** The highest temperature, or that none up to 400 °C is too hot, or that none is cool enough. */
export type HighestTemperature = Answered<{
  /** [°C] */
  readonly temperature: Celsius;
}>;

/**
 * The highest conductor temperature at which no check of a run fails, and the one that each limit alone would allow.
 *
 * All installed cable is taken at one temperature (cords keep theirs). Electrical and cabling limits only: the
 * temperature rating of the cable's insulation is for its data sheet, and is usually met first (60 °C is common practice).
 *
 * @param input - The run, as for {@link checkPoweredRun} or {@link checkTwoWireRun}; its installed temperatures are not read.
 * @returns The temperature [°C] from -100 to 400 with the limit that governs; or `unbounded`; or the shortfall.
 * @throws {@link InputError} As the check of that run.
 * @example 150 m of 18 AWG to a 10 W cue light that needs 17 V
 * const hottest = highestTemperature({
 *   supplyVoltage: { low: 21, high: 27.6 }, conductor: awg(18), length: 150, load: { power: 10 }, minimumVoltage: 17,
 * });
 * hottest.feasible && !hottest.unbounded && hottest.temperature.toFixed(1); // => '35.5'
 */
export function highestTemperature(input: PoweredRunInput | TwoWireRunInput | UnequalTwoWireRunInput): HighestTemperature {
  const open = openRun(input, {});
  const solved = solveUnknown(
    COLDEST,
    HOTTEST,
    (temperature) =>
      open.kind === 'powered'
        ? open.checksWith({ installed: open.run.installed.map((piece) => ({ ...piece, temperature })) })
        : open.checksWith({ temperature }),
    WARM_RULES,
  );
  return answered(solved, (temperature) => ({ temperature }));
}
