/** Correction of ampacity for the air around a cable. Digits as printed. @module */

/**
 * NFPA 70-2017, Table 310.15(B)(2)(a), for ampacities at 30 °C: the highest ambient of the row [°C], then the factors for cable
 * of 60, 75 and 90 °C. `null`: none is given.
 */
// biome-ignore format: columns
export const AMBIENT_FACTORS = [
  [10, [1.29, 1.20, 1.15]],
  [15, [1.22, 1.15, 1.12]],
  [20, [1.15, 1.11, 1.08]],
  [25, [1.08, 1.05, 1.04]],
  [30, [1.00, 1.00, 1.00]],
  [35, [0.91, 0.94, 0.96]],
  [40, [0.82, 0.88, 0.91]],
  [45, [0.71, 0.82, 0.87]],
  [50, [0.58, 0.75, 0.82]],
  [55, [0.41, 0.67, 0.76]],
  [60, [null, 0.58, 0.71]],
  [65, [null, 0.47, 0.65]],
  [70, [null, 0.33, 0.58]],
  [75, [null, null, 0.50]],
  [80, [null, null, 0.41]],
  [85, [null, null, 0.29]],
] as const;
