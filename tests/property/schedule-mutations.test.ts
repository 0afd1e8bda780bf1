import { isDeepStrictEqual } from 'node:util';
import { describe, expect, test } from 'vitest';
import { parseSchedule } from '../../src/schedule/parse-schedule.ts';
import type { ParsedSchedule } from '../../src/schedule/read/read-schedule.ts';
import type { ScheduledRun } from '../../src/schedule/schedule.ts';
import { pick, type Random, seeded, whole } from '../helpers/random.ts';
import { sampleSize } from '../helpers/sample-size.ts';

// A file that a person might have written, damaged in every way that a keyboard, a spreadsheet or a disk can think of.
// Three things must hold: nothing throws, every finding says where it is, and no row that was left alone is lost.

const NEEDED = ['Run', 'Switch', 'Port', 'PoE class', 'Cable', 'Length'];
const OPTIONAL = ['Device', 'Cords', 'Ambient', 'Priority', 'Supply', 'Load'];
const DEVICES = [
  'Help point',
  'Pack, stage left',
  '',
  '6" pipe lamp',
  'Pipe lamp 6"',
  'Camera\nnorth door',
  '=1+1',
  'Caf\u00e9 \u00b0',
  'a;b\tc',
  '"',
];
const SWITCHES = 'Switch,Type,Ports,Budget (W)\nStage rack,2,48,370\nFoyer,802.3bt type 3,12,\n';

/** A file in parts: the header line, then its rows, each with the end of its last line. */
interface Parts {
  readonly delimiter: string;
  readonly lineEnd: string;
  readonly rows: readonly string[];
}

function quotedIf(random: Random, text: string, delimiter: string, always: boolean): string {
  const must = text.includes(delimiter) || text.includes('\n') || text.startsWith('"');
  return must || always || random() < 0.1 ? `"${text.replaceAll('"', '""')}"` : text;
}

function shuffled<T>(random: Random, list: readonly T[]): T[] {
  return list
    .map((item) => [random(), item] as const)
    .sort(([a], [b]) => a - b)
    .map(([, item]) => item);
}

function goodFile(random: Random): Parts {
  const delimiter = pick(random, [',', ',', ';', '\t']);
  const lineEnd = pick(random, ['\n', '\n', '\r\n', '\r']);
  const always = random() < 0.15;
  // Any order of columns, and often without some of those that a schedule can do without.
  const kept = shuffled(random, [...NEEDED, ...OPTIONAL.filter(() => random() < 0.6)]);
  const lineOf = (cells: Readonly<Record<string, string>>): string =>
    kept.map((header) => quotedIf(random, cells[header] ?? '', delimiter, always)).join(delimiter) + lineEnd;
  const rows = [lineOf(Object.fromEntries(kept.map((header) => [header, header])))];
  const count = whole(random, 3, 9);
  for (let index = 1; index <= count; index++) {
    const twoWire = kept.includes('Supply') && kept.includes('Load') && random() < 0.2;
    const common = { Device: pick(random, DEVICES) };
    const cells = twoWire
      ? {
          ...common,
          Run: `CL-${index}`,
          Cable: '18 AWG',
          Length: `${whole(random, 5, 90)} m`,
          Supply: pick(random, ['24 V', '21 V to 27.6 V']),
          Load: '6 W',
        }
      : {
          ...common,
          Run: `R-${index}`,
          Switch: pick(random, ['Stage rack', 'Foyer']),
          Port: String(index),
          'PoE class': String(whole(random, 0, 8)),
          Cable: pick(random, ['cat5e', 'cat6', 'Category 6A']),
          Length: pick(random, ['65 m', '212 ft', "90'", '30 m + 12 m', '41.5']),
          Cords: pick(random, ['', '2 m cord-24', '2 m cord-24 + 5 m 28 AWG']),
          Ambient: pick(random, ['', '35 \u00b0C', '95 degF']),
          Priority: pick(random, ['', 'low', 'critical']),
        };
    rows.push(lineOf(cells));
    if (random() < 0.1) rows[rows.length - 1] += lineEnd;
  }
  return { delimiter, lineEnd, rows };
}

const NASTY = [
  '"',
  '"',
  '"',
  '"',
  ',',
  ';',
  '\t',
  '\n',
  '\r',
  '\r\n',
  '\0',
  '\ufeff',
  'x',
  '9',
  '-',
  "'",
  '=',
  '\u20ac',
  '\u{1f3ad}',
  '\ud800',
  ' ',
] as const;

/** One damage: what is cut out of the text at a place, and what is put there instead. */
interface Damage {
  readonly at: number;
  readonly cut: number;
  readonly put: string;
}

function damage(random: Random, text: string, { rows, delimiter }: Parts): Damage {
  const at = whole(random, 0, text.length);
  switch (whole(random, 0, 7)) {
    case 0:
      return { at, cut: whole(random, 1, 6), put: '' };
    case 1: {
      const from = whole(random, 0, text.length - 1);
      return { at, cut: 0, put: text.slice(from, from + whole(random, 1, 30)).replaceAll('\0', '') };
    }
    case 2:
      return { at, cut: 1, put: pick(random, NASTY) };
    case 3: {
      // At the beginning of a cell a quote does the most harm.
      const places = [...text.matchAll(new RegExp(`[${delimiter}\n]`, 'g'))].map(({ index }) => index + 1);
      return { at: pick(random, places), cut: 0, put: '"' };
    }
    case 4:
      return { at: Math.min(at, text.length - 1), cut: text.length, put: '' };
    case 5: {
      const row = pick(random, rows);
      return { at, cut: 0, put: pick(random, [row, row.trimEnd(), `${delimiter}${row}`]) };
    }
    default:
      return { at, cut: 0, put: pick(random, NASTY) };
  }
}

const LINE_END = /\r\n|\r|\n/g;
const lineBreaks = (text: string): number => text.match(LINE_END)?.length ?? 0;

/** Where the rows that the damage leaves alone stand afterwards, by their position in the file. */
function leftAlone(rows: readonly string[], { at, cut, put }: Damage, damaged: string): Map<number, number> {
  const alone = new Map<number, number>();
  let start = 0;
  for (const [index, row] of rows.entries()) {
    const end = start + row.length;
    // The end of the line before belongs to a row as well: without it there is no row.
    if (end <= at && !(end === at && cut > 0 && row.endsWith('\r'))) alone.set(index, lineBreaks(damaged.slice(0, start)) + 1);
    else if (start >= at + cut && start > at) {
      const moved = start + put.length - cut;
      const before = damaged.slice(0, moved);
      const touched = start === at + cut && !/[\r\n]$/.test(before);
      if (!touched) alone.set(index, lineBreaks(before) + 1);
    }
    start = end;
  }
  return alone;
}

const without = ({ line: _line, ...rest }: ScheduledRun): Omit<ScheduledRun, 'line'> => rest;

function expectSound({ schedule, findings }: ParsedSchedule, lines: number, context: string): void {
  expect(isDeepStrictEqual(JSON.parse(JSON.stringify({ schedule, findings })), { schedule, findings }), `JSON-safe: ${context}`).toBe(true);
  for (const finding of findings) {
    const { code, severity, file, line, column, message, allowed } = finding;
    const located =
      (file === 'R.csv' || file === 'S.csv') &&
      message !== '' &&
      allowed !== '' &&
      (line === undefined
        ? severity === 'note' || ['unusable-file', 'missing-column', 'other-encoding'].includes(code)
        : Number.isInteger(line) && line >= 1 && (file !== 'R.csv' || line <= lines)) &&
      (column === undefined || line !== undefined);
    expect(located, `located: ${JSON.stringify(finding)} in ${context}`).toBe(true);
  }
}

const CASES = sampleSize(10_000, 2000);

test(`${CASES} damaged files: none throws, every finding is located, no row that was left alone is lost`, () => {
  const random = seeded(20240607);
  let alone = 0;
  const lost: string[] = [];
  for (let round = 0; round < CASES; round++) {
    const parts = goodFile(random);
    const text = parts.rows.join('');
    const switches = random() < 0.5 ? SWITCHES : undefined;
    const names = { runsFile: 'R.csv', switchesFile: 'S.csv' };
    const good = parseSchedule({ runs: text, switches, ...names });
    expect(good.schedule.runs, `a good file is read whole: ${JSON.stringify(text)}`).toHaveLength(parts.rows.length - 1);

    const hurt = damage(random, text, parts);
    const damaged = text.slice(0, hurt.at) + hurt.put + text.slice(hurt.at + hurt.cut);
    const context = `${JSON.stringify(damaged)} damaged by ${JSON.stringify(hurt)}`;
    const result = parseSchedule({ runs: damaged, switches, ...names });
    expectSound(result, lineBreaks(damaged) + 1, context);

    const rows = leftAlone(parts.rows, { ...hurt, cut: Math.min(hurt.cut, text.length - hurt.at) }, damaged);
    if (!rows.has(0)) continue;
    for (const [index, line] of rows) {
      if (index === 0) continue;
      alone++;
      const expected = good.schedule.runs[index - 1] as ScheduledRun;
      const found = result.schedule.runs.find((run) => run.line === line);
      if (found === undefined || !isDeepStrictEqual(without(found), without(expected)))
        lost.push(`row ${index}, line ${line} of ${context}`);
    }
  }
  expect(alone).toBeGreaterThan(3 * CASES);
  expect(lost.slice(0, 3)).toEqual([]);
});

describe('texts that are no schedule at all', () => {
  const ALPHABET = [...NASTY, 'Run', 'Switch', 'Length', 'Cable', 'cat6', '65 m', 'PoE class', '3', '\n', ',', ',', '"', '""'];

  test('5000 heaps of characters: none throws, every finding is located', () => {
    const random = seeded(7);
    for (let round = 0; round < 5000; round++) {
      const heap = Array.from({ length: whole(random, 0, 60) }, () => pick(random, ALPHABET)).join('');
      expectSound(
        parseSchedule({ runs: heap, switches: heap, runsFile: 'R.csv', switchesFile: 'S.csv' }),
        lineBreaks(heap) + 1,
        JSON.stringify(heap),
      );
    }
  });

  test('2000 heaps of bytes', () => {
    const random = seeded(11);
    for (let round = 0; round < 2000; round++) {
      const bytes = Uint8Array.from({ length: whole(random, 0, 200) }, () => whole(random, 0, 255));
      expectSound(parseSchedule({ runs: bytes, switches: bytes, runsFile: 'R.csv', switchesFile: 'S.csv' }), 201, String(bytes));
    }
  });
});
