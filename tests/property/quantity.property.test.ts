/** Conversions back against mathjs units; what is written is read again; three of a wire's four quantities give the fourth. */
import fc from 'fast-check';
import { create, type FactoryFunctionMap, all as mathjs } from 'mathjs';
import { expect, test } from 'vitest';
import { awg } from '../../src/conductor/awg.ts';
import { awgFromArea, awgFromDiameter } from '../../src/conductor/awg-from-size.ts';
import {
  resistanceAtTemperature,
  temperatureCoefficientAt,
  temperatureFromResistance,
} from '../../src/conductor/temperature-coefficient.ts';
import { uniformWire } from '../../src/conductor/uniform-wire.ts';
import * as quantity from '../../src/quantity/index.ts';
import { expectWithin } from '../helpers/expectations.ts';
import { between, decades } from './arbitraries.ts';

const math = create(mathjs as FactoryFunctionMap);
const converted = (value: number, from: string, to: string): number => math.unit(value, from).toNumber(to);
const evaluated = (expression: string, unit: string): number => math.evaluate(expression).toNumber(unit);

const sized = fc.oneof(between(-1e6, 1e6), decades(1e-9, 1e12), fc.constant(0));

test.each<readonly [name: string, convert: (value: number) => number, oracle: (value: number) => number]>([
  ['kilofeet', quantity.kilofeet, (value) => 1000 * converted(value, 'ft', 'm')],
  ['ohmsPerHundredMetres', quantity.ohmsPerHundredMetres, (value) => evaluated(`${value} ohm / (100 m)`, 'ohm / m')],
  ['milliohms', quantity.milliohms, (value) => converted(value, 'mohm', 'ohm')],
  ['toFeet', quantity.toFeet, (value) => converted(value, 'm', 'ft')],
  ['toKilofeet', quantity.toKilofeet, (value) => converted(value, 'm', 'ft') / 1000],
  ['toInches', quantity.toInches, (value) => converted(value, 'mm', 'inch')],
  ['toMils', quantity.toMils, (value) => converted(value, 'mm', 'mil')],
  ['toCircularMils', quantity.toCircularMils, (value) => (value * 4) / Math.PI / converted(1, 'mil', 'mm') ** 2],
  ['toOhmsPerKilofoot', quantity.toOhmsPerKilofoot, (value) => 1000 * evaluated(`${value} ohm / m`, 'ohm / ft')],
  ['toOhmsPerKilometre', quantity.toOhmsPerKilometre, (value) => evaluated(`${value} ohm / m`, 'ohm / km')],
  ['toOhmsPerHundredMetres', quantity.toOhmsPerHundredMetres, (value) => evaluated(`${value} ohm / m`, 'ohm / km') / 10],
  ['toMilliamperes', quantity.toMilliamperes, (value) => converted(value, 'A', 'mA')],
  ['toMilliwatts', quantity.toMilliwatts, (value) => converted(value, 'W', 'mW')],
  ['toMilliohms', quantity.toMilliohms, (value) => converted(value, 'ohm', 'mohm')],
  ['toKilohms', quantity.toKilohms, (value) => converted(value, 'ohm', 'kohm')],
  ['toBtuPerHour', quantity.toBtuPerHour, (value) => 3600 * converted(value, 'J', 'BTU')],
])('%s agrees with mathjs', (_name, convert, oracle) => {
  fc.assert(
    fc.property(sized, (value) => {
      expect(Math.abs(convert(value) - oracle(value))).toBeLessThanOrEqual(8 * Number.EPSILON * Math.abs(oracle(value)));
    }),
  );
});

test('toFahrenheit and toFahrenheitDifference agree with mathjs, which goes by way of kelvins', () => {
  fc.assert(
    fc.property(between(-100, 400), (value) => {
      expect(Math.abs(quantity.toFahrenheit(value) - converted(value, 'degC', 'degF'))).toBeLessThanOrEqual(1e-11);
      const difference = converted(273.15 + value, 'K', 'degF') - converted(273.15, 'K', 'degF');
      expect(Math.abs(quantity.toFahrenheitDifference(value) - difference)).toBeLessThanOrEqual(1e-11);
    }),
  );
});

const UNITS = {
  m: 'length',
  'mm²': 'area',
  Ω: 'resistance',
  'Ω/m': 'resistancePerLength',
  V: 'voltage',
  A: 'current',
  W: 'power',
  K: 'temperatureDifference',
} as const;
const units = fc.constantFrom(...(Object.keys(UNITS) as (keyof typeof UNITS)[]));
const digits = fc.integer({ min: 1, max: 15 });
const signed = fc.oneof(decades(1e-11, 1e11), between(-1e6, -1e-6), fc.constant(0));

test('what formatQuantity writes, parseQuantity reads, to half a unit of the last figure', () => {
  fc.assert(
    fc.property(signed, units, digits, (value, unit, figures) => {
      const read = quantity.parseQuantity(quantity.formatQuantity(value, unit, { digits: figures }));
      expect(read).toMatchObject({ unit, quantity: UNITS[unit] });
      expect(Math.abs(read.value - value)).toBeLessThanOrEqual((0.5 * 10 ** (1 - figures) + 1e-14) * Math.abs(value));
    }),
  );
});

test('temperatures as well, within the range that is read', () => {
  fc.assert(
    fc.property(between(-99, 399), fc.integer({ min: 3, max: 12 }), (value, figures) => {
      const read = quantity.parseQuantity(quantity.formatQuantity(value, '°C', { digits: figures }));
      expect(read).toMatchObject({ unit: '°C', quantity: 'temperature' });
      expect(Math.abs(read.value - value)).toBeLessThanOrEqual(0.51 * 10 ** (1 - figures) * Math.abs(value) + 1e-12);
    }),
  );
});

test('written, read and written again is the same text', () => {
  fc.assert(
    fc.property(decades(1e-11, 1e11), units, fc.integer({ min: 1, max: 12 }), (value, unit, figures) => {
      const text = quantity.formatQuantity(value, unit, { digits: figures });
      expect(quantity.formatQuantity(quantity.parseQuantity(text).value, unit, { digits: figures })).toBe(text);
    }),
  );
});

test('the number written never has more than the figures asked for', () => {
  fc.assert(
    fc.property(decades(1e-9, 1e9), units, fc.integer({ min: 1, max: 6 }), (value, unit, figures) => {
      const number = quantity.formatQuantity(value, unit, { digits: figures }).split(' ')[0] as string;
      const significant = number.split('e')[0]?.replace('.', '').replace(/^0+/, '') as string;
      expect(significant.slice(figures)).toMatch(/^0*$/);
    }),
  );
});

test('diameter and area agree on the gauge, and the progression comes back', () => {
  fc.assert(
    fc.property(between(0.076, 12.3), (diameter) => {
      const { fractional } = awgFromDiameter(diameter);
      expectWithin(awgFromArea((Math.PI / 4) * diameter ** 2).fractional + 10, fractional + 10, 1e-12);
      expectWithin(0.127 * 92 ** ((36 - fractional) / 39), diameter, 1e-12);
    }),
  );
});

test('rounded diameters stay within 0.00005 in, and within 3 % of resistance, of unrounded ones', () => {
  fc.assert(
    fc.property(fc.integer({ min: -3, max: 40 }), (gauge) => {
      const rounded = awg(gauge, { family: 'astm-b258' });
      expect(Math.abs(rounded.diameter - awg(gauge).diameter) / 25.4).toBeLessThanOrEqual(0.00005 + 1e-12);
      expectWithin(rounded.resistancePerMetre, awg(gauge).resistancePerMetre, 0.03);
      expectWithin(rounded.resistancePerMetre * rounded.area * 58, 1, 1e-14);
    }),
  );
});

test('a wire of twice the length or half the area has twice the resistance', () => {
  const amount = decades(1e-3, 1e3);
  fc.assert(
    fc.property(amount, amount, amount, (resistivity, length, area) => {
      const { resistance } = uniformWire({ resistivity, length, area });
      expectWithin(uniformWire({ resistivity, length: 2 * length, area }).resistance, 2 * resistance, 1e-14);
      expectWithin(uniformWire({ resistivity, length, area: area / 2 }).resistance, 2 * resistance, 1e-14);
      expectWithin(uniformWire({ resistance, length, area }).resistivity, resistivity, 1e-14);
      expectWithin(uniformWire({ resistance, resistivity, area }).length, length, 1e-14);
      expectWithin(uniformWire({ resistance, resistivity, length }).area, area, 1e-14);
    }),
  );
});

test('the reference temperature of a coefficient changes nothing but its name', () => {
  const temperature = between(-60, 200);
  fc.assert(
    fc.property(between(0.001, 0.0045), temperature, temperature, temperature, (coefficient, known, asked, reference) => {
      const line = { resistance: 10, temperature: known, coefficient };
      const moved = { ...line, coefficient: temperatureCoefficientAt({ coefficient, at: reference }), coefficientTemperature: reference };
      const resistance = resistanceAtTemperature({ ...line, at: asked });
      expectWithin(resistanceAtTemperature({ ...moved, at: asked }), resistance, 1e-11);
      expect(Math.abs(temperatureFromResistance({ ...moved, laterResistance: resistance }) - asked)).toBeLessThan(1e-8);
    }),
  );
});
