/** A file or a list of records as a table of texts: which columns it has, and its rows one by one. @module */
import { nearest } from '../../quantity/nearest.ts';
import type { Columns } from '../columns/column.ts';
import { type ColumnUse, columnOf, columnUse, keysOf } from '../columns/column-use.ts';
import { type CsvRecord, csvRecords, filledWidth, quotedRecord } from './csv.ts';
import type { FindingList } from './findings.ts';
import { listed, shown } from './findings.ts';
import { textOfFile } from './text-of-file.ts';

/** One row. */
export interface TableRow {
  /** Line of the file, or row of the data, from 1. */
  readonly line: number;
  readonly cells: readonly string[];
  /** Cells that held neither text nor number, by position: they have their finding and are empty here. */
  readonly strange?: ReadonlyMap<number, string>;
}

/** A table of texts. */
export interface Table<C> {
  readonly columns: { readonly [K in keyof C]?: ColumnUse };
  /** Read once, from the first to the last; findings about broken rows are added on the way. */
  readonly rows: Iterable<TableRow>;
  /** Whether `1,5` is one and a half. */
  readonly decimalComma: boolean;
  /** Why its header line may be none, in words; said where a column is missing. */
  readonly headerDoubt?: string;
}

/**
 * A delimited text as a table; nothing where it cannot be used at all.
 * @internal
 */
export function tableFromText<C extends Columns<C>>(content: string | Uint8Array, columns: C, findings: FindingList): Table<C> | undefined {
  const { text, trouble } = textOfFile(content);
  if (text === undefined) {
    unusable(findings, trouble as string);
    return undefined;
  }
  if (trouble !== undefined) {
    const message = `${findings.file}: ${trouble}`;
    findings.add({ code: 'other-encoding', severity: 'warning', allowed: 'text in UTF-8', message });
  }
  const lines = text.split('\n');
  // A first line `sep=;` is how some spreadsheets are told the delimiter; the header line says it anyway.
  const first = lines.findIndex((line, index) => line.trim() !== '' && !(index === 0 && /^"?sep=.?"?$/i.test(line.trim())));
  if (first < 0) {
    unusable(findings, 'it is empty');
    return undefined;
  }
  const { cells, delimiter, next, repaired } = headerOf(lines, first, columns);
  if (repaired) {
    findings.add({
      code: 'broken-row',
      severity: 'warning',
      line: first + 1,
      received: shown(lines[first] as string),
      allowed: 'quotes in pairs',
      message: 'the header line has an unclosed quote; it is read without its quotes',
    });
  }
  const width = filledWidth(cells, 1);
  const used = useColumns(cells.slice(0, width), columns, findings, first + 1);
  const records = csvRecords(lines, delimiter, width, next);
  const doubt = Object.keys(used).length < 2 ? { headerDoubt: headerDoubt(lines[first] as string, first + 1) } : {};
  return { columns: used, rows: rowsOf(records, lines, width, delimiter, findings), decimalComma: delimiter !== ',', ...doubt };
}

/**
 * A list of records, keyed by header names, as a table.
 * @internal
 */
export function tableFromRecords<C extends Columns<C>>(
  records: readonly unknown[],
  columns: C,
  findings: FindingList,
): Table<C> | undefined {
  if (records.length === 0) {
    unusable(findings, 'it is empty');
    return undefined;
  }
  const headers: string[] = [];
  const positions = new Map<string, number>();
  const ofColumns = new Map<string, number>();
  const rows: TableRow[] = [];
  for (let index = 0; index < records.length; index++) {
    const cells = recordCells(records[index], index + 1, positionOf, findings);
    if (cells !== undefined) rows.push({ line: index + 1, ...cells });
  }
  return { columns: useColumns(headers, columns, findings, undefined), rows, decimalComma: false };

  /** Where the cells of a key stand: together with those of every other spelling of the same column and unit. */
  function positionOf(key: string): number {
    const known = positions.get(key);
    if (known !== undefined) return known;
    const match = columnOf(key, columns);
    const column = match === undefined ? undefined : `${match.key} ${match.bracket ?? ''}`;
    const position = (column === undefined ? undefined : ofColumns.get(column)) ?? headers.push(key) - 1;
    positions.set(key, position);
    if (column !== undefined) ofColumns.set(column, position);
    return position;
  }
}

/** What to say of a first line that names next to no column. */
function headerDoubt(line: string, number: number): string {
  const marks = 'cells are separated by commas, semicolons or tabs';
  const why = /[|]/.test(line) ? `${marks}, not by |` : `nothing may stand above the names of the columns, and ${marks}`;
  return `line ${number} does not look like the header line ("${shown(line.trim())}"): ${why}`;
}

/** The header line, by the delimiter that makes the most sense of it. */
function headerOf<C extends Columns<C>>(
  lines: readonly string[],
  first: number,
  columns: C,
): { readonly cells: readonly string[]; readonly delimiter: string; readonly next: number; readonly repaired: boolean } {
  const line = lines[first] as string;
  let best: ReturnType<typeof headerOf> = { cells: [], delimiter: ',', next: first + 1, repaired: false };
  let bestKnown = -1;
  for (const delimiter of [',', ';', '\t']) {
    const record = quotedRecord(lines, first, delimiter, 0);
    const readings = [
      ...(record === undefined ? [] : [{ ...record, delimiter, repaired: false }]),
      // A quote that is not closed on its line may be a stray one: then the line alone is the header.
      ...(record === undefined || record.next > first + 1
        ? [{ cells: line.replaceAll('"', '').split(delimiter), delimiter, next: first + 1, repaired: true }]
        : []),
    ];
    for (const reading of readings) {
      const known = reading.cells.filter((cell) => columnOf(cell, columns) !== undefined).length;
      if (known > bestKnown || (known === bestKnown && reading.cells.length > best.cells.length)) {
        best = reading;
        bestKnown = known;
      }
    }
  }
  return best;
}

/** Which column stands where; findings for those that are unknown or there twice. */
function useColumns<C extends Columns<C>>(
  headers: readonly string[],
  columns: C,
  findings: FindingList,
  line: number | undefined,
): { [K in keyof C]?: ColumnUse } {
  const used: { [K in keyof C]?: ColumnUse } = {};
  const titles = keysOf(columns).map((key) => columns[key].title);
  const unknown: string[] = [];
  for (const [index, raw] of headers.entries()) {
    const header = shown(raw.trim());
    const match = columnOf(raw, columns);
    if (match === undefined) {
      unknown.push(header);
      continue;
    }
    const before: ColumnUse | undefined = used[match.key];
    if (before !== undefined) {
      findings.add({
        code: 'duplicate-column',
        severity: 'error',
        line,
        column: header,
        received: header,
        allowed: 'each column once',
        message: `columns "${before.header}" and "${header}" mean the same; only the first is used`,
      });
      continue;
    }
    const use = columnUse(columns[match.key], index, header, match.bracket);
    used[match.key] = use;
    if (use.strangeUnit !== undefined) {
      findings.add({
        code: 'unreadable-value',
        severity: 'warning',
        line,
        column: header,
        received: shown(use.strangeUnit),
        allowed: use.column.allowed,
        message: `column "${header}": what stands in brackets is no unit of ${use.column.title}; a bare number is read as if nothing stood there`,
      });
    }
  }
  // A text that is no table at all would name hundreds: the missing columns say it better.
  if (Object.keys(used).length > 0) {
    const spellings = keysOf(columns).flatMap((key) => (used[key] === undefined ? [columns[key].title, ...columns[key].also] : []));
    for (const header of unknown) {
      const near = nearest(header, spellings);
      findings.add({
        code: 'unknown-column',
        severity: 'warning',
        line,
        column: header,
        received: header,
        allowed: listed(titles),
        message: `column "${header}" is not known${near === undefined ? '' : `; did you mean ${near}?`}; its cells are not used`,
      });
    }
  }
  return used;
}

function* rowsOf(
  records: Iterable<CsvRecord>,
  lines: readonly string[],
  width: number,
  delimiter: string,
  findings: FindingList,
): Generator<TableRow> {
  let some = false;
  for (const record of records) {
    some = true;
    const { line, cells } = record;
    if (record.broken !== true && cells.length === width) {
      yield record;
      continue;
    }
    const received = shown(lines[line - 1] as string);
    if (record.broken === true) {
      const message =
        'a quote in this row is never closed, or stands where it cannot; the row is not used, reading goes on with the next line';
      findings.add({ code: 'broken-row', severity: 'error', line, received, allowed: 'quotes in pairs around a cell', message });
    } else if (cells.length < width) {
      const message = `this row has ${cells.length} cells where the header has ${width}; those missing at its end are read as empty`;
      findings.add({ code: 'broken-row', severity: 'warning', line, received, allowed: `${width} cells`, message });
      yield record;
    } else if (filledWidth(cells, width) === width) yield record;
    else {
      const hint = delimiter === ',' ? '; a text with a comma in it needs quotes around it' : '';
      const message = `this row has ${cells.length} cells where the header has ${width}, so which belongs where is not known; the row is not used${hint}`;
      findings.add({ code: 'broken-row', severity: 'error', line, received, allowed: `${width} cells`, message });
    }
  }
  if (!some) unusable(findings, 'it has a header line and no rows');
}

/** The cells of one record, each at the position of its key. */
function recordCells(
  record: unknown,
  line: number,
  positionOf: (key: string) => number,
  findings: FindingList,
): Omit<TableRow, 'line'> | undefined {
  const entries = entriesOf(record);
  if (entries === undefined) {
    const received = kindOf(record);
    const message = `row ${line} is ${received}, not a record of cells; it is not used`;
    findings.add({ code: 'broken-row', severity: 'error', line, received, allowed: 'a record keyed by column names', message });
    return undefined;
  }
  const cells: string[] = [];
  const strange = new Map<number, string>();
  for (const [key, value] of entries) {
    const position = positionOf(key);
    while (cells.length <= position) cells.push('');
    if (value === undefined || value === null || value === '') continue;
    const column = shown(key);
    const isCell = typeof value === 'string' || typeof value === 'number' || typeof value === 'bigint' || typeof value === 'boolean';
    if (!isCell) {
      const received = kindOf(value);
      strange.set(position, received);
      const message = `${column} holds ${received}, not a text or a number; it is read as empty`;
      findings.add({ code: 'unreadable-value', severity: 'error', line, column, received, allowed: 'a text or a number', message });
    } else if (cells[position] === '') cells[position] = String(value);
    else {
      const message = `${column} is in this row already, under another spelling; the first is used`;
      findings.add({ code: 'duplicate-column', severity: 'error', line, column, received: column, allowed: 'each column once', message });
    }
  }
  return strange.size === 0 ? { cells } : { cells, strange };
}

/** What a record holds; nothing where it is none, or does not let itself be read. */
function entriesOf(record: unknown): [string, unknown][] | undefined {
  if (typeof record !== 'object' || record === null) return undefined;
  try {
    return Array.isArray(record) ? undefined : Object.entries(record);
  } catch {
    return undefined;
  }
}

function kindOf(value: unknown): string {
  if (value === null) return 'null';
  return typeof value === 'object' ? 'an object or a list' : typeof value === 'undefined' ? 'nothing' : `a ${typeof value}`;
}

function unusable(findings: FindingList, why: string): void {
  findings.add({ code: 'unusable-file', severity: 'error', allowed: 'a header line and rows', message: `${findings.file}: ${why}` });
}
