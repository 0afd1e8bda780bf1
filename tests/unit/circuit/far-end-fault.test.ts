/** Current into a short at the far end of a line, and how long a line its device still protects. */
import { describe, expect, test } from 'vitest';
import { type FarEndFaultInput, farEndFaultCurrent } from '../../../src/circuit/index.ts';
import { conductorFromResistance } from '../../../src/conductor/index.ts';
import { seeded, uniform } from '../../helpers/random.ts';

/** 25 Ω/km, a stated maximum: a loop of 0.05 Ω for each metre of line. */
const wire = conductorFromResistance({ ohmsPerKilometre: 25 });
// 24 V drives 8 A through 3 Ω; the supply holds 0.5 Ω of them, and 2.5 Ω are 50 m of line.
const line: FarEndFaultInput = { supplyVoltage: 24, conductor: wire, length: 20, sourceResistance: 0.5, tripCurrent: 8 };

const longest = (change: Partial<FarEndFaultInput> = {}): number => farEndFaultCurrent({ ...line, ...change }).longestProtected;
const verdict = (change: Partial<FarEndFaultInput>): string => farEndFaultCurrent({ ...line, ...change }).check.verdict;

describe('the fault current', () => {
  test('is the supply voltage over supply and line together', () => {
    // 20 m · 0.05 Ω/m + 0.5 Ω = 1.5 Ω; 24 V / 1.5 Ω = 16 A.
    const { faultCurrent, resistance, check } = farEndFaultCurrent(line);
    expect(resistance).toBeCloseTo(1.5, 12);
    expect(faultCurrent).toBeCloseTo(16, 12);
    expect(check).toMatchObject({ name: 'fault-current', limit: 8, unit: 'A', verdict: 'pass' });
    expect(check.margin).toBeCloseTo(8, 12);
    expect(check.marginFraction).toBeCloseTo(1, 12);
  });

  test('of a hot line is less: copper has 39.3 % more resistance at 120 °C', () => {
    expect(farEndFaultCurrent({ ...line, temperature: 120 }).resistance).toBeCloseTo(1.393 + 0.5, 12);
  });

  test('counts unlike conductors each by its own', () => {
    const { conductor: _, ...rest } = line;
    const thin = conductorFromResistance({ ohmsPerKilometre: 75 });
    // (0.025 + 0.075) Ω/m · 20 m + 0.5 Ω.
    expect(farEndFaultCurrent({ ...rest, out: wire, back: thin }).resistance).toBeCloseTo(2.5, 12);
  });

  test('is marginal under 5 % above the trip current, or under the share that is stated', () => {
    // 16 A against 15.2 A is 5.26 % above, against 15.3 A 4.58 %.
    expect(verdict({ tripCurrent: 15.2 })).toBe('pass');
    expect(verdict({ tripCurrent: 15.3 })).toBe('marginal');
    expect(verdict({ tripCurrent: 15.3, marginalBelow: 0.04 })).toBe('pass');
    expect(verdict({ tripCurrent: 16.1 })).toBe('fail');
  });
});

describe('the longest protected line', () => {
  test('is what the trip current leaves of the resistance, less that of the supply', () => {
    expect(longest()).toBeCloseTo(50, 9);
    // Without the supply's own: 3 Ω / 0.05 Ω/m.
    expect(longest({ sourceResistance: undefined })).toBeCloseTo(60, 9);
  });

  test('does not depend on the length that is asked about', () => {
    expect(longest({ length: 1000 })).toBe(longest({ length: 1 }));
  });

  test('is 0 where the supply alone keeps the current at or under the trip current', () => {
    expect(longest({ sourceResistance: 3 })).toBe(0);
    expect(longest({ sourceResistance: 4 })).toBe(0);
  });

  test('put back, it trips the device; a billionth more does not', () => {
    const random = seeded(4);
    for (let i = 0; i < 500; i++) {
      const input = {
        supplyVoltage: uniform(random, 10, 60),
        conductor: conductorFromResistance({ ohmsPerKilometre: uniform(random, 1, 200) }),
        sourceResistance: uniform(random, 0, 2),
        tripCurrent: uniform(random, 0.5, 4.5),
      };
      const { longestProtected } = farEndFaultCurrent({ ...input, length: 1 });
      expect(longestProtected).toBeGreaterThan(0);
      expect(farEndFaultCurrent({ ...input, length: longestProtected }).check.verdict).not.toBe('fail');
      expect(farEndFaultCurrent({ ...input, length: longestProtected * (1 + 1e-9) }).check.verdict).toBe('fail');
    }
  });
});
