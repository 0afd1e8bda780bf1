/** What gauge: the smallest of the conductors, or cables, at hand that will do. @module */
import type { Cable } from '../cable/cable.ts';
import type { Conductor } from '../conductor/conductor.ts';
import { toMaximum } from '../conductor/to-maximum.ts';
import type { Check, CheckName } from '../limits/check.ts';
import type { CheckUnit } from '../limits/limit.ts';
import { requireArray, requireObject } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Celsius, Metres, OhmsPerMetre } from '../quantity/units.ts';
import { governingCheck } from './governing-check.ts';
import { isPowered, poweredChecks, twoWireChecks } from './one-unknown.ts';
import type { PoweredRunInput } from './powered-run.ts';
import type { TwoWireRunInput } from './two-wire-run.ts';

/** A two-wire run whose conductor is asked for. */
export interface SmallestTwoWireInput extends Omit<TwoWireRunInput, 'conductor'> {
  /** The conductors at hand, in any order. */
  readonly candidates: readonly Conductor[];
}

/** A run to a powered device whose cable is asked for. */
export interface SmallestCableInput extends Omit<PoweredRunInput, 'installed'> {
  /** The cables at hand, in any order. */
  readonly candidates: readonly Cable[];
  /** Installed length, one way. [m] */
  readonly length: Metres;
  /** Temperature of the installed cable; 20 if absent. [°C] */
  readonly temperature?: Celsius | undefined;
}

interface Chosen {
  readonly feasible: true;
  /** Left before the first limit bites, in `unit`. */
  readonly margin: number;
  readonly unit: CheckUnit;
  /** The check that is closest to its limit. */
  readonly governedBy?: CheckName;
  /** Every candidate, thinnest first, with the check that governs it. */
  readonly candidates: readonly CandidateVerdict[];
}

/** One candidate as it fares. */
export interface CandidateVerdict {
  readonly name: string;
  /** Most resistance of one of its conductors at 20 °C. [Ω/m] */
  readonly resistancePerMetre: OhmsPerMetre;
  readonly passes: boolean;
  readonly governedBy?: CheckName;
}

/** The thinnest that will do, or that none of them does. */
export type SmallestConductor =
  | (Chosen & { readonly conductor: Conductor; readonly cable?: undefined })
  | (Chosen & { readonly cable: Cable; readonly conductor?: undefined })
  | {
      readonly feasible: false;
      /** By how much the thickest misses, in `unit`. */
      readonly shortfall: number;
      readonly unit: CheckUnit;
      readonly governedBy: CheckName;
      readonly candidates: readonly CandidateVerdict[];
    };

/**
 * The smallest conductor (or cable) among those given at which no check of the run fails.
 *
 * Ordered by the most resistance each may have: a nominal gauge is taken at its maximum, as in the check.
 *
 * @param input - The run, as for {@link checkTwoWireRun} or {@link checkPoweredRun}, with `candidates` for its conductor,
 *   or for its cable with `length` [m] and `temperature` [°C].
 * @returns The thinnest that passes and its margin; or the shortfall of the thickest.
 * @throws {@link InputError} As the check of that run, or if there are no candidates.
 * @example
 * const choice = smallestConductor({
 *   candidates: [awg(22), awg(20), awg(18), awg(16)],
 *   supplyVoltage: { low: 21, high: 27.6 }, length: 90, load: { power: 6 }, minimumVoltage: 19,
 * });
 * choice.feasible && choice.conductor?.name; // => '20 AWG'
 */
export function smallestConductor(input: SmallestTwoWireInput | SmallestCableInput): SmallestConductor {
  requireObject(input, 'input', 'a run with candidates');
  requireArray(input.candidates, 'candidates', 'a list of conductors or of cables');
  if (input.candidates.length === 0) throw new InputError('missing', 'candidates', 'at least one candidate', input.candidates);
  for (const [i, candidate] of input.candidates.entries()) requireObject(candidate, `candidates[${i}]`, 'a conductor or a cable');
  if (isPowered<SmallestCableInput, SmallestTwoWireInput>(input)) {
    const { candidates, length, temperature, ...run } = input;
    return choose(
      candidates,
      (one) => one.maximumResistancePerMetre,
      (one) => poweredChecks({ ...run, installed: [{ cable: one, length, temperature }] }),
      (one) => ({ cable: { ...one } }),
    );
  }
  const { candidates, ...run } = input;
  return choose(
    candidates,
    (one) => toMaximum(one).resistancePerMetre,
    (one) => twoWireChecks({ ...run, conductor: one }),
    (one) => ({ conductor: { ...one } }),
  );
}

function choose<T extends { readonly name: string }>(
  candidates: readonly T[],
  resistance: (candidate: T) => OhmsPerMetre,
  checksOf: (candidate: T) => readonly Check[],
  naming: (candidate: T) => { conductor: Conductor } | { cable: Cable },
): SmallestConductor {
  const judged = candidates.map((candidate) => {
    const resistancePerMetre = resistance(candidate);
    const checks = checksOf(candidate);
    const governing = checks.length === 0 ? undefined : governingCheck(checks);
    const passes = checks.every(({ verdict, margin }) => verdict !== 'fail' && margin >= 0);
    return { candidate, resistancePerMetre, governing, passes };
  });
  judged.sort((a, b) => b.resistancePerMetre - a.resistancePerMetre);
  const listed = judged.map(({ candidate, resistancePerMetre, governing, passes }): CandidateVerdict => {
    const verdict = { name: candidate.name, resistancePerMetre, passes };
    return governing === undefined ? verdict : { ...verdict, governedBy: governing.name };
  });
  const chosen = judged.find(({ passes }) => passes);
  if (chosen !== undefined) {
    const { governing } = chosen;
    const margin =
      governing === undefined
        ? { margin: 0, unit: '1' as const }
        : { margin: governing.margin, unit: governing.unit, governedBy: governing.name };
    return { feasible: true, ...naming(chosen.candidate), ...margin, candidates: listed } as SmallestConductor;
  }
  const { margin, unit, name } = (judged.at(-1) as (typeof judged)[number]).governing as Check;
  return { feasible: false, shortfall: -margin, unit, governedBy: name, candidates: listed };
}
