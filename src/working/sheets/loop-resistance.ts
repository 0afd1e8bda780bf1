/** Out and back through two equal conductors. @module */
import { type LoopResistanceInput, loopResistance } from '../../conductor/loop-resistance.ts';
import type { Sheet } from '../sheet.ts';
import { conductorGivens, conductorReading, conductorSteps, temperatureAssumption } from './shared.ts';

export const loopResistanceSheet: Sheet<LoopResistanceInput> = {
  title: 'Resistance of a loop of two equal conductors',
  core: 'loopResistance',
  keys: ['conductor', 'length', 'temperature'],
  givens: [...conductorGivens, { symbol: 'L', meaning: 'length of the run, one way', unit: 'm', latex: 'L', core: 'length' }],
  steps: [
    ...conductorSteps,
    {
      symbol: 'R',
      meaning: 'loop resistance: out and back, two conductors in series',
      formula: '2 * r * L',
      unit: 'Ω',
      latex: 'R',
      source: 'circuit-laws',
      core: 'loopResistance',
    },
  ],
  assumptions: ['Both conductors alike; joints are not included.'],
  validity: 'Direct current. One pair shorted at its far end, or a two-wire circuit.',
  cautions: [],
  slips: [
    { slip: 'one-way-length', steps: { R: 'r * L' } },
    { slip: 'cold-resistance', givens: { T: 'T_ref' } },
  ],
  guard: loopResistance,
  read: ({ conductor, length, temperature }) => {
    const { values, ...more } = conductorReading(conductor, temperature);
    return { values: { ...values, L: length }, ...more, assumptions: temperatureAssumption(temperature) };
  },
};
