/** The switch port sources no more than the class's power. @module */
import type { Limit, LimitWords } from './limit.ts';
import { resistanceAtSupplyPower } from './resistance-at.ts';

/** @internal */
export const PSE_POWER: Limit<'pse-power'> = {
  name: 'pse-power',
  aspect: 'power',
  unit: 'W',
  aboutArrival: true,
  source: 'ieee-802.3-class',
  asResistance: (V, load, bound) => (load.power === undefined ? undefined : resistanceAtSupplyPower(V, load.power, bound)),
};

/** @internal */
export const PSE_POWER_WORDS: LimitWords = {
  title: 'Power from the port',
  subject: 'the power of the port',
  fails: 'the port would have to give {value}; for {class} it gives {limit}',
  wayOut: 'a shorter, thicker or cooler line',
};
