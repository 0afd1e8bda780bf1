/** A sheet laid out for a reading: which figures apply, those of a list once for each row, with number, label and source. @module */
import type { SourceKey } from '../sources/sources.ts';
import type { Measured } from './formula.ts';
import type { FigureSources, Reading, ReadingRow, Sheet, SheetGiven, SheetStep } from './sheet.ts';
import type { WorkedGiven, WorkedStep } from './worked.ts';

/** One figure, and the row it belongs to. */
type InRow<Item> = { readonly item: Item; readonly row?: ReadingRow; readonly index: number };

/** A step before it is worked. @internal */
export type Line = Omit<WorkedStep, 'value' | 'parsed' | 'formula'> & InRow<SheetStep>;

const laid = new WeakMap<Reading, Map<readonly SheetStep[], readonly Line[]>>();

/** The steps that apply, laid out once for a reading. @internal */
export function linesOf(steps: readonly SheetStep[], reading: Reading): readonly Line[] {
  const lists = laid.get(reading) ?? new Map<readonly SheetStep[], readonly Line[]>();
  laid.set(reading, lists);
  const lines =
    lists.get(steps) ??
    placed(steps, reading).map(({ item, row, index }): Line => {
      const { formula: _formula, ...step } = named(item, row, index);
      const source = item.source === 'row' ? (row?.source ?? 'circuit-laws') : item.source;
      return { ...step, source, template: item.symbol, ...rowOf(row, index), item, ...(row === undefined ? {} : { row }), index };
    });
  lists.set(steps, lines);
  return lines;
}

/** The givens that apply: those that are stated, or those that the sheet finds. @internal */
export function givensOf<Input>({ givens }: Sheet<Input>, reading: Reading, isFound: boolean): WorkedGiven[] {
  return placed(givens, reading)
    .filter(({ item }) => (item.found === true) === isFound)
    .map(({ item, row, index }) => {
      const value = (row?.values ?? reading.values)[item.symbol];
      if (value === undefined) throw new Error(`${item.symbol} has not been read`);
      return { ...named(item, row, index, reading.sources), template: item.symbol, value, ...rowOf(row, index) };
    });
}

/** The figures that apply, those of a list once for each row: row by row, in the order of the sheet. */
function placed<Item extends SheetGiven | SheetStep>(items: readonly Item[], reading: Reading): InRow<Item>[] {
  const cases = reading.cases ?? [];
  const found: InRow<Item>[] = [];
  for (let start = 0; start < items.length; ) {
    const { each } = items[start] as Item;
    let end = start + 1;
    if (each === undefined) {
      const item = items[start] as Item;
      if (item.when === undefined || cases.includes(item.when)) found.push({ item, index: 0 });
    } else {
      while (end < items.length && items[end]?.each === each) end++;
      for (const [place, row] of (reading.rows?.[each] ?? []).entries()) {
        for (const item of items.slice(start, end)) {
          if (item.when === undefined || cases.includes(item.when) || row.cases?.includes(item.when)) {
            found.push({ item, row, index: row.number ?? place + 1 });
          }
        }
      }
    }
    start = end;
  }
  return found;
}

/** The row of a figure, as it is kept beside it. */
function rowOf(row: ReadingRow | undefined, number: number): { readonly number?: number; readonly label?: string } {
  return row === undefined ? {} : { number, label: oneLine(row.label) };
}

/** A figure with the number, the label and the source of its row. */
function named<Item extends SheetGiven | SheetStep>(
  item: Item,
  row: ReadingRow | undefined,
  index: number,
  sources: FigureSources = {},
): Omit<Item, 'source'> & { source?: SourceKey } {
  const { source, ...rest } = item;
  const ofRow = row?.sources !== undefined && item.symbol in row.sources ? row.sources[item.symbol] : row?.source;
  const cited = source === 'row' ? (row === undefined ? sources[item.symbol] : ofRow) : source;
  const figure = cited === undefined ? rest : { ...rest, source: cited };
  if (row === undefined) return figure;
  const numbered = (text: string): string => text.replaceAll('#', String(index));
  const path = corePath(item.core, row, index);
  const { core: _stated, ...unnamed } = figure as unknown as { readonly core?: string };
  return {
    ...(unnamed as typeof figure),
    ...(path === undefined ? {} : { core: path }),
    symbol: numbered(item.symbol),
    latex: numbered(item.latex),
    // A label may hold what a replacement takes for a sign of its own.
    meaning: numbered(item.meaning).replaceAll('@', () => oneLine(row.label)),
  };
}

/** What the core calls a figure of a row; nothing where its link is one that the row does not have. */
function corePath(core: string | undefined, row: ReadingRow, index: number): string | undefined {
  const link = /^<(\w+)>$/.exec(core ?? '')?.[1];
  return link === undefined ? core?.replaceAll('@', row.core ?? String(index - 1)) : row.links?.[link];
}

/** A formula with its row's number and links, and its lists `[R_#]` and `[L_#,]` as sums and lists of the rows there are. */
export function writtenOut(
  formula: string,
  index: number,
  scope: Readonly<Record<string, Measured>>,
  links: Readonly<Record<string, string>> = {},
): string {
  return formula
    .replaceAll(/<(\w+)>/g, (_whole, link: string) => links[link] ?? '')
    .replaceAll(/\[([^\]]*)\]/g, (_whole, inner: string) => {
      const listed = inner.endsWith(',');
      const term = listed ? inner.slice(0, -1) : inner;
      const template = /[A-Za-z_]\w*#/.exec(term)?.[0] ?? '';
      const stem = template.slice(0, -1);
      const numbers = Object.keys(scope).flatMap((symbol) =>
        symbol.startsWith(stem) && /^\d+$/.test(symbol.slice(stem.length)) ? [Number(symbol.slice(stem.length))] : [],
      );
      return numbers
        .sort((a, b) => a - b)
        .map((number) => term.replaceAll('#', String(number)))
        .join(listed ? ', ' : ' + ');
    })
    .replaceAll('#', String(index));
}

/** A label is one line, whatever its name was. @internal */
export function oneLine(text: string): string {
  return text.replaceAll(/\s+/g, ' ');
}
