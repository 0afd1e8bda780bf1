/** Changes that put a failing two-wire run right, each computed and checked again. @module */
import { awg } from '../conductor/awg.ts';
import type { Conductor } from '../conductor/conductor.ts';
import { parallelConductors } from '../conductor/parallel-conductors.ts';
import { atMaximum } from '../conductor/to-maximum.ts';
import { largestOnGrid, smallestOnGrid } from './grid.ts';
import type { Remedy } from './remedy.ts';
import { supplyRange, type TwoWireRunInput, type UnequalTwoWireRunInput } from './two-wire-input.ts';
import { checkTwoWireRun } from './two-wire-run.ts';

/** What is at hand for a two-wire run. */
export interface TwoWireRemedyOptions {
  /** Conductors in the van; copper of 22 to 10 AWG, stranded as the present one, if absent. */
  readonly conductors?: readonly Conductor[] | undefined;
}

/** Gauges a van carries for two-wire runs. Common practice, no source. [AWG] */
const GAUGES: readonly number[] = [22, 20, 18, 16, 14, 12, 10];
/** A four-core cable has two for each way; more is seldom found. */
const MOST_CORES = 3;
/** Extra-low voltage ends here: no remedy leads above it. [V] */
const EXTRA_LOW = 60;

/**
 * Single changes, any one of which makes a failing two-wire run pass, least disturbance first.
 *
 * A thicker conductor, cores in parallel, a higher supply (only where the device states the voltage it bears, and never
 * above 60 V DC), or less length. Lengths are rounded down to 0.1 m, voltages up to 0.1 V. Each change was put into the
 * run and passed every check that the run is held against. Unequal conductors: supply and length only.
 *
 * @param input - The run, as for {@link checkTwoWireRun}.
 * @param options - The conductors at hand.
 * @returns The changes; none for a run that does not fail.
 * @throws {@link InputError} As {@link checkTwoWireRun}.
 * @example
 * const remedies = twoWireRemedies({
 *   supplyVoltage: { low: 21, high: 27.6 }, conductor: awg(22), length: 90, load: { power: 6 }, minimumVoltage: 19,
 * });
 * remedies.map(({ remedy, to }) => [remedy, to]); // => [['thicker-conductor', 20], ['paralleled-cores', 2], ['shorter-run', 58.6]]
 */
export function twoWireRemedies(input: TwoWireRunInput | UnequalTwoWireRunInput, options: TwoWireRemedyOptions = {}): Remedy[] {
  if (checkTwoWireRun(input).verdict !== 'fail') return [];
  const { conductor, length, maximumVoltage } = input;
  const found: Remedy[] = [];

  if (conductor !== undefined) {
    const offered = options.conductors ?? GAUGES.map((gauge) => awg(gauge, { stranding: conductor.stranding }));
    const ohms = (one: Conductor): number => atMaximum(one).resistancePerMetre;
    const thicker = offered.filter((one) => ohms(one) < ohms(conductor)).sort((a, b) => ohms(b) - ohms(a));
    const enough = thicker.find((one) => judge({ conductor: one }) !== undefined);
    if (enough !== undefined) {
      attempt({ conductor: enough }, 'thicker-conductor', gaugeOf(conductor), gaugeOf(enough), 'AWG', enough.name);
    }
    for (let cores = 2; cores <= MOST_CORES; cores++) {
      const joined = parallelConductors(Array.from({ length: cores }, () => conductor));
      if (attempt({ conductor: joined }, 'paralleled-cores', 1, cores, 'cores')) break;
    }
  }
  if (maximumVoltage !== undefined) {
    const { low, high } = supplyRange(input.supplyVoltage);
    const raised = (by: number): Partial<TwoWireRunInput> => ({ supplyVoltage: { low: low + by, high: high + by } });
    const most = Math.min(maximumVoltage, EXTRA_LOW) - high;
    const by = most > 0 ? smallestOnGrid(most, 10, (volts) => judge(raised(volts)) !== undefined) : undefined;
    if (by !== undefined) attempt(raised(by), 'higher-supply', low, low + by, 'V');
  }
  const to = largestOnGrid(length, 10, (shorter) => judge({ length: shorter }) !== undefined);
  if (to > 0) attempt({ length: to }, 'shorter-run', length, to, 'm');
  return found;

  function judge(change: Partial<TwoWireRunInput>): Remedy['verdict'] | undefined {
    const { verdict } = checkTwoWireRun({ ...input, ...change } as TwoWireRunInput);
    return verdict === 'fail' ? undefined : { power: verdict, cabling: 'pass' };
  }

  function attempt(
    change: Partial<TwoWireRunInput>,
    remedy: Remedy['remedy'],
    from: number,
    to: number,
    unit: Remedy['unit'],
    use?: string,
  ): boolean {
    const verdict = judge(change);
    if (verdict !== undefined) found.push({ remedy, from, to, unit, ...(use === undefined ? {} : { use }), verdict });
    return verdict !== undefined;
  }
}

/** The whole gauge nearest to a conductor's diameter (ASTM B258): by its resistance where that is all that is known. [AWG] */
function gaugeOf({ diameter }: Conductor): number {
  return Math.round(36 - 39 * (Math.log(diameter / 0.127) / Math.log(92)));
}
