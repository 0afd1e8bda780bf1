/** A sheet laid out for a reading: which figures apply, those of a list once for each row, with number, label and source. @module */
import type { SourceKey } from '../../sources/sources.ts';
import type { Measured } from './formula.ts';
import type { Reading, ReadingRow, Sheet, SheetGiven, SheetStep, Steps, When } from './sheet.ts';
import type { WorkedGiven, WorkedStep } from './worked.ts';

/** A reading, and the input that it is of. */
export interface ReadInput extends Reading {
  readonly input: unknown;
}

/** A figure, and the row that it belongs to. */
type InRow<Item> = { readonly item: Item; readonly row?: ReadingRow; readonly index: number };

/** A step before it is worked. @internal */
export type Line = Omit<WorkedStep, 'value' | 'parsed' | 'formula'> & InRow<SheetStep>;

const linesByReading = new WeakMap<Reading, Map<Steps, readonly Line[]>>();

/** The steps that apply, laid out once for a reading. @internal */
export function linesOf(steps: Steps, reading: Reading): readonly Line[] {
  const lists = linesByReading.get(reading) ?? new Map<Steps, readonly Line[]>();
  linesByReading.set(reading, lists);
  const lines =
    lists.get(steps) ??
    applicable(steps, reading).map((line): Line => {
      const { formula: _formula, ...step } = numbered(line, reading);
      return { ...step, source: step.source ?? 'circuit-laws', ...line };
    });
  lists.set(steps, lines);
  return lines;
}

/** The givens that apply: those that are stated, or those that the sheet finds. @internal */
export function givensOf<Input>({ givens }: Sheet<Input>, reading: ReadInput, isFound: boolean): WorkedGiven[] {
  return applicable(givens, reading)
    .filter(({ item }) => (item.found === true) === isFound)
    .map((line) => ({ ...numbered(line, reading), value: figureOf(line, reading) }));
}

/** As the reading has it, or where the core has it in the input, or the constant or default of the sheet. */
function figureOf({ item: { symbol, core, value }, row }: InRow<SheetGiven>, reading: ReadInput): number {
  const stated = core
    .split('.')
    .reduce<unknown>((found, key) => (found as Readonly<Record<string, unknown>> | undefined)?.[key], reading.input);
  const figure = (row ?? reading).values?.[symbol] ?? (typeof stated === 'number' ? stated : value);
  if (figure === undefined) throw new Error(`${symbol} has not been read`);
  return figure;
}

/** Whether a case applies, or both of two, to a reading or to one of its rows. @internal */
export function applies(when: When | undefined, { cases }: Reading, row?: ReadingRow): boolean {
  return when === undefined || when.split(', ').every((one) => cases?.includes(one) === true || row?.cases?.includes(one) === true);
}

/** The figures that apply, those of a list once for each row: row by row, in the order of the sheet. */
function applicable<Item extends SheetGiven | SheetStep>(items: readonly Item[], reading: Reading): InRow<Item>[] {
  const found: InRow<Item>[] = [];
  for (const [start, first] of items.entries()) {
    const { each } = first;
    if (each === undefined) {
      if (applies(first.when, reading)) found.push({ item: first, index: 0 });
    } else if (items[start - 1]?.each !== each) {
      const end = items.findIndex((item, place) => place > start && item.each !== each);
      const block = items.slice(start, end < 0 ? undefined : end);
      for (const [place, row] of (reading.rows?.[each] ?? []).entries()) {
        const index = row.number ?? place + 1;
        found.push(...block.filter(({ when }) => applies(when, reading, row)).map((item) => ({ item, row, index })));
      }
    }
  }
  return found;
}

/** A figure with the number, the label and the source of its row. */
function numbered<Item extends SheetGiven | SheetStep>(
  { item, row, index }: InRow<Item>,
  reading: Reading,
): Omit<Item, 'source'> & { readonly source?: SourceKey; readonly template: string; readonly number?: number; readonly label?: string } {
  const { source, ...rest } = item;
  const sources = (row ?? reading).sources ?? {};
  const cited = source !== 'row' ? source : item.symbol in sources ? sources[item.symbol] : row?.source;
  const figure = { ...rest, ...(cited === undefined ? {} : { source: cited }), template: item.symbol };
  if (row === undefined) return figure;
  const { core: _core, ...unnamed } = figure as typeof figure & { readonly core?: string };
  const core = corePath(item.core, row, index);
  const label = oneLine(row.label);
  const written = (text: string): string => text.replaceAll('#', String(index));
  return {
    ...(unnamed as typeof figure),
    ...(core === undefined ? {} : { core }),
    symbol: written(item.symbol),
    latex: written(item.latex),
    // A label may hold what a replacement takes for a sign of its own.
    meaning: written(item.meaning).replaceAll('@', () => label),
    number: index,
    label,
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
  links: ReadingRow['links'] = {},
): string {
  return formula
    .replaceAll(/<(\w+)>/g, (_whole, link: string) => links[link] ?? '')
    .replaceAll(/\[([^\]]*?)(,?)\]/g, (_whole, term: string, comma: string) => {
      const stem = (/[A-Za-z_]\w*#/.exec(term)?.[0] ?? '').slice(0, -1);
      return Object.keys(scope)
        .filter((symbol) => symbol.startsWith(stem) && /^\d+$/.test(symbol.slice(stem.length)))
        .map((symbol) => Number(symbol.slice(stem.length)))
        .sort((a, b) => a - b)
        .map((number) => term.replaceAll('#', String(number)))
        .join(comma === '' ? ' + ' : ', ');
    })
    .replaceAll('#', String(index));
}

/** A label is one line, whatever its name was. @internal */
export function oneLine(text: string): string {
  return text.replaceAll(/\s+/g, ' ');
}
