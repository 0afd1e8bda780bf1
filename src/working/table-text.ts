/** A table of a working in plain text. @module */
import { ruleTitles } from './parts.ts';
import type { WorkingTable } from './working.ts';
import { cut, WIDTH, wrapped } from './wrapped.ts';

const LEAD = ' '.repeat(5);
const GAP = 2;

/** What each column is and by which formula, then the rows; columns that do not fit come in a second block. @internal */
export function tableLines({ title, says, row, columns, rows }: WorkingTable, number: number): string[] {
  const lines = wrapped(title, `${String(number).padStart(3)}. `, LEAD);
  for (const { symbol, unit, meaning, formula } of columns) {
    const head = `${LEAD}${symbol}${formula === undefined ? '' : ` = ${formula.replaceAll(' * ', ' · ')}`}`;
    const words = `${meaning}${unit === '1' ? '' : `, ${unit}`}`;
    lines.push(...wrapped(words, `${head}: `, `${LEAD}  `));
  }
  lines.push('');
  const labels = [row, '', ...rows.map(({ label }) => label)];
  const labelWidth = Math.min(Math.max(...labels.map((label) => [...label].length)), 24);
  const drawn = columns.map(({ symbol, unit }, index) => {
    const cells = rows.map(({ cells: figures }) => figures[index]?.shown ?? '-');
    const column = [symbol, unit === '1' ? '' : unit, ...cells];
    const width = Math.max(...column.map((text) => [...text].length));
    return { width, column: column.map((text) => padStart(text, width)) };
  });
  for (const block of blocks(drawn, WIDTH - LEAD.length - labelWidth)) {
    for (const [line, label] of labels.entries()) {
      const cells = block.map(({ column }) => `${' '.repeat(GAP)}${column[line]}`).join('');
      lines.push(...labelled(label, labelWidth).map((text, part, all) => `${LEAD}${text}${part === all.length - 1 ? cells : ''}`));
    }
    lines.push('');
  }
  if (says !== undefined) lines.push(...wrapped(says, LEAD, LEAD));
  while (lines.at(-1) === '') lines.pop();
  const rules = ruleTitles(columns);
  if (rules.length > 0) lines.push('', ...wrapped(rules.join('; '), `${LEAD}from `, `${LEAD}     `));
  return lines;
}

/** Columns in blocks that fit the page. */
function blocks<Column extends { readonly width: number }>(columns: readonly Column[], room: number): Column[][] {
  const found: Column[][] = [];
  let left = 0;
  for (const column of columns) {
    const block = found.at(-1);
    if (block === undefined || left < column.width + GAP) {
      found.push([column]);
      left = room - column.width - GAP;
    } else {
      block.push(column);
      left -= column.width + GAP;
    }
  }
  return found;
}

/** A label in lines of the width it has. */
function labelled(label: string, width: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of label.split(' ').flatMap((part) => cut(part, width))) {
    if (line !== '' && line.length + 1 + word.length > width) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  lines.push(line);
  return lines.map((text) => `${text}${' '.repeat(Math.max(0, width - [...text].length))}`);
}

function padStart(text: string, width: number): string {
  return `${' '.repeat(Math.max(0, width - [...text].length))}${text}`;
}
