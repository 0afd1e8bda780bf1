/** One row of a schedule, judged alone. @module */
import { MARGINAL_BELOW } from '../limits/held.ts';
import type { CablingStandard } from '../plan/cabling-rules.ts';
import { requireObject, requireOneOf } from '../quantity/guards.ts';
import type { RunReport } from './report.ts';
import { poweredReport, twoWireReport } from './run-report.ts';
import type { ScheduledRun, ScheduledSwitch } from './schedule.ts';
import { sharedValues } from './shared-values.ts';

/** A run of a schedule, and how it is judged. */
export type CheckRowInput = ScheduledRun & {
  /** The switch that feeds it; the weakest type of port that may serve the class if absent. */
  readonly fedBy?: ScheduledSwitch | undefined;
  /** Whose cabling rules apply; `TIA-568` if absent. */
  readonly cabling?: CablingStandard | undefined;
  /** A margin under this fraction of the limit is marginal; 0.05 if absent. */
  readonly marginalBelow?: number | undefined;
};

/**
 * Judges one run of a schedule, and for one that fails finds the single changes that would put it right.
 *
 * A powered run is judged at the lowest voltage of its port, hot, with every cable at its maximum; a two-wire run at
 * the lowest voltage of its supply. The budget of the switch is another question: see {@link checkSchedule}.
 *
 * @param row - The run, as a schedule holds it, and the switch that feeds it.
 * @returns Loops [Ω], lengths [m], what arrives at the far end [V, W, A], checks, verdicts, remedies and notes.
 * @throws {@link InputError} If the run is not one of a schedule, a number in it is outside its domain, or the switch
 *   is not the one that the run names.
 * @example
 * const run = checkRow({
 *   kind: 'powered', run: 'CM-07', device: 'Camera, loading dock', switch: 'Stage rack', port: 7, priority: 'low',
 *   input: { poeClass: 4, installed: [{ cable: cable('cat6'), length: 94 }], connections: 2 },
 * });
 * [run.verdict.power, run.verdict.cabling, run.remedies.map(({ remedy, to }) => [remedy, to])];
 * // => ['pass', 'fail', [['shorter-run', 90], ['switch-between', 47]]]
 */
export function checkRow(row: CheckRowInput): RunReport {
  requireObject(row, 'row', 'a run of a schedule');
  requireOneOf(row.kind, ['powered', 'two-wire'], 'kind');
  requireObject(row.input, 'input', 'the facts of the run');
  const { cabling = 'TIA-568', marginalBelow = MARGINAL_BELOW, fedBy } = row;
  const settings = { cabling, marginalBelow };
  if (row.kind === 'two-wire') return twoWireReport(row, settings, sharedValues());
  return poweredReport(row, fedBy, settings, undefined, sharedValues());
}
