/** How unlike the two conductors of a pair, and the pairs of a run, are. @module */
import { type DefaultField, type Fields, readInput } from '../quantity/fields.ts';
import { requireArray, requireObject, requirePositive } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import { refuseUnknown } from '../quantity/nearest.ts';
import type { Ohms } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';

/** A pair of a run, by the two pins of its plug. */
export type RunPair = (typeof RUN_PAIRS)[number];

/** In the order of their pins. @internal */
export const RUN_PAIRS = ['1,2', '3,6', '4,5', '7,8'] as const;

/** Each conductor of each pair alone, end to end, in the order of the pins. [Ω] */
export type ConductorsByPair = Readonly<Partial<Record<RunPair, readonly [Ohms, Ohms]>>>;

/** How much unbalance is permitted: the fraction or the floor, whichever is more. */
export interface UnbalanceLimits {
  /** Of the sum of the two conductors of a pair; 0.03 if absent (memory). A fraction. */
  readonly pairFraction?: number | undefined;
  /** A difference that is permitted whatever the fraction says; 0.2 if absent (memory). [Ω] */
  readonly pairFloor?: Ohms | undefined;
  /** Of the sum of two pairs, each pair's conductors in parallel; 0.07 if absent (memory). A fraction. */
  readonly pairToPairFraction?: number | undefined;
  /** The same floor between two pairs; 0.1 if absent (memory). [Ω] */
  readonly pairToPairFloor?: Ohms | undefined;
}

/** The conductors of a run, pair by pair. */
export interface UnbalanceInput {
  /** At least one pair, measured or computed. [Ω] */
  readonly pairs: ConductorsByPair;
  readonly limits?: UnbalanceLimits | undefined;
}

/** One difference held against what is permitted. */
export interface ResistanceUnbalance {
  /** [Ω] */
  readonly difference: Ohms;
  /** `(larger - smaller) / (larger + smaller)`, 0 to 1. */
  readonly fraction: number;
  /** The largest difference permitted: the fraction of the sum or the floor, whichever is more. [Ω] */
  readonly limit: Ohms;
  /** `limit - difference`. [Ω] */
  readonly margin: Ohms;
  readonly withinLimit: boolean;
}

/** How unlike the conductors and the pairs of a run are. */
export interface RunUnbalance {
  readonly pairs: readonly (ResistanceUnbalance & {
    readonly pair: RunPair;
    readonly conductors: readonly [Ohms, Ohms];
    /** Both conductors in parallel, `R1·R2/(R1+R2)`. [Ω] */
    readonly parallel: Ohms;
  })[];
  /** Every two pairs of the run against each other; empty where only one pair is known. */
  readonly pairToPair: readonly (ResistanceUnbalance & { readonly pairs: readonly [RunPair, RunPair] })[];
  readonly withinLimits: boolean;
  readonly source: SourceKey;
}

/** A run made unequal on purpose. */
export interface UnbalancedPairsInput {
  /** One conductor, end to end, if all were equal: the `twoPair` loop of a run. [Ω] */
  readonly conductorResistance: Ohms;
  /** Unbalance within each pair, `(larger - smaller) / (larger + smaller)`: a fraction from 0 to under 1; 0 if absent. */
  readonly within?: number | undefined;
  /** Unbalance between the pairs of each polarity, parallel values, as a fraction from 0 to under 1; 0 if absent. */
  readonly between?: number | undefined;
}

/** One pair that was measured. @internal */
export interface PairOfConductors {
  readonly pair: RunPair;
  readonly resistances: readonly [Ohms, Ohms];
}

type LimitKey = keyof UnbalanceLimits;

/** @internal */
export const UNBALANCE_LIMIT_FIELDS: Readonly<Record<LimitKey, DefaultField<number>>> = {
  pairFraction: { between: [0, 0.99], is: 'a fraction', default: 0.03, source: 'ieee-802.3-unbalance' },
  pairFloor: { nonNegative: 'Ω', default: 0.2, source: 'ieee-802.3-unbalance' },
  pairToPairFraction: { between: [0, 0.99], is: 'a fraction', default: 0.07, source: 'ieee-802.3-unbalance' },
  pairToPairFloor: { nonNegative: 'Ω', default: 0.1, source: 'ieee-802.3-unbalance' },
};

/** @internal */
export const UNBALANCE_FIELDS: Fields<
  UnbalanceInput,
  'limits',
  { pairs: readonly PairOfConductors[]; limits: Readonly<Record<LimitKey, number>> }
> = {
  pairs: { read: (value, path) => conductorsOf(value, path), type: 'ConductorsByPair' },
  limits: { object: () => UNBALANCE_LIMIT_FIELDS, default: {} },
};

/** @internal */
export const UNBALANCED_PAIRS_FIELDS: Fields<UnbalancedPairsInput, 'within' | 'between'> = {
  conductorResistance: { positive: 'Ω' },
  within: { between: [0, 0.99], is: 'a fraction', default: 0 },
  between: { between: [0, 0.99], is: 'a fraction', default: 0 },
};

/**
 * Resistance unbalance within each pair and between every two pairs of a run.
 *
 * Within a pair `|R1 - R2|` is held against the larger of 3 % of `R1 + R2` and 0.2 Ω; between pairs `|Rp1 - Rp2|`
 * against the larger of 7 % of `Rp1 + Rp2` and 0.1 Ω, where `Rp = R1·R2/(R1 + R2)`. The percentages and the floors are
 * from memory; all four can be set. Resistances of the channel alone: what the port and the device add is not in them.
 *
 * @param input - Conductor resistances by pair [Ω] and, if others than the usual apply, the limits [Ω].
 * @returns Differences, limits and margins [Ω] and the unbalance as a fraction.
 * @throws {@link InputError} If there is no pair, a pair is not known, or a resistance is 0 or outside its domain.
 * @see IEEE Std 802.3-2022, 33.1.4.2 and 145.1.3 (clauses from memory).
 * @example A pair of 9.0 and 9.3 Ω is 1.6 % apart
 * const { pairs } = unbalance({ pairs: { '1,2': [9, 9.3] } });
 * [pairs[0]?.fraction.toFixed(3), pairs[0]?.limit.toFixed(3), pairs[0]?.withinLimit]; // => ['0.016', '0.549', true]
 */
export function unbalance(input: UnbalanceInput): RunUnbalance {
  const { pairs: given, limits } = readInput(UNBALANCE_FIELDS, input);
  const pairs = given.map(({ pair, resistances: [first, second] }) => ({
    pair,
    conductors: [first, second] as const,
    parallel: parallel(first, second),
    ...againstLimit(first, second, limits.pairFraction, limits.pairFloor),
  }));
  const pairToPair = everyTwo(pairs).map(([one, other]) => ({
    pairs: [one.pair, other.pair] as const,
    ...againstLimit(one.parallel, other.parallel, limits.pairToPairFraction, limits.pairToPairFloor),
  }));
  const withinLimits = [...pairs, ...pairToPair].every(({ withinLimit }) => withinLimit);
  return { pairs, pairToPair, withinLimits, source: 'ieee-802.3-unbalance' };
}

/**
 * The conductors of a run with a stated unbalance: what an equal run would be at its worst.
 *
 * Within a pair one conductor is `1 - within` and the other `1 + within` times the pair's mean, so that their sum, which
 * a meter reads, is kept. Pairs 1,2 and 3,6 are lower and pairs 4,5 and 7,8 higher, so that between pairs of one
 * polarity the parallel values are `1 - between` to `1 + between`, and their mean is that of the equal run.
 *
 * @param input - One conductor of the equal run [Ω], unbalance within and between pairs as fractions.
 * @returns Each conductor of the four pairs [Ω], for {@link unbalance} and `pairUnbalance`.
 * @throws {@link InputError} If the resistance is 0 or outside its domain, or a fraction is outside 0 to 0.99.
 * @example
 * unbalancedPairs({ conductorResistance: 10, within: 0.03 })['1,2']; // => [9.7, 10.3]
 */
export function unbalancedPairs(input: UnbalancedPairsInput): Readonly<Record<RunPair, readonly [Ohms, Ohms]>> {
  const { conductorResistance, within, between } = readInput(UNBALANCED_PAIRS_FIELDS, input);
  // All pairs keep one factor for unbalance within, so the ratio of their parallel values is that of their means.
  const low = conductorResistance * (1 - between);
  const high = conductorResistance * (1 + between);
  const pair = (mean: Ohms): readonly [Ohms, Ohms] => [mean * (1 - within), mean * (1 + within)];
  return { '1,2': pair(low), '3,6': pair(low), '4,5': pair(high), '7,8': pair(high) };
}

/** Each with each that comes after it. @internal */
export function everyTwo<T>(list: readonly T[]): (readonly [one: T, other: T])[] {
  return list.flatMap((one, index) => list.slice(index + 1).map((other) => [one, other] as const));
}

/** Two resistances side by side. [Ω] @internal */
export function parallel(first: Ohms, second: Ohms): Ohms {
  return (first * second) / (first + second);
}

/** The pairs that are given, each checked, in the order of their pins. @internal */
export function conductorsOf(pairs: ConductorsByPair, path = 'pairs'): readonly PairOfConductors[] {
  requireObject(pairs, path, "an object such as { '1,2': [9.1, 9.2] }");
  refuseUnknown(pairs, RUN_PAIRS, path);
  const found = RUN_PAIRS.flatMap((pair): PairOfConductors | [] => {
    const { [pair]: resistances } = pairs;
    if (resistances === undefined) return [];
    const parameter = `${path}['${pair}']`;
    requireArray(resistances, parameter, 'the resistances of its two conductors');
    if (resistances.length !== 2) throw new InputError('range', parameter, 'two resistances', resistances.length);
    for (const end of [0, 1] as const) requirePositive(resistances[end], `${parameter}[${end}]`, 'Ω');
    return { pair, resistances };
  });
  if (found.length === 0) throw new InputError('missing', path, 'at least one pair', undefined);
  return found;
}

function againstLimit(first: Ohms, second: Ohms, fraction: number, floor: Ohms) {
  const sum = first + second;
  const difference = Math.abs(first - second);
  const limit = Math.max(fraction * sum, floor);
  return { difference, fraction: difference / sum, limit, margin: limit - difference, withinLimit: difference <= limit };
}
