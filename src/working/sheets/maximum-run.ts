/** How far: every limit as a resistance, then as a length, and the shortest of them. @module */
import type { Segment } from '../../cable/run-resistance.ts';
import type { Load } from '../../circuit/operating-point.ts';
import { assignedClass, poeClass } from '../../ethernet/poe-class.ts';
import { appliedLimits } from '../../ethernet/power-at-pd.ts';
import { closestCord, closestGauge, deratedRule } from '../../plan/cabling-checks.ts';
import { CABLING_RULES, type CablingRules } from '../../plan/cabling-rules.ts';
import { categoryCheck } from '../../plan/category-check.ts';
import { judgedLoop } from '../../plan/device-resistance.ts';
import { copperFraction } from '../../plan/material-check.ts';
import type { MaximumPoweredRunInput } from '../../plan/maximum-powered-run.ts';
import { type MaximumRunInput, maximumRun } from '../../plan/maximum-run.ts';
import { hottestOf, insertionLossLength, isScreened } from '../../plan/signal-length.ts';
import { legsAtMaximum, supplyRange, type TwoWireCircuit, type UnequalTwoWireCircuit } from '../../plan/two-wire-run.ts';
import type { Figures, Reading, ReadingRow, Sheet } from '../sheet.ts';
import { CURRENT, loadGivens, loadReading, POWER, RESISTANCE } from './point-steps.ts';
import { circuitKeys, FOUR_PAIRS, poweredKeys, TWO_PAIRS, temperatureAssumption, twentyGiven } from './shared.ts';

/** What a row of the limits holds; each is turned into a resistance, or is a length as it stands. */
const COLLAPSE = 'collapse of a power';
const SHORT = 'collapse of a current';
const SUPPLY = 'power of the port';
const VOLTAGE = 'voltage at the load';
const DROP = 'permitted drop';
const VOLTS = 'permitted drop in volts';
/** A resistance takes most, and so drops most, at the highest voltage. */
const HIGHEST = 'permitted drop in volts at the highest voltage';
const AMPACITY = 'most current of a power';
const OHMS = 'stated in ohms';
const LENGTH = 'stated in metres';
const OUT_AND_BACK = 'out and back';
const HOT = 'as it is';
const COOL = 'at 20 °C';
const LINK = 'without cords, at 20 °C';

const NOT_EVEN = 'no length meets @: even a run of none misses it';
const FIXED = 'no length meets @: the length plays no part in it';
const fixedNo = { says: FIXED, steps: [] };
const lengthNo = { says: NOT_EVEN, steps: [] };

export const maximumRunSheet: Sheet<MaximumRunInput> = {
  title: 'The longest run that every limit allows',
  core: 'maximumRun',
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
  givens: [
    { symbol: 'V', meaning: 'voltage at the supply, the lowest it may have', unit: 'V', latex: 'V', core: 'pseVoltage or supplyVoltage' },
    {
      symbol: 'V_hi',
      meaning: 'voltage at the supply, the highest it may have',
      unit: 'V',
      latex: 'V_{\\mathrm{hi}}',
      core: 'supplyVoltage.high',
      when: 'highest',
    },
    ...loadGivens,
    {
      symbol: 'P_lim',
      meaning: 'power that the class lets the port source',
      unit: 'W',
      latex: 'P_{\\lim}',
      core: 'poeClass',
      source: 'ieee-802.3-class',
      when: 'powered',
    },
    {
      symbol: 'r20',
      meaning: 'one metre of one conductor at 20 °C, at its most',
      unit: 'Ω/m',
      latex: 'r_{20}',
      core: 'cable',
      when: 'powered',
    },
    { symbol: 'alpha', meaning: 'temperature coefficient at 20 °C', unit: '1/K', latex: '\\alpha', core: 'cable', when: 'powered' },
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
    { symbol: 'T', meaning: 'temperature of the conductors', unit: '°C', latex: 'T', core: 'temperature' },
    twentyGiven,
    { symbol: 'n', meaning: 'connections along the run', unit: '1', latex: 'n', core: 'connections' },
    { symbol: 'R_c', meaning: 'one connection, one conductor', unit: 'Ω', latex: 'R_{c}', core: 'connectionResistance' },
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
    { symbol: 'v_#', meaning: '@: what there is', unit: 'W', latex: 'v_{#}', core: 'pdPower', each: 'fixed', when: 'W' },
    { symbol: 'v_#', meaning: '@: what there is', unit: 'm', latex: 'v_{#}', core: 'cords', each: 'fixed', when: 'm' },
    { symbol: 'v_#', meaning: '@: what there is', unit: '1', latex: 'v_{#}', core: 'the input', each: 'fixed', when: '1' },
    { symbol: 'v_#', meaning: '@: what there is', unit: '°C', latex: 'v_{#}', core: 'temperature', each: 'fixed', when: '°C' },
    { symbol: 'v_#', meaning: '@: what there is', unit: '1', latex: 'v_{#}', core: 'the input', each: 'fixed', when: 'at least' },
    { symbol: 'v_#', meaning: '@: what there is', unit: 'V', latex: 'v_{#}', core: 'the highest voltage', each: 'fixed', when: 'V' },
    { symbol: 'v_#', meaning: '@: what there is', unit: 'A', latex: 'v_{#}', core: 'load.current', each: 'fixed', when: 'A' },
    { symbol: 'w_#', meaning: '@: the limit', unit: 'W', latex: 'w_{#}', core: 'poeClass', source: 'row', each: 'fixed', when: 'W' },
    { symbol: 'w_#', meaning: '@: the limit', unit: 'm', latex: 'w_{#}', core: 'cabling', source: 'row', each: 'fixed', when: 'm' },
    { symbol: 'w_#', meaning: '@: the limit', unit: '1', latex: 'w_{#}', core: 'cabling', source: 'row', each: 'fixed', when: '1' },
    { symbol: 'w_#', meaning: '@: the limit', unit: '°C', latex: 'w_{#}', core: 'cabling', source: 'row', each: 'fixed', when: '°C' },
    { symbol: 'w_#', meaning: '@: the least', unit: '1', latex: 'w_{#}', core: 'poeClass', source: 'row', each: 'fixed', when: 'at least' },
    { symbol: 'w_#', meaning: '@: the limit', unit: 'V', latex: 'w_{#}', core: 'the limits of the device', each: 'fixed', when: 'V' },
    { symbol: 'w_#', meaning: '@: the limit', unit: 'A', latex: 'w_{#}', core: 'ampacity', each: 'fixed', when: 'A' },
    { symbol: 'w_#', meaning: '@: the limit', unit: 'A', latex: 'w_{#}', core: 'ampacity', each: 'fixed', when: 'A of a resistance' },
    {
      symbol: 'U_#',
      meaning: '@: lowest voltage at the device',
      unit: 'V',
      latex: 'U_{#}',
      core: 'the limits of the device',
      each: 'limit',
      when: VOLTAGE,
    },
    {
      symbol: 'k_#',
      meaning: '@: most drop, as a fraction of the supply voltage',
      unit: '1',
      latex: 'k_{#}',
      core: 'permittedDrop',
      each: 'limit',
      when: DROP,
    },
    { symbol: 'd_#', meaning: '@: most drop', unit: 'V', latex: 'd_{#}', core: 'permittedDrop.volts', each: 'limit', when: VOLTS },
    { symbol: 'd_#', meaning: '@: most drop', unit: 'V', latex: 'd_{#}', core: 'permittedDrop.volts', each: 'limit', when: HIGHEST },
    {
      symbol: 'Iz_#',
      meaning: '@: most current of the conductors as installed',
      unit: 'A',
      latex: 'I_{z,#}',
      core: 'ampacity',
      each: 'limit',
      when: AMPACITY,
    },
    {
      symbol: 'X_#',
      meaning: '@: most resistance',
      unit: 'Ω',
      latex: 'X_{#}',
      core: 'the limits of the device or the cabling',
      each: 'limit',
      when: OHMS,
    },
    {
      symbol: 'f_#',
      meaning: '@: the loop it is about, in wires one way',
      unit: '1',
      latex: 'f_{#}',
      core: 'the loop',
      each: 'limit',
      when: 'resistance',
    },
    { symbol: 'a_#', meaning: '@: most length', unit: 'm', latex: 'a_{#}', core: 'cabling', each: 'limit', when: LENGTH },
    {
      symbol: 'b_#',
      meaning: '@: length that the cords take of it',
      unit: 'm',
      latex: 'b_{#}',
      core: 'cords',
      each: 'limit',
      when: LENGTH,
    },
    {
      symbol: 'c_#',
      meaning: '@: what a metre of the cable counts for',
      unit: '1',
      latex: 'c_{#}',
      core: 'cable',
      each: 'limit',
      when: LENGTH,
    },
  ],
  steps: [
    {
      symbol: 's_#',
      meaning: '@: what is left',
      formula: 'w_# - v_#',
      unit: 'W',
      latex: 's_{#}',
      source: 'ieee-802.3-class',
      each: 'fixed',
      when: 'W',
      no: fixedNo,
    },
    {
      symbol: 's_#',
      meaning: '@: what is left',
      formula: 'w_# - v_#',
      unit: 'm',
      latex: 's_{#}',
      source: 'row',
      each: 'fixed',
      when: 'm',
      no: fixedNo,
    },
    {
      symbol: 's_#',
      meaning: '@: what is left',
      formula: 'w_# - v_#',
      unit: '1',
      latex: 's_{#}',
      source: 'row',
      each: 'fixed',
      when: '1',
      no: fixedNo,
    },
    {
      symbol: 's_#',
      meaning: '@: what is left',
      formula: 'w_# - v_#',
      unit: 'K',
      latex: 's_{#}',
      source: 'row',
      each: 'fixed',
      when: '°C',
      no: fixedNo,
    },
    {
      symbol: 's_#',
      meaning: '@: what there is over the least',
      formula: 'v_# - w_#',
      unit: '1',
      latex: 's_{#}',
      source: 'row',
      each: 'fixed',
      when: 'at least',
      no: fixedNo,
    },
    {
      symbol: 's_#',
      meaning: '@: what is left',
      formula: 'w_# - v_#',
      unit: 'V',
      latex: 's_{#}',
      source: 'row',
      each: 'fixed',
      when: 'V',
      no: fixedNo,
    },
    {
      symbol: 's_#',
      meaning: '@: what is left',
      formula: 'w_# - v_#',
      unit: 'A',
      latex: 's_{#}',
      source: 'row',
      each: 'fixed',
      when: 'A',
      no: fixedNo,
    },
    {
      symbol: 's_#',
      meaning: '@: what is left where the load takes most, without any run',
      formula: 'w_# - V_hi / R_L',
      unit: 'A',
      latex: 's_{#}',
      source: 'row',
      each: 'fixed',
      when: 'A of a resistance',
      no: fixedNo,
    },
    {
      symbol: 'r',
      meaning: 'one metre of one conductor at its temperature',
      formula: 'r20 * (1 + alpha * (T - T_ref))',
      unit: 'Ω/m',
      latex: 'r',
      source: 'circuit-laws',
      when: 'powered',
    },
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
      when: 'equal',
    },
    {
      symbol: 'r',
      meaning: 'one metre of run, out and back',
      formula: 'rl_1 + rl_2',
      unit: 'Ω/m',
      latex: 'r',
      source: 'circuit-laws',
      when: 'unequal',
    },
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
      when: 'no cords',
    },
    {
      symbol: 'R_0',
      meaning: 'what a run of no length has: connections and cords, one conductor',
      formula: 'n * R_c + [Rc_#]',
      unit: 'Ω',
      latex: 'R_{0}',
      source: 'circuit-laws',
      when: 'cords',
    },
    {
      symbol: 'R_0',
      meaning: 'what a run of no length has: joints, out and back',
      formula: '2 * n * R_c',
      unit: 'Ω',
      latex: 'R_{0}',
      source: 'circuit-laws',
      when: 'two-wire',
    },
    {
      symbol: 'R_20',
      meaning: 'the same at 20 °C',
      formula: 'n * R_c + [rc20_# * Lc_#]',
      unit: 'Ω',
      latex: 'R_{0,20}',
      source: 'circuit-laws',
      when: 'cords',
    },
    {
      symbol: 'R_20',
      meaning: 'the same at 20 °C',
      formula: 'R_0',
      unit: 'Ω',
      latex: 'R_{0,20}',
      source: 'circuit-laws',
      when: 'no cords',
    },
    {
      symbol: 'X_#',
      meaning: '@: most resistance, beyond which no current carries the power',
      formula: 'V^2 / (4 * P)',
      unit: 'Ω',
      latex: 'X_{#}',
      source: 'collapse',
      each: 'limit',
      when: COLLAPSE,
    },
    {
      symbol: 'X_#',
      meaning: '@: most resistance, beyond which even a short takes less',
      formula: 'V / I',
      unit: 'Ω',
      latex: 'X_{#}',
      source: 'circuit-laws',
      each: 'limit',
      when: SHORT,
    },
    {
      symbol: 'X_#',
      meaning: '@: most resistance: what the port may source more, over the current squared',
      formula: '(P_lim - P) / (P_lim / V)^2',
      unit: 'Ω',
      latex: 'X_{#}',
      source: 'circuit-laws',
      each: 'limit',
      when: SUPPLY,
      no: lengthNo,
    },
    {
      symbol: 'U_#',
      meaning: '@: lowest voltage at the device',
      formula: 'V * (1 - k_#)',
      unit: 'V',
      latex: 'U_{#}',
      source: 'circuit-laws',
      each: 'limit',
      when: DROP,
    },
    {
      symbol: 'U_#',
      meaning: '@: lowest voltage at the device',
      formula: 'V - d_#',
      unit: 'V',
      latex: 'U_{#}',
      source: 'circuit-laws',
      each: 'limit',
      when: VOLTS,
    },
    {
      symbol: 'U_#',
      meaning: '@: lowest voltage at the device, at the highest supply: there a resistance drops most',
      formula: 'V_hi - d_#',
      unit: 'V',
      latex: 'U_{#}',
      source: 'circuit-laws',
      each: 'limit',
      when: HIGHEST,
    },
    {
      symbol: 'U_#',
      meaning: '@: voltage at the device under which it draws more',
      formula: 'P / Iz_#',
      unit: 'V',
      latex: 'U_{#}',
      source: 'circuit-laws',
      each: 'limit',
      when: AMPACITY,
    },
    {
      symbol: 'X_#',
      meaning: '@: most resistance: the drop over the current',
      formula: '(V_hi - U_#) / (U_# / R_L)',
      unit: 'Ω',
      latex: 'X_{#}',
      source: 'circuit-laws',
      each: 'limit',
      when: HIGHEST,
      no: lengthNo,
    },
    {
      symbol: 'X_#',
      meaning: '@: most resistance: the drop over the current',
      formula: '(V - U_#) / (P / U_#)',
      unit: 'Ω',
      latex: 'X_{#}',
      source: 'circuit-laws',
      each: 'limit',
      when: `voltage, ${POWER}`,
      no: lengthNo,
    },
    {
      symbol: 'X_#',
      meaning: '@: most resistance: the drop over the current',
      formula: '(V - U_#) / I',
      unit: 'Ω',
      latex: 'X_{#}',
      source: 'circuit-laws',
      each: 'limit',
      when: `voltage, ${CURRENT}`,
      no: lengthNo,
    },
    {
      symbol: 'X_#',
      meaning: '@: most resistance: the drop over the current',
      formula: '(V - U_#) / (U_# / R_L)',
      unit: 'Ω',
      latex: 'X_{#}',
      source: 'circuit-laws',
      each: 'limit',
      when: `voltage, ${RESISTANCE}`,
      no: lengthNo,
    },
    {
      symbol: 'L_#',
      meaning: '@: the length it allows',
      formula: '(X_# / f_# - R_0) / r',
      unit: 'm',
      latex: 'L_{#}',
      source: 'three-loops',
      each: 'limit',
      when: HOT,
      no: lengthNo,
    },
    {
      symbol: 'L_#',
      meaning: '@: the length it allows',
      formula: '(X_# - R_0) / r',
      unit: 'm',
      latex: 'L_{#}',
      source: 'circuit-laws',
      each: 'limit',
      when: OUT_AND_BACK,
      no: lengthNo,
    },
    {
      symbol: 'L_#',
      meaning: '@: the length it allows, at 20 °C',
      formula: '(X_# / f_# - R_20) / r20',
      unit: 'm',
      latex: 'L_{#}',
      source: 'three-loops',
      each: 'limit',
      when: COOL,
      no: lengthNo,
    },
    {
      symbol: 'L_#',
      meaning: '@: the length it allows, at 20 °C and without cords',
      formula: '(X_# / f_# - n * R_c) / r20',
      unit: 'm',
      latex: 'L_{#}',
      source: 'three-loops',
      each: 'limit',
      when: LINK,
      no: lengthNo,
    },
    {
      symbol: 'L_#',
      meaning: '@: the length it allows',
      formula: '(a_# - b_#) / c_#',
      unit: 'm',
      latex: 'L_{#}',
      source: 'row',
      each: 'limit',
      when: LENGTH,
      no: lengthNo,
    },
    {
      symbol: 'L',
      meaning: 'the longest run, the shortest of these lengths; what governs is',
      least: ['L_#'],
      formula: 'min([L_#,])',
      unit: 'm',
      latex: 'L',
      source: 'circuit-laws',
      core: 'length',
      when: 'bounded',
    },
  ],
  assumptions: ['Direct current, steady state. Every conductor at its most; the device at the load stated.'],
  validity: 'Installed cable, one way. Rules of cabling are lengths and loops at 20 °C; power is judged hot.',
  cautions: ['An ampacity is that of the table that applies where the cable lies: the local code and a licensed practitioner come first.'],
  slips: [
    { slip: 'cold-resistance', givens: { T: 'T_ref', 'Tc_#': 'T_ref' } },
    { slip: 'one-way-length', when: 'two-wire', steps: { r: 'rl_1' } },
    // f is 2 for a pair loop, 1 for one pairset, 1/2 for two. Who mistakes the loop that power sees still knows a limit that is
    // stated as a pair loop, which stays 2; who mistakes the pair loop still knows the others, which stay 1 and 1/2.
    { slip: 'pair-loop-for-pairset', when: 'powered', givens: { 'f_#': '2' } },
    { slip: 'pairset-for-pair-loop', when: 'powered', givens: { 'f_#': 'min(f_#, 1)' } },
    { slip: 'pairset-for-four-pair', when: FOUR_PAIRS, givens: { 'f_#': 'max(f_#, 1)' } },
    { slip: 'four-pair-for-pairset', when: TWO_PAIRS, givens: { 'f_#': 'max(f_#^2 / 2, 1 / 2)' } },
    // With more draw the power of the port would bound the run as well, and leave none of it.
    { slip: 'class-power-for-pd-power', when: 'light draw', givens: { P: 'P_lim' } },
    { slip: 'connections-left-out', when: 'connections', givens: { n: '0' } },
    // So long that no rule of cabling governs.
    { slip: 'cabling-rule-left-out', givens: { 'a_#': '1000 * a_#' } },
    // The thinnest of a gauge has 2 % more than the usual one.
    { slip: 'nominal-for-maximum', when: 'usual conductors stated', givens: { 'rl20_#': 'rl20_# / 1.02' } },
  ],
  guard: maximumRun,
  read: (input) => cited('conductor' in input || 'out' in input ? readTwoWire(input) : readPowered(input as MaximumPoweredRunInput), input),
};

/** The limits, each with the source that the core names for it. */
function cited(reading: Reading, input: MaximumRunInput): Reading {
  const sources = new Map(maximumRun(input).limits.map(({ limit, source }) => [limit as string, source]));
  const withSource = (row: ReadingRow): ReadingRow => {
    const source = sources.get(row.label);
    return source === undefined ? row : { ...row, source };
  };
  const rows = Object.entries(reading.rows ?? {}).map(([list, of]) => [list, of.map(withSource)] as const);
  return { ...reading, rows: Object.fromEntries(rows) };
}

const FACTOR = { pairLoop: 2, twoPair: 1, fourPair: 0.5 } as const;

function readPowered(input: MaximumPoweredRunInput): Reading {
  const { cable, temperature, cords = [], connections = 0, connectionResistance = 0.2, cabling = 'TIA-568' } = input;
  const { maximumResistance, minimumVoltage } = input;
  // A port of too weak a type grants less, and the device still wants what it is made for.
  const granted = input.pseType === undefined ? input.poeClass : assignedClass(input.poeClass, input.pseType);
  const wanted = input.pdPower ?? (granted === input.poeClass ? undefined : poeClass(input.poeClass).pdPower);
  const limits = appliedLimits({ ...input, poeClass: granted, pdPower: wanted });
  const P = wanted ?? limits.pdPower;
  const { pseVoltage: V = limits.pseVoltageMin } = input;
  const own = (length: number): Segment => ({ cable, length, temperature });
  const seen = limits.pairs === 4 ? 'fourPair' : 'twoPair';

  const fixed: ReadingRow[] = [{ label: 'pd-power', values: { 'v_#': P, 'w_#': limits.pdPower }, cases: ['W'] }];
  const missed = (label: string, value: number, limit: number, unit: string): void => {
    if (value > limit) fixed.push({ label, values: { 'v_#': value, 'w_#': limit }, cases: [unit] });
  };
  // The share of pieces that are not copper, of which none is allowed.
  missed('material', 1 - copperFraction([own(0), ...cords]), 0, '1');
  missed('pse-voltage', V, limits.pseVoltageMax, 'V');
  const rows: ReadingRow[] = [];
  if (P > 0) rows.push(resistance('collapse', seen, COLLAPSE));
  if (limits.psePowerLimit < 2 * P) rows.push(resistance('pse-power', seen, SUPPLY));
  for (const [label, U] of [
    ['pd-voltage', limits.pdVoltageLimit],
    ['device-voltage', minimumVoltage],
  ] as const) {
    if (U !== undefined && bites(V, { power: P }, U)) rows.push(resistance(label, seen, VOLTAGE, { 'U_#': U }, [`voltage, ${POWER}`]));
  }
  if (maximumResistance !== undefined) {
    rows.push(resistance('device-resistance', judgedLoop(maximumResistance), OHMS, { 'X_#': maximumResistance.ohms }));
  }
  if (cabling !== 'none') addCabling(CABLING_RULES[cabling]);
  return {
    values: {
      V,
      P,
      P_lim: limits.psePowerLimit,
      r20: cable.maximumResistancePerMetre,
      alpha: cable.temperatureCoefficient,
      ...common(temperature, connections, connectionResistance),
    },
    cases: [
      'powered',
      POWER,
      limits.pairs === 4 ? FOUR_PAIRS : TWO_PAIRS,
      cords.length === 0 ? 'no cords' : 'cords',
      ...(P > 0 && limits.psePowerLimit >= 2 * P ? ['light draw'] : []),
      ...(connections * connectionResistance > 0 ? ['connections'] : []),
      ...(rows.length === 0 ? [] : ['bounded']),
    ],
    rows: {
      fixed,
      limit: rows,
      cord: cords.map((cord) => ({
        label: cord.cable.title,
        values: {
          'rc20_#': cord.cable.maximumResistancePerMetre,
          'alphac_#': cord.cable.temperatureCoefficient,
          'Tc_#': cord.temperature ?? 20,
          'Lc_#': cord.length,
        },
      })),
    },
    assumptions: [
      ...temperatureAssumption(temperature),
      ...(input.pseType === undefined ? [`The port is of Type ${limits.type}, the weakest that serves class ${input.poeClass}.`] : []),
      ...(granted === input.poeClass ? [] : [`A Type ${limits.type} port grants class ${granted}; the device still draws what it wants.`]),
    ],
    ...(rows.length === 0 ? { no: 'nothing bounds the length of this run' } : {}),
  };

  function addCabling(rules: CablingRules): void {
    const cordsLength = cords.reduce((sum, { length }) => sum + length, 0);
    rows.push(metres('channel-length', rules.channelLength.limit, cordsLength, 1));
    rows.push(metres('permanent-link-length', rules.permanentLinkLength.limit, 0, 1));
    rows.push(resistance('channel-loop', 'pairLoop', OHMS, { 'X_#': rules.channelLoop.limit }, [COOL]));
    if (rules.permanentLinkLoop !== undefined) {
      rows.push(resistance('permanent-link-loop', 'pairLoop', OHMS, { 'X_#': rules.permanentLinkLoop.limit }, [LINK]));
    }
    rows.push(resistance('channel-resistance', seen, OHMS, { 'X_#': limits.channelResistance }));
    const category = categoryCheck([own(0), ...cords], limits.type);
    if (category !== undefined) {
      fixed.push({ label: category.name, values: { 'v_#': category.value, 'w_#': category.limit }, cases: ['at least'] });
    }
    missed('connections', connections, rules.connections.limit, '1');
    const derated = deratedRule(temperature ?? 20, isScreened(cable), rules);
    if (derated !== undefined) rows.push(metres('derated-length', derated.limit, 0, 1));
    if (cords.length > 0 || derated !== undefined) {
      const cordsAlone = insertionLossLength([], cords, rules);
      rows.push(metres('insertion-loss-length', rules.insertionLossLength.limit, cordsAlone, insertionLossLength([own(1)], [], rules)));
    }
    const cord = closestCord(cords, rules);
    if (cord !== undefined) missed('cord-length', cord.value, cord.limit, 'm');
    const gauge = closestGauge([own(0)], cords, rules);
    if (gauge !== undefined) missed('conductor-gauge', gauge.value, gauge.limit, '1');
    missed('cable-temperature', hottestOf([own(0), ...cords]), rules.temperature.limit, '°C');
  }
}

function readTwoWire(input: TwoWireCircuit | UnequalTwoWireCircuit): Reading {
  const { temperature, load, minimumVoltage, maximumVoltage, permittedDrop, ampacity, maximumResistance } = input;
  const { connections = 0, connectionResistance = 0 } = input;
  const { low: V, high } = supplyRange(input.supplyVoltage);
  const [out, back] = legsAtMaximum(input);
  const isEqual = input.conductor !== undefined;
  const loaded = loadReading(load);
  const kind = loaded.cases[0] as string;
  const fixed: ReadingRow[] = [];
  const rows: ReadingRow[] = [];
  let isHighest = false;
  if (load.power !== undefined && load.power > 0) rows.push(ofLoop('collapse', COLLAPSE));
  if (load.current !== undefined && load.current > 0) rows.push(ofLoop('collapse', SHORT));
  if (minimumVoltage !== undefined && bites(V, load, minimumVoltage)) {
    rows.push(ofLoop('device-voltage', VOLTAGE, { 'U_#': minimumVoltage }, [`voltage, ${kind}`]));
  }
  if (typeof permittedDrop === 'number' && bites(V, load, V * (1 - permittedDrop))) {
    rows.push(ofLoop('voltage-drop', DROP, { 'k_#': permittedDrop }, [`voltage, ${kind}`]));
  } else if (typeof permittedDrop === 'object') addDrop(permittedDrop.volts);
  if (maximumVoltage !== undefined) {
    fixed.push({ label: 'device-overvoltage', values: { 'v_#': high, 'w_#': maximumVoltage }, cases: ['V'] });
  }
  if (ampacity !== undefined) addAmpacity(ampacity);
  if (maximumResistance !== undefined) rows.push(ofLoop('device-resistance', OHMS, { 'X_#': maximumResistance }));
  const equal = [['one conductor', out]] as const;
  const unequal = [
    ['out', out],
    ['back', back],
  ] as const;
  const ways = isEqual ? equal : unequal;
  return {
    values: { ...loaded.values, V, V_hi: high, ...common(temperature, connections, connectionResistance) },
    cases: [
      'two-wire',
      kind,
      isEqual ? 'equal' : 'unequal',
      ...(isHighest ? ['highest'] : []),
      ...([input.conductor ?? input.out, input.conductor ?? input.back].every(({ basis }) => basis === 'nominal')
        ? ['usual conductors stated']
        : []),
      ...(connections * connectionResistance > 0 ? ['connections'] : []),
      ...(rows.length === 0 ? [] : ['bounded']),
    ],
    rows: {
      fixed,
      limit: rows,
      leg: ways.map(([way, { name, resistancePerMetre, temperatureCoefficient = 0 }]) => ({
        label: `${way}, ${name}`,
        values: { 'rl20_#': resistancePerMetre, 'alphal_#': temperatureCoefficient },
      })),
    },
    assumptions: temperatureAssumption(temperature),
    ...(rows.length === 0 ? { no: 'nothing bounds the length of this run' } : {}),
  };

  function addDrop(volts: number): void {
    if (load.resistance !== undefined) {
      if (volts >= high) return;
      isHighest = true;
      rows.push(ofLoop('voltage-drop', HIGHEST, { 'd_#': volts }));
    } else if (volts < V && bites(V, load, V - volts)) {
      rows.push(ofLoop('voltage-drop', VOLTS, { 'd_#': volts }, [`voltage, ${kind}`]));
    }
  }

  /** A power draws more the longer the run; a resistance draws most without one. */
  function addAmpacity(most: number): void {
    if (load.power !== undefined) {
      if (load.power > 0 && bites(V, load, load.power / most)) {
        rows.push(ofLoop('ampacity', AMPACITY, { 'Iz_#': most }, [`voltage, ${kind}`]));
      }
    } else if (load.current !== undefined) {
      fixed.push({ label: 'ampacity', values: { 'v_#': load.current, 'w_#': most }, cases: ['A'] });
    } else {
      isHighest = true;
      fixed.push({ label: 'ampacity', values: { 'w_#': most }, cases: ['A of a resistance'] });
    }
  }
}

function common(temperature: number | undefined, connections: number, connectionResistance: number): Figures {
  return { T: temperature ?? 20, T_ref: 20, n: connections, R_c: connectionResistance };
}

/** A limit that is, or is turned into, a resistance of a two-wire circuit, out and back. */
function ofLoop(label: string, kind: string, values: Figures = {}, cases: readonly string[] = []): ReadingRow {
  return { label, values, cases: [kind, ...cases, OUT_AND_BACK] };
}

/** A limit that is, or is turned into, a resistance of one of the loops. */
function resistance(
  label: string,
  loop: keyof typeof FACTOR,
  kind: string,
  values: Figures = {},
  cases: readonly string[] = [],
): ReadingRow {
  const conditions = cases.includes(COOL) || cases.includes(LINK) ? [] : [HOT];
  return { label, values: { ...values, 'f_#': FACTOR[loop] }, cases: ['resistance', kind, ...cases, ...conditions] };
}

function metres(label: string, limit: number, cords: number, perMetre: number): ReadingRow {
  return { label, values: { 'a_#': limit, 'b_#': cords, 'c_#': perMetre }, cases: [LENGTH] };
}

/** Whether a lowest voltage bounds the line at all: the stable root of a power lies above half of the supply voltage. */
function bites(V: number, load: Load, U: number): boolean {
  if (U > V) return true;
  if (load.power !== undefined) return load.power > 0 && 2 * U >= V;
  return load.current === undefined || load.current > 0;
}
