import { describe, expect, test } from 'vitest';
import { nearest, refuseUnknown, requireName } from '../../../src/quantity/nearest.ts';
import { expectInputError } from '../../helpers/expectations.ts';

const KEYS = ['poeClass', 'temperature', 'temperatureSpread', 'minimumVoltage', 'connections', 'connectionResistance', 'length', 'pairs'];

describe('the nearest name', () => {
  test.each([
    ['temp', 'temperature'],
    ['temprature', 'temperature'],
    ['tempreature', 'temperature'],
    ['minVoltage', 'minimumVoltage'],
    ['minimunVoltage', 'minimumVoltage'],
    ['conections', 'connections'],
    ['connectionz', 'connections'],
    ['lenght', 'length'],
    ['Length', 'length'],
    ['LENGTH', 'length'],
    ['pair', 'pairs'],
    ['pairz', 'pairs'],
    ['tempSpread', 'temperatureSpread'],
  ])('of %s is %s', (typed, name) => {
    expect(nearest(typed, KEYS)).toBe(name);
  });

  test.each(['', 'x', 'l', 'colour', 'voltageOfSupply', 'lengthhhh', 'toString'])('there is none of %j', (typed) => {
    expect(nearest(typed, KEYS)).toBeUndefined();
  });

  test('letters in their order come before an edit, one edit before two, and of equals the shorter or the first', () => {
    expect(nearest('cat6', ['cat5', 'cat6a'])).toBe('cat6a');
    expect(nearest('abcd', ['axyd', 'abxd'])).toBe('abxd');
    expect(nearest('cat', ['cat6a', 'cat6', 'cat7'])).toBe('cat6');
    expect(nearest('abcd', ['abce', 'abcf'])).toBe('abce');
  });

  test('the names are left as they are, and a very long key is no trouble', () => {
    const names = Object.freeze(['bbb', 'a']);
    expect(nearest('bb', names)).toBe('bbb');
    expect(nearest('length'.repeat(100_000), KEYS)).toBeUndefined();
    expect(nearest('x'.repeat(1_000_000), KEYS)).toBeUndefined();
  });
});

test('a name is one of its list; the nearest is suggested, and expected lists them all', () => {
  expect(() => requireName('cat6', ['cat5e', 'cat6'], 'cable')).not.toThrow();
  expect(() => requireName(2, [2, 4], 'pairs')).not.toThrow();
  const error = expectInputError(() => requireName('Cat6', ['cat5e', 'cat6'], 'cable'), 'cable', 'unknown');
  expect(error.message).toBe('cable: "Cat6" is unknown; did you mean "cat6"?');
  expect(error.expected).toBe('one of "cat5e", "cat6"');
  expect(expectInputError(() => requireName('', ['cat6'], 'cable'), 'cable', 'unknown').message).toBe(
    'cable: expected one of "cat6", received ""',
  );
  expectInputError(() => requireName(undefined, ['cat6'], 'cable'), 'cable', 'missing');
  expectInputError(() => requireName('2', [2, 4], 'pairs'), 'pairs', 'unknown');
  expectInputError(() => requireName(Object.create(null), ['cat6'], 'cable'), 'cable', 'unknown');
});

test('an unknown key is refused by its path, with the nearest or with the list; undefined is absent', () => {
  expect(() => refuseUnknown({ length: 1, colour: undefined }, KEYS, '')).not.toThrow();
  const error = expectInputError(() => refuseUnknown({ length: 1, temprature: 20 }, KEYS, ''), 'temprature', 'unknown');
  expect(error.message).toBe('temprature: unknown; did you mean temperature?');
  expect([error.expected, error.received]).toEqual(['temperature', 20]);
  const listed = expectInputError(
    () => refuseUnknown({ colour: 'red' }, ['length', 'pairs'], 'segments[3]'),
    'segments[3].colour',
    'unknown',
  );
  expect(listed.message).toBe('segments[3].colour: unknown; the keys are length, pairs');
  expect(listed.expected).toBe('one of length, pairs');
});
