/** Installed cable and cords. @module */
import type { Limit, LimitWords } from './limit.ts';

/** @internal */
export const CHANNEL_LENGTH: Limit<'channel-length'> = {
  name: 'channel-length',
  aspect: 'cabling',
  unit: 'm',
  source: 'tia-568-channel',
};

/** @internal */
export const CHANNEL_LENGTH_WORDS: LimitWords = {
  title: 'Channel length',
  subject: 'the length of the channel',
  fails: 'the channel, cords included, is {value} long; {standard} allows {limit}',
  wayOut: 'a shorter route, or a switch nearer by',
};
