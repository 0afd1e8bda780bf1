/** The kinds of finding about a schedule, and what each means. @module */

/**
 * What each code means; its keys are the codes there are.
 *
 * @example
 * FINDING_WORDS['default-applied']; // => 'a default that was applied'
 */
export const FINDING_WORDS = {
  'unusable-file': 'a file holds no rows, or is not text',
  'other-encoding': 'text in an encoding other than UTF-8; read, but signs may be wrong',
  'missing-column': 'a column that is needed is not there',
  'unknown-column': 'a column that is not known; its cells are not used',
  'duplicate-column': 'two columns with one meaning',
  'broken-row': 'a row that is not one of the table: an unclosed quote, or too many cells',
  'missing-value': 'a cell that is needed and empty',
  'unreadable-value': 'a cell that cannot be read as what its column holds',
  'value-out-of-range': 'a value outside what is allowed',
  'unknown-name': 'a name that is not known: a cable, a type, a priority',
  'conflicting-values': 'two cells of a row that contradict each other',
  duplicate: 'a run, a switch or a port that is listed already',
  'unknown-switch': 'a switch that the switch file does not list',
  'no-such-port': 'a port number beyond what the switch has',
  'pse-power-as-pd-power': 'a figure that is probably the power at the switch, not at the device',
  'voltage-outside-type': 'a port voltage that IEEE 802.3 does not allow that type',
  'default-applied': 'a default that was applied',
} as const;

/** What kind of finding it is. */
export type FindingCode = keyof typeof FINDING_WORDS;
