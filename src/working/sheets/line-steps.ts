/** A line of two wires, and a run of pieces, in ohms: the givens and steps that several sheets share. @module */
import type { Segment } from '../../cable/run-resistance.ts';
import type { Conductor } from '../../conductor/conductor.ts';
import { atMaximum } from '../../conductor/to-maximum.ts';
import type { Figures, ReadingRow, SheetGiven, SheetStep } from '../sheet.ts';
import { twentyGiven } from './shared.ts';

/** Out and back on two wires. */
export const TWO_WIRE = 'two-wire';
/** From a port to a powered device. */
export const POWERED = 'powered';
/** Two wires alike, and two that differ. */
const EQUAL = 'equal';
const UNEQUAL = 'unequal';
const PIECES = 'pieces';
const NO_PIECES = 'no pieces';
/** Whether there are cords beside the installed cable. */
export const CORDS = 'cords';
const NO_CORDS = 'no cords';

/** The wires of a line. */
export const legGivens: readonly SheetGiven[] = [
  {
    symbol: 'rl20_#',
    meaning: '@: one metre at 20 °C, at its most',
    unit: 'Ω/m',
    latex: 'r_{20,#}',
    core: 'conductor, or out and back',
    each: 'leg',
  },
  {
    symbol: 'alphal_#',
    meaning: '@: temperature coefficient at 20 °C',
    unit: '1/K',
    latex: '\\alpha_{#}',
    core: 'conductor, or out and back',
    each: 'leg',
  },
];

/** One metre of a line at its temperature. */
export const legSteps: readonly SheetStep[] = [
  {
    symbol: 'rl_#',
    meaning: '@: one metre at its temperature',
    formula: 'rl20_# * (1 + alphal_# * (T - T_ref))',
    unit: 'Ω/m',
    latex: 'r_{#}',
    source: 'circuit-laws',
    each: 'leg',
  },
  {
    symbol: 'r',
    meaning: 'one metre of run, out and back',
    formula: '2 * rl_1',
    unit: 'Ω/m',
    latex: 'r',
    source: 'circuit-laws',
    when: EQUAL,
  },
  {
    symbol: 'r',
    meaning: 'one metre of run, out and back',
    formula: 'rl_1 + rl_2',
    unit: 'Ω/m',
    latex: 'r',
    source: 'circuit-laws',
    when: UNEQUAL,
  },
];

/** The temperature of a line. */
export const lineTemperatureGiven: SheetGiven = {
  symbol: 'T',
  meaning: 'temperature of the conductors',
  unit: '°C',
  latex: 'T',
  core: 'temperature',
  when: TWO_WIRE,
};

/** The length of a line. */
export const lineLengthGiven: SheetGiven = {
  symbol: 'L',
  meaning: 'length of the run, one way',
  unit: 'm',
  latex: 'L',
  core: 'length',
  when: TWO_WIRE,
};

/** Joints of a line, connections of a run. */
export const jointGivens: readonly SheetGiven[] = [
  { symbol: 'n', meaning: 'connections along the run', unit: '1', latex: 'n', core: 'connections' },
  { symbol: 'R_c', meaning: 'one connection, one conductor', unit: 'Ω', latex: 'R_{c}', core: 'connectionResistance' },
];

/** The pieces of a run. */
export const pieceGivens: readonly SheetGiven[] = [
  {
    symbol: 'r20_#',
    meaning: '@: one metre of one conductor at 20 °C',
    unit: 'Ω/m',
    latex: 'r_{20,#}',
    core: 'segments[].cable',
    each: 'piece',
  },
  {
    symbol: 'alpha_#',
    meaning: '@: temperature coefficient at 20 °C',
    unit: '1/K',
    latex: '\\alpha_{#}',
    core: 'segments[].cable',
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
    each: 'cord',
  },
  {
    symbol: 'alphac_#',
    meaning: 'cord #: temperature coefficient at 20 °C',
    unit: '1/K',
    latex: '\\alpha_{c#}',
    core: 'cords[].cable',
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
export const pairsetsGiven: SheetGiven = {
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
  ...jointGivens,
  pairsetsGiven,
];

/** A line of two wires and its joints. */
export const lineLoopStep: SheetStep = {
  symbol: 'R',
  meaning: 'resistance of the line and its joints, out and back',
  formula: 'r * L + 2 * n * R_c',
  unit: 'Ω',
  latex: 'R',
  source: 'circuit-laws',
  when: TWO_WIRE,
};

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

/** What a line or a run is read into: its ohms decide which cases apply, and are no figure of the working. */
export interface LoopReading {
  readonly values: Figures;
  readonly cases: readonly string[];
  readonly rows: Readonly<Record<string, readonly ReadingRow[]>>;
  /** The loop that the load sees. */
  readonly ohms: number;
}

/** A line as people state it. */
export interface LineInput {
  readonly conductor?: Conductor | undefined;
  readonly out?: Conductor | undefined;
  readonly back?: Conductor | undefined;
  readonly length: number;
  readonly temperature?: number | undefined;
  readonly connections?: number | undefined;
  readonly connectionResistance?: number | undefined;
}

/** The wires of a line, each at its most: one row where they are alike. */
export function legRows({ conductor, out, back }: Pick<LineInput, 'conductor' | 'out' | 'back'>): readonly ReadingRow[] {
  const ways =
    conductor === undefined
      ? ([
          ['out', out],
          ['back', back],
        ] as const)
      : ([['one conductor', conductor]] as const);
  return ways.map(([way, wire]) => {
    const { name, resistancePerMetre, temperatureCoefficient = 0 } = atMaximum(wire as Conductor);
    return { label: `${way}, ${name}`, values: { 'rl20_#': resistancePerMetre, 'alphal_#': temperatureCoefficient } };
  });
}

/** One metre of a line at 20 °C, out and back, and how much more each kelvin makes of it. */
export function perMetre(legs: readonly ReadingRow[]): { readonly at20: number; readonly perKelvin: number } {
  let at20 = 0;
  let perKelvin = 0;
  for (const { values } of legs.length === 1 ? [...legs, ...legs] : legs) {
    const { 'rl20_#': r20 = 0, 'alphal_#': alpha = 0 } = values;
    at20 += r20;
    perKelvin += r20 * alpha;
  }
  return { at20, perKelvin };
}

/** A line of two wires. */
export function lineReading(input: LineInput): LoopReading {
  const { length: L, temperature: T = 20, connections: n = 0, connectionResistance: R_c = 0 } = input;
  const leg = legRows(input);
  const { at20, perKelvin } = perMetre(leg);
  return {
    values: { T, T_ref: 20, L, n, R_c },
    cases: [TWO_WIRE, leg.length === 1 ? EQUAL : UNEQUAL],
    rows: { leg },
    ohms: (at20 + perKelvin * (T - 20)) * L + 2 * n * R_c,
  };
}

/** A row for each piece of a run, at its most. */
export function pieceRows(segments: readonly Segment[]): readonly ReadingRow[] {
  return segments.map(({ cable, length, temperature = 20 }) => ({
    label: cable.title,
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

/** A row for each cord, at its most. */
export function cordRows(cords: readonly Segment[]): readonly ReadingRow[] {
  return cords.map(({ cable, length, temperature = 20 }) => ({
    label: cable.title,
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

/** A run of pieces, at their most. */
export function runReading(
  segments: readonly Segment[],
  pairs: 2 | 4,
  connections: number = 0,
  connectionResistance: number = 0.2,
): LoopReading {
  return {
    values: { T_ref: 20, n: connections, R_c: connectionResistance, m: pairs / 2 },
    cases: [POWERED, segments.length === 0 ? NO_PIECES : PIECES, pairs === 4 ? 'two pairsets' : 'one pairset'],
    rows: { piece: pieceRows(segments) },
    ohms: (piecesOhms(segments) + connections * connectionResistance) / (pairs / 2),
  };
}
