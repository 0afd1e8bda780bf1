/** Solving a run for the one quantity that is left open, with the run's own checks as the judges. @module */

import { COLLAPSE } from '../limits/all.ts';
import type { Check, CheckName } from '../limits/check.ts';
import type { CheckUnit } from '../limits/limit.ts';
import type { SourceKey } from '../sources/sources.ts';
import { passesAt } from './absent-checks.ts';
import { edge } from './edge.ts';

/** One limit of an answer. */
export interface AnyLimit {
  readonly limit: CheckName;
  /** Present where no value meets this limit: by how much it is missed at the best, in `unit`. */
  readonly shortfall?: number;
  readonly unit?: CheckUnit;
  readonly source: SourceKey;
}

/** One limit and the value it alone would allow. */
export interface UnknownLimit extends AnyLimit {
  /** The furthest value this limit allows; absent where it allows any, or none. In the unit of the quantity asked for. */
  readonly value?: number;
}

/** What was asked for, or that nothing bounds it, or that no value of it will do. */
export type Answered<Answer, L extends AnyLimit = UnknownLimit> =
  | ({
      readonly feasible: true;
      readonly unbounded?: undefined;
      /** The limit that bites first. */
      readonly governedBy: CheckName;
      readonly limits: readonly L[];
    } & Answer)
  | { readonly feasible: true; readonly unbounded: true; readonly limits: readonly L[] }
  | Unsolvable<L>;

/** The answer before it has a name. @internal */
export type Solved = Answered<{ readonly value: number }>;

/** No value of the quantity meets every limit. */
export interface Unsolvable<L extends AnyLimit = UnknownLimit> {
  readonly feasible: false;
  /** The limit that is missed even at the best value. */
  readonly governedBy: CheckName;
  /** By how much, in `unit`. */
  readonly shortfall: number;
  readonly unit: CheckUnit;
  readonly limits: readonly L[];
}

/** The answer that the first limit which no value meets gives; nothing where each has some. @internal */
export function unsolvable<L extends AnyLimit>(limits: readonly L[]): Unsolvable<L> | undefined {
  for (const { limit, shortfall, unit } of limits) {
    if (shortfall !== undefined && unit !== undefined) return { feasible: false, governedBy: limit, shortfall, unit, limits };
  }
  return undefined;
}

/**
 * The value furthest from `best` towards `worst` at which no check fails, to the last bit, and each check's own.
 *
 * Every check is monotone in the quantity, so each has one edge between the two ends; it is found by halving on the
 * check itself, and the value returned is the side of the edge that passes: put back, it passes. `landmarks`, in order
 * from `best` to `worst`, are where rules begin or end to speak.
 * @internal
 */
export function solveUnknown(
  best: number,
  worst: number,
  checksAt: (value: number) => readonly Check[],
  landmarks: readonly number[] = [],
): Solved {
  const memory = new Map<number, readonly Check[]>();
  const at = (value: number): readonly Check[] => {
    let checks = memory.get(value);
    if (checks === undefined) {
      checks = checksAt(value);
      memory.set(value, checks);
    }
    return checks;
  };
  const passes = (name: CheckName, value: number): boolean => passesAt(name, at(value));
  // Some rules only speak in part of the range, as those for warm cable do: all that speak at any stop are asked.
  const stops = [best, ...landmarks, worst];
  const named = new Map([...stops].reverse().flatMap((stop) => at(stop).map((check) => [check.name, check] as const)));
  const edges = new Map<CheckName, number>();
  for (const name of named.keys()) {
    const first = stops.findIndex((stop) => !passes(name, stop));
    if (first <= 0) continue;
    const [good, bad] = [stops[first - 1] as number, stops[first] as number];
    const found = edge(good, bad, (value) => passes(name, value));
    edges.set(name, found);
  }
  const collapse = edges.get(COLLAPSE.name);
  const limits = [...named.values()].map(({ name, margin, unit, source }): UnknownLimit => {
    if (!passes(name, best)) return { limit: name, shortfall: -margin, unit, source };
    const value = edges.get(name);
    // An edge that is just where the line gives way is collapse's, not this limit's own.
    return value === undefined || (name !== COLLAPSE.name && value === collapse) ? { limit: name, source } : { limit: name, value, source };
  });

  const missed = unsolvable(limits);
  if (missed !== undefined) return missed;
  const allowed = limits.filter(({ value }) => value !== undefined) as Required<UnknownLimit>[];
  const [first, ...others] = allowed;
  if (first === undefined) return { feasible: true, unbounded: true, limits };
  const { limit, value } = others.reduce((a, b) => (Math.sign(b.value - a.value) === Math.sign(best - worst) ? b : a), first);
  return { feasible: true, value, governedBy: limit, limits };
}

/** The answer under the name of the quantity that was asked for. @internal */
export function answered<Answer extends object>(solved: Solved, name: (value: number) => Answer): Answered<Answer> {
  if (!solved.feasible || solved.unbounded) return solved;
  const { value, ...rest } = solved;
  return { ...rest, ...name(value) };
}
