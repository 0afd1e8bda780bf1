/** What a search for the longest run returns. @module */
import type { Loop } from '../cable/run-resistance.ts';
import { LIMITS } from '../limits/all.ts';
import type { CheckName } from '../limits/check.ts';
import { held } from '../limits/held.ts';
import type { Limit } from '../limits/limit.ts';
import { LARGEST } from '../quantity/guards.ts';
import type { Metres, Ohms } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';
import { longestPassing } from './longest.ts';
import { type Answered, type AnyLimit, unsolvable } from './solve-unknown.ts';

/** One limit and the length it alone would allow. */
export interface RunLimit extends AnyLimit {
  /** Installed cable that this limit alone allows; absent where it allows any length, or none. [m] */
  readonly length?: Metres;
  /** The limit as a resistance of the run, where it is one. [Ω] */
  readonly resistance?: Ohms;
  /** The circuit that `resistance` is about. */
  readonly loop?: Loop;
  /** A bare figure that does not say its loop: the length it allows if it means one pairset. [m] */
  readonly lengthAsTwoPair?: Metres;
}

/** The longest run, or that nothing bounds it, or that no length will do. */
export type MaximumRun = Answered<
  {
    /** Installed cable that every limit allows, rounded down. [m] */
    readonly length: Metres;
    /** Installed cable and cords. [m] */
    readonly channelLength: Metres;
    /** Installed cable that the electrical limits allow; absent where they bound nothing. [m] */
    readonly powerLength?: Metres;
    /** Installed cable that the cabling rules allow; absent where none apply. [m] */
    readonly cablingLength?: Metres;
  },
  RunLimit
>;

/** A limit that the installed length plays no part in: met, or missed at any length. @internal */
export function fixedLimit(limit: Limit<CheckName>, value: number, bound: number, source: SourceKey = limit.source): RunLimit {
  const { margin, unit } = held(limit, value, bound, 0);
  return { limit: limit.name, source, ...(margin < 0 ? { shortfall: -margin, unit } : {}) };
}

/**
 * A limit that more installed cable comes nearer to: the longest at which it is met.
 *
 * With `loop` the bound is the most ohms of that circuit; no bound allows any length.
 * @internal
 */
export function growingLimit(
  { name, unit }: Limit<CheckName>,
  bound: number | undefined,
  source: SourceKey,
  valueAt: (length: Metres) => number,
  loop?: Loop,
): RunLimit {
  if (bound === undefined) return { limit: name, source };
  const length = longestAt(bound, valueAt);
  return {
    limit: name,
    ...(loop === undefined ? {} : { resistance: bound, loop }),
    source,
    ...(length === undefined ? { shortfall: valueAt(0) - bound, unit: loop === undefined ? unit : 'Ω' } : { length }),
  };
}

/** The longest at which a value that grows evenly with the length is within its bound; `undefined` where it is not at 0. [m] @internal */
export function longestAt(bound: number, valueAt: (length: Metres) => number): Metres | undefined {
  const none = valueAt(0);
  const perMetre = valueAt(1) - none;
  return longestPassing(perMetre > 0 ? (bound - none) / perMetre : LARGEST, (length) => valueAt(length) <= bound);
}

/** Names of the limits that belong to the cabling standard rather than to power. */
const CABLING: readonly CheckName[] = /* @__PURE__ */ (() => LIMITS.filter(({ aspect }) => aspect === 'cabling').map(({ name }) => name))();

/** The verdict over a list of limits. @internal */
export function governed(limits: readonly RunLimit[], channelLength: (length: Metres) => Metres): MaximumRun {
  const missed = unsolvable(limits);
  if (missed !== undefined) return missed;
  const bounded = limits.filter(({ length }) => length !== undefined) as (RunLimit & { length: Metres })[];
  const shortest = (isCabling: boolean): (typeof bounded)[number] | undefined =>
    bounded.filter(({ limit }) => CABLING.includes(limit) === isCabling).sort((a, b) => a.length - b.length)[0];
  const [power, cabling] = [shortest(false), shortest(true)];
  const first = power === undefined || (cabling !== undefined && cabling.length < power.length) ? cabling : power;
  if (first === undefined) return { feasible: true, unbounded: true, limits };
  return {
    feasible: true,
    length: first.length,
    channelLength: channelLength(first.length),
    governedBy: first.limit,
    ...(power === undefined ? {} : { powerLength: power.length }),
    ...(cabling === undefined ? {} : { cablingLength: cabling.length }),
    limits,
  };
}
