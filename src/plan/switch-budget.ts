/** Which ports a switch can power. @module */
import { constantPower } from '../circuit/operating-point.ts';
import type { PoeClassNumber, PseType } from '../ethernet/class-table.ts';
import { assignedClass, poeClass } from '../ethernet/poe-class.ts';
import { requireArray, requireInteger, requireNonNegative, requireObject, requireOneOf, requirePositive } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Watts } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';

/** Who keeps power when there is not enough for all (RFC 3621: critical, high, low). */
export type PortPriority = 'critical' | 'high' | 'low';

/** A powered port. */
export interface BudgetPort {
  /** Port number, from 1. */
  readonly port: number;
  /** Class the device asks for, 0 to 8. */
  readonly poeClass: PoeClassNumber;
  /** Type of the port; the weakest that may serve the class if absent. A weaker one grants a lower class. */
  readonly pseType?: PseType | undefined;
  /** Power that the device has asked for at its own input, as in LLDP; all that its class allows if absent. [W] */
  readonly requested?: Watts | undefined;
  /** `low` if absent, as RFC 3621 has it. */
  readonly priority?: PortPriority | undefined;
}

/** One power supply of the switch. */
export interface PowerSupply {
  /** Rated output. [W] */
  readonly power: Watts;
}

interface SwitchBudgetCommon {
  readonly ports: readonly BudgetPort[];
  /** `class`: each port is set aside the power of its class. `requested`: what its request takes over the worst channel. */
  readonly basis: 'class' | 'requested';
  /** `strict` (the default): the lowest priority goes first, highest port number first, until the rest fits. `fill`: what still fits is then admitted again. */
  readonly policy?: 'strict' | 'fill' | undefined;
}

/** A switch and what is plugged into it. */
export type SwitchBudgetInput = SwitchBudgetCommon &
  (
    | {
        /** Published power budget for the ports. [W] */
        readonly capacity: Watts;
        readonly supplies?: undefined;
        readonly systemLoad?: undefined;
      }
    | {
        /** The supplies, where no budget is published: the result is then an estimate. */
        readonly supplies: readonly PowerSupply[];
        /** What the switch itself takes from them; not subtracted if absent. [W] */
        readonly systemLoad?: Watts | undefined;
        readonly capacity?: undefined;
      }
  );

/** One port and the power it takes out of the budget. */
export interface BudgetedPort {
  readonly port: number;
  readonly poeClass: PoeClassNumber;
  readonly grantedClass: PoeClassNumber;
  readonly priority: PortPriority;
  /** Taken, or wanted, at the port. [W] */
  readonly power: Watts;
}

/** Who is powered, and what is left. */
export interface SwitchBudget {
  /** [W] */
  readonly capacity: Watts;
  readonly capacityBasis: 'published' | 'estimate';
  /** Given to the powered ports. [W] */
  readonly allocated: Watts;
  /** `capacity - allocated`. [W] */
  readonly headroom: Watts;
  /** What all the ports together would take. [W] */
  readonly demand: Watts;
  /** `allocated / capacity`, 0 to 1; 0 where there is no capacity. */
  readonly use: number;
  /** By priority, then port number. */
  readonly powered: readonly BudgetedPort[];
  /** In the order in which they are shed. */
  readonly denied: readonly BudgetedPort[];
  /** What was taken for granted. */
  readonly assumptions: readonly string[];
  readonly source: SourceKey;
}

const RANK: Readonly<Record<PortPriority, number>> = { critical: 0, high: 1, low: 2 };
/** Powers are added as whole nanowatts: 24 ports of 15.4 W are 369.6 W, not 369.6000000000001 W. */
const PER_WATT = 1e9;
const MOST_WATTS = 1e6;

/**
 * Which ports of a switch get power, in what order the others are denied, and what is left.
 *
 * Powers are at the port (PSE side). By class, a port is set aside its class's printed PSE power; by request, what the
 * request takes at the lowest voltage over the worst channel that its class allows. Up to 1 MW.
 *
 * @param input - Published capacity [W] or supplies [W], the ports with their classes, requests [W] and priorities.
 * @returns Capacity, allocated and headroom [W], the ports powered and the ports denied. Independent of input order.
 * @throws {@link InputError} If a port is listed twice, or a number or name is outside its domain; `parameter` is a
 *   path such as `ports[3].poeClass`.
 * @example Two class 4 devices and a class 3 on a 65 W budget
 * const budget = switchBudget({
 *   capacity: 65,
 *   basis: 'class',
 *   ports: [{ port: 1, poeClass: 4 }, { port: 2, poeClass: 3, priority: 'critical' }, { port: 3, poeClass: 4 }],
 * });
 * [budget.allocated, budget.denied.map(({ port }) => port)]; // => [45.4, [3]]
 */
export function switchBudget(input: SwitchBudgetInput): SwitchBudget {
  requireObject(input, 'input', 'an object with capacity or supplies, ports and basis');
  const { ports, basis, policy = 'strict' } = input;
  requireArray(ports, 'ports', 'a list of { port, poeClass, priority }');
  requireOneOf(basis, ['class', 'requested'], 'basis');
  requireOneOf(policy, ['strict', 'fill'], 'policy');
  const { watts, capacityBasis, assumptions } = capacityOf(input);
  const capacity = wholeNanowatts(watts, 'down');

  const wanted = ports.map((port, index) => wantedBy(port, basis, `ports[${index}]`));
  wanted.sort((a, b) => RANK[a.priority] - RANK[b.priority] || a.port - b.port);
  refuseDuplicates(ports);

  const powered: BudgetedPort[] = [];
  let denied: BudgetedPort[] = [];
  let allocated = 0;
  let demand = 0;
  let full = false;
  for (const port of wanted) {
    const power = wholeNanowatts(port.power, 'up');
    demand += power;
    // Shedding from the end until the rest fits leaves the longest run from the front that fits.
    full ||= allocated + power > capacity;
    if (full) denied.push(port);
    else {
      powered.push(port);
      allocated += power;
    }
  }
  if (policy === 'fill') {
    const stillDenied: BudgetedPort[] = [];
    for (const port of denied) {
      const power = wholeNanowatts(port.power, 'up');
      if (allocated + power > capacity) stillDenied.push(port);
      else {
        powered.push(port);
        allocated += power;
      }
    }
    denied = stillDenied;
  }
  return {
    capacity: watts,
    capacityBasis,
    allocated: allocated / PER_WATT,
    headroom: (capacity - allocated) / PER_WATT,
    demand: demand / PER_WATT,
    use: capacity === 0 ? 0 : allocated / capacity,
    powered,
    denied: denied.reverse(),
    assumptions,
    source: capacityBasis === 'published' ? 'switch-data-sheet' : 'supply-ratings',
  };
}

function capacityOf(input: SwitchBudgetInput): { watts: Watts; capacityBasis: SwitchBudget['capacityBasis']; assumptions: string[] } {
  const { capacity, supplies, systemLoad } = input;
  if ((capacity === undefined) === (supplies === undefined)) {
    throw new InputError(capacity === undefined ? 'missing' : 'conflict', 'capacity', 'either a capacity or supplies', capacity);
  }
  if (capacity !== undefined) {
    requireWatts(capacity, 'capacity');
    return { watts: capacity, capacityBasis: 'published', assumptions: [] };
  }
  requireArray(supplies, 'supplies', 'a list of { power }');
  let sum = 0;
  for (const [index, supply] of (supplies as readonly PowerSupply[]).entries()) {
    requireObject(supply, `supplies[${index}]`, 'an object with power');
    requirePositive(supply.power, `supplies[${index}].power`, 'W');
    requireWatts(supply.power, `supplies[${index}].power`);
    sum += wholeNanowatts(supply.power, 'down');
  }
  const assumptions = ['capacity is an estimate: supply ratings, not a published budget'];
  if (systemLoad === undefined) assumptions.push('the load of the switch itself is not included');
  else requireWatts(systemLoad, 'systemLoad');
  const left = sum - wholeNanowatts(systemLoad ?? 0, 'up');
  return { watts: left > 0 ? left / PER_WATT : 0, capacityBasis: 'estimate', assumptions };
}

function wantedBy(entry: BudgetPort, basis: 'class' | 'requested', path: string): BudgetedPort {
  requireObject(entry, path, 'an object with port and poeClass');
  const { port, pseType, requested, priority = 'low' } = entry;
  requireInteger(port, 1, 1e6, `${path}.port`);
  requireInteger(entry.poeClass, 0, 8, `${path}.poeClass`);
  requireOneOf(priority, ['critical', 'high', 'low'], `${path}.priority`);
  if (pseType !== undefined) requireOneOf(pseType, [1, 2, 3, 4], `${path}.pseType`);
  const grantedClass = pseType === undefined ? entry.poeClass : assignedClass(entry.poeClass, pseType);
  const limits = poeClass(grantedClass, { pseType });
  let power = limits.psePower;
  if (requested !== undefined) requireNonNegative(requested, `${path}.requested`, 'W');
  if (basis === 'requested' && requested !== undefined) {
    const most = limits.pdPowerLater ?? limits.pdPower;
    if (requested > most) {
      throw new InputError('range', `${path}.requested`, `at most the ${most} W that class ${grantedClass} allows a device`, requested);
    }
    const point = constantPower(limits.pseVoltageMin, limits.channelResistance, requested);
    // Never more than the class itself is set aside, which the standard's rounded figures would otherwise exceed.
    if (point.feasible && point.supplyPower < power) power = point.supplyPower;
  }
  return { port, poeClass: entry.poeClass, grantedClass, priority, power };
}

function refuseDuplicates(ports: readonly BudgetPort[]): void {
  const seen = new Set<number>();
  for (const [index, { port }] of ports.entries()) {
    if (seen.has(port)) throw new InputError('conflict', `ports[${index}].port`, 'a port that is not listed already', port);
    seen.add(port);
  }
}

function requireWatts(value: number, parameter: string): void {
  requireNonNegative(value, parameter, 'W');
  if (value > MOST_WATTS) throw new InputError('range', parameter, 'at most 1e6 W', value);
}

/** A power as whole nanowatts that never overstate what there is (`down`) or understate what is drawn (`up`). */
function wholeNanowatts(watts: Watts, safeSide: 'up' | 'down'): number {
  const nearest = Math.round(watts * PER_WATT);
  if (safeSide === 'down') return nearest / PER_WATT > watts ? nearest - 1 : nearest;
  return nearest / PER_WATT < watts ? nearest + 1 : nearest;
}
