/** A run, or a line, whose temperature is asked for, as the figures and the limits of its sheet. @module */
import type { Segment } from '../../cable/run-resistance.ts';
import { type HighestTemperature, highestTemperature } from '../../plan/highest-temperature.ts';
import { isPowered } from '../../plan/one-unknown.ts';
import type { PoweredRunInput } from '../../plan/powered-run.ts';
import { supplyRange, type TwoWireRunInput, type UnequalTwoWireRunInput } from '../../plan/two-wire-run.ts';
import { COLDEST, HOTTEST } from '../../quantity/guards.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { Reading, ReadingRow } from '../sheet.ts';
import { jointAssumptions } from './connection-steps.ts';
import { ampacityCautions, idleRows, lineLimitRows, mostOhms, poweredLimitRows } from './limit-rows.ts';
import { legRows, lineReading, perMetre } from './line-steps.ts';
import { type Asking, asking, granted, placed, portRows, requireLoadResistance, requireNoCabling, runAssumptions } from './open-run.ts';
import { loadReading, POWER } from './point-steps.ts';
import { cordRows, cordsCase, piecesOhms, runReading } from './run-steps.ts';

type Line = TwoWireRunInput | UnequalTwoWireRunInput;
/** What highestTemperature takes. */
export type HighestTemperatureInput = PoweredRunInput | Line;

/** What is asked for lies outside the temperatures that are looked at. */
export const TOO_COLD = 'too cold';
export const TOO_HOT = 'too hot';

/** The core, and what of its answers this sheet does not show. */
export const asked: Asking<HighestTemperatureInput, HighestTemperature> = asking((input: HighestTemperatureInput): HighestTemperature => {
  const answer = highestTemperature(input);
  let wire = 0;
  if (isPowered<PoweredRunInput, Line>(input)) {
    requireNoCabling(input.cabling);
    wire = perKelvinOf(input.installed);
  } else {
    requireLoadResistance(input.load);
    wire = perMetre(legRows(input)).perKelvin * input.length;
  }
  if (!(wire > 0)) {
    throw new InputError('conflict', 'length', 'a wire whose resistance changes with its temperature: there is nothing to show else', wire);
  }
  return answer;
});

/** Whichever of the two it is. */
export function readOpen(input: HighestTemperatureInput): Reading {
  return isPowered<PoweredRunInput, Line>(input) ? readRun(input) : readLine(input);
}

/** One conductor of so many pieces: how much more each kelvin makes of it. */
function perKelvinOf(pieces: readonly Segment[]): number {
  return pieces.reduce((sum, { cable, length }) => sum + cable.maximumResistancePerMetre * cable.temperatureCoefficient * length, 0);
}

function readRun(input: PoweredRunInput): Reading {
  const { installed, cords = [], minimumVoltage, maximumResistance } = input;
  const { limits, P } = granted(input);
  const { pseVoltage: V = limits.pseVoltageMin } = input;
  const { values, cases, rows } = runReading(installed, limits.pairs, input.connections, input.connectionResistance);
  const { n = 0, R_c = 0 } = values;
  const limit = poweredLimitRows(limits, V, P, minimumVoltage, maximumResistance);
  const cool = piecesOhms(installed.map((piece) => ({ ...piece, temperature: 20 })));
  const rest = piecesOhms(cords) + n * R_c;
  const most = limit.map((row) => mostOhms(row, { low: V, high: V }, { power: P }, limits.psePowerLimit) / (row.values['f_#'] ?? 1) - rest);
  return reading(
    input,
    [
      ...portRows(limits, P, input.pseVoltage, [...installed, ...cords]),
      ...idleRows(V, { power: P }, [
        ['pd-voltage', limits.pdVoltageLimit],
        ['device-voltage', input.minimumVoltage],
      ]),
    ],
    limit,
    hottest(most, cool, perKelvinOf(installed)),
    {
      values: { ...values, V, P, P_lim: limits.psePowerLimit },
      cases: [...cases, POWER, cordsCase(cords)],
      rows: { ...rows, cord: cordRows(cords) },
      assumptions: runAssumptions(input, limits),
    },
  );
}

function readLine(input: Line): Reading {
  const { load, connections = 0, connectionResistance = 0, length } = input;
  const supply = supplyRange(input.supplyVoltage);
  const { values, cases, rows } = lineReading({ ...input, temperature: 20 });
  const loaded = loadReading(load);
  const [kind = POWER] = loaded.cases;
  const limits = lineLimitRows(input, supply, kind);
  const { at20, perKelvin } = perMetre(legRows(input));
  const most = limits.limit.map((row) => mostOhms(row, supply, load) - 2 * connections * connectionResistance);
  return reading(input, limits.fixed, limits.limit, hottest(most, at20 * length, perKelvin * length), {
    values: { ...values, ...loaded.values, V: supply.low, V_hi: supply.high },
    cases: [...cases, kind, `line, ${kind}`, ...limits.cases],
    rows,
    assumptions: jointAssumptions(input),
    cautions: ampacityCautions(input),
  });
}

/** Where the first of so many ohms is reached. */
function hottest(most: readonly number[], at20: number, perKelvin: number): number {
  return Math.min(...most.map((ohms) => 20 + (ohms - at20) / perKelvin));
}

function reading(
  input: HighestTemperatureInput,
  fixed: readonly ReadingRow[],
  rows: readonly ReadingRow[],
  at: number,
  of: Reading,
): Reading {
  return {
    ...of,
    values: { ...of.values, T_cold: COLDEST, T_hot: HOTTEST },
    cases: [
      ...(of.cases ?? []),
      ...(rows.length === 0 ? [] : ['bounded']),
      ...(at < COLDEST ? [TOO_COLD] : []),
      ...(rows.length > 0 && at > HOTTEST ? [TOO_HOT] : []),
    ],
    rows: { ...of.rows, ...placed(asked.said(input), fixed, rows) },
    ...(rows.length === 0 ? { no: 'nothing bounds the temperature of this run' } : {}),
  };
}

