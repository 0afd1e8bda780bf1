import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pageText } from '../../../src/pages/page-text.ts';
import { widthOf } from '../../../src/pages/plain-text.ts';
import { everyBlock, OHM } from './samples.ts';

const ESCAPE = String.fromCharCode(27);

describe('a page as text', () => {
  test('has a blank line between its blocks, and none within a group', () => {
    const text = pageText([
      { kind: 'heading', level: 3, text: 'Title' },
      {
        kind: 'group',
        blocks: [
          { kind: 'heading', level: 4, text: 'Given' },
          { kind: 'terms', items: [{ term: 'L = 20 m', text: 'length' }] },
        ],
      },
      { kind: 'step', number: 1, title: 'resistance', blocks: [{ kind: 'note', lead: 'from', text: 'a table' }] },
    ]);
    expect(text).toBe('Title\n=====\n\nGiven\n  L = 20 m length\n\n  1. resistance\n     from a table\n');
  });

  test('sets a formula with its signs below each other', () => {
    const [formula] = everyBlock('x').filter(({ kind }) => kind === 'formula');
    expect(pageText(formula === undefined ? [] : [formula])).toBe('R = rho * L / A\n  ≈ 2.6 Ω\n');
  });

  test('makes columns as wide as their cells, figures at the right', () => {
    const table = {
      kind: 'table',
      columns: [{ head: 'tap' }, { head: 'V', unit: 'V', align: 'right' }],
      rows: [
        ['north', '24.5'],
        ['b', '9'],
      ],
    } as const;
    expect(pageText([table])).toBe('tap       V\n          V\nnorth  24.5\nb         9\n');
  });

  test('puts columns that do not fit into a second block, behind the first column', () => {
    const names = Array.from({ length: 9 }, (_, index) => `column ${index}`);
    const text = pageText(
      [{ kind: 'table', columns: [{ head: 'row' }, ...names.map((head) => ({ head, align: 'right' as const }))], rows: [['a', ...names]] }],
      { width: 60 },
    );
    expect(text.match(/^row/gm)).toHaveLength(2);
    for (const name of names) expect(text.split(name)).toHaveLength(3);
  });

  test('breaks wide cells over several lines where the table is wider than the page', () => {
    const words = 'a name of more words than a column should have in such a table';
    const text = pageText([{ kind: 'table', columns: [{ head: 'A' }, { head: 'B' }], rows: [[words, words]] }]);
    expect(text.split('\n')[1]).toBe('a name of more words      a name of more words');
  });

  test('cuts words in a column of stated width', () => {
    expect(pageText([{ kind: 'table', columns: [{ head: 'A', width: 4 }], rows: [['abcdef']] }])).toBe('A\nabc…\n');
  });

  test('does not break a short formula within a sentence', () => {
    const text = pageText([{ kind: 'paragraph', text: ['one two three four five six seven eight nine ', OHM] }], { width: 55 });
    expect(text).toBe('one two three four five six seven eight nine\nR = rho * L / A\n');
  });

  test('is nothing where the page is empty, and leaves out lists and tables of nothing', () => {
    expect(pageText([])).toBe('');
    expect(
      pageText([
        { kind: 'list', items: [] },
        { kind: 'table', columns: [{ head: 'A' }], rows: [] },
      ]),
    ).toBe('');
  });

  test('colours verdict words of loud blocks only, and titles', () => {
    const text = pageText(
      [
        { kind: 'paragraph', text: 'FAIL' },
        { kind: 'paragraph', text: 'It FAILS', loud: true },
      ],
      { colour: true },
    );
    expect(text).toBe(`FAIL\n\nIt ${ESCAPE}[1;31mFAILS${ESCAPE}[0m\n`);
    expect(pageText([{ kind: 'heading', level: 2, text: 'Every run' }], { colour: true })).toBe(`${ESCAPE}[1mEVERY RUN${ESCAPE}[0m\n`);
  });
});

describe('words of any length or sign', () => {
  const words = fc.oneof(fc.string({ unit: 'binary', maxLength: 200 }), fc.string({ unit: 'grapheme', maxLength: 200 }));

  test('stay within the width, and nothing that a terminal would obey is left', () => {
    fc.assert(
      fc.property(words, fc.integer({ min: 40, max: 120 }), (word, width) => {
        const text = pageText(everyBlock(word), { width });
        // biome-ignore lint/suspicious/noControlCharactersInRegex: their absence is what is tested
        expect(text.replaceAll('\n', '')).not.toMatch(/[\u0000-\u001f\u007f-\u009f\u2028\u2029\u202a-\u202e]/);
        for (const [at, line] of text.split('\n').entries()) expect(widthOf(line), `line ${at}: ${line}`).toBeLessThanOrEqual(width);
      }),
      { numRuns: 300 },
    );
  });
});

test.each<[string, unknown[], string]>([
  ['no page', [undefined], 'page'],
  ['a block that is none', [[3]], 'page[]'],
  ['a kind that nobody knows', [[{ kind: 'chart' }]], 'page[].kind'],
  ['a narrow page', [[], { width: 20 }], 'options.width'],
  ['a colour that is none', [[], { colour: 'red' }], 'options.colour'],
])('refuses %s', (_what, given, parameter) => {
  expect(() => pageText(...(given as Parameters<typeof pageText>))).toThrow(expect.objectContaining({ name: 'InputError', parameter }));
});
