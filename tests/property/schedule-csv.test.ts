import { parse } from 'csv-parse/sync';
import { expect, test } from 'vitest';
import { csvRecords } from '../../src/schedule/read/csv.ts';
import { pick, type Random, seeded, whole } from '../helpers/random.ts';

// The oracle is csv-parse, a reader that nobody here wrote: on well-formed text the two must agree cell by cell.
// It is not used for reading itself: at the first unclosed quote it gives up all that follows.

const CELLS = [
  '',
  'a',
  'two words',
  'x,y',
  'x;y',
  'x\ty',
  'say "hi"',
  '"',
  '""',
  'two\nlines',
  '\n',
  'a,\n"b"',
  ' pad ',
  '=1',
  'é°Ω',
  '6" pipe',
  ',',
];

interface Expected {
  readonly text: string;
  /** Line on which each record begins. */
  readonly lines: readonly number[];
}

function wellFormed(random: Random, delimiter: string): Expected {
  const width = whole(random, 9, 14);
  const lines: number[] = [];
  let text = '';
  let line = 1;
  for (let row = whole(random, 1, 8); row > 0; row--) {
    // No more than two difficult cells to a row: a cell full of delimiters and line ends is rows to a suspicious reader.
    const difficult = [whole(random, 0, width - 1), whole(random, 0, width - 1)];
    const cells = Array.from({ length: width }, (_, index) => (difficult.includes(index) ? pick(random, CELLS) : `c${index}`));
    const written = cells.map((cell) => {
      const must = /["\n]|^ | $/.test(cell) || cell.includes(delimiter);
      return must || random() < 0.2 ? `"${cell.replaceAll('"', '""')}"` : cell;
    });
    lines.push(line);
    const record = `${written.join(delimiter)}\n`;
    text += record;
    line += record.split('\n').length - 1;
  }
  return { text, lines };
}

test('5000 well-formed texts are read as csv-parse reads them, and every record stands on its line', () => {
  const random = seeded(3);
  let quoted = 0;
  for (let round = 0; round < 5000; round++) {
    const delimiter = pick(random, [',', ';', '\t']);
    const { text, lines } = wellFormed(random, delimiter);
    const oracle = parse(text, { delimiter, record_delimiter: '\n' });
    const width = oracle[0]?.length ?? 0;
    const records = [...csvRecords(text.split('\n'), delimiter, width, 0)];
    expect(
      records.map(({ cells }) => cells),
      JSON.stringify(text),
    ).toEqual(oracle);
    expect(records.map(({ line }) => line)).toEqual(lines);
    if (text.includes('"')) quoted++;
  }
  expect(quoted).toBeGreaterThan(2500);
});
