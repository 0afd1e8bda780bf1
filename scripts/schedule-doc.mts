/** Writes the tables of docs/schedule.md that are made from records: `npx tsx scripts/schedule-doc.mts`. @module */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseQuantity } from '../src/quantity/parse-quantity.ts';
import type { Column } from '../src/schedule/columns/column.ts';
import { RUN_COLUMNS } from '../src/schedule/columns/run-columns.ts';
import { SWITCH_COLUMNS } from '../src/schedule/columns/switch-columns.ts';
import { FINDING_WORDS } from '../src/words/finding-words.ts';

const PAGE = fileURLToPath(new URL('../docs/schedule.md', import.meta.url));
const NEEDED = { always: 'cannot be empty', powered: 'needed with a switch port', 'two-wire': 'needed for a two-wire run' } as const;

/** The tables by the names of their places in the page. */
const TABLES: Readonly<Record<string, string>> = {
  'columns of the runs': columnsTable(Object.values(RUN_COLUMNS)),
  'columns of the switches': columnsTable(Object.values(SWITCH_COLUMNS)),
  findings: table(
    ['code', 'it means'],
    Object.entries(FINDING_WORDS).map(([code, { cause }]) => [`\`${code}\``, cause]),
  ),
};

/** The page with its tables made anew. */
export function schedulePage(page: string): string {
  return page.replace(
    /(<!-- (.+?): made by [^\n]*-->\n\n)[\s\S]*?(\n\n<!-- end -->)/g,
    (whole, begin: string, name: string, end: string) => {
      const made = TABLES[name];
      return made === undefined ? whole : `${begin}${made}${end}`;
    },
  );
}

function columnsTable(columns: readonly Column<unknown>[]): string {
  return table(
    ['column', 'also', 'what it is', 'a cell holds', 'bare number', 'empty means'],
    columns.map(({ title, also, about, allowed, quantity = [], needed, instead }) => [
      needed === 'always' ? `**${title}**` : title,
      also.join(', '),
      about,
      allowed,
      quantity.length === 1 ? parseQuantity('1', { quantity: quantity[0] }).unit : '',
      needed === undefined ? instead : NEEDED[needed],
    ]),
  );
}

/** A Markdown table as the formatter of this project would have it. */
function table(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const widths = heads.map((head, index) => Math.max(...[head, ...rows.map((row) => row[index] ?? '')].map((text) => [...text].length)));
  const line = (cells: readonly string[]): string =>
    `| ${cells.map((cell, index) => cell + ' '.repeat((widths[index] ?? 0) - [...cell].length)).join(' | ')} |`;
  return [line(heads), line(widths.map((width) => '-'.repeat(width))), ...rows.map(line)].join('\n');
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(PAGE, schedulePage(readFileSync(PAGE, 'utf8')));
