/** The line is under the resistance limit on the device's own data sheet. @module */
import type { Limit, LimitWords } from './limit.ts';

/** @internal */
export const DEVICE_RESISTANCE: Limit<'device-resistance'> = {
  name: 'device-resistance',
  aspect: 'power',
  unit: 'Ω',
  source: 'data-sheet',
  asResistance: (_V, _load, bound) => bound,
};

/** @internal */
export const DEVICE_RESISTANCE_WORDS: LimitWords = {
  title: 'Resistance the device bears',
  subject: 'the stated resistance',
  fails: 'the line has {value}; the device bears at most {limit}',
  failsElse: 'the line has {value} as a shorted pair and {pairset} as one pairset; the device bears {limit} and does not say of which',
  wayOut: 'a shorter, thicker or cooler line',
};
