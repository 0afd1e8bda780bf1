/** Which taps turn off, and in which order: current loads on one line, by hand arithmetic. */
import { describe, expect, test } from 'vitest';
import { type NetworkInput, type ShedTaps, type ShedTapsInput, shedTaps } from '../../../src/circuit/index.ts';
import { expectInputError } from '../../helpers/expectations.ts';

/** Taps of 2 A at the end of 4 Ω on 48 V: 40 V with one of them on, 32 V with two, 24 V with three. */
function shed(turnOff: readonly (number | undefined)[], rule: ShedTapsInput['shed']): ShedTaps {
  const line: Omit<NetworkInput, 'taps'> = {
    supplies: [{ at: 'A', voltage: 48 }],
    sections: [{ from: 'A', to: 'B', resistance: 4 }],
  };
  return shedTaps({ ...line, taps: turnOff.map((volts) => ({ at: 'B', load: { current: 2 }, turnOff: volts })), shed: rule });
}
const left = (found: ShedTaps): number[] => (found.feasible ? found.network.taps.map(({ voltage }) => Math.round(voltage)) : []);

describe('of equals the one listed last goes first', () => {
  test('one a round', () => {
    const found = shed([30, 30, 30], 'furthestBelow');
    expect(found.off).toEqual([2]);
    expect(left(found)).toEqual([32, 32]);
  });

  test('round after round', () => {
    expect(shed([35, 35, 35], 'furthestBelow').off).toEqual([2, 1]);
  });

  test('all at once', () => {
    const found = shed([30, 30, 30], 'allBelow');
    expect(found.off).toEqual([2, 1, 0]);
    expect(left(found)).toEqual([]);
  });
});

describe('the one furthest below goes first', () => {
  test('one a round, however they are listed', () => {
    // 24 V: 16 V, 6 V and 11 V short. Then 32 V: 3 V short. Then 40 V.
    expect(shed([40, 30, 35], 'furthestBelow').off).toEqual([0, 2]);
    expect(shed([30, 40, 35], 'furthestBelow').off).toEqual([1, 2]);
  });

  test('all at once, in that order', () => {
    expect(shed([30, 40, 35], 'allBelow').off).toEqual([1, 2, 0]);
  });
});

test('at its turn-off voltage a tap stays on', () => {
  expect(shed([24, 24, 24], 'furthestBelow').off).toEqual([]);
  expect(shed([24, 24.001, 24], 'furthestBelow').off).toEqual([1]);
});

test('a tap without a turn-off voltage never goes', () => {
  const found = shed([undefined, 30, undefined], 'allBelow');
  expect(found.off).toEqual([1]);
  expect(left(found)).toEqual([32, 32]);
});

describe('a line that gives way', () => {
  // 50 V behind 12.5 Ω carries 50 W, at 25 V; 40 W alone leave (50 + √500)/2 = 36.18 V.
  const two = (first: number | undefined, second: number | undefined, rule: ShedTapsInput['shed'] = 'furthestBelow'): ShedTaps =>
    shedTaps({
      supplies: [{ at: 'A', voltage: 50 }],
      sections: [{ from: 'A', to: 'B', resistance: 12.5 }],
      taps: [
        { at: 'B', load: { power: 40 }, turnOff: first },
        { at: 'B', load: { power: 40 }, turnOff: second },
      ],
      shed: rule,
    });

  test('falls through every turn-off voltage: the highest of them is met first', () => {
    expect(two(22, 20)).toMatchObject({ feasible: true, off: [0] });
    expect(two(20, 22)).toMatchObject({ feasible: true, off: [1] });
    expect(two(20, 22, 'allBelow').off).toEqual([1, 0]);
    expect(left(two(20, 22))).toEqual([36]);
  });

  test('and stays down where no tap would turn off', () => {
    expect(two(undefined, undefined)).toMatchObject({ feasible: false, off: [], at: 'B' });
  });
});

test('nonsense is named', () => {
  expectInputError(() => shed([0], 'allBelow'), 'taps[0].turnOff', 'range');
  expectInputError(() => shed([30], 'some' as 'allBelow'), 'shed', 'unknown');
});
