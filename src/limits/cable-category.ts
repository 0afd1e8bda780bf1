/** The category of cable that the type of port counts on. @module */
import type { Limit, LimitWords } from './limit.ts';

/** @internal */
export const CABLE_CATEGORY: Limit<'cable-category'> = {
  name: 'cable-category',
  aspect: 'cabling',
  unit: '1',
  side: 'at least',
  neverMarginal: true,
  source: 'ieee-802.3-cabling',
};

/** @internal */
export const CABLE_CATEGORY_WORDS: LimitWords = {
  title: 'Category of the cable',
  subject: 'the category of the cable',
  fails: 'a piece is Category {value}; IEEE 802.3 counts on Category {limit} or better for that type of port',
  wayOut: 'a cable of Category 5 or better',
};
