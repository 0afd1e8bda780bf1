/** Every conversion against mathjs units, which has its own factors; and reading what was written gives it back. */
import fc from 'fast-check';
import { create, type FactoryFunctionMap, all as mathjs } from 'mathjs';
import { describe, expect, test } from 'vitest';
import * as quantity from '../../src/quantity/index.ts';
import { expectWithin } from '../helpers/expectations.ts';
import { between, decades } from './arbitraries.ts';

const math = create(mathjs as FactoryFunctionMap);
const converted = (value: number, from: string, to: string): number => math.unit(value, from).toNumber(to);
/** π/4 mil², by mathjs's own mil. */
const circularMilsByMathjs = (value: number): number => (value * Math.PI * converted(1, 'mil', 'mm') ** 2) / 4;

const sized = fc.oneof(between(-1e6, 1e6), decades(1e-9, 1e12), fc.constant(0));

test.each<readonly [name: string, convert: (value: number) => number, oracle: (value: number) => number]>([
  ['feet', quantity.feet, (value) => converted(value, 'ft', 'm')],
  ['inches', quantity.inches, (value) => converted(value, 'inch', 'mm')],
  ['mils', quantity.mils, (value) => converted(value, 'mil', 'mm')],
  ['circularMils', quantity.circularMils, circularMilsByMathjs],
  ['fahrenheitDifference', quantity.fahrenheitDifference, (value) => converted(value, 'degF', 'K') - converted(0, 'degF', 'K')],
  ['ohmsPerKilofoot', quantity.ohmsPerKilofoot, (value) => math.evaluate(`${value} ohm / (1000 ft) to ohm / m`).toNumber('ohm / m')],
  ['ohmsPerKilometre', quantity.ohmsPerKilometre, (value) => math.evaluate(`${value} ohm / km to ohm / m`).toNumber('ohm / m')],
  ['milliamperes', quantity.milliamperes, (value) => converted(value, 'mA', 'A')],
  ['milliwatts', quantity.milliwatts, (value) => converted(value, 'mW', 'W')],
  ['kilohms', quantity.kilohms, (value) => converted(value, 'kohm', 'ohm')],
  ['btuPerHour', quantity.btuPerHour, (value) => converted(value, 'BTU', 'J') / 3600],
])('%s agrees with mathjs', (name, convert, oracle) => {
  // A temperature difference is taken on absolute temperatures there, and loses digits in the difference.
  const absolute = name === 'fahrenheitDifference' ? 1e-12 : 0;
  fc.assert(
    fc.property(sized, (value) => {
      expect(Math.abs(convert(value) - oracle(value))).toBeLessThanOrEqual(8 * Number.EPSILON * Math.abs(oracle(value)) + absolute);
    }),
  );
});

test('fahrenheit agrees with mathjs, which goes by way of kelvins', () => {
  fc.assert(
    fc.property(between(-148, 752), (value) => {
      expect(Math.abs(quantity.fahrenheit(value) - converted(value, 'degF', 'degC'))).toBeLessThanOrEqual(1e-12);
    }),
  );
});

/** Spellings of a unit beside mathjs's name for it. */
const SPELLINGS: readonly (readonly [quantity.QuantityName, spelling: string, mathjsUnit: string, coherent: string])[] = [
  ['length', 'm', 'm', 'm'],
  ['length', 'km', 'km', 'm'],
  ['length', 'cm', 'cm', 'm'],
  ['length', 'mm', 'mm', 'm'],
  ['length', 'ft', 'ft', 'm'],
  ['length', 'in', 'inch', 'm'],
  ['length', 'kft', 'kft', 'm'],
  ['area', 'mm2', 'mm^2', 'mm^2'],
  ['resistance', 'ohm', 'ohm', 'ohm'],
  ['resistance', 'mΩ', 'mohm', 'ohm'],
  ['resistance', 'kΩ', 'kohm', 'ohm'],
  ['resistancePerLength', 'Ω/km', 'ohm / km', 'ohm / m'],
  ['resistancePerLength', 'ohm/m', 'ohm / m', 'ohm / m'],
  ['resistancePerLength', 'ohm/kft', 'ohm / kft', 'ohm / m'],
  ['voltage', 'V', 'V', 'V'],
  ['voltage', 'mV', 'mV', 'V'],
  ['voltage', 'kV', 'kV', 'V'],
  ['current', 'A', 'A', 'A'],
  ['current', 'mA', 'mA', 'A'],
  ['power', 'W', 'W', 'W'],
  ['power', 'mW', 'mW', 'W'],
  ['power', 'kW', 'kW', 'W'],
];

math.createUnit('kft', '1000 ft');

describe('parseQuantity', () => {
  test.each(SPELLINGS)('%s in %s is what mathjs makes of %s', (kind, spelling, unit, coherent) => {
    fc.assert(
      fc.property(decades(1e-6, 1e6), fc.constantFrom('', ' ', '  '), fc.constantFrom('', '-', '\u2212'), (value, gap, sign) => {
        const read = quantity.parseQuantity(`${sign}${value}${gap}${spelling}`, { quantity: kind });
        const expected = math.evaluate(`${value} ${unit} to ${coherent}`).toNumber(coherent) * (sign === '' ? 1 : -1);
        expectWithin(read.value, expected, 8 * Number.EPSILON);
      }),
    );
  });

  const kinds = fc.constantFrom<quantity.QuantityName>(
    'length',
    'area',
    'resistance',
    'resistancePerLength',
    'voltage',
    'current',
    'power',
  );

  test('reading what was written in its own unit gives back the very same number', () => {
    fc.assert(
      fc.property(kinds, decades(1e-12, 1e12), (kind, value) => {
        const unit = quantity.parseQuantity('1', { quantity: kind }).unit;
        expect(quantity.parseQuantity(`${value} ${unit}`)).toStrictEqual({ quantity: kind, value, unit });
        expect(quantity.parseQuantity(String(value), { quantity: kind }).value).toBe(value);
      }),
    );
  });

  test('so does a temperature', () => {
    fc.assert(
      fc.property(between(-100, 400), (value) => {
        expect(quantity.parseQuantity(`${value} °C`)).toStrictEqual({ quantity: 'temperature', value, unit: '°C' });
      }),
    );
  });

  test('a decimal comma says the same as a decimal point', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 999_999 }), fc.integer({ min: 0, max: 99 }), (whole, cents) => {
        const fraction = String(cents).padStart(2, '0');
        expect(quantity.parseQuantity(`${whole},${fraction} m`, { decimalComma: true })).toStrictEqual(
          quantity.parseQuantity(`${whole}.${fraction} m`),
        );
      }),
    );
  });

  test('whatever the text: a finite quantity of a known kind, or an InputError for `text`, never anything else', () => {
    const pieces = fc.constantFrom(
      '1',
      '12',
      '.',
      ',',
      '-',
      '\u2212',
      'e',
      '+',
      ' ',
      '\u00a0',
      'm',
      'ft',
      'Ω',
      'ohm',
      '°',
      'C',
      '/',
      'k',
      '%',
      '\n',
      '__proto__',
    );
    const texts = fc.oneof(
      fc.string(),
      fc.string({ unit: 'binary' }),
      fc.array(pieces, { maxLength: 12 }).map((list) => list.join('')),
    );
    fc.assert(
      fc.property(texts, fc.boolean(), fc.option(kinds, { nil: undefined }), (text, decimalComma, kind) => {
        let read: quantity.ParsedQuantity;
        try {
          read = quantity.parseQuantity(text, { decimalComma, quantity: kind });
        } catch (error) {
          if (!quantity.isInputError(error)) throw error;
          expect(error.parameter).toBe('text');
          return;
        }
        expect(Number.isFinite(read.value)).toBe(true);
        if (kind !== undefined) expect(read.quantity).toBe(kind);
      }),
      { numRuns: 2000 },
    );
  });
});
