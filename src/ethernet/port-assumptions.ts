/** What is taken for a port, a device and their run where nobody stated it. @module */
import type { Assumption } from '../quantity/fields.ts';
import type { PoeClass } from './poe-class.ts';

/** What a caller may leave out of a port, a device and their run. @internal */
export interface StatedPort {
  readonly pdPower?: unknown;
  readonly resistance?: unknown;
  readonly pseVoltage?: unknown;
  readonly pseType?: unknown;
}

/** What was taken for those of some keys that were left out: what the class and the type of port allow at worst. @internal */
export function portAssumptions(input: StatedPort, limits: PoeClass, keys: readonly (keyof StatedPort)[]): Assumption[] {
  const taken: Record<keyof StatedPort, Assumption> = {
    pdPower: { parameter: 'pdPower', value: limits.pdPower, unit: 'W', source: 'ieee-802.3-class' },
    resistance: { parameter: 'resistance', value: limits.channelResistance, unit: 'Ω', source: 'ieee-802.3-channel' },
    pseVoltage: { parameter: 'pseVoltage', value: limits.pseVoltageMin, unit: 'V', source: 'ieee-802.3-pse-voltage' },
    pseType: { parameter: 'pseType', value: limits.type, source: 'ieee-802.3-class' },
  };
  return keys.filter((key) => input[key] === undefined).map((key) => taken[key]);
}
