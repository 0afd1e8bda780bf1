import { describe, expect, test } from 'vitest';
import type { WorkingUnit } from '../../../src/working/engine/working-unit.ts';
import { readAnswer } from '../../../src/working/read-answer.ts';
import { expectInputError } from '../../helpers/expectations.ts';

describe('an answer, in the unit of the result, and half a unit of its last figure', () => {
  test.each<readonly [string, WorkingUnit, number, number]>([
    ['104 degF', '°C', 40, 0.5 / 1.8],
    ['40.0 °C', '°C', 40, 0.05],
    ['-4 °F', '°C', -20, 0.5 / 1.8],
    ['18 degF', 'K', 10, 0.5 / 1.8],
    ['0.25 mm', 'mm', 0.25, 0.005],
    ['10 mil', 'mm', 0.254, 0.0127],
    ['84.2 ohm/km', 'Ω/m', 0.0842, 0.00005],
    ['12.0 %', '1', 0.12, 0.0005],
    ['1,234,500 W', 'W', 1_234_500, 50],
    ['1.5 kW', 'W', 1500, 50],
    ['2.5e3 W', 'W', 2500, 50],
    ['0.60 Amp', 'A', 0.6, 0.005],
    ['0.6 ampere', 'A', 0.6, 0.05],
    ['2 amperes', 'A', 2, 0.5],
    ['350 milliamps', 'A', 0.35, 0.0005],
    ['84.2 ohms/km', 'Ω/m', 0.0842, 0.00005],
    ['84.2 Ω per km', 'Ω/m', 0.0842, 0.00005],
    ['0.0842 ohms per metre', 'Ω/m', 0.0842, 0.00005],
    ['84.2 mΩ/m', 'Ω/m', 0.0842, 0.00005],
    ['30.48 mohm/ft', 'Ω/m', 0.1, 0.005 / 304.8],
    ['30.48 mΩ per foot', 'Ω/m', 0.1, 0.005 / 304.8],
    ['0.2 sq mm', 'mm²', 0.2, 0.05],
    ['1.5 square mm', 'mm²', 1.5, 0.05],
    ['7.3 W/m²K', 'W/(m²·K)', 7.3, 0.05],
    ['7.3 W/m2K', 'W/(m²·K)', 7.3, 0.05],
    ['7.3 W / (m^2 K)', 'W/(m²·K)', 7.3, 0.05],
    ['0.0172 ohm mm2/m', 'Ω·mm²/m', 0.0172, 0.00005],
    ['about 3', 'V', 3, 0.5],
    ['approx. 3.0 V', 'V', 3, 0.05],
    ['ca. 3 V', 'V', 3, 0.5],
  ])('%s in %s', (answer, unit, value, tolerance) => {
    const read = readAnswer(answer, unit);
    expect(read.value).toBeCloseTo(value, 9);
    // And a hair more, for what was rounded just at the half.
    expect(Math.abs(read.tolerance - tolerance)).toBeLessThanOrEqual(2e-9 * Math.abs(value) + 1e-9 * tolerance);
  });

  test('a nought has no figure that counts', () => {
    for (const answer of ['0', '0.00', '-0', 0]) {
      const { value, tolerance } = readAnswer(answer, 'V');
      expect(Object.is(value, 0)).toBe(true);
      expect(tolerance).toBeLessThan(1e-8);
    }
  });

  test.each([
    ['1/2 V', '0.5 V'],
    ['½ V', '0.5 V'],
    ['-1 3/4', '-1.75 V'],
    ['2⅓ V', '2.33 V'],
  ])('of the fraction %s the decimal is asked for', (answer, decimal) => {
    expect(expectInputError(() => readAnswer(answer, 'V'), 'answer', 'unreadable').expected).toBe(
      `a decimal in place of the fraction, such as ${decimal}`,
    );
  });

  test.each(['', ' ', 'V', '1.2.3 V', '1,2,3 V', '1,23,456', '12 V 3', '--1', '1,250', '-1,250 V'])('%j is no answer', (answer) => {
    expectInputError(() => readAnswer(answer, 'V'), 'answer', 'unreadable');
  });
});
