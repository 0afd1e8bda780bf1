/** What readings of shorted pairs say of a run, and what they cannot. @module */

import { atTemperature, CONDUCTOR_TEMPERATURE } from '../../conductor/resistance-per-metre.ts';
import { CHANNEL_LOOP } from '../../limits/channel-loop.ts';
import { PAIR_TO_PAIR_UNBALANCE } from '../../limits/pair-to-pair-unbalance.ts';
import { PAIR_UNBALANCE } from '../../limits/pair-unbalance.ts';
import { PERMANENT_LINK_LOOP } from '../../limits/permanent-link-loop.ts';
import { type Fields, type OptionalField, readInput } from '../../quantity/fields.ts';
import { requireNonNegative } from '../../quantity/guards.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { BoundedFigure, Interval } from '../../quantity/interval.ts';
import type { Celsius, Metres, Ohms } from '../../quantity/units.ts';
import type { Cable } from '../cable.ts';
import { CABLES } from '../cables.ts';
import { type CableOrName, CONNECTION_RESISTANCE, CORDS, type RunPiece, readCable, type Segment } from '../read-cable.ts';
import {
  type ConductorsByPair,
  conductorsOf,
  everyTwo,
  type PairOfConductors,
  parallel,
  RUN_PAIRS,
  type RunPair,
  UNBALANCE_LIMIT_FIELDS,
} from '../unbalance.ts';
import { type Ambiguity, ambiguities } from './ambiguities.ts';
import { coldLoopOf, loopOf } from './expected-reading.ts';
import { ANY_LENGTH, type Explanation, explanationsOf } from './explanations.ts';
import { fitOf, inOrder } from './fit.ts';
import { METER_ACCURACY_FIELDS, type MeterAccuracy, readingBounds } from './loaded-voltage.ts';
import { alike, type FieldCheck, upTo } from './reading-checks.ts';
import { categoryWire, cladWire, copperWire, loopPerMetre, type Wire, wireOf } from './wire.ts';

/** What was measured between: the cable alone, the permanent link, or the channel with its cords. */
export type MeasuredScope = 'cable' | 'permanent-link' | 'channel';

/** The reading of each pair, or `'open'`. [Ω] */
export type ReadingsByPair = { readonly [Pair in RunPair]?: Ohms | 'open' | undefined };

/** Readings of one to four pairs, each shorted at the far end, and what is known of the run. */
export interface FromMeasurementInput {
  /** As the meter shows them [Ω]; `'open'` where it shows no connection. */
  readonly pairs: ReadingsByPair;
  /** Each conductor of a pair alone, where that was read too, brought to 20 °C and without leads. [Ω] */
  readonly conductors?: ConductorsByPair | undefined;
  /** In every reading, of the leads; 0 if absent, as with a meter that was nulled. [Ω] */
  readonly leadResistance?: Ohms | undefined;
  /** Of the conductors when they were read, one figure or two bounds; 20 if absent. [°C] */
  readonly temperature?: Celsius | Interval | undefined;
  /** Of the cable, one way and without `cords`, one figure or two bounds. [m] */
  readonly knownLength?: Metres | Interval | undefined;
  /** What the cable is thought to be. */
  readonly cable?: CableOrName | undefined;
  readonly scope: MeasuredScope;
  /** Cords that were measured along with the cable. */
  readonly cords?: readonly RunPiece[] | undefined;
  /** Mated plugs and jacks; up to 3 in a permanent link and 4 in a channel if absent. A number. */
  readonly connections?: number | undefined;
  /** Most resistance of one connection, per conductor; 0.2 if absent. [Ω] */
  readonly connectionResistance?: Ohms | undefined;
  /** Of the meter, as in ±(1 % + 0.1 Ω); exact if absent. */
  readonly accuracy?: MeterAccuracy | undefined;
}

/** One pair, without leads. */
export interface PairReading {
  readonly pair: RunPair;
  /** As the conductors were. [Ω] */
  readonly measured: BoundedFigure;
  /** Brought to 20 °C. [Ω] */
  readonly at20: BoundedFigure;
}

/** The loops that power sees. Pairs that were not read are taken to lie between those that were. */
export interface MeasuredLoops {
  /** The highest pair, as the meter sees it. [Ω] */
  readonly pairLoop: BoundedFigure;
  /** The pairset on 1,2 and 3,6. [Ω] */
  readonly pairsetA: BoundedFigure;
  /** The pairset on 4,5 and 7,8. [Ω] */
  readonly pairsetB: BoundedFigure;
  /** The higher pairset: what 2-pair power must reckon with. [Ω] */
  readonly twoPair: BoundedFigure;
  /** Both pairsets side by side. [Ω] */
  readonly fourPair: BoundedFigure;
}

/** How long the run would be if its conductors were of one kind. */
export interface LengthOfCandidate {
  /** As in `24 AWG copper`. */
  readonly wire: string;
  readonly status: 'consistent' | 'inconsistent';
  /** Without cords; absent where no length gives all the readings. [m] */
  readonly length?: Interval;
  /** By how much every reading would have to be off before a length does, and one that is known; 0 where it does. [Ω] */
  readonly distance: Ohms;
}

/** What the readings say. */
export interface FromMeasurement {
  readonly readings: readonly PairReading[];
  /** Pairs that the meter showed no connection on. */
  readonly open: readonly RunPair[];
  /** Absent where every pair is open. */
  readonly loops?: { readonly at20: MeasuredLoops; readonly measured: MeasuredLoops };
  readonly lengths: readonly LengthOfCandidate[];
  readonly checks: readonly FieldCheck[];
  /** Each supposition on its own: consistent with the readings, or by how much not. Never the reason itself. */
  readonly explanations: readonly Explanation[];
  readonly cannotTell: readonly Ambiguity[];
  /** What was taken for granted. */
  readonly assumptions: readonly string[];
}

/** Connections that a scope may have (channel model, memory). @internal */
export const CONNECTIONS: Readonly<Record<MeasuredScope, number>> = { cable: 0, 'permanent-link': 3, channel: 4 };
const READING: OptionalField<Ohms | 'open'> = {
  check: (shown, path) => {
    if (shown !== 'open') requireNonNegative(shown, path, "Ω, or 'open'");
  },
  type: 'reading',
  optional: true,
};
/** @internal */
export const READINGS_BY_PAIR_FIELDS: Fields<ReadingsByPair> = {
  '1,2': () => READING,
  '3,6': () => READING,
  '4,5': () => READING,
  '7,8': () => READING,
};

/** @internal */
export const FROM_MEASUREMENT_FIELDS: Fields<
  FromMeasurementInput,
  'leadResistance' | 'temperature' | 'cords' | 'connectionResistance',
  { conductors: readonly PairOfConductors[]; cable: Cable; cords: readonly Segment[] }
> = {
  pairs: { object: () => READINGS_BY_PAIR_FIELDS },
  conductors: { read: (value, path) => conductorsOf(value, path), type: 'ConductorsByPair', optional: true },
  leadResistance: { nonNegative: 'Ω', default: 0 },
  temperature: () => ({ temperature: '°C', range: true, default: CONDUCTOR_TEMPERATURE.default, source: 'library-default' }),
  knownLength: { nonNegative: 'm', range: true, optional: true },
  cable: { read: (value, path) => readCable(value, path), type: 'Cable', optional: true },
  scope: { oneOf: () => Object.keys(CONNECTIONS) as MeasuredScope[] },
  cords: () => CORDS,
  connections: { whole: [0, 1000], optional: true },
  connectionResistance: () => CONNECTION_RESISTANCE,
  accuracy: { object: () => METER_ACCURACY_FIELDS, optional: true },
};

const GAUGES = [22, 23, 24, 26, 28] as const;
const CLAD_GAUGES = [23, 24, 26] as const;

/**
 * What readings of shorted pairs say: loops at 20 °C and as power sees them, lengths, limits, and what they are consistent with.
 *
 * A pair is shorted at the far end; the reading is both of its conductors and everything between. Bounds are exact for a meter
 * within its accuracy, temperatures within theirs, conductors from 4 % under the resistance of their gauge to the limit of the
 * cable, and connections from none to their most. Each explanation is held against the readings alone: `consistent` means
 * that it could be so, with what it would take, and `inconsistent` that it could not, with the ohms by which it misses.
 * Neither is ever the reason; what no reading here tells apart is listed with the reading that would. Readings are of a
 * dead pair: never put an ohmmeter on a powered one.
 *
 * @param input - Readings [Ω], leads [Ω], temperature [°C], known length [m], cable, scope, cords, connections, accuracy.
 * @returns Readings and loops at 20 °C and as measured [Ω], lengths by candidate [m], checks, explanations, and what stays open.
 * @throws {@link InputError} If no pair is given, a name is not known, a number is outside its domain, or leads are more than a reading.
 * @example 14.1 Ω where 60 m of Category 5e were thought to be
 * const found = fromMeasurement({ pairs: { '1,2': 14.1 }, knownLength: 60, cable: 'cat5e', scope: 'permanent-link', connections: 2 });
 * found.explanations.filter(({ status }) => status === 'consistent').map(({ name }) => name);
 * // => ['longer', 'hotter', 'clad-aluminium', 'thinner-gauge', 'one-bad-joint', 'many-joints']
 * @example How long it would be
 * const [asThought] = fromMeasurement({ pairs: { '1,2': 14.1 }, cable: 'cat5e', scope: 'cable' }).lengths;
 * [asThought?.length?.low.toFixed(1), asThought?.length?.high.toFixed(1)]; // => ['75.2', '87.2']
 */
export function fromMeasurement(input: FromMeasurementInput): FromMeasurement {
  const given = readInput(FROM_MEASUREMENT_FIELDS, input);
  const { scope, cable, cords, leadResistance, connectionResistance, accuracy, conductors = [] } = given;
  const { connections = CONNECTIONS[scope] } = given;
  const temperature = bothEnds(given.temperature);
  const knownLength = given.knownLength === undefined ? undefined : bothEnds(given.knownLength);
  const most = cable === undefined ? CABLES.cat6[5][0] : cable.maximumResistancePerMetre;
  const wire = cable === undefined ? categoryWire(most) : wireOf(cable);
  const joints = 2 * connections * connectionResistance;
  const cordLoop = loopOf(cords, 0);
  const rest = { low: cordLoop.low, high: cordLoop.high + joints };

  const open = RUN_PAIRS.filter((pair) => given.pairs[pair] === 'open');
  const readings = RUN_PAIRS.flatMap((pair) => {
    const { [pair]: shown } = given.pairs;
    return typeof shown === 'number' ? reading(pair, shown) : [];
  });
  if (readings.length + open.length === 0) throw new InputError('missing', 'pairs', 'at least one pair', undefined);
  const assumptions = assumed(input, connections);
  if (readings.length === 0) return { readings, open, lengths: [], checks: [], explanations: [], cannotTell: [], assumptions };
  const bounds = readings.map(({ pair, measured: { low, high } }) => ({ pair, low, high }));
  const explanations = explanationsOf({ pairs: bounds, open, wire, rest, knownLength, temperature });
  return {
    readings,
    open,
    loops: { at20: loopsOf(readings, 'at20'), measured: loopsOf(readings, 'measured') },
    lengths: [...(cable === undefined ? [] : [wire]), ...GAUGES.map(copperWire), ...cladGauges(cable?.gauge).map(cladWire)].map(lengthOf),
    checks: checks(),
    explanations,
    cannotTell: ambiguities(explanations, {
      'unknown-length': knownLength === undefined,
      'one-pair': readings.length + open.length === 1,
      'loops-alone': readings.length + open.length > 1 && conductors.length === 0,
    }),
    assumptions,
  };

  function reading(pair: RunPair, shown: Ohms): PairReading {
    const may = readingBounds(shown, accuracy);
    if (may.high < leadResistance) {
      throw new InputError('conflict', 'leadResistance', `at most ${shown} Ω, the reading of pair ${pair}`, leadResistance);
    }
    const measured = eachBound((ohms) => Math.max(0, ohms - leadResistance), may);
    // Copper changes with temperature, connections do not: they may be none or all they may be.
    const cooled = (ohms: Ohms, celsius: Celsius, fixed: Ohms) => {
      const still = Math.min(fixed, ohms);
      return (ohms - still) / atTemperature(1, wire.coefficient, celsius) + still;
    };
    const corners = (ohms: Ohms) =>
      [temperature.low, temperature.high].flatMap((celsius) => [0, joints].map((fixed) => cooled(ohms, celsius, fixed)));
    const value = cooled(measured.value, temperature.value, 0);
    return { pair, measured, at20: { low: Math.min(...corners(measured.low)), value, high: Math.max(...corners(measured.high)) } };
  }

  function lengthOf(candidate: Wire): LengthOfCandidate {
    const supposed = { perMetre: loopPerMetre(candidate, temperature), rest, length: ANY_LENGTH };
    const alone = fitOf(bounds, supposed);
    const { distance } = fitOf(bounds, { ...supposed, length: knownLength ?? ANY_LENGTH });
    return {
      wire: candidate.title,
      status: distance === 0 ? 'consistent' : 'inconsistent',
      ...(alone.distance === 0 ? { length: inOrder(alone.range) } : {}),
      distance,
    };
  }

  function checks(): FieldCheck[] {
    const { pair, at20 } = highest(readings, 'at20');
    const pairs = [pair];
    const found: FieldCheck[] = [];
    if (scope === 'channel') found.push(upTo(CHANNEL_LOOP, pairs, at20, bothEnds(25)));
    if (scope === 'permanent-link') found.push(upTo(PERMANENT_LINK_LOOP, pairs, at20, bothEnds(21)));
    if (knownLength !== undefined) {
      const cold = coldLoopOf(cords).high;
      const limit = eachBound((metres) => 2 * most * metres + joints + cold, knownLength);
      found.push(upTo({ name: 'loop-per-length', source: cable?.source ?? 'tia-568.2-d-cable' }, pairs, at20, limit));
    }
    const { pairFraction, pairFloor, pairToPairFraction, pairToPairFloor } = UNBALANCE_LIMIT_FIELDS;
    for (const [one, other] of everyTwo(readings)) {
      const sides = [side(one.at20), side(other.at20)] as const;
      found.push(alike(PAIR_TO_PAIR_UNBALANCE, [one.pair, other.pair], sides, pairToPairFraction.default, pairToPairFloor.default));
    }
    for (const { pair: own, resistances } of conductors) {
      const [one, other] = resistances;
      const both = [readingBounds(one, accuracy), readingBounds(other, accuracy)] as const;
      found.push(alike(PAIR_UNBALANCE, [own], both, pairFraction.default, pairFloor.default));
    }
    return found.map((check) => (check.verdict === 'uncertain' ? { ...check, deciding: deciding(check) } : check));
  }

  /** What decides where the bounds of a reading lie on both sides of a limit. */
  function deciding({ name }: FieldCheck) {
    const parameters = { accuracy, temperature: temperature.low < temperature.high, knownLength: name === 'loop-per-length' };
    return Object.entries(parameters).flatMap(([parameter, decides]) => (decides ? { parameter } : []));
  }
}

/** Loops of pairs whose conductors are alike; a pair that was not read lies between those that were. */
function loopsOf(readings: readonly PairReading[], state: 'at20' | 'measured'): MeasuredLoops {
  const read = readings.map(({ [state]: figure }) => figure);
  const unread = {
    low: Math.min(...read.map(({ low }) => low)),
    value: read.reduce((sum, { value }) => sum + value, 0) / read.length,
    high: Math.max(...read.map(({ high }) => high)),
  };
  const sideOf = (pair: RunPair) => side(readings.find((reading) => reading.pair === pair)?.[state] ?? unread);
  const pairsetA = eachBound(sum, sideOf('1,2'), sideOf('3,6'));
  const pairsetB = eachBound(sum, sideOf('4,5'), sideOf('7,8'));
  return {
    pairLoop: highest(readings, state)[state],
    pairsetA,
    pairsetB,
    twoPair: pairsetB.value > pairsetA.value ? pairsetB : pairsetA,
    // Two loops of no resistance at all are one of none.
    fourPair: eachBound((one, other) => (one + other === 0 ? 0 : parallel(one, other)), pairsetA, pairsetB),
  };
}

function highest(readings: readonly PairReading[], state: 'at20' | 'measured') {
  return readings.reduce((worst, reading) => (reading[state].value > worst[state].value ? reading : worst));
}

/** Of figures that all rise with each: corner by corner. */
function eachBound(make: (one: number, other: number) => number, one: BoundedFigure, other: BoundedFigure = one): BoundedFigure {
  return { low: make(one.low, other.low), value: make(one.value, other.value), high: make(one.high, other.high) };
}

function sum(one: number, other: number) {
  return one + other;
}

/** Both conductors of a pair side by side: a quarter of its loop. */
function side(loop: BoundedFigure) {
  return eachBound((ohms) => ohms / 4, loop);
}

function bothEnds(given: number | Interval): BoundedFigure {
  const { low, high } = typeof given === 'number' ? { low: given, high: given } : given;
  return { low, value: (low + high) / 2, high };
}

function cladGauges(gauge = 24): number[] {
  return [...new Set([...CLAD_GAUGES, gauge])].filter((own) => own <= 28).sort((one, other) => one - other);
}

function assumed(input: FromMeasurementInput, connections: number) {
  const rows: readonly (readonly [isAssumed: boolean, words: string])[] = [
    [input.leadResistance === undefined, 'leads: nulled'],
    [input.temperature === undefined, 'temperature: 20 °C'],
    [input.accuracy === undefined, 'accuracy: exact'],
    [input.connections === undefined && connections > 0, `connections: none to ${connections}`],
    [input.scope === 'channel' && input.cords === undefined, 'cords: as the cable'],
    [input.cable === undefined, 'cable: copper of 22 to 24 AWG, at most 9.38 Ω/100 m'],
    [Object.keys(input.pairs).length < 4, 'pairs not read: like those that were'],
  ];
  return rows.flatMap(([isAssumed, words]) => (isAssumed ? words : []));
}
