/** Where a load settles at the end of a line: the steps that several sheets share. @module */
import { givens, step, steps } from '../rows.ts';
import type { Load } from '../../circuit/operating-point.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { Figures, SheetGiven, SheetNo, SheetSlip, SheetStep } from '../sheet.ts';

/** The case of each kind of load. */
export const POWER = 'constant power';
export const CURRENT = 'constant current';
export const RESISTANCE = 'constant resistance';

export const CANNOT = 'the line cannot carry the load: there is no such current';

/** The most power of a line. */
export const collapseStep: SheetStep = step('P_max', 'W', 'V^2 / (4 * R)', 'the most that this line delivers to any load', { source: 'collapse', core: 'maximumLoadPower' });

/** The most current of a line. */
export const shortStep: SheetStep = step('I_max', 'A', 'V / R', 'the most that this line passes, into a short at its end', { core: 'maximumCurrent' });

/** A step that the core does not report. */
export function unreported({ core: _core, ...step }: SheetStep): SheetStep {
  return step;
}

/** The explanation of a collapse. */
export const collapseNo: SheetNo = { says: CANNOT, steps: [collapseStep] };

/** The explanation of a current that even a shorted line does not pass. */
export const shortNo: SheetNo = { says: CANNOT, steps: [shortStep] };

/** The load. */
export const loadGivens: readonly SheetGiven[] = givens([
  ['P', 'W', 'power that the load draws, whatever its voltage', 'load.power', { when: POWER }],
  ['I', 'A', 'current that the load draws, whatever its voltage', 'load.current', { when: CURRENT }],
  ['R_L', 'Ω', 'resistance of the load', 'load.resistance', { when: RESISTANCE }],
]);

/** The quadratic of a constant-power load. */
export const discriminantStep: SheetStep = step('D', 'V²', 'V^2 - 4 * P * R', 'discriminant: what stands under the root of the quadratic V I = P + I² R', { source: 'constant-power', no: collapseNo });

/** Its smaller current. */
export const currentStep: SheetStep = step('I', 'A', '2 * P / (V + sqrt(D))', 'current: the smaller root, (V - √D) / (2 R), written so that no two nearly equal figures are subtracted', { source: 'constant-power' });

/** The current, of each kind of load. */
export const currentSteps: readonly SheetStep[] = [
  { ...discriminantStep, when: POWER },
  { ...currentStep, core: 'current', when: POWER },
  ...steps([
    ['I', 'A', 'V / (R + R_L)', 'current through line and load in series', { core: 'current', when: RESISTANCE }],
  ]),
];

/** The voltage at the load, of each kind. */
export const voltageSteps: readonly SheetStep[] = steps([
  ['V_L', 'V', '(V + sqrt(D)) / 2', 'voltage at the load: the larger root', { source: 'constant-power', when: POWER }],
  ['V_L', 'V', 'V - I * R', 'voltage at the load', { when: CURRENT, no: shortNo }],
  ['V_L', 'V', 'I * R_L', 'voltage at the load', { when: RESISTANCE }],
], { core: 'loadVoltage' });

/** The drop along the line. */
export const dropStep: SheetStep = step('V_drop', 'V', 'I * R', 'voltage lost along the line', { core: 'voltageDrop' });

/** What follows from current and drop. */
export const powerSteps: readonly SheetStep[] = steps([
  ['k_drop', '1', 'I * R / V', 'the drop as a fraction of the supply voltage', { core: 'dropFraction' }],
  ['P_loss', 'W', 'I^2 * R', 'heat in the line', { core: 'lineLoss' }],
  ['P_S', 'W', 'V * I', 'power from the supply', { core: 'supplyPower' }],
]);

/** The slips of a load at the end of a line. */
export const pointSlips: readonly SheetSlip[] = [
  // Of a power the two roots add up to the supply voltage: the one is just what is lost at the other.
  { slip: 'drop-for-voltage', steps: { V_L: 'I * R' } },
  { slip: 'voltage-for-drop', steps: { V_drop: 'V - I * R' } },
  { slip: 'unstable-root', steps: { I: '2 * P / (V - sqrt(D))', V_L: '(V - sqrt(D)) / 2' } },
  { slip: 'power-at-wrong-end', steps: { I: 'P / V', V_L: 'V - P / V * R' } },
  { slip: 'percent-of-wrong-voltage', steps: { k_drop: 'I * R / (V - I * R)' } },
];

/** The figures of a load, and its case. */
export function loadReading(load: Load): { values: Figures; cases: string[] } {
  if (load.power !== undefined) return { values: { P: load.power }, cases: [POWER] };
  if (load.current !== undefined) return { values: { I: load.current }, cases: [CURRENT] };
  if (load.resistance !== undefined) return { values: { R_L: load.resistance }, cases: [RESISTANCE] };
  throw new InputError('conflict', 'load', 'exactly one of power, current and resistance', load);
}

