/** Readings held against the limits of cabling: a loop, a loop per length, and the likeness of conductors and pairs. @module */

import type { CHANNEL_LOOP } from '../../limits/channel-loop.ts';
import type { Check, Deciding } from '../../limits/check.ts';
import { MARGINAL_BELOW, verdictOf } from '../../limits/held.ts';
import type { PAIR_TO_PAIR_UNBALANCE } from '../../limits/pair-to-pair-unbalance.ts';
import type { PAIR_UNBALANCE } from '../../limits/pair-unbalance.ts';
import type { PERMANENT_LINK_LOOP } from '../../limits/permanent-link-loop.ts';
import type { BoundedFigure, Interval } from '../../quantity/interval.ts';
import type { RunPair } from '../unbalance.ts';

/** One reading, or two, against one limit; the shape of every check, with the bounds of its value. */
export interface FieldCheck extends Omit<Check, 'name' | 'aspect'> {
  readonly name:
    | (typeof CHANNEL_LOOP | typeof PERMANENT_LINK_LOOP | typeof PAIR_UNBALANCE | typeof PAIR_TO_PAIR_UNBALANCE)['name']
    | 'loop-per-length';
  readonly aspect: 'measured';
  /** The pair, or the two pairs. */
  readonly pairs: readonly RunPair[];
  /** What the value may be, by accuracy and temperature. */
  readonly range: Interval;
}

/** What decides where the bounds of a reading lie on both sides of a limit. @internal */
export type Undecided = readonly Deciding[];

/** A value between bounds against a limit that has bounds of its own. @internal */
export function upTo(
  check: Pick<FieldCheck, 'name' | 'pairs' | 'source'>,
  { value, low, high }: BoundedFigure,
  limit: BoundedFigure,
  deciding: Undecided,
): FieldCheck {
  const margin = limit.value - value;
  return finished(check, { value, low, high }, limit.value, margin, limit.low - high, limit.high - low, deciding);
}

/** Two figures that should be alike: the fraction of their sum, or the floor, whichever is more. @internal */
export function alike(
  check: Pick<FieldCheck, 'name' | 'pairs' | 'source'>,
  [one, other]: readonly [BoundedFigure, BoundedFigure],
  { fraction, floor }: { readonly fraction: number; readonly floor: number },
  deciding: Undecided,
): FieldCheck {
  const limitOf = (a: number, b: number): number => Math.max(fraction * (a + b), floor);
  const marginOf = (a: number, b: number): number => limitOf(a, b) - Math.abs(a - b);
  // The margin falls as the larger grows and rises as the smaller does: the corners hold the worst, and the meeting point or a corner the best.
  const worst = Math.min(marginOf(one.high, other.low), marginOf(one.low, other.high));
  const meeting = Math.min(one.high, other.high);
  const overlap = one.low <= other.high && other.low <= one.high;
  const best = overlap ? marginOf(meeting, meeting) : Math.max(marginOf(one.low, other.high), marginOf(one.high, other.low));
  const value = Math.abs(one.value - other.value);
  const range = {
    value,
    low: overlap ? 0 : Math.max(one.low - other.high, other.low - one.high),
    high: Math.max(one.high - other.low, other.high - one.low),
  };
  return finished(check, range, limitOf(one.value, other.value), marginOf(one.value, other.value), worst, best, deciding);
}

function finished(
  { name, pairs, source }: Pick<FieldCheck, 'name' | 'pairs' | 'source'>,
  { value, low, high }: BoundedFigure,
  limit: number,
  margin: number,
  worst: number,
  best: number,
  deciding: Undecided,
): FieldCheck {
  const verdict = best < 0 ? 'fail' : worst < 0 ? 'uncertain' : verdictOf(margin, limit, MARGINAL_BELOW);
  return {
    name,
    aspect: 'measured',
    pairs,
    value,
    range: { low, high },
    limit,
    unit: 'Ω',
    margin,
    marginFraction: limit > 0 ? margin / limit : 0,
    verdict,
    ...(verdict === 'uncertain' ? { deciding } : {}),
    source,
  };
}
