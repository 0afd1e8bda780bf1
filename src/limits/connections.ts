/** Connections along the channel: four of four are all that there may be, and no narrow escape. @module */
import type { Limit, LimitWords } from './limit.ts';

/** @internal */
export const CONNECTIONS: Limit<'connections'> = {
  name: 'connections',
  aspect: 'cabling',
  unit: '1',
  neverMarginal: true,
  keptOrNot: true,
  source: 'channel-connections',
};

/** @internal */
export const CONNECTIONS_WORDS: LimitWords = {
  title: 'Connections',
  subject: 'the number of connections',
  fails: 'there are {value} connections (an in-line coupler is two); {standard} allows {limit}',
  wayOut: 'fewer connections',
};
