/** Installed cable and cords as metres of cool installed cable that loses as much signal: the open-office rule of cords. @module */
import type { Limit, LimitWords } from './limit.ts';

/** @internal */
export const INSERTION_LOSS_LENGTH: Limit<'insertion-loss-length'> = {
  name: 'insertion-loss-length',
  aspect: 'cabling',
  unit: 'm',
  source: 'tia-568-open-office',
};

/** @internal */
export const INSERTION_LOSS_LENGTH_WORDS: LimitWords = {
  title: 'Length as a signal sees it',
  subject: 'the loss of signal',
  fails: 'cable and cords count as {value} of cool installed cable; {standard} allows {limit}',
  wayOut: 'shorter cords, or a shorter or cooler route',
};
