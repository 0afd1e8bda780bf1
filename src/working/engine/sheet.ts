/** What a formula sheet is: one calculation as data, and the reading of a core function's input into its givens. @module */
import type { SourceKey } from '../../sources/sources.ts';
import type { SlipName } from './slip-words.ts';
import type { WithCables } from './with-cables.ts';
import type { WorkingUnit } from './working-unit.ts';

/** A case of a sheet, or two that must both apply, as in `bounded, constant power`. */
export type When<Case extends string = string> = Case | `${Case}, ${Case}`;

/** A given or a step. */
export interface SheetFigure<Case extends string = string> {
  /** As the formulas call it; `#` is the number of the row where the figure is one of a list. */
  readonly symbol: string;
  /** `@` is the label of the row. */
  readonly meaning: string;
  readonly unit: WorkingUnit;
  readonly latex: string;
  /** Only where this case applies. */
  readonly when?: When<Case>;
  /** Once for each row of this list. */
  readonly each?: string;
  /** Of a list that is shown as a table: how the formula of any row reads, where its own names other rows. */
  readonly general?: { readonly formula: string; readonly latex: string };
}

/** A figure that is stated, or looked up in a published table. */
export interface SheetGiven<Case extends string = string> extends SheetFigure<Case> {
  /** Where the input of the core function has it (a number that stands there is read from there), or the table it is read from. */
  readonly core: string;
  /** A constant, or the default where the input says nothing. */
  readonly value?: number;
  /** Where a figure that the caller does not state comes from; `row`: the row says, or the reading where there is no row. */
  readonly source?: SourceKey | 'row';
  /** Whether it is shown only where a step that is shown uses it. */
  readonly ifUsed?: boolean;
  /** Whether no formula gives it: then the sheet finds it, pass by pass, from the other givens. */
  readonly found?: boolean;
}

/** A figure that is computed. */
export interface SheetStep<Case extends string = string> extends SheetFigure<Case> {
  /**
   * In mathjs notation; `[R_#]` stands for `R_1 + R_2 + ...`, `[L_#,]` for `L_1, L_2, ...`, and of a row that is linked to others
   * `<below>` for what its link of that name says.
   */
  readonly formula: string;
  /** Where the rule comes from; `row`: the row says. */
  readonly source: SourceKey | 'row';
  /** What the result of the core function calls it; `@` is what it calls the row, `<low>` what the row's link of that name says, if it has it. */
  readonly core?: string;
  /** Of a least, or a greatest, of lists: the symbols of the lists. The label of the row that governs ends the meaning; its place in the list, counted from 0, stands for `@` in `core`. */
  readonly least?: readonly string[];
  /** What it means where the figure is under 0. */
  readonly no?: SheetNo<Case>;
  /** A caution, where the figure is under 0. */
  readonly beware?: string;
  /** Of a last step that is the upper end of a range: the lower end, by its symbol, and what lies between. */
  readonly range?: { readonly low: string; readonly meaning: string };
}

/** Givens, and steps, that sheets share. */
export type Givens<Case extends string = string> = readonly SheetGiven<Case>[];
export type Steps<Case extends string = string> = readonly SheetStep<Case>[];

/** A physical no: said in words, explained by a last step or two, and then the working ends. */
export interface SheetNo<Case extends string = string> {
  readonly says: string;
  readonly steps: readonly SheetStep<Case>[];
  /** Whether the step that says so is shown only then. */
  readonly isQuiet?: boolean;
}

/** Formulas that stand in place of the right ones, by symbol: of a step, or of a given that is taken for another figure. */
export type Mistaken = Readonly<Record<string, string>>;

/** A well-known slip as a wrong sheet: its name, the formulas that it puts in place, and the case in which it can be made. */
export type SlipRow<Case extends string = string> = readonly [slip: SlipName, mistaken: Mistaken, when?: When<Case>];

/** Lists whose rows stand side by side: the title, the heading over the labels of the rows, the lists. */
export type TableRow = readonly [title: string, row: string, ...lists: string[]];

/** Figures by their symbol. */
export type Figures = Readonly<Record<string, number>>;

/** Where givens come from, by their symbol: that of a conductor is its own, or none where the caller stated it. */
export type FigureSources = Readonly<Record<string, SourceKey | undefined>>;

/** Items of which those that do not apply are false or undefined. */
export type Some<Item> = readonly (Item | false | undefined)[];

/** One row of a list: a piece of cable, a limit, the ports of one class. */
export interface ReadingRow<Case extends string = string> {
  readonly label: string;
  readonly values?: Figures;
  readonly cases?: Some<Case>;
  readonly source?: SourceKey | undefined;
  /** Of givens that come from elsewhere than the row. */
  readonly sources?: FigureSources;
  /** Its number, where that is not its place in the list, counted from 1. */
  readonly number?: number;
  /** What stands for `@` in what the core calls its figures; its place in the list, counted from 0, if absent. */
  readonly core?: string;
  /** Pieces of formulas about other rows, and names that the core has for figures of this one, by the name of the link. */
  readonly links?: Readonly<Record<string, string | undefined>>;
}

/** Rows by the name of their list. */
export type ReadingRows<Case extends string = string> = Readonly<Record<string, readonly ReadingRow<Case>[]>>;

/** Figures that are found by going round: what each pass came to. */
export interface ReadingPasses {
  readonly title: string;
  /** How one pass follows from the one before, and where it ends. */
  readonly says: string;
  readonly columns: readonly SheetFigure[];
  readonly rows: readonly { readonly label: string; readonly values: readonly number[] }[];
}

/** What an input comes to on its sheet. */
export interface Reading<Case extends string = string> {
  /** Figures that do not stand in the input as they are. */
  readonly values?: Figures;
  /** Where givens come from of which the sheet says `row` and that are in no row. */
  readonly sources?: FigureSources;
  /** Which of the sheet's cases apply. */
  readonly cases?: Some<Case>;
  readonly rows?: ReadingRows<Case>;
  /** How the figures were found that no formula gives outright. */
  readonly passes?: ReadingPasses | undefined;
  /** What was taken for granted, beyond what the sheet always assumes. */
  readonly assumptions?: Some<string>;
  /** Cautions that go with this input alone. */
  readonly cautions?: Some<string>;
  /** Why there is no answer, where no formula says so. */
  readonly no?: string | undefined;
  /** Whether no figure explains that: the words say it all. */
  readonly isPlainNo?: boolean;
}

/** One calculation. */
export interface Sheet<Input, Case extends string = string, Answer = unknown> {
  readonly title: string;
  /** The function of the core with the same result, if its name is another. */
  readonly core?: string;
  /** The keys of the command that it cannot do without; of keys with `|` between them, one. */
  readonly needs?: readonly string[];
  /** Those that it takes besides. */
  readonly keys?: readonly string[];
  readonly givens: readonly SheetGiven<Case>[];
  readonly steps: readonly SheetStep<Case>[];
  /** Lists that are shown as one table, each a row of it by its number, rather than line by line. */
  readonly tables?: readonly TableRow[];
  readonly assumptions: readonly string[];
  readonly validity: string;
  readonly cautions?: readonly string[];
  readonly slips: readonly SlipRow<Case>[];
  /** Refuses what the core function refuses. The figures of the working never come from what this returns. */
  readonly guard: (input: Input) => Answer;
  /** What does not stand in the input as it is; for most sheets, which cases apply. The answer of the guard tells what the core calls a figure. */
  read(input: WithCables<Input>, answer: Answer): Reading<Case>;
  /** The reading with the figures that no formula gives, from the givens by their symbols; where a given was mistaken, they are found anew. */
  find?(reading: Reading<Case>, stated: Figures): Reading<Case>;
}
