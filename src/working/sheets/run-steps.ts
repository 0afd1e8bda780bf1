/** A run of pieces in ohms, and the loop of it or of a line: the givens and steps that several sheets share. @module */
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
export const pieceGivens: readonly SheetGiven[] = [
  {
    symbol: 'r20_#',
    meaning: '@: one metre of one conductor at 20 °C',
    unit: 'Ω/m',
    latex: 'r_{20,#}',
    core: 'segments[].cable',
    source: 'row',
    each: 'piece',
  },
  {
    symbol: 'alpha_#',
    meaning: '@: temperature coefficient at 20 °C',
    unit: '1/K',
    latex: '\\alpha_{#}',
    core: 'segments[].cable',
    source: 'row',
    each: 'piece',
  },
  {
    symbol: 'T_#',
    meaning: '@: temperature of the conductor',
    unit: '°C',
    latex: 'T_{#}',
    core: 'segments[].temperature',
    each: 'piece',
  },
  { symbol: 'L_#', meaning: '@: length, one way', unit: 'm', latex: 'L_{#}', core: 'segments[].length', each: 'piece' },
];

/** From the pieces to one conductor of the run. */
export const pieceSteps: readonly SheetStep[] = [
  {
    symbol: 'r_#',
    meaning: '@: one metre at its temperature',
    formula: 'r20_# * (1 + alpha_# * (T_# - T_ref))',
    unit: 'Ω/m',
    latex: 'r_{#}',
    source: 'circuit-laws',
    each: 'piece',
  },
  {
    symbol: 'R_#',
    meaning: '@: one conductor, end to end',
    formula: 'r_# * L_#',
    unit: 'Ω',
    latex: 'R_{#}',
    source: 'circuit-laws',
    each: 'piece',
  },
  {
    symbol: 'R_w',
    meaning: 'one conductor of the whole run',
    formula: '[R_#] + n * R_c',
    unit: 'Ω',
    latex: 'R_{w}',
    source: 'circuit-laws',
    when: PIECES,
  },
  {
    symbol: 'R_w',
    meaning: 'one conductor of the whole run',
    formula: 'n * R_c',
    unit: 'Ω',
    latex: 'R_{w}',
    source: 'circuit-laws',
    when: NO_PIECES,
  },
];

/** Cords, each at its own temperature. */
export const cordGivens: readonly SheetGiven[] = [
  {
    symbol: 'rc20_#',
    meaning: 'cord #, @: one metre of one conductor at 20 °C',
    unit: 'Ω/m',
    latex: 'r_{20,c#}',
    core: 'cords[].cable',
    source: 'row',
    each: 'cord',
  },
  {
    symbol: 'alphac_#',
    meaning: 'cord #: temperature coefficient at 20 °C',
    unit: '1/K',
    latex: '\\alpha_{c#}',
    core: 'cords[].cable',
    source: 'row',
    each: 'cord',
  },
  { symbol: 'Tc_#', meaning: 'cord #: temperature', unit: '°C', latex: 'T_{c#}', core: 'cords[].temperature', each: 'cord' },
  { symbol: 'Lc_#', meaning: 'cord #: length', unit: 'm', latex: 'L_{c#}', core: 'cords[].length', each: 'cord' },
];

/** What a run has beside its installed cable, or its line. */
export const restSteps: readonly SheetStep[] = [
  {
    symbol: 'Rc_#',
    meaning: 'cord #, one conductor, at its temperature',
    formula: 'rc20_# * (1 + alphac_# * (Tc_# - T_ref)) * Lc_#',
    unit: 'Ω',
    latex: 'R_{c#}',
    source: 'circuit-laws',
    each: 'cord',
  },
  {
    symbol: 'R_0',
    meaning: 'what a run of no length has: connections, one conductor',
    formula: 'n * R_c',
    unit: 'Ω',
    latex: 'R_{0}',
    source: 'circuit-laws',
    when: NO_CORDS,
  },
  {
    symbol: 'R_0',
    meaning: 'what a run of no length has: connections and cords, one conductor',
    formula: 'n * R_c + [Rc_#]',
    unit: 'Ω',
    latex: 'R_{0}',
    source: 'circuit-laws',
    when: CORDS,
  },
  {
    symbol: 'R_0',
    meaning: 'what a run of no length has: joints, out and back',
    formula: '2 * n * R_c',
    unit: 'Ω',
    latex: 'R_{0}',
    source: 'circuit-laws',
    when: TWO_WIRE,
  },
];

/** Pairsets that carry power. */
const pairsetsGiven: SheetGiven = {
  symbol: 'm',
  meaning: 'pairsets that carry power',
  unit: '1',
  latex: 'm',
  core: 'pairs',
  source: 'ieee-802.3-class',
  when: POWERED,
};

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
  {
    symbol: 'R',
    meaning: 'resistance of the loop that power sees: a pairset is one conductor’s worth',
    formula: 'R_w / m',
    unit: 'Ω',
    latex: 'R',
    source: 'three-loops',
    when: POWERED,
  },
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
