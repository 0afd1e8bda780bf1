/** The class that a device asks for and the class that a port grants. @module */
import { type Fields, readInput } from '../quantity/fields.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Watts } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';
import type { AssignedClassInput } from './assigned-class.ts';
import type { PoeClassNumber } from './class-table.ts';
import { grantedClass } from './granted-class.ts';
import { mostDraw, poeClass } from './poe-class.ts';
import * as port from './port-fields.ts';
import { PSE_TYPES } from './port-table.ts';
import { START_UP_POWER } from './pse-type.ts';

/** A device and the port that it is plugged into. */
export interface ClassAssignmentInput extends AssignedClassInput {
  /** Pairs that the port can power; all of its type's if absent. */
  readonly pairs?: 2 | 4 | undefined;
  /** Most power that the port may give, as its data sheet or its settings say; as much as its type's if absent. [W] */
  readonly portLimit?: Watts | undefined;
}

/** @internal */
export const CLASS_ASSIGNMENT_FIELDS: Fields<ClassAssignmentInput> = {
  requestedClass: () => port.POE_CLASS_FIELD,
  pseType: { oneOf: () => PSE_TYPES },
  pairs: () => port.PAIRS_FIELD,
  portLimit: { nonNegative: 'W', optional: true },
};

interface ClassAssignmentCommon extends AssignedClassInput {
  /** What the device would draw with the class it asks for. [W] */
  readonly requestedPdPower: Watts;
  /** The answer in a sentence. */
  readonly statement: string;
  readonly source: SourceKey;
}

/** The class that a port grants a device and what goes with it, or that it grants none. */
export type ClassAssignment =
  | (ClassAssignmentCommon & {
      /** The class that the port grants. */
      readonly granted: PoeClassNumber;
      /** Whether the device is granted less than it asks for. */
      readonly demoted: boolean;
      /** Pairs that carry the class granted: 4 for classes 5 to 8, else 2 (Types 3 and 4 may power those over 4 as well). */
      readonly pairs: 2 | 4;
      /** What the device may draw while it starts, before a higher class is granted. [W] */
      readonly startUpPower: Watts;
      /** What it may draw afterwards, on average. Classes 0 and 3: 13.0 W, as later editions print. [W] */
      readonly pdPower: Watts;
      /** What the port must be able to give for the class it grants. [W] */
      readonly psePower: Watts;
    })
  | (ClassAssignmentCommon & {
      readonly granted: null;
      /** The limit of the port is under the power of every class that could be granted. */
      readonly reason: 'port-limit';
    });

/**
 * Requested against assigned class, and what the device may draw at first and later.
 *
 * A port grants the highest class it can give (power demotion), and the device must keep to it: a class 8 device on a
 * 60 W port is granted class 6, a class 4 device on a Type 1 port is treated as class 0. A port that powers two pairs
 * only grants class 4 at most, and one with a power limit no class that takes more. Whatever is granted, a device draws
 * at most 13 W while it starts. Classification alone tells a device to keep to class 3, 4 or 6 (memory): any other class
 * under its own it has to learn by LLDP, so ask the data sheet of the switch.
 *
 * @param input - Class that the device asks for (0 to 8), type of the port (1 to 4), pairs and power [W] the port can
 *   give; all of its type's if absent.
 * @returns Both classes and the powers that go with them [W]; `granted: null` where the limit is under the power of every
 *   class that could be granted.
 * @throws {@link InputError} If the class, the type or the number of pairs does not exist, or the type cannot power so many.
 * @see IEEE Std 802.3-2022, 33.2.6 and 145.2.8 (clauses from memory).
 * @example A class 8 device on a Type 3 port
 * classAssignment({ requestedClass: 8, pseType: 3 }).statement;
 * // => 'A Type 3 port grants class 6 to this class 8 device: it may draw 51 W, not 71.3 W, and 13 W while it starts.'
 * @example The same device on a Type 4 port that may give 75 W
 * classAssignment({ requestedClass: 8, pseType: 4, portLimit: 75 }).granted; // => 7
 */
export function classAssignment(input: ClassAssignmentInput): ClassAssignment {
  const { requestedClass, pseType, pairs, portLimit } = readInput(CLASS_ASSIGNMENT_FIELDS, input);
  if (pairs === 4 && pseType < 3) throw new InputError('conflict', 'pairs', `2 pairs for a Type ${pseType} port`, 4);
  const byPort = grantedClass(requestedClass, { pseType, pairs }).grantedClass;
  const { grantedClass: granted, anyClass } = grantedClass(requestedClass, { pseType, pairs, limit: portLimit });
  const requestedPdPower = mostDraw(poeClass(requestedClass));
  const limited = anyClass && granted === byPort ? '' : ` limited to ${portLimit} W`;
  const port = `A Type ${pseType} port${pseType >= 3 && pairs === 2 ? ' with one pairset' : ''}${limited}`;
  const device = `this class ${requestedClass} device`;
  const common = { requestedClass, pseType, requestedPdPower, source: 'ieee-802.3-start-up' } as const;
  if (!anyClass) return { ...common, granted: null, reason: 'port-limit', statement: `${port} grants no class to ${device}.` };

  const limits = poeClass(granted, { pseType });
  const pdPower = mostDraw(limits);
  const demoted = pdPower < requestedPdPower;
  const startUpPower = Math.min(pdPower, START_UP_POWER);
  const draws = demoted ? `${pdPower} W, not ${requestedPdPower} W` : `${pdPower} W`;
  const start = pdPower > START_UP_POWER ? `, and ${startUpPower} W while it starts` : '';
  return {
    ...common,
    granted,
    demoted,
    pairs: limits.pairs,
    startUpPower,
    pdPower,
    psePower: limits.psePower,
    statement: `${port} grants class ${granted} to ${device}: it may draw ${draws}${start}.`,
  };
}
