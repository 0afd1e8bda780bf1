/** A guard for what the formats are given. @module */
import { requireArray, requireObject } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Report } from './report.ts';

const REPORT = 'a report of checkSchedule';

/** Requires what every format reads of a report; what lies deeper is taken on trust. @internal */
export function requireReport(report: Report): void {
  requireObject(report, 'report', REPORT);
  const { file } = report as { readonly file?: unknown };
  if (typeof file !== 'string') throw new InputError(file === undefined ? 'missing' : 'type', 'report.file', 'the name of a file', file);
  requireObject(report.settings, 'report.settings', REPORT);
  for (const key of ['runs', 'switches', 'findings', 'cautions'] as const) requireArray(report[key], `report.${key}`, REPORT);
  requireObject(report.totals, 'report.totals', REPORT);
  requireObject(report.totals.outcomes, 'report.totals.outcomes', REPORT);
  requireObject(report.totals.findings, 'report.totals.findings', REPORT);
}

/** Requires true or false. @internal */
export function requireFlag(value: boolean, parameter: string): void {
  if (typeof value !== 'boolean') throw new InputError('type', parameter, 'true or false', value);
}
