/** How hot the middle of a bundle of powered cables gets, and whether it settles at all. @module */
import { type BundleRiseInput, bundleRise, type Installation } from '../../cable/heat/bundle-rise.ts';
import { HEAT_CAUTION } from '../../cable/heat/caution.ts';
import { INSTALLATIONS, type InstallationRow } from '../../cable/heat/installations-table.ts';
import { readCable } from '../../cable/read-cable.ts';
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
  {
    symbol: 'r_20',
    meaning: 'one metre of one conductor at 20 °C',
    unit: 'Ω/m',
    latex: 'r_{20}',
    core: 'cable.nominalResistancePerMetre or cable.maximumResistancePerMetre',
    source: 'row',
    when: LAID,
  },
  {
    symbol: 'alpha',
    meaning: 'temperature coefficient of resistance at 20 °C',
    unit: '1/K',
    latex: '\\alpha',
    core: 'cable.temperatureCoefficient',
    source: 'row',
    when: LAID,
  },
  { ...twentyGiven, when: LAID },
  { symbol: 'n_p', meaning: 'pairs of each cable that carry the current', unit: '1', latex: 'n_{p}', core: 'energisedPairs', when: LAID },
  { symbol: 'd', meaning: 'diameter of one cable', unit: 'mm', latex: 'd', core: 'outsideDiameter', source: 'row', when: LAID },
  { symbol: 'N', meaning: 'cables in the bundle', unit: '1', latex: 'N', core: 'bundle', when: LAID },
  { symbol: 'I', meaning: 'current through each pair', unit: 'A', latex: 'I', core: 'pairCurrent' },
  { symbol: 'T_a', meaning: 'air around the bundle', unit: '°C', latex: 'T_{a}', core: 'ambient', when: LAID },
  {
    symbol: 'T_max',
    meaning: 'where the model ends, far beyond the rating of any cable',
    unit: '°C',
    latex: 'T_{\\max}',
    core: 'the domain',
    when: LAID,
  },
];

/** Thermal resistivity and film coefficient, with the source that each way of installing has. */
const resistivityGiven: SheetGiven = {
  symbol: 'rho',
  meaning: 'effective thermal resistivity of the bundle, air between its cables included',
  unit: 'K·m/W',
  latex: '\\rho',
  core: 'installation',
};
const filmGiven: SheetGiven = {
  symbol: 'h',
  meaning: 'film coefficient, from the surface to the air',
  unit: 'W/(m²·K)',
  latex: 'h',
  core: 'installation',
};
const installationGivens: readonly SheetGiven[] = [
  { ...resistivityGiven, source: 'bundle-model-open-air', when: OPEN },
  { ...resistivityGiven, source: 'bundle-model-conduit', when: CONDUIT },
  { ...resistivityGiven, when: OWN },
  { ...filmGiven, source: 'bundle-model-conduit', when: CONDUIT },
  { ...filmGiven, when: OWN },
];

const emissivityGiven: SheetGiven = {
  symbol: 'epsilon',
  meaning: 'emissivity of dull plastic',
  unit: '1',
  latex: '\\epsilon',
  core: 'the correlation',
  source: 'churchill-chu',
};
const openGivens: readonly SheetGiven[] = [emissivityGiven, ...airGivens].map((given) => ({ ...given, when: OPEN }));

/** Up to what the passes need. */
const leadSteps: readonly SheetStep[] = [
  {
    symbol: 'I_c',
    meaning: 'current through each wire: the two of a pair share it',
    formula: 'I / 2',
    unit: 'A',
    latex: 'I_{c}',
    source: 'circuit-laws',
    core: 'conductorCurrent',
  },
  {
    symbol: 'q_20',
    meaning: 'heat of one metre of one cable, were it at 20 °C: two wires a pair',
    formula: '2 * n_p * I_c^2 * r_20',
    unit: 'W/m',
    latex: 'q_{20}',
    source: 'circuit-laws',
    when: LAID,
  },
  {
    symbol: 'Q_20',
    meaning: 'heat of one metre of the bundle, were it at 20 °C',
    formula: 'N * q_20',
    unit: 'W/m',
    latex: 'Q_{20}',
    source: 'circuit-laws',
    when: LAID,
  },
  {
    symbol: 'D',
    meaning: 'diameter of the bundle, round and no tighter than cables lie',
    formula: '1.15 * d * sqrt(N)',
    unit: 'mm',
    latex: 'D',
    source: 'heated-cylinder',
    core: 'diameter',
    when: 'several cables',
  },
  {
    symbol: 'D',
    meaning: 'diameter: one cable alone',
    formula: 'd',
    unit: 'mm',
    latex: 'D',
    source: 'heated-cylinder',
    core: 'diameter',
    when: 'one cable',
  },
  {
    symbol: 'R_i',
    meaning: 'thermal resistance from the middle to the surface, heat made all over',
    formula: 'rho / (4 * pi)',
    unit: 'K·m/W',
    latex: 'R_{i}',
    source: 'heated-cylinder',
    when: LAID,
  },
];

const surfaceStep: SheetStep = {
  symbol: 'T_s',
  meaning: 'surface of the bundle',
  formula: 'T_a + theta',
  unit: '°C',
  latex: 'T_{s}',
  source: 'heated-cylinder',
};

/** With the middle as hot as the model goes: more heat is made than shed. */
const runawaySteps: readonly SheetStep[] = [
  {
    symbol: 'Q_out',
    meaning: 'heat that the surface sheds then',
    formula: 'theta / R_s',
    unit: 'W/m',
    latex: 'Q_{\\mathrm{out}}',
    source: 'heated-cylinder',
  },
  {
    symbol: 'T_m',
    meaning: 'the middle, with that heat on its way out: as hot as where the model ends',
    formula: 'T_a + theta + Q_out * R_i',
    unit: '°C',
    latex: 'T_{m}',
    source: 'heated-cylinder',
  },
  {
    symbol: 'Q_in',
    meaning: 'heat that conductors as hot as that make',
    formula: 'Q_20 * (1 + alpha * (T_m - T_ref))',
    unit: 'W/m',
    latex: 'Q_{\\mathrm{in}}',
    source: 'circuit-laws',
  },
  {
    symbol: 'B',
    meaning: 'heat shed less heat made, the middle at its hottest; under 0 it still heats up',
    formula: 'Q_out - Q_in',
    unit: 'W/m',
    latex: 'B',
    source: 'heated-cylinder',
    no: { says: 'there is no steady state below 400 °C: even there more heat is made than shed', steps: [] },
  },
].map((step) => ({ ...step, when: RUNS_AWAY }) as SheetStep);

/** The balance in closed form, at the film coefficient that there is. */
const balanceSteps: readonly SheetStep[] = [
  {
    symbol: 'G',
    meaning: 'rise of the middle, were the conductors to stay at 20 °C',
    formula: 'Q_20 * (R_i + R_s)',
    unit: 'K',
    latex: 'G',
    source: 'heated-cylinder',
  },
  {
    symbol: 'w',
    meaning: 'resistance in that air, over that at 20 °C',
    formula: '1 + alpha * (T_a - T_ref)',
    unit: '1',
    latex: 'w',
    source: 'circuit-laws',
  },
  {
    symbol: 'b',
    meaning: '1 less the share of each kelvin that its own extra heat adds again; under 0 the heating feeds itself',
    formula: '1 - alpha * G',
    unit: '1',
    latex: 'b',
    source: 'heated-cylinder',
    no: { says: 'there is no steady state: each kelvin adds more heat than it sheds', steps: [] },
  },
  {
    symbol: 'm_T',
    meaning: 'how far the middle, G w / b above the air, stays under where the model ends',
    formula: 'T_max - T_a - G * w / b',
    unit: 'K',
    latex: 'm_{T}',
    source: 'heated-cylinder',
    no: { says: 'there is no steady state below 400 °C, where the model ends', steps: [] },
  },
  {
    symbol: 'T_m',
    meaning: 'temperature of the middle: its own warming summed, G w + G w (α G) + G w (α G)² + ...',
    formula: 'T_a + G * w / b',
    unit: '°C',
    latex: 'T_{m}',
    source: 'heated-cylinder',
    core: 'conductorTemperature',
  },
  {
    symbol: 'Q',
    meaning: 'heat of one metre of the bundle, every conductor as hot as the middle',
    formula: 'Q_20 * (1 + alpha * (T_m - T_ref))',
    unit: 'W/m',
    latex: 'Q',
    source: 'circuit-laws',
    core: 'heatPerMetre',
  },
  {
    symbol: 'q',
    meaning: 'heat of one metre of one cable',
    formula: 'Q / N',
    unit: 'W/m',
    latex: 'q',
    source: 'circuit-laws',
    core: 'cableHeatPerMetre',
  },
  {
    symbol: 'theta_s',
    meaning: 'the surface above the air, with all that heat shed',
    formula: 'Q * R_s',
    unit: 'K',
    latex: '\\theta_{s}',
    source: 'heated-cylinder',
    core: 'surfaceRise',
  },
].map((step) => ({ ...step, when: BALANCE }) as SheetStep);

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
    {
      symbol: 'theta',
      meaning: 'how far the surface is above the air, as found',
      unit: 'K',
      latex: '\\theta',
      core: 'found pass by pass',
      when: OPEN,
      found: true,
    },
  ],
  steps: [
    ...leadSteps,
    ...[surfaceStep, ...filmSteps].map((step) => ({ ...step, when: OPEN })),
    {
      symbol: 'R_s',
      meaning: 'thermal resistance from the surface to the air',
      formula: '1 / (pi * D * h)',
      unit: 'K·m/W',
      latex: 'R_{s}',
      source: 'heated-cylinder',
      when: LAID,
    },
    ...runawaySteps,
    ...balanceSteps,
    {
      symbol: 'k',
      meaning: 'that, over what was found pass by pass: 1, so heat made is heat shed',
      formula: 'theta_s / theta',
      unit: '1',
      latex: 'k',
      source: 'heated-cylinder',
      when: LOADED,
    },
    {
      symbol: 'theta_m',
      meaning: 'rise of the middle above the air: from the middle to the surface, and on to the air',
      formula: 'Q * R_i + theta_s',
      unit: 'K',
      latex: '\\theta_{m}',
      source: 'heated-cylinder',
      core: 'rise',
      when: BALANCE,
    },
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
  const { bundle, pairCurrent, ambient = 20, basis = 'nominal', installation } = input;
  const cable = readCable(input.cable, 'cable');
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
