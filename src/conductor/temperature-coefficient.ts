/** Temperature coefficients: their reference temperature, and what they say of hot and cold resistance. @module */
import { type AnyField, type DefaultField, type Field, type Fields, readInput } from '../quantity/fields.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Celsius, Ohms } from '../quantity/units.ts';

/** A resistance and the temperature it holds at. */
export interface ResistanceAtTemperature {
  /** [Ω] */
  readonly resistance: Ohms;
  /** [°C] */
  readonly temperature: Celsius;
}

/** One known resistance, and the temperature coefficient. */
export interface TemperatureLine extends ResistanceAtTemperature {
  /** Temperature coefficient of resistance. [1/K] */
  readonly coefficient: number;
  /** Reference temperature of the coefficient; 20 if absent. Textbooks often state it at 0. [°C] */
  readonly coefficientTemperature?: Celsius | undefined;
}

/** A coefficient, and the temperature that it is wanted at. */
export interface TemperatureCoefficientInput {
  /** Temperature coefficient of resistance at `from`, at most 0.1 either side of 0. [1/K] */
  readonly coefficient: number;
  /** Reference temperature that is wanted. [°C] */
  readonly at: Celsius;
  /** Reference temperature of `coefficient`; 20 if absent. [°C] */
  readonly from?: Celsius | undefined;
}

/** A coefficient. */
export interface ZeroResistanceInput {
  /** Temperature coefficient of resistance at `from`, 1e-6 to 0.1. [1/K] */
  readonly coefficient: number;
  /** Reference temperature of `coefficient`; 20 if absent. [°C] */
  readonly from?: Celsius | undefined;
}

/** A line, and a temperature on it. */
export interface LineAtTemperature extends TemperatureLine {
  /** Temperature of the resistance that is wanted, -273.15 to 4000. [°C] */
  readonly at: Celsius;
}

/** A line whose coefficient is not 0, and another resistance on it. */
export interface LineAtResistance extends TemperatureLine {
  /** Resistance that was measured later. [Ω] */
  readonly laterResistance: Ohms;
}

/** A conductor whose resistance was read twice. */
export interface TwoReadings {
  readonly first: ResistanceAtTemperature;
  /** At another temperature. */
  readonly second: ResistanceAtTemperature;
  /** Reference temperature of the coefficient that is wanted; 20 if absent. [°C] */
  readonly at?: Celsius | undefined;
}

/** 0 K. [°C] @internal */
export const ABSOLUTE_ZERO: Celsius = -273.15;

/** Filaments glow, and 0 K is the end. */
const LINE_TEMPERATURE: Field<Celsius> = { between: [-273.15, 4000], is: 'a temperature', unit: '°C' };
const LINE_REFERENCE: DefaultField<Celsius> = { between: [-273.15, 4000], is: 'a temperature', unit: '°C', default: 20 };
const COEFFICIENT: Field<number> = { between: [-0.1, 0.1], is: 'a coefficient', unit: '1/K' };
const READING: Fields<ResistanceAtTemperature> = { resistance: { positive: 'Ω' }, temperature: () => LINE_TEMPERATURE };
/** @internal */
export const TEMPERATURE_COEFFICIENT_AT_FIELDS: Fields<TemperatureCoefficientInput, 'from'> = {
  coefficient: () => COEFFICIENT,
  at: () => LINE_TEMPERATURE,
  from: () => LINE_REFERENCE,
};

/** @internal */
export const ZERO_RESISTANCE_TEMPERATURE_FIELDS: Fields<ZeroResistanceInput, 'from'> = {
  coefficient: { between: [0.000001, 0.1], is: 'a coefficient', unit: '1/K' },
  from: () => LINE_REFERENCE,
};

/** @internal */
export const RESISTANCE_AT_TEMPERATURE_FIELDS: Fields<LineAtTemperature, 'coefficientTemperature'> = {
  resistance: { positive: 'Ω' },
  temperature: () => LINE_TEMPERATURE,
  coefficient: () => COEFFICIENT,
  coefficientTemperature: () => LINE_REFERENCE,
  at: () => LINE_TEMPERATURE,
};

/** @internal */
export const TEMPERATURE_FROM_RESISTANCE_FIELDS: Fields<LineAtResistance, 'coefficientTemperature'> = {
  resistance: { positive: 'Ω' },
  temperature: () => LINE_TEMPERATURE,
  coefficient: () => COEFFICIENT,
  coefficientTemperature: () => LINE_REFERENCE,
  laterResistance: { positive: 'Ω' },
};

/** @internal */
export const TEMPERATURE_COEFFICIENT_FROM_FIELDS: Fields<TwoReadings, 'at'> = {
  first: { object: () => READING },
  second: { object: () => READING },
  at: () => LINE_REFERENCE,
};

/**
 * The same temperature coefficient, stated at another reference temperature.
 *
 * `α(t) = 1 / (1/α(t0) + (t - t0))`: one straight line has a coefficient for every temperature it is stated at.
 *
 * @param input - The coefficient [1/K], the temperature it is stated at and the one that is wanted [°C].
 * @returns The coefficient at `at`, a number per kelvin. [1/K]
 * @throws {@link InputError} If a number is out of range, or the line has no resistance left at `at`.
 * @example Copper at 0 °C, as textbooks state it
 * temperatureCoefficientAt({ coefficient: 0.00393, at: 0 }).toFixed(5); // => '0.00427'
 * @example NEC Chapter 9 Table 8, note 2
 * temperatureCoefficientAt({ coefficient: 0.00393, at: 75 }).toFixed(5); // => '0.00323'
 */
export function temperatureCoefficientAt(input: TemperatureCoefficientInput): number {
  const { coefficient, at, from } = readInput(TEMPERATURE_COEFFICIENT_AT_FIELDS, input);
  return coefficient / ratioAt(coefficient, from, at, 'at'); // the same as 1 / (1/α + t - t0), and good for α = 0
}

/**
 * The temperature at which a straight line of resistance would reach zero: -234.5 °C for annealed copper.
 *
 * `t = t0 - 1/α(t0)`. Not a physical temperature, for the metal bends away from the line; it makes
 * `R2/R1 = (t2 - t) / (t1 - t)`.
 *
 * @param input - The coefficient [1/K], and the temperature it is stated at [°C].
 * @returns The inferred zero-resistance temperature. [°C]
 * @throws {@link InputError} If a number is out of range.
 * @example
 * zeroResistanceTemperature({ coefficient: 0.00393 }).toFixed(1); // => '-234.5'
 */
export function zeroResistanceTemperature(input: ZeroResistanceInput): Celsius {
  const { coefficient, from } = readInput(ZERO_RESISTANCE_TEMPERATURE_FIELDS, input);
  return from - 1 / coefficient;
}

/**
 * A resistance brought to another temperature, by any coefficient at any reference temperature.
 *
 * `R2/R1 = (1 + α (t2 - t0)) / (1 + α (t1 - t0))`. A straight line: good to 0.5 % for copper from 0 to 77 °C.
 *
 * @param input - The known resistance [Ω] at its temperature [°C], the coefficient [1/K], and the other temperature [°C].
 * @returns Resistance at `at`. [Ω]
 * @throws {@link InputError} If a number is out of range, or the line has no resistance left at one of the temperatures.
 * @example A field coil, 250 Ω at 15 °C, coefficient stated at 0 °C
 * const line = { resistance: 250, temperature: 15, coefficient: 0.00428, coefficientTemperature: 0 };
 * resistanceAtTemperature({ ...line, at: 45 }).toFixed(1); // => '280.2'
 */
export function resistanceAtTemperature(input: LineAtTemperature): Ohms {
  const line = readInput(RESISTANCE_AT_TEMPERATURE_FIELDS, input);
  return line.resistance * ratioAt(slopeOf(line), line.temperature, line.at, 'at');
}

/**
 * The temperature of a conductor from its resistance: the mean over its length.
 *
 * `t = t1 + (R/R1 - 1) / α(t1)`. A straight line; see {@link resistanceAtTemperature}.
 *
 * @param input - The known resistance [Ω] at its temperature [°C], the coefficient [1/K], not 0, and the later resistance [Ω].
 * @returns Mean temperature of the conductor. [°C]
 * @throws {@link InputError} If a number is out of range, or the answer lies outside -273.15 to 4000 °C.
 * @example
 * const line = { resistance: 200, temperature: 18, coefficient: 0.0039, coefficientTemperature: 18 };
 * temperatureFromResistance({ ...line, laterResistance: 240 }).toFixed(2); // => '69.28'
 */
export function temperatureFromResistance(input: LineAtResistance): Celsius {
  const line = readInput(TEMPERATURE_FROM_RESISTANCE_FIELDS, input);
  const temperature = line.temperature + (line.laterResistance / line.resistance - 1) / slopeOf(line);
  const { between: [coldest, hottest] = [0, 0] } = LINE_TEMPERATURE as AnyField;
  if (temperature >= coldest && temperature <= hottest) return temperature;
  const expected = `a resistance that the line reaches from ${coldest} to ${hottest} °C`;
  throw new InputError('range', 'laterResistance', expected, line.laterResistance);
}

/**
 * The temperature coefficient of a conductor whose resistance was read at two temperatures.
 *
 * @param input - Two readings [Ω] at two temperatures [°C], and the reference temperature of the coefficient [°C].
 * @returns Temperature coefficient of resistance, a number per kelvin. [1/K]
 * @throws {@link InputError} If a number is out of range, the temperatures are equal, or the line has no resistance left at `at`.
 * @example Platinum, 3.146 Ω at 40 °C and 3.767 Ω at 100 °C; at 0 °C
 * const first = { resistance: 3.146, temperature: 40 };
 * temperatureCoefficientFrom({ first, second: { resistance: 3.767, temperature: 100 }, at: 0 }).toFixed(6); // => '0.003788'
 */
export function temperatureCoefficientFrom(input: TwoReadings): number {
  const { first, second, at } = readInput(TEMPERATURE_COEFFICIENT_FROM_FIELDS, input);
  const difference = second.temperature - first.temperature;
  // Readings closer than this say nothing of the slope.
  if (!(Math.abs(difference) >= 1e-3)) {
    throw new InputError('conflict', 'second.temperature', 'another temperature than the first', second.temperature);
  }
  const slope = (second.resistance / first.resistance - 1) / difference;
  return slope / ratioAt(slope, first.temperature, at, 'at');
}

/** Coefficient of the line at the temperature of its known resistance. [1/K] */
function slopeOf({ temperature, coefficient, coefficientTemperature = 20 }: TemperatureLine): number {
  return coefficient / ratioAt(coefficient, coefficientTemperature, temperature, 'temperature');
}

/** R(to) / R(from), for a coefficient stated at `from`. */
function ratioAt(coefficient: number, from: Celsius, to: Celsius, parameter: string): number {
  const ratio = 1 + coefficient * (to - from);
  if (ratio > 1e-9) return ratio;
  throw new InputError('conflict', parameter, 'a temperature at which the straight line still has resistance', to);
}
