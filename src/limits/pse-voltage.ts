/** The voltage stated for a switch port lies within the window of its type: the lower end of it. @module */
import type { Limit, LimitWords } from './limit.ts';

/** @internal */
export const PSE_VOLTAGE: Limit<'pse-voltage'> = {
  name: 'pse-voltage',
  aspect: 'power',
  unit: 'V',
  side: 'at least',
  neverMarginal: true,
  source: 'ieee-802.3-pse-voltage',
};

/** The upper end. @internal */
export const PSE_VOLTAGE_TOP: Limit<'pse-voltage'> = {
  name: 'pse-voltage',
  aspect: 'power',
  unit: 'V',
  neverMarginal: true,
  source: 'ieee-802.3-pse-voltage',
};

/** @internal */
export const PSE_VOLTAGE_WORDS: LimitWords = {
  title: 'Voltage of the port',
  subject: 'the voltage of the port',
  fails: 'the port is stated to have {value}; its type has {side} {limit}',
  wayOut: 'a port whose voltage lies within its type',
};
