/** Resistance per length, and multiples of amperes, watts and ohms, each factor exact by definition. @module */
import { KILOFOOT } from './convert-length.ts';
import { finite } from './guards.ts';
import type { Amperes, Ohms, OhmsPerMetre, Watts } from './units.ts';

/** International-table British thermal unit. [J] */
const BTU = 1055.05585262;

/**
 * Ohms per thousand feet of one conductor to ohms per metre.
 * @param value - Resistance per length. [Ω/kft]
 * @returns Resistance per length. [Ω/m]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * ohmsPerKilofoot(25.67).toFixed(5); // => '0.08422'
 */
export function ohmsPerKilofoot(value: number): OhmsPerMetre {
  return finite(value) / KILOFOOT + 0;
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
  return finite(value) * KILOFOOT;
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
  return finite(value) / 1000 + 0;
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
  return finite(value) * 1000;
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
  return finite(value) / 100 + 0;
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
  return finite(value) * 100;
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
  return finite(value) / 1000 + 0;
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
  return finite(value) * 1000;
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
  return finite(value) / 1000 + 0;
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
  return finite(value) * 1000;
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
  return finite(value) / 1000 + 0;
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
  return finite(value) * 1000;
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
  return finite(value) * 1000 + 0;
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
  return finite(value) / 1000;
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
  return (finite(value) * BTU) / 3600 + 0;
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
  return (finite(value) * 3600) / BTU;
}
