/** Limits: what a value is held against, one record each, and the one shape of a check. @module */

export type { Check, CheckName, Deciding } from './check.ts';
export { checkNames } from './check-names.ts';
export type { Aspect, CheckUnit, Limit, LimitWords } from './limit.ts';
export type { Verdict } from './verdict.ts';
