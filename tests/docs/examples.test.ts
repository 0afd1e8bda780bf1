import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { ENTRIES } from '../../scripts/entries.ts';
import { type Example, examplesInPage, examplesInSource, literalValue, runExample } from '../support/examples.ts';
import { exportsOf, importedEntries } from '../support/exports.ts';
import { filesBelow, ROOT, sourceTexts } from '../support/files.ts';
import { typeErrors } from '../support/type-check.ts';

const modules = await importedEntries();
/** A docstring may use every public name without importing it. */
const publicNames = Object.assign({}, ...Object.values(modules)) as Record<string, unknown>;

const inSource = Object.entries(sourceTexts()).flatMap(([file, text]) => examplesInSource(`src/${file}`, text));
const folders = ['docs', 'examples'].flatMap((folder) => filesBelow(folder, '.md').map((file) => `${folder}/${file}`));
const pages = ['README.md', 'CHANGELOG.md', 'DEVELOPERS.md', ...folders]
  .filter((file) => !file.startsWith('docs/api/') && existsSync(join(ROOT, file)))
  .map((file) => [file, readFileSync(join(ROOT, file), 'utf8')] as const);
const inPages = pages.flatMap(([file, text]) => examplesInPage(file, text));

async function expectPromises(
  { at, code }: Example,
  scope: Readonly<Record<string, unknown>>,
  imported: Readonly<Record<string, unknown>>,
): Promise<number> {
  const promised = await runExample(code, scope, imported);
  for (const { actual, literal } of promised) expect(actual, `${at} promises ${literal}`).toStrictEqual(literalValue(literal));
  return promised.length;
}

describe('examples in docstrings', () => {
  test.each(inSource.map((example) => [example.at, example] as const))('%s', async (at, example) => {
    expect(await expectPromises(example, publicNames, {}), `${at} needs a line such as: feet(1); // => 0.3048`).toBeGreaterThan(0);
  });

  test('compile, strictly, with the public names alone', () => {
    const seen = new Set<string>();
    const imports = ENTRIES.map(({ source }) => {
      const names = exportsOf(source).map(({ name }) => name);
      const fresh = names.filter((name) => !seen.has(name));
      for (const name of fresh) seen.add(name);
      return `import { ${fresh.join(', ')} } from './${source}';`;
    });
    // The imports stand on the first line, so that an error is counted from there.
    const texts = inSource.map(
      ({ at, code }) => [at, `${imports.join(' ')} export {}; void (async () => { await undefined;\n${code}\n});`] as const,
    );
    expect(typeErrors(Object.fromEntries(texts))).toEqual([]);
  });
});

describe('code in pages', () => {
  test('the README shows code', () => {
    expect(inPages.filter(({ at }) => at.startsWith('README.md:'))).not.toHaveLength(0);
  });

  test.each(inPages.map((example) => [example.at, example] as const))('%s', async (_at, example) => {
    await expectPromises(example, {}, modules);
  });

  test('compiles, strictly, as a reader would copy it', () => {
    const paths = Object.fromEntries(ENTRIES.map(({ name, source }) => [name, source]));
    const texts = inPages.map(({ at, code }) => [at, `${code}\nexport {};`] as const);
    expect(typeErrors(Object.fromEntries(texts), paths)).toEqual([]);
  });
});
