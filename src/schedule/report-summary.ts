/** A report in one line. @module */
import { requireObject } from '../quantity/guards.ts';
import type { Report } from './report.ts';
import { oneLine } from './report-words.ts';

/**
 * How many runs a report has, and what becomes of them, in one line.
 *
 * @param report - The report of `checkSchedule`.
 * @returns The line, without its end.
 * @throws {@link InputError} If the report is not an object.
 * @example
 * reportSummary(checkSchedule({ runs: [], switches: [] })); // => '0 runs'
 */
export function reportSummary(report: Report): string {
  requireObject(report, 'report', 'a report of checkSchedule');
  return oneLine(report);
}
