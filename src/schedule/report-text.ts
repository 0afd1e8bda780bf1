/** A report for a terminal: what fails first, one line for every run, figures where there is something to see. @module */

import { pageText, TERMINAL_WIDTH } from '../pages/page-text.ts';
import { requireInteger, requireObject } from '../quantity/guards.ts';
import { refuseUnknown } from '../quantity/nearest.ts';
import type { Report } from './report.ts';
import { reportPage } from './report-page.ts';
import { requireFlag, requireReport } from './require-report.ts';

/** How a text report looks. */
export interface ReportTextOptions {
  /** Columns of the terminal, 72 to 400; 80 if absent. */
  readonly width?: number | undefined;
  /** Whether verdicts and headings are coloured as well; off if absent. Never the only signal. */
  readonly colour?: boolean | undefined;
  /** Whether the figures of every run are shown, those of plain passes too; off if absent. */
  readonly full?: boolean | undefined;
}

/**
 * A report as text for a terminal.
 *
 * In this order: how many runs pass and fail; what fails, why, and what puts it right; what is uncertain; one line for
 * every run; all figures of the runs that do not plainly pass; switches; totals; what was taken for granted; what is
 * wrong in the files; sources; cautions. Rounded for reading. Characters that a terminal would obey are left out.
 *
 * @param report - The report of `checkSchedule`.
 * @param options - Width in columns, colour, figures of every run.
 * @returns Lines that end in `\n`, none wider than `width` (a name that is too long for its column is cut).
 * @throws {@link InputError} If it is no report, or the width is not a whole number from 72 to 400.
 * @example
 * const report = checkSchedule({
 *   runs: [{ kind: 'two-wire', run: 'CL-01', input: {
 *     supplyVoltage: { low: 21, high: 27.6 }, conductor: awg(18), length: 60, load: { power: 6 }, minimumVoltage: 19,
 *   } }],
 *   switches: [],
 * });
 * reportText(report).split('\n')[2]; // => '1 run: 1 pass'
 */
export function reportText(report: Report, options: ReportTextOptions = {}): string {
  requireReport(report);
  requireObject(options, 'options', 'an object with width, colour and full');
  refuseUnknown(options, ['width', 'colour', 'full'], 'options');
  const { width = TERMINAL_WIDTH, colour = false, full = false } = options;
  requireInteger(width, 72, 400, 'options.width');
  requireFlag(full, 'options.full');
  return pageText(reportPage({ report, full, width }, 'lines'), { width, colour });
}
