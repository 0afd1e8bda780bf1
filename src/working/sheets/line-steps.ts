/** A line of two wires in ohms: the givens and steps that several sheets share. @module */
import { given, givens, step, steps } from '../rows.ts';
import type { Conductor } from '../../conductor/conductor.ts';
import { atMaximum } from '../../conductor/to-maximum.ts';
import type { Figures, ReadingRow, SheetGiven, SheetStep } from '../sheet.ts';
import { connectionReading } from './connection-steps.ts';
import { coefficientSource } from './shared.ts';

export { jointGivens } from './connection-steps.ts';

/** Out and back on two wires. */
export const TWO_WIRE = 'two-wire';
/** Two wires alike, and two that differ. */
const EQUAL = 'equal';
const UNEQUAL = 'unequal';

/** How each conductor is taken, in words. */
export const AT_MOST = 'at the highest resistance its standard allows';

/** The wires of a line. */
export const legGivens: readonly SheetGiven[] = givens([
  ['rl20_#', 'Ω/m', `@: one metre at 20 °C, ${AT_MOST}`, 'conductor, or out and back', { latex: 'r_{20,#}' }],
  ['alphal_#', '1/K', '@: temperature coefficient at 20 °C', 'conductor, or out and back', { latex: '\\alpha_{#}' }],
], { source: 'row', each: 'leg' });

/** One metre of a line at its temperature. */
export const legSteps: readonly SheetStep[] = steps([
  ['rl_#', 'Ω/m', 'rl20_# * (1 + alphal_# * (T - T_ref))', '@: one metre at its temperature', { latex: 'r_{#}', each: 'leg' }],
  ['r', 'Ω/m', '2 * rl_1', 'one metre of run, out and back', { when: EQUAL }],
  ['r', 'Ω/m', 'rl_1 + rl_2', 'one metre of run, out and back', { when: UNEQUAL }],
]);

/** The temperature of a line. */
export const lineTemperatureGiven: SheetGiven = given('T', '°C', 'temperature of the conductors', 'temperature', { when: TWO_WIRE });

/** The length of a line. */
export const lineLengthGiven: SheetGiven = given('L', 'm', 'length of the run, one way', 'length', { when: TWO_WIRE });

/** A line of two wires and its joints. */
export const lineLoopStep: SheetStep = step('R', 'Ω', 'r * L + 2 * n * R_c', 'resistance of the line and its joints, out and back', { when: TWO_WIRE });

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
    const { name, resistancePerMetre, temperatureCoefficient = 0, source } = atMaximum(wire as Conductor);
    const sources = { 'alphal_#': coefficientSource(temperatureCoefficient) };
    return { label: `${way}, ${name}`, source, sources, values: { 'rl20_#': resistancePerMetre, 'alphal_#': temperatureCoefficient } };
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

/** The wires of a line, and whether they are alike. */
export function legReading(wires: Parameters<typeof legRows>[0]): Pick<LoopReading, 'cases' | 'rows'> {
  const leg = legRows(wires);
  return { cases: [leg.length === 1 ? EQUAL : UNEQUAL], rows: { leg } };
}

/** A line of two wires. */
export function lineReading(input: LineInput): LoopReading {
  const { length: L, temperature: T = 20, connections: n = 0, connectionResistance: R_c = 0 } = input;
  const joints = connectionReading(n, R_c);
  const { cases, rows } = legReading(input);
  const { at20, perKelvin } = perMetre(legRows(input));
  return {
    values: { T, T_ref: 20, L, ...joints.values },
    cases: [TWO_WIRE, ...cases, ...joints.cases],
    rows,
    ohms: (at20 + perKelvin * (T - 20)) * L + 2 * n * R_c,
  };
}

