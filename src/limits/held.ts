/** A value meets a bound: the one predicate, and the making of a check. @module */
import type { DefaultField } from '../quantity/fields.ts';
import { requireFraction } from '../quantity/guards.ts';
import type { Ohms } from '../quantity/units.ts';
import type { Check, CheckName, Draft } from './check.ts';
import type { Limit } from './limit.ts';
import { NO_LINE } from './resistance-at.ts';
import type { Verdict } from './verdict.ts';

/** A margin under this fraction of the limit is `marginal`, unless the caller sets another. */
export const MARGINAL_BELOW = 0.05;

/** @internal */
export const MARGINAL_BELOW_FIELD: DefaultField<number> = { fraction: 'limit', default: 0.05 };

/** @internal */
export function requireMarginalBelow(value: number): void {
  requireFraction(value, 'marginalBelow', 'limit');
}

/** `pass`, `marginal` or `fail` by a margin and its limit. @internal */
export function verdictOf(margin: number, bound: number, marginalBelow: number): Verdict {
  if (!(margin >= 0)) return 'fail';
  return margin < marginalBelow * Math.abs(bound) ? 'marginal' : 'pass';
}

/**
 * Holds a value against a limit.
 * @returns The check, into which the caller may put what its bound brings along, such as another source.
 * @internal
 */
export function held(limit: Limit<CheckName>, value: number, bound: number, marginalBelow: number): Draft<Check> {
  const margin = limit.side === 'at least' ? value - bound : bound - value;
  return {
    name: limit.name,
    aspect: limit.aspect,
    value,
    limit: bound,
    unit: limit.unit,
    margin,
    marginFraction: bound === 0 ? 0 : margin / bound,
    verdict: verdictOf(margin, bound, limit.neverMarginal ? 0 : marginalBelow),
    source: limit.source,
  };
}

/**
 * Holds a value against a limit whose bound is `most` ohms of the circuit: the comparison is made there.
 *
 * Volts and watts at the limit carry the rounding of a square root; ohms do not. A margin that rounding has put on the other side
 * of 0 is brought back to its own. `undefined` ohms bound nothing; of `NO_LINE` not even none will do.
 * @internal
 */
export function heldInOhms(
  limit: Limit<CheckName>,
  value: number,
  bound: number,
  marginalBelow: number,
  most: Ohms | undefined,
  resistance: Ohms,
  isMet: boolean = most === undefined || resistance <= most,
): Draft<Check> {
  const margin = sidedMargin(limit.side === 'at least' ? value - bound : bound - value, bound, isMet);
  // One literal each, and no closure: this is most of what a powered device costs.
  const { name, aspect, unit, source } = limit;
  const marginFraction = bound === 0 ? 0 : margin / bound;
  const verdict = verdictOf(margin, bound, limit.neverMarginal ? 0 : marginalBelow);
  if (most === undefined || most === NO_LINE) return { name, aspect, value, limit: bound, unit, margin, marginFraction, verdict, source };
  const loop = { limit: most, margin: most - resistance };
  return { name, aspect, value, limit: bound, unit, margin, marginFraction, verdict, loop, source };
}

function sidedMargin(margin: number, bound: number, isMet: boolean): number {
  if (isMet) return margin > 0 ? margin : 0;
  return margin < 0 ? margin : -Number.EPSILON * Math.abs(bound);
}
