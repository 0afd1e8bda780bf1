/**
 * The cables that have a name: one row each, and a new cable is a new row.
 *
 * Maxima at 20 °C, digits as printed (Ω/100 m / 100). `conductor` is the limit of ANSI/TIA-568.2-D for one conductor,
 * `pairLoop` the limit of IEC 61156 for the two of a pair in series: kept apart, never averaged.
 * @module
 */
import type { SourceKey } from '../sources/sources.ts';
import type { CableUse } from './cable-limit.ts';

/** A category of balanced cabling. */
export type CableCategory = (typeof CABLE_CATEGORIES)[number];

/** From the lowest up. @internal */
export const CABLE_CATEGORIES = ['3', '5', '5e', '6', '6A', '7', '7A', '8'] as const;

/** One row of the cable table. */
export type CableRow = readonly [
  /** Null for cords, whose category no gauge tells. */
  category: CableCategory | null,
  use: CableUse,
  /** Usual gauge in the trade. [AWG] */
  gauge: number,
  /** Outside diameter, an assumption; null where no figure is known. [mm] */
  outsideDiameter: number | null,
  /** Whether a screened form is the only one there is. */
  screened: boolean,
  /** TIA-568, one conductor at 20 °C, and where the figure is from; null where it has none. [Ω/m] */
  conductor: readonly [perMetre: number, source: SourceKey] | null,
  /** IEC 61156, the two conductors of a pair at 20 °C, by part 5 for installed cable and part 6 for cords; null where it has none. [Ω/m] */
  pairLoop: number | null,
];

/** Named cables. */
// biome-ignore format: one row a line
export const CABLES = {
  cat3: ['3', 'horizontal', 24, null, false, [0.0938, 'tia-568-cat3-cable'], null],
  cat5e: ['5e', 'horizontal', 24, 5.2, false, [0.0938, 'tia-568.2-d-cable'], 0.19],
  cat6: ['6', 'horizontal', 23, 6, false, [0.0938, 'tia-568.2-d-cable'], 0.19],
  cat6a: ['6A', 'horizontal', 23, 7.8, false, [0.0938, 'tia-568.2-d-cable'], 0.19],
  cat7a: ['7A', 'horizontal', 23, null, true, null, 0.19],
  'cord-24': [null, 'cord', 24, null, false, [0.14, 'tia-568.2-d-cord'], 0.29],
  'cord-26': [null, 'cord', 26, null, false, [0.14, 'tia-568.2-d-cord'], 0.29],
  'cord-28': [null, 'cord', 28, null, false, [0.232, 'usb-28-awg'], null],
} as const;

/** The name of a cable of the table. */
export type CableName = keyof typeof CABLES;

/**
 * Every name of a cable.
 *
 * @example
 * cableNames.slice(0, 3); // => ['cat3', 'cat5e', 'cat6']
 */
export const cableNames: readonly CableName[] = /* @__PURE__ */ Object.keys(CABLES) as CableName[];
