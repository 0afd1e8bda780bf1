/** A small DC network, as tables: voltages by passes, then every current and drop from them. @module */
import { type NetworkInput, networkProblem } from '../../circuit/network-problem.ts';
import type { Sheet, SheetGiven, SheetStep } from '../sheet.ts';
import { findVoltages, KINDS, readNetwork, requireSmall, tapped } from './network-reading.ts';
import { twentyGiven } from './shared.ts';

/** What a node draws, by each kind of load, from the voltage of that symbol. */
const DRAWN = { power: ['P', 'P_# / V'], current: ['J', 'J_#'], conductance: ['G', 'G_# * V'] } as const;

/** All kinds of load that a node may have at once. */
const TOGETHER = [1, 2, 3, 4, 5, 6, 7].map((bits) => KINDS.filter((_, kind) => (bits >> kind) & 1));

/** The loads of a node, and the current that they draw together, for each choice of kinds. */
function tapFigures(
  suffix: '' | '0',
  voltage: string,
  list: string,
): { readonly givens: readonly SheetGiven[]; readonly steps: readonly SheetStep[] } {
  const numbered = (formula: string): string => formula.replace(/([PJG])_/, `$1${suffix}_`).replace('V', voltage);
  const base = { each: list } as const;
  return {
    givens: [
      {
        symbol: `P${suffix}_#`,
        meaning: '@: power drawn there, whatever the voltage',
        unit: 'W',
        latex: 'P_{#}',
        core: 'taps[].load.power',
        when: 'power',
        ...base,
      },
      {
        symbol: `J${suffix}_#`,
        meaning: '@: current drawn there, whatever the voltage',
        unit: 'A',
        latex: 'J_{#}',
        core: 'taps[].load.current',
        when: 'current',
        ...base,
      },
      {
        symbol: `G${suffix}_#`,
        meaning: '@: conductance there, one over the resistance',
        unit: 'S',
        latex: 'G_{#}',
        core: 'taps[].load.resistance',
        when: 'conductance',
        ...base,
      },
    ].map((given) => (suffix === '' ? given : { ...given, latex: given.latex.replace('_{#}', '_{0,#}') })) as readonly SheetGiven[],
    steps: TOGETHER.map((kinds) => ({
      symbol: `It${suffix}_#`,
      meaning: '@: current of the taps there',
      formula: kinds.map((kind) => numbered(DRAWN[kind][1])).join(' + '),
      unit: 'A',
      latex: suffix === '' ? 'I_{t,#}' : 'I_{t0,#}',
      source: 'circuit-laws',
      each: list,
      when: tapped(kinds),
    })),
  };
}

/** A section in metres, of two equal conductors. */
function sectionFigures(suffix: '' | 'x', list: string): { readonly givens: readonly SheetGiven[]; readonly steps: readonly SheetStep[] } {
  const sub = suffix === '' ? '#' : 'x,#';
  return {
    givens: [
      {
        symbol: `R${suffix}_#`,
        meaning: '@: resistance of the section, out and back',
        unit: 'Ω',
        latex: `R_{${sub}}`,
        core: 'sections[].resistance',
        each: list,
        when: 'in ohms',
      },
      {
        symbol: `r${suffix}20_#`,
        meaning: '@: one metre of one conductor at 20 °C',
        unit: 'Ω/m',
        latex: `r_{20,${sub}}`,
        core: 'sections[].conductor',
        each: list,
        when: 'in metres',
      },
      {
        symbol: `alpha${suffix}_#`,
        meaning: '@: temperature coefficient at 20 °C',
        unit: '1/K',
        latex: `\\alpha_{${sub}}`,
        core: 'sections[].conductor',
        each: list,
        when: 'in metres',
      },
      {
        symbol: `T${suffix}_#`,
        meaning: '@: temperature of the conductors',
        unit: '°C',
        latex: `T_{${sub}}`,
        core: 'sections[].temperature',
        each: list,
        when: 'in metres',
      },
      {
        symbol: `L${suffix}_#`,
        meaning: '@: length, one way',
        unit: 'm',
        latex: `L_{${sub}}`,
        core: 'sections[].length',
        each: list,
        when: 'in metres',
      },
    ],
    steps: [
      {
        symbol: `R${suffix}_#`,
        meaning: '@: resistance of the section, out and back',
        formula: `2 * r${suffix}20_# * (1 + alpha${suffix}_# * (T${suffix}_# - T_ref)) * L${suffix}_#`,
        unit: 'Ω',
        latex: `R_{${sub}}`,
        source: 'circuit-laws',
        each: list,
        when: 'in metres',
      },
    ],
  };
}

const branch = sectionFigures('', 'inward');
const ring = sectionFigures('x', 'ring');
const taps = tapFigures('', 'W_#', 'inward');
const supplyTaps = tapFigures('0', 'V0_#', 'supply');

const ONWARDS = { formula: 'It_k + all that goes on from there', latex: 'I_{t,k} + \\sum I_{\\mathrm{on}}' };

const sectionCurrent: SheetStep = {
  symbol: 'Is_#',
  meaning: '@: current of the section: that of the taps at its end and of all beyond',
  formula: 'It_#<onwards>',
  general: ONWARDS,
  unit: 'A',
  latex: 'I_{#}',
  source: 'circuit-laws',
  each: 'inward',
};

const supplyCurrent: SheetStep = {
  symbol: 'I0_#',
  meaning: '@: current of the supply',
  formula: 'It0_#<onwards>',
  general: { formula: 'all that goes on from there', latex: '\\sum I_{\\mathrm{on}}' },
  unit: 'A',
  latex: 'I_{0,#}',
  source: 'circuit-laws',
  each: 'supply',
};

/** Of a supply with taps at it, and without. */
const supplyCurrents: readonly SheetStep[] = [
  { ...supplyCurrent, when: 'taps at it' },
  { ...supplyCurrent, formula: '<leaving>', when: 'no taps at it' },
];

export const solveNetworkSheet: Sheet<NetworkInput> = {
  title: 'Voltages and currents of a small network',
  core: 'solveNetwork',
  keys: ['supplies', 'sections', 'taps'],
  givens: [
    { symbol: 'V0_#', meaning: '@: voltage of the supply', unit: 'V', latex: 'V_{0,#}', core: 'supplies[].voltage', each: 'supply' },
    ...supplyTaps.givens,
    { ...twentyGiven, when: 'by length' },
    ...ring.givens,
    ...branch.givens,
    ...taps.givens,
    {
      symbol: 'W_#',
      meaning: '@: voltage at its end, of the last pass',
      unit: 'V',
      latex: 'W_{#}',
      core: 'found pass by pass',
      source: 'network-newton',
      each: 'inward',
      when: 'carried',
      found: true,
    },
    {
      symbol: 'q',
      meaning: 'share of all loads that is carried, found by halving',
      unit: '1',
      latex: 'q',
      core: 'found by halving',
      when: 'not carried',
      found: true,
    },
  ],
  steps: [
    {
      symbol: 'P_all',
      meaning: 'power that the taps of constant power ask for',
      formula: '[P_#]',
      unit: 'W',
      latex: 'P_{\\mathrm{all}}',
      source: 'circuit-laws',
      when: 'too much power',
    },
    {
      symbol: 'P_most',
      meaning: 'the most of it that the network carries, all loads cut alike',
      formula: 'q * P_all',
      unit: 'W',
      latex: 'P_{\\max}',
      source: 'network-newton',
      when: 'too much power',
    },
    {
      symbol: 'I_all',
      meaning: 'current that the taps of constant current ask for',
      formula: '[J_#]',
      unit: 'A',
      latex: 'I_{\\mathrm{all}}',
      source: 'circuit-laws',
      when: 'too much current',
    },
    {
      symbol: 'I_most',
      meaning: 'the most of it that the network carries, all loads cut alike',
      formula: 'q * I_all',
      unit: 'A',
      latex: 'I_{\\max}',
      source: 'network-newton',
      when: 'too much current',
    },
    ...ring.steps,
    {
      symbol: 'Ix_#',
      meaning: '@: current of this section, which closes a ring: by its two voltages',
      formula: '(<a> - <b>) / Rx_#',
      unit: 'A',
      latex: 'I_{x,#}',
      source: 'circuit-laws',
      each: 'ring',
    },
    ...branch.steps,
    ...taps.steps,
    { ...sectionCurrent, core: 'currents[@]', when: 'as drawn' },
    { ...sectionCurrent, when: 'by hand' },
    {
      symbol: 'D_#',
      meaning: '@: voltage lost along the section',
      formula: 'Is_# * R_#',
      unit: 'V',
      latex: 'D_{#}',
      source: 'circuit-laws',
      each: 'outward',
    },
    {
      symbol: 'V_#',
      meaning: '@: voltage at its end, from the supply outwards',
      formula: '<from> - D_#',
      general: { formula: 'voltage at its start - D_k', latex: 'V_{\\mathrm{start}} - D_{k}' },
      unit: 'V',
      latex: 'V_{#}',
      source: 'circuit-laws',
      core: 'nodes[@].voltage',
      each: 'outward',
    },
    ...supplyTaps.steps,
    ...supplyCurrents,
    {
      symbol: 'P_S',
      meaning: 'power from all supplies',
      formula: '[V0_# * I0_#]',
      unit: 'W',
      latex: 'P_{S}',
      source: 'circuit-laws',
      core: 'supplyPower',
      when: 'carried by a tree',
    },
    {
      symbol: 'P_S',
      meaning: 'power from all supplies',
      formula: '[V0_# * I0_#]',
      unit: 'W',
      latex: 'P_{S}',
      source: 'circuit-laws',
      when: 'carried by rings',
    },
    {
      symbol: 'P_loss',
      meaning: 'heat in all sections',
      formula: '[Is_#^2 * R_#]',
      unit: 'W',
      latex: 'P_{\\mathrm{loss}}',
      source: 'circuit-laws',
      core: 'lineLoss',
      when: 'carried by a tree',
    },
    {
      symbol: 'V_low',
      meaning: 'the lowest voltage of any node, at the end of',
      least: ['V_#', 'V0_#'],
      formula: 'min([V_#,], [V0_#,])',
      unit: 'V',
      latex: 'V_{\\mathrm{low}}',
      source: 'circuit-laws',
      core: 'lowest.voltage',
      when: 'branches',
    },
    {
      symbol: 'V_low',
      meaning: 'the lowest voltage of any node: there are supplies alone',
      formula: 'min([V0_#,])',
      unit: 'V',
      latex: 'V_{\\mathrm{low}}',
      source: 'circuit-laws',
      core: 'lowest.voltage',
      when: 'supplies alone',
    },
  ],
  tables: [{ title: 'Sections, from the supplies outwards, and the nodes at their ends', row: 'section', lists: ['inward', 'outward'] }],
  assumptions: ['Direct current, steady state. Every section is a loop, out and back.'],
  validity: 'Trees, rings and lines fed from both ends, of at most 24 sections and 24 taps.',
  cautions: [],
  slips: [
    { slip: 'power-at-wrong-end', when: 'powers from one supply', steps: { 'It_#': 'P_# / V0_1' } },
    { slip: 'own-tap-only', when: 'currents in a tree', steps: { 'Is_#': 'It_#' } },
    { slip: 'cold-resistance', when: 'by length', givens: { 'T_#': 'T_ref', 'Tx_#': 'T_ref' } },
    { slip: 'one-way-length', when: 'by length', givens: { 'L_#': 'L_# / 2', 'Lx_#': 'Lx_# / 2' } },
  ],
  guard: (input) => {
    networkProblem(input);
    requireSmall(input);
    return readNetwork(input);
  },
  read: readNetwork,
  find: findVoltages,
};
