/** What it means that a result has no check of some name. @module */
import { COLLAPSE, LIMITS } from '../limits/all.ts';
import type { Check, CheckName } from '../limits/check.ts';
import type { Limit } from '../limits/limit.ts';

/** About what flows and arrives: there is nothing to judge where the line does not carry the load. */
const ABOUT_ARRIVAL: readonly CheckName[] = /* @__PURE__ */ (() =>
  LIMITS.filter((limit: Limit) => limit.aboutArrival).map(({ name }) => name))();

/**
 * Whether a run meets a limit: by its check where it has one; a bare figure that is met in one reading alone is not met.
 *
 * A check that is not there is lost to the collapse of the line, or is about something that is not so here: a rule
 * for warm cable says nothing of a cool one.
 * @internal
 */
export function passesAt(name: CheckName, checks: readonly Check[]): boolean {
  const check = checks.find((one) => one.name === name);
  if (check !== undefined) return check.verdict !== 'fail' && check.margin >= 0;
  return !isLostToCollapse(name, checks);
}

/** Whether the check is missing because the line carries nothing. @internal */
export function isLostToCollapse(name: CheckName, checks: readonly Check[]): boolean {
  return ABOUT_ARRIVAL.includes(name) && checks.some((one) => one.name === COLLAPSE.name && one.margin < 0);
}
