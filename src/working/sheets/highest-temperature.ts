/** How hot: each limit as a resistance, as the most that one metre may have, and as a temperature; the lowest of these. @module */
import type { Segment } from '../../cable/run-resistance.ts';
import { type HighestTemperature, highestTemperature } from '../../plan/highest-temperature.ts';
import { isPowered } from '../../plan/one-unknown.ts';
import type { PoweredRunInput } from '../../plan/powered-run.ts';
import { supplyRange, type TwoWireRunInput, type UnequalTwoWireRunInput } from '../../plan/two-wire-run.ts';
import { COLDEST, HOTTEST } from '../../quantity/guards.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { Reading, ReadingRow, Sheet } from '../sheet.ts';
import { connectionGivens, jointAssumptions } from './connection-steps.ts';
import { lineLimitRows, mostOhms, poweredLimitRows } from './limit-rows.ts';
import {
  highestSupplyGiven,
  LOOP,
  mostResistanceSteps,
  OUT_AND_BACK,
  portPowerGiven,
  resistanceLimitGivens,
  supplyGiven,
} from './limit-steps.ts';
import { AT_MOST, legGivens, legRows, lineLengthGiven, lineReading, perMetre, TWO_WIRE } from './line-steps.ts';
import {
  asking,
  granted,
  openGivens,
  openLineKeys,
  openRunKeys,
  openSteps,
  placed,
  portRows,
  requireLoadResistance,
  requireNoCabling,
  runAssumptions,
} from './open-run.ts';
import { loadGivens, loadReading, POWER } from './point-steps.ts';
import { CORDS, cordGivens, cordRows, cordsCase, POWERED, pieceGivens, piecesOhms, restSteps, runReading } from './run-steps.ts';
import { loadKeys, twentyGiven } from './shared.ts';

type Line = TwoWireRunInput | UnequalTwoWireRunInput;
/** What highestTemperature takes. */
export type HighestTemperatureInput = PoweredRunInput | Line;

const TOO_COLD = 'too cold';
const TOO_HOT = 'too hot';
const NOT_EVEN = 'no temperature meets the limit on @: even a run of no resistance misses it';

/** The core, and what of its answers this sheet does not show. */
const asked = asking((input: HighestTemperatureInput): HighestTemperature => {
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

export const highestTemperatureSheet: Sheet<HighestTemperatureInput> = {
  title: 'The highest temperature at which a run holds',
  core: 'highestTemperature',
  keys: [...new Set([...openRunKeys, 'pdPower', 'pseVoltage', ...openLineKeys, 'supplyVoltage', ...loadKeys])],
  givens: [
    supplyGiven,
    highestSupplyGiven,
    ...loadGivens,
    portPowerGiven,
    ...legGivens,
    lineLengthGiven,
    ...pieceGivens.filter(({ symbol }) => symbol !== 'T_#'),
    twentyGiven,
    ...connectionGivens,
    ...cordGivens,
    ...openGivens,
    ...resistanceLimitGivens,
    {
      symbol: 'T_cold',
      meaning: 'the lowest temperature that is looked at',
      unit: '°C',
      latex: 'T_{\\mathrm{cold}}',
      core: 'the range of temperatures',
      when: TOO_COLD,
    },
    {
      symbol: 'T_hot',
      meaning: 'the highest temperature that is looked at',
      unit: '°C',
      latex: 'T_{\\mathrm{hot}}',
      core: 'the range of temperatures',
      when: TOO_HOT,
    },
  ],
  steps: [
    ...openSteps('temperature'),
    {
      symbol: 'r20',
      meaning: 'one metre of run at 20 °C, out and back',
      formula: '2 * rl20_1',
      unit: 'Ω/m',
      latex: 'r_{20}',
      source: 'circuit-laws',
      when: 'equal',
    },
    {
      symbol: 'alpha',
      meaning: 'its temperature coefficient',
      formula: 'alphal_1',
      unit: '1/K',
      latex: '\\alpha',
      source: 'circuit-laws',
      when: 'equal',
    },
    {
      symbol: 'r20',
      meaning: 'one metre of run at 20 °C, out and back',
      formula: 'rl20_1 + rl20_2',
      unit: 'Ω/m',
      latex: 'r_{20}',
      source: 'circuit-laws',
      when: 'unequal',
    },
    {
      symbol: 'alpha',
      meaning: 'its temperature coefficient, each wire by its share',
      formula: '(rl20_1 * alphal_1 + rl20_2 * alphal_2) / r20',
      unit: '1/K',
      latex: '\\alpha',
      source: 'circuit-laws',
      when: 'unequal',
    },
    {
      symbol: 'L',
      meaning: 'installed length, one way',
      formula: '[L_#]',
      unit: 'm',
      latex: 'L',
      source: 'circuit-laws',
      when: POWERED,
    },
    {
      symbol: 'r20',
      meaning: 'one metre of one conductor at 20 °C, on the average',
      formula: '([r20_# * L_#]) / L',
      unit: 'Ω/m',
      latex: 'r_{20}',
      source: 'circuit-laws',
      when: POWERED,
    },
    {
      symbol: 'alpha',
      meaning: 'its temperature coefficient, each piece by its share',
      formula: '([r20_# * alpha_# * L_#]) / (r20 * L)',
      unit: '1/K',
      latex: '\\alpha',
      source: 'circuit-laws',
      when: POWERED,
    },
    ...restSteps,
    ...mostResistanceSteps({ says: NOT_EVEN, steps: [] }),
    {
      symbol: 'q_#',
      meaning: '@: what one metre may have, the rest of the run taken off',
      formula: '(X_# / f_# - R_0) / L',
      unit: 'Ω/m',
      latex: 'q_{#}',
      source: 'three-loops',
      each: 'limit',
      when: LOOP,
    },
    {
      symbol: 'q_#',
      meaning: '@: what one metre may have, out and back, the joints taken off',
      formula: '(X_# - R_0) / L',
      unit: 'Ω/m',
      latex: 'q_{#}',
      source: 'circuit-laws',
      each: 'limit',
      when: OUT_AND_BACK,
    },
    {
      symbol: 'T_#',
      meaning: '@: the temperature at which it has just that',
      formula: 'T_ref + (q_# / r20 - 1) / alpha',
      unit: '°C',
      latex: 'T_{#}',
      source: 'circuit-laws',
      each: 'limit',
      core: '<limit>',
    },
    {
      symbol: 'T',
      meaning: 'the highest temperature, the lowest of these, set by',
      least: ['T_#'],
      formula: 'min([T_#,])',
      unit: '°C',
      latex: 'T',
      source: 'circuit-laws',
      core: 'temperature',
      when: 'bounded',
    },
    {
      symbol: 'T_left',
      meaning: 'how far it lies above the lowest that is looked at',
      formula: 'T - T_cold',
      unit: 'K',
      latex: 'T_{\\mathrm{left}}',
      source: 'circuit-laws',
      when: TOO_COLD,
      no: { says: 'no temperature is cool enough, not even the lowest that is looked at', steps: [] },
    },
    {
      symbol: 'T_left',
      meaning: 'how far it lies under the highest that is looked at',
      formula: 'T_hot - T',
      unit: 'K',
      latex: 'T_{\\mathrm{left}}',
      source: 'circuit-laws',
      when: TOO_HOT,
      no: { says: 'no temperature that is looked at is too hot: nothing bounds it', steps: [] },
    },
  ],
  assumptions: [`Direct current, steady state. Every conductor ${AT_MOST}; all installed wire at one temperature, cords at their own.`],
  validity: 'From -100 to 400 °C, by the straight line of resistance against temperature.',
  cautions: [
    'What the insulation of a cable bears is on its data sheet and is usually met first. Heat in bundles and ampacity are for the local code and a licensed practitioner.',
  ],
  slips: [
    { slip: 'one-way-length', when: TWO_WIRE, steps: { r20: 'rl20_1' } },
    { slip: 'cold-resistance', when: CORDS, givens: { 'Tc_#': 'T_ref' } },
    { slip: 'power-at-wrong-end', when: `line, ${POWER}`, steps: { 'X_#': '(V - U_#) / (P / V)' } },
    { slip: 'percent-of-wrong-voltage', givens: { 'k_#': 'k_# / (1 + k_#)' } },
    { slip: 'pair-loop-for-pairset', when: 'one pairset', givens: { 'f_#': '2' } },
    { slip: 'pairset-for-four-pair', when: 'two pairsets', givens: { 'f_#': '1' } },
  ],
  guard: asked.guard,
  read: (input) => (isPowered<PoweredRunInput, Line>(input) ? readRun(input) : readLine(input)),
};

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
    portRows(limits, P, input.pseVoltage, [...installed, ...cords]),
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
