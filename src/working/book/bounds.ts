/** What a load gets when its line is only known between limits: the same steps at the best ends, the middle and the worst. @module */

import type { RunResistance } from '../../cable/index.ts';
import { type Load, type OperatingPointInput, operatingPoint, type VoltageDropInput, voltageDrop } from '../../circuit/index.ts';
import { type PowerAtPdInput, powerAtPd } from '../../ethernet/index.ts';
import { appliedLimits, loopThatPowerSees } from '../../ethernet/power-at-pd.ts';
import { type FoundRange, filledIn, rangesIn } from '../../plan/bounds/ranges.ts';
import { bounds, type Ranged } from '../../plan/index.ts';
import { requireObject, requireOneOf } from '../../quantity/guards.ts';
import { InputError } from '../../quantity/input-error.ts';
import { type BookSheet, givens, steps } from '../engine/rows.ts';
import type { Figures, Reading, ReadingRow, SheetNo, Steps } from '../engine/sheet.ts';
import { coefficientSource, TWENTY, twentyGiven } from './conductors.ts';
import { circuitKeys } from './line.ts';
import { type LoadCase, loadCase } from './load.ts';
import { poweredKeys, runKeys } from './powered.ts';

/** The arguments of `bounds` in one object, the function by its name. */
export type BoundsWorkingInput =
  | { readonly fn: 'operatingPoint'; readonly input: Ranged<OperatingPointInput> }
  /** Out and back alike. */
  | { readonly fn: 'voltageDrop'; readonly input: Ranged<VoltageDropInput> }
  | { readonly fn: 'powerAtPd'; readonly input: Ranged<PowerAtPdInput> };

type Case = LoadCase | 'powered' | 'line' | 'in ohms' | 'in metres' | 'class bites' | 'collapse bites';

/** A line that does not carry the load at one of the ends. */
const cannot = (explained: Steps<never>): SheetNo<never> => ({
  says: 'at the @ the line cannot carry the load: there is no such current',
  steps: explained,
});
// biome-ignore format: one figure a row
const collapseNo = cannot(steps([
  ['Pmax_#', 'W', 'V_#^2 / (4 * R_#)', '@: the most that the line delivers to any load', { latex: 'P_{\\max,#}', source: 'collapse', each: 'end' }],
]));
// biome-ignore format: one figure a row
const shortNo = cannot(steps([
  ['Imax_#', 'A', 'V_# / R_#', '@: the most that the line passes, into a short at its end', { latex: 'I_{\\max,#}', each: 'end' }],
]));

export const boundsSheet: BookSheet<BoundsWorkingInput, Case> = {
  title: 'What a load gets, between the best and the worst',
  needs: ['fn'],
  keys: ['fn', 'resistance', ...runKeys, ...circuitKeys, 'length', ...poweredKeys].filter((key) => key !== 'out' && key !== 'back'),
  // biome-ignore format: one figure a row
  givens: [
    ['P_PSE', 'W', 'power of the class at the port', 'poeClass', { source: 'ieee-802.3-class', when: 'powered' }],
    { ...twentyGiven, when: 'in metres' },
    givens([
      ['V_#', 'V', '@: voltage at the supply', 'supplyVoltage or pseVoltage', { source: 'row' }],
    ['R_#', 'Ω', '@: resistance of the line, out and back', 'resistance', { when: 'in ohms' }],
    ['r20_#', 'Ω/m', '@: one metre of one conductor at 20 °C', 'conductor', { source: 'row', when: 'in metres' }],
    ['alpha_#', '1/K', '@: temperature coefficient at 20 °C', 'conductor', { source: 'row', when: 'in metres' }],
    ['T_#', '°C', '@: temperature of the conductors', 'temperature', { when: 'in metres' }],
    ['L_#', 'm', '@: length, one way', 'length', { when: 'in metres' }],
    ['P_#', 'W', '@: power that the load draws', 'load.power or pdPower', { source: 'row', when: 'constant power' }],
    ['I_#', 'A', '@: current that the load draws', 'load.current', { when: 'constant current' }],
    ['RL_#', 'Ω', '@: resistance of the load', 'load.resistance', { latex: 'R_{L,#}', when: 'constant resistance' }],
    ], { each: 'end' }),
  ],
  // biome-ignore format: one figure a row
  steps: [
    steps([
    ['R_#', 'Ω', '2 * r20_# * (1 + alpha_# * (T_# - T_ref)) * L_#', '@: resistance of the line at its temperature, out and back', { when: 'in metres' }],
    ['D_#', 'V²', 'V_#^2 - 4 * P_# * R_#', '@: discriminant, what stands under the root of the quadratic V I = P + I² R', { source: 'constant-power', when: 'constant power', no: collapseNo }],
    ['I_#', 'A', '2 * P_# / (V_# + sqrt(D_#))', '@: current, the smaller root', { source: 'constant-power', core: '<current>', when: 'constant power' }],
    ['I_#', 'A', 'V_# / (R_# + RL_#)', '@: current through line and load in series', { core: '<current>', when: 'constant resistance' }],
    ['U_#', 'V', '(V_# + sqrt(D_#)) / 2', '@: voltage at the load, the larger root', { source: 'constant-power', core: '<loadVoltage>', when: 'constant power' }],
    ['U_#', 'V', 'V_# - I_# * R_#', '@: voltage at the load', { core: '<loadVoltage>', when: 'constant current', no: shortNo }],
    ['U_#', 'V', 'I_# * RL_#', '@: voltage at the load', { core: '<loadVoltage>', when: 'constant resistance' }],
    ['d_#', 'V', 'I_# * R_#', '@: voltage lost along the line', { core: '<voltageDrop>' }],
    ['H_#', 'W', 'I_#^2 * R_#', '@: heat in the line', { core: '<lineLoss>' }],
    ['S_#', 'W', 'V_# * I_#', '@: power from the supply', { core: '<supplyPower>' }],
    ['A_#', 'W', 'P_PSE - (P_PSE / V_#)^2 * R_#', '@: power available at the device, that of the port less the heat in the run', { core: '<available>', when: 'class bites' }],
    ['A_#', 'W', 'V_#^2 / (4 * R_#)', '@: power available at the device, all that the line delivers', { source: 'collapse', core: '<available>', when: 'collapse bites' }],
  ], { each: 'end' }),
    steps([
    ['U_high', 'V', 'max([U_#,])', 'highest voltage at the load', { core: 'fields.loadVoltage.high', when: 'line' }],
    ['U_low', 'V', 'min([U_#,])', 'lowest voltage at the load', { core: 'fields.loadVoltage.low', when: 'line' }],
    ['U_low', 'V', 'min([U_#,])', 'lowest voltage at the device', { core: "fields['operating.loadVoltage'].low", when: 'powered' }],
    ['A_low', 'W', 'min([A_#,])', 'least power available at the device', { core: 'fields.available.low', when: 'powered' }],
  ], { source: 'bounds-by-ends' }),
  ],
  tables: [['The best end of every range, the middle of each, and the worst end', 'at the', 'end']],
  assumptions: [
    'What the load has falls with the resistance of its line and with what it draws, and rises with the voltage of the supply, each by itself: so it is least where all are at their worst ends.',
  ],
  validity: 'Direct current, steady state. Every range is taken to be independent of the others.',
  slips: [
    ['best-for-worst', { U_low: 'U_1', A_low: 'A_1' }],
    ['middle-for-worst', { U_low: 'U_2', A_low: 'A_2' }],
    // Row 1 is the best, and row 3 the worst: there the most is lost.
    ['drop-for-voltage', { 'U_#': 'I_# * R_#', U_high: 'I_1 * R_1', U_low: 'I_3 * R_3' }],
    ['voltage-for-drop', { 'd_#': 'V_# - I_# * R_#' }],
    [
      'unstable-root',
      { 'U_#': '(V_# - sqrt(D_#)) / 2', U_high: '(V_1 - sqrt(D_1)) / 2', U_low: '(V_3 - sqrt(D_3)) / 2' },
      'constant power',
    ],
    ['power-at-wrong-end', { 'U_#': 'V_# - P_# / V_# * R_#' }, 'constant power'],
    ['one-way-length', { 'L_#': 'L_# / 2' }, 'in metres'],
    ['cold-resistance', { 'T_#': 'T_ref' }, 'in metres'],
    ['class-power-for-pd-power', { 'A_#': 'P_PSE' }, 'powered'],
  ],
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

const ENDS = ['best', 'middle', 'worst'] as const;
type End = (typeof ENDS)[number];

/** Numbers of which less is worse: voltages of the supply, and the resistance of the load. */
const LESS_IS_WORSE = /[vV]oltage$|load\.resistance$/;

function at(range: FoundRange, end: End): number {
  if (end === 'middle') return range.nominal;
  return (end === 'worst') === LESS_IS_WORSE.test(range.path) ? range.low : range.high;
}

/** What the core has at an end: the middle is its nominal; an extreme where all ranges push the figure the same way. */
function namesAt(end: End, kind: LoadCase, isPowered: boolean): Readonly<Record<string, string>> {
  const inside = isPowered ? 'operating.' : '';
  const figures: readonly (readonly [name: string, path: string, worst: 'low' | 'high'])[] = [
    ['loadVoltage', `${inside}loadVoltage`, 'low'],
    ['current', isPowered ? 'totalCurrent' : 'current', 'high'],
    ['voltageDrop', `${inside}voltageDrop`, 'high'],
    ['lineLoss', `${inside}lineLoss`, 'high'],
    ['supplyPower', `${inside}supplyPower`, 'high'],
    ['available', 'available', 'low'],
  ];
  if (end === 'middle') return Object.fromEntries(figures.map(([name, path]) => [name, `nominal.${path}`]));
  // With a fixed current more supply voltage is more power drawn; with a fixed resistance more current too.
  const moved = kind === 'constant power' ? figures : figures.slice(0, kind === 'constant resistance' ? 1 : 4);
  // The steps after the rows have the least, and of a line the most, by the same name.
  const later = end === 'worst' ? ['loadVoltage', 'available'] : isPowered ? [] : ['loadVoltage'];
  return Object.fromEntries(
    moved
      .filter(([name]) => !later.includes(name))
      .map(([name, path, worst]) => {
        const side = (end === 'worst') === (worst === 'low') ? 'low' : 'high';
        // The fields of the core are named by their whole path.
        return [name, path.includes('.') ? `fields['${path}'].${side}` : `fields.${path}.${side}`];
      }),
  );
}

/** The three rows: every number at the end that is best for the load, at its middle, and at the end that is worst. */
function readBounds({ fn, input }: BoundsWorkingInput): Reading<Case> {
  const ranges = rangesIn(input, []);
  const filled = ENDS.map((end) => filledIn(input, new Map(ranges.map((range) => [range.path, at(range, end)]))));
  const isPowered = fn === 'powerAtPd';
  const [first] = filled;
  const kind = isPowered ? 'constant power' : loadCase((first as OperatingPointInput).load);
  const end = filled.map((one, index): ReadingRow<Case> => {
    const label = ENDS[index] as End;
    const links = namesAt(label, kind, isPowered);
    if (isPowered) return { label, links, ...poweredRow(one as PowerAtPdInput) };
    return { label, links, ...(fn === 'voltageDrop' ? metresRow(one as VoltageDropInput) : lineRow(one as OperatingPointInput)) };
  });
  if (!isPowered) return { cases: ['line', kind, fn === 'voltageDrop' && 'in metres'], rows: { end } };
  const limits = appliedLimits(first as PowerAtPdInput);
  const { pseType } = input as PowerAtPdInput;
  return {
    values: { P_PSE: limits.psePower },
    cases: ['powered', kind],
    rows: { end },
    assumptions: [
      `${limits.pairs} pairs carry the power.`,
      pseType === undefined && `The port is of Type ${limits.type}, the weakest that serves the class.`,
    ],
  };
}

type Row = Pick<ReadingRow<Case>, 'values' | 'cases' | 'sources'>;

function lineRow({ supplyVoltage, resistance, load }: OperatingPointInput): Row {
  return { values: { ...loadFigures(load), 'V_#': supplyVoltage, 'R_#': resistance }, cases: ['in ohms'] };
}

function metresRow({ supplyVoltage, conductor, length, temperature, load }: VoltageDropInput): Row {
  const { resistancePerMetre = 0, temperatureCoefficient: alpha = 0, source } = conductor ?? {};
  const line = { 'r20_#': resistancePerMetre, 'alpha_#': alpha, 'T_#': temperature ?? TWENTY, 'L_#': length };
  return {
    values: { ...loadFigures(load), ...line, 'V_#': supplyVoltage },
    sources: { 'r20_#': source, 'alpha_#': coefficientSource(alpha) },
  };
}

function poweredRow(input: PowerAtPdInput): Row {
  const limits = appliedLimits(input);
  const { pseVoltage: V = limits.pseVoltageMin, pdPower: P = limits.pdPower } = input;
  const R = loopThatPowerSees(input.resistance, limits.pairs);
  return {
    values: { 'V_#': V, 'R_#': R, 'P_#': P },
    // Beyond half the supply voltage more current brings less power: the line bites before the class does.
    cases: ['in ohms', 2 * limits.psePower * R > V * V ? 'collapse bites' : 'class bites'],
    sources: {
      'V_#': input.pseVoltage === undefined ? 'ieee-802.3-pse-voltage' : undefined,
      'P_#': input.pdPower === undefined ? 'ieee-802.3-class' : undefined,
    },
  };
}

function loadFigures({ power = 0, current = 0, resistance = 0 }: Load): Figures {
  return { 'P_#': power, 'I_#': current, 'RL_#': resistance };
}
