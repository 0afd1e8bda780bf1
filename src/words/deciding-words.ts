/** What is not known and would settle a verdict. @module */
import type { Deciding } from '../limits/check.ts';

/** What is doubtful about an input, and what to do about it. */
export interface DecidingWords {
  /** Why the verdict is open; absent where the check says so itself. */
  readonly doubt?: string;
  readonly ask: string;
}

/**
 * The inputs that may decide, by their paths.
 *
 * @example
 * DECIDING_WORDS['minimumVoltage']?.ask; // => 'State the lowest voltage at which the device works.'
 */
export const DECIDING_WORDS: Readonly<Record<string, DecidingWords>> = {
  'maximumResistance.loop': { ask: 'Ask the maker whether the resistance limit means a shorted pair or one pairset.' },
  supplyVoltage: {
    doubt: 'the supply is given as one voltage, and a real one has a range',
    ask: 'State the lowest and the highest voltage of the supply, as in 21 V to 27.6 V.',
  },
  minimumVoltage: {
    doubt: 'the lowest voltage at which the device works is not given',
    ask: 'State the lowest voltage at which the device works.',
  },
};

/** What to do about an input that decides. @internal */
export function askFor({ parameter }: Deciding): string {
  return Object.hasOwn(DECIDING_WORDS, parameter) ? (DECIDING_WORDS[parameter]?.ask as string) : `State ${parameter}.`;
}
