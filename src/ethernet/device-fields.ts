/** Fields that several inputs share: a powered device, its port and what they state. @module */
import type { Field, OptionalField } from '../quantity/fields.ts';
import type { Volts, Watts } from '../quantity/units.ts';
import type { PoeClassNumber, PseType } from './class-table.ts';

/** @internal */
export const POE_CLASS: Field<PoeClassNumber> = { whole: [0, 8] };
/** @internal */
export const PSE_TYPE: OptionalField<PseType> = { oneOf: () => [1, 2, 3, 4], optional: true };
/** @internal */
export const PSE_VOLTAGE: OptionalField<Volts> = { positive: 'V', optional: true };
/** @internal */
export const PD_POWER: OptionalField<Watts> = { nonNegative: 'W', optional: true };
/** @internal */
export const POWERED_PAIRS: OptionalField<2 | 4> = { oneOf: () => [2, 4], optional: true };
/** Stated on a data sheet. @internal */
export const MINIMUM_VOLTAGE: OptionalField<Volts> = { positive: 'V', optional: true };
