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
import type { Celsius, Metres, Ohms, OhmsPerMetre } from '../../quantity/units.ts';
import type { Cable } from '../cable.ts';
import { CABLES } from '../cables.ts';
import { type CableOrName, CONNECTION_RESISTANCE, CORDS, type RunPiece, readCable, type Segment } from '../read-cable.ts';
import {
  type ConductorsByPair,
  conductorsOf,
  PAIR_FLOOR,
  PAIR_FRACTION,
  PAIR_TO_PAIR_FLOOR,
  PAIR_TO_PAIR_FRACTION,
  type PairOfConductors,
  parallel,
  RUN_PAIRS,
  type RunPair,
} from '../unbalance.ts';
import { loopOf } from './expected-reading.ts';
import { ANY_LENGTH, type Explanation, type ExplanationName, explanationsOf } from './explanations.ts';
import { fitOf, type PairBounds } from './fit.ts';
import { METER_ACCURACY_FIELDS, type MeterAccuracy, readingBounds } from './loaded-voltage.ts';
import { alike, type FieldCheck, type Undecided, upTo } from './reading-checks.ts';
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

/** Explanations that the readings cannot tell apart, and what would. */
export interface Ambiguity {
  readonly between: readonly ExplanationName[];
  /** The reading that would tell. */
  readonly tells: string;
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

interface ReadMeasurement {
  readonly conductors: readonly PairOfConductors[];
  readonly cable: Cable;
  readonly cords: readonly Segment[];
}

/** @internal */
export const FROM_MEASUREMENT_FIELDS: Fields<
  FromMeasurementInput,
  'leadResistance' | 'temperature' | 'cords' | 'connectionResistance',
  ReadMeasurement
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
  const { scope, cable, cords, leadResistance, connectionResistance, accuracy, conductors = [], knownLength } = given;
  const { connections = CONNECTIONS[scope] } = given;
  const temperature = bothEnds(given.temperature);
  const isLengthKnown = knownLength !== undefined;
  const length = isLengthKnown ? bothEnds(knownLength) : ANY_LENGTH;
  const most = cable === undefined ? categoryLimit() : cable.maximumResistancePerMetre;
  const wire = cable === undefined ? categoryWire(most) : wireOf(cable);
  const joints = 2 * connections * connectionResistance;
  const cordLoop = loopOf(cords, 0);
  const rest: PairBounds = { low: cordLoop.low, high: cordLoop.high + joints };

  const { readings, open } = readingsOf(given.pairs, { leadResistance, accuracy, temperature, coefficient: wire.coefficient, joints });
  const deciding: Undecided = [
    ...(accuracy === undefined ? [] : [{ parameter: 'accuracy' }]),
    ...(temperature.low === temperature.high ? [] : [{ parameter: 'temperature' }]),
  ];
  const bounds = readings.map(({ measured }) => measured);
  const isRead = readings.length > 0;
  const explanations = isRead
    ? explanationsOf({ names: readings.map(({ pair }) => pair), pairs: bounds, open, wire, rest, length, isLengthKnown, temperature })
    : [];
  return {
    readings,
    open,
    ...(isRead ? { loops: { at20: loopsOf(readings, ({ at20 }) => at20), measured: loopsOf(readings, ({ measured }) => measured) } } : {}),
    lengths: isRead ? candidates(cable === undefined ? [] : [wire], cable?.gauge).map(lengthOf) : [],
    checks: isRead ? checks() : [],
    explanations,
    cannotTell: ambiguities(explanations, readings.length, open, isLengthKnown, conductors.length > 0),
    assumptions: assumptions(input, connections),
  };

  function lengthOf(candidate: Wire): LengthOfCandidate {
    const perMetre = loopPerMetre(candidate, temperature.low, temperature.high);
    const alone = fitOf(bounds, { perMetre, rest, length: ANY_LENGTH });
    const { distance } = fitOf(bounds, { perMetre, rest, length });
    const { low, high } = alone.length;
    return {
      wire: candidate.title,
      status: distance === 0 ? 'consistent' : 'inconsistent',
      ...(alone.distance === 0 ? { length: { low: Math.min(low, high), high: Math.max(low, high) } } : {}),
      distance,
    };
  }

  function checks(): FieldCheck[] {
    const found: FieldCheck[] = [];
    const highest = readings.reduce((worst, reading) => (reading.at20.value > worst.at20.value ? reading : worst));
    const pairs = [highest.pair];
    if (scope === 'channel') {
      found.push(upTo({ name: CHANNEL_LOOP.name, pairs, source: 'tia-568.2-d-loop' }, highest.at20, exactly(25), deciding));
    } else if (scope === 'permanent-link') {
      found.push(
        upTo({ name: PERMANENT_LINK_LOOP.name, pairs, source: 'iso-11801-permanent-link-loop' }, highest.at20, exactly(21), deciding),
      );
    }
    if (isLengthKnown) {
      const cordsAt20 = loopOf(
        cords.map((cord) => ({ ...cord, temperature: 20 })),
        0,
      ).high;
      const limit = (metres: Metres): Ohms => 2 * most * metres + joints + cordsAt20;
      const limits = { low: limit(length.low), value: limit((length.low + length.high) / 2), high: limit(length.high) };
      const source = cable === undefined ? 'tia-568.2-d-cable' : cable.source;
      found.push(upTo({ name: 'loop-per-length', pairs, source }, highest.at20, limits, [...deciding, { parameter: 'knownLength' }]));
    }
    for (const [index, one] of readings.entries()) {
      for (const other of readings.slice(index + 1)) {
        const check = { name: PAIR_TO_PAIR_UNBALANCE.name, pairs: [one.pair, other.pair], source: 'ieee-802.3-unbalance' } as const;
        // Both conductors of a pair side by side are a quarter of its loop.
        found.push(
          alike(
            check,
            [share(one.at20, 4), share(other.at20, 4)],
            { fraction: PAIR_TO_PAIR_FRACTION.default, floor: PAIR_TO_PAIR_FLOOR.default },
            deciding,
          ),
        );
      }
    }
    for (const { pair, resistances } of conductors) {
      const [one, other] = resistances.map((ohms) => {
        const { low, high } = readingBounds(ohms, accuracy);
        return { low, value: ohms, high };
      }) as [BoundedFigure, BoundedFigure];
      const check = { name: PAIR_UNBALANCE.name, pairs: [pair], source: 'ieee-802.3-unbalance' } as const;
      found.push(alike(check, [one, other], { fraction: PAIR_FRACTION.default, floor: PAIR_FLOOR.default }, deciding));
    }
    return found;
  }
}

/** Circumstances of the readings. */
interface Circumstances {
  readonly leadResistance: Ohms;
  readonly accuracy: MeterAccuracy | undefined;
  readonly temperature: Interval;
  readonly coefficient: number;
  readonly joints: Ohms;
}

function readingsOf(given: ReadingsByPair, circumstances: Circumstances): { readings: PairReading[]; open: RunPair[] } {
  const open = RUN_PAIRS.filter((pair) => given[pair] === 'open');
  const readings = RUN_PAIRS.flatMap((pair) => {
    const { [pair]: shown } = given;
    return shown === undefined || shown === 'open' ? [] : pairReading(pair, shown, circumstances);
  });
  if (readings.length + open.length === 0) throw new InputError('missing', 'pairs', 'at least one pair', undefined);
  return { readings, open };
}

function pairReading(
  pair: RunPair,
  shown: Ohms,
  { leadResistance, accuracy, temperature, coefficient, joints }: Circumstances,
): PairReading {
  const may = readingBounds(shown, accuracy);
  if (may.high < leadResistance) {
    throw new InputError('conflict', 'leadResistance', `at most ${shown} Ω, the reading of pair ${pair}`, leadResistance);
  }
  const clear = (ohms: Ohms): Ohms => (ohms > leadResistance ? ohms - leadResistance : 0);
  const measured: BoundedFigure = { low: clear(may.low), value: clear(shown), high: clear(may.high) };
  // Copper changes with temperature, connections do not: they may be none or all they may be.
  const cooled = (ohms: Ohms, celsius: Celsius, fixed: Ohms): Ohms => {
    const still = fixed < ohms ? fixed : ohms;
    return (ohms - still) / atTemperature(1, coefficient, celsius) + still;
  };
  const corners = (ohms: Ohms): Ohms[] =>
    [temperature.low, temperature.high].flatMap((celsius) => [cooled(ohms, celsius, 0), cooled(ohms, celsius, joints)]);
  const middle = (temperature.low + temperature.high) / 2;
  return {
    pair,
    measured,
    at20: {
      low: Math.min(...corners(measured.low)),
      value: cooled(measured.value, middle, 0),
      high: Math.max(...corners(measured.high)),
    },
  };
}

/** Loops of pairs whose conductors are alike; a pair that was not read lies between those that were. */
function loopsOf(readings: readonly PairReading[], pick: (reading: PairReading) => BoundedFigure): MeasuredLoops {
  const read = readings.map(pick);
  const unread: BoundedFigure = {
    low: Math.min(...read.map(({ low }) => low)),
    value: read.reduce((sum, { value }) => sum + value, 0) / read.length,
    high: Math.max(...read.map(({ high }) => high)),
  };
  const [first, second, third, fourth] = RUN_PAIRS.map((pair) => {
    const own = readings.find((reading) => reading.pair === pair);
    return share(own === undefined ? unread : pick(own), 4);
  }) as [BoundedFigure, BoundedFigure, BoundedFigure, BoundedFigure];
  const pairsetA = combine(first, second, (a, b) => a + b);
  const pairsetB = combine(third, fourth, (a, b) => a + b);
  return {
    pairLoop: read.reduce((worst, figure) => (figure.value > worst.value ? figure : worst)),
    pairsetA,
    pairsetB,
    twoPair: pairsetB.value > pairsetA.value ? pairsetB : pairsetA,
    // Two loops of no resistance at all are one of none.
    fourPair: combine(pairsetA, pairsetB, (a, b) => (a + b === 0 ? 0 : parallel(a, b))),
  };
}

/** Of figures that all rise with both: corner by corner. */
function combine(one: BoundedFigure, other: BoundedFigure, sum: (a: number, b: number) => number): BoundedFigure {
  return { low: sum(one.low, other.low), value: sum(one.value, other.value), high: sum(one.high, other.high) };
}

function share({ low, value, high }: BoundedFigure, parts: number): BoundedFigure {
  return { low: low / parts, value: value / parts, high: high / parts };
}

function bothEnds(given: number | Interval): Interval {
  return typeof given === 'number' ? { low: given, high: given } : given;
}

/** Most of one conductor of a category cable. [Ω/m] */
function categoryLimit(): OhmsPerMetre {
  return CABLES.cat6[5][0];
}

function exactly(value: number): BoundedFigure {
  return { low: value, value, high: value };
}

/** The cable as thought, then copper and clad aluminium by gauge. */
function candidates(thought: readonly Wire[], gauge: number | undefined): Wire[] {
  const clad = new Set<number>(gauge === undefined || gauge > 28 ? CLAD_GAUGES : [...CLAD_GAUGES, gauge]);
  return [...thought, ...GAUGES.map(copperWire), ...[...clad].sort((a, b) => a - b).map(cladWire)];
}

function ambiguities(
  explanations: readonly Explanation[],
  count: number,
  open: readonly RunPair[],
  isLengthKnown: boolean,
  hasConductors: boolean,
): Ambiguity[] {
  const consistent = explanations.filter(({ status }) => status === 'consistent').map(({ name }) => name);
  const among = (...names: ExplanationName[]): ExplanationName[] => names.filter((name) => consistent.includes(name));
  const found: Ambiguity[] = [];
  const add = (between: ExplanationName[], tells: string, least = 2): void => {
    if (between.length >= least) found.push({ between, tells });
  };
  if (!isLengthKnown) {
    add(
      among('as-described', 'hotter', 'clad-aluminium', 'thinner-gauge', 'many-joints'),
      'A length found in another way: the metre marks on the sheath, or the time a pulse takes.',
    );
  }
  add(among('longer', 'hotter'), 'The temperature along the run, or the same reading on a day that is much cooler or warmer.');
  add(
    among('longer', 'clad-aluminium', 'thinner-gauge'),
    'An end of the conductor: its diameter, and whether it is copper all through where it is cut.',
  );
  add(
    among('longer', 'many-joints', 'leads-not-nulled'),
    'The reading with the leads shorted together, and the same pair without its cords.',
  );
  if (count + open.length === 1)
    add(
      among('as-described', 'longer', 'hotter', 'one-bad-joint', 'many-joints'),
      'Readings of the other pairs: what all share is cable, what one has is a joint.',
    );
  else if (!hasConductors)
    add(
      among('one-bad-joint', 'one-pair-longer'),
      'Each conductor of that pair against one of another: a joint is on one of them, a length on both.',
    );
  return found;
}

function assumptions(input: FromMeasurementInput, connections: number): string[] {
  const found: string[] = [];
  if (input.leadResistance === undefined) found.push('leads: nulled');
  if (input.temperature === undefined) found.push('temperature: 20 °C');
  if (input.accuracy === undefined) found.push('accuracy: exact');
  if (input.connections === undefined && connections > 0) found.push(`connections: none to ${connections}`);
  if (input.scope === 'channel' && input.cords === undefined) found.push('cords: as the cable');
  if (input.cable === undefined) found.push('cable: copper of 22 to 24 AWG, at most 9.38 Ω/100 m');
  if (Object.keys(input.pairs).length < 4) found.push('pairs not read: like those that were');
  return found;
}
