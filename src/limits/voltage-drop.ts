/** The drop along a two-wire circuit is within what is permitted: a fraction of the supply voltage, or volts. @module */
import type { Limit, LimitWords } from './limit.ts';
import { resistanceAtVoltage } from './resistance-at.ts';

/** @internal */
export const VOLTAGE_DROP: Limit<'voltage-drop'> = {
  name: 'voltage-drop',
  aspect: 'power',
  unit: '1',
  aboutArrival: true,
  source: 'data-sheet',
  asResistance: (V, load, bound, unit) =>
    unit === 'V' ? (bound < V ? resistanceAtVoltage(V, load, V - bound) : undefined) : resistanceAtVoltage(V, load, V * (1 - bound)),
};

/** @internal */
export const VOLTAGE_DROP_WORDS: LimitWords = {
  title: 'Permitted drop',
  subject: 'the permitted drop',
  fails: '{value} of the voltage is lost along the run; {limit} is permitted',
  wayOut: 'a shorter, thicker or cooler line',
};
