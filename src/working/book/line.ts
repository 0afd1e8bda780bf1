/** A line of two wires: what sheets share, and three sheets. @module */

import { type FarEndFaultInput, farEndFaultCurrent, type VoltageDropInput, voltageDrop } from '../../circuit/index.ts';
import type { Conductor } from '../../conductor/index.ts';
import { atMaximum } from '../../conductor/to-maximum.ts';
import { type LeastPermittedDropInput, leastPermittedDrop } from '../../plan/index.ts';
import { supplyRange } from '../../plan/two-wire-input.ts';
import { type BookSheet, given, givens, step, steps } from '../engine/rows.ts';
import type { Givens, ReadingRow, ReadingRows, SheetGiven, SheetStep, Some, Steps } from '../engine/sheet.ts';
import { coefficientSource, TWENTY, temperatureAssumption, twentyGiven } from './conductors.ts';
import { connectionGivens, type Joined, type JointCase, jointAssumption, jointCases } from './joints.ts';
import {
  CANNOT,
  currentSteps,
  dropStep,
  type LoadCase,
  loadCase,
  loadGivens,
  loadKeys,
  pointSlips,
  powerSteps,
  supplyGiven,
  voltageSteps,
} from './load.ts';

/** How each conductor is taken, in words. */
export const AT_MOST = 'at the highest resistance its standard allows';

/** Keys of the command for a two-wire circuit without its length. */
export const circuitKeys: readonly string[] = ['supplyVoltage', 'conductor', 'out', 'back', 'temperature', ...loadKeys];

/** Out and back on two wires, alike or not. */
export type LineCase = 'two-wire' | 'equal' | 'unequal' | JointCase;

/** The wires of a line. */
// biome-ignore format: one figure a row
export const legGivens: Givens<never> = givens([
  ['rl20_#', 'Ω/m', `@: one metre at 20 °C, ${AT_MOST}`, 'conductor, or out and back', { latex: 'r_{20,#}' }],
  ['alphal_#', '1/K', '@: temperature coefficient at 20 °C', 'conductor, or out and back', { latex: '\\alpha_{#}' }],
], { source: 'row', each: 'leg' });

/** One metre of a line at its temperature. */
// biome-ignore format: one figure a row
export const legSteps: Steps<LineCase> = steps([
  ['rl_#', 'Ω/m', 'rl20_# * (1 + alphal_# * (T - T_ref))', '@: one metre at its temperature', { latex: 'r_{#}', each: 'leg' }],
  ['r', 'Ω/m', '2 * rl_1', 'one metre of run, out and back', { when: 'equal' }],
  ['r', 'Ω/m', 'rl_1 + rl_2', 'one metre of run, out and back', { when: 'unequal' }],
]);

/** The temperature and the length of a line. */
// biome-ignore format: one figure a row
export const lineTemperatureGiven: SheetGiven<LineCase> = given('T', '°C', 'temperature of the conductors', 'temperature', { when: 'two-wire', value: 20 });
export const lineLengthGiven: SheetGiven<LineCase> = given('L', 'm', 'length of the run, one way', 'length', { when: 'two-wire' });

/** A line of two wires and its joints. */
export const lineLoopStep: SheetStep<LineCase> = step(
  'R',
  'Ω',
  'r * L + 2 * n * R_c',
  'resistance of the line and its joints, out and back',
  { when: 'two-wire' },
);

/** A line or a run as it is read: its ohms decide which cases apply, and are no figure of the working. */
export interface LoopReading<Case extends string> {
  readonly cases: Some<Case>;
  readonly rows: ReadingRows<never>;
  /** The loop that the load sees. */
  readonly ohms: number;
}

/** The wires of a line as people state them: one for both ways, or two. */
interface Wires {
  readonly conductor?: Conductor | undefined;
  readonly out?: Conductor | undefined;
  readonly back?: Conductor | undefined;
}

/** A line as people state it. */
export interface LineInput extends Wires, Joined {
  readonly length: number;
  readonly temperature?: number | undefined;
}

/** The ways of a line, by what they are called: one where they are alike. */
function waysOf({ conductor, out, back }: Wires): readonly (readonly [way: string, wire: Conductor])[] {
  const ways = [
    ['one conductor', conductor],
    ['out', out],
    ['back', back],
  ] as const;
  return ways.flatMap(([way, wire]) => (wire === undefined ? [] : [[way, wire] as const]));
}

/** The wires of a line, each at its most. */
export function legRows(wires: Wires): readonly ReadingRow<never>[] {
  return waysOf(wires).map(([way, wire]) => {
    const { name, resistancePerMetre, temperatureCoefficient = 0, source } = atMaximum(wire);
    const values = { 'rl20_#': resistancePerMetre, 'alphal_#': temperatureCoefficient };
    return { label: `${way}, ${name}`, source, sources: { 'alphal_#': coefficientSource(temperatureCoefficient) }, values };
  });
}

/** One metre of a line at 20 °C, out and back, and how much more each kelvin makes of it. */
export function perMetre(wires: Wires): { readonly at20: number; readonly perKelvin: number } {
  const legs = legRows(wires);
  let at20 = 0;
  let perKelvin = 0;
  for (const { values } of legs.length === 1 ? [...legs, ...legs] : legs) {
    const { 'rl20_#': r20 = 0, 'alphal_#': alpha = 0 } = values ?? {};
    at20 += r20;
    perKelvin += r20 * alpha;
  }
  return { at20, perKelvin };
}

/** A line of two wires. */
export function lineReading(input: LineInput): LoopReading<LineCase> {
  const { length, temperature = TWENTY, connections = 0, connectionResistance = 0, conductor } = input;
  const { at20, perKelvin } = perMetre(input);
  return {
    cases: ['two-wire', conductor === undefined ? 'unequal' : 'equal', ...jointCases(input)],
    rows: { leg: legRows(input) },
    ohms: (at20 + perKelvin * (temperature - 20)) * length + 2 * connections * connectionResistance,
  };
}

type DropCase = LoadCase | 'warm' | 'warm leg' | 'cold leg' | 'equal' | 'unequal';

export const voltageDropSheet: BookSheet<VoltageDropInput, DropCase> = {
  title: 'Voltage drop of a two-wire circuit',
  needs: ['supplyVoltage', 'conductor|out', 'length', 'power|current|loadResistance'],
  keys: circuitKeys,
  // biome-ignore format: one figure a row
  givens: [
    supplyGiven,
    loadGivens,
    ['L', 'm', 'length of the run, one way', 'length'],
    ['r20_#', 'Ω/m', '@: one metre at 20 °C', 'conductor, or out and back', { source: 'row', each: 'leg' }],
    ['alpha_#', '1/K', '@: temperature coefficient at 20 °C', 'conductor, or out and back', { source: 'row', each: 'leg', when: 'warm leg' }],
    ['T', '°C', 'temperature of the conductors', 'temperature', { when: 'warm', value: 20 }],
    { ...twentyGiven, when: 'warm' },
  ],
  // A current that the line does not pass must be seen before the drop that it would make.
  // biome-ignore format: one figure a row
  steps: [
    ['r_#', 'Ω/m', 'r20_# * (1 + alpha_# * (T - T_ref))', '@: one metre at its temperature', { each: 'leg', when: 'warm leg' }],
    ['r_#', 'Ω/m', 'r20_#', '@: one metre, at 20 °C', { each: 'leg', when: 'cold leg' }],
    ['R', 'Ω', '2 * r_1 * L', 'loop resistance: out and back, two conductors in series', { when: 'equal' }],
    ['R', 'Ω', '(r_1 + r_2) * L', 'loop resistance: out and back, in series', { when: 'unequal' }],
    currentSteps,
    voltageSteps,
    powerSteps,
    dropStep,
  ],
  assumptions: [
    'Direct current, steady state. Joints are not included.',
    'The conductors are taken as they are stated: nominal ones give a nominal drop.',
  ],
  validity: 'A two-wire circuit, its conductors at one temperature.',
  cautions: [
    'A drop within limits says nothing of whether the conductor and its protective device suit each other: the local code and a licensed practitioner come first.',
  ],
  slips: [...pointSlips, ['one-way-length', { R: 'r_1 * L' }], ['cold-resistance', { T: 'T_ref' }]],
  guard: voltageDrop,
  read: (input) => {
    const legs = waysOf(input);
    return {
      cases: [
        loadCase(input.load),
        input.conductor === undefined ? 'unequal' : 'equal',
        legs.some(([, { temperatureCoefficient }]) => temperatureCoefficient !== undefined) && 'warm',
      ],
      rows: {
        leg: legs.map(([way, { name, resistancePerMetre, temperatureCoefficient: alpha, source }]) => ({
          label: `${way}, ${name}`,
          values: { 'r20_#': resistancePerMetre, ...(alpha === undefined ? {} : { 'alpha_#': alpha }) },
          cases: [alpha === undefined ? 'cold leg' : 'warm leg'],
          source,
          sources: { 'alpha_#': coefficientSource(alpha) },
        })),
      },
      assumptions: [temperatureAssumption(input.temperature)],
    };
  },
};

type FaultCase = LineCase | 'some length' | 'no length';

export const farEndFaultCurrentSheet: BookSheet<FarEndFaultInput, FaultCase> = {
  title: 'Current into a short at the far end',
  needs: ['supplyVoltage', 'conductor|out', 'length', 'tripCurrent'],
  keys: ['back', 'temperature', 'sourceResistance'],
  // biome-ignore format: one figure a row
  givens: [
    ['V', 'V', 'voltage of the supply, the lowest it may have', 'supplyVoltage'],
    ['R_S', 'Ω', 'resistance inside the supply', 'sourceResistance', { value: 0 }],
    legGivens,
    lineTemperatureGiven,
    twentyGiven,
    lineLengthGiven,
    ['I_trip', 'A', 'current that surely opens the protective device', 'tripCurrent'],
  ],
  // biome-ignore format: one figure a row
  steps: [
    legSteps,
    ['R', 'Ω', 'r * L + R_S', 'supply and line, out and back, at their highest resistance', { core: 'resistance' }],
    ['L_max', 'm', '(V / I_trip - R_S) / r', 'longest line whose far end still opens the device', { core: 'longestProtected', when: 'some length' }],
    ['I_0', 'A', 'V / R_S', 'current into a short at the supply itself: even that does not open the device', { when: 'no length' }],
    ['L_max', 'm', '0', 'longest line whose far end still opens the device: none', { core: 'longestProtected', when: 'no length' }],
    ['I_F', 'A', 'V / R', 'least current into a short at the far end', { core: 'faultCurrent' }],
    ['k', '1', '(I_F - I_trip) / I_trip', 'how far the current lies above the trip current, as a fraction of it', { core: 'check.marginFraction' }],
    ['I_more', 'A', 'I_F - I_trip', 'margin over the trip current; under 0 the short does not open the device', { core: 'check.margin' }],
  ],
  assumptions: ['A bolted short. The least current counts: the lowest voltage, the thinnest and hottest conductors.'],
  validity: 'Steady direct current by Ohm’s law. How fast a device opens at that current is on its own curve.',
  cautions: [
    'A fault that does not open its protective device can set a line on fire. The device, its curve and its place are for a licensed practitioner and the local code.',
  ],
  slips: [
    ['one-way-length', { r: 'rl_1' }],
    ['cold-resistance', { T: 'T_ref' }],
    ['source-resistance-left-out', { R_S: '0 * R_S' }],
  ],
  guard: farEndFaultCurrent,
  read: (input) => {
    const { supplyVoltage, tripCurrent, sourceResistance, temperature } = input;
    const { cases, rows } = lineReading(input);
    return {
      cases: [...cases, supplyVoltage / tripCurrent > (sourceResistance ?? 0) ? 'some length' : 'no length'],
      rows,
      assumptions: [
        temperatureAssumption(temperature),
        sourceResistance === undefined && 'The supply itself has no resistance: none was stated.',
      ],
    };
  },
};

type PermittedCase = LineCase | LoadCase;

export const leastPermittedDropSheet: BookSheet<LeastPermittedDropInput, PermittedCase> = {
  title: 'The least drop that must be permitted',
  needs: ['supplyVoltage', 'conductor|out', 'length', 'power|current|loadResistance'],
  keys: [...circuitKeys, 'connections', 'connectionResistance'],
  givens: [
    ['V_#', 'V', '@: voltage of the supply', 'supplyVoltage', { each: 'supply' }],
    loadGivens,
    legGivens,
    lineTemperatureGiven,
    twentyGiven,
    lineLengthGiven,
    connectionGivens,
  ],
  // biome-ignore format: one figure a row
  steps: [
    legSteps,
    lineLoopStep,
    steps([
    ['D_#', 'V²', 'V_#^2 - 4 * P * R', '@: discriminant: what stands under the root of V I = P + I² R', { source: 'constant-power', when: 'constant power', no: {
      says: CANNOT, steps: [step('P_max', 'W', 'V_1^2 / (4 * R)', 'the most that this line delivers to any load', { source: 'collapse' })],
    } }],
    ['I_#', 'A', '2 * P / (V_# + sqrt(D_#))', '@: current: the smaller root, (V - sqrt D) / (2 R), written so that no two nearly equal figures are subtracted', { source: 'constant-power', when: 'constant power' }],
    ['I_#', 'A', 'V_# / (R + R_L)', '@: current through line and load in series', { when: 'constant resistance' }],
    ['U_#', 'V', 'V_# - I * R', '@: voltage that is left for the load', { when: 'constant current', no: {
      says: CANNOT, steps: [step('I_max', 'A', 'V_1 / R', 'the most that this line passes, into a short at its end')],
    } }],
    ['W_#', 'V', 'I_# * R', '@: voltage lost along the line', { latex: 'V_{\\mathrm{drop},#}', when: 'constant power' }],
    ['W_#', 'V', 'I_# * R', '@: voltage lost along the line', { latex: 'V_{\\mathrm{drop},#}', when: 'constant resistance' }],
    ['W_#', 'V', 'I * R', '@: voltage lost along the line', { latex: 'V_{\\mathrm{drop},#}', when: 'constant current' }],
    ['k_#', '1', 'W_# / V_#', '@: the drop as a fraction of the supply voltage'],
  ], { each: 'supply' }),
    ['k', '1', 'max([k_#,])', 'the least fraction that must be permitted, the larger of these; it is the one', { least: ['k_#'], core: 'fraction' }],
    ['V_most', 'V', 'max([W_#,])', 'the least drop in volts that must be permitted, the larger; it is the one', { least: ['W_#'], core: 'volts' }],
  ],
  assumptions: [`Direct current, steady state. Every conductor ${AT_MOST}; the device at the load stated.`],
  validity:
    'A power drops most at the lowest supply voltage, a resistance most volts at the highest and the same fraction at both, a current the same volts at both.',
  slips: [
    ['one-way-length', { r: 'rl_1' }],
    ['cold-resistance', { T: 'T_ref' }],
    ['power-at-wrong-end', { 'I_#': 'P / V_#' }, 'constant power'],
    ['unstable-root', { 'I_#': '2 * P / (V_# - sqrt(D_#))' }, 'constant power'],
    ['voltage-for-drop', { V_most: 'V_1 - W_1' }],
    ['percent-of-wrong-voltage', { 'k_#': 'W_# / (V_# - W_#)' }],
  ],
  guard: leastPermittedDrop,
  read: (input) => {
    const { low, high } = supplyRange(input.supplyVoltage);
    const { cases, rows } = lineReading(input);
    const ends = low === high ? { 'at the supply voltage': low } : { 'at the lowest': low, 'at the highest': high };
    return {
      cases: [...cases, loadCase(input.load)],
      rows: { ...rows, supply: Object.entries(ends).map(([label, V]) => ({ label, values: { 'V_#': V } })) },
      assumptions: [temperatureAssumption(input.temperature), jointAssumption(input)],
    };
  },
};
