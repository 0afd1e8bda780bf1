import { describe, expect, test } from 'vitest';
import {
  hasMoreKeys,
  requireArray,
  requireFinite,
  requireInteger,
  requireKeys,
  requireNonNegative,
  requireObject,
  requireOneOf,
  requirePositive,
  requireTemperature,
} from '../../../src/quantity/guards.ts';
import { neighbour } from '../../helpers/exact.ts';
import { as, expectInputError, NOT_NUMBERS } from '../../helpers/expectations.ts';

const NUMBER_GUARDS: readonly (readonly [name: string, guard: (value: number) => void])[] = [
  ['requireNonNegative', (value) => requireNonNegative(value, 'length', 'm')],
  ['requirePositive', (value) => requirePositive(value, 'length', 'm')],
  ['requireFinite', (value) => requireFinite(value, 'length')],
  ['requireTemperature', (value) => requireTemperature(value, 'length')],
  ['requireInteger', (value) => requireInteger(value, 0, 100, 'length')],
];

describe.each(NUMBER_GUARDS)('%s', (_name, guard) => {
  test.each(NOT_NUMBERS)('refuses %s', (_label, value, code) => {
    expect(expectInputError(() => guard(as<number>(value)), 'length', code).received).toBe(value);
  });

  test('says that a value is missing', () => {
    expectInputError(() => guard(as<number>(undefined)), 'length', 'missing');
  });

  test('accepts 50 and returns nothing', () => {
    expect(guard(50)).toBeUndefined();
  });
});

const edges = (guard: (value: number) => void, good: readonly number[], bad: readonly number[]): void => {
  for (const value of good) expect(() => guard(value), String(value)).not.toThrow();
  for (const value of bad) expectInputError(() => guard(value), 'length', 'range');
};

test('a magnitude is 0, or from 1e-12 to 1e12, ends included', () => {
  edges(
    (value) => requireNonNegative(value, 'length', 'm'),
    [0, -0, 1e-12, 1, 1e12],
    [-1, -1e-12, neighbour(1e-12, -1), Number.MIN_VALUE, neighbour(1e12, 1), Number.MAX_VALUE],
  );
});

test('a positive magnitude is from 1e-12 to 1e12, ends included, and never 0', () => {
  edges(
    (value) => requirePositive(value, 'length', 'm'),
    [1e-12, 1, 1e12],
    [0, -0, -1, neighbour(1e-12, -1), Number.MIN_VALUE, neighbour(1e12, 1), Number.MAX_VALUE],
  );
});

test('a finite number lies within 1e12 of 0, ends included', () => {
  edges(
    (value) => requireFinite(value, 'length'),
    [0, -0, Number.MIN_VALUE, -1e12, 1e12],
    [neighbour(1e12, 1), -neighbour(1e12, 1), Number.MAX_VALUE, -Number.MAX_VALUE],
  );
});

test('a temperature is from -100 to 400 °C, ends included', () => {
  edges((value) => requireTemperature(value, 'length'), [-100, -0, 0, 20, 400], [-neighbour(100, 1), neighbour(400, 1), -273.15, 1e3]);
});

test('a whole number lies between its bounds, ends included, and has no fraction', () => {
  edges((value) => requireInteger(value, 0, 8, 'length'), [0, -0, 4, 8], [-1, 9, 0.5, 7.999999999999999, 1e300]);
});

test('the message gives the parameter, the domain with its unit, and the value', () => {
  const error = expectInputError(() => requireNonNegative(-3, 'segments[2].length', 'm'), 'segments[2].length');
  expect(error.message).toBe('segments[2].length: expected 0 or a number from 1e-12 to 1e12 m, received -3');
});

test('one of a list: numbers and texts are not the same, and absence is said apart', () => {
  expect(() => requireOneOf(2, [2, 4], 'pairs')).not.toThrow();
  expect(expectInputError(() => requireOneOf('2', [2, 4], 'pairs'), 'pairs', 'unknown').expected).toBe('one of 2, 4');
  expect(expectInputError(() => requireOneOf('x', ['solid', 'stranded'], 's'), 's', 'unknown').expected).toBe('one of "solid", "stranded"');
  expectInputError(() => requireOneOf(undefined, [2, 4], 'pairs'), 'pairs', 'missing');
  expectInputError(() => requireOneOf('constructor', ['solid'], 'stranding'), 'stranding', 'unknown');
  expectInputError(() => requireOneOf(Object.create(null), ['solid'], 'stranding'), 'stranding', 'unknown');
});

test('an object is an object: not null, not an array, not a function; one without a prototype will do', () => {
  expect(() => requireObject({}, 'input', 'an object')).not.toThrow();
  expect(() => requireObject(Object.create(null), 'input', 'an object')).not.toThrow();
  for (const value of [null, [], 'text', 7, 7n, true, () => ({}), Symbol('x')]) {
    expectInputError(() => requireObject(value, 'input', 'an object'), 'input', 'type');
  }
  expectInputError(() => requireObject(undefined, 'input', 'an object'), 'input', 'missing');
});

test('an array is an array: not text, not an array-like', () => {
  expect(() => requireArray([], 'segments', 'a list')).not.toThrow();
  for (const value of [null, {}, 'abc', { length: 1, 0: 'x' }, new Set(), new Uint8Array(2)]) {
    expectInputError(() => requireArray(value, 'segments', 'a list'), 'segments', 'type');
  }
  expectInputError(() => requireArray(undefined, 'segments', 'a list'), 'segments', 'missing');
});

test('the keys of a small function: none but the known ones, and undefined is absent', () => {
  expect(() => requireKeys({ limit: 1, other: undefined }, ['limit', 'screened'], 'options')).not.toThrow();
  const { message } = expectInputError(
    () => requireKeys({ screend: true }, ['limit', 'screened'], 'options'),
    'options.screend',
    'unknown',
  );
  expect(message).toBe('options.screend: expected no key but limit, screened, received true');
});

test('more keys than the known ones, undefined ones not counted', () => {
  const a: number | undefined = undefined;
  expect([hasMoreKeys({}), hasMoreKeys({ a: 1 }, 1), hasMoreKeys({ a: 1, b: undefined }, 1, a), hasMoreKeys({ b: 2 }, a, 2)]).toEqual([
    false,
    false,
    false,
    false,
  ]);
  expect([hasMoreKeys({ a: 0 }), hasMoreKeys({ a: 1, b: null }, 1), hasMoreKeys({ b: 2, c: 3 }, a, 2)]).toEqual([true, true, true]);
});
