import { describe, expect, test } from 'vitest';
import { readAnswer } from '../../../src/working/read-answer.ts';
import type { WorkingUnit } from '../../../src/working/working-unit.ts';
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

  test.each(['', ' ', 'V', '1.2.3 V', '1,2,3 V', '1,23,456', '12 V 3', '--1', '1,250', '-1,250 V'])('%j is no answer', (answer) => {
    expectInputError(() => readAnswer(answer, 'V'), 'answer', 'unreadable');
  });
});
