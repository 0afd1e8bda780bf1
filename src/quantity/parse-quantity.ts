/** Reading a quantity as people write it: `212 ft`, `13 ohm`, `0.22 mm2`, `104 degF`. @module */
import type { Fields } from './fields.ts';
import { COLDEST, HOTTEST, hasMoreKeys, LARGEST, requireBoolean, requireObject, SMALLEST } from './guards.ts';
import { InputError } from './input-error.ts';
import { refuseUnknown, requireName } from './nearest.ts';

/** The kinds of quantity that can be read, each with the unit it is returned in. */
export type QuantityName =
  | 'length'
  | 'area'
  | 'resistance'
  | 'resistancePerLength'
  | 'voltage'
  | 'current'
  | 'power'
  | 'temperature'
  | 'temperatureDifference';

/** The unit in which each kind of quantity is returned. */
export type QuantityUnit = 'm' | 'mm²' | 'Ω' | 'Ω/m' | 'V' | 'A' | 'W' | '°C' | 'K';

/** A quantity that was read from text. */
export interface ParsedQuantity {
  readonly quantity: QuantityName;
  /** The number, in `unit`. */
  readonly value: number;
  readonly unit: QuantityUnit;
}

/** How a quantity is to be read. */
export interface ParseQuantityOptions {
  /** The kind that is wanted; without it any kind is accepted, and a bare number is not. */
  readonly quantity?: QuantityName | undefined;
  /** Read `1,5` as one and a half, as text files with `;` between the cells do. Off by default. */
  readonly decimalComma?: boolean | undefined;
}

/** Of each kind of quantity the unit that it is returned in, and what is asked for. */
const QUANTITIES: Readonly<Record<QuantityName, readonly [unit: QuantityUnit, words: string]>> = {
  length: ['m', 'length, such as 65 m or 212 ft'],
  area: ['mm²', 'conductor area, such as 0.5 mm2 or 404 cmil'],
  resistance: ['Ω', 'resistance, such as 13 ohm'],
  resistancePerLength: ['Ω/m', 'resistance per length, such as 96 ohm/km'],
  voltage: ['V', 'voltage, such as 50 V'],
  current: ['A', 'current, such as 350 mA'],
  power: ['W', 'power, such as 12.95 W'],
  temperature: ['°C', 'temperature, such as 35 °C or 95 degF'],
  temperatureDifference: ['K', 'temperature difference, such as 10 K or 18 degF'],
};

/** @internal */
export const PARSE_QUANTITY_FIELDS: Fields<ParseQuantityOptions, 'decimalComma'> = {
  quantity: { oneOf: () => Object.keys(QUANTITIES) as QuantityName[], optional: true },
  decimalComma: { flag: true, default: false },
};

/** What a unit measures, and the factor to the unit it is returned in. */
type Unit = readonly [quantity: QuantityName, multiplyBy: number, thenDivideBy: number];

/** Spellings with blanks between, then the unit; two integers keep a decimal such as 5 mW exact. */
// biome-ignore format: one row a line
const UNITS: readonly (readonly [spellings: string, ...Unit])[] = [
  ['m metre metres meter meters', 'length', 1, 1],
  ['km', 'length', 1000, 1],
  ['cm', 'length', 1, 100],
  ['mm', 'length', 1, 1000],
  ["ft foot feet '", 'length', 0.3048, 1],
  ['kft', 'length', 304.8, 1],
  ['in inch inches', 'length', 0.0254, 1],
  ['mm²', 'area', 1, 1],
  ['cmil', 'area', 0.0005067074790974977, 1],
  ['kcmil', 'area', 0.5067074790974977, 1],
  ['mil mils', 'length', 0.0000254, 1],
  ['µm', 'length', 1, 1_000_000],
  ['ohm ohms', 'resistance', 1, 1],
  ['mohm milliohm milliohms', 'resistance', 1, 1000],
  ['µohm', 'resistance', 1, 1_000_000],
  ['kohm kilohm kilohms', 'resistance', 1000, 1],
  ['Mohm megohm megohms', 'resistance', 1_000_000, 1],
  ['ohm/m', 'resistancePerLength', 1, 1],
  ['ohm/km mohm/m', 'resistancePerLength', 1, 1000],
  ['ohm/100m', 'resistancePerLength', 1, 100],
  ['µohm/m', 'resistancePerLength', 1, 1_000_000],
  ['kohm/m', 'resistancePerLength', 1000, 1],
  ['ohm/ft', 'resistancePerLength', 1, 0.3048],
  ['ohm/kft ohm/1000ft', 'resistancePerLength', 1, 304.8],
  ['V v volt volts', 'voltage', 1, 1],
  ['µV', 'voltage', 1, 1_000_000],
  ['mV', 'voltage', 1, 1000],
  ['kV', 'voltage', 1000, 1],
  ['A a amp amps', 'current', 1, 1],
  ['µA', 'current', 1, 1_000_000],
  ['mA', 'current', 1, 1000],
  ['kA', 'current', 1000, 1],
  ['W w watt watts', 'power', 1, 1],
  ['µW', 'power', 1, 1_000_000],
  ['mW', 'power', 1, 1000],
  ['kW', 'power', 1000, 1],
  ['BTU/h', 'power', 1055.05585262, 3600],
  ['degC C', 'temperature', 1, 1],
  ['degF F', 'temperature', 5, 9],
  ['K kelvin kelvins', 'temperatureDifference', 1, 1],
];

let bySpelling: ReadonlyMap<string, Unit> | undefined;

/** The unit of a spelling; the list is made when the first text is read. */
function unitOf(spelling: string): Unit | undefined {
  bySpelling ??= new Map(UNITS.flatMap(([spellings, ...unit]) => spellings.split(' ').map((one) => [one, unit] as const)));
  return bySpelling.get(spelling);
}

/** Longer texts are not quantities. */
const LONGEST_TEXT = 1000;

const NUMBER_AND_UNIT = /^([+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?)\s*(.*)$/;

/**
 * Reads a number with its unit, and returns it in the library's unit for that kind of quantity.
 *
 * Spaces, `Ω` or `ohm`, both signs for micro, `°` or `deg`, `²` or `2`, a minus sign or a hyphen are all understood; case
 * matters only where it tells units apart (`mW`). `K` is a difference: degrees count as one only where a
 * `temperatureDifference` is wanted. A comma is refused as ambiguous (`1,200 ft` may be 1.2 or 1200) unless
 * `decimalComma` says it is the decimal sign.
 *
 * @param text - What was written, as in `212 ft`.
 * @param options - The kind wanted (then a bare number is in that kind's unit), and the decimal sign.
 * @returns The quantity. Magnitudes 0 or 1e-12 to 1e12, temperatures -100 to 400 [°C].
 * @throws {@link InputError} If the text has no number, an unknown unit, a unit of another kind, an ambiguous
 *   comma, or a value outside the domain.
 * @example
 * parseQuantity('212 ft').value.toFixed(2); // => '64.62'
 * @example
 * parseQuantity('104 degF'); // => { quantity: 'temperature', value: 40, unit: '°C' }
 */
export function parseQuantity(text: string, options: ParseQuantityOptions = {}): ParsedQuantity {
  requireObject(options, 'options', 'an object');
  const { quantity: wanted, decimalComma = false } = options;
  if (hasMoreKeys(options, wanted, options.decimalComma)) refuseUnknown(options, ['quantity', 'decimalComma'], 'options');
  if (wanted !== undefined) requireName(wanted, Object.keys(QUANTITIES), 'options.quantity');
  requireBoolean(decimalComma, 'options.decimalComma');
  const example = wanted === undefined ? 'a number with its unit, such as 65 m or 13 ohm' : `a ${QUANTITIES[wanted][1]}`;
  if (typeof text !== 'string') throw new InputError('type', 'text', example, text);
  // Nobody writes a quantity as long as this, and what looks for one would look for long.
  if (text.length > LONGEST_TEXT) throw new InputError('unreadable', 'text', example, text);

  const match = NUMBER_AND_UNIT.exec(tidy(text, decimalComma, example));
  if (match === null) throw new InputError('unreadable', 'text', example, text);
  // `+ 0` turns a -0 into 0.
  const magnitude = Number(match[1]) + 0;
  if (magnitude === 0 && /[1-9]/.test((match[1] as string).replace(/e.*/i, ''))) {
    throw new InputError('range', 'text', `${example}, of 0, or from 1e-12 to 1e12 in its SI unit`, text);
  }
  const spelling = (match[2] as string).trim();

  if (spelling === '') {
    if (wanted === undefined) throw new InputError('missing', 'text', `${example}; the unit is missing`, text);
    return within(wanted, magnitude, text);
  }
  const listed = unitOf(spelling);
  // Degrees that are asked for as a difference have no zero to be shifted.
  const isDifference = wanted === 'temperatureDifference' && listed?.[0] === 'temperature';
  const unit = isDifference ? (['temperatureDifference', listed[1], listed[2]] as const) : listed;
  if (unit === undefined || (wanted !== undefined && unit[0] !== wanted)) {
    throw new InputError('unreadable', 'text', example, text);
  }
  const offset = !isDifference && (spelling === 'degF' || spelling === 'F') ? 32 : 0;
  return within(unit[0], ((magnitude - offset) * unit[1]) / unit[2], text);
}

/** One spelling for each sign that keyboards and data sheets write in several ways. */
function tidy(text: string, decimalComma: boolean, example: string): string {
  let plain = text
    .trim()
    .replace(/[\u00a0\u2007\u2009\u202f]/g, ' ')
    .replace(/^[\u2212\u2013]/, '-')
    .replace(/[\u2126\u03a9]/g, 'ohm')
    .replace(/\u03bc/g, '\u00b5')
    .replace(/[\u00ba\u00b0]\s*/g, 'deg')
    .replace(/(?<=mm)(?:2|\^2)$/, '²')
    .replace(/\s*\/\s*/g, '/')
    .replace(/\/100\s+m$/, '/100m')
    .replace(/\/(?:1000|1,000)\s*ft$/, '/1000ft')
    .replace(/\b(ohms?|OHMS?|Ohms?)\b/g, (word) => word.toLowerCase());
  if (/\d,\d/.test(plain)) {
    // `1,200 ft` may be 1.2 or 1200 even in a decimal-comma file: thousands are written just so.
    if (!decimalComma || /^[+-]?[1-9]\d{0,2},\d{3}(?!\d)/.test(plain)) {
      throw new InputError('unreadable', 'text', `${example}, without thousands separators (a comma here is ambiguous)`, text);
    }
    plain = plain.replace(',', '.');
  }
  return plain;
}

function within(quantity: QuantityName, value: number, text: string): ParsedQuantity {
  const inDomain =
    quantity === 'temperature'
      ? value >= COLDEST && value <= HOTTEST
      : value === 0 || (Math.abs(value) >= SMALLEST && Math.abs(value) <= LARGEST);
  if (!inDomain) {
    const domain = quantity === 'temperature' ? `from ${COLDEST} to ${HOTTEST} °C` : 'of 0, or from 1e-12 to 1e12 in its SI unit';
    throw new InputError('range', 'text', `a ${QUANTITIES[quantity][1]}, ${domain}`, text);
  }
  return { quantity, value, unit: QUANTITIES[quantity][0] };
}
