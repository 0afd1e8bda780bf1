/** What the readers of columns are made of: numbers within a range, pieces, names from a list. @module */
import type { Load } from '../../circuit/operating-point.ts';
import type { PseType } from '../../ethernet/class-table.ts';
import type { SupplyVoltage } from '../../plan/two-wire-input.ts';
import { nearest } from '../../quantity/nearest.ts';
import type { QuantityName } from '../../quantity/parse-quantity.ts';
import { type Cell, type CellStyle, holds, refused } from './cell.ts';
import { readAnyQuantity, readPieces, readQuantity, readWholeNumber } from './read-quantity.ts';

/** Where a value may lie. */
export interface ValueRange {
  /** Greater than this. */
  readonly above?: number;
  /** At least this. */
  readonly from?: number;
  /** At most this. */
  readonly to?: number;
}

type Reader<T> = (text: string, style: CellStyle) => Cell<T>;

/** A whole number; a word such as `port` may stand in front of it. @internal */
export function whole<T extends number = number>(range: ValueRange, word = ''): Reader<T> {
  return (text) => {
    const digits = text.toLowerCase().startsWith(word) ? text.slice(word.length).trimStart() : text;
    const cell = readWholeNumber(digits);
    if (cell.value === undefined) return cell;
    return Number.isSafeInteger(cell.value) ? (within(cell, [cell.value], range) as Cell<T>) : OUTSIDE;
  };
}

/** A quantity in its SI unit. @internal */
export function quantity(name: QuantityName, range: ValueRange): Reader<number> {
  return (text, style) => {
    const cell = readQuantity(text, name, style);
    return cell.value === undefined ? cell : within(cell, [cell.value], range);
  };
}

/** Quantities joined with `+`, at most so many of them. @internal */
export function pieces(name: QuantityName, range: ValueRange, most: number = Number.POSITIVE_INFINITY): Reader<readonly number[]> {
  return (text, style) => {
    const cell = readPieces(text, (piece) => readQuantity(piece, name, style));
    if (cell.value === undefined) return cell;
    return cell.value.length > most ? OUTSIDE : within(cell, cell.value, range);
  };
}

/** A name from a list: its spellings in small letters without blanks, `_` and hyphens, and what each stands for. @internal */
export function named<T extends string | number>(spellings: Readonly<Record<string, T>>): Reader<T> {
  return (text) => {
    // A sign in front is no hyphen: `-1` is not type 1.
    const name = text.toLowerCase().replace(/(?!^)[\s_-]+/g, '');
    if (Object.hasOwn(spellings, name)) return holds(spellings[name] as T);
    const near = nearest(name, Object.keys(spellings));
    return refused('unknown-name', near === undefined ? '' : `did you mean ${near}?`);
  };
}

const RANGE = /^(.+?)\s*(?:\bto\b|\.\.\.?|[-\u2010-\u2015\u2026])\s*(.+)$/i;

/** `24 V`, `21 V to 27.6 V` or `21-27.6 V`, where the first takes the unit of the second. @internal */
export function readSupply(text: string, style: CellStyle): Cell<SupplyVoltage> {
  const [, first, second] = RANGE.exec(text) ?? [];
  if (first === undefined || second === undefined) return quantity('voltage', ABOVE_0)(text, style);
  const high = readQuantity(second, 'voltage', style);
  const unit = /[a-z]+$/i.exec(second)?.[0] ?? style.unit;
  const low = readQuantity(first, 'voltage', { ...style, unit });
  if (low.value === undefined) return low;
  if (high.value === undefined) return high;
  if (low.value > high.value) return refused('value-out-of-range', 'the lower voltage comes first');
  return within(holds({ low: low.value, high: high.value }), [low.value], ABOVE_0);
}

/** A power, a current or a resistance, told apart by its unit. @internal */
export function readLoad(text: string, style: CellStyle): Cell<Load> {
  const { value: found, ...bad } = readAnyQuantity(text, style);
  if (found === undefined) return { value: found, ...bad } as Cell<never>;
  const { quantity: name, value } = found;
  const load = name === 'power' ? { power: value } : name === 'current' ? { current: value } : { resistance: value };
  return Object.hasOwn(load, name) ? within(holds(load), [value], ABOVE_0) : refused('unreadable-value');
}

const readTypeName = /* @__PURE__ */ named<PseType>({
  '1': 1,
  '2': 2,
  '3': 3,
  '4': 4,
  type1: 1,
  type2: 2,
  type3: 3,
  type4: 4,
  '802.3af': 1,
  '802.3aftype1': 1,
  '802.3at': 2,
  '802.3attype1': 1,
  '802.3attype2': 2,
  '802.3bttype3': 3,
  '802.3bttype4': 4,
});

/** The type of a port, by its number or by its amendment of IEEE 802.3. @internal */
export function readPortType(text: string, style: CellStyle): Cell<PseType> {
  const name = text.toLowerCase().replace(/^ieee\s*/, '');
  return /^802\.3[\s_-]*bt$/.test(name) ? refused('unknown-name', '802.3bt has two types') : readTypeName(name, style);
}

const ABOVE_0: ValueRange = { above: 0 };
const OUTSIDE: Cell<never> = /* @__PURE__ */ refused('value-out-of-range');

/** The cell itself, or that one of its values is out of range. */
function within<T>(
  cell: Cell<T>,
  values: readonly number[],
  { above = Number.NEGATIVE_INFINITY, from = above, to = Number.MAX_VALUE }: ValueRange,
): Cell<T> {
  return values.every((value) => value > above && value >= from && value <= to) ? cell : OUTSIDE;
}
