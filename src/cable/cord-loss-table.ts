/** How much more signal a metre of cord loses than a metre of installed cable: one row for each gauge of the standard. @module */
import type { SourceKey } from '../sources/sources.ts';

/** One row. */
export interface CordLossRow {
  /** [AWG] */
  readonly gauge: number;
  /** The excess, D: 0.2 is 20 % more. */
  readonly excess: number;
  readonly source: SourceKey;
}

/** TIA-568-C.2 and 568.2-D, thickest first. */
export const CORD_LOSS: readonly CordLossRow[] = [
  { gauge: 24, excess: 0.2, source: 'tia-568-cord-loss' },
  { gauge: 26, excess: 0.5, source: 'tia-568-cord-loss' },
  { gauge: 28, excess: 0.95, source: 'tia-568.2-d-cord-loss-28' },
];
