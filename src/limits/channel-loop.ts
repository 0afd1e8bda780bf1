/** Loop resistance of the channel, at 20 °C. @module */
import type { Limit, LimitWords } from './limit.ts';

/** @internal */
export const CHANNEL_LOOP: Limit<'channel-loop'> = {
  name: 'channel-loop',
  aspect: 'cabling',
  unit: 'Ω',
  source: 'tia-568.2-d-loop',
};

/** @internal */
export const CHANNEL_LOOP_WORDS: LimitWords = {
  title: 'Channel loop at 20 °C',
  subject: 'the pair loop of the channel',
  fails: 'a shorted pair of the channel is {value} at 20 °C; {standard} allows {limit}',
  wayOut: 'a shorter route, or a switch nearer by',
};
