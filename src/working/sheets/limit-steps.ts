/** Limits of a run: as the most resistance that each allows, and those in which the unknown plays no part. @module */
import type { Load } from '../../circuit/operating-point.ts';
import type { PoeClass } from '../../ethernet/poe-class.ts';
import { judgedLoop, type ResistanceLimit } from '../../plan/device-resistance.ts';
import type { PermittedDrop } from '../../plan/two-wire-run.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { Figures, ReadingRow, SheetGiven, SheetNo, SheetStep } from '../sheet.ts';
import type { WorkingUnit } from '../working-unit.ts';
import { CURRENT, POWER, RESISTANCE } from './point-steps.ts';

/** What a row of the limits holds. */
export const COLLAPSE = 'collapse of a power';
export const SHORT = 'collapse of a current';
export const SUPPLY = 'power of the port';
export const VOLTAGE = 'voltage at the load';
export const DROP = 'permitted drop';
export const OHMS = 'stated in ohms';
/** Under what conditions a loop is judged. */
export const HOT = 'as it is';
export const COOL = 'at 20 °C';
export const LINK = 'without cords, at 20 °C';

/** The lowest voltage of the supply. */
export const supplyGiven: SheetGiven = {
  symbol: 'V',
  meaning: 'voltage at the supply, the lowest it may have',
  unit: 'V',
  latex: 'V',
  core: 'pseVoltage or supplyVoltage',
};

/** The power of the port. */
export const portPowerGiven: SheetGiven = {
  symbol: 'P_lim',
  meaning: 'power that the class lets the port source',
  unit: 'W',
  latex: 'P_{\\lim}',
  core: 'poeClass',
  source: 'ieee-802.3-class',
  when: 'powered',
};

/** A lowest voltage, and a permitted drop. */
export const voltageLimitGivens: readonly SheetGiven[] = [
  {
    symbol: 'U_#',
    meaning: '@: lowest voltage at the device',
    unit: 'V',
    latex: 'U_{#}',
    core: 'the limits of the device',
    each: 'limit',
    when: VOLTAGE,
  },
  {
    symbol: 'k_#',
    meaning: '@: most drop, as a fraction of the supply voltage',
    unit: '1',
    latex: 'k_{#}',
    core: 'permittedDrop',
    each: 'limit',
    when: DROP,
  },
];

/** Limits that are, or are turned into, a resistance. */
export const resistanceLimitGivens: readonly SheetGiven[] = [
  ...voltageLimitGivens,
  {
    symbol: 'X_#',
    meaning: '@: most resistance',
    unit: 'Ω',
    latex: 'X_{#}',
    core: 'the limits of the device or the cabling',
    each: 'limit',
    when: OHMS,
  },
  {
    symbol: 'f_#',
    meaning: '@: the loop it is about, in wires one way',
    unit: '1',
    latex: 'f_{#}',
    core: 'the loop',
    each: 'limit',
    when: 'resistance',
  },
];

/** A permitted drop as a lowest voltage. */
export const dropAsVoltageStep: SheetStep = {
  symbol: 'U_#',
  meaning: '@: lowest voltage at the device',
  formula: 'V * (1 - k_#)',
  unit: 'V',
  latex: 'U_{#}',
  source: 'circuit-laws',
  each: 'limit',
  when: DROP,
};

/** Each limit as a resistance, with what is said where even no resistance is too much. */
export function mostResistanceSteps(no: SheetNo): readonly SheetStep[] {
  const most = { symbol: 'X_#', unit: 'Ω', latex: 'X_{#}', source: 'circuit-laws', each: 'limit' } as const;
  return [
    {
      ...most,
      meaning: '@: most resistance, beyond which no current carries the power',
      formula: 'V^2 / (4 * P)',
      source: 'collapse',
      when: COLLAPSE,
    },
    { ...most, meaning: '@: most resistance, beyond which even a short takes less', formula: 'V / I', when: SHORT },
    {
      ...most,
      meaning: '@: most resistance: what the port may source more, over the current squared',
      formula: '(P_lim - P) / (P_lim / V)^2',
      when: SUPPLY,
      no,
    },
    dropAsVoltageStep,
    { ...most, meaning: '@: most resistance: the drop over the current', formula: '(V - U_#) / (P / U_#)', when: `voltage, ${POWER}`, no },
    { ...most, meaning: '@: most resistance: the drop over the current', formula: '(V - U_#) / I', when: `voltage, ${CURRENT}`, no },
    {
      ...most,
      meaning: '@: most resistance: the drop over the current',
      formula: '(V - U_#) / (U_# / R_L)',
      when: `voltage, ${RESISTANCE}`,
      no,
    },
  ];
}

/** The three loops, in wires one way. */
export const FACTOR = { pairLoop: 2, twoPair: 1, fourPair: 0.5 } as const;

/** A limit that is, or is turned into, a resistance of one of the loops. */
export function resistanceRow(
  label: string,
  loop: keyof typeof FACTOR,
  kind: string,
  values: Figures = {},
  cases: readonly string[] = [],
): ReadingRow {
  const conditions = cases.includes(COOL) || cases.includes(LINK) ? [] : [HOT];
  return { label, values: { ...values, 'f_#': FACTOR[loop] }, cases: ['resistance', kind, ...cases, ...conditions] };
}

/** Whether a lowest voltage bounds the line at all: the stable root of a power lies above half of the supply voltage. */
export function bites(V: number, load: Load, U: number): boolean {
  if (U > V) return true;
  if (load.power !== undefined) return load.power > 0 && 2 * U >= V;
  return load.current === undefined || load.current > 0;
}

/** The most resistance of a row, which decides what applies, and is no figure of the working. */
export function mostOhms({ cases = [], values }: ReadingRow, V: number, load: Load, portPower: number = 0): number {
  const { power: P = 0, current: I = 0, resistance = 0 } = load;
  const { 'X_#': X, 'k_#': k = 0, 'U_#': U = V * (1 - k) } = values;
  if (X !== undefined) return X;
  if (cases.includes(COLLAPSE)) return (V * V) / (4 * P);
  if (cases.includes(SHORT)) return V / I;
  if (cases.includes(SUPPLY)) return (portPower - P) / (portPower / V) ** 2;
  if (load.power !== undefined) return (V - U) / (P / U);
  return load.current !== undefined ? (V - U) / I : (V - U) / (U / resistance);
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
  if (P > 0) rows.push(resistanceRow('collapse', seen, COLLAPSE));
  if (psePowerLimit < 2 * P) rows.push(resistanceRow('pse-power', seen, SUPPLY));
  for (const [label, U] of [
    ['pd-voltage', pdVoltageLimit],
    ['device-voltage', minimumVoltage],
  ] as const) {
    if (U !== undefined && bites(V, { power: P }, U)) rows.push(resistanceRow(label, seen, VOLTAGE, { 'U_#': U }, [`voltage, ${POWER}`]));
  }
  if (maximumResistance !== undefined) {
    rows.push(resistanceRow('device-resistance', judgedLoop(maximumResistance), OHMS, { 'X_#': maximumResistance.ohms }));
  }
  return rows;
}

/** What bounds a line of two wires. */
export function lineLimitRows(
  V: number,
  load: Load,
  kind: string,
  minimumVoltage: number | undefined,
  permittedDrop: number | undefined,
  maximumResistance: number | undefined,
): ReadingRow[] {
  const rows: ReadingRow[] = [];
  if (load.power !== undefined && load.power > 0) rows.push(resistanceRow('collapse', 'twoPair', COLLAPSE));
  if (load.current !== undefined && load.current > 0) rows.push(resistanceRow('collapse', 'twoPair', SHORT));
  if (minimumVoltage !== undefined && bites(V, load, minimumVoltage)) {
    rows.push(resistanceRow('device-voltage', 'twoPair', VOLTAGE, { 'U_#': minimumVoltage }, [`voltage, ${kind}`]));
  }
  if (permittedDrop !== undefined && bites(V, load, V * (1 - permittedDrop))) {
    rows.push(resistanceRow('voltage-drop', 'twoPair', DROP, { 'k_#': permittedDrop }, [`voltage, ${kind}`]));
  }
  if (maximumResistance !== undefined) rows.push(resistanceRow('device-resistance', 'twoPair', OHMS, { 'X_#': maximumResistance }));
  return rows;
}

/** The permitted drop; what the sheets of limits do not show they must not pass over: the answer would not be the core's. */
export function shownDrop({ permittedDrop, ampacity }: ShownInput): number | undefined {
  if (typeof permittedDrop === 'object') {
    throw new InputError('conflict', 'permittedDrop', 'a fraction of the supply voltage: volts have no sheet', permittedDrop);
  }
  if (ampacity !== undefined) throw new InputError('conflict', 'ampacity', 'no ampacity: it has no sheet', ampacity);
  return permittedDrop;
}

interface ShownInput {
  readonly permittedDrop?: PermittedDrop | undefined;
  readonly ampacity?: number | undefined;
}

/** Limits that are held against a figure as they stand. */
export const fixedGivens: readonly SheetGiven[] = [
  ...fixedGiven('v_#', '@: what there is', { W: 'pdPower', '1': 'the input', V: 'supplyVoltage, or the limit' }),
  ...fixedGiven('w_#', '@: the limit', { W: 'poeClass', '1': 'the rule', V: 'the supply or the device' }),
];

/** What there is, or a limit, of so many units, each with what the core calls it. */
export function fixedGiven(symbol: string, meaning: string, cores: Partial<Record<WorkingUnit, string>>): SheetGiven[] {
  const latex = symbol.replace('_#', '_{#}');
  return Object.entries(cores).map(([unit, core]) => ({
    symbol,
    meaning,
    unit: unit as WorkingUnit,
    latex,
    core,
    each: 'fixed',
    when: unit,
  }));
}

/** What is left of each; a temperature by its own unit. */
export function fixedSteps(units: readonly WorkingUnit[], no: SheetNo): readonly SheetStep[] {
  return units.map((unit) => ({
    symbol: 's_#',
    meaning: '@: what is left',
    formula: 'w_# - v_#',
    unit: unit === '°C' ? 'K' : unit,
    latex: 's_{#}',
    source: unit === 'W' ? 'ieee-802.3-class' : 'row',
    each: 'fixed',
    when: unit,
    no,
  }));
}
