/** From the tables of runs and switches to a schedule. @module */
import type { Columns } from '../columns/column.ts';
import { RUN_COLUMNS } from '../columns/run-columns.ts';
import { SWITCH_COLUMNS } from '../columns/switch-columns.ts';
import type { Finding } from '../finding.ts';
import type { Schedule } from '../schedule.ts';
import { type FindingList, findingList } from './findings.ts';
import { rowsToRuns } from './rows-to-runs.ts';
import { rowsToSwitches } from './rows-to-switches.ts';
import type { Table } from './table.ts';

/** A schedule that was read, and everything that was wrong, doubtful or assumed about it. */
export interface ParsedSchedule {
  readonly schedule: Schedule;
  /** In the order of the rows: those of the runs, then those of the switches. */
  readonly findings: readonly Finding[];
}

/** Names of the files, for findings. */
export interface ReadFiles {
  readonly runs: string;
  readonly switches: string;
}

/** Reads both tables; runs are looked up among the switches, if there are any. @internal */
export function readSchedule(
  tableOf: <C extends Columns<C>>(file: keyof ReadFiles, columns: C, findings: FindingList) => Table<C> | undefined,
  names: ReadFiles,
): ParsedSchedule {
  const runFindings = findingList(names.runs);
  const switchFindings = findingList(names.switches);
  const switchTable = tableOf('switches', SWITCH_COLUMNS, switchFindings);
  const fed = switchTable === undefined ? undefined : rowsToSwitches(switchTable, switchFindings);
  const runTable = tableOf('runs', RUN_COLUMNS, runFindings);
  const runs = runTable === undefined ? [] : rowsToRuns(runTable, fed?.list, runFindings);
  return { schedule: { runs, switches: fed?.switches ?? [] }, findings: runFindings.all.concat(switchFindings.all) };
}
