/** Which ports a switch can power. @module */
import type { PoeClassNumber } from '../../ethernet/class-table.ts';
import { refuse, requireArray, requireFraction, requireObject } from '../../quantity/guards.ts';
import { InputError } from '../../quantity/input-error.ts';
import { refuseUnknown, requireName } from '../../quantity/nearest.ts';
import type { Watts } from '../../quantity/units.ts';
import type { SourceKey } from '../../sources/sources.ts';
import { capacityOf, type SupplyCount } from './capacity.ts';
import { PER_WATT, requireWatts, wholeNanowatts } from './nanowatts.ts';
import { type PortDefault, type PortDemandAtSwitch, portDemand } from './port-demand.ts';
import {
  BASES,
  type BudgetPort,
  PORT_GROUP_FIELDS,
  type PortGroup,
  type PortPriority,
  PRIORITIES,
  SWITCH_BUDGET_FIELDS,
  type SwitchBudgetInput,
} from './switch-input.ts';
import { withPorts } from './with-ports.ts';

export type { BudgetBasis, BudgetPort, PortGroup, PortPriority, PowerSupply, SwitchBudgetInput } from './switch-input.ts';

/** What keeps a port from being powered: the switch, its card, its own limit, or a run that cannot carry the draw. */
export type DeniedBy = 'switch' | 'group' | 'port' | 'run';

/** One port and the power it takes out of the budget. */
export interface BudgetedPort {
  readonly port: number;
  readonly poeClass: PoeClassNumber;
  readonly grantedClass: PoeClassNumber;
  readonly priority: PortPriority;
  /** Taken, or wanted, at the port. [W] */
  readonly power: Watts;
  /** The card it sits on, where it has one. */
  readonly group?: string;
  /** Of a port that is denied: what it was that left no room. */
  readonly deniedBy?: DeniedBy;
}

/** One card and what is left on it. */
export interface GroupBudget {
  readonly group: string;
  /** [W] */
  readonly limit: Watts;
  /** Given to its powered ports. [W] */
  readonly allocated: Watts;
  /** `limit - allocated`. [W] */
  readonly headroom: Watts;
  /** As {@link SwitchBudget.largestAddition}, for a port on this card. [W] */
  readonly largestAddition: Watts;
}

/** Who is powered, and what is left. */
export interface SwitchBudget {
  /** [W] */
  readonly capacity: Watts;
  readonly capacityBasis: 'published' | 'estimate';
  /** Kept back out of the capacity. [W] */
  readonly reserved: Watts;
  /** Supplies fitted, failed and working; absent where one capacity is given. */
  readonly supplies?: SupplyCount;
  /** Given to the powered ports. [W] */
  readonly allocated: Watts;
  /** `capacity - reserved - allocated`. [W] */
  readonly headroom: Watts;
  /** What all the ports together would take. [W] */
  readonly demand: Watts;
  /** `allocated / capacity`, 0 to 1; 0 where there is no capacity. */
  readonly use: number;
  /** The most that one more port, of lowest priority and highest number and on no card, could take with nobody shed for it. [W] */
  readonly largestAddition: Watts;
  /** By priority, then port number. */
  readonly powered: readonly BudgetedPort[];
  /** In the order in which they are shed. */
  readonly denied: readonly BudgetedPort[];
  /** The cards, in the order in which they were given; absent where there are none. */
  readonly groups?: readonly GroupBudget[];
  /** What was taken for granted. */
  readonly assumptions: readonly string[];
  readonly source: SourceKey;
}

/**
 * Which ports of a switch get power, in what order the others are denied, and what is left.
 *
 * Powers are at the port (PSE side). By `class`, a port is set aside its class's printed PSE power; by `requested`, what
 * the request takes at the lowest voltage over the worst channel that its class allows; by `calculated`, what the
 * device's own draw takes over its own run; by `measured`, what was read at the port. A port with a limit of its own grants
 * the highest class within it. One whose limit is under every class or under what it takes, or whose run cannot carry the
 * draw, is denied on its own; it stops nobody else. Under `strict`, once a port does not fit
 * on its card no later one on that card is powered, and once one does not fit the switch, no later one at all; under
 * `fill` what still fits is admitted, in the same order. Adding capacity under `strict` never sheds anyone, but raising the
 * limit of one card can shed a port elsewhere, because a higher one on the card then comes first. The result depends on
 * the capacity and not on what was powered before. Up to 1 MW.
 *
 * @param input - Published capacity [W], budget by working supplies [W] or ratings [W]; the ports with their classes,
 *   draws, requests or measurements [W], runs [Ω] and priorities; reserve, limits of ports and cards [W].
 * @returns Capacity, allocated and headroom [W], the ports powered and the ports denied. Independent of input order.
 * @throws {@link InputError} If a port is listed twice, more supplies have failed than there are, or a number or name
 *   is outside its domain; `parameter` is a path such as `ports[3].poeClass`.
 * @example Two class 4 devices and a class 3 on a 65 W budget
 * const budget = switchBudget({
 *   capacity: 65,
 *   basis: 'class',
 *   ports: [{ port: 1, poeClass: 4 }, { port: 2, poeClass: 3, priority: 'critical' }, { port: 3, poeClass: 4 }],
 * });
 * [budget.allocated, budget.denied.map(({ port }) => port)]; // => [45.4, [3]]
 * @example One of two supplies has failed; the published budgets are 370 W with one and 740 W with both
 * const ports = Array.from({ length: 24 }, (_, index) => ({ port: index + 1, poeClass: 4 as const }));
 * switchBudget({ budgetBySupplies: [370, 740], failed: 1, basis: 'class', ports }).denied.length; // => 12
 */
export function switchBudget(input: SwitchBudgetInput): SwitchBudget {
  return budgetWithLost(input, 0);
}

/** The budget with so many supplies lost beyond those that have failed. @internal */
export function budgetWithLost(input: SwitchBudgetInput, moreLost: number): SwitchBudget {
  requireObject(input, 'input', 'an object with capacity or supplies, ports and basis');
  refuseUnknown(input, Object.keys(SWITCH_BUDGET_FIELDS), '');
  const { ports, basis, policy = 'strict', reserve = 0, portLimit } = input;
  requireArray(ports, 'ports', 'a list of { port, poeClass, priority }');
  requireName(basis, BASES, 'basis');
  requireName(policy, ['strict', 'fill'], 'policy');
  requireFraction(reserve, 'reserve', 'capacity');
  if (portLimit !== undefined) requireWatts(portLimit, 'portLimit');
  const { watts, capacityBasis, supplies, assumptions } = capacityOf(input, moreLost);
  const capacity = wholeNanowatts(watts, 'down');
  const reserved = Math.round(capacity * reserve);
  const usable = capacity - reserved;
  const groups = groupsOf(input.groups === undefined ? [] : input.groups);

  const wanted = ports.map((port, index) => portDemand(port, basis, `ports[${index}]`, portLimit));
  refuseDuplicates(ports);
  for (const [index, { group }] of wanted.entries()) {
    if (group !== undefined && !groups.has(group)) {
      throw new InputError('unknown', `ports[${index}].group`, 'the name of one of groups', group);
    }
  }
  if (basis === 'measured' && ports.length > 0 && ports.every(({ measured }) => measured === undefined)) {
    throw new InputError('conflict', 'basis', "another basis: no port has 'measured'", basis);
  }
  const inOrder = PRIORITIES.flatMap((priority) => wanted.filter((port) => port.priority === priority).sort((a, b) => a.port - b.port));

  const powered: BudgetedPort[] = [];
  const denied: BudgetedPort[] = [];
  let allocated = 0;
  let demand = 0;
  let full = false;
  // Strict: shedding from the end until the rest fits leaves the longest run from the front that fits, on each card and
  // on the switch. Fill: admitting again, in order, what still fits comes to the same as passing over what does not.
  for (const port of inOrder) {
    const power = wholeNanowatts(port.power, 'up');
    demand += power;
    const card = port.group === undefined ? undefined : (groups.get(port.group) as GroupState);
    const by = deniedBy(port, power, card);
    if (by !== undefined) {
      denied.push({ ...budgeted(port), deniedBy: by });
      if (policy === 'strict' && by === 'switch') full = true;
      if (policy === 'strict' && by === 'group') (card as GroupState).full = true;
      continue;
    }
    powered.push(budgeted(port));
    allocated += power;
    if (card !== undefined) card.allocated += power;
  }
  const headroom = usable - allocated;
  const onePort = portLimit === undefined ? Number.POSITIVE_INFINITY : wholeNanowatts(portLimit, 'down');
  const largestAddition = full ? 0 : least(headroom, onePort);
  return {
    capacity: watts,
    capacityBasis,
    reserved: reserved / PER_WATT,
    ...(supplies === undefined ? {} : { supplies }),
    allocated: allocated / PER_WATT,
    headroom: headroom / PER_WATT,
    demand: demand / PER_WATT,
    use: capacity === 0 ? 0 : allocated / capacity,
    largestAddition: largestAddition / PER_WATT,
    powered,
    denied: denied.reverse(),
    ...(groups.size === 0 ? {} : { groups: [...groups.values()].map((group) => groupBudget(group, largestAddition)) }),
    assumptions: [...assumptions, ...assumptionsOf(inOrder)],
    source: basis === 'measured' ? 'measured-power' : capacityBasis === 'published' ? 'switch-data-sheet' : 'supply-ratings',
  };

  function deniedBy({ carried, withinLimit }: PortDemandAtSwitch, power: number, card: GroupState | undefined): DeniedBy | undefined {
    if (!carried) return 'run';
    if (!withinLimit) return 'port';
    if (full) return 'switch';
    if (card !== undefined && (card.full || card.allocated + power > card.limit)) return 'group';
    return allocated + power > usable ? 'switch' : undefined;
  }
}

interface GroupState {
  readonly group: string;
  readonly watts: Watts;
  readonly limit: number;
  allocated: number;
  full: boolean;
}

function groupsOf(groups: readonly PortGroup[]): Map<string, GroupState> {
  requireArray(groups, 'groups', 'a list of { group, limit }');
  const found = new Map<string, GroupState>();
  for (const [index, entry] of groups.entries()) {
    requireObject(entry, `groups[${index}]`, 'an object with group and limit');
    refuseUnknown(entry, Object.keys(PORT_GROUP_FIELDS), `groups[${index}]`);
    const { group, limit } = entry;
    if (typeof group !== 'string') refuse(group, `groups[${index}].group`, 'a text', 'type');
    requireWatts(limit, `groups[${index}].limit`);
    if (found.has(group)) throw new InputError('conflict', `groups[${index}].group`, 'a name that is not listed already', group);
    found.set(group, { group, watts: limit, limit: wholeNanowatts(limit, 'down'), allocated: 0, full: false });
  }
  return found;
}

function groupBudget({ group, watts, limit, allocated, full }: GroupState, ofSwitch: number): GroupBudget {
  const headroom = limit - allocated;
  const largestAddition = full ? 0 : least(headroom, ofSwitch);
  return {
    group,
    limit: watts,
    allocated: allocated / PER_WATT,
    headroom: headroom / PER_WATT,
    largestAddition: largestAddition / PER_WATT,
  };
}

function least(a: number, b: number): number {
  return a < b ? a : b;
}

function budgeted({ port, poeClass, grantedClass, priority, power, group }: PortDemandAtSwitch): BudgetedPort {
  const entry = { port, poeClass, grantedClass, priority, power };
  return group === undefined ? entry : { ...entry, group };
}

function refuseDuplicates(ports: readonly BudgetPort[]): void {
  const seen = new Set<number>();
  for (const [index, { port }] of ports.entries()) {
    if (seen.has(port)) throw new InputError('conflict', `ports[${index}].port`, 'a port that is not listed already', port);
    seen.add(port);
  }
}

const WORDS: Readonly<Record<PortDefault, string>> = {
  type: 'type of port not stated, the weakest that serves the class is taken',
  draw: 'draw not stated, all that the class allows is taken',
  run: 'run not stated, the worst channel is taken',
  measurement: 'no measurement, the power of the class is taken',
};

/** One sentence for each default, with the ports it was applied to, in the order of their numbers. */
function assumptionsOf(wanted: readonly PortDemandAtSwitch[]): string[] {
  const found: string[] = [];
  const note = (words: string, holds: (port: PortDemandAtSwitch) => boolean): void => {
    const numbers = wanted.filter(holds).map(({ port }) => port);
    if (numbers.length > 0) found.push(withPorts(words, numbers));
  };
  for (const name of ['type', 'draw', 'run', 'measurement'] as const) note(WORDS[name], ({ defaults }) => defaults.includes(name));
  note('wants more than the class granted allows a device, which is taken', ({ capped }) => capped);
  note('takes more than the class lets the port give, which may switch it off', ({ overClass }) => overClass);
  return found;
}
