/** A short at the far end draws what opens the protective device. @module */
import type { Limit, LimitWords } from './limit.ts';

/** @internal */
export const FAULT_CURRENT: Limit<'fault-current'> = {
  name: 'fault-current',
  aspect: 'power',
  unit: 'A',
  side: 'at least',
  source: 'data-sheet',
};

/** @internal */
export const FAULT_CURRENT_WORDS: LimitWords = {
  title: 'Current that opens the fuse',
  subject: 'the current of a short',
  fails: 'a short at the far end draws {value}; its protective device needs at least {limit} to open',
  wayOut: 'a shorter or thicker line, or a protective device of a lower current',
};
