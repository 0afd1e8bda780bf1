import { describe, expect, test } from 'vitest';
import { examplesInPage, examplesInSource, literalValue, readDocstring, runExample } from '../support/examples.ts';
import { typeErrors } from '../support/type-check.ts';

const double = (value: number): number => 2 * value;

describe('the runner of examples', () => {
  const kept: readonly (readonly [string, string, unknown, string])[] = [
    ['an expression', 'double(2); // => 4', 4, '4'],
    ['the last of several statements', 'const a: number = 3;\ndouble(a); // => 6', 6, '6'],
    ['what is logged', "console.log(double(1)); // => 2 + '!'", 2, "2 + '!'"],
    ['a constant', 'const a = double(5); // => 10', 10, '10'],
    ['the next line', 'double(2)\n// => 4', 4, '4'],
    ['lines that continue', 'double(2)\n// => [\n//   4 ]', 4, '[\n   4 ]'],
    ['a line above a comment', 'double(2); // => 4\n// The double of two.', 4, '4'],
    ['an awaited value', 'await Promise.resolve(double(2)); // => 4', 4, '4'],
    ['a name that hides an export', 'const double = 7; // => 7', 7, '7'],
    ['an import', "import { double as twice } from 'here';\ntwice(2); // => 4", 4, '4'],
    ['an import of a type', "import type { Nothing } from 'nowhere';\ndouble(2); // => 4", 4, '4'],
    ['a namespace', "import * as all from 'here';\nall.double(2); // => 4", 4, '4'],
  ];
  test.each(kept)('keeps the promise of %s', async (_name, code, actual, literal) => {
    expect(await runExample(code, { double }, { here: { double } })).toStrictEqual([{ actual, literal }]);
  });

  test('keeps what was promised, not what it became', async () => {
    const promised = await runExample('const list = [1];\nlist; // => [1]\nlist.push(2);', {});
    expect(promised).toStrictEqual([{ actual: [1], literal: '[1]' }]);
  });

  const refused: readonly (readonly [string, string])[] = [
    ['a promise within a block', 'if (true) {\n  double(2); // => 4\n}'],
    ['a promise of several names', 'const [a] = [1]; // => 1'],
    ['a promise of nothing', '// => 4'],
    ['a log of two values', 'console.log(1, 2); // => 1'],
    ['code that throws', 'missing(2);'],
    ['code that does not parse', 'double(2'],
  ];
  test.each(refused)('refuses %s', async (_name, code) => {
    await expect(runExample(code, { double })).rejects.toThrow();
  });

  test('reads a literal as JavaScript', () => {
    expect(literalValue('{ a: [1, true], b: "x" }')).toStrictEqual({ a: [1, true], b: 'x' });
    expect(() => literalValue('about 4')).toThrow();
  });
});

describe('the reader of docstrings', () => {
  test('finds summary, tags and their lines', () => {
    const docstring = readDocstring(
      '/**\n * What.\n *\n * @param a - Length. [m]\n *   More.\n * @example A title\n * f(1); // => 2\n */',
      10,
    );
    expect(docstring.summary).toBe('What.');
    expect(docstring.tags).toStrictEqual([
      { name: 'param', text: 'a - Length. [m]\n  More.', line: 13 },
      { name: 'example', text: 'A title\nf(1); // => 2', line: 15 },
    ]);
  });

  test('finds a tag at the end of one line', () => {
    expect(readDocstring('/** What. @internal */', 1)).toStrictEqual({ summary: 'What.', tags: [{ name: 'internal', text: '', line: 1 }] });
  });

  test('finds every example with its place and title', () => {
    const text =
      '/**\n * A.\n * @example\n * a(); // => 1\n * @example Again\n * a(); // => 1\n */\nexport function a(): number {\n  return 1;\n}\n';
    expect(examplesInSource('a.ts', text)).toStrictEqual([
      { at: 'a.ts:3', title: '', code: 'a(); // => 1' },
      { at: 'a.ts:5', title: 'Again', code: 'a(); // => 1' },
    ]);
  });

  test('finds the ts blocks of a page and no others', () => {
    const page = 'Text\n```ts\na();\n```\n```sh\nb\n```\n~~~ts\nc();\n~~~\n````md\n```ts\nd();\n```\n````\n';
    expect(examplesInPage('p.md', page).map(({ at, code }) => [at, code])).toStrictEqual([
      ['p.md:2', 'a();'],
      ['p.md:8', 'c();'],
    ]);
  });
});

describe('the type check of examples', () => {
  test('says where an example does not compile', () => {
    const header = "import { feet, type Metres, type Ohms } from 'farend';";
    const errors = typeErrors(
      {
        good: `${header}\nconst length: Metres = feet(3);\nexport { length };`,
        bad: `${header}\nconst length: Metres = feet(3);\nconst ohms: Ohms = length;\nexport { ohms };`,
        worse: `${header}\nfeet('3');`,
      },
      { farend: 'src/index.ts' },
    );
    expect(errors).toHaveLength(2);
    expect(errors[0]).toMatch(/^bad, line 3: Type 'Metres' is not assignable to type 'Ohms'/);
    expect(errors[1]).toMatch(/^worse, line 2: Argument of type 'string'/);
  });
});
