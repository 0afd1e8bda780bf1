/** Ampacities of 4-pair cable by gauge, size of bundle and temperature rating. Digits as printed. @module */

/** Largest bundle of each column. */
export const AMPACITY_BUNDLES = [1, 7, 19, 37, 61, 91, 192] as const;

/** Temperature rating of each figure of a cell. [°C] */
export const AMPACITY_RATINGS = [60, 75, 90] as const;

/**
 * NFPA 70-2017, Table 725.144: gauge, then for each size of bundle the ampacity of each conductor [A] of cable for 60, 75 and
 * 90 °C, at 30 °C with all conductors loaded. `null`: not applicable.
 */
// biome-ignore format: columns
export const AMPACITIES = [
  [26, [[1, 1, 1], [1, 1, 1], [0.7, 0.8, 1], [0.5, 0.6, 0.7], [0.4, 0.5, 0.6], [0.4, 0.5, 0.6], [null, null, null]]],
  [24, [[2, 2, 2], [1, 1.4, 1.6], [0.8, 1, 1.1], [0.6, 0.7, 0.9], [0.5, 0.6, 0.7], [0.4, 0.5, 0.6], [0.3, 0.4, 0.5]]],
  [23, [[2.5, 2.5, 2.5], [1.2, 1.5, 1.7], [0.8, 1.1, 1.2], [0.6, 0.8, 0.9], [0.5, 0.7, 0.8], [0.5, 0.7, 0.8], [0.4, 0.5, 0.6]]],
  [22, [[3, 3, 3], [1.4, 1.8, 2.1], [1, 1.2, 1.4], [0.7, 0.9, 1.1], [0.6, 0.8, 0.9], [0.6, 0.8, 0.9], [0.5, 0.6, 0.7]]],
] as const;
