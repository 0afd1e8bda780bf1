/** Voltage at the device is at least the class's minimum. @module */
import type { Limit, LimitWords } from './limit.ts';
import { resistanceAtVoltage } from './resistance-at.ts';

/** @internal */
export const PD_VOLTAGE: Limit<'pd-voltage'> = {
  name: 'pd-voltage',
  aspect: 'power',
  unit: 'V',
  side: 'at least',
  aboutArrival: true,
  source: 'ieee-802.3-pd-voltage',
  asResistance: (V, load, bound) => resistanceAtVoltage(V, load, bound),
};

/** @internal */
export const PD_VOLTAGE_WORDS: LimitWords = {
  title: 'Voltage the class needs',
  subject: 'the voltage at the device',
  fails: '{value} reach the device; {class} needs at least {limit}',
  wayOut: 'a shorter, thicker or cooler line',
};
