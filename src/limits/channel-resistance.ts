/** The resistance that IEEE 802.3 assumes between the two ends, as hot as it gets. @module */
import type { Limit, LimitWords } from './limit.ts';

/** @internal */
export const CHANNEL_RESISTANCE: Limit<'channel-resistance'> = {
  name: 'channel-resistance',
  aspect: 'cabling',
  unit: 'Ω',
  source: 'ieee-802.3-channel',
};

/** @internal */
export const CHANNEL_RESISTANCE_WORDS: LimitWords = {
  title: 'Channel resistance, hot',
  subject: 'the resistance of the channel',
  fails: 'power sees {value}; IEEE 802.3 counts on at most {limit}',
  wayOut: 'a shorter, thicker or cooler line',
};
