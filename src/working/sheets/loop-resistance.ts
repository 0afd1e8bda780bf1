/** Out and back through two equal conductors. @module */
import { givens, steps } from '../rows.ts';
import { type LoopResistanceInput, loopResistance } from '../../conductor/loop-resistance.ts';
import type { Sheet } from '../sheet.ts';
import { conductorGivens, conductorReading, conductorSteps, temperatureAssumption } from './shared.ts';

export const loopResistanceSheet: Sheet<LoopResistanceInput> = {
  title: 'Resistance of a loop of two equal conductors',
  core: 'loopResistance',
  keys: ['conductor', 'length', 'temperature'],
  givens: [
    ...conductorGivens,
    ...givens([
      ['L', 'm', 'length of the run, one way', 'length'],
    ]),
  ],
  steps: [
    ...conductorSteps,
    ...steps([
      ['R', 'Ω', '2 * r * L', 'loop resistance: out and back, two conductors in series', { core: 'loopResistance' }],
    ]),
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

