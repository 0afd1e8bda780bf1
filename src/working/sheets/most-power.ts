/** The most power that a line can carry, and why there are two roots. @module */
import { operatingPoint } from '../../circuit/operating-point.ts';
import { requireObject, requirePositive } from '../../quantity/guards.ts';
import type { Ohms, Volts, Watts } from '../../quantity/units.ts';
import type { Sheet } from '../sheet.ts';
import { collapseNo, discriminantStep } from './point-steps.ts';

/** A line, and a load of constant power: what `operatingPoint` takes, and no other kind of load. */
export interface MostPowerInput {
  /** Voltage at the supply. [V] */
  readonly supplyVoltage: Volts;
  /** Resistance of the line, out and back, above 0. [Ω] */
  readonly resistance: Ohms;
  /** Power of the load, above 0. [W] */
  readonly load: { readonly power: Watts };
}

export const mostPowerSheet: Sheet<MostPowerInput> = {
  title: 'The most power a line can carry, and why there are two roots',
  core: 'operatingPoint',
  keys: ['supplyVoltage', 'resistance', 'power'],
  givens: [
    { symbol: 'V', meaning: 'voltage at the supply', unit: 'V', latex: 'V', core: 'supplyVoltage' },
    { symbol: 'R', meaning: 'resistance of the line, out and back', unit: 'Ω', latex: 'R', core: 'resistance' },
    { symbol: 'P', meaning: 'power that the load draws, whatever its voltage', unit: 'W', latex: 'P', core: 'load.power' },
  ],
  steps: [
    discriminantStep,
    {
      symbol: 'I_1',
      meaning: 'smaller current: more load, more current, and the voltage holds',
      formula: '2 * P / (V + sqrt(D))',
      unit: 'A',
      latex: 'I_{1}',
      source: 'constant-power',
      core: 'current',
    },
    {
      symbol: 'V_1',
      meaning: 'voltage at the load with it, above V/2: here the load settles',
      formula: '(V + sqrt(D)) / 2',
      unit: 'V',
      latex: 'V_{1}',
      source: 'constant-power',
      core: 'loadVoltage',
    },
    {
      symbol: 'P_1',
      meaning: 'heat in the line with it',
      formula: 'I_1^2 * R',
      unit: 'W',
      latex: 'P_{1}',
      source: 'circuit-laws',
      core: 'lineLoss',
    },
    {
      symbol: 'I_2',
      meaning: 'larger current: the same power at less voltage, and no load stays there',
      formula: '(V + sqrt(D)) / (2 * R)',
      unit: 'A',
      latex: 'I_{2}',
      source: 'constant-power',
    },
    {
      symbol: 'V_2',
      meaning: 'voltage at the load with it, under V/2',
      formula: 'P / I_2',
      unit: 'V',
      latex: 'V_{2}',
      source: 'circuit-laws',
    },
    {
      symbol: 'P_2',
      meaning: 'heat in the line with it: more than the load takes',
      formula: 'I_2^2 * R',
      unit: 'W',
      latex: 'P_{2}',
      source: 'circuit-laws',
    },
    {
      ...(collapseNo.steps[0] as (typeof collapseNo.steps)[number]),
      meaning: 'the most that this line delivers: where D is 0 the two roots meet, at V/2',
    },
  ],
  assumptions: ['Direct current, steady state.'],
  validity: 'A load that holds its power constant, as most electronics do.',
  cautions: [],
  slips: [
    { slip: 'drop-for-voltage', steps: { V_1: 'I_1 * R' } },
    { slip: 'unstable-root', steps: { I_1: '(V + sqrt(D)) / (2 * R)', V_1: '(V - sqrt(D)) / 2' } },
    { slip: 'quarter-left-out', steps: { P_max: 'V^2 / R' } },
    { slip: 'power-at-wrong-end', steps: { I_1: 'P / V', V_1: 'V - P / V * R' } },
  ],
  guard: (input) => {
    requireObject(input, 'input', 'an object with supplyVoltage, resistance and load');
    requirePositive(input.resistance, 'resistance', 'Ω');
    requireObject(input.load, 'load', 'an object with power');
    requirePositive(input.load.power, 'load.power', 'W');
    return operatingPoint(input);
  },
  read: ({ supplyVoltage, resistance, load }) => ({ values: { V: supplyVoltage, R: resistance, P: load.power } }),
};
