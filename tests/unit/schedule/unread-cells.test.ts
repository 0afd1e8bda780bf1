import { describe, expect, test } from 'vitest';
import { checkRow } from '../../../src/schedule/check-row.ts';
import { checkSchedule } from '../../../src/schedule/check-schedule.ts';
import { parseSchedule } from '../../../src/schedule/parse-schedule.ts';
import type { Report } from '../../../src/schedule/report.ts';
import { reportCsv } from '../../../src/schedule/report-csv.ts';
import { reportMarkdown } from '../../../src/schedule/report-markdown.ts';
import { reportText } from '../../../src/schedule/report-text.ts';
import { cueLight, powered } from './check-samples.ts';

const POWERED = { Run: 'R-1', Switch: 'S', Port: '1', 'PoE class': '3', Cable: 'cat6', Length: '40 m', Connections: '2' };
const TWO_WIRE = { Run: 'C-1', Cable: '18 AWG', Length: '26 m', Supply: '21 V to 27.6 V', Load: '6 W', 'Minimum voltage': '19 V' };

function judged(record: Readonly<Record<string, string>>, switches?: string): Report {
  const runs = [Object.keys(record), Object.values(record)].map((cells) => cells.join(';')).join('\n');
  const { schedule, findings } = parseSchedule({ runs, switches });
  return checkSchedule(schedule, { findings });
}

const smooth = (text: string): string => text.replace(/\s+/g, ' ');
const unescaped = (text: string): string => smooth(text.replace(/\\/g, ''));

// [column, cell, what is said, the verdict on cabling]
const CELLS = [
  ['Minimum voltage', '46 V?', 'Minimum voltage could not be read: "46 V?"', 'pass'],
  ['Minimum voltage', '-46 V', 'Minimum voltage could not be used: "-46 V"', 'pass'],
  ['Maximum resistance', '13 ohms max', 'Maximum resistance could not be read: "13 ohms max"', 'pass'],
  ['PD power', '11 watt-ish', 'PD power could not be read: "11 watt-ish"', 'pass'],
  ['Cords', '5 m', 'Cords could not be read: "5 m"', 'uncertain'],
  ['Connections', 'many', 'Connections could not be read: "many"', 'uncertain'],
  ['Ambient', 'hot', 'Ambient could not be read: "hot"', 'uncertain'],
  ['Bundle', 'lots', 'Bundle could not be read: "lots"', 'uncertain'],
  ['Measured loop', '14.1 ohm ±', 'Measured loop could not be read: "14.1 ohm ±"', 'uncertain'],
] as const;

describe.each(CELLS)('a run whose %s is "%s"', (column, cell, words, cabling) => {
  const report = judged({ ...POWERED, [column]: cell });
  const [run] = report.runs;

  test('would pass without that cell', () => {
    expect(judged(POWERED).runs[0]?.verdict).toEqual({ power: 'pass', cabling: 'pass', worst: 'pass' });
    expect(judged(POWERED).runs[0]).not.toHaveProperty('unread');
  });

  test('is uncertain, in power and wherever else the cell bears', () => {
    expect(run?.verdict).toEqual({ power: 'uncertain', cabling, worst: 'uncertain' });
    expect(run?.outcome).toBe('uncertain');
    expect(report.totals.outcomes).toMatchObject({ pass: 0, uncertain: 1 });
  });

  test('has the cause in every format', () => {
    expect(run?.unread?.map((entry) => entry.words)).toEqual([words]);
    expect(smooth(reportText(report))).toContain(`Power is UNCERTAIN: ${words}. `);
    expect(smooth(reportText(report))).toContain(`- Put the cell ${column} right.`);
    expect(unescaped(reportMarkdown(report))).toContain(`Power is UNCERTAIN: ${words}.`);
    expect(reportCsv(report).replaceAll('""', '"')).toContain(`Power is UNCERTAIN: ${words}.`);
    expect(JSON.parse(JSON.stringify(report)).runs[0].unread).toEqual(run?.unread);
    expect(reportText(report)).not.toContain('State the lowest voltage');
  });
});

test.each([
  ['Minimum voltage', 'none?'],
  ['Maximum resistance', 'about 5'],
  ['Connections', 'few'],
  ['Ambient', 'warm'],
])('a two-wire run whose %s is "%s" is uncertain', (column, cell) => {
  expect(judged(TWO_WIRE).runs[0]?.outcome).toBe('pass');
  const [run] = judged({ ...TWO_WIRE, [column]: cell }).runs;
  expect([run?.outcome, run?.verdict.power]).toEqual(['uncertain', 'uncertain']);
  expect(run?.unread?.[0]?.words).toBe(`${column} could not be read: "${cell}"`);
});

test('an installation that cannot be read makes the heat uncertain, too', () => {
  const [run] = judged({ ...POWERED, Bundle: '6', Installation: 'duct' }).runs;
  expect(run?.verdict.heat).toBe('uncertain');
  expect(judged({ ...POWERED, Bundle: '6', Installation: 'open air' }).runs[0]?.outcome).toBe('pass');
  const text = smooth(reportText(judged({ ...POWERED, Bundle: '6', Installation: 'duct' })));
  expect(text).toContain('Heat is UNCERTAIN: Installation could not be used: "duct".');
});

test('a run that fails still fails, and says what could not be read', () => {
  const report = judged({ ...POWERED, Length: '94 m', 'Minimum voltage': '46 V?' });
  expect(report.runs[0]?.verdict).toEqual({ power: 'uncertain', cabling: 'fail', worst: 'fail' });
  const far = judged({ ...POWERED, Length: '400 m', 'PoE class': '4', 'Minimum voltage': '46 V?' });
  expect(far.runs[0]?.verdict.power).toBe('fail');
  expect(smooth(reportText(far))).toContain('Minimum voltage could not be read: "46 V?".');
});

test('a run that is denied power says it, too', () => {
  const report = judged({ ...POWERED, 'Minimum voltage': '46 V?' }, 'Switch;Type;Ports;Budget\nS;2;8;5 W\n');
  expect(report.runs[0]?.outcome).toBe('denied');
  for (const text of [smooth(reportText(report)), unescaped(reportMarkdown(report)), reportCsv(report).replaceAll('""', '"')])
    expect(text).toContain('Power is UNCERTAIN: Minimum voltage could not be read: "46 V?".');
});

test('a cell that is empty, or says nothing about the burden of the run, leaves it alone', () => {
  expect(judged({ ...POWERED, 'Minimum voltage': '', Ambient: '', Cords: '', Priority: 'middling' }).runs[0]?.outcome).toBe('pass');
  expect(judged({ ...TWO_WIRE, Cords: 'three' }).runs[0]?.outcome).toBe('pass');
});

test.each([[{ unread: 3 }], [{ unread: [3] }], [{ unread: [{ column: 'Cords', words: '' }] }]])('checkRow refuses %j', (change) => {
  for (const run of [powered(), cueLight()])
    expect(() => checkRow({ ...run, ...change } as never)).toThrow(
      expect.objectContaining({ name: 'InputError', parameter: expect.stringContaining('unread') }),
    );
});
