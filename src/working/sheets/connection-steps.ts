/** Connections of a run and joints of a line, and what is said where they were not stated. @module */
import { givens } from '../rows.ts';
import type { Figures, SheetGiven } from '../sheet.ts';

/** Whether the resistance of one is stated, or that of the standard. */
const STATED = 'connection as stated';
const STANDARD = 'connection of the standard';
/** One connection where no other figure is stated. [Ω] */
const AT_MOST = 0.2;

/** How many, and what one has. */
export const jointGivens: readonly SheetGiven[] = givens([
  ['n', '1', 'connections along the run', 'connections'],
  ['R_c', 'Ω', 'one connection, one conductor', 'connectionResistance'],
]);

/** The same, with the figure of the standard where none is stated. */
export const connectionGivens: readonly SheetGiven[] = jointGivens.flatMap((given): SheetGiven[] =>
  given.symbol === 'R_c'
    ? [
        { ...given, when: STATED },
        { ...given, meaning: 'one connection, one conductor, at most', source: 'tia-568.2-d-connection', when: STANDARD },
      ]
    : [given],
);

/** As they are read. */
export function connectionReading(
  connections: number = 0,
  connectionResistance: number | undefined,
): { readonly values: Figures; readonly cases: readonly string[] } {
  const R_c = connectionResistance ?? AT_MOST;
  return {
    values: { n: connections, R_c },
    cases: [connectionResistance === undefined ? STANDARD : STATED, ...(connections * R_c > 0 ? ['connections'] : [])],
  };
}

interface Joined {
  readonly connections?: number | undefined;
  readonly connectionResistance?: number | undefined;
}

/** What is said where the joints of a line were left out, or what one of them has. */
export function jointAssumptions({ connections, connectionResistance }: Joined): string[] {
  if (connections === undefined) return ['There are no joints: none were stated.'];
  return connections > 0 && connectionResistance === undefined ? ['The joints have no resistance: none was stated.'] : [];
}

