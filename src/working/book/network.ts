/** A small DC network, as tables: voltages by passes, then every current and drop from them. @module */
import type { NetworkInput } from '../../circuit/index.ts';
import { networkProblem } from '../../circuit/network-problem.ts';
import { type BookSheet, givens, steps } from '../engine/rows.ts';
import type { Givens, Steps } from '../engine/sheet.ts';
import { twentyGiven } from './conductors.ts';
import { drawnAt, type NetworkCase, readNetwork, requireSmall, TAPS, type TapsCase } from './network-reading.ts';
import { findVoltages } from './network-voltages.ts';

const DRAWN_LATEX = { power: '\\frac{P_{k}}{W_{k}}', current: 'J_{k}', conductance: 'G_{k} \\cdot W_{k}' } as const;

/** The loads of a node. */
// biome-ignore format: one figure a row
const tapGivens = (end: '' | '0', each: string): Givens<NetworkCase> => givens([
  [`P${end}_#`, 'W', '@: power drawn there, whatever the voltage', 'taps[].load.power', { when: 'power' }],
  [`J${end}_#`, 'A', '@: current drawn there, whatever the voltage', 'taps[].load.current', { when: 'current' }],
  [`G${end}_#`, 'S', '@: conductance there, one over the resistance', 'taps[].load.resistance', { when: 'conductance' }],
], { each });

/** The current that they draw together, for each choice of kinds that there may be in a network. */
const tapSteps = (end: '' | '0', each: string): Steps<NetworkCase> =>
  Object.entries(TAPS).flatMap(([when, kinds]) => {
    const formula = kinds.map((kind) => drawnAt(end, 'k')[kind]).join(' + ');
    const general = { formula, latex: kinds.map((kind) => DRAWN_LATEX[kind]).join(' + ') };
    const more = { latex: `I_{t${end},#}`, general, each, when: when as TapsCase };
    return steps<NetworkCase>([[`It${end}_#`, 'A', '<drawn>', '@: current of the taps there', more]]);
  });

/** A section in ohms, or in metres of two equal conductors. */
// biome-ignore format: one figure a row
const sectionGivens = (x: '' | 'x', each: string): Givens<NetworkCase> => givens([
  [`R${x}_#`, 'Ω', '@: resistance of the section, out and back', 'sections[].resistance', { when: 'in ohms' }],
  [`r${x}20_#`, 'Ω/m', '@: one metre of one conductor at 20 °C', 'sections[].conductor', { source: 'row', when: 'in metres' }],
  [`alpha${x}_#`, '1/K', '@: temperature coefficient at 20 °C', 'sections[].conductor', { source: 'row', when: 'in metres' }],
  [`T${x}_#`, '°C', '@: temperature of the conductors', 'sections[].temperature', { when: 'in metres' }],
  [`L${x}_#`, 'm', '@: length, one way', 'sections[].length', { when: 'in metres' }],
], { each });
// biome-ignore format: one figure a row
const sectionSteps = (x: '' | 'x', each: string): Steps<NetworkCase> => steps([
  [`R${x}_#`, 'Ω', `2 * r${x}20_# * (1 + alpha${x}_# * (T${x}_# - T_ref)) * L${x}_#`, '@: resistance of the section, out and back', { when: 'in metres' }],
], { each });

const LEAVING = { formula: 'all that goes on from there', latex: '\\sum I_{\\mathrm{on}}' };
const BACKWARDS = 'A current under 0 flows back into that supply. Most power supplies take none: then the voltages are other than these.';

export const solveNetworkSheet: BookSheet<NetworkInput, NetworkCase> = {
  title: 'Voltages and currents of a small network',
  needs: ['supplies', 'sections', 'taps'],
  // biome-ignore format: one figure a row
  givens: [
    ['V0_#', 'V', '@: voltage of the supply', 'supplies[].voltage', { each: 'supply' }],
    tapGivens('0', 'supply'),
    { ...twentyGiven, when: 'by length' },
    sectionGivens('x', 'ring'),
    sectionGivens('', 'inward'),
    tapGivens('', 'inward'),
    givens([
      ['W_#', 'V', '@: voltage at its end, of the last pass', 'found pass by pass', { source: 'row', each: 'inward', when: 'carried' }],
    ['q', '1', 'share of all loads that is carried, found by halving: with more, the passes lead nowhere', 'found by halving', { when: 'not carried' }],
    ], { found: true }),
  ],
  // biome-ignore format: one figure a row
  steps: [
    ['P_all', 'W', '[P_#]', 'power that the taps of constant power ask for', { when: 'too much power' }],
    ['P_most', 'W', 'q * P_all', 'the most of it that the network carries, all loads cut alike', { latex: 'P_{\\max}', source: 'network-newton', when: 'too much power' }],
    ['I_all', 'A', '[J_#]', 'current that the taps of constant current ask for', { when: 'too much current' }],
    ['I_most', 'A', 'q * I_all', 'the most of it that the network carries, all loads cut alike', { latex: 'I_{\\max}', when: 'too much current' }],
    sectionSteps('x', 'ring'),
    ['Ix_#', 'A', '(<a> - <b>) / Rx_#', '@: current of this section, which closes a ring: by its two voltages', { general: { formula: '(voltage at its start - voltage at its end) / Rx_k', latex: '\\frac{V_{\\mathrm{start}} - V_{\\mathrm{end}}}{R_{x,k}}'}, each: 'ring' }],
    sectionSteps('', 'inward'),
    tapSteps('', 'inward'),
    ['Is_#', 'A', 'It_#<onwards>', '@: current of the section: that of the taps at its end and of all beyond', { general: { formula: 'It_k + all that goes on from there', latex: 'I_{t,k} + \\sum I_{\\mathrm{on}}' }, latex: 'I_{#}', core: '<current>', each: 'inward' }],
    steps([
    ['D_#', 'V', 'Is_# * R_#', '@: voltage lost along the section to this node'],
    ['V_#', 'V', '<from> - D_#', '@: voltage of this node, from the supply outwards', { general: { formula: 'voltage at its start - D_k', latex: 'V_{\\mathrm{start}} - D_{k}' }, core: 'nodes[@].voltage' }],
  ], { each: 'outward' }),
    tapSteps('0', 'supply'),
    steps([
    ['I0_#', 'A', 'It0_#<onwards>', '@: current of the supply', { when: 'taps at it' }],
    ['I0_#', 'A', '<leaving>', '@: current of the supply', { when: 'no taps at it' }],
  ], { general: LEAVING, each: 'supply', beware: BACKWARDS }),
    ['P_S', 'W', '[V0_# * I0_#]', 'power from all supplies', { core: 'supplyPower', when: 'carried by a tree' }],
    ['P_S', 'W', '[V0_# * I0_#]', 'power from all supplies', { when: 'carried by rings' }],
    ['P_loss', 'W', '[Is_#^2 * R_#]', 'heat in all sections', { core: 'lineLoss', when: 'branches, carried by a tree' }],
    ['V_low', 'V', 'min([V_#,], [V0_#,])', 'the lowest voltage of any node, at', { least: ['V_#', 'V0_#'], core: 'lowest.voltage', when: 'branches' }],
    ['V_low', 'V', 'min([V0_#,])', 'the lowest voltage of any node: there are supplies alone', { core: 'lowest.voltage', when: 'supplies alone' }],
  ],
  tables: [['Sections, from the supplies outwards, and the nodes at their ends', 'section', 'inward', 'outward']],
  assumptions: ['Direct current, steady state. Every section is a loop, out and back.'],
  validity: 'Trees, rings and lines fed from both ends, of at most 24 sections and 24 taps.',
  slips: [
    ['power-at-wrong-end', { 'It_#': 'P_# / V0_1' }, 'powers from one supply'],
    ['own-tap-only', { 'Is_#': 'It_#' }, 'currents in a tree'],
    // Section by section outwards, each with the power of its own tap at its end.
    ['own-tap-only', { 'Is_#': 'It_#', 'D_#': '2 * P_# * R_# / (<from> + sqrt(<from>^2 - 4 * P_# * R_#))' }, 'powers in a tree'],
    ['cold-resistance', { 'T_#': 'T_ref', 'Tx_#': 'T_ref' }, 'by length'],
    ['one-way-length', { 'L_#': 'L_# / 2', 'Lx_#': 'Lx_# / 2' }, 'by length'],
  ],
  guard: (input) => {
    networkProblem(input);
    requireSmall(input);
    return readNetwork(input);
  },
  read: readNetwork,
  find: findVoltages,
};
