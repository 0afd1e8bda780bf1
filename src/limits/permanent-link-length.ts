/** Installed cable alone. @module */
import type { Limit, LimitWords } from './limit.ts';

/** @internal */
export const PERMANENT_LINK_LENGTH: Limit<'permanent-link-length'> = {
  name: 'permanent-link-length',
  aspect: 'cabling',
  unit: 'm',
  source: 'tia-568-permanent-link',
};

/** @internal */
export const PERMANENT_LINK_LENGTH_WORDS: LimitWords = {
  title: 'Installed length',
  subject: 'the length of the permanent link',
  fails: 'the installed cable is {value} long; {standard} allows {limit}',
  wayOut: 'a shorter route, or a switch nearer by',
};
