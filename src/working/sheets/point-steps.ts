/** Where a load settles at the end of a line: the steps that several sheets share. @module */
import type { Load } from '../../circuit/operating-point.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { Figures, SheetGiven, SheetNo, SheetSlip, SheetStep } from '../sheet.ts';

/** The case of each kind of load. */
export const POWER = 'constant power';
export const CURRENT = 'constant current';
export const RESISTANCE = 'constant resistance';

export const CANNOT = 'the line cannot carry the load: there is no such current';

/** The most power of a line. */
export const collapseStep: SheetStep = {
  symbol: 'P_max',
  meaning: 'the most that this line delivers to any load',
  formula: 'V^2 / (4 * R)',
  unit: 'W',
  latex: 'P_{\\max}',
  source: 'collapse',
  core: 'maximumLoadPower',
};

/** The most current of a line. */
export const shortStep: SheetStep = {
  symbol: 'I_max',
  meaning: 'the most that this line passes, into a short at its end',
  formula: 'V / R',
  unit: 'A',
  latex: 'I_{\\max}',
  source: 'circuit-laws',
  core: 'maximumCurrent',
};

/** A step that the core does not report. */
export function unreported({ core: _core, ...step }: SheetStep): SheetStep {
  return step;
}

/** The explanation of a collapse. */
export const collapseNo: SheetNo = { says: CANNOT, steps: [collapseStep] };

/** The explanation of a current that even a shorted line does not pass. */
export const shortNo: SheetNo = { says: CANNOT, steps: [shortStep] };

/** The load. */
export const loadGivens: readonly SheetGiven[] = [
  { symbol: 'P', meaning: 'power that the load draws, whatever its voltage', unit: 'W', latex: 'P', core: 'load.power', when: POWER },
  { symbol: 'I', meaning: 'current that the load draws, whatever its voltage', unit: 'A', latex: 'I', core: 'load.current', when: CURRENT },
  { symbol: 'R_L', meaning: 'resistance of the load', unit: 'Ω', latex: 'R_{L}', core: 'load.resistance', when: RESISTANCE },
];

/** The quadratic of a constant-power load. */
export const discriminantStep: SheetStep = {
  symbol: 'D',
  meaning: 'discriminant: what stands under the root of the quadratic V I = P + I² R',
  formula: 'V^2 - 4 * P * R',
  unit: 'V²',
  latex: 'D',
  source: 'constant-power',
  no: collapseNo,
};

/** Its smaller current. */
export const currentStep: SheetStep = {
  symbol: 'I',
  meaning: 'current: the smaller root, (V - √D) / (2 R), written so that no two nearly equal figures are subtracted',
  formula: '2 * P / (V + sqrt(D))',
  unit: 'A',
  latex: 'I',
  source: 'constant-power',
};

/** The current, of each kind of load. */
export const currentSteps: readonly SheetStep[] = [
  { ...discriminantStep, when: POWER },
  { ...currentStep, core: 'current', when: POWER },
  {
    symbol: 'I',
    meaning: 'current through line and load in series',
    formula: 'V / (R + R_L)',
    unit: 'A',
    latex: 'I',
    source: 'circuit-laws',
    core: 'current',
    when: RESISTANCE,
  },
];

/** The voltage at the load, of each kind. */
export const voltageSteps: readonly SheetStep[] = [
  {
    symbol: 'V_L',
    meaning: 'voltage at the load: the larger root',
    formula: '(V + sqrt(D)) / 2',
    unit: 'V',
    latex: 'V_{L}',
    source: 'constant-power',
    core: 'loadVoltage',
    when: POWER,
  },
  {
    symbol: 'V_L',
    meaning: 'voltage at the load',
    formula: 'V - I * R',
    unit: 'V',
    latex: 'V_{L}',
    source: 'circuit-laws',
    core: 'loadVoltage',
    when: CURRENT,
    no: shortNo,
  },
  {
    symbol: 'V_L',
    meaning: 'voltage at the load',
    formula: 'I * R_L',
    unit: 'V',
    latex: 'V_{L}',
    source: 'circuit-laws',
    core: 'loadVoltage',
    when: RESISTANCE,
  },
];

/** The drop along the line. */
export const dropStep: SheetStep = {
  symbol: 'V_drop',
  meaning: 'voltage lost along the line',
  formula: 'I * R',
  unit: 'V',
  latex: 'V_{\\mathrm{drop}}',
  source: 'circuit-laws',
  core: 'voltageDrop',
};

/** What follows from current and drop. */
export const powerSteps: readonly SheetStep[] = [
  {
    symbol: 'k_drop',
    meaning: 'the drop as a fraction of the supply voltage',
    formula: 'I * R / V',
    unit: '1',
    latex: 'k_{\\mathrm{drop}}',
    source: 'circuit-laws',
    core: 'dropFraction',
  },
  {
    symbol: 'P_loss',
    meaning: 'heat in the line',
    formula: 'I^2 * R',
    unit: 'W',
    latex: 'P_{\\mathrm{loss}}',
    source: 'circuit-laws',
    core: 'lineLoss',
  },
  {
    symbol: 'P_S',
    meaning: 'power from the supply',
    formula: 'V * I',
    unit: 'W',
    latex: 'P_{S}',
    source: 'circuit-laws',
    core: 'supplyPower',
  },
];

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
