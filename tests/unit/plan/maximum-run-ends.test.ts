/** The ends of what a longest run may be: nothing, next to nothing, and more than can be said. */
import { describe, expect, test } from 'vitest';
import { conductorFromResistance } from '../../../src/conductor/index.ts';
import { type MaximumRun, maximumRun, type TwoWireCircuit } from '../../../src/plan/index.ts';

/** A line with one joint of 1 Ω in each conductor, and a limit on its whole resistance. [Ω] */
const jointed = (maximumResistance: number, change: Partial<TwoWireCircuit> = {}): MaximumRun =>
  maximumRun({
    supplyVoltage: { low: 24, high: 24 },
    conductor: conductorFromResistance({ ohmsPerKilometre: 10 }),
    load: { resistance: 100 },
    connections: 1,
    connectionResistance: 1,
    maximumResistance,
    ...change,
  });
const lengthOf = (found: MaximumRun): number | undefined => (found.feasible && !found.unbounded ? found.length : undefined);

describe('what the joints leave', () => {
  test('is the rest over 0.02 Ω/m', () => {
    expect(lengthOf(jointed(3))).toBeCloseTo(50, 9);
    expect(lengthOf(jointed(2.0002))).toBeCloseTo(0.01, 9);
  });

  test('may be nothing: a run of no length is in order', () => {
    expect(jointed(2)).toMatchObject({ feasible: true, length: 0, governedBy: 'device-resistance' });
  });

  test('may be less than nothing: by how much', () => {
    const found = jointed(1.9);
    expect(found).toMatchObject({ feasible: false, governedBy: 'device-resistance', unit: 'Ω' });
    expect(!found.feasible && found.shortfall).toBeCloseTo(0.1, 12);
  });

  test('under a picometre it is nothing', () => {
    // The double after 2 leaves 4.4e-16 Ω, and 1 kΩ/m makes that 2e-19 m; 4.4e-9 Ω are 2.2e-12 m.
    const thin = { conductor: conductorFromResistance({ ohmsPerKilometre: 1e6 }) };
    expect(lengthOf(jointed(2 + 2 ** -51, thin))).toBe(0);
    expect(lengthOf(jointed(2 + 4.4e-9, thin))).toBeGreaterThan(2e-12);
  });
});

describe('more than can be said', () => {
  const superb = { conductor: conductorFromResistance({ ohmsPerKilometre: 1e-9 }), connections: 0 };

  test('is said as 1e12 m', () => {
    // 1e12 Ω at 2e-12 Ω/m would be 5e23 m.
    expect(lengthOf(jointed(1e12, superb))).toBe(1e12);
  });

  test('also where the first guess falls short of it by rounding alone', () => {
    // 2 Ω at 2.00000000004e-12 Ω/m are 1e12 m less 20 m; beside 1e6 Ω of joints the sum is in order for 29 m more.
    const nearly = { conductor: conductorFromResistance({ ohmsPerKilometre: 1.00000000002e-9 }), connectionResistance: 5e5 };
    expect(lengthOf(jointed(1e6 + 2, nearly))).toBe(1e12);
  });

  test('just under it the length is as it is', () => {
    expect(lengthOf(jointed(1.9, superb))).toBeCloseTo(9.5e11, -3);
  });
});

test('a guess that the rounding of large numbers has put far off is found all the same, to the last double', () => {
  // 1e6 Ω of joints and 1e-6 Ω of line: the difference of the two keeps four digits.
  const limit = 1e6 + 1e-6;
  const found = lengthOf(jointed(limit, { connectionResistance: 5e5 })) ?? Number.NaN;
  const passes = (length: number): boolean => 0.02 * length + 1e6 <= limit;
  expect(passes(found)).toBe(true);
  expect(passes(found * (1 + 1e-9))).toBe(false);
});
