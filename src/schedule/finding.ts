/** What is wrong, doubtful or assumed about a schedule, and where. @module */

/** What kind of finding it is. */
export type FindingCode =
  /** A file holds no rows, or cannot be read as text. */
  | 'unusable-file'
  /** Text in an encoding other than UTF-8; read, but signs may be wrong. */
  | 'other-encoding'
  /** A column that is needed is not there. */
  | 'missing-column'
  /** A column that is not known; its cells are not used. */
  | 'unknown-column'
  /** Two columns with one meaning. */
  | 'duplicate-column'
  /** A row that is not a row of the table: an unclosed quote, too many cells. */
  | 'broken-row'
  /** A cell that is needed and empty. */
  | 'missing-value'
  /** A cell that cannot be read as what its column holds. */
  | 'unreadable-value'
  /** A value outside what is allowed. */
  | 'value-out-of-range'
  /** A name that is not known: a cable, a class, a priority. */
  | 'unknown-name'
  /** Two cells of a row that contradict each other. */
  | 'conflicting-values'
  /** A run, a switch or a port that is listed already. */
  | 'duplicate'
  /** A switch that the switch file does not list. */
  | 'unknown-switch'
  /** A port number beyond what the switch has. */
  | 'no-such-port'
  /** A figure that is probably the power at the switch, not at the device. */
  | 'pse-power-as-pd-power'
  /** A voltage outside what IEEE 802.3 allows that type of port. */
  | 'voltage-outside-type'
  /** A default that was applied. */
  | 'default-applied';

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
