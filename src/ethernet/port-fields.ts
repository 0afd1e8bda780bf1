/** What several inputs say of a port and its device: fields, and what is taken for what was left out. @module */
import type { RunResistance } from '../cable/run-resistance.ts';
import type { Assumption, Field, OptionalField } from '../quantity/fields.ts';
import { requireNonNegative } from '../quantity/guards.ts';
import type { Interval } from '../quantity/interval.ts';
import type { Ohms, Volts, Watts } from '../quantity/units.ts';
import type { PoeClassNumber, PseType } from './class-table.ts';
import type { PoeClass } from './poe-class.ts';
import { PSE_TYPES } from './port-table.ts';

/** @internal */
export const POE_CLASS_FIELD: Field<PoeClassNumber> = { whole: [0, 8] };

/** @internal */
export const PSE_TYPE_FIELD: OptionalField<PseType> = { oneOf: () => PSE_TYPES, optional: true };

/** @internal */
export const PAIRS_FIELD: OptionalField<2 | 4> = { oneOf: () => [2, 4], optional: true };

/** @internal */
export const PD_POWER_FIELD: OptionalField<Watts> = { nonNegative: 'W', optional: true };

/** @internal */
export const PSE_VOLTAGE_FIELD: OptionalField<Volts> = { positive: 'V', optional: true };

/** @internal */
export const PORT_VOLTAGE_FIELD: OptionalField<Volts | Interval> = { positive: 'V', range: true, optional: true };

/** Of a run, the loop that its pairs make is checked when it is picked. @internal */
export const RESISTANCE_FIELD: OptionalField<Ohms | RunResistance> = {
  check: (value, path) => {
    if (typeof value !== 'object' || value === null) requireNonNegative(value, path, 'Ω');
  },
  type: 'RunResistance',
  optional: true,
};

/** What a caller may leave out of a port, a device and their run. @internal */
export type MayBeLeftOut = 'pdPower' | 'resistance' | 'pseVoltage' | 'pseType';

/** What was taken for those of some keys that were left out: what the class and the type of port allow at worst. @internal */
export function portAssumptions(
  input: { readonly [Key in MayBeLeftOut]?: unknown },
  limits: PoeClass,
  keys: readonly MayBeLeftOut[],
): Assumption[] {
  const taken: Record<MayBeLeftOut, Assumption> = {
    pdPower: { parameter: 'pdPower', value: limits.pdPower, unit: 'W', source: 'ieee-802.3-class' },
    resistance: { parameter: 'resistance', value: limits.channelResistance, unit: 'Ω', source: 'ieee-802.3-channel' },
    pseVoltage: { parameter: 'pseVoltage', value: limits.pseVoltageMin, unit: 'V', source: 'ieee-802.3-pse-voltage' },
    pseType: { parameter: 'pseType', value: limits.type, source: 'ieee-802.3-class' },
  };
  return keys.filter((key) => input[key] === undefined).map((key) => taken[key]);
}
