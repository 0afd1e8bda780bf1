/**
 * The longest installed cable by its average temperature, cords 10 m at 20 °C, as ANSI/TIA-568 prints it (informative annex).
 *
 * Unscreened 20 and 50 °C, and screened 20 °C, were read in a trade publication; the other rows are from memory.
 * @module
 */
import type { SourceKey } from '../sources/sources.ts';

/** One row: temperature [°C], lengths [m] and where each was seen. */
export interface DeratingRow {
  readonly temperature: number;
  readonly unscreened: number;
  readonly unscreenedSource: SourceKey;
  readonly screened: number;
  readonly screenedSource: SourceKey;
}

/** Rising temperatures; between two rows a straight line is drawn. */
export const LENGTH_DERATING: readonly DeratingRow[] = [
  { temperature: 20, unscreened: 90, unscreenedSource: 'tia-568-length-table', screened: 90, screenedSource: 'tia-568-length-table' },
  {
    temperature: 25,
    unscreened: 89,
    unscreenedSource: 'tia-568-length-table-memory',
    screened: 89.5,
    screenedSource: 'tia-568-length-table-memory',
  },
  {
    temperature: 30,
    unscreened: 87,
    unscreenedSource: 'tia-568-length-table-memory',
    screened: 88.5,
    screenedSource: 'tia-568-length-table-memory',
  },
  {
    temperature: 35,
    unscreened: 85.5,
    unscreenedSource: 'tia-568-length-table-memory',
    screened: 87.7,
    screenedSource: 'tia-568-length-table-memory',
  },
  {
    temperature: 40,
    unscreened: 84,
    unscreenedSource: 'tia-568-length-table-memory',
    screened: 87,
    screenedSource: 'tia-568-length-table-memory',
  },
  {
    temperature: 45,
    unscreened: 81.7,
    unscreenedSource: 'tia-568-length-table-memory',
    screened: 86.5,
    screenedSource: 'tia-568-length-table-memory',
  },
  {
    temperature: 50,
    unscreened: 79.5,
    unscreenedSource: 'tia-568-length-table',
    screened: 85.5,
    screenedSource: 'tia-568-length-table-memory',
  },
  {
    temperature: 55,
    unscreened: 77.2,
    unscreenedSource: 'tia-568-length-table-memory',
    screened: 84.7,
    screenedSource: 'tia-568-length-table-memory',
  },
  {
    temperature: 60,
    unscreened: 75,
    unscreenedSource: 'tia-568-length-table-memory',
    screened: 83,
    screenedSource: 'tia-568-length-table-memory',
  },
];
