import { AMPACITY, COLLAPSE, DEVICE_VOLTAGE, PD_POWER, PD_VOLTAGE, PSE_POWER, VOLTAGE_DROP } from '../../limits/all.ts';
import type { HighestLoad, PoweredRunInput } from '../../plan/index.ts';
import { highestLoad, type LoadKind, type TwoWireHighestLoadInput } from '../../plan/index.ts';
import { isPowered } from '../../plan/open-run.ts';
import { supplyRange } from '../../plan/two-wire-input.ts';
import { InputError } from '../../quantity/input-error.ts';
import { type BookSheet, steps } from '../engine/rows.ts';
import type { Reading, ReadingRow } from '../engine/sheet.ts';
import type { WithCables } from '../engine/with-cables.ts';
import { temperatureAssumption } from './conductors.ts';
import { jointAssumption } from './joints.ts';
import {
  ampacityCaution,
  dropAsVoltageSteps,
  type FixedRow,
  fixedOhmsRows,
  type HeldCase,
  type LowestVoltages,
  limitRow,
  lowestVoltages,
  overvoltageRows,
  portPowerGiven,
  supplyGivens,
  voltageLimitGivens,
} from './limits.ts';
import { AT_MOST, type LineInput, lineReading } from './line.ts';
import type { LoadCase } from './load.ts';
import {
  granted,
  heldReading,
  openGivens,
  openLineKeys,
  openRunKeys,
  openSteps,
  portRows,
  requireOthersMet,
  runAssumptions,
} from './open-run.ts';
import { loopGivens, loopSteps, runReading } from './runs.ts';

type Powered = Omit<PoweredRunInput, 'pdPower'>;
type TwoWire = TwoWireHighestLoadInput;
/** What highestLoad takes. */
export type HighestLoadInput = Powered | TwoWire;
type Run = WithCables<Powered>;
type Line = WithCables<TwoWire>;

type Case =
  | HeldCase
  // All that the class of the device allows.
  | 'power of the class'
  | 'most current'
  // A resistance takes most at the highest voltage, with no line before it.
  | 'most current of a resistance';
type Row = ReadingRow<Case>;

/** The load that one limit allows: a power, a current, a lowest resistance. */
// biome-ignore format: one figure a row
const limitSteps = [...dropAsVoltageSteps, ...steps<Case>([
  ['P_#', 'W', 'P_class', '@: all that the class lets the device draw', { source: 'ieee-802.3-class', when: 'power of the class' }],
  ['P_#', 'W', 'V^2 / (4 * R)', '@: the most that the line delivers to any load', { source: 'collapse', when: 'collapse of a power' }],
  ['P_#', 'W', 'P_lim - (P_lim / V)^2 * R', '@: what the port may source, less the heat in the run', { when: 'power of the port' }],
], { each: 'limit', core: '<limit>' }), ...steps<Case>([
  ['I_#', 'A', '(V - U_#) / R', '@: the current at which the drop leaves just this voltage', { each: 'limit', when: 'voltage, constant power' }],
]), ...steps<Case>([
  ['P_#', 'W', 'U_# * I_#', '@: the power that it brings at this voltage', { when: 'voltage, constant power' }],
  ['I_#', 'A', 'V / R', '@: the most that the line passes, into a short at its end', { when: 'collapse of a current' }],
  ['I_#', 'A', '(V - U_#) / R', '@: the current at which the drop leaves just this voltage', { when: 'voltage, constant current' }],
  ['Z_#', 'Ω', 'U_# / ((V - U_#) / R)', '@: the lowest resistance at which the drop leaves this voltage', { latex: 'R_{L,#}', when: 'voltage, constant resistance' }],
  ['Z_#', 'Ω', 'U_# / ((V_hi - U_#) / R)', '@: the lowest resistance at which the drop leaves this voltage', { latex: 'R_{L,#}', when: 'permitted drop in volts at the highest voltage' }],
  ['P_#', 'W', 'Iz_# * (V - Iz_# * R)', '@: the power that this current brings: it, times what it leaves of the voltage', { when: 'most current, constant power' }],
  ['I_#', 'A', 'Iz_#', '@: all of it', { when: 'most current, constant current' }],
  ['Z_#', 'Ω', 'V_hi / Iz_#', '@: the lowest resistance that takes no more, at the highest voltage and without any line', { latex: 'R_{L,#}', when: 'most current of a resistance' }],
], { each: 'limit', core: '<limit>' })];

const guard = (input: HighestLoadInput): HighestLoad => {
  const answer = highestLoad(input);
  if (isPowered<Powered, TwoWire>(input)) requireOthersMet(answer, input.cabling);
  return answer;
};

export const highestLoadSheet: BookSheet<HighestLoadInput, Case, HighestLoad> = {
  title: 'The highest load that every limit allows',
  needs: ['poeClass|supplyVoltage'],
  keys: [...openRunKeys, 'pseVoltage', ...openLineKeys, 'kind'],
  givens: [
    supplyGivens,
    portPowerGiven,
    ['P_class', 'W', 'power that the class lets the device draw', 'poeClass', { source: 'ieee-802.3-class', when: 'powered' }],
    loopGivens,
    openGivens,
    voltageLimitGivens,
  ],
  // biome-ignore format: one figure a row
  steps: [
    loopSteps,
    openSteps('load'),
    limitSteps,
    ['P', 'W', 'min([P_#,])', 'the highest load, the least of these, set by', { least: ['P_#'], core: 'load.power', when: 'bounded, constant power' }],
    ['I', 'A', 'min([I_#,])', 'the highest load, the least of these, set by', { least: ['I_#'], core: 'load.current', when: 'bounded, constant current' }],
    ['R_L', 'Ω', 'max([Z_#,])', 'the lowest resistance, the greatest of these, set by', { least: ['Z_#'], core: 'load.resistance', when: 'bounded, constant resistance' }],
  ],
  assumptions: [`Direct current, steady state. Every conductor ${AT_MOST}.`],
  validity: 'The stable root of a power lies above half of the supply voltage: a voltage limit under that is left to the collapse.',
  slips: [
    ['one-way-length', { r: 'rl_1' }],
    ['cold-resistance', { T: 'T_ref', 'T_#': 'T_ref' }],
    ['power-at-wrong-end', { 'I_#': '(V - U_#) / R * V / U_#' }, 'constant power'],
    ['percent-of-wrong-voltage', { 'k_#': 'k_# / (1 + k_#)' }],
    ['pair-loop-for-pairset', { R: '2 * R_w' }, 'one pairset'],
    ['pairset-for-four-pair', { R: 'R_w' }, 'two pairsets'],
    ['class-power-for-pd-power', { P_class: 'P_lim' }, 'powered'],
  ],
  guard,
  read: (input, answer) => (isPowered<Run, Line>(input) ? readRun(input, answer) : readLine(input, answer)),
};

const UNBOUNDED = 'nothing bounds the load of this run';

function readRun(input: Run, answer: HighestLoad): Reading<Case> {
  const { installed, cords = [], minimumVoltage, maximumResistance, pseVoltage } = input;
  const { limits } = granted({ ...input, pdPower: 0 });
  const { psePowerLimit, pdPower, pseVoltageMin, pairs } = limits;
  const V = pseVoltage ?? pseVoltageMin;
  const pieces = [...installed, ...cords];
  const { ohms: R, cases, rows } = runReading(pieces, pairs, input);
  const voltages = voltageRows(V, R, lowestVoltages(limits, minimumVoltage), 'constant power');
  const limit: Row[] = [limitRow(PD_POWER, ['power of the class'])];
  if (R > 0) limit.push(limitRow(COLLAPSE, ['collapse of a power']));
  // Beyond half the supply voltage the line gives way before the port must source that much.
  if (R > 0 && 2 * psePowerLimit * R <= V * V) limit.push(limitRow(PSE_POWER, ['power of the port']));
  const fixed = [...portRows(limits, undefined, pseVoltage, pieces), ...fixedOhmsRows(maximumResistance), ...voltages.fixed];
  return heldReading(answer, UNBOUNDED, {
    values: { V, P_lim: psePowerLimit, P_class: pdPower, m: pairs / 2 },
    cases: [...cases, 'constant power'],
    rows,
    fixed,
    limit: [...limit, ...voltages.limit],
    assumptions: runAssumptions(input, limits),
  });
}

const KINDS: Readonly<Record<LoadKind, LoadCase>> = {
  power: 'constant power',
  current: 'constant current',
  resistance: 'constant resistance',
};

function readLine(input: Line, answer: HighestLoad): Reading<Case> {
  const { minimumVoltage, maximumVoltage, maximumResistance, kind: asked = 'power' } = input;
  const kind = KINDS[asked];
  const { low: V, high } = supplyRange(input.supplyVoltage);
  const { ohms: R, cases, rows } = lineReading(input as LineInput);
  const voltages = voltageRows(V, R, [[DEVICE_VOLTAGE, minimumVoltage]], kind);
  const fixed = [...overvoltageRows(high, maximumVoltage), ...fixedOhmsRows(maximumResistance), ...voltages.fixed];
  const limit: Row[] = [];
  if (R > 0 && kind === 'constant power') limit.push(limitRow(COLLAPSE, ['collapse of a power']));
  if (R > 0 && kind === 'constant current') limit.push(limitRow(COLLAPSE, ['collapse of a current']));
  limit.push(...voltages.limit, ...dropRows(input, V, high, R, kind), ...ampacityRows(input.ampacity, V, R, kind));
  return heldReading(answer, UNBOUNDED, {
    values: { V, V_hi: high },
    cases: [...cases, kind],
    rows,
    fixed,
    limit,
    assumptions: [temperatureAssumption(input.temperature), jointAssumption(input)],
    cautions: [ampacityCaution(input)],
  });
}

/** A permitted drop. More than half of its supply voltage no power loses along the line: that is left to the collapse. */
function dropRows({ permittedDrop }: TwoWireHighestLoadInput, V: number, high: number, R: number, kind: LoadCase): Row[] {
  if (permittedDrop === undefined || R === 0) return [];
  const isPower = kind === 'constant power';
  if (typeof permittedDrop === 'number') {
    return isPower && permittedDrop > 0.5 ? [] : [limitRow(VOLTAGE_DROP, ['permitted drop', 'voltage'], { 'k_#': permittedDrop })];
  }
  const { volts } = permittedDrop;
  if (kind === 'constant resistance') {
    return volts < high ? [limitRow(VOLTAGE_DROP, ['permitted drop in volts at the highest voltage'], { 'Vd_#': volts })] : [];
  }
  return volts < V && (!isPower || 2 * volts <= V)
    ? [limitRow(VOLTAGE_DROP, ['permitted drop in volts', 'voltage'], { 'Vd_#': volts })]
    : [];
}

/** A most current. At its collapse a line passes half the current of a short: a power never draws more than that. */
function ampacityRows(most: number | undefined, V: number, R: number, kind: LoadCase): Row[] {
  if (most === undefined || (kind === 'constant power' && 2 * most * R > V)) return [];
  const held = kind === 'constant resistance' ? 'most current of a resistance' : 'most current';
  return [limitRow(AMPACITY, ['most current of a power', held], { 'Iz_#': most })];
}

/** Lowest voltages at the device: one above that of the supply is missed even by a load of nothing. */
function voltageRows(V: number, R: number, lowest: LowestVoltages, kind: LoadCase): { readonly fixed: FixedRow[]; readonly limit: Row[] } {
  const fixed: FixedRow[] = [];
  const limit: Row[] = [];
  for (const [name, U] of lowest) {
    if (U === undefined) continue;
    // With nothing to lose no load is left but none at all, which is where the core's search ends and not an answer of its own.
    if (U === V && R > 0) {
      const parameter = name === PD_VOLTAGE ? 'pseVoltage' : 'minimumVoltage';
      throw new InputError('conflict', parameter, `more at the supply than the device needs, ${U} V: there would be nothing to lose`, U);
    }
    if (U > V) fixed.push(limitRow(name, ['V'], { 'v_#': U, 'w_#': V }));
    else if (R > 0 && (kind !== 'constant power' || 2 * U >= V))
      limit.push(limitRow(name, ['voltage at the load', 'voltage'], { 'U_#': U }));
  }
  return { fixed, limit };
}
