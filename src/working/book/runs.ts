/** A run of pieces: what sheets share, and its three loops. @module */

import { type Cable, type RunResistanceInput, runResistance, type Segment } from '../../cable/index.ts';
import type { SourceKey } from '../../sources/sources.ts';
import { type BookSheet, given, givens, steps } from '../engine/rows.ts';
import type { Givens, ReadingRow, Steps } from '../engine/sheet.ts';
import { coefficientSource, TWENTY, twentyGiven } from './conductors.ts';
import {
  connectionAssumption,
  connectionCases,
  connectionGivens,
  connectionSource,
  type Joined,
  type JointCase,
  jointCountGiven,
  MOST_OF_CONNECTION,
} from './joints.ts';
import { type LineCase, type LoopReading, legGivens, legSteps, lineLengthGiven, lineLoopStep, lineTemperatureGiven } from './line.ts';

/** A run of pieces to a powered device, over one pairset or two, with cords or without. */
export type RunCase = 'powered' | 'pieces' | 'no pieces' | 'one pairset' | 'two pairsets' | CordCase | JointCase;
export type CordCase = 'cords' | 'no cords';

/** Where the resistance of a conductor of a cable comes from: its usual gauge, or its limit. */
export function cableSource({ source }: Cable, basis: 'nominal' | 'maximum'): SourceKey {
  return basis === 'nominal' && source !== 'data-sheet' ? 'astm-b258' : source;
}

/** What is taken for the conductors of a run. */
export function basisAssumption(basis: 'nominal' | 'maximum'): string {
  return basis === 'maximum'
    ? 'Every conductor at the highest resistance its standard allows.'
    : 'Conductors of the usual gauge, at their nominal size.';
}

/** What is said where a piece has no temperature. */
export function pieceAssumption(pieces: readonly Segment[]): string | false {
  return pieces.some(({ temperature }) => temperature === undefined) && 'A piece without a temperature is at 20 °C.';
}

/** The pieces of a run. */
// biome-ignore format: one figure a row
export const pieceGivens: Givens<never> = givens([
  ['r20_#', 'Ω/m', '@: one metre of one conductor at 20 °C', 'segments[].cable', { source: 'row' }],
  ['alpha_#', '1/K', '@: temperature coefficient at 20 °C', 'segments[].cable', { source: 'row' }],
  ['T_#', '°C', '@: temperature of the conductor', 'segments[].temperature'],
  ['L_#', 'm', '@: length, one way', 'segments[].length'],
], { each: 'piece' });

/** From the pieces to one conductor of the run. */
// biome-ignore format: one figure a row
const pieceSteps = steps<RunCase>([
  ['r_#', 'Ω/m', 'r20_# * (1 + alpha_# * (T_# - T_ref))', '@: one metre at its temperature', { each: 'piece' }],
    ['R_#', 'Ω', 'r_# * L_#', '@: one conductor, end to end', { each: 'piece' }],
    ['R_w', 'Ω', '[R_#] + n * R_c', 'one conductor of the whole run', { when: 'pieces' }],
    ['R_w', 'Ω', 'n * R_c', 'one conductor of the whole run', { when: 'no pieces' }],
]);

/** Cords, each at its own temperature. */
// biome-ignore format: one figure a row
export const cordGivens: Givens<never> = givens([
  ['rc20_#', 'Ω/m', 'cord #, @: one metre of one conductor at 20 °C', 'cords[].cable', { latex: 'r_{20,c#}', source: 'row' }],
  ['alphac_#', '1/K', 'cord #: temperature coefficient at 20 °C', 'cords[].cable', { latex: '\\alpha_{c#}', source: 'row' }],
  ['Tc_#', '°C', 'cord #: temperature', 'cords[].temperature', { latex: 'T_{c#}' }],
  ['Lc_#', 'm', 'cord #: length', 'cords[].length', { latex: 'L_{c#}' }],
], { each: 'cord' });

/** What a run has beside its installed cable, or its line. */
// biome-ignore format: one figure a row
export const restSteps: Steps<CordCase | LineCase> = steps([
  ['Rc_#', 'Ω', 'rc20_# * (1 + alphac_# * (Tc_# - T_ref)) * Lc_#', 'cord #, one conductor, at its temperature', { latex: 'R_{c#}', each: 'cord' }],
    ['R_0', 'Ω', 'n * R_c', 'what a run of no length has: connections, one conductor', { when: 'no cords' }],
    ['R_0', 'Ω', 'n * R_c + [Rc_#]', 'what a run of no length has: connections and cords, one conductor', { when: 'cords' }],
    ['R_0', 'Ω', '2 * n * R_c', 'what a run of no length has: joints, out and back', { when: 'two-wire' }],
]);

/** A line of two wires, or a run of pieces. */
export const loopGivens: Givens<LineCase | RunCase> = [
  ...legGivens,
  lineTemperatureGiven,
  lineLengthGiven,
  ...pieceGivens,
  { ...twentyGiven, when: 'two-wire' },
  { ...twentyGiven, when: 'pieces' },
  ...connectionGivens,
  given('m', '1', 'pairsets that carry power', 'pairs', { source: 'ieee-802.3-class', when: 'powered' }),
];

/** The loop that the load sees. */
// biome-ignore format: one figure a row
export const loopSteps: Steps<LineCase | RunCase> = [...legSteps, lineLoopStep, ...pieceSteps, ...steps<RunCase>([
  ['R', 'Ω', 'R_w / m', 'resistance of the loop that power sees: a pairset is one conductor’s worth', { source: 'three-loops', when: 'powered' }],
])];

/** A row for each piece of a run, or for each cord. */
export function pieceRows(
  pieces: readonly Segment[],
  suffix: '' | 'c' = '',
  basis: 'nominal' | 'maximum' = 'maximum',
): readonly ReadingRow<never>[] {
  return pieces.map(({ cable, length, temperature = TWENTY }) => ({
    label: cable.title,
    source: cableSource(cable, basis),
    sources: { [`alpha${suffix}_#`]: coefficientSource(cable.temperatureCoefficient) },
    values: {
      [`r${suffix}20_#`]: cable[`${basis}ResistancePerMetre`],
      [`alpha${suffix}_#`]: cable.temperatureCoefficient,
      [`T${suffix}_#`]: temperature,
      [`L${suffix}_#`]: length,
    },
  }));
}

/** One conductor of so many pieces, end to end. [Ω] */
export function piecesOhms(pieces: readonly Segment[]): number {
  return pieces.reduce(
    (sum, { cable: { maximumResistancePerMetre, temperatureCoefficient }, length, temperature = TWENTY }) =>
      sum + maximumResistancePerMetre * (1 + temperatureCoefficient * (temperature - 20)) * length,
    0,
  );
}

/** What a run has beside its installed cable: cords and connections, one conductor. [Ω] */
export function restOhms(cords: readonly Segment[], { connections = 0, connectionResistance = MOST_OF_CONNECTION }: Joined): number {
  return piecesOhms(cords) + connections * connectionResistance;
}

/** A run of pieces to a powered device. */
export function runReading(pieces: readonly Segment[], pairs: 2 | 4, joints: Joined): LoopReading<RunCase> {
  return {
    cases: ['powered', pieces.length === 0 ? 'no pieces' : 'pieces', pairsetsCase(pairs), ...connectionCases(joints)],
    rows: { piece: pieceRows(pieces) },
    ohms: restOhms(pieces, joints) / (pairs / 2),
  };
}

/** How many pairsets carry power. */
export function pairsetsCase(pairs: 2 | 4): 'one pairset' | 'two pairsets' {
  return pairs === 4 ? 'two pairsets' : 'one pairset';
}

/** Whether there are cords beside the installed cable. */
export function cordsCase(cords: readonly Segment[]): CordCase {
  return cords.length === 0 ? 'no cords' : 'cords';
}

export const runResistanceSheet: BookSheet<RunResistanceInput, RunCase> = {
  title: 'The three loops of a run',
  needs: ['segments'],
  keys: ['connections', 'connectionResistance', 'basis'],
  givens: [
    pieceGivens,
    { ...twentyGiven, when: 'pieces' },
    jointCountGiven,
    ['R_c', 'Ω', 'one connection, one conductor', 'connectionResistance', { source: 'row', value: MOST_OF_CONNECTION }],
  ],
  // biome-ignore format: one figure a row
  steps: [
    pieceSteps,
    steps([
    ['R_pairset', 'Ω', 'R_w / 2 + R_w / 2', 'one pairset: out on both wires of a pair, back on both of another', { core: 'twoPair' }],
    ['R_four', 'Ω', 'R_pairset / 2', 'two pairsets in parallel', { core: 'fourPair' }],
    ['R_loop', 'Ω', '2 * R_w', 'one pair shorted at the far end, as a meter reads it', { core: 'pairLoop' }],
  ], { source: 'three-loops' }),
  ],
  assumptions: ['All conductors of a piece alike.'],
  validity: 'Direct current.',
  slips: [
    ['one-way-length', { R_loop: 'R_w' }],
    ['pairset-for-pair-loop', { R_loop: 'R_pairset' }],
    ['pair-loop-for-pairset', { R_pairset: '2 * R_w', R_four: '2 * R_w' }],
    ['pairset-for-four-pair', { R_four: 'R_pairset' }],
    ['four-pair-for-pairset', { R_pairset: 'R_w / 2' }],
    ['four-pair-for-pair-loop', { R_loop: 'R_four' }],
    ['cold-resistance', { 'T_#': 'T_ref' }],
    ['connections-left-out', { n: '0' }, 'connections'],
    ['connections-in-one-wire', { R_loop: '2 * R_w - n * R_c' }, 'connections'],
  ],
  guard: runResistance,
  read: (input) => {
    const { segments, basis = 'maximum', connectionResistance } = input;
    return {
      sources: { R_c: connectionSource(connectionResistance) },
      cases: [segments.length === 0 ? 'no pieces' : 'pieces', ...connectionCases(input)],
      rows: { piece: pieceRows(segments, '', basis) },
      assumptions: [basisAssumption(basis), connectionAssumption(input), pieceAssumption(segments)],
    };
  },
};
