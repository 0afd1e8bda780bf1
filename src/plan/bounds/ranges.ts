/** Inputs in which a number may be a range, and the corners of the box that the ranges span. @module */
import { InputError } from '../../quantity/input-error.ts';

/** A number that is known to lie between two others, or to be one give or take another. In the unit of the number. */
export type Range = { readonly low: number; readonly high: number } | { readonly nominal: number; readonly plusMinus: number };

/** The same input with a {@link Range} allowed in place of any number. */
export type Ranged<T> = T extends number
  ? T | Range
  : T extends string | boolean | undefined | null
    ? T
    : { readonly [K in keyof T]: Ranged<T[K]> };

/** Which end of each range, by the path of the number, as in `segments[0].length`. */
export type Corner = Readonly<Record<string, number>>;

/** Every corner is tried: 2^12 of them take some milliseconds. */
const MOST_RANGES = 12;

/** A number that was given as a range. @internal */
export interface FoundRange {
  readonly path: string;
  readonly low: number;
  readonly high: number;
  readonly nominal: number;
}

/** Numbers that count: between 2 and 3 there is none. */
const COUNTS = /(?:^|\.)(?:connections|poeClass|pseType|pairs|most)$/;

/** Every range in an input, in order; those at the paths of `own` are the function's own business. @internal */
export function rangesIn(input: unknown, own: readonly string[]): FoundRange[] {
  const found: FoundRange[] = [];
  visit(input, '', (path, range) => {
    if (!own.includes(path)) found.push(range(path));
  });
  if (found.length > MOST_RANGES) throw new InputError('range', 'input', `at most ${MOST_RANGES} numbers given as ranges`, found.length);
  return found;
}

/** The input with each range replaced by a number. @internal */
export function filledIn(input: unknown, values: ReadonlyMap<string, number>): unknown {
  return replaced(input, '', values);
}

function visit(value: unknown, path: string, found: (path: string, range: (path: string) => FoundRange) => void): void {
  if (typeof value !== 'object' || value === null) return;
  if (isRange(value)) found(path, (at) => readRange(value, at));
  else for (const [key, part] of Object.entries(value)) visit(part, pathOf(path, key, value), found);
}

function replaced(value: unknown, path: string, values: ReadonlyMap<string, number>): unknown {
  if (typeof value !== 'object' || value === null) return value;
  const number = values.get(path);
  if (number !== undefined) return number;
  if (Array.isArray(value)) return value.map((part, i) => replaced(part, `${path}[${i}]`, values));
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, replaced(part, pathOf(path, key, value), values)]));
}

/** `segments[0].length` @internal */
export function pathOf(path: string, key: string, parent: object): string {
  return Array.isArray(parent) ? `${path}[${key}]` : path === '' ? key : `${path}.${key}`;
}

function isRange(value: object): value is Range {
  const keys = Object.keys(value);
  return keys.length === 2 && (('low' in value && 'high' in value) || ('nominal' in value && 'plusMinus' in value));
}

function readRange(range: Range, path: string): FoundRange {
  for (const [key, number] of Object.entries(range)) {
    if (typeof number !== 'number' || !Number.isFinite(number)) throw new InputError('type', `${path}.${key}`, 'a number', number);
  }
  if ('low' in range) {
    const { low, high } = range;
    if (low > high) throw new InputError('conflict', `${path}.high`, `at least the low end, ${low}`, high);
    const middle = low + (high - low) / 2;
    return { path, low, high, nominal: COUNTS.test(path) ? Math.round(middle) : middle };
  }
  const { nominal, plusMinus } = range;
  if (plusMinus < 0) throw new InputError('range', `${path}.plusMinus`, '0 or more', plusMinus);
  return { path, low: nominal - plusMinus, high: nominal + plusMinus, nominal };
}
