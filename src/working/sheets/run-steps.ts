/** A run of pieces in ohms, and the loop of it or of a line: the givens and steps that several sheets share. @module */
import { given, givens, steps } from '../rows.ts';
import type { Segment } from '../../cable/run-resistance.ts';
import type { ReadingRow, SheetGiven, SheetStep } from '../sheet.ts';
import { connectionGivens, connectionReading } from './connection-steps.ts';
import { type LoopReading, legGivens, legSteps, lineLengthGiven, lineLoopStep, lineTemperatureGiven, TWO_WIRE } from './line-steps.ts';
import { coefficientSource, twentyGiven } from './shared.ts';

/** From a port to a powered device. */
export const POWERED = 'powered';
const PIECES = 'pieces';
const NO_PIECES = 'no pieces';
/** Whether there are cords beside the installed cable. */
export const CORDS = 'cords';
export const NO_CORDS = 'no cords';

/** The pieces of a run. */
export const pieceGivens: readonly SheetGiven[] = givens([
  ['r20_#', 'Ω/m', '@: one metre of one conductor at 20 °C', 'segments[].cable', { source: 'row' }],
  ['alpha_#', '1/K', '@: temperature coefficient at 20 °C', 'segments[].cable', { source: 'row' }],
  ['T_#', '°C', '@: temperature of the conductor', 'segments[].temperature'],
  ['L_#', 'm', '@: length, one way', 'segments[].length'],
], { each: 'piece' });

/** From the pieces to one conductor of the run. */
export const pieceSteps: readonly SheetStep[] = steps([
  ['r_#', 'Ω/m', 'r20_# * (1 + alpha_# * (T_# - T_ref))', '@: one metre at its temperature', { each: 'piece' }],
  ['R_#', 'Ω', 'r_# * L_#', '@: one conductor, end to end', { each: 'piece' }],
  ['R_w', 'Ω', '[R_#] + n * R_c', 'one conductor of the whole run', { when: PIECES }],
  ['R_w', 'Ω', 'n * R_c', 'one conductor of the whole run', { when: NO_PIECES }],
]);

/** Cords, each at its own temperature. */
export const cordGivens: readonly SheetGiven[] = givens([
  ['rc20_#', 'Ω/m', 'cord #, @: one metre of one conductor at 20 °C', 'cords[].cable', { latex: 'r_{20,c#}', source: 'row' }],
  ['alphac_#', '1/K', 'cord #: temperature coefficient at 20 °C', 'cords[].cable', { latex: '\\alpha_{c#}', source: 'row' }],
  ['Tc_#', '°C', 'cord #: temperature', 'cords[].temperature', { latex: 'T_{c#}' }],
  ['Lc_#', 'm', 'cord #: length', 'cords[].length', { latex: 'L_{c#}' }],
], { each: 'cord' });

/** What a run has beside its installed cable, or its line. */
export const restSteps: readonly SheetStep[] = steps([
  ['Rc_#', 'Ω', 'rc20_# * (1 + alphac_# * (Tc_# - T_ref)) * Lc_#', 'cord #, one conductor, at its temperature', { latex: 'R_{c#}', each: 'cord' }],
  ['R_0', 'Ω', 'n * R_c', 'what a run of no length has: connections, one conductor', { when: NO_CORDS }],
  ['R_0', 'Ω', 'n * R_c + [Rc_#]', 'what a run of no length has: connections and cords, one conductor', { when: CORDS }],
  ['R_0', 'Ω', '2 * n * R_c', 'what a run of no length has: joints, out and back', { when: TWO_WIRE }],
]);

/** Pairsets that carry power. */
const pairsetsGiven: SheetGiven = given('m', '1', 'pairsets that carry power', 'pairs', { source: 'ieee-802.3-class', when: POWERED });

/** A line of two wires, or a run of pieces. */
export const loopGivens: readonly SheetGiven[] = [
  ...legGivens,
  lineTemperatureGiven,
  lineLengthGiven,
  ...pieceGivens,
  { ...twentyGiven, when: TWO_WIRE },
  { ...twentyGiven, when: PIECES },
  ...connectionGivens,
  pairsetsGiven,
];

/** The loop that the load sees. */
export const loopSteps: readonly SheetStep[] = [
  ...legSteps,
  lineLoopStep,
  ...pieceSteps,
  ...steps([
    ['R', 'Ω', 'R_w / m', 'resistance of the loop that power sees: a pairset is one conductor’s worth', { source: 'three-loops', when: POWERED }],
  ]),
];

/** A row for each piece of a run, at the highest resistance its standard allows. */
function pieceRows(segments: readonly Segment[]): readonly ReadingRow[] {
  return segments.map(({ cable, length, temperature = 20 }) => ({
    label: cable.title,
    source: cable.source,
    sources: { 'alpha_#': coefficientSource(cable.temperatureCoefficient) },
    values: {
      'r20_#': cable.maximumResistancePerMetre,
      'alpha_#': cable.temperatureCoefficient,
      'T_#': temperature,
      'L_#': length,
    },
  }));
}

/** Which of the two it is. */
export function cordsCase(cords: readonly Segment[]): string {
  return cords.length === 0 ? NO_CORDS : CORDS;
}

/** A row for each cord, likewise. */
export function cordRows(cords: readonly Segment[]): readonly ReadingRow[] {
  return cords.map(({ cable, length, temperature = 20 }) => ({
    label: cable.title,
    source: cable.source,
    sources: { 'alphac_#': coefficientSource(cable.temperatureCoefficient) },
    values: {
      'rc20_#': cable.maximumResistancePerMetre,
      'alphac_#': cable.temperatureCoefficient,
      'Tc_#': temperature,
      'Lc_#': length,
    },
  }));
}

/** One conductor of so many pieces, end to end. */
export function piecesOhms(segments: readonly Segment[]): number {
  return segments.reduce(
    (sum, { cable, length, temperature = 20 }) =>
      sum + cable.maximumResistancePerMetre * (1 + cable.temperatureCoefficient * (temperature - 20)) * length,
    0,
  );
}

/** A run of pieces. */
export function runReading(
  segments: readonly Segment[],
  pairs: 2 | 4,
  connections: number | undefined,
  connectionResistance: number | undefined,
): LoopReading {
  const { values, cases } = connectionReading(connections, connectionResistance);
  const { n = 0, R_c = 0 } = values;
  return {
    values: { T_ref: 20, ...values, m: pairs / 2 },
    cases: [POWERED, segments.length === 0 ? NO_PIECES : PIECES, pairs === 4 ? 'two pairsets' : 'one pairset', ...cases],
    rows: { piece: pieceRows(segments) },
    ohms: (piecesOhms(segments) + n * R_c) / (pairs / 2),
  };
}

