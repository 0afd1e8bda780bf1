/** From rows of plain data to a schedule. @module */

import { requireArray, requireObject } from '../quantity/guards.ts';
import { refuseUnknown } from '../quantity/nearest.ts';
import type { Columns } from './columns/column.ts';
import type { FindingList } from './read/findings.ts';
import { type ParsedSchedule, type ReadFiles, readSchedule } from './read/read-schedule.ts';
import { type Table, tableFromRecords } from './read/table.ts';

/** The rows of a schedule as data: records keyed by the names of the columns. */
export interface ScheduleFromRowsInput {
  readonly runs: readonly unknown[];
  readonly switches?: readonly unknown[] | undefined;
}

/**
 * Makes a schedule of rows that a spreadsheet library, a database or a form delivers.
 *
 * Each row is a record keyed by the names that the columns have in a file, in any spelling that a file may use. Cells
 * are texts or numbers: a number, as a bare number in a file, is in m, W, V, Ω or °C. Findings name the row, from 1,
 * as their line. Bad data never throws.
 *
 * @param input - Rows of runs and of switches.
 * @returns Every run and switch that could be read, and the findings. Lengths [m], temperatures [°C], powers [W],
 *   voltages [V], resistances [Ω].
 * @throws {@link InputError} If `runs` or `switches` is not a list.
 * @example
 * const { schedule } = scheduleFromRows({
 *   runs: [{ run: 'CL-01', cable: '18 AWG', length: 26, supply: '21 V to 27.6 V', load: '6 W' }],
 * });
 * schedule.runs.map(({ run, kind }) => [run, kind]); // => [['CL-01', 'two-wire']]
 */
export function scheduleFromRows(input: ScheduleFromRowsInput): ParsedSchedule {
  requireObject(input, 'input', 'an object with runs and switches');
  refuseUnknown(input, ['runs', 'switches'], '');
  const { runs, switches } = input;
  requireArray(runs, 'runs', 'a list of records keyed by column names');
  if (switches !== undefined) requireArray(switches, 'switches', 'a list of records keyed by column names');

  const table = <C extends Columns<C>>(file: keyof ReadFiles, columns: C, findings: FindingList): Table<C> | undefined => {
    const rows = input[file];
    return rows === undefined ? undefined : tableFromRecords(rows, columns, findings);
  };
  return readSchedule(table, { runs: 'runs', switches: 'switches' });
}
