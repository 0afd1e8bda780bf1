/** Readings held against the limits of cabling: a loop, a loop per length, and the likeness of conductors and pairs. @module */
import type { CHANNEL_LOOP } from '../../limits/channel-loop.ts';
import type { Check } from '../../limits/check.ts';
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

type About = Pick<FieldCheck, 'name' | 'source'>;

/** A value between bounds against a limit that has bounds of its own. @internal */
export function upTo(about: About, pairs: readonly RunPair[], { value, low, high }: BoundedFigure, limit: BoundedFigure): FieldCheck {
  const margin = { low: limit.low - high, value: limit.value - value, high: limit.high - low };
  return check(about, pairs, { value, low, high }, limit.value, margin);
}

/** Two figures that should be alike: the fraction of their sum, or the floor, whichever is more. @internal */
export function alike(
  about: About,
  pairs: readonly RunPair[],
  [one, other]: readonly [BoundedFigure, BoundedFigure],
  fraction: number,
  floor: number,
): FieldCheck {
  const limitOf = (a: number, b: number) => Math.max(fraction * (a + b), floor);
  const marginOf = (a: number, b: number) => limitOf(a, b) - Math.abs(a - b);
  const corners = [marginOf(one.high, other.low), marginOf(one.low, other.high)];
  const apart = Math.max(one.low - other.high, other.low - one.high);
  const meeting = Math.min(one.high, other.high);
  const figure = {
    value: Math.abs(one.value - other.value),
    low: Math.max(0, apart),
    high: Math.max(one.high - other.low, other.high - one.low),
  };
  return check(about, pairs, figure, limitOf(one.value, other.value), {
    // The margin falls as the larger grows and rises as the smaller does: the corners hold the worst, and the meeting point or a corner the best.
    low: Math.min(...corners),
    value: marginOf(one.value, other.value),
    high: apart > 0 ? Math.max(...corners) : marginOf(meeting, meeting),
  });
}

function check(
  { name, source }: About,
  pairs: readonly RunPair[],
  { value, low, high }: BoundedFigure,
  limit: number,
  margin: BoundedFigure,
): FieldCheck {
  return {
    name,
    aspect: 'measured',
    pairs,
    value,
    range: { low, high },
    limit,
    unit: 'Ω',
    margin: margin.value,
    marginFraction: limit > 0 ? margin.value / limit : 0,
    verdict: margin.high < 0 ? 'fail' : margin.low < 0 ? 'uncertain' : verdictOf(margin.value, limit, MARGINAL_BELOW),
    source,
  };
}
