/** What the three writers have in common: guards, and blocks that hold nothing. @module */
import { requireArray, requireObject, requireOneOf } from '../quantity/guards.ts';
import type { Block, Maths, Page, PageCell, Words } from './page.ts';
import { plain } from './plain-text.ts';

/** One function for each kind of block. */
export type BlockWriter<Result> = { readonly [K in Block['kind']]: (block: Extract<Block, { readonly kind: K }>) => Result };

/**
 * Every block of a page as its writer has it; lists and tables without an item are left out.
 *
 * @throws {@link InputError} If it is no page.
 * @internal
 */
export function written<Result>(page: Page, writer: BlockWriter<Result>): Result[] {
  requireArray(page, 'page', 'a list of blocks');
  return page.flatMap((block) => {
    requireObject(block, 'page[]', 'a block');
    const { kind } = block;
    requireOneOf(kind, Object.keys(writer), 'page[].kind');
    const isEmpty = ('items' in block && block.items.length === 0) || ('rows' in block && block.rows.length === 0);
    return isEmpty ? [] : [(writer[kind] as (written: Block) => Result)(block)];
  });
}

/** Words as one text, each part by its own rule. @internal */
export function joined(words: Words, text: (part: string) => string, maths: (part: Maths) => string): string {
  if (typeof words === 'string') return text(words);
  return words.map((part) => (typeof part === 'string' ? text(part) : maths(part))).join('');
}

/** The lines of a cell. @internal */
export function linesOf(cell: PageCell): readonly Words[] {
  return typeof cell === 'string' ? cell.split('\n') : [cell];
}

/** Words with a capital at their beginning. @internal */
export function sentence(words: Words): Words {
  if (typeof words !== 'string') return words.map((part, index) => (index === 0 && typeof part === 'string' ? capital(part) : part));
  return capital(words);
}

function capital(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}

/** Words without any markup, on one line. @internal */
export function plainWords(words: Words): string {
  return joined(words, plain, ({ text }) => text);
}
