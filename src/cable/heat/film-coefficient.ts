/** How a warm cylinder sheds heat to still air. @module */
import { ABSOLUTE_ZERO } from '../../conductor/temperature-coefficient.ts';
import { type Fields, readInput } from '../../quantity/fields.ts';
import type { Celsius, Kelvins, Millimetres } from '../../quantity/units.ts';

/** A cylinder in still air. */
export interface FilmCoefficientInput {
  /** Over all. [mm] */
  readonly diameter: Millimetres;
  /** [°C] */
  readonly surfaceTemperature: Celsius;
  /** The air around it, and the walls that it sees. [°C] */
  readonly ambient: Celsius;
  /** Of its surface, a fraction; 0.9 if absent (an assumption: dull plastic). */
  readonly emissivity?: number | undefined;
}

/** @internal */
export const FILM_COEFFICIENT_FIELDS: Fields<FilmCoefficientInput, 'emissivity'> = {
  diameter: { positive: 'mm' },
  surfaceTemperature: { temperature: '°C' },
  ambient: { temperature: '°C' },
  emissivity: { between: [0, 1], is: 'a fraction', default: 0.9, source: 'library-default' },
};

/** 0 °C above absolute zero. [K] @internal */
export const KELVIN: Kelvins = -ABSOLUTE_ZERO;
/** Stefan-Boltzmann. [W/(m²·K⁴)] @internal */
export const STEFAN_BOLTZMANN = 5.670374419e-8;
/** [m/s²] @internal */
export const STANDARD_GRAVITY = 9.80665;
/** Prandtl number of air, which only happens to look like √½. @internal */
// biome-ignore lint/suspicious/noApproximativeNumericConstant: it is not √½
export const PRANDTL = 0.707;

/**
 * Film coefficient of a horizontal cylinder in still air: free convection and radiation together.
 *
 * `Nu = (0.60 + 0.387 Ra^(1/6) / (1 + (0.559/Pr)^(9/16))^(8/27))²` (Churchill and Chu), with air at the mean of the two
 * temperatures and 1013.25 hPa, and grey radiation to walls as warm as the air. For Rayleigh numbers up to 1e12; the
 * properties of air are good to about 2 % from -50 to 150 °C. A bundle of 60 to 90 mm, 10 K above the air, has 9 to
 * 10 W/(m²·K).
 *
 * @param input - Diameter [mm], temperatures of the surface and the air [°C], emissivity.
 * @returns The film coefficient, a number in watts per square metre and kelvin. [W/(m²·K)]
 * @throws {@link InputError} If a number is outside its domain, or the emissivity is not from 0 to 1.
 * @example
 * filmCoefficient({ diameter: 60, surfaceTemperature: 55, ambient: 45 }).toFixed(1); // => '10.9'
 */
export function filmCoefficient(input: FilmCoefficientInput): number {
  const { diameter, surfaceTemperature, ambient, emissivity } = readInput(FILM_COEFFICIENT_FIELDS, input);
  return film(diameter / 1000, surfaceTemperature, ambient, emissivity);
}

/** The same with a diameter in metres. [W/(m²·K)] @internal */
export function film(diameter: number, surface: Celsius, ambient: Celsius, emissivity: number): number {
  const air = (surface + ambient) / 2 + KELVIN;
  const viscosity = (1.458e-6 * air ** 1.5) / (air + 110.4); // Sutherland [Pa·s]
  const kinematic = (viscosity * 287.05 * air) / 101_325; // over the density of a perfect gas [m²/s]
  const conductivity = 0.0242 * (air / KELVIN) ** 0.81; // [W/(m·K)]
  const rayleigh = ((STANDARD_GRAVITY * Math.abs(surface - ambient) * diameter ** 3) / (air * kinematic ** 2)) * PRANDTL;
  const nusselt = (0.6 + (0.387 * rayleigh ** (1 / 6)) / (1 + (0.559 / PRANDTL) ** (9 / 16)) ** (8 / 27)) ** 2;
  const hot = surface + KELVIN;
  const cold = ambient + KELVIN;
  return (nusselt * conductivity) / diameter + emissivity * STEFAN_BOLTZMANN * (hot * hot + cold * cold) * (hot + cold);
}
