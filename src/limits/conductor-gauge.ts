/** The thinnest conductor, by its gauge number. @module */
import type { Limit, LimitWords } from './limit.ts';

/** @internal */
export const CONDUCTOR_GAUGE: Limit<'conductor-gauge'> = {
  name: 'conductor-gauge',
  aspect: 'cabling',
  unit: 'AWG',
  neverMarginal: true,
  keptOrNot: true,
  source: 'tia-568-gauge',
};

/** @internal */
export const CONDUCTOR_GAUGE_WORDS: LimitWords = {
  title: 'Thinnest conductor',
  subject: 'the gauge of the conductors',
  fails: 'the thinnest conductor is {value}; {standard} allows nothing thinner than {limit}',
  wayOut: 'thicker cords',
};
