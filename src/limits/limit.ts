/** A limit as one record: literals and pure functions, so that whoever needs one limit carries one limit. @module */
import type { Ohms, Volts } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';
import type { Load } from './load.ts';

/** The verdict that a check belongs to: power arrives, the cabling is a channel of its standard, the bundle stays cool, the readings agree. */
export type Aspect = 'power' | 'cabling' | 'heat' | 'measured';

/** The unit of a check's value, limit and margin. */
export type CheckUnit = 'W' | 'V' | 'A' | 'Ω' | 'm' | '°C' | 'K' | 'AWG' | '1';

/** What a value is held against, and how. The figure itself, the bound, comes with what is judged. */
export interface Limit<Name extends string = string> {
  readonly name: Name;
  readonly aspect: Aspect;
  readonly unit: CheckUnit;
  /** On which side of the bound a value is good: at most the bound, unless this says otherwise. */
  readonly side?: 'at least';
  /** Met or not: a narrow pass is a plain one. */
  readonly neverMarginal?: true;
  /** Chosen, not approached: it decides about a run only where it is not met. */
  readonly keptOrNot?: true;
  /** About what flows and arrives: there is nothing to judge where the line does not carry the load. */
  readonly aboutArrival?: true;
  /** Where the limit comes from, unless its bound says otherwise. */
  readonly source: SourceKey;
  /** The most resistance of the circuit at which the bound is still met; `undefined` where nothing bounds it, `NO_LINE` where not even 0 Ω is good. [Ω] */
  readonly asResistance?: (supplyVoltage: Volts, load: Load, bound: number, unit?: CheckUnit) => Ohms | undefined;
}

/** What is said of a limit. `{value}`, `{limit}`, `{class}`, `{standard}` and the like stand for figures and names. */
export interface LimitWords {
  readonly title: string;
  /** What it is about, within a sentence: the limit on this. */
  readonly subject: string;
  /** Why it is not met, as the end of a sentence. */
  readonly fails: string;
  /** The same where the case is another: a port that grants less, a limit in ohms, a figure that may be read two ways. */
  readonly failsElse?: string;
  /** What it takes where no single change is enough. */
  readonly wayOut: string;
}
