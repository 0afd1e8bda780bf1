/** Random questions, the core's answers and what people get wrong: heat. @module */
import { cable } from '../../../src/cable/cable.ts';
import { ampacity } from '../../../src/cable/heat/ampacity.ts';
import { bundleRise } from '../../../src/cable/heat/bundle-rise.ts';
import { filmCoefficient } from '../../../src/cable/heat/film-coefficient.ts';
import { remotePowering } from '../../../src/cable/heat/remote-powering.ts';
import { readCable } from '../../../src/cable/read-cable.ts';
import { logUniform, pick, uniform, whole } from '../random.ts';
import { type Asked, again, figureOf, number } from './kit.ts';

const ampacityAsked: Asked<'ampacity'> = {
  question: (random) => ({
    code: 'NEC 2017',
    gauge: random() < 0.8 ? pick(random, [22, 23, 24, 26]) : whole(random, 18, 28),
    bundle: random() < 0.9 ? whole(random, 1, 192) : whole(random, 193, 400),
    temperatureRating: pick(random, [undefined, 60, 75, 90]),
    ambient: pick(random, [undefined, uniform(random, -20, 90)]),
    halfLoaded: pick(random, [undefined, false, true]),
  }),
  answer: ampacity,
  mistakes: [
    { slip: 'ambient-factor-left-out', make: (input) => again(ampacityAsked, { ...input, ambient: 30 }, 'ampacity') },
    { slip: 'load-factor-left-out', make: (input) => again(ampacityAsked, { ...input, halfLoaded: false }, 'ampacity') },
  ],
};

const filmCoefficientAsked: Asked<'filmCoefficient'> = {
  question: (random) => {
    const ambient = uniform(random, -40, 80);
    return {
      diameter: logUniform(random, 2, 500),
      surfaceTemperature: random() < 0.1 ? ambient : ambient + uniform(random, -30, 120),
      ambient,
      emissivity: pick(random, [undefined, 0, 1, random()]),
    };
  },
  answer: (input) => ({ filmCoefficient: filmCoefficient(input) }),
  mistakes: [
    { slip: 'radiation-left-out', make: (input) => filmCoefficient({ ...input, emissivity: 0 }) },
    {
      slip: 'celsius-for-kelvin',
      make: ({ emissivity = 0.9, ...input }) => {
        const { surfaceTemperature: hot, ambient: cold } = input;
        if (hot === cold) return undefined;
        const radiated = emissivity * 5.670374419e-8 * (hot ** 4 - cold ** 4);
        return filmCoefficient({ ...input, emissivity: 0 }) + radiated / (hot - cold);
      },
    },
  ],
};

const bundleRiseAsked: Asked<'bundleRise'> = {
  question: (random) => {
    const kind = random();
    return {
      cable: cable(pick(random, ['cat5e', 'cat6', 'cat6a'])),
      bundle: random() < 0.1 ? 1 : Math.round(logUniform(random, 1, random() < 0.1 ? 10_000 : 192)),
      // Some of them so much that the bundle runs away.
      pairCurrent: random() < 0.02 ? 0 : logUniform(random, 0.05, random() < 0.2 ? 9 : 1.5),
      energisedPairs: pick(random, [undefined, 2, 4]),
      ambient: pick(random, [undefined, uniform(random, -20, 70)]),
      installation:
        kind < 0.4
          ? 'open-air'
          : kind < 0.7
            ? 'closed-conduit'
            : kind < 0.72
              ? 'wound-drum'
              : { filmCoefficient: logUniform(random, 0.5, 20), thermalResistivity: pick(random, [undefined, 0, uniform(random, 2, 12)]) },
      outsideDiameter: pick(random, [undefined, uniform(random, 4, 9)]),
      basis: pick(random, [undefined, 'nominal', 'maximum']),
    };
  },
  answer: bundleRise,
  mistakes: [
    {
      slip: 'pair-current-for-conductor-current',
      make: (input) => again(bundleRiseAsked, { ...input, pairCurrent: 2 * input.pairCurrent }, 'rise'),
    },
    {
      slip: 'pair-current-for-conductor-current',
      of: 'conductorCurrent',
      make: ({ pairCurrent }) => pairCurrent,
    },
    { slip: 'temperature-for-rise', make: (_input, answer) => number(figureOf(answer, 'conductorTemperature')) },
    {
      slip: 'cold-resistance',
      // Copper that does not mind the heat.
      make: (input) =>
        again(bundleRiseAsked, { ...input, cable: { ...readCable(input.cable, 'cable'), temperatureCoefficient: 0 } }, 'rise'),
    },
  ],
};

const remotePoweringAsked: Asked<'remotePowering'> = {
  question: (random) => ({
    conductorCurrents: Array.from({ length: whole(random, 1, 12) }, () => pick(random, [0, 0.3, 0.3, logUniform(random, 0.001, 2)])),
  }),
  answer: ({ conductorCurrents }) => remotePowering(conductorCurrents),
  mistakes: [
    {
      slip: 'idle-conductors-left-out',
      make: ({ conductorCurrents }) => {
        const loaded = conductorCurrents.filter((current) => current > 0);
        return loaded.length === 0 ? undefined : remotePowering(loaded).meanConductorCurrent;
      },
    },
  ],
};

/** By name. */
export const heat: { readonly [Name in 'ampacity' | 'filmCoefficient' | 'bundleRise' | 'remotePowering']: Asked<Name> } = {
  ampacity: ampacityAsked,
  filmCoefficient: filmCoefficientAsked,
  bundleRise: bundleRiseAsked,
  remotePowering: remotePoweringAsked,
};
