/** Temperature coefficients: their reference temperature, and what they say of hot and cold resistance. @module */
import { refuse, requireObject, requirePositive } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Celsius, Ohms } from '../quantity/units.ts';

/** A resistance and the temperature it holds at. */
export interface ResistanceAtTemperature {
  /** [Ω] */
  readonly resistance: Ohms;
  /** [°C] */
  readonly temperature: Celsius;
}

/** One known resistance, the temperature coefficient, and what is asked. */
export interface TemperatureLine extends ResistanceAtTemperature {
  /** Temperature coefficient of resistance. [1/K] */
  readonly coefficient: number;
  /** Reference temperature of the coefficient; 20 if absent. Textbooks often state it at 0. [°C] */
  readonly coefficientTemperature?: Celsius | undefined;
}

/** Hottest and coldest temperatures of the lines here: filaments glow, and 0 K is the end. [°C] */
const COLDEST_LINE = -273.15;
const HOTTEST_LINE = 4000;

/**
 * The same temperature coefficient, stated at another reference temperature.
 *
 * `α(t) = 1 / (1/α(t0) + (t - t0))`: one straight line has a coefficient for every temperature it is stated at.
 *
 * @param coefficient - Temperature coefficient of resistance at `from`, at most 0.1 either side of 0. [1/K]
 * @param at - Reference temperature that is wanted. [°C]
 * @param from - Reference temperature of `coefficient`; 20 if absent. [°C]
 * @returns The coefficient at `at`, a number per kelvin. [1/K]
 * @throws {@link InputError} If a number is out of range, or the line has no resistance left at `at`.
 * @example Copper at 0 °C, as textbooks state it
 * temperatureCoefficientAt(0.00393, 0).toFixed(5); // => '0.00427'
 * @example NEC Chapter 9 Table 8, note 2
 * temperatureCoefficientAt(0.00393, 75).toFixed(5); // => '0.00323'
 */
export function temperatureCoefficientAt(coefficient: number, at: Celsius, from: Celsius = 20): number {
  requireCoefficient(coefficient, 'coefficient');
  requireLineTemperature(at, 'at');
  requireLineTemperature(from, 'from');
  return coefficient / ratioAt(coefficient, from, at, 'at'); // the same as 1 / (1/α + t - t0), and good for α = 0
}

/**
 * The temperature at which a straight line of resistance would reach zero: -234.5 °C for annealed copper.
 *
 * `t = t0 - 1/α(t0)`. Not a physical temperature, for the metal bends away from the line; it makes
 * `R2/R1 = (t2 - t) / (t1 - t)`.
 *
 * @param coefficient - Temperature coefficient of resistance at `from`, 1e-6 to 0.1. [1/K]
 * @param from - Reference temperature of `coefficient`; 20 if absent. [°C]
 * @returns The inferred zero-resistance temperature. [°C]
 * @throws {@link InputError} If a number is out of range.
 * @example
 * zeroResistanceTemperature(0.00393).toFixed(1); // => '-234.5'
 */
export function zeroResistanceTemperature(coefficient: number, from: Celsius = 20): Celsius {
  requireCoefficient(coefficient, 'coefficient');
  if (!(coefficient >= 1e-6)) throw new InputError('range', 'coefficient', 'a coefficient from 1e-6 to 0.1 1/K', coefficient);
  requireLineTemperature(from, 'from');
  return from - 1 / coefficient;
}

/**
 * A resistance brought to another temperature, by any coefficient at any reference temperature.
 *
 * `R2/R1 = (1 + α (t2 - t0)) / (1 + α (t1 - t0))`. A straight line: good to 0.5 % for copper from 0 to 77 °C.
 *
 * @param line - The known resistance [Ω] at its temperature [°C], and the coefficient [1/K].
 * @param at - Temperature that is asked about, -273.15 to 4000. [°C]
 * @returns Resistance at `at`. [Ω]
 * @throws {@link InputError} If a number is out of range, or the line has no resistance left at one of the temperatures.
 * @example A field coil, 250 Ω at 15 °C, coefficient stated at 0 °C
 * resistanceAtTemperature({ resistance: 250, temperature: 15, coefficient: 0.00428, coefficientTemperature: 0 }, 45).toFixed(1); // => '280.2'
 */
export function resistanceAtTemperature(line: TemperatureLine, at: Celsius): Ohms {
  const slope = slopeOf(line);
  requireLineTemperature(at, 'at');
  return line.resistance * ratioAt(slope, line.temperature, at, 'at');
}

/**
 * The temperature of a conductor from its resistance: the mean over its length.
 *
 * `t = t1 + (R/R1 - 1) / α(t1)`. A straight line; see {@link resistanceAtTemperature}.
 *
 * @param line - The known resistance [Ω] at its temperature [°C], and the coefficient [1/K], not 0.
 * @param resistance - Resistance that was measured later. [Ω]
 * @returns Mean temperature of the conductor. [°C]
 * @throws {@link InputError} If a number is out of range, or the answer lies outside -273.15 to 4000 °C.
 * @example
 * temperatureFromResistance({ resistance: 200, temperature: 18, coefficient: 0.0039, coefficientTemperature: 18 }, 240).toFixed(2); // => '69.28'
 */
export function temperatureFromResistance(line: TemperatureLine, resistance: Ohms): Celsius {
  const slope = slopeOf(line);
  requirePositive(resistance, 'resistance', 'Ω');
  const temperature = line.temperature + (resistance / line.resistance - 1) / slope;
  if (!(temperature >= COLDEST_LINE && temperature <= HOTTEST_LINE)) {
    throw new InputError(
      'range',
      'resistance',
      `a resistance that the line reaches from ${COLDEST_LINE} to ${HOTTEST_LINE} °C`,
      resistance,
    );
  }
  return temperature;
}

/**
 * The temperature coefficient of a conductor whose resistance was read at two temperatures.
 *
 * @param first - One reading. [Ω] and [°C]
 * @param second - Another, at another temperature. [Ω] and [°C]
 * @param at - Reference temperature of the coefficient; 20 if absent. [°C]
 * @returns Temperature coefficient of resistance, a number per kelvin. [1/K]
 * @throws {@link InputError} If a number is out of range, the temperatures are equal, or the line has no resistance left at `at`.
 * @example Platinum, 3.146 Ω at 40 °C and 3.767 Ω at 100 °C; at 0 °C
 * temperatureCoefficientFrom({ resistance: 3.146, temperature: 40 }, { resistance: 3.767, temperature: 100 }, 0).toFixed(6); // => '0.003788'
 */
export function temperatureCoefficientFrom(first: ResistanceAtTemperature, second: ResistanceAtTemperature, at: Celsius = 20): number {
  requireReading(first, 'first');
  requireReading(second, 'second');
  requireLineTemperature(at, 'at');
  const difference = second.temperature - first.temperature;
  // Readings closer than this say nothing of the slope.
  if (!(Math.abs(difference) >= 1e-3)) {
    throw new InputError('conflict', 'second.temperature', 'another temperature than the first', second.temperature);
  }
  const slope = (second.resistance / first.resistance - 1) / difference;
  return slope / ratioAt(slope, first.temperature, at, 'at');
}

/** Coefficient of the line at the temperature of its known resistance. [1/K] */
function slopeOf(line: TemperatureLine): number {
  requireReading(line, 'line');
  const { coefficient, coefficientTemperature = 20 } = line;
  requireCoefficient(coefficient, 'line.coefficient');
  requireLineTemperature(coefficientTemperature, 'line.coefficientTemperature');
  return coefficient / ratioAt(coefficient, coefficientTemperature, line.temperature, 'line.temperature');
}

/** R(to) / R(from), for a coefficient stated at `from`. */
function ratioAt(coefficient: number, from: Celsius, to: Celsius, parameter: string): number {
  const ratio = 1 + coefficient * (to - from);
  if (ratio > 1e-9) return ratio;
  throw new InputError('conflict', parameter, 'a temperature at which the straight line still has resistance', to);
}

function requireReading(reading: ResistanceAtTemperature, parameter: string): void {
  requireObject(reading, parameter, 'an object with resistance and temperature');
  requirePositive(reading.resistance, `${parameter}.resistance`, 'Ω');
  requireLineTemperature(reading.temperature, `${parameter}.temperature`);
}

function requireCoefficient(coefficient: number, parameter: string): void {
  if (typeof coefficient === 'number' && Math.abs(coefficient) <= 0.1) return;
  refuse(coefficient, parameter, 'a coefficient of at most 0.1 1/K');
}

function requireLineTemperature(temperature: number, parameter: string): void {
  if (typeof temperature === 'number' && temperature >= COLDEST_LINE && temperature <= HOTTEST_LINE) return;
  refuse(temperature, parameter, `a temperature from ${COLDEST_LINE} to ${HOTTEST_LINE} °C`);
}
