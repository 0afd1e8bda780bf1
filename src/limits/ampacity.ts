/** The current of each conductor against the table of a code. @module */
import type { Limit, LimitWords } from './limit.ts';
import { resistanceAtVoltage } from './resistance-at.ts';

/** @internal */
export const AMPACITY: Limit<'ampacity'> = {
  name: 'ampacity',
  aspect: 'heat',
  unit: 'A',
  aboutArrival: true,
  source: 'data-sheet',
  asResistance: (V, load, bound) => (load.power ? resistanceAtVoltage(V, load, load.power / bound) : undefined),
};

/** @internal */
export const AMPACITY_WORDS: LimitWords = {
  title: 'Current of a conductor',
  subject: 'the ampacity',
  fails: 'each conductor carries {value}; the code allows {limit} in this bundle',
  wayOut: 'a smaller bundle or thicker conductors',
};
