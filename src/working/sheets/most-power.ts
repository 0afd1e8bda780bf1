/** The most power that a line can carry, and why there are two roots. @module */
import { givens, steps } from '../rows.ts';
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
  givens: givens([
    ['V', 'V', 'voltage at the supply', 'supplyVoltage'],
    ['R', 'Ω', 'resistance of the line, out and back', 'resistance'],
    ['P', 'W', 'power that the load draws, whatever its voltage', 'load.power'],
  ]),
  steps: [
    discriminantStep,
    ...steps([
      ['I_1', 'A', '2 * P / (V + sqrt(D))', 'smaller current: more load, more current, and the voltage holds', { source: 'constant-power', core: 'current' }],
      ['V_1', 'V', '(V + sqrt(D)) / 2', 'voltage at the load with it, above V/2: here the load settles', { source: 'constant-power', core: 'loadVoltage' }],
      ['P_1', 'W', 'I_1^2 * R', 'heat in the line with it', { core: 'lineLoss' }],
      ['I_2', 'A', '(V + sqrt(D)) / (2 * R)', 'larger current: the same power at less voltage, and no load stays there', { source: 'constant-power' }],
      ['V_2', 'V', 'P / I_2', 'voltage at the load with it, under V/2'],
      ['P_2', 'W', 'I_2^2 * R', 'heat in the line with it: more than the load takes'],
    ]),
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

