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
 * @param columns - How many cells a row of this table has: a quoted cell that holds as many is an unclosed quote.
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
    cells.push(cell);
    if (position > line.length) break;
  }
  const width = filledWidth(cells, columns);
  if (columns > 0 && strays && width !== columns) return undefined;
  if (at > start && columns > 0 && takesOtherRows(cells, lines.slice(start + 1, at + 1), delimiter, columns)) return undefined;
  return { cells, next: at + 1 };
}

function afterBlanks(line: string, position: number, delimiter: string): number {
  let at = position;
  while (line[at] === ' ' || (line[at] === '\t' && delimiter !== '\t')) at++;
  return at;
}

/**
 * Whether a record over several lines is in truth several: a stray quote opened a cell, and the next quote closed it.
 *
 * Then a cell holds delimiters beside its line ends, and the record is as wide as the table by chance at most.
 */
function takesOtherRows(cells: readonly string[], furtherLines: readonly string[], delimiter: string, columns: number): boolean {
  if (filledWidth(cells, columns) > columns) return true;
  const suspects = cells.filter((cell) => cell.includes('\n') && cell.includes(delimiter));
  if (suspects.length === 0) return false;
  if (cells.length !== columns) return true;
  // The end of one row and the beginning of the next make a row between them; either may lack cells at its end.
  const most = columns - (columns < 8 ? 1 : 3);
  if (suspects.some((cell) => count(cell, delimiter) >= most)) return true;
  // A row of its own among the lines: the last one only where the cell reaches into its second cell or beyond.
  const reachesIn = suspects.some((cell) => cell.includes(delimiter, cell.lastIndexOf('\n')));
  const within = reachesIn ? furtherLines : furtherLines.slice(0, -1);
  return within.some((line) => quotedRecord([line], 0, delimiter, 0)?.cells.length === columns);
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
