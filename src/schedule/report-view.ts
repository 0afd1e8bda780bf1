/** Blocks that the sections of a report are made of. @module */
import type { Block, Page, Paragraph } from '../pages/page.ts';
import type { Report } from './report.ts';

/** A report, and how much of it is shown. */
export interface ReportView {
  readonly report: Report;
  /** Whether the figures of every run are shown, those of plain passes too. */
  readonly full: boolean;
  /** Columns of a terminal. */
  readonly width: number;
}

/** @internal */
export function paragraph(text: string, indent = 0, more: Partial<Pick<Paragraph, 'hang' | 'loud' | 'strong'>> = {}): Paragraph {
  return { kind: 'paragraph', text, indent, ...more };
}

/** @internal */
export function list(items: readonly string[], loud = false): Block[] {
  if (items.length === 0) return [];
  return [loud ? { kind: 'list', items, loud } : { kind: 'list', items }];
}

/** A table of words, as wide as they are. @internal */
export function table(heads: readonly string[], rows: readonly (readonly string[])[]): Block[] {
  return rows.length === 0 ? [] : [{ kind: 'table', columns: heads.map((head) => ({ head })), rows }];
}

/** Blocks without a blank line between them; nothing where there is none. @internal */
export function group(blocks: Page): Block[] {
  return blocks.length === 0 ? [] : [{ kind: 'group', blocks }];
}

/** Several lines of one cell. @internal */
export function several(texts: readonly string[]): string {
  return texts.map((text) => text.replace(/[\r\n]+/g, ' ')).join('\n');
}
