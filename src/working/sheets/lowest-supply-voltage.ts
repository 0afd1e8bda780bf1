/** How low: the voltage that each limit asks for, and the highest of them. @module */
import { givens, steps } from '../rows.ts';
import type { LowestSupplyVoltageInput } from '../../plan/lowest-supply-voltage.ts';
import type { Sheet, SheetStep } from '../sheet.ts';
import { ampacityAsVoltageStep, COLLAPSE, portPowerGiven, SHORT, SUPPLY, VOLTS, voltageLimitGivens } from './limit-steps.ts';
import { AT_MOST } from './line-steps.ts';
import { asked, readOpen, TOO_HIGH } from './lowest-supply-voltage-reading.ts';
import { openGivens, openLineKeys, openRunKeys, openSteps } from './open-run.ts';
import { CURRENT, loadGivens, POWER, RESISTANCE } from './point-steps.ts';
import { loopGivens, loopSteps, POWERED } from './run-steps.ts';
import { loadKeys } from './shared.ts';

/** A voltage that one limit asks for. */
const least = { symbol: 'V_#', unit: 'V', latex: 'V_{#}', source: 'circuit-laws', each: 'limit', core: '<limit>' } as const;

const leastSteps: readonly SheetStep[] = [
  ampacityAsVoltageStep,
  {
    ...least,
    meaning: '@: least voltage, under which no current carries the power',
    formula: '2 * sqrt(P * R)',
    source: 'collapse',
    when: COLLAPSE,
  },
  { ...least, meaning: '@: least voltage, under which even a short takes less', formula: 'I * R', when: SHORT },
  {
    ...least,
    meaning: '@: least voltage, at which the heat in the run is all that the port may source more',
    formula: 'P_lim * sqrt(R / (P_lim - P))',
    when: SUPPLY,
  },
  {
    ...least,
    meaning: '@: least voltage: that of the device, and the drop of its current',
    formula: 'U_# + P / U_# * R',
    when: `voltage, ${POWER}`,
  },
  {
    ...least,
    meaning: '@: least voltage: that of the device, and the drop of its current',
    formula: 'U_# + I * R',
    when: `voltage, ${CURRENT}`,
  },
  {
    ...least,
    meaning: '@: least voltage: that of the device, and the drop of its current',
    formula: 'U_# + U_# / R_L * R',
    when: `voltage, ${RESISTANCE}`,
  },
  {
    ...least,
    meaning: '@: least voltage, from k V = (P / ((1 - k) V)) R',
    formula: 'sqrt(P * R / (k_# * (1 - k_#)))',
    when: `drop, ${POWER}`,
  },
  { ...least, meaning: '@: least voltage, from k V = I R', formula: 'I * R / k_#', when: `drop, ${CURRENT}` },
  {
    ...least,
    meaning: '@: least voltage: the drop, and what the power has at the current that makes it',
    formula: 'Vd_# + P / (Vd_# / R)',
    when: VOLTS,
  },
];

export const lowestSupplyVoltageSheet: Sheet<LowestSupplyVoltageInput> = {
  title: 'The lowest supply voltage at which a run holds',
  core: 'lowestSupplyVoltage',
  keys: [...new Set([...openRunKeys, 'pdPower', ...openLineKeys, ...loadKeys])],
  givens: [
    ...loadGivens,
    portPowerGiven,
    ...loopGivens,
    ...openGivens,
    ...voltageLimitGivens,
    ...givens([
      ['V_most', 'V', 'the highest voltage that there may be', 'the type of the port, or maximumVoltage', { when: TOO_HIGH }],
    ]),
  ],
  steps: [
    ...loopSteps,
    ...openSteps('supply voltage'),
    ...leastSteps,
    ...steps([
      ['V', 'V', 'max([V_#,])', 'the lowest supply voltage, the highest of these, set by', { least: ['V_#'], core: 'supplyVoltage', when: 'bounded' }],
      ['V_left', 'V', 'V_most - V', 'what is left up to the highest voltage that there may be', { when: TOO_HIGH, no: { says: 'no supply voltage is enough: the run would need more than there may be', steps: [] } }],
    ]),
  ],
  assumptions: [`Direct current, steady state. Every conductor ${AT_MOST}; the device at the load stated.`],
  validity: 'Up to 57 V at a port, and to 1000 V on two wires or to the most that the device bears.',
  cautions: ['Above 60 V DC a circuit is outside extra-low voltage: for a licensed practitioner and the local code.'],
  slips: [
    { slip: 'one-way-length', steps: { r: 'rl_1' } },
    { slip: 'cold-resistance', givens: { T: 'T_ref', 'T_#': 'T_ref' } },
    { slip: 'percent-of-wrong-voltage', givens: { 'k_#': 'k_# / (1 + k_#)' } },
    { slip: 'pair-loop-for-pairset', when: 'one pairset', steps: { R: '2 * R_w' } },
    { slip: 'pairset-for-four-pair', when: 'two pairsets', steps: { R: 'R_w' } },
    { slip: 'class-power-for-pd-power', when: POWERED, givens: { P: 'P_lim' } },
  ],
  guard: asked.guard,
  read: readOpen,
};

