/** What a switch has to give: published, or estimated from its supplies. @module */
import { refuse, requireArray, requireInteger, requireObject, requirePositive } from '../../quantity/guards.ts';
import { InputError } from '../../quantity/input-error.ts';
import { refuseUnknown } from '../../quantity/nearest.ts';
import type { Watts } from '../../quantity/units.ts';
import { PER_WATT, requireWatts, wholeNanowatts } from './nanowatts.ts';
import { POWER_SUPPLY_FIELDS, type PowerSupply, type SwitchBudgetInput } from './switch-input.ts';

/** @internal */
export interface Capacity {
  readonly watts: Watts;
  readonly capacityBasis: 'published' | 'estimate';
  readonly supplies?: SupplyCount;
  readonly assumptions: readonly string[];
}

/** Supplies of a switch. */
export interface SupplyCount {
  readonly fitted: number;
  readonly failed: number;
  readonly working: number;
}

/** The capacity with the supplies that have failed, and with so many more of the largest lost. @internal */
export function capacityOf(input: SwitchBudgetInput, moreLost: number): Capacity {
  const { capacity, supplies, budgetBySupplies } = input;
  const given = [capacity, supplies, budgetBySupplies].filter((one) => one !== undefined).length;
  if (given !== 1) {
    throw new InputError(given === 0 ? 'missing' : 'conflict', 'capacity', 'either a capacity, budgetBySupplies or supplies', capacity);
  }
  if (budgetBySupplies !== undefined) return published(budgetBySupplies, input, moreLost);
  if (supplies !== undefined) return estimated(supplies, input, moreLost);
  requireWatts(capacity as Watts, 'capacity');
  if (input.failed !== undefined || moreLost > 0) {
    throw new InputError(
      'conflict',
      'failed',
      'budgetBySupplies or supplies, because one capacity does not tell what is left',
      input.failed,
    );
  }
  return { watts: (capacity as Watts) + 0, capacityBasis: 'published', assumptions: [] }; // no -0
}

function published(budgets: readonly Watts[], input: SwitchBudgetInput, moreLost: number): Capacity {
  requireSome(budgets, 'budgetBySupplies', 'a list of powers: with one supply working, with two, and so on');
  const { fitted = budgets.length, failed = 0 } = input;
  for (const [index, budget] of budgets.entries()) {
    requireWatts(budget, `budgetBySupplies[${index}]`);
    const before = budgets[index - 1] ?? 0;
    if (budget < before)
      throw new InputError('conflict', `budgetBySupplies[${index}]`, `at least the ${before} W of one supply less`, budget);
  }
  requireInteger(fitted, 0, budgets.length, 'fitted');
  requireInteger(failed as number, 0, fitted, 'failed');
  const lost = (failed as number) + moreLost;
  if (lost > fitted) throw noneLeft(fitted, failed);
  const working = fitted - lost;
  return {
    watts: working === 0 ? 0 : (budgets[working - 1] as Watts),
    capacityBasis: 'published',
    supplies: { fitted, failed: lost, working },
    assumptions: [],
  };
}

function estimated(supplies: readonly PowerSupply[], { systemLoad, failed = 0 }: SwitchBudgetInput, moreLost: number): Capacity {
  requireSome(supplies, 'supplies', 'a list of { power }');
  for (const [index, supply] of supplies.entries()) {
    requireObject(supply, `supplies[${index}]`, 'an object with power');
    refuseUnknown(supply, Object.keys(POWER_SUPPLY_FIELDS), `supplies[${index}]`);
    const { power, name } = supply;
    requirePositive(power, `supplies[${index}].power`, 'W');
    requireWatts(power, `supplies[${index}].power`);
    if (name !== undefined && typeof name !== 'string') refuse(name, `supplies[${index}].name`, 'a text', 'type');
  }
  const named = Array.isArray(failed) ? namedSupplies(supplies, failed) : new Set<PowerSupply>();
  const left = supplies.filter((supply) => !named.has(supply)).sort((a, b) => b.power - a.power);
  if (!Array.isArray(failed)) requireInteger(failed as number, 0, supplies.length, 'failed');
  const largestLost = (Array.isArray(failed) ? 0 : (failed as number)) + moreLost;
  if (largestLost > left.length) throw noneLeft(supplies.length, failed);
  const working = left.slice(largestLost);

  const assumptions = ['capacity is an estimate: supply ratings, not a published budget'];
  if (systemLoad === undefined) assumptions.push('the load of the switch itself is not included');
  else requireWatts(systemLoad, 'systemLoad');
  let nanowatts = -wholeNanowatts(systemLoad ?? 0, 'up');
  for (const { power } of working) nanowatts += wholeNanowatts(power, 'down');
  return {
    watts: nanowatts > 0 ? nanowatts / PER_WATT : 0,
    capacityBasis: 'estimate',
    supplies: { fitted: supplies.length, failed: supplies.length - working.length, working: working.length },
    assumptions,
  };
}

function requireSome(list: readonly unknown[], parameter: string, what: string): void {
  requireArray(list, parameter, what);
  if (list.length === 0) throw new InputError('missing', parameter, `${what}, with at least one in it`, list);
}

/** Only a loss beyond those that have failed can come so far. */
function noneLeft(fitted: number, failed: SwitchBudgetInput['failed']): InputError {
  return new InputError('range', 'failed', `fewer than the ${fitted} fitted, so that a supply is left to lose`, failed);
}

function namedSupplies(supplies: readonly PowerSupply[], names: readonly string[]): Set<PowerSupply> {
  const found = new Set<PowerSupply>();
  for (const [index, name] of names.entries()) {
    const called = supplies.filter((supply) => supply.name !== undefined && supply.name === name);
    const [supply] = called;
    if (supply === undefined) throw new InputError('unknown', `failed[${index}]`, 'the name of one of the supplies', name);
    if (called.length > 1) {
      throw new InputError('conflict', `failed[${index}]`, `a name that one supply alone has, not ${called.length} of them`, name);
    }
    if (found.has(supply)) throw new InputError('conflict', `failed[${index}]`, 'a supply that is not listed already', name);
    found.add(supply);
  }
  return found;
}
