import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { sourcesPage } from '../../scripts/sources-doc.mts';
import { source, sourceKeys } from '../../src/sources/source.ts';
import { ROOT } from '../support/files.ts';

test('docs/sources.md is current; if not: npx tsx scripts/sources-doc.mts', () => {
  expect(readFileSync(join(ROOT, 'docs/sources.md'), 'utf8')).toBe(sourcesPage());
});

test('the page names every source, and lists each that is only remembered', () => {
  const page = sourcesPage();
  for (const key of sourceKeys()) expect(page).toContain(`| \`${key}\` |`);
  const remembered = page.slice(page.indexOf('## Only remembered'), page.indexOf('## Where sources disagree'));
  for (const key of sourceKeys()) expect(remembered.includes(`- \`${key}\`:`)).toBe(source(key).status === 'memory');
});

test('no citation breaks the table it stands in', () => {
  for (const key of sourceKeys()) {
    const { title, locus, note = '' } = source(key);
    for (const text of [title, locus, note]) expect(text).not.toMatch(/[|\n]/);
  }
});
