import { expect, test } from 'vitest';
import { InputError, isInputError } from '../../../src/quantity/input-error.ts';
import { expectPlain } from '../../helpers/expectations.ts';

test('carries the kind of mistake, the path, what was expected and what arrived', () => {
  const received = { not: 'a number' };
  const error = new InputError('type', 'segments[3].length', 'a number', received);
  expect(error.code).toBe('type');
  expect(error.parameter).toBe('segments[3].length');
  expect(error.expected).toBe('a number');
  expect(error.received).toBe(received);
});

test('is a RangeError, an Error, and named', () => {
  const error = new InputError('range', 'length', 'a number', -1);
  expect(error).toBeInstanceOf(RangeError);
  expect(error).toBeInstanceOf(Error);
  expect(error.name).toBe('InputError');
  expect(String(error)).toBe('InputError: length: expected a number, received -1');
  expect(error.stack).toContain('input-error.test');
});

test.each([
  ['50', '"50"'],
  ['', '""'],
  ['a "quoted" word', '"a \\"quoted\\" word"'],
  ['line\nbreak', '"line\\nbreak"'],
  [50, '50'],
  [Number.NaN, 'NaN'],
  [Number.NEGATIVE_INFINITY, '-Infinity'],
  [50n, '50n'],
  [true, 'true'],
  [undefined, 'undefined'],
  [null, 'null'],
  [[50], 'an array'],
  [{ a: 1 }, 'an object'],
  [Object.create(null), 'an object'],
  [() => 50, 'a function'],
  [Symbol('fifty'), 'Symbol(fifty)'],
])('describes %o in its message without ever throwing', (received, words) => {
  expect(new InputError('type', 'length', 'a number', received).message).toBe(`length: expected a number, received ${words}`);
});

test('shortens a long text in the message and keeps it whole in the field', () => {
  const long = 'x'.repeat(5000);
  const error = new InputError('unreadable', 'text', 'a length', long);
  expect(error.message.length).toBeLessThan(140);
  expect(error.message).toContain('...');
  expect(error.received).toBe(long);
});

test('writes itself to JSON as plain data, message included', () => {
  const error = new InputError('unknown', 'name', "one of 'cat5e'", 'cat9');
  const json = {
    name: 'InputError',
    code: 'unknown',
    parameter: 'name',
    expected: "one of 'cat5e'",
    received: 'cat9',
    message: `name: expected one of 'cat5e', received "cat9"`,
  };
  expect(error.toJSON()).toStrictEqual(json);
  expect(JSON.parse(JSON.stringify(error))).toStrictEqual(json);
});

test.each([50n, Symbol('fifty'), Object.create(null), undefined, () => 50])(
  'writes itself to JSON whatever was received: %o',
  (received) => {
    expectPlain(new InputError('type', 'length', 'a number', received).toJSON());
  },
);

test('isInputError knows its own, and nothing else', () => {
  expect(isInputError(new InputError('missing', 'length', 'a number', undefined))).toBe(true);
  for (const other of [new Error('no'), new RangeError('no'), new TypeError('no'), 'no', undefined, null, 7, {}, Object.create(null)]) {
    expect(isInputError(other)).toBe(false);
  }
});

test('isInputError knows the plain data of one, and no other object', () => {
  const error = new InputError('missing', 'length', 'a number', undefined);
  expect(isInputError(error.toJSON())).toBe(true);
  expect(isInputError(JSON.parse(JSON.stringify(error)))).toBe(true);
  expect(isInputError({ ...error })).toBe(true);
  for (const other of [
    { name: 'InputError' },
    { parameter: 'length' },
    { name: 'InputError', parameter: 7 },
    { name: 'Error', parameter: 'length' },
  ]) {
    expect(isInputError(other)).toBe(false);
  }
});

test.each(['cat9', '', -1, 0, 'x'.repeat(200)])('a text or a finite number stays what it was in plain data: %j', (received) => {
  expect(new InputError('range', 'length', 'a number', received).toJSON().received).toBe(received);
});

test.each([
  [Number.NaN, 'NaN'],
  [Number.POSITIVE_INFINITY, 'Infinity'],
  [true, 'true'],
  [null, 'null'],
  [undefined, 'undefined'],
  [7n, '7n'],
  [[1], 'an array'],
])('anything else is put in words: %o', (received, words) => {
  expect(new InputError('range', 'length', 'a number', received).toJSON().received).toBe(words);
});

test('fromJSON makes the error again, and twice is the same', () => {
  const error = new InputError('unknown', 'temprature', 'temperature', 20, 'temprature: unknown; did you mean temperature?');
  const again = InputError.fromJSON(JSON.parse(JSON.stringify(error)));
  expect(again).toBeInstanceOf(InputError);
  expect(again.message).toBe(error.message);
  expect(again.toJSON()).toStrictEqual(error.toJSON());
  const undefinedReceived = new InputError('missing', 'length', 'a number', undefined);
  expect(InputError.fromJSON(undefinedReceived.toJSON()).toJSON()).toStrictEqual(undefinedReceived.toJSON());
});

test('structuredClone keeps message and stack of the error, and all of its plain data', () => {
  const error = new InputError('range', 'length', 'a number', -1);
  const clone = structuredClone(error);
  expect([clone.message, clone.stack]).toEqual([error.message, error.stack]);
  expect(InputError.fromJSON(structuredClone(error.toJSON())).toJSON()).toStrictEqual(error.toJSON());
});

test('isInputError recognises the error of another copy of the library', async () => {
  const other = '../../../src/quantity/input-error.ts?another-copy';
  const copy = (await import(/* @vite-ignore */ other)) as typeof import('../../../src/quantity/input-error.ts');
  const foreign = new copy.InputError('range', 'length', 'a number', -1);
  expect(foreign).not.toBeInstanceOf(InputError);
  expect(isInputError(foreign)).toBe(true);
  expect(copy.isInputError(new InputError('range', 'length', 'a number', -1))).toBe(true);
});

test('the mark that copies know each other by does not show when an error is printed or copied', () => {
  expect(Object.keys(new InputError('range', 'length', 'a number', -1)).sort()).toEqual([
    'code',
    'expected',
    'name',
    'parameter',
    'received',
  ]);
});
