/** The enumerations of RFC 3621, by which switches are asked about their ports. @module */
import { requireInteger, requireObject } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import { requireName } from '../quantity/nearest.ts';
import type { PoeClassNumber } from './class-table.ts';
import { nameOfValue } from './lldp-fields.ts';

/**
 * Objects of the Power Ethernet MIB and the numbers of their values.
 *
 * RFC 3621 (2003). A port's classification is valid only while it is `deliveringPower`. No value exists for classes 5
 * to 8, nor for four-pair power: what a switch reports beyond these is its maker's own.
 *
 * @example
 * RFC_3621.pethPsePortDetectionStatus.deliveringPower; // => 3
 */
// biome-ignore format: an object a line
export const RFC_3621 = {
  pethPsePortDetectionStatus: { disabled: 1, searching: 2, deliveringPower: 3, fault: 4, test: 5, otherFault: 6 },
  pethPsePortPowerPairs: { signal: 1, spare: 2 },
  pethPsePortPowerPriority: { critical: 1, high: 2, low: 3 },
  pethPsePortPowerClassifications: { class0: 1, class1: 2, class2: 3, class3: 4, class4: 5 },
  pethMainPseOperStatus: { on: 1, off: 2, faulty: 3 },
} as const;

/** An enumerated object of RFC 3621. */
export type Rfc3621Object = keyof typeof RFC_3621;

/** The names of the values of one object. */
export type Rfc3621Name<O extends Rfc3621Object> = Extract<keyof (typeof RFC_3621)[O], string>;

/**
 * Numbers of RFC 3621 that are no enumerations.
 *
 * @example
 * RFC_3621_FACTS.oid; // => '1.3.6.1.2.1.105'
 */
// biome-ignore format: one fact a line
export const RFC_3621_FACTS = {
  oid: '1.3.6.1.2.1.105',
  /** Nominal power of the supply, least and most. [W] */
  pethMainPsePower: [1, 65535],
  /** What the powered ports take, measured, in whole watts, at the ports and not at the devices. [W] */
  pethMainPseConsumptionPower: 'W',
  /** Share of the power at which an alarm is raised, least and most. [%] */
  pethMainPseUsageThreshold: [1, 99],
} as const;

/** An object of RFC 3621 and its value. */
export interface Rfc3621NameInput<O extends Rfc3621Object> {
  readonly object: O;
  /** Number that was read. */
  readonly value: number;
}

/**
 * The name of a value that a switch has answered.
 *
 * @param input - Object of RFC 3621, and the number that was read.
 * @returns Its name.
 * @throws {@link InputError} If there is no such object, or it has no such value.
 * @example
 * rfc3621Name({ object: 'pethPsePortPowerPriority', value: 1 }); // => 'critical'
 */
export function rfc3621Name<O extends Rfc3621Object>(input: Rfc3621NameInput<O>): Rfc3621Name<O> {
  requireObject(input, 'input', 'an object with object and value');
  requireName(input.object, Object.keys(RFC_3621), 'object');
  return nameOfValue(RFC_3621[input.object], input.value) as Rfc3621Name<O>;
}

/**
 * The class behind a value of `pethPsePortPowerClassifications`: the value less 1.
 *
 * @param value - Number that was read, 1 to 5.
 * @returns Class, 0 to 4.
 * @throws {@link InputError} If the value is not a whole number from 1 to 5: RFC 3621 has none for classes 5 to 8.
 * @example
 * rfc3621Class(5); // => 4
 */
export function rfc3621Class(value: number): PoeClassNumber {
  requireInteger(value, 1, 5, 'value');
  return (value - 1) as PoeClassNumber;
}

/**
 * The value of `pethPsePortPowerClassifications` for a class: the class and 1.
 *
 * @param poeClass - Class, 0 to 4.
 * @returns Value of the object, a number from 1 to 5.
 * @throws {@link InputError} If the class has no value: RFC 3621 has none for classes 5 to 8.
 * @example
 * rfc3621Classification(4); // => 5
 */
export function rfc3621Classification(poeClass: PoeClassNumber): number {
  requireInteger(poeClass, 0, 8, 'poeClass');
  if (poeClass > 4) throw new InputError('range', 'poeClass', 'a class from 0 to 4: RFC 3621 has no value for classes 5 to 8', poeClass);
  return poeClass + 1;
}
