/** A sheet worked through: givens and steps with their values. @module */
import type { SourceKey } from '../../sources/sources.ts';
import type { Formula } from './formula.ts';
import type { ReadingPasses, SheetGiven, SheetStep } from './sheet.ts';

/** A figure as it stands on the page. */
interface WorkedFigure {
  readonly value: number;
  /** The symbol on the sheet, before rows were numbered. */
  readonly template: string;
  /** Of a list: the number and the label of its row. */
  readonly number?: number;
  readonly label?: string;
}

/** A given as it stands on the page. */
export interface WorkedGiven extends Omit<SheetGiven, 'source' | 'value'>, WorkedFigure {
  readonly source?: SourceKey;
}

/** A step as it stands on the page. */
export interface WorkedStep extends Omit<SheetStep, 'source'>, WorkedFigure {
  readonly source: SourceKey;
  readonly parsed: Formula;
}

/** A sheet worked through to its result, or to its no. */
export interface Worked {
  readonly givens: readonly WorkedGiven[];
  readonly steps: readonly WorkedStep[];
  readonly passes: ReadingPasses | undefined;
  /** The words of a physical no; the last step then explains it. */
  readonly no: string | undefined;
  /** The symbol of the step that is under 0, if one is what says no. */
  readonly noAt: string | undefined;
}
