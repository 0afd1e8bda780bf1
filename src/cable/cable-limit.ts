/** What a cable is for, and the most resistance that a standard allows it. @module */
import type { OhmsPerMetre } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';

/** What a four-pair cable is for: installed for good, or plugged in at its ends. */
export type CableUse = (typeof CABLE_USES)[number];

/** @internal */
export const CABLE_USES = ['horizontal', 'cord'] as const;

/** Whose limit of resistance a cable is taken at. */
export type CableStandard = (typeof CABLE_STANDARDS)[number];

/** @internal */
export const CABLE_STANDARDS = ['TIA-568', 'IEC 61156'] as const;

/** The most resistance that one standard allows a cable at 20 °C. */
export interface CableLimit {
  /** `TIA-568`: ANSI/TIA-568.2-D. `IEC 61156`: part 5 for installed cable, part 6 for cords. `data-sheet`: as stated by its maker. */
  readonly standard: CableStandard | 'data-sheet';
  /** What has the resistance: one conductor, or the two of a pair in series. */
  readonly circuit: 'conductor' | 'pairLoop';
  /** [Ω/m] */
  readonly perMetre: OhmsPerMetre;
  readonly source: SourceKey;
}
