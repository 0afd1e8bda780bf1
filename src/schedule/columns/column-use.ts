/** Which columns a header line names, and how each is written. @module */
import { parseQuantity, type QuantityName } from '../../quantity/parse-quantity.ts';
import type { Column, Columns } from './column.ts';

/** A column as one file has it. */
export interface ColumnUse {
  readonly column: Column<unknown>;
  /** Position of its cell in a row, from 0. */
  readonly index: number;
  /** As the file writes it. */
  readonly header: string;
  /** The unit of bare numbers, where the header names one. */
  readonly unit?: string;
  /** What stands in brackets in the header, where it is no unit of this column. */
  readonly strangeUnit?: string;
}

const BRACKETS = /\(([^()]*)\)|\[([^[\]]*)\]/;
/** Signs that tell names apart for no one. */
const IGNORED = /[\s_\-.:*\u2010-\u2015\ufeff]+/g;

/** The column that a header names. @internal */
export function columnOf<C extends Columns<C>>(
  header: string,
  columns: C,
): { readonly key: keyof C & string; readonly bracket: string | undefined } | undefined {
  const brackets = BRACKETS.exec(header);
  const name = plainName(brackets === null ? header : header.replace(brackets[0], ''));
  for (const key of keysOf(columns)) {
    const { title, also } = columns[key];
    if ([title, ...also].some((spelling) => plainName(spelling) === name)) {
      return { key, bracket: brackets === null ? undefined : (brackets[1] ?? brackets[2])?.trim() };
    }
  }
  return undefined;
}

/** A column in use, with the unit that its header gives bare numbers. @internal */
export function columnUse(column: Column<unknown>, index: number, header: string, bracket: string | undefined): ColumnUse {
  const use = { column, index, header };
  if (bracket === undefined || bracket === '' || column.quantity === undefined) return use;
  return column.quantity.some((quantity) => isUnit(bracket, quantity)) ? { ...use, unit: bracket } : { ...use, strangeUnit: bracket };
}

/** The keys of a file's columns, in the order in which documents have them. @internal */
export function keysOf<C extends Columns<C>>(columns: C): (keyof C & string)[] {
  return Object.keys(columns) as (keyof C & string)[];
}

function plainName(header: string): string {
  return header.toLowerCase().replace(IGNORED, '');
}

function isUnit(unit: string, quantity: QuantityName): boolean {
  try {
    // A sign or a digit in front would make a number of `1` and the text together.
    return /^\D/.test(unit) && parseQuantity(`1 ${unit.replace('\u02da', '°')}`, { quantity }).quantity === quantity;
  } catch {
    return false;
  }
}
