/** Voltage at the device is at least the minimum on its own data sheet. @module */
import type { Limit, LimitWords } from './limit.ts';
import { resistanceAtVoltage } from './resistance-at.ts';

/** @internal */
export const DEVICE_VOLTAGE: Limit<'device-voltage'> = {
  name: 'device-voltage',
  aspect: 'power',
  unit: 'V',
  side: 'at least',
  aboutArrival: true,
  source: 'data-sheet',
  asResistance: (V, load, bound) => resistanceAtVoltage(V, load, bound),
};

/** @internal */
export const DEVICE_VOLTAGE_WORDS: LimitWords = {
  title: 'Voltage the device needs',
  subject: 'the stated lowest voltage',
  fails: '{value} reach the device; it needs at least {limit}',
  wayOut: 'a shorter, thicker or cooler line',
};
