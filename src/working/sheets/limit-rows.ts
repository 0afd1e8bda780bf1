/** Which limits a run or a line has, as rows: those that bound its resistance, and those in which that plays no part. @module */
import type { CheckName } from '../../circuit/check.ts';
import type { Load } from '../../circuit/operating-point.ts';
import type { PoeClass } from '../../ethernet/poe-class.ts';
import { judgedLoop, type ResistanceLimit } from '../../plan/device-resistance.ts';
import type { PermittedDrop } from '../../plan/two-wire-run.ts';
import type { SourceKey } from '../../sources/sources.ts';
import type { Figures, ReadingRow } from '../sheet.ts';
import { MOST_CURRENT } from './fixed-steps.ts';
import {
  AMPACITY,
  AT_HIGHEST,
  COLLAPSE,
  COOL,
  DROP,
  HIGHEST,
  HOT,
  LINK,
  LOOP,
  OHMS,
  OUT_AND_BACK,
  SHORT,
  SUPPLY,
  VOLTAGE,
  VOLTS,
} from './limit-steps.ts';
import { LIMIT_WORDS } from './limit-words.ts';
import { POWER } from './point-steps.ts';

/** Where the limits of a class come from; the others are from a data sheet, unless their row says otherwise. */
const SOURCES: Partial<Readonly<Record<CheckName, SourceKey>>> = {
  'pd-power': 'ieee-802.3-class',
  'pse-power': 'ieee-802.3-class',
  'pd-voltage': 'ieee-802.3-pd-voltage',
  'pse-voltage': 'ieee-802.3-pse-voltage',
  'channel-resistance': 'ieee-802.3-channel',
  collapse: 'collapse',
  material: 'copper-conductors',
};

/** A row of a limit: in words on the page, by its name for the core. */
export function limitRow(
  name: CheckName,
  values: Figures = {},
  cases: readonly string[] = [],
  source: SourceKey = SOURCES[name] ?? 'data-sheet',
): ReadingRow {
  return { label: LIMIT_WORDS[name], core: name, values, cases, source };
}

/** The three loops, in conductors one way. */
export const FACTOR = { pairLoop: 2, twoPair: 1, fourPair: 0.5 } as const;

/** A limit that is, or is turned into, a resistance of one of the loops. */
export function loopRow(
  name: CheckName,
  loop: keyof typeof FACTOR,
  kind: string,
  values: Figures = {},
  cases: readonly string[] = [],
  source?: SourceKey,
): ReadingRow {
  const conditions = cases.includes(COOL) || cases.includes(LINK) ? [] : [HOT];
  return limitRow(name, { ...values, 'f_#': FACTOR[loop] }, [LOOP, loop, kind, ...cases, ...conditions], source);
}

/** Whether a lowest voltage bounds the line at all: the stable root of a power lies above half of the supply voltage. */
export function bites(V: number, load: Load, U: number): boolean {
  if (U > V) return !isIdle(load);
  if (load.power !== undefined) return load.power > 0 && 2 * U >= V;
  return load.current === undefined || load.current > 0;
}

/** Whether a load draws nothing at all. */
function isIdle({ power, current }: Load): boolean {
  return power === 0 || current === 0;
}

/** Lowest voltages above that of the supply, of a load that draws nothing: no line makes them better or worse. */
export function idleRows(V: number, load: Load, lowest: readonly (readonly [name: CheckName, U: number | undefined])[]): ReadingRow[] {
  if (!isIdle(load)) return [];
  return lowest.flatMap(([name, U]) => (U !== undefined && U > V ? [limitRow(name, { 'v_#': U, 'w_#': V }, ['V'])] : []));
}

/** The voltages that a supply may have. */
interface Supply {
  readonly low: number;
  readonly high: number;
}

/** The most resistance of a row, which decides what applies, and is no figure of the working. */
export function mostOhms({ cases = [], values }: ReadingRow, { low: V, high }: Supply, load: Load, portPower: number = 0): number {
  const { power: P = 0, current: I = 0, resistance = 0 } = load;
  const { 'X_#': X, 'k_#': k, 'Vd_#': d, 'Iz_#': most } = values;
  if (X !== undefined) return X;
  if (cases.includes(COLLAPSE)) return (V * V) / (4 * P);
  if (cases.includes(SHORT)) return V / I;
  if (cases.includes(SUPPLY)) return (portPower - P) / (portPower / V) ** 2;
  const at = cases.includes(HIGHEST) ? high : V;
  const dropped = k !== undefined ? V * (1 - k) : d !== undefined ? at - d : P / (most ?? 1);
  const { 'U_#': U = dropped } = values;
  if (load.power !== undefined) return (V - U) / (P / U);
  return load.current !== undefined ? (V - U) / I : (at - U) / (U / resistance);
}

/** What bounds the loop of a powered device. */
export function poweredLimitRows(
  { psePowerLimit, pdVoltageLimit, pairs }: PoeClass,
  V: number,
  P: number,
  minimumVoltage: number | undefined,
  maximumResistance: ResistanceLimit | undefined,
): ReadingRow[] {
  const seen = pairs === 4 ? 'fourPair' : 'twoPair';
  const rows: ReadingRow[] = [];
  if (P > 0) rows.push(loopRow('collapse', seen, COLLAPSE));
  if (psePowerLimit < 2 * P) rows.push(loopRow('pse-power', seen, SUPPLY));
  for (const [name, U] of [
    ['pd-voltage', pdVoltageLimit],
    ['device-voltage', minimumVoltage],
  ] as const) {
    if (U !== undefined && bites(V, { power: P }, U)) rows.push(loopRow(name, seen, VOLTAGE, { 'U_#': U }, [`voltage, ${POWER}`]));
  }
  if (maximumResistance !== undefined) {
    rows.push(loopRow('device-resistance', judgedLoop(maximumResistance), OHMS, { 'X_#': maximumResistance.ohms }));
  }
  return rows;
}

/** Where an ampacity is stated. */
export function ampacityCautions({ ampacity }: { readonly ampacity?: number | undefined }): string[] {
  return ampacity === undefined
    ? []
    : ['An ampacity is that of the table that applies where the cable lies: the local code and a licensed practitioner come first.'];
}

/** What a line and its load are held to. */
export interface LineLimits {
  readonly load: Load;
  readonly minimumVoltage?: number | undefined;
  readonly maximumVoltage?: number | undefined;
  readonly permittedDrop?: PermittedDrop | undefined;
  readonly ampacity?: number | undefined;
  readonly maximumResistance?: number | undefined;
}

/** The limits of a line of two wires: those that bound its resistance, and those that are met or missed whatever it is. */
export function lineLimitRows(
  of: LineLimits,
  { low: V, high }: Supply,
  kind: string,
): { readonly limit: readonly ReadingRow[]; readonly fixed: readonly ReadingRow[]; readonly cases: readonly string[] } {
  const { load, minimumVoltage, maximumVoltage, permittedDrop, ampacity, maximumResistance } = of;
  const limit: ReadingRow[] = [];
  const fixed: ReadingRow[] = [];
  const add = (name: CheckName, what: string, values: Figures = {}, cases: readonly string[] = []): void => {
    limit.push(limitRow(name, values, [what, ...cases, OUT_AND_BACK]));
  };
  /** Turned into a lowest voltage, if the line can come down to it. */
  const addVoltage = (name: CheckName, what: string, values: Figures, U: number): void => {
    if (bites(V, load, U)) add(name, what, values, [`voltage, ${kind}`]);
  };
  if (load.power !== undefined && load.power > 0) add('collapse', COLLAPSE);
  if (load.current !== undefined && load.current > 0) add('collapse', SHORT);
  if (minimumVoltage !== undefined) addVoltage('device-voltage', VOLTAGE, { 'U_#': minimumVoltage }, minimumVoltage);
  if (typeof permittedDrop === 'number') addVoltage('voltage-drop', DROP, { 'k_#': permittedDrop }, V * (1 - permittedDrop));
  else if (permittedDrop !== undefined) addDrop(permittedDrop.volts);
  fixed.push(...idleRows(V, load, [['device-voltage', minimumVoltage]]));
  if (maximumVoltage !== undefined) fixed.push(limitRow('device-overvoltage', { 'v_#': high, 'w_#': maximumVoltage }, ['V']));
  if (ampacity !== undefined) addAmpacity(ampacity);
  if (maximumResistance !== undefined) add('device-resistance', OHMS, { 'X_#': maximumResistance });
  const atHighest = [...limit, ...fixed].some(({ cases = [] }) => cases.includes(HIGHEST) || cases.includes(MOST_CURRENT));
  return { limit, fixed, cases: atHighest ? [AT_HIGHEST] : [] };

  function addDrop(volts: number): void {
    if (load.resistance === undefined) {
      if (volts < V) addVoltage('voltage-drop', VOLTS, { 'Vd_#': volts }, V - volts);
    } else if (volts < high) add('voltage-drop', HIGHEST, { 'Vd_#': volts });
  }

  /** A power draws more the longer the run; a resistance draws most without one. */
  function addAmpacity(most: number): void {
    if (load.power !== undefined) {
      if (load.power > 0) addVoltage('ampacity', AMPACITY, { 'Iz_#': most }, load.power / most);
    } else if (load.current !== undefined) fixed.push(limitRow('ampacity', { 'v_#': load.current, 'w_#': most }, ['A']));
    else fixed.push(limitRow('ampacity', { 'w_#': most }, [MOST_CURRENT]));
  }
}

