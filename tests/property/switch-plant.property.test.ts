/** Laws of whole switches with supplies, cards, limits and mains: random plants, nobody powered beyond what there is, no watt lost. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type BudgetBasis,
  type BudgetedPort,
  type BudgetPort,
  type PoeClassNumber,
  type PortPriority,
  type PseType,
  poeClass,
  type SwitchBudget,
  type SwitchBudgetInput,
  switchBudget,
} from '../../src/index.ts';
import { budgetSteps, roomForMore, supplyLoss, switchMains } from '../../src/plan/index.ts';
import { expectPlain, expectWithin } from '../helpers/expectations.ts';

const RANK: Record<PortPriority, number> = { critical: 0, high: 1, low: 2 };
const CARDS = ['A', 'B', 'C'] as const;
const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

/** A port with every figure that any basis asks for. Draws are a share of what the class granted allows. */
const somePort = fc
  .record({
    poeClass: fc.integer({ min: 0, max: 8 }) as fc.Arbitrary<PoeClassNumber>,
    pseType: fc.option(fc.constantFrom<PseType>(1, 2, 3, 4), { nil: undefined }),
    share: fc.option(number(0.05, 1), { nil: undefined }),
    run: fc.option(number(0, 1), { nil: undefined }),
    measured: fc.option(number(0.1, 90), { nil: undefined }),
    priority: fc.option(fc.constantFrom<PortPriority>('critical', 'high', 'low'), { nil: undefined }),
    group: fc.option(fc.constantFrom(...CARDS), { nil: undefined }),
    limit: fc.option(fc.constantFrom(7, 15.4, 30, 60), { nil: undefined }),
  })
  .map(({ share, run, ...port }) => {
    const own = poeClass(port.poeClass);
    // Up to a third more than the worst channel: some runs carry too little.
    return {
      ...port,
      pdPower: share === undefined ? undefined : share * own.pdPower,
      resistance: run === undefined ? undefined : Math.max(run, 1e-6) * own.channelResistance * 1.3,
    };
  });
const ports: fc.Arbitrary<BudgetPort[]> = fc
  .uniqueArray(fc.integer({ min: 1, max: 60 }), { minLength: 0, maxLength: 40 })
  .chain((numbers) => fc.tuple(...numbers.map((port) => somePort.map((rest) => ({ port, ...rest })))));
const basis = fc.constantFrom<BudgetBasis>('class', 'requested', 'calculated', 'measured');
const policy = fc.constantFrom('strict' as const, 'fill' as const);
const groups = fc
  .tuple(number(1, 400), number(1, 400), number(1, 400))
  .map((limits) => limits.map((limit, i) => ({ group: CARDS[i] as string, limit })));
const plant = fc
  .record({
    capacity: fc.oneof(number(0.1, 1500), fc.integer({ min: 0, max: 1500 })),
    ports,
    basis,
    policy,
    groups,
    reserve: fc.constantFrom(0, 0.1, 0.25, 0.3),
    portLimit: fc.option(fc.constantFrom(30, 60, 95), { nil: undefined }),
  })
  // A basis of measurements without one is refused; here it becomes the class.
  .map((input) =>
    input.basis === 'measured' && input.ports.every(({ measured }) => measured === undefined)
      ? { ...input, basis: 'class' as const }
      : input,
  );

const sum = (list: readonly BudgetedPort[]): number => list.reduce((total, { power }) => total + power, 0);
const numbersOf = (list: readonly BudgetedPort[]): number[] => list.map(({ port }) => port);
const outranks = (one: BudgetedPort, other: BudgetedPort): boolean =>
  RANK[one.priority] < RANK[other.priority] || (one.priority === other.priority && one.port < other.port);

function expectWithinLimits(input: SwitchBudgetInput, budget: SwitchBudget): void {
  const most = budget.capacity * (1 - (input.reserve ?? 0));
  expect(sum(budget.powered)).toBeLessThanOrEqual(most * (1 + 1e-12) + 1e-9);
  expect(budget.allocated + budget.reserved).toBeLessThanOrEqual(budget.capacity * (1 + 1e-15));
  for (const card of budget.groups ?? []) {
    const own = budget.powered.filter(({ group }) => group === card.group);
    expect(sum(own)).toBeLessThanOrEqual(card.limit * (1 + 1e-12) + 1e-9);
    expect(card.headroom).toBeGreaterThanOrEqual(0);
  }
  for (const { port, power } of budget.powered) {
    const limit = input.ports.find((entry) => entry.port === port)?.limit ?? input.portLimit;
    if (limit !== undefined) expect(power).toBeLessThanOrEqual(limit);
  }
}

describe('the budget', () => {
  test('never powers more than the capacity less the reserve, a card its limit, a port its own; every port is in one list', () => {
    fc.assert(
      fc.property(plant, (input) => {
        const budget = switchBudget(input);
        expectPlain(budget);
        expectWithinLimits(input, budget);
        expect([...numbersOf(budget.powered), ...numbersOf(budget.denied)].sort((a, b) => a - b)).toEqual(
          input.ports.map(({ port }) => port).sort((a, b) => a - b),
        );
        expect(budget.denied.every(({ deniedBy }) => deniedBy !== undefined)).toBe(true);
        expect(budget.powered.every((port) => !Object.hasOwn(port, 'deniedBy'))).toBe(true);
      }),
      { numRuns: 1500 },
    );
  });

  test('within the limit that denied a port, no lower one of the same or greater draw stays powered: strict and fill alike', () => {
    let seen = 0;
    fc.assert(
      fc.property(plant, (input) => {
        const { powered, denied } = switchBudget(input);
        for (const out of denied) {
          // A port's own limit and a run that cannot carry the draw bind that port alone.
          if (out.deniedBy === 'port' || out.deniedBy === 'run') continue;
          for (const kept of powered) {
            if (out.deniedBy === 'group' && kept.group !== out.group) continue;
            if (!outranks(out, kept)) continue;
            seen += 1;
            expect(kept.power).toBeLessThan(out.power);
          }
        }
      }),
      { numRuns: 3000 },
    );
    expect(seen, 'fill passes over larger ports often enough to be tested').toBeGreaterThan(100);
  });

  test('under strict, more capacity sheds nobody, whatever the cards', () => {
    fc.assert(
      fc.property(plant, number(0, 500), (input, more) => {
        const strict = { ...input, policy: 'strict' as const };
        const before = numbersOf(switchBudget(strict).powered);
        const after = new Set(numbersOf(switchBudget({ ...strict, capacity: input.capacity + (more < 1e-6 ? 0 : more) }).powered));
        for (const port of before) expect(after.has(port)).toBe(true);
      }),
      { numRuns: 1500 },
    );
  });

  test('the order of ports and cards in the input does not matter', () => {
    fc.assert(
      fc.property(plant, fc.integer(), (input, seed) => {
        const shuffled = [...input.ports].sort((a, b) => ((a.port * 7919 + seed) % 101) - ((b.port * 7919 + seed) % 101));
        const { groups: cards, ...rest } = switchBudget({ ...input, ports: shuffled, groups: [...input.groups].reverse() });
        const { groups: same, ...straight } = switchBudget(input);
        expect(rest).toEqual(straight);
        expect([...(cards ?? [])].reverse()).toEqual(same);
      }),
      { numRuns: 1000 },
    );
  });

  test('the largest addition fits and sheds nobody; a nanowatt more does not fit, on the switch and on each card', () => {
    let tried = 0;
    fc.assert(
      fc.property(plant, fc.constantFrom(undefined, ...CARDS), (input, group) => {
        const { portLimit: _, ...open } = input;
        // On the basis of measurements a port takes just what is said.
        const base = {
          ...open,
          basis: 'measured' as const,
          ports: [...open.ports.map((port) => ({ ...port, measured: port.measured ?? 10 }))],
        };
        const before = switchBudget(base);
        const place = group === undefined ? before : (before.groups?.find((card) => card.group === group) as { largestAddition: number });
        const added = (measured: number) => switchBudget({ ...base, ports: [...base.ports, { port: 1000, poeClass: 8, group, measured }] });
        if (place.largestAddition > 0) {
          tried += 1;
          const fits = added(place.largestAddition);
          expect(numbersOf(fits.powered)).toEqual([...numbersOf(before.powered), 1000]);
        }
        expect(numbersOf(added(place.largestAddition + 2e-9).powered)).toEqual(numbersOf(before.powered));
      }),
      { numRuns: 1500 },
    );
    expect(tried).toBeGreaterThan(300);
  });

  test('room for n more devices: n fit, n + 1 do not', () => {
    fc.assert(
      fc.property(
        plant,
        fc.integer({ min: 1, max: 8 }) as fc.Arbitrary<PoeClassNumber>,
        fc.constantFrom(undefined, ...CARDS),
        (input, added, group) => {
          const room = roomForMore({ budget: input, device: { poeClass: added, group } });
          expectPlain(room);
          const count = room.count as number;
          const more = (devices: number) =>
            switchBudget({
              ...input,
              ports: [...input.ports, ...Array.from({ length: devices }, (_, i) => ({ port: 1000 + i, poeClass: added, group }))],
            });
          const before = numbersOf(room.budget.powered);
          const fits = numbersOf(more(count).powered);
          expect(fits).toEqual([...before, ...Array.from({ length: count }, (_, i) => 1000 + i)]);
          expect(numbersOf(more(count + 1).powered)).not.toContain(1000 + count);
        },
      ),
      { numRuns: 1000 },
    );
  });
});

describe('supplies', () => {
  const supplied = fc
    .record({
      plant,
      ratings: fc.array(fc.integer({ min: 50, max: 1000 }), { minLength: 1, maxLength: 4 }),
      failed: fc.nat(),
      load: fc.constantFrom(undefined, 0, 60),
    })
    .map(({ plant: { capacity: _, ...rest }, ratings, failed, load }) => ({
      ...rest,
      supplies: ratings.map((power, index) => ({ power, name: `S${index}` })),
      systemLoad: load,
      failed: failed % (ratings.length + 1),
    }));

  test('the largest fail first: losing them never leaves more than losing any others', () => {
    fc.assert(
      fc.property(supplied, fc.integer(), (input, seed) => {
        const by = switchBudget(input);
        const names = input.supplies
          .map(({ name }) => name)
          .sort((a, b) => ((a.charCodeAt(1) * 31 + seed) % 7) - ((b.charCodeAt(1) * 31 + seed) % 7));
        const named = switchBudget({ ...input, failed: names.slice(0, input.failed) });
        expect(by.capacity).toBeLessThanOrEqual(named.capacity);
        expect(named.supplies).toEqual(by.supplies);
        expect(by.supplies).toEqual({ fitted: input.supplies.length, failed: input.failed, working: input.supplies.length - input.failed });
      }),
      { numRuns: 1000 },
    );
  });

  test('survives one supply lost if, and only if, one more failure leaves everyone powered', () => {
    fc.assert(
      fc.property(supplied, (input) => {
        fc.pre(input.failed < input.supplies.length);
        const loss = supplyLoss(input);
        const before = switchBudget(input);
        const after = switchBudget({ ...input, failed: input.failed + 1 });
        expect([loss.before, loss.after]).toEqual([before, after]);
        const lost = numbersOf(before.powered).filter((port) => !numbersOf(after.powered).includes(port));
        expect(numbersOf(loss.shed).sort((a, b) => a - b)).toEqual(lost.sort((a, b) => a - b));
        expect(loss.survives).toBe(lost.length === 0);
      }),
      { numRuns: 1000 },
    );
  });

  test('when the supplies are back, so is everyone; under strict nobody is shed while they return', () => {
    fc.assert(
      fc.property(supplied, (input) => {
        const down = Array.from({ length: input.supplies.length - input.failed }, (_, i) => ({ failed: input.failed + 1 + i }));
        const up = [...down.slice(0, -1).reverse(), { failed: input.failed }];
        const { initial, steps } = budgetSteps({ budget: input, steps: down.length === 0 ? [] : [...down, ...up] });
        expect(steps.at(-1)?.budget ?? initial).toEqual(initial);
        if (input.policy === 'strict') {
          for (const [index, { shed, restored }] of steps.entries()) expect(index < down.length ? restored : shed).toEqual([]);
        }
        let powered = new Set(numbersOf(initial.powered));
        for (const { budget, shed, restored } of steps) {
          for (const { port } of shed) expect(powered.delete(port)).toBe(true);
          for (const { port } of restored) powered.add(port);
          expect(powered).toEqual(new Set(numbersOf(budget.powered)));
          powered = new Set(powered);
        }
      }),
      { numRuns: 500 },
    );
  });
});

describe('the mains side', () => {
  const mains = fc.record({
    budget: plant,
    efficiency: fc.option(number(0.5, 1), { nil: undefined }),
    systemLoad: fc.option(fc.oneof(fc.constant(0), number(1, 200)), { nil: undefined }),
    portLoss: fc.option(fc.oneof(fc.constant(0), number(0.1, 2)), { nil: undefined }),
    mainsVoltage: fc.option(fc.constantFrom(120, 230), { nil: undefined }),
    powerFactor: fc.option(number(0.5, 1), { nil: undefined }),
  });

  /** Measurements that a run could not take are refused by name; they are left out here. */
  const possible = ({ budget }: { budget: SwitchBudgetInput }): boolean =>
    budget.basis !== 'measured' || budget.ports.every(({ measured = 0, resistance = 20 }) => measured * (resistance as number) < 44 * 44);

  test('mains input = device power + cable heat + port loss + system load + conversion loss, to 1e-9', () => {
    fc.assert(
      fc.property(mains, (input) => {
        fc.pre(possible(input));
        const result = switchMains(input);
        expectPlain(result);
        // Each port by the plain laws of a line, apart from the sums of the result.
        let devices = 0;
        let cables = 0;
        for (const { psePower, cableHeat, devicePower } of result.ports) {
          expectWithin(devicePower + cableHeat, psePower, 1e-9);
          devices += devicePower;
          cables += cableHeat;
        }
        const losses = (input.portLoss ?? 0) * result.ports.length;
        const output = devices + cables + losses + (input.systemLoad ?? 0);
        const total = output + result.conversionLoss;
        expectWithin(result.mainsInput.watts, total, 1e-9);
        expectWithin(result.mainsInput.watts * (input.efficiency ?? 1), output, 1e-9);
        expectWithin(result.rackHeat.watts + result.portPower, result.mainsInput.watts, 1e-9);
        if (result.mainsCurrent !== undefined) {
          const { mainsVoltage = 0, powerFactor = 1 } = input;
          expectWithin(result.mainsCurrent.amperes * mainsVoltage * powerFactor, result.mainsInput.watts, 1e-9);
        }
        // 1 W is 3.412141633 BTU/h (the international table BTU is 1055.05585262 J exactly).
        expectWithin(result.rackHeat.btuPerHour, (result.rackHeat.watts * 3600) / 1055.05585262, 1e-9);
      }),
      { numRuns: 1500 },
    );
  });

  test('heat along a cable is I²R at the voltage of its port, computed apart', () => {
    fc.assert(
      fc.property(number(0.1, 25.5), number(0.1, 12.5), number(50, 57), (pdPower, resistance, pseVoltage) => {
        const { ports: flows } = switchMains({
          budget: { capacity: 60, basis: 'calculated', ports: [{ port: 1, poeClass: 4, pdPower, resistance, pseVoltage }] },
        });
        const [flow] = flows;
        if (flow === undefined) expect.fail('not powered');
        const current = flow.psePower / pseVoltage;
        expectWithin(flow.cableHeat, current * current * resistance, 1e-9);
        expectWithin(pseVoltage * current - current * current * resistance, pdPower, 1e-9);
      }),
      { numRuns: 500 },
    );
  });

  test('what is not given is named beside both figures', () => {
    fc.assert(
      fc.property(mains, (input) => {
        fc.pre(possible(input));
        const { mainsInput, rackHeat, statement } = switchMains(input);
        const missing = [
          ...(input.systemLoad === undefined ? ['system load'] : []),
          ...(input.efficiency === undefined ? ['conversion loss'] : []),
          ...(input.portLoss === undefined ? ['port loss'] : []),
        ];
        expect([mainsInput.notIncluded, rackHeat.notIncluded]).toEqual([missing, missing]);
        expect(statement.split('not included').length - 1).toBe(missing.length === 0 ? 0 : 2);
      }),
      { numRuns: 200 },
    );
  });
});
