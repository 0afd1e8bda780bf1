/** A run, or a line, whose supply voltage is asked for, as the figures and the limits of its sheet. @module */
import type { CheckName } from '../../circuit/check.ts';
import type { Load } from '../../circuit/operating-point.ts';
import { type LowestSupplyVoltage, type LowestSupplyVoltageInput, lowestSupplyVoltage } from '../../plan/lowest-supply-voltage.ts';
import { isPowered } from '../../plan/one-unknown.ts';
import type { PoweredRunInput } from '../../plan/powered-run.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { Figures, Reading, ReadingRow } from '../sheet.ts';
import { jointAssumptions } from './connection-steps.ts';
import { ampacityCautions, limitRow } from './limit-rows.ts';
import { AMPACITY, COLLAPSE, DROP, SHORT, SUPPLY, VOLTAGE, VOLTS } from './limit-steps.ts';
import { lineReading } from './line-steps.ts';
import {
  type Asking,
  asking,
  fixedOhmsRow,
  granted,
  placed,
  portRows,
  requireLoadResistance,
  requireOthersMet,
  runAssumptions,
  SAME_VOLTS,
  SHARE,
} from './open-run.ts';
import { CURRENT, loadReading, POWER, RESISTANCE } from './point-steps.ts';
import { runReading } from './run-steps.ts';
import { temperatureAssumption } from './shared.ts';

type Run = Omit<PoweredRunInput, 'pseVoltage'>;
type Line = Exclude<LowestSupplyVoltageInput, Run>;

/** The core looks no further, either way. [V] */
const MOST = 1000;
const LEAST = 1e-6;

/** The least asked for is more than there may be. */
export const TOO_HIGH = 'too high';

/** The core, and what of its answers this sheet does not show. */
export const asked: Asking<LowestSupplyVoltageInput, LowestSupplyVoltage> = asking((input: LowestSupplyVoltageInput) => {
  const said = lowestSupplyVoltage(input);
  if (isPowered<Run, Line>(input)) requireOthersMet(said, input.cabling);
  else {
    requireLoadResistance(input.load);
    requireNoMore(input);
  }
  return said;
});

/** Whichever of the two it is. */
export function readOpen(input: LowestSupplyVoltageInput): Reading {
  return isPowered<Run, Line>(input) ? readRun(input) : readLine(input);
}

/** Refuses what a resistance meets only up to some voltage: it takes and drops the more the higher that is. */
function requireNoMore({ load, permittedDrop, ampacity }: Line): void {
  if (load.resistance === undefined) return;
  if (typeof permittedDrop === 'object') {
    throw new InputError(
      'conflict',
      'permittedDrop',
      'a fraction of the supply voltage: a resistance drops more volts of a higher one',
      permittedDrop,
    );
  }
  if (ampacity !== undefined) {
    throw new InputError('conflict', 'ampacity', 'no ampacity with a resistance, which takes more of a higher voltage', ampacity);
  }
}

function readRun(input: Run): Reading {
  const { installed, cords = [], connections, connectionResistance, minimumVoltage, maximumResistance } = input;
  const { limits, P } = granted(input);
  const segments = [...installed, ...cords];
  const run = runReading(segments, limits.pairs, connections, connectionResistance);
  const { ohms: R } = run;
  const fixed = portRows(limits, P, undefined, segments);
  if (maximumResistance !== undefined) fixed.push(fixedOhmsRow(maximumResistance));
  const limited: Asked[] = [{ name: 'collapse', volts: 2 * Math.sqrt(P * R), cases: [COLLAPSE] }];
  // At its collapse a line takes twice the power of its load: a limit above that never bites.
  const { psePowerLimit: W, pdVoltageLimit } = limits;
  if (P < W && W < 2 * P) limited.push({ name: 'pse-power', volts: W * Math.sqrt(R / (W - P)), cases: [SUPPLY] });
  limited.push(...lowest('pd-voltage', pdVoltageLimit, { power: P }, R), ...lowest('device-voltage', minimumVoltage, { power: P }, R));
  return reading(input, limited, fixed, limits.pseVoltageMax, {
    values: { ...run.values, P, P_lim: W },
    cases: [...run.cases, POWER],
    rows: run.rows,
    assumptions: runAssumptions(input, limits),
  });
}

function readLine(input: Line): Reading {
  const { load, minimumVoltage, maximumVoltage, maximumResistance, permittedDrop, ampacity } = input;
  const line = lineReading(input);
  const loaded = loadReading(load);
  const { ohms: R } = line;
  const { power: P, current: I } = load;
  const fixed: ReadingRow[] = [];
  if (maximumResistance !== undefined) fixed.push(fixedOhmsRow(maximumResistance));
  const limited: Asked[] = [];
  if (P !== undefined) limited.push({ name: 'collapse', volts: 2 * Math.sqrt(P * R), cases: [COLLAPSE] });
  if (I !== undefined) limited.push({ name: 'collapse', volts: I * R, cases: [SHORT] });
  limited.push(...lowest('device-voltage', minimumVoltage, load, R));
  if (typeof permittedDrop === 'number') addFraction(permittedDrop);
  else if (permittedDrop !== undefined) addVolts(permittedDrop.volts);
  if (ampacity !== undefined) {
    if (P !== undefined && P > 0) limited.push(...lowest('ampacity', P / ampacity, load, R, AMPACITY, { 'Iz_#': ampacity }));
    if (I !== undefined) fixed.push(limitRow('ampacity', { 'v_#': I, 'w_#': ampacity }, ['A']));
  }
  return reading(input, limited, fixed, Math.min(maximumVoltage ?? MOST, MOST), {
    values: { ...line.values, ...loaded.values },
    cases: [...line.cases, ...loaded.cases],
    rows: line.rows,
    assumptions: [...temperatureAssumption(input.temperature), ...jointAssumptions(input)],
    cautions: ampacityCautions(input),
  });

  function addFraction(k: number): void {
    const drop = { name: 'voltage-drop', values: { 'k_#': k } } as const;
    // More than half of its supply voltage no power loses along the line: that is left to the collapse.
    if (P !== undefined && k <= 0.5) {
      limited.push({ ...drop, volts: Math.sqrt((P * R) / (k * (1 - k))), cases: [DROP, `drop, ${POWER}`] });
    }
    if (I !== undefined) limited.push({ ...drop, volts: (I * R) / k, cases: [DROP, `drop, ${CURRENT}`] });
    if (load.resistance !== undefined) fixed.push(limitRow('voltage-drop', { 'w_#': k }, [SHARE]));
  }

  /** A power loses as much only where it has come near to the collapse; a current loses the same at any voltage. */
  function addVolts(d: number): void {
    if (P !== undefined && P * R >= d * d) {
      limited.push({ name: 'voltage-drop', volts: d + P / (d / R), values: { 'Vd_#': d }, cases: [VOLTS] });
    }
    if (I !== undefined) fixed.push(limitRow('voltage-drop', { 'w_#': d }, [SAME_VOLTS]));
  }
}

/** What a limit asks for decides whether it has a row, and is no figure of the working. */
interface Asked {
  readonly name: CheckName;
  readonly volts: number;
  readonly values?: Figures;
  readonly cases: readonly string[];
}

/** A lowest voltage at the device; the stable root of a power lies above half of the supply voltage: under that the collapse speaks. */
function lowest(
  name: CheckName,
  U: number | undefined,
  load: Load,
  R: number,
  what: string = VOLTAGE,
  values: Figures = { 'U_#': U ?? 0 },
): Asked[] {
  if (U === undefined) return [];
  const { power: P, current: I, resistance = 1 } = load;
  if (P !== undefined && U * U < P * R) return [];
  const drop = P !== undefined ? (P / U) * R : I !== undefined ? I * R : (U / resistance) * R;
  const kind = P !== undefined ? POWER : I !== undefined ? CURRENT : RESISTANCE;
  return [{ name, volts: U + drop, values, cases: [what, `voltage, ${kind}`] }];
}

function reading(
  input: LowestSupplyVoltageInput,
  limits: readonly Asked[],
  fixed: readonly ReadingRow[],
  most: number,
  of: Reading,
): Reading {
  const binding = limits.filter(({ volts }) => volts > LEAST);
  const rows = binding.map(({ name, values, cases }) => limitRow(name, values, cases));
  return {
    ...of,
    values: { ...of.values, V_most: most },
    cases: [
      ...(of.cases ?? []),
      ...(rows.length === 0 ? [] : ['bounded']),
      ...(binding.some(({ volts }) => volts > most) ? [TOO_HIGH] : []),
    ],
    rows: { ...of.rows, ...placed(asked.said(input), fixed, rows) },
    ...(rows.length === 0 ? { no: 'any supply voltage will do: nothing bounds it' } : {}),
  };
}

