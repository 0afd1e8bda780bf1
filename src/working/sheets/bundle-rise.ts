/** How hot the middle of a bundle of powered cables gets, and whether it settles at all. @module */
import { given, givens, step, steps } from '../rows.ts';
import { type BundleRiseInput, bundleRise, type Installation } from '../../cable/heat/bundle-rise.ts';
import { HEAT_CAUTION } from '../../cable/heat/caution.ts';
import { INSTALLATIONS, type InstallationRow } from '../../cable/heat/installations-table.ts';
import { HOTTEST } from '../../quantity/guards.ts';
import type { FigureSources, Figures, Reading, Sheet, SheetGiven, SheetStep } from '../sheet.ts';
import { findSurface, workedScope } from './bundle-passes.ts';
import { AIR, airGivens, filmSteps } from './film-steps.ts';
import { basisAssumption, cableSource, coefficientSource, twentyGiven } from './shared.ts';

/** Off its drum: there is a model for it. */
const LAID = 'laid';
/** The film coefficient follows from how warm the surface is. */
const OPEN = 'open air';
/** It is one figure, however warm the surface. */
const CONDUIT = 'closed conduit';
const OWN = 'own installation';
/** Taken for one that settles: a constant film coefficient, or a surface that was found. */
const BALANCE = 'balance';
const RUNS_AWAY = 'runs away';
const LOADED = 'loaded and found';

const cableGivens: readonly SheetGiven[] = [
  ...givens([
    ['r_20', 'Ω/m', 'one metre of one conductor at 20 °C', 'cable.nominalResistancePerMetre or cable.maximumResistancePerMetre'],
    ['alpha', '1/K', 'temperature coefficient of resistance at 20 °C', 'cable.temperatureCoefficient'],
  ], { source: 'row', when: LAID }),
  { ...twentyGiven, when: LAID },
  ...givens([
    ['n_p', '1', 'pairs of each cable that carry the current', 'energisedPairs', { when: LAID }],
    ['d', 'mm', 'diameter of one cable', 'outsideDiameter', { source: 'row', when: LAID }],
    ['N', '1', 'cables in the bundle', 'bundle', { when: LAID }],
    ['I', 'A', 'current through each pair', 'pairCurrent'],
    ['T_a', '°C', 'air around the bundle', 'ambient', { when: LAID }],
    ['T_max', '°C', 'where the model ends, far beyond the rating of any cable', 'the domain', { when: LAID }],
  ]),
];

/** Thermal resistivity and film coefficient, with the source that each way of installing has. */
const resistivityGiven: SheetGiven = given('rho', 'K·m/W', 'effective thermal resistivity of the bundle, air between its cables included', 'installation');
const filmGiven: SheetGiven = given('h', 'W/(m²·K)', 'film coefficient, from the surface to the air', 'installation');
const installationGivens: readonly SheetGiven[] = [
  { ...resistivityGiven, source: 'bundle-model-open-air', when: OPEN },
  { ...resistivityGiven, source: 'bundle-model-conduit', when: CONDUIT },
  { ...resistivityGiven, when: OWN },
  { ...filmGiven, source: 'bundle-model-conduit', when: CONDUIT },
  { ...filmGiven, when: OWN },
];

const emissivityGiven: SheetGiven = given('epsilon', '1', 'emissivity of dull plastic', 'the correlation', { source: 'churchill-chu' });
const openGivens: readonly SheetGiven[] = [emissivityGiven, ...airGivens].map((given) => ({ ...given, when: OPEN }));

/** Up to what the passes need. */
const leadSteps: readonly SheetStep[] = steps([
  ['I_c', 'A', 'I / 2', 'current through each wire: the two of a pair share it', { core: 'conductorCurrent' }],
  ['q_20', 'W/m', '2 * n_p * I_c^2 * r_20', 'heat of one metre of one cable, were it at 20 °C: two wires a pair', { when: LAID }],
  ['Q_20', 'W/m', 'N * q_20', 'heat of one metre of the bundle, were it at 20 °C', { when: LAID }],
  ['D', 'mm', '1.15 * d * sqrt(N)', 'diameter of the bundle, round and no tighter than cables lie', { source: 'heated-cylinder', core: 'diameter', when: 'several cables' }],
  ['D', 'mm', 'd', 'diameter: one cable alone', { source: 'heated-cylinder', core: 'diameter', when: 'one cable' }],
  ['R_i', 'K·m/W', 'rho / (4 * pi)', 'thermal resistance from the middle to the surface, heat made all over', { source: 'heated-cylinder', when: LAID }],
]);

const surfaceStep: SheetStep = step('T_s', '°C', 'T_a + theta', 'surface of the bundle', { source: 'heated-cylinder' });

/** With the middle as hot as the model goes: more heat is made than shed. */
const runawaySteps: readonly SheetStep[] = steps([
  ['Q_out', 'W/m', 'theta / R_s', 'heat that the surface sheds then', { source: 'heated-cylinder' }],
  ['T_m', '°C', 'T_a + theta + Q_out * R_i', 'the middle, with that heat on its way out: as hot as where the model ends', { source: 'heated-cylinder' }],
  ['Q_in', 'W/m', 'Q_20 * (1 + alpha * (T_m - T_ref))', 'heat that conductors as hot as that make'],
  ['B', 'W/m', 'Q_out - Q_in', 'heat shed less heat made, the middle at its hottest; under 0 it still heats up', { source: 'heated-cylinder', no: { says: 'there is no steady state below 400 °C: even there more heat is made than shed', steps: [] } }],
]).map((step) => ({ ...step, when: RUNS_AWAY }) as SheetStep);

/** The balance in closed form, at the film coefficient that there is. */
const balanceSteps: readonly SheetStep[] = steps([
  ['G', 'K', 'Q_20 * (R_i + R_s)', 'rise of the middle, were the conductors to stay at 20 °C', { source: 'heated-cylinder' }],
  ['w', '1', '1 + alpha * (T_a - T_ref)', 'resistance in that air, over that at 20 °C'],
  ['b', '1', '1 - alpha * G', '1 less the share of each kelvin that its own extra heat adds again; under 0 the heating feeds itself', { source: 'heated-cylinder', no: { says: 'there is no steady state: each kelvin adds more heat than it sheds', steps: [] } }],
  ['m_T', 'K', 'T_max - T_a - G * w / b', 'how far the middle, G w / b above the air, stays under where the model ends', { source: 'heated-cylinder', no: { says: 'there is no steady state below 400 °C, where the model ends', steps: [] } }],
  ['T_m', '°C', 'T_a + G * w / b', 'temperature of the middle: its own warming summed, G w + G w (α G) + G w (α G)² + ...', { source: 'heated-cylinder', core: 'conductorTemperature' }],
  ['Q', 'W/m', 'Q_20 * (1 + alpha * (T_m - T_ref))', 'heat of one metre of the bundle, every conductor as hot as the middle', { core: 'heatPerMetre' }],
  ['q', 'W/m', 'Q / N', 'heat of one metre of one cable', { core: 'cableHeatPerMetre' }],
  ['theta_s', 'K', 'Q * R_s', 'the surface above the air, with all that heat shed', { source: 'heated-cylinder', core: 'surfaceRise' }],
]).map((step) => ({ ...step, when: BALANCE }) as SheetStep);

export const bundleRiseSheet: Sheet<BundleRiseInput> = {
  title: 'How hot the middle of a bundle gets',
  core: 'bundleRise',
  keys: [
    'cable',
    'bundle',
    'pairCurrent',
    'energisedPairs',
    'ambient',
    'installation',
    'filmCoefficient',
    'thermalResistivity',
    'outsideDiameter',
    'basis',
  ],
  givens: [
    ...cableGivens,
    ...installationGivens,
    ...openGivens,
    ...givens([
      ['theta', 'K', 'how far the surface is above the air, as found', 'found pass by pass', { when: OPEN, found: true }],
    ]),
  ],
  steps: [
    ...leadSteps,
    ...[surfaceStep, ...filmSteps].map((step) => ({ ...step, when: OPEN })),
    ...steps([
      ['R_s', 'K·m/W', '1 / (pi * D * h)', 'thermal resistance from the surface to the air', { source: 'heated-cylinder', when: LAID }],
    ]),
    ...runawaySteps,
    ...balanceSteps,
    ...steps([
      ['k', '1', 'theta_s / theta', 'that, over what was found pass by pass: 1, so heat made is heat shed', { when: LOADED }],
      ['theta_m', 'K', 'Q * R_i + theta_s', 'rise of the middle above the air: from the middle to the surface, and on to the air', { core: 'rise', when: BALANCE }],
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
    { slip: 'pair-current-for-conductor-current', givens: { I: '2 * I' } },
    { slip: 'cold-resistance', givens: { alpha: '0 * alpha' } },
    { slip: 'temperature-for-rise', steps: { theta_m: 'T_m' } },
  ],
  guard: bundleRise,
  read: readBundle,
  find: findInOpenAir,
};

/** A way of installing that is known, or the caller's own. */
function wayOf(installation: Exclude<Installation, 'wound-drum'>): Omit<InstallationRow, 'source'> {
  if (typeof installation === 'string') return INSTALLATIONS[installation];
  const { filmCoefficient, thermalResistivity = INSTALLATIONS['open-air'].thermalResistivity } = installation;
  return { filmCoefficient, thermalResistivity };
}

function readBundle(input: BundleRiseInput): Reading {
  const { cable, bundle, pairCurrent, ambient = 20, basis = 'nominal', installation } = input;
  if (installation === 'wound-drum') {
    return {
      values: { I: pairCurrent },
      no: 'a cable left wound on its drum has no steady figure: unwind it before it is powered',
      isPlainNo: true,
    };
  }
  const way = wayOf(installation);
  const values: Figures = {
    r_20: basis === 'maximum' ? cable.maximumResistancePerMetre : cable.nominalResistancePerMetre,
    alpha: cable.temperatureCoefficient,
    T_ref: 20,
    n_p: input.energisedPairs ?? cable.pairs,
    d: input.outsideDiameter ?? cable.outsideDiameter ?? 0,
    N: bundle,
    I: pairCurrent,
    T_a: ambient,
    T_max: HOTTEST,
    rho: way.thermalResistivity,
  };
  const sources: FigureSources = {
    r_20: cableSource(cable, basis),
    alpha: coefficientSource(cable.temperatureCoefficient),
    d: input.outsideDiameter === undefined ? cable.outsideDiameterSource : undefined,
  };
  const size = bundle === 1 ? 'one cable' : 'several cables';
  const assumptions = [
    ...(input.ambient === undefined ? ['The air is at 20 °C: no temperature was stated.'] : []),
    basisAssumption(basis),
    ...(input.energisedPairs === undefined ? [`All ${cable.pairs} pairs of each cable carry the current: nothing else was stated.`] : []),
  ];
  const { filmCoefficient } = way;
  if (filmCoefficient !== undefined) {
    const kind = typeof installation === 'string' ? CONDUIT : OWN;
    return { values: { ...values, h: filmCoefficient }, sources, cases: [LAID, kind, size, BALANCE], assumptions };
  }
  return { values: { ...values, ...AIR, epsilon: 0.9 }, sources, cases: [LAID, OPEN, size], assumptions };
}

/** In open air the surface is found by going round; elsewhere there is nothing to find. */
function findInOpenAir(reading: Reading): Reading {
  const { values, cases = [] } = reading;
  if (!cases.includes(OPEN)) return reading;
  if (values['I'] === 0) return { ...reading, values: { ...values, theta: 0 }, cases: [...cases, BALANCE] };
  const lead = leadSteps.filter(({ when }) => when === undefined || cases.includes(when));
  const scope = workedScope([...cableGivens, resistivityGiven, ...openGivens], values, lead);
  const { settles, surfaceRise, passes } = findSurface(scope, (values['T_max'] ?? 0) - (values['T_a'] ?? 0));
  return {
    ...reading,
    values: { ...values, theta: surfaceRise },
    cases: [...cases, ...(settles ? [BALANCE, LOADED] : [RUNS_AWAY])],
    passes,
  };
}

