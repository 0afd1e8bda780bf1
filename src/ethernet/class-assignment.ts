/** The class that a device asks for and the class that a port grants. @module */
import { requireInteger, requireNonNegative, requireObject, requireOneOf } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Watts } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';
import type { PoeClassNumber, PseType } from './class-table.ts';
import { classWithin } from './class-within.ts';
import { assignedClass, poeClass } from './poe-class.ts';
import { PSE_TYPES } from './port-table.ts';
import { START_UP_POWER } from './pse-type.ts';

/** A device and the port that it is plugged into. */
export interface ClassAssignmentInput {
  /** Class that the device asks for, 0 to 8. */
  readonly requestedClass: PoeClassNumber;
  /** Type of the port, 1 to 4. */
  readonly pseType: PseType;
  /** Pairs that the port can power; all of its type's if absent. */
  readonly pairs?: 2 | 4 | undefined;
  /** Most power that the port may give, as its data sheet or its settings say; as much as its type's if absent. [W] */
  readonly portLimit?: Watts | undefined;
}

/** What is settled between a port and a device. */
export interface ClassAssignment {
  readonly requestedClass: PoeClassNumber;
  /** The class that the port grants. */
  readonly assignedClass: PoeClassNumber;
  /** Whether the device is granted less than it asks for. */
  readonly demoted: boolean;
  readonly pseType: PseType;
  /** Pairs that carry the class granted: 4 for classes 5 to 8, else 2 (Types 3 and 4 may power those over 4 as well). */
  readonly pairs: 2 | 4;
  /** What the device may draw while it starts, before a higher class is granted. [W] */
  readonly startUpPower: Watts;
  /** What it may draw afterwards, on average. Classes 0 and 3: 13.0 W, as later editions print. [W] */
  readonly pdPower: Watts;
  /** What it would draw with the class it asks for. [W] */
  readonly requestedPdPower: Watts;
  /** What the port must be able to give for the class it grants. [W] */
  readonly psePower: Watts;
  /** The same in a sentence. */
  readonly statement: string;
  readonly source: SourceKey;
}

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
 * @returns Both classes and the powers that go with them [W].
 * @throws {@link InputError} If the class, the type or the number of pairs does not exist, the type cannot power so many,
 *   or the limit is under the power of every class that could be granted.
 * @see IEEE Std 802.3-2022, 33.2.6 and 145.2.8 (clauses from memory).
 * @example A class 8 device on a Type 3 port
 * classAssignment({ requestedClass: 8, pseType: 3 }).statement;
 * // => 'A Type 3 port grants class 6 to this class 8 device: it may draw 51 W, not 71.3 W, and 13 W while it starts.'
 * @example The same device on a Type 4 port that may give 75 W
 * classAssignment({ requestedClass: 8, pseType: 4, portLimit: 75 }).assignedClass; // => 7
 */
export function classAssignment(input: ClassAssignmentInput): ClassAssignment {
  requireObject(input, 'input', 'an object with requestedClass and pseType');
  const { requestedClass, pseType, pairs, portLimit } = input;
  requireInteger(requestedClass, 0, 8, 'requestedClass');
  requireOneOf(pseType, PSE_TYPES, 'pseType');
  if (pairs !== undefined) requireOneOf(pairs, [2, 4], 'pairs');
  if (portLimit !== undefined) requireNonNegative(portLimit, 'portLimit', 'W');
  if (pairs === 4 && pseType < 3) throw new InputError('conflict', 'pairs', `2 pairs for a Type ${pseType} port`, 4);
  const byType = assignedClass(requestedClass, pseType);
  const byPairs = pairs === 2 && byType > 4 ? 4 : byType;
  const assigned = portLimit === undefined ? byPairs : classWithin(byPairs, pseType, portLimit);
  if (assigned === undefined) throw new InputError('range', 'portLimit', 'at least the 4 W that class 1 takes at the port', portLimit);
  const requested = poeClass(requestedClass);
  const granted = poeClass(assigned, { pseType });
  const pdPower = granted.pdPowerLater ?? granted.pdPower;
  const requestedPdPower = requested.pdPowerLater ?? requested.pdPower;
  const demoted = pdPower < requestedPdPower;
  const startUpPower = pdPower < START_UP_POWER ? pdPower : START_UP_POWER;
  const draws = demoted ? `${pdPower} W, not ${requestedPdPower} W` : `${pdPower} W`;
  const start = pdPower > START_UP_POWER ? `, and ${startUpPower} W while it starts` : '';
  const limited = assigned === byPairs ? '' : ` limited to ${portLimit} W`;
  const port = `A Type ${pseType} port${pseType >= 3 && pairs === 2 ? ' with one pairset' : ''}${limited}`;
  return {
    requestedClass,
    assignedClass: assigned,
    demoted,
    pseType,
    pairs: granted.pairs,
    startUpPower,
    pdPower,
    requestedPdPower,
    psePower: granted.psePower,
    statement: `${port} grants class ${assigned} to this class ${requestedClass} device: it may draw ${draws}${start}.`,
    source: 'ieee-802.3-start-up',
  };
}
