/** What a code allows each conductor of a bundle: the figure of its table, times two factors. @module */
import { givens, steps } from '../rows.ts';

import { AMBIENT_FACTORS } from '../../cable/heat/ambient-factors-table.ts';
import { type AmpacityInput, ampacity } from '../../cable/heat/ampacity.ts';
import { AMPACITIES, AMPACITY_BUNDLES, AMPACITY_RATINGS } from '../../cable/heat/ampacity-table.ts';
import { CODE_CAUTION } from '../../cable/heat/caution.ts';
import type { Reading, Sheet, SheetNo } from '../sheet.ts';

/** The table has a figure for this gauge, bundle and rating. */
const FIGURE = 'figure';

const supervisionNo: SheetNo = {
  says: 'the table ends before this: the code leaves it to qualified persons under engineering supervision',
  steps: [],
};

export const ampacitySheet: Sheet<AmpacityInput> = {
  title: 'What a code allows each conductor of a bundle',
  core: 'ampacity',
  keys: ['code', 'gauge', 'bundle', 'temperatureRating', 'ambient', 'halfLoaded'],
  givens: givens([
    ['g', '1', 'gauge of the conductors [AWG]', 'gauge'],
    ['g_max', '1', 'finest gauge of the table [AWG]', 'Table 725.144', { source: 'nec-725.144' }],
    ['N', '1', 'cables in the bundle', 'bundle'],
    ['N_max', '1', 'largest bundle of the table', 'Table 725.144', { source: 'nec-725.144' }],
    ['T_a', '°C', 'air around the bundle', 'ambient', { when: FIGURE }],
    ['T_max', '°C', 'warmest air that has a factor, for cable of this rating', 'temperatureRating, Table 310.15(B)(2)(a)', { source: 'nec-310.15-ambient', when: FIGURE }],
    ['I_T', 'A', 'ampacity as printed: by gauge, size of bundle and rating, in air of 30 °C', 'Table 725.144', { source: 'nec-725.144', when: FIGURE }],
    ['k_a', '1', 'factor for the air, of the row that it falls in', 'Table 310.15(B)(2)(a)', { source: 'nec-310.15-ambient', when: 'air' }],
    ['k_L', '1', 'factor for the load: 1.4 where only half of the conductors carry current, else 1', 'halfLoaded, Table 725.144 note 2', { source: 'nec-725.144', when: FIGURE }],
  ]),
  steps: steps([
    ['m_g', '1', 'g_max - g', 'gauge sizes left before the table ends; under 0 it has none so fine', { source: 'nec-725.144', no: supervisionNo }],
    ['m_N', '1', 'N_max - N', 'cables left before the table ends; under 0 it has no such bundle', { source: 'nec-725.144', no: supervisionNo }],
    ['m_T', 'K', 'T_max - T_a', 'how much warmer the air may be before the factors end; under 0 there is none', { source: 'nec-310.15-ambient', when: FIGURE, no: { says: 'the air is too warm for cable of this rating: there is no factor for it', steps: [] } }],
    ['I_max', 'A', 'I_T * k_a * k_L', 'the most that each conductor may carry', { source: 'nec-725.144', core: 'ampacity', when: FIGURE }],
  ]),
  assumptions: ['4-pair copper cable, power beside data, under NFPA 70-2017 (NEC). Every conductor that carries current carries the same.'],
  validity:
    '22, 23, 24 and 26 AWG, bundles of up to 192, where that code applies. Later editions have finer figures; a cable that is marked for limited power is rated by its mark.',
  cautions: [CODE_CAUTION],
  slips: [
    { slip: 'ambient-factor-left-out', steps: { I_max: 'I_T * k_L' } },
    { slip: 'load-factor-left-out', steps: { I_max: 'I_T * k_a' } },
  ],
  guard: ampacity,
  read: readAmpacity,
};

function readAmpacity(input: AmpacityInput): Reading {
  const { gauge, bundle, temperatureRating = 60, ambient = 30, halfLoaded = false } = input;
  const rating = AMPACITY_RATINGS.indexOf(temperatureRating);
  const column = AMPACITY_BUNDLES.findIndex((most) => bundle <= most);
  const table = AMPACITIES.find(([size]) => size === gauge)?.[1][column]?.[rating] ?? undefined;
  const rows = AMBIENT_FACTORS.flatMap(([most, factors]) => {
    const factor = factors[rating] ?? undefined;
    return factor === undefined ? [] : [{ most, factor }];
  });
  const factor = rows.find(({ most }) => ambient <= most)?.factor;
  const finest = Math.max(...AMPACITIES.map(([size]) => size));
  const largest = Math.max(...AMPACITY_BUNDLES);
  return {
    values: {
      g: gauge,
      g_max: finest,
      N: bundle,
      N_max: largest,
      T_a: ambient,
      T_max: Math.max(...rows.map(({ most }) => most)),
      I_T: table ?? 0,
      k_a: factor ?? 0,
      k_L: halfLoaded ? 1.4 : 1,
    },
    cases: table === undefined ? [] : [FIGURE, ...(factor === undefined ? [] : ['air'])],
    assumptions: [
      ...(input.temperatureRating === undefined ? ['Cable rated for 60 °C: no rating was stated.'] : []),
      ...(input.ambient === undefined ? ['The air is at 30 °C: no temperature was stated.'] : []),
    ],
    ...(table === undefined && gauge <= finest && bundle <= largest
      ? { no: `the table has no figure for ${gauge} AWG in a bundle of ${bundle}`, isPlainNo: true }
      : {}),
  };
}

