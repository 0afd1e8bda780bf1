/** Installed cable at its average temperature, against what the standard leaves of 90 m when it is warm. @module */
import type { Limit, LimitWords } from './limit.ts';

/** @internal */
export const DERATED_LENGTH: Limit<'derated-length'> = {
  name: 'derated-length',
  aspect: 'cabling',
  unit: 'm',
  source: 'tia-568-permanent-link',
};

/** @internal */
export const DERATED_LENGTH_WORDS: LimitWords = {
  title: 'Installed length, warm',
  subject: 'the length of warm cable',
  fails: 'the installed cable is {value} long; as warm as it is, {standard} leaves it {limit}',
  wayOut: 'a shorter or cooler route',
};
