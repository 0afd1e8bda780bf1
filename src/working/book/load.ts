/** A load at the end of a line: what sheets share, and two sheets. @module */
import { type Load, type OperatingPointInput, operatingPoint } from '../../circuit/index.ts';
import { requireObject, requirePositive } from '../../quantity/guards.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { Ohms, Volts, Watts } from '../../quantity/units.ts';
import { type BookSheet, given, givens, step, steps } from '../engine/rows.ts';
import type { Givens, SheetGiven, SheetNo, SheetStep, SlipRow, Steps } from '../engine/sheet.ts';

/** The case of each kind of load. */
export type LoadCase = 'constant power' | 'constant current' | 'constant resistance';

/** The kind of a load. */
export function loadCase(load: Load): LoadCase {
  if (load.power !== undefined) return 'constant power';
  if (load.current !== undefined) return 'constant current';
  if (load.resistance !== undefined) return 'constant resistance';
  throw new InputError('conflict', 'load', 'exactly one of power, current and resistance', load);
}

/** Keys of the command for a load. */
export const loadKeys: readonly string[] = ['power', 'current', 'loadResistance'];

export const CANNOT = 'the line cannot carry the load: there is no such current';

/** The most power of a line: the explanation of a collapse. */
const collapseStep = step('P_max', 'W', 'V^2 / (4 * R)', 'the most that this line delivers to any load', {
  source: 'collapse',
  core: 'maximumLoadPower',
});
const collapseNo: SheetNo<never> = { says: CANNOT, steps: [collapseStep] };

/** The voltage at the supply. */
export const supplyGiven: SheetGiven<never> = given('V', 'V', 'voltage at the supply', 'supplyVoltage');

/** The load. */
// biome-ignore format: one figure a row
export const loadGivens: Givens<LoadCase> = givens([
  ['P', 'W', 'power that the load draws, whatever its voltage', 'load.power', { when: 'constant power' }],
  ['I', 'A', 'current that the load draws, whatever its voltage', 'load.current', { when: 'constant current' }],
  ['R_L', 'Ω', 'resistance of the load', 'load.resistance', { when: 'constant resistance' }],
]);

/** The quadratic of a constant-power load, and its smaller current. */
// biome-ignore format: one figure a row
export const quadraticSteps: Steps<never> = steps([
  ['D', 'V²', 'V^2 - 4 * P * R', 'discriminant: what stands under the root of the quadratic V I = P + I² R', { source: 'constant-power', no: collapseNo }],
  ['I', 'A', '2 * P / (V + sqrt(D))', 'current: the smaller root, (V - √D) / (2 R), written so that no two nearly equal figures are subtracted', { source: 'constant-power' }],
]);

/** The current, of each kind of load. */
// biome-ignore format: one figure a row
export const currentSteps: Steps<LoadCase> = [
  ...reported(quadraticSteps, 'current').map((one): SheetStep<LoadCase> => ({ ...one, when: 'constant power' })),
  step('I', 'A', 'V / (R + R_L)', 'current through line and load in series', { core: 'current', when: 'constant resistance' }),
];

/** Steps of which the last is reported by the core under this name. */
export function reported<Case extends string>(figures: Steps<Case>, core: string): SheetStep<Case>[] {
  return figures.map((one, place) => (place === figures.length - 1 ? { ...one, core } : one));
}

/** The voltage at the load, of each kind. */
// biome-ignore format: one figure a row
export const voltageSteps: Steps<LoadCase> = steps([
  ['V_L', 'V', '(V + sqrt(D)) / 2', 'voltage at the load: the larger root', { source: 'constant-power', when: 'constant power' }],
  ['V_L', 'V', 'V - I * R', 'voltage at the load', {
    when: 'constant current',
    no: { says: CANNOT, steps: [step('I_max', 'A', 'V / R', 'the most that this line passes, into a short at its end', { core: 'maximumCurrent' })] },
  }],
  ['V_L', 'V', 'I * R_L', 'voltage at the load', { when: 'constant resistance' }],
], { core: 'loadVoltage' });

/** The drop along the line. */
export const dropStep: SheetStep<never> = step('V_drop', 'V', 'I * R', 'voltage lost along the line', { core: 'voltageDrop' });

/** What follows from the current. */
// biome-ignore format: one figure a row
export const powerSteps: Steps<never> = steps([
  ['k_drop', '1', 'I * R / V', 'the drop as a fraction of the supply voltage', { core: 'dropFraction' }],
  ['P_loss', 'W', 'I^2 * R', 'heat in the line', { core: 'lineLoss' }],
  ['P_S', 'W', 'V * I', 'power from the supply', { core: 'supplyPower' }],
]);

/** The slips of a load at the end of a line. */
export const pointSlips: readonly SlipRow<never>[] = [
  // Of a power the two roots add up to the supply voltage: the one is just what is lost at the other.
  ['drop-for-voltage', { V_L: 'I * R' }],
  ['voltage-for-drop', { V_drop: 'V - I * R' }],
  ['unstable-root', { I: '2 * P / (V - sqrt(D))', V_L: '(V - sqrt(D)) / 2' }],
  ['power-at-wrong-end', { I: 'P / V', V_L: 'V - P / V * R' }],
  ['percent-of-wrong-voltage', { k_drop: 'I * R / (V - I * R)' }],
];

export const operatingPointSheet: BookSheet<OperatingPointInput, LoadCase> = {
  title: 'Where a load settles at the end of a line',
  needs: ['supplyVoltage', 'resistance', 'power|current|loadResistance'],
  givens: [supplyGiven, ['R', 'Ω', 'resistance of the line, out and back', 'resistance'], loadGivens],
  steps: [currentSteps, dropStep, powerSteps, voltageSteps],
  assumptions: ['Direct current, steady state.'],
  validity: 'Any resistive line.',
  slips: pointSlips,
  guard: operatingPoint,
  read: ({ load }) => ({
    cases: [loadCase(load)],
    assumptions: [load.power !== undefined && 'A load of constant power has two roots; it settles at the one with the higher voltage.'],
  }),
};

/** A line, and a load of constant power: what `operatingPoint` takes, and no other kind of load. */
export interface MostPowerInput {
  /** Voltage at the supply. [V] */
  readonly supplyVoltage: Volts;
  /** Resistance of the line, out and back, above 0. [Ω] */
  readonly resistance: Ohms;
  /** Power of the load, above 0. [W] */
  readonly load: { readonly power: Watts };
}

export const mostPowerSheet: BookSheet<MostPowerInput, never> = {
  title: 'The most power a line can carry, and why there are two roots',
  core: 'operatingPoint',
  needs: ['supplyVoltage', 'resistance', 'power'],
  // biome-ignore format: one figure a row
  givens: [
    ['V', 'V', 'voltage at the supply', 'supplyVoltage'],
    ['R', 'Ω', 'resistance of the line, out and back', 'resistance'],
    ['P', 'W', 'power that the load draws, whatever its voltage', 'load.power'],
  ],
  // biome-ignore format: one figure a row
  steps: [
    quadraticSteps.slice(0, 1),
    ['I_1', 'A', '2 * P / (V + sqrt(D))', 'smaller current: more load, more current, and the voltage holds', { source: 'constant-power', core: 'current' }],
    ['V_1', 'V', '(V + sqrt(D)) / 2', 'voltage at the load with it, above V/2: here the load settles', { source: 'constant-power', core: 'loadVoltage' }],
    ['P_1', 'W', 'I_1^2 * R', 'heat in the line with it', { core: 'lineLoss' }],
    ['I_2', 'A', '(V + sqrt(D)) / (2 * R)', 'larger current: the same power at less voltage, and no load stays there', { source: 'constant-power' }],
    ['V_2', 'V', 'P / I_2', 'voltage at the load with it, under V/2'],
    ['P_2', 'W', 'I_2^2 * R', 'heat in the line with it: more than the load takes'],
    { ...collapseStep, meaning: 'the most that this line delivers: where D is 0 the two roots meet, at V/2' },
  ],
  assumptions: ['Direct current, steady state.'],
  validity: 'A load that holds its power constant, as most electronics do.',
  slips: [
    ['drop-for-voltage', { V_1: 'I_1 * R' }],
    ['unstable-root', { I_1: '(V + sqrt(D)) / (2 * R)', V_1: '(V - sqrt(D)) / 2' }],
    ['quarter-left-out', { P_max: 'V^2 / R' }],
    ['power-at-wrong-end', { I_1: 'P / V', V_1: 'V - P / V * R' }],
  ],
  guard: (input) => {
    requireObject(input, 'input', 'an object with supplyVoltage, resistance and load');
    requirePositive(input.resistance, 'resistance', 'Ω');
    requireObject(input.load, 'load', 'an object with power');
    requirePositive(input.load.power, 'load.power', 'W');
    return operatingPoint(input);
  },
  read: () => ({}),
};
