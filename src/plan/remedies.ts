/** Changes that put a failing run right, each computed and checked again. @module */
import type { Cable } from '../cable/cable.ts';
import { type CableOrName, readCable } from '../cable/read-cable.ts';
import type { Conductor } from '../conductor/conductor.ts';
import { requireConductor } from '../conductor/resistance-per-metre.ts';
import { worse } from '../limits/verdict.ts';
import { type Fields, readInput } from '../quantity/fields.ts';
import type { JudgedRun, RunVerdict } from './judged-run.ts';
import { openRun } from './open-run.ts';
import { combinedSteps, poweredChanges } from './powered-changes.ts';
import type { PoweredRunInput } from './powered-input.ts';
import { judgePoweredRun } from './powered-run.ts';
import type { Change, Remedy, Step } from './remedy.ts';
import { twoWireChanges } from './two-wire-changes.ts';
import type { TwoWireRunInput, UnequalTwoWireRunInput } from './two-wire-input.ts';
import { judgeTwoWireRun } from './two-wire-run.ts';

/** What is at hand. */
export interface RemedyOptions {
  /** Cables in the van that may replace the installed one; Category 6 if absent, which helps where a cord was installed. */
  readonly cables?: readonly CableOrName[] | undefined;
  /** Conductors in the van for a two-wire run; copper of 22 to 10 AWG, stranded as the present one, if absent. */
  readonly conductors?: readonly Conductor[] | undefined;
}

/** @internal */
export const REMEDY_OPTIONS_FIELDS: Fields<RemedyOptions, never, { cables: readonly Cable[] }> = {
  cables: { list: { read: (one: CableOrName, path: string) => readCable(one, path) }, optional: true },
  conductors: { list: { check: (one: Conductor, path: string) => requireConductor(one, path) }, optional: true },
};

/**
 * Changes, any one of which makes a failing run pass, least disturbance first.
 *
 * Single changes; where none is enough for a powered run, one combination (`also`) of what is plainly wrong and as much
 * less length as it takes.
 *
 * Only what a person can carry out. A powered device fixes its class, so a port of a higher type, never a higher class;
 * four pairs only where the port can (whether the device can is for its data sheet); never a voltage above the port's
 * type. A two-wire run: a thicker conductor, cores in parallel, a higher supply (only where the device states the voltage
 * it bears, and never above 60 V DC), or less length; of unequal conductors supply and length only. Lengths are rounded
 * down to 0.1 m, temperatures to 1 °C, voltages up to 0.1 V, and hold wherever along the run the metres are saved. Each
 * change was put into the run and passed every check that the run is held against; `uncertain` verdicts are left as they are.
 *
 * @param run - The run, as for {@link checkPoweredRun} or {@link checkTwoWireRun}.
 * @param options - The cables and conductors at hand.
 * @returns The changes; none for a run that does not fail, or that nothing of the kind puts right.
 * @throws {@link InputError} As the check of that run.
 * @example A class 4 camera on 90 m of warm cable with thin cords: too long for a signal
 * const camera = remedies({
 *   installed: [{ cable: 'cat5e', length: 80, temperature: 40 }], cords: [{ cable: 'cord-28', length: 10 }], connections: 4, poeClass: 4,
 * });
 * camera.map(({ remedy, to }) => [remedy, to]); // => [['thicker-cords', 24], ['shorter-cords', 8], ['cooler-route', 27], ['shorter-run', 76.3], ['switch-between', 40]]
 * @example
 * const cue = remedies({
 *   supplyVoltage: { low: 21, high: 27.6 }, conductor: awg(22), length: 90, load: { power: 6 }, minimumVoltage: 19,
 * });
 * cue.map(({ remedy, to }) => [remedy, to]); // => [['thicker-conductor', 20], ['paralleled-cores', 2], ['shorter-run', 58.6]]
 */
export function remedies(run: PoweredRunInput | TwoWireRunInput | UnequalTwoWireRunInput, options: RemedyOptions = {}): Remedy[] {
  const { cables, conductors } = readInput(REMEDY_OPTIONS_FIELDS, options, 'options');
  const open = openRun(run, {});
  if (open.kind === 'two-wire')
    return remediesOf(
      open.run,
      judgeTwoWireRun,
      (facts) => twoWireChanges(facts, conductors),
      () => [],
    );
  return remediesOf(open.run, judgePoweredRun, (facts, before) => poweredChanges(facts, before, cables), combinedSteps);
}

/** The remedies of a run that is read already, by what may be changed about it. */
function remediesOf<Run extends object, Judged extends JudgedRun>(
  run: Run,
  judge: (run: Run) => Judged,
  changesOf: (run: Run, before: Judged) => readonly Change<Run>[],
  stepsOf: (run: Run, before: Judged, passes: (change: Partial<Run>) => boolean) => readonly Step<Run>[],
): Remedy[] {
  const before = judge(run);
  if (before.verdict.worst !== 'fail') return [];
  const found: Remedy[] = [];
  for (const { remedy, from, unit, find, put, told, use } of changesOf(run, before)) {
    const value = find((one) => verdictWith(put(one)) !== undefined);
    const verdict = value === undefined ? undefined : verdictWith(put(value));
    if (value === undefined || verdict === undefined) continue;
    found.push({ remedy, from, to: told?.(value) ?? value, unit, ...(use === undefined ? {} : { use: use(value) }), verdict });
  }
  if (found.length > 0) return found;
  const steps = stepsOf(run, before, (change) => verdictWith(change) !== undefined);
  const [first, ...also] = steps.map(({ change: _, ...step }) => step);
  const verdict = first === undefined ? undefined : verdictWith(Object.assign({}, ...steps.map(({ change }) => change)));
  return first === undefined || verdict === undefined ? [] : [{ ...first, also, verdict }];

  /** The verdict of the changed run, or the worse of several in its place; nothing where one fails. */
  function verdictWith(put: Partial<Run> | readonly Partial<Run>[]): RunVerdict | undefined {
    const verdicts: RunVerdict[] = [];
    for (const change of Array.isArray(put) ? put : [put]) {
      const { verdict } = judge({ ...run, ...change });
      if (verdict.worst === 'fail') return undefined;
      verdicts.push(verdict);
    }
    return verdicts.reduce(worseOf);
  }
}

function worseOf(one: RunVerdict, other: RunVerdict): RunVerdict {
  const [power, worst] = [worse(one.power, other.power), worse(one.worst, other.worst)];
  if (one.cabling === undefined || other.cabling === undefined) return { power, worst };
  return { power, cabling: worse(one.cabling, other.cabling), worst };
}
