import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { errorsPage } from '../../../scripts/errors-doc.mts';
import { askFor, DECIDING_WORDS } from '../../../src/words/deciding-words.ts';
import { ERROR_WORDS } from '../../../src/words/error-words.ts';
import { FINDING_WORDS } from '../../../src/words/finding-words.ts';
import { BUNDLE_WORDS, EXPLANATION_WORDS } from '../../../src/words/heat-words.ts';
import { describeRemedy, REMEDY_WORDS } from '../../../src/words/remedy-words.ts';
import { UNIT_WORDS } from '../../../src/words/unit-words.ts';
import { VERDICT_WORDS } from '../../../src/words/verdict-words.ts';
import { ROOT } from '../../support/files.ts';

test('docs/errors.md is current; if not: npx tsx scripts/errors-doc.mts', () => {
  expect(readFileSync(join(ROOT, 'docs/errors.md'), 'utf8')).toBe(errorsPage());
});

describe('words', () => {
  const CAUSES = Object.fromEntries(Object.entries(FINDING_WORDS).map(([code, { cause }]) => [code, cause]));

  test.each(Object.entries({ BUNDLE_WORDS, EXPLANATION_WORDS, CAUSES }))('%s: each says something of its own', (_name, table) => {
    const sentences = Object.values(table);
    expect(new Set(sentences).size).toBe(sentences.length);
    for (const sentence of sentences) expect(sentence).toMatch(/^[a-z0-9].*[^.]$/);
  });

  test('verdicts that are bad stand out by their capitals, and no two are alike', () => {
    expect(Object.entries(VERDICT_WORDS).map(([verdict, { word }]) => [verdict, word])).toEqual([
      ['fail', 'FAIL'],
      ['denied', 'DENIED'],
      ['uncertain', 'uncertain'],
      ['marginal', 'marginal'],
      ['pass', 'pass'],
    ]);
  });

  test.each([...Object.entries(ERROR_WORDS), ...Object.entries(FINDING_WORDS)])('%s has a cause and a cure', (_code, { cause, cure }) => {
    for (const words of [cause, cure]) expect(words).toMatch(/^[a-z].{8,}[^.]$/);
  });

  test('a fraction is written in percent, everything else as it is', () => {
    for (const [unit, { sign, factor }] of Object.entries(UNIT_WORDS)) {
      expect([sign, factor]).toEqual(unit === '1' ? ['%', 100] : [unit, 1]);
    }
  });

  test('an input that decides is asked for, one without words by its name', () => {
    for (const [parameter, { ask }] of Object.entries(DECIDING_WORDS)) expect(askFor({ parameter })).toBe(ask);
    expect(askFor({ parameter: 'temperature' })).toBe('State temperature.');
    expect(askFor({ parameter: 'constructor' })).toBe('State constructor.');
  });
});

describe('every remedy', () => {
  const verdict = { power: 'pass', cabling: 'pass', worst: 'pass' } as const;

  test.each(Object.keys(REMEDY_WORDS) as (keyof typeof REMEDY_WORDS)[])('%s is a sentence with nothing left to fill in', (remedy) => {
    const sentence = describeRemedy({ remedy, from: 8, to: 4, unit: 'm', use: 'Category 6A', verdict });
    expect(sentence).toMatch(/^[A-Z].*4/);
    expect(sentence).not.toMatch(/[{}.]$|undefined/);
  });

  test('with another begins it in small letters', () => {
    const also = [{ remedy: 'fewer-connections', from: 8, to: 4, unit: 'connections' }] as const;
    expect(describeRemedy({ remedy: 'shorter-run', from: 94, to: 90, unit: 'm', also, verdict })).toBe(
      'Shorten the installed cable from 94 m to at most 90 m; and make do with 4 connections in place of 8',
    );
  });

  test.each<[string, unknown, string]>([
    ['nothing', undefined, 'remedy'],
    ['no verdict', { remedy: 'shorter-run', from: 1, to: 1, unit: 'm' }, 'remedy.verdict'],
    ['a remedy that nobody knows', { remedy: 'prayer', from: 1, to: 1, unit: 'm', verdict }, 'remedy.remedy'],
    ['further changes that are no list', { remedy: 'shorter-run', from: 1, to: 1, unit: 'm', verdict, also: 3 }, 'remedy.also'],
  ])('refuses %s', (_what, given, parameter) => {
    expect(() => describeRemedy(given as never)).toThrow(expect.objectContaining({ name: 'InputError', parameter }));
  });
});
