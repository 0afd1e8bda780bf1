/** Limits: what a value is held against, one record each, and the one shape of a check. @module */

export { checkNames, type LimitName } from './all.ts';
export type { Check, CheckName, Deciding } from './check.ts';
export type { Aspect, CheckUnit, Limit, LimitWords } from './limit.ts';
export type { Verdict } from './verdict.ts';
