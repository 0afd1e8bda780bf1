/** What is wrong, doubtful or assumed about a schedule, and where. @module */
import type { FindingCode } from '../words/finding-words.ts';

/** `error`: the cell or row could not be used. `warning`: used, but doubtful. `note`: a default that was applied. */
export type FindingSeverity = 'error' | 'warning' | 'note';

/** One finding, located. */
export interface Finding {
  readonly code: FindingCode;
  readonly severity: FindingSeverity;
  /** `runs` or `switches`, or the file's name where it has one. */
  readonly file: string;
  /** Line in the file (row in the data), from 1; absent where the whole file is meant. */
  readonly line?: number;
  /** Header of the column, as the file has it; absent where a whole row is meant. */
  readonly column?: string;
  /** What was read. */
  readonly received: string;
  /** What is allowed. */
  readonly allowed: string;
  /** The whole of it in one sentence. */
  readonly message: string;
}
