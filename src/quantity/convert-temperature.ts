/** Degrees Fahrenheit against degrees Celsius and kelvins, exact by definition. @module */
import { finite } from './guards.ts';
import type { Celsius, Kelvins } from './units.ts';

/**
 * Degrees Fahrenheit to degrees Celsius: a temperature, not a difference.
 * @param value - Temperature. [°F]
 * @returns Temperature. [°C]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * fahrenheit(104); // => 40
 */
export function fahrenheit(value: number): Celsius {
  return ((finite(value) - 32) * 5) / 9 + 0;
}

/**
 * Degrees Celsius to degrees Fahrenheit: a temperature, not a difference.
 * @param value - Temperature. [°C]
 * @returns Temperature. [°F]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * toFahrenheit(40); // => 104
 */
export function toFahrenheit(value: Celsius): number {
  return (finite(value) * 9) / 5 + 32;
}

/**
 * A difference of degrees Fahrenheit to kelvins.
 * @param value - Temperature difference. [°F]
 * @returns Temperature difference. [K]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * fahrenheitDifference(18); // => 10
 */
export function fahrenheitDifference(value: number): Kelvins {
  return (finite(value) * 5) / 9 + 0;
}

/**
 * A difference of kelvins to degrees Fahrenheit.
 * @param value - Temperature difference. [K]
 * @returns Temperature difference. [°F]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * toFahrenheitDifference(10); // => 18
 */
export function toFahrenheitDifference(value: Kelvins): number {
  return (finite(value) * 9) / 5;
}
