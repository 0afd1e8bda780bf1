/** How many more devices of one kind a switch could power. @module */
import { type Fields, readInput } from '../../quantity/fields.ts';
import { requireInteger, requireObject } from '../../quantity/guards.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { Watts } from '../../quantity/units.ts';
import { PER_WATT, wholeNanowatts } from './nanowatts.ts';
import { portDemand } from './port-demand.ts';
import { type SwitchBudget, switchBudget } from './switch-budget.ts';
import { type BudgetPort, SWITCH_FIELD, type SwitchBudgetInput } from './switch-input.ts';

/** A device as it would be added: a port without its number. It is added with the lowest priority. */
export interface AddedDevice extends Omit<BudgetPort, 'port' | 'priority'> {
  /** Ports that are still free, a whole number; as many as power allows if absent. */
  readonly freePorts?: number | undefined;
}

/** A switch, and the device that would be added to it. */
export interface RoomForMoreInput {
  /** The switch, as for `switchBudget`. */
  readonly budget: SwitchBudgetInput;
  /** Class, and what else the basis of the budget asks for: request, draw [W], run [Ω], measurement [W], card. */
  readonly device: AddedDevice;
}

/** @internal */
export const ROOM_FOR_MORE_FIELDS: Fields<RoomForMoreInput> = {
  budget: () => SWITCH_FIELD,
  // Its keys are those of a port, and are checked as one.
  device: { check: (device, path) => requireObject(device, path, 'an object with poeClass'), type: 'AddedDevice' },
};

/** How many fit. */
export interface RoomForMore {
  /** Devices that could be added with nobody shed for them; absent where nothing bounds it, because each takes nothing. */
  readonly count?: number;
  /** What one takes at the port, on the basis of the budget. [W] */
  readonly each: Watts;
  /** What keeps one more out; absent where nothing bounds it. */
  readonly limitedBy?: 'switch' | 'group' | 'port' | 'run' | 'free ports';
  /** What is left for a port of the same place when they have been added. [W] */
  readonly left: Watts;
  /** The budget before they are added. */
  readonly budget: SwitchBudget;
}

/**
 * How many more devices of one kind a switch could power with nobody shed for them: room for growth.
 *
 * They are added with the lowest priority and the highest port numbers. Under `strict` a switch, or a card, that already
 * denies someone has no room for more, whatever headroom it shows.
 *
 * @param input - The switch, and the device that would be added.
 * @returns How many, what each takes [W], what keeps one more out, and what is left [W].
 * @throws {@link InputError} As `switchBudget`; `parameter` is a path such as `device.poeClass`.
 * @example Class 3 devices on what 20 of class 4 leave of 740 W
 * const ports = Array.from({ length: 20 }, (_, index) => ({ port: index + 1, poeClass: 4 as const }));
 * const room = roomForMore({ budget: { capacity: 740, basis: 'class', ports }, device: { poeClass: 3 } });
 * [room.count, room.limitedBy, room.left]; // => [9, 'switch', 1.4]
 */
export function roomForMore(input: RoomForMoreInput): RoomForMore {
  const { budget: given, device } = readInput(ROOM_FOR_MORE_FIELDS, input);
  const budget = switchBudget(given);
  const { freePorts, ...added } = device;
  if (freePorts !== undefined) requireInteger(freePorts, 0, 1e6, 'device.freePorts');
  const { power, carried, withinLimit, group } = portDemand({ ...added, port: 1 }, given.basis, 'device', given.portLimit);
  const card = budget.groups?.find((one) => one.group === group);
  if (group !== undefined && card === undefined) throw new InputError('unknown', 'device.group', 'the name of one of groups', group);

  const each = wholeNanowatts(power, 'up');
  const inSwitch = roomOfSwitch(given, budget);
  const room = card === undefined ? inSwitch : roomOfCard(given, budget, card.headroom, group, inSwitch);
  const shared = { each: each / PER_WATT, budget };
  const none = { count: 0, left: room.nanowatts / PER_WATT, ...shared };
  if (!carried) return { limitedBy: 'run', ...none };
  if (!withinLimit) return { limitedBy: 'port', ...none };
  if (room.shut) return { limitedBy: room.by, ...none };
  if (each === 0 && freePorts === undefined) return { left: room.nanowatts / PER_WATT, ...shared };
  const byPower = each === 0 ? Number.POSITIVE_INFINITY : Math.floor(room.nanowatts / each);
  const count = freePorts === undefined || byPower < freePorts ? byPower : freePorts;
  return { count, limitedBy: count < byPower ? 'free ports' : room.by, left: (room.nanowatts - count * each) / PER_WATT, ...shared };
}

interface Room {
  readonly nanowatts: number;
  readonly by: 'switch' | 'group';
  /** Someone is denied already, and under `strict` nobody comes after. */
  readonly shut: boolean;
}

/** What several ports together may still take, without the limit of one port. */
function roomOfSwitch({ policy }: SwitchBudgetInput, budget: SwitchBudget): Room {
  const shut = policy !== 'fill' && budget.denied.some(({ deniedBy }) => deniedBy === 'switch');
  return { nanowatts: shut ? 0 : wholeNanowatts(budget.headroom, 'down'), by: 'switch', shut };
}

function roomOfCard({ policy }: SwitchBudgetInput, budget: SwitchBudget, headroom: Watts, group: string | undefined, ofSwitch: Room): Room {
  const shut = policy !== 'fill' && budget.denied.some((port) => port.deniedBy === 'group' && port.group === group);
  const nanowatts = shut ? 0 : wholeNanowatts(headroom, 'down');
  return !ofSwitch.shut && (shut || nanowatts < ofSwitch.nanowatts) ? { nanowatts, by: 'group', shut } : ofSwitch;
}
