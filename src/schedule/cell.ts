/** What one cell says: a value, nothing, or why it cannot be read. @module */
import type { ColumnUse } from './columns.ts';
import type { FindingCode } from './finding.ts';

/** One cell, read. An empty one has neither value nor code, a bad one a code. */
export interface Cell<T> {
  readonly value: T | undefined;
  readonly code: FindingCode | undefined;
  /** More about what is wrong, in words; may be empty. */
  readonly hint: string;
  readonly empty: boolean;
}

/** A cell that was read. @internal */
export function holds<T>(value: T): Cell<T> {
  return { value, code: undefined, hint: '', empty: false };
}

/** A cell that cannot be used. @internal */
export function refused(code: FindingCode, hint = ''): Cell<never> {
  return { value: undefined, code, hint, empty: false };
}

/** Picks and reads one cell of a row. */
export type CellReader<T> = (cells: readonly string[]) => Cell<T>;

const EMPTY: Cell<never> = { value: undefined, code: undefined, hint: '', empty: true };
/** Texts kept per column; schedules repeat a few hundred. */
const MOST_KEPT = 5000;
/** No quantity and no list of pieces is longer. */
const LONGEST = 1000;

/**
 * Reads the cells of one column, each different text once.
 * @internal
 */
export function cellReader<T>(use: ColumnUse | undefined, read: (text: string) => Cell<T>): CellReader<T> {
  if (use === undefined) return () => EMPTY;
  const { index } = use;
  const seen = new Map<string, Cell<T>>();
  return (cells) => {
    const text = cells[index];
    if (text === undefined || text === '') return EMPTY;
    const known = seen.get(text);
    if (known !== undefined) return known;
    const trimmed = text.trim();
    const cell = trimmed === '' ? EMPTY : trimmed.length > LONGEST ? refused('unreadable-value') : read(trimmed);
    if (seen.size < MOST_KEPT) seen.set(text, cell);
    return cell;
  };
}

/**
 * Reads the cells of a column whose texts hardly ever repeat.
 * @internal
 */
export function nameReader(use: ColumnUse | undefined): (cells: readonly string[]) => string | undefined {
  if (use === undefined) return () => undefined;
  const { index } = use;
  return (cells) => {
    const text = cells[index];
    if (text === undefined || text === '') return undefined;
    const name = tidyName(text);
    return name === '' ? undefined : name;
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
