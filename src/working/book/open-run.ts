/** A run with one quantity left open: what the sheets that solve for it have in common. @module */

import type { Segment } from '../../cable/index.ts';
import type { Load } from '../../circuit/index.ts';
import { grantedByType } from '../../ethernet/assigned-class.ts';
import { type PoeClass, type PoeClassNumber, type PseType, poeClass } from '../../ethernet/index.ts';
import { appliedLimits } from '../../ethernet/power-at-pd.ts';
import { LIMITS, MATERIAL, PD_POWER, PSE_VOLTAGE } from '../../limits/all.ts';
import type { CablingStandard, ResistanceLimit } from '../../plan/index.ts';
import { copperFraction } from '../../plan/material-check.ts';
import { InputError } from '../../quantity/input-error.ts';
import { givens, steps } from '../engine/rows.ts';
import type { Figures, Givens, Reading, ReadingRow, ReadingRows, Some, Steps } from '../engine/sheet.ts';
import { connectionAssumption, type Joined } from './joints.ts';
import {
  type FixedCase,
  type FixedRow,
  fixedGivens,
  fixedSteps,
  idleRows,
  type LimitCase,
  type LimitRow,
  limitRow,
  loopGivens,
  lowestVoltages,
  poweredLimitRows,
} from './limits.ts';
import type { LoadCase } from './load.ts';
import { typeAssumption } from './powered.ts';
import { pairsetsCase, type RunCase } from './runs.ts';

/** Keys of the command for a run to a powered device. */
export const openRunKeys: readonly string[] = [
  'poeClass',
  'pseType',
  'pairs',
  'installed',
  'cords',
  'connections',
  'connectionResistance',
  'maximumResistance',
  'loop',
  'minimumVoltage',
  'cabling',
];
/** And for a line of two wires. */
export const openLineKeys: readonly string[] = [
  'conductor',
  'out',
  'back',
  'length',
  'temperature',
  'connections',
  'connectionResistance',
  'minimumVoltage',
  'maximumVoltage',
  'permittedDrop',
  'ampacity',
  'maximumResistance',
];

/** A powered run, whatever is left open of it. */
interface OpenRun extends Joined {
  readonly poeClass: PoeClassNumber;
  readonly pseType?: PseType | undefined;
  readonly pairs?: 2 | 4 | undefined;
  readonly pdPower?: number | undefined;
  readonly pseVoltage?: number | undefined;
  readonly minimumVoltage?: number | undefined;
  readonly maximumResistance?: ResistanceLimit | undefined;
  readonly cabling?: CablingStandard | undefined;
}

/** The limits of the class that the port grants, and what the device draws. */
export function granted(input: OpenRun): { readonly limits: PoeClass; readonly P: number } {
  const { poeClass: own, pseType, pairs } = input;
  const given = pseType === undefined ? own : grantedByType(own, pseType);
  // A device that is granted less than it asks for still wants all of it.
  const pdPower = input.pdPower ?? (given === own ? undefined : poeClass(own).pdPower);
  const limits = appliedLimits({ poeClass: given, pseType, pairs, pdPower });
  return { limits, P: pdPower ?? limits.pdPower };
}

/** A powered run whose draw and voltage are known: its figures, its cases, and what bounds its loop. */
export function poweredRun(input: OpenRun): {
  readonly limits: PoeClass;
  readonly V: number;
  readonly P: number;
  readonly values: Figures;
  readonly cases: Some<RunCase | LoadCase>;
  readonly limit: readonly LimitRow[];
  readonly idle: readonly FixedRow[];
} {
  const { limits, P } = granted(input);
  const { pseVoltage: V = limits.pseVoltageMin } = input;
  const lowest = lowestVoltages(limits, input.minimumVoltage);
  return {
    limits,
    V,
    P,
    values: { V, P, P_lim: limits.psePowerLimit },
    cases: ['powered', 'constant power', pairsetsCase(limits.pairs)],
    limit: poweredLimitRows(limits, V, P, lowest, input.maximumResistance),
    idle: idleRows(V, { power: P }, lowest),
  };
}

/** Limits of which the unknown is no part, in ohms and of the drop as well. */
// biome-ignore format: one figure a row
export const openGivens: Givens<FixedCase> = [...fixedGivens, ...givens<FixedCase>([
  ['w_#', 'Ω', '@: limit', 'maximumResistance', { each: 'fixed', when: 'Ω' }],
]), ...loopGivens('fixed', 'maximumResistance.loop'), ...givens<FixedCase>([
  ['w_#', '1', '@: most drop, as a fraction of the supply voltage', 'permittedDrop', { when: 'share of a resistance' }],
  ['w_#', 'V', '@: most drop', 'permittedDrop.volts', { when: 'drop of a current' }],
], { each: 'fixed' })];

/** What is left of each, and by how much the one that is missed is missed. */
export function openSteps(unknown: string): Steps<FixedCase> {
  const says = `no ${unknown} meets the limit on @: the ${unknown} plays no part in it`;
  const units = [
    ['W', 'W'],
    ['1', '1'],
    ['V', 'V'],
    ['Ω', 'Ω'],
    ['1', 'share of a resistance'],
    ['V', 'drop of a current'],
    ['A', 'A'],
    ['A', 'A of a resistance'],
  ] as const;
  const missed = units.map(([unit, when]) => ['M', unit, '-s_#', '@: by how much it is missed', { when }] as const);
  const explained = steps<FixedCase>(missed, { source: 'row', core: 'shortfall', each: 'missed' });
  // biome-ignore format: one figure a row
  return [...fixedSteps(['W', '1', 'V', 'A'], says, explained), ...steps<FixedCase>([
    ['s_#', 'Ω', 'w_# - f_# * R_w', '@: what is left', { when: 'Ω of a run' }],
    ['s_#', 'Ω', 'w_# - R', '@: what is left', { when: 'Ω of a line' }],
    ['s_#', '1', 'w_# - R / (R + R_L)', '@: what is left', { when: 'share of a resistance' }],
    ['s_#', 'V', 'w_# - I * R', '@: what is left', { when: 'drop of a current' }],
  ], { source: 'row', each: 'fixed', no: { says, steps: explained } })];
}

/** What the port and the device are held to whatever the run; the voltage only where it is stated. */
export function portRows(limits: PoeClass, P: number | undefined, V: number | undefined, pieces: readonly Segment[]): FixedRow[] {
  const rows: FixedRow[] = [];
  if (P !== undefined) rows.push(limitRow(PD_POWER, ['W'], { 'v_#': P, 'w_#': limits.pdPower }));
  if (V !== undefined) rows.push(limitRow(PSE_VOLTAGE, ['V'], { 'v_#': V, 'w_#': limits.pseVoltageMax }));
  // The share of pieces that are not copper, of which none is allowed.
  rows.push(limitRow(MATERIAL, ['1'], { 'v_#': 1 - copperFraction(pieces), 'w_#': 0 }));
  return rows;
}

/** What the core answers of the limits, in its order. */
export interface Answer {
  readonly feasible: boolean;
  readonly governedBy?: string | undefined;
  readonly limits?: readonly { readonly limit: string; readonly shortfall?: number }[] | undefined;
}

/** The rows in the order in which the core looks at them: which of those that are missed it names hangs on that. */
function inCoreOrder<Case extends string>(
  { feasible, governedBy, limits }: Answer,
  fixed: readonly FixedRow[],
  limit: readonly ReadingRow<Case>[],
): ReadingRows<Case | FixedCase> {
  const governs = ({ core }: { readonly core?: string }): boolean => !feasible && core === governedBy;
  const placeOf = ({ core }: { readonly core?: string }): number => (limits ?? []).findIndex((one) => one.limit === core);
  // Where the core lists none, it names the one that is missed by most: that one is looked at first.
  const order = (row: FixedRow): number => (limits === undefined && governs(row) ? -2 : placeOf(row));
  const ordered = [...fixed].sort((a, b) => order(a) - order(b));
  const at = ordered.findIndex(governs);
  const missed = ordered[at];
  return {
    fixed: ordered,
    missed: missed === undefined ? [] : [{ ...missed, values: {}, number: at + 1 }],
    // What the core calls the value of a limit, if it has it.
    limit: limit.map((row) => (placeOf(row) < 0 ? row : { ...row, links: { limit: `limits[${placeOf(row)}].value` } })),
  };
}

/** A reading that is held to limits: those that bound what is asked for, and those that are met or missed whatever it is. */
export function heldReading<Case extends string>(
  answer: Answer,
  unbounded: string | undefined,
  { fixed, limit, ...reading }: Reading<Case> & { readonly fixed: readonly FixedRow[]; readonly limit: readonly ReadingRow<Case>[] },
): Reading<Case | FixedCase | LimitCase> {
  const isBounded = limit.length > 0;
  return {
    ...reading,
    cases: [...(reading.cases ?? []), isBounded && 'bounded'],
    rows: { ...reading.rows, ...inCoreOrder(answer, fixed, limit) },
    no: isBounded ? undefined : unbounded,
  };
}

/** Refuses a run that misses a limit which has no sheet, such as a rule of cabling: the answer would not be the core's. */
export function requireOthersMet({ limits }: Answer, cabling: CablingStandard | undefined): void {
  const rules = LIMITS.filter(({ aspect }) => aspect === 'cabling').map(({ name }) => String(name));
  const missed = limits?.find(({ limit, shortfall }) => shortfall !== undefined && rules.includes(limit));
  if (missed !== undefined) {
    throw new InputError('conflict', 'cabling', `none, or a run that meets ${missed.limit}: its rules have no sheet here`, cabling);
  }
}

/** Refuses cabling rules that the unknown enters. */
export function requireNoCabling(cabling: CablingStandard | undefined): void {
  if (cabling !== 'none') throw new InputError('conflict', 'cabling', 'none: its rules have no sheet here', cabling);
}

/** Refuses a short in place of a load. */
export function requireLoadResistance({ resistance }: Load): void {
  if (resistance === 0) throw new InputError('range', 'load.resistance', 'a resistance above 0 Ω: a short has no sheet here', 0);
}

/** What is said of the port and of the rules of cabling. */
export function runAssumptions(input: OpenRun, limits: PoeClass): Some<string> {
  const { cabling = 'TIA-568' } = input;
  return [
    connectionAssumption(input),
    typeAssumption(input, limits),
    cabling !== 'none' && `The run meets every rule of ${cabling}: what is asked for plays no part in them.`,
  ];
}
