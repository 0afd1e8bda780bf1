/** A sheet worked through: rows written out, slips put in where they are asked for, every step evaluated with units. @module */
import { evaluateTo, type Formula, formulaOf, type Measured, measured } from './formula.ts';
import { givensOf, linesOf, oneLine, type ReadInput, writtenOut } from './lines.ts';
import type { Mistaken, ReadingRow, Sheet, Steps } from './sheet.ts';
import type { Worked, WorkedGiven, WorkedStep } from './worked.ts';
import type { WorkingUnit } from './working-unit.ts';

/** What is done otherwise than on the sheet. */
export interface SheetChange {
  readonly mistaken?: Mistaken;
  /** A step, by its symbol on the page, that is rounded before it is used. */
  readonly rounded?: { readonly symbol: string; readonly figures: number };
}

type Scope = Readonly<Record<string, Measured>>;

/** A sheet as it was worked, with all that a change of it can take over. */
interface Known {
  readonly worked: Worked;
  readonly reading: ReadInput;
  readonly stated: readonly WorkedGiven[];
  readonly scope: Scope;
  readonly steps: ReadonlyMap<string, WorkedStep>;
}

const knownByReading = new WeakMap<ReadInput, Known>();

/**
 * Works a sheet through; of a change to it, only what follows from the change is worked anew. A changed sheet goes on past a no
 * and past what cannot be worked, as one does who does not look: such steps are left out.
 *
 * @throws Error if the sheet itself is at fault: a symbol that is not known yet, a result that is not of its unit.
 */
export function evaluateSheet<Input>(sheet: Sheet<Input>, read: ReadInput, change?: SheetChange): Worked {
  const known = knownByReading.get(read) ?? work(sheet, read, {}, undefined);
  knownByReading.set(read, known);
  return change === undefined ? known.worked : work(sheet, read, change, known).worked;
}

function work<Input>(sheet: Sheet<Input>, read: ReadInput, { mistaken = {}, rounded }: SheetChange, known: Known | undefined): Known {
  const isChanged = known !== undefined;
  const evaluated = (formula: Formula, unit: WorkingUnit): number | undefined => {
    try {
      return evaluateTo(formula, scope, unit);
    } catch (error) {
      if (!isChanged) throw error;
      return undefined;
    }
  };
  const scope: Record<string, Measured> = {};
  const moved = new Set<string>();
  const enter = (list: readonly WorkedGiven[], before: Known | undefined): readonly WorkedGiven[] => {
    for (const { symbol, value, unit } of list) scope[symbol] = before?.scope[symbol] ?? measured(value, unit);
    return list;
  };
  const stated = enter(known?.stated ?? givensOf(sheet, read, false), known).map((figure): WorkedGiven => {
    const formula = mistaken[figure.template];
    if (formula === undefined) return figure;
    const value = evaluated(formulaOf(formula.replaceAll('#', String(figure.number ?? 0))), figure.unit);
    if (value === undefined) return figure;
    moved.add(figure.symbol);
    return { ...figure, value };
  });
  for (const { symbol, value, unit } of stated) if (moved.has(symbol)) scope[symbol] = measured(value, unit);

  // What the sheet finds, it finds anew from givens that were mistaken; nothing of the sheet as it was worked holds then.
  const isFoundAnew = sheet.find !== undefined && (!isChanged || moved.size > 0);
  const figures = Object.fromEntries(stated.map(({ symbol, value }) => [symbol, value]));
  const reading: ReadInput = isFoundAnew ? { ...read, ...sheet.find?.(read, figures) } : (known?.reading ?? read);
  const base = isFoundAnew ? undefined : known;
  const givens = [...stated, ...enter(givensOf(sheet, reading, true), base)];

  const steps: WorkedStep[] = [];
  let noAt: string | undefined;
  /** The words of the no that ended it, if one did. */
  const run = (list: Steps, each?: string, only?: ReadingRow): string | undefined => {
    for (const { item, row, index, ...step } of linesOf(list, reading)) {
      // Of the list in which a row gave way, only that row is explained.
      if (only !== undefined && item.each === each && row !== only) continue;
      const before = base?.steps.get(step.symbol);
      const wrong = mistaken[item.symbol];
      const isRounded = rounded?.symbol === step.symbol;
      if (before !== undefined && wrong === undefined && !isRounded && !before.parsed.symbols.some((symbol) => moved.has(symbol))) {
        steps.push(before);
        scope[step.symbol] = base?.scope[step.symbol] as Measured;
        continue;
      }
      // A list is written out of the rows that there are: some may have been left out.
      const same = wrong === undefined && !item.formula.includes('[') ? before : undefined;
      const formula = same?.formula ?? writtenOut(wrong ?? item.formula, index, scope, row?.links);
      const parsed = same?.parsed ?? formulaOf(formula);
      const exact = evaluated(parsed, item.unit);
      if (exact === undefined) {
        moved.add(step.symbol);
        continue;
      }
      const value = isRounded ? Number(exact.toPrecision(rounded.figures)) : exact;
      if (item.no?.isQuiet === true && value >= 0 && before === undefined) continue;
      if (value !== before?.value) moved.add(step.symbol);
      steps.push({ ...step, formula, parsed, value });
      scope[step.symbol] = measured(value, item.unit);
      if (item.no !== undefined && value < 0 && !isChanged) {
        noAt = step.symbol;
        run(item.no.steps, item.each, row);
        return item.no.says.replaceAll('@', () => oneLine(row?.label ?? ''));
      }
    }
    return undefined;
  };
  const no = run(sheet.steps) ?? reading.no;
  const used = new Set(steps.flatMap(({ parsed }) => parsed.symbols));
  const worked = {
    givens: givens.filter(({ symbol, ifUsed }) => ifUsed !== true || used.has(symbol)),
    steps,
    passes: reading.passes,
    no,
    noAt,
  };
  return { worked, reading, stated, scope, steps: new Map(steps.map((step) => [step.symbol, step])) };
}
