/** How far the loads of a network can grow: every limit that may stop them, by hand arithmetic. */
import { describe, expect, test } from 'vitest';
import { type Load, type Loadability, type LoadabilityInput, loadability, type NetworkInput } from '../../../src/circuit/index.ts';
import { expectInputError } from '../../helpers/expectations.ts';

/** Loads at the end of 12.5 Ω on 50 V: at most 50²/(4·12.5) = 50 W. */
const behind = (...loads: readonly Load[]): NetworkInput => ({
  supplies: [{ at: 'A', voltage: 50 }],
  sections: [{ from: 'A', to: 'B', resistance: 12.5 }],
  taps: loads.map((load) => ({ at: 'B', load })),
});

function expectLimit(found: Loadability, factor: number, limitedBy: 'collapse' | 'minimum-voltage'): void {
  if (!found.bounded) expect.fail('it is bounded');
  expect(found.factor).toBeCloseTo(factor, 6);
  expect(found.limitedBy).toBe(limitedBy);
}
const grown = (load: Load, more: Partial<LoadabilityInput> = {}): Loadability => loadability({ ...behind(load), ...more });

describe('collapse stops', () => {
  test('a power at V²/4R', () => expectLimit(grown({ power: 20 }), 50 / 20, 'collapse'));
  test('a power that is too much as it is', () => expectLimit(grown({ power: 100 }), 0.5, 'collapse'));
  test('a current at V/R: 4 A', () => expectLimit(grown({ current: 0.5 }), 8, 'collapse'));
  test('a power that keeps its minimum up to there: half the supply is 25 V', () =>
    expectLimit(grown({ power: 20 }, { minimumVoltage: 24.9 }), 2.5, 'collapse'));
  test('a trace of a load, a great many times', () => expectLimit(grown({ power: 5e-4 }), 1e5, 'collapse'));
});

describe('a minimum voltage stops', () => {
  // 10 V are dropped at 0.8 A: 40 V · 0.8 A = 32 W, or 50 Ω.
  test('a power', () => expectLimit(grown({ power: 16 }, { minimumVoltage: 40 }), 2, 'minimum-voltage'));
  test('a current', () => expectLimit(grown({ current: 0.2 }, { minimumVoltage: 40 }), 4, 'minimum-voltage'));
  test('a resistance, which grows by getting less', () =>
    expectLimit(grown({ resistance: 100 }, { minimumVoltage: 40 }), 2, 'minimum-voltage'));

  test('a power just short of collapse', () => {
    // (50 - 25.1) V · 25.1 V / 12.5 Ω = 49.9992 W, of 25 W.
    expectLimit(grown({ power: 25 }, { minimumVoltage: 25.1 }), (24.9 * 25.1) / 12.5 / 25, 'minimum-voltage');
  });

  test('at taps and not at other nodes: a weak second supply may lie under it', () => {
    // Between 50 V behind 1 Ω and 30 V behind 10 Ω: 48.1818 V, and 10/11 Ω inside. 40 V are left at 9 A.
    const network: NetworkInput = {
      supplies: [
        { at: 'A', voltage: 50 },
        { at: 'D', voltage: 30 },
      ],
      sections: [
        { from: 'A', to: 'B', resistance: 1 },
        { from: 'B', to: 'D', resistance: 10 },
      ],
      taps: [{ at: 'B', load: { current: 1 } }],
    };
    expectLimit(loadability({ ...network, minimumVoltage: 40 }), 9, 'minimum-voltage');
  });
});

describe('one tap grows and the others stay', () => {
  const mixed = behind({ current: 1 }, { power: 10 });

  test('a power beside 1 A', () => {
    // 37.5 V are left of 50 V: 37.5²/(4·12.5) = 28.125 W.
    expectLimit(loadability({ ...mixed, tap: 1 }), 2.8125, 'collapse');
  });

  test('a current beside 10 W', () => {
    // U² - (50 - 12.5·I)·U + 125 = 0 has its last solution at (50 - 12.5·I)² = 500.
    expectLimit(loadability({ ...mixed, tap: 0 }), (50 - Math.sqrt(500)) / 12.5, 'collapse');
  });

  test('not even a trace of it where the others are too much', () => {
    expectLimit(loadability({ ...behind({ current: 1 }, { power: 60 }), tap: 0 }), 0, 'collapse');
    expectLimit(loadability({ ...behind({ current: 1 }, { power: 10 }), tap: 1, minimumVoltage: 40 }), 0, 'minimum-voltage');
  });

  test('a tap that does not exist is named', () => {
    expectInputError(() => loadability({ ...mixed, tap: 2 }), 'tap', 'range');
    expectInputError(() => loadability({ ...behind(), tap: 0 }), 'tap', 'conflict');
  });
});

test('a supply under the minimum carries not even a trace', () => {
  expectLimit(grown({ power: 1 }, { minimumVoltage: 51 }), 0, 'minimum-voltage');
  expectLimit(grown({ power: 1 }, { minimumVoltage: 50 }), 0, 'minimum-voltage');
});

test('nothing stops a resistance without a minimum, no load, or one at the supply itself', () => {
  expect(grown({ resistance: 10 })).toEqual({ bounded: false });
  expect(grown({ power: 0 }, { minimumVoltage: 40 })).toEqual({ bounded: false });
  expect(loadability(behind())).toEqual({ bounded: false });
  expect(loadability({ ...behind(), taps: [{ at: 'A', load: { power: 5 } }] })).toEqual({ bounded: false });
});
