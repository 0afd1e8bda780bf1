/**
 * The longest installed cable by its average temperature, cords 10 m at 20 °C, as ANSI/TIA-568 prints it (informative annex).
 *
 * Unscreened 20 and 50 °C, and screened 20 °C, were read in a trade publication; the other rows are from memory.
 * @module
 */
/** One row: temperature [°C], length of unscreened and of screened cable [m]. */
export type DeratingRow = readonly [temperature: number, unscreened: number, screened: number];

/** Rising temperatures; between two rows a straight line is drawn. */
export const LENGTH_DERATING: readonly DeratingRow[] = [
  [20, 90, 90],
  [25, 89, 89.5],
  [30, 87, 88.5],
  [35, 85.5, 87.7],
  [40, 84, 87],
  [45, 81.7, 86.5],
  [50, 79.5, 85.5],
  [55, 77.2, 84.7],
  [60, 75, 83],
];

/** The temperatures whose figure was read [°C]; the others are from memory. */
export const LENGTH_DERATING_READ = { unscreened: [20, 50], screened: [20] } as const;
