/** What a citation is. @module */
import type { CABLING_SOURCES } from './cabling-sources.ts';
import type { CONDUCTOR_SOURCES } from './conductor-sources.ts';
import type { ETHERNET_SOURCES } from './ethernet-sources.ts';
import type { FIELD_SOURCES } from './field-sources.ts';
import type { GENERAL_SOURCES } from './general-sources.ts';
import type { HEAT_SOURCES } from './heat-sources.ts';

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
export type SourceKey =
  | keyof typeof CONDUCTOR_SOURCES
  | keyof typeof CABLING_SOURCES
  | keyof typeof ETHERNET_SOURCES
  | keyof typeof HEAT_SOURCES
  | keyof typeof FIELD_SOURCES
  | keyof typeof GENERAL_SOURCES;
