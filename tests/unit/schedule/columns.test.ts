import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { schedulePage } from '../../../scripts/schedule-doc.mts';
import { quantity } from '../../../src/schedule/cells/read-values.ts';
import type { Column } from '../../../src/schedule/columns/column.ts';
import { columnOf, keysOf } from '../../../src/schedule/columns/column-use.ts';
import { RUN_COLUMNS } from '../../../src/schedule/columns/run-columns.ts';
import { SWITCH_COLUMNS } from '../../../src/schedule/columns/switch-columns.ts';
import { templateCsv } from '../../../src/schedule/columns/template-csv.ts';
import { parseSchedule } from '../../../src/schedule/parse-schedule.ts';
import { findingList } from '../../../src/schedule/read/findings.ts';
import { rowReader } from '../../../src/schedule/read/row-reader.ts';
import { tableFromText } from '../../../src/schedule/read/table.ts';
import { ROOT } from '../../support/files.ts';

const FILES = { runs: RUN_COLUMNS, switches: SWITCH_COLUMNS };

test('docs/schedule.md has the columns and findings there are; if not: npx tsx scripts/schedule-doc.mts', () => {
  const page = readFileSync(join(ROOT, 'docs/schedule.md'), 'utf8');
  expect(page.match(/: made by /g)).toHaveLength(3);
  expect(schedulePage(page)).toBe(page);
});

describe.each(Object.entries(FILES))('the columns of the %s', (file, columns) => {
  const all = Object.entries(columns) as [string, Column<unknown>][];

  test('are each known by every title of theirs, and no title by two', () => {
    const spellings = all.flatMap(([key, { title, also }]) => [title, ...also].map((spelling) => [key, spelling] as const));
    for (const [key, spelling] of spellings) {
      for (const written of [spelling, spelling.toUpperCase(), spelling.replaceAll(' ', '_'), ` ${spelling} (x)`]) {
        expect(columnOf(written, columns as typeof RUN_COLUMNS)?.key, written).toBe(key);
      }
    }
  });

  test('make a template that can be read, and holds no row', () => {
    const text = templateCsv({ file: file as keyof typeof FILES });
    expect(text).toBe(`${all.map(([, { title }]) => title).join(',')}\r\n`);
    const { findings } = parseSchedule({ runs: text });
    if (file === 'runs') expect(findings.map(({ code }) => code)).toEqual(['unusable-file']);
  });

  test('say what happens without a cell, and what may stand in it', () => {
    for (const [, { about, allowed, instead }] of all) for (const words of [about, allowed, instead]) expect(words).not.toBe('');
  });
});

test('a template of no file is refused', () => {
  expect(() => templateCsv({ file: 'racks' as never })).toThrow(expect.objectContaining({ name: 'InputError', parameter: 'file' }));
});

test('a column that is added is read, held to its range and spoken of without another line', () => {
  const height: Column<number> = {
    title: 'Height',
    also: ['Mounting height'],
    about: 'how high it hangs',
    allowed: 'a height up to 30 m',
    quantity: ['length'],
    read: quantity('length', { from: 0, to: 30 }),
    instead: 'ground level is used',
    noted: true,
  };
  const columns = { ...RUN_COLUMNS, height };
  const findings = findingList('runs');
  const table = tableFromText('Run,mounting-height (ft)\nA,10\nB,100\nC,\n', columns, findings);
  if (table === undefined) throw new Error('the table was not read');
  const reader = rowReader(columns, table, findings);
  const values = [...table.rows].map((row) => {
    reader.begin(row, `run ${row.cells[0]}`);
    return reader.orNoted('height');
  });
  expect(values).toEqual([3.048, undefined, undefined]);
  expect(findings.all.map(({ code, line, message }) => [code, line, message])).toEqual([
    ['value-out-of-range', 3, 'run B: Height "100" is outside what is allowed; write a height up to 30 m; ground level is used'],
    ['default-applied', 4, 'Height is empty: ground level is used'],
  ]);
  expect(keysOf(columns)).toContain('height');
});
