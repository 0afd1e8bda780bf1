/** What a column is: one record, from which reader, findings, template and documents are made. @module */
import type { QuantityName } from '../../quantity/parse-quantity.ts';
import type { Cell, CellStyle } from '../cells/cell.ts';
import type { UnreadCell } from '../schedule.ts';

/** One column of a file. */
export interface Column<T> {
  /** As documents name it. */
  readonly title: string;
  /** Further titles. Case, blanks, `.`, `_` and `-` tell none apart. */
  readonly also: readonly string[];
  /** What it is about, for documents. */
  readonly about: string;
  /** What its cells may hold, in words. */
  readonly allowed: string;
  /** The quantity, where a unit in the header can matter. */
  readonly quantity?: readonly QuantityName[];
  /** Reads a text that is not empty, its range or list of names included; a name is any text on one line. */
  readonly read: 'name' | ((text: string, style: CellStyle) => Cell<T>);
  /** Which rows need it. */
  readonly needed?: 'always' | 'powered' | 'two-wire';
  /** What happens where a cell is empty or bad and the row can do without. */
  readonly instead: string;
  /** Whether `instead` is noted where the cell is empty. */
  readonly noted?: true;
  /** The verdicts that a cell which cannot be read could make worse. */
  readonly bearsOn?: UnreadCell['bearsOn'];
  /** Whether it has no meaning for a two-wire run. */
  readonly poweredOnly?: true;
}

/** The columns of one file. */
export type Columns<C> = { readonly [K in keyof C]: Column<unknown> };

/** What a cell of a column holds. */
export type ValueOf<C> = C extends Column<infer T> ? T : never;
