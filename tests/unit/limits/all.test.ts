import { expect, test } from 'vitest';
import { checkNames, LIMITS } from '../../../src/limits/all.ts';
import { LIMIT_WORDS } from '../../../src/limits/limit-words.ts';
import { source } from '../../../src/sources/index.ts';

test('every limit has a name of its own, and words', () => {
  expect(new Set(checkNames).size).toBe(LIMITS.length);
  expect(Object.keys(LIMIT_WORDS).sort()).toEqual([...checkNames].sort());
  expect(new Set(Object.values(LIMIT_WORDS).map(({ title }) => title)).size).toBe(LIMITS.length);
});

test.each(LIMITS)('$name has a source that is known', (limit) => {
  expect(source(limit.source).title).not.toBe('');
});

test.each(Object.entries(LIMIT_WORDS))('%s says how it fails with placeholders that are known', (_, { fails, failsElse = '', wayOut }) => {
  const known = ['value', 'limit', 'class', 'standard', 'side', 'type', 'requestedClass', 'pairset'];
  for (const [, name] of `${fails} ${failsElse}`.matchAll(/\{(\w+)\}/g)) expect(known).toContain(name);
  expect(fails).toContain('{value}');
  expect(fails).not.toMatch(/[.]$/);
  expect(wayOut).toMatch(/^[a-z]/);
});

test('what is kept or not is never met narrowly', () => {
  for (const limit of LIMITS) if (limit.keptOrNot) expect(limit.neverMarginal).toBe(true);
});

test('a limit in ohms holds at just those ohms, and at no more', () => {
  const load = { power: 20 };
  const bounds: Readonly<Record<string, number>> = {
    'pd-voltage': 42.5,
    'pse-power': 24,
    'device-voltage': 40,
    'voltage-drop': 0.1,
    ampacity: 0.45,
  };
  for (const { name, asResistance } of LIMITS) {
    const bound = bounds[name];
    if (bound === undefined || asResistance === undefined) continue;
    const ohms = asResistance(50, load, bound) as number;
    const current = (2 * 20) / (50 + Math.sqrt(2500 - 80 * ohms));
    const values: Readonly<Record<string, number>> = {
      'pse-power': 50 * current,
      'voltage-drop': (current * ohms) / 50,
      ampacity: current,
    };
    const value = values[name] ?? 50 - current * ohms;
    expect(value).toBeCloseTo(bound, 12);
  }
});
