/** A table of a working in Markdown and in LaTeX. @module */

import { WORKING_UNITS } from './engine/working-unit.ts';
import { cell, plain, sentence } from './latex-words.ts';
import { ruleTitles } from './parts.ts';
import type { WorkingColumn, WorkingTable } from './working.ts';

/** Columns side by side in LaTeX; more come in a second table. */
const SIDE_BY_SIDE = 7;

/** What each column is, then the rows. @internal */
export function tableMarkdown({ title, says, row, columns, rows }: WorkingTable, number: number): string[] {
  const inside = (lines: readonly string[]): string[] => lines.map((line) => (line === '' ? '' : `   ${line}`));
  const rules = ruleTitles(columns);
  return [
    `${number}. ${cell(sentence(title))}`,
    '',
    ...inside([
      ...columns.map((column) => `- $${formulaOf(column)}$: ${cell(column.meaning)}`),
      '',
      `| ${row} | ${columns.map((column) => `$${headOf(column)}$`).join(' | ')} |`,
      `|---|${columns.map(() => '---:|').join('')}`,
      ...rows.map(
        ({ label, cells }) => `| ${cell(label)} | ${cells.map((figure) => (figure === null ? '' : `$${figure.latex}$`)).join(' | ')} |`,
      ),
      '',
      ...(says === undefined ? [] : [says, '']),
      ...(rules.length === 0 ? [] : [`*${rules.join('; ')}*`, '']),
    ]),
  ];
}

/** What each column is, then the rows. @internal */
export function tableLatex({ title, says, row, columns, rows }: WorkingTable): string[] {
  const lines = [
    `\\noindent ${plain(sentence(title))}:`,
    '\\begin{itemize}',
    ...columns.map((column) => `  \\item $${formulaOf(column)}$: ${plain(column.meaning)}`),
    '\\end{itemize}',
  ];
  for (let start = 0; start < columns.length; start += SIDE_BY_SIDE) {
    const end = start + SIDE_BY_SIDE;
    const block = columns.slice(start, end);
    lines.push(
      `\\noindent\\begin{tabular}{l${'r'.repeat(block.length)}}`,
      `${plain(row)} & ${block.map((column) => `$${headOf(column)}$`).join(' & ')} \\\\`,
      '\\hline',
      ...rows.map(({ label, cells }) => {
        const figures = cells.slice(start, end).map((figure) => (figure === null ? '' : `$${figure.latex}$`));
        return `${plain(label)} & ${figures.join(' & ')} \\\\`;
      }),
      '\\end{tabular}',
      '',
    );
  }
  if (says !== undefined) lines.push(`\\noindent ${plain(says)}`, '');
  const rules = ruleTitles(columns);
  if (rules.length > 0) lines.push(`\\noindent \\emph{${plain(rules.join('; '))}}`);
  return lines;
}

function formulaOf({ latex }: WorkingColumn): string {
  return latex.formula === undefined ? latex.symbol : `${latex.symbol} = ${latex.formula}`;
}

function headOf({ latex, unit }: WorkingColumn): string {
  return unit === '1' ? latex.symbol : `${latex.symbol}\\,[${WORKING_UNITS[unit].latex}]`;
}
