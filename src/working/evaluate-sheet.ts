/** A sheet worked through: rows written out, slips put in where they are asked for, every step evaluated with units. @module */
import { evaluateTo, type Formula, formulaOf, type Measured, measured } from './formula.ts';
import { givensOf, linesOf, oneLine, writtenOut } from './lines.ts';
import type { Figures, Reading, ReadingRow, Sheet, SheetNo, SheetStep } from './sheet.ts';
import type { Worked, WorkedGiven, WorkedStep } from './worked.ts';
import type { WorkingUnit } from './working-unit.ts';

/** What is done otherwise than on the sheet. */
export interface SheetChange {
  readonly givens?: Readonly<Record<string, string>> | undefined;
  readonly steps?: Readonly<Record<string, string>> | undefined;
  /** A step, by its symbol on the page, that is rounded before it is used. */
  readonly rounded?: { readonly symbol: string; readonly figures: number } | undefined;
  /** Goes on past a no and past what cannot be worked, as one does who does not look: such steps are left out. */
  readonly heedless?: boolean | undefined;
}

/** A sheet as it stands, with all that a change of it can take over. */
interface Plain {
  readonly worked: Worked;
  readonly reading: Reading;
  readonly stated: readonly WorkedGiven[];
  readonly scope: Readonly<Record<string, Measured>>;
  readonly steps: ReadonlyMap<string, WorkedStep>;
}

const plainly = new WeakMap<Reading, Plain>();

/**
 * Works a sheet through; of a change to it, only what follows from the change is worked anew.
 *
 * @throws Error if the sheet itself is at fault: a symbol that is not known yet, a result that is not of its unit.
 */
export function evaluateSheet<Input>(sheet: Sheet<Input>, read: Reading, change: SheetChange = {}): Worked {
  const known = plainly.get(read) ?? work(sheet, read, {}, undefined);
  plainly.set(read, known);
  const { givens, steps, rounded } = change;
  return givens === undefined && steps === undefined && rounded === undefined ? known.worked : work(sheet, read, change, known).worked;
}

function work<Input>(sheet: Sheet<Input>, read: Reading, change: SheetChange, known: Plain | undefined): Plain {
  const scope: Record<string, Measured> = {};
  const moved = new Set<string>();
  const given = (list: readonly WorkedGiven[], before: Plain | undefined): readonly WorkedGiven[] => {
    for (const { symbol, value, unit } of list) scope[symbol] = before?.scope[symbol] ?? measured(value, unit);
    return list;
  };
  const stated = given(known?.stated ?? givensOf(sheet, read, false), known).map((figure): WorkedGiven => {
    const formula = change.givens?.[figure.template];
    if (formula === undefined) return figure;
    moved.add(figure.symbol);
    return { ...figure, value: evaluateTo(formulaOf(formula.replaceAll('#', String(figure.number ?? 0))), scope, figure.unit) };
  });
  for (const { symbol, value, unit } of stated) if (moved.has(symbol)) scope[symbol] = measured(value, unit);

  // What the sheet finds, it finds anew from givens that were mistaken; nothing of the plain working holds then.
  const isFoundAnew = sheet.find !== undefined && (known === undefined || moved.size > 0);
  const reading = isFoundAnew ? (sheet.find?.(moved.size > 0 ? restated(read, stated) : read) ?? read) : (known?.reading ?? read);
  const base = isFoundAnew ? undefined : known;
  const givens = sheet.find === undefined ? stated : [...stated, ...given(givensOf(sheet, reading, true), base)];

  const steps: WorkedStep[] = [];
  let noAt: string | undefined;
  const run = (
    list: readonly SheetStep[],
    missed?: { readonly each: string | undefined; readonly row: ReadingRow | undefined },
  ): string | undefined => {
    for (const { item, row, index, ...step } of linesOf(list, reading)) {
      // Of the list in which a row gave way, only that row is explained.
      if (missed?.row !== undefined && item.each === missed.each && row !== missed.row) continue;
      const { rounded } = change;
      const before = base?.steps.get(step.symbol);
      const mistaken = change.steps?.[item.symbol];
      const isRounded = rounded?.symbol === step.symbol;
      if (before !== undefined && mistaken === undefined && !isRounded && !before.parsed.symbols.some((symbol) => moved.has(symbol))) {
        steps.push(before);
        scope[step.symbol] = base?.scope[step.symbol] as Measured;
        continue;
      }
      // A list is written out of the rows that there are: some may have been left out.
      const written = mistaken === undefined && !item.formula.includes('[') ? before : undefined;
      const formula = written?.formula ?? writtenOut(mistaken ?? item.formula, index, scope, row?.links);
      const parsed = written?.parsed ?? formulaOf(formula);
      let value = change.heedless === true ? unlessFaulty(parsed, scope, item.unit) : evaluateTo(parsed, scope, item.unit);
      if (value === undefined) {
        moved.add(step.symbol);
        continue;
      }
      if (isRounded) value = Number(value.toPrecision(rounded.figures));
      if (value !== before?.value) moved.add(step.symbol);
      steps.push({ ...step, formula, parsed, value });
      scope[step.symbol] = measured(value, item.unit);
      if (item.no !== undefined && value < 0 && change.heedless !== true) {
        noAt = step.symbol;
        return endIn(item.no, item.each, row);
      }
    }
    return undefined;
  };
  const endIn = (no: SheetNo, each: string | undefined, row: ReadingRow | undefined): string => {
    run(no.steps, { each, row });
    return no.says.replaceAll('@', () => oneLine(row?.label ?? ''));
  };
  const no = run(sheet.steps);
  const why = no ?? reading.no;
  const { passes } = reading;
  const worked = {
    givens,
    steps,
    ...(passes === undefined ? {} : { passes }),
    ...(why === undefined ? {} : { no: why }),
    ...(noAt === undefined ? {} : { noAt }),
  };
  return { worked, reading, stated, scope, steps: new Map(steps.map((step) => [step.symbol, step])) };
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
