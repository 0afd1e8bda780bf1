/** What drop must be permitted: at the lowest and at the highest supply voltage, and the larger of the two. @module */
import { givens, steps } from '../rows.ts';
import { type LeastPermittedDropInput, leastPermittedDrop } from '../../plan/least-permitted-drop.ts';
import { supplyRange } from '../../plan/two-wire-run.ts';
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
    ...givens([
      ['V_#', 'V', '@: voltage of the supply', 'supplyVoltage', { each: 'supply' }],
    ]),
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
    ...steps([
      ['D_#', 'V²', 'V_#^2 - 4 * P * R', '@: discriminant: what stands under the root of V I = P + I² R', { source: 'constant-power', each: 'supply', when: POWER, no: { says: CANNOT, steps: [{ ...unreported(collapseStep), formula: 'V_1^2 / (4 * R)' }] } }],
      ['I_#', 'A', '2 * P / (V_# + sqrt(D_#))', '@: current: the smaller root, (V - sqrt D) / (2 R), written so that no two nearly equal figures are subtracted', { source: 'constant-power', each: 'supply', when: POWER }],
      ['I_#', 'A', 'V_# / (R + R_L)', '@: current through line and load in series', { each: 'supply', when: RESISTANCE }],
      ['U_#', 'V', 'V_# - I * R', '@: voltage that is left for the load', { each: 'supply', when: CURRENT, no: { says: CANNOT, steps: [{ ...unreported(shortStep), formula: 'V_1 / R' }] } }],
      ['W_#', 'V', 'I_# * R', '@: voltage lost along the line', { latex: 'V_{\\mathrm{drop},#}', each: 'supply', when: POWER }],
      ['W_#', 'V', 'I_# * R', '@: voltage lost along the line', { latex: 'V_{\\mathrm{drop},#}', each: 'supply', when: RESISTANCE }],
      ['W_#', 'V', 'I * R', '@: voltage lost along the line', { latex: 'V_{\\mathrm{drop},#}', each: 'supply', when: CURRENT }],
      ['k_#', '1', 'W_# / V_#', '@: the drop as a fraction of the supply voltage', { each: 'supply' }],
      ['k', '1', 'max([k_#,])', 'the least fraction that must be permitted, the larger of these; it is the one', { least: ['k_#'], core: 'fraction' }],
      ['V_most', 'V', 'max([W_#,])', 'the least drop in volts that must be permitted, the larger; it is the one', { least: ['W_#'], core: 'volts' }],
    ]),
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

