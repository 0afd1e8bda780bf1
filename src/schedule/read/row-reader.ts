/** Reads the cells of a row, and notes what is bad, doubtful, missing, or filled in by a default. @module */

import type { FindingCode } from '../../words/finding-words.ts';
import { type Cell, cellReader, EMPTY_CELL, nameReader } from '../cells/cell.ts';
import { cablesByName } from '../cells/read-cable.ts';
import type { Column, Columns, ValueOf } from '../columns/column.ts';
import { type ColumnUse, keysOf } from '../columns/column-use.ts';
import type { FindingSeverity } from '../finding.ts';
import { type FindingList, shown } from './findings.ts';
import type { Table, TableRow } from './table.ts';

/** The cells of one row after the other. */
export interface RowReader<C> {
  /** Goes to a row; findings about it begin with `who`, as in `run HP-01`. */
  readonly begin: (row: TableRow, who: string) => void;
  /** What a cell says, without a finding. */
  readonly cell: <K extends keyof C>(key: K) => Cell<ValueOf<C[K]>>;
  readonly isEmpty: (key: keyof C) => boolean;
  /** The value of a cell; a finding where it is bad, with what happens `instead`. */
  readonly optional: <K extends keyof C>(key: K, instead?: string) => ValueOf<C[K]> | undefined;
  /** The same for a cell that is needed: an empty one is a finding, too. */
  readonly needed: <K extends keyof C>(key: K) => ValueOf<C[K]> | undefined;
  /** The same for a cell that has a default, which is noted where the cell is empty. */
  readonly orNoted: <K extends keyof C>(key: K) => ValueOf<C[K]> | undefined;
  /** What stands in a cell that could not be read, in words; nothing where it was read, or is empty. */
  readonly unread: (key: keyof C) => string | undefined;
  /** Notes a default: once for a column that is not there, else cell by cell. */
  readonly noteDefault: (key: keyof C, used?: string) => void;
  /** Notes, once, that a column is not there, and what that costs. */
  readonly noColumn: (key: keyof C, loss: string) => void;
  /** Notes something that holds for every row, once. */
  readonly once: (code: FindingCode, severity: FindingSeverity, allowed: string, message: string) => void;
  /** Says something about one cell of the row, or about the row where no key is given. */
  readonly say: (key: keyof C | undefined, code: FindingCode, severity: FindingSeverity, message: string, allowed?: string) => void;
}

const WRONG: Readonly<Partial<Record<FindingCode, string>>> = {
  'unreadable-value': 'cannot be read',
  'value-out-of-range': 'is outside what is allowed',
  'unknown-name': 'is not known',
};

/** A reader for the rows of one table. @internal */
export function rowReader<C extends Columns<C>>(columns: C, table: Table<C>, findings: FindingList): RowReader<C> {
  const { columns: used, decimalComma, headerDoubt } = table;
  const cableOf = cablesByName();
  const readers = Object.fromEntries(
    keysOf(columns).map((key) => {
      const use = used[key];
      const { read } = columns[key] as Column<unknown>;
      if (use === undefined) return [key, () => EMPTY_CELL];
      const style = { decimalComma, unit: use.unit, cableOf };
      return [key, read === 'name' ? nameReader(use.index) : cellReader(use.index, (text) => read(text, style))];
    }),
  ) as { [K in keyof C]: (cells: readonly string[]) => Cell<ValueOf<C[K]>> };
  const saidOnce = new Set<string>();
  const defaults = new Map<keyof C, string>();
  const missing = new Set<keyof C>();
  let row: TableRow = { line: 0, cells: [] };
  let who = '';
  return { begin, cell, isEmpty, optional, needed, orNoted, unread, noteDefault, noColumn, once, say };

  function begin(next: TableRow, name: string): void {
    row = next;
    who = name;
  }

  function cell<K extends keyof C>(key: K): Cell<ValueOf<C[K]>> {
    return readers[key](row.cells);
  }

  function isEmpty(key: keyof C): boolean {
    return readers[key](row.cells).empty;
  }

  function optional<K extends keyof C>(key: K, instead: string = columns[key].instead): ValueOf<C[K]> | undefined {
    const { value, code, hint } = readers[key](row.cells);
    if (code === undefined) return value;
    const { title, allowed } = columns[key];
    const why = hint === '' ? '' : ` (${hint})`;
    say(key, code, 'error', `${title} "${received(key)}" ${WRONG[code] ?? 'cannot be used'}${why}; write ${allowed}; ${instead}`);
    return undefined;
  }

  function needed<K extends keyof C>(key: K): ValueOf<C[K]> | undefined {
    if (!isEmpty(key)) return optional(key);
    const { title, allowed, instead } = columns[key];
    if (used[key] === undefined) noColumn(key, 'a row that needs it is not used');
    else say(key, 'missing-value', 'error', `${title} is empty; ${instead}`, allowed);
    return undefined;
  }

  function orNoted<K extends keyof C>(key: K): ValueOf<C[K]> | undefined {
    if (!isEmpty(key)) return optional(key);
    noteDefault(key);
    return undefined;
  }

  function unread(key: keyof C): string | undefined {
    const use = used[key];
    if (use === undefined) return undefined;
    const { title } = columns[key];
    const strange = row.strange?.get(use.index);
    if (strange !== undefined) return `${title} could not be read: ${strange}`;
    const { code } = readers[key](row.cells);
    if (code === undefined) return undefined;
    return `${title} could not be ${code === 'unreadable-value' ? 'read' : 'used'}: "${received(key)}"`;
  }

  function noteDefault(key: keyof C, value: string = columns[key].instead): void {
    const use = used[key];
    const { title, allowed } = columns[key];
    if (isTold(use)) return;
    if (use === undefined) {
      once('default-applied', 'note', allowed, `there is no column ${title}: ${value} for every run that needs it`);
      return;
    }
    // One text for all rows: a large file has a hundred thousand of these.
    let message = defaults.get(key);
    if (message === undefined) {
      message = `${title} is empty: ${value}`;
      defaults.set(key, message);
    }
    findings.add({ code: 'default-applied', severity: 'note', line: row.line, column: use.header, received: '', allowed, message });
  }

  function noColumn(key: keyof C, loss: string): void {
    if (missing.has(key)) return;
    missing.add(key);
    const { title } = columns[key];
    const doubt = missing.size === 1 && headerDoubt !== undefined ? `; ${headerDoubt}` : '';
    const message = `there is no column ${title}: ${loss}${doubt}`;
    findings.add({ code: 'missing-column', severity: 'error', allowed: `a column ${title}`, message });
  }

  function once(code: FindingCode, severity: FindingSeverity, allowed: string, message: string): void {
    if (saidOnce.has(message)) return;
    saidOnce.add(message);
    findings.add({ code, severity, allowed, message });
  }

  function say(key: keyof C | undefined, code: FindingCode, severity: FindingSeverity, what: string, allowed?: string): void {
    const use = key === undefined ? undefined : used[key];
    if (isTold(use)) return;
    findings.add({
      code,
      severity,
      line: row.line,
      column: use?.header,
      received: key === undefined || use === undefined ? '' : received(key),
      allowed: allowed ?? use?.column.allowed ?? '',
      message: `${who}: ${what}`,
    });
  }

  /** Whether a cell has a finding from before its row was read. */
  function isTold(use: ColumnUse | undefined): boolean {
    return row.strange !== undefined && use !== undefined && row.strange.has(use.index);
  }

  function received(key: keyof C): string {
    const use = used[key];
    return use === undefined ? '' : shown((row.cells[use.index] ?? '').trim());
  }
}
