/** What gauge: every candidate beside the most that one metre may have, and the thinnest that passes. @module */
import type { Cable } from '../../cable/cable.ts';
import { isCopper } from '../../cable/copper.ts';
import { atMaximum } from '../../conductor/to-maximum.ts';
import { isPowered } from '../../plan/one-unknown.ts';
import { type SmallestCableInput, type SmallestTwoWireInput, smallestConductor } from '../../plan/smallest-conductor.ts';
import { supplyRange } from '../../plan/two-wire-run.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { SourceKey } from '../../sources/sources.ts';
import type { Reading, ReadingRow, Sheet } from '../sheet.ts';
import { connectionGivens, connectionReading, jointAssumptions } from './connection-steps.ts';
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
import { AT_MOST, TWO_WIRE } from './line-steps.ts';
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
import { cordGivens, cordRows, cordsCase, POWERED, piecesOhms, restSteps } from './run-steps.ts';
import { loadKeys, temperatureAssumption, twentyGiven } from './shared.ts';

/** What smallestConductor takes. */
export type SmallestConductorInput = SmallestTwoWireInput | SmallestCableInput;

/** Of a candidate. */
const COPPER = 'held against the most';
const FREE = 'held against nothing';
const NOT_COPPER = 'not copper';
/** Of the run. */
const BOUNDED = 'bounded';
const NONE = 'none passes';

const restNo = { says: 'no conductor meets the limit on @: the rest of the run misses it alone', steps: [] };

/** The core, and what of its answers this sheet does not show. */
const asked = asking((input: SmallestConductorInput) => {
  const answer = smallestConductor(input);
  if (isPowered<SmallestCableInput, SmallestTwoWireInput>(input)) requireNoCabling(input.cabling);
  else requireLoadResistance(input.load);
  if (input.length === 0) throw new InputError('range', 'length', 'more than 0 m: a run of no length takes any conductor', 0);
  return answer;
});

export const smallestConductorSheet: Sheet<SmallestConductorInput> = {
  title: 'The smallest conductor that will do',
  core: 'smallestConductor',
  keys: [
    ...new Set([
      'candidates',
      ...openRunKeys.filter((key) => key !== 'installed'),
      'pdPower',
      'pseVoltage',
      ...openLineKeys.filter((key) => !['conductor', 'out', 'back'].includes(key)),
      'supplyVoltage',
      ...loadKeys,
    ]),
  ],
  givens: [
    supplyGiven,
    highestSupplyGiven,
    ...loadGivens,
    portPowerGiven,
    { symbol: 'L', meaning: 'length of the run, one way', unit: 'm', latex: 'L', core: 'length' },
    { symbol: 'T', meaning: 'temperature of the conductors', unit: '°C', latex: 'T', core: 'temperature' },
    twentyGiven,
    ...connectionGivens,
    ...cordGivens,
    ...openGivens,
    ...resistanceLimitGivens,
    {
      symbol: 'r20_#',
      meaning: `@: one metre of one conductor at 20 °C, ${AT_MOST}`,
      unit: 'Ω/m',
      latex: 'r_{20,#}',
      core: 'candidates[]',
      source: 'row',
      each: 'candidate',
    },
    {
      symbol: 'alpha_#',
      meaning: '@: temperature coefficient at 20 °C',
      unit: '1/K',
      latex: '\\alpha_{#}',
      core: 'candidates[]',
      each: 'candidate',
    },
  ],
  steps: [
    ...openSteps('conductor'),
    ...restSteps,
    ...mostResistanceSteps({ says: 'no conductor meets the limit on @: even one of no resistance misses it', steps: [] }),
    {
      symbol: 'Y_#',
      meaning: '@: what the whole of the wire may have, the rest of the run taken off',
      formula: 'X_# / f_# - R_0',
      unit: 'Ω',
      latex: 'Y_{#}',
      source: 'three-loops',
      each: 'limit',
      when: LOOP,
      no: restNo,
    },
    {
      symbol: 'Y_#',
      meaning: '@: what the wire may have, out and back, the joints taken off',
      formula: 'X_# - R_0',
      unit: 'Ω',
      latex: 'Y_{#}',
      source: 'circuit-laws',
      each: 'limit',
      when: OUT_AND_BACK,
      no: restNo,
    },
    {
      symbol: 'Y',
      meaning: 'the least of these, set by',
      least: ['Y_#'],
      formula: 'min([Y_#,])',
      unit: 'Ω',
      latex: 'Y',
      source: 'circuit-laws',
      when: BOUNDED,
    },
    {
      symbol: 'q',
      meaning: 'the most that one metre of one conductor may have: there are two, out and back',
      formula: 'Y / (2 * L)',
      unit: 'Ω/m',
      latex: 'q',
      source: 'circuit-laws',
      when: `${BOUNDED}, ${TWO_WIRE}`,
    },
    {
      symbol: 'q',
      meaning: 'the most that one metre of one conductor may have',
      formula: 'Y / L',
      unit: 'Ω/m',
      latex: 'q',
      source: 'three-loops',
      when: `${BOUNDED}, ${POWERED}`,
    },
    {
      symbol: 'r_#',
      meaning: '@: one metre at its temperature',
      formula: 'r20_# * (1 + alpha_# * (T - T_ref))',
      unit: 'Ω/m',
      latex: 'r_{#}',
      source: 'circuit-laws',
      each: 'candidate',
    },
    {
      symbol: 'd_#',
      meaning: '@: what is left of the most; under 0 it is too thin',
      formula: 'q - r_#',
      unit: 'Ω/m',
      latex: 'd_{#}',
      source: 'circuit-laws',
      each: 'candidate',
      when: BOUNDED,
    },
    {
      symbol: 'p_#',
      meaning: '@: counted at 20 °C where the most is no less than it has, and not at all where it is too thin',
      formula: 'r20_# * round(q / (q + r_#))',
      unit: 'Ω/m',
      latex: 'p_{#}',
      source: 'circuit-laws',
      each: 'candidate',
      when: COPPER,
    },
    {
      symbol: 'p_#',
      meaning: '@: counted at 20 °C, for nothing bounds it',
      formula: 'r20_#',
      unit: 'Ω/m',
      latex: 'p_{#}',
      source: 'circuit-laws',
      each: 'candidate',
      when: FREE,
    },
    {
      symbol: 'p_#',
      meaning: '@: not counted, for it is not copper',
      formula: '0 * r20_#',
      unit: 'Ω/m',
      latex: 'p_{#}',
      source: 'copper-conductors',
      each: 'candidate',
      when: NOT_COPPER,
    },
    {
      symbol: 'd_most',
      meaning: 'what the one with the least resistance has left of the most',
      formula: 'max([d_#,])',
      unit: 'Ω/m',
      latex: 'd_{\\mathrm{most}}',
      source: 'circuit-laws',
      when: NONE,
      no: { says: 'none of these is thick enough', steps: [] },
    },
    {
      symbol: 'p',
      meaning: 'the thinnest that passes has the most at 20 °C: it is @',
      formula: 'max([p_#,])',
      unit: 'Ω/m',
      latex: 'p',
      source: 'circuit-laws',
      each: 'chosen',
      core: 'candidates[@].resistancePerMetre',
    },
  ],
  tables: [{ title: 'The candidates, thinnest first', row: 'candidate', lists: ['candidate'] }],
  assumptions: [`Direct current, steady state. Every conductor ${AT_MOST}; the device at the load stated.`],
  validity: 'Thinnest means most resistance. What a conductor may carry, and what it must be for its place, is not looked at.',
  cautions: [
    'Ampacity, the protective device and the insulation are for the local code and a licensed practitioner: they may ask for a thicker one.',
  ],
  slips: [
    { slip: 'one-way-length', when: TWO_WIRE, steps: { q: 'Y / L' } },
    { slip: 'cold-resistance', givens: { T: 'T_ref', 'Tc_#': 'T_ref' } },
    { slip: 'pair-loop-for-pairset', when: 'one pairset', givens: { 'f_#': '2' } },
    { slip: 'pairset-for-four-pair', when: 'two pairsets', givens: { 'f_#': '1' } },
  ],
  guard: asked.guard,
  read: (input) => (isPowered<SmallestCableInput, SmallestTwoWireInput>(input) ? readRun(input) : readLine(input)),
};

/** One candidate, as far as it decides what applies. */
interface Candidate {
  readonly label: string;
  readonly r20: number;
  readonly alpha: number;
  readonly isCopper: boolean;
  readonly source: SourceKey;
}

function readRun(input: SmallestCableInput): Reading {
  const { candidates, cords = [], minimumVoltage, maximumResistance, temperature, length } = input;
  const { limits, P } = granted(input);
  const { pseVoltage: V = limits.pseVoltageMin } = input;
  const sorted = [...candidates].sort((a, b) => b.maximumResistancePerMetre - a.maximumResistancePerMetre);
  const own = sorted.filter(({ material }) => isCopper(material)).at(-1) ?? (sorted.at(-1) as Cable);
  const limit = poweredLimitRows(limits, V, P, minimumVoltage, maximumResistance);
  const joints = connectionReading(input.connections, input.connectionResistance);
  const { n = 0, R_c = 0 } = joints.values;
  const rest = piecesOhms(cords) + n * R_c;
  const most = limit.map((row) => mostOhms(row, { low: V, high: V }, { power: P }, limits.psePowerLimit) / (row.values['f_#'] ?? 1) - rest);
  const wires = sorted.map(
    ({ title, material, maximumResistancePerMetre, temperatureCoefficient, source }): Candidate => ({
      label: title,
      r20: maximumResistancePerMetre,
      alpha: temperatureCoefficient,
      isCopper: isCopper(material),
      source,
    }),
  );
  return reading(
    input,
    portRows(limits, P, input.pseVoltage, [{ cable: own, length }, ...cords]),
    limit,
    wires,
    Math.min(...most) / length,
    {
      values: { V, P, P_lim: limits.psePowerLimit, ...joints.values },
      cases: [POWERED, POWER, cordsCase(cords), limits.pairs === 4 ? 'two pairsets' : 'one pairset', ...joints.cases],
      rows: { cord: cordRows(cords) },
      assumptions: [...temperatureAssumption(temperature), ...runAssumptions(input, limits)],
    },
  );
}

function readLine(input: SmallestTwoWireInput): Reading {
  const { candidates, load, connections = 0, connectionResistance = 0, length } = input;
  const supply = supplyRange(input.supplyVoltage);
  const loaded = loadReading(load);
  const [kind = POWER] = loaded.cases;
  const limits = lineLimitRows(input, supply, kind);
  const joints = connectionReading(connections, connectionResistance);
  const most = limits.limit.map((row) => mostOhms(row, supply, load) - 2 * connections * connectionResistance);
  const wires = candidates
    .map((candidate): Candidate => {
      const { name, resistancePerMetre, temperatureCoefficient = 0, source } = atMaximum(candidate);
      return { label: name, r20: resistancePerMetre, alpha: temperatureCoefficient, isCopper: true, source };
    })
    .sort((a, b) => b.r20 - a.r20);
  return reading(input, limits.fixed, limits.limit, wires, Math.min(...most) / (2 * length), {
    values: { ...loaded.values, V: supply.low, V_hi: supply.high, ...joints.values },
    cases: [TWO_WIRE, kind, ...joints.cases, ...limits.cases],
    assumptions: [...temperatureAssumption(input.temperature), ...jointAssumptions(input)],
  });
}

function reading(
  input: SmallestConductorInput,
  fixed: readonly ReadingRow[],
  limit: readonly ReadingRow[],
  wires: readonly Candidate[],
  most: number,
  of: Reading,
): Reading {
  const { temperature: T = 20, length: L } = input;
  const [circuit] = of.cases ?? [];
  const bounded = limit.length > 0;
  const passing = wires.findIndex(({ r20, alpha, isCopper: copper }) => copper && !(r20 * (1 + alpha * (T - 20)) > most));
  const chosen = wires[passing];
  return {
    ...of,
    values: { ...of.values, L, T, T_ref: 20 },
    cases: [...(of.cases ?? []), ...(bounded ? [BOUNDED, `${BOUNDED}, ${circuit}`] : []), ...(chosen === undefined ? [NONE] : [])],
    rows: {
      ...of.rows,
      ...placed(asked.said(input), fixed, limit),
      candidate: wires.map(({ label, r20, alpha, isCopper: copper, source }) => ({
        label,
        source,
        values: { 'r20_#': r20, 'alpha_#': alpha },
        cases: [copper ? (bounded ? COPPER : FREE) : NOT_COPPER],
      })),
      chosen: chosen === undefined ? [] : [{ label: chosen.label, values: {}, core: String(passing) }],
    },
  };
}
