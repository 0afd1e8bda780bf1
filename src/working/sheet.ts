/** What a formula sheet is: one calculation as data, and the reading of a core function's input into its givens. @module */
import type { SourceKey } from '../sources/sources.ts';
import type { SlipName } from './slip-words.ts';
import type { WorkingUnit } from './working-unit.ts';

/** What givens and steps have in common. */
interface SheetFigure {
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
}

/** A figure that is stated, or looked up in a published table. */
export interface SheetGiven extends SheetFigure {
  /** What the input of the core function calls it, or the table it is read from. */
  readonly core: string;
  /** Where a figure that the caller does not state comes from; `row`: the row says. */
  readonly source?: SourceKey | 'row';
}

/** A figure that is computed. */
export interface SheetStep extends SheetFigure {
  /** In mathjs notation; `[R_#]` stands for `R_1 + R_2 + ...`, `[L_#,]` for `L_1, L_2, ...`. */
  readonly formula: string;
  /** Where the rule comes from; `row`: the row says. */
  readonly source: SourceKey | 'row';
  /** What the result of the core function calls it. */
  readonly core?: string;
  /** Of a least of a list: the symbol of the list. The label of the row that governs is then added to the meaning. */
  readonly least?: string;
  /** What it means where the figure is under 0. */
  readonly no?: SheetNo;
}

/** A physical no: said in words, explained by a last step or two, and then the working ends. */
export interface SheetNo {
  readonly says: string;
  readonly steps: readonly SheetStep[];
}

/** A wrong sheet: a well-known slip as the formulas that it puts in place of the right ones. */
export interface SheetSlip {
  readonly slip: SlipName;
  /** Givens that are taken for another figure, each as a formula of the givens. */
  readonly givens?: Readonly<Record<string, string>>;
  /** Steps that are reckoned otherwise. */
  readonly steps?: Readonly<Record<string, string>>;
}

/** Figures by their symbol. */
export type Figures = Readonly<Record<string, number>>;

/** One row of a list: a piece of cable, a limit, the ports of one class. */
export interface ReadingRow {
  readonly label: string;
  readonly values: Figures;
  readonly cases?: readonly string[];
  readonly source?: SourceKey;
}

/** What an input comes to on its sheet. */
export interface Reading {
  readonly values: Figures;
  /** Which of the sheet's cases apply. */
  readonly cases?: readonly string[];
  readonly rows?: Readonly<Record<string, readonly ReadingRow[]>>;
  /** What was taken for granted, beyond what the sheet always assumes. */
  readonly assumptions?: readonly string[];
  /** Why there is no answer, where no formula says so. */
  readonly no?: string;
}

/** One calculation. */
export interface Sheet<Input> {
  readonly title: string;
  /** In which room of the core the same result is computed, and by which function. */
  readonly core: string;
  readonly givens: readonly SheetGiven[];
  readonly steps: readonly SheetStep[];
  readonly assumptions: readonly string[];
  readonly validity: string;
  readonly cautions: readonly string[];
  readonly slips: readonly SheetSlip[];
  /** Refuses what the core function refuses. The figures of the working never come from what this returns. */
  readonly guard: (input: Input) => unknown;
  readonly read: (input: Input) => Reading;
}
