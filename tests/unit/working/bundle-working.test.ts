/** A bundle that heats itself, step by step: where it settles, and where it does not. */
import { describe, expect, test } from 'vitest';
import { cable } from '../../../src/cable/cable.ts';
import { type BundleRiseInput, bundleRise } from '../../../src/cable/heat/bundle-rise.ts';
import { showWorking, type Working, type WorkingTable } from '../../../src/working/index.ts';
import { expectWithin } from '../../helpers/expectations.ts';

const open: BundleRiseInput = { cable: cable('cat6'), bundle: 50, pairCurrent: 0.6, ambient: 30, installation: 'open-air' };
const work = (change: Partial<BundleRiseInput> = {}): Working => showWorking('bundleRise', { ...open, ...change });
const symbols = ({ steps }: Working): string[] => steps.map(({ symbol }) => symbol);
const step = ({ steps }: Working, symbol: string): number => steps.find((one) => one.symbol === symbol)?.value ?? Number.NaN;
/** The last row of the passes, by column. */
function lastPass({ tables }: Working): Record<string, number> {
  const [{ columns, rows }] = tables as [WorkingTable];
  const cells = rows.at(-1)?.cells ?? [];
  return Object.fromEntries(columns.map(({ symbol }, index) => [symbol, cells[index]?.value ?? Number.NaN]));
}

describe('in open air', () => {
  test('the passes end where heat made is heat shed, and the steps come to the same', () => {
    for (const pairCurrent of [0.05, 0.6, 2, 3]) {
      const working = work({ pairCurrent });
      const { theta = 0, Q_in = 0, Q_out = 0, T_m = 0 } = lastPass(working);
      expectWithin(Q_in, Q_out, 1e-13);
      expectWithin(step(working, 'theta_s'), theta, 1e-13);
      expectWithin(step(working, 'k'), 1, 1e-13);
      expectWithin(step(working, 'T_m'), T_m, 1e-13);
    }
  });

  test('of many passes the first and the last are shown, each with its number', () => {
    const [{ rows }] = work({ pairCurrent: 3 }).tables as [WorkingTable];
    expect(rows.length).toBeLessThanOrEqual(8);
    expect(rows.slice(0, 3).map(({ label }) => label)).toEqual(['1', '2', '3']);
    expect(rows[0]?.cells[0]?.value).toBe(0);
  });

  test('no current: nothing to find, no rise', () => {
    const working = work({ pairCurrent: 0 });
    expect(working).toMatchObject({ feasible: true, tables: [], result: { core: 'rise', value: 0 } });
    expect(symbols(working)).not.toContain('k');
  });

  test('to the very current at which it settles no more', () => {
    let low = 0.6;
    let high = 9;
    for (let halvings = 0; halvings < 40; halvings++) {
      const middle = (low + high) / 2;
      if (bundleRise({ ...open, pairCurrent: middle }).feasible) low = middle;
      else high = middle;
    }
    const last = work({ pairCurrent: low });
    expect(last.feasible).toBe(true);
    const core = bundleRise({ ...open, pairCurrent: low });
    expectWithin(last.result.value, core.feasible ? core.rise : Number.NaN, 1e-12);
    expect(work({ pairCurrent: high * (1 + 1e-9) }).feasible).toBe(false);
  });

  test('one that runs away: with its middle at 400 °C it still makes more heat than it sheds', () => {
    const working = work({ pairCurrent: 9 });
    expect(working).toMatchObject({ feasible: false, no: 'there is no steady state below 400 °C: even there more heat is made than shed' });
    expect(working.result.symbol).toBe('B');
    expect(working.result.value).toBeLessThan(0);
    expectWithin(step(working, 'T_m'), 400, 1e-12);
    expectWithin(lastPass(working)['T_m'] ?? 0, 400, 1e-12);
    expect(symbols(working)).not.toContain('theta_m');
  });

  test('in air of 400 °C any heat is too much', () => {
    expect(work({ ambient: 400 })).toMatchObject({ feasible: false, result: { symbol: 'B' } });
    expect(work({ ambient: 400, pairCurrent: 0 })).toMatchObject({ feasible: true, result: { value: 0 } });
  });
});

describe('at a constant film coefficient', () => {
  test('the closed form needs no passes', () => {
    const working = work({ installation: 'closed-conduit' });
    expect(working.tables).toEqual([]);
    expect(symbols(working)).toEqual([
      'I_c',
      'q_20',
      'Q_20',
      'D',
      'R_i',
      'R_s',
      'G',
      'w',
      'b',
      'm_T',
      'T_m',
      'Q',
      'q',
      'theta_s',
      'theta_m',
    ]);
  });

  test('where each kelvin adds more than it sheds, the step that says so is the last: nothing is divided by it', () => {
    const working = work({ pairCurrent: 9, installation: { filmCoefficient: 4 } });
    expect(working).toMatchObject({ feasible: false, no: 'there is no steady state: each kelvin adds more heat than it sheds' });
    expect(working.result.symbol).toBe('b');
    expect(working.result.value).toBeLessThan(0);
  });

  test('where it would settle only above 400 °C, that step is the last', () => {
    // 1 - α G = 0.1: the middle would be some 2,400 K above the air.
    const { steps } = work({ pairCurrent: 1, installation: 'closed-conduit' });
    const gain = steps.find(({ symbol }) => symbol === 'G')?.value ?? 0;
    const working = work({ pairCurrent: Math.sqrt(0.9 / 0.00393 / gain), installation: 'closed-conduit' });
    expect(working).toMatchObject({ feasible: false, result: { symbol: 'm_T' } });
    expectWithin(step(working, 'b'), 0.1, 1e-9);
  });
});

test('left on its drum: no figure but the current', () => {
  const working = work({ installation: 'wound-drum' });
  expect(working).toMatchObject({ feasible: false, result: { core: 'conductorCurrent', value: 0.3, unit: 'A' } });
  expect(working.no).toContain('unwind it');
});

describe('an ampacity that the table does not have', () => {
  const nec = { code: 'NEC 2017', gauge: 24, bundle: 37 } as const;

  test.each([
    [{ ...nec, bundle: 193 }, 'm_N', -1, 'engineering supervision'],
    [{ ...nec, gauge: 28 }, 'm_g', -2, 'engineering supervision'],
    [{ ...nec, ambient: 56 }, 'm_T', -1, 'too warm'],
    [{ ...nec, gauge: 26, bundle: 192 }, 'm_N', 0, 'no figure for 26 AWG in a bundle of 192'],
    [{ ...nec, gauge: 20 }, 'm_N', 155, 'no figure for 20 AWG in a bundle of 37'],
  ])('%j: %s is %d', (input, symbol, value, words) => {
    const working = showWorking('ampacity', input);
    expect(working).toMatchObject({ feasible: false, result: { symbol, value } });
    expect(working.no).toContain(words);
  });
});

test('the mean is over every conductor, and says how much room each category has', () => {
  const working = showWorking('remotePowering', { conductorCurrents: [0.3, 0.3, 0.3, 0] });
  expectWithin(working.result.value, 0.225, 1e-12);
  expectWithin(step(working, 'm_RP1'), 4 * 0.212 - 0.9, 1e-12);
  expectWithin(step(working, 'm_RP2'), 1.1, 1e-12);
  expect(showWorking('remotePowering', { conductorCurrents: [0, 0] }).result.value).toBe(0);
});
