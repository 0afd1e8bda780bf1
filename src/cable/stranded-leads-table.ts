/** Small stranded leads: one row for each gauge, one conductor, digits as printed. @module */

/** One row. */
export interface StrandedLeadRow {
  /** [AWG] */
  readonly gauge: number;
  /** Most resistance by the USB 2.0 cable table. [Ω/100 m] */
  readonly maximum: number;
  /** A chart of seven-strand wire. [Ω/1000 ft] */
  readonly chart?: number;
  /** The strands of the chart, as in `7/32`: seven of 32 AWG. */
  readonly strands?: string;
}

/** By gauge. The chart's 28 AWG is the figure of solid 28 AWG, not of seven strands of 36 AWG. */
export const STRANDED_LEADS: readonly StrandedLeadRow[] = [
  { gauge: 20, maximum: 3.58 },
  { gauge: 22, maximum: 5.74, chart: 14.74, strands: '7/30' },
  { gauge: 24, maximum: 9.09, chart: 23.3, strands: '7/32' },
  { gauge: 26, maximum: 14.6, chart: 37.3, strands: '7/34' },
  { gauge: 28, maximum: 23.2, chart: 64.9, strands: '7/36' },
];
