/** From the text of a schedule's files to the schedule. @module */

import { requireObject } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import { refuseUnknown } from '../quantity/nearest.ts';
import type { Columns } from './columns/column.ts';
import type { FindingList } from './read/findings.ts';
import { type ParsedSchedule, type ReadFiles, readSchedule } from './read/read-schedule.ts';
import { type Table, tableFromText } from './read/table.ts';

/** The files of a schedule: their text or their bytes, and how findings shall call them. */
export interface ParseScheduleInput {
  /** The runs, as delimited text. */
  readonly runs: string | Uint8Array;
  /** The switches that feed them, as delimited text. */
  readonly switches?: string | Uint8Array | undefined;
  /** Name of the file of runs; `runs` if absent. */
  readonly runsFile?: string | undefined;
  /** Name of the file of switches; `switches` if absent. */
  readonly switchesFile?: string | undefined;
}

/**
 * Reads the files of a cable schedule.
 *
 * Delimited text in UTF-8; the delimiter is `,`, `;` or a tab, as the header line has it; columns in any order; cells
 * with or without units (a bare number is in m, W, V, Ω or °C, or in the unit that the header names in brackets). Bad
 * data never throws: a bad cell becomes a finding with its line and column and costs only what depends on it, an
 * unclosed quote costs its own row, and every default that was applied is a finding of severity `note`.
 *
 * @param input - Text or bytes of the runs and of the switches, and the names of the files.
 * @returns Every run and switch that could be read, and the findings. Lengths [m], temperatures [°C], powers [W],
 *   voltages [V], resistances [Ω].
 * @throws {@link InputError} If what is handed over is neither text nor bytes.
 * @example A good row, and one whose length is no length
 * const { schedule, findings } = parseSchedule({
 *   runs: 'Run,Switch,Port,PoE class,Cable,Length\nHP-01,Foyer,1,3,cat6,212 ft\nHP-02,Foyer,2,3,cat6,far\n',
 * });
 * const [wrong] = findings.filter(({ severity }) => severity === 'error');
 * [schedule.runs.map(({ run }) => run), wrong?.line, wrong?.column, wrong?.received]; // => [['HP-01'], 3, 'Length', 'far']
 */
export function parseSchedule(input: ParseScheduleInput): ParsedSchedule {
  requireObject(input, 'input', 'an object with runs and switches');
  refuseUnknown(input, ['runs', 'switches', 'runsFile', 'switchesFile'], '');
  const { runs, switches, runsFile = 'runs', switchesFile = 'switches' } = input;
  requireText(runs, 'runs');
  if (switches !== undefined) requireText(switches, 'switches');
  requireName(runsFile, 'runsFile');
  requireName(switchesFile, 'switchesFile');

  const table = <C extends Columns<C>>(file: keyof ReadFiles, columns: C, findings: FindingList): Table<C> | undefined => {
    const content = input[file];
    return content === undefined ? undefined : tableFromText(content, columns, findings);
  };
  return readSchedule(table, { runs: runsFile, switches: switchesFile });
}

function requireText(value: unknown, parameter: string): void {
  // By tag, not by class: bytes from another realm are bytes.
  if (typeof value === 'string' || Object.prototype.toString.call(value) === '[object Uint8Array]') return;
  throw new InputError(value === undefined ? 'missing' : 'type', parameter, 'the text of a file, or its bytes as a Uint8Array', value);
}

function requireName(value: unknown, parameter: string): void {
  if (typeof value !== 'string') throw new InputError('type', parameter, 'the name of a file', value);
}
