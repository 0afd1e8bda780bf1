/** Two pairs of one polarity are alike enough. @module */
import type { Limit, LimitWords } from './limit.ts';

/** @internal */
export const PAIR_TO_PAIR_UNBALANCE: Limit<'pair-to-pair-unbalance'> = {
  name: 'pair-to-pair-unbalance',
  aspect: 'power',
  unit: 'Ω',
  source: 'ieee-802.3-unbalance',
};

/** @internal */
export const PAIR_TO_PAIR_UNBALANCE_WORDS: LimitWords = {
  title: 'Unbalance between pairs',
  subject: 'the unbalance between pairs',
  fails: 'two pairs differ by {value}; {limit} is allowed',
  wayOut: 'better pairs or connections',
};
