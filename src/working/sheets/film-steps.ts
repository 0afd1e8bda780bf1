/** How a warm cylinder sheds its heat to still air: the steps that several sheets share. @module */
import { given, steps } from '../rows.ts';
import type { Figures, SheetGiven, SheetStep } from '../sheet.ts';

/** What the correlation takes for granted: air, and radiation. */
const constants: readonly (SheetGiven & { readonly value: number })[] = [
  constant('T_0', '0 °C above absolute zero', 273.15, 'K', 'T_{0}'),
  constant('C_1', 'viscosity of air by Sutherland: its constant', 1.458e-6, 'Pa·s/√K', 'C_{1}'),
  constant('C_2', 'viscosity of air by Sutherland: its temperature', 110.4, 'K', 'C_{2}'),
  constant('R_air', 'gas constant of air', 287.05, 'J/(kg·K)', 'R_{\\mathrm{air}}'),
  constant('p', 'pressure of the air', 101_325, 'Pa', 'p'),
  constant('k_0', 'thermal conductivity of air at 0 °C', 0.0242, 'W/(m·K)', 'k_{0}'),
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: it is not √½
  constant('N_Pr', 'Prandtl number of air', 0.707, '1', 'N_{\\mathrm{Pr}}'),
  constant('g', 'gravity', 9.80665, 'm/s²', 'g'),
  constant('sigma', 'constant of Stefan and Boltzmann', 5.670374419e-8, 'W/(m²·K⁴)', '\\sigma'),
];

function constant(
  symbol: string,
  meaning: string,
  value: number,
  unit: SheetGiven['unit'],
  latex: string,
): SheetGiven & { readonly value: number } {
  return given(symbol, unit, meaning, 'the correlation', { value, latex, source: 'still-air' });
}

/** Of air and radiation. */
export const airGivens: readonly SheetGiven[] = constants.map(({ value: _value, ...given }) => given);

/** Their figures. */
export const AIR: Figures = Object.fromEntries(constants.map(({ symbol, value }) => [symbol, value]));

/** From the diameter D, the emissivity epsilon, and the temperatures T_s of the surface and T_a of the air. */
export const filmSteps: readonly SheetStep[] = steps([
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

