/** How heavily a bundle is loaded on average. @module */

import { HEAT_CAUTION } from '../../cable/heat/caution.ts';
import { remotePowering } from '../../cable/heat/remote-powering.ts';
import { requireObject } from '../../quantity/guards.ts';
import type { Amperes } from '../../quantity/units.ts';
import type { Reading, Sheet } from '../sheet.ts';

/** The argument of `remotePowering` in an object. */
export interface RemotePoweringInput {
  /** One figure for each conductor, those without current included. [A] */
  readonly conductorCurrents: readonly Amperes[];
}

/** Some conductors carry current. */
const LOADED = 'loaded';
const IDLE = 'idle';

export const remotePoweringSheet: Sheet<RemotePoweringInput> = {
  title: 'The mean current of the conductors of a bundle',
  core: 'remotePowering',
  keys: ['conductorCurrents'],
  givens: [
    { symbol: 'n_#', meaning: 'conductors that carry @', unit: '1', latex: 'n_{#}', core: 'conductorCurrents', each: 'group' },
    { symbol: 'I_#', meaning: 'current of each of these', unit: 'A', latex: 'I_{#}', core: 'conductorCurrents', each: 'group' },
    { symbol: 'n_idle', meaning: 'conductors without current', unit: '1', latex: 'n_{\\mathrm{idle}}', core: 'conductorCurrents' },
    {
      symbol: 'I_RP1',
      meaning: 'greatest mean of category RP1',
      unit: 'A',
      latex: 'I_{\\mathrm{RP1}}',
      core: 'the categories',
      source: 'remote-powering-categories',
    },
    {
      symbol: 'I_RP2',
      meaning: 'greatest mean of category RP2',
      unit: 'A',
      latex: 'I_{\\mathrm{RP2}}',
      core: 'the categories',
      source: 'remote-powering-categories',
    },
  ],
  steps: [
    {
      symbol: 'n',
      meaning: 'conductors of the bundle, with and without current',
      formula: '[n_#] + n_idle',
      unit: '1',
      latex: 'n',
      source: 'remote-powering-categories',
      when: LOADED,
    },
    {
      symbol: 'I_sum',
      meaning: 'their currents together',
      formula: '[n_# * I_#]',
      unit: 'A',
      latex: 'I_{\\mathrm{sum}}',
      source: 'remote-powering-categories',
      when: LOADED,
    },
    {
      symbol: 'm_RP1',
      meaning: 'room in category RP1, all conductors together; under 0 it is another',
      formula: 'n * I_RP1 - I_sum',
      unit: 'A',
      latex: 'm_{\\mathrm{RP1}}',
      source: 'remote-powering-categories',
      when: LOADED,
    },
    {
      symbol: 'm_RP2',
      meaning: 'room in category RP2, all conductors together; under 0 it is beyond',
      formula: 'n * I_RP2 - I_sum',
      unit: 'A',
      latex: 'm_{\\mathrm{RP2}}',
      source: 'remote-powering-categories',
      when: LOADED,
    },
    {
      symbol: 'I_mean',
      meaning: 'mean current of every conductor',
      formula: 'I_sum / n',
      unit: 'A',
      latex: 'I_{\\mathrm{mean}}',
      source: 'remote-powering-categories',
      core: 'meanConductorCurrent',
      when: LOADED,
    },
    {
      symbol: 'I_mean',
      meaning: 'mean current of every conductor: none carries any',
      formula: '0 * I_RP1',
      unit: 'A',
      latex: 'I_{\\mathrm{mean}}',
      source: 'remote-powering-categories',
      core: 'meanConductorCurrent',
      when: IDLE,
    },
  ],
  assumptions: ['The plain mean is meant, over every conductor of the bundle.'],
  validity:
    'Limits of the categories from memory: check them in the standard. A third category, for managed bundles, is a matter of management.',
  cautions: [HEAT_CAUTION],
  slips: [{ slip: 'idle-conductors-left-out', steps: { n: '[n_#]' } }],
  guard: (input) => {
    requireObject(input, 'input', 'an object with conductorCurrents');
    return remotePowering(input.conductorCurrents);
  },
  read: readCurrents,
};

/** Conductors of one current are one row. */
function readCurrents({ conductorCurrents }: RemotePoweringInput): Reading {
  const counts = new Map<number, number>();
  for (const current of conductorCurrents) counts.set(current, (counts.get(current) ?? 0) + 1);
  const idle = counts.get(0) ?? 0;
  counts.delete(0);
  return {
    values: { n_idle: idle, I_RP1: 0.212, I_RP2: 0.5 },
    cases: [counts.size === 0 ? IDLE : LOADED],
    rows: {
      group: [...counts].map(([current, count]) => ({
        label: `${Number(current.toPrecision(4))} A`,
        values: { 'n_#': count, 'I_#': current },
      })),
    },
  };
}
