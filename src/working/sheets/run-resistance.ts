/** From the pieces of a run to its three loops. @module */
import { type RunResistanceInput, runResistance } from '../../cable/run-resistance.ts';
import type { Reading, Sheet } from '../sheet.ts';
import { twentyGiven } from './shared.ts';

export const runResistanceSheet: Sheet<RunResistanceInput> = {
  title: 'The three loops of a run',
  core: 'runResistance',
  keys: ['segments', 'connections', 'connectionResistance', 'basis'],
  givens: [
    {
      symbol: 'r20_#',
      meaning: '@: one metre of one conductor at 20 °C',
      unit: 'Ω/m',
      latex: 'r_{20,#}',
      core: 'segments[].cable',
      each: 'piece',
    },
    {
      symbol: 'alpha_#',
      meaning: '@: temperature coefficient at 20 °C',
      unit: '1/K',
      latex: '\\alpha_{#}',
      core: 'segments[].cable',
      each: 'piece',
    },
    {
      symbol: 'T_#',
      meaning: '@: temperature of the conductor',
      unit: '°C',
      latex: 'T_{#}',
      core: 'segments[].temperature',
      each: 'piece',
    },
    { symbol: 'L_#', meaning: '@: length, one way', unit: 'm', latex: 'L_{#}', core: 'segments[].length', each: 'piece' },
    { ...twentyGiven, when: 'pieces' },
    { symbol: 'n', meaning: 'connections along the run', unit: '1', latex: 'n', core: 'connections' },
    { symbol: 'R_c', meaning: 'one connection, one conductor', unit: 'Ω', latex: 'R_{c}', core: 'connectionResistance' },
  ],
  steps: [
    {
      symbol: 'r_#',
      meaning: '@: one metre at its temperature',
      formula: 'r20_# * (1 + alpha_# * (T_# - T_ref))',
      unit: 'Ω/m',
      latex: 'r_{#}',
      source: 'circuit-laws',
      each: 'piece',
    },
    {
      symbol: 'R_#',
      meaning: '@: one conductor, end to end',
      formula: 'r_# * L_#',
      unit: 'Ω',
      latex: 'R_{#}',
      source: 'circuit-laws',
      each: 'piece',
    },
    {
      symbol: 'R_w',
      meaning: 'one conductor of the whole run',
      formula: '[R_#] + n * R_c',
      unit: 'Ω',
      latex: 'R_{w}',
      source: 'circuit-laws',
      when: 'pieces',
    },
    {
      symbol: 'R_w',
      meaning: 'one conductor of the whole run',
      formula: 'n * R_c',
      unit: 'Ω',
      latex: 'R_{w}',
      source: 'circuit-laws',
      when: 'no pieces',
    },
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
    { slip: 'cold-resistance', givens: { 'T_#': 'T_ref' } },
    { slip: 'connections-left-out', when: 'connections', givens: { n: '0' } },
  ],
  guard: runResistance,
  read: readRun,
};

function readRun({ segments, connections = 0, connectionResistance = 0.2, basis = 'maximum' }: RunResistanceInput): Reading {
  return {
    values: { n: connections, R_c: connectionResistance, T_ref: 20 },
    cases: [segments.length === 0 ? 'no pieces' : 'pieces', ...(connections * connectionResistance > 0 ? ['connections'] : [])],
    rows: {
      piece: segments.map(({ cable, length, temperature = 20 }) => ({
        label: cable.title,
        values: {
          'r20_#': basis === 'maximum' ? cable.maximumResistancePerMetre : cable.nominalResistancePerMetre,
          'alpha_#': cable.temperatureCoefficient,
          'T_#': temperature,
          'L_#': length,
        },
      })),
    },
    assumptions: [
      basis === 'maximum' ? 'Every conductor at the most its standard allows.' : 'Conductors of the usual gauge, at their nominal size.',
      ...(segments.some(({ temperature }) => temperature === undefined) ? ['A piece without a temperature is at 20 °C.'] : []),
    ],
  };
}
