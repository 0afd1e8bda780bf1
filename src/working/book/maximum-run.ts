/** How far: every limit as a resistance, then as a length, and the shortest of them. @module */

import type { Segment } from '../../cable/index.ts';
import { legsOf } from '../../circuit/voltage-drop.ts';
import { MATERIAL, PD_POWER, PSE_VOLTAGE } from '../../limits/all.ts';
import { CABLING_RULES } from '../../plan/cabling-rules.ts';
import {
  type MaximumPoweredRunInput,
  type MaximumRunInput,
  maximumRun,
  type TwoWireCircuit,
  type UnequalTwoWireCircuit,
} from '../../plan/index.ts';
import { copperFraction } from '../../plan/material-check.ts';
import { isPowered } from '../../plan/open-run.ts';
import { supplyRange } from '../../plan/two-wire-input.ts';
import { type BookSheet, givens, steps } from '../engine/rows.ts';
import type { Reading } from '../engine/sheet.ts';
import type { WithCables } from '../engine/with-cables.ts';
import {
  type CablingCase,
  cablingRows,
  categoryGivens,
  categorySteps,
  cordLossGivens,
  lengthGivens,
  lengthSteps,
  lossGivens,
  lossSteps,
} from './cabling.ts';
import { coefficientSource, temperatureAssumption, twentyGiven } from './conductors.ts';
import { connectionAssumption, connectionCases, connectionGivens, jointAssumption, jointCases } from './joints.ts';
import {
  ampacityCaution,
  type FixedRow,
  fixedGivens,
  fixedSteps,
  type HeldCase,
  limitRow,
  lineLimitRows,
  mostResistanceSteps,
  portPowerGiven,
  resistanceLimitGivens,
  supplyGivens,
} from './limits.ts';
import { AT_MOST, circuitKeys, legGivens, legRows, legSteps } from './line.ts';
import { loadCase, loadGivens } from './load.ts';
import { poweredRun } from './open-run.ts';
import { poweredKeys, typeAssumption } from './powered.ts';
import { cordGivens, cordsCase, pieceRows, restSteps } from './runs.ts';

type Run = WithCables<MaximumPoweredRunInput>;
type Line = TwoWireCircuit | UnequalTwoWireCircuit;
type Case = CablingCase | HeldCase | 'light draw' | 'usual conductors stated';

const UNBOUNDED = 'nothing bounds the length of this run';
const FIXED = 'no length meets the limit on @: the length plays no part in it';
const MISSED = 'no length meets the limit on @: even a run of none misses it';

export const maximumRunSheet: BookSheet<MaximumRunInput, Case> = {
  title: 'The longest run that every limit allows',
  needs: ['poeClass|supplyVoltage'],
  keys: [
    ...poweredKeys,
    'cable',
    'cords',
    ...circuitKeys,
    'connections',
    'connectionResistance',
    'minimumVoltage',
    'maximumVoltage',
    'permittedDrop',
    'ampacity',
    'maximumResistance',
    'loop',
    'cabling',
  ],
  // biome-ignore format: one figure a row
  givens: [
    supplyGivens,
    loadGivens,
    portPowerGiven,
    ['r20', 'Ω/m', `@: one metre of one conductor at 20 °C, ${AT_MOST}`, 'cable', { source: 'row', each: 'own' }],
    ['alpha', '1/K', 'temperature coefficient at 20 °C', 'cable', { source: 'row', when: 'powered' }],
    legGivens,
    ['T', '°C', 'temperature of the conductors', 'temperature', { value: 20 }],
    twentyGiven,
    connectionGivens,
    lossGivens,
    cordGivens,
    cordLossGivens,
    fixedGivens,
    givens([
    ['v_#', 'm', '@: value here', 'cords', { when: 'm' }],
    ['v_#', '°C', '@: value here', 'temperature', { when: '°C' }],
    ['w_#', 'm', '@: limit', 'cabling', { source: 'row', when: 'm' }],
    ['w_#', '°C', '@: limit', 'cabling', { source: 'row', when: '°C' }],
  ], { each: 'fixed' }),
    categoryGivens,
    resistanceLimitGivens,
    lengthGivens,
  ],
  // biome-ignore format: one figure a row
  steps: [
    fixedSteps(['W', 'm', '1', '°C', 'V', 'A'], FIXED),
    categorySteps(FIXED),
    ['r', 'Ω/m', 'r20 * (1 + alpha * (T - T_ref))', 'one metre of one conductor at its temperature', { when: 'powered' }],
    legSteps,
    restSteps,
    ['R_20', 'Ω', 'n * R_c + [rc20_# * Lc_#]', 'the same at 20 °C', { latex: 'R_{0,20}', when: 'cords' }],
    ['R_20', 'Ω', 'R_0', 'the same at 20 °C', { latex: 'R_{0,20}', when: 'no cords' }],
    lossSteps,
    mostResistanceSteps(MISSED),
    // From the most resistance to a length, under the conditions under which it is judged.
    steps([
    ['L_#', 'm', '(X_# / f_# - R_0) / r', '@: the length it allows', { source: 'three-loops', when: 'as it is' }],
    ['L_#', 'm', '(X_# - R_0) / r', '@: the length it allows', { when: 'out and back' }],
    ['L_#', 'm', '(X_# / f_# - R_20) / r20', '@: the length it allows, at 20 °C', { source: 'three-loops', when: 'at 20 °C' }],
    ['L_#', 'm', '(X_# / f_# - n * R_c) / r20', '@: the length it allows, at 20 °C and without cords', { source: 'three-loops', when: 'without cords' }],
  ], { each: 'limit', no: { says: MISSED, steps: [] } }),
    lengthSteps(MISSED),
    ['L', 'm', 'min([L_#,])', 'the longest run: the shortest of these lengths, set by', { least: ['L_#'], core: 'length', when: 'bounded' }],
  ],
  assumptions: [`Direct current, steady state. Every conductor ${AT_MOST}; the device at the load stated.`],
  validity: 'Installed cable, one way. Rules of cabling are lengths and loops at 20 °C; power is judged hot.',
  slips: [
    ['cold-resistance', { T: 'T_ref', 'Tc_#': 'T_ref' }],
    ['one-way-length', { r: 'rl_1' }, 'two-wire'],
    // f is 2 for a pair loop, 1 for one pairset, 1/2 for two. Who mistakes the loop that power sees still knows a limit that is
    // stated as a pair loop, which stays 2; who mistakes the pair loop still knows the others, which stay 1 and 1/2.
    ['pair-loop-for-pairset', { 'f_#': '2' }, 'powered'],
    ['pairset-for-pair-loop', { 'f_#': 'min(f_#, 1)' }, 'powered'],
    ['pairset-for-four-pair', { 'f_#': 'max(f_#, 1)' }, 'two pairsets'],
    ['four-pair-for-pairset', { 'f_#': 'max(f_#^2 / 2, 1 / 2)' }, 'one pairset'],
    // With more draw the power of the port would bound the run as well, and leave none of it.
    ['class-power-for-pd-power', { P: 'P_lim' }, 'light draw'],
    ['connections-left-out', { n: '0' }, 'connections'],
    // So long that no rule of cabling governs.
    ['cabling-rule-left-out', { 'a_#': '1000 * a_#' }],
    // The thinnest of a gauge has 2 % more than the usual one.
    ['nominal-for-maximum', { 'rl20_#': 'rl20_# / 1.02' }, 'usual conductors stated'],
  ],
  guard: maximumRun,
  read: (input) => (isPowered<Run, Line>(input) ? readRun(input) : readLine(input)),
};

/** Installed cable to a powered device. */
function readRun(input: Run): Reading<Case> {
  const { cable, temperature, cords = [], connections = 0, cabling = 'TIA-568' } = input;
  const { limits, V, P, values, cases, limit: electrical, idle } = poweredRun(input);
  const own: Segment = { cable, length: 0, temperature };
  const ruled = cabling === 'none' ? undefined : cablingRows(CABLING_RULES[cabling], own, cords, connections, limits);
  const limit = [...electrical, ...(ruled?.limit ?? [])];
  const fixed: FixedRow[] = [limitRow(PD_POWER, ['W'], { 'v_#': P, 'w_#': limits.pdPower })];
  // The share of pieces that are not copper, of which none is allowed.
  const share = 1 - copperFraction([own, ...cords]);
  if (share > 0) fixed.push(limitRow(MATERIAL, ['1'], { 'v_#': share, 'w_#': 0 }));
  if (V > limits.pseVoltageMax) fixed.push(limitRow(PSE_VOLTAGE, ['V'], { 'v_#': V, 'w_#': limits.pseVoltageMax }));
  return {
    values: { ...values, alpha: cable.temperatureCoefficient, ...ruled?.values },
    sources: { alpha: coefficientSource(cable.temperatureCoefficient), ...ruled?.sources },
    cases: [
      ...cases,
      cordsCase(cords),
      P > 0 && limits.psePowerLimit >= 2 * P && 'light draw',
      ...connectionCases(input),
      ...(ruled?.cases ?? []),
      limit.length > 0 && 'bounded',
    ],
    rows: {
      fixed: [...fixed, ...idle, ...(ruled?.fixed ?? [])],
      limit,
      own: [{ label: cable.title, source: cable.source, values: { r20: cable.maximumResistancePerMetre } }],
      cord: pieceRows(cords, 'c').map((row, place) => {
        const loss = ruled?.cords[place];
        return { ...row, ...loss, values: { ...row.values, ...loss?.values }, sources: { ...row.sources, ...loss?.sources } };
      }),
    },
    assumptions: [
      temperatureAssumption(temperature),
      connectionAssumption(input),
      typeAssumption(input, limits),
      limits.poeClass !== input.poeClass &&
        `A Type ${limits.type} port grants class ${limits.poeClass}; the device still draws what it wants.`,
    ],
    no: limit.length === 0 ? UNBOUNDED : undefined,
  };
}

/** A line of two wires. */
function readLine(input: Line): Reading<Case> {
  const supply = supplyRange(input.supplyVoltage);
  const { limit, fixed } = lineLimitRows(input, supply);
  return {
    values: { V: supply.low, V_hi: supply.high },
    cases: [
      'two-wire',
      input.conductor === undefined ? 'unequal' : 'equal',
      loadCase(input.load),
      ...jointCases(input),
      legsOf(input).every(({ basis }) => basis === 'nominal') && 'usual conductors stated',
      limit.length > 0 && 'bounded',
    ],
    rows: { fixed, limit, leg: legRows(input) },
    assumptions: [temperatureAssumption(input.temperature), jointAssumption(input)],
    cautions: [ampacityCaution(input)],
    no: limit.length === 0 ? UNBOUNDED : undefined,
  };
}
