/** A page as LaTeX. @module */
import { type BlockWriter, joined, linesOf, sentence, written } from './blocks.ts';
import type { Page, PageCell, PageColumn, Words } from './page.ts';
import { aligned } from './page-markdown.ts';
import { plain } from './plain-text.ts';

/** Columns side by side; more come in a second table. */
const SIDE_BY_SIDE = 7;

/**
 * A page as LaTeX, to be set within a document that loads amsmath.
 *
 * Signs of LaTeX within words are written out: they stay text.
 *
 * @param page - The page.
 * @returns LaTeX with `\n` line ends.
 * @throws {@link InputError} If it is no page.
 * @example
 * pageLatex([{ kind: 'heading', level: 3, text: '5 % of 24 V' }]); // => '\\subsection*{5 \\% of 24 V}\n'
 */
export function pageLatex(page: Page): string {
  const lines = written(page, WRITER).join('\n\n');
  return lines === '' ? '' : `${lines}\n`;
}

const HEADINGS = ['section', 'section', 'subsection'] as const;

const WRITER: BlockWriter<string> = {
  heading: ({ level, text }) => {
    const command = HEADINGS[level - 1];
    return command === undefined ? `\\noindent \\textbf{${inline(text)}}` : `\\${command}*{${inline(text)}}`;
  },
  paragraph: ({ text, lead, strong }) => {
    if (lead !== undefined) return `\\noindent \\textbf{${escaped(lead)}.} ${inline(sentence(text))}`;
    return strong === true ? `\\noindent \\textbf{${inline(text)}}` : `\\noindent ${inline(text)}`;
  },
  note: ({ text }) => `\\noindent \\emph{${inline(text)}}`,
  list: ({ items }) => itemize(items.map(inline)),
  terms: ({ items }) => itemize(items.map(({ term, text }) => `${inline(term)}: ${inline(text)}`)),
  table: ({ columns, rows }) => {
    const tables: string[] = [];
    for (let start = 1; start < Math.max(columns.length, 2); start += SIDE_BY_SIDE) {
      const pick = <T>(list: readonly T[]): T[] => [...list.slice(0, 1), ...list.slice(start, start + SIDE_BY_SIDE)];
      tables.push(tabular(pick(columns), rows.map(pick)));
    }
    return tables.join('\n\n');
  },
  formula: ({ symbol, latex }) => aligned(symbol, latex, 'align*').join('\n'),
  preformatted: ({ lines }) => `\\noindent ${lines.map((line) => `\\texttt{${escaped(line).replaceAll(' ', '~')}}`).join('\\\\\n')}`,
  step: ({ title, blocks }) => [`\\noindent ${inline(sentence(title))}:`, ...written(blocks, WRITER)].join('\n'),
  group: ({ blocks }) => written(blocks, WRITER).join('\n'),
};

function itemize(items: readonly string[]): string {
  return ['\\begin{itemize}', ...items.map((item) => `  \\item ${item}`), '\\end{itemize}'].join('\n');
}

function tabular(columns: readonly PageColumn[], rows: readonly (readonly PageCell[])[]): string {
  const row = (texts: readonly string[]): string => `${texts.join(' & ')} \\\\`;
  const heads = columns.map(({ head, unit }) => (unit === undefined ? inline(head) : `${inline(head)} {[}${inline(unit)}{]}`));
  return [
    `\\noindent\\begin{tabular}{${columns.map(({ align }) => (align === 'right' ? 'r' : 'l')).join('')}}`,
    row(heads),
    '\\hline',
    ...rows.map((cells) => row(cells.map((cell) => linesOf(cell).map(inline).join('; ')))),
    '\\end{tabular}',
  ].join('\n');
}

// Brackets and stars behind a line end or an item would be read as an option of it.
const SIGNS: Readonly<Record<string, string>> = {
  '\\': '\\textbackslash{}',
  '{': '\\{',
  '}': '\\}',
  '[': '{[}',
  ']': '{]}',
  '*': '{*}',
  '<': '\\textless{}',
  '>': '\\textgreater{}',
  '|': '\\textbar{}',
  $: '\\$',
  '%': '\\%',
  '&': '\\&',
  '#': '\\#',
  _: '\\_',
  '^': '\\textasciicircum{}',
  '~': '\\textasciitilde{}',
  Ω: '$\\Omega$',
  '°': '$^{\\circ}$',
  '²': '$^{2}$',
  '³': '$^{3}$',
  '⁴': '$^{4}$',
  '√': '$\\surd$',
  '½': '$\\frac{1}{2}$',
  '·': '$\\cdot$',
  '±': '$\\pm$',
  '≤': '$\\leq$',
  '≥': '$\\geq$',
  '≈': '$\\approx$',
  π: '$\\pi$',
  ρ: '$\\rho$',
  α: '$\\alpha$',
  '’': "'",
  '“': '``',
  '”': "''",
  '…': '\\dots{}',
};

/** Text with the signs of LaTeX written out. */
function escaped(text: string): string {
  return plain(text).replaceAll(/[^A-Za-z0-9\s]/gu, (sign) => SIGNS[sign] ?? sign);
}

function inline(words: Words): string {
  return joined(words, escaped, ({ latex }) => `$${latex}$`);
}
