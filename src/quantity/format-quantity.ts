/** Writing a quantity for people: `13.1 Ω`, `412 mA`. For reports; data stays in numbers. @module */
import { type Fields, readInput } from './fields.ts';
import { requireFinite, requireOneOf } from './guards.ts';
import type { QuantityUnit } from './parse-quantity.ts';

/** How a quantity is to be written. */
export interface FormatOptions {
  /** Number of significant figures, 1 to 15; 3 if absent. */
  readonly digits?: number | undefined;
}

/** @internal */
export const FORMAT_QUANTITY_FIELDS: Fields<FormatOptions, 'digits'> = { digits: { whole: [1, 15], default: 3 } };

/** A prefix and the power of ten it stands for. */
type Prefix = readonly [prefix: string, exponent: number];

// Millions of ohms only: MW and mW differ by a shift key and 1e9, so `parseQuantity` reads the small one only.
const PREFIXES: readonly Prefix[] = [
  ['M', 6],
  ['k', 3],
  ['', 0],
  ['m', -3],
  ['µ', -6],
];

/** The prefix that people write before a unit for a number of that power of ten. */
function prefixFor(unit: QuantityUnit, power: number): Prefix {
  const none = unit === 'mm²' || unit === '°C' || unit === 'K';
  const suitable = PREFIXES.filter(([prefix]) => prefix === '' || (!none && (prefix !== 'M' || unit === 'Ω')));
  return suitable.find(([, step]) => step <= power) ?? (suitable.at(-1) as Prefix);
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
  const { digits } = readInput(FORMAT_QUANTITY_FIELDS, options, 'options');
  if (value === 0) return `0 ${unit}`;

  // Rounded first: 999.6 mA is 1.00 A.
  const [mantissa = '', exponent = '0'] = value.toExponential(digits - 1).split('e');
  const power = Number(exponent);
  const [prefix, scale] = prefixFor(unit, power);
  return `${written(mantissa, power - scale, digits)} ${prefix}${unit}`;
}

/** A rounded mantissa and its power of ten as a plain number, or with the power where it would need many zeros. */
function written(mantissa: string, power: number, digits: number): string {
  if (power < -4 || power > 5) return `${mantissa}e${power}`;
  return Number(`${mantissa}e${power}`).toFixed(Math.max(0, digits - 1 - power));
}
