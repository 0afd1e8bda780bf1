/** The budget of 10,000 ports against that of 1,000: ten times the ports, little more than ten times the time. @module */
import type { SwitchBudgetInput } from '../../src/plan/switch/switch-budget.ts';
import { builtCore, compare, print, stream } from './measure.mts';

const { switchBudget } = await builtCore();
const PRIORITIES = ['critical', 'high', 'low'] as const;
const SMALL = 1000;
const LARGE = 10_000;

/** Ports in no order, on cards of 48, with draws and runs; power for two thirds of them. */
function plant(count: number, basis: SwitchBudgetInput['basis'], policy: SwitchBudgetInput['policy']): SwitchBudgetInput {
  const next = stream(count);
  const cards = Math.ceil(count / 48);
  return {
    capacity: count * 13,
    basis,
    policy,
    groups: Array.from({ length: cards }, (_, index) => ({ group: `card ${index}`, limit: 740 })),
    ports: Array.from({ length: count }, (_, index) => ({
      // 7919 is prime and shares no factor with a power of ten, so every number comes once.
      port: ((index * 7919) % count) + 1,
      poeClass: 4 as const,
      pseType: 3 as const,
      pdPower: 5 + 20 * next(),
      resistance: 12.5 * next(),
      priority: PRIORITIES[Math.floor(3 * next())] ?? 'low',
      group: `card ${index % cards}`,
    })),
  };
}

for (const [basis, policy] of [
  ['class', 'strict'],
  ['calculated', 'fill'],
] as const) {
  const small = plant(SMALL, basis, policy);
  const large = plant(LARGE, basis, policy);
  const runLarge = (): number => switchBudget(large).powered.length;
  const runSmall = (): number => {
    let kept = 0;
    for (let repeat = 0; repeat < LARGE / SMALL; repeat++) kept += switchBudget(small).powered.length;
    return kept;
  };
  const { ratio, first } = compare(runLarge, runSmall, 1, 61);
  // n log n would be 1.33 for the sort alone.
  print(
    `${LARGE} ports over ten times ${SMALL}: ${basis}, ${policy}`,
    ratio,
    'x',
    2,
    `${(first.median / 1e6).toFixed(1)} ms for ${LARGE} ports`,
  );
}
