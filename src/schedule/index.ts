/** Files in, verdicts out: reading a cable schedule, and what was found on the way. @module */
export type { Finding, FindingCode, FindingSeverity } from './finding.ts';
export { type ParsedSchedule, type ParseScheduleInput, parseSchedule } from './parse-schedule.ts';
export type { Schedule, ScheduledPoweredRun, ScheduledRun, ScheduledSwitch, ScheduledTwoWireRun } from './schedule.ts';
export { type ScheduleFromRowsInput, scheduleFromRows } from './schedule-from-rows.ts';
