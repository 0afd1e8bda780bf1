/** Who is shed as the capacity of a switch falls, and who is restored as it returns. @module */
import { type Fields, readInput } from '../../quantity/fields.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { Watts } from '../../quantity/units.ts';
import { type BudgetedPort, budgetWithLost, type SwitchBudget, switchBudget } from './switch-budget.ts';
import { FAILED_FIELD, SWITCH_FIELD, type SwitchBudgetInput } from './switch-input.ts';

/** One step: what the capacity is now, or which supplies have failed now. Exactly one of the two. */
export interface BudgetStep {
  /** For a switch with one published capacity. [W] */
  readonly capacity?: Watts | undefined;
  /** For a switch whose supplies are known: names, or a number of supplies; 0 when all are back. */
  readonly failed?: number | readonly string[] | undefined;
}

/** A switch, and what happens to it. */
export interface BudgetStepsInput {
  /** The switch to begin with. */
  readonly budget: SwitchBudgetInput;
  /** Capacities [W], or the supplies that have failed, one step after another. */
  readonly steps: readonly BudgetStep[];
}

/** @internal */
export const BUDGET_STEPS_FIELDS: Fields<BudgetStepsInput> = {
  budget: () => SWITCH_FIELD,
  steps: { list: { object: () => BUDGET_STEP_FIELDS } },
};

/** @internal */
export const BUDGET_STEP_FIELDS: Fields<BudgetStep> = {
  capacity: { nonNegative: 'W', optional: true },
  failed: () => FAILED_FIELD,
};

/** What one step changes. */
export interface BudgetChange {
  readonly budget: SwitchBudget;
  /** Powered before and denied now, in the order in which they are shed. */
  readonly shed: readonly BudgetedPort[];
  /** Denied before and powered now, by priority, then port number. */
  readonly restored: readonly BudgetedPort[];
}

/** Steps one after another. */
export interface BudgetSteps {
  /** The switch as the input describes it. */
  readonly initial: SwitchBudget;
  readonly steps: readonly BudgetChange[];
}

/** What is left when one more supply is lost. */
export interface SupplyLoss {
  /** Whether every port that is powered now stays powered. */
  readonly survives: boolean;
  readonly before: SwitchBudget;
  readonly after: SwitchBudget;
  /** In the order in which they are shed. */
  readonly shed: readonly BudgetedPort[];
}

/**
 * Follows a switch while its capacity falls and returns: who is shed and who is restored at each step.
 *
 * Each step stands on its own capacity and not on what went before, so when the capacity is back, so is everyone. How
 * fast a switch sheds, and whether it restores by itself, is for its data sheet.
 *
 * @param input - The switch to begin with, and the steps: capacities [W], or supplies that have failed.
 * @returns The budget at the beginning, and for each step its budget and the ports shed and restored.
 * @throws {@link InputError} As `switchBudget`, or if a step does not fit the kind of switch.
 * @example A supply fails and returns
 * const ports = [{ port: 1, poeClass: 4, priority: 'high' }, { port: 2, poeClass: 4 }] as const;
 * const { steps } = budgetSteps({
 *   budget: { budgetBySupplies: [40, 80], basis: 'class', ports },
 *   steps: [{ failed: 1 }, { failed: 0 }],
 * });
 * steps.map(({ shed, restored }) => [shed.map(({ port }) => port), restored.map(({ port }) => port)]); // => [[[2], []], [[], [2]]]
 */
export function budgetSteps(input: BudgetStepsInput): BudgetSteps {
  const { budget: given, steps } = readInput(BUDGET_STEPS_FIELDS, input);
  const initial = switchBudget(given);
  let before = initial;
  const changes = steps.map((step, index): BudgetChange => {
    const budget = switchBudget(stepped(given, step, `steps[${index}]`));
    const change = { budget, shed: missing(before, budget), restored: gained(before, budget) };
    before = budget;
    return change;
  });
  return { initial, steps: changes };
}

/**
 * Whether everyone who is powered stays powered when one more supply is lost: the largest that still works.
 *
 * @param input - The switch, with `budgetBySupplies` or `supplies`; supplies that have failed already stay failed.
 * @returns The budgets [W] before and after, and who is shed.
 * @throws {@link InputError} As `switchBudget`, or if only one capacity is known or no supply is left to lose.
 * @example 24 devices of class 3 on 370 W with one supply, 740 W with two
 * const ports = Array.from({ length: 24 }, (_, index) => ({ port: index + 1, poeClass: 3 as const }));
 * supplyLoss({ budgetBySupplies: [370, 740], basis: 'class', ports }).survives; // => true
 */
export function supplyLoss(input: SwitchBudgetInput): SupplyLoss {
  const before = budgetWithLost(input, 0);
  const after = budgetWithLost(input, 1);
  const shed = missing(before, after);
  return { survives: shed.length === 0, before, after, shed };
}

function stepped(input: SwitchBudgetInput, step: BudgetStep, path: string): SwitchBudgetInput {
  const { capacity, failed } = step;
  if ((capacity === undefined) === (failed === undefined)) {
    throw new InputError(capacity === undefined ? 'missing' : 'conflict', path, 'either a capacity or failed', capacity);
  }
  if ((input.capacity === undefined) !== (capacity === undefined)) {
    const what = input.capacity === undefined ? 'failed, because the supplies are known' : 'a capacity, because the supplies are not known';
    throw new InputError('conflict', path, what, capacity ?? failed);
  }
  return { ...input, ...(capacity === undefined ? { failed } : { capacity }) } as SwitchBudgetInput;
}

function missing(before: SwitchBudget, after: SwitchBudget): BudgetedPort[] {
  const powered = new Set(before.powered.map(({ port }) => port));
  return after.denied.filter(({ port }) => powered.has(port));
}

function gained(before: SwitchBudget, after: SwitchBudget): BudgetedPort[] {
  const powered = new Set(before.powered.map(({ port }) => port));
  return after.powered.filter(({ port }) => !powered.has(port));
}
