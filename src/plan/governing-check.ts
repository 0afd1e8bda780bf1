/** Which check bites first. @module */
import { LIMITS } from '../limits/all.ts';
import type { Check, CheckName } from '../limits/check.ts';

/** Kept or not: they do not come close. */
const NEVER_CLOSE: readonly CheckName[] = /* @__PURE__ */ (() => LIMITS.filter(({ keptOrNot }) => keptOrNot).map(({ name }) => name))();

/** A failing check before any other; then the smallest margin as a fraction of its limit. @internal */
export function governingCheck(checks: readonly Check[]): Check {
  return checks.reduce(closer);
}

function closer(closest: Check, check: Check): Check {
  if ((check.verdict === 'fail') !== (closest.verdict === 'fail')) return check.verdict === 'fail' ? check : closest;
  if (check.verdict === 'pass' && NEVER_CLOSE.includes(check.name)) return closest;
  if (closest.verdict === 'pass' && NEVER_CLOSE.includes(closest.name)) return check;
  return check.marginFraction < closest.marginFraction ? check : closest;
}
