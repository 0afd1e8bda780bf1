/** Warm cable and lossy cords. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type DeratedLengthInput, deratedLength } from '../../../src/cable/derated-length.ts';
import { type InsertionLossInput, insertionLossFactor } from '../../../src/cable/insertion-loss.ts';
import { source } from '../../../src/sources/source.ts';
import { as, expectInputError, expectPlain, NOT_NUMBERS } from '../../helpers/expectations.ts';

const temperature = fc.double({ min: -100, max: 60, noNaN: true });

test('the shorter of table and percentage rule is applied, and the difference stated', () => {
  fc.assert(
    fc.property(temperature, fc.boolean(), (celsius, screened) => {
      const derated = deratedLength({ temperature: celsius, screened });
      if (!derated.feasible) expect.fail('60 °C is within both rules');
      expect(derated.length).toBe(Math.min(derated.table.length, derated.percentage.length));
      expect(derated.difference).toBe(derated.table.length - derated.percentage.length);
      expect(derated.length).toBe(derated[derated.governedBy].length);
      expect(derated.source).toBe(derated[derated.governedBy].source);
      expect(Math.abs(derated.difference)).toBeLessThan(0.81);
      expect(derated.percentage.length).toBe(90 / insertionLossFactor({ temperature: celsius, screened }));
    }),
  );
});

test('warmer is never longer, and screened never shorter', () => {
  fc.assert(
    fc.property(temperature, temperature, fc.boolean(), (a, b, screened) => {
      const length = (celsius: number, has: boolean): number => {
        const derated = deratedLength({ temperature: celsius, screened: has });
        return derated.feasible ? derated.length : 0;
      };
      const [cooler, warmer] = a < b ? [a, b] : [b, a];
      expect(length(warmer, screened)).toBeLessThanOrEqual(length(cooler, screened));
      expect(length(a, true)).toBeGreaterThanOrEqual(length(a, false));
    }),
  );
});

test('90 m at 20 °C and in the cold; plain data', () => {
  for (const celsius of [-40, 0, 20]) expect(deratedLength({ temperature: celsius })).toMatchObject({ length: 90, difference: 0 });
  expectPlain(deratedLength({ temperature: 33 }));
  expectPlain(deratedLength({ temperature: 66 }));
});

test('above 60 °C both rules end: no length, and by how much it is too hot', () => {
  expect(deratedLength({ temperature: 60 }).feasible).toBe(true);
  expect(deratedLength({ temperature: 62.5 })).toEqual({ feasible: false, hottest: 60, shortfall: 2.5, source: 'cabling-temperature' });
});

test('only rows that were read are called published; between two rows the doubt of either stays', () => {
  const status = (celsius: number, screened: boolean): string => {
    const derated = deratedLength({ temperature: celsius, screened });
    return derated.feasible ? source(derated.table.source).status : '';
  };
  expect([20, 50].map((celsius) => status(celsius, false))).toEqual(['published', 'published']);
  expect([25, 47, 52, 60].map((celsius) => status(celsius, false))).toEqual(['memory', 'memory', 'memory', 'memory']);
  expect([20, 50].map((celsius) => status(celsius, true))).toEqual(['published', 'memory']);
});

describe('refuses', () => {
  test.each(NOT_NUMBERS)('%s for a temperature', (_label, value, code) => {
    const celsius = as<number>(value);
    expectInputError(() => deratedLength({ temperature: celsius }), 'temperature', code);
    expectInputError(() => insertionLossFactor({ temperature: celsius }), 'temperature', code);
  });

  test('no temperature, one where the rule has ended, a screen that is no yes or no, and no object', () => {
    expectInputError(() => insertionLossFactor(as<InsertionLossInput>({})), 'temperature', 'missing');
    expectInputError(() => insertionLossFactor({ temperature: 60.1 }), 'temperature', 'range');
    expectInputError(() => deratedLength(as<DeratedLengthInput>({})), 'temperature', 'missing');
    expectInputError(() => deratedLength({ temperature: 30, screened: as<boolean>('F/UTP') }), 'screened', 'type');
    expectInputError(() => insertionLossFactor({ temperature: 30, screened: as<boolean>(1) }), 'screened', 'type');
    expectInputError(() => deratedLength(as<DeratedLengthInput>(30)), 'input', 'type');
    expectInputError(() => insertionLossFactor(as<InsertionLossInput>(30)), 'input', 'type');
  });
});
