/** What a load gets when its line is only known between limits: the same steps at the best ends, the middle and the worst. @module */
import { givens, steps } from '../rows.ts';
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

const endGivens: readonly SheetGiven[] = givens([
  ['V_#', 'V', '@: voltage at the supply', 'supplyVoltage or pseVoltage', { source: 'row' }],
  ['R_#', 'Ω', '@: resistance of the line, out and back', 'resistance', { when: 'in ohms' }],
  ['r20_#', 'Ω/m', '@: one metre of one conductor at 20 °C', 'conductor', { source: 'row', when: METRES }],
  ['alpha_#', '1/K', '@: temperature coefficient at 20 °C', 'conductor', { source: 'row', when: METRES }],
  ['T_#', '°C', '@: temperature of the conductors', 'temperature', { when: METRES }],
  ['L_#', 'm', '@: length, one way', 'length', { when: METRES }],
  ['P_#', 'W', '@: power that the load draws', 'load.power or pdPower', { source: 'row', when: POWER }],
  ['I_#', 'A', '@: current that the load draws', 'load.current', { when: CURRENT }],
  ['RL_#', 'Ω', '@: resistance of the load', 'load.resistance', { latex: 'R_{L,#}', when: RESISTANCE }],
], { each: 'end' });

/** A line that does not carry the load at one of the ends. */
const collapseNo: SheetNo = {
  says: 'at the @ the line cannot carry the load: there is no such current',
  steps: steps([
    ['Pmax_#', 'W', 'V_#^2 / (4 * R_#)', '@: the most that the line delivers to any load', { latex: 'P_{\\max,#}', source: 'collapse', each: 'end' }],
  ]),
};
const shortNo: SheetNo = {
  says: collapseNo.says,
  steps: steps([
    ['Imax_#', 'A', 'V_# / R_#', '@: the most that the line passes, into a short at its end', { latex: 'I_{\\max,#}', each: 'end' }],
  ]),
};

const endSteps: readonly SheetStep[] = steps([
  ['R_#', 'Ω', '2 * r20_# * (1 + alpha_# * (T_# - T_ref)) * L_#', '@: resistance of the line at its temperature, out and back', { when: METRES }],
  ['D_#', 'V²', 'V_#^2 - 4 * P_# * R_#', '@: discriminant, what stands under the root of the quadratic V I = P + I² R', { source: 'constant-power', when: POWER, no: collapseNo }],
  ['I_#', 'A', '2 * P_# / (V_# + sqrt(D_#))', '@: current, the smaller root', { source: 'constant-power', core: '<current>', when: POWER }],
  ['I_#', 'A', 'V_# / (R_# + RL_#)', '@: current through line and load in series', { core: '<current>', when: RESISTANCE }],
  ['U_#', 'V', '(V_# + sqrt(D_#)) / 2', '@: voltage at the load, the larger root', { source: 'constant-power', core: '<loadVoltage>', when: POWER }],
  ['U_#', 'V', 'V_# - I_# * R_#', '@: voltage at the load', { core: '<loadVoltage>', when: CURRENT, no: shortNo }],
  ['U_#', 'V', 'I_# * RL_#', '@: voltage at the load', { core: '<loadVoltage>', when: RESISTANCE }],
  ['d_#', 'V', 'I_# * R_#', '@: voltage lost along the line', { core: '<voltageDrop>' }],
  ['H_#', 'W', 'I_#^2 * R_#', '@: heat in the line', { core: '<lineLoss>' }],
  ['S_#', 'W', 'V_# * I_#', '@: power from the supply', { core: '<supplyPower>' }],
  ['A_#', 'W', 'P_PSE - (P_PSE / V_#)^2 * R_#', '@: power available at the device, that of the port less the heat in the run', { core: '<available>', when: 'class bites' }],
  ['A_#', 'W', 'V_#^2 / (4 * R_#)', '@: power available at the device, all that the line delivers', { source: 'collapse', core: '<available>', when: 'collapse bites' }],
], { each: 'end' });

/** The two ends of each result. */
const results: readonly SheetStep[] = steps([
  ['U_high', 'V', 'max([U_#,])', 'highest voltage at the load', { core: 'fields.loadVoltage.high', when: 'line' }],
  ['U_low', 'V', 'min([U_#,])', 'lowest voltage at the load', { core: 'fields.loadVoltage.low', when: 'line' }],
  ['U_low', 'V', 'min([U_#,])', 'lowest voltage at the device', { core: "fields['operating.loadVoltage'].low", when: POWERED }],
  ['A_low', 'W', 'min([A_#,])', 'least power available at the device', { core: 'fields.available.low', when: POWERED }],
], { source: 'bounds-by-ends' });

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
    ...givens([
      ['P_PSE', 'W', 'power of the class at the port', 'poeClass', { source: 'ieee-802.3-class', when: POWERED }],
    ]),
    { ...twentyGiven, when: METRES },
    ...endGivens,
  ],
  steps: [...endSteps, ...results],
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

