/** A page as Markdown. @module */
import { type BlockWriter, joined, linesOf, sentence, written } from './blocks.ts';
import type { Maths, Page, PageCell, Words } from './page.ts';
import { plain } from './plain-text.ts';

/**
 * A page as Markdown (CommonMark with the tables of GFM), its formulas in LaTeX between dollar signs.
 *
 * Signs of Markdown, HTML and formulas within words are escaped: they stay text.
 *
 * @param page - The page.
 * @returns Markdown with `\n` line ends.
 * @throws {@link InputError} If it is no page.
 * @example
 * pageMarkdown([{ kind: 'heading', level: 1, text: 'Foyer | *level 1*' }]); // => '# Foyer \\| \\*level 1\\*\n'
 */
export function pageMarkdown(page: Page): string {
  const lines = written(page, WRITER).join('\n\n');
  return lines === '' ? '' : `${lines}\n`;
}

const WRITER: BlockWriter<string> = {
  heading: ({ level, text }) => (level === 4 ? `${start(text)}:` : `${'#'.repeat(level)} ${inline(text)}`),
  paragraph: ({ text, lead, strong }) => {
    if (lead !== undefined) return `**${escaped(lead)}.** ${inline(sentence(text))}`;
    return strong === true ? `**${inline(text)}**` : start(text);
  },
  note: ({ text }) => `*${inline(text)}*`,
  list: ({ items }) => items.map((item) => `- ${start(item)}`).join('\n'),
  terms: ({ items, heads }) => {
    if (heads !== undefined)
      return rows(
        heads,
        ['---', '---'],
        items.map(({ term, text }) => [term, text]),
      );
    return items.map(({ term, text }) => `- ${start(term)}: ${inline(text)}`).join('\n');
  },
  table: ({ columns, rows: cells }) =>
    rows(
      columns.map(({ head, unit }): Words => (unit === undefined ? head : [head, ' [', unit, ']'].flat())),
      columns.map(({ align }) => (align === 'right' ? '---:' : '---')),
      cells,
    ),
  formula: ({ symbol, latex }) => ['$$', ...aligned(symbol, latex, 'aligned'), '$$'].join('\n'),
  preformatted: ({ lines }) => {
    const longest =
      lines
        .join('\n')
        .match(/`+/g)
        ?.reduce((most, run) => Math.max(most, run.length), 2) ?? 2;
    const fence = '`'.repeat(longest + 1);
    return [fence, ...lines.map(plain), fence].join('\n');
  },
  step: ({ number, title, blocks }) => [`${number}. ${inline(sentence(title))}`, ...written(blocks, WRITER).map(inside)].join('\n\n'),
  group: ({ blocks }) => written(blocks, WRITER).join('\n\n'),
};

/** Formula, figures, result, one below the other, in an environment of amsmath. @internal */
export function aligned(
  symbol: Maths,
  relations: readonly { readonly sign: string; readonly text: string }[],
  environment: string,
): string[] {
  const lines = relations.map(
    ({ sign, text }, index) => `${index === 0 ? `${symbol.latex} ` : ''}&${sign} ${text}${index === relations.length - 1 ? '' : ' \\\\'}`,
  );
  return [`\\begin{${environment}}`, ...lines, `\\end{${environment}}`];
}

/** What belongs to a numbered step. */
function inside(text: string): string {
  return text.replace(/^(?=.)/gm, '   ');
}

function rows(heads: readonly Words[], rules: readonly string[], cells: readonly (readonly PageCell[])[]): string {
  const row = (texts: readonly string[]): string => `| ${texts.join(' | ')} |`;
  return [heads.map(cell), rules, ...cells.map((line) => line.map(cell))].map(row).join('\n');
}

function cell(content: PageCell): string {
  if (typeof content === 'string' && PLAIN.test(content)) return content;
  return linesOf(content).map(inline).join('<br>');
}

const PLAIN = /^[A-Za-z0-9 .,:;()/+%Ω°-]*$/;
const MARKUP = /[\\`*_{}[\]<>#|~!$&]/g;
const ENTITIES: Readonly<Record<string, string>> = { '<': '&lt;', '>': '&gt;', '&': '&amp;' };

/** Text that stays text in Markdown and in HTML. */
function escaped(text: string): string {
  return PLAIN.test(text) ? text : plain(text).replace(MARKUP, (sign) => ENTITIES[sign] ?? `\\${sign}`);
}

function inline(words: Words): string {
  return joined(words, escaped, ({ latex }) => `$${latex}$`);
}

/** Words at the beginning of a line, where a dash or a number would begin a list. */
function start(words: Words): string {
  return inline(words).replace(/^(\s*)([-+=]|\d+(?=[.)](?:\s|$)))/, (_whole, blanks: string, sign: string) =>
    /\d/.test(sign) ? `${blanks}${sign}\\` : `${blanks}\\${sign}`,
  );
}
