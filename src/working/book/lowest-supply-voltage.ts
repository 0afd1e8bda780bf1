/** How low: the voltage that each limit asks for, and the highest of them. @module */

import type { Load } from '../../circuit/index.ts';
import { AMPACITY, COLLAPSE, DEVICE_VOLTAGE, PSE_POWER, VOLTAGE_DROP } from '../../limits/all.ts';
import type { Limit, LimitName } from '../../limits/index.ts';
import type { LowestSupplyVoltage } from '../../plan/index.ts';
import { type LowestSupplyVoltageInput, lowestSupplyVoltage, type PoweredRunInput } from '../../plan/index.ts';
import { LEAST_SUPPLY, MOST_TWO_WIRE } from '../../plan/lowest-supply-voltage.ts';
import { isPowered } from '../../plan/open-run.ts';
import { InputError } from '../../quantity/input-error.ts';
import { type BookSheet, steps } from '../engine/rows.ts';
import type { Figures, Reading, ReadingRow } from '../engine/sheet.ts';
import type { WithCables } from '../engine/with-cables.ts';
import { temperatureAssumption } from './conductors.ts';
import { jointAssumption } from './joints.ts';
import {
  ampacityAsVoltageSteps,
  ampacityCaution,
  fixedOhmsRows,
  type HeldCase,
  limitRow,
  lowestVoltages,
  portPowerGiven,
  voltageLimitGivens,
} from './limits.ts';
import { AT_MOST, lineReading } from './line.ts';
import { loadCase, loadGivens, loadKeys } from './load.ts';
import {
  granted,
  heldReading,
  openGivens,
  openLineKeys,
  openRunKeys,
  openSteps,
  portRows,
  requireLoadResistance,
  requireOthersMet,
  runAssumptions,
} from './open-run.ts';
import { loopGivens, loopSteps, runReading } from './runs.ts';

type Powered = Omit<PoweredRunInput, 'pseVoltage'>;
type TwoWire = Exclude<LowestSupplyVoltageInput, Powered>;
type Run = WithCables<Powered>;
type Line = WithCables<TwoWire>;

type Case = HeldCase | 'drop';

/** A voltage that one limit asks for. */
// biome-ignore format: one figure a row
const limitSteps = [...ampacityAsVoltageSteps, ...steps<Case>([
  ['V_#', 'V', '2 * sqrt(P * R)', '@: least voltage, under which no current carries the power', { source: 'collapse', when: 'collapse of a power' }],
  ['V_#', 'V', 'I * R', '@: least voltage, under which even a short takes less', { when: 'collapse of a current' }],
  ['V_#', 'V', 'P_lim * sqrt(R / (P_lim - P))', '@: least voltage, at which the heat in the run is all that the port may source more', { when: 'power of the port' }],
  ['V_#', 'V', 'U_# + P / U_# * R', '@: least voltage: that of the device, and the drop of its current', { when: 'voltage, constant power' }],
  ['V_#', 'V', 'U_# + I * R', '@: least voltage: that of the device, and the drop of its current', { when: 'voltage, constant current' }],
  ['V_#', 'V', 'U_# + U_# / R_L * R', '@: least voltage: that of the device, and the drop of its current', { when: 'voltage, constant resistance' }],
  ['V_#', 'V', 'sqrt(P * R / (k_# * (1 - k_#)))', '@: least voltage, from k V = (P / ((1 - k) V)) R', { when: 'drop, constant power' }],
  ['V_#', 'V', 'I * R / k_#', '@: least voltage, from k V = I R', { when: 'drop, constant current' }],
  ['V_#', 'V', 'Vd_# + P / (Vd_# / R)', '@: least voltage: the drop, and what the power has at the current that makes it', { when: 'permitted drop in volts' }],
], { each: 'limit', core: '<limit>' })];

const guard = (input: LowestSupplyVoltageInput): LowestSupplyVoltage => {
  const answer = lowestSupplyVoltage(input);
  if (isPowered<Powered, TwoWire>(input)) requireOthersMet(answer, input.cabling);
  else {
    requireLoadResistance(input.load);
    requireNoMore(input);
  }
  return answer;
};

/** Refuses what a resistance meets only up to some voltage: it takes and drops the more the higher that is. */
function requireNoMore({ load, permittedDrop, ampacity }: TwoWire): void {
  if (load.resistance === undefined) return;
  if (typeof permittedDrop === 'object') {
    const expected = 'a fraction of the supply voltage: a resistance drops more volts of a higher one';
    throw new InputError('conflict', 'permittedDrop', expected, permittedDrop);
  }
  if (ampacity !== undefined) {
    throw new InputError('conflict', 'ampacity', 'no ampacity with a resistance, which takes more of a higher voltage', ampacity);
  }
}

export const lowestSupplyVoltageSheet: BookSheet<LowestSupplyVoltageInput, Case, LowestSupplyVoltage> = {
  title: 'The lowest supply voltage at which a run holds',
  needs: ['poeClass|conductor|out'],
  keys: [...openRunKeys, 'pdPower', ...openLineKeys, ...loadKeys],
  givens: [
    loadGivens,
    portPowerGiven,
    loopGivens,
    openGivens,
    voltageLimitGivens,
    ['V_most', 'V', 'the highest voltage that there may be', 'the type of the port, or maximumVoltage', { ifUsed: true }],
  ],
  // biome-ignore format: one figure a row
  steps: [
    loopSteps,
    openSteps('supply voltage'),
    limitSteps,
    ['V', 'V', 'max([V_#,])', 'the lowest supply voltage, the highest of these, set by', { least: ['V_#'], core: 'supplyVoltage', when: 'bounded' }],
    ['V_left', 'V', 'V_most - V', 'what is left up to the highest voltage that there may be', { when: 'bounded', no: {
      says: 'no supply voltage is enough: the run would need more than there may be', steps: [], isQuiet: true } }],
  ],
  assumptions: [`Direct current, steady state. Every conductor ${AT_MOST}; the device at the load stated.`],
  validity: 'Up to 57 V at a port, and to 1000 V on two wires or to the most that the device bears.',
  cautions: ['Above 60 V DC a circuit is outside extra-low voltage: for a licensed practitioner and the local code.'],
  slips: [
    ['one-way-length', { r: 'rl_1' }],
    ['cold-resistance', { T: 'T_ref', 'T_#': 'T_ref' }],
    ['percent-of-wrong-voltage', { 'k_#': 'k_# / (1 + k_#)' }],
    ['pair-loop-for-pairset', { R: '2 * R_w' }, 'one pairset'],
    ['pairset-for-four-pair', { R: 'R_w' }, 'two pairsets'],
    ['class-power-for-pd-power', { P: 'P_lim' }, 'powered'],
  ],
  guard,
  read: (input, answer) => (isPowered<Run, Line>(input) ? readRun(input, answer) : readLine(input, answer)),
};

type Row = ReadingRow<Case>;

/** A limit that asks for so many volts, which decide whether it has a row. */
function row(name: Limit<LimitName>, volts: number, cases: readonly Case[], values?: Figures): Row[] {
  return volts > LEAST_SUPPLY ? [limitRow(name, cases, values)] : [];
}

/** A lowest voltage at the device; the stable root of a power lies above half of the supply voltage: under that the collapse speaks. */
function lowestRow(
  name: Limit<LimitName>,
  U: number | undefined,
  { power }: Load,
  R: number,
  what: Case = 'voltage at the load',
  values: Figures = { 'U_#': U ?? 0 },
): Row[] {
  return U === undefined || (power !== undefined && U * U < power * R) ? [] : row(name, U, [what, 'voltage'], values);
}

function readRun(input: Run, answer: LowestSupplyVoltage): Reading<Case> {
  const { installed, cords = [], minimumVoltage, maximumResistance } = input;
  const { limits, P } = granted(input);
  const { psePowerLimit: W, pairs } = limits;
  const pieces = [...installed, ...cords];
  const { ohms: R, cases, rows } = runReading(pieces, pairs, input);
  const limit = [
    ...row(COLLAPSE, 2 * Math.sqrt(P * R), ['collapse of a power']),
    // At its collapse a line takes twice the power of its load: a limit above that never bites.
    ...(P < W && W < 2 * P ? row(PSE_POWER, W * Math.sqrt(R / (W - P)), ['power of the port']) : []),
    ...lowestVoltages(limits, minimumVoltage).flatMap(([name, U]) => lowestRow(name, U, { power: P }, R)),
  ];
  const fixed = [...portRows(limits, P, undefined, pieces), ...fixedOhmsRows(maximumResistance)];
  return heldReading(answer, UNBOUNDED, {
    values: { P, P_lim: W, m: pairs / 2, V_most: limits.pseVoltageMax },
    cases: [...cases, 'constant power'],
    rows,
    fixed,
    limit,
    assumptions: runAssumptions(input, limits),
  });
}

const UNBOUNDED = 'any supply voltage will do: nothing bounds it';

function readLine(input: Line, answer: LowestSupplyVoltage): Reading<Case> {
  const { load, minimumVoltage, maximumVoltage = MOST_TWO_WIRE, maximumResistance, permittedDrop, ampacity } = input;
  const { power: P, current: I } = load;
  const { ohms: R, cases, rows } = lineReading(input);
  const fixed = fixedOhmsRows(maximumResistance);
  const limit: Row[] = [];
  if (P !== undefined) limit.push(...row(COLLAPSE, 2 * Math.sqrt(P * R), ['collapse of a power']));
  if (I !== undefined) limit.push(...row(COLLAPSE, I * R, ['collapse of a current']));
  limit.push(...lowestRow(DEVICE_VOLTAGE, minimumVoltage, load, R));
  if (typeof permittedDrop === 'number') {
    const k = permittedDrop;
    // More than half of its supply voltage no power loses along the line: that is left to the collapse.
    if (P !== undefined && k <= 0.5) {
      limit.push(...row(VOLTAGE_DROP, Math.sqrt((P * R) / (k * (1 - k))), ['permitted drop', 'drop'], { 'k_#': k }));
    }
    if (I !== undefined) limit.push(...row(VOLTAGE_DROP, (I * R) / k, ['permitted drop', 'drop'], { 'k_#': k }));
    if (load.resistance !== undefined) fixed.push(limitRow(VOLTAGE_DROP, ['share of a resistance'], { 'w_#': k }));
  } else if (permittedDrop !== undefined) {
    const { volts: d } = permittedDrop;
    // A power loses as much only where it has come near to the collapse; a current loses the same at any voltage.
    if (P !== undefined && P * R >= d * d) limit.push(...row(VOLTAGE_DROP, d, ['permitted drop in volts'], { 'Vd_#': d }));
    if (I !== undefined) fixed.push(limitRow(VOLTAGE_DROP, ['drop of a current'], { 'w_#': d }));
  }
  if (ampacity !== undefined) {
    if (P !== undefined && P > 0)
      limit.push(...lowestRow(AMPACITY, P / ampacity, load, R, 'most current of a power', { 'Iz_#': ampacity }));
    if (I !== undefined) fixed.push(limitRow(AMPACITY, ['A'], { 'v_#': I, 'w_#': ampacity }));
  }
  return heldReading(answer, UNBOUNDED, {
    values: { V_most: Math.min(maximumVoltage, MOST_TWO_WIRE) },
    cases: [...cases, loadCase(load)],
    rows,
    fixed,
    limit,
    assumptions: [temperatureAssumption(input.temperature), jointAssumption(input)],
    cautions: [ampacityCaution(input)],
  });
}
