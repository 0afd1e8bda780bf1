/** The two conductors of a pair are alike enough. @module */
import type { Limit, LimitWords } from './limit.ts';

/** @internal */
export const PAIR_UNBALANCE: Limit<'pair-unbalance'> = {
  name: 'pair-unbalance',
  aspect: 'power',
  unit: 'Ω',
  source: 'ieee-802.3-unbalance',
};

/** @internal */
export const PAIR_UNBALANCE_WORDS: LimitWords = {
  title: 'Unbalance within a pair',
  subject: 'the unbalance within a pair',
  fails: 'the two conductors of a pair differ by {value}; {limit} is allowed',
  wayOut: 'a better pair or connection',
};
