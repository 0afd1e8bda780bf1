/** The cables that have a name: one row each. Maxima at 20 °C, one conductor, digits as printed (Ω/100 m / 100). @module */
import type { SourceKey } from '../sources/sources.ts';

/** The names of the cables in the table. */
export type CableName = 'cat5e' | 'cat6' | 'cat6a' | 'cord-24' | 'cord-26' | 'cord-28';

/** One row of the cable table. */
export interface CableRow {
  readonly title: string;
  readonly use: 'horizontal' | 'cord';
  /** Usual gauge in the trade. [AWG] */
  readonly gauge: number;
  /** Most resistance of one conductor at 20 °C. [Ω/m] */
  readonly maximum: number;
  readonly source: SourceKey;
}

/** Named cables. */
export const CABLES: Readonly<Record<CableName, CableRow>> = {
  cat5e: { title: 'Category 5e', use: 'horizontal', gauge: 24, maximum: 0.0938, source: 'tia-568.2-d-cable' },
  cat6: { title: 'Category 6', use: 'horizontal', gauge: 23, maximum: 0.0938, source: 'tia-568.2-d-cable' },
  cat6a: { title: 'Category 6A', use: 'horizontal', gauge: 23, maximum: 0.0938, source: 'tia-568.2-d-cable' },
  'cord-24': { title: 'Cord, 24 AWG', use: 'cord', gauge: 24, maximum: 0.14, source: 'tia-568.2-d-cord' },
  'cord-26': { title: 'Cord, 26 AWG', use: 'cord', gauge: 26, maximum: 0.14, source: 'tia-568.2-d-cord' },
  'cord-28': { title: 'Cord, 28 AWG', use: 'cord', gauge: 28, maximum: 0.232, source: 'usb-28-awg' },
};
