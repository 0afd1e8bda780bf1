/** How much: the load that each limit allows, and the least of them; of a resistance the greatest, for the lowest is asked. @module */
import { givens, steps } from '../rows.ts';
import type { Sheet, SheetStep } from '../sheet.ts';
import { AMPACITY_HIGHEST, asked, CLASS, type HighestLoadInput, readOpen } from './highest-load-reading.ts';
import {
  AMPACITY,
  COLLAPSE,
  dropAsVoltageSteps,
  HIGHEST,
  highestSupplyGiven,
  portPowerGiven,
  SHORT,
  SUPPLY,
  supplyGiven,
  voltageLimitGivens,
} from './limit-steps.ts';
import { AT_MOST } from './line-steps.ts';
import { openGivens, openLineKeys, openRunKeys, openSteps } from './open-run.ts';
import { CURRENT, POWER, RESISTANCE } from './point-steps.ts';
import { loopGivens, loopSteps, POWERED } from './run-steps.ts';

export type { HighestLoadInput } from './highest-load-reading.ts';

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
  ...steps([
    ['I_#', 'A', '(V - U_#) / R', '@: the current at which the drop leaves just this voltage', { each: 'limit', when: `voltage, ${POWER}` }],
  ]),
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

export const highestLoadSheet: Sheet<HighestLoadInput> = {
  title: 'The highest load that every limit allows',
  core: 'highestLoad',
  keys: [...new Set([...openRunKeys, 'pseVoltage', ...openLineKeys, 'supplyVoltage', 'kind'])],
  givens: [
    supplyGiven,
    highestSupplyGiven,
    portPowerGiven,
    ...givens([
      ['P_class', 'W', 'power that the class lets the device draw', 'poeClass', { source: 'ieee-802.3-class', when: POWERED }],
    ]),
    ...loopGivens,
    ...openGivens,
    ...voltageLimitGivens,
  ],
  steps: [
    ...loopSteps,
    ...openSteps('load'),
    ...mostSteps,
    ...steps([
      ['P', 'W', 'min([P_#,])', 'the highest load, the least of these, set by', { least: ['P_#'], core: 'load.power', when: `bounded, ${POWER}` }],
      ['I', 'A', 'min([I_#,])', 'the highest load, the least of these, set by', { least: ['I_#'], core: 'load.current', when: `bounded, ${CURRENT}` }],
      ['R_L', 'Ω', 'max([Z_#,])', 'the lowest resistance, the greatest of these, set by', { least: ['Z_#'], core: 'load.resistance', when: `bounded, ${RESISTANCE}` }],
    ]),
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
  read: readOpen,
};

