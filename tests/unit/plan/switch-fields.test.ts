import { expect, test } from 'vitest';
import { batteryAutonomy, budgetSteps, roomForMore, type SwitchBudgetInput, switchBudget, switchMains } from '../../../src/plan/index.ts';
import { BUDGET_PORT_FIELDS, PORT_GROUP_FIELDS, SWITCH_BUDGET_FIELDS } from '../../../src/plan/switch/switch-input.ts';
import { as, expectInputError } from '../../helpers/expectations.ts';
import { expectHeld } from '../../helpers/held-to-fields.ts';

const budget: SwitchBudgetInput = { capacity: 370, basis: 'class', ports: [{ port: 1, poeClass: 4 }] };

test('the inputs of a switch are held to their fields', () => {
  // A class 4 port: what it may ask for, draw and use depends on its class, and is held against that.
  const { port, poeClass, pseType, priority, pseVoltage, pairs } = BUDGET_PORT_FIELDS;
  const read = { port, poeClass, pseType, priority, pseVoltage, pairs };
  const onPort = (more: object): unknown => switchBudget({ ...budget, ports: [as({ port: 1, poeClass: 4, ...more })] });
  expectHeld(read as never, { port: 1, poeClass: 4 }, onPort, { path: 'ports[0]', looks: false });
  for (const key of ['requested', 'pdPower', 'measured', 'limit']) {
    for (const value of [-1, Number.NaN, '5', 1e13]) expectInputError(() => onPort({ [key]: value }), `ports[0].${key}`);
  }
  const inGroup = (group: object): unknown => switchBudget({ ...budget, groups: [as(group)] });
  expectHeld(PORT_GROUP_FIELDS, { group: 'card', limit: 60 }, inGroup, { path: 'groups[0]' });
  const { ports, basis, policy, reserve, portLimit, groups } = SWITCH_BUDGET_FIELDS;
  const common = { ports, basis, policy, reserve, portLimit, groups };
  expectHeld(common as never, { basis: 'class', ports: [] }, (input: object) => switchBudget(as({ ...input, capacity: 370 })), {
    looks: false,
  });
});

const misspelt: readonly (readonly [string, () => unknown, string, string])[] = [
  ['the switch', () => switchBudget(as({ ...budget, portlimit: 30 })), 'portlimit', 'portLimit'],
  ['a port', () => switchBudget({ ...budget, ports: [as({ port: 1, poeClass: 4, prio: 'high' })] }), 'ports[0].prio', 'priority'],
  ['a card', () => switchBudget({ ...budget, groups: [as({ group: 'a', limit: 9, limits: 3 })] }), 'groups[0].limits', 'limit'],
  ['a supply', () => switchBudget(as({ basis: 'class', ports: [], supplies: [{ power: 500, nam: 'A' }] })), 'supplies[0].nam', 'name'],
  ['a device to be added', () => roomForMore({ budget, device: as({ poeClass: 4, pdpower: 9 }) }), 'device.pdpower', 'pdPower'],
  ['a step', () => budgetSteps({ budget, steps: [as({ capacity: 90, fail: 1 })] }), 'steps[0].fail', 'failed'],
  ['the mains side', () => switchMains(as({ budget, eficiency: 0.9 })), 'eficiency', 'efficiency'],
  ['a battery', () => batteryAutonomy(as({ usableEnergy: 1000, load: 400, efficiency: 0.9 })), 'efficiency', 'inverterEfficiency'],
];

test.each(misspelt)('a misspelt key of %s is refused with the one that was meant', (_what, call, parameter, meant) => {
  expect(expectInputError(call, parameter, 'unknown').expected).toBe(meant);
});
