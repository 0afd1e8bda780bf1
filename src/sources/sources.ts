/** What a citation is. @module */
import type * as lists from './lists.ts';

type Lists = typeof lists;

/** How sure a citation is. */
export type SourceStatus =
  /** A source that a reader can open, and that was read. */
  | 'published'
  /** Well known, not re-read: check it in the document before relying on it. */
  | 'memory'
  /** A fact of the trade for which no document was found. */
  | 'common practice'
  /** Arithmetic on figures of the other kinds, or a rule of this library. */
  | 'derived';

/** One cited document. */
export interface Source {
  readonly title: string;
  /** Edition, table or clause. */
  readonly locus: string;
  readonly status: SourceStatus;
  /** What a reader must know before trusting the figure. */
  readonly note?: string;
}

/** A key of the bibliography. */
export type SourceKey = { [List in keyof Lists]: keyof Lists[List] }[keyof Lists];
