import { describe, expect, test } from 'vitest';
import { type ParseQuantityOptions, parseQuantity, type QuantityName } from '../../../src/quantity/parse-quantity.ts';
import { as, expectInputError, expectPlain, frozen, NOT_NUMBERS } from '../../helpers/expectations.ts';

// Factors: 1 ft = 0.3048 m and 1 in = 25.4 mm exactly (international foot, 1959); 1 cmil = π/4 mil²; 1 BTU(IT) = 1055.05585262 J.
describe.each<readonly [text: string, quantity: QuantityName, value: number, unit: string]>([
  ['65 m', 'length', 65, 'm'],
  ['65m', 'length', 65, 'm'],
  ['  65   m  ', 'length', 65, 'm'],
  ['65\u00a0m', 'length', 65, 'm'],
  ['65\u202fm', 'length', 65, 'm'],
  ['65\tm', 'length', 65, 'm'],
  ['+65 m', 'length', 65, 'm'],
  ['.5 m', 'length', 0.5, 'm'],
  ['5. m', 'length', 5, 'm'],
  ['6.5e1 m', 'length', 65, 'm'],
  ['65E-3 km', 'length', 65, 'm'],
  ['65 metres', 'length', 65, 'm'],
  ['65 meters', 'length', 65, 'm'],
  ['1 metre', 'length', 1, 'm'],
  ['1 meter', 'length', 1, 'm'],
  ['12 cm', 'length', 0.12, 'm'],
  ['8 mm', 'length', 0.008, 'm'],
  ['212 ft', 'length', 64.6176, 'm'],
  ['212 feet', 'length', 64.6176, 'm'],
  ["212'", 'length', 64.6176, 'm'],
  ['1 foot', 'length', 0.3048, 'm'],
  ['1 kft', 'length', 304.8, 'm'],
  ['10 in', 'length', 0.254, 'm'],
  ['1 inch', 'length', 0.0254, 'm'],
  ['10 inches', 'length', 0.254, 'm'],
  ['0 m', 'length', 0, 'm'],
  ['-3 m', 'length', -3, 'm'],
  ['\u22123 m', 'length', -3, 'm'],
  ['\u20133 m', 'length', -3, 'm'],
  ['0.22 mm2', 'area', 0.22, 'mm²'],
  ['0.22 mm²', 'area', 0.22, 'mm²'],
  ['0.22 mm^2', 'area', 0.22, 'mm²'],
  ['0.22mm2', 'area', 0.22, 'mm²'],
  ['1 cmil', 'area', (Math.PI / 4) * 0.0254 * 0.0254, 'mm²'],
  ['250 kcmil', 'area', 250000 * (Math.PI / 4) * 0.0254 * 0.0254, 'mm²'],
  ['13 ohm', 'resistance', 13, 'Ω'],
  ['13 Ohm', 'resistance', 13, 'Ω'],
  ['13 OHMS', 'resistance', 13, 'Ω'],
  ['13 ohms', 'resistance', 13, 'Ω'],
  ['13 \u03a9', 'resistance', 13, 'Ω'],
  ['13 \u2126', 'resistance', 13, 'Ω'],
  ['13\u03a9', 'resistance', 13, 'Ω'],
  ['2.2 kΩ', 'resistance', 2200, 'Ω'],
  ['2.2 kohm', 'resistance', 2200, 'Ω'],
  ['20 mΩ', 'resistance', 0.02, 'Ω'],
  ['200 mohm', 'resistance', 0.2, 'Ω'],
  ['200 milliohms', 'resistance', 0.2, 'Ω'],
  ['1 milliohm', 'resistance', 0.001, 'Ω'],
  ['96 ohm/km', 'resistancePerLength', 0.096, 'Ω/m'],
  ['96 Ω / km', 'resistancePerLength', 0.096, 'Ω/m'],
  ['9.38 ohm/100 m', 'resistancePerLength', 0.0938, 'Ω/m'],
  ['9.38 Ω/100m', 'resistancePerLength', 0.0938, 'Ω/m'],
  ['0.1 ohm/m', 'resistancePerLength', 0.1, 'Ω/m'],
  ['94 mΩ/m', 'resistancePerLength', 0.094, 'Ω/m'],
  ['25.67 ohm/kft', 'resistancePerLength', 25.67 / 304.8, 'Ω/m'],
  ['25.67 ohm/1000 ft', 'resistancePerLength', 25.67 / 304.8, 'Ω/m'],
  ['25.67 ohm/1,000 ft', 'resistancePerLength', 25.67 / 304.8, 'Ω/m'],
  ['50 V', 'voltage', 50, 'V'],
  ['50 v', 'voltage', 50, 'V'],
  ['50 volts', 'voltage', 50, 'V'],
  ['1 volt', 'voltage', 1, 'V'],
  ['350 mV', 'voltage', 0.35, 'V'],
  ['1 kV', 'voltage', 1000, 'V'],
  ['2 A', 'current', 2, 'A'],
  ['2 a', 'current', 2, 'A'],
  ['2 amps', 'current', 2, 'A'],
  ['1 amp', 'current', 1, 'A'],
  ['350 mA', 'current', 0.35, 'A'],
  ['12.95 W', 'power', 12.95, 'W'],
  ['12.95 w', 'power', 12.95, 'W'],
  ['30 watts', 'power', 30, 'W'],
  ['1 watt', 'power', 1, 'W'],
  ['5 mW', 'power', 0.005, 'W'],
  ['1.5 kW', 'power', 1500, 'W'],
  ['3.412141633 BTU/h', 'power', 1, 'W'],
  ['35 °C', 'temperature', 35, '°C'],
  ['35°C', 'temperature', 35, '°C'],
  ['35 \u00baC', 'temperature', 35, '°C'],
  ['35° C', 'temperature', 35, '°C'],
  ['35 degC', 'temperature', 35, '°C'],
  ['35 C', 'temperature', 35, '°C'],
  ['-10 °C', 'temperature', -10, '°C'],
  ['\u221210 °C', 'temperature', -10, '°C'],
  ['104 degF', 'temperature', 40, '°C'],
  ['104 °F', 'temperature', 40, '°C'],
  ['104 F', 'temperature', 40, '°C'],
  ['-40 degF', 'temperature', -40, '°C'],
  ['32 °F', 'temperature', 0, '°C'],
  ['-100 °C', 'temperature', -100, '°C'],
  ['400 °C', 'temperature', 400, '°C'],
])('reads %j', (text, quantity, value, unit) => {
  const relative = Math.abs(value) * 1e-9; // BTU/h is given above to ten digits; all else is far closer
  const tolerance = quantity === 'power' && text.endsWith('BTU/h') ? relative : Math.abs(value) * 4 * Number.EPSILON;

  test('without being told what to expect', () => {
    const read = parseQuantity(text);
    expect(read.quantity).toBe(quantity);
    expect(read.unit).toBe(unit);
    expect(Math.abs(read.value - value)).toBeLessThanOrEqual(tolerance);
    expectPlain(read);
  });

  test('the same when its kind is asked for', () => {
    expect(parseQuantity(text, { quantity })).toStrictEqual(parseQuantity(text));
  });

  test('refused when another kind is asked for', () => {
    expectInputError(() => parseQuantity(text, { quantity: quantity === 'voltage' ? 'current' : 'voltage' }), 'text', 'unreadable');
  });
});

test.each([
  ['', 'unreadable'],
  ['   ', 'unreadable'],
  ['m', 'unreadable'],
  ['twelve m', 'unreadable'],
  ['12', 'missing'],
  ['12 ', 'missing'],
  ['12e3', 'missing'],
  ['12 furlongs', 'unreadable'],
  ['12 M', 'unreadable'],
  ['12 MW', 'unreadable'],
  ['12 m m', 'unreadable'],
  ['12 m 50 cm', 'unreadable'],
  ['12-14 m', 'unreadable'],
  ['12 / 14 m', 'unreadable'],
  ['--12 m', 'unreadable'],
  ['+-12 m', 'unreadable'],
  ['1 2 m', 'unreadable'],
  ['1.2.3 m', 'unreadable'],
  ['. m', 'unreadable'],
  ['1_000 m', 'unreadable'],
  ['0x10 m', 'unreadable'],
  ['1e m', 'unreadable'],
  ['\u0663 m', 'unreadable'],
  ['\uff15 m', 'unreadable'],
  ['½ m', 'unreadable'],
  ['NaN m', 'unreadable'],
  ['Infinity m', 'unreadable'],
  ['24 AWG', 'unreadable'],
  ['50 %', 'unreadable'],
  ['constructor', 'unreadable'],
  ['12 constructor', 'unreadable'],
  ['12 __proto__', 'unreadable'],
  ['12 toString', 'unreadable'],
  ['12 hasOwnProperty', 'unreadable'],
  ['=1+1', 'unreadable'],
  ['12 m\nrow two', 'unreadable'],
  ['\u0000', 'unreadable'],
  ['1,200 ft', 'unreadable'],
  ['1,5 m', 'unreadable'],
  ['12,5 m', 'unreadable'],
  ['1,200,000 ft', 'unreadable'],
  ['1 200 ft', 'unreadable'],
  ["1'200 ft", 'unreadable'],
  ['1e400 m', 'range'],
  [`${'9'.repeat(400)} m`, 'range'],
  ['-1e400 m', 'range'],
  ['1e13 m', 'range'],
  ['1e-13 m', 'range'],
  ['2e12 kV', 'range'],
  ['-101 °C', 'range'],
  ['401 °C', 'range'],
  ['1000 degF', 'range'],
  ['1e400 degF', 'range'],
] as const)('refuses %j (%s) and quotes it', (text, code) => {
  const error = expectInputError(() => parseQuantity(text), 'text', code);
  expect(error.received).toBe(text);
});

const NOT_TEXTS: readonly (readonly [string, unknown])[] = [
  ...NOT_NUMBERS.filter(([, value]) => typeof value !== 'string').map(([label, value]) => [label, value] as const),
  ['a number', 50],
  ['nothing', undefined],
];

test.each(NOT_TEXTS)('refuses %s for a text', (_label, value) => {
  expectInputError(() => parseQuantity(as<string>(value)), 'text', 'type');
});

test('a comma is refused because it is ambiguous, and the message says so', () => {
  expect(expectInputError(() => parseQuantity('1,200 ft'), 'text').message).toContain('ambiguous');
});

test.each<readonly [string, number]>([
  ['1,5 m', 1.5],
  ['12,25 m', 12.25],
  ['0,200 m', 0.2],
  ['1200,5 m', 1200.5],
  ['1234,567 m', 1234.567],
  ['-0,5 m', -0.5],
  ['\u22120,5 m', -0.5],
  ['1,5e2 m', 150],
  ['1,2345 m', 1.2345],
  ['1.5 m', 1.5],
  ['15 m', 15],
])('with a decimal comma reads %j as %d m', (text, value) => {
  expect(parseQuantity(text, { decimalComma: true })).toStrictEqual({ quantity: 'length', value, unit: 'm' });
});

test.each(['1,200 ft', '12,345 m', '123,456 m', '-1,200 m', '1,200,000 ft', '1.200,5 m', '1,2,3 m', ',5 m', '1, m'])(
  'with a decimal comma still refuses %j, which may be thousands or is no number',
  (text) => {
    expectInputError(() => parseQuantity(text, { decimalComma: true }), 'text', 'unreadable');
  },
);

test('a decimal comma in ohms per length does not touch the 1000 of the unit', () => {
  expect(parseQuantity('25,67 ohm/1,000 ft', { decimalComma: true }).value).toBeCloseTo(25.67 / 304.8, 15);
});

test.each<readonly [QuantityName, string]>([
  ['length', 'm'],
  ['area', 'mm²'],
  ['resistance', 'Ω'],
  ['resistancePerLength', 'Ω/m'],
  ['voltage', 'V'],
  ['current', 'A'],
  ['power', 'W'],
  ['temperature', '°C'],
])('a bare number is in the unit of the %s that was asked for', (quantity, unit) => {
  expect(parseQuantity('12', { quantity })).toStrictEqual({ quantity, value: 12, unit });
  expect(parseQuantity(' 1.2e1 ', { quantity })).toStrictEqual({ quantity, value: 12, unit });
});

test('a bare number is held to the domain of its kind', () => {
  expectInputError(() => parseQuantity('1e13', { quantity: 'length' }), 'text', 'range');
  expectInputError(() => parseQuantity('500', { quantity: 'temperature' }), 'text', 'range');
  expectInputError(() => parseQuantity('', { quantity: 'length' }), 'text', 'unreadable');
});

test('the message names the kind that was asked for and shows how to write it', () => {
  const error = expectInputError(() => parseQuantity('13 ohm', { quantity: 'length' }), 'text');
  expect(error.message).toBe('text: expected a length, such as 65 m or 212 ft, received "13 ohm"');
});

test('case tells mW from the rest and matters nowhere else it could mislead', () => {
  expect(parseQuantity('5 mW').value).toBe(0.005);
  for (const text of ['5 MW', '5 Mw', '5 MA', '5 KM']) expectInputError(() => parseQuantity(text), 'text', 'unreadable');
});

test('undefined options are absent options, and options are not edited', () => {
  expect(parseQuantity('5 m', { quantity: undefined, decimalComma: undefined })).toStrictEqual(parseQuantity('5 m'));
  const options: ParseQuantityOptions = frozen({ quantity: 'length', decimalComma: true });
  expect(parseQuantity('5,5', options).value).toBe(5.5);
});
