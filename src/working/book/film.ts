/** How a warm cylinder sheds heat to still air. @module */

import { HEAT_CAUTION } from '../../cable/heat/caution.ts';
import { KELVIN, PRANDTL, STANDARD_GRAVITY, STEFAN_BOLTZMANN } from '../../cable/heat/film-coefficient.ts';
import { type FilmCoefficientInput, filmCoefficient } from '../../cable/index.ts';
import { type BookSheet, givens, steps } from '../engine/rows.ts';
import type { Givens, Steps } from '../engine/sheet.ts';

/** What the correlation takes for granted: air, and radiation. */
// biome-ignore format: one figure a row
export const airGivens: Givens<never> = givens([
  ['T_0', 'K', '0 °C above absolute zero', 'the correlation', { value: KELVIN }],
  ['C_1', 'Pa·s/√K', 'viscosity of air by Sutherland: its constant', 'the correlation', { value: 1.458e-6 }],
  ['C_2', 'K', 'viscosity of air by Sutherland: its temperature', 'the correlation', { value: 110.4 }],
  ['R_air', 'J/(kg·K)', 'gas constant of air', 'the correlation', { value: 287.05 }],
  ['p', 'Pa', 'pressure of the air', 'the correlation', { value: 101_325 }],
  ['k_0', 'W/(m·K)', 'thermal conductivity of air at 0 °C', 'the correlation', { value: 0.0242 }],
  ['N_Pr', '1', 'Prandtl number of air', 'the correlation', { value: PRANDTL }],
  ['g', 'm/s²', 'gravity', 'the correlation', { value: STANDARD_GRAVITY }],
  ['sigma', 'W/(m²·K⁴)', 'constant of Stefan and Boltzmann', 'the correlation', { value: STEFAN_BOLTZMANN }],
], { source: 'still-air' });

/** From the diameter D, the emissivity epsilon, and the temperatures T_s of the surface and T_a of the air. */
// biome-ignore format: one figure a row
export const filmSteps: Steps<never> = steps([
  ['T_f', 'K', '(T_s + T_a) / 2 + T_0', 'the air at the surface: the mean of both temperatures, above absolute zero', { source: 'churchill-chu' }],
  ['mu', 'Pa·s', 'C_1 * T_f^1.5 / (T_f + C_2)', 'its viscosity, by Sutherland', { source: 'still-air' }],
  ['nu', 'm²/s', 'mu * R_air * T_f / p', 'its viscosity over its density, which is that of a perfect gas, p/(R T)', { source: 'still-air' }],
  ['k_f', 'W/(m·K)', 'k_0 * (T_f / T_0)^0.81', 'its thermal conductivity', { source: 'still-air' }],
  ['N_Ra', '1', 'g * abs(T_s - T_a) * D^3 / (T_f * nu^2) * N_Pr', 'Rayleigh number: how strongly the warm air rises', { source: 'churchill-chu' }],
  ['F', '1', '(1 + (0.559 / N_Pr)^(9 / 16))^(8 / 27)', 'what the Prandtl number does to it', { source: 'churchill-chu' }],
  ['N_Nu', '1', '(0.6 + 0.387 * N_Ra^(1 / 6) / F)^2', 'Nusselt number: heat that moving air takes, over what still air would conduct', { source: 'churchill-chu' }],
  ['h_c', 'W/(m²·K)', 'N_Nu * k_f / D', 'convection: film coefficient of the moving air', { source: 'churchill-chu' }],
  ['T_h', 'K', 'T_s + T_0', 'the surface above absolute zero', { source: 'still-air' }],
  ['T_w', 'K', 'T_a + T_0', 'the walls above absolute zero, as warm as the air', { source: 'still-air' }],
  ['h_r', 'W/(m²·K)', 'epsilon * sigma * (T_h^2 + T_w^2) * (T_h + T_w)', 'radiation: T_h⁴ - T_w⁴ over T_h - T_w, written so that no two nearly equal figures are subtracted', { source: 'still-air' }],
  ['h', 'W/(m²·K)', 'h_c + h_r', 'film coefficient, convection and radiation together', { source: 'churchill-chu', core: 'filmCoefficient' }],
]);

export const filmCoefficientSheet: BookSheet<FilmCoefficientInput, never> = {
  title: 'How a warm cylinder sheds heat to still air',
  needs: ['diameter', 'surfaceTemperature', 'ambient'],
  keys: ['emissivity'],
  // biome-ignore format: one figure a row
  givens: [
    ['D', 'mm', 'diameter over all', 'diameter'],
    ['T_s', '°C', 'temperature of the surface', 'surfaceTemperature'],
    ['T_a', '°C', 'temperature of the air, and of the walls around', 'ambient'],
    ['epsilon', '1', 'emissivity of the surface', 'emissivity', { value: 0.9 }],
    airGivens,
  ],
  steps: [filmSteps],
  assumptions: ['A long horizontal cylinder alone in still air at 1013.25 hPa; grey walls as warm as the air.'],
  validity: 'Rayleigh numbers up to 1e12; the properties of air are good to about 2 % from -50 to 150 °C.',
  cautions: [HEAT_CAUTION],
  slips: [
    ['radiation-left-out', { h: 'h_c' }],
    ['celsius-for-kelvin', { T_h: 'T_s', T_w: 'T_a' }],
  ],
  guard: filmCoefficient,
  read: ({ emissivity }) => ({ assumptions: [emissivity === undefined && 'The surface is dull plastic, of emissivity 0.9.'] }),
};
