import { expect, test } from 'vitest';
import { compared, movedPath, resolved } from './compare.ts';
import type { FrozenRecord } from './corpus.ts';
import { MOVES } from './moves.ts';

const CHECKS = [
  { name: 'pd-power', value: 1, deciding: ['supplyVoltage'] },
  { name: 'material', value: 2 },
];
const run = (cabling?: string): FrozenRecord => ({
  name: 'checkPoweredRun',
  args: [{ cabling }],
  result: { power: { available: 3, checks: [{ name: 'material', value: 2 }] }, powerChecks: CHECKS },
});

test.each([
  ['power.available', 'available'],
  ['power.limits.pdPower', 'classLimits.pdPower'],
  ['power.feasible', 'operating.feasible'],
  ['power.checks[0].value', 'checks[aspect=power][name=material].value'],
  ['powerChecks[1].value', 'checks[aspect=power][1].value'],
  ['powerChecks[0].deciding[0]', 'checks[aspect=power][0].deciding[0].parameter'],
  ['cablingChecks', 'checks[aspect=cabling]'],
  ['verdict.cabling', 'verdict.cabling'],
  ['powerless', 'powerless'],
])('of a powered run %s has become %s', (from, to) => {
  expect(movedPath(run(), from, MOVES)).toBe(to);
});

test('a run that no standard judged keeps no verdict of cabling, nor the list of checks twice', () => {
  expect(movedPath(run('none'), 'verdict.cabling', MOVES)).toHaveProperty('gone');
  expect(movedPath(run(), 'power.checks', MOVES)).toHaveProperty('gone');
});

test('what became of a run holds wherever a run is part of a result', () => {
  const warm: FrozenRecord = { name: 'warmRun', args: [{}], result: { run: run().result } };
  expect(movedPath(warm, 'run.power.available', MOVES)).toBe('run.available');
  expect(movedPath(warm, 'run.powerChecks[0].deciding[0]', MOVES)).toBe('run.checks[aspect=power][0].deciding[0].parameter');
  const bounded: FrozenRecord = { name: 'bounds', args: ['checkTwoWireRun', {}], result: {} };
  expect(movedPath(bounded, 'worst.atLowest.current', MOVES)).toBe('worst.operating.current');
  expect(movedPath(bounded, 'fields.atLowest.current.low', MOVES)).toBe('fields.operating.current.low');
  expect(movedPath(bounded, 'verdict', MOVES)).toBe('verdict');
});

test('a path leads through lists, chosen elements and keys with dots', () => {
  const result = {
    checks: [{ name: 'a', aspect: 'heat' }, ...CHECKS.map((check) => ({ ...check, aspect: 'power' }))],
    fields: { 'x.y': { low: 4 } },
  };
  expect(resolved(result, 'checks[aspect=power][1].value')).toBe(2);
  expect(resolved(result, 'checks[aspect=power]')).toHaveLength(2);
  expect(resolved(result, 'checks[name=pd-power].deciding[0]')).toBe('supplyVoltage');
  expect(resolved(result, 'fields.x.y.low')).toBe(4);
  expect(resolved(result, 'checks[5].value')).toBeUndefined();
  expect(resolved(result, 'missing.value')).toBeUndefined();
});

test('the last bit, the sign of zero, a length, a missing value and an outcome are differences', () => {
  const differences = (result: unknown, answer: unknown): readonly string[] =>
    compared({ ask: () => answer }, { name: 'ask', args: [], result }).differences;
  expect(differences({ a: 0.3, list: [1, 2] }, { a: 0.3, list: [1, 2], more: 1 })).toEqual([]);
  expect(differences({ a: 0.3 }, { a: 0.1 + 0.2 })).toEqual(['a: was 0.3, is 0.30000000000000004']);
  expect(differences({ a: { number: '-0' } }, { a: -0 })).toEqual([]);
  expect(differences({ a: { number: '-0' } }, { a: 0 })).toHaveLength(1);
  expect(differences({ list: [1] }, { list: [1, 2] })).toEqual(['list: was 1, is 2']);
  expect(differences({ a: 1 }, {})).toEqual(['a: was 1, is nothing']);
  expect(compared({ ask: () => 1 }, { name: 'ask', args: [], error: ['range', 'a'] }).differences).toEqual([
    'outcome: was "range a", is "result"',
  ]);
});
