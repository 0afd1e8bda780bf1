/** Findings about the cells of a row: what is bad, doubtful, missing, or filled in by a default. @module */
import type { Cell } from './cell.ts';
import type { Column, ColumnUse } from './columns.ts';
import type { FindingCode, FindingSeverity } from './finding.ts';
import { type FindingList, shown } from './findings.ts';
import type { TableRow } from './table.ts';

/** What is said about the cells of one table. */
export interface RowFindings<K extends string> {
  /**
   * Notes a bad cell, and returns the value if there is one.
   * @param instead - What happens without the value, as in `0 is used`.
   */
  readonly optional: <T>(row: TableRow, who: string, key: K, cell: Cell<T>, instead: string) => T | undefined;
  /** The same for a cell that is needed: an empty one is a finding, too. */
  readonly needed: <T>(row: TableRow, who: string, key: K, cell: Cell<T>, instead: string) => T | undefined;
  /** What stands in a cell that could not be read, in words; nothing where it was read, or is empty. */
  readonly unread: (row: TableRow, key: K, cell: Cell<unknown>) => string | undefined;
  /** Notes, once, that a column is not there, and what that costs. */
  readonly noColumn: (key: K, loss: string) => void;
  /** Notes a default: once for a column that is not there, else cell by cell. */
  readonly byDefault: (row: TableRow, key: K, used: string) => void;
  /** Notes something that holds for every row, once. */
  readonly once: (code: FindingCode, severity: FindingSeverity, allowed: string, message: string) => void;
  /** Says something about one cell, or about the row where no key is given. */
  readonly say: (
    row: TableRow,
    key: K | undefined,
    code: FindingCode,
    severity: FindingSeverity,
    message: string,
    allowed?: string,
  ) => void;
}

/** @internal */
export function rowFindings<K extends string>(
  columns: Readonly<Record<K, Column>>,
  used: Readonly<Partial<Record<K, ColumnUse>>>,
  findings: FindingList,
): RowFindings<K> {
  const saidOnce = new Set<string>();
  const defaults = new Map<K, string>();
  const missing = new Set<K>();
  return { optional, needed, unread, noColumn, byDefault, once, say };

  function optional<T>(row: TableRow, who: string, key: K, cell: Cell<T>, instead: string): T | undefined {
    if (cell.code !== undefined) tell(row, who, key, cell as Cell<T> & { code: FindingCode }, instead);
    return cell.value;
  }

  function needed<T>(row: TableRow, who: string, key: K, cell: Cell<T>, instead: string): T | undefined {
    if (!cell.empty) return optional(row, who, key, cell, instead);
    if (used[key] === undefined) noColumn(key, 'a row that needs it is not used');
    else say(row, key, 'missing-value', 'error', `${who}: ${columns[key].title} is empty; ${instead}`, columns[key].allowed);
    return undefined;
  }

  function unread(row: TableRow, key: K, { code }: Cell<unknown>): string | undefined {
    const use = used[key];
    if (use === undefined || code === undefined) return undefined;
    return `${use.column.title} could not be ${code === 'unreadable-value' ? 'read' : 'used'}: "${received(row, use)}"`;
  }

  function noColumn(key: K, loss: string): void {
    if (missing.has(key)) return;
    missing.add(key);
    const { title } = columns[key];
    findings.add({
      code: 'missing-column',
      severity: 'error',
      allowed: `a column ${title}`,
      message: `there is no column ${title}: ${loss}`,
    });
  }

  function tell(row: TableRow, who: string, key: K, { code, hint }: Cell<unknown> & { code: FindingCode }, instead: string): void {
    const use = used[key] as ColumnUse;
    const { title, allowed } = use.column;
    const why = hint === '' ? '' : ` (${hint})`;
    const text = `${who}: ${title} "${received(row, use)}"`;
    say(row, key, code, 'error', `${text} ${WRONG[code] ?? 'cannot be used'}${why}; write ${allowed}; ${instead}`);
  }

  function byDefault(row: TableRow, key: K, value: string): void {
    const use = used[key];
    if (use === undefined) {
      once(
        'default-applied',
        'note',
        columns[key].allowed,
        `there is no column ${columns[key].title}: ${value} for every run that needs it`,
      );
      return;
    }
    // One text for all rows: a large file has a hundred thousand of these.
    let message = defaults.get(key);
    if (message === undefined) {
      message = `${use.column.title} is empty: ${value}`;
      defaults.set(key, message);
    }
    findings.add({
      code: 'default-applied',
      severity: 'note',
      line: row.line,
      column: use.header,
      received: '',
      allowed: use.column.allowed,
      message,
    });
  }

  function once(code: FindingCode, severity: FindingSeverity, allowed: string, message: string): void {
    if (saidOnce.has(message)) return;
    saidOnce.add(message);
    findings.add({ code, severity, allowed, message });
  }

  function say(row: TableRow, key: K | undefined, code: FindingCode, severity: FindingSeverity, message: string, allowed?: string): void {
    const use = key === undefined ? undefined : used[key];
    findings.add({
      code,
      severity,
      line: row.line,
      column: use?.header,
      received: use === undefined ? '' : received(row, use),
      allowed: allowed ?? use?.column.allowed ?? '',
      message,
    });
  }
}

const WRONG: Readonly<Partial<Record<FindingCode, string>>> = {
  'unreadable-value': 'cannot be read',
  'value-out-of-range': 'is outside what is allowed',
  'unknown-name': 'is not known',
};

function received(row: TableRow, use: ColumnUse): string {
  return shown((row.cells[use.index] ?? '').trim());
}
