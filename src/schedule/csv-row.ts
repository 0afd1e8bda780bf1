/** One line of a CSV file (RFC 4180), safe to open in a spreadsheet. @module */

/** What a cell may hold. */
export type CsvCell = string | number | undefined;

const RUNS_AS_FORMULA = /^(?:[\s\u00a0\ufeff]*[=+\-@\uff1d\uff0b\uff0d\uff20]|[\t\r\n])/;
const NEEDS_QUOTES = /[",\r\n]|^\s|\s$/;

/** Numbers unrounded, texts quoted where they must be, and with an apostrophe where they would run as a formula. @internal */
export function csvRow(cells: readonly CsvCell[]): string {
  return `${cells.map((cell) => (typeof cell === 'string' ? textCell(cell) : cell === undefined ? '' : String(cell))).join(',')}\r\n`;
}

function textCell(text: string): string {
  const harmless = RUNS_AS_FORMULA.test(text) ? `'${text}` : text;
  return NEEDS_QUOTES.test(harmless) ? `"${harmless.replace(/"/g, '""')}"` : harmless;
}
