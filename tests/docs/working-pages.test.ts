import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { formulasPage } from '../../scripts/formulas-doc.mts';
import { homeworkPage } from '../../scripts/homework-doc.mts';
import { sheets } from '../../src/working/book/sheets.ts';
import { ROOT } from '../support/files.ts';

const read = (page: string): string => readFileSync(join(ROOT, 'docs', page), 'utf8');

test('docs/homework.md is current; if not: npx tsx scripts/homework-doc.mts', () => {
  expect(read('homework.md')).toBe(homeworkPage());
});

test('docs/formulas.md is current; if not: npx tsx scripts/formulas-doc.mts', () => {
  expect(read('formulas.md')).toBe(formulasPage());
});

describe('the page of formulas', () => {
  test.each(Object.entries(sheets))('has every formula of %s', (name, { steps }) => {
    const page = formulasPage();
    const chapter = page.slice(page.indexOf(`\n## ${name}\n`));
    for (const { symbol } of steps) expect(chapter).toContain(`| \`${symbol.replaceAll('#', 'i')} = `);
  });

  test('no cell breaks its table', () => {
    const tables = formulasPage()
      .split('\n')
      .filter((line) => line.startsWith('|'));
    for (const row of tables) expect([6, 7]).toContain(row.split(/(?<!\\)\|/).length);
  });
});

describe('the page of problems', () => {
  test('has eight, and every answer handed in is right or told why it is wrong', () => {
    const page = homeworkPage();
    expect(page.match(/^## \d\. /gm)).toHaveLength(8);
    const answers = [...page.matchAll(/^- .*: (Right|Wrong)/gm)];
    expect(answers.filter(([, verdict]) => verdict === 'Right').length).toBeGreaterThanOrEqual(8);
    expect(answers.filter(([, verdict]) => verdict === 'Wrong').length).toBeGreaterThanOrEqual(8);
  });
});
