/** Reading numbers and quantities. @module */
import { isInputError } from '../../quantity/input-error.ts';
import { type ParsedQuantity, parseQuantity, type QuantityName } from '../../quantity/parse-quantity.ts';
import { type Cell, type CellStyle, holds, refused } from './cell.ts';

/** How a quantity is written. */
export type QuantityStyle = Pick<CellStyle, 'decimalComma' | 'unit'>;

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
  const cell = readAnyQuantity(text, style, quantity);
  return cell.value === undefined ? cell : holds(withoutSign(cell.value.value));
}

/** A quantity of any kind, which its unit tells, or of the kind that is wanted. @internal */
export function readAnyQuantity(text: string, { unit, decimalComma }: QuantityStyle, quantity?: QuantityName): Cell<ParsedQuantity> {
  if (decimalComma && THOUSANDS_POINT.test(text)) {
    return refused('unreadable-value', 'a point here may be a decimal sign or a thousands mark');
  }
  // A ring above stands for the degree sign on some keyboards.
  const full = (unit !== undefined && BARE.test(text) ? `${text} ${unit}` : text).replace('\u02da', '°');
  try {
    return holds(parseQuantity(full, { quantity, decimalComma }));
  } catch (error) {
    if (!isInputError(error)) throw error;
    if (error.code === 'range') return refused('value-out-of-range');
    return refused('unreadable-value', /\d,\d/.test(text) ? 'a comma here may be a decimal sign or a thousands mark' : '');
  }
}

/** A number without unit that ought to be whole. @internal */
export function readWholeNumber(text: string): Cell<number> {
  // `2.5` is a number, only not a whole one: the range says so.
  if (!WHOLE.test(text) && !DECIMAL.test(text)) return refused('unreadable-value');
  if (THOUSANDS.test(text)) return refused('unreadable-value', 'its mark may be a decimal sign or a thousands mark');
  return holds(withoutSign(Number(text.replace(',', '.').replace('\u2212', '-'))));
}

/** Several pieces joined with `+`, each read by itself; the first that cannot be read speaks for the cell. @internal */
export function readPieces<T>(text: string, read: (piece: string) => Cell<T>): Cell<readonly T[]> {
  // `+35 °C` is one piece with a sign.
  const parts = (text.startsWith('+') ? text.slice(1) : text).split('+');
  const values: T[] = [];
  for (const part of parts) {
    const piece = part.trim();
    const cell = piece === '' && parts.length > 1 ? refused('unreadable-value', 'a + must have a piece on either side') : read(piece);
    if (cell.value === undefined) return cell as Cell<never>;
    values.push(cell.value);
  }
  return holds(values);
}

/** Minus nothing is nothing: JSON has no -0. */
function withoutSign(value: number): number {
  return value === 0 ? 0 : value;
}
