/** Film coefficient of a horizontal cylinder in still air, line by line. @module */
import { givens } from '../rows.ts';

import { HEAT_CAUTION } from '../../cable/heat/caution.ts';
import { type FilmCoefficientInput, filmCoefficient } from '../../cable/heat/film-coefficient.ts';
import type { Sheet } from '../sheet.ts';
import { AIR, airGivens, filmSteps } from './film-steps.ts';

export const filmCoefficientSheet: Sheet<FilmCoefficientInput> = {
  title: 'How a warm cylinder sheds heat to still air',
  core: 'filmCoefficient',
  keys: ['diameter', 'surfaceTemperature', 'ambient', 'emissivity'],
  givens: [
    ...givens([
      ['D', 'mm', 'diameter over all', 'diameter'],
      ['T_s', '°C', 'temperature of the surface', 'surfaceTemperature'],
      ['T_a', '°C', 'temperature of the air, and of the walls around', 'ambient'],
      ['epsilon', '1', 'emissivity of the surface', 'emissivity'],
    ]),
    ...airGivens,
  ],
  steps: filmSteps,
  assumptions: ['A long horizontal cylinder alone in still air at 1013.25 hPa; grey walls as warm as the air.'],
  validity: 'Rayleigh numbers up to 1e12; the properties of air are good to about 2 % from -50 to 150 °C.',
  cautions: [HEAT_CAUTION],
  slips: [
    { slip: 'radiation-left-out', steps: { h: 'h_c' } },
    { slip: 'celsius-for-kelvin', steps: { T_h: 'T_s', T_w: 'T_a' } },
  ],
  guard: filmCoefficient,
  read: ({ diameter, surfaceTemperature, ambient, emissivity }) => ({
    values: { D: diameter, T_s: surfaceTemperature, T_a: ambient, epsilon: emissivity ?? 0.9, ...AIR },
    assumptions: emissivity === undefined ? ['The surface is dull plastic, of emissivity 0.9.'] : [],
  }),
};

