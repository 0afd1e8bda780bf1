/** Bounds hold every sample, and each is attained. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { farEndFaultCurrent, loadability, maximumTaps } from '../../src/circuit/index.ts';
import {
  awg,
  bounds,
  cable,
  checkPoweredRun,
  checkTwoWireRun,
  highestLoad,
  highestTemperature,
  InputError,
  lowestSupplyVoltage,
  maximumRun,
  operatingPoint,
  type PoeClassNumber,
  powerAtPd,
  type Ranged,
  runResistance,
  smallestConductor,
  solveNetwork,
  voltageDrop,
} from '../../src/index.ts';

/** A range between a low end and up to twice as much. */
const range = (min: number, max: number): fc.Arbitrary<{ low: number; high: number }> =>
  fc
    .tuple(fc.double({ min, max, noNaN: true }), fc.double({ min: 1, max: 2, noNaN: true }))
    .map(([low, factor]) => ({ low, high: low * factor }));

type Numbers = Record<string, number>;

function leaves(value: unknown, path = '', found: Numbers = {}): Numbers {
  if (typeof value === 'number') found[path] = value;
  else if (typeof value === 'object' && value !== null) {
    for (const [key, part] of Object.entries(value))
      leaves(part, Array.isArray(value) ? `${path}[${key}]` : path === '' ? key : `${path}.${key}`, found);
  }
  return found;
}

/** The input with every range replaced by a number between its ends, ends and middle among them. */
function sampled(input: unknown, share: () => number): unknown {
  if (typeof input !== 'object' || input === null) return input;
  if ('low' in input && 'high' in input) {
    const { low, high } = input as { low: number; high: number };
    return Math.min(high, low + share() * (high - low));
  }
  if (Array.isArray(input)) return input.map((part) => sampled(part, share));
  return Object.fromEntries(Object.entries(input).map(([key, part]) => [key, sampled(part, share)]));
}

const ulp = (value: number): number => 2 ** (Math.floor(Math.log2(Math.max(Math.abs(value), 1e-300))) - 52);

/** No sample leaves the bounds by more than `slack` ulp; every bound is a corner's, or a peak that is not above V²/4R of some sample. */
function holds<I, R>(fn: (input: I) => R, input: Ranged<I>, shares: readonly number[], slack = 4): void {
  const found = bounds(fn, input);
  let next = 0;
  for (let sample = 0; sample < 10; sample++) {
    const numbers = leaves(fn(sampled(input, () => shares[next++ % shares.length] as number) as I));
    for (const [path, { low, high }] of Object.entries(found.fields)) {
      const value = numbers[path];
      if (value === undefined) continue;
      expect(value, path).toBeGreaterThanOrEqual(low - slack * ulp(low));
      expect(value, path).toBeLessThanOrEqual(high + slack * ulp(high));
    }
  }
  for (const [path, { low, high, lowAt, highAt }] of Object.entries(found.fields)) {
    for (const [end, at] of [
      [low, lowAt],
      [high, highAt],
    ] as const) {
      if (at === undefined) continue;
      expect(leaves(fn(placed(input, at) as I))[path]).toBe(end);
    }
  }
}

function placed(input: unknown, corner: Numbers, path = ''): unknown {
  if (typeof input !== 'object' || input === null) return input;
  if (path in corner) return corner[path];
  if (Array.isArray(input)) return input.map((part, i) => placed(part, corner, `${path}[${i}]`));
  return Object.fromEntries(Object.entries(input).map(([key, part]) => [key, placed(part, corner, path === '' ? key : `${path}.${key}`)]));
}

const shares = fc.array(fc.oneof(fc.double({ min: 0, max: 1, noNaN: true }), fc.constantFrom(0, 0.5, 1)), { minLength: 30, maxLength: 40 });
const runs = { numRuns: 500 };
const cat6 = cable('cat6');

// 500 runs of 10 samples for each of these: more than 20,000 in all.
describe('no sample leaves its bounds by more than 4 ulp', () => {
  test('operatingPoint, every kind of load', () => {
    const load = fc.oneof(
      fc.record({ power: range(0.1, 10) }),
      fc.record({ current: range(0.01, 1) }),
      fc.record({ resistance: range(2, 40) }),
      fc.record({ resistance: fc.double({ min: 2, max: 40, noNaN: true }) }),
    );
    fc.assert(
      fc.property(range(20, 40), range(0.5, 40), load, shares, (supplyVoltage, resistance, ranged, list) => {
        const input = { supplyVoltage, resistance, load: ranged } as Ranged<Parameters<typeof operatingPoint>[0]>;
        // Loss is I·I·R: 6 ulp where the others have 4.
        holds(operatingPoint, input, list, 10);
      }),
      runs,
    );
  });

  test('voltageDrop', () => {
    fc.assert(
      fc.property(range(10, 100), fc.double({ min: -20, max: 40, noNaN: true }), range(2, 40), shares, (length, cold, resistance, list) => {
        const input = { supplyVoltage: 24, conductor: awg(22), length, temperature: { low: cold, high: cold + 30 }, load: { resistance } };
        holds(voltageDrop, input as Ranged<Parameters<typeof voltageDrop>[0]>, list, 14);
      }),
      runs,
    );
  });

  test('runResistance', () => {
    fc.assert(
      fc.property(range(10, 60), range(0.05, 0.3), fc.double({ min: -20, max: 40, noNaN: true }), shares, (length, joint, cold, list) => {
        const segments = [
          { cable: cat6, length, temperature: { low: cold, high: cold + 20 } },
          { cable: cable('cord-26'), length: { low: 1, high: 5 } },
        ];
        holds(
          runResistance,
          { segments, connections: 3, connectionResistance: joint } as Ranged<Parameters<typeof runResistance>[0]>,
          list,
        );
      }),
      runs,
    );
  });

  test('powerAtPd', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 8 }), range(0.5, 5), range(0.4, 0.5), shares, (c, resistance, share, list) => {
        const pdPower = { low: share.low * 3, high: share.high * 3 };
        const input = { poeClass: c as PoeClassNumber, resistance, pseVoltage: { low: 50, high: 57 }, pdPower };
        // Margins are differences: their rounding is that of the figure, not of the difference.
        const found = bounds(powerAtPd, input as Ranged<Parameters<typeof powerAtPd>[0]>);
        for (let k = 0; k < 10; k++) {
          const result = powerAtPd(sampled(input, () => list[k % list.length] as number) as Parameters<typeof powerAtPd>[0]);
          for (const [path, value] of Object.entries(leaves(result))) {
            const field = found.fields[path];
            if (field === undefined) continue;
            const slack = path.includes('argin') ? 1e-12 : 12 * ulp(value);
            expect(value, path).toBeGreaterThanOrEqual(field.low - slack);
            expect(value, path).toBeLessThanOrEqual(field.high + slack);
          }
        }
      }),
      runs,
    );
  });
});

describe('the functions that solve', () => {
  const powered = {
    installed: [{ cable: cat6, length: { low: 60, high: 90 }, temperature: { low: 10, high: 50 } }],
    poeClass: 4 as const,
    cabling: 'none' as const,
  };

  test.each([
    [
      'maximumRun',
      () =>
        bounds(maximumRun, {
          cable: cat6,
          poeClass: 4,
          cabling: 'none',
          temperature: { low: 10, high: 50 },
          pseVoltage: { low: 50, high: 54 },
        }),
      'length',
    ],
    ['highestTemperature', () => bounds(highestTemperature, powered), 'temperature'],
    ['lowestSupplyVoltage', () => bounds(lowestSupplyVoltage, powered), 'supplyVoltage'],
    ['highestLoad', () => bounds(highestLoad, { ...powered, pseVoltage: { low: 44, high: 57 } }), 'load.power'],
  ])('%s is bounded by its worst and best corner', (_, solve, path) => {
    const { fields, best, nominal, worst } = solve();
    const at = (result: unknown): number => leaves(result)[path] as number;
    const field = fields[path] as { low: number; high: number };
    expect([at(best), at(worst)].sort((a, b) => a - b)).toEqual([field.low, field.high]);
    expect(at(nominal)).toBeGreaterThanOrEqual(field.low);
    expect(at(nominal)).toBeLessThanOrEqual(field.high);
  });
});

describe('verdicts', () => {
  const at = (low: number, high: number) => ({ poeClass: 4 as const, resistance: { low, high } });

  test('pass when the worst passes, fail when the best fails, else uncertain and why', () => {
    expect(bounds(powerAtPd, at(2, 8)).verdict).toBe('pass');
    expect(bounds(powerAtPd, at(2, 12)).verdict).toBe('marginal');
    expect(bounds(powerAtPd, at(13, 15)).verdict).toBe('fail');
    expect(bounds(powerAtPd, at(12, 13))).toMatchObject({ verdict: 'uncertain', deciding: [{ parameter: 'resistance' }] });
    expect(bounds(powerAtPd, at(2, 60))).toMatchObject({ verdict: 'uncertain', deciding: [{ parameter: 'resistance' }] });
  });

  test('only what can settle it is named', () => {
    const found = bounds(powerAtPd, { poeClass: 4, resistance: { low: 12, high: 13 }, pseVoltage: { nominal: 51, plusMinus: 0.001 } });
    expect(found.verdict).toBe('marginal');
    const open = bounds(powerAtPd, { poeClass: 4, resistance: { low: 12, high: 13.4 }, pseVoltage: { nominal: 51, plusMinus: 0.001 } });
    expect(open.deciding).toEqual([{ parameter: 'resistance' }]);
  });

  test('a range of supply voltage settles a two-wire run that one figure would leave open', () => {
    const cue = { conductor: awg(18), length: { nominal: 60, plusMinus: 5 }, load: { power: 6 }, minimumVoltage: 19 };
    expect(bounds(checkTwoWireRun, { ...cue, supplyVoltage: { low: 21, high: 27.6 } }).verdict).toBe('pass');
    expect(bounds(checkTwoWireRun, { ...cue, supplyVoltage: 24 }).verdict).toBe('uncertain');
  });

  test('each check has its own worst corner', () => {
    const { checks, corners } = bounds(checkPoweredRun, {
      installed: [{ cable: cat6, length: { low: 40, high: 92 }, temperature: { low: 20, high: 60 } }],
      poeClass: 4,
    });
    expect(checks.find(({ name }) => name === 'permanent-link-length')).toMatchObject({ verdict: 'uncertain', worst: { value: 92 } });
    expect(checks.find(({ name }) => name === 'pd-voltage')?.worstAt).toEqual({
      'installed[0].length': 92,
      'installed[0].temperature': 60,
    });
    expect(corners.worst).toEqual({ 'installed[0].length': 92, 'installed[0].temperature': 60 });
  });
});

test('without a range the result is its own best and worst', () => {
  const input = { supplyVoltage: 50, resistance: 12.5, load: { power: 25.5 } };
  const { best, worst, nominal } = bounds(operatingPoint, input);
  expect([best, worst, nominal]).toEqual([operatingPoint(input), operatingPoint(input), operatingPoint(input)]);
});

test.each([
  ['resistance.high', { poeClass: 4, resistance: { low: 2, high: 1 } }],
  ['resistance.low', { poeClass: 4, resistance: { low: '2', high: 3 } }],
  ['resistance.plusMinus', { poeClass: 4, resistance: { nominal: 2, plusMinus: -1 } }],
  ['pseVoltage', { poeClass: 4, resistance: 2, pseVoltage: { low: -50, high: 3 } }],
  ['input', null],
])('nonsense in %s is named', (parameter, input) => {
  const act = (): unknown => bounds(powerAtPd, input as never);
  expect(act).toThrow(InputError);
  expect(act).toThrow(expect.objectContaining({ parameter }));
});

describe('checks that only some corners have', () => {
  test('a port voltage that may lie over 57 V is uncertain, not a fail', () => {
    expect(bounds(powerAtPd, { poeClass: 4, resistance: 5, pseVoltage: { low: 52, high: 58 } })).toMatchObject({
      verdict: 'uncertain',
      deciding: [{ parameter: 'pseVoltage' }],
    });
  });

  test('rules for warm cable have nothing to say of a cool one', () => {
    const at = (low: number, high: number) =>
      bounds(checkPoweredRun, { installed: [{ cable: cat6, length: 50, temperature: { low, high } }], poeClass: 3 }).verdict;
    expect(at(10, 30)).toBe('pass');
    expect(at(20, 65)).toBe('uncertain');
  });

  test('what a collapsed corner has nothing to say of has no worst', () => {
    const { checks } = bounds(powerAtPd, { poeClass: 4, resistance: { low: 2, high: 60 } });
    expect(checks.find(({ name }) => name === 'pd-voltage')).not.toHaveProperty('worst');
    expect(checks.find(({ name }) => name === 'collapse')).toHaveProperty('worst');
  });
});

test('the range of a two-wire supply stays its own: such a run is judged at both ends', () => {
  const line = { supplyVoltage: { low: 21, high: 27.6 }, conductor: awg(22), load: { power: 6 }, minimumVoltage: 19 };
  expect(bounds(checkTwoWireRun, { ...line, length: { low: 100, high: 110 } }).verdict).toBe('fail');
});

test('a current that may be 0 still peaks at half the supply voltage', () => {
  const input = { supplyVoltage: { low: 20, high: 24 }, resistance: { low: 8, high: 10 }, load: { current: { low: 0, high: 1.8 } } };
  // 24²/(4·8) W.
  expect(bounds(operatingPoint, input).fields['loadPower']?.high).toBe(18);
});

test('counts have whole middles', () => {
  const { corners, nominal } = bounds(runResistance, { segments: [{ cable: cat6, length: 10 }], connections: { low: 2, high: 3 } });
  expect(corners.nominal).toEqual({ connections: 3 });
  expect(nominal.length).toBe(10);
});

describe('the functions it knows', () => {
  test('one that it does not know is refused with the list of those it does', () => {
    const own = (input: { length: number }): { feasible: true; length: number } => ({ feasible: true, length: input.length });
    const refused = (): unknown => bounds(own, { length: { low: 1, high: 2 } });
    expect(refused).toThrow(expect.objectContaining({ parameter: 'fn', code: 'unknown' }));
    expect(refused).toThrow(/operatingPoint, voltageDrop, runResistance, powerAtPd, checkPoweredRun, checkTwoWireRun, maximumRun/);
    expect(() => bounds(7 as never, {})).toThrow(expect.objectContaining({ parameter: 'fn', code: 'type' }));
  });

  test('each of them is bounded, and the best of its ends is the better one', () => {
    const network = (resistance: object) => ({
      supplies: [{ at: 'A', voltage: 48 }],
      sections: [{ from: 'A', to: 'B', resistance }],
      taps: [{ at: 'B', load: { power: 20 } }],
    });
    const line = { supplyVoltage: 24, conductor: awg(18), load: { power: 6 }, minimumVoltage: 19 };
    const range = { low: 2, high: 20 };
    expect(bounds(solveNetwork, network(range) as never).corners).toMatchObject({ best: { 'sections[0].resistance': 2 } });
    expect(bounds(loadability, network(range) as never).corners).toMatchObject({ best: { 'sections[0].resistance': 2 } });
    const chain = { supplyVoltage: 30, spacingResistance: range, load: { power: 3 }, minimumVoltage: 20 };
    expect(bounds(maximumTaps, chain as never).corners).toMatchObject({ best: { spacingResistance: 2 } });
    const fault = bounds(farEndFaultCurrent, { supplyVoltage: 24, conductor: awg(18), length: range, tripCurrent: 8 } as never);
    expect(fault.corners).toMatchObject({ best: { length: 2 }, worst: { length: 20 } });
    expect(Object.keys(fault.fields).some((path) => path.startsWith('assumptions'))).toBe(false);
    const small = bounds(smallestConductor, { ...line, conductor: undefined, candidates: [awg(22), awg(16)], length: range } as never);
    expect(small.best).toMatchObject({ feasible: true });
    expect(bounds(voltageDrop, { supplyVoltage: 24, conductor: awg(18), length: range, load: { power: 6 } } as never).corners.best).toEqual(
      { length: 2 },
    );
  });
});
