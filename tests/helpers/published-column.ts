/** Holding one column of a printed table against what the library computes, row by row, with every exception named. @module */
import { describe, expect, test } from 'vitest';
import { lastDigit } from './expectations.ts';

/** One printed figure: what row it is of, as it stands on the page, and what the library has for it. */
export interface PublishedCell {
  readonly row: string;
  readonly printed: string;
  readonly computed: number;
}

/** What a reader must know of a column that does not wholly reproduce. */
export interface ColumnNotes {
  /** Significant figures of the column, where printed zeros are only fillers (`211600` to four figures). */
  readonly figures?: ((row: string) => number) | undefined;
  /** Rows that do not reproduce, with the reason. */
  readonly exceptions?: Readonly<Record<string, string>> | undefined;
  /** A column reckoned in another way: how far it may lie from ours, as a fraction, and why. At least one row must need it. */
  readonly within?: { readonly fraction: number; readonly reason: string } | undefined;
}

/**
 * One test for every figure of a column: it rounds to the printed digits, or it is named as an exception. An exception that
 * reproduces after all fails as well, so that none outlives its reason.
 *
 * @param title - The table, its source, and the column.
 * @param cells - The printed figures.
 * @param notes - What does not reproduce, and why.
 */
export function publishedColumn(title: string, cells: readonly PublishedCell[], notes: ColumnNotes = {}): void {
  const { figures, exceptions = {}, within } = notes;
  const rounds = ({ row, printed, computed }: PublishedCell): boolean => {
    const digit = figures === undefined ? lastDigit(printed) : 10 ** (Math.floor(Math.log10(Number(printed))) + 1 - figures(row));
    return Math.abs(computed - Number(printed)) <= 0.5 * digit * (1 + 1e-9);
  };
  describe(title, () => {
    test('has its rows, each once, and no exception without need', () => {
      expect(cells.length).toBeGreaterThan(0);
      const names = cells.map(({ row }) => row);
      expect(new Set(names).size).toBe(names.length);
      expect(Object.keys(exceptions).filter((row) => !names.includes(row))).toEqual([]);
      if (within !== undefined) expect(cells.every(rounds), `every row rounds, so this is not needed: ${within.reason}`).toBe(false);
    });

    test.each(cells.map((cell) => [cell.row, cell.printed, cell] as const))('%s: %s', (row, printed, cell) => {
      const fraction = Math.abs(cell.computed / Number(printed) - 1);
      const reproduces = rounds(cell) || (within !== undefined && fraction <= within.fraction);
      const reason = exceptions[row];
      const claim = reason === undefined ? '' : `, which was said not to reproduce: ${reason}`;
      expect(reproduces, `${cell.computed} against ${printed} as printed${claim}`).toBe(reason === undefined);
    });
  });
}
