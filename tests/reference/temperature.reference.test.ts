/** Resistance and temperature, against published tables and constants. */
import { describe, expect, test } from 'vitest';
import { awg } from '../../src/conductor/awg.ts';
import type { Conductor } from '../../src/conductor/conductor.ts';
import { resistancePerMetre } from '../../src/conductor/resistance-per-metre.ts';
import { ohmsPerKilofoot } from '../../src/quantity/convert-electrical.ts';
import { expectPrinted, expectWithin, rows } from '../helpers/expectations.ts';

const copper = awg(24);

test('the copper line reaches zero at -234.5 °C (inferred absolute temperature of circuit textbooks)', () => {
  const slope = resistancePerMetre(copper, 21) - resistancePerMetre(copper, 20);
  expectPrinted(20 - resistancePerMetre(copper, 20) / slope, '-234.5');
});

test('referred to 75 °C the coefficient is 0.00323 (NEC Chapter 9 Table 8, note 2)', () => {
  expectPrinted(resistancePerMetre(copper, 76) / resistancePerMetre(copper, 75) - 1, '0.00323');
});

// NBS Circular 31 / Handbook 100, complete wire table, ohm/kft at 0, 20, 50, 75 °C. From memory: no copy was reached.
// 10 AWG at 0 °C is remembered as 0.9203; the formula gives 0.9204, one unit of the last digit.
test.each([
  [-3, 0, '0.04516', 0.5],
  [-3, 20, '0.04901', 0.5],
  [-3, 50, '0.05479', 0.5],
  [-3, 75, '0.05961', 0.5],
  [10, 0, '0.9203', 1],
  [10, 20, '0.9989', 0.5],
  [10, 50, '1.117', 0.5],
  [10, 75, '1.215', 0.5],
])('%d AWG at %d °C is %s ohm/kft', (gauge, temperature, printed, units) => {
  expectPrinted(resistancePerMetre(awg(gauge), temperature) / ohmsPerKilofoot(1), printed, units);
});

// Copper wire resistance by AWG chart (Misumi): ohm/kft at 65 °C, 4/0 to 17 AWG. Its "25 °C" column carries the 20 °C figures.
// Hot over cold is 1.1755 to 1.1772 in the chart where 1 + 0.00393 · 45 = 1.17685: up to 0.12 %, and the cold column is itself rounded.
const HOT_CHART = `
  -3 0.0576   -2 0.0727   -1 0.0917   0 0.1156   1 0.1458   2 0.1839   3 0.2318   4 0.2924   5 0.3686   6 0.4648   7 0.5861
   8 0.7390    9 0.9317   10 1.175   11 1.482   12 1.868   13 2.355   14 2.970   15 3.745   16 4.725   17 5.957
`;
const HOT = rows(HOT_CHART.trim().replaceAll(/\s{2,}/g, '\n'));

test('21 rows at 65 °C', () => {
  expect(HOT).toHaveLength(21);
});

test.each(HOT)('%s AWG at 65 °C is %s ohm/kft', (gauge, printed) => {
  expectWithin(resistancePerMetre(awg(Number(gauge)), 65) / ohmsPerKilofoot(1), Number(printed), 0.0015);
});

// Matula 1979, J. Phys. Chem. Ref. Data 8, 1147, Table 2, pure copper, 1e-8 ohm m: kelvin, resistivity. Read second hand.
test.each([
  [273.15, 1.543, 0.0045],
  [300, 1.725, 0.0045],
  [350, 2.063, 0.0045],
  [400, 2.402, 0.008],
  [500, 3.09, 0.0155],
])('the straight line against measured copper at %d K (1.678 at 293 K)', (kelvin, measured, fraction) => {
  const line = 1.678 * (resistancePerMetre(copper, kelvin - 273.15) / resistancePerMetre(copper, 293 - 273.15));
  expectWithin(line, measured, fraction);
});

// IEC 60228, factors k(t) that bring a reading at t to 20 °C, as printed: made with 0.004/K.
const REDUCTION = `
  5 1.064
  10 1.042
  15 1.020
  25 0.980
  30 0.962
  40 0.926
  50 0.893
  60 0.862
  70 0.833
  75 0.820
  80 0.806
  90 0.781
  100 0.758
`;

describe.each(rows(REDUCTION))('IEC 60228 reduction from %s °C by %s', (temperature, printed) => {
  const factor = (conductor: Conductor): number => conductor.resistancePerMetre / resistancePerMetre(conductor, Number(temperature));

  test('is the printed factor for 0.004/K', () => {
    expectPrinted(factor({ ...copper, temperatureCoefficient: 0.004 }), printed as string);
  });

  test('is within 0.5 % of the factor for 0.00393/K', () => {
    expectWithin(factor(copper), Number(printed), 0.005);
  });
});
