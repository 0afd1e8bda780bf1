/** Files in, verdicts out: reading a cable schedule, judging it, and the reports. @module */
export { InputError, type InputErrorCode, type InputErrorJson, isInputError } from '../quantity/input-error.ts';
export { checkTitle, describeCheck, type RunFacts, type WordedCheck } from '../words/check-words.ts';
export type { FindingCode } from '../words/finding-words.ts';
export { describeRemedy } from '../words/remedy-words.ts';
export { type CheckRowInput, checkRow } from './check-row.ts';
export { type CheckScheduleOptions, checkSchedule } from './check-schedule.ts';
export { type TemplateCsvInput, templateCsv } from './columns/template-csv.ts';
export type { Finding, FindingSeverity } from './finding.ts';
export { messageOf } from './finding-words.ts';
export { type ParseScheduleInput, parseSchedule } from './parse-schedule.ts';
export type { ParsedSchedule } from './read/read-schedule.ts';
export type {
  PoweredRunReport,
  Report,
  ReportedBudget,
  ReportedHeat,
  ReportedMeasurement,
  ReportedPiece,
  ReportedPort,
  ReportSettings,
  ReportTotals,
  RowFacts,
  RunOutcome,
  RunReport,
  SwitchReport,
  TwoWireRunReport,
} from './report.ts';
export { reportCsv } from './report-csv.ts';
export { type ReportMarkdownOptions, reportMarkdown } from './report-markdown.ts';
export { reportSummary } from './report-summary.ts';
export { type ReportTextOptions, reportText } from './report-text.ts';
export type { Schedule, ScheduledPoweredRun, ScheduledRun, ScheduledSwitch, ScheduledTwoWireRun, UnreadCell } from './schedule.ts';
export { type ScheduleFromRowsInput, scheduleFromRows } from './schedule-from-rows.ts';
