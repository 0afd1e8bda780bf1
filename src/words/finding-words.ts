/** The kinds of finding about a schedule, and what to do about each. @module */

/**
 * Cause and cure of every code; its keys are the codes there are.
 *
 * @example
 * FINDING_WORDS['default-applied'].cause; // => 'a default that was applied'
 */
export const FINDING_WORDS = {
  'unusable-file': {
    cause: 'a file holds no rows, or is not text',
    cure: 'export it from the spreadsheet again, as CSV in UTF-8, its header line first',
  },
  'other-encoding': {
    cause: 'text in an encoding other than UTF-8; read, but signs may be wrong',
    cure: 'save it as UTF-8, and look through the cells with signs such as °, Ω and ²',
  },
  'missing-column': {
    cause: 'a column that is needed is not there',
    cure: 'add the column; the message names it, and the blank template has all',
  },
  'unknown-column': {
    cause: 'a column that is not known; its cells are not used',
    cure: 'correct its title if it was meant to be used; else leave it',
  },
  'duplicate-column': { cause: 'two columns with one meaning', cure: 'keep one of the two, or give the other a title of its own' },
  'broken-row': {
    cause: 'a row that is not one of the table: an unclosed quote, or too many cells',
    cure: 'close the quote, or put quotes around a cell that has the delimiter in it',
  },
  'missing-value': { cause: 'a cell that is needed and empty', cure: 'fill it in' },
  'unreadable-value': {
    cause: 'a cell that cannot be read as what its column holds',
    cure: 'write it as `allowed` says: a number with its unit, a name of the list',
  },
  'value-out-of-range': { cause: 'a value outside what is allowed', cure: 'check the figure and its unit against `allowed`' },
  'unknown-name': { cause: 'a name that is not known: a cable, a type, a priority', cure: 'use a name of the list in `allowed`' },
  'conflicting-values': { cause: 'two cells of a row that contradict each other', cure: 'leave one of the two empty, or correct it' },
  duplicate: {
    cause: 'a run, a switch or a port that is listed already',
    cure: 'give each run and switch a name of its own, and each port to one run',
  },
  'unknown-switch': {
    cause: 'a switch that the switch file does not list',
    cure: 'list it in the switch file, or correct the name in the runs',
  },
  'no-such-port': { cause: 'a port number beyond what the switch has', cure: 'correct the port, or the number of ports of the switch' },
  'pse-power-as-pd-power': {
    cause: 'a figure that is probably the power at the switch, not at the device',
    cure: 'enter what the device draws at its own input, from its data sheet; empty means all that the class allows',
  },
  'voltage-outside-type': {
    cause: 'a port voltage that IEEE 802.3 does not allow that type',
    cure: 'check the voltage, and the type of the switch',
  },
  'default-applied': { cause: 'a default that was applied', cure: 'state the value if the default is not what was built' },
} as const;

/** What kind of finding it is. */
export type FindingCode = keyof typeof FINDING_WORDS;
