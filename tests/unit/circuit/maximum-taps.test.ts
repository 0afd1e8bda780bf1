/** How many equal taps a line holds: current loads, whose drops are sums that can be done by hand. */
import { describe, expect, test } from 'vitest';
import { maximumTaps, type TapCountInput } from '../../../src/circuit/index.ts';
import { expectInputError } from '../../helpers/expectations.ts';

// n taps of 0.1 A, 1 Ω apart: the last of them is 0.1 · n(n + 1)/2 V under the supply.
const chain: TapCountInput = { supplyVoltage: 30, spacingResistance: 1, load: { current: 0.1 } };

function expectCount(change: Partial<TapCountInput>, count: number, limitedBy: string, lowest: number): void {
  const found = maximumTaps({ ...chain, ...change });
  expect([found.count, found.limitedBy]).toEqual([count, limitedBy]);
  expect(found.lowestVoltage).toBeCloseTo(lowest, 9);
}

describe('what ends the chain', () => {
  test('the minimum voltage: 13 taps drop 9.1 V, 14 would drop 10.5 V', () => {
    expectCount({ minimumVoltage: 20 }, 13, 'minimum-voltage', 20.9);
  });

  test('collapse: 23 taps drop 27.6 V, 24 would drop 30 V of 29 V', () => {
    expectCount({ supplyVoltage: 29 }, 23, 'collapse', 1.4);
  });

  test('the count that is asked for', () => {
    expectCount({ most: 5 }, 5, 'most', 28.5);
    expectCount({ minimumVoltage: 20, most: 13 }, 13, 'most', 20.9);
    expectCount({ minimumVoltage: 20, most: 14 }, 13, 'minimum-voltage', 20.9);
    expectCount({ most: 1 }, 1, 'most', 29.9);
  });

  test('collapse of powers: one of 50 W behind 12.5 Ω on 50 V would do, one of 51 W does not', () => {
    const one = { supplyVoltage: 50, spacingResistance: 12.5 };
    expect(maximumTaps({ ...one, load: { power: 49 } })).toMatchObject({ count: 1, limitedBy: 'collapse' });
    expect(maximumTaps({ ...one, load: { power: 51 } })).toMatchObject({ count: 0, limitedBy: 'collapse', lowestVoltage: 50 });
  });
});

test('a tap that sees just the minimum still works', () => {
  // 15 taps of 0.25 A drop 30 V of 40 V: every sum is exact in binary.
  const exact = { supplyVoltage: 40, spacingResistance: 1, load: { current: 0.25 } };
  expectCount({ ...exact, minimumVoltage: 10 }, 15, 'minimum-voltage', 10);
  expectCount({ ...exact, minimumVoltage: 10.001 }, 14, 'minimum-voltage', 13.75);
});

test('a feed of its own: 5 Ω to the first tap, 10 taps drop 5 V and 4.5 V', () => {
  expectCount({ feedResistance: 5, minimumVoltage: 20 }, 10, 'minimum-voltage', 20.5);
  // Without one: 13 taps drop 0.1 · 13 · 12/2 V along the line, and 14 drop 9.1 V.
  expectCount({ feedResistance: 0, minimumVoltage: 20 }, 14, 'minimum-voltage', 20.9);
});

test('none where not even one works', () => {
  expectCount({ minimumVoltage: 29.95 }, 0, 'minimum-voltage', 30);
});

test.each([
  ['supplyVoltage', { supplyVoltage: 0 }],
  ['spacingResistance', { spacingResistance: -1 }],
  ['feedResistance', { feedResistance: -1 }],
  ['minimumVoltage', { minimumVoltage: 0 }],
  ['most', { most: 0 }],
  ['most', { most: 100_001 }],
  ['most', { most: 2.5 }],
])('nonsense in %s is named', (parameter, change) => {
  expectInputError(() => maximumTaps({ ...chain, ...change }), parameter);
});
