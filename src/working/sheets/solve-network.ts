/** A small DC network, as tables: voltages by passes, then every current and drop from them. @module */
import { given, givens, step, steps } from '../rows.ts';
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
  const tapGiven = (letter: string, meaning: string, unit: SheetGiven['unit'], kind: Kind, core: string): SheetGiven => (given(`${letter}${suffix}_#`, unit, meaning, `taps[].load.${core}`, { latex: `${letter}_{${sub}}`, each: list, when: kind }));
  const tapStep: Omit<SheetStep, 'formula'> = {
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
      tapGiven('P', '@: power drawn there, whatever the voltage', 'W', 'power', 'power'),
      tapGiven('J', '@: current drawn there, whatever the voltage', 'A', 'current', 'current'),
      tapGiven('G', '@: conductance there, one over the resistance', 'S', 'conductance', 'resistance'),
    ],
    steps: [
      ...KINDS.map((kind) => ({ ...tapStep, formula: drawn[kind], when: tapsOf([kind]) })),
      ...SEVERAL.map((kinds) => ({
        ...tapStep,
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
    givens: givens([
      [`R${suffix}_#`, 'Ω', '@: resistance of the section, out and back', 'sections[].resistance', { latex: `R_{${sub}}`, when: 'in ohms' }],
      [`r${suffix}20_#`, 'Ω/m', '@: one metre of one conductor at 20 °C', 'sections[].conductor', { latex: `r_{20,${sub}}`, source: 'row', when: 'in metres' }],
      [`alpha${suffix}_#`, '1/K', '@: temperature coefficient at 20 °C', 'sections[].conductor', { latex: `\\alpha_{${sub}}`, source: 'row', when: 'in metres' }],
      [`T${suffix}_#`, '°C', '@: temperature of the conductors', 'sections[].temperature', { latex: `T_{${sub}}`, when: 'in metres' }],
      [`L${suffix}_#`, 'm', '@: length, one way', 'sections[].length', { latex: `L_{${sub}}`, when: 'in metres' }],
    ], { each: list }),
    steps: steps([
      [`R${suffix}_#`, 'Ω', `2 * r${suffix}20_# * (1 + alpha${suffix}_# * (T${suffix}_# - T_ref)) * L${suffix}_#`, '@: resistance of the section, out and back', { latex: `R_{${sub}}`, each: list, when: 'in metres' }],
    ]),
  };
}

const branch = sectionFigures('', 'inward');
const ring = sectionFigures('x', 'ring');
const taps = tapFigures('', 'inward');
const supplyTaps = tapFigures('0', 'supply');

const ONWARDS = { formula: 'It_k + all that goes on from there', latex: 'I_{t,k} + \\sum I_{\\mathrm{on}}' };

const sectionCurrent: SheetStep = step('Is_#', 'A', 'It_#<onwards>', '@: current of the section: that of the taps at its end and of all beyond', { general: ONWARDS, latex: 'I_{#}', core: '<current>', each: 'inward' });

const supplyCurrent: SheetStep = step('I0_#', 'A', 'It0_#<onwards>', '@: current of the supply', { general: { formula: 'all that goes on from there', latex: '\\sum I_{\\mathrm{on}}' }, each: 'supply', beware: 'A current under 0 flows back into that supply. Most power supplies take none: then the voltages are other than these.' });

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
    ...givens([
      ['V0_#', 'V', '@: voltage of the supply', 'supplies[].voltage', { each: 'supply' }],
    ]),
    ...supplyTaps.givens,
    { ...twentyGiven, when: 'by length' },
    ...ring.givens,
    ...branch.givens,
    ...taps.givens,
    ...givens([
      ['W_#', 'V', '@: voltage at its end, of the last pass', 'found pass by pass', { source: 'row', each: 'inward', when: 'carried' }],
      ['q', '1', 'share of all loads that is carried, found by halving: with more, the passes lead nowhere', 'found by halving', { when: 'not carried' }],
    ], { found: true }),
  ],
  steps: [
    ...steps([
      ['P_all', 'W', '[P_#]', 'power that the taps of constant power ask for', { when: 'too much power' }],
      ['P_most', 'W', 'q * P_all', 'the most of it that the network carries, all loads cut alike', { latex: 'P_{\\max}', source: 'network-newton', when: 'too much power' }],
      ['I_all', 'A', '[J_#]', 'current that the taps of constant current ask for', { when: 'too much current' }],
      ['I_most', 'A', 'q * I_all', 'the most of it that the network carries, all loads cut alike', { latex: 'I_{\\max}', when: 'too much current' }],
    ]),
    ...ring.steps,
    ...steps([
      ['Ix_#', 'A', '(<a> - <b>) / Rx_#', '@: current of this section, which closes a ring: by its two voltages', { general: { formula: '(voltage at its start - voltage at its end) / Rx_k', latex: '\\frac{V_{\\mathrm{start}} - V_{\\mathrm{end}}}{R_{x,k}}'}, each: 'ring' }],
    ]),
    ...branch.steps,
    ...taps.steps,
    sectionCurrent,
    ...steps([
      ['D_#', 'V', 'Is_# * R_#', '@: voltage lost along the section to this node'],
      ['V_#', 'V', '<from> - D_#', '@: voltage of this node, from the supply outwards', { general: { formula: 'voltage at its start - D_k', latex: 'V_{\\mathrm{start}} - D_{k}' }, core: 'nodes[@].voltage' }],
    ], { each: 'outward' }),
    ...supplyTaps.steps,
    ...supplyCurrents,
    ...steps([
      ['P_S', 'W', '[V0_# * I0_#]', 'power from all supplies', { core: 'supplyPower', when: 'carried by a tree' }],
      ['P_S', 'W', '[V0_# * I0_#]', 'power from all supplies', { when: 'carried by rings' }],
      ['P_loss', 'W', '[Is_#^2 * R_#]', 'heat in all sections', { core: 'lineLoss', when: 'branches, carried by a tree' }],
      ['V_low', 'V', 'min([V_#,], [V0_#,])', 'the lowest voltage of any node, at', { least: ['V_#', 'V0_#'], core: 'lowest.voltage', when: 'branches' }],
      ['V_low', 'V', 'min([V0_#,])', 'the lowest voltage of any node: there are supplies alone', { core: 'lowest.voltage', when: 'supplies alone' }],
    ]),
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

