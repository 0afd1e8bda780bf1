/** What gauge: every candidate beside the most that one metre may have, and the thinnest that passes. @module */

import { isCopper } from '../../cable/copper.ts';
import type { Cable } from '../../cable/index.ts';
import { atMaximum } from '../../conductor/to-maximum.ts';
import type { SmallestConductor } from '../../plan/index.ts';
import { type SmallestCableInput, type SmallestTwoWireInput, smallestConductor } from '../../plan/index.ts';
import { isPowered } from '../../plan/open-run.ts';
import { supplyRange } from '../../plan/two-wire-input.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { SourceKey } from '../../sources/sources.ts';
import { type BookSheet, givens, steps } from '../engine/rows.ts';
import type { Reading, ReadingRow } from '../engine/sheet.ts';
import type { WithCables } from '../engine/with-cables.ts';
import { coefficientSource, temperatureAssumption, twentyGiven } from './conductors.ts';
import { connectionCases, connectionGivens, jointAssumption, jointCases } from './joints.ts';
import {
  ampacityCaution,
  type HeldCase,
  lineLimitRows,
  mostResistanceSteps,
  portPowerGiven,
  resistanceLimitGivens,
  supplyGivens,
} from './limits.ts';
import { AT_MOST } from './line.ts';
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
import { cordGivens, cordsCase, pieceRows, restSteps } from './runs.ts';

type Powered = SmallestCableInput;
type TwoWire = SmallestTwoWireInput;
/** What smallestConductor takes. */
export type SmallestConductorInput = Powered | TwoWire;
type Run = WithCables<Powered>;
type Line = WithCables<TwoWire>;

type Case = HeldCase | 'free' | 'copper' | 'not copper';

const guard = (input: SmallestConductorInput): SmallestConductor => {
  const answer = smallestConductor(input);
  if (isPowered<Powered, TwoWire>(input)) requireNoCabling(input.cabling);
  else requireLoadResistance(input.load);
  if (input.length === 0) throw new InputError('range', 'length', 'more than 0 m: a run of no length takes any conductor', 0);
  return answer;
};

const NOT_EVEN = 'no conductor meets the limit on @: even one of no resistance misses it';
const REST = { says: 'no conductor meets the limit on @: the rest of the run misses it alone', steps: [] };

export const smallestConductorSheet: BookSheet<SmallestConductorInput, Case, SmallestConductor> = {
  title: 'The smallest conductor that will do',
  needs: ['candidates', 'length', 'poeClass|supplyVoltage'],
  keys: [
    'candidates',
    ...openRunKeys.filter((key) => key !== 'installed'),
    'pdPower',
    'pseVoltage',
    ...openLineKeys.filter((key) => !['conductor', 'out', 'back'].includes(key)),
    'supplyVoltage',
    ...loadKeys,
  ],
  // biome-ignore format: one figure a row
  givens: [
    supplyGivens,
    loadGivens,
    portPowerGiven,
    ['L', 'm', 'length of the run, one way', 'length'],
    ['T', '°C', 'temperature of the conductors', 'temperature', { value: 20 }],
    twentyGiven,
    connectionGivens,
    cordGivens,
    openGivens,
    resistanceLimitGivens,
    givens([
      ['r20_#', 'Ω/m', `@: one metre of one conductor at 20 °C, ${AT_MOST}`, 'candidates[]'],
      ['alpha_#', '1/K', '@: temperature coefficient at 20 °C', 'candidates[]'],
    ], { source: 'row', each: 'candidate' }),
  ],
  // biome-ignore format: one figure a row
  steps: [
    openSteps('conductor'),
    restSteps,
    mostResistanceSteps(NOT_EVEN),
    steps([
    ['Y_#', 'Ω', 'X_# / f_# - R_0', '@: what the whole of the wire may have, the rest of the run taken off', { source: 'three-loops', when: 'one of the loops' }],
    ['Y_#', 'Ω', 'X_# - R_0', '@: what the wire may have, out and back, the joints taken off', { when: 'out and back' }],
  ], { each: 'limit', no: REST }),
    ['Y', 'Ω', 'min([Y_#,])', 'the least of these, set by', { least: ['Y_#'], when: 'bounded' }],
    ['q', 'Ω/m', 'Y / (2 * L)', 'the most that one metre of one conductor may have: there are two, out and back', { when: 'bounded, two-wire' }],
    ['q', 'Ω/m', 'Y / L', 'the most that one metre of one conductor may have', { source: 'three-loops', when: 'bounded, powered' }],
    steps([
    ['r_#', 'Ω/m', 'r20_# * (1 + alpha_# * (T - T_ref))', '@: one metre at its temperature'],
    ['d_#', 'Ω/m', 'q - r_#', '@: what is left of the most; under 0 it is too thin', { when: 'bounded, copper' }],
    ['p_#', 'Ω/m', 'r20_# * round(q / (q + r_#))', '@: counted at 20 °C where the most is no less than it has, and not at all where it is too thin', { when: 'bounded, copper' }],
    ['p_#', 'Ω/m', 'r20_#', '@: counted at 20 °C, for nothing bounds it', { when: 'free, copper' }],
    ['p_#', 'Ω/m', '0 * r20_#', '@: not counted, for it is not copper', { source: 'copper-conductors', when: 'not copper' }],
  ], { each: 'candidate' }),
    ['d_most', 'Ω/m', 'max([d_#,])', 'what the one with the least resistance has left of the most', { when: 'bounded', no: {
      says: 'none of these is thick enough', steps: [], isQuiet: true } }],
    ['p', 'Ω/m', 'max([p_#,])', 'the thinnest that passes has the most at 20 °C: it is', { least: ['p_#'], core: 'candidates[@].resistancePerMetre' }],
  ],
  tables: [['The candidates, thinnest first', 'candidate', 'candidate']],
  assumptions: [`Direct current, steady state. Every conductor ${AT_MOST}; the device at the load stated.`],
  validity:
    'Thinnest means most resistance. A stated ampacity is held against the current, whichever conductor it is; what each may carry, and what it must be for its place, is not looked at.',
  cautions: [
    'Ampacity, the protective device and the insulation are for the local code and a licensed practitioner: they may ask for a thicker one.',
  ],
  slips: [
    ['one-way-length', { q: 'Y / L' }, 'two-wire'],
    ['cold-resistance', { T: 'T_ref', 'Tc_#': 'T_ref' }],
    ['pair-loop-for-pairset', { 'f_#': '2' }, 'one pairset'],
    ['pairset-for-four-pair', { 'f_#': '1' }, 'two pairsets'],
  ],
  guard,
  read: (input, answer) => (isPowered<Run, Line>(input) ? readRun(input, answer) : readLine(input, answer)),
};

function candidateRow(label: string, r20: number, alpha: number, source: SourceKey, copper: boolean): ReadingRow<Case> {
  return {
    label,
    source,
    sources: { 'alpha_#': coefficientSource(alpha) },
    values: { 'r20_#': r20, 'alpha_#': alpha },
    cases: [copper ? 'copper' : 'not copper'],
  };
}

function readRun(input: Run, answer: SmallestConductor): Reading<Case> {
  const { candidates, cords = [], temperature, length, pseVoltage } = input;
  const { limits, P, values, cases, limit, idle } = poweredRun(input);
  const sorted = [...candidates].sort((a, b) => b.maximumResistancePerMetre - a.maximumResistancePerMetre);
  const own = sorted.filter(({ material }) => isCopper(material)).at(-1) ?? (sorted.at(-1) as Cable);
  const fixed = [...portRows(limits, P, pseVoltage, [{ cable: own, length }, ...cords]), ...idle];
  return heldReading(answer, undefined, {
    values,
    cases: [...cases, cordsCase(cords), ...connectionCases(input), limit.length === 0 && 'free'],
    fixed,
    limit,
    rows: {
      cord: pieceRows(cords, 'c'),
      candidate: sorted.map(({ title, material, maximumResistancePerMetre, temperatureCoefficient, source }) =>
        candidateRow(title, maximumResistancePerMetre, temperatureCoefficient, source, isCopper(material)),
      ),
    },
    assumptions: [temperatureAssumption(temperature), ...runAssumptions(input, limits)],
  });
}

function readLine(input: Line, answer: SmallestConductor): Reading<Case> {
  const supply = supplyRange(input.supplyVoltage);
  const { limit, fixed } = lineLimitRows(input, supply);
  return heldReading(answer, undefined, {
    values: { V: supply.low, V_hi: supply.high },
    cases: ['two-wire', loadCase(input.load), ...jointCases(input), limit.length === 0 && 'free'],
    fixed,
    limit,
    rows: {
      candidate: input.candidates
        .map((conductor) => atMaximum(conductor))
        .sort((a, b) => b.resistancePerMetre - a.resistancePerMetre)
        .map(({ name, resistancePerMetre, temperatureCoefficient = 0, source }) =>
          candidateRow(name, resistancePerMetre, temperatureCoefficient, source, true),
        ),
    },
    assumptions: [temperatureAssumption(input.temperature), jointAssumption(input)],
    cautions: [ampacityCaution(input)],
  });
}
