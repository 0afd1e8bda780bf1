/** Reading a quantity as people write it: `212 ft`, `13 ohm`, `0.22 mm2`, `104 degF`. @module */
import { COLDEST, HOTTEST, LARGEST, requireObject, requireOneOf, SMALLEST } from './guards.ts';
import { InputError } from './input-error.ts';

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

const UNIT_OF: Readonly<Record<QuantityName, QuantityUnit>> = {
  length: 'm',
  area: 'mm²',
  resistance: 'Ω',
  resistancePerLength: 'Ω/m',
  voltage: 'V',
  current: 'A',
  power: 'W',
  temperature: '°C',
  temperatureDifference: 'K',
};

// spelling: [quantity, multiply by, then divide by]; two integers keep a decimal such as 5 mW exact.
const UNITS: Readonly<Record<string, readonly [QuantityName, number, number]>> = {
  m: ['length', 1, 1],
  metre: ['length', 1, 1],
  metres: ['length', 1, 1],
  meter: ['length', 1, 1],
  meters: ['length', 1, 1],
  km: ['length', 1000, 1],
  cm: ['length', 1, 100],
  mm: ['length', 1, 1000],
  ft: ['length', 0.3048, 1],
  foot: ['length', 0.3048, 1],
  feet: ['length', 0.3048, 1],
  "'": ['length', 0.3048, 1],
  kft: ['length', 304.8, 1],
  in: ['length', 0.0254, 1],
  inch: ['length', 0.0254, 1],
  inches: ['length', 0.0254, 1],
  'mm²': ['area', 1, 1],
  cmil: ['area', 0.0005067074790974977, 1],
  kcmil: ['area', 0.5067074790974977, 1],
  mil: ['length', 0.0000254, 1],
  mils: ['length', 0.0000254, 1],
  µm: ['length', 1, 1_000_000],
  ohm: ['resistance', 1, 1],
  ohms: ['resistance', 1, 1],
  mohm: ['resistance', 1, 1000],
  milliohm: ['resistance', 1, 1000],
  milliohms: ['resistance', 1, 1000],
  µohm: ['resistance', 1, 1_000_000],
  kohm: ['resistance', 1000, 1],
  kilohm: ['resistance', 1000, 1],
  kilohms: ['resistance', 1000, 1],
  Mohm: ['resistance', 1_000_000, 1],
  megohm: ['resistance', 1_000_000, 1],
  megohms: ['resistance', 1_000_000, 1],
  'ohm/m': ['resistancePerLength', 1, 1],
  'ohm/km': ['resistancePerLength', 1, 1000],
  'ohm/100m': ['resistancePerLength', 1, 100],
  'mohm/m': ['resistancePerLength', 1, 1000],
  'µohm/m': ['resistancePerLength', 1, 1_000_000],
  'kohm/m': ['resistancePerLength', 1000, 1],
  'ohm/ft': ['resistancePerLength', 1, 0.3048],
  'ohm/kft': ['resistancePerLength', 1, 304.8],
  'ohm/1000ft': ['resistancePerLength', 1, 304.8],
  V: ['voltage', 1, 1],
  v: ['voltage', 1, 1],
  volt: ['voltage', 1, 1],
  volts: ['voltage', 1, 1],
  µV: ['voltage', 1, 1_000_000],
  mV: ['voltage', 1, 1000],
  kV: ['voltage', 1000, 1],
  A: ['current', 1, 1],
  a: ['current', 1, 1],
  amp: ['current', 1, 1],
  amps: ['current', 1, 1],
  µA: ['current', 1, 1_000_000],
  mA: ['current', 1, 1000],
  kA: ['current', 1000, 1],
  W: ['power', 1, 1],
  w: ['power', 1, 1],
  watt: ['power', 1, 1],
  watts: ['power', 1, 1],
  µW: ['power', 1, 1_000_000],
  mW: ['power', 1, 1000],
  kW: ['power', 1000, 1],
  'BTU/h': ['power', 1055.05585262, 3600],
  degC: ['temperature', 1, 1],
  C: ['temperature', 1, 1],
  degF: ['temperature', 5, 9],
  F: ['temperature', 5, 9],
  K: ['temperatureDifference', 1, 1],
  kelvin: ['temperatureDifference', 1, 1],
  kelvins: ['temperatureDifference', 1, 1],
};

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
  requireObject(options, 'options', 'an object with quantity and decimalComma');
  const wanted = options.quantity;
  if (wanted !== undefined) requireOneOf(wanted, Object.keys(WORD), 'options.quantity');
  const example = wanted === undefined ? 'a number with its unit, such as 65 m or 13 ohm' : `a ${WORD[wanted]}`;
  if (typeof text !== 'string') throw new InputError('type', 'text', example, text);
  // Nobody writes a quantity as long as this, and what looks for one would look for long.
  if (text.length > LONGEST_TEXT) throw new InputError('unreadable', 'text', example, text);

  const match = NUMBER_AND_UNIT.exec(tidy(text, options.decimalComma === true, example));
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
  const listed = Object.hasOwn(UNITS, spelling) ? UNITS[spelling] : undefined;
  // Degrees that are asked for as a difference have no zero to be shifted.
  const isDifference = wanted === 'temperatureDifference' && listed?.[0] === 'temperature';
  const unit = isDifference ? (['temperatureDifference', listed[1], listed[2]] as const) : listed;
  if (unit === undefined || (wanted !== undefined && unit[0] !== wanted)) {
    throw new InputError('unreadable', 'text', example, text);
  }
  const offset = !isDifference && (spelling === 'degF' || spelling === 'F') ? 32 : 0;
  return within(unit[0], ((magnitude - offset) * unit[1]) / unit[2], text);
}

const WORD: Readonly<Record<QuantityName, string>> = {
  length: 'length, such as 65 m or 212 ft',
  area: 'conductor area, such as 0.5 mm2 or 404 cmil',
  resistance: 'resistance, such as 13 ohm',
  resistancePerLength: 'resistance per length, such as 96 ohm/km',
  voltage: 'voltage, such as 50 V',
  current: 'current, such as 350 mA',
  power: 'power, such as 12.95 W',
  temperature: 'temperature, such as 35 °C or 95 degF',
  temperatureDifference: 'temperature difference, such as 10 K or 18 degF',
};

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
    throw new InputError('range', 'text', `a ${WORD[quantity]}, ${domain}`, text);
  }
  return { quantity, value, unit: UNIT_OF[quantity] };
}
