import { awg } from '../../../src/conductor/awg.ts';
import { loopResistance } from '../../../src/conductor/loop-resistance.ts';
import { resistancePerMetre } from '../../../src/conductor/resistance-per-metre.ts';
import { resistanceAtTemperature } from '../../../src/conductor/temperature-coefficient.ts';
import { uniformWire } from '../../../src/conductor/uniform-wire.ts';
import { logUniform, pick, uniform, whole } from '../random.ts';
import { type Asked, again, conductor, FOOT, figureOf, number, temperature } from './kit.ts';

const awgAsked: Asked<'awg'> = {
  question: (random) => ({
    size: whole(random, -3, 40),
    stranding: pick(random, ['solid', 'stranded', undefined]),
    family: pick(random, ['formula', 'astm-b258', undefined]),
    material: pick(random, ['annealed-copper', 'aluminium', undefined]),
  }),
  answer: ({ size, ...options }) => awg(size, options),
  mistakes: [{ slip: 'diameter-for-radius', make: (_input, answer) => (number(figureOf(answer, 'resistancePerMetre')) ?? 0) / 4 }],
};

const uniformWireAsked: Asked<'uniformWire'> = {
  question: (random) => {
    const all = {
      resistance: logUniform(random, 1e-3, 1e3),
      resistivity: logUniform(random, 0.015, 1),
      length: logUniform(random, 0.1, 1e4),
      area: logUniform(random, 0.01, 300),
    };
    return { ...all, [pick(random, ['resistance', 'resistivity', 'length', 'area'])]: undefined };
  },
  answer: uniformWire,
  mistakes: [
    {
      slip: 'one-way-length',
      of: 'resistance',
      make: (input, answer) => (input.resistance === undefined ? (number(figureOf(answer, 'resistance')) ?? 0) / 2 : undefined),
    },
    {
      slip: 'one-way-length',
      of: 'length',
      make: (input, answer) => (input.length === undefined ? (number(figureOf(answer, 'length')) ?? 0) / 2 : undefined),
    },
  ],
};

const resistancePerMetreAsked: Asked<'resistancePerMetre'> = {
  question: (random) => ({ conductor: conductor(random), temperature: temperature(random) }),
  answer: ({ conductor: of, temperature: at }) => ({ resistancePerMetre: resistancePerMetre(of, at) }),
  mistakes: [
    { slip: 'cold-resistance', make: ({ conductor }) => conductor.resistancePerMetre },
    // As if it were 20 K warmer.
    {
      slip: 'twenty-left-out',
      make: ({ conductor, temperature: at = 20 }) =>
        conductor.temperatureCoefficient === undefined ? undefined : resistancePerMetre(conductor, at + 20),
    },
    { slip: 'per-km-for-per-100-m', make: (_input, answer) => (number(figureOf(answer, 'resistancePerMetre')) ?? 0) * 10 },
  ],
};

const resistanceAtTemperatureAsked: Asked<'resistanceAtTemperature'> = {
  question: (random) => ({
    resistance: logUniform(random, 1e-3, 1e4),
    temperature: uniform(random, -20, 100),
    coefficient: uniform(random, 0.0001, 0.006),
    coefficientTemperature: pick(random, [undefined, 0, 18, 25]),
    at: uniform(random, -40, 150),
  }),
  answer: ({ at, ...line }) => ({ resistanceAtTemperature: resistanceAtTemperature({ ...line, at }) }),
  mistakes: [
    {
      slip: 'twenty-left-out',
      make: ({ at, ...line }) => resistanceAtTemperature({ ...line, coefficientTemperature: 0, at }),
    },
    {
      slip: 'ratio-upside-down',
      make: ({ resistance }, answer) => resistance ** 2 / (number(figureOf(answer, 'resistanceAtTemperature')) ?? Number.NaN),
    },
    { slip: 'temperature-not-changed', make: ({ resistance }) => resistance },
    {
      slip: 'coefficient-from-wrong-temperature',
      // As if the coefficient were stated at the temperature of the known resistance.
      make: ({ at, ...line }) => resistanceAtTemperature({ ...line, coefficientTemperature: line.temperature, at }),
    },
  ],
};

const loopResistanceAsked: Asked<'loopResistance'> = {
  question: (random) => ({ conductor: conductor(random), length: logUniform(random, 0.1, 5000), temperature: temperature(random) }),
  answer: (input) => ({ loopResistance: loopResistance(input), resistancePerMetre: undefined }),
  mistakes: [
    { slip: 'one-way-length', make: (_input, answer) => (number(figureOf(answer, 'loopResistance')) ?? 0) / 2 },
    { slip: 'cold-resistance', make: (input) => again(loopResistanceAsked, { ...input, temperature: 20 }, 'loopResistance') },
    {
      slip: 'twenty-left-out',
      make: (input) => again(loopResistanceAsked, { ...input, temperature: (input.temperature ?? 20) + 20 }, 'loopResistance'),
    },
    { slip: 'feet-for-metres', make: (input) => again(loopResistanceAsked, { ...input, length: input.length / FOOT }, 'loopResistance') },
    { slip: 'metres-for-feet', make: (input) => again(loopResistanceAsked, { ...input, length: input.length * FOOT }, 'loopResistance') },
    { slip: 'per-100-m-for-per-km', make: (_input, answer) => (number(figureOf(answer, 'loopResistance')) ?? 0) / 10 },
    {
      slip: 'rounded-early',
      make: (input, answer) => {
        const perMetre = (number(figureOf(answer, 'loopResistance')) ?? 0) / (2 * input.length);
        return 2 * Number(perMetre.toPrecision(2)) * input.length;
      },
    },
    { slip: 'times-thousand', make: (_input, answer) => (number(figureOf(answer, 'loopResistance')) ?? 0) * 1000 },
    { slip: 'over-thousand', make: (_input, answer) => (number(figureOf(answer, 'loopResistance')) ?? 0) / 1000 },
  ],
};

/** By name. */
export const conductors: {
  readonly [Name in 'awg' | 'uniformWire' | 'resistancePerMetre' | 'resistanceAtTemperature' | 'loopResistance']: Asked<Name>;
} = {
  awg: awgAsked,
  uniformWire: uniformWireAsked,
  resistancePerMetre: resistancePerMetreAsked,
  resistanceAtTemperature: resistanceAtTemperatureAsked,
  loopResistance: loopResistanceAsked,
};
