import fc from 'fast-check';
import katex from 'katex';
import { describe, expect, test } from 'vitest';
import { pageLatex } from '../../../src/pages/page-latex.ts';
import { pageMarkdown } from '../../../src/pages/page-markdown.ts';
import { everyBlock, OHM } from './samples.ts';

const page = everyBlock('a word');
const SIGNS = fc.string({ unit: fc.constantFrom(...'|\\`\n\r<$', ...'{}[]*_^%&#~-1. a') });
const HOSTILE = fc.oneof(fc.string({ unit: 'binary', maxLength: 40 }), SIGNS);

describe('a page as Markdown', () => {
  test('has every kind of block', () => {
    const text = pageMarkdown(page);
    for (const part of [
      '### a word\n',
      `**Result.** A word: $${OHM.latex}$`,
      '*a word*',
      '- a word\n',
      '- a word: a word',
      '| a word | R = rho \\* L / A \\[a word\\] | Verdict |\n| --- | ---: | --- |\n| a word | 1.5 | FAIL |',
      '$$\n\\begin{aligned}\nR &= \\frac{\\rho \\cdot L}{A} \\\\\n&\\approx 2.6\\,\\Omega\n\\end{aligned}\n$$',
      '```\na word\n```',
      '1. A word\n\n   *a word*',
    ])
      expect(text).toContain(part);
    expect(pageMarkdown([])).toBe('');
  });

  test('terms with heads are a table', () => {
    expect(pageMarkdown([{ kind: 'terms', heads: ['given', 'what it is'], items: [{ term: [OHM], text: 'x|y' }] }])).toBe(
      `| given | what it is |\n| --- | --- |\n| $${OHM.latex}$ | x\\|y |\n`,
    );
  });

  test.each([
    ['- a dash', '\\- a dash'],
    ['+ a plus', '\\+ a plus'],
    ['1. a number', '1\\. a number'],
    ['12) a number', '12\\) a number'],
    ['12 V', '12 V'],
    ['-5 °C', '\\-5 °C'],
  ])('words that would begin a list do not: %s', (word, text) => {
    expect(pageMarkdown([{ kind: 'paragraph', text: word }])).toBe(`${text}\n`);
    expect(pageMarkdown([{ kind: 'list', items: [word] }])).toBe(`- ${text}\n`);
  });

  test('words add neither block, cell nor formula, whatever they are', () => {
    fc.assert(
      fc.property(HOSTILE, (word) => {
        const only = pageMarkdown([
          { kind: 'paragraph', text: word },
          { kind: 'list', items: [word, word] },
        ]);
        expect(only.replace(/\n$/, '').split('\n').length).toBeLessThanOrEqual(4);
        expect(only).not.toMatch(/(?<!\\)(?:\\\\)*[$<`*]/);
        const table = pageMarkdown([{ kind: 'table', columns: [{ head: word.replaceAll('\n', ' ') }], rows: [[word]] }]);
        for (const line of table.trimEnd().split('\n')) expect(line.split(/(?<!\\)(?:\\\\)*\|/)).toHaveLength(3);
      }),
      { numRuns: 500 },
    );
  });

  test('lines that stay as they are cannot end their own fence', () => {
    expect(pageMarkdown([{ kind: 'preformatted', lines: ['````', 'x'] }])).toBe('`````\n````\nx\n`````\n');
  });
});

describe('a page as LaTeX', () => {
  test('has every kind of block', () => {
    const text = pageLatex(page);
    for (const part of [
      '\\subsection*{a word}',
      `\\noindent \\textbf{Result.} A word: $${OHM.latex}$`,
      '\\noindent \\emph{a word}',
      `\\begin{itemize}\n  \\item a word\n  \\item $${OHM.latex}$: a word\n\\end{itemize}`,
      '\\noindent\\begin{tabular}{lrl}\na word & R = rho {*} L / A {[}a word{]} & Verdict \\\\\n\\hline\na word & 1.5 & FAIL \\\\',
      '\\begin{align*}\nR &= \\frac{\\rho \\cdot L}{A} \\\\\n&\\approx 2.6\\,\\Omega\n\\end{align*}',
      '\\texttt{a~word}',
      '\\noindent A word:\n\\noindent \\emph{a word}',
    ])
      expect(text).toContain(part);
    expect(pageLatex([])).toBe('');
  });

  test('a wide table comes in several, each behind its first column', () => {
    const heads = Array.from({ length: 9 }, (_, index) => `c${index}`);
    const text = pageLatex([{ kind: 'table', columns: heads.map((head) => ({ head })), rows: [heads] }]);
    expect(text.match(/^c0 & /gm)).toHaveLength(4);
    expect(text).toContain('c0 & c8 \\\\');
  });

  test('words are text to a reader of LaTeX, whatever they are', () => {
    fc.assert(
      fc.property(SIGNS, (word) => {
        const line = pageLatex([{ kind: 'paragraph', text: word }])
          .trimEnd()
          .replace(/^\\noindent ?/, '');
        expect(line).not.toContain('\n');
        expect(() => katex.renderToString(`\\text{${line}}`, { strict: 'ignore' })).not.toThrow();
      }),
      { numRuns: 500 },
    );
  });
});

test('neither takes what is no page', () => {
  for (const write of [pageLatex, pageMarkdown]) {
    expect(() => write(undefined as never)).toThrow(expect.objectContaining({ name: 'InputError', parameter: 'page' }));
  }
});
