import { runResistance } from '../../../src/cable/run-resistance.ts';
import { operatingPoint } from '../../../src/circuit/operating-point.ts';
import { voltageDrop } from '../../../src/circuit/voltage-drop.ts';
import { logUniform, pick, uniform, whole } from '../random.ts';
import { type Asked, again, conductor, FOOT, figureOf, load, loading, number, segment, temperature } from './kit.ts';

const runResistanceAsked: Asked<'runResistance'> = {
  question: (random) => ({
    segments: Array.from({ length: random() < 0.03 ? 25 : whole(random, 1, 4) }, () => segment(random)),
    connections: pick(random, [undefined, 0, 2, 6]),
    connectionResistance: pick(random, [undefined, 0, 0.02]),
    basis: pick(random, [undefined, 'nominal', 'maximum']),
  }),
  answer: runResistance,
  mistakes: [
    { slip: 'one-way-length', make: (_input, answer) => (number(figureOf(answer, 'pairLoop')) ?? 0) / 2 },
    { slip: 'pairset-for-pair-loop', make: (_input, answer) => number(figureOf(answer, 'twoPair')) },
    { slip: 'pair-loop-for-pairset', of: 'twoPair', make: (_input, answer) => number(figureOf(answer, 'pairLoop')) },
    { slip: 'pairset-for-four-pair', of: 'fourPair', make: (_input, answer) => number(figureOf(answer, 'twoPair')) },
    { slip: 'four-pair-for-pairset', of: 'twoPair', make: (_input, answer) => number(figureOf(answer, 'fourPair')) },
    {
      slip: 'cold-resistance',
      make: (input) =>
        again(runResistanceAsked, { ...input, segments: input.segments.map((piece) => ({ ...piece, temperature: 20 })) }, 'pairLoop'),
    },
    { slip: 'four-pair-for-pair-loop', make: (_input, answer) => number(figureOf(answer, 'fourPair')) },
    {
      slip: 'connections-in-one-wire',
      // As much as half of the resistance of each.
      make: (input) => again(runResistanceAsked, { ...input, connectionResistance: (input.connectionResistance ?? 0.2) / 2 }, 'pairLoop'),
    },
    { slip: 'connections-left-out', make: (input) => again(runResistanceAsked, { ...input, connections: 0 }, 'pairLoop') },
    {
      slip: 'feet-for-metres',
      make: (input) =>
        again(
          runResistanceAsked,
          { ...input, segments: input.segments.map((piece) => ({ ...piece, length: piece.length / FOOT })) },
          'pairLoop',
        ),
    },
  ],
};

const operatingPointAsked: Asked<'operatingPoint'> = {
  question: (random) => {
    const supplyVoltage = logUniform(random, 3, 400);
    const resistance = logUniform(random, 1e-3, 1e3);
    return { supplyVoltage, resistance, load: load(random, supplyVoltage, resistance) };
  },
  answer: operatingPoint,
  mistakes: [
    { slip: 'drop-for-voltage', make: (_input, answer) => number(figureOf(answer, 'voltageDrop')) },
    { slip: 'voltage-for-drop', of: 'voltageDrop', make: (_input, answer) => number(figureOf(answer, 'loadVoltage')) },
    {
      slip: 'unstable-root',
      make: ({ supplyVoltage, load }, answer) =>
        load.power === undefined ? undefined : supplyVoltage - (number(figureOf(answer, 'loadVoltage')) ?? 0),
    },
    {
      slip: 'power-at-wrong-end',
      make: ({ supplyVoltage, resistance, load }) =>
        load.power === undefined ? undefined : supplyVoltage - (load.power / supplyVoltage) * resistance,
    },
    {
      slip: 'percent-of-wrong-voltage',
      of: 'dropFraction',
      make: (_input, answer) => (number(figureOf(answer, 'voltageDrop')) ?? 0) / (number(figureOf(answer, 'loadVoltage')) ?? 0),
    },
  ],
};

const mostPowerAsked: Asked<'mostPower'> = {
  question: (random) => {
    const supplyVoltage = logUniform(random, 3, 400);
    const resistance = logUniform(random, 1e-3, 1e3);
    return { supplyVoltage, resistance, load: { power: Math.max(1e-3, (loading(random) * supplyVoltage ** 2) / (4 * resistance)) } };
  },
  answer: (input) => ({
    ...operatingPoint(input),
    maximumLoadPower: mostOf(input.supplyVoltage, input.resistance),
  }),
  mistakes: [
    { slip: 'drop-for-voltage', of: 'loadVoltage', make: (_input, answer) => number(figureOf(answer, 'voltageDrop')) },
    {
      slip: 'unstable-root',
      of: 'loadVoltage',
      make: ({ supplyVoltage }, answer) => supplyVoltage - (number(figureOf(answer, 'loadVoltage')) ?? 0),
    },
    {
      slip: 'unstable-root',
      of: 'current',
      // Both roots together are the current into a short.
      make: ({ supplyVoltage, resistance }, answer) => supplyVoltage / resistance - (number(figureOf(answer, 'current')) ?? 0),
    },
    {
      slip: 'quarter-left-out',
      of: 'maximumLoadPower',
      make: ({ supplyVoltage, resistance }) => {
        const short = operatingPoint({ supplyVoltage, resistance, load: { resistance: 0 } });
        return short.feasible ? short.lineLoss : undefined;
      },
    },
    { slip: 'power-at-wrong-end', of: 'current', make: ({ supplyVoltage, load }) => load.power / supplyVoltage },
  ],
};

const voltageDropAsked: Asked<'voltageDrop'> = {
  question: (random) => {
    const supplyVoltage = uniform(random, 5, 60);
    const length = logUniform(random, 1, 2000);
    const run = { length, temperature: temperature(random) };
    const out = conductor(random);
    const back = conductor(random);
    const legs = random() < 0.7 ? { conductor: out } : { out, back };
    const short = voltageDrop({ supplyVoltage, ...run, ...legs, load: { resistance: 0 } });
    if (!short.feasible) throw new Error('a short carries no power');
    return { supplyVoltage, ...run, ...legs, load: load(random, supplyVoltage, supplyVoltage / short.current) };
  },
  answer: voltageDrop,
  mistakes: [
    { slip: 'voltage-for-drop', make: (_input, answer) => number(figureOf(answer, 'loadVoltage')) },
    { slip: 'drop-for-voltage', of: 'loadVoltage', make: (_input, answer) => number(figureOf(answer, 'voltageDrop')) },
    {
      slip: 'unstable-root',
      make: ({ load }, answer) => (load.power === undefined ? undefined : number(figureOf(answer, 'loadVoltage'))),
    },
    {
      slip: 'power-at-wrong-end',
      make: ({ supplyVoltage, load }, answer) => {
        if (load.power === undefined) return undefined;
        // The line by what it drops, and the current by the wrong voltage.
        const [current, drop] = [number(figureOf(answer, 'current')) ?? 0, number(figureOf(answer, 'voltageDrop')) ?? 0];
        return (load.power / supplyVoltage) * (drop / current);
      },
    },
    {
      slip: 'percent-of-wrong-voltage',
      of: 'dropFraction',
      make: (_input, answer) => (number(figureOf(answer, 'voltageDrop')) ?? 0) / (number(figureOf(answer, 'loadVoltage')) ?? 0),
    },
    {
      slip: 'one-way-length',
      make: (input) => {
        // Of unequal conductors it is the way out that is looked at.
        const { out, back: _back, conductor: _conductor, ...rest } = input;
        return again(voltageDropAsked, { ...rest, conductor: out ?? input.conductor, length: input.length / 2 }, 'voltageDrop');
      },
    },
    { slip: 'cold-resistance', make: (input) => again(voltageDropAsked, { ...input, temperature: 20 }, 'voltageDrop') },
    { slip: 'metres-for-feet', make: (input) => again(voltageDropAsked, { ...input, length: input.length * FOOT }, 'voltageDrop') },
  ],
};

/** By name. */
export const circuits: { readonly [Name in 'runResistance' | 'operatingPoint' | 'mostPower' | 'voltageDrop']: Asked<Name> } = {
  runResistance: runResistanceAsked,
  operatingPoint: operatingPointAsked,
  mostPower: mostPowerAsked,
  voltageDrop: voltageDropAsked,
};

function mostOf(supplyVoltage: number, resistance: number): number {
  const point = operatingPoint({ supplyVoltage, resistance, load: { power: 1e12 } });
  if (point.feasible) throw new Error('a line that carries a terawatt');
  return point.maximumLoadPower;
}
