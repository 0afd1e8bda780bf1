/** Which check bites first. @module */
import type { Check } from '../circuit/check.ts';

/** A failing check before any other; then the smallest margin as a fraction of its limit. @internal */
export function governingCheck(checks: readonly Check[]): Check {
  return checks.reduce((closest, check) => {
    if ((check.verdict === 'fail') !== (closest.verdict === 'fail')) return check.verdict === 'fail' ? check : closest;
    // The class power and the count of connections are kept or not: they do not come close.
    if (check.verdict === 'pass' && (check.name === 'pd-power' || check.name === 'connections')) return closest;
    if (closest.verdict === 'pass' && (closest.name === 'pd-power' || closest.name === 'connections')) return check;
    return check.marginFraction < closest.marginFraction ? check : closest;
  });
}
