/** Bunched conductors thinner than IEC 60228 goes, as printed beside it. @module */

/** The source of every row. */
export const BELOW_IEC_60228_SOURCE = 'below-iec-60228';

/** Columns: nominal size [mm²]; greatest resistance at 20 °C of copper, plain and metal-coated [Ω/km]. */
// biome-ignore format: one row a line, trailing zeros as printed
export const BELOW_IEC_60228 = [
  [0.05, 380, 392],
  [0.08, 237, 244],
  [0.11, 170, 175],
  [0.12, 150, 155],
  [0.14, 134, 138],
  [0.22, 96, 99],
  [0.25, 76, 79],
  [0.34, 53, 56],
] as const;
