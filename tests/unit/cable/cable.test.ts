import { expect, test } from 'vitest';
import { cable } from '../../../src/cable/cable.ts';
import type { CableName } from '../../../src/cable/cables.ts';
import { awg } from '../../../src/conductor/awg.ts';
import { source } from '../../../src/sources/source.ts';
import { as, expectInputError, expectPlain } from '../../helpers/expectations.ts';

const NAMES: readonly CableName[] = ['cat5e', 'cat6', 'cat6a', 'cord-24', 'cord-26', 'cord-28'];

test.each(NAMES)('%s is plain data of four pairs, with a source that can be looked up', (name) => {
  const made = cable(name);
  expectPlain(made);
  expect(made).toMatchObject({ name, pairs: 4, temperatureCoefficient: 0.00393 });
  expect(source(made.source).title).not.toBe('');
});

test.each(NAMES)('%s: the usual copper is within the maximum', (name) => {
  const { nominalResistancePerMetre, maximumResistancePerMetre } = cable(name);
  expect(nominalResistancePerMetre).toBeLessThan(maximumResistancePerMetre);
});

test.each(NAMES)('%s: nominal resistance is that of its gauge, solid if installed, stranded if a cord', (name) => {
  const { nominalResistancePerMetre, gauge, stranding, use } = cable(name);
  expect(stranding).toBe(use === 'cord' ? 'stranded' : 'solid');
  expect(nominalResistancePerMetre).toBe(awg(gauge, { stranding }).resistancePerMetre);
});

test('hands out a fresh object every time', () => {
  expect(cable('cat6')).not.toBe(cable('cat6'));
  expect(cable('cat6')).toStrictEqual(cable('cat6'));
});

test.each([
  'cat5',
  'CAT5E',
  'Category 5e',
  'cat9',
  '',
  'constructor',
  '__proto__',
  'toString',
  5,
  null,
  ['cat5e'],
  5n,
  Object.create(null),
])('refuses %o', (name) => {
  expect(expectInputError(() => cable(as<CableName>(name)), 'name', 'unknown').message).toContain("'cat5e'");
});

test('refuses no name', () => {
  expectInputError(() => cable(as<CableName>(undefined)), 'name', 'missing');
});
