/** Connections of a run and joints of a line: how many, and what one has. @module */
import { CONNECTION_RESISTANCE } from '../../cable/read-cable.ts';
import type { SourceKey } from '../../sources/sources.ts';
import { givens } from '../engine/rows.ts';
import type { Givens, Some } from '../engine/sheet.ts';

/** One connection where no other figure is stated. [Ω] */
export const MOST_OF_CONNECTION: number = CONNECTION_RESISTANCE.default;

/** Whether the resistance of one is stated, or that of the standard, and whether there are any that have some. */
export type JointCase = 'connection as stated' | 'connection of the standard' | 'connections';

/** How many. */
export const jointCountGiven: Givens<never> = givens([['n', '1', 'connections along the run', 'connections', { value: 0 }]]);

/** How many, and what one has: of a line nothing, and of a run the figure of the standard, where none is stated. */
// biome-ignore format: one figure a row
export const connectionGivens: Givens<JointCase> = [...jointCountGiven, ...givens<JointCase>([
  ['R_c', 'Ω', 'one connection, one conductor', 'connectionResistance', { when: 'connection as stated', value: 0 }],
  ['R_c', 'Ω', 'one connection, one conductor, at most', 'connectionResistance', { source: 'tia-568.2-d-connection', when: 'connection of the standard', value: MOST_OF_CONNECTION }],
])];

/** As people state them. */
export interface Joined {
  readonly connections?: number | undefined;
  readonly connectionResistance?: number | undefined;
}

/** The cases of the connections of a run. */
export function connectionCases({ connections = 0, connectionResistance }: Joined): Some<JointCase> {
  return [
    connectionResistance === undefined ? 'connection of the standard' : 'connection as stated',
    connections * (connectionResistance ?? MOST_OF_CONNECTION) > 0 && 'connections',
  ];
}

/** And of the joints of a line. */
export function jointCases({ connections, connectionResistance = 0 }: Joined): Some<JointCase> {
  return connectionCases({ connections, connectionResistance });
}

/** Where the resistance of a connection comes from. */
export function connectionSource(stated: number | undefined): SourceKey | undefined {
  return stated === undefined ? 'tia-568.2-d-connection' : undefined;
}

/** What is said where the connections of a run were left out, or how much one of them has. */
export function connectionAssumption({ connections, connectionResistance }: Joined): string | false {
  if (connections === undefined) return 'There are no connections: none were stated.';
  return (
    connections > 0 &&
    connectionResistance === undefined &&
    'Each connection has 0.2 Ω in each conductor, the most that its standard allows: no other figure was stated.'
  );
}

/** What is said where the joints of a line were left out, or what one of them has. */
export function jointAssumption({ connections, connectionResistance }: Joined): string | false {
  if (connections === undefined) return 'There are no joints: none were stated.';
  return connections > 0 && connectionResistance === undefined && 'The joints have no resistance: none was stated.';
}
