import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { ENTRIES } from '../../scripts/entries.ts';
import { literalValue, runExample } from '../support/examples.ts';
import { importedEntries } from '../support/exports.ts';
import { filesBelow, ROOT } from '../support/files.ts';

const modules = await importedEntries();
/** The programs import the sources, as from a clone. */
const sources = Object.fromEntries(ENTRIES.map(({ name, source }) => [`../${source}`, modules[name]]));
const programs = filesBelow('examples', '.ts');

describe('the programs in examples/ print what they say', () => {
  test('there are some', () => {
    expect(programs.length).toBeGreaterThanOrEqual(2);
  });

  test.each(programs)('%s', async (file) => {
    const code = readFileSync(join(ROOT, 'examples', file), 'utf8');
    const promised = await runExample(code, {}, sources);
    expect(promised.length, 'lines such as: console.log(x); // => 1').toBeGreaterThan(0);
    for (const { actual, literal } of promised) expect(actual).toStrictEqual(literalValue(literal));
  });
});
