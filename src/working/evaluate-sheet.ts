/** A sheet worked through: rows written out, slips put in where they are asked for, every step evaluated with units. @module */
import type { SourceKey } from '../sources/sources.ts';
import { evaluateTo, type Formula, formulaOf, type Measured, measured } from './formula.ts';
import type { Figures, Reading, ReadingPasses, ReadingRow, Sheet, SheetGiven, SheetNo, SheetStep } from './sheet.ts';
import type { WorkingUnit } from './working-unit.ts';

/** A given as it stands on the page. */
export interface WorkedGiven extends Omit<SheetGiven, 'source'> {
  readonly source?: SourceKey;
  readonly value: number;
  /** The symbol on the sheet, before rows were numbered. */
  readonly template: string;
  /** Of a list: the number and the label of its row. */
  readonly number?: number;
  readonly label?: string;
}

/** A step as it stands on the page. */
export interface WorkedStep extends Omit<SheetStep, 'source'> {
  readonly source: SourceKey;
  readonly value: number;
  readonly template: string;
  readonly parsed: Formula;
  /** Of a list: the number and the label of its row. */
  readonly number?: number;
  readonly label?: string;
}

/** A sheet worked through to its result, or to its no. */
export interface Worked {
  readonly givens: readonly WorkedGiven[];
  readonly steps: readonly WorkedStep[];
  readonly passes?: ReadingPasses;
  /** The words of a physical no; the last step then explains it. */
  readonly no?: string;
}

/** What is done otherwise than on the sheet. */
export interface SheetChange {
  readonly givens?: Readonly<Record<string, string>> | undefined;
  readonly steps?: Readonly<Record<string, string>> | undefined;
  /** A step, by its symbol on the page, that is rounded before it is used. */
  readonly rounded?: { readonly symbol: string; readonly figures: number } | undefined;
  /** Goes on past a no and past what cannot be worked, as one does who does not look: such steps are left out. */
  readonly heedless?: boolean | undefined;
}

/** One figure, and the row it belongs to. */
type InRow<Item> = { readonly item: Item; readonly row?: ReadingRow; readonly index: number };

/**
 * Works a sheet through.
 *
 * @throws Error if the sheet itself is at fault: a symbol that is not known yet, a result that is not of its unit.
 */
export function evaluateSheet<Input>(sheet: Sheet<Input>, read: Reading, change: SheetChange = {}): Worked {
  const scope: Record<string, Measured> = {};
  const given = (from: Reading, isFound: boolean): WorkedGiven[] =>
    placed(sheet.givens, from)
      .filter(({ item }) => (item.found === true) === isFound)
      .map(({ item, row, index }) => {
        const value = (row?.values ?? from.values)[item.symbol];
        if (value === undefined) throw new Error(`${item.symbol} has not been read`);
        const figure = { ...named(item, row, index), template: item.symbol, value, ...rowOf(row, index) };
        scope[figure.symbol] = measured(value, item.unit);
        return figure;
      });
  const stated = given(read, false).map((figure): WorkedGiven => {
    const formula = change.givens?.[figure.template];
    if (formula === undefined) return figure;
    return { ...figure, value: evaluateTo(formulaOf(formula.replaceAll('#', String(figure.number ?? 0))), scope, figure.unit) };
  });
  for (const { symbol, value, unit } of stated) scope[symbol] = measured(value, unit);
  const reading = change.givens === undefined ? foundIn(sheet, read) : (sheet.find?.(restated(read, stated)) ?? read);
  const givens = sheet.find === undefined ? stated : [...stated, ...given(reading, true)];

  const steps: WorkedStep[] = [];
  const run = (list: readonly SheetStep[], only?: ReadingRow): string | undefined => {
    for (const { item, row, index } of placed(list, reading)) {
      if (only !== undefined && row !== undefined && row !== only) continue;
      const { rounded } = change;
      const formula = writtenOut(change.steps?.[item.symbol] ?? item.formula, index, scope, row?.links);
      const parsed = formulaOf(formula);
      const step = { ...named(item, row, index), source: item.source === 'row' ? (row?.source ?? 'circuit-laws') : item.source };
      let value = change.heedless === true ? unlessFaulty(parsed, scope, item.unit) : evaluateTo(parsed, scope, item.unit);
      if (value === undefined) continue;
      if (rounded?.symbol === step.symbol) value = Number(value.toPrecision(rounded.figures));
      steps.push({ ...step, template: item.symbol, formula, parsed, value, ...rowOf(row, index) });
      scope[step.symbol] = measured(value, item.unit);
      if (item.no !== undefined && value < 0 && change.heedless !== true) return endIn(item.no, row);
    }
    return undefined;
  };
  const endIn = (no: SheetNo, row: ReadingRow | undefined): string => {
    run(no.steps, row);
    return no.says.replaceAll('@', row?.label ?? '');
  };
  const no = run(sheet.steps);
  const why = no ?? reading.no;
  const { passes } = reading;
  return { givens, steps, ...(passes === undefined ? {} : { passes }), ...(why === undefined ? {} : { no: why }) };
}

const found = new WeakMap<Reading, Reading>();

/** The reading with what the sheet finds; a reading is gone over once, however many steps of it are then changed. */
function foundIn<Input>({ find }: Sheet<Input>, reading: Reading): Reading {
  if (find === undefined) return reading;
  const known = found.get(reading) ?? find(reading);
  found.set(reading, known);
  return known;
}

/** The reading with its figures as they were mistaken. */
function restated(reading: Reading, givens: readonly WorkedGiven[]): Reading {
  const valuesOf = (of: readonly WorkedGiven[]): Figures => Object.fromEntries(of.map(({ template, value }) => [template, value]));
  const rows = Object.entries(reading.rows ?? {}).map(([list, items]) => {
    const own = givens.filter(({ each }) => each === list);
    const changed = items.map((row, place) => {
      const number = row.number ?? place + 1;
      return { ...row, values: { ...row.values, ...valuesOf(own.filter((figure) => figure.number === number)) } };
    });
    return [list, changed] as const;
  });
  const single = givens.filter(({ each }) => each === undefined);
  return { ...reading, values: { ...reading.values, ...valuesOf(single) }, rows: Object.fromEntries(rows) };
}

function unlessFaulty(formula: Formula, scope: Readonly<Record<string, Measured>>, unit: WorkingUnit): number | undefined {
  try {
    return evaluateTo(formula, scope, unit);
  } catch {
    return undefined;
  }
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
  return row === undefined ? {} : { number, label: row.label };
}

/** A figure with the number, the label and the source of its row. */
function named<Item extends SheetGiven | SheetStep>(
  item: Item,
  row: ReadingRow | undefined,
  index: number,
): Omit<Item, 'source'> & { source?: SourceKey } {
  const { source, ...rest } = item;
  const cited = source === 'row' ? row?.source : source;
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
    meaning: numbered(item.meaning).replaceAll('@', row.label),
  };
}

/** What the core calls a figure of a row; nothing where its link is one that the row does not have. */
function corePath(core: string | undefined, row: ReadingRow, index: number): string | undefined {
  const link = /^<(\w+)>$/.exec(core ?? '')?.[1];
  return link === undefined ? core?.replaceAll('@', row.core ?? String(index - 1)) : row.links?.[link];
}

/** A formula with its row's number and links, and its lists `[R_#]` and `[L_#,]` as sums and lists of the rows there are. */
function writtenOut(
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
