/** Units as reports write them. @module */
import type { CheckUnit } from '../limits/limit.ts';

/** How figures of one unit are written. */
export interface UnitWords {
  /** The sign behind the number. */
  readonly sign: string;
  /** What one of the unit is in the unit of the sign: a fraction is written in percent. */
  readonly factor: number;
  /** Decimals that a reader can use. */
  readonly decimals: number;
}

/**
 * Every unit that a value, a limit or a margin may have.
 *
 * @example
 * [UNIT_WORDS.V.decimals, UNIT_WORDS['1'].sign]; // => [2, '%']
 */
export const UNIT_WORDS: Readonly<Record<CheckUnit, UnitWords>> = {
  m: { sign: 'm', factor: 1, decimals: 1 },
  V: { sign: 'V', factor: 1, decimals: 2 },
  W: { sign: 'W', factor: 1, decimals: 2 },
  A: { sign: 'A', factor: 1, decimals: 3 },
  Ω: { sign: 'Ω', factor: 1, decimals: 2 },
  K: { sign: 'K', factor: 1, decimals: 2 },
  '°C': { sign: '°C', factor: 1, decimals: 1 },
  AWG: { sign: 'AWG', factor: 1, decimals: 0 },
  '1': { sign: '%', factor: 100, decimals: 2 },
};
