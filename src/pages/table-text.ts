/** A table in plain text: columns of a stated width, or as wide as their cells. @module */
import { linesOf, plainWords } from './blocks.ts';
import type { PageColumn, Table } from './page.ts';
import { left, right, widthOf, wrap } from './plain-text.ts';

/** Wider columns of words are broken where the table is wider than the page. */
const MOST = 24;

/** A column as it is laid out. */
interface Laid {
  readonly column: PageColumn;
  readonly index: number;
  readonly gap: number;
  readonly width: number;
}

/**
 * The lines of a table; columns that do not fit beside the others come in a second block, behind the first column.
 * @internal
 */
export function tableText(table: Table, width: number, paint: (text: string, as: string) => string): string[] {
  const { columns, rows, bare, indent = 0 } = table;
  const hasUnits = columns.some(({ unit }) => unit !== undefined);
  const margin = ' '.repeat(indent);
  const lines: string[] = [];
  for (const block of blocksOf(laidOut(table, width - indent), width - indent)) {
    if (lines.length > 0) lines.push('');
    if (bare !== true)
      add(
        block.map(({ column }) => [plainWords(column.head)]),
        block,
        false,
      );
    if (bare !== true && hasUnits)
      add(
        block.map(({ column }) => [plainWords(column.unit ?? '')]),
        block,
        false,
      );
    for (const row of rows)
      add(
        block.map(({ index }) => linesOf(row[index] ?? '').map(plainWords)),
        block,
        true,
      );
  }
  return lines;

  /** One row: cells that are too wide take several lines, or are cut where the width of their column is stated. */
  function add(cells: readonly (readonly string[])[], block: readonly Laid[], isRow: boolean): void {
    const broken = cells.map((texts, place) => {
      const { column, width: room } = block[place] as Laid;
      if (column.width !== undefined) return [texts.join(' ')];
      return column.align === 'right' ? texts : texts.flatMap((text) => wrap(text, room).split('\n'));
    });
    const height = broken.reduce((most, { length }) => Math.max(most, length), 1);
    for (let at = 0; at < height; at++) {
      let line = margin;
      for (const [place, { column, gap, width: room }] of block.entries()) {
        const text = broken[place]?.[at] ?? '';
        const cell = column.align === 'right' ? right(text, room) : left(text, room);
        line += ' '.repeat(gap) + (isRow && column.loud === true ? cell.replace(text, paint(text, text)) : cell);
      }
      lines.push(line.trimEnd());
    }
  }
}

function laidOut({ columns, rows }: Table, room: number): Laid[] {
  const laid = columns.map((column, index): Laid => {
    const { width, gap = width === undefined && index > 0 ? 2 : 0 } = column;
    return { column, index, gap, width: typeof width === 'number' ? width : width === 'rest' ? 0 : natural(index) };
  });
  const spare = room - laid.reduce((sum, { gap, width }) => sum + gap + width, 0);
  return laid.map((column): Laid => {
    const {
      column: { width, align },
      width: wide,
    } = column;
    if (width === 'rest') return { ...column, width: Math.max(spare, 1) };
    return spare < 0 && width === undefined && align !== 'right' && wide > MOST ? { ...column, width: MOST } : column;
  });

  /** As wide as the widest cell. */
  function natural(index: number): number {
    const { head, unit = '' } = columns[index] as PageColumn;
    let most = Math.max(widthOf(plainWords(head)), widthOf(plainWords(unit)), 1);
    for (const row of rows) for (const line of linesOf(row[index] ?? '')) most = Math.max(most, widthOf(plainWords(line)));
    return most;
  }
}

/** Columns in blocks that fit the page, the first one in each. */
function blocksOf(columns: readonly Laid[], room: number): Laid[][] {
  const [label, ...others] = columns;
  if (label === undefined) return [];
  const blocks: Laid[][] = [];
  let spare = 0;
  for (const column of others) {
    const { gap, width } = column;
    const block = blocks.at(-1);
    if (block === undefined || spare < gap + width) {
      blocks.push([label, column]);
      spare = room - label.width - gap - width;
    } else {
      block.push(column);
      spare -= gap + width;
    }
  }
  return blocks.length === 0 ? [[label]] : blocks;
}
