/** What a worked example is, as plain data. @module */
import type { SourceKey } from '../sources/sources.ts';
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
  readonly latex: { readonly symbol: string; readonly formula: string; readonly substituted: string; readonly value: string };
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
  /** The last step. */
  readonly result: WorkingResult;
  /** Every step that the core function reports as well. */
  readonly results: readonly WorkingResult[];
  readonly assumptions: readonly string[];
  /** Where the formulas hold. */
  readonly validity: string;
  readonly cautions: readonly string[];
}
