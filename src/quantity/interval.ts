/** A figure that is known between two bounds. @module */
import { InputError } from './input-error.ts';

/** Two bounds and everything between. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** Two bounds, and the figure that nothing but the arithmetic moves. */
export interface BoundedFigure extends Interval {
  readonly value: number;
}

/** Both bounds of a figure that may be one number; each passes the guard. @internal */
export function intervalOf(given: number | Interval, parameter: string, guard: (value: number, parameter: string) => void): Interval {
  if (typeof given !== 'object' || given === null || Array.isArray(given)) {
    guard(given as number, parameter);
    return { low: given as number, high: given as number };
  }
  guard(given.low, `${parameter}.low`);
  guard(given.high, `${parameter}.high`);
  if (given.low > given.high) throw new InputError('conflict', `${parameter}.high`, `at least ${given.low}, the low bound`, given.high);
  return { low: given.low, high: given.high };
}
