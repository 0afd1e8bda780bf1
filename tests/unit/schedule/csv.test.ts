/** How long and how wide a record may be before it is taken for an unclosed quote. */
import { describe, expect, test } from 'vitest';
import { csvRecords } from '../../../src/schedule/read/csv.ts';

/** Records of a comma-separated text: its cells, or `broken`, behind the line each begins on. */
function read(text: string, columns: number, start = 0): (string | string[])[][] {
  return [...csvRecords(text.split('\n'), ',', columns, start)].map(({ line, cells, broken }) => [
    String(line),
    broken ? 'broken' : [...cells],
  ]);
}
/** What becomes of the first record. */
const first = (text: string, columns: number): string | string[] | undefined => read(text, columns)[0]?.[1];

describe('a quoted cell over several lines', () => {
  const note = (lines: number): string => ['a,"x', ...Array.from({ length: lines - 2 }, () => 'x'), 'x",b'].join('\n');

  test('of 50 lines is a cell', () => {
    expect(read(`${note(50)}\nnext,1,2`, 3)).toEqual([
      ['1', ['a', Array.from({ length: 50 }, () => 'x').join('\n'), 'b']],
      ['51', ['next', '1', '2']],
    ]);
  });

  test('of 51 lines is an unclosed quote: its line is given up, and reading resumes on the next', () => {
    const records = read(`${note(51)}\nnext,1,2`, 3);
    expect(records.slice(0, 2)).toEqual([
      ['1', 'broken'],
      ['2', ['x']],
    ]);
    expect(records).toHaveLength(52);
    expect(records.at(-1)).toEqual(['52', ['next', '1', '2']]);
  });

  test('that the text ends in costs itself and no other', () => {
    expect(read('a,"b,c\nd,e,f\ng,h,i', 3)).toEqual([
      ['1', 'broken'],
      ['2', ['d', 'e', 'f']],
      ['3', ['g', 'h', 'i']],
    ]);
  });
});

describe('a stray quote inside a quoted cell', () => {
  test('is kept where the record has the width of the table', () => {
    expect(first('"6" pipe",b', 2)).toEqual(['6" pipe', 'b']);
    expect(first('"6" pipe",b', 0)).toEqual(['6" pipe', 'b']);
  });

  test('breaks a record that is narrower or wider', () => {
    expect(first('"6" pipe",b', 3)).toBe('broken');
    expect(first('"6" pipe",b,c', 2)).toBe('broken');
  });

  test('empty cells beyond the last column do not count', () => {
    expect(first('"6" pipe",b,, ', 2)).toEqual(['6" pipe', 'b', '', ' ']);
    expect(first('"6" pipe",b,,c', 2)).toBe('broken');
    expect(first('"6" pipe",', 2)).toEqual(['6" pipe', '']);
  });

  test('over several lines it opens another cell: broken', () => {
    expect(first('"a\nb" c",d', 2)).toBe('broken');
  });
});

describe('a record over several lines that holds other rows', () => {
  test('is wider than the table', () => {
    expect(first('"a\nb",c,d', 2)).toBe('broken');
    expect(first('"a\nb",c,', 2)).toEqual(['a\nb', 'c', '']);
    expect(first('"a\nb",c', 2)).toEqual(['a\nb', 'c']);
  });

  test('without a delimiter in its cells may be narrower, with one it may not', () => {
    expect(first('"a\nb",c', 3)).toEqual(['a\nb', 'c']);
    expect(first('"a,1\nb",c', 3)).toBe('broken');
  });

  /** A first cell of two lines with so many delimiters in it, then the rest of a row. */
  const cellWith = (delimiters: number, columns: number): string => `"a${',x'.repeat(delimiters)}\nb"${',c'.repeat(columns - 1)}`;

  test.each([
    // Up to 7 columns a cell that lacks one delimiter of a whole row is a row; from 8 on, one that lacks three.
    [3, 1, 2],
    [7, 5, 6],
    [8, 4, 5],
    [12, 8, 9],
  ])('in a table of %d columns a cell may hold %d delimiters, and not %d', (columns, may, mayNot) => {
    expect(first(cellWith(may, columns), columns)).toHaveLength(columns);
    expect(first(cellWith(mayNot, columns), columns)).toBe('broken');
  });

  test('has a whole row in its last line, reached into beyond the first cell', () => {
    expect(first('x,"a\nb,c",d', 3)).toBe('broken');
    // Where the cell ends within the first, the line is the rest of this record.
    expect(first('"a,1\nb",c,d', 3)).toEqual(['a,1\nb', 'c', 'd']);
  });
});

describe('the ends of a record', () => {
  test('an empty last cell is a cell', () => {
    expect(first('"a",', 2)).toEqual(['a', '']);
    expect(first('"a"', 2)).toEqual(['a']);
    expect(first('a,', 2)).toEqual(['a', '']);
  });

  test('blanks around a quoted cell are not part of it, doubled quotes are one', () => {
    expect(first('  "a ""b"" c"  , d', 2)).toEqual(['a "b" c', ' d']);
  });

  test('blank records are left out, and lines count from 1, also from a later start', () => {
    expect(read('h,i\n\n , \n"",""\na,b', 2)).toEqual([
      ['1', ['h', 'i']],
      ['5', ['a', 'b']],
    ]);
    expect(read('h,i\na,b\n"c",d', 2, 1)).toEqual([
      ['2', ['a', 'b']],
      ['3', ['c', 'd']],
    ]);
  });
});
