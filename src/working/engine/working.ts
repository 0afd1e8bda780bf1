/** What a worked example is, as plain data. @module */
import type { SourceKey } from '../../sources/sources.ts';
import type { WorkingUnit } from './working-unit.ts';

/** A figure that the working starts from. */
export interface WorkingGiven {
  /** As the formulas call it. */
  readonly symbol: string;
  readonly meaning: string;
  /** In `unit`. */
  readonly value: number;
  readonly unit: WorkingUnit;
  /** The figure as a person writes it, with its unit. */
  readonly shown: string;
  /** What the input calls it, or the table it was read from. */
  readonly core: string;
  /** Absent where the caller stated it. */
  readonly source?: SourceKey;
  /** Whether `shown` has fewer figures than `value`. */
  readonly rounded: boolean;
  /** Where it stands in one of the tables: which. */
  readonly table?: number;
  readonly latex: { readonly symbol: string; readonly value: string };
}

/** One line of the working. */
export interface WorkingStep {
  readonly symbol: string;
  readonly meaning: string;
  /** In mathjs notation, with symbols. */
  readonly formula: string;
  /** The same with the figures, and their units, in place of the symbols. */
  readonly substituted: string;
  /** Every digit that came out, in `unit`; nothing on the way was rounded. */
  readonly value: number;
  readonly unit: WorkingUnit;
  /** The figure as a person writes it, with its unit. */
  readonly shown: string;
  /** Whether `shown` has fewer figures than `value`. */
  readonly rounded: boolean;
  /** Where the rule comes from. */
  readonly source: SourceKey;
  /** What the result of the core function calls it, where it has it. */
  readonly core?: string;
  /** Where it stands in one of the tables: which. */
  readonly table?: number;
  readonly latex: { readonly symbol: string; readonly formula: string; readonly substituted: string; readonly value: string };
}

/** What one column of a table holds. */
export interface WorkingColumn {
  /** With `k` for the number of the row. */
  readonly symbol: string;
  readonly meaning: string;
  readonly unit: WorkingUnit;
  /** Absent where the figure is given, or was found pass by pass. */
  readonly formula?: string;
  /** Where its figures come from, row by row, each once; none where the caller stated them. */
  readonly sources: readonly SourceKey[];
  readonly latex: { readonly symbol: string; readonly formula?: string };
}

/** One figure of a table, in the unit of its column. */
export interface WorkingCell {
  readonly value: number;
  /** As a person writes it, without its unit. */
  readonly shown: string;
  readonly latex: string;
}

/** Figures that stand side by side: the rows of a list, or the passes by which a figure was found. */
export interface WorkingTable {
  readonly title: string;
  /** What is said below it, if anything. */
  readonly says?: string;
  /** The heading over the labels of the rows. */
  readonly row: string;
  readonly columns: readonly WorkingColumn[];
  /** `null` where a row has no such figure. */
  readonly rows: readonly { readonly label: string; readonly cells: readonly (WorkingCell | null)[] }[];
}

/** A figure that was asked for. */
export interface WorkingResult {
  readonly symbol: string;
  readonly meaning: string;
  /** In `unit`. */
  readonly value: number;
  readonly unit: WorkingUnit;
  /** The figure as a person writes it, with its unit. */
  readonly shown: string;
  /** What the result of the core function calls it. */
  readonly core?: string;
}

/** A worked example. */
export interface Working {
  /** The calculation, as the core function is called. */
  readonly name: string;
  readonly title: string;
  /** Whether there is such an answer at all. */
  readonly feasible: boolean;
  /** Where there is none: why, in words. The last step is then the figure that explains it. */
  readonly no?: string;
  readonly givens: readonly WorkingGiven[];
  readonly steps: readonly WorkingStep[];
  /** Givens and steps of long lists, side by side; a table of passes has figures that are no steps. Empty for most. */
  readonly tables: readonly WorkingTable[];
  /** The last step. */
  readonly result: WorkingResult;
  /** Where the answer is a range: its ends, of which `result` is the upper one, and what lies between. */
  readonly range?: { readonly meaning: string; readonly low: WorkingStep; readonly high: WorkingStep };
  /** Set where no figure explains a no: `result` is then only the last line before it. */
  readonly isPlainNo?: true;
  /** Every step that the core function reports as well. */
  readonly results: readonly WorkingResult[];
  readonly assumptions: readonly string[];
  /** Where the formulas hold. */
  readonly validity: string;
  readonly cautions: readonly string[];
}
