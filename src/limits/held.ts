/** A value meets a bound: the one predicate, and the making of a check. @module */
import type { DefaultField } from '../quantity/fields.ts';
import { requireFraction } from '../quantity/guards.ts';
import type { Check, CheckName, Draft } from './check.ts';
import type { Limit } from './limit.ts';
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
 *
 * Volts and watts at the limit carry the rounding of a square root; ohms do not. Where the comparison was made in ohms,
 * `isMet` says how it went, and a margin that rounding has put on the other side of 0 is brought back to its own.
 * @returns The check, into which the caller may put what its bound brings along, such as another source.
 * @internal
 */
export function held(limit: Limit<CheckName>, value: number, bound: number, marginalBelow: number, isMet?: boolean): Draft<Check> {
  const raw = limit.side === 'at least' ? value - bound : bound - value;
  const margin = isMet === undefined ? raw : sidedMargin(raw, bound, isMet);
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

function sidedMargin(margin: number, bound: number, isMet: boolean): number {
  if (isMet) return margin > 0 ? margin : 0;
  return margin < 0 ? margin : -Number.EPSILON * Math.abs(bound);
}
