/** Random questions, the core's answers and what people get wrong: readings, and pairs that are unlike. @module */
import { expectedReading } from '../../../src/cable/field/expected-reading.ts';
import { type FromMeasurementInput, fromMeasurement } from '../../../src/cable/field/from-measurement.ts';
import { loadedVoltage } from '../../../src/cable/field/loaded-voltage.ts';
import { type ConductorsByPair, type RunPair, type RunUnbalance, type UnbalanceInput, unbalance } from '../../../src/cable/unbalance.ts';
import { type PairResistance, type PairUnbalanceInput, pairUnbalance } from '../../../src/ethernet/pair-unbalance.ts';
import { logUniform, pick, type Random, uniform, whole } from '../random.ts';
import { type Asked, again, figureOf, loading, number, poe, segment } from './kit.ts';

const PAIRS: readonly RunPair[] = ['1,2', '3,6', '4,5', '7,8'];

/** Conductors of some pairs, unlike by a few percent as true ones are. */
function conductorsOf(random: Random, pairs: readonly RunPair[]): ConductorsByPair {
  const usual = logUniform(random, 0.5, 20);
  const one = (): number => usual * uniform(random, 0.95, 1.05);
  return Object.fromEntries(pairs.map((pair) => [pair, [one(), one()]]));
}

function unbalanceOf(input: UnbalanceInput): RunUnbalance & { readonly leastMargin: number } {
  const answer = unbalance(input);
  return { ...answer, leastMargin: Math.min(...[...answer.pairs, ...answer.pairToPair].map(({ margin }) => margin)) };
}

const unbalanceAsked: Asked<'unbalance'> = {
  question: (random) => {
    const some = PAIRS.filter(() => random() < 0.8);
    return {
      pairs: conductorsOf(random, some.length === 0 ? ['4,5'] : some),
      limits: pick(random, [undefined, {}, { pairFraction: 0.02 }, { pairFloor: 0, pairToPairFloor: 0.05, pairToPairFraction: 0.03 }]),
    };
  },
  answer: unbalanceOf,
  mistakes: [
    {
      slip: 'series-for-parallel',
      of: 'pairs[0].parallel',
      make: (input) => {
        const [first, second] = unbalance(input).pairs[0]?.conductors ?? [0, 0];
        return first + second;
      },
    },
    {
      slip: 'unbalance-of-one',
      of: 'pairs[0].fraction',
      make: (input) => {
        const [first = 0, second = 0] = unbalance(input).pairs[0]?.conductors ?? [];
        return (Math.max(first, second) - Math.min(first, second)) / Math.max(first, second);
      },
    },
    {
      slip: 'unbalance-of-one',
      of: 'pairs[0].fraction',
      make: (input) => {
        const [first = 0, second = 0] = unbalance(input).pairs[0]?.conductors ?? [];
        return Math.max(first, second) / Math.min(first, second) - 1;
      },
    },
    { slip: 'difference-for-margin', of: 'pairs[0].margin', make: (input) => unbalance(input).pairs[0]?.difference },
    {
      slip: 'lesser-of-two-limits',
      of: 'pairs[0].limit',
      make: (input) => {
        const least = (limits: UnbalanceInput['limits']): number => unbalance({ ...input, limits }).pairs[0]?.limit ?? Number.NaN;
        // What the fraction alone permits, and the fixed figure alone.
        return Math.min(least({ ...input.limits, pairFloor: 0 }), least({ ...input.limits, pairFraction: 0 }));
      },
    },
  ],
};

function added(random: Random): PairResistance | undefined {
  const one = (): number => uniform(random, 0, 0.6);
  if (random() < 0.3) return undefined;
  return random() < 0.5 ? one() : Object.fromEntries(PAIRS.map((pair) => [pair, one()]));
}

/** Every conductor as many times as large as that of its pair says. */
function scaled(input: PairUnbalanceInput, by: (first: number, second: number) => number): PairUnbalanceInput {
  const pairs = Object.entries(input.pairs).map(([pair, [first, second]]) => {
    const times = by(first, second);
    return [pair, [first * times, second * times]] as const;
  });
  return { ...input, pairs: Object.fromEntries(pairs) };
}

const pairUnbalanceAsked: Asked<'pairUnbalance'> = {
  question: (random) => {
    const { poeClass, pseType, limits } = poe(random);
    const names = limits.pairs === 4 || random() < 0.2 ? PAIRS : pick(random, [PAIRS.slice(0, 2), PAIRS.slice(2)]);
    const whole: PairUnbalanceInput = {
      pairs: conductorsOf(random, names),
      positive: random() < 0.5 ? undefined : names.filter((_, index) => index % 2 === 1),
      psePairResistance: added(random),
      pdPairResistance: added(random),
      poeClass: poeClass < 5 && names.length === 4 ? 5 : poeClass,
      pseType: names.length === 4 ? undefined : pseType,
      pseVoltage: random() < 0.4 ? undefined : uniform(random, 40, 57),
    };
    const { pseVoltage, resistance } = pairUnbalance({ ...whole, pdPower: 0 });
    return random() < 0.3 ? whole : { ...whole, pdPower: (loading(random) * pseVoltage * pseVoltage) / (4 * resistance) };
  },
  answer: (input) => {
    const answer = pairUnbalance(input);
    return answer.feasible ? answer : { ...answer, ...answer.operating, feasible: false };
  },
  mistakes: [
    {
      slip: 'series-for-parallel',
      // Conductors so much larger that side by side they are what they were one behind the other.
      make: (input) =>
        again(
          pairUnbalanceAsked,
          scaled(input, (first, second) => (first + second) ** 2 / (first * second)),
          'largestPairCurrent',
        ),
    },
    {
      slip: 'even-division',
      make: (input, answer) =>
        Object.keys(input.pairs).length === 4 ? (number(figureOf(answer, 'operating.current')) ?? 0) / 2 : undefined,
    },
    {
      slip: 'even-division',
      of: 'largestConductorCurrent',
      make: (_input, answer) => (number(figureOf(answer, 'largestPairCurrent')) ?? 0) / 2,
    },
    {
      slip: 'direct-ratio',
      of: 'pairs[0].conductorCurrents[0]',
      make: (_input, answer) => number(figureOf(answer, 'pairs[0].conductorCurrents[1]')),
    },
    {
      slip: 'power-at-wrong-end',
      of: 'operating.current',
      make: (_input, answer) =>
        (number(figureOf(answer, 'operating.loadPower')) ?? 0) / (number(figureOf(answer, 'pseVoltage')) ?? Number.NaN),
    },
    {
      slip: 'drop-for-voltage',
      of: 'operating.loadVoltage',
      make: (_input, answer) => number(figureOf(answer, 'operating.voltageDrop')),
    },
    {
      slip: 'unstable-root',
      of: 'operating.loadVoltage',
      make: (_input, answer) => (number(figureOf(answer, 'pseVoltage')) ?? 0) - (number(figureOf(answer, 'operating.loadVoltage')) ?? 0),
    },
  ],
};

const loadedVoltageAsked: Asked<'loadedVoltage'> = {
  question: (random) => {
    const openVoltage = logUniform(random, 3, 400);
    // Away from half of it, where the power that is left is a difference of two that are the same.
    const share = random() < 0.1 ? 1 : random() < 0.7 ? uniform(random, 0.55, 0.999) : uniform(random, 0.01, 0.45);
    const isExact = random() < 0.6;
    const fraction = uniform(random, 0, 0.01);
    return {
      openVoltage,
      loadedVoltage: share * openVoltage,
      current: logUniform(random, 0.01, 20),
      minimumVoltage: random() < 0.5 ? undefined : openVoltage * uniform(random, 0.4, 1.05),
      ...(isExact
        ? {}
        : {
            voltageAccuracy: { fraction, fixed: pick(random, [undefined, 0.05]) },
            currentAccuracy: pick(random, [undefined, { fraction }]),
          }),
    };
  },
  answer: loadedVoltage,
  mistakes: [
    { slip: 'open-for-loaded', of: 'loadPower.value', make: ({ openVoltage, current }) => openVoltage * current },
    {
      slip: 'quarter-left-out',
      of: 'maximumPower.value',
      // The open voltage into a short at the far end.
      make: ({ openVoltage }, answer) => {
        const { resistance, maximumPower } = answer as ReturnType<typeof loadedVoltage>;
        return maximumPower === undefined ? undefined : openVoltage ** 2 / resistance.value;
      },
    },
    {
      slip: 'lowest-voltage-left-out',
      of: 'powerLeft.value',
      make: (input) => {
        if (input.minimumVoltage === undefined || input.minimumVoltage >= input.openVoltage) return undefined;
        return again(loadedVoltageAsked, { ...input, minimumVoltage: undefined }, 'powerLeft.value');
      },
    },
    {
      slip: 'load-not-taken-off',
      of: 'powerLeft.value',
      make: (_input, answer) =>
        (number(figureOf(answer, 'powerLeft.value')) ?? Number.NaN) + (number(figureOf(answer, 'loadPower.value')) ?? Number.NaN),
    },
    {
      slip: 'load-for-line',
      of: 'resistance.value',
      make: ({ current }, answer) => (number(figureOf(answer, 'loadPower.value')) ?? 0) / current ** 2,
    },
  ],
};

/** Half of what it is, by the core's own figures. */
const half =
  (of: string) =>
  (_input: unknown, answer: unknown): number =>
    (number(figureOf(answer, of)) ?? 0) / 2;

const expectedReadingAsked: Asked<'expectedReading'> = {
  question: (random) => {
    const connections = pick(random, [undefined, 1, 2, 4]);
    return {
      installed: Array.from({ length: whole(random, 1, 3) }, () => segment(random)),
      cords: pick(random, [undefined, [segment(random)], [segment(random), segment(random)]]),
      connections,
      linkConnections: connections === undefined ? undefined : pick(random, [undefined, 1]),
      connectionResistance: pick(random, [undefined, 0.02]),
      temperatureSpread: pick(random, [undefined, 5]),
    };
  },
  answer: expectedReading,
  mistakes: [
    { slip: 'one-way-length', make: half('channel.atTemperature.value') },
    { slip: 'pairset-for-pair-loop', of: 'channel.atTemperature.high', make: half('channel.atTemperature.high') },
    { slip: 'cold-resistance', make: (_input, answer) => number(figureOf(answer, 'channel.at20.value')) },
    {
      slip: 'connections-left-out',
      make: (input) => again(expectedReadingAsked, { ...input, connections: 0, linkConnections: undefined }, 'channel.atTemperature.value'),
    },
    {
      slip: 'connections-in-one-wire',
      // As much as half of the resistance of each.
      make: (input) =>
        again(
          expectedReadingAsked,
          { ...input, connectionResistance: (input.connectionResistance ?? 0.2) / 2 },
          'channel.atTemperature.value',
        ),
    },
  ],
};

/** Readings of a run that is about as it is said to be; one in five has a pair that is not. */
function readingsOf(random: Random): FromMeasurementInput {
  const { cable, length } = segment(random);
  const leadResistance = pick(random, [undefined, 0.2, 0.8]);
  const celsius = random() < 0.2 ? undefined : uniform(random, -10, 60);
  const cords = pick(random, [undefined, [], [segment(random)], [segment(random), segment(random)]]);
  const rest = cords === undefined || cords.length === 0 ? 0 : expectedReading({ installed: cords }).channel.at20.value;
  const loop = expectedReading({ installed: [{ cable, length, temperature: celsius }] }).channel.atTemperature.value;
  const read = (): number => (leadResistance ?? 0) + rest + loop * uniform(random, 0.995, 1.08);
  const some = PAIRS.filter(() => random() < 0.7);
  const pairs = (some.length === 0 ? PAIRS : some).map((pair, index) => {
    const shown = random() < 0.05 ? read() * uniform(random, 1.3, 2) : read();
    return [pair, index > 0 && random() < 0.1 ? 'open' : shown] as const;
  });
  return {
    pairs: Object.fromEntries(pairs),
    leadResistance,
    temperature: celsius === undefined || random() < 0.7 ? celsius : { low: celsius - 5, high: celsius + 8 },
    cable: random() < 0.8 ? cable : undefined,
    knownLength: random() < 0.3 ? length : undefined,
    scope: pick(random, ['cable', 'permanent-link', 'channel']),
    cords,
    connections: pick(random, [undefined, 0, 2]),
    connectionResistance: pick(random, [undefined, 0.05]),
    accuracy: pick(random, [undefined, { fraction: 0.01, fixed: 0.1 }, { fixed: 0.05 }]),
  };
}

/** Of the cable that was named, the longest that gives the readings, and what becomes of it if the input is another. */
function longest(input: FromMeasurementInput, other: Partial<FromMeasurementInput> = {}): number | undefined {
  if (input.cable === undefined || fromMeasurement(input).lengths[0]?.length === undefined) return undefined;
  return fromMeasurement({ ...input, ...other }).lengths[0]?.length?.high;
}

const fromMeasurementAsked: Asked<'fromMeasurement'> = {
  question: readingsOf,
  answer: (input) => {
    const answer = fromMeasurement(input);
    return { ...answer, feasible: input.cable === undefined || answer.lengths[0]?.length !== undefined };
  },
  mistakes: [
    {
      slip: 'leads-left-in',
      of: 'readings[0].at20.value',
      make: (input) => again(fromMeasurementAsked, { ...input, leadResistance: 0 }, 'readings[0].at20.value'),
    },
    {
      slip: 'leads-left-in',
      of: 'lengths[0].length.high',
      make: (input) => longest(input, { leadResistance: 0 }),
    },
    {
      slip: 'reading-not-at-20',
      of: 'loops.at20.pairLoop.value',
      make: (_input, answer) => number(figureOf(answer, 'loops.measured.pairLoop.value')),
    },
    {
      slip: 'cold-resistance',
      of: 'lengths[0].length.high',
      make: (input) => longest(input, { temperature: 20 }),
    },
    { slip: 'one-way-length', of: 'lengths[0].length.high', make: (input) => (longest(input) ?? Number.NaN) * 2 },
    {
      slip: 'pair-loop-for-pairset',
      of: 'loops.at20.twoPair.value',
      make: (_input, answer) => number(figureOf(answer, 'loops.at20.pairLoop.value')),
    },
    {
      slip: 'pairset-for-four-pair',
      of: 'loops.at20.fourPair.value',
      make: (_input, answer) => number(figureOf(answer, 'loops.at20.twoPair.value')),
    },
    {
      slip: 'series-for-parallel',
      of: 'loops.at20.fourPair.value',
      make: (input) => {
        const { pairsetA, pairsetB } = fromMeasurement(input).loops?.at20 ?? {};
        return (pairsetA?.value ?? Number.NaN) + (pairsetB?.value ?? Number.NaN);
      },
    },
  ],
};

type FieldName = 'unbalance' | 'pairUnbalance' | 'loadedVoltage' | 'expectedReading' | 'fromMeasurement';

/** By name. */
export const field: { readonly [Name in FieldName]: Asked<Name> } = {
  fromMeasurement: fromMeasurementAsked,
  expectedReading: expectedReadingAsked,
  loadedVoltage: loadedVoltageAsked,
  pairUnbalance: pairUnbalanceAsked,
  unbalance: unbalanceAsked,
};
