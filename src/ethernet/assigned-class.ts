/** The class that a type of port grants. @module */
import { type Fields, readInput } from '../quantity/fields.ts';
import { requireInteger, requireOneOf } from '../quantity/guards.ts';
import type { PoeClassNumber, PseType } from './class-table.ts';
import * as port from './port-fields.ts';
import { PSE_TYPES, portRow } from './port-table.ts';

/** A class and the type of port that is asked for it. */
export interface AssignedClassInput {
  /** Class that the device asks for, 0 to 8. */
  readonly requestedClass: PoeClassNumber;
  /** Type of the port, 1 to 4. */
  readonly pseType: PseType;
}

/** @internal */
export const ASSIGNED_CLASS_FIELDS: Fields<AssignedClassInput> = {
  requestedClass: () => port.POE_CLASS_FIELD,
  pseType: { oneOf: () => PSE_TYPES },
};

/**
 * The class that a type of port grants to a device that asks for more than it can give (power demotion).
 *
 * Type 1 treats class 4 as class 0; Type 2 knows classes up to 4; Type 3 up to 6. The device must then keep to the
 * granted class. For ports with one pairset or a power limit of their own see {@link classAssignment}.
 *
 * @param input - Class the device asks for, 0 to 8, and type of the port, 1 to 4.
 * @returns The class granted; the requested one itself where the port can give it.
 * @throws {@link InputError} If the class or type does not exist.
 * @example A class 8 device on a Type 3 port
 * assignedClass({ requestedClass: 8, pseType: 3 }); // => 6
 */
export function assignedClass(input: AssignedClassInput): PoeClassNumber {
  const { requestedClass, pseType } = readInput(ASSIGNED_CLASS_FIELDS, input);
  return grantedByType(requestedClass, pseType);
}

/** The same out of an input in which the class is `poeClass`. @internal */
export function grantedByType(requested: PoeClassNumber, type: PseType): PoeClassNumber {
  requireInteger(requested, 0, 8, 'poeClass');
  requireOneOf(type, PSE_TYPES, 'pseType');
  const { highestClass, grantedBeyond = highestClass } = portRow(type);
  return requested > highestClass ? grantedBeyond : requested;
}
