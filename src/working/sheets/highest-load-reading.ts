/** A run, or a line, whose load is asked for, as the figures and the limits of its sheet. @module */
import { type HighestLoad, highestLoad, type TwoWireHighestLoadInput } from '../../plan/highest-load.ts';
import { isPowered } from '../../plan/one-unknown.ts';
import type { PoweredRunInput } from '../../plan/powered-run.ts';
import { supplyRange } from '../../plan/two-wire-run.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { Figures, Reading, ReadingRow } from '../sheet.ts';
import { jointAssumptions } from './connection-steps.ts';
import { ampacityCautions, limitRow } from './limit-rows.ts';
import { AMPACITY, AT_HIGHEST, COLLAPSE, DROP, HIGHEST, SHORT, SUPPLY, VOLTAGE, VOLTS } from './limit-steps.ts';
import { type LineInput, lineReading } from './line-steps.ts';
import { type Asking, asking, fixedOhmsRow, granted, placed, portRows, requireOthersMet, runAssumptions } from './open-run.ts';
import { CURRENT, POWER, RESISTANCE } from './point-steps.ts';
import { runReading } from './run-steps.ts';
import { temperatureAssumption } from './shared.ts';

type Run = Omit<PoweredRunInput, 'pdPower'>;
/** What highestLoad takes. */
export type HighestLoadInput = Run | TwoWireHighestLoadInput;

/** All that the class of the device allows. */
export const CLASS = 'power of the class';
/** A resistance takes most at the highest voltage, with no line before it. */
export const AMPACITY_HIGHEST = 'most current of a resistance';

/** The core, and what of its answers this sheet does not show. */
export const asked: Asking<HighestLoadInput, HighestLoad> = asking((input: HighestLoadInput) => {
  const said = highestLoad(input);
  if (isPowered<Run, TwoWireHighestLoadInput>(input)) requireOthersMet(said, input.cabling);
  return said;
});

/** Whichever of the two it is. */
export function readOpen(input: HighestLoadInput): Reading {
  return isPowered<Run, TwoWireHighestLoadInput>(input) ? readRun(input) : readLine(input);
}

function readRun(input: Run): Reading {
  const { installed, cords = [], connections, connectionResistance, minimumVoltage, maximumResistance } = input;
  const { limits } = granted({ ...input, pdPower: 0 });
  const { pdVoltageLimit, psePowerLimit, pdPower } = limits;
  const { pseVoltage: V = limits.pseVoltageMin } = input;
  const segments = [...installed, ...cords];
  const run = runReading(segments, limits.pairs, connections, connectionResistance);
  const { ohms: R } = run;
  const fixed = portRows(limits, undefined, input.pseVoltage, segments);
  if (maximumResistance !== undefined) fixed.push(fixedOhmsRow(maximumResistance));
  const rows: ReadingRow[] = [limitRow('pd-power', {}, [CLASS])];
  if (R > 0) {
    rows.push(limitRow('collapse', {}, [COLLAPSE]));
    // Beyond half the supply voltage the line gives way before the port must source that much.
    if (2 * psePowerLimit * R <= V * V) rows.push(limitRow('pse-power', {}, [SUPPLY]));
  }
  const under = voltageRows(
    V,
    R,
    [
      ['pd-voltage', pdVoltageLimit],
      ['device-voltage', minimumVoltage],
    ],
    POWER,
  );
  return reading(asked.said(input), [...fixed, ...under.fixed], [...rows, ...under.rows], POWER, {
    values: { ...run.values, V, P_lim: psePowerLimit, P_class: pdPower },
    cases: [...run.cases, POWER],
    rows: run.rows,
    assumptions: runAssumptions(input, limits),
  });
}

const KINDS = { power: POWER, current: CURRENT, resistance: RESISTANCE } as const;

function readLine(input: TwoWireHighestLoadInput): Reading {
  const { minimumVoltage, maximumVoltage, maximumResistance, kind: of = 'power' } = input;
  const kind = KINDS[of];
  const { low: V, high } = supplyRange(input.supplyVoltage);
  const line = lineReading(input as LineInput);
  const { ohms: R } = line;
  const fixed: ReadingRow[] = [];
  if (maximumVoltage !== undefined) fixed.push(limitRow('device-overvoltage', { 'v_#': high, 'w_#': maximumVoltage }, ['V']));
  if (maximumResistance !== undefined) fixed.push(fixedOhmsRow(maximumResistance));
  const rows: ReadingRow[] = [];
  if (R > 0 && kind === POWER) rows.push(limitRow('collapse', {}, [COLLAPSE]));
  if (R > 0 && kind === CURRENT) rows.push(limitRow('collapse', {}, [SHORT]));
  const under = voltageRows(V, R, [['device-voltage', minimumVoltage]], kind);
  rows.push(...under.rows, ...dropRows(input, V, high, R, kind), ...ampacityRows(input.ampacity, V, R, kind));
  const isHighest = rows.some(({ cases = [] }) => cases.includes(HIGHEST) || cases.includes(AMPACITY_HIGHEST));
  return reading(asked.said(input), [...fixed, ...under.fixed], rows, kind, {
    values: { ...line.values, V, V_hi: high },
    cases: [...line.cases, kind, ...(isHighest ? [AT_HIGHEST] : [])],
    rows: line.rows,
    assumptions: [...temperatureAssumption(input.temperature), ...jointAssumptions(input)],
    cautions: ampacityCautions(input),
  });
}

/** A permitted drop. More than half of its supply voltage no power loses along the line: that is left to the collapse. */
function dropRows({ permittedDrop }: TwoWireHighestLoadInput, V: number, high: number, R: number, kind: string): ReadingRow[] {
  if (permittedDrop === undefined || R === 0) return [];
  const row = (values: Figures, cases: readonly string[]): ReadingRow[] => [limitRow('voltage-drop', values, cases)];
  if (typeof permittedDrop === 'number') {
    return kind !== POWER || permittedDrop <= 0.5 ? row({ 'k_#': permittedDrop }, [DROP, `voltage, ${kind}`]) : [];
  }
  const { volts } = permittedDrop;
  if (kind === RESISTANCE) return volts < high ? row({ 'Vd_#': volts }, [HIGHEST]) : [];
  return volts < V && (kind !== POWER || 2 * volts <= V) ? row({ 'Vd_#': volts }, [VOLTS, `voltage, ${kind}`]) : [];
}

/** A most current. At its collapse a line passes half the current of a short: a power never draws more than that. */
function ampacityRows(most: number | undefined, V: number, R: number, kind: string): ReadingRow[] {
  if (most === undefined || (kind === POWER && 2 * most * R > V)) return [];
  return [limitRow('ampacity', { 'Iz_#': most }, [AMPACITY, kind === RESISTANCE ? AMPACITY_HIGHEST : `${AMPACITY}, ${kind}`])];
}

/** Lowest voltages at the device: one above that of the supply is missed even by a load of nothing. */
function voltageRows(
  V: number,
  R: number,
  limits: readonly (readonly [name: 'pd-voltage' | 'device-voltage', U: number | undefined])[],
  kind: string,
): { readonly fixed: readonly ReadingRow[]; readonly rows: readonly ReadingRow[] } {
  const fixed: ReadingRow[] = [];
  const rows: ReadingRow[] = [];
  for (const [name, U] of limits) {
    if (U === undefined) continue;
    // With nothing to lose no load is left but none at all, which is where the core's search ends and not an answer of its own.
    if (U === V && R > 0) {
      const parameter = name === 'pd-voltage' ? 'pseVoltage' : 'minimumVoltage';
      throw new InputError('conflict', parameter, `more at the supply than the device needs, ${U} V: there would be nothing to lose`, U);
    }
    if (U > V) fixed.push(limitRow(name, { 'v_#': U, 'w_#': V }, ['V']));
    else if (R > 0 && (kind !== POWER || 2 * U >= V)) rows.push(limitRow(name, { 'U_#': U }, [VOLTAGE, `voltage, ${kind}`]));
  }
  return { fixed, rows };
}

function reading(said: HighestLoad, fixed: readonly ReadingRow[], rows: readonly ReadingRow[], kind: string, of: Reading): Reading {
  return {
    ...of,
    cases: [...(of.cases ?? []), ...(rows.length === 0 ? [] : [`bounded, ${kind}`])],
    rows: { ...of.rows, ...placed(said, fixed, rows) },
    ...(rows.length === 0 ? { no: 'nothing bounds the load of this run' } : {}),
  };
}

