/** A page as plain text, for a terminal or a file. @module */
import { requireInteger, requireObject } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import { type BlockWriter, joined, plainWords, written } from './blocks.ts';
import type { Page, Words } from './page.ts';
import { left, plain, widthOf, wrap } from './plain-text.ts';
import { tableText } from './table-text.ts';

/** How a page of text looks. */
export interface PageTextOptions {
  /** Columns of the page, 40 to 400; 80 if absent. */
  readonly width?: number | undefined;
  /** Whether titles and verdict words are coloured for a terminal; off if absent. */
  readonly colour?: boolean | undefined;
}

/** Columns of a plain terminal. @internal */
export const TERMINAL_WIDTH = 80;

/** Escape sequences of ECMA-48: bold, and the colours of a verdict. */
const COLOURS: Readonly<Record<string, string>> = {
  heading: '1',
  FAIL: '1;31',
  FAILS: '1;31',
  DENIED: '1;31',
  ERROR: '1;31',
  UNCERTAIN: '33',
  uncertain: '33',
  marginal: '33',
  pass: '32',
};
const LOUD = /\b(?:FAILS?|DENIED|UNCERTAIN|ERROR)\b/g;

/**
 * A page as plain text.
 *
 * Sentences are broken at blanks, but not between a number and its unit; a word that no line holds is cut into pieces.
 * Characters that a terminal would obey are left out of all words.
 *
 * @param page - The page.
 * @param options - Width in columns, colour.
 * @returns Lines that end in `\n`, none wider than `width`.
 * @throws {@link InputError} If it is no page, or the width is not a whole number from 40 to 400.
 * @example
 * pageText([{ kind: 'list', items: ['a camera', 'a help point'] }]); // => '  - a camera\n  - a help point\n'
 */
export function pageText(page: Page, options: PageTextOptions = {}): string {
  requireObject(options, 'options', 'an object with width and colour');
  const { width = TERMINAL_WIDTH, colour = false } = options;
  requireInteger(width, 40, 400, 'options.width');
  if (typeof colour !== 'boolean') throw new InputError('type', 'options.colour', 'true or false', colour);
  const paint = (text: string, as: string): string => {
    const code = COLOURS[as];
    return colour && code !== undefined ? `\u001b[${code}m${text}\u001b[0m` : text;
  };
  const loud = (text: string): string => (colour ? text.replace(LOUD, (verdict) => paint(verdict, verdict)) : text);
  const lines = blocksText(page, 0, '\n\n');
  return lines === '' ? '' : `${lines.replaceAll('\u00a0', ' ')}\n`;

  function blocksText(blocks: Page, indent: number, between: string): string {
    const margin = ' '.repeat(indent);
    const filled = (words: Words, first = '', hang = ' '.repeat(widthOf(first))): string =>
      wrap(flat(words), width, margin + first, margin + hang);
    const writer: BlockWriter<string> = {
      heading: ({ level, text }) => {
        const title = filled(text);
        if (level === 3) return `${title}\n${margin}${'='.repeat(widthOf(title) < width ? widthOf(title) - indent : width - indent)}`;
        return level === 4 ? title : paint(level === 2 ? title.toUpperCase() : title, 'heading');
      },
      paragraph: ({ text, lead, loud: isLoud, indent: deeper = 0, hang = 0 }) => {
        const first = ' '.repeat(deeper) + (lead === undefined ? '' : `${plain(lead)}  `);
        const lines = filled(text, first, ' '.repeat(widthOf(first) + hang));
        return isLoud === true ? loud(lines) : lines;
      },
      note: ({ text, lead }) => filled(text, lead === undefined ? '' : `${plain(lead)} `),
      list: ({ items, loud: isLoud }) => {
        const lines = items.map((item) => filled(item, '  - ')).join('\n');
        return isLoud === true ? loud(lines) : lines;
      },
      terms: ({ items }) => {
        const terms = items.map(({ term }) => plainWords(term));
        const column =
          Math.min(
            terms.reduce((most, term) => Math.max(most, widthOf(term)), 0),
            Math.floor((width - indent) / 2),
          ) + 1;
        return items.map(({ text }, index) => filled(text, `  ${left(terms[index] as string, column)}`)).join('\n');
      },
      table: (table) =>
        tableText(table, width - indent, paint)
          .map((line) => margin + line)
          .join('\n'),
      formula: ({ symbol, text }) => {
        const under = ' '.repeat(widthOf(symbol.text));
        return text.map(({ sign, text: part }, index) => filled(part, `${index === 0 ? symbol.text : under} ${sign} `)).join('\n');
      },
      preformatted: ({ lines }) => lines.map((line) => margin + plain(line)).join('\n'),
      step: ({ number, title, blocks: inner }) => {
        const first = filled(title, `${String(number).padStart(3)}. `);
        const rest = blocksText(inner, indent + 5, '\n\n');
        return rest === '' ? first : `${first}\n${rest}`;
      },
      group: ({ blocks: inner }) => blocksText(inner, indent, '\n'),
    };
    return written(blocks, writer).join(between);
  }
}

/** Words for a line: a short formula is not broken. */
function flat(words: Words): string {
  return joined(
    words,
    (text) => text,
    ({ text }) => (text.length > 24 ? text : text.replaceAll(' ', '\u00a0')),
  );
}
