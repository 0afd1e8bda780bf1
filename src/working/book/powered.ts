/** A powered device: what arrives at it, and what its port must source. @module */
import type { RunResistance } from '../../cable/index.ts';
import { type PoeClass, type PowerAtPdInput, type PsePowerForInput, powerAtPd, psePowerFor } from '../../ethernet/index.ts';
import { appliedLimits, loopThatPowerSees } from '../../ethernet/power-at-pd.ts';
import { portVoltageRange } from '../../ethernet/pse-voltage.ts';
import { type BookSheet, given, givens, steps } from '../engine/rows.ts';
import type { Figures, Givens, Reading, SlipRow, Some, Steps } from '../engine/sheet.ts';
import { quadraticSteps, reported } from './load.ts';
import { basisAssumption } from './runs.ts';

/** Keys of the command for a powered device without its run, and for its run by its pieces. */
export const poweredKeys: readonly string[] = ['poeClass', 'pseType', 'pairs', 'pseVoltage', 'pdPower'];
export const runKeys: readonly string[] = ['run', 'connections', 'connectionResistance'];

/** What the device draws and the port has: as stated, or by its class and type. */
export type DrawCase = 'draw stated' | 'draw of the class' | 'voltage stated' | 'voltage of the type';
/** A run, a bare loop, or the worst that the type allows; over one pairset or two; and what bounds the power. */
type PoweredCase = DrawCase | 'loop' | 'run' | 'worst channel' | 'two pairs' | 'four pairs' | 'class bites' | 'collapse bites';

/** Which of them are stated. */
export function drawCases({ pdPower, pseVoltage }: { readonly pdPower?: unknown; readonly pseVoltage?: unknown }): DrawCase[] {
  return [pdPower === undefined ? 'draw of the class' : 'draw stated', pseVoltage === undefined ? 'voltage of the type' : 'voltage stated'];
}

/** What is said of a port whose type is not stated. */
export function typeAssumption(
  { pseType, poeClass }: { readonly pseType?: unknown; readonly poeClass: number },
  { type }: PoeClass,
): string | false {
  return pseType === undefined && `The port is of Type ${type}, the weakest that serves class ${poeClass}.`;
}

// biome-ignore format: one figure a row
const drawGivens = givens<DrawCase>([
  ['P', 'W', 'power that the device draws', 'pdPower', { when: 'draw stated' }],
    ['P', 'W', 'power that the device draws: all that its class allows', 'pdPower', { source: 'ieee-802.3-class', when: 'draw of the class' }],
], { latex: 'P_{\\mathrm{PD}}' });
// biome-ignore format: one figure a row
const voltageGivens = (detail: string): Givens<DrawCase> => givens([
  ['V', 'V', `voltage at the port${detail}`, 'pseVoltage', { when: 'voltage stated' }],
  ['V', 'V', 'voltage at the port: the lowest of its type', 'pseVoltage', { source: 'ieee-802.3-pse-voltage', when: 'voltage of the type' }],
], { latex: 'V_{\\mathrm{PSE}}' });
const loopGiven = given('R', 'Ω', 'resistance of the loop that power sees', 'resistance', { when: 'loop' });
// biome-ignore format: one figure a row
const wireGivens = givens<PoweredCase>([
  ['R_w', 'Ω', 'one conductor of the run, end to end; runResistance works it out', 'resistance.twoPair', { when: 'run' }],
    ['m', '1', 'pairsets that carry power', 'pairs', { source: 'ieee-802.3-class' }],
]);

/** From the run to the current of its wires, by what the core calls the three currents. */
// biome-ignore format: one figure a row
const currentSteps = (total: string, pairset: string, wire: string): Steps<PoweredCase> => [...steps<PoweredCase>([
  ['R', 'Ω', 'R_w / m', 'resistance of the loop that power sees: a pairset is one conductor’s worth', { source: 'three-loops', core: 'resistance', when: 'run' }],
]), ...reported(quadraticSteps, total), ...steps([
  ['I_set', 'A', 'I / m', 'current of one pairset', { core: pairset }],
  ['I_wire', 'A', 'I_set / 2', 'current of one wire of a pair', { core: wire }],
])];

const loopSlips: readonly SlipRow<PoweredCase>[] = [
  ['port-current-for-pairset-current', { I_set: 'I' }, 'four pairs'],
  ['pair-current-for-conductor-current', { I_wire: 'I_set' }],
  ['pair-loop-for-pairset', { R: '2 * R_w' }],
  ['pairset-for-four-pair', { R: 'R_w' }, 'four pairs'],
  ['four-pair-for-pairset', { R: 'R_w / 2' }, 'two pairs'],
];

/**
 * One wire of a run, end to end; nothing for a bare loop, or a run whose pairsets are unlike, as measured ones are: of those the
 * loop itself is the figure to begin with.
 */
function runFigures(
  resistance: number | RunResistance | undefined,
  limits: PoeClass,
): { readonly R: number; readonly run?: RunResistance } {
  if (resistance === undefined) return { R: limits.channelResistance };
  const R = loopThatPowerSees(resistance, limits.pairs);
  const isEven = typeof resistance === 'object' && Math.abs(resistance.twoPair / (limits.pairs / 2) - R) <= 1e-14 * R;
  return isEven ? { R, run: resistance } : { R };
}

/** What two sheets read alike; `R`, where it is no step, is the loop. */
function readPowered(
  input: PowerAtPdInput | PsePowerForInput,
  read: (limits: PoeClass, R: number) => { readonly values: Figures; readonly cases?: Some<PoweredCase> },
): Reading<PoweredCase> {
  const limits = appliedLimits(input);
  const { R, run } = runFigures(input.resistance, limits);
  const { values, cases = [] } = read(limits, R);
  return {
    values: { P: input.pdPower ?? limits.pdPower, R, m: limits.pairs / 2, ...values },
    cases: [
      ...drawCases(input),
      run !== undefined ? 'run' : input.resistance === undefined ? 'worst channel' : 'loop',
      limits.pairs === 4 ? 'four pairs' : 'two pairs',
      ...cases,
    ],
    assumptions: [run !== undefined && basisAssumption(run.basis), typeAssumption(input, limits)],
  };
}

export const powerAtPdSheet: BookSheet<PowerAtPdInput, PoweredCase> = {
  title: 'Power at a powered device',
  needs: ['poeClass', 'resistance|run'],
  keys: [...poweredKeys, ...runKeys],
  givens: [
    ['P_PSE', 'W', 'power of the class at the port', 'poeClass', { source: 'ieee-802.3-class' }],
    drawGivens,
    voltageGivens(''),
    loopGiven,
    wireGivens,
  ],
  // biome-ignore format: one figure a row
  steps: [
    currentSteps('totalCurrent', 'pairsetCurrent', 'conductorCurrent'),
    ['V_PD', 'V', '(V + sqrt(D)) / 2', 'voltage at the device', { source: 'constant-power', core: 'operating.loadVoltage' }],
    ['P_in', 'W', 'V * I', 'power that the port sources for it', { core: 'operating.supplyPower' }],
    ['I_PSE', 'A', 'P_PSE / V', 'current of the port when it sources the power of the class', { when: 'class bites' }],
    ['P_left', 'W', 'P_PSE - I_PSE^2 * R - P', 'what is left beyond the draw; under 0 the device may not have all it draws', { when: 'class bites' }],
    ['P_left', 'W', 'V^2 / (4 * R) - P', 'what is left beyond the draw; under 0 the device may not have all it draws', { source: 'collapse', when: 'collapse bites' }],
    steps([
    ['P_av', 'W', 'P_PSE - I_PSE^2 * R', 'power available at the device: that of the port less the heat in the run', { when: 'class bites' }],
    ['P_av', 'W', 'V^2 / (4 * R)', 'power available at the device: the line delivers no more, whatever the port may give', { source: 'collapse', when: 'collapse bites' }],
  ], { core: 'available' }),
  ],
  assumptions: ['Direct current, steady state; all conductors alike; a device that holds its power constant.'],
  validity:
    'IEEE 802.3 classes 0 to 8, single-signature. What is available is not what is allowed: a device may draw no more than its class.',
  slips: [
    ['pse-power-over-pd-voltage', { I: 'P_PSE / ((V + sqrt(D)) / 2)', I_PSE: 'P_PSE / V_PD' }],
    ['power-at-wrong-end', { I: 'P / V', V_PD: 'V - P / V * R', I_PSE: 'P / V' }],
    ['class-power-for-pd-power', { P: 'P_PSE' }],
    ['class-power-for-pd-power', { P_av: 'P_PSE' }],
    ['allowed-for-available', { P_av: 'P' }, 'draw of the class'],
    ['drop-for-voltage', { V_PD: 'I * R' }],
    ['unstable-root', { I: '2 * P / (V - sqrt(D))', V_PD: '(V - sqrt(D)) / 2' }],
    ...loopSlips,
  ],
  guard: powerAtPd,
  read: (input) =>
    readPowered(input, ({ psePower, pseVoltageMin }, R) => {
      const { pseVoltage: V = pseVoltageMin } = input;
      // Beyond half the supply voltage more current brings less power: the line bites before the class does.
      return { values: { P_PSE: psePower, V }, cases: [2 * psePower * R > V * V ? 'collapse bites' : 'class bites'] };
    }),
};

export const psePowerForSheet: BookSheet<PsePowerForInput, PoweredCase> = {
  title: 'Power that a port must source',
  needs: ['poeClass'],
  keys: [...poweredKeys, 'resistance', ...runKeys],
  givens: [
    drawGivens,
    voltageGivens(', the lowest it may have: there it must source most'),
    loopGiven,
    [
      'R',
      'Ω',
      'resistance of the loop that power sees: the worst that the type allows',
      'resistance',
      {
        source: 'ieee-802.3-channel',
        when: 'worst channel',
      },
    ],
    wireGivens,
    ['P_class', 'W', 'power of the class at the port', 'poeClass', { source: 'ieee-802.3-class' }],
  ],
  // biome-ignore format: one figure a row
  steps: [
    currentSteps('average.totalCurrent', 'average.pairsetCurrent', 'average.conductorCurrent'),
    ['P_loss', 'W', 'I^2 * R', 'heat in the run', { core: 'average.atLowest.lineLoss' }],
    ['P_left', 'W', 'P_class - (P + P_loss)', 'what the power of the class leaves; under 0 the port may switch the device off', { source: 'ieee-802.3-class' }],
    ['P_PSE', 'W', 'P + P_loss', 'power that the port sources: what the device takes and what the run turns to heat', { core: 'average.psePower' }],
  ],
  assumptions: ['Direct current, steady state; all conductors alike; a device that holds its power constant. Average draw, not the peak.'],
  validity: 'IEEE 802.3 classes 0 to 8, single-signature.',
  slips: [
    ['power-at-wrong-end', { I: 'P / V' }],
    ['pse-power-over-pd-voltage', { I: 'P_class / ((V + sqrt(D)) / 2)' }],
    ['class-power-for-pd-power', { P: 'P_class' }],
    ['unstable-root', { I: '2 * P / (V - sqrt(D))' }],
    ['run-loss-left-out', { P_PSE: 'P' }],
    ['class-power-for-sourced-power', { P_PSE: 'P_class' }],
    ...loopSlips,
  ],
  guard: psePowerFor,
  read: (input) =>
    readPowered(input, ({ psePower, pseVoltageMin }) => ({
      values: { V: portVoltageRange(input.pseVoltage ?? pseVoltageMin).low, P_class: psePower },
    })),
};
