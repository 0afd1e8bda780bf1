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
  | ({
      readonly feasible: true;
      /** Left before the first limit bites, in `unit`. */
      readonly margin: number;
      readonly unit: CheckUnit;
      /** The check that is closest to its limit. */
      readonly governedBy?: CheckName;
      /** Every candidate, thinnest first, with the check that governs it. */
      readonly candidates: readonly CandidateVerdict[];
    } & ({ readonly conductor: Conductor; readonly cable?: undefined } | { readonly cable: Cable; readonly conductor?: undefined }))
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
    others: isPowered(input) ? CANDIDATE_CABLES : CANDIDATE_CONDUCTORS,
  });
  const { length, temperature } = open.run;
  const judged = open.run.candidates.map((candidate) => {
    const checks =
      open.kind === 'powered'
        ? open.checksWith({ installed: [{ cable: candidate as Cable, length, temperature }] })
        : open.checksWith({ conductor: candidate as Conductor });
    const passes = checks.every(({ verdict, margin }) => verdict !== 'fail' && margin >= 0);
    const governing = checks.length === 0 ? undefined : governingCheck(checks);
    const governedBy = governing === undefined ? {} : { governedBy: governing.name };
    const resistancePerMetre = mostPerMetre(candidate);
    return { candidate, governing, governedBy, verdict: { name: candidate.name, resistancePerMetre, passes, ...governedBy } };
  });
  judged.sort((a, b) => b.verdict.resistancePerMetre - a.verdict.resistancePerMetre);
  const candidates = judged.map(({ verdict }): CandidateVerdict => verdict);
  const chosen = judged.find(({ verdict }) => verdict.passes);
  if (chosen !== undefined) {
    const { margin, unit } = chosen.governing ?? { margin: 0, unit: '1' };
    const found = { [open.kind === 'powered' ? 'cable' : 'conductor']: { ...chosen.candidate } } as unknown as { conductor: Conductor };
    return { feasible: true, ...found, margin, unit, ...chosen.governedBy, candidates };
  }
  const { margin, unit, name } = (judged.at(-1) as (typeof judged)[number]).governing as Check;
  return { feasible: false, shortfall: -margin, unit, governedBy: name, candidates };
}

/** The most that one conductor may have: of a nominal gauge its maximum. [Ω/m] */
function mostPerMetre(candidate: Cable | Conductor): OhmsPerMetre {
  return 'maximumResistancePerMetre' in candidate ? candidate.maximumResistancePerMetre : atMaximum(candidate).resistancePerMetre;
}

interface Asked {
  readonly candidates: readonly (Cable | Conductor)[];
  readonly length: Metres;
  readonly temperature?: Celsius | undefined;
}

const CANDIDATE_CABLES: AnyFields = {
  candidates: { list: { read: (one: CableOrName, path: string) => readCable(one, path) }, least: 'candidate' },
  length: { nonNegative: 'm' },
  temperature: { temperature: '°C', optional: true },
};

const CANDIDATE_CONDUCTORS: AnyFields = {
  candidates: { list: { check: (one: Conductor, path: string) => requireConductor(one, path) }, least: 'candidate' },
};
