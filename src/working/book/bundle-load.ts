/** How heavily a bundle is loaded: what a code allows each conductor, and the mean current of all. @module */

import { AMBIENT_FACTORS } from '../../cable/heat/ambient-factors-table.ts';
import { AMPACITY_FIELDS, HALF_LOADED } from '../../cable/heat/ampacity.ts';
import { AMPACITIES, AMPACITY_BUNDLES, AMPACITY_RATINGS } from '../../cable/heat/ampacity-table.ts';
import { CODE_CAUTION } from '../../cable/heat/caution.ts';
import { RP1, RP2 } from '../../cable/heat/remote-powering.ts';
import { type AmpacityInput, ampacity, remotePowering } from '../../cable/index.ts';
import { readInput } from '../../quantity/fields.ts';
import { requireObject } from '../../quantity/guards.ts';
import type { Amperes } from '../../quantity/units.ts';
import { type BookSheet, steps } from '../engine/rows.ts';
import type { SheetNo } from '../engine/sheet.ts';

const supervisionNo: SheetNo<never> = {
  says: 'the table ends before this: the code leaves it to qualified persons under engineering supervision',
  steps: [],
};

/** The table has a figure for this gauge, bundle and rating; there is a factor for the air. */
type AmpacityCase = 'figure' | 'air';

export const ampacitySheet: BookSheet<AmpacityInput, AmpacityCase> = {
  title: 'What a code allows each conductor of a bundle',
  needs: ['code', 'gauge', 'bundle'],
  keys: ['temperatureRating', 'ambient', 'halfLoaded'],
  // biome-ignore format: one figure a row
  givens: [
    ['g', '1', 'gauge of the conductors [AWG]', 'gauge'],
    ['g_max', '1', 'finest gauge of the table [AWG]', 'Table 725.144', { source: 'nec-725.144' }],
    ['N', '1', 'cables in the bundle', 'bundle'],
    ['N_max', '1', 'largest bundle of the table', 'Table 725.144', { source: 'nec-725.144' }],
    ['T_a', '°C', 'air around the bundle', 'ambient', { when: 'figure' }],
    ['T_max', '°C', 'warmest air that has a factor, for cable of this rating', 'temperatureRating, Table 310.15(B)(2)(a)', { source: 'nec-310.15-ambient', when: 'figure' }],
    ['I_T', 'A', 'ampacity as printed: by gauge, size of bundle and rating, in air of 30 °C', 'Table 725.144', { source: 'nec-725.144', when: 'figure' }],
    ['k_a', '1', 'factor for the air, of the row that it falls in', 'Table 310.15(B)(2)(a)', { source: 'nec-310.15-ambient', when: 'air' }],
    ['k_L', '1', 'factor for the load: 1.4 where only half of the conductors carry current, else 1', 'halfLoaded, Table 725.144 note 2', { source: 'nec-725.144', when: 'figure' }],
  ],
  // biome-ignore format: one figure a row
  steps: [
    ['m_g', '1', 'g_max - g', 'gauge sizes left before the table ends; under 0 it has none so fine', { source: 'nec-725.144', no: supervisionNo }],
    ['m_N', '1', 'N_max - N', 'cables left before the table ends; under 0 it has no such bundle', { source: 'nec-725.144', no: supervisionNo }],
    ['m_T', 'K', 'T_max - T_a', 'how much warmer the air may be before the factors end; under 0 there is none', { source: 'nec-310.15-ambient', when: 'figure', no: { says: 'the air is too warm for cable of this rating: there is no factor for it', steps: [] } }],
    ['I_max', 'A', 'I_T * k_a * k_L', 'the most that each conductor may carry', { source: 'nec-725.144', core: 'ampacity', when: 'figure' }],
  ],
  assumptions: ['4-pair copper cable, power beside data, under NFPA 70-2017 (NEC). Every conductor that carries current carries the same.'],
  validity:
    '22, 23, 24 and 26 AWG, bundles of up to 192, where that code applies. Later editions have finer figures; a cable that is marked for limited power is rated by its mark.',
  cautions: [CODE_CAUTION],
  slips: [
    ['ambient-factor-left-out', { I_max: 'I_T * k_L' }],
    ['load-factor-left-out', { I_max: 'I_T * k_a' }],
  ],
  guard: ampacity,
  read: (input) => {
    const { gauge, bundle, temperatureRating, ambient, halfLoaded } = readInput(AMPACITY_FIELDS, input);
    const rating = AMPACITY_RATINGS.indexOf(temperatureRating);
    const column = AMPACITY_BUNDLES.findIndex((most) => bundle <= most);
    const printed = AMPACITIES.find(([size]) => size === gauge)?.[1][column]?.[rating] ?? undefined;
    const warmest = AMBIENT_FACTORS.filter(([, factors]) => (factors[rating] ?? undefined) !== undefined);
    const factor = warmest.find(([most]) => ambient <= most)?.[1][rating] ?? undefined;
    const finest = Math.max(...AMPACITIES.map(([size]) => size));
    const largest = Math.max(...AMPACITY_BUNDLES);
    const isGap = printed === undefined && gauge <= finest && bundle <= largest;
    return {
      values: {
        g_max: finest,
        N_max: largest,
        T_a: ambient,
        T_max: Math.max(...warmest.map(([most]) => most)),
        I_T: printed ?? 0,
        k_a: factor ?? 0,
        k_L: halfLoaded ? HALF_LOADED : 1,
      },
      cases: [printed !== undefined && 'figure', printed !== undefined && factor !== undefined && 'air'],
      assumptions: [
        input.temperatureRating === undefined && 'Cable rated for 60 °C: no rating was stated.',
        input.ambient === undefined && 'The air is at 30 °C: no temperature was stated.',
      ],
      no: isGap ? `the table has no figure for ${gauge} AWG in a bundle of ${bundle}` : undefined,
      isPlainNo: isGap,
    };
  },
};

/** The argument of `remotePowering` in an object. */
export interface RemotePoweringInput {
  /** One figure for each conductor, those without current included. [A] */
  readonly conductorCurrents: readonly Amperes[];
}

/** Whether any conductor carries current, and of which category the bundle then is. */
type MeanCase = 'loaded' | 'idle' | 'category RP1' | 'category RP2' | 'beyond category RP2';

export const remotePoweringSheet: BookSheet<RemotePoweringInput, MeanCase> = {
  title: 'The mean current of the conductors of a bundle',
  needs: ['conductorCurrents'],
  // biome-ignore format: one figure a row
  givens: [
    ['n_#', '1', 'conductors that carry @', 'conductorCurrents', { each: 'group' }],
    ['I_#', 'A', 'current of each of these', 'conductorCurrents', { each: 'group' }],
    ['n_idle', '1', 'conductors without current', 'conductorCurrents'],
    ['I_RP1', 'A', 'greatest mean of category RP1', 'the categories', { source: 'remote-powering-categories', value: RP1 }],
    ['I_RP2', 'A', 'greatest mean of category RP2', 'the categories', { source: 'remote-powering-categories', value: RP2 }],
  ],
  // biome-ignore format: one figure a row
  steps: [steps([
    ['n', '1', '[n_#] + n_idle', 'conductors of the bundle, with and without current', { when: 'loaded' }],
    ['I_sum', 'A', '[n_# * I_#]', 'their currents together', { when: 'loaded' }],
    ['m_RP1', 'A', 'n * I_RP1 - I_sum', 'room in category RP1, all conductors together; under 0 the bundle is not RP1', { when: 'loaded' }],
    ['m_RP2', 'A', 'n * I_RP2 - I_sum', 'room in category RP2, all conductors together; under 0 it is beyond RP2', { when: 'loaded' }],
    ['I_mean', 'A', 'I_sum / n', 'mean current of every conductor: category RP1', { core: 'meanConductorCurrent', when: 'category RP1' }],
    ['I_mean', 'A', 'I_sum / n', 'mean current of every conductor: category RP2', { core: 'meanConductorCurrent', when: 'category RP2' }],
    ['I_mean', 'A', 'I_sum / n', 'mean current of every conductor: beyond category RP2', { core: 'meanConductorCurrent', when: 'beyond category RP2' }],
    ['I_mean', 'A', '0', 'mean current of every conductor: none carries any, which is category RP1', { core: 'meanConductorCurrent', when: 'idle' }],
  ], { source: 'remote-powering-categories' })],
  assumptions: ['The plain mean is meant, over every conductor of the bundle.'],
  validity:
    'Limits of the categories from memory: check them in the standard. A third category, for managed bundles, is a matter of management.',
  cautions: [CODE_CAUTION],
  slips: [['idle-conductors-left-out', { n: '[n_#]' }]],
  guard: (input) => {
    requireObject(input, 'input', 'an object with conductorCurrents');
    return remotePowering(input.conductorCurrents);
  },
  // Conductors of one current are one row.
  read: ({ conductorCurrents }) => {
    const counts = new Map<number, number>();
    for (const current of conductorCurrents) counts.set(current, (counts.get(current) ?? 0) + 1);
    const idle = counts.get(0) ?? 0;
    counts.delete(0);
    const mean = conductorCurrents.reduce((sum, current) => sum + current, 0) / conductorCurrents.length;
    const category = mean <= RP1 ? 'category RP1' : mean <= RP2 ? 'category RP2' : 'beyond category RP2';
    return {
      values: { n_idle: idle },
      cases: counts.size === 0 ? ['idle'] : ['loaded', category],
      rows: {
        group: [...counts].map(([current, count]) => ({
          label: `${Number(current.toPrecision(4))} A`,
          values: { 'n_#': count, 'I_#': current },
        })),
      },
    };
  },
};
