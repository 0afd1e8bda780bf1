/** From the pieces of a run to its three loops. @module */
import { type RunResistanceInput, readSegments, runResistance } from '../../cable/run-resistance.ts';
import type { Reading, Sheet, SheetGiven } from '../sheet.ts';
import { jointGivens } from './line-steps.ts';
import { pieceGivens, pieceSteps } from './run-steps.ts';
import { basisAssumption, cableSource, coefficientSource, connectionAssumptions, twentyGiven } from './shared.ts';

/** Figures of a cable, or of the standard, that say where they come from. */
const CITED: readonly string[] = ['r20_#', 'alpha_#', 'R_c'];
const cited = (given: SheetGiven): SheetGiven => (CITED.includes(given.symbol) ? { ...given, source: 'row' } : given);

export const runResistanceSheet: Sheet<RunResistanceInput> = {
  title: 'The three loops of a run',
  core: 'runResistance',
  keys: ['segments', 'connections', 'connectionResistance', 'basis'],
  givens: [...pieceGivens.map(cited), { ...twentyGiven, when: 'pieces' }, ...jointGivens.map(cited)],
  steps: [
    ...pieceSteps,
    {
      symbol: 'R_pairset',
      meaning: 'one pairset: out on both wires of a pair, back on both of another',
      formula: 'R_w / 2 + R_w / 2',
      unit: 'Ω',
      latex: 'R_{\\mathrm{pairset}}',
      source: 'three-loops',
      core: 'twoPair',
    },
    {
      symbol: 'R_four',
      meaning: 'two pairsets in parallel',
      formula: 'R_pairset / 2',
      unit: 'Ω',
      latex: 'R_{\\mathrm{four}}',
      source: 'three-loops',
      core: 'fourPair',
    },
    {
      symbol: 'R_loop',
      meaning: 'one pair shorted at the far end, as a meter reads it',
      formula: '2 * R_w',
      unit: 'Ω',
      latex: 'R_{\\mathrm{loop}}',
      source: 'three-loops',
      core: 'pairLoop',
    },
  ],
  assumptions: ['All conductors of a piece alike.'],
  validity: 'Direct current.',
  cautions: [],
  slips: [
    { slip: 'one-way-length', steps: { R_loop: 'R_w' } },
    { slip: 'pairset-for-pair-loop', steps: { R_loop: 'R_pairset' } },
    { slip: 'pair-loop-for-pairset', steps: { R_pairset: '2 * R_w', R_four: '2 * R_w' } },
    { slip: 'pairset-for-four-pair', steps: { R_four: 'R_pairset' } },
    { slip: 'four-pair-for-pairset', steps: { R_pairset: 'R_w / 2' } },
    { slip: 'four-pair-for-pair-loop', steps: { R_loop: 'R_four' } },
    { slip: 'cold-resistance', givens: { 'T_#': 'T_ref' } },
    { slip: 'connections-left-out', when: 'connections', givens: { n: '0' } },
    { slip: 'connections-in-one-wire', when: 'connections', steps: { R_loop: '2 * R_w - n * R_c' } },
  ],
  guard: runResistance,
  read: readRun,
};

function readRun(input: RunResistanceInput): Reading {
  const segments = readSegments(input.segments, 'segments');
  const { connections = 0, connectionResistance = 0.2, basis = 'maximum' } = input;
  return {
    values: { n: connections, R_c: connectionResistance, T_ref: 20 },
    sources: { R_c: input.connectionResistance === undefined ? 'tia-568.2-d-connection' : undefined },
    cases: [segments.length === 0 ? 'no pieces' : 'pieces', ...(connections * connectionResistance > 0 ? ['connections'] : [])],
    rows: {
      piece: segments.map(({ cable, length, temperature = 20 }) => ({
        label: cable.title,
        source: cableSource(cable, basis),
        sources: { 'alpha_#': coefficientSource(cable.temperatureCoefficient) },
        values: {
          'r20_#': basis === 'maximum' ? cable.maximumResistancePerMetre : cable.nominalResistancePerMetre,
          'alpha_#': cable.temperatureCoefficient,
          'T_#': temperature,
          'L_#': length,
        },
      })),
    },
    assumptions: [
      basisAssumption(basis),
      ...connectionAssumptions(input.connections, input.connectionResistance),
      ...(segments.some(({ temperature }) => temperature === undefined) ? ['A piece without a temperature is at 20 °C.'] : []),
    ],
  };
}
