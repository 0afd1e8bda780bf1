import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkSchedule } from '../../../src/schedule/check-schedule.ts';
import type { Report } from '../../../src/schedule/report.ts';
import { reportCsv } from '../../../src/schedule/report-csv.ts';
import { cueLight, powered } from './check-samples.ts';
import { everything } from './report-samples.ts';

/** The file as a program reads it that nobody here wrote. */
function read(report: Report): Record<string, string>[] {
  return parse(reportCsv(report), { columns: true, record_delimiter: '\r\n' });
}

function readNamed(name: string): Record<string, string> | undefined {
  return read(checkSchedule({ runs: [powered({ run: 'A', device: name })], switches: [] }))[0];
}

describe('a CSV report', () => {
  const report = everything();
  const rows = read(report);

  test('has a header and one line for every run, each with as many cells', () => {
    expect(rows.map((row) => row['Run'])).toEqual(report.runs.map(({ run }) => run));
    expect(new Set(rows.map((row) => Object.keys(row).length)).size).toBe(1);
  });

  test('ends its lines with CR and LF, the last one too', () => {
    const text = reportCsv(report);
    expect(text.match(/\r\n/g)).toHaveLength(report.runs.length + 1);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    expect(text.endsWith('\r\n')).toBe(true);
    expect(text.startsWith('Run,Device,')).toBe(true);
  });

  test('rounds nothing', () => {
    for (const [index, run] of report.runs.entries()) {
      const row = rows[index] as Record<string, string>;
      expect(Number(row['Pair loop (ohm)'])).toBe(run.kind === 'powered' ? run.resistance.pairLoop : run.resistance);
      expect(Number(row['Meter, usual copper (ohm)'])).toBe(run.meterReading.nominal);
      if (run.operating.feasible) expect(Number(row['Far end (V)'])).toBe(run.operating.loadVoltage);
      else expect(row['Far end (V)']).toBe('');
    }
  });

  test('has every check with value, limit, margin and verdict', () => {
    for (const [index, { checks }] of report.runs.entries()) {
      const row = rows[index] as Record<string, string>;
      for (const { name, value, limit, margin, verdict } of checks) {
        const cells = ['value', 'limit', 'margin', 'verdict'].map((part) => row[`${name}: ${part}`]);
        expect(cells).toEqual([String(value), String(limit), String(margin), verdict]);
      }
      const filled = Object.entries(row).filter(([head, cell]) => head.endsWith(': verdict') && cell !== '');
      expect(filled).toHaveLength(checks.length);
    }
  });

  test('leaves a negative number of its own a number', () => {
    expect(rows.find((row) => row['Run'] === 'LONG')?.['permanent-link-length: margin']).toBe('-4');
  });

  test('says what is the matter and what to do, also where no single change is enough', () => {
    expect(rows.find((row) => row['Run'] === 'LONG')?.['Why']).toContain('Cabling FAILS');
    expect(rows.find((row) => row['Run'] === 'LONG')?.['What to do']).toContain('Shorten the installed cable');
    const hopeless = read(checkSchedule({ runs: [powered({}, { connections: 8, minimumVoltage: 43.9 })], switches: [] }));
    expect(hopeless[0]?.['What to do']).toContain('No single change');
  });

  test('has the outcome and what the budget decided', () => {
    expect(rows.map((row) => row['Outcome'])).toEqual([
      'pass',
      'fail',
      'denied',
      'marginal',
      'uncertain',
      'fail',
      'fail',
      'fail',
      'uncertain',
    ]);
    expect(rows.find((row) => row['Run'] === 'SHED')?.['Allocation']).toBe('denied');
  });
});

describe('a name that a spreadsheet would run', () => {
  test.each(['=1+1', '+1', '-1', '@SUM(A1)', '\tx', '\rx', '\nx', '  =1+1', '\u00a0=1', '\uff1d1', '=cmd|"/c calc"!A1', '-2+3'])(
    'is led by an apostrophe: %j',
    (name) => {
      expect(readNamed(name)?.['Device']).toBe(`'${name}`);
    },
  );

  test.each(['Camera', "Latecomers' camera", 'a=b', '1-2', 'x, "y"', 'two\nlines', ' blank ', ''])('is not: %j', (name) => {
    expect(readNamed(name)?.['Device']).toBe(name);
  });

  test('is neutralised in every column it can stand in', () => {
    const [row] = read(checkSchedule({ runs: [powered({ run: '=A', device: '=B', switch: '=C' })], switches: [] }));
    expect([row?.['Run'], row?.['Device'], row?.['Switch']]).toEqual(["'=A", "'=B", "'=C"]);
    const conductor = { ...cueLight().input.conductor, name: '=D' };
    const [light] = read(checkSchedule({ runs: [cueLight({}, { conductor })], switches: [] }));
    for (const cell of Object.values(light ?? {})) expect(cell).not.toMatch(/^[=+@]/);
  });
});

test('any names come back as they were, at most with an apostrophe, and no cell would run', () => {
  const name = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.string({ unit: fc.constantFrom('=', '+', '-', '@', '"', ',', '\r', '\n', '\t', ' ', 'a') }),
  );
  fc.assert(
    fc.property(name, name, name, (run, device, source) => {
      const [row, ...others] = read(checkSchedule({ runs: [powered({ run, device, switch: source })], switches: [] }));
      expect(others).toEqual([]);
      for (const [column, text] of [
        ['Run', run],
        ['Device', device],
        ['Switch', source],
      ] as const) {
        expect([text, `'${text}`]).toContain(row?.[column]);
        expect(row?.[column]).not.toMatch(/^\s*[=+\-@]|^[\t\r\n]/);
      }
    }),
    { numRuns: 500 },
  );
});

test('an empty schedule has a header line', () => {
  expect(reportCsv(checkSchedule({ runs: [], switches: [] })).split('\r\n')).toHaveLength(2);
});

test('refuses what is no report', () => {
  expect(() => reportCsv(null as never)).toThrow(expect.objectContaining({ name: 'InputError', parameter: 'report' }));
});
