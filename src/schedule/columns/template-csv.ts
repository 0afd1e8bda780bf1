/** A blank file to fill in. @module */

import { requireObject, requireOneOf } from '../../quantity/guards.ts';
import { refuseUnknown } from '../../quantity/nearest.ts';
import { csvRow } from '../csv-row.ts';
import type { Column } from './column.ts';
import { RUN_COLUMNS } from './run-columns.ts';
import { SWITCH_COLUMNS } from './switch-columns.ts';

const FILES = { runs: RUN_COLUMNS, switches: SWITCH_COLUMNS };

/** Which file a template is for. */
export interface TemplateCsvInput {
  /** The runs, or the switches that feed them. */
  readonly file: 'runs' | 'switches';
}

/**
 * A file with the title of every column and no row, to be filled in with a spreadsheet.
 *
 * @param input - Which file.
 * @returns The text of a CSV file (RFC 4180), with `\r\n` line ends.
 * @throws {@link InputError} If there is no such file.
 * @example
 * templateCsv({ file: 'switches' }); // => 'Switch,Type,Ports,Budget,Supplies,System load,Minimum output voltage\r\n'
 */
export function templateCsv(input: TemplateCsvInput): string {
  requireObject(input, 'input', 'an object with file');
  refuseUnknown(input, ['file'], '');
  requireOneOf(input.file, Object.keys(FILES), 'file');
  const columns: readonly Column<unknown>[] = Object.values(FILES[input.file]);
  return csvRow(columns.map(({ title }) => title));
}
