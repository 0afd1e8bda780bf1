/** What gauge: the smallest of the conductors, or cables, at hand that will do. @module */
import type { Cable } from '../cable/cable.ts';
import { type CableOrName, readCable } from '../cable/read-cable.ts';
import type { Conductor } from '../conductor/conductor.ts';
import { requireConductor } from '../conductor/resistance-per-metre.ts';
import { atMaximum } from '../conductor/to-maximum.ts';
import type { Check, CheckName } from '../limits/check.ts';
import type { CheckUnit } from '../limits/limit.ts';
import type { AnyFields } from '../quantity/fields.ts';
import type { Celsius, Metres, OhmsPerMetre } from '../quantity/units.ts';
import { governingCheck } from './governing-check.ts';
import { isPowered, openRun } from './open-run.ts';
import type { PoweredCircuit, PoweredFacts } from './powered-input.ts';
import type { TwoWireRunInput } from './two-wire-input.ts';

/** A two-wire run whose conductor is asked for. */
export interface SmallestTwoWireInput extends Omit<TwoWireRunInput, 'conductor'> {
  /** The conductors at hand, in any order. */
  readonly candidates: readonly Conductor[];
}

/** A run to a powered device whose cable is asked for. */
export interface SmallestCableInput extends PoweredCircuit {
  /** The cables at hand, in any order. */
  readonly candidates: readonly CableOrName[];
  /** Installed length, one way. [m] */
  readonly length: Metres;
  /** Temperature of the installed cable; 20 if absent. [°C] */
  readonly temperature?: Celsius | undefined;
}

/** The same with its cables looked up. @internal */
export interface SmallestCableFacts extends Omit<PoweredFacts, 'installed'> {
  readonly candidates: readonly Cable[];
  readonly length: Metres;
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

/** A candidate, and the check that decides about it. */
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
  const open = openRun<Asked>(input, {
    powered: ['installed'],
    twoWire: ['conductor', 'out', 'back'],
    asked: isPowered(input) ? CABLES_ASKED : CONDUCTORS_ASKED,
  });
  const { candidates, length, temperature } = open.run;
  if (open.kind === 'two-wire') {
    return choose(
      candidates as readonly Conductor[],
      (one) => atMaximum(one).resistancePerMetre,
      (one) => open.checksWith({ conductor: one }),
      (one) => ({ conductor: { ...one } }),
    );
  }
  return choose(
    candidates as readonly Cable[],
    (one) => one.maximumResistancePerMetre,
    (one) => open.checksWith({ installed: [{ cable: one, length, temperature }] }),
    (one) => ({ cable: { ...one } }),
  );
}

interface Asked {
  readonly candidates: readonly (Cable | Conductor)[];
  readonly length: Metres;
  readonly temperature?: Celsius | undefined;
}

const CABLES_ASKED: AnyFields = {
  candidates: { list: { read: (one: CableOrName, path: string) => readCable(one, path) }, least: 'candidate' },
  length: { nonNegative: 'm' },
  temperature: { temperature: '°C', optional: true },
};

const CONDUCTORS_ASKED: AnyFields = {
  candidates: { list: { check: (one: Conductor, path: string) => requireConductor(one, path) }, least: 'candidate' },
};

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
