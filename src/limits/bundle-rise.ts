/** Its rise above the air against the rise that is recommended. @module */
import type { Limit, LimitWords } from './limit.ts';

/** @internal */
export const BUNDLE_RISE: Limit<'bundle-rise'> = {
  name: 'bundle-rise',
  aspect: 'heat',
  unit: 'K',
  source: 'bundle-rise-15',
};

/** @internal */
export const BUNDLE_RISE_WORDS: LimitWords = {
  title: 'Rise of the bundle',
  subject: 'the rise of the bundle',
  fails: 'its bundle gets {value} warmer than the air; {limit} is recommended',
  wayOut: 'a smaller bundle or thicker conductors',
};
