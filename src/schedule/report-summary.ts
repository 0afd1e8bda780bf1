/** A report in one line. @module */

import type { Report } from './report.ts';
import { oneLine } from './report-words.ts';
import { requireReport } from './require-report.ts';

/**
 * How many runs a report has, and what becomes of them, in one line.
 *
 * @param report - The report of `checkSchedule`.
 * @returns The line, without its end.
 * @throws {@link InputError} If it is no report.
 * @example
 * reportSummary(checkSchedule({ runs: [], switches: [] })); // => '0 runs'
 */
export function reportSummary(report: Report): string {
  requireReport(report);
  return oneLine(report);
}
