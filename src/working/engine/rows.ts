/** Figures of a sheet, one a row: the notation in which the book is written. @module */
import type { Sheet, SheetGiven, SheetStep, When } from './sheet.ts';
import { texOf } from './tex-of.ts';
import type { WorkingUnit } from './working-unit.ts';

/** What a row may say besides: the case by its name, LaTeX where it does not follow from the symbol. */
type More<Figure, Case extends string> = Partial<Omit<Figure, 'symbol' | 'unit' | 'meaning' | 'formula' | 'when'>> & {
  readonly when?: When<Case>;
};
type MoreGiven<Case extends string> = More<SheetGiven<Case>, Case>;
type MoreStep<Case extends string> = More<SheetStep<Case>, Case>;

/** Symbol, unit, what it is, where the input has it. */
export type GivenRow<Case extends string> = readonly [
  symbol: string,
  unit: WorkingUnit,
  meaning: string,
  core: string,
  more?: MoreGiven<Case>,
];
/** Symbol, unit, formula, what it is; the rule is from `circuit-laws` unless the row says otherwise. */
export type StepRow<Case extends string> = readonly [
  symbol: string,
  unit: WorkingUnit,
  formula: string,
  meaning: string,
  more?: MoreStep<Case>,
];

/** Figures of a sheet from top to bottom: rows, and groups that sheets share. */
export type Rows<Row, Figure> = readonly (Row | Figure | readonly Figure[])[];

/** Rows and groups of figures as one list. */
function listed<Row extends readonly unknown[], Figure extends object>(rows: Rows<Row, Figure>, figure: (row: Row) => Figure): Figure[] {
  return rows.flatMap((item) =>
    Array.isArray(item) && typeof item[0] === 'string' ? figure(item as unknown as Row) : (item as Figure | readonly Figure[]),
  );
}

/** A sheet as the engine reads it. */
export function sheetOf<Input, Case extends string>({ givens: given, steps: step, ...sheet }: BookSheet<Input, Case>): Sheet<Input, Case> {
  return {
    ...sheet,
    givens: listed(given, (row) => givens([row])[0] as SheetGiven<Case>),
    steps: listed(step, (row) => steps([row])[0] as SheetStep<Case>),
  };
}

/** A sheet as the book has it: figures are rows. */
export interface BookSheet<Input, Case extends string = string, Answer = unknown>
  extends Omit<Sheet<Input, Case, Answer>, 'givens' | 'steps'> {
  readonly givens: Rows<GivenRow<Case>, SheetGiven<Case>>;
  readonly steps: Rows<StepRow<Case>, SheetStep<Case>>;
}

/** Givens, one a row, and what all of them have in common. */
export function givens<Case extends string = never>(rows: readonly GivenRow<Case>[], all?: MoreGiven<Case>): SheetGiven<Case>[] {
  return rows.map(([symbol, unit, meaning, core, more]) => ({ symbol, unit, meaning, core, latex: texOf(symbol), ...all, ...more }));
}

/** Steps, one a row, and what all of them have in common. */
export function steps<Case extends string = never>(rows: readonly StepRow<Case>[], all?: MoreStep<Case>): SheetStep<Case>[] {
  return rows.map(([symbol, unit, formula, meaning, more]) => ({
    symbol,
    unit,
    formula,
    meaning,
    latex: texOf(symbol),
    source: 'circuit-laws',
    ...all,
    ...more,
  }));
}

/** One given. */
export function given<Case extends string = never>(...row: GivenRow<Case>): SheetGiven<Case> {
  return givens([row])[0] as SheetGiven<Case>;
}

/** One step. */
export function step<Case extends string = never>(...row: StepRow<Case>): SheetStep<Case> {
  return steps([row])[0] as SheetStep<Case>;
}

/** The same figures under a case, or of a list. */
export function all<Figure extends SheetGiven | SheetStep, const More extends object>(
  figures: readonly Figure[],
  more: More,
): (Omit<Figure, keyof More> & More)[] {
  return figures.map((figure) => ({ ...figure, ...more }));
}
