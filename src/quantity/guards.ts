/** Domain guards: every number that enters the library passes one of these. @module */
import { describe, InputError, type InputErrorCode } from './input-error.ts';

/** Smallest non-zero magnitude accepted, in the SI unit of the quantity: nothing under it underflows later. */
export const SMALLEST = 1e-12;
/** Largest magnitude accepted, in the SI unit of the quantity: nothing up to it overflows later. */
export const LARGEST = 1e12;
/** Coldest conductor or ambient temperature accepted. [°C] */
export const COLDEST = -100;
/** Hottest conductor or ambient temperature accepted. [°C] */
export const HOTTEST = 400;

/**
 * Requires 0, or a magnitude from 1e-12 to 1e12.
 *
 * The type is tested first, because `'50' > 0` is true.
 * @internal
 */
export function requireNonNegative(value: number, parameter: string, unit: string): void {
  if (typeof value === 'number' && (value === 0 || (value >= SMALLEST && value <= LARGEST))) return;
  refuse(value, parameter, `0 or a number from 1e-12 to 1e12 ${unit}`);
}

/**
 * Requires 0, or a magnitude from 1e-30 to 1e30: what another function of the library made of numbers in their domain.
 * @internal
 */
export function requireComputed(value: number, parameter: string, unit: string): void {
  if (typeof value === 'number' && (value === 0 || (value >= 1e-30 && value <= 1e30))) return;
  refuse(value, parameter, `0 or a number from 1e-30 to 1e30 ${unit}`);
}

/**
 * Requires a magnitude from 1e-12 to 1e12.
 * @internal
 */
export function requirePositive(value: number, parameter: string, unit: string): void {
  if (typeof value === 'number' && value >= SMALLEST && value <= LARGEST) return;
  refuse(value, parameter, `a number from 1e-12 to 1e12 ${unit}`);
}

/**
 * Requires any number of at most 1e12 either side of 0.
 * @internal
 */
export function requireFinite(value: number, parameter: string): void {
  if (typeof value === 'number' && Math.abs(value) <= LARGEST) return;
  refuse(value, parameter, 'a number of at most 1e12');
}

/** A number of at most 1e12 either side of 0, which it requires to be one. @internal */
export function finite(value: number): number {
  requireFinite(value, 'value');
  return value;
}

/**
 * Requires a temperature from -100 °C to 400 °C.
 * @internal
 */
export function requireTemperature(value: number, parameter: string): void {
  if (typeof value === 'number' && value >= COLDEST && value <= HOTTEST) return;
  refuse(value, parameter, `a temperature from ${COLDEST} to ${HOTTEST} °C`);
}

/**
 * Requires a whole number between two bounds, both included.
 * @internal
 */
export function requireInteger(value: number, low: number, high: number, parameter: string): void {
  // Number.isInteger is false of every other type, a bigint and a symbol among them.
  if (Number.isInteger(value) && value >= low && value <= high) return;
  refuse(value, parameter, `a whole number from ${low} to ${high}`);
}

/**
 * Requires one of a closed list of names. Of a long list `requireName` names the nearest.
 * @internal
 */
export function requireOneOf(value: unknown, allowed: readonly (string | number)[], parameter: string): void {
  if (allowed.includes(value as string | number)) return;
  refuse(value, parameter, oneOf(allowed), 'unknown');
}

/** In words. @internal */
export function oneOf(allowed: readonly (string | number)[]): string {
  return `one of ${allowed.map(describe).join(', ')}`;
}

/**
 * Refuses keys that are not known, for a small function with few of them; others use `refuseUnknown`, which names the nearest.
 * @internal
 */
export function requireKeys(input: object, known: readonly string[], path: string): void {
  for (const [key, value] of Object.entries(input)) {
    if (value !== undefined && !known.includes(key)) refuse(value, `${path}.${key}`, `no key but ${known.join(', ')}`, 'unknown');
  }
}

/** Whether an object has more keys than the known ones, whose values are given; what is `undefined` is not counted. @internal */
export function hasMoreKeys(input: object, ...known: readonly unknown[]): boolean {
  let left = 0;
  for (const value of known) if (value !== undefined) left += 1;
  for (const key in input) if ((input as Record<string, unknown>)[key] !== undefined) left -= 1;
  return left < 0;
}

/**
 * Requires an object (not null, not an array), so that reading a field of it cannot throw a TypeError.
 * @internal
 */
export function requireObject(value: unknown, parameter: string, what: string): void {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) refuse(value, parameter, what, 'type');
}

/**
 * Requires an array.
 * @internal
 */
export function requireArray(value: unknown, parameter: string, what: string): void {
  if (!Array.isArray(value)) refuse(value, parameter, what, 'type');
}

/**
 * Requires `true` or `false`.
 * @internal
 */
export function requireBoolean(value: unknown, parameter: string): void {
  if (typeof value !== 'boolean') throw new InputError('type', parameter, 'true or false', value);
}

/**
 * Requires 0, or a fraction from 1e-12 to 1, of what the unit says.
 * @internal
 */
export function requireFraction(value: number, parameter: string, whole: string): void {
  requireNonNegative(value, parameter, `(a fraction of the ${whole})`);
  if (value > 1) refuse(value, parameter, `a fraction of the ${whole} from 0 to 1`);
}

/**
 * Refuses a value: as absent where it is, and else with the code given, or for its size if it is a number and for its type if not.
 * @internal
 */
export function refuse(
  value: unknown,
  parameter: string,
  expected: string,
  code: InputErrorCode = typeof value === 'number' ? 'range' : 'type',
): never {
  throw new InputError(value === undefined ? 'missing' : code, parameter, expected, value);
}
