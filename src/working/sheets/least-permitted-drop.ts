/** What drop must be permitted: at the lowest and at the highest supply voltage, and the larger of the two. @module */
import { type LeastPermittedDropInput, leastPermittedDrop } from '../../plan/least-permitted-drop.ts';
import { supplyRange } from '../../plan/two-wire-input.ts';
import type { Reading, Sheet } from '../sheet.ts';
import { connectionGivens, jointAssumptions } from './connection-steps.ts';
import { AT_MOST, legGivens, legSteps, lineLengthGiven, lineLoopStep, lineReading, lineTemperatureGiven } from './line-steps.ts';
import { CANNOT, CURRENT, collapseStep, loadGivens, loadReading, POWER, RESISTANCE, shortStep, unreported } from './point-steps.ts';
import { circuitKeys, temperatureAssumption, twentyGiven } from './shared.ts';

export const leastPermittedDropSheet: Sheet<LeastPermittedDropInput> = {
  title: 'The least drop that must be permitted',
  core: 'leastPermittedDrop',
  keys: [...circuitKeys, 'length', 'connections', 'connectionResistance'],
  givens: [
    {
      symbol: 'V_#',
      meaning: '@: voltage of the supply',
      unit: 'V',
      latex: 'V_{#}',
      core: 'supplyVoltage',
      each: 'supply',
    },
    ...loadGivens,
    ...legGivens,
    lineTemperatureGiven,
    twentyGiven,
    lineLengthGiven,
    ...connectionGivens,
  ],
  steps: [
    ...legSteps,
    lineLoopStep,
    {
      symbol: 'D_#',
      meaning: '@: discriminant: what stands under the root of V I = P + I² R',
      formula: 'V_#^2 - 4 * P * R',
      unit: 'V²',
      latex: 'D_{#}',
      source: 'constant-power',
      each: 'supply',
      when: POWER,
      no: { says: CANNOT, steps: [{ ...unreported(collapseStep), formula: 'V_1^2 / (4 * R)' }] },
    },
    {
      symbol: 'I_#',
      meaning: '@: current: the smaller root, (V - sqrt D) / (2 R), written so that no two nearly equal figures are subtracted',
      formula: '2 * P / (V_# + sqrt(D_#))',
      unit: 'A',
      latex: 'I_{#}',
      source: 'constant-power',
      each: 'supply',
      when: POWER,
    },
    {
      symbol: 'I_#',
      meaning: '@: current through line and load in series',
      formula: 'V_# / (R + R_L)',
      unit: 'A',
      latex: 'I_{#}',
      source: 'circuit-laws',
      each: 'supply',
      when: RESISTANCE,
    },
    {
      symbol: 'U_#',
      meaning: '@: voltage that is left for the load',
      formula: 'V_# - I * R',
      unit: 'V',
      latex: 'U_{#}',
      source: 'circuit-laws',
      each: 'supply',
      when: CURRENT,
      no: { says: CANNOT, steps: [{ ...unreported(shortStep), formula: 'V_1 / R' }] },
    },
    {
      symbol: 'W_#',
      meaning: '@: voltage lost along the line',
      formula: 'I_# * R',
      unit: 'V',
      latex: 'V_{\\mathrm{drop},#}',
      source: 'circuit-laws',
      each: 'supply',
      when: POWER,
    },
    {
      symbol: 'W_#',
      meaning: '@: voltage lost along the line',
      formula: 'I_# * R',
      unit: 'V',
      latex: 'V_{\\mathrm{drop},#}',
      source: 'circuit-laws',
      each: 'supply',
      when: RESISTANCE,
    },
    {
      symbol: 'W_#',
      meaning: '@: voltage lost along the line',
      formula: 'I * R',
      unit: 'V',
      latex: 'V_{\\mathrm{drop},#}',
      source: 'circuit-laws',
      each: 'supply',
      when: CURRENT,
    },
    {
      symbol: 'k_#',
      meaning: '@: the drop as a fraction of the supply voltage',
      formula: 'W_# / V_#',
      unit: '1',
      latex: 'k_{#}',
      source: 'circuit-laws',
      each: 'supply',
    },
    {
      symbol: 'k',
      meaning: 'the least fraction that must be permitted, the larger of these; it is the one',
      least: ['k_#'],
      formula: 'max([k_#,])',
      unit: '1',
      latex: 'k',
      source: 'circuit-laws',
      core: 'fraction',
    },
    {
      symbol: 'V_most',
      meaning: 'the least drop in volts that must be permitted, the larger; it is the one',
      least: ['W_#'],
      formula: 'max([W_#,])',
      unit: 'V',
      latex: 'V_{\\mathrm{most}}',
      source: 'circuit-laws',
      core: 'volts',
    },
  ],
  assumptions: [`Direct current, steady state. Every conductor ${AT_MOST}; the device at the load stated.`],
  validity:
    'A power drops most at the lowest supply voltage, a resistance most volts at the highest and the same fraction at both, a current the same volts at both.',
  cautions: [],
  slips: [
    { slip: 'one-way-length', steps: { r: 'rl_1' } },
    { slip: 'cold-resistance', givens: { T: 'T_ref' } },
    { slip: 'power-at-wrong-end', when: POWER, steps: { 'I_#': 'P / V_#' } },
    { slip: 'unstable-root', when: POWER, steps: { 'I_#': '2 * P / (V_# - sqrt(D_#))' } },
    { slip: 'voltage-for-drop', steps: { V_most: 'V_1 - W_1' } },
    { slip: 'percent-of-wrong-voltage', steps: { 'k_#': 'W_# / (V_# - W_#)' } },
  ],
  guard: leastPermittedDrop,
  read: readDrop,
};

function readDrop(input: LeastPermittedDropInput): Reading {
  const { low, high } = supplyRange(input.supplyVoltage);
  const line = lineReading(input);
  const load = loadReading(input.load);
  const ends =
    low === high
      ? ([['at the supply voltage', low]] as const)
      : ([
          ['at the lowest', low],
          ['at the highest', high],
        ] as const);
  return {
    values: { ...line.values, ...load.values },
    cases: [...line.cases, ...load.cases],
    rows: { ...line.rows, supply: ends.map(([label, V]) => ({ label, values: { 'V_#': V } })) },
    assumptions: [...temperatureAssumption(input.temperature), ...jointAssumptions(input)],
  };
}
