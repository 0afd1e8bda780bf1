/** Ranges as three rows: every number at the end that is best for the load, at its middle, and at the end that is worst. @module */
import type { OperatingPointInput } from '../../circuit/operating-point.ts';
import type { VoltageDropInput } from '../../circuit/voltage-drop.ts';
import { appliedLimits, loopThatPowerSees, type PowerAtPdInput } from '../../ethernet/power-at-pd.ts';
import { type FoundRange, filledIn, type Ranged, rangesIn } from '../../plan/bounds/ranges.ts';
import type { FigureSources, Figures, Reading, ReadingRow } from '../sheet.ts';
import { loadReading, POWER, RESISTANCE } from './point-steps.ts';
import { coefficientSource } from './shared.ts';

/** The arguments of `bounds` in one object, the function by its name. */
export type BoundsWorkingInput =
  | { readonly fn: 'operatingPoint'; readonly input: Ranged<OperatingPointInput> }
  /** Out and back alike. */
  | { readonly fn: 'voltageDrop'; readonly input: Ranged<VoltageDropInput> }
  | { readonly fn: 'powerAtPd'; readonly input: Ranged<PowerAtPdInput> };

/** A device that has a class. */
export const POWERED = 'powered';
/** A line in metres. */
export const METRES = 'in metres';

type End = 'best' | 'middle' | 'worst';
const ENDS: readonly End[] = ['best', 'middle', 'worst'];

/** Numbers of which less is worse: voltages of the supply, and the resistance of the load. */
const LESS_IS_WORSE = /[vV]oltage$|load\.resistance$/;

function at(range: FoundRange, end: End): number {
  if (end === 'middle') return range.nominal;
  return (end === 'worst') === LESS_IS_WORSE.test(range.path) ? range.low : range.high;
}

/** What the core has at an end: the middle is its nominal; an extreme where all ranges push the figure the same way. */
function namesAt(end: End, kind: string, isPowered: boolean): Readonly<Record<string, string>> {
  const inside = isPowered ? 'operating.' : '';
  const figures: [name: string, path: string, worst: 'low' | 'high'][] = [
    ['loadVoltage', `${inside}loadVoltage`, 'low'],
    ['current', isPowered ? 'totalCurrent' : 'current', 'high'],
    ['voltageDrop', `${inside}voltageDrop`, 'high'],
    ['lineLoss', `${inside}lineLoss`, 'high'],
    ['supplyPower', `${inside}supplyPower`, 'high'],
    ...(isPowered ? [['available', 'available', 'low'] as [string, string, 'low']] : []),
  ];
  // With a fixed current more supply voltage is more power drawn; with a fixed resistance more current too.
  const moved = kind === POWER ? figures : figures.slice(0, kind === RESISTANCE ? 1 : 4);
  // The steps after the rows have the least, and of a line the most, by the same name.
  const later = end === 'worst' ? ['loadVoltage', 'available'] : end === 'best' && !isPowered ? ['loadVoltage'] : [];
  const names = (end === 'middle' ? figures : moved).filter(([name]) => !later.includes(name));
  return Object.fromEntries(
    names.map(([name, path, worst]) => {
      const side = (end === 'worst') === (worst === 'low') ? 'low' : 'high';
      // The fields of the core are named by their whole path.
      return [name, end === 'middle' ? `nominal.${path}` : path.includes('.') ? `fields['${path}'].${side}` : `fields.${path}.${side}`];
    }),
  );
}

/** The three rows. */
export function readBounds({ fn, input }: BoundsWorkingInput): Reading {
  const ranges = rangesIn(input, []);
  const filled = ENDS.map((end) => filledIn(input, new Map(ranges.map((range) => [range.path, at(range, end)]))));
  const row = (end: End, { values, cases, kind, sources = {} }: Row): ReadingRow => ({
    label: end,
    values,
    cases,
    sources,
    links: namesAt(end, kind, fn === 'powerAtPd'),
  });
  if (fn === 'powerAtPd') {
    const points = filled.map((one) => poweredRow(one as PowerAtPdInput));
    const limits = appliedLimits(filled[0] as PowerAtPdInput);
    return {
      values: { P_PSE: limits.psePower },
      cases: [POWERED, POWER],
      rows: { end: points.map((point, index) => row(ENDS[index] as End, point)) },
      assumptions: [
        `${limits.pairs} pairs carry the power.`,
        ...((input as PowerAtPdInput).pseType === undefined
          ? [`The port is of Type ${limits.type}, the weakest that serves the class.`]
          : []),
      ],
    };
  }
  const points = filled.map((one) => (fn === 'voltageDrop' ? metresRow(one as VoltageDropInput) : lineRow(one as OperatingPointInput)));
  return {
    values: { T_ref: 20 },
    cases: ['line', (points[0] as Row).kind, ...(fn === 'voltageDrop' ? [METRES] : [])],
    rows: { end: points.map((point, index) => row(ENDS[index] as End, point)) },
  };
}

interface Row {
  readonly values: Figures;
  readonly cases: readonly string[];
  readonly kind: string;
  readonly sources?: FigureSources;
}

function lineRow({ supplyVoltage, resistance, load }: OperatingPointInput): Row {
  const { values, kind } = loadRow(load);
  return { values: { ...values, 'V_#': supplyVoltage, 'R_#': resistance }, cases: ['in ohms'], kind };
}

function metresRow({ supplyVoltage, conductor, length, temperature, load }: VoltageDropInput): Row {
  const { values, kind } = loadRow(load);
  const { resistancePerMetre = 0, temperatureCoefficient = 0, source } = conductor ?? {};
  const line = { 'r20_#': resistancePerMetre, 'alpha_#': temperatureCoefficient, 'T_#': temperature ?? 20, 'L_#': length };
  const sources = { 'r20_#': source, 'alpha_#': coefficientSource(temperatureCoefficient) };
  return { values: { ...values, ...line, 'V_#': supplyVoltage }, cases: [], kind, sources };
}

function poweredRow(input: PowerAtPdInput): Row {
  const limits = appliedLimits(input);
  const { pseVoltage: V = limits.pseVoltageMin, pdPower: P = limits.pdPower } = input;
  const R = loopThatPowerSees(input.resistance, limits.pairs);
  // Beyond half the supply voltage more current brings less power: the line bites before the class does.
  const bites = 2 * limits.psePower * R > V * V ? 'collapse bites' : 'class bites';
  const sources = {
    'V_#': input.pseVoltage === undefined ? ('ieee-802.3-pse-voltage' as const) : undefined,
    'P_#': input.pdPower === undefined ? ('ieee-802.3-class' as const) : undefined,
  };
  return { values: { 'V_#': V, 'R_#': R, 'P_#': P }, cases: ['in ohms', bites], kind: POWER, sources };
}

function loadRow(load: OperatingPointInput['load']): { readonly values: Figures; readonly kind: string } {
  const { values, cases } = loadReading(load);
  const renamed = Object.entries(values).map(([symbol, value]) => [symbol === 'R_L' ? 'RL_#' : `${symbol}_#`, value] as const);
  return { values: Object.fromEntries(renamed), kind: cases[0] as string };
}

