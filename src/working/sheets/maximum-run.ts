/** How far: every limit as a resistance, then as a length, and the shortest of them. @module */
import type { Segment } from '../../cable/run-resistance.ts';
import { appliedLimits } from '../../ethernet/power-at-pd.ts';
import { closestCord, closestGauge, deratedRule } from '../../plan/cabling-checks.ts';
import { CABLING_RULES, type CablingRules } from '../../plan/cabling-rules.ts';
import { copperFraction } from '../../plan/material-check.ts';
import type { MaximumPoweredRunInput } from '../../plan/maximum-powered-run.ts';
import { type MaximumRunInput, maximumRun } from '../../plan/maximum-run.ts';
import { hottestOf, insertionLossLength, isScreened } from '../../plan/signal-length.ts';
import { supplyRange, type TwoWireCircuit, type UnequalTwoWireCircuit } from '../../plan/two-wire-run.ts';
import type { Figures, Reading, ReadingRow, Sheet } from '../sheet.ts';
import {
  COOL,
  fixedGiven,
  fixedGivens,
  fixedSteps,
  HOT,
  LINK,
  lineLimitRows,
  mostResistanceSteps,
  OHMS,
  portPowerGiven,
  poweredLimitRows,
  resistanceLimitGivens,
  resistanceRow,
  shownDrop,
  supplyGiven,
} from './limit-steps.ts';
import { jointGivens, legGivens, legRows, legSteps } from './line-steps.ts';
import { loadGivens, loadReading, POWER } from './point-steps.ts';
import { cordGivens, cordRows, cordsCase, restSteps } from './run-steps.ts';
import { circuitKeys, poweredKeys, temperatureAssumption, twentyGiven } from './shared.ts';

/** What else a row of the limits may hold. */
const LENGTH = 'stated in metres';

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
    'permittedDrop',
    'maximumResistance',
    'loop',
    'cabling',
  ],
  givens: [
    supplyGiven,
    ...loadGivens,
    portPowerGiven,
    {
      symbol: 'r20',
      meaning: 'one metre of one conductor at 20 °C, at its most',
      unit: 'Ω/m',
      latex: 'r_{20}',
      core: 'cable',
      when: 'powered',
    },
    { symbol: 'alpha', meaning: 'temperature coefficient at 20 °C', unit: '1/K', latex: '\\alpha', core: 'cable', when: 'powered' },
    ...legGivens,
    { symbol: 'T', meaning: 'temperature of the conductors', unit: '°C', latex: 'T', core: 'temperature' },
    twentyGiven,
    ...jointGivens,
    ...cordGivens,
    ...fixedGivens,
    ...fixedGiven('v_#', '@: what there is', { m: 'cords', '°C': 'temperature' }),
    ...fixedGiven('w_#', '@: the limit', { m: 'cabling', '°C': 'cabling' }),
    ...resistanceLimitGivens,
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
    ...fixedSteps(['W', 'm', '1', '°C'], fixedNo),
    {
      symbol: 'r',
      meaning: 'one metre of one conductor at its temperature',
      formula: 'r20 * (1 + alpha * (T - T_ref))',
      unit: 'Ω/m',
      latex: 'r',
      source: 'circuit-laws',
      when: 'powered',
    },
    ...legSteps,
    ...restSteps,
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
    ...mostResistanceSteps(lengthNo),
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
      least: 'L_#',
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
  cautions: [],
  slips: [
    { slip: 'cold-resistance', givens: { T: 'T_ref', 'Tc_#': 'T_ref' } },
    { slip: 'one-way-length', steps: { r: 'rl_1' } },
    { slip: 'pair-loop-for-pairset', givens: { 'f_#': '2' } },
    { slip: 'pairset-for-pair-loop', givens: { 'f_#': '1' } },
    { slip: 'class-power-for-pd-power', givens: { P: 'P_lim' } },
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

function readPowered(input: MaximumPoweredRunInput): Reading {
  const { cable, temperature, cords = [], connections = 0, connectionResistance = 0.2, cabling = 'TIA-568' } = input;
  const { maximumResistance, minimumVoltage } = input;
  const limits = appliedLimits(input);
  const { pseVoltage: V = limits.pseVoltageMin, pdPower: P = limits.pdPower } = input;
  const own = (length: number): Segment => ({ cable, length, temperature });
  const seen = limits.pairs === 4 ? 'fourPair' : 'twoPair';

  const fixed: ReadingRow[] = [{ label: 'pd-power', values: { 'v_#': P, 'w_#': limits.pdPower }, cases: ['W'] }];
  const missed = (label: string, value: number, limit: number, unit: string): void => {
    if (value > limit) fixed.push({ label, values: { 'v_#': value, 'w_#': limit }, cases: [unit] });
  };
  // The share of pieces that are not copper, of which none is allowed.
  missed('material', 1 - copperFraction([own(0), ...cords]), 0, '1');
  const rows = poweredLimitRows(limits, V, P, minimumVoltage, maximumResistance);
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
    cases: ['powered', POWER, cordsCase(cords), ...(rows.length === 0 ? [] : ['bounded'])],
    rows: {
      fixed,
      limit: rows,
      cord: cordRows(cords),
    },
    assumptions: [
      ...temperatureAssumption(temperature),
      ...(input.pseType === undefined ? [`The port is of Type ${limits.type}, the weakest that serves class ${input.poeClass}.`] : []),
    ],
    ...(rows.length === 0 ? { no: 'nothing bounds the length of this run' } : {}),
  };

  function addCabling(rules: CablingRules): void {
    const cordsLength = cords.reduce((sum, { length }) => sum + length, 0);
    rows.push(metres('channel-length', rules.channelLength.limit, cordsLength, 1));
    rows.push(metres('permanent-link-length', rules.permanentLinkLength.limit, 0, 1));
    rows.push(resistanceRow('channel-loop', 'pairLoop', OHMS, { 'X_#': rules.channelLoop.limit }, [COOL]));
    if (rules.permanentLinkLoop !== undefined) {
      rows.push(resistanceRow('permanent-link-loop', 'pairLoop', OHMS, { 'X_#': rules.permanentLinkLoop.limit }, [LINK]));
    }
    rows.push(resistanceRow('channel-resistance', seen, OHMS, { 'X_#': limits.channelResistance }));
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
  const { temperature, load, minimumVoltage, maximumResistance, connections = 0, connectionResistance = 0 } = input;
  const permittedDrop = shownDrop(input);
  const { low: V } = supplyRange(input.supplyVoltage);
  const isEqual = input.conductor !== undefined;
  const loaded = loadReading(load);
  const kind = loaded.cases[0] as string;
  const rows = lineLimitRows(V, load, kind, minimumVoltage, permittedDrop, maximumResistance);
  return {
    values: { ...loaded.values, V, ...common(temperature, connections, connectionResistance) },
    cases: ['two-wire', kind, isEqual ? 'equal' : 'unequal', ...(rows.length === 0 ? [] : ['bounded'])],
    rows: {
      limit: rows,
      leg: legRows(input),
    },
    assumptions: temperatureAssumption(temperature),
    ...(rows.length === 0 ? { no: 'nothing bounds the length of this run' } : {}),
  };
}

function common(temperature: number | undefined, connections: number, connectionResistance: number): Figures {
  return { T: temperature ?? 20, T_ref: 20, n: connections, R_c: connectionResistance };
}

function metres(label: string, limit: number, cords: number, perMetre: number): ReadingRow {
  return { label, values: { 'a_#': limit, 'b_#': cords, 'c_#': perMetre }, cases: [LENGTH] };
}
