/** The limits of a run in plain words, as they stand on the page; the core calls them by the names. @module */
import type { CheckName } from '../../circuit/check.ts';

/** What each limit is about. */
export const LIMIT_WORDS: Readonly<Record<CheckName, string>> = {
  'pd-power': 'the power of the device',
  'pse-power': 'the power of the port',
  'pd-voltage': 'the voltage at the device',
  collapse: 'what the line can carry',
  'device-voltage': 'the stated lowest voltage',
  'device-resistance': 'the stated resistance',
  'pse-voltage': 'the voltage of the port',
  'pair-unbalance': 'the unbalance within a pair',
  'pair-to-pair-unbalance': 'the unbalance between pairs',
  'voltage-drop': 'the permitted drop',
  'device-overvoltage': 'the stated highest voltage',
  'fault-current': 'the current of a short',
  material: 'pieces that are not copper',
  'channel-length': 'the length of the channel',
  'permanent-link-length': 'the length of the permanent link',
  connections: 'the number of connections',
  'channel-loop': 'the pair loop of the channel',
  'permanent-link-loop': 'the pair loop of the permanent link',
  'channel-resistance': 'the resistance of the channel',
  'cable-category': 'the category of the cable',
  'derated-length': 'the length of warm cable',
  'insertion-loss-length': 'the loss of signal',
  'cord-length': 'the length of one cord',
  'conductor-gauge': 'the gauge of the conductors',
  'cable-temperature': 'the temperature of the cable',
  'conductor-temperature': 'the temperature of the conductors',
  'bundle-rise': 'the rise of the bundle',
  ampacity: 'the ampacity',
};
