/** A run with one quantity left open: what the sheets that solve for it have in common. @module */
import type { Segment } from '../../cable/run-resistance.ts';
import type { Load } from '../../circuit/operating-point.ts';
import { grantedByType } from '../../ethernet/assigned-class.ts';
import type { PoeClassNumber, PseType } from '../../ethernet/class-table.ts';
import { type PoeClass, poeClass } from '../../ethernet/poe-class.ts';
import { appliedLimits } from '../../ethernet/power-at-pd.ts';
import type { CheckName } from '../../limits/check.ts';
import type { CablingStandard } from '../../plan/cabling-rules.ts';
import { judgedLoop, type ResistanceLimit } from '../../plan/device-resistance.ts';
import { copperFraction } from '../../plan/material-check.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { ReadingRow, SheetGiven, SheetNo, SheetStep } from '../sheet.ts';
import { fixedGivens, fixedSteps, MOST_CURRENT } from './fixed-steps.ts';
import { FACTOR, limitRow } from './limit-rows.ts';
import { loopGivens } from './limit-steps.ts';
import { connectionAssumptions } from './shared.ts';

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
export interface OpenRun {
  readonly poeClass: PoeClassNumber;
  readonly pseType?: PseType | undefined;
  readonly pairs?: 2 | 4 | undefined;
  readonly pdPower?: number | undefined;
  readonly pseVoltage?: number | undefined;
  readonly maximumResistance?: ResistanceLimit | undefined;
}

/** The limits of the class that the port grants, and what the device draws. */
export function granted(input: OpenRun): { readonly limits: PoeClass; readonly P: number } {
  const { poeClass: asked, pseType, pairs } = input;
  const given = pseType === undefined ? asked : grantedByType(asked, pseType);
  // A device that is granted less than it asks for still wants all of it.
  const pdPower = input.pdPower ?? (given === asked ? undefined : poeClass(asked).pdPower);
  const limits = appliedLimits({ poeClass: given, pseType, pairs, pdPower });
  return { limits, P: pdPower ?? limits.pdPower };
}

/** The drop along a line: of a resistance the same fraction at any voltage, of a current the same volts. */
export const SHARE = 'share of a resistance';
export const SAME_VOLTS = 'drop of a current';
const OF_A_RUN = 'Ω of a run';
const OF_A_LINE = 'Ω of a line';

const limitGiven = { symbol: 'w_#', meaning: '@: limit', latex: 'w_{#}', each: 'fixed' } as const;

/** Limits of which the unknown is no part, in ohms and of the drop as well. */
export const openGivens: readonly SheetGiven[] = [
  ...fixedGivens,
  { ...limitGiven, unit: 'Ω', core: 'maximumResistance', when: 'Ω' },
  ...loopGivens('fixed', 'maximumResistance.loop'),
  { ...limitGiven, meaning: '@: most drop, as a fraction of the supply voltage', unit: '1', core: 'permittedDrop', when: SHARE },
  { ...limitGiven, meaning: '@: most drop', unit: 'V', core: 'permittedDrop.volts', when: SAME_VOLTS },
];

/** What is left of each, and by how much the one that is missed is missed. */
export function openSteps(unknown: string): readonly SheetStep[] {
  const no: SheetNo = {
    says: `no ${unknown} meets the limit on @: the ${unknown} plays no part in it`,
    steps: (
      [
        ['W', 'W'],
        ['1', '1'],
        ['V', 'V'],
        ['Ω', 'Ω'],
        ['1', SHARE],
        ['V', SAME_VOLTS],
        ['A', 'A'],
        ['A', MOST_CURRENT],
      ] as const
    ).map(([unit, when]) => ({
      symbol: 'M',
      meaning: '@: by how much it is missed',
      formula: '-s_#',
      unit,
      latex: 'M',
      source: 'row',
      core: 'shortfall',
      each: 'missed',
      when,
    })),
  };
  const ohms = { symbol: 's_#', meaning: '@: what is left', unit: 'Ω', latex: 's_{#}', source: 'row', each: 'fixed', no } as const;
  return [
    ...fixedSteps(['W', '1', 'V', 'A'], no),
    { ...ohms, formula: 'w_# - f_# * R_w', when: OF_A_RUN },
    { ...ohms, formula: 'w_# - R', when: OF_A_LINE },
    { ...ohms, formula: 'w_# - R / (R + R_L)', unit: '1', when: SHARE },
    { ...ohms, formula: 'w_# - I * R', unit: 'V', when: SAME_VOLTS },
  ];
}

/** The limits that have rows; the others are rules of cabling. */
const SHOWN: readonly CheckName[] = [
  'pd-power',
  'pse-power',
  'pd-voltage',
  'pse-voltage',
  'material',
  'collapse',
  'device-voltage',
  'voltage-drop',
  'device-resistance',
  'device-overvoltage',
  'ampacity',
];

/** What the port and the device are held to whatever the run; the voltage only where it is stated. */
export function portRows(limits: PoeClass, P: number | undefined, V: number | undefined, pieces: readonly Segment[]): ReadingRow[] {
  const rows: ReadingRow[] = [];
  if (P !== undefined) rows.push(limitRow('pd-power', { 'v_#': P, 'w_#': limits.pdPower }, ['W']));
  if (V !== undefined) rows.push(limitRow('pse-voltage', { 'v_#': V, 'w_#': limits.pseVoltageMax }, ['V']));
  // The share of pieces that are not copper, of which none is allowed.
  rows.push(limitRow('material', { 'v_#': 1 - copperFraction(pieces), 'w_#': 0 }, ['1']));
  return rows;
}

/** The limit of the data sheet in ohms, where the ohms are not what is asked for. */
export function fixedOhmsRow(limit: ResistanceLimit | number): ReadingRow {
  if (typeof limit === 'number') return limitRow('device-resistance', { 'w_#': limit }, ['Ω', OF_A_LINE]);
  const loop = judgedLoop(limit);
  return limitRow('device-resistance', { 'w_#': limit.ohms, 'f_#': FACTOR[loop] }, ['Ω', OF_A_RUN, loop]);
}

/** What the core says of the limits, in its order. */
interface Said {
  readonly feasible: boolean;
  readonly governedBy?: string | undefined;
  readonly limits?: readonly { readonly limit: string; readonly shortfall?: number }[] | undefined;
}

/** Where the core is asked. */
export interface Asking<Input, Answer> {
  readonly guard: (input: Input) => Answer;
  readonly said: (input: Input) => Answer;
}

/** What the core says of an input: asked by the guard, and remembered for the reading that follows it at once. */
export function asking<Input, Answer extends Said>(ask: (input: Input) => Answer): Asking<Input, Answer> {
  let last: { readonly input: Input; readonly answer: Answer } | undefined;
  const guard = (input: Input): Answer => {
    last = { input, answer: ask(input) };
    return last.answer;
  };
  return { guard, said: (input) => (last?.input === input ? last.answer : guard(input)) };
}

/** The rows in the order in which the core looks at them: which of those that are missed it names hangs on that. */
export function placed(
  said: Said,
  fixed: readonly ReadingRow[],
  limit: readonly ReadingRow[] = [],
): Readonly<Record<'fixed' | 'missed' | 'limit', readonly ReadingRow[]>> {
  const governs = ({ core }: ReadingRow): boolean => !said.feasible && core === said.governedBy;
  const place = ({ core }: ReadingRow): number => (said.limits ?? []).findIndex((one) => one.limit === core);
  // Where the core lists none, it names the one that is missed by most: that one is looked at first.
  const order = (row: ReadingRow): number => (said.limits === undefined && governs(row) ? -2 : place(row));
  const ordered = [...fixed].sort((a, b) => order(a) - order(b));
  const at = ordered.findIndex(governs);
  const missed = ordered[at];
  return {
    fixed: ordered,
    missed: missed === undefined ? [] : [{ ...missed, values: {}, number: at + 1 }],
    limit: limit.map((row) => ({ ...row, links: { ...row.links, ...inCore(place(row)) } })),
  };
}

/** What the core calls the value of a limit, if it has it. */
function inCore(place: number): Readonly<Record<string, string>> {
  return place < 0 ? {} : { limit: `limits[${place}].value` };
}

/** Refuses a run that misses a limit which has no sheet, such as a rule of cabling: the answer would not be the core's. */
export function requireOthersMet(said: Said, cabling: CablingStandard | undefined): void {
  const missed = said.limits?.find(({ limit, shortfall }) => shortfall !== undefined && !SHOWN.includes(limit as CheckName));
  if (missed !== undefined) {
    throw new InputError('conflict', 'cabling', `none, or a run that meets ${missed.limit}: its rules have no sheet here`, cabling);
  }
}

/** Refuses cabling rules that the unknown enters. */
export function requireNoCabling(cabling: CablingStandard | undefined): void {
  if (cabling !== 'none') throw new InputError('conflict', 'cabling', 'none: its rules have no sheet here', cabling);
}

/** Refuses a short in place of a load. */
export function requireLoadResistance(load: Load | undefined): void {
  if (load?.resistance === 0) throw new InputError('range', 'load.resistance', 'a resistance above 0 Ω: a short has no sheet here', 0);
}

/** What is said of the port and of the rules of cabling. */
export function runAssumptions(
  input: {
    readonly poeClass: number;
    readonly pseType?: number | undefined;
    readonly cabling?: CablingStandard | undefined;
    readonly connections?: number | undefined;
    readonly connectionResistance?: number | undefined;
  },
  limits: PoeClass,
): string[] {
  const { cabling = 'TIA-568' } = input;
  return [
    ...connectionAssumptions(input.connections, input.connectionResistance),
    ...(input.pseType === undefined ? [`The port is of Type ${limits.type}, the weakest that serves class ${input.poeClass}.`] : []),
    ...(cabling === 'none' ? [] : [`The run meets every rule of ${cabling}: what is asked for plays no part in them.`]),
  ];
}
