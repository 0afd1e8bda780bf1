/** Limits of a run as rows of a sheet: each as a lowest voltage at the device, and as the most resistance that it allows. @module */

import type { Load } from '../../circuit/index.ts';
import type { PoeClass } from '../../ethernet/index.ts';
import {
  AMPACITY,
  COLLAPSE,
  DEVICE_OVERVOLTAGE,
  DEVICE_RESISTANCE,
  DEVICE_VOLTAGE,
  type LimitName,
  PD_VOLTAGE,
  PSE_POWER,
  VOLTAGE_DROP,
} from '../../limits/all.ts';
import type { Limit } from '../../limits/index.ts';
import { LIMIT_WORDS } from '../../limits/limit-words.ts';
import { judgedLoop } from '../../plan/device-resistance.ts';
import type { PermittedDrop, ResistanceLimit } from '../../plan/index.ts';
import type { SourceKey } from '../../sources/sources.ts';
import { given, givens, steps } from '../engine/rows.ts';
import type { Figures, Givens, ReadingRow, SheetGiven, SheetNo, Steps } from '../engine/sheet.ts';
import type { WorkingUnit } from '../engine/working-unit.ts';
import type { LineCase } from './line.ts';
import type { LoadCase } from './load.ts';
import type { RunCase } from './runs.ts';

/** Conductors one way that each loop of a cable amounts to. */
const CONDUCTORS = { pairLoop: 2, twoPair: 1, fourPair: 0.5 } as const;
type Loop = keyof typeof CONDUCTORS;

/** What a row of the limits holds, and about what. */
export type LimitCase =
  | 'collapse of a power'
  | 'collapse of a current'
  | 'power of the port'
  | 'voltage at the load'
  // Whatever comes to a lowest voltage.
  | 'voltage'
  | 'permitted drop'
  | 'permitted drop in volts'
  // A resistance takes most, and so drops most, at the highest voltage.
  | 'permitted drop in volts at the highest voltage'
  | 'most current of a power'
  | 'stated in ohms'
  | 'one of the loops'
  | Loop
  // A line of two wires.
  | 'out and back'
  // Under what conditions a loop is judged.
  | 'as it is'
  | 'at 20 °C'
  | 'without cords'
  // Of the run: whether anything bounds what is asked for.
  | 'bounded';

/** What a limit is held against where what is asked for plays no part in it: a figure in this unit, or as follows. */
export type FixedCase =
  | WorkingUnit
  // The current that a resistance takes at the highest voltage without any line: none takes more with one.
  | 'A of a resistance'
  | 'at least'
  | 'Ω of a run'
  | 'Ω of a line'
  // The drop along a line: of a resistance the same fraction at any voltage, of a current the same volts.
  | 'share of a resistance'
  | 'drop of a current'
  | Loop;

export type LimitRow = ReadingRow<LimitCase>;
export type FixedRow = ReadingRow<FixedCase>;
/** Every case of a run or a line that is held to limits. */
export type HeldCase = FixedCase | LimitCase | LineCase | LoadCase | RunCase;
type Case = LimitCase | LoadCase | RunCase;

/** The lowest voltage of the supply, the highest, and the power of the port. */
// biome-ignore format: one figure a row
export const supplyGivens: Givens<never> = givens([
  ['V', 'V', 'voltage at the supply, the lowest it may have', 'pseVoltage or supplyVoltage'],
  ['V_hi', 'V', 'voltage at the supply, the highest it may have', 'supplyVoltage.high', { value: 0, ifUsed: true }],
]);
// biome-ignore format: one figure a row
export const portPowerGiven: SheetGiven<RunCase> = given('P_lim', 'W', 'most that the port must source: what the class allows the device, over the worst channel at the lowest voltage; the class table rounds it', 'poeClass', { source: 'ieee-802.3-class', when: 'powered' });

/** A lowest voltage, a permitted drop, and a most current, that the caller states. */
// biome-ignore format: one figure a row
export const voltageLimitGivens: Givens<Case> = givens([
  ['U_#', 'V', '@: the lowest there may be', 'the limits of the device', { when: 'voltage at the load' }],
  ['k_#', '1', '@: most drop, as a fraction of the supply voltage', 'permittedDrop', { when: 'permitted drop' }],
  ['Vd_#', 'V', '@: most drop', 'permittedDrop.volts', { latex: 'd_{#}', when: 'permitted drop in volts' }],
  ['Vd_#', 'V', '@: most drop', 'permittedDrop.volts', { latex: 'd_{#}', when: 'permitted drop in volts at the highest voltage' }],
  ['Iz_#', 'A', '@: most current of the conductors as installed', 'ampacity', { when: 'most current of a power' }],
], { each: 'limit' });

/** What the loop of each row of a list is in conductors. */
// biome-ignore format: one figure a row
export const loopGivens = (each: 'limit' | 'fixed', core: string): Givens<Loop> => givens([
  ['f_#', '1', '@: conductors that a pair loop amounts to', core, { when: 'pairLoop' }],
  ['f_#', '1', '@: conductors that one pairset amounts to', core, { when: 'twoPair' }],
  ['f_#', '1', '@: conductors that two pairsets amount to', core, { when: 'fourPair' }],
], { source: 'three-loops', each });

/** Limits that are, or are turned into, a resistance. */
// biome-ignore format: one figure a row
export const resistanceLimitGivens: Givens<Case> = [
  ...voltageLimitGivens,
  given('X_#', 'Ω', '@: most resistance', 'the limits of the device or the cabling', { each: 'limit', when: 'stated in ohms' }),
  ...loopGivens('limit', 'the loop'),
];

/** A permitted drop as a lowest voltage. */
// biome-ignore format: one figure a row
export const dropAsVoltageSteps: Steps<Case> = steps([
  ['U_#', 'V', 'V * (1 - k_#)', '@: lowest voltage at the device', { when: 'permitted drop' }],
  ['U_#', 'V', 'V - Vd_#', '@: lowest voltage at the device', { when: 'permitted drop in volts' }],
  ['U_#', 'V', 'V_hi - Vd_#', '@: lowest voltage at the device, at the highest supply: there a resistance drops most', { when: 'permitted drop in volts at the highest voltage' }],
], { each: 'limit' });

/** A most current as the voltage under which a power draws more. */
// biome-ignore format: one figure a row
export const ampacityAsVoltageSteps: Steps<Case> = steps([
  ['U_#', 'V', 'P / Iz_#', '@: voltage at the device under which the device draws more', { each: 'limit', when: 'most current of a power' }],
]);

/** Each limit as a resistance, with what is said where even no resistance is too much. */
export function mostResistanceSteps(says: string): Steps<Case> {
  const no: SheetNo<never> = { says, steps: [] };
  // biome-ignore format: one figure a row
  return [...steps<Case>([
    ['X_#', 'Ω', 'V^2 / (4 * P)', '@: most resistance, beyond which no current carries the power', { source: 'collapse', when: 'collapse of a power' }],
    ['X_#', 'Ω', 'V / I', '@: most resistance, beyond which even a short takes less', { when: 'collapse of a current' }],
    ['X_#', 'Ω', '(P_lim - P) / (P_lim / V)^2', '@: most resistance: what the port may source more, over the current squared', { when: 'power of the port', no }],
  ], { each: 'limit' }), ...dropAsVoltageSteps, ...ampacityAsVoltageSteps, ...steps<Case>([
    ['X_#', 'Ω', '(V_hi - U_#) / (U_# / R_L)', '@: most resistance: the drop over the current', { when: 'permitted drop in volts at the highest voltage' }],
    ['X_#', 'Ω', '(V - U_#) / (P / U_#)', '@: most resistance: the drop over the current', { when: 'voltage, constant power' }],
    ['X_#', 'Ω', '(V - U_#) / I', '@: most resistance: the drop over the current', { when: 'voltage, constant current' }],
    ['X_#', 'Ω', '(V - U_#) / (U_# / R_L)', '@: most resistance: the drop over the current', { when: 'voltage, constant resistance' }],
  ], { each: 'limit', no })];
}

/** What is held against what, on every sheet of limits. */
// biome-ignore format: one figure a row
export const fixedGivens: Givens<FixedCase> = givens([
  ['v_#', 'W', '@: value here', 'pdPower', { when: 'W' }],
  ['v_#', '1', '@: value here', 'the input', { when: '1' }],
  ['v_#', 'V', '@: value here', 'supplyVoltage, or the limit', { when: 'V' }],
  ['v_#', 'A', '@: value here', 'load.current', { when: 'A' }],
  ['w_#', 'W', '@: limit', 'poeClass', { source: 'row', when: 'W' }],
  ['w_#', '1', '@: limit', 'the rule', { source: 'row', when: '1' }],
  ['w_#', 'V', '@: limit', 'the supply or the device', { when: 'V' }],
  ['w_#', 'A', '@: limit', 'ampacity', { when: 'A' }],
  ['w_#', 'A', '@: limit', 'ampacity', { when: 'A of a resistance' }],
], { each: 'fixed' });

/** What is left of each; of a temperature in kelvins. */
export function fixedSteps(units: readonly WorkingUnit[], says: string, explained: Steps<FixedCase> = []): Steps<FixedCase> {
  const left = units.map(
    (unit) =>
      [
        's_#',
        unit === '°C' ? 'K' : unit,
        'w_# - v_#',
        '@: what is left',
        { source: unit === 'W' ? 'ieee-802.3-class' : 'row', when: unit },
      ] as const,
  );
  // biome-ignore format: one figure a row
  return steps<FixedCase>([
    ...left,
    ['s_#', 'A', 'w_# - V_hi / R_L', '@: what is left where the load takes most, without any line', { when: 'A of a resistance' }],
  ], { source: 'row', each: 'fixed', no: { says, steps: explained } });
}

/** A row of a limit: in words on the page, by its name for the core. */
export function limitRow<Case extends string>(
  { name, source }: Limit<LimitName>,
  cases: readonly Case[],
  values: Figures = {},
  stated: SourceKey = source,
): ReadingRow<Case> {
  return { label: LIMIT_WORDS[name].subject, core: name, values, cases, source: stated };
}

/** A limit that is, or is turned into, a resistance of one of the loops. */
export function loopRow(
  name: Limit<LimitName>,
  loop: Loop,
  cases: readonly LimitCase[],
  values: Figures = {},
  source?: SourceKey,
): LimitRow {
  const conditions = cases.includes('at 20 °C') || cases.includes('without cords') ? cases : [...cases, 'as it is' as const];
  return limitRow(name, ['one of the loops', loop, ...conditions], { ...values, 'f_#': CONDUCTORS[loop] }, source);
}

/** The loop that power sees. */
export function poweredLoop(pairs: 2 | 4): Loop {
  return pairs === 4 ? 'fourPair' : 'twoPair';
}

/** The limit of the data sheet in ohms, where the ohms are not what is asked for. */
export function fixedOhmsRows(limit: ResistanceLimit | number | undefined): FixedRow[] {
  if (limit === undefined) return [];
  if (typeof limit === 'number') return [limitRow(DEVICE_RESISTANCE, ['Ω', 'Ω of a line'], { 'w_#': limit })];
  const loop = judgedLoop(limit);
  return [limitRow(DEVICE_RESISTANCE, ['Ω', 'Ω of a run', loop], { 'w_#': limit.ohms, 'f_#': CONDUCTORS[loop] })];
}

/** Whether a lowest voltage bounds the line at all: the stable root of a power lies above half of the supply voltage. */
function bites(V: number, load: Load, U: number): boolean {
  if (U > V) return !isIdle(load);
  return load.power === undefined ? load.current !== 0 : load.power > 0 && 2 * U >= V;
}

/** Whether a load draws nothing at all. */
function isIdle({ power, current }: Load): boolean {
  return power === 0 || current === 0;
}

/** Lowest voltages at the device, each by the name of its limit. */
export type LowestVoltages = readonly (readonly [limit: Limit<LimitName>, U: number | undefined])[];

/** Those of a powered device. */
export function lowestVoltages({ pdVoltageLimit }: PoeClass, minimumVoltage: number | undefined): LowestVoltages {
  return [
    [PD_VOLTAGE, pdVoltageLimit],
    [DEVICE_VOLTAGE, minimumVoltage],
  ];
}

/** Lowest voltages above that of the supply, of a load that draws nothing: no line makes them better or worse. */
export function idleRows(V: number, load: Load, lowest: LowestVoltages): FixedRow[] {
  const isAbove = (U: number | undefined): U is number => isIdle(load) && U !== undefined && U > V;
  return lowest.flatMap(([name, U]) => (isAbove(U) ? [limitRow(name, ['V'], { 'v_#': U, 'w_#': V })] : []));
}

/** What bounds the loop of a powered device. */
export function poweredLimitRows(
  { psePowerLimit, pairs }: PoeClass,
  V: number,
  P: number,
  lowest: LowestVoltages,
  maximumResistance: ResistanceLimit | undefined,
): LimitRow[] {
  const seen = poweredLoop(pairs);
  const rows: LimitRow[] = [];
  if (P > 0) rows.push(loopRow(COLLAPSE, seen, ['collapse of a power']));
  if (psePowerLimit < 2 * P) rows.push(loopRow(PSE_POWER, seen, ['power of the port']));
  for (const [name, U] of lowest) {
    if (U !== undefined && bites(V, { power: P }, U)) rows.push(loopRow(name, seen, ['voltage at the load', 'voltage'], { 'U_#': U }));
  }
  if (maximumResistance !== undefined) {
    rows.push(loopRow(DEVICE_RESISTANCE, judgedLoop(maximumResistance), ['stated in ohms'], { 'X_#': maximumResistance.ohms }));
  }
  return rows;
}

/** Where an ampacity is stated. */
export function ampacityCaution({ ampacity }: { readonly ampacity?: number | undefined }): string | false {
  return (
    ampacity !== undefined &&
    'An ampacity is that of the table that applies where the cable lies: the local code and a licensed practitioner come first.'
  );
}

/** A highest voltage of the device, which the supply must not have even without any line. */
export function overvoltageRows(high: number, maximumVoltage: number | undefined): FixedRow[] {
  return maximumVoltage === undefined ? [] : [limitRow(DEVICE_OVERVOLTAGE, ['V'], { 'v_#': high, 'w_#': maximumVoltage })];
}

/** What a line and its load are held to. */
interface LineLimits {
  readonly load: Load;
  readonly minimumVoltage?: number | undefined;
  readonly maximumVoltage?: number | undefined;
  readonly permittedDrop?: PermittedDrop | undefined;
  readonly ampacity?: number | undefined;
  readonly maximumResistance?: number | undefined;
}

/** The limits of a line of two wires: those that bound its resistance, and those that are met or missed whatever it is. */
export function lineLimitRows(
  { load, minimumVoltage, maximumVoltage, permittedDrop, ampacity, maximumResistance }: LineLimits,
  { low: V, high }: { readonly low: number; readonly high: number },
): { readonly limit: readonly LimitRow[]; readonly fixed: readonly FixedRow[] } {
  const { power, current, resistance } = load;
  const limit: LimitRow[] = [];
  const fixed = [...idleRows(V, load, [[DEVICE_VOLTAGE, minimumVoltage]]), ...overvoltageRows(high, maximumVoltage)];
  const add = (name: Limit<LimitName>, cases: readonly LimitCase[], values: Figures = {}): void => {
    limit.push(limitRow(name, [...cases, 'out and back'], values));
  };
  /** Turned into a lowest voltage, if the line can come down to it. */
  const addVoltage = (name: Limit<LimitName>, what: LimitCase, values: Figures, U: number): void => {
    if (bites(V, load, U)) add(name, [what, 'voltage'], values);
  };
  if (power !== undefined && power > 0) add(COLLAPSE, ['collapse of a power']);
  if (current !== undefined && current > 0) add(COLLAPSE, ['collapse of a current']);
  if (minimumVoltage !== undefined) addVoltage(DEVICE_VOLTAGE, 'voltage at the load', { 'U_#': minimumVoltage }, minimumVoltage);
  if (typeof permittedDrop === 'number') addVoltage(VOLTAGE_DROP, 'permitted drop', { 'k_#': permittedDrop }, V * (1 - permittedDrop));
  else if (permittedDrop !== undefined) {
    const { volts } = permittedDrop;
    if (resistance !== undefined && volts < high) add(VOLTAGE_DROP, ['permitted drop in volts at the highest voltage'], { 'Vd_#': volts });
    if (resistance === undefined && volts < V) addVoltage(VOLTAGE_DROP, 'permitted drop in volts', { 'Vd_#': volts }, V - volts);
  }
  if (ampacity !== undefined) {
    // A power draws more the longer the run; a resistance draws most without one.
    if (power !== undefined && power > 0) addVoltage(AMPACITY, 'most current of a power', { 'Iz_#': ampacity }, power / ampacity);
    if (current !== undefined) fixed.push(limitRow(AMPACITY, ['A'], { 'v_#': current, 'w_#': ampacity }));
    if (resistance !== undefined) fixed.push(limitRow(AMPACITY, ['A of a resistance'], { 'w_#': ampacity }));
  }
  if (maximumResistance !== undefined) add(DEVICE_RESISTANCE, ['stated in ohms'], { 'X_#': maximumResistance });
  return { limit, fixed };
}
