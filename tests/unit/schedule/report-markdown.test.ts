import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkSchedule } from '../../../src/schedule/check-schedule.ts';
import { reportMarkdown } from '../../../src/schedule/report-markdown.ts';
import { cueLight, powered } from './check-samples.ts';
import { everything } from './report-samples.ts';

const markdown = reportMarkdown(everything());

/** Cells of a table row, by the pipes that are not escaped (GFM 4.10). */
function cellsOf(row: string): string[] {
  return row.split(/(?<!\\)(?:\\\\)*\|/).slice(1, -1);
}

/** The tables of a page, each as rows of cells. */
function tablesOf(page: string): string[][][] {
  return page
    .split(/\n(?!\|)/)
    .map((block) => block.split('\n').filter((line) => line.startsWith('|')))
    .filter((rows) => rows.length > 0)
    .map((rows) => rows.map(cellsOf));
}

describe('a Markdown report', () => {
  test('has the sections of the text report, in its order', () => {
    expect(markdown.match(/^#+ .*$/gm)).toEqual([
      '# Schedule checked: runs',
      '## What fails, and what puts it right',
      '## What gets no power',
      '## What is uncertain, and what would settle it',
      '## Every run',
      '## Checks of the runs that do not plainly pass',
      '## Switches',
      '## Totals',
      '## What was taken for granted',
      '## What is wrong in the files',
      '## Where the limits come from',
      '## Cautions',
    ]);
  });

  test('has one row for every run, with loops, currents and closest limit', () => {
    const table = tablesOf(markdown).find(([heads]) => heads?.includes(' Shorted pair, Ω '));
    expect(table?.slice(2).map(([name]) => name?.trim())).toEqual(['OK', 'LONG', 'SHED', 'NEAR', 'BARE', 'DARK', 'WEAK', 'CUE', 'ONE']);
    const long = Object.fromEntries((table?.[0] ?? []).map((head, index) => [head.trim(), table?.[3]?.[index]?.trim()]));
    // 94 m at 9.38 Ω/100 m and two connections of 0.2 Ω: 9.2172 Ω for one conductor.
    expect(long).toMatchObject({
      'Shorted pair, Ω': '18.43',
      'One pairset, Ω': '9.22',
      'Two pairsets, Ω': '4.61',
      Power: 'pass',
      Cabling: 'FAIL',
      'Closest limit': 'Installed length, -4 %',
    });
  });

  test('has every check of a run that fails', () => {
    expect(markdown).toContain('| LONG | Installed length | 94 m | ≤ 90 m | -4 m | -4 % | FAIL |');
  });

  test('says why, and what to do', () => {
    expect(markdown).toContain(
      '| LONG | Help point | Cabling FAILS: the installed cable is 94 m long; TIA-568 allows 90 m. | Shorten the installed cable from 94 m',
    );
  });

  test('has denied ports, capacity, findings and cautions', () => {
    expect(markdown).toContain('| Stage rack | port 3, Help point (SHED): class 4, 30 W, priority low |');
    expect(markdown).toContain('Capacity 65 W (published budget); allocated 61.6 W to 4 ports, 95 %; headroom 3.4 W.');
    expect(markdown).toContain('| ERROR | runs, line 11, Length | run GONE: Length "far" cannot be read |');
    expect(markdown).toContain('- This is arithmetic, not a licence');
  });
});

describe('text from the files', () => {
  test.each([
    ['a pipe', 'a|b', 'a\\|b'],
    ['a backslash before a pipe', 'a\\|b', 'a\\\\\\|b'],
    ['code', '`rm`', '\\`rm\\`'],
    ['HTML', '<script>&copy;', '&lt;script&gt;&amp;copy;'],
    ['emphasis', '*a* _b_ ~c~', '\\*a\\* \\_b\\_ \\~c\\~'],
    ['a link', '![x](y)', '\\!\\[x\\](y)'],
    ['a line end', 'a\nb', 'a<br>b'],
  ])('keeps %s as text', (_what, name, escaped) => {
    const page = reportMarkdown(checkSchedule({ runs: [powered({ run: 'A', device: name })], switches: [] }));
    expect(page).toContain(`| A | ${escaped} |`);
  });

  test('never adds or takes a cell, whatever it is', () => {
    const name = fc.oneof(fc.string({ unit: 'binary' }), fc.string({ unit: fc.constantFrom('|', '\\', '`', '\n', '\r', '<', 'a', ' ') }));
    fc.assert(
      fc.property(name, name, name, (run, device, source) => {
        const report = checkSchedule({
          runs: [powered({ run, device, switch: source }), cueLight({ run, device }, { length: 900 })],
          switches: [],
        });
        for (const [heads, rule, ...rows] of tablesOf(reportMarkdown(report))) {
          expect(rule?.every((cell) => cell === ' --- ')).toBe(true);
          for (const row of rows) expect(row).toHaveLength(heads?.length ?? 0);
        }
      }),
      { numRuns: 300 },
    );
  });
});

test('an empty schedule has no empty tables', () => {
  const page = reportMarkdown(checkSchedule({ runs: [], switches: [] }));
  expect(page).toContain('**0 runs**');
  expect(page).not.toContain('Every run');
});

test('refuses what is no report', () => {
  expect(() => reportMarkdown(undefined as never)).toThrow(expect.objectContaining({ name: 'InputError', parameter: 'report' }));
});
