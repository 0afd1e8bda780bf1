/** The bibliography: every key resolves, and no two registers share one. */
import { expect, test } from 'vitest';
import { source, sourceKeys } from '../../../src/sources/index.ts';
import { expectInputError } from '../../helpers/expectations.ts';

const keys: readonly string[] = typeof sourceKeys === 'function' ? sourceKeys() : sourceKeys;

test('every key has a title and says how sure we are', () => {
  expect(keys.length).toBeGreaterThan(100);
  for (const key of keys) {
    const found = source(key as Parameters<typeof source>[0]);
    expect(found.title.trim(), key).not.toBe('');
    expect(['published', 'memory', 'common practice', 'derived'], key).toContain(found.status);
  }
});

test('no key stands twice, and each is written in small letters and digits', () => {
  expect(new Set(keys).size).toBe(keys.length);
  for (const key of keys) expect(key).toMatch(/^[a-z0-9]+([.-][a-z0-9]+)*$/);
});

test('each room finds its own: metals, cables, classes, heat, readings and general facts', () => {
  for (const key of ['iec-60028', 'tia-568-channel', 'ieee-802.3-class', 'data-sheet', 'collapse']) expect(keys).toContain(key);
});

test('what is no key is refused, names of built-in properties too', () => {
  for (const key of ['constructor', 'toString', 'IEC-60028', '', 7]) expectInputError(() => source(key as 'iec-60028'), 'key', 'unknown');
});

test('a citation is a copy of its own', () => {
  const mine = source('iec-60028') as { title: string };
  mine.title = 'changed';
  expect(source('iec-60028').title).not.toBe('changed');
});
