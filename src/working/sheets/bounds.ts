/** What a load gets when its line is only known between limits: the same steps at the best ends, the middle and the worst. @module */
import type { RunResistance } from '../../cable/run-resistance.ts';
import { operatingPoint } from '../../circuit/operating-point.ts';
import { voltageDrop } from '../../circuit/voltage-drop.ts';
import { powerAtPd } from '../../ethernet/power-at-pd.ts';
import { bounds } from '../../plan/bounds/bounds.ts';
import { requireObject, requireOneOf } from '../../quantity/guards.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { Sheet, SheetGiven, SheetNo, SheetSlip, SheetStep } from '../sheet.ts';
import { type BoundsWorkingInput, METRES, POWERED, readBounds } from './bounds-reading.ts';
import { CURRENT, POWER, RESISTANCE } from './point-steps.ts';
import { circuitKeys, poweredKeys, runKeys, twentyGiven } from './shared.ts';

const given = (figure: Omit<SheetGiven, 'each'>): SheetGiven => ({ ...figure, each: 'end' });
const step = (figure: Omit<SheetStep, 'each'>): SheetStep => ({ ...figure, each: 'end' });

const givens: readonly SheetGiven[] = [
  given({
    symbol: 'V_#',
    meaning: '@: voltage at the supply',
    unit: 'V',
    latex: 'V_{#}',
    core: 'supplyVoltage or pseVoltage',
    source: 'row',
  }),
  given({
    symbol: 'R_#',
    meaning: '@: resistance of the line, out and back',
    unit: 'Ω',
    latex: 'R_{#}',
    core: 'resistance',
    when: 'in ohms',
  }),
  given({
    symbol: 'r20_#',
    meaning: '@: one metre of one conductor at 20 °C',
    unit: 'Ω/m',
    latex: 'r_{20,#}',
    core: 'conductor',
    source: 'row',
    when: METRES,
  }),
  given({
    symbol: 'alpha_#',
    meaning: '@: temperature coefficient at 20 °C',
    unit: '1/K',
    latex: '\\alpha_{#}',
    core: 'conductor',
    source: 'row',
    when: METRES,
  }),
  given({ symbol: 'T_#', meaning: '@: temperature of the conductors', unit: '°C', latex: 'T_{#}', core: 'temperature', when: METRES }),
  given({ symbol: 'L_#', meaning: '@: length, one way', unit: 'm', latex: 'L_{#}', core: 'length', when: METRES }),
  given({
    symbol: 'P_#',
    meaning: '@: power that the load draws',
    unit: 'W',
    latex: 'P_{#}',
    core: 'load.power or pdPower',
    source: 'row',
    when: POWER,
  }),
  given({ symbol: 'I_#', meaning: '@: current that the load draws', unit: 'A', latex: 'I_{#}', core: 'load.current', when: CURRENT }),
  given({ symbol: 'RL_#', meaning: '@: resistance of the load', unit: 'Ω', latex: 'R_{L,#}', core: 'load.resistance', when: RESISTANCE }),
];

/** A line that does not carry the load at one of the ends. */
const collapseNo: SheetNo = {
  says: 'at the @ the line cannot carry the load: there is no such current',
  steps: [
    step({
      symbol: 'Pmax_#',
      meaning: '@: the most that the line delivers to any load',
      formula: 'V_#^2 / (4 * R_#)',
      unit: 'W',
      latex: 'P_{\\max,#}',
      source: 'collapse',
    }),
  ],
};
const shortNo: SheetNo = {
  says: collapseNo.says,
  steps: [
    step({
      symbol: 'Imax_#',
      meaning: '@: the most that the line passes, into a short at its end',
      formula: 'V_# / R_#',
      unit: 'A',
      latex: 'I_{\\max,#}',
      source: 'circuit-laws',
    }),
  ],
};

const steps: readonly SheetStep[] = [
  step({
    symbol: 'R_#',
    meaning: '@: resistance of the line at its temperature, out and back',
    formula: '2 * r20_# * (1 + alpha_# * (T_# - T_ref)) * L_#',
    unit: 'Ω',
    latex: 'R_{#}',
    source: 'circuit-laws',
    when: METRES,
  }),
  step({
    symbol: 'D_#',
    meaning: '@: discriminant, what stands under the root of the quadratic V I = P + I² R',
    formula: 'V_#^2 - 4 * P_# * R_#',
    unit: 'V²',
    latex: 'D_{#}',
    source: 'constant-power',
    when: POWER,
    no: collapseNo,
  }),
  step({
    symbol: 'I_#',
    meaning: '@: current, the smaller root',
    formula: '2 * P_# / (V_# + sqrt(D_#))',
    unit: 'A',
    latex: 'I_{#}',
    source: 'constant-power',
    core: '<current>',
    when: POWER,
  }),
  step({
    symbol: 'I_#',
    meaning: '@: current through line and load in series',
    formula: 'V_# / (R_# + RL_#)',
    unit: 'A',
    latex: 'I_{#}',
    source: 'circuit-laws',
    core: '<current>',
    when: RESISTANCE,
  }),
  step({
    symbol: 'U_#',
    meaning: '@: voltage at the load, the larger root',
    formula: '(V_# + sqrt(D_#)) / 2',
    unit: 'V',
    latex: 'U_{#}',
    source: 'constant-power',
    core: '<loadVoltage>',
    when: POWER,
  }),
  step({
    symbol: 'U_#',
    meaning: '@: voltage at the load',
    formula: 'V_# - I_# * R_#',
    unit: 'V',
    latex: 'U_{#}',
    source: 'circuit-laws',
    core: '<loadVoltage>',
    when: CURRENT,
    no: shortNo,
  }),
  step({
    symbol: 'U_#',
    meaning: '@: voltage at the load',
    formula: 'I_# * RL_#',
    unit: 'V',
    latex: 'U_{#}',
    source: 'circuit-laws',
    core: '<loadVoltage>',
    when: RESISTANCE,
  }),
  step({
    symbol: 'd_#',
    meaning: '@: voltage lost along the line',
    formula: 'I_# * R_#',
    unit: 'V',
    latex: 'd_{#}',
    source: 'circuit-laws',
    core: '<voltageDrop>',
  }),
  step({
    symbol: 'H_#',
    meaning: '@: heat in the line',
    formula: 'I_#^2 * R_#',
    unit: 'W',
    latex: 'H_{#}',
    source: 'circuit-laws',
    core: '<lineLoss>',
  }),
  step({
    symbol: 'S_#',
    meaning: '@: power from the supply',
    formula: 'V_# * I_#',
    unit: 'W',
    latex: 'S_{#}',
    source: 'circuit-laws',
    core: '<supplyPower>',
  }),
  step({
    symbol: 'A_#',
    meaning: '@: power available at the device, that of the port less the heat in the run',
    formula: 'P_PSE - (P_PSE / V_#)^2 * R_#',
    unit: 'W',
    latex: 'A_{#}',
    source: 'circuit-laws',
    core: '<available>',
    when: 'class bites',
  }),
  step({
    symbol: 'A_#',
    meaning: '@: power available at the device, all that the line delivers',
    formula: 'V_#^2 / (4 * R_#)',
    unit: 'W',
    latex: 'A_{#}',
    source: 'collapse',
    core: '<available>',
    when: 'collapse bites',
  }),
];

/** The two ends of each result. */
const results: readonly SheetStep[] = [
  {
    symbol: 'U_high',
    meaning: 'highest voltage at the load',
    formula: 'max([U_#,])',
    unit: 'V',
    latex: 'U_{\\mathrm{high}}',
    source: 'bounds-by-ends',
    core: 'fields.loadVoltage.high',
    when: 'line',
  },
  {
    symbol: 'U_low',
    meaning: 'lowest voltage at the load',
    formula: 'min([U_#,])',
    unit: 'V',
    latex: 'U_{\\mathrm{low}}',
    source: 'bounds-by-ends',
    core: 'fields.loadVoltage.low',
    when: 'line',
  },
  {
    symbol: 'U_low',
    meaning: 'lowest voltage at the device',
    formula: 'min([U_#,])',
    unit: 'V',
    latex: 'U_{\\mathrm{low}}',
    source: 'bounds-by-ends',
    core: "fields['operating.loadVoltage'].low",
    when: POWERED,
  },
  {
    symbol: 'A_low',
    meaning: 'least power available at the device',
    formula: 'min([A_#,])',
    unit: 'W',
    latex: 'A_{\\mathrm{low}}',
    source: 'bounds-by-ends',
    core: 'fields.available.low',
    when: POWERED,
  },
];

const slips: readonly SheetSlip[] = [
  { slip: 'best-for-worst', steps: { U_low: 'U_1', A_low: 'A_1' } },
  { slip: 'middle-for-worst', steps: { U_low: 'U_2', A_low: 'A_2' } },
  // Row 1 is the best, and row 3 the worst: there the most is lost.
  { slip: 'drop-for-voltage', steps: { 'U_#': 'I_# * R_#', U_high: 'I_1 * R_1', U_low: 'I_3 * R_3' } },
  { slip: 'voltage-for-drop', steps: { 'd_#': 'V_# - I_# * R_#' } },
  {
    slip: 'unstable-root',
    when: POWER,
    steps: { 'U_#': '(V_# - sqrt(D_#)) / 2', U_high: '(V_1 - sqrt(D_1)) / 2', U_low: '(V_3 - sqrt(D_3)) / 2' },
  },
  { slip: 'power-at-wrong-end', when: POWER, steps: { 'U_#': 'V_# - P_# / V_# * R_#' } },
  { slip: 'one-way-length', when: METRES, givens: { 'L_#': 'L_# / 2' } },
  { slip: 'cold-resistance', when: METRES, givens: { 'T_#': 'T_ref' } },
  { slip: 'class-power-for-pd-power', when: POWERED, steps: { 'A_#': 'P_PSE' } },
];

export const boundsSheet: Sheet<BoundsWorkingInput> = {
  title: 'What a load gets, between the best and the worst',
  core: 'bounds',
  keys: [...new Set(['fn', 'resistance', ...runKeys, ...circuitKeys, 'length', ...poweredKeys])].filter(
    (key) => key !== 'out' && key !== 'back',
  ),
  givens: [
    {
      symbol: 'P_PSE',
      meaning: 'power of the class at the port',
      unit: 'W',
      latex: 'P_{\\mathrm{PSE}}',
      core: 'poeClass',
      source: 'ieee-802.3-class',
      when: POWERED,
    },
    { ...twentyGiven, when: METRES },
    ...givens,
  ],
  steps: [...steps, ...results],
  tables: [{ title: 'The best end of every range, the middle of each, and the worst end', row: 'at the', lists: ['end'] }],
  assumptions: [
    'What the load has falls with the resistance of its line and with what it draws, and rises with the voltage of the supply, each by itself: so it is least where all are at their worst ends.',
  ],
  validity: 'Direct current, steady state. Every range is taken to be independent of the others.',
  cautions: [],
  slips,
  guard: (working) => {
    requireObject(working, 'input', 'an object with fn and input');
    const { fn, input } = working;
    requireOneOf(fn, ['operatingPoint', 'voltageDrop', 'powerAtPd'], 'fn');
    requireObject(input, 'input', 'the input of that function');
    if (fn === 'operatingPoint') return bounds(operatingPoint, input);
    if (fn === 'powerAtPd') {
      const { resistance } = input as { resistance?: RunResistance };
      if (typeof resistance === 'object' && resistance !== null && typeof resistance.twoPair === 'object')
        throw new InputError('conflict', 'input.resistance', 'one range of ohms, or a run without ranges', resistance);
      return bounds(powerAtPd, input);
    }
    if ('out' in input && input.out !== undefined)
      throw new InputError('conflict', 'input.out', 'one conductor for both ways: two have no sheet', input.out);
    return bounds(voltageDrop, input);
  },
  read: readBounds,
};
