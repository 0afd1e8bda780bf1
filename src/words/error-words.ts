/** The kinds of wrong input, and what to do about each. @module */
import type { InputErrorCode } from '../quantity/input-error.ts';

/**
 * Cause and cure of every code of an InputError.
 *
 * @example
 * ERROR_WORDS.missing.cause; // => 'something that is needed and was not given'
 */
export const ERROR_WORDS: Readonly<Record<InputErrorCode, { readonly cause: string; readonly cure: string }>> = {
  type: {
    cause: 'a value of another type than the one that belongs there',
    cure: 'give what `expected` says; a number in quotes is a text',
  },
  range: {
    cause: 'a number outside the range in which the formula has a meaning',
    cure: 'check its unit (lengths are in m, voltages in V) and see `expected`',
  },
  unknown: {
    cause: 'a name or a key that is not known',
    cure: 'use one of those in `expected`; the nearest is suggested where one is near',
  },
  missing: { cause: 'something that is needed and was not given', cure: 'give it under the name in `parameter`' },
  conflict: { cause: 'two things that contradict each other, or one thing said in two ways', cure: 'leave one of the two out' },
  unreadable: { cause: 'a text that is no quantity', cure: 'write a number and a unit, as in `212 ft`' },
};
