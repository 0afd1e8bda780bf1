import { describe, expect, test } from 'vitest';
import * as quantity from '../../../src/quantity/index.ts';
import { as, expectInputError, NOT_NUMBERS } from '../../helpers/expectations.ts';

const CONVERTERS: readonly (readonly [
  name: string,
  convert: (value: number) => number,
  slope: number,
  at: readonly (readonly [number, number])[],
])[] = [
  // One foot, one inch: exact by the international agreement of 1959.
  [
    'feet',
    quantity.feet,
    0.3048,
    [
      [1, 0.3048],
      [295, 89.916],
    ],
  ],
  [
    'inches',
    quantity.inches,
    25.4,
    [
      [1, 25.4],
      [10, 254],
    ],
  ],
  [
    'mils',
    quantity.mils,
    0.0254,
    [
      [1, 0.0254],
      [1000, 25.4],
    ],
  ],
  [
    'circularMils',
    quantity.circularMils,
    (Math.PI / 4) * 0.0254 ** 2,
    [
      [1, 0.0005067074790974977],
      [1e6, 506.7074790974977],
    ],
  ],
  // The fixed points of both scales, and the one reading they share.
  [
    'fahrenheit',
    quantity.fahrenheit,
    5 / 9,
    [
      [32, 0],
      [212, 100],
      [104, 40],
      [-40, -40],
    ],
  ],
  [
    'fahrenheitDifference',
    quantity.fahrenheitDifference,
    5 / 9,
    [
      [9, 5],
      [180, 100],
    ],
  ],
  ['ohmsPerKilofoot', quantity.ohmsPerKilofoot, 1 / 304.8, [[304.8, 1]]],
  ['ohmsPerKilometre', quantity.ohmsPerKilometre, 1 / 1000, [[96, 0.096]]],
  ['milliamperes', quantity.milliamperes, 1 / 1000, [[350, 0.35]]],
  ['milliwatts', quantity.milliwatts, 1 / 1000, [[25500, 25.5]]],
  ['kilohms', quantity.kilohms, 1000, [[2.2, 2200]]],
  // International-table BTU: 1055.05585262 J.
  ['btuPerHour', quantity.btuPerHour, 1055.05585262 / 3600, [[3600, 1055.05585262]]],
];

describe.each(CONVERTERS)('%s', (_name, convert, slope, at) => {
  test('meets its fixed points', () => {
    for (const [from, to] of at) expect(Math.abs(convert(from) - to)).toBeLessThanOrEqual(Math.abs(to) * 2 * Number.EPSILON);
  });

  test('is a straight line: equal steps in, equal steps out, on both sides of 0', () => {
    for (const value of [-40, -1e-3, 0, 1, 77.7, 1e9]) {
      const step = convert(value + 1000) - convert(value);
      expect(Math.abs(step - slope * 1000)).toBeLessThanOrEqual(4 * Number.EPSILON * (Math.abs(convert(value)) + Math.abs(slope) * 1000));
    }
  });

  test('accepts up to 1e12 either way, and nothing beyond', () => {
    expect(Number.isFinite(convert(1e12))).toBe(true);
    expect(Number.isFinite(convert(-1e12))).toBe(true);
    expectInputError(() => convert(1.0000001e12), 'value', 'range');
  });

  test.each(NOT_NUMBERS)('refuses %s', (_label, value, code) => {
    expectInputError(() => convert(as<number>(value)), 'value', code);
  });

  test('refuses nothing at all', () => {
    expectInputError(() => convert(as<number>(undefined)), 'value', 'missing');
  });
});
