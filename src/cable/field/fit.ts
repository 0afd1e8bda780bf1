/** Whether a wire of some length can give the readings that were taken, and by how much it misses. @module */
import type { Metres, Ohms, OhmsPerMetre } from '../../quantity/units.ts';

/** What a pair may be: its loop, between bounds. @internal */
export interface PairBounds {
  /** [Ω] */
  readonly low: Ohms;
  /** [Ω] */
  readonly high: Ohms;
}

/** What a supposition lets each metre, the rest and the length be. @internal */
export interface Supposition {
  /** Of cable, a pair, at the temperatures supposed. [Ω/m] */
  readonly perMetre: { readonly low: OhmsPerMetre; readonly high: OhmsPerMetre };
  /** Connections and cords. [Ω] */
  readonly rest: PairBounds;
  /** [m] */
  readonly length: { readonly low: Metres; readonly high: Metres };
  /** Most that each pair may have besides, in the order of the readings; none if absent. [Ω] */
  readonly extra?: readonly Ohms[] | undefined;
}

/** @internal */
export interface Fit {
  /** Lengths that give every reading; `low` above `high` where none does. [m] */
  readonly length: { readonly low: Metres; readonly high: Metres };
  /** By how much every reading would have to be off before some length gives them all; 0 where one does. [Ω] */
  readonly distance: Ohms;
}

/** Bounds meet if they overlap by the rounding of a sum. */
const SLACK = 1e-9;

/** `low` is the longest of the shortest lengths, `high` the shortest of the longest: a pair alone bounds each. @internal */
export function fitOf(pairs: readonly PairBounds[], { perMetre, rest, length, extra }: Supposition): Fit {
  // The length that the lowest and the highest reading leave.
  const shortest = Math.max(...pairs.map(({ low }, index) => low - (extra?.[index] ?? 0) - rest.high)) / perMetre.high;
  const longest = Math.min(...pairs.map(({ high }) => high - rest.low)) / perMetre.low;
  const distance = Math.max(
    0,
    (shortest - length.high) * perMetre.high,
    (length.low - longest) * perMetre.low,
    (shortest - longest) / (1 / perMetre.low + 1 / perMetre.high),
  );
  const scale = Math.max(...pairs.map(({ high }) => high)) + 1;
  return {
    length: { low: shortest > length.low ? shortest : length.low, high: longest < length.high ? longest : length.high },
    distance: beyondRounding(distance, scale),
  };
}

/** A distance that is only rounding is none. [Ω] @internal */
export function beyondRounding(distance: Ohms, scale: Ohms): Ohms {
  return distance > SLACK * scale ? distance : 0;
}
