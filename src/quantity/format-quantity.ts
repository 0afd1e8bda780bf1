/** Writing a quantity for people: `13.1 Ω`, `412 mA`. For reports; data stays in numbers. @module */
import { requireFinite, requireInteger, requireObject, requireOneOf } from './guards.ts';
import type { QuantityUnit } from './parse-quantity.ts';

/** How a quantity is to be written. */
export interface FormatOptions {
  /** Number of significant figures, 1 to 15; 3 if absent. */
  readonly digits?: number | undefined;
}

/** A prefix and the power of ten it stands for. */
type Prefix = readonly [prefix: string, exponent: number];

const NONE: readonly Prefix[] = [['', 0]];
const MICRO_TO_KILO: readonly Prefix[] = [
  ['µ', -6],
  ['m', -3],
  ['', 0],
  ['k', 3],
];
// Not for power: MW and mW differ by a shift key and 1e9, so `parseQuantity` reads the small one only.
const MICRO_TO_MEGA: readonly Prefix[] = [
  ['µ', -6],
  ['m', -3],
  ['', 0],
  ['k', 3],
  ['M', 6],
];

/** The prefixes that people write before a unit, smallest first. */
function prefixesOf(unit: QuantityUnit): readonly Prefix[] {
  if (unit === 'mm²' || unit === '°C' || unit === 'K') return NONE;
  return unit === 'Ω' ? MICRO_TO_MEGA : MICRO_TO_KILO;
}

/**
 * A quantity as text: significant figures, an SI prefix where the unit takes one, a space, the unit.
 *
 * Rounded, so for reports and never for data. {@link parseQuantity} reads back whatever is written here, to the figures shown.
 * A zero that is significant is written (`12.0 V`); whole numbers above the figures asked for are filled with zeros (`1230 mm²`),
 * and numbers beyond the prefixes take a power of ten (`1.00e-8 Ω`).
 *
 * @param value - A number in `unit`, at most 1e12.
 * @param unit - One of the library's own units.
 * @param options - Number of significant figures.
 * @returns The text.
 * @throws {@link InputError} If the number is out of range, the unit is not one of the library's, or the figures are not 1 to 15.
 * @example
 * formatQuantity(13.08, 'Ω'); // => '13.1 Ω'
 * @example
 * formatQuantity(0.4116, 'A'); // => '412 mA'
 * @example
 * formatQuantity(48, 'V', { digits: 4 }); // => '48.00 V'
 */
export function formatQuantity(value: number, unit: QuantityUnit, options: FormatOptions = {}): string {
  requireFinite(value, 'value');
  requireOneOf(unit, ['m', 'mm²', 'Ω', 'Ω/m', 'V', 'A', 'W', '°C', 'K'], 'unit');
  requireObject(options, 'options', 'an object');
  const { digits = 3 } = options;
  requireInteger(digits, 1, 15, 'options.digits');
  if (value === 0) return `0 ${unit}`;

  // Rounded first: 999.6 mA is 1.00 A.
  const [mantissa = '', exponent = '0'] = value.toExponential(digits - 1).split('e');
  const power = Number(exponent);
  const prefixes = prefixesOf(unit);
  const [prefix, scale] = prefixes.filter(([, step]) => step <= power).at(-1) ?? (prefixes[0] as Prefix);
  return `${written(mantissa, power - scale, digits)} ${prefix}${unit}`;
}

/** A rounded mantissa and its power of ten as a plain number, or with the power where it would need many zeros. */
function written(mantissa: string, power: number, digits: number): string {
  if (power < -4 || power > 5) return `${mantissa}e${power}`;
  return Number(`${mantissa}e${power}`).toFixed(Math.max(0, digits - 1 - power));
}
