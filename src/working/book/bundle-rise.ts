/** How hot the middle of a bundle of powered cables gets, and whether it settles at all. @module */

import { HEAT_CAUTION } from '../../cable/heat/caution.ts';
import { INSTALLATIONS, type InstallationRow } from '../../cable/heat/installations-table.ts';
import { type BundleRiseInput, bundleRise, type OwnInstallation } from '../../cable/index.ts';
import { HOTTEST } from '../../quantity/guards.ts';
import { all, type BookSheet, givens, steps } from '../engine/rows.ts';
import type { Figures, Givens, Reading } from '../engine/sheet.ts';
import { findSurface, workedScope } from './bundle-passes.ts';
import { coefficientSource, twentyGiven } from './conductors.ts';
import { airGivens, filmSteps } from './film.ts';
import { basisAssumption, cableSource } from './runs.ts';

type Case =
  // Off its drum: there is a model for it.
  | 'laid'
  // The film coefficient follows from how warm the surface is, or is one figure, however warm that is.
  | 'open air'
  | 'one film coefficient'
  | 'one cable'
  | 'several cables'
  // Taken for one that settles: a constant film coefficient, or a surface that was found.
  | 'balance'
  | 'loaded'
  | 'runs away';

// biome-ignore format: one figure a row
const cableGivens: Givens<Case> = [...givens<Case>([
  ['r_20', 'Ω/m', 'one metre of one conductor at 20 °C', 'cable.nominalResistancePerMetre or cable.maximumResistancePerMetre', { source: 'row', when: 'laid' }],
  ['alpha', '1/K', 'temperature coefficient of resistance at 20 °C', 'cable.temperatureCoefficient', { source: 'row', when: 'laid' }],
]), { ...twentyGiven, when: 'laid' }, ...givens<Case>([
  ['n_p', '1', 'pairs of each cable that carry the current', 'energisedPairs', { when: 'laid' }],
  ['d', 'mm', 'diameter of one cable', 'outsideDiameter', { source: 'row', when: 'laid' }],
  ['N', '1', 'cables in the bundle', 'bundle', { when: 'laid' }],
  ['I', 'A', 'current through each pair', 'pairCurrent'],
  ['T_a', '°C', 'air around the bundle', 'ambient', { when: 'laid', value: 20 }],
  ['T_max', '°C', 'where the model ends, far beyond the rating of any cable', 'the domain', { when: 'laid', value: HOTTEST }],
  ['rho', 'K·m/W', 'effective thermal resistivity of the bundle, air between its cables included', 'installation', { source: 'row', when: 'laid' }],
  ['h', 'W/(m²·K)', 'film coefficient, from the surface to the air', 'installation', { source: 'row', when: 'one film coefficient' }],
  ['epsilon', '1', 'emissivity of dull plastic', 'the correlation', { source: 'churchill-chu', when: 'open air', value: 0.9 }],
]), ...all(airGivens, { when: 'open air' })];

/** Up to what the passes need. */
// biome-ignore format: one figure a row
const leadSteps = steps<Case>([
  ['I_c', 'A', 'I / 2', 'current through each wire: the two of a pair share it', { core: 'conductorCurrent' }],
    ['q_20', 'W/m', '2 * n_p * I_c^2 * r_20', 'heat of one metre of one cable, were it at 20 °C: two wires a pair', { when: 'laid' }],
    ['Q_20', 'W/m', 'N * q_20', 'heat of one metre of the bundle, were it at 20 °C', { when: 'laid' }],
    ['D', 'mm', '1.15 * d * sqrt(N)', 'diameter of the bundle, round and no tighter than cables lie', { source: 'heated-cylinder', core: 'diameter', when: 'several cables' }],
    ['D', 'mm', 'd', 'diameter: one cable alone', { source: 'heated-cylinder', core: 'diameter', when: 'one cable' }],
    ['R_i', 'K·m/W', 'rho / (4 * pi)', 'thermal resistance from the middle to the surface, heat made all over', { source: 'heated-cylinder', when: 'laid' }],
]);

/** With the middle as hot as the model goes: more heat is made than shed. */
// biome-ignore format: one figure a row
const runawaySteps = steps<Case>([
  ['Q_out', 'W/m', 'theta / R_s', 'heat that the surface sheds then', { source: 'heated-cylinder' }],
  ['T_m', '°C', 'T_a + theta + Q_out * R_i', 'the middle, with that heat on its way out: as hot as where the model ends', { source: 'heated-cylinder' }],
  ['Q_in', 'W/m', 'Q_20 * (1 + alpha * (T_m - T_ref))', 'heat that conductors as hot as that make'],
  ['B', 'W/m', 'Q_out - Q_in', 'heat shed less heat made, the middle at its hottest; under 0 it still heats up', { source: 'heated-cylinder', no: {
    says: 'there is no steady state below 400 °C: even there more heat is made than shed', steps: [] } }],
], { when: 'runs away' });

/** The balance in closed form, at the film coefficient that there is. */
// biome-ignore format: one figure a row
const balanceSteps = steps<Case>([
  ['G', 'K', 'Q_20 * (R_i + R_s)', 'rise of the middle, were the conductors to stay at 20 °C', { source: 'heated-cylinder' }],
  ['w', '1', '1 + alpha * (T_a - T_ref)', 'resistance in that air, over that at 20 °C'],
  ['b', '1', '1 - alpha * G', '1 less the share of each kelvin that its own extra heat adds again; under 0 the heating feeds itself', { source: 'heated-cylinder', no: {
    says: 'there is no steady state: each kelvin adds more heat than it sheds', steps: [] } }],
  ['m_T', 'K', 'T_max - T_a - G * w / b', 'how far the middle, G w / b above the air, stays under where the model ends', { source: 'heated-cylinder', no: {
    says: 'there is no steady state below 400 °C, where the model ends', steps: [] } }],
  ['T_m', '°C', 'T_a + G * w / b', 'temperature of the middle: its own warming summed, G w + G w (α G) + G w (α G)² + ...', { source: 'heated-cylinder', core: 'conductorTemperature' }],
  ['Q', 'W/m', 'Q_20 * (1 + alpha * (T_m - T_ref))', 'heat of one metre of the bundle, every conductor as hot as the middle', { core: 'heatPerMetre' }],
  ['q', 'W/m', 'Q / N', 'heat of one metre of one cable', { core: 'cableHeatPerMetre' }],
  ['theta_s', 'K', 'Q * R_s', 'the surface above the air, with all that heat shed', { source: 'heated-cylinder', core: 'surfaceRise' }],
], { when: 'balance' });

export const bundleRiseSheet: BookSheet<BundleRiseInput, Case> = {
  title: 'How hot the middle of a bundle gets',
  needs: ['cable', 'bundle', 'pairCurrent', 'installation|filmCoefficient'],
  keys: ['energisedPairs', 'ambient', 'thermalResistivity', 'outsideDiameter', 'basis'],
  // biome-ignore format: one figure a row
  givens: [
    cableGivens,
    ['theta', 'K', 'how far the surface is above the air, as found', 'found pass by pass', { when: 'open air', found: true }],
  ],
  // biome-ignore format: one figure a row
  steps: [
    leadSteps,
    ['T_s', '°C', 'T_a + theta', 'surface of the bundle', { source: 'heated-cylinder', when: 'open air' }],
    all(filmSteps, { when: 'open air' }),
    ['R_s', 'K·m/W', '1 / (pi * D * h)', 'thermal resistance from the surface to the air', { source: 'heated-cylinder', when: 'laid' }],
    runawaySteps,
    balanceSteps,
    steps([
    ['k', '1', 'theta_s / theta', 'that, over what was found pass by pass: 1, so heat made is heat shed', { when: 'loaded' }],
    ['theta_m', 'K', 'Q * R_i + theta_s', 'rise of the middle above the air: from the middle to the surface, and on to the air', { core: 'rise', when: 'balance' }],
  ], { source: 'heated-cylinder' }),
  ],
  assumptions: [
    'Steady state; all cables alike and equally loaded; every conductor as hot as the middle; the bundle alone in its surroundings.',
  ],
  validity:
    'A model that was held against 7 to 192 cables, good to about 10 % there. Fewer cables are no hotter than seven; above 192 nothing is known.',
  cautions: [HEAT_CAUTION],
  slips: [
    // Twice the current in each pair is what each wire then has: the pair's own.
    ['pair-current-for-conductor-current', { I: '2 * I' }],
    ['cold-resistance', { alpha: '0 * alpha' }],
    ['temperature-for-rise', { theta_m: 'T_m' }],
  ],
  guard: bundleRise,
  read: (input) => {
    const { cable, bundle, basis = 'nominal', installation, energisedPairs, outsideDiameter } = input;
    if (installation === 'wound-drum') {
      return { no: 'a cable left wound on its drum has no steady figure: unwind it before it is powered', isPlainNo: true };
    }
    const way: Partial<OwnInstallation> & { readonly source?: InstallationRow['source'] } =
      typeof installation === 'string' ? INSTALLATIONS[installation] : installation;
    const { source, filmCoefficient: h, thermalResistivity: rho = INSTALLATIONS['open-air'].thermalResistivity } = way;
    return {
      values: {
        r_20: cable[`${basis}ResistancePerMetre`],
        n_p: energisedPairs ?? cable.pairs,
        d: outsideDiameter ?? cable.outsideDiameter ?? 0,
        rho,
        ...(h === undefined ? {} : { h }),
      },
      sources: {
        r_20: cableSource(cable, basis),
        alpha: coefficientSource(cable.temperatureCoefficient),
        d: outsideDiameter === undefined ? cable.outsideDiameterSource : undefined,
        rho: source,
        h: source,
      },
      cases: [
        'laid',
        bundle === 1 ? 'one cable' : 'several cables',
        h === undefined ? 'open air' : 'one film coefficient',
        h !== undefined && 'balance',
      ],
      assumptions: [
        input.ambient === undefined && 'The air is at 20 °C: no temperature was stated.',
        basisAssumption(basis),
        energisedPairs === undefined && `All ${cable.pairs} pairs of each cable carry the current: nothing else was stated.`,
      ],
    };
  },
  find: findInOpenAir,
};

/** In open air the surface is found by going round; elsewhere there is nothing to find. */
function findInOpenAir(reading: Reading<Case>, stated: Figures): Reading<Case> {
  const { values, cases = [] } = reading;
  if (!cases.includes('open air')) return reading;
  if (stated['I'] === 0) return { ...reading, values: { ...values, theta: 0 }, cases: [...cases, 'balance'] };
  const lead = leadSteps.filter(({ when }) => when !== (cases.includes('one cable') ? 'several cables' : 'one cable'));
  const { T_max = 0, T_a = 0 } = stated;
  const { settles, surfaceRise, passes } = findSurface(workedScope(cableGivens, stated, lead), T_max - T_a);
  return {
    ...reading,
    values: { ...values, theta: surfaceRise },
    cases: [...cases, ...(settles ? (['balance', 'loaded'] as const) : (['runs away'] as const))],
    passes,
  };
}
