/** Supplies, cards, bases, growth, mains and battery by name: figures worked by hand beside each. */
import { describe, expect, test } from 'vitest';
import { lldpClassLimit, lldpWatts } from '../../../src/ethernet/index.ts';
import { cable, type InputErrorCode, poeClass, runResistance, type SwitchBudgetInput, switchBudget } from '../../../src/index.ts';
import {
  type AddedDevice,
  type BatteryAutonomyInput,
  type BudgetStep,
  batteryAutonomy,
  budgetSteps,
  roomForMore,
  type SwitchMainsInput,
  supplyLoss,
  switchMains,
} from '../../../src/plan/index.ts';
import { source } from '../../../src/sources/index.ts';
import { as, expectInputError, expectPlain, expectWithin, frozen, NOT_NUMBERS } from '../../helpers/expectations.ts';

const ports = (count: number, poeClass: 3 | 4 | 6 = 4) => Array.from({ length: count }, (_, index) => ({ port: index + 1, poeClass }));
const numbers = (list: readonly { readonly port: number }[]): number[] => list.map(({ port }) => port);

describe('capacity by working supplies', () => {
  const base = { budgetBySupplies: [370, 740, 1000], basis: 'class', ports: ports(24) } as const;

  test('all working, one failed, one fitted, none left', () => {
    const of = (more: object) => switchBudget({ ...base, ...more } as SwitchBudgetInput);
    expect(of({})).toMatchObject({ capacity: 1000, capacityBasis: 'published', supplies: { fitted: 3, failed: 0, working: 3 } });
    expect(of({ failed: 1 })).toMatchObject({ capacity: 740, supplies: { fitted: 3, failed: 1, working: 2 } });
    expect(of({ fitted: 1 })).toMatchObject({ capacity: 370, supplies: { fitted: 1, failed: 0, working: 1 } });
    expect(of({ failed: 3 })).toMatchObject({ capacity: 0, use: 0, powered: [] });
    expectPlain(of({ failed: 2 }));
  });

  test('supplies with ratings: the largest fail first unless they are named', () => {
    const supplies = [{ power: 500, name: 'left' }, { power: 800, name: 'right' }, { power: 500 }];
    const of = (failed: number | readonly string[]) => switchBudget({ supplies, systemLoad: 100, failed, basis: 'class', ports: [] });
    expect(of(0).capacity).toBe(1700);
    expect(of(1).capacity).toBe(900);
    expect(of(2).capacity).toBe(400);
    expect(of(['left']).capacity).toBe(1200);
    expect(of(['left', 'right'])).toMatchObject({ capacity: 400, supplies: { fitted: 3, failed: 2, working: 1 } });
    expect(of(3).capacity).toBe(0);
    expect(of(['left']).capacityBasis).toBe('estimate');
  });

  test.each<readonly [string, object]>([
    ['failed', { failed: 4 }],
    ['failed', { failed: -1 }],
    ['failed', { failed: 0.5 }],
    ['failed', { fitted: 1, failed: 2 }],
    ['failed', { failed: ['left'] }],
    ['fitted', { fitted: 4 }],
    ['budgetBySupplies', { budgetBySupplies: 370 }],
    ['budgetBySupplies[1]', { budgetBySupplies: [370, 300] }],
    ['budgetBySupplies[0]', { budgetBySupplies: [-370] }],
    ['capacity', { capacity: 370 }],
    ['capacity', { supplies: [{ power: 1 }] }],
    ['failed', { budgetBySupplies: undefined, capacity: 370, failed: 1 }],
    ['failed', { budgetBySupplies: undefined, supplies: [{ power: 370 }], failed: 2 }],
    ['supplies[0].power', { budgetBySupplies: undefined, supplies: [{ power: -370 }] }],
    ['failed[0]', { budgetBySupplies: undefined, supplies: [{ power: 370, name: 'a' }], failed: ['b'] }],
    ['failed[0]', { budgetBySupplies: undefined, supplies: [{ power: 370 }], failed: [undefined] }],
    ['failed[1]', { budgetBySupplies: undefined, supplies: [{ power: 370, name: 'a' }], failed: ['a', 'a'] }],
    [
      'failed[0]',
      {
        budgetBySupplies: undefined,
        supplies: [
          { power: 1, name: 'a' },
          { power: 2, name: 'a' },
        ],
        failed: ['a'],
      },
    ],
  ])('%s is named', (parameter, more) => {
    expectInputError(() => switchBudget(as<SwitchBudgetInput>({ ...base, ...more })), parameter);
  });
});

describe('reserve, port limits and cards', () => {
  test('a reserve is kept back to the nanowatt: 90 % of 100 W leave 10 W', () => {
    const of = (reserve: number, power: number) =>
      switchBudget({ capacity: 100, reserve, basis: 'measured', ports: [{ port: 1, poeClass: 8, measured: power }] });
    expect(of(0.9, 10)).toMatchObject({ reserved: 90, allocated: 10, headroom: 0, denied: [] });
    expect(of(0.9, 10.000000001).denied).toHaveLength(1);
    expect(of(1, 0.1)).toMatchObject({ reserved: 100, headroom: 0, denied: [{ deniedBy: 'switch' }] });
    expect(of(0, 10)).toMatchObject({ reserved: 0, headroom: 90 });
  });

  test('a port that no class fits is denied on its own and stops nobody; any other grants the highest class within its limit', () => {
    const { powered, denied } = switchBudget({
      capacity: 500,
      portLimit: 30,
      basis: 'class',
      ports: [
        { port: 1, poeClass: 6, limit: 3.99 },
        { port: 2, poeClass: 6 },
        { port: 3, poeClass: 4 },
        { port: 4, poeClass: 4, limit: 15.4 },
        { port: 5, poeClass: 6, limit: 60 },
      ],
    });
    expect(powered.map(({ port, grantedClass, power }) => [port, grantedClass, power])).toEqual([
      [2, 4, 30],
      [3, 4, 30],
      [4, 3, 15.4],
      [5, 6, 60],
    ]);
    expect(denied).toMatchObject([{ port: 1, grantedClass: 6, deniedBy: 'port' }]);
  });

  // The printed powers of the classes at the port, 4 to 90 W: the highest that the limit leaves room for.
  test.each<readonly [number, number]>([
    [90, 8],
    [89.9, 7],
    [75, 7],
    [60, 6],
    [45, 5],
    [30, 4],
    [15.4, 3],
    [15.39, 2],
    [7, 2],
    [4, 1],
  ])('a class 8 device on a port of %d W is granted class %d', (limit, grantedClass) => {
    const of = (more: object) => switchBudget({ capacity: 500, basis: 'class', ports: [{ port: 1, poeClass: 8, pseType: 4, ...more }] });
    expect(of({ limit }).powered).toMatchObject([{ grantedClass }]);
    expect(of({ limit }).powered[0]?.power).toBeLessThanOrEqual(limit);
    // By the limit of the switch alike, and that of the port goes first.
    const all = { capacity: 500, basis: 'class', portLimit: limit, ports: [{ port: 1, poeClass: 8, pseType: 4 }] } as const;
    expect(switchBudget(all).powered).toMatchObject([{ grantedClass }]);
    expect(switchBudget({ ...all, portLimit: 4, ports: [{ ...all.ports[0], limit }] }).powered).toMatchObject([{ grantedClass }]);
  });

  test('a Type 2 port of 15.4 W treats class 4 as class 0; a measurement is held against the limit, not against a class', () => {
    const of = (more: object) =>
      switchBudget(as<SwitchBudgetInput>({ capacity: 500, basis: 'class', ports: [{ port: 1, poeClass: 4, pseType: 2, ...more }] }));
    expect(of({ limit: 15.4 }).powered).toMatchObject([{ grantedClass: 0, power: 15.4 }]);
    const measured = (watts: number) =>
      switchBudget({ capacity: 500, basis: 'measured', ports: [{ port: 1, poeClass: 1, limit: 3, measured: watts }] });
    expect(measured(2.5).powered).toMatchObject([{ power: 2.5 }]);
    expect(measured(3.1).denied).toMatchObject([{ deniedBy: 'port' }]);
    // On every other basis the port has no class to grant.
    const { denied } = switchBudget({ capacity: 500, basis: 'requested', ports: [{ port: 1, poeClass: 1, limit: 3, requested: 2 }] });
    expect(denied).toMatchObject([{ deniedBy: 'port' }]);
  });

  // Two cards of 65 W, 30 W ports: two fit each card. 130 W would do; the switch has 100 W.
  const cards = {
    capacity: 100,
    basis: 'class',
    groups: [
      { group: 'upper', limit: 65 },
      { group: 'lower', limit: 65 },
    ],
    ports: [1, 2, 3, 4, 5, 6].map((port) => ({ port, poeClass: 4 as const, group: port <= 3 ? 'upper' : 'lower' })),
  } as const;

  test('a card that is full denies its own ports; a switch that is full denies all that come later', () => {
    const budget = switchBudget(cards);
    expectPlain(budget);
    expect(numbers(budget.powered)).toEqual([1, 2, 4]);
    expect(budget.denied.map(({ port, deniedBy }) => [port, deniedBy])).toEqual([
      [6, 'switch'],
      [5, 'switch'],
      [3, 'group'],
    ]);
    expect(budget.groups).toEqual([
      { group: 'upper', limit: 65, allocated: 60, headroom: 5, largestAddition: 0 },
      { group: 'lower', limit: 65, allocated: 30, headroom: 35, largestAddition: 0 },
    ]);
    expect(budget.largestAddition).toBe(0);
  });

  test('under fill the headroom of switch and card may still be used', () => {
    const budget = switchBudget({ ...cards, policy: 'fill' });
    expect(budget).toMatchObject({ headroom: 10, largestAddition: 10, groups: [{ largestAddition: 5 }, { largestAddition: 10 }] });
    const small = { port: 7, poeClass: 1 as const, group: 'upper' };
    expect(numbers(switchBudget({ ...cards, policy: 'fill', ports: [...cards.ports, small] }).powered)).toEqual([1, 2, 4, 7]);
  });

  // Card of 10 W: 8 W, 8 W, 2 W by priority; switch of 10 W; a 2 W port of the lowest rank on no card. The 2 W on the card come first.
  test('fill gives what a full card left over to the higher port before the switch gives it to a lower one', () => {
    const { powered } = switchBudget({
      capacity: 10,
      policy: 'fill',
      basis: 'measured',
      groups: [{ group: 'card', limit: 10 }],
      ports: [8, 8, 2, 2].map((measured, index) => ({ port: index + 1, poeClass: 3, measured, group: index < 3 ? 'card' : undefined })),
    });
    expect(numbers(powered)).toEqual([1, 3]);
  });

  test.each<readonly [string, object]>([
    ['reserve', { reserve: 1.1 }],
    ['reserve', { reserve: -0.1 }],
    ['reserve', { reserve: '10%' }],
    ['portLimit', { portLimit: -1 }],
    ['groups', { groups: 'upper' }],
    ['groups[0].group', { groups: [{ group: 1, limit: 5 }] }],
    ['groups[0].limit', { groups: [{ group: 'a', limit: Number.NaN }] }],
    [
      'groups[1].group',
      {
        groups: [
          { group: 'a', limit: 5 },
          { group: 'a', limit: 5 },
        ],
      },
    ],
    ['ports[0].group', { groups: [{ group: 'upperr', limit: 5 }] }],
    ['ports[0].limit', { ports: [{ port: 1, poeClass: 4, limit: -5 }] }],
  ])('%s is named', (parameter, more) => {
    expectInputError(() => switchBudget(as<SwitchBudgetInput>({ ...cards, ...more })), parameter);
  });
});

describe('what a port is set aside', () => {
  test('calculated: the draw and the loss of this run, less than the class', () => {
    const run = runResistance({ segments: [{ cable: cable('cat6'), length: 50 }] });
    const [port] = switchBudget({
      capacity: 60,
      basis: 'calculated',
      ports: [{ port: 1, poeClass: 4, pseType: 3, pdPower: 12, resistance: run, pseVoltage: 54 }],
    }).powered;
    // 4.69 ohm: V(V - sqrt(V² - 4RP))/2R = 54(54 - sqrt(2916 - 225.12))/9.38.
    expectWithin(port?.power as number, (54 * (54 - Math.sqrt(2916 - 4 * 4.69 * 12))) / (2 * 4.69), 1e-12);
    expect(
      switchBudget({ capacity: 60, basis: 'calculated', ports: [{ port: 1, poeClass: 4, pseType: 3, pdPower: 12, resistance: run }] })
        .assumptions,
    ).toEqual([]);
  });

  test('calculated: what is not stated is taken at its worst, and said, port by port', () => {
    const { powered, assumptions } = switchBudget({
      capacity: 60,
      basis: 'calculated',
      ports: [
        { port: 2, poeClass: 4 },
        { port: 1, poeClass: 3, pdPower: 5 },
      ],
    });
    expect(powered.map(({ power }) => power.toFixed(3))).toEqual(['5.289', '30.000']);
    expect(assumptions).toEqual([
      'type of port not stated, the weakest that serves the class is taken: ports 1, 2',
      'draw not stated, all that the class allows is taken: port 2',
      'run not stated, the worst channel is taken: ports 1, 2',
    ]);
  });

  test('class 3 on a type that is not stated matters to a request and not to a class', () => {
    const of = (basis: 'class' | 'requested', pseType?: 1 | 3) =>
      switchBudget({ capacity: 60, basis, ports: [{ port: 1, poeClass: 3, pseType, requested: 12.95 }] });
    expect(of('class').assumptions).toEqual([]);
    expect(of('requested').assumptions).toEqual(['type of port not stated, the weakest that serves the class is taken: port 1']);
    expect(of('requested', 1).powered[0]?.power.toFixed(3)).toBe('15.400');
    expect(of('requested', 3).powered[0]?.power.toFixed(3)).toBe('13.919');
  });

  test('calculated: a run that cannot carry the draw is denied by its run; one that takes more than the class is told', () => {
    const of = (resistance: number) =>
      switchBudget({ capacity: 600, basis: 'calculated', ports: [{ port: 1, poeClass: 4, pseType: 2, pdPower: 25.5, resistance }] });
    expect(of(30).denied).toMatchObject([{ port: 1, deniedBy: 'run' }]);
    expect(of(20).powered[0]?.power).toBeGreaterThan(30);
    expect(of(20).assumptions).toEqual(['takes more than the class lets the port give, which may switch it off: port 1']);
    expect(of(12.5).assumptions).toEqual([]);
  });

  test('a device that is granted a lower class keeps to it, and one pairset carries class 4 at most', () => {
    const { powered } = switchBudget({
      capacity: 600,
      basis: 'calculated',
      ports: [
        { port: 1, poeClass: 8, pseType: 3, pdPower: 70, resistance: 6.25 },
        { port: 2, poeClass: 6, pseType: 4, pairs: 2, pdPower: 50, resistance: 12.5, pseVoltage: 52 },
        { port: 3, poeClass: 3, pairs: 4, pdPower: 13, resistance: 6.25 },
      ],
    });
    expect(powered.map(({ grantedClass, power }) => [grantedClass, power.toFixed(2)])).toEqual([
      [6, '60.00'],
      [4, '29.53'],
      [3, '13.45'],
    ]);
  });

  test('measured: what was read; without a reading the class, and it is said', () => {
    const budget = switchBudget({
      capacity: 60,
      basis: 'measured',
      ports: [
        { port: 1, poeClass: 4, measured: 7.3 },
        { port: 2, poeClass: 3 },
      ],
    });
    expect(budget).toMatchObject({
      allocated: 22.7,
      source: 'measured-power',
      assumptions: ['no measurement, the power of the class is taken: port 2'],
    });
    expect(source(budget.source).title).toContain('measured');
    expectInputError(() => switchBudget({ capacity: 60, basis: 'measured', ports: ports(2) }), 'basis', 'conflict');
  });

  test.each<readonly [string, object]>([
    ['ports[0].pdPower', { pdPower: 26 }],
    ['ports[0].pdPower', { pdPower: '12' }],
    ['ports[0].measured', { measured: -1 }],
    ['ports[0].resistance', { resistance: -1 }],
    ['ports[0].pseVoltage', { pseVoltage: 0 }],
    ['ports[0].pairs', { pairs: 3 }],
    ['ports[0].pairs', { pairs: 4, pseType: 2 }],
    ['ports[0].poeClass', { poeClass: 9 }],
  ])('%s is named', (parameter, more) => {
    expectInputError(
      () => switchBudget(as<SwitchBudgetInput>({ capacity: 60, basis: 'calculated', ports: [{ port: 1, poeClass: 4, ...more }] })),
      parameter,
    );
  });
});

describe('the largest request, and the draw that is not stated', () => {
  const CLASSES = [0, 1, 2, 3, 4, 5, 6, 7, 8] as const;

  test.each(CLASSES)('class %d: the largest legal LLDP request is set aside the printed power of the class', (poeClassNumber) => {
    const requested = lldpWatts(lldpClassLimit(poeClassNumber));
    const of = (watts: number) =>
      switchBudget({ capacity: 100, basis: 'requested', ports: [{ port: 1, poeClass: poeClassNumber, requested: watts }] });
    expect(of(requested).powered[0]?.power).toBeCloseTo(poeClass(poeClassNumber).psePower, 2);
    expect(of(requested).powered[0]?.power).toBeLessThanOrEqual(poeClass(poeClassNumber).psePower);
    // Rounding by LLDP is no cut.
    expect(of(requested).assumptions).toEqual(['type of port not stated, the weakest that serves the class is taken: port 1']);
    expectInputError(() => of(requested + 0.01), 'ports[0].requested', 'range');
  });

  test('a request, or a draw, over the class that a weaker port grants is taken at what that allows, and told', () => {
    const of = (basis: 'requested' | 'calculated') =>
      switchBudget({
        capacity: 100,
        basis,
        ports: [{ port: 1, poeClass: 8, pseType: 3, requested: 71.3, pdPower: 71.3, resistance: 6.25 }],
      });
    for (const basis of ['requested', 'calculated'] as const) {
      expect(of(basis).powered).toMatchObject([{ grantedClass: 6, power: 60 }]);
      expect(of(basis).assumptions).toEqual(['wants more than the class granted allows a device, which is taken: port 1']);
    }
    const within = { port: 1, poeClass: 8, pseType: 3, requested: 51, pdPower: 51, resistance: 6.25 } as const;
    expect(switchBudget({ capacity: 100, basis: 'requested', ports: [within] }).assumptions).toEqual([]);
    expect(switchBudget({ capacity: 100, basis: 'calculated', ports: [within] }).assumptions).toEqual([]);
  });

  // A device of class 3 draws 12.95 W, 15.4 W over 20 ohm at 44 V: 0.35 A. The rounded figures of classes 1, 5, 7 and 8 take a little more than they print.
  test.each(CLASSES)('class %d: calculated from nothing else it fits a port, and a switch, of its printed power', (poeClassNumber) => {
    const { psePower } = poeClass(poeClassNumber);
    const port = { port: 1, poeClass: poeClassNumber };
    const budget = switchBudget({ capacity: psePower, portLimit: psePower, basis: 'calculated', ports: [port] });
    expect(budget.denied).toEqual([]);
    expect(budget.powered[0]?.power).toBeCloseTo(psePower, 2);
    expect(budget.assumptions.filter((words) => words.startsWith('takes more'))).toEqual([]);
  });

  test('13.0 W stated for class 3 is set aside 15.4 W and is not over the class; a longer run is', () => {
    const of = (resistance: number) =>
      switchBudget({ capacity: 60, basis: 'calculated', ports: [{ port: 1, poeClass: 3, pseType: 1, pdPower: 13, resistance }] });
    expect(of(20)).toMatchObject({ powered: [{ power: 15.4 }], assumptions: [] });
    // 44(44 - sqrt(44² - 4·21·13))/42.
    expectWithin(of(21).powered[0]?.power as number, (44 * (44 - Math.sqrt(44 ** 2 - 4 * 21 * 13))) / 42, 1e-12);
    expect(of(21).assumptions).toEqual(['takes more than the class lets the port give, which may switch it off: port 1']);
  });

  test.each<readonly [string, unknown, string, InputErrorCode]>([
    ['class', {}, 'ports[0].resistance.twoPair', 'missing'],
    ['requested', null, 'ports[0].resistance', 'type'],
    ['measured', '12.5', 'ports[0].resistance', 'type'],
    ['calculated', { twoPair: -1 }, 'ports[0].resistance.twoPair', 'range'],
  ])('on the basis %s a run that is none is named: %j', (basis, resistance, parameter, code) => {
    const bad = as<SwitchBudgetInput>({ capacity: 60, basis, ports: [{ port: 1, poeClass: 4, measured: 5, resistance }] });
    expectInputError(() => switchBudget(bad), parameter, code);
  });

  test('a run over four pairs, and that of a device to be added, are named alike', () => {
    const resistance = as<number>({ twoPair: 1 });
    const input = { capacity: 60, basis: 'class', ports: [{ port: 1, poeClass: 8, resistance }] } as const;
    expectInputError(() => switchBudget(input), 'ports[0].resistance.fourPair', 'missing');
    expectInputError(
      () => roomForMore({ budget: { ...input, ports: [] }, device: { poeClass: 4, resistance: as<number>({}) } }),
      'device.resistance.twoPair',
      'missing',
    );
  });
});

describe('supplies that are none', () => {
  const rest = { basis: 'class', ports: ports(1) } as const;
  const loss = (more: object) => supplyLoss(as<SwitchBudgetInput>({ ...rest, ...more }));

  test('an empty list, null, and a loss of what is not there', () => {
    expectInputError(() => loss({ budgetBySupplies: null }), 'budgetBySupplies', 'type');
    expectInputError(() => loss({ supplies: null }), 'supplies', 'type');
    expectInputError(() => switchBudget({ ...rest, budgetBySupplies: [] }), 'budgetBySupplies', 'missing');
    expectInputError(() => switchBudget({ ...rest, supplies: [] }), 'supplies', 'missing');
    expectInputError(() => loss({ supplies: [] }), 'supplies', 'missing');
    for (const none of [
      { budgetBySupplies: [370], fitted: 0 },
      { budgetBySupplies: [370], failed: 1 },
      { supplies: [{ power: 1 }], failed: 1 },
    ])
      expect(expectInputError(() => loss(none), 'failed', 'range').expected).toMatch(/so that a supply is left to lose$/);
  });

  test('names: one that two supplies share cannot tell which has failed; one that is no text is refused', () => {
    const supplies = [
      { power: 1, name: 'a' },
      { power: 2, name: 'a' },
    ];
    const error = expectInputError(() => switchBudget({ ...rest, supplies, failed: ['a'] }), 'failed[0]', 'conflict');
    expect(error.expected).toBe('a name that one supply alone has, not 2 of them');
    expectInputError(() => switchBudget({ ...rest, supplies: [{ power: 1, name: as<string>(5) }] }), 'supplies[0].name', 'type');
  });
});

describe('falling and returning capacity', () => {
  const base = {
    budgetBySupplies: [60, 120],
    basis: 'class',
    ports: [1, 2, 3, 4].map((port) => ({ port, poeClass: 4 as const, priority: port === 4 ? ('critical' as const) : ('low' as const) })),
  } as const;

  test('the lowest priority goes first, the highest port first of all, and everyone comes back', () => {
    const { initial, steps } = budgetSteps({ budget: frozen(base), steps: [{ failed: 1 }, { failed: 2 }, { failed: 1 }, { failed: 0 }] });
    expectPlain(steps);
    expect(numbers(initial.powered)).toEqual([4, 1, 2, 3]);
    expect(steps.map(({ shed, restored }) => [numbers(shed), numbers(restored)])).toEqual([
      [[3, 2], []],
      [[1, 4], []],
      [[], [4, 1]],
      [[], [2, 3]],
    ]);
    expect(steps.at(-1)?.budget).toEqual(initial);
  });

  test('one capacity steps by capacity', () => {
    const { steps } = budgetSteps({
      budget: { capacity: 120, basis: 'class', ports: base.ports },
      steps: [{ capacity: 90 }, { capacity: 120 }],
    });
    expect(steps.map(({ shed, restored }) => [numbers(shed), numbers(restored)])).toEqual([
      [[3], []],
      [[], [3]],
    ]);
  });

  test('one supply lost', () => {
    const loss = supplyLoss(base);
    expectPlain(loss);
    expect(loss).toMatchObject({ survives: false, before: { capacity: 120 }, after: { capacity: 60 } });
    expect(numbers(loss.shed)).toEqual([3, 2]);
    expect(supplyLoss({ ...base, budgetBySupplies: [120, 240] }).survives).toBe(true);
    const named = supplyLoss({
      supplies: [
        { power: 50, name: 'a' },
        { power: 90, name: 'b' },
        { power: 70, name: 'c' },
      ],
      failed: ['a'],
      basis: 'class',
      ports: [],
    });
    expect([named.before.capacity, named.after.capacity]).toEqual([160, 70]);
  });

  test('refuses steps of the other kind, and a loss that cannot be', () => {
    const steps = (step: unknown, input: SwitchBudgetInput = base) => budgetSteps({ budget: input, steps: [as<BudgetStep>(step)] });
    expectInputError(() => steps({}), 'steps[0]', 'missing');
    expectInputError(() => steps({ capacity: 1, failed: 1 }), 'steps[0]', 'conflict');
    expectInputError(() => steps({ capacity: 90 }), 'steps[0]', 'conflict');
    expectInputError(() => steps({ failed: 1 }, { capacity: 90, basis: 'class', ports: [] }), 'steps[0]', 'conflict');
    expectInputError(() => steps(null), 'steps[0]', 'type');
    expectInputError(() => steps({ failed: 3 }), 'failed', 'range');
    expectInputError(() => budgetSteps({ budget: base, steps: as<BudgetStep[]>(4) }), 'steps', 'type');
    expectInputError(() => supplyLoss({ capacity: 90, basis: 'class', ports: [] }), 'failed', 'conflict');
    expectInputError(() => supplyLoss({ ...base, failed: 2 }), 'failed', 'range');
    expectInputError(
      () => supplyLoss({ supplies: [{ power: 5, name: 'a' }], failed: ['a'], basis: 'class', ports: [] }),
      'failed',
      'range',
    );
  });
});

describe('room for growth', () => {
  // 740 W less 20 of 30 W are 140 W: nine of 15.4 W, and 1.4 W are left.
  const base = { capacity: 740, basis: 'class', ports: ports(20) } as const;

  test('how many more, and what keeps the next one out', () => {
    expect(roomForMore({ budget: base, device: { poeClass: 3 } })).toMatchObject({ count: 9, each: 15.4, left: 1.4, limitedBy: 'switch' });
    expect(roomForMore({ budget: base, device: { poeClass: 3, freePorts: 4 } })).toMatchObject({
      count: 4,
      limitedBy: 'free ports',
      left: 78.4,
    });
    expect(roomForMore({ budget: base, device: { poeClass: 3, freePorts: 9 } })).toMatchObject({ count: 9, limitedBy: 'switch' });
    expect(
      roomForMore({ budget: { ...base, groups: [{ group: 'card', limit: 50 }] }, device: { poeClass: 3, group: 'card' } }),
    ).toMatchObject({
      count: 3,
      limitedBy: 'group',
    });
    expect(roomForMore({ budget: { ...base, portLimit: 3 }, device: { poeClass: 6 } })).toMatchObject({ count: 0, limitedBy: 'port' });
    // At 30 W a class 6 device is granted class 4: four more in 140 W.
    expect(roomForMore({ budget: { ...base, portLimit: 30 }, device: { poeClass: 6 } })).toMatchObject({ count: 4, each: 30, left: 20 });
    expect(roomForMore({ budget: base, device: { poeClass: 8, limit: 60 } })).toMatchObject({ count: 2, each: 60 });
    expectPlain(roomForMore({ budget: base, device: { poeClass: 4 } }));
  });

  test('under strict a switch that denies someone has no room; under fill it has its headroom', () => {
    const full = { ...base, ports: ports(25) };
    expect(roomForMore({ budget: full, device: { poeClass: 3 } })).toMatchObject({ count: 0, limitedBy: 'switch', left: 0 });
    expect(roomForMore({ budget: { ...full, policy: 'fill' }, device: { poeClass: 1 } })).toMatchObject({ count: 5, left: 0 });
  });

  test('a device whose run cannot carry it has no room; one that takes nothing has no bound', () => {
    const calculated = { ...base, basis: 'calculated' } as const;
    expect(roomForMore({ budget: calculated, device: { poeClass: 4, resistance: 40 } })).toMatchObject({ count: 0, limitedBy: 'run' });
    const free = roomForMore({ budget: { ...base, basis: 'requested' }, device: { poeClass: 4, requested: 0 } });
    expect([Object.hasOwn(free, 'count'), Object.hasOwn(free, 'limitedBy'), free.left]).toEqual([false, false, 140]);
    expect(roomForMore({ budget: { ...base, basis: 'requested' }, device: { poeClass: 4, requested: 0, freePorts: 28 } })).toMatchObject({
      count: 28,
      limitedBy: 'free ports',
    });
  });

  test('refuses', () => {
    expectInputError(() => roomForMore({ budget: base, device: as<AddedDevice>(undefined) }), 'device', 'missing');
    expectInputError(() => roomForMore({ budget: base, device: as<AddedDevice>({ poeClass: 9 }) }), 'device.poeClass', 'range');
    expectInputError(() => roomForMore({ budget: base, device: { poeClass: 3, freePorts: -1 } }), 'device.freePorts', 'range');
    expectInputError(() => roomForMore({ budget: base, device: { poeClass: 3, group: 'card' } }), 'device.group', 'unknown');
  });
});

describe('mains side', () => {
  // Ten class 4 devices at their most over the worst channel: 10 x 30 W at the ports, 255 W at the devices, 45 W along the cables.
  const budget = { capacity: 370, basis: 'class', ports: ports(10) } as const;

  test('where the power goes, by hand: (300 + 5 + 40)/0.9 = 383.3 W in, 83.3 W of it stay in the rack', () => {
    const result = switchMains(frozen({ budget, efficiency: 0.9, systemLoad: 40, portLoss: 0.5, mainsVoltage: 230, powerFactor: 0.95 }));
    expectPlain(result);
    expectWithin(result.devicePower, 255, 1e-12);
    expectWithin(result.cableHeat, 45, 1e-12);
    expectWithin(result.mainsInput.watts, 345 / 0.9, 1e-12);
    expectWithin(result.conversionLoss, 345 / 0.9 - 345, 1e-12);
    expectWithin(result.rackHeat.watts, 345 / 0.9 - 300, 1e-12);
    expectWithin(result.mainsCurrent?.amperes as number, 345 / 0.9 / 230 / 0.95, 1e-12);
    // 83.33 W x 3.412 BTU/h a watt.
    expect(result.rackHeat.btuPerHour.toFixed(1)).toBe('284.3');
    expect(result.statement).toBe('Mains input 383.3 W; heat in the rack 83.3 W, 284 BTU/h.');
    expect(result.caution).toContain('licensed practitioner');
  });

  test('what is missing is 0, and said beside both figures', () => {
    const { mainsInput, rackHeat, statement, mainsCurrent } = switchMains({ budget });
    expect(mainsInput.watts.toFixed(6)).toBe('300.000000');
    expect(mainsInput.notIncluded).toEqual(['system load', 'conversion loss', 'port loss']);
    expect(rackHeat).toEqual({ watts: 0, btuPerHour: 0, notIncluded: mainsInput.notIncluded });
    expect(statement).toContain('300.0 W (not included: system load, conversion loss, port loss)');
    expect(mainsCurrent).toBeUndefined();
    expect(Object.hasOwn(switchMains({ budget }), 'mainsCurrent')).toBe(false);
    expect(switchMains({ budget, mainsVoltage: 230 }).assumptions).toContain('power factor not stated, 1 is taken');
  });

  test('the system load of the budget is used where none is given apart; only powered ports count', () => {
    const supplies = { supplies: [{ power: 130 }], systemLoad: 40, basis: 'class', ports: ports(10) } as const;
    const result = switchMains({ budget: supplies, efficiency: 1, portLoss: 0 });
    expect(numbers(result.ports)).toEqual([1, 2, 3]);
    expect(result.mainsInput.watts.toFixed(6)).toBe('130.000000');
    expect(switchMains({ budget: supplies, systemLoad: 10 }).systemLoad).toBe(10);
  });

  test('a measured port splits into device and cable by its run', () => {
    const { ports: flows } = switchMains({
      budget: {
        capacity: 60,
        basis: 'measured',
        ports: [{ port: 1, poeClass: 4, pseType: 3, measured: 20, resistance: 5, pseVoltage: 50 }],
      },
    });
    // 0.4 A: 0.8 W along the cable.
    expect(flows).toEqual([{ port: 1, psePower: 20, cableHeat: expect.closeTo(0.8, 12), devicePower: expect.closeTo(19.2, 12) }]);
  });

  test('on the basis of requests a device draws its request: no more leaves the ports than is set aside', () => {
    const four = ports(4).map((port) => ({ ...port, requested: 5 }));
    const { devicePower, portPower, budget: used, assumptions } = switchMains({ budget: { ...budget, basis: 'requested', ports: four } });
    expectWithin(devicePower, 20, 1e-12);
    // 50(50 - sqrt(50² - 4·12.5·5))/25 each.
    expectWithin(portPower, (4 * 50 * (50 - Math.sqrt(2250))) / 25, 1e-12);
    expect(portPower).toBeLessThanOrEqual(used.allocated);
    expect(assumptions).toEqual(used.assumptions);
  });

  test('over a run that takes more, a port gives what is set aside; a stated draw may take more: both are told', () => {
    // 5 W over the worst channel: 5.13 W; 30 ohm would take 5.36 W.
    const of = (more: object) =>
      switchMains({
        budget: { ...budget, basis: 'requested', ports: [{ port: 2, poeClass: 4, pseType: 2, requested: 5, resistance: 30, ...more }] },
      });
    const given = of({});
    expect(given.portPower).toBe(given.budget.powered[0]?.power);
    // The power of the port less I²R.
    expectWithin(given.devicePower, given.portPower - (given.portPower / 50) ** 2 * 30, 1e-12);
    expect(given.assumptions).toEqual([
      'the draw would take more over its run than is set aside, which is all that the port is taken to give: port 2',
    ]);
    const stated = of({ pdPower: 6 });
    expectWithin(stated.devicePower, 6, 1e-12);
    expect(stated.portPower).toBeGreaterThan(stated.budget.allocated);
    expect(stated.assumptions).toEqual(['the stated draw takes more over its run than is set aside: port 2']);
    expect(of({ pdPower: 4 }).assumptions).toEqual([]);
  });

  test('at the worst of every class no more leaves a port than its printed power, and nothing is told of rounding', () => {
    for (const number of [0, 1, 2, 3, 4, 5, 6, 7, 8] as const) {
      const of = (more: object) =>
        switchMains({ budget: as<SwitchBudgetInput>({ capacity: 100, basis: 'class', ports: [{ port: 1, poeClass: number, ...more }] }) });
      expect(of({}).portPower).toBeLessThanOrEqual(poeClass(number).psePower);
      expect(of({}).portPower).toBeCloseTo(poeClass(number).psePower, 2);
      expect(of({}).assumptions).toEqual([]);
    }
    // A device of class 4 that a Type 1 port grants class 0.
    const demoted = { capacity: 100, basis: 'class', ports: [{ port: 1, poeClass: 4, pseType: 1, pdPower: 25.5, resistance: 5 }] } as const;
    expect(switchMains({ budget: demoted })).toMatchObject({
      devicePower: 13,
      assumptions: ['the stated draw is more than the class granted allows a device, which is taken: port 1'],
    });
  });

  test('a run that cannot carry the draw counts as nothing, and is told', () => {
    const result = switchMains({ budget: { ...budget, ports: [{ port: 3, poeClass: 4, resistance: 60 }] } });
    expect(result.ports).toEqual([]);
    expect(result.assumptions.at(-1)).toBe('the run cannot carry the draw, which is counted as nothing: port 3');
  });

  test('refuses', () => {
    const of = (more: object) => switchMains(as<SwitchMainsInput>({ budget, ...more }));
    for (const name of ['efficiency', 'powerFactor', 'systemLoad', 'portLoss', 'mainsVoltage']) {
      for (const [, value, code] of NOT_NUMBERS) expectInputError(() => of({ [name]: value }), name, code);
      expectInputError(() => of({ [name]: -0.5 }), name, 'range');
    }
    for (const name of ['efficiency', 'powerFactor']) {
      expectInputError(() => of({ [name]: 0 }), name, 'range');
      expectInputError(() => of({ [name]: 90 }), name, 'range');
    }
    expectInputError(() => of({ budget: undefined }), 'budget', 'missing');
    expectInputError(() => switchMains(as<SwitchMainsInput>(null)), 'input', 'type');
    const short = { capacity: 600, basis: 'measured', ports: [{ port: 1, poeClass: 8, measured: 400, resistance: 20 }] };
    expectInputError(() => of({ budget: short }), 'ports[0].measured', 'conflict');
  });
});

describe('battery', () => {
  test('1000 Wh for 400 W at 85 %: 2 h 7 min, an estimate with its caution', () => {
    const result = batteryAutonomy({ usableEnergy: 1000, load: 400, inverterEfficiency: 0.85 });
    expectPlain(result);
    expect(result).toMatchObject({ estimate: true, hours: 2.125, minutes: 127, notIncluded: [] });
    expectWithin(result.batteryPower, 400 / 0.85, 1e-15);
    expect(result.caution).toMatch(/estimate.*life safety/i);
  });

  test('without an efficiency the inverter is named as not included; without a load there is no time', () => {
    expect(batteryAutonomy({ usableEnergy: 600, load: 100 })).toMatchObject({ hours: 6, minutes: 360, notIncluded: ['inverter loss'] });
    const idle = batteryAutonomy({ usableEnergy: 600, load: 0 });
    expectPlain(idle);
    expect(Object.hasOwn(idle, 'hours')).toBe(false);
    expect(batteryAutonomy({ usableEnergy: 0, load: 10 }).hours).toBe(0);
  });

  test('refuses', () => {
    for (const name of ['usableEnergy', 'load', 'inverterEfficiency']) {
      for (const [, value, code] of NOT_NUMBERS) {
        expectInputError(() => batteryAutonomy(as<BatteryAutonomyInput>({ usableEnergy: 100, load: 10, [name]: value })), name, code);
      }
    }
    expectInputError(() => batteryAutonomy({ usableEnergy: 100, load: 10, inverterEfficiency: 0 }), 'inverterEfficiency', 'range');
    expectInputError(() => batteryAutonomy({ usableEnergy: 100, load: 10, inverterEfficiency: 1.01 }), 'inverterEfficiency', 'range');
    expectInputError(() => batteryAutonomy(as<BatteryAutonomyInput>(undefined)), 'input', 'missing');
  });
});
