/** A value held against a limit: the one shape of every check. @module */
import type { Ohms } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';
import type { LimitName } from './all.ts';
import type { Aspect, CheckUnit } from './limit.ts';
import type { Verdict } from './verdict.ts';

/** The name of a check, and of the limit it holds a value against. */
export type CheckName = LimitName;

/** An input that would settle an `uncertain` verdict, and where it turns. */
export interface Deciding {
  /** Path of the input, as in `maximumResistance.loop`. */
  readonly parameter: string;
  /** The value at which the verdict turns, in `unit`. */
  readonly turnsAt?: number;
  readonly unit?: string;
}

/** One value held against one limit. */
export interface Check {
  readonly name: CheckName;
  /** The verdict of a run that this check belongs to. */
  readonly aspect: Aspect;
  readonly value: number;
  /** The limit that was applied. */
  readonly limit: number;
  /** The limit as printed in its source, where that differs from the one applied. */
  readonly published?: number;
  readonly unit: CheckUnit;
  /** How far the value is on the good side of the limit; negative on the bad side. In `unit`. */
  readonly margin: number;
  /** The margin as a fraction of the limit. */
  readonly marginFraction: number;
  readonly verdict: Verdict;
  /** The inputs any one of which would settle an `uncertain` verdict. */
  readonly deciding?: readonly Deciding[];
  /** The same limit as the most resistance of the circuit that power sees, and what is left of it; absent where resistance plays no part. [Ω] */
  readonly loop?: { readonly limit: Ohms; readonly margin: Ohms };
  /** A limit that does not say which loop it means, read both ways. [Ω] */
  readonly readings?: { readonly pairLoop: Ohms; readonly twoPair: Ohms };
  readonly source: SourceKey;
}

/** A result while it is being put together. @internal */
export type Draft<T> = T extends unknown ? { -readonly [K in keyof T]: T[K] } : never;
