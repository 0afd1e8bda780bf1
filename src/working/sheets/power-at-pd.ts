/** What arrives at a powered device over Ethernet. @module */
import { givens, steps } from '../rows.ts';
import { appliedLimits, loopThatPowerSees, type PowerAtPdInput, powerAtPd } from '../../ethernet/power-at-pd.ts';
import type { Reading, Sheet } from '../sheet.ts';
import { wireOfRun } from './even-run.ts';
import { currentStep, discriminantStep } from './point-steps.ts';
import {
  drawGivens,
  loopGiven,
  loopOfRunStep,
  pairsetCurrentStep,
  typeVoltageGiven,
  wireCurrentStep,
  wireGivens,
} from './powered-steps.ts';
import { basisAssumption, FOUR_PAIRS, poweredKeys, runKeys, TWO_PAIRS } from './shared.ts';

/** What the device does not draw, of what is available. */
const leftStep = {
  symbol: 'P_left',
  meaning: 'what is left beyond the draw; under 0 the device may not have all it draws',
  unit: 'W',
  latex: 'P_{\\mathrm{left}}',
} as const;

export const powerAtPdSheet: Sheet<PowerAtPdInput> = {
  title: 'Power at a powered device',
  core: 'powerAtPd',
  keys: [...poweredKeys, 'resistance', ...runKeys],
  givens: [
    ...givens([
      ['P_PSE', 'W', 'power of the class at the port', 'poeClass', { source: 'ieee-802.3-class' }],
    ]),
    ...drawGivens,
    ...givens([
      ['V', 'V', 'voltage at the port', 'pseVoltage', { latex: 'V_{\\mathrm{PSE}}', when: 'voltage stated' }],
    ]),
    typeVoltageGiven,
    loopGiven,
    ...wireGivens,
  ],
  steps: [
    loopOfRunStep,
    discriminantStep,
    { ...currentStep, core: 'totalCurrent' },
    { ...pairsetCurrentStep, core: 'pairsetCurrent' },
    { ...wireCurrentStep, core: 'conductorCurrent' },
    ...steps([
      ['V_PD', 'V', '(V + sqrt(D)) / 2', 'voltage at the device', { source: 'constant-power', core: 'operating.loadVoltage' }],
      ['P_in', 'W', 'V * I', 'power that the port sources for it', { core: 'operating.supplyPower' }],
      ['I_PSE', 'A', 'P_PSE / V', 'current of the port when it sources the power of the class', { when: 'class bites' }],
    ]),
    {
      ...leftStep,
      formula: 'P_PSE - I_PSE^2 * R - P',
      source: 'circuit-laws',
      when: 'class bites',
    },
    {
      ...leftStep,
      formula: 'V^2 / (4 * R) - P',
      source: 'collapse',
      when: 'collapse bites',
    },
    ...steps([
      ['P_av', 'W', 'P_PSE - I_PSE^2 * R', 'power available at the device: that of the port less the heat in the run', { when: 'class bites' }],
      ['P_av', 'W', 'V^2 / (4 * R)', 'power available at the device: the line delivers no more, whatever the port may give', { source: 'collapse', when: 'collapse bites' }],
    ], { core: 'available' }),
  ],
  assumptions: ['Direct current, steady state; all conductors alike; a device that holds its power constant.'],
  validity:
    'IEEE 802.3 classes 0 to 8, single-signature. What is available is not what is allowed: a device may draw no more than its class.',
  cautions: [],
  slips: [
    { slip: 'pse-power-over-pd-voltage', steps: { I: 'P_PSE / ((V + sqrt(D)) / 2)', I_PSE: 'P_PSE / V_PD' } },
    { slip: 'power-at-wrong-end', steps: { I: 'P / V', V_PD: 'V - P / V * R', I_PSE: 'P / V' } },
    { slip: 'class-power-for-pd-power', givens: { P: 'P_PSE' } },
    { slip: 'class-power-for-pd-power', steps: { P_av: 'P_PSE' } },
    { slip: 'allowed-for-available', when: 'draw of the class', steps: { P_av: 'P' } },
    { slip: 'drop-for-voltage', steps: { V_PD: 'I * R' } },
    { slip: 'unstable-root', steps: { I: '2 * P / (V - sqrt(D))', V_PD: '(V - sqrt(D)) / 2' } },
    { slip: 'port-current-for-pairset-current', when: FOUR_PAIRS, steps: { I_set: 'I' } },
    { slip: 'pair-current-for-conductor-current', steps: { I_wire: 'I_set' } },
    { slip: 'pair-loop-for-pairset', steps: { R: '2 * R_w' } },
    { slip: 'pairset-for-four-pair', when: FOUR_PAIRS, steps: { R: 'R_w' } },
    { slip: 'four-pair-for-pairset', when: TWO_PAIRS, steps: { R: 'R_w / 2' } },
  ],
  guard: powerAtPd,
  read: readPowerAtPd,
};

function readPowerAtPd(input: PowerAtPdInput): Reading {
  const limits = appliedLimits(input);
  const { pseVoltage: V = limits.pseVoltageMin, pdPower: P = limits.pdPower, resistance } = input;
  const R = loopThatPowerSees(resistance, limits.pairs);
  const wire = wireOfRun(resistance, limits.pairs);
  return {
    values: {
      P_PSE: limits.psePower,
      P,
      V,
      m: limits.pairs / 2,
      ...(wire === undefined ? { R } : { R_w: wire }),
    },
    cases: [
      input.pdPower === undefined ? 'draw of the class' : 'draw stated',
      input.pseVoltage === undefined ? 'voltage of the type' : 'voltage stated',
      wire === undefined ? 'loop' : 'run',
      limits.pairs === 4 ? FOUR_PAIRS : TWO_PAIRS,
      // Beyond half the supply voltage more current brings less power: the line bites before the class does.
      2 * limits.psePower * R > V * V ? 'collapse bites' : 'class bites',
    ],
    assumptions: [
      ...(wire !== undefined && typeof resistance === 'object' ? [basisAssumption(resistance.basis)] : []),
      ...(input.pseType === undefined ? [`The port is of Type ${limits.type}, the weakest that serves class ${input.poeClass}.`] : []),
    ],
  };
}

