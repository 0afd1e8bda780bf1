/** How hot: each limit as a resistance, as the most that one metre may have, and as a temperature; the lowest of these. @module */

import type { Segment } from '../../cable/index.ts';
import type { HighestTemperature } from '../../plan/index.ts';
import { highestTemperature, type PoweredRunInput, type TwoWireRunInput, type UnequalTwoWireRunInput } from '../../plan/index.ts';
import { isPowered } from '../../plan/open-run.ts';
import { supplyRange } from '../../plan/two-wire-input.ts';
import { COLDEST, HOTTEST } from '../../quantity/guards.ts';
import { InputError } from '../../quantity/input-error.ts';
import { type BookSheet, steps } from '../engine/rows.ts';
import type { Reading } from '../engine/sheet.ts';
import { type WithCables, withCables } from '../engine/with-cables.ts';
import { twentyGiven } from './conductors.ts';
import { connectionGivens, jointAssumption } from './joints.ts';
import {
  ampacityCaution,
  type HeldCase,
  lineLimitRows,
  mostResistanceSteps,
  portPowerGiven,
  resistanceLimitGivens,
  supplyGivens,
} from './limits.ts';
import { AT_MOST, legGivens, lineLengthGiven, lineReading, perMetre } from './line.ts';
import { loadCase, loadGivens, loadKeys } from './load.ts';
import {
  heldReading,
  openGivens,
  openLineKeys,
  openRunKeys,
  openSteps,
  portRows,
  poweredRun,
  requireLoadResistance,
  requireNoCabling,
  runAssumptions,
} from './open-run.ts';
import { cordGivens, cordsCase, pieceGivens, pieceRows, restSteps, runReading } from './runs.ts';

type Powered = PoweredRunInput;
type TwoWire = TwoWireRunInput | UnequalTwoWireRunInput;
/** What highestTemperature takes. */
export type HighestTemperatureInput = Powered | TwoWire;
type Run = WithCables<Powered>;
type Line = WithCables<TwoWire>;

type Case = HeldCase | 'line';

const guard = (input: HighestTemperatureInput): HighestTemperature => {
  const answer = highestTemperature(input);
  if (isPowered<Powered, TwoWire>(input)) requireNoCabling(input.cabling);
  else requireLoadResistance(input.load);
  const wire = isPowered<Powered, TwoWire>(input) ? perKelvin(withCables(input.installed)) : perMetre(input).perKelvin * input.length;
  if (!(wire > 0)) {
    throw new InputError('conflict', 'length', 'a wire whose resistance changes with its temperature: there is nothing to show else', wire);
  }
  return answer;
};

/** One conductor of so many pieces: how much more each kelvin makes of it. */
function perKelvin(pieces: readonly Segment[]): number {
  return pieces.reduce((sum, { cable, length }) => sum + cable.maximumResistancePerMetre * cable.temperatureCoefficient * length, 0);
}

export const highestTemperatureSheet: BookSheet<HighestTemperatureInput, Case, HighestTemperature> = {
  title: 'The highest temperature at which a run holds',
  needs: ['poeClass|supplyVoltage'],
  keys: [...openRunKeys, 'pdPower', 'pseVoltage', ...openLineKeys, ...loadKeys],
  // biome-ignore format: one figure a row
  givens: [
    supplyGivens,
    loadGivens,
    portPowerGiven,
    legGivens,
    lineLengthGiven,
    pieceGivens.filter(({ symbol }) => symbol !== 'T_#'),
    twentyGiven,
    connectionGivens,
    cordGivens,
    openGivens,
    resistanceLimitGivens,
    ['T_cold', '°C', 'the lowest temperature that is looked at', 'the range of temperatures', { value: COLDEST, ifUsed: true }],
    ['T_hot', '°C', 'the highest temperature that is looked at', 'the range of temperatures', { value: HOTTEST, ifUsed: true }],
  ],
  // biome-ignore format: one figure a row
  steps: [
    openSteps('temperature'),
    ['r20', 'Ω/m', '2 * rl20_1', 'one metre of run at 20 °C, out and back', { when: 'equal' }],
    ['alpha', '1/K', 'alphal_1', 'its temperature coefficient', { when: 'equal' }],
    ['r20', 'Ω/m', 'rl20_1 + rl20_2', 'one metre of run at 20 °C, out and back', { when: 'unequal' }],
    ['alpha', '1/K', '(rl20_1 * alphal_1 + rl20_2 * alphal_2) / r20', 'its temperature coefficient, each wire by its share', { when: 'unequal' }],
    ['L', 'm', '[L_#]', 'installed length, one way', { when: 'powered' }],
    ['r20', 'Ω/m', '([r20_# * L_#]) / L', 'one metre of one conductor at 20 °C, on the average', { when: 'powered' }],
    ['alpha', '1/K', '([r20_# * alpha_# * L_#]) / (r20 * L)', 'its temperature coefficient, each piece by its share', { when: 'powered' }],
    restSteps,
    mostResistanceSteps('no temperature meets the limit on @: even a run of no resistance misses it'),
    steps([
    ['q_#', 'Ω/m', '(X_# / f_# - R_0) / L', '@: what one metre may have, the rest of the run taken off', { source: 'three-loops', when: 'one of the loops' }],
    ['q_#', 'Ω/m', '(X_# - R_0) / L', '@: what one metre may have, out and back, the joints taken off', { when: 'out and back' }],
    ['T_#', '°C', 'T_ref + (q_# / r20 - 1) / alpha', '@: the temperature at which it has just that', { core: '<limit>' }],
  ], { each: 'limit' }),
    ['T', '°C', 'min([T_#,])', 'the highest temperature, the lowest of these, set by', { least: ['T_#'], core: 'temperature', when: 'bounded' }],
    ['T_left', 'K', 'T - T_cold', 'how far it lies above the lowest that is looked at', { when: 'bounded', no: {
      says: 'no temperature is cool enough, not even the lowest that is looked at', steps: [], isQuiet: true } }],
    ['T_left', 'K', 'T_hot - T', 'how far it lies under the highest that is looked at', { when: 'bounded', no: {
      says: 'no temperature that is looked at is too hot: nothing bounds it', steps: [], isQuiet: true } }],
  ],
  assumptions: [`Direct current, steady state. Every conductor ${AT_MOST}; all installed wire at one temperature, cords at their own.`],
  validity: 'From -100 to 400 °C, by the straight line of resistance against temperature.',
  cautions: [
    'What the insulation of a cable bears is on its data sheet and is usually met first. Heat in bundles and ampacity are for the local code and a licensed practitioner.',
  ],
  slips: [
    ['one-way-length', { r20: 'rl20_1' }, 'two-wire'],
    ['cold-resistance', { 'Tc_#': 'T_ref' }, 'cords'],
    ['power-at-wrong-end', { 'X_#': '(V - U_#) / (P / V)' }, 'line, constant power'],
    ['percent-of-wrong-voltage', { 'k_#': 'k_# / (1 + k_#)' }],
    ['pair-loop-for-pairset', { 'f_#': '2' }, 'one pairset'],
    ['pairset-for-four-pair', { 'f_#': '1' }, 'two pairsets'],
  ],
  guard,
  read: (input, answer) => (isPowered<Run, Line>(input) ? readRun(input, answer) : readLine(input, answer)),
};

const UNBOUNDED = 'nothing bounds the temperature of this run';

function readRun(input: Run, answer: HighestTemperature): Reading<Case> {
  const { installed, cords = [], pseVoltage } = input;
  const { limits, P, values, cases, limit, idle } = poweredRun(input);
  const run = runReading(installed, limits.pairs, input);
  const fixed = [...portRows(limits, P, pseVoltage, [...installed, ...cords]), ...idle];
  return heldReading(answer, UNBOUNDED, {
    values,
    cases: [...run.cases, ...cases, cordsCase(cords)],
    rows: { ...run.rows, cord: pieceRows(cords, 'c') },
    fixed,
    limit,
    assumptions: runAssumptions(input, limits),
  });
}

function readLine(input: Line, answer: HighestTemperature): Reading<Case> {
  const supply = supplyRange(input.supplyVoltage);
  const { cases, rows } = lineReading(input);
  return heldReading(answer, UNBOUNDED, {
    values: { V: supply.low, V_hi: supply.high },
    cases: [...cases, loadCase(input.load), 'line'],
    rows,
    ...lineLimitRows(input, supply),
    assumptions: [jointAssumption(input)],
    cautions: [ampacityCaution(input)],
  });
}
