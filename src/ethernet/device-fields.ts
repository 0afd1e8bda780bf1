/** Fields that several inputs share: a powered device, its port and what they state. @module */
import type { RunResistance } from '../cable/run-resistance.ts';
import type { Field, OptionalField } from '../quantity/fields.ts';
import { requireNonNegative } from '../quantity/guards.ts';
import type { Interval } from '../quantity/interval.ts';
import type { Ohms, Volts, Watts } from '../quantity/units.ts';
import type { PoeClassNumber, PseType } from './class-table.ts';
import { PSE_TYPES } from './port-table.ts';

/** @internal */
export const POE_CLASS: Field<PoeClassNumber> = { whole: [0, 8] };
/** @internal */
export const PSE_TYPE: OptionalField<PseType> = { oneOf: () => PSE_TYPES, optional: true };
/** @internal */
export const PSE_VOLTAGE: OptionalField<Volts> = { positive: 'V', optional: true };
/** @internal */
export const PD_POWER: OptionalField<Watts> = { nonNegative: 'W', optional: true };
/** @internal */
export const POWERED_PAIRS: OptionalField<2 | 4> = { oneOf: () => [2, 4], optional: true };
/** Stated on a data sheet. @internal */
export const MINIMUM_VOLTAGE: OptionalField<Volts> = { positive: 'V', optional: true };
/** One figure, or the range within which it lies. @internal */
export const PORT_VOLTAGE: OptionalField<Volts | Interval> = { positive: 'V', range: true, optional: true };
/** Of a run, the loop that its pairs make is checked when it is picked. @internal */
export const SEEN_LOOP: OptionalField<Ohms | RunResistance> = {
  check: (value, path) => {
    if (typeof value !== 'object' || value === null) requireNonNegative(value, path, 'Ω');
  },
  type: 'RunResistance',
  optional: true,
};
