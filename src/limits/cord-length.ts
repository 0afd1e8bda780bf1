/** The longest single cord. @module */
import type { Limit, LimitWords } from './limit.ts';

/** @internal */
export const CORD_LENGTH: Limit<'cord-length'> = {
  name: 'cord-length',
  aspect: 'cabling',
  unit: 'm',
  source: 'tia-568-work-area-cord',
};

/** @internal */
export const CORD_LENGTH_WORDS: LimitWords = {
  title: 'Longest cord',
  subject: 'the length of one cord',
  fails: 'the longest cord is {value}; {standard} allows {limit}',
  wayOut: 'shorter cords',
};
