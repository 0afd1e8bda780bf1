/** What a port must source so that a device receives its power. @module */
import { givens, steps } from '../rows.ts';
import { appliedLimits, loopThatPowerSees } from '../../ethernet/power-at-pd.ts';
import { type PsePowerForInput, psePowerFor } from '../../ethernet/pse-power-for.ts';
import { portVoltageRange } from '../../ethernet/pse-voltage.ts';
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

export const psePowerForSheet: Sheet<PsePowerForInput> = {
  title: 'Power that a port must source',
  core: 'psePowerFor',
  keys: [...poweredKeys, 'resistance', ...runKeys],
  givens: [
    ...drawGivens,
    ...givens([
      ['V', 'V', 'voltage at the port, the lowest it may have: there it must source most', 'pseVoltage', { latex: 'V_{\\mathrm{PSE}}', when: 'voltage stated' }],
    ]),
    typeVoltageGiven,
    loopGiven,
    ...givens([
      ['R', 'Ω', 'resistance of the loop that power sees: the worst that the type allows', 'resistance', { source: 'ieee-802.3-channel', when: 'worst channel' }],
    ]),
    ...wireGivens,
    ...givens([
      ['P_class', 'W', 'power of the class at the port', 'poeClass', { source: 'ieee-802.3-class' }],
    ]),
  ],
  steps: [
    loopOfRunStep,
    discriminantStep,
    { ...currentStep, core: 'average.totalCurrent' },
    { ...pairsetCurrentStep, core: 'average.pairsetCurrent' },
    { ...wireCurrentStep, core: 'average.conductorCurrent' },
    ...steps([
      ['P_loss', 'W', 'I^2 * R', 'heat in the run', { core: 'average.atLowest.lineLoss' }],
      ['P_left', 'W', 'P_class - (P + P_loss)', 'what the power of the class leaves; under 0 the port may switch the device off', { source: 'ieee-802.3-class' }],
      ['P_PSE', 'W', 'P + P_loss', 'power that the port sources: what the device takes and what the run turns to heat', { core: 'average.psePower' }],
    ]),
  ],
  assumptions: ['Direct current, steady state; all conductors alike; a device that holds its power constant. Average draw, not the peak.'],
  validity: 'IEEE 802.3 classes 0 to 8, single-signature.',
  cautions: [],
  slips: [
    { slip: 'power-at-wrong-end', steps: { I: 'P / V' } },
    { slip: 'pse-power-over-pd-voltage', steps: { I: 'P_class / ((V + sqrt(D)) / 2)' } },
    { slip: 'class-power-for-pd-power', givens: { P: 'P_class' } },
    { slip: 'unstable-root', steps: { I: '2 * P / (V - sqrt(D))' } },
    { slip: 'run-loss-left-out', steps: { P_PSE: 'P' } },
    { slip: 'class-power-for-sourced-power', steps: { P_PSE: 'P_class' } },
    { slip: 'port-current-for-pairset-current', when: FOUR_PAIRS, steps: { I_set: 'I' } },
    { slip: 'pair-current-for-conductor-current', steps: { I_wire: 'I_set' } },
    { slip: 'pair-loop-for-pairset', steps: { R: '2 * R_w' } },
    { slip: 'pairset-for-four-pair', when: FOUR_PAIRS, steps: { R: 'R_w' } },
    { slip: 'four-pair-for-pairset', when: TWO_PAIRS, steps: { R: 'R_w / 2' } },
  ],
  guard: psePowerFor,
  read: readPsePower,
};

function readPsePower(input: PsePowerForInput): Reading {
  const limits = appliedLimits(input);
  const { pdPower: P = limits.pdPower, resistance } = input;
  const wire = wireOfRun(resistance, limits.pairs);
  return {
    values: {
      P,
      V: portVoltageRange(input.pseVoltage ?? limits.pseVoltageMin).low,
      m: limits.pairs / 2,
      P_class: limits.psePower,
      ...(wire === undefined
        ? { R: resistance === undefined ? limits.channelResistance : loopThatPowerSees(resistance, limits.pairs) }
        : { R_w: wire }),
    },
    cases: [
      input.pdPower === undefined ? 'draw of the class' : 'draw stated',
      input.pseVoltage === undefined ? 'voltage of the type' : 'voltage stated',
      wire !== undefined ? 'run' : resistance === undefined ? 'worst channel' : 'loop',
      limits.pairs === 4 ? FOUR_PAIRS : TWO_PAIRS,
    ],
    assumptions: [
      ...(wire !== undefined && typeof resistance === 'object' ? [basisAssumption(resistance.basis)] : []),
      ...(input.pseType === undefined ? [`The port is of Type ${limits.type}, the weakest that serves class ${input.poeClass}.`] : []),
    ],
  };
}

