/** How heavily a bundle is loaded on average. @module */
import { givens, step, steps } from '../rows.ts';

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
  givens: givens([
    ['n_#', '1', 'conductors that carry @', 'conductorCurrents', { each: 'group' }],
    ['I_#', 'A', 'current of each of these', 'conductorCurrents', { each: 'group' }],
    ['n_idle', '1', 'conductors without current', 'conductorCurrents'],
    ['I_RP1', 'A', 'greatest mean of category RP1', 'the categories', { source: 'remote-powering-categories' }],
    ['I_RP2', 'A', 'greatest mean of category RP2', 'the categories', { source: 'remote-powering-categories' }],
  ]),
  steps: [
    ...steps([
      ['n', '1', '[n_#] + n_idle', 'conductors of the bundle, with and without current'],
      ['I_sum', 'A', '[n_# * I_#]', 'their currents together'],
      ['m_RP1', 'A', 'n * I_RP1 - I_sum', 'room in category RP1, all conductors together; under 0 the bundle is not RP1'],
      ['m_RP2', 'A', 'n * I_RP2 - I_sum', 'room in category RP2, all conductors together; under 0 it is beyond RP2'],
    ], { source: 'remote-powering-categories', when: LOADED }),
    ...CATEGORIES.map(
      (category): SheetStep => (step('I_mean', 'A', 'I_sum / n', `mean current of every conductor: ${category}`, { source: 'remote-powering-categories', core: 'meanConductorCurrent', when: category })),
    ),
    ...steps([
      ['I_mean', 'A', '0', 'mean current of every conductor: none carries any, which is category RP1', { source: 'remote-powering-categories', core: 'meanConductorCurrent', when: IDLE }],
    ]),
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

