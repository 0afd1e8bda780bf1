import { expect, test } from 'vitest';
import { type Check, requireMarginalBelow, settledMargin, type Verdict, verdictOf, worstVerdict } from '../../../src/circuit/check.ts';
import { as, expectInputError, NOT_NUMBERS } from '../../helpers/expectations.ts';

test('a verdict by its margin: below 0 fails, under the fraction is marginal, the fraction itself passes', () => {
  expect(verdictOf(-Number.MIN_VALUE, 100, 0.05)).toBe('fail');
  expect(verdictOf(0, 100, 0.05)).toBe('marginal');
  expect(verdictOf(4.999999, 100, 0.05)).toBe('marginal');
  expect(verdictOf(5, 100, 0.05)).toBe('pass');
  expect(verdictOf(0, 100, 0)).toBe('pass');
});

test('a margin that is no number fails', () => {
  expect(verdictOf(Number.NaN, 100, 0.05)).toBe('fail');
});

test.each<readonly [Verdict[], Verdict]>([
  [[], 'pass'],
  [['pass', 'pass'], 'pass'],
  [['pass', 'marginal'], 'marginal'],
  [['marginal', 'uncertain'], 'uncertain'],
  [['uncertain', 'marginal'], 'uncertain'],
  [['marginal', 'fail', 'uncertain'], 'fail'],
  [['uncertain', 'fail'], 'fail'],
])('the worst of %j is %s', (verdicts, worst) => {
  expect(worstVerdict(verdicts.map((verdict) => as<Check>({ verdict })))).toBe(worst);
});

test('a margin keeps to the side that was settled in ohms', () => {
  expect(settledMargin(3, 100, true)).toBe(3);
  expect(settledMargin(-1e-15, 100, true)).toBe(0);
  expect(settledMargin(-3, 100, false)).toBe(-3);
  expect(settledMargin(1e-15, 100, false)).toBeLessThan(0);
  expect(settledMargin(0, 100, false)).toBeLessThan(0);
});

test('the marginal fraction is a number from 0 to 1', () => {
  for (const good of [0, 0.05, 1]) expect(() => requireMarginalBelow(good)).not.toThrow();
  for (const bad of [-0.01, 1.01]) expectInputError(() => requireMarginalBelow(bad), 'marginalBelow', 'range');
  for (const [, value, code] of NOT_NUMBERS) expectInputError(() => requireMarginalBelow(as<number>(value)), 'marginalBelow', code);
});
