/** What the tests of every room ask for: printed digits, plain results, helpful errors, untouched inputs. @module */
import { expect } from 'vitest';
import type { InputErrorCode } from '../../src/quantity/input-error.ts';
import { InputError } from '../../src/quantity/input-error.ts';

/** One unit of the last digit of a printed number, `0.01` for `12.95`, `10` is not assumed for `10`. */
export function lastDigit(printed: string): number {
  const [mantissa = '', exponent = '0'] = printed.toLowerCase().split('e');
  return 10 ** (Number(exponent) - (mantissa.split('.')[1]?.length ?? 0));
}

/** Holds if the value rounds to the printed digits; `units` widens it to whole units of the last digit. */
export function expectPrinted(actual: number, printed: string, units: number = 0.5): void {
  const tolerance = units * lastDigit(printed) * (1 + 1e-9); // the decimal itself is a rounded double
  expect(Math.abs(actual - Number(printed)), `${actual} against ${printed} as printed`).toBeLessThanOrEqual(tolerance);
}

/** Holds if the two agree to a fraction of the expected value. */
export function expectWithin(actual: number, expected: number, fraction: number): void {
  expect(Math.abs(actual - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(fraction * Math.abs(expected));
}

/** Rows of a pasted table: blank lines dropped, cells split at white space. */
export function rows(table: string): string[][] {
  return table
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .map((line) => line.split(/\s+/));
}

/** Holds if a result is plain data: the same after JSON and after a structured clone, every number finite. */
export function expectPlain(result: unknown): void {
  expect(JSON.parse(JSON.stringify(result))).toStrictEqual(result);
  expect(structuredClone(result)).toStrictEqual(result);
  expectFinite(result, 'result');
}

/** Holds if no number anywhere inside is NaN or infinite. */
export function expectFinite(value: unknown, path: string): void {
  if (typeof value === 'number' && !Number.isFinite(value)) expect.fail(`${path} is ${value}`);
  if (typeof value === 'object' && value !== null) {
    for (const [key, inner] of Object.entries(value)) expectFinite(inner, `${path}.${key}`);
  }
}

/** Freezes an input all the way down, so that any attempt to edit it throws. */
export function frozen<T>(input: T): T {
  if (typeof input === 'object' && input !== null && !Object.isFrozen(input)) {
    Object.freeze(input);
    for (const inner of Object.values(input)) frozen(inner);
  }
  return input;
}

/** Holds if the call throws an InputError for that parameter, and returns the error for further questions. */
export function expectInputError(call: () => unknown, parameter: string, code?: InputErrorCode): InputError {
  let thrown: unknown;
  try {
    thrown = { returned: call() };
  } catch (error) {
    thrown = error;
  }
  if (!(thrown instanceof InputError)) expect.fail(`no InputError for ${parameter}, but ${String(JSON.stringify(thrown) ?? thrown)}`);
  expect(thrown.parameter).toBe(parameter);
  if (code !== undefined) expect(thrown.code).toBe(code);
  expect(thrown.message).toContain(parameter);
  expect(thrown.expected).not.toBe('');
  return thrown;
}

/** Hands a value of the wrong type to a typed parameter, as callers without a compiler do. */
export function as<T>(value: unknown): T {
  return value as T;
}

/** What is no number in any domain, and the code each earns. */
export const NOT_NUMBERS: readonly (readonly [label: string, value: unknown, code: InputErrorCode])[] = [
  ['text that looks like a number', '50', 'type'],
  ['an array of one number', [50], 'type'],
  ['a boolean', true, 'type'],
  ['a bigint', 50n, 'type'],
  ['null', null, 'type'],
  ['an object without a prototype', Object.create(null), 'type'],
  ['a symbol', Symbol('fifty'), 'type'],
  ['a function', () => 50, 'type'],
  ['NaN', Number.NaN, 'range'],
  ['Infinity', Number.POSITIVE_INFINITY, 'range'],
  ['-Infinity', Number.NEGATIVE_INFINITY, 'range'],
];
