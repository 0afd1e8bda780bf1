/** A report as CSV: one line for every run, unrounded, safe to open in a spreadsheet. @module */
import { CSV_COLUMNS, WARM_CSV_COLUMNS } from './csv-columns.ts';
import { csvRow } from './csv-row.ts';
import type { Report } from './report.ts';
import { requireReport } from './require-report.ts';

/**
 * A report as CSV (RFC 4180): a header line, then one line for every run.
 *
 * For data, so nothing is rounded: numbers are written with a point, as the shortest text that reads back as the same
 * number. Every check has four columns: value, limit, margin and verdict; they are empty where the check does not
 * apply. Cells with a comma, a quote or a line end are quoted. A text that a spreadsheet would run as a formula (its
 * first character, after any blanks, is `=`, `+`, `-` or `@`, or it begins with a tab or a line end) gets an
 * apostrophe in front; numbers of this library, negative ones too, stay numbers. Line ends are `\r\n`; the text is
 * meant to be written as UTF-8, without a byte-order mark.
 *
 * @param report - The report of `checkSchedule`.
 * @returns The text of the file.
 * @throws {@link InputError} If it is no report.
 * @example
 * const report = checkSchedule({
 *   runs: [{ kind: 'two-wire', run: '=1+1', input: {
 *     supplyVoltage: { low: 21, high: 27.6 }, conductor: awg(18), length: 60, load: { power: 6 }, minimumVoltage: 19,
 *   } }],
 *   switches: [],
 * });
 * reportCsv(report).split('\r\n')[1]?.startsWith("'=1+1,,two-wire,"); // => true
 */
export function reportCsv(report: Report): string {
  requireReport(report);
  // Columns of bundles and measurements only where there are any, so that files without them stay as they were.
  const isWarm = report.runs.some(({ heat, measured }) => heat !== undefined || measured !== undefined);
  const columns = isWarm ? [...CSV_COLUMNS, ...WARM_CSV_COLUMNS] : CSV_COLUMNS;
  const lines = [csvRow(columns.flatMap(({ heads }) => heads))];
  for (const run of report.runs) lines.push(csvRow(columns.flatMap(({ cells }) => cells(run, report.settings.cabling))));
  return lines.join('');
}
