/** Reading cells that hold numbers and quantities. @module */
import type { Load } from '../circuit/operating-point.ts';
import { isInputError } from '../quantity/input-error.ts';
import { parseQuantity, type QuantityName } from '../quantity/parse-quantity.ts';
import { type Cell, holds, refused } from './cell.ts';

/** How quantities are written in one column of one file. */
export interface QuantityStyle {
  /** Whether `1,5` is one and a half. */
  readonly decimalComma: boolean;
  /** The unit of a bare number, where the header names one. */
  readonly unit?: string | undefined;
}

/** A number that nobody can misread; such cells skip the long way, which would give the same. */
const PLAIN = /^\d{1,9}(?:\.\d{1,9})?$/;
const BARE = /^[+\-\u2212\u2013]?[\d.,]+(?:[eE][+-]?\d+)?$/;
const WHOLE = /^[+\-\u2212]?\d+$/;
const DECIMAL = /^[+\-\u2212]?\d*[.,]\d+$/;
/** In a decimal-comma file `1.200` may be 1.2 or 1200, as `1,200` may. */
const THOUSANDS_POINT = /^[+\-\u2212\u2013]?[1-9]\d{0,2}\.\d{3}(?!\d)/;

/** A count written as `1,000` or `1.000` may be one or a thousand. */
const THOUSANDS = /^[+\-\u2212]?[1-9]\d{0,2}[.,]\d{3}$/;

const OWN_UNIT: Readonly<Partial<Record<QuantityName, string>>> = { length: 'm', voltage: 'V', power: 'W' };

/** A quantity of one kind, in its SI unit. @internal */
export function readQuantity(text: string, quantity: QuantityName, style: QuantityStyle): Cell<number> {
  const own = OWN_UNIT[quantity];
  if (style.unit === undefined && quantity !== 'temperature' && !(style.decimalComma && text.includes('.'))) {
    const number = own !== undefined && text.endsWith(own) ? text.slice(0, -own.length).trimEnd() : text;
    if (PLAIN.test(number)) return holds(Number(number));
  }
  return parsed(text, { quantity, decimalComma: style.decimalComma }, style, ({ value }) => withoutSign(value));
}

/** A power, a current or a resistance, told apart by its unit. @internal */
export function readLoad(text: string, style: QuantityStyle): Cell<{ readonly load: Load; readonly size: number }> {
  return parsed(text, { decimalComma: style.decimalComma }, style, ({ quantity, value }) => {
    if (quantity === 'power') return { load: { power: value }, size: value };
    if (quantity === 'current') return { load: { current: value }, size: value };
    return quantity === 'resistance' ? { load: { resistance: value }, size: value } : undefined;
  });
}

/** A whole number, without unit. @internal */
export function readWhole(text: string): Cell<number> {
  // `2.5` is a number, only not a whole one: the range says so.
  if (!WHOLE.test(text) && !DECIMAL.test(text)) return refused('unreadable-value');
  if (THOUSANDS.test(text)) return refused('unreadable-value', 'its mark may be a decimal sign or a thousands mark');
  return holds(withoutSign(Number(text.replace(',', '.').replace('\u2212', '-'))));
}

/** Several pieces joined with `+`, each read by itself; the first that cannot be read speaks for the cell. @internal */
export function readPieces<T>(text: string, read: (piece: string) => Cell<T>): Cell<readonly T[]> {
  // `+35 °C` is one piece with a sign.
  const pieces = text.startsWith('+') ? text.slice(1).trimStart() : text;
  if (!pieces.includes('+')) {
    const cell = read(pieces);
    return cell.value === undefined ? refused(cell.code ?? 'unreadable-value', cell.hint) : holds([cell.value]);
  }
  const values: T[] = [];
  for (const part of pieces.split('+')) {
    const piece = part.trim();
    const cell = piece === '' ? refused('unreadable-value', 'a + must have a piece on either side') : read(piece);
    if (cell.value === undefined) return refused(cell.code ?? 'unreadable-value', cell.hint);
    values.push(cell.value);
  }
  return holds(values);
}

/** Minus nothing is nothing: JSON has no -0. */
function withoutSign(value: number): number {
  return value === 0 ? 0 : value;
}

function parsed<T>(
  text: string,
  options: Parameters<typeof parseQuantity>[1],
  { unit, decimalComma }: QuantityStyle,
  take: (found: ReturnType<typeof parseQuantity>) => T | undefined,
): Cell<T> {
  if (decimalComma && THOUSANDS_POINT.test(text)) {
    return refused('unreadable-value', 'a point here may be a decimal sign or a thousands mark');
  }
  const full = unit !== undefined && BARE.test(text) ? `${text} ${unit}` : text;
  try {
    const value = take(parseQuantity(full, options));
    if (value === undefined) return refused('unreadable-value');
    return holds(value);
  } catch (error) {
    if (!isInputError(error)) throw error;
    if (error.code === 'range') return refused('value-out-of-range');
    return refused('unreadable-value', /\d,\d/.test(text) ? 'a comma here may be a decimal sign or a thousands mark' : '');
  }
}
