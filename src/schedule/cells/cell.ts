/** What one cell says: a value, nothing, or why it cannot be read. @module */
import type { Cable } from '../../cable/cable.ts';
import type { CableName } from '../../cable/cables.ts';
import type { FindingCode } from '../../words/finding-words.ts';

/** One cell, read. A good one has a value, a bad one a code, an empty one neither. */
export type Cell<T> =
  | { readonly value: T; readonly code: undefined; readonly hint: ''; readonly empty: false }
  /** `hint`: more about what is wrong, in words; may be empty. */
  | { readonly value: undefined; readonly code: FindingCode; readonly hint: string; readonly empty: false }
  | { readonly value: undefined; readonly code: undefined; readonly hint: ''; readonly empty: true };

/** How one column of one file is written. */
export interface CellStyle {
  /** Whether `1,5` is one and a half. */
  readonly decimalComma: boolean;
  /** The unit of a bare number, where the header names one. */
  readonly unit?: string | undefined;
  /** A cable by its name: one object for all the runs of a file. */
  readonly cableOf: (name: CableName) => Cable;
}

/** A cell that was read. @internal */
export function holds<T>(value: T): Cell<T> {
  return { value, code: undefined, hint: '', empty: false };
}

/** A cell that cannot be used. @internal */
export function refused(code: FindingCode, hint = ''): Cell<never> {
  return { value: undefined, code, hint, empty: false };
}

/** A cell without anything in it. @internal */
export const EMPTY_CELL: Cell<never> = { value: undefined, code: undefined, hint: '', empty: true };

/** Texts kept per column; schedules repeat a few hundred. */
const MOST_KEPT = 5000;
/** No quantity and no list of pieces is longer. */
const LONGEST = 1000;

/**
 * Reads the cells of one column, each different text once.
 * @internal
 */
export function cellReader<T>(index: number, read: (text: string) => Cell<T>): (cells: readonly string[]) => Cell<T> {
  const seen = new Map<string, Cell<T>>();
  return sameOnce(index, (text) => {
    const known = seen.get(text);
    if (known !== undefined) return known;
    const trimmed = text.trim();
    const cell = trimmed === '' ? EMPTY_CELL : trimmed.length > LONGEST ? refused('unreadable-value') : read(trimmed);
    if (seen.size < MOST_KEPT) seen.set(text, cell);
    return cell;
  });
}

/**
 * Reads the cells of a column whose texts hardly ever repeat.
 * @internal
 */
export function nameReader(index: number): (cells: readonly string[]) => Cell<string> {
  return sameOnce(index, (text) => {
    const name = tidyName(text);
    return name === '' ? EMPTY_CELL : holds(name);
  });
}

/** A cell is asked for several times while its row is read, and many rows hold the same. */
function sameOnce<T>(index: number, read: (text: string) => Cell<T>): (cells: readonly string[]) => Cell<T> {
  let last: string | undefined;
  let cell: Cell<T> = EMPTY_CELL;
  return (cells) => {
    const text = cells[index];
    if (text === undefined || text === '') return EMPTY_CELL;
    if (text !== last) {
      last = text;
      cell = read(text);
    }
    return cell;
  };
}

const TIDY = /^[!-~](?: ?[!-~])*$/;

/** A name on one line, without control characters: they have no place on a label, and could play with a terminal. */
function tidyName(text: string): string {
  if (TIDY.test(text)) return text;
  return text
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/[\p{Cc}\p{Cs}\u202a-\u202e\u2066-\u2069]/gu, '\ufffd');
}
