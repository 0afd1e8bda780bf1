/** How much: the load that each limit allows, and the least of them; of a resistance the greatest, for the lowest is asked. @module */
import { type HighestLoad, highestLoad, type TwoWireHighestLoadInput } from '../../plan/highest-load.ts';
import { isPowered } from '../../plan/one-unknown.ts';
import type { PoweredRunInput } from '../../plan/powered-run.ts';
import { supplyRange } from '../../plan/two-wire-run.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { Figures, Reading, ReadingRow, Sheet, SheetStep } from '../sheet.ts';
import { jointAssumptions } from './connection-steps.ts';
import { limitRow } from './limit-rows.ts';
import {
  AMPACITY,
  AT_HIGHEST,
  COLLAPSE,
  DROP,
  dropAsVoltageSteps,
  HIGHEST,
  highestSupplyGiven,
  portPowerGiven,
  SHORT,
  SUPPLY,
  supplyGiven,
  VOLTAGE,
  VOLTS,
  voltageLimitGivens,
} from './limit-steps.ts';
import { AT_MOST, type LineInput, lineReading } from './line-steps.ts';
import {
  asking,
  fixedOhmsRow,
  granted,
  openGivens,
  openLineKeys,
  openRunKeys,
  openSteps,
  placed,
  portRows,
  requireOthersMet,
  runAssumptions,
} from './open-run.ts';
import { CURRENT, POWER, RESISTANCE } from './point-steps.ts';
import { loopGivens, loopSteps, POWERED, runReading } from './run-steps.ts';
import { temperatureAssumption } from './shared.ts';

type Run = Omit<PoweredRunInput, 'pdPower'>;
/** What highestLoad takes. */
export type HighestLoadInput = Run | TwoWireHighestLoadInput;

/** All that the class of the device allows. */
const CLASS = 'power of the class';
/** A resistance takes most at the highest voltage, with no line before it. */
const AMPACITY_HIGHEST = 'most current of a resistance';

/** A power, a current, and the lowest resistance, that one limit allows. */
const power = { symbol: 'P_#', unit: 'W', latex: 'P_{#}', source: 'circuit-laws', each: 'limit', core: '<limit>' } as const;
const current = { ...power, symbol: 'I_#', unit: 'A', latex: 'I_{#}' } as const;
const resistance = { ...power, symbol: 'Z_#', unit: 'Ω', latex: 'R_{L,#}' } as const;

const mostSteps: readonly SheetStep[] = [
  ...dropAsVoltageSteps,
  { ...power, meaning: '@: all that the class lets the device draw', formula: 'P_class', source: 'ieee-802.3-class', when: CLASS },
  { ...power, meaning: '@: the most that the line delivers to any load', formula: 'V^2 / (4 * R)', source: 'collapse', when: COLLAPSE },
  {
    ...power,
    meaning: '@: what the port may source, less the heat in the run',
    formula: 'P_lim - (P_lim / V)^2 * R',
    when: SUPPLY,
  },
  {
    symbol: 'I_#',
    meaning: '@: the current at which the drop leaves just this voltage',
    formula: '(V - U_#) / R',
    unit: 'A',
    latex: 'I_{#}',
    source: 'circuit-laws',
    each: 'limit',
    when: `voltage, ${POWER}`,
  },
  { ...power, meaning: '@: the power that it brings at this voltage', formula: 'U_# * I_#', when: `voltage, ${POWER}` },
  { ...current, meaning: '@: the most that the line passes, into a short at its end', formula: 'V / R', when: SHORT },
  {
    ...current,
    meaning: '@: the current at which the drop leaves just this voltage',
    formula: '(V - U_#) / R',
    when: `voltage, ${CURRENT}`,
  },
  {
    ...resistance,
    meaning: '@: the lowest resistance at which the drop leaves this voltage',
    formula: 'U_# / ((V - U_#) / R)',
    when: `voltage, ${RESISTANCE}`,
  },
  {
    ...resistance,
    meaning: '@: the lowest resistance at which the drop leaves this voltage',
    formula: 'U_# / ((V_hi - U_#) / R)',
    when: HIGHEST,
  },
  {
    ...power,
    meaning: '@: the power that this current brings: it, times what it leaves of the voltage',
    formula: 'Iz_# * (V - Iz_# * R)',
    when: `${AMPACITY}, ${POWER}`,
  },
  { ...current, meaning: '@: all of it', formula: 'Iz_#', when: `${AMPACITY}, ${CURRENT}` },
  {
    ...resistance,
    meaning: '@: the lowest resistance that takes no more, at the highest voltage and without any line',
    formula: 'V_hi / Iz_#',
    when: AMPACITY_HIGHEST,
  },
];

/** The core, and what of its answers this sheet does not show. */
const asked = asking((input: HighestLoadInput) => {
  const said = highestLoad(input);
  if (isPowered<Run, TwoWireHighestLoadInput>(input)) requireOthersMet(said, input.cabling);
  return said;
});

export const highestLoadSheet: Sheet<HighestLoadInput> = {
  title: 'The highest load that every limit allows',
  core: 'highestLoad',
  keys: [...new Set([...openRunKeys, 'pseVoltage', ...openLineKeys, 'supplyVoltage', 'kind'])],
  givens: [
    supplyGiven,
    highestSupplyGiven,
    portPowerGiven,
    {
      symbol: 'P_class',
      meaning: 'power that the class lets the device draw',
      unit: 'W',
      latex: 'P_{\\mathrm{class}}',
      core: 'poeClass',
      source: 'ieee-802.3-class',
      when: POWERED,
    },
    ...loopGivens,
    ...openGivens,
    ...voltageLimitGivens,
  ],
  steps: [
    ...loopSteps,
    ...openSteps('load'),
    ...mostSteps,
    {
      symbol: 'P',
      meaning: 'the highest load, the least of these, set by',
      least: ['P_#'],
      formula: 'min([P_#,])',
      unit: 'W',
      latex: 'P',
      source: 'circuit-laws',
      core: 'load.power',
      when: `bounded, ${POWER}`,
    },
    {
      symbol: 'I',
      meaning: 'the highest load, the least of these, set by',
      least: ['I_#'],
      formula: 'min([I_#,])',
      unit: 'A',
      latex: 'I',
      source: 'circuit-laws',
      core: 'load.current',
      when: `bounded, ${CURRENT}`,
    },
    {
      symbol: 'R_L',
      meaning: 'the lowest resistance, the greatest of these, set by',
      least: ['Z_#'],
      formula: 'max([Z_#,])',
      unit: 'Ω',
      latex: 'R_{L}',
      source: 'circuit-laws',
      core: 'load.resistance',
      when: `bounded, ${RESISTANCE}`,
    },
  ],
  assumptions: [`Direct current, steady state. Every conductor ${AT_MOST}.`],
  validity: 'The stable root of a power lies above half of the supply voltage: a voltage limit under that is left to the collapse.',
  cautions: [],
  slips: [
    { slip: 'one-way-length', steps: { r: 'rl_1' } },
    { slip: 'cold-resistance', givens: { T: 'T_ref', 'T_#': 'T_ref' } },
    { slip: 'power-at-wrong-end', when: POWER, steps: { 'I_#': '(V - U_#) / R * V / U_#' } },
    { slip: 'percent-of-wrong-voltage', givens: { 'k_#': 'k_# / (1 + k_#)' } },
    { slip: 'pair-loop-for-pairset', when: 'one pairset', steps: { R: '2 * R_w' } },
    { slip: 'pairset-for-four-pair', when: 'two pairsets', steps: { R: 'R_w' } },
    { slip: 'class-power-for-pd-power', when: POWERED, givens: { P_class: 'P_lim' } },
  ],
  guard: asked.guard,
  read: (input) => (isPowered<Run, TwoWireHighestLoadInput>(input) ? readRun(input) : readLine(input)),
};

function readRun(input: Run): Reading {
  const { installed, cords = [], connections, connectionResistance, minimumVoltage, maximumResistance } = input;
  const { limits } = granted({ ...input, pdPower: 0 });
  const { pdVoltageLimit, psePowerLimit, pdPower } = limits;
  const { pseVoltage: V = limits.pseVoltageMin } = input;
  const segments = [...installed, ...cords];
  const run = runReading(segments, limits.pairs, connections, connectionResistance);
  const { ohms: R } = run;
  const fixed = portRows(limits, undefined, input.pseVoltage, segments);
  if (maximumResistance !== undefined) fixed.push(fixedOhmsRow(maximumResistance));
  const rows: ReadingRow[] = [limitRow('pd-power', {}, [CLASS])];
  if (R > 0) {
    rows.push(limitRow('collapse', {}, [COLLAPSE]));
    // Beyond half the supply voltage the line gives way before the port must source that much.
    if (2 * psePowerLimit * R <= V * V) rows.push(limitRow('pse-power', {}, [SUPPLY]));
  }
  const under = voltageRows(
    V,
    R,
    [
      ['pd-voltage', pdVoltageLimit],
      ['device-voltage', minimumVoltage],
    ],
    POWER,
  );
  return reading(asked.said(input), [...fixed, ...under.fixed], [...rows, ...under.rows], POWER, {
    values: { ...run.values, V, P_lim: psePowerLimit, P_class: pdPower },
    cases: [...run.cases, POWER],
    rows: run.rows,
    assumptions: runAssumptions(input, limits),
  });
}

const KINDS = { power: POWER, current: CURRENT, resistance: RESISTANCE } as const;

function readLine(input: TwoWireHighestLoadInput): Reading {
  const { minimumVoltage, maximumVoltage, maximumResistance, kind: of = 'power' } = input;
  const kind = KINDS[of];
  const { low: V, high } = supplyRange(input.supplyVoltage);
  const line = lineReading(input as LineInput);
  const { ohms: R } = line;
  const fixed: ReadingRow[] = [];
  if (maximumVoltage !== undefined) fixed.push(limitRow('device-overvoltage', { 'v_#': high, 'w_#': maximumVoltage }, ['V']));
  if (maximumResistance !== undefined) fixed.push(fixedOhmsRow(maximumResistance));
  const rows: ReadingRow[] = [];
  if (R > 0 && kind === POWER) rows.push(limitRow('collapse', {}, [COLLAPSE]));
  if (R > 0 && kind === CURRENT) rows.push(limitRow('collapse', {}, [SHORT]));
  const under = voltageRows(V, R, [['device-voltage', minimumVoltage]], kind);
  rows.push(...under.rows, ...dropRows(input, V, high, R, kind), ...ampacityRows(input.ampacity, V, R, kind));
  const isHighest = rows.some(({ cases = [] }) => cases.includes(HIGHEST) || cases.includes(AMPACITY_HIGHEST));
  return reading(asked.said(input), [...fixed, ...under.fixed], rows, kind, {
    values: { ...line.values, V, V_hi: high },
    cases: [...line.cases, kind, ...(isHighest ? [AT_HIGHEST] : [])],
    rows: line.rows,
    assumptions: [...temperatureAssumption(input.temperature), ...jointAssumptions(input)],
  });
}

/** A permitted drop. More than half of its supply voltage no power loses along the line: that is left to the collapse. */
function dropRows({ permittedDrop }: TwoWireHighestLoadInput, V: number, high: number, R: number, kind: string): ReadingRow[] {
  if (permittedDrop === undefined || R === 0) return [];
  const row = (values: Figures, cases: readonly string[]): ReadingRow[] => [limitRow('voltage-drop', values, cases)];
  if (typeof permittedDrop === 'number') {
    return kind !== POWER || permittedDrop <= 0.5 ? row({ 'k_#': permittedDrop }, [DROP, `voltage, ${kind}`]) : [];
  }
  const { volts } = permittedDrop;
  if (kind === RESISTANCE) return volts < high ? row({ 'Vd_#': volts }, [HIGHEST]) : [];
  return volts < V && (kind !== POWER || 2 * volts <= V) ? row({ 'Vd_#': volts }, [VOLTS, `voltage, ${kind}`]) : [];
}

/** A most current. At its collapse a line passes half the current of a short: a power never draws more than that. */
function ampacityRows(most: number | undefined, V: number, R: number, kind: string): ReadingRow[] {
  if (most === undefined || (kind === POWER && 2 * most * R > V)) return [];
  return [limitRow('ampacity', { 'Iz_#': most }, [AMPACITY, kind === RESISTANCE ? AMPACITY_HIGHEST : `${AMPACITY}, ${kind}`])];
}

/** Lowest voltages at the device: one above that of the supply is missed even by a load of nothing. */
function voltageRows(
  V: number,
  R: number,
  limits: readonly (readonly [name: 'pd-voltage' | 'device-voltage', U: number | undefined])[],
  kind: string,
): { readonly fixed: readonly ReadingRow[]; readonly rows: readonly ReadingRow[] } {
  const fixed: ReadingRow[] = [];
  const rows: ReadingRow[] = [];
  for (const [name, U] of limits) {
    if (U === undefined) continue;
    // With nothing to lose no load is left but none at all, which is where the core's search ends and not an answer of its own.
    if (U === V && R > 0) {
      const parameter = name === 'pd-voltage' ? 'pseVoltage' : 'minimumVoltage';
      throw new InputError('conflict', parameter, `more at the supply than the device needs, ${U} V: there would be nothing to lose`, U);
    }
    if (U > V) fixed.push(limitRow(name, { 'v_#': U, 'w_#': V }, ['V']));
    else if (R > 0 && (kind !== POWER || 2 * U >= V)) rows.push(limitRow(name, { 'U_#': U }, [VOLTAGE, `voltage, ${kind}`]));
  }
  return { fixed, rows };
}

function reading(said: HighestLoad, fixed: readonly ReadingRow[], rows: readonly ReadingRow[], kind: string, of: Reading): Reading {
  return {
    ...of,
    cases: [...(of.cases ?? []), ...(rows.length === 0 ? [] : [`bounded, ${kind}`])],
    rows: { ...of.rows, ...placed(said, fixed, rows) },
    ...(rows.length === 0 ? { no: 'nothing bounds the load of this run' } : {}),
  };
}
