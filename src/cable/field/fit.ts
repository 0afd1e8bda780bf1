/** Whether a wire of some length can give the readings that were taken, and by how much it misses. @module */
import type { Interval } from '../../quantity/interval.ts';
import type { Ohms } from '../../quantity/units.ts';

/** What a supposition lets each metre, the rest and the length be. @internal */
export interface Supposition {
  /** Of cable, a pair, at the temperatures supposed. [Ω/m] */
  readonly perMetre: Interval;
  /** Connections and cords. [Ω] */
  readonly rest: Interval;
  /** [m] */
  readonly length: Interval;
  /** Most that a pair may have besides, by its reading; none if absent. [Ω] */
  readonly extra?: (reading: Interval) => Ohms;
}

/** @internal */
export interface Fit {
  /** Lengths that give every reading; `low` above `high` where none does. [m] */
  readonly range: Interval;
  /** By how much every reading would have to be off before some length gives them all; 0 where one does. [Ω] */
  readonly distance: Ohms;
}

/** Bounds meet if they overlap by the rounding of a sum. */
const SLACK = 1e-9;

/** `low` is the longest of the shortest lengths, `high` the shortest of the longest: a pair alone bounds each. @internal */
export function fitOf(pairs: readonly Interval[], { perMetre, rest, length, extra = () => 0 }: Supposition): Fit {
  // The length that the lowest and the highest reading leave.
  const shortest = Math.max(...pairs.map((reading) => reading.low - extra(reading) - rest.high)) / perMetre.high;
  const longest = Math.min(...pairs.map(({ high }) => high - rest.low)) / perMetre.low;
  const distance = Math.max(
    (shortest - length.high) * perMetre.high,
    (length.low - longest) * perMetre.low,
    (shortest - longest) / (1 / perMetre.low + 1 / perMetre.high),
  );
  return {
    range: { low: Math.max(shortest, length.low), high: Math.min(longest, length.high) },
    distance: beyondRounding(distance, pairs),
  };
}

/** How far a supposition misses readings; what is only rounding is no miss. [Ω] @internal */
export function beyondRounding(distance: Ohms, pairs: readonly Interval[]): Ohms {
  const scale = Math.max(...pairs.map(({ high }) => high)) + 1;
  return distance > SLACK * scale ? distance : 0;
}

/** The two ends of what fits; they may have changed places within rounding. @internal */
export function inOrder({ low, high }: Interval): Interval {
  return { low: Math.min(low, high), high: Math.max(low, high) };
}
