/** The switch budget by name: what a person plugging in devices would ask of it. */
import { describe, expect, test } from 'vitest';
import { InputError, type SwitchBudgetInput, switchBudget } from '../../../src/index.ts';

const ports = (count: number, poeClass: 0 | 3 | 4 = 3) => Array.from({ length: count }, (_, index) => ({ port: index + 1, poeClass }));
const denied = (input: SwitchBudgetInput): number[] => switchBudget(input).denied.map(({ port }) => port);

describe('capacity', () => {
  test('24 ports of 15.4 W fit a published 369.6 W exactly, and a 25th does not', () => {
    expect(switchBudget({ capacity: 369.6, basis: 'class', ports: ports(24) })).toMatchObject({
      allocated: 369.6,
      headroom: 0,
      use: 1,
      denied: [],
    });
    expect(denied({ capacity: 369.6, basis: 'class', ports: ports(25) })).toEqual([25]);
    expect(denied({ capacity: 369.59, basis: 'class', ports: ports(24) })).toEqual([24]);
  });

  test('a sum of ratings is an estimate and says so, and says when the switch itself is not in it', () => {
    const supplies = [{ power: 370 }, { power: 370 }];
    expect(switchBudget({ supplies, systemLoad: 60, basis: 'class', ports: [] })).toMatchObject({
      capacity: 680,
      capacityBasis: 'estimate',
      assumptions: ['capacity is an estimate: supply ratings, not a published budget'],
    });
    expect(switchBudget({ supplies, basis: 'class', ports: [] }).assumptions).toHaveLength(2);
    expect(switchBudget({ supplies: [{ power: 30 }], systemLoad: 60, basis: 'class', ports: ports(1) })).toMatchObject({
      capacity: 0,
      use: 0,
    });
  });

  test('no ports take nothing', () => {
    expect(switchBudget({ capacity: 100, basis: 'class', ports: [] })).toMatchObject({
      allocated: 0,
      headroom: 100,
      use: 0,
      powered: [],
      denied: [],
    });
  });
});

describe('policy', () => {
  // 30 + 30 + 15.4 + 15.4 W wanted, 80 W there.
  const mixed = [
    { port: 1, poeClass: 4, priority: 'low' },
    { port: 2, poeClass: 4, priority: 'critical' },
    { port: 3, poeClass: 3, priority: 'high' },
    { port: 4, poeClass: 3, priority: 'low' },
  ] as const;

  test('strict sheds the lowest priority, highest port number first, until the rest fits', () => {
    expect(denied({ capacity: 80, basis: 'class', ports: mixed })).toEqual([4]);
    expect(denied({ capacity: 60, basis: 'class', ports: mixed })).toEqual([4, 1]);
    expect(denied({ capacity: 45, basis: 'class', ports: mixed })).toEqual([4, 1, 3]);
    expect(denied({ capacity: 10, basis: 'class', ports: mixed })).toEqual([4, 1, 3, 2]);
  });

  test('fill re-admits what still fits, in priority and port order', () => {
    expect(denied({ capacity: 61, basis: 'class', ports: mixed, policy: 'fill' })).toEqual([1]);
    expect(switchBudget({ capacity: 61, basis: 'class', ports: mixed, policy: 'fill' }).powered.map(({ port }) => port)).toEqual([2, 3, 4]);
  });
});

describe('basis and port type', () => {
  test('a request is set aside what it takes over the worst channel: 25.5 W of class 4 takes its 30 W', () => {
    const one = (requested: number) =>
      switchBudget({ capacity: 100, basis: 'requested', ports: [{ port: 1, poeClass: 4, requested }] }).powered[0]?.power;
    expect(one(25.5)).toBe(30);
    // 12.95 W at 50 V over 12.5 Ω, by P = W - (W/50)²·12.5: W = (1 - √0.741)/0.01.
    expect(one(12.95)).toBeCloseTo(13.9186, 4);
    expect(one(0)).toBe(0);
  });

  test('a weaker port grants a lower class and sets its power aside', () => {
    const { powered } = switchBudget({
      capacity: 500,
      basis: 'class',
      ports: [
        { port: 1, poeClass: 8, pseType: 3 },
        { port: 2, poeClass: 6, pseType: 2 },
        { port: 3, poeClass: 4, pseType: 1 },
      ],
    });
    expect(powered.map(({ grantedClass, power }) => [grantedClass, power])).toEqual([
      [6, 60],
      [4, 30],
      [0, 15.4],
    ]);
  });
});

describe('nonsense', () => {
  const base = { capacity: 100, basis: 'class', ports: [{ port: 1, poeClass: 3 }] } as const;
  test.each([
    ['capacity', { ...base, capacity: -1 }],
    ['capacity', { ...base, capacity: Number.NaN }],
    ['capacity', { ...base, capacity: 2e6 }],
    ['capacity', { ...base, capacity: undefined }],
    ['capacity', { ...base, supplies: [] }],
    ['supplies[0].power', { ports: [], basis: 'class', supplies: [{ power: '370' }] }],
    ['basis', { ...base, basis: 'measured' }],
    ['policy', { ...base, policy: 'lenient' }],
    ['ports', { ...base, ports: 'many' }],
    ['ports[0]', { ...base, ports: [null] }],
    ['ports[1].port', { ...base, ports: [...base.ports, { port: 1, poeClass: 4 }] }],
    ['ports[0].port', { ...base, ports: [{ port: 0, poeClass: 3 }] }],
    ['ports[0].poeClass', { ...base, ports: [{ port: 1, poeClass: 9 }] }],
    ['ports[0].poeClass', { ...base, ports: [{ port: 1, poeClass: '3' }] }],
    ['ports[0].priority', { ...base, ports: [{ port: 1, poeClass: 3, priority: 'urgent' }] }],
    ['ports[0].pseType', { ...base, ports: [{ port: 1, poeClass: 3, pseType: 5 }] }],
    ['ports[0].requested', { ...base, basis: 'requested', ports: [{ port: 1, poeClass: 3, requested: 14 }] }],
  ])('%s is named', (parameter, input) => {
    const act = (): unknown => switchBudget(input as unknown as SwitchBudgetInput);
    expect(act).toThrow(InputError);
    expect(act).toThrow(expect.objectContaining({ parameter }));
  });
});
