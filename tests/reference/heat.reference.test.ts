/**
 * Bundle heating and ampacity against what was read.
 *
 * `bundle-heating-points.csv`: a contribution to IEEE 802.3at on current de-rating against temperature (100 cables in air, all pairs, worst
 * case; read in a public copy), with what the model gave when it was fitted, in air of 23 °C. `bundle-heating-model.csv`: the model's own
 * figures in air of 45 °C. The ampacities are those of NFPA 70-2017 (NEC), Tables 725.144 and 310.15(B)(2)(a), read in a public copy.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { ampacity, filmCoefficient } from '../../src/cable/index.ts';
import { bundleRise, type CableName, cable } from '../../src/index.ts';
import { expectPrinted, rows } from '../helpers/expectations.ts';

const csv = (name: string): string[][] =>
  readFileSync(join(import.meta.dirname, name), 'utf8')
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => line.split(','));

function rise(name: string, bundle: string, pairCurrent: string, ambient: number): number {
  const settled = bundleRise({
    cable: cable(name as CableName),
    bundle: Number(bundle),
    pairCurrent: Number(pairCurrent),
    ambient,
    installation: 'open-air',
  });
  return settled.feasible ? settled.rise : Number.NaN;
}

describe('bundles of 100 in air, as published', () => {
  const points = csv('bundle-heating-points.csv');

  test.each(points)('%s, %s cables, %s A a pair: %s K published, %s K by the model', (name, bundle, current, _published, model) => {
    expectPrinted(rise(name as string, bundle as string, current as string, 23), model as string);
  });

  // Not part of the fit: 0.85 A on Category 6A is printed lower than 0.75 A, and 0.6 A on Category 5e is from another page.
  const fitted = points.filter(([name, , current]) => !(name === 'cat6a' && current === '0.85') && current !== '0.6');

  test('15 points, 6.9 % rms, the worst 12.5 % (Category 5e at 1.0 A)', () => {
    const errors = fitted.map(
      ([name, bundle, current, published]) => rise(name as string, bundle as string, current as string, 23) / Number(published) - 1,
    );
    expect(errors.length).toBe(15);
    expectPrinted((100 * Math.hypot(...errors)) / Math.sqrt(errors.length), '6.9');
    expect(Math.max(...errors.map(Math.abs))).toBeLessThan(0.125);
    expect(errors.filter((error) => Math.abs(error) > 0.1).length).toBe(1);
  });

  test('a point that was held out, 7.2 K, within 4 %', () => {
    expect(Math.abs(rise('cat5e', '100', '0.6', 23) / 7.2 - 1)).toBeLessThan(0.04);
  });
});

describe('the model to its own digits, 1 to 192 cables in air of 45 °C', () => {
  const predicted = csv('bundle-heating-model.csv');

  test('has its 120 rows', () => expect(predicted.length).toBe(120));

  test.each(predicted)('%s, %s cables, %s A a pair: %s K', (name, bundle, current, printed) => {
    expectPrinted(rise(name as string, bundle as string, current as string, 45), printed as string);
  });
});

test('a bundle of 60 to 90 mm has a film coefficient of 9 to 10 W/m²K, 10 K above the air', () => {
  // With no radiation at all, a cylinder in air is textbook work: 4 to 5 W/m²K.
  for (const diameter of [60, 75, 90]) {
    const both = filmCoefficient({ diameter, surfaceTemperature: 33, ambient: 23 });
    expect(both).toBeGreaterThan(9);
    expect(both).toBeLessThan(10.05);
    expect(both - filmCoefficient({ diameter, surfaceTemperature: 33, ambient: 23, emissivity: 0 })).toBeGreaterThan(5);
  }
});

describe('NEC 2017 Table 725.144', () => {
  const bundles = [
    [1, 1],
    [2, 7],
    [8, 19],
    [20, 37],
    [38, 61],
    [62, 91],
    [92, 192],
  ] as const;
  const printed = rows(`
    26 1/1/1       1/1/1       0.7/0.8/1 0.5/0.6/0.7 0.4/0.5/0.6 0.4/0.5/0.6 NA
    24 2/2/2       1/1.4/1.6   0.8/1/1.1 0.6/0.7/0.9 0.5/0.6/0.7 0.4/0.5/0.6 0.3/0.4/0.5
    23 2.5/2.5/2.5 1.2/1.5/1.7 0.8/1.1/1.2 0.6/0.8/0.9 0.5/0.7/0.8 0.5/0.7/0.8 0.4/0.5/0.6
    22 3/3/3       1.4/1.8/2.1 1/1.2/1.4 0.7/0.9/1.1 0.6/0.8/0.9 0.6/0.8/0.9 0.5/0.6/0.7`);

  for (const [gauge, ...cells] of printed) {
    test.each(cells.map((cell, index) => [gauge, ...(bundles[index] as readonly [number, number]), cell] as const))(
      '%s AWG, %s to %s cables: %s',
      (size, from, to, cell) => {
        for (const [index, temperatureRating] of ([60, 75, 90] as const).entries()) {
          for (const bundle of [from, to]) {
            const found = ampacity({ code: 'NEC 2017', gauge: Number(size), bundle, temperatureRating });
            if (cell === 'NA') expect(found).toMatchObject({ feasible: false, reason: 'no-figure' });
            else expect(found.feasible && found.ampacity).toBe(Number(cell.split('/')[index]));
          }
        }
      },
    );
  }

  test('over 192 cables and under 26 AWG ask for engineering supervision (note 1)', () => {
    expect(ampacity({ code: 'NEC 2017', gauge: 24, bundle: 193 })).toMatchObject({ feasible: false, reason: 'engineering-supervision' });
    expect(ampacity({ code: 'NEC 2017', gauge: 28, bundle: 2 })).toMatchObject({ feasible: false, reason: 'engineering-supervision' });
  });

  test('1.4 where half of the conductors carry current (note 2)', () => {
    const half = ampacity({ code: 'NEC 2017', gauge: 24, bundle: 37, halfLoaded: true });
    expect(half.feasible && half.ampacity.toFixed(2)).toBe('0.84');
  });

  test('the worked example of the clause: 1.2 A for 23 AWG in a bundle of 7, cable for 60 °C', () => {
    expect(ampacity({ code: 'NEC 2017', gauge: 23, bundle: 7 })).toMatchObject({ feasible: true, ampacity: 1.2 });
  });

  const factors = rows(`
    6 10 1.29 1.20 1.15
    11 15 1.22 1.15 1.12
    16 20 1.15 1.11 1.08
    21 25 1.08 1.05 1.04
    26 30 1.00 1.00 1.00
    31 35 0.91 0.94 0.96
    36 40 0.82 0.88 0.91
    41 45 0.71 0.82 0.87
    46 50 0.58 0.75 0.82
    51 55 0.41 0.67 0.76
    56 60 - 0.58 0.71
    61 65 - 0.47 0.65
    66 70 - 0.33 0.58
    71 75 - - 0.50
    76 80 - - 0.41
    81 85 - - 0.29`);

  test.each(factors)('air of %s to %s °C: %s, %s, %s (Table 310.15(B)(2)(a))', (from, to, ...cells) => {
    for (const [index, temperatureRating] of ([60, 75, 90] as const).entries()) {
      for (const ambient of [Number(from), Number(to)]) {
        const found = ampacity({ code: 'NEC 2017', gauge: 22, bundle: 1, temperatureRating, ambient });
        if (cells[index] === '-') expect(found).toMatchObject({ feasible: false, reason: 'too-warm' });
        else expect(found.feasible && found.ambientFactor).toBe(Number(cells[index]));
      }
    }
  });

  test('the factors are √((Tc - Ta)/(Tc - 30)) at the warm end of their row, as 310.15(B)(2) has it', () => {
    for (const [, to, ...cells] of factors) {
      for (const [index, rating] of [60, 75, 90].entries()) {
        if (cells[index] === '-' || rating === Number(to)) continue;
        expectPrinted(Math.sqrt((rating - Number(to)) / (rating - 30)), cells[index] as string);
      }
    }
  });
});
