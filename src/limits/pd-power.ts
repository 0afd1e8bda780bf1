/** The device draws no more than its class allows. @module */
import type { Limit, LimitWords } from './limit.ts';

/** @internal */
export const PD_POWER: Limit<'pd-power'> = {
  name: 'pd-power',
  aspect: 'power',
  unit: 'W',
  neverMarginal: true,
  keptOrNot: true,
  source: 'ieee-802.3-class',
};

/** @internal */
export const PD_POWER_WORDS: LimitWords = {
  title: 'Power the class allows',
  subject: 'the power of the device',
  fails: 'the device draws {value}; {class} allows it {limit}',
  failsElse: 'the Type {type} port grants {class}: {limit}; the device, class {requestedClass}, wants {value}',
  wayOut: 'a stronger port, or a device that keeps to what its port grants',
};
