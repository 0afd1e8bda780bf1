/** Lengths and areas: feet, inches, mils and circular mils against metres and millimetres, each factor exact by definition. @module */
import { finite } from './guards.ts';
import type { Metres, Millimetres, SquareMillimetres } from './units.ts';

/** International foot. [m] */
const FOOT = 0.3048;
/** Thousand feet. [m] @internal */
export const KILOFOOT = 304.8;
/** Inch. [mm] */
const INCH = 25.4;
/** Thousandth of an inch. [mm] */
const MIL = 0.0254;
/** Area of a circle one mil across, π/4 · 0.0254². [mm²] */
const CIRCULAR_MIL = 0.0005067074790974977;

/**
 * International feet to metres; 1 ft = 0.3048 m exactly.
 * @param value - Length. [ft]
 * @returns Length. [m]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * feet(295).toFixed(3); // => '89.916'
 */
export function feet(value: number): Metres {
  return finite(value) * FOOT + 0;
}

/**
 * Metres to international feet; 1 ft = 0.3048 m exactly.
 * @param value - Length. [m]
 * @returns Length. [ft]
 * @throws {@link InputError} If `value` is not a number of at most 1e12.
 * @example
 * toFeet(100).toFixed(2); // => '328.08'
 */
export function toFeet(value: Metres): number {
  return finite(value) / FOOT;
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
  return finite(value) * KILOFOOT + 0;
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
  return finite(value) / KILOFOOT;
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
  return finite(value) * INCH + 0;
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
  return finite(value) / INCH;
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
  return finite(value) * MIL + 0;
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
  return finite(value) / MIL;
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
  return finite(value) * CIRCULAR_MIL + 0;
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
  return finite(value) / CIRCULAR_MIL;
}
