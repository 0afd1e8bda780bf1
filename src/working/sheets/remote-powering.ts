/** How heavily a bundle is loaded on average. @module */

import { CODE_CAUTION } from '../../cable/heat/caution.ts';
import { remotePowering } from '../../cable/heat/remote-powering.ts';
import { requireObject } from '../../quantity/guards.ts';
import type { Amperes } from '../../quantity/units.ts';
import type { Reading, Sheet, SheetStep } from '../sheet.ts';

/** The argument of `remotePowering` in an object. */
export interface RemotePoweringInput {
  /** One figure for each conductor, those without current included. [A] */
  readonly conductorCurrents: readonly Amperes[];
}

/** Some conductors carry current. */
const LOADED = 'loaded';
const IDLE = 'idle';
const [FIRST, SECOND, BEYOND] = ['category RP1', 'category RP2', 'beyond category RP2'] as const;
const CATEGORIES = [FIRST, SECOND, BEYOND] as const;
/** Greatest means of the categories. [A] */
const RP1 = 0.212;
const RP2 = 0.5;

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
      meaning: 'room in category RP1, all conductors together; under 0 the bundle is not RP1',
      formula: 'n * I_RP1 - I_sum',
      unit: 'A',
      latex: 'm_{\\mathrm{RP1}}',
      source: 'remote-powering-categories',
      when: LOADED,
    },
    {
      symbol: 'm_RP2',
      meaning: 'room in category RP2, all conductors together; under 0 it is beyond RP2',
      formula: 'n * I_RP2 - I_sum',
      unit: 'A',
      latex: 'm_{\\mathrm{RP2}}',
      source: 'remote-powering-categories',
      when: LOADED,
    },
    ...CATEGORIES.map(
      (category): SheetStep => ({
        symbol: 'I_mean',
        meaning: `mean current of every conductor: ${category}`,
        formula: 'I_sum / n',
        unit: 'A',
        latex: 'I_{\\mathrm{mean}}',
        source: 'remote-powering-categories',
        core: 'meanConductorCurrent',
        when: category,
      }),
    ),
    {
      symbol: 'I_mean',
      meaning: 'mean current of every conductor: none carries any, which is category RP1',
      formula: '0',
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
  cautions: [CODE_CAUTION],
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
  const mean = conductorCurrents.reduce((sum, current) => sum + current, 0) / conductorCurrents.length;
  const category = mean <= RP1 ? FIRST : mean <= RP2 ? SECOND : BEYOND;
  return {
    values: { n_idle: idle, I_RP1: RP1, I_RP2: RP2 },
    cases: counts.size === 0 ? [IDLE] : [LOADED, category],
    rows: {
      group: [...counts].map(([current, count]) => ({
        label: `${Number(current.toPrecision(4))} A`,
        values: { 'n_#': count, 'I_#': current },
      })),
    },
  };
}
