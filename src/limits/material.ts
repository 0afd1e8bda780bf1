/** Every piece of the run has copper conductors: the fraction of its pieces that do. @module */
import type { Limit, LimitWords } from './limit.ts';

/** @internal */
export const MATERIAL: Limit<'material'> = {
  name: 'material',
  aspect: 'power',
  unit: '1',
  side: 'at least',
  neverMarginal: true,
  keptOrNot: true,
  source: 'copper-conductors',
};

/** @internal */
export const MATERIAL_WORDS: LimitWords = {
  title: 'Copper conductors',
  subject: 'pieces that are not copper',
  fails: '{value} of the pieces have copper conductors; power over Ethernet needs copper in all of them',
  wayOut: 'cable of copper',
};
