/** Readings held against the limits of cabling: a loop, a loop per length, and the likeness of conductors and pairs. @module */

import type { BoundedFigure, Interval } from '../../quantity/interval.ts';
import type { SourceKey } from '../../sources/sources.ts';
import type { RunPair } from '../unbalance.ts';

/** One reading, or two, against one limit; the shape of every check, with the bounds of its value. */
export interface FieldCheck {
  readonly name: 'channel-loop' | 'permanent-link-loop' | 'loop-per-length' | 'pair-unbalance' | 'pair-to-pair-unbalance';
  /** The pair, or the two pairs. */
  readonly pairs: readonly RunPair[];
  readonly value: number;
  /** What the value may be, by accuracy and temperature. */
  readonly range: Interval;
  readonly limit: number;
  readonly unit: 'Ω';
  readonly margin: number;
  /** The margin as a fraction of the limit. */
  readonly marginFraction: number;
  /** `uncertain` where the bounds lie on both sides. */
  readonly verdict: 'pass' | 'marginal' | 'fail' | 'uncertain';
  /** What would settle an `uncertain` verdict. */
  readonly deciding?: readonly string[];
  readonly source: SourceKey;
}

/** What decides where the bounds of a reading lie on both sides of a limit. @internal */
export type Deciding = readonly string[];

/** A value between bounds against a limit that has bounds of its own. @internal */
export function upTo(
  check: Pick<FieldCheck, 'name' | 'pairs' | 'source'>,
  { value, low, high }: BoundedFigure,
  limit: BoundedFigure,
  deciding: Deciding,
): FieldCheck {
  const margin = limit.value - value;
  return finished(check, { value, low, high }, limit.value, margin, limit.low - high, limit.high - low, deciding);
}

/** Two figures that should be alike: the fraction of their sum, or the floor, whichever is more. @internal */
export function alike(
  check: Pick<FieldCheck, 'name' | 'pairs' | 'source'>,
  [one, other]: readonly [BoundedFigure, BoundedFigure],
  { fraction, floor }: { readonly fraction: number; readonly floor: number },
  deciding: Deciding,
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

/** A margin under this fraction of the limit is marginal. */
const MARGINAL = 0.05;

function finished(
  check: Pick<FieldCheck, 'name' | 'pairs' | 'source'>,
  { value, low, high }: BoundedFigure,
  limit: number,
  margin: number,
  worst: number,
  best: number,
  deciding: Deciding,
): FieldCheck {
  const sure = margin < MARGINAL * limit ? 'marginal' : 'pass';
  const verdict = best < 0 ? 'fail' : worst < 0 ? 'uncertain' : sure;
  const { name, pairs, source } = check;
  const base = {
    name,
    pairs,
    value,
    range: { low, high },
    limit,
    unit: 'Ω',
    margin,
    marginFraction: limit > 0 ? margin / limit : 0,
    verdict,
  } as const;
  return verdict === 'uncertain' ? { ...base, deciding: [...deciding], source } : { ...base, source };
}
