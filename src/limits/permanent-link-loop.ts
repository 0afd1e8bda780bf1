/** Loop resistance of the permanent link, at 20 °C. @module */
import type { Limit, LimitWords } from './limit.ts';

/** @internal */
export const PERMANENT_LINK_LOOP: Limit<'permanent-link-loop'> = {
  name: 'permanent-link-loop',
  aspect: 'cabling',
  unit: 'Ω',
  source: 'iso-11801-permanent-link-loop',
};

/** @internal */
export const PERMANENT_LINK_LOOP_WORDS: LimitWords = {
  title: 'Installed loop at 20 °C',
  subject: 'the pair loop of the permanent link',
  fails: 'a shorted pair of the installed cable is {value} at 20 °C; {standard} allows {limit}',
  wayOut: 'a shorter route, or a switch nearer by',
};
