/** How current divides between unlike conductors and unlike pairs. @module */
import {
  type ConductorsByPair,
  conductorsOf,
  type PairOfConductors,
  parallel,
  type RunPair,
  UNBALANCE_LIMIT_FIELDS,
  type UnbalanceLimits,
  unbalance,
} from '../cable/unbalance.ts';
import { constantPower, type FeasiblePoint, type InfeasiblePoint } from '../circuit/operating-point.ts';
import type { Check } from '../limits/check.ts';
import { held, MARGINAL_BELOW_FIELD } from '../limits/held.ts';
import { PAIR_TO_PAIR_UNBALANCE } from '../limits/pair-to-pair-unbalance.ts';
import { PAIR_UNBALANCE } from '../limits/pair-unbalance.ts';
import { type Assumption, type Fields, type OptionalField, readInput } from '../quantity/fields.ts';
import { requireNonNegative } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Amperes, Ohms, Volts, Watts } from '../quantity/units.ts';
import type { PoeClassNumber } from './class-table.ts';
import * as port from './port-fields.ts';
import { appliedLimits, type PowerAtPdInput } from './power-at-pd.ts';

/** Resistance that a port or a device adds to each powered pair: one figure for all, or by pair. [Ω] */
export type PairResistance = Ohms | Readonly<Partial<Record<RunPair, Ohms>>>;

/** A device behind unlike conductors. */
export interface PairUnbalanceInput extends Pick<PowerAtPdInput, 'pseType' | 'pseVoltage' | 'pdPower' | 'marginalBelow'> {
  /** Each conductor of the powered pairs alone, end to end: one pairset ('1,2' and '3,6', or '4,5' and '7,8') or both. [Ω] */
  readonly pairs: ConductorsByPair;
  /** The positive pair of each pairset; '1,2' and '4,5' if absent. */
  readonly positive?: readonly RunPair[] | undefined;
  /** Resistance of each pair inside the port, in series with the pair; not included if absent. [Ω] */
  readonly psePairResistance?: PairResistance | undefined;
  /** Resistance of each pair inside the device, in series with the pair; not included if absent. [Ω] */
  readonly pdPairResistance?: PairResistance | undefined;
  /** Class that the port has granted, 0 to 8. */
  readonly poeClass: PoeClassNumber;
  /** How much unbalance is permitted; the figures of the standard, from memory, if absent. */
  readonly limits?: UnbalanceLimits | undefined;
}

/** @internal */
export const PAIR_UNBALANCE_FIELDS: Fields<PairUnbalanceInput, 'limits' | 'marginalBelow', { pairs: readonly PairOfConductors[] }> = {
  pairs: { read: (pairs, path) => conductorsOf(pairs, path), type: 'ConductorsByPair' },
  positive: { list: { oneOf: () => PAIRSETS.flat() }, optional: true },
  psePairResistance: () => PAIR_RESISTANCE,
  pdPairResistance: () => PAIR_RESISTANCE,
  poeClass: () => port.POE_CLASS_FIELD,
  pseType: () => port.PSE_TYPE_FIELD,
  pseVoltage: () => port.PSE_VOLTAGE_FIELD,
  pdPower: () => port.PD_POWER_FIELD,
  limits: { object: () => UNBALANCE_LIMIT_FIELDS, default: {} },
  marginalBelow: () => MARGINAL_BELOW_FIELD,
};

/** Of each pair, the figure is checked when it is added. */
const PAIR_RESISTANCE: OptionalField<PairResistance> = {
  check: (value, path) => {
    if (typeof value !== 'object' || value === null) requireNonNegative(value, path, 'Ω');
  },
  type: 'PairResistance',
  optional: true,
};

/** The current of one pair and of its conductors. */
export interface PairCurrent {
  readonly pair: RunPair;
  readonly polarity: 'positive' | 'negative';
  /** Both conductors in parallel, and what the port and the device add. [Ω] */
  readonly resistance: Ohms;
  /** [A] */
  readonly current: Amperes;
  /** Of the whole current of its polarity, 0 to 1. */
  readonly share: number;
  /** In the order of the pins. [A] */
  readonly conductorCurrents: readonly [Amperes, Amperes];
  /** Heat in the cable of this pair, port and device not counted. [W] */
  readonly cableHeat: Watts;
}

interface PairUnbalanceCommon {
  /** What was in the circuit: without both figures the shares are those of the channel alone, which are the worst. */
  readonly scope: 'channel alone' | 'channel and PSE' | 'channel and PD' | 'channel, PSE and PD';
  /** The whole circuit, out and back. [Ω] */
  readonly resistance: Ohms;
  /** [V] */
  readonly pseVoltage: Volts;
  /** Each pair, and each two pairs of one polarity, against the permitted unbalance. */
  readonly checks: readonly Check[];
  /** What the checks, in their order, are about: one pair, or two. */
  readonly checked: readonly (readonly RunPair[])[];
  /** What was taken for what the caller left out; a resistance that was left out is not in the circuit. */
  readonly assumptions: readonly Assumption[];
}

/** The current of each pair and conductor; infeasible: the most that the line delivers. */
export type PairUnbalance =
  | (PairUnbalanceCommon & {
      readonly feasible: true;
      readonly operating: FeasiblePoint;
      readonly pairs: readonly PairCurrent[];
      /** The largest current of any pair. [A] */
      readonly largestPairCurrent: Amperes;
      /** The largest current of any conductor. [A] */
      readonly largestConductorCurrent: Amperes;
      /** Half of the largest difference between the two conductors of a pair: what its transformer sees as bias. [A] */
      readonly largestBiasCurrent: Amperes;
    })
  | (PairUnbalanceCommon & { readonly feasible: false; readonly operating: InfeasiblePoint });

/**
 * Exact division of a device's current between the conductors of each pair and between the pairs.
 *
 * One single-signature, constant-power device; the port joins all positive pairs at one rail and all negative pairs at
 * another, and so does the device. Without the resistances of port and device the division is that of the channel
 * alone, and `scope` says so: those resistances, being alike, even the currents out. With them, the voltage is that of
 * the rails of the port and the draw is behind the resistance of the device. Diodes are not modelled.
 *
 * @param input - Conductor resistances by pair [Ω], polarity, resistances of port and device [Ω], class, voltage [V], draw [W].
 * @returns Currents of every pair and conductor [A], heat [W], and the checks of the permitted unbalance [Ω].
 * @throws {@link InputError} If the pairs are not one or two whole pairsets, the class needs both, or a number is outside its domain.
 * @see IEEE Std 802.3-2022, 33.1.4.2 and 145.1.3 (clauses from memory).
 * @example Class 8 over pairs that are 7 % apart
 * const result = pairUnbalance({ poeClass: 8, pairs: unbalancedPairs({ conductorResistance: 12.5, between: 0.07 }) });
 * [result.scope, result.feasible && result.pairs[0]?.share.toFixed(3)]; // => ['channel alone', '0.535']
 */
export function pairUnbalance(input: PairUnbalanceInput): PairUnbalance {
  const stated = readInput(PAIR_UNBALANCE_FIELDS, input);
  const { pairs: conductors, marginalBelow } = stated;
  const names = conductors.map(({ pair }) => pair);
  const positive = positivePairs(names, stated.positive);
  const limits = appliedLimits({ ...stated, pairs: names.length === 4 ? 4 : 2 });
  const { pseVoltage = limits.pseVoltageMin, pdPower = limits.pdPower } = stated;

  const branches = conductors.map(({ pair, resistances }) => ({
    pair,
    resistances,
    polarity: positive.includes(pair) ? ('positive' as const) : ('negative' as const),
    resistance: parallel(...resistances) + addedTo(pair, stated, 'psePairResistance') + addedTo(pair, stated, 'pdPairResistance'),
  }));
  const conductance = { positive: 0, negative: 0 };
  for (const { polarity, resistance } of branches) conductance[polarity] += 1 / resistance;
  const resistance = 1 / conductance.positive + 1 / conductance.negative;
  const operating = constantPower(pseVoltage, resistance, pdPower);

  const unlike = unbalance({ pairs: input.pairs, limits: input.limits });
  const compared = [
    ...unlike.pairs.map((one) => ({ ...one, pairs: [one.pair], heldTo: PAIR_UNBALANCE })),
    ...unlike.pairToPair
      .filter(({ pairs: [one, other] }) => positive.includes(one) === positive.includes(other))
      .map((two) => ({ ...two, heldTo: PAIR_TO_PAIR_UNBALANCE })),
  ];
  const assumptions = port.portAssumptions(stated, limits, ['pdPower', 'pseVoltage', 'pseType']);
  if (stated.positive === undefined) {
    assumptions.push({ parameter: 'positive', value: positive.join(' and '), source: 'library-default' });
  }
  for (const parameter of ['psePairResistance', 'pdPairResistance'] as const) {
    if (stated[parameter] === undefined) assumptions.push({ parameter, value: 0, unit: 'Ω', source: 'library-default' });
  }
  const common = {
    scope: scopeOf(stated),
    resistance,
    pseVoltage,
    checks: compared.map(({ heldTo, difference, limit }) => held(heldTo, difference, limit, marginalBelow)),
    checked: compared.map(({ pairs }) => pairs),
    assumptions,
  };
  if (!operating.feasible) return { ...common, feasible: false, operating };

  const pairs = branches.map(({ resistances: [first, second], ...branch }) => {
    const share = 1 / branch.resistance / conductance[branch.polarity];
    const current = operating.current * share;
    // Two conductors side by side carry the current in the inverse ratio of their resistances.
    const conductorCurrents = [(current * second) / (first + second), (current * first) / (first + second)] as const;
    return { ...branch, current, share, conductorCurrents, cableHeat: current * current * parallel(first, second) };
  });
  return {
    ...common,
    feasible: true,
    operating,
    pairs,
    largestPairCurrent: Math.max(0, ...pairs.map(({ current }) => current)),
    largestConductorCurrent: Math.max(0, ...pairs.flatMap(({ conductorCurrents }) => conductorCurrents)),
    largestBiasCurrent: Math.max(0, ...pairs.map(({ conductorCurrents: [first, second] }) => Math.abs(first - second) / 2)),
  };
}

/** Alternatives A and B. */
const PAIRSETS: readonly (readonly [RunPair, RunPair])[] = [
  ['1,2', '3,6'],
  ['4,5', '7,8'],
];

function positivePairs(names: readonly RunPair[], positive: readonly RunPair[] | undefined): readonly RunPair[] {
  const pairsets = PAIRSETS.filter((pairset) => pairset.every((pair) => names.includes(pair)));
  if (pairsets.length * 2 !== names.length)
    throw new InputError('conflict', 'pairs', "'1,2' with '3,6', '4,5' with '7,8', or all four", names.join(' '));
  if (positive === undefined) return pairsets.map(([first]) => first);
  const each = pairsets.every((pairset) => pairset.filter((pair) => positive.includes(pair)).length === 1);
  if (!each || positive.length !== pairsets.length) {
    throw new InputError('conflict', 'positive', 'one pair of each powered pairset', positive.join(' '));
  }
  return positive;
}

type Added = Pick<PairUnbalanceInput, 'psePairResistance' | 'pdPairResistance'>;

function addedTo(pair: RunPair, stated: Added, parameter: keyof Added): Ohms {
  const { [parameter]: added = 0 } = stated;
  if (typeof added === 'number') return added;
  const ohms = Object.hasOwn(added, pair) ? added[pair] : undefined;
  requireNonNegative(ohms as Ohms, `${parameter}['${pair}']`, 'Ω');
  return ohms as Ohms;
}

function scopeOf({ psePairResistance, pdPairResistance }: Added): PairUnbalanceCommon['scope'] {
  if (psePairResistance === undefined) return pdPairResistance === undefined ? 'channel alone' : 'channel and PD';
  return pdPairResistance === undefined ? 'channel and PSE' : 'channel, PSE and PD';
}
