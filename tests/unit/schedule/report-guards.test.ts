import { describe, expect, test } from 'vitest';
import { checkSchedule, type Report, reportCsv, reportMarkdown, reportSummary, reportText } from '../../../src/schedule/index.ts';
import { powered, stageRack } from './check-samples.ts';
import { everything } from './report-samples.ts';

const FORMATS = { reportText, reportMarkdown, reportCsv, reportSummary };
const report = everything();
const plain = checkSchedule({ runs: [powered()], switches: [stageRack()] });

describe.each(Object.entries(FORMATS))('%s', (_name, format) => {
  const keys = ['file', 'settings', 'runs', 'switches', 'totals', 'findings', 'cautions'] as const;
  test.each<[string, unknown]>([
    ['nothing', undefined],
    ['a list', []],
    ['an empty object', {}],
    ['totals of nothing', { ...report, totals: {} }],
    ...keys.map((key) => [`a report without ${key}`, { ...report, [key]: undefined }] as [string, unknown]),
    ...keys.map((key) => [`a report whose ${key} is a number`, { ...report, [key]: 3 }] as [string, unknown]),
  ])('refuses %s', (_what, given) => {
    expect(() => format(given as unknown as Report)).toThrow(
      expect.objectContaining({ name: 'InputError', parameter: expect.stringMatching(/^report/) }),
    );
  });
});

describe('a full report', () => {
  test('as text has the figures of every run, with its closest limit', () => {
    const text = reportText(plain, { full: true });
    const figures = text.slice(text.indexOf('FIGURES OF EVERY RUN'), text.indexOf('\nSWITCHES'));
    expect(figures).toMatch(/HP-01, Help point, stage door \(power pass, cabling pass\)/);
    expect(figures).toMatch(/Loops +shorted pair [\d.]+ Ω, one pairset [\d.]+ Ω, two pairsets/);
    expect(figures).toMatch(/A in all, [\d.]+ A a\s+pairset, [\d.]+ A a conductor/);
    expect(figures).toMatch(/Closest +\S.*, \d+ %/);
    expect(figures).toMatch(/Channel length +40 m +≤ 100 m +60 m {2}pass/);
    const lines = text.split('\n').map((line) => [...line].length);
    expect(Math.max(...lines)).toBeLessThanOrEqual(80);
  });

  test('as Markdown has the checks of every run', () => {
    const full = reportMarkdown(plain, { full: true });
    expect(full).toContain('## Checks of every run');
    expect(full).toContain('| HP-01 | Channel length | 40 m |');
    expect(reportMarkdown(plain)).not.toContain('## Checks of');
  });

  test('is asked for; without asking nothing is added', () => {
    expect(reportText(plain)).not.toMatch(/FIGURES OF/);
    for (const full of [false, undefined]) {
      expect(reportText(report, { full })).toBe(reportText(report));
      expect(reportMarkdown(report, { full })).toBe(reportMarkdown(report));
    }
    for (const format of [reportText, reportMarkdown])
      expect(() => format(report, { full: 'yes' as never })).toThrow(expect.objectContaining({ parameter: 'options.full' }));
  });
});

test('the worst run is called so where it fails, and closest to a limit where it does not', () => {
  for (const format of [reportText, reportMarkdown]) {
    expect(format(report)).toMatch(/Worst: \w+: /);
    expect(format(report)).not.toContain('Closest to a limit:');
    expect(format(plain)).toContain('Closest to a limit: HP-01: ');
  }
});

test('what is said of a whole file names it once', () => {
  const finding = {
    code: 'unusable-file',
    severity: 'error',
    file: 'empty.csv',
    received: '',
    allowed: 'a header line and rows',
    message: 'empty.csv: it is empty',
  } as const;
  const nothing = checkSchedule({ runs: [], switches: [] }, { findings: [finding] });
  expect(reportText(nothing)).toContain('ERROR  empty.csv: it is empty');
  expect(reportMarkdown(nothing)).toContain('| ERROR | empty.csv | it is empty |');
});
