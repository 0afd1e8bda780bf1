/** The hottest piece, where it is hotter than cabling may be. @module */
import type { Limit, LimitWords } from './limit.ts';

/** @internal */
export const CABLE_TEMPERATURE: Limit<'cable-temperature'> = {
  name: 'cable-temperature',
  aspect: 'cabling',
  unit: '°C',
  source: 'cabling-temperature',
};

/** @internal */
export const CABLE_TEMPERATURE_WORDS: LimitWords = {
  title: 'Hottest piece',
  subject: 'the temperature of the cable',
  fails: 'the hottest piece is at {value}; cabling is for at most {limit}',
  wayOut: 'a cooler route',
};
