import { describe, expect, test } from 'vitest';
import * as quantity from '../../../src/quantity/index.ts';
import { as, expectInputError, NOT_NUMBERS } from '../../helpers/expectations.ts';

const { formatQuantity, parseQuantity } = quantity;

describe('formatQuantity writes', () => {
  test.each<readonly [number, quantity.QuantityUnit, number | undefined, string]>([
    [13.08, 'Ω', undefined, '13.1 Ω'],
    [0.4116, 'A', undefined, '412 mA'],
    [12, 'V', undefined, '12.0 V'],
    [0.9996, 'A', undefined, '1.00 A'],
    [0.9994, 'A', undefined, '999 mA'],
    [999.6, 'Ω', undefined, '1.00 kΩ'],
    [2200, 'Ω', 2, '2.2 kΩ'],
    [1e6, 'Ω', undefined, '1.00 MΩ'],
    [1234, 'W', 4, '1.234 kW'],
    [64.617, 'm', undefined, '64.6 m'],
    [1500, 'm', undefined, '1.50 km'],
    [0.0842, 'Ω/m', undefined, '84.2 mΩ/m'],
    [0.22, 'mm²', undefined, '0.220 mm²'],
    [1234, 'mm²', undefined, '1230 mm²'],
    [107.219, 'mm²', 4, '107.2 mm²'],
    [21.5, '°C', undefined, '21.5 °C'],
    [-40, '°C', undefined, '-40.0 °C'],
    [10, 'K', 1, '10 K'],
    [-0.0123, 'V', undefined, '-12.3 mV'],
    [0, 'Ω', undefined, '0 Ω'],
    [-0, 'A', 5, '0 A'],
    [1e-8, 'Ω', undefined, '0.0100 µΩ'],
    [1e-12, 'm', undefined, '1.00e-6 µm'],
    [1e12, 'W', undefined, '1.00e9 kW'],
    [1e12, 'Ω', undefined, '1.00e6 MΩ'],
  ])('%d %s to %s figures as %s', (value, unit, digits, text) => {
    expect(formatQuantity(value, unit, { digits })).toBe(text);
  });
});

test('undefined options mean three figures', () => {
  expect(formatQuantity(13.08, 'Ω', {})).toBe(formatQuantity(13.08, 'Ω'));
});

describe('formatQuantity refuses', () => {
  test.each(NOT_NUMBERS)('%s', (_label, value, code) => {
    expectInputError(() => formatQuantity(as<number>(value), 'Ω'), 'value', code);
    expectInputError(() => formatQuantity(1, 'Ω', { digits: as<number>(value) }), 'options.digits');
  });

  test('units that are not the library’s own, figures beyond 1 to 15, options that are no object', () => {
    for (const unit of ['ohm', 'ft', 'mA', 'constructor', '', 7, null]) {
      expectInputError(() => formatQuantity(1, as<quantity.QuantityUnit>(unit)), 'unit', 'unknown');
    }
    for (const digits of [0, 16, 2.5, -3]) expectInputError(() => formatQuantity(1, 'Ω', { digits }), 'options.digits', 'range');
    for (const options of [null, 3, 'three', []]) {
      expectInputError(() => formatQuantity(1, 'Ω', as<quantity.FormatOptions>(options)), 'options', 'type');
    }
  });
});

describe('parseQuantity reads the units that were added', () => {
  test.each<readonly [string, quantity.QuantityName, number]>([
    ['20.1 mil', 'length', 0.00051054],
    ['25 µm', 'length', 0.000025],
    ['25 \u03bcm', 'length', 0.000025],
    ['25 \u00b5Ω', 'resistance', 0.000025],
    ['25 \u03bcohm', 'resistance', 0.000025],
    ['2.2 MΩ', 'resistance', 2_200_000],
    ['2.2 megohm', 'resistance', 2_200_000],
    ['4.7 kilohms', 'resistance', 4700],
    ['0.1 ohm/ft', 'resistancePerLength', 0.1 / 0.3048],
    ['12 µΩ/m', 'resistancePerLength', 0.000012],
    ['50 µV', 'voltage', 0.00005],
    ['50 µA', 'current', 0.00005],
    ['1.2 kA', 'current', 1200],
    ['50 µW', 'power', 0.00005],
    ['10 K', 'temperatureDifference', 10],
    ['10 kelvins', 'temperatureDifference', 10],
  ])('%s', (text, name, value) => {
    const read = parseQuantity(text);
    expect(read.quantity).toBe(name);
    expect(Math.abs(read.value / value - 1)).toBeLessThan(1e-14);
  });

  test('degrees are a difference only where one is wanted, and then have no zero to shift', () => {
    const wanted = { quantity: 'temperatureDifference' } as const;
    expect(parseQuantity('18 degF', wanted)).toStrictEqual({ quantity: 'temperatureDifference', value: 10, unit: 'K' });
    expect(parseQuantity('10 °C', wanted).value).toBe(10);
    expect(parseQuantity('10', wanted).value).toBe(10);
    expect(parseQuantity('-10 K', wanted).value).toBe(-10);
    expectInputError(() => parseQuantity('300 K', { quantity: 'temperature' }), 'text', 'unreadable');
    expectInputError(() => parseQuantity('10 V', wanted), 'text', 'unreadable');
  });

  test('a decimal comma where it is announced, thousands nowhere', () => {
    expect(parseQuantity('0,22 mm2', { decimalComma: true }).value).toBe(0.22);
    for (const options of [{}, { decimalComma: true }]) expectInputError(() => parseQuantity('1,200 ft', options), 'text', 'unreadable');
  });
});

describe('conversions back', () => {
  const PAIRS: readonly (readonly [string, (value: number) => number, (value: number) => number])[] = [
    ['feet', quantity.feet, quantity.toFeet],
    ['kilofeet', quantity.kilofeet, quantity.toKilofeet],
    ['inches', quantity.inches, quantity.toInches],
    ['mils', quantity.mils, quantity.toMils],
    ['circularMils', quantity.circularMils, quantity.toCircularMils],
    ['fahrenheit', quantity.fahrenheit, quantity.toFahrenheit],
    ['fahrenheitDifference', quantity.fahrenheitDifference, quantity.toFahrenheitDifference],
    ['ohmsPerKilofoot', quantity.ohmsPerKilofoot, quantity.toOhmsPerKilofoot],
    ['ohmsPerKilometre', quantity.ohmsPerKilometre, quantity.toOhmsPerKilometre],
    ['ohmsPerHundredMetres', quantity.ohmsPerHundredMetres, quantity.toOhmsPerHundredMetres],
    ['milliamperes', quantity.milliamperes, quantity.toMilliamperes],
    ['milliwatts', quantity.milliwatts, quantity.toMilliwatts],
    ['milliohms', quantity.milliohms, quantity.toMilliohms],
    ['kilohms', quantity.kilohms, quantity.toKilohms],
    ['btuPerHour', quantity.btuPerHour, quantity.toBtuPerHour],
  ];

  test.each(PAIRS)('%s and back', (_name, there, back) => {
    for (const value of [-40, -1, 0, 0.001, 1, 3.7, 100, 1e6]) {
      expect(Math.abs(back(there(value)) - value)).toBeLessThanOrEqual(1e-13 * Math.max(1, Math.abs(value)));
    }
  });

  test.each(PAIRS)('%s: both refuse what is no number', (_name, there, back) => {
    for (const [, value, code] of NOT_NUMBERS) {
      expectInputError(() => there(as<number>(value)), 'value', code);
      expectInputError(() => back(as<number>(value)), 'value', code);
    }
    expectInputError(() => back(1.1e12), 'value', 'range');
    expectInputError(() => back(as<number>(undefined)), 'value', 'missing');
  });
});
