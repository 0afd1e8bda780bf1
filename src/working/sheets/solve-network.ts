/** A small DC network, as tables: voltages by passes, then every current and drop from them. @module */
import { type NetworkInput, networkProblem } from '../../circuit/network-problem.ts';
import type { Sheet, SheetGiven, SheetStep } from '../sheet.ts';
import { drawnAt, KINDS, type Kind, readNetwork, requireSmall, SEVERAL, tapsOf } from './network-reading.ts';
import { findVoltages } from './network-voltages.ts';
import { twentyGiven } from './shared.ts';

const DRAWN_LATEX: Readonly<Record<Kind, string>> = {
  power: '\\frac{P_{k}}{W_{k}}',
  current: 'J_{k}',
  conductance: 'G_{k} \\cdot W_{k}',
};

/** The loads of a node, and the current that they draw together. */
function tapFigures(suffix: '' | '0', list: string): { readonly givens: readonly SheetGiven[]; readonly steps: readonly SheetStep[] } {
  const sub = suffix === '' ? '#' : '0,#';
  const given = (letter: string, meaning: string, unit: SheetGiven['unit'], kind: Kind, core: string): SheetGiven => ({
    symbol: `${letter}${suffix}_#`,
    meaning,
    unit,
    latex: `${letter}_{${sub}}`,
    core: `taps[].load.${core}`,
    each: list,
    when: kind,
  });
  const step: Omit<SheetStep, 'formula'> = {
    symbol: `It${suffix}_#`,
    meaning: '@: current of the taps there',
    unit: 'A',
    latex: `I_{t${suffix},#}`,
    source: 'circuit-laws',
    each: list,
  };
  const drawn = drawnAt(suffix, '#');
  return {
    givens: [
      given('P', '@: power drawn there, whatever the voltage', 'W', 'power', 'power'),
      given('J', '@: current drawn there, whatever the voltage', 'A', 'current', 'current'),
      given('G', '@: conductance there, one over the resistance', 'S', 'conductance', 'resistance'),
    ],
    steps: [
      ...KINDS.map((kind) => ({ ...step, formula: drawn[kind], when: tapsOf([kind]) })),
      ...SEVERAL.map((kinds) => ({
        ...step,
        formula: '<drawn>',
        general: {
          formula: kinds.map((kind) => drawnAt(suffix, 'k')[kind]).join(' + '),
          latex: kinds.map((kind) => DRAWN_LATEX[kind]).join(' + '),
        },
        when: tapsOf(kinds),
      })),
    ],
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
        source: 'row',
        each: list,
        when: 'in metres',
      },
      {
        symbol: `alpha${suffix}_#`,
        meaning: '@: temperature coefficient at 20 °C',
        unit: '1/K',
        latex: `\\alpha_{${sub}}`,
        core: 'sections[].conductor',
        source: 'row',
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
const taps = tapFigures('', 'inward');
const supplyTaps = tapFigures('0', 'supply');

const ONWARDS = { formula: 'It_k + all that goes on from there', latex: 'I_{t,k} + \\sum I_{\\mathrm{on}}' };

const sectionCurrent: SheetStep = {
  symbol: 'Is_#',
  meaning: '@: current of the section: that of the taps at its end and of all beyond',
  formula: 'It_#<onwards>',
  general: ONWARDS,
  unit: 'A',
  latex: 'I_{#}',
  source: 'circuit-laws',
  core: '<current>',
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
  beware: 'A current under 0 flows back into that supply. Most power supplies take none: then the voltages are other than these.',
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
      source: 'row',
      each: 'inward',
      when: 'carried',
      found: true,
    },
    {
      symbol: 'q',
      meaning: 'share of all loads that is carried, found by halving: with more, the passes lead nowhere',
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
      source: 'circuit-laws',
      when: 'too much current',
    },
    ...ring.steps,
    {
      symbol: 'Ix_#',
      meaning: '@: current of this section, which closes a ring: by its two voltages',
      formula: '(<a> - <b>) / Rx_#',
      general: {
        formula: '(voltage at its start - voltage at its end) / Rx_k',
        latex: '\\frac{V_{\\mathrm{start}} - V_{\\mathrm{end}}}{R_{x,k}}',
      },
      unit: 'A',
      latex: 'I_{x,#}',
      source: 'circuit-laws',
      each: 'ring',
    },
    ...branch.steps,
    ...taps.steps,
    sectionCurrent,
    {
      symbol: 'D_#',
      meaning: '@: voltage lost along the section to this node',
      formula: 'Is_# * R_#',
      unit: 'V',
      latex: 'D_{#}',
      source: 'circuit-laws',
      each: 'outward',
    },
    {
      symbol: 'V_#',
      meaning: '@: voltage of this node, from the supply outwards',
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
      when: 'branches, carried by a tree',
    },
    {
      symbol: 'V_low',
      meaning: 'the lowest voltage of any node, at',
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
    // Section by section outwards, each with the power of its own tap at its end.
    {
      slip: 'own-tap-only',
      when: 'powers in a tree',
      steps: { 'Is_#': 'It_#', 'D_#': '2 * P_# * R_# / (<from> + sqrt(<from>^2 - 4 * P_# * R_#))' },
    },
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
