/** The middle of the bundle against what the cable is rated for. @module */
import type { Limit, LimitWords } from './limit.ts';

/** @internal */
export const CONDUCTOR_TEMPERATURE: Limit<'conductor-temperature'> = {
  name: 'conductor-temperature',
  aspect: 'heat',
  unit: '°C',
  source: 'data-sheet',
};

/** @internal */
export const CONDUCTOR_TEMPERATURE_WORDS: LimitWords = {
  title: 'Middle of the bundle',
  subject: 'the temperature of the conductors',
  fails: 'the middle of its bundle gets to {value}; the cable is rated for {limit}',
  wayOut: 'a smaller bundle, a cooler route or thicker conductors',
};
