/** Conversions out of the library's own units, for reports; each factor exact by definition. @module */
import { requireFinite } from './guards.ts';
import type { Amperes, Celsius, Kelvins, Metres, Millimetres, Ohms, OhmsPerMetre, SquareMillimetres, Watts } from './units.ts';

/**
 * Metres to international feet; 1 ft = 0.3048 m exactly.
 * @param value - Length. [m]
 * @returns Length. [ft]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * toFeet(100).toFixed(2); // => '328.08'
 */
export function toFeet(value: Metres): number {
  requireFinite(value, 'value');
  return value / 0.3048;
}

/**
 * Metres to thousands of international feet; 1 kft = 304.8 m exactly.
 * @param value - Length. [m]
 * @returns Length. [kft]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * toKilofeet(100).toFixed(3); // => '0.328'
 */
export function toKilofeet(value: Metres): number {
  requireFinite(value, 'value');
  return value / 304.8;
}

/**
 * Millimetres to inches; 1 in = 25.4 mm exactly.
 * @param value - Length. [mm]
 * @returns Length. [in]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * toInches(0.511).toFixed(4); // => '0.0201'
 */
export function toInches(value: Millimetres): number {
  requireFinite(value, 'value');
  return value / 25.4;
}

/**
 * Millimetres to mils (thousandths of an inch); 1 mil = 0.0254 mm exactly.
 * @param value - Length. [mm]
 * @returns Length. [mil]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * toMils(0.511).toFixed(1); // => '20.1'
 */
export function toMils(value: Millimetres): number {
  requireFinite(value, 'value');
  return value / 0.0254;
}

/**
 * Square millimetres to circular mils, the area of a circle one mil across.
 * @param value - Area. [mm²]
 * @returns Area. [cmil]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * toCircularMils(0.5).toFixed(0); // => '987'
 */
export function toCircularMils(value: SquareMillimetres): number {
  requireFinite(value, 'value');
  return value / 0.0005067074790974977;
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
  requireFinite(value, 'value');
  return (value * 9) / 5 + 32;
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
  requireFinite(value, 'value');
  return (value * 9) / 5;
}

/**
 * Ohms per metre of one conductor to ohms per thousand feet.
 * @param value - Resistance per length. [Ω/m]
 * @returns Resistance per length. [Ω/kft]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * toOhmsPerKilofoot(0.084215).toFixed(2); // => '25.67'
 */
export function toOhmsPerKilofoot(value: OhmsPerMetre): number {
  requireFinite(value, 'value');
  return value * 304.8;
}

/**
 * Ohms per metre of one conductor to ohms per kilometre.
 * @param value - Resistance per length. [Ω/m]
 * @returns Resistance per length. [Ω/km]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * toOhmsPerKilometre(0.096); // => 96
 */
export function toOhmsPerKilometre(value: OhmsPerMetre): number {
  requireFinite(value, 'value');
  return value * 1000;
}

/**
 * Ohms per metre of one conductor to ohms per hundred metres, as cabling standards state it.
 * @param value - Resistance per length. [Ω/m]
 * @returns Resistance per length. [Ω/100 m]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * toOhmsPerHundredMetres(0.0938).toFixed(2); // => '9.38'
 */
export function toOhmsPerHundredMetres(value: OhmsPerMetre): number {
  requireFinite(value, 'value');
  return value * 100;
}

/**
 * Amperes to milliamperes.
 * @param value - Current. [A]
 * @returns Current. [mA]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * toMilliamperes(0.35); // => 350
 */
export function toMilliamperes(value: Amperes): number {
  requireFinite(value, 'value');
  return value * 1000;
}

/**
 * Watts to milliwatts.
 * @param value - Power. [W]
 * @returns Power. [mW]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * toMilliwatts(25.5); // => 25500
 */
export function toMilliwatts(value: Watts): number {
  requireFinite(value, 'value');
  return value * 1000;
}

/**
 * Ohms to milliohms.
 * @param value - Resistance. [Ω]
 * @returns Resistance. [mΩ]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * toMilliohms(0.2); // => 200
 */
export function toMilliohms(value: Ohms): number {
  requireFinite(value, 'value');
  return value * 1000;
}

/**
 * Ohms to kilohms.
 * @param value - Resistance. [Ω]
 * @returns Resistance. [kΩ]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * toKilohms(2200); // => 2.2
 */
export function toKilohms(value: Ohms): number {
  requireFinite(value, 'value');
  return value / 1000;
}

/**
 * Watts to international-table British thermal units per hour.
 * @param value - Heat flow. [W]
 * @returns Heat flow. [BTU/h]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * toBtuPerHour(1000).toFixed(1); // => '3412.1'
 */
export function toBtuPerHour(value: Watts): number {
  requireFinite(value, 'value');
  return (value * 3600) / 1055.05585262;
}
