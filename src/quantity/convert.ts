/** Conversions into the library's own units, each factor exact by definition. @module */
import { requireFinite } from './guards.ts';
import type { Amperes, Celsius, Kelvins, Metres, Millimetres, Ohms, OhmsPerMetre, SquareMillimetres, Watts } from './units.ts';

/**
 * International feet to metres; 1 ft = 0.3048 m exactly.
 * @param value - Length. [ft]
 * @returns Length. [m]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * feet(295).toFixed(3); // => '89.916'
 */
export function feet(value: number): Metres {
  requireFinite(value, 'value');
  return value * 0.3048 + 0;
}

/**
 * Inches to millimetres; 1 in = 25.4 mm exactly.
 * @param value - Length. [in]
 * @returns Length. [mm]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * inches(0.0201).toFixed(4); // => '0.5105'
 */
export function inches(value: number): Millimetres {
  requireFinite(value, 'value');
  return value * 25.4 + 0;
}

/**
 * Mils (thousandths of an inch) to millimetres; 1 mil = 0.0254 mm exactly.
 * @param value - Length. [mil]
 * @returns Length. [mm]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * mils(20.1).toFixed(4); // => '0.5105'
 */
export function mils(value: number): Millimetres {
  requireFinite(value, 'value');
  return value * 0.0254 + 0;
}

/**
 * Circular mils (the area of a circle one mil across) to square millimetres.
 * @param value - Area. [cmil]
 * @returns Area. [mm²]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * circularMils(404).toFixed(4); // => '0.2047'
 */
export function circularMils(value: number): SquareMillimetres {
  requireFinite(value, 'value');
  return value * 0.0005067074790974977 + 0; // π/4 · 0.0254²
}

/**
 * Degrees Fahrenheit to degrees Celsius: a temperature, not a difference.
 * @param value - Temperature. [°F]
 * @returns Temperature. [°C]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * fahrenheit(104); // => 40
 */
export function fahrenheit(value: number): Celsius {
  requireFinite(value, 'value');
  return ((value - 32) * 5) / 9 + 0;
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
  requireFinite(value, 'value');
  return (value * 5) / 9 + 0;
}

/**
 * Ohms per thousand feet of one conductor to ohms per metre.
 * @param value - Resistance per length. [Ω/kft]
 * @returns Resistance per length. [Ω/m]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * ohmsPerKilofoot(25.67).toFixed(5); // => '0.08422'
 */
export function ohmsPerKilofoot(value: number): OhmsPerMetre {
  requireFinite(value, 'value');
  return value / 304.8 + 0;
}

/**
 * Ohms per kilometre of one conductor to ohms per metre.
 * @param value - Resistance per length. [Ω/km]
 * @returns Resistance per length. [Ω/m]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * ohmsPerKilometre(96); // => 0.096
 */
export function ohmsPerKilometre(value: number): OhmsPerMetre {
  requireFinite(value, 'value');
  return value / 1000 + 0;
}

/**
 * Milliamperes to amperes.
 * @param value - Current. [mA]
 * @returns Current. [A]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * milliamperes(350); // => 0.35
 */
export function milliamperes(value: number): Amperes {
  requireFinite(value, 'value');
  return value / 1000 + 0;
}

/**
 * Milliwatts to watts.
 * @param value - Power. [mW]
 * @returns Power. [W]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * milliwatts(25500); // => 25.5
 */
export function milliwatts(value: number): Watts {
  requireFinite(value, 'value');
  return value / 1000 + 0;
}

/**
 * Kilohms to ohms.
 * @param value - Resistance. [kΩ]
 * @returns Resistance. [Ω]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * kilohms(2.2); // => 2200
 */
export function kilohms(value: number): Ohms {
  requireFinite(value, 'value');
  return value * 1000 + 0;
}

/**
 * International-table British thermal units per hour to watts.
 * @param value - Heat flow. [BTU/h]
 * @returns Heat flow. [W]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * btuPerHour(3412.142).toFixed(2); // => '1000.00'
 */
export function btuPerHour(value: number): Watts {
  requireFinite(value, 'value');
  return (value * 1055.05585262) / 3600 + 0;
}

/**
 * Thousands of international feet to metres; 1 kft = 304.8 m exactly.
 * @param value - Length. [kft]
 * @returns Length. [m]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * kilofeet(2).toFixed(1); // => '609.6'
 */
export function kilofeet(value: number): Metres {
  requireFinite(value, 'value');
  return value * 304.8 + 0;
}

/**
 * Ohms per hundred metres of one conductor, as cabling standards state it, to ohms per metre.
 * @param value - Resistance per length. [Ω/100 m]
 * @returns Resistance per length. [Ω/m]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * ohmsPerHundredMetres(9.38).toFixed(4); // => '0.0938'
 */
export function ohmsPerHundredMetres(value: number): OhmsPerMetre {
  requireFinite(value, 'value');
  return value / 100 + 0;
}

/**
 * Milliohms to ohms.
 * @param value - Resistance. [mΩ]
 * @returns Resistance. [Ω]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * milliohms(200); // => 0.2
 */
export function milliohms(value: number): Ohms {
  requireFinite(value, 'value');
  return value / 1000 + 0;
}
