/** Voltage at the device, drawing nothing at the highest supply, is within the maximum on its data sheet. @module */
import type { Limit, LimitWords } from './limit.ts';

/** @internal */
export const DEVICE_OVERVOLTAGE: Limit<'device-overvoltage'> = {
  name: 'device-overvoltage',
  aspect: 'power',
  unit: 'V',
  source: 'data-sheet',
};

/** @internal */
export const DEVICE_OVERVOLTAGE_WORDS: LimitWords = {
  title: 'Voltage the device bears',
  subject: 'the stated highest voltage',
  fails: 'up to {value} reach the device when it draws nothing; it bears at most {limit}',
  wayOut: 'a supply that stays within what the device bears',
};
