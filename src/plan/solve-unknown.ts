/** Solving a run for the one quantity that is left open, with the run's own checks as the judges. @module */
import type { Check, CheckName, CheckUnit } from '../circuit/check.ts';
import type { SourceKey } from '../sources/sources.ts';

/** One limit and the value it alone would allow. */
export interface UnknownLimit {
  readonly limit: CheckName;
  /** The furthest value this limit allows; absent where it allows any, or none. In the unit of the quantity asked for. */
  readonly value?: number;
  /** Present where no value meets this limit: by how much it is missed at the best, in `unit`. */
  readonly shortfall?: number;
  readonly unit?: CheckUnit;
  readonly source: SourceKey;
}

/** The answer before it has a name. @internal */
export type Solved =
  | {
      readonly feasible: true;
      readonly unbounded?: undefined;
      readonly value: number;
      readonly governedBy: CheckName;
      readonly limits: readonly UnknownLimit[];
    }
  | { readonly feasible: true; readonly unbounded: true; readonly limits: readonly UnknownLimit[] }
  | Unsolvable;

/** No value of the quantity meets every limit. */
export interface Unsolvable {
  readonly feasible: false;
  /** The limit that is missed even at the best value. */
  readonly governedBy: CheckName;
  /** By how much, in `unit`. */
  readonly shortfall: number;
  readonly unit: CheckUnit;
  readonly limits: readonly UnknownLimit[];
}

/**
 * The value furthest from `best` towards `worst` at which no check fails, to the last bit, and each check's own.
 *
 * Every check is monotone in the quantity, so each has one edge between the two ends; it is found by halving on the
 * check itself, and the value returned is the side of the edge that passes: put back, it passes.
 * @internal
 */
export function solveUnknown(best: number, worst: number, checksAt: (value: number) => readonly Check[]): Solved {
  const memory = new Map<number, readonly Check[]>();
  const at = (value: number): readonly Check[] => {
    let checks = memory.get(value);
    if (checks === undefined) {
      checks = checksAt(value);
      memory.set(value, checks);
    }
    return checks;
  };
  // A check that is gone was overtaken: a line that carries nothing has no voltage at its end to be judged.
  const passes = (name: CheckName, value: number): boolean => {
    const check = at(value).find((one) => one.name === name);
    return check !== undefined && check.verdict !== 'fail';
  };
  const edges = new Map<CheckName, number>();
  for (const { name } of at(best)) {
    if (passes(name, best) && !passes(name, worst))
      edges.set(
        name,
        edge(best, worst, (value) => passes(name, value)),
      );
  }
  const collapse = edges.get('collapse');
  const limits = at(best).map(({ name, verdict, margin, unit, source }): UnknownLimit => {
    if (verdict === 'fail') return { limit: name, shortfall: -margin, unit, source };
    const value = edges.get(name);
    // An edge that is just where the line gives way is collapse's, not this limit's own.
    return value === undefined || (name !== 'collapse' && value === collapse) ? { limit: name, source } : { limit: name, value, source };
  });

  const missed = limits.find(({ shortfall }) => shortfall !== undefined);
  if (missed !== undefined) {
    return { feasible: false, governedBy: missed.limit, shortfall: missed.shortfall as number, unit: missed.unit as CheckUnit, limits };
  }
  let governing: { limit: CheckName; value: number } | undefined;
  for (const { limit, value } of limits) {
    if (value !== undefined && (governing === undefined || (best < worst ? value < governing.value : value > governing.value))) {
      governing = { limit, value };
    }
  }
  if (governing === undefined) return { feasible: true, unbounded: true, limits };
  return { feasible: true, value: governing.value, governedBy: governing.limit, limits };
}

/** The last double that passes between one that does and one that does not. @internal */
export function edge(good: number, bad: number, passes: (value: number) => boolean): number {
  let inside = good;
  let outside = bad;
  for (;;) {
    const middle = inside + (outside - inside) / 2;
    if (middle === inside || middle === outside) return inside;
    if (passes(middle)) inside = middle;
    else outside = middle;
  }
}
