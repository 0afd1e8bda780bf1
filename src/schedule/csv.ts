/**
 * Reading delimited text record by record, in such a way that a broken record costs itself and no other.
 *
 * RFC 4180, and beyond it what real files hold: stray quotes, blanks around quoted cells, rows of unequal length. The
 * usual readers stop at the first unclosed quote, or take all that follows for one cell; here such a record is given
 * up, and reading resumes on the very next line.
 * @module
 */

/** One record of a delimited text. */
export interface CsvRecord {
  /** Line on which it begins, from 1. */
  readonly line: number;
  /** Its cells as written, quotes resolved; empty where the record is broken. */
  readonly cells: readonly string[];
  /** A quote in it is never closed, or stands where none can. */
  readonly broken?: true;
}

/** A quoted cell of more lines than this is an unclosed quote. */
const MOST_LINES = 50;

/**
 * The records of a text, blank lines left out.
 *
 * @param lines - The lines of the text, without their ends.
 * @param delimiter - One character.
 * @param columns - How many cells a row of this table has: a line with so many inside a quote is a row, so the quote is unclosed.
 * @param start - Line to begin with, from 0.
 * @internal
 */
export function* csvRecords(lines: readonly string[], delimiter: string, columns: number, start: number): Generator<CsvRecord> {
  for (let at = start; at < lines.length; ) {
    const line = lines[at] as string;
    if (!line.includes('"')) {
      at++;
      const cells = line.split(delimiter);
      if (!isBlank(cells)) yield { line: at, cells };
      continue;
    }
    const record = quotedRecord(lines, at, delimiter, columns);
    if (record === undefined) yield { line: at + 1, cells: [], broken: true };
    else if (!isBlank(record.cells)) yield { line: at + 1, cells: record.cells };
    at = record?.next ?? at + 1;
  }
}

/**
 * One record with quotes in it, and the line after it; nothing where a quote is unclosed.
 * @internal
 */
export function quotedRecord(
  lines: readonly string[],
  start: number,
  delimiter: string,
  columns: number,
): { readonly cells: readonly string[]; readonly next: number } | undefined {
  const cells: string[] = [];
  let at = start;
  let line = lines[at] as string;
  let position = 0;
  let strays = false;
  for (;;) {
    const open = afterBlanks(line, position, delimiter);
    if (line[open] !== '"') {
      const end = line.indexOf(delimiter, position);
      cells.push(end < 0 ? line.slice(position) : line.slice(position, end));
      if (end < 0) break;
      position = end + 1;
      continue;
    }
    let cell = '';
    let from = open + 1;
    const cellStart = at;
    for (;;) {
      const quote = line.indexOf('"', from);
      if (quote < 0) {
        cell += `${line.slice(from)}\n`;
        at++;
        if (at >= lines.length || at - start >= MOST_LINES) return undefined;
        line = lines[at] as string;
        from = 0;
        if (!line.includes('"') && looksLikeRow(line, delimiter, columns)) return undefined;
        continue;
      }
      if (line[quote + 1] === '"') {
        cell += line.slice(from, quote + 1);
        from = quote + 2;
        continue;
      }
      const after = afterBlanks(line, quote + 1, delimiter);
      if (after === line.length || line[after] === delimiter) {
        cell += line.slice(from, quote);
        position = after + 1;
        break;
      }
      // `"6" pipe"` on one line is a cell with a quote in it; over several lines, the quote that opens another cell.
      if (at > cellStart) return undefined;
      strays = true;
      cell += line.slice(from, quote + 1);
      from = quote + 1;
    }
    if (at > cellStart && swallowsRow(cell, delimiter, columns)) return undefined;
    cells.push(cell);
    if (position > line.length) break;
  }
  const width = filledWidth(cells, columns);
  if (columns > 0 && strays && width !== columns) return undefined;
  if (at > start && columns > 0 && width !== columns && (width > columns || cells.some((cell) => swallowsAny(cell, delimiter)))) {
    return undefined;
  }
  return { cells, next: at + 1 };
}

function afterBlanks(line: string, position: number, delimiter: string): number {
  let at = position;
  while (line[at] === ' ' || (line[at] === '\t' && delimiter !== '\t')) at++;
  return at;
}

/** Whether a whole line inside a quoted cell is a row of the table; a long row may lack cells at its end. */
function looksLikeRow(line: string, delimiter: string, columns: number): boolean {
  if (columns < 2) return false;
  return count(line, delimiter) + 1 >= (columns >= 6 ? Math.ceil(columns / 2) : columns);
}

/** Whether a cell over several lines holds the end of one row and the beginning of the next. */
function swallowsRow(cell: string, delimiter: string, columns: number): boolean {
  return columns >= 2 && count(cell, delimiter) >= columns - 1;
}

function swallowsAny(cell: string, delimiter: string): boolean {
  return cell.includes('\n') && cell.includes(delimiter);
}

function count(text: string, character: string): number {
  let found = 0;
  for (let at = text.indexOf(character); at >= 0; at = text.indexOf(character, at + 1)) found++;
  return found;
}

/** The number of cells, empty ones beyond the last column not counted. @internal */
export function filledWidth(cells: readonly string[], columns: number): number {
  let width = cells.length;
  while (width > columns && (cells[width - 1] as string).trim() === '') width--;
  return width;
}

function isBlank(cells: readonly string[]): boolean {
  return cells[0]?.trim() === '' && cells.every((cell) => cell.trim() === '');
}
