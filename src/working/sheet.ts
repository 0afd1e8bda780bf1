/** What a formula sheet is: one calculation as data, and the reading of a core function's input into its givens. @module */
import type { SourceKey } from '../sources/sources.ts';
import type { SlipName } from './slip-words.ts';
import type { WorkingUnit } from './working-unit.ts';

/** What givens and steps have in common. */
export interface SheetFigure {
  /** As the formulas call it; `#` is the number of the row where the figure is one of a list. */
  readonly symbol: string;
  /** `@` is the label of the row. */
  readonly meaning: string;
  readonly unit: WorkingUnit;
  readonly latex: string;
  /** Only where the reading names this case. */
  readonly when?: string;
  /** Once for each row of this list. */
  readonly each?: string;
  /** Of a list that is shown as a table: how the formula of any row reads, where its own names other rows. */
  readonly general?: { readonly formula: string; readonly latex: string };
}

/** A figure that is stated, or looked up in a published table. */
export interface SheetGiven extends SheetFigure {
  /** What the input of the core function calls it, or the table it is read from; `@` is what it calls the row. */
  readonly core: string;
  /** Where a figure that the caller does not state comes from; `row`: the row says, or the reading where there is no row. */
  readonly source?: SourceKey | 'row';
  /** Whether no formula gives it: then the sheet finds it, pass by pass, from the other givens. */
  readonly found?: boolean;
}

/** A figure that is computed. */
export interface SheetStep extends SheetFigure {
  /**
   * In mathjs notation; `[R_#]` stands for `R_1 + R_2 + ...`, `[L_#,]` for `L_1, L_2, ...`, and of a row that is linked to others
   * `<below>` for what its link of that name says.
   */
  readonly formula: string;
  /** Where the rule comes from; `row`: the row says. */
  readonly source: SourceKey | 'row';
  /** What the result of the core function calls it; `@` is what it calls the row, `<low>` what the row's link of that name says, if it has it. */
  readonly core?: string;
  /** Of a least, or a greatest, of a list, or of two: the symbols of the lists. The label of the row that governs is then added to the meaning. */
  readonly least?: readonly string[];
  /** What it means where the figure is under 0. */
  readonly no?: SheetNo;
  /** A caution, where the figure is under 0. */
  readonly beware?: string;
  /** Of a last step that is the upper end of a range: the lower end, by its symbol, and what lies between. */
  readonly range?: { readonly low: string; readonly meaning: string };
}

/** A physical no: said in words, explained by a last step or two, and then the working ends. */
export interface SheetNo {
  readonly says: string;
  readonly steps: readonly SheetStep[];
}

/** A wrong sheet: a well-known slip as the formulas that it puts in place of the right ones. */
export interface SheetSlip {
  readonly slip: SlipName;
  /** Only where the reading names this case. */
  readonly when?: string;
  /** Givens that are taken for another figure, each as a formula of the givens. */
  readonly givens?: Readonly<Record<string, string>>;
  /** Steps that are reckoned otherwise. */
  readonly steps?: Readonly<Record<string, string>>;
}

/** Lists whose rows stand side by side. */
export interface SheetTable {
  readonly title: string;
  /** The heading over the labels of the rows. */
  readonly row: string;
  readonly lists: readonly string[];
}

/** Figures by their symbol. */
export type Figures = Readonly<Record<string, number>>;

/** Where givens come from, by their symbol: that of a conductor is its own, or none where the caller stated it. */
export type FigureSources = Readonly<Record<string, SourceKey | undefined>>;

/** One row of a list: a piece of cable, a limit, the ports of one class. */
export interface ReadingRow {
  readonly label: string;
  readonly values: Figures;
  readonly cases?: readonly string[];
  readonly source?: SourceKey;
  /** Of givens that come from elsewhere than the row. */
  readonly sources?: FigureSources;
  /** Its number, where that is not its place in the list, counted from 1. */
  readonly number?: number;
  /** What stands for `@` in what the core calls its figures; its place in the list, counted from 0, if absent. */
  readonly core?: string;
  /** Pieces of formulas about other rows, and names that the core has for figures of this one, by the name of the link. */
  readonly links?: Readonly<Record<string, string>>;
}

/** Figures that are found by going round: what each pass came to. */
export interface ReadingPasses {
  readonly title: string;
  /** How one pass follows from the one before, and where it ends. */
  readonly says: string;
  readonly columns: readonly SheetFigure[];
  readonly rows: readonly { readonly label: string; readonly values: readonly number[] }[];
}

/** What an input comes to on its sheet. */
export interface Reading {
  readonly values: Figures;
  /** Where givens come from of which the sheet says `row` and that are in no row. */
  readonly sources?: FigureSources;
  /** Which of the sheet's cases apply. */
  readonly cases?: readonly string[];
  readonly rows?: Readonly<Record<string, readonly ReadingRow[]>>;
  /** How the figures were found that no formula gives outright. */
  readonly passes?: ReadingPasses;
  /** What was taken for granted, beyond what the sheet always assumes. */
  readonly assumptions?: readonly string[];
  /** Cautions that go with this input alone. */
  readonly cautions?: readonly string[];
  /** Why there is no answer, where no formula says so. */
  readonly no?: string;
  /** Whether no figure explains that: the words say it all. */
  readonly isPlainNo?: boolean;
}

/** One calculation. */
export interface Sheet<Input> {
  readonly title: string;
  /** In which room of the core the same result is computed, and by which function. */
  readonly core: string;
  /** What the command takes for it. */
  readonly keys: readonly string[];
  readonly givens: readonly SheetGiven[];
  readonly steps: readonly SheetStep[];
  /** Lists that are shown as one table, each a row of it by its number, rather than line by line. */
  readonly tables?: readonly SheetTable[];
  readonly assumptions: readonly string[];
  readonly validity: string;
  readonly cautions: readonly string[];
  readonly slips: readonly SheetSlip[];
  /** Refuses what the core function refuses. The figures of the working never come from what this returns. */
  readonly guard: (input: Input) => unknown;
  readonly read: (input: Input) => Reading;
  /** The reading with the figures that no formula gives; a slip in a given is then found anew. */
  readonly find?: (reading: Reading) => Reading;
}
