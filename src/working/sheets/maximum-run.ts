/** How far: every limit as a resistance, then as a length, and the shortest of them. @module */
import { givens, steps } from '../rows.ts';
import type { MaximumPoweredRunInput } from '../../plan/maximum-powered-run.ts';
import { type MaximumRunInput, maximumRun } from '../../plan/maximum-run.ts';
import { isPowered } from '../../plan/one-unknown.ts';
import type { TwoWireCircuit, UnequalTwoWireCircuit } from '../../plan/two-wire-run.ts';
import type { Sheet, SheetStep } from '../sheet.ts';
import { categoryGivens, categoryStep, cordLossGivens, lengthGivens, lengthSteps } from './cabling-limits.ts';
import { connectionGivens } from './connection-steps.ts';
import { fixedGiven, fixedGivens, fixedSteps } from './fixed-steps.ts';
import {
  COOL,
  HOT,
  highestSupplyGiven,
  LINK,
  mostResistanceSteps,
  OUT_AND_BACK,
  portPowerGiven,
  resistanceLimitGivens,
  supplyGiven,
} from './limit-steps.ts';
import { AT_MOST, legGivens, legSteps } from './line-steps.ts';
import { readPowered, readTwoWire } from './maximum-run-reading.ts';
import { loadGivens } from './point-steps.ts';
import { CORDS, cordGivens, NO_CORDS, POWERED, restSteps } from './run-steps.ts';
import { circuitKeys, FOUR_PAIRS, poweredKeys, TWO_PAIRS, twentyGiven } from './shared.ts';

type Line = TwoWireCircuit | UnequalTwoWireCircuit;

const fixedNo = { says: 'no length meets the limit on @: the length plays no part in it', steps: [] };
const lengthNo = { says: 'no length meets the limit on @: even a run of none misses it', steps: [] };

/** From the most resistance to a length, under the conditions under which it is judged. */
const allowed = { symbol: 'L_#', unit: 'm', latex: 'L_{#}', source: 'three-loops', each: 'limit', no: lengthNo } as const;
const allowedSteps: readonly SheetStep[] = [
  { ...allowed, meaning: '@: the length it allows', formula: '(X_# / f_# - R_0) / r', when: HOT },
  { ...allowed, meaning: '@: the length it allows', formula: '(X_# - R_0) / r', source: 'circuit-laws', when: OUT_AND_BACK },
  { ...allowed, meaning: '@: the length it allows, at 20 °C', formula: '(X_# / f_# - R_20) / r20', when: COOL },
  { ...allowed, meaning: '@: the length it allows, at 20 °C and without cords', formula: '(X_# / f_# - n * R_c) / r20', when: LINK },
];

export const maximumRunSheet: Sheet<MaximumRunInput> = {
  title: 'The longest run that every limit allows',
  core: 'maximumRun',
  keys: [
    ...poweredKeys,
    'cable',
    'cords',
    ...circuitKeys,
    'connections',
    'connectionResistance',
    'minimumVoltage',
    'maximumVoltage',
    'permittedDrop',
    'ampacity',
    'maximumResistance',
    'loop',
    'cabling',
  ],
  givens: [
    supplyGiven,
    highestSupplyGiven,
    ...loadGivens,
    portPowerGiven,
    ...givens([
      ['r20', 'Ω/m', `@: one metre of one conductor at 20 °C, ${AT_MOST}`, 'cable', { each: 'own' }],
      ['alpha', '1/K', 'temperature coefficient at 20 °C', 'cable', { when: POWERED }],
    ], { source: 'row' }),
    ...legGivens,
    ...givens([
      ['T', '°C', 'temperature of the conductors', 'temperature'],
    ]),
    twentyGiven,
    ...connectionGivens,
    ...cordGivens,
    ...cordLossGivens,
    ...fixedGivens,
    ...fixedGiven('v_#', '@: value here', { m: 'cords', '°C': 'temperature' }),
    ...fixedGiven('w_#', '@: limit', { m: 'cabling', '°C': 'cabling' }, 'row'),
    ...categoryGivens,
    ...resistanceLimitGivens,
    ...lengthGivens,
  ],
  steps: [
    ...fixedSteps(['W', 'm', '1', '°C', 'V', 'A'], fixedNo),
    categoryStep(fixedNo),
    ...steps([
      ['r', 'Ω/m', 'r20 * (1 + alpha * (T - T_ref))', 'one metre of one conductor at its temperature', { when: POWERED }],
    ]),
    ...legSteps,
    ...restSteps,
    ...steps([
      ['R_20', 'Ω', 'n * R_c + [rc20_# * Lc_#]', 'the same at 20 °C', { when: CORDS }],
      ['R_20', 'Ω', 'R_0', 'the same at 20 °C', { when: NO_CORDS }],
    ], { latex: 'R_{0,20}' }),
    ...mostResistanceSteps(lengthNo),
    ...allowedSteps,
    ...lengthSteps(lengthNo),
    ...steps([
      ['L', 'm', 'min([L_#,])', 'the longest run: the shortest of these lengths, set by', { least: ['L_#'], core: 'length', when: 'bounded' }],
    ]),
  ],
  assumptions: [`Direct current, steady state. Every conductor ${AT_MOST}; the device at the load stated.`],
  validity: 'Installed cable, one way. Rules of cabling are lengths and loops at 20 °C; power is judged hot.',
  cautions: [],
  slips: [
    { slip: 'cold-resistance', givens: { T: 'T_ref', 'Tc_#': 'T_ref' } },
    { slip: 'one-way-length', when: 'two-wire', steps: { r: 'rl_1' } },
    // f is 2 for a pair loop, 1 for one pairset, 1/2 for two. Who mistakes the loop that power sees still knows a limit that is
    // stated as a pair loop, which stays 2; who mistakes the pair loop still knows the others, which stay 1 and 1/2.
    { slip: 'pair-loop-for-pairset', when: 'powered', givens: { 'f_#': '2' } },
    { slip: 'pairset-for-pair-loop', when: 'powered', givens: { 'f_#': 'min(f_#, 1)' } },
    { slip: 'pairset-for-four-pair', when: FOUR_PAIRS, givens: { 'f_#': 'max(f_#, 1)' } },
    { slip: 'four-pair-for-pairset', when: TWO_PAIRS, givens: { 'f_#': 'max(f_#^2 / 2, 1 / 2)' } },
    // With more draw the power of the port would bound the run as well, and leave none of it.
    { slip: 'class-power-for-pd-power', when: 'light draw', givens: { P: 'P_lim' } },
    { slip: 'connections-left-out', when: 'connections', givens: { n: '0' } },
    // So long that no rule of cabling governs.
    { slip: 'cabling-rule-left-out', givens: { 'a_#': '1000 * a_#' } },
    // The thinnest of a gauge has 2 % more than the usual one.
    { slip: 'nominal-for-maximum', when: 'usual conductors stated', givens: { 'rl20_#': 'rl20_# / 1.02' } },
  ],
  guard: maximumRun,
  read: (input) => (isPowered<MaximumPoweredRunInput, Line>(input) ? readPowered(input) : readTwoWire(input)),
};

