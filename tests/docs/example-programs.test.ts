import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import * as core from '../../src/index.ts';
import * as schedule from '../../src/schedule/index.ts';
import { literalValue, runExample } from '../support/examples.ts';
import { filesBelow, ROOT } from '../support/files.ts';

const programs = filesBelow('examples', '.ts');

describe('the programs in examples/ print what they say', () => {
  test('there are some', () => {
    expect(programs.length).toBeGreaterThanOrEqual(2);
  });

  test.each(programs)('%s', async (file) => {
    const code = readFileSync(join(ROOT, 'examples', file), 'utf8');
    const promised = await runExample(code, {}, { '../src/index.ts': core, '../src/schedule/index.ts': schedule });
    expect(promised.length, 'lines such as: console.log(x); // => 1').toBeGreaterThan(0);
    for (const { actual, literal } of promised) expect(actual).toStrictEqual(literalValue(literal));
  });
});
