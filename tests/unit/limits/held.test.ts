import { expect, test } from 'vitest';
import type { Check, CheckName } from '../../../src/limits/check.ts';
import { held, heldInOhms, requireMarginalBelow, verdictOf } from '../../../src/limits/held.ts';
import type { Limit } from '../../../src/limits/limit.ts';
import { NO_LINE } from '../../../src/limits/resistance-at.ts';
import { type Verdict, worse, worstVerdict } from '../../../src/limits/verdict.ts';
import { as, expectInputError, NOT_NUMBERS } from '../../helpers/expectations.ts';

const MOST: Limit<CheckName> = {
  name: 'channel-length',
  aspect: 'cabling',
  unit: 'm',
  source: 'tia-568-channel',
};
const LEAST: Limit<CheckName> = { ...MOST, side: 'at least' };

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

test('the worse of two verdicts, whichever comes first', () => {
  expect(worse('pass', 'marginal')).toBe('marginal');
  expect(worse('fail', 'uncertain')).toBe('fail');
});

test('a check is the value held against the bound, with what its limit says', () => {
  const check: Check = held(MOST, 97, 100, 0.05);
  expect(check).toEqual({
    name: 'channel-length',
    aspect: 'cabling',
    value: 97,
    limit: 100,
    unit: 'm',
    margin: 3,
    marginFraction: 0.03,
    verdict: 'marginal',
    source: 'tia-568-channel',
  });
  expect(held(LEAST, 97, 100, 0.05)).toMatchObject({ margin: -3, marginFraction: -0.03, verdict: 'fail' });
  expect(held(LEAST, 103, 100, 0.02)).toMatchObject({ margin: 3, verdict: 'pass' });
});

test('a limit that knows no narrow pass is met or not', () => {
  const exact = { ...MOST, neverMarginal: true } as const;
  expect(held(exact, 100, 100, 0.05).verdict).toBe('pass');
  expect(held(exact, 100.001, 100, 0.05).verdict).toBe('fail');
});

test('a bound of 0 has no fraction', () => {
  expect(held(MOST, 0, 0, 0.05)).toMatchObject({ margin: 0, marginFraction: 0, verdict: 'pass' });
  expect(held(MOST, 1, 0, 0.05)).toMatchObject({ margin: -1, marginFraction: 0, verdict: 'fail' });
});

test('a margin keeps to the side that was settled in ohms', () => {
  const ohms = (value: number, isMet: boolean) => heldInOhms(LEAST, value, 100, 0.05, 7, 5, isMet);
  expect(ohms(103, true).margin).toBe(3);
  expect(ohms(100 - 1e-13, true).margin).toBe(0);
  expect(ohms(97, false).margin).toBe(-3);
  expect(ohms(100 + 1e-13, false).margin).toBeLessThan(0);
  expect(ohms(100, false)).toMatchObject({ verdict: 'fail', loop: { limit: 7, margin: 2 } });
});

test('ohms up to the most are met; nothing bounds it, or not even none will do', () => {
  const at = (most: number | undefined, resistance: number) => heldInOhms(LEAST, 100, 100, 0, most, resistance);
  expect(at(5, 5)).toMatchObject({ verdict: 'pass', loop: { limit: 5, margin: 0 } });
  expect(at(5, 5.1).verdict).toBe('fail');
  expect(at(undefined, 1e9)).toMatchObject({ verdict: 'pass' });
  expect(at(NO_LINE, 0).verdict).toBe('fail');
  for (const most of [undefined, NO_LINE]) expect(at(most, 0)).not.toHaveProperty('loop');
});

test('the marginal fraction is a number from 0 to 1', () => {
  for (const good of [0, 0.05, 1]) expect(() => requireMarginalBelow(good)).not.toThrow();
  for (const bad of [-0.01, 1.01]) expectInputError(() => requireMarginalBelow(bad), 'marginalBelow', 'range');
  for (const [, value, code] of NOT_NUMBERS) expectInputError(() => requireMarginalBelow(as<number>(value)), 'marginalBelow', code);
});
