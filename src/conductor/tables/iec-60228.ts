/** IEC 60228: the most resistance a conductor may have at 20 °C. @module */

/** The source of every row. */
export const IEC_60228_SOURCE = 'iec-60228';

/** Temperature coefficients at 20 °C of copper, plain or metal-coated, and of aluminium. [1/K] */
export const IEC_60228_COEFFICIENT = { copper: 0.00393, aluminium: 0.00403 } as const;

/**
 * Columns: nominal size [mm²]; then greatest resistance [Ω/km] of copper: class 1 plain, class 1 metal-coated, class 2
 * plain, class 2 metal-coated, classes 5 and 6 plain, classes 5 and 6 metal-coated; then of aluminium, classes 1 and 2.
 */
// biome-ignore format: one row a line, trailing zeros as printed
export const IEC_60228 = [
  [0.5, 36.0, 36.7, 36.0, 36.7, 39.0, 40.1, null],
  [0.75, 24.5, 24.8, 24.5, 24.8, 26.0, 26.7, null],
  [1, 18.1, 18.2, 18.1, 18.2, 19.5, 20.0, null],
  [1.5, 12.1, 12.2, 12.1, 12.2, 13.3, 13.7, null],
  [2.5, 7.41, 7.56, 7.41, 7.56, 7.98, 8.21, null],
  [4, 4.61, 4.70, 4.61, 4.70, 4.95, 5.09, null],
  [6, 3.08, 3.11, 3.08, 3.11, 3.30, 3.39, null],
  [10, 1.83, 1.84, 1.83, 1.84, 1.91, 1.95, 3.08],
  [16, 1.15, 1.16, 1.15, 1.16, 1.21, 1.24, 1.91],
  [25, 0.727, null, 0.727, 0.734, 0.780, 0.795, 1.20],
  [35, 0.524, null, 0.524, 0.529, 0.554, 0.565, 0.868],
  [50, 0.387, null, 0.387, 0.391, 0.386, 0.393, 0.641],
  [70, 0.268, null, 0.268, 0.270, 0.272, 0.277, 0.443],
  [95, 0.193, null, 0.193, 0.195, 0.206, 0.210, 0.320],
] as const;
