/** A report as Markdown: the same words as on a terminal, in tables. @module */

import { pageMarkdown } from '../pages/page-markdown.ts';
import { TERMINAL_WIDTH } from '../pages/page-text.ts';
import { requireObject } from '../quantity/guards.ts';
import { refuseUnknown } from '../quantity/nearest.ts';
import type { Report } from './report.ts';
import { reportPage } from './report-page.ts';
import { requireFlag, requireReport } from './require-report.ts';

/** What a Markdown report holds. */
export interface ReportMarkdownOptions {
  /** Whether the checks of every run are shown, those of plain passes too; off if absent. */
  readonly full?: boolean | undefined;
}

/**
 * A report as Markdown (CommonMark with the tables of GFM).
 *
 * Sections in the order of the text report; loops, currents and the governing check of every run, all checks of the
 * runs that do not plainly pass. Rounded for reading. Names from the files are escaped: pipes, backticks, HTML,
 * emphasis and links in them stay text.
 *
 * @param report - The report of `checkSchedule`.
 * @param options - Checks of every run.
 * @returns Markdown with `\n` line ends.
 * @throws {@link InputError} If it is no report.
 * @example
 * const report = checkSchedule({
 *   runs: [{ kind: 'two-wire', run: 'CL|01', input: {
 *     supplyVoltage: { low: 21, high: 27.6 }, conductor: awg(18), length: 60, load: { power: 6 }, minimumVoltage: 19,
 *   } }],
 *   switches: [],
 * });
 * reportMarkdown(report).includes('| CL\\|01 |'); // => true
 */
export function reportMarkdown(report: Report, options: ReportMarkdownOptions = {}): string {
  requireReport(report);
  requireObject(options, 'options', 'an object with full');
  refuseUnknown(options, ['full'], 'options');
  const { full = false } = options;
  requireFlag(full, 'options.full');
  return pageMarkdown(reportPage({ report, full, width: TERMINAL_WIDTH }, 'tables'));
}
