/** The line can carry the load at all: in watts of a powered device, in ohms of a two-wire line. @module */
import type { Limit, LimitWords } from './limit.ts';
import { resistanceAtCollapse } from './resistance-at.ts';

/** @internal */
export const COLLAPSE: Limit<'collapse'> = {
  name: 'collapse',
  aspect: 'power',
  unit: 'W',
  source: 'collapse',
  asResistance: (V, load) => resistanceAtCollapse(V, load),
};

/** @internal */
export const COLLAPSE_WORDS: LimitWords = {
  title: 'What the line can carry',
  subject: 'what the line can carry',
  fails: 'the device draws {value}; the line can carry at most {limit}',
  failsElse: 'the line has {value}; with more than {limit} it cannot carry the device at all',
  wayOut: 'a shorter, thicker or cooler line',
};
