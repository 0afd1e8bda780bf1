/** Verdicts as words that need no colour: a failure stands out by its capitals. @module */
import type { Verdict } from '../limits/verdict.ts';

/**
 * How each verdict is written in a table.
 *
 * @example
 * VERDICT_WORDS.fail.word; // => 'FAIL'
 */
export const VERDICT_WORDS: {
  readonly [V in Verdict | 'denied']: { readonly word: V extends 'fail' | 'denied' ? Uppercase<V> : V; readonly means: string };
} = {
  fail: { word: 'FAIL', means: 'a limit is not met' },
  denied: { word: 'DENIED', means: 'the switch has no power left for it' },
  uncertain: { word: 'uncertain', means: 'an answer is missing' },
  marginal: { word: 'marginal', means: 'close to a limit' },
  pass: { word: 'pass', means: '' },
};
