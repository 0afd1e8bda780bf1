/** NEC Chapter 9 Table 8: resistance to direct current at 75 °C. @module */

/** The source of uncoated copper and of aluminium; of coated copper, which is remembered. */
export const NEC_TABLE_8_SOURCE = 'nec-table-8';
/** The source of coated copper, which is remembered. */
export const NEC_TABLE_8_COATED_SOURCE = 'nec-table-8-coated';

/** Temperature coefficients at 75 °C, of the table's own note 2. [1/K] */
// biome-ignore format: trailing zeros as printed
export const NEC_COEFFICIENT_AT_75 = { copper: 0.00323, aluminium: 0.00330 } as const;

/** Columns: gauge, number of strands, then copper uncoated, copper coated, aluminium [Ω/1000 ft]. */
// biome-ignore format: one row a line, trailing zeros as printed
export const NEC_TABLE_8 = [
  [18, 1, 7.77, 8.08, 12.8],
  [18, 7, 7.95, 8.45, 13.1],
  [16, 1, 4.89, 5.08, 8.05],
  [16, 7, 4.99, 5.29, 8.21],
  [14, 1, 3.07, 3.19, 5.06],
  [14, 7, 3.14, 3.26, 5.17],
  [12, 1, 1.93, 2.01, 3.18],
  [12, 7, 1.98, 2.05, 3.25],
  [10, 1, 1.21, 1.26, 2.00],
  [10, 7, 1.24, 1.29, 2.04],
  [8, 1, 0.764, 0.786, 1.26],
  [8, 7, 0.778, 0.809, 1.28],
  [6, 7, 0.491, 0.510, 0.808],
  [4, 7, 0.308, 0.321, 0.508],
  [3, 7, 0.245, 0.254, 0.403],
  [2, 7, 0.194, 0.201, 0.319],
  [1, 19, 0.154, 0.160, 0.253],
  [0, 19, 0.122, 0.127, 0.201],
  [-1, 19, 0.0967, 0.101, 0.159],
  [-2, 19, 0.0766, 0.0797, 0.126],
  [-3, 19, 0.0608, 0.0626, 0.100],
] as const;
