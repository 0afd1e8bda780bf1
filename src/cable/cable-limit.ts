/** What a cable is for, and the most resistance that a standard allows it. @module */
import type { OhmsPerMetre } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';

/** What a four-pair cable is for: installed for good, or plugged in at its ends. */
export type CableUse = 'horizontal' | 'cord';

/** Whose limit of resistance a cable is taken at. */
export type CableStandard = 'TIA-568' | 'IEC 61156';

/** The most resistance that one standard allows a cable at 20 °C. */
export interface CableLimit {
  /** `TIA-568`: ANSI/TIA-568.2-D. `IEC 61156`: part 5 for installed cable, part 6 for cords. `data-sheet`: as stated by its maker. */
  readonly standard: CableStandard | 'data-sheet';
  /** What the figure is about: one conductor, or the two of a pair in series. */
  readonly of: 'conductor' | 'pairLoop';
  /** [Ω/m] */
  readonly perMetre: OhmsPerMetre;
  readonly source: SourceKey;
}
