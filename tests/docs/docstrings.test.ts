import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { ENTRIES } from '../../scripts/entries.ts';
import { missingWords } from '../support/docstrings.ts';
import { exportsOf } from '../support/exports.ts';

describe.each(ENTRIES)('every name of $name is documented', ({ source }) => {
  test.each(exportsOf(source).map(({ name, declaration }) => [name, declaration] as const))('%s', (name, declaration) => {
    expect(missingWords(name, declaration)).toEqual([]);
  });
});

describe('the rule', () => {
  const missingIn = (text: string): string[] => {
    const [statement] = ts.createSourceFile('a.ts', text, ts.ScriptTarget.ES2022, true).statements;
    if (statement === undefined) throw new Error('nothing declared');
    return missingWords(
      'a',
      ts.isVariableStatement(statement)
        ? (statement.declarationList.declarations[0] as ts.Declaration)
        : (statement as ts.Node as ts.Declaration),
    );
  };
  const summary = '/**\n * What.\n';
  const example = ' * @example\n * a(1); // => 2\n */\n';

  test('accepts what says everything', () => {
    const words = `${summary} * @param length - One way. [m]\n * @param poeClass - Class, 0 to 8.\n * @returns Loop. [Ω]\n${example}`;
    expect(missingIn(`${words}export function a(length: Metres, poeClass: number): Ohms {}`)).toEqual([]);
    expect(missingIn('/** What. */\nexport interface A {\n  /** One way. [m] */\n  readonly length?: Metres | undefined;\n}')).toEqual([]);
    expect(missingIn(`${summary}${example}export const a: number = 1;`)).toEqual([]);
  });

  const refused: readonly (readonly [string, string, readonly string[]])[] = [
    ['nothing at all', 'export function a(): void {}', ['a has no summary', 'a has no @example']],
    ['no example', '/** What. @returns Nothing. */\nexport function a(): void {}', ['a has no @example']],
    ['no summary', `/**\n * @returns Nothing.\n${example}export function a(): void {}`, ['a has no summary']],
    ['a constant without a word', 'export const a: number = 1;', ['a has no summary', 'a has no @example']],
    ['a class without an example', '/** What. */\nexport class A {}', ['a has no @example']],
    [
      'parameters out of order',
      `${summary} * @param b - B.\n * @param a - A.\n * @returns Nothing.\n${example}export function a(a: string, b: string): void {}`,
      ['a takes (a, b) and tells of (b, a)'],
    ],
    [
      'the wrong unit',
      `${summary} * @param a - Length. [ft]\n * @returns Loop. [Ω]\n${example}export function a(a: Metres): Ohms {}`,
      ['a: @param a lacks [m]'],
    ],
    [
      'a number of no kind',
      `${summary} * @param a - How much.\n * @returns Loop. [Ω]\n${example}export function a(a: number): Ohms {}`,
      ['a: @param a says no unit, nor what kind of number it is'],
    ],
    ['no returns', `${summary}${example}export function a(): Ohms {}`, ['a has no @returns', 'a: @returns lacks [Ω]']],
    [
      'a field without its unit',
      '/** What. */\nexport interface A {\n  /** One way. */\n  readonly length: Metres;\n}',
      ['a.length lacks [m]'],
    ],
    ['an inner field', '/** What. */\nexport type A = { readonly b: { readonly length: readonly Metres[] } }', ['a.length lacks [m]']],
  ];
  test.each(refused)('refuses %s', (_name, text, missing) => {
    expect(missingIn(text)).toEqual(missing);
  });
});
