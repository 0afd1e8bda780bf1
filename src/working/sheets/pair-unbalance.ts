/** How current divides between unlike conductors and unlike pairs. @module */
import { givens, step, steps } from '../rows.ts';
import { conductorsOf, type RunPair } from '../../cable/unbalance.ts';
import { type PairResistance, type PairUnbalanceInput, pairUnbalance } from '../../ethernet/pair-unbalance.ts';
import { appliedLimits } from '../../ethernet/power-at-pd.ts';
import type { ReadingRow, Sheet } from '../sheet.ts';
import { currentStep, discriminantStep } from './point-steps.ts';
import { conductorGivens } from './unbalance.ts';

export const pairUnbalanceSheet: Sheet<PairUnbalanceInput> = {
  title: 'How the current of a device divides between unlike pairs',
  core: 'pairUnbalance',
  keys: ['pairs', 'positive', 'psePairResistance', 'pdPairResistance', 'poeClass', 'pseType', 'pseVoltage', 'pdPower'],
  givens: [
    ...givens([
      ['V', 'V', 'voltage at the port', 'pseVoltage', { when: 'voltage stated' }],
      ['V', 'V', 'voltage at the port: the lowest of its type', 'pseVoltage', { source: 'ieee-802.3-pse-voltage', when: 'voltage of the type' }],
      ['P', 'W', 'power that the device draws', 'pdPower', { when: 'draw stated' }],
      ['P', 'W', 'power that the device draws: all that its class allows', 'pdPower', { source: 'ieee-802.3-class', when: 'draw of the class' }],
    ]),
    ...conductorGivens,
    ...givens([
      ['Rx_#', 'Ω', '@: what the port adds', 'psePairResistance', { latex: 'R_{\\mathrm{PSE},#}', when: 'port' }],
      ['Ry_#', 'Ω', '@: what the device adds', 'pdPairResistance', { latex: 'R_{\\mathrm{PD},#}', when: 'device' }],
    ], { each: 'pair' }),
  ],
  steps: [
    ...steps([
      ['Rp_#', 'Ω', 'Ra_# * Rb_# / (Ra_# + Rb_#)', '@: its two conductors in parallel', { each: 'pair' }],
    ]),
    ...(
      [
        ['neither', '', 'the same: nothing is added'],
        ['port alone', ' + Rx_#', 'with what the port adds, in series'],
        ['device alone', ' + Ry_#', 'with what the device adds, in series'],
        ['port and device', ' + Rx_# + Ry_#', 'with what port and device add, in series'],
      ] as const
    ).map(([when, added, words]) => (step('R_#', 'Ω' as const, `Rp_#${added}`, `@: ${words}`, { source: 'circuit-laws' as const, core: 'pairs[@].resistance', each: 'pair', when }))),
    ...steps([
      ['G_#', 'S', '1 / R_#', '@: conductance', { each: 'pair' }],
      ['Gr_#', 'S', '<sum>', '@: conductance of its pairs in parallel', { latex: 'G_{\\mathrm{rail},#}', each: 'rail' }],
      ['R', 'Ω', '1 / Gr_1 + 1 / Gr_2', 'resistance of the whole loop: out on one rail, back on the other', { core: 'resistance' }],
    ]),
    discriminantStep,
    { ...currentStep, core: 'operating.current' },
    ...steps([
      ['V_PD', 'V', '(V + sqrt(D)) / 2', 'voltage at the device', { source: 'constant-power', core: 'operating.loadVoltage' }],
      ['s_#', '1', 'G_# / <rail>', '@: share of the current of its rail, in the ratio of the conductances', { general: { formula: 'G_k / Gr', latex: '\\frac{G_{k}}{G_{\\mathrm{rail}}}' }, core: 'pairs[@].share', each: 'flow' }],
      ['I_#', 'A', 'I * s_#', '@: current', { core: 'pairs[@].current', each: 'flow' }],
      ['Ia_#', 'A', 'I_# * Rb_# / (Ra_# + Rb_#)', '@: current of its first conductor, the more the larger the other is', { core: 'pairs[@].conductorCurrents[0]', each: 'flow' }],
      ['Ib_#', 'A', 'I_# * Ra_# / (Ra_# + Rb_#)', '@: current of its second conductor', { core: 'pairs[@].conductorCurrents[1]', each: 'flow' }],
      ['B_#', 'A', 'abs(Ia_# - Ib_#) / 2', '@: bias, half of the difference of the two, as its transformer sees it', { each: 'flow' }],
      ['H_#', 'W', 'I_#^2 * Rp_#', '@: heat in the cable', { core: 'pairs[@].cableHeat', each: 'flow' }],
      ['B_most', 'A', 'max([B_#,])', 'largest bias current of a pair: that of', { least: ['B_#'], latex: 'B_{\\max}', core: 'largestBiasCurrent' }],
      ['I_wire', 'A', 'max([Ia_#,], [Ib_#,])', 'largest current of a conductor', { core: 'largestConductorCurrent' }],
      ['I_pair', 'A', 'max([I_#,])', 'largest current of a pair: that of', { least: ['I_#'], core: 'largestPairCurrent' }],
    ]),
  ],
  tables: [
    { title: 'The resistance of each pair', row: 'pair', lists: ['pair'] },
    { title: 'The current of each pair, and of its two conductors', row: 'pair', lists: ['flow'] },
  ],
  assumptions: [
    'Direct current, steady state; one device that holds its power constant.',
    'All positive pairs meet at one rail of the port and of the device, all negative pairs at the other.',
  ],
  validity: 'IEEE 802.3 classes 0 to 8, single-signature; diodes are not modelled. How unlike pairs may be is another sheet, unbalance.',
  cautions: [
    'What a conductor may carry, in its bundle and in its room, is for its rating and for local code and licensed practice to say.',
  ],
  slips: [
    { slip: 'series-for-parallel', steps: { 'Rp_#': 'Ra_# + Rb_#' } },
    { slip: 'even-division', when: 'two pairs a rail', steps: { 's_#': '1 / 2' } },
    { slip: 'even-division', steps: { 'Ia_#': 'I_# / 2', 'Ib_#': 'I_# / 2' } },
    { slip: 'direct-ratio', steps: { 'Ia_#': 'I_# * Ra_# / (Ra_# + Rb_#)', 'Ib_#': 'I_# * Rb_# / (Ra_# + Rb_#)' } },
    { slip: 'power-at-wrong-end', steps: { I: 'P / V', V_PD: 'V - P / V * R' } },
    { slip: 'drop-for-voltage', steps: { V_PD: 'I * R' } },
    { slip: 'unstable-root', steps: { I: '2 * P / (V - sqrt(D))', V_PD: '(V - sqrt(D)) / 2' } },
  ],
  guard: pairUnbalance,
  read: (input) => {
    const { psePairResistance: port, pdPairResistance: device } = input;
    const conductors = conductorsOf(input.pairs);
    const limits = appliedLimits({ ...input, pairs: conductors.length === 4 ? 4 : 2 });
    const { pseVoltage: V = limits.pseVoltageMin, pdPower: P = limits.pdPower } = input;
    // As in the plug: the first pair of each pairset.
    const { positive = conductors.flatMap(({ pair }, index) => (index % 2 === 0 ? [pair] : [])) } = input;
    const added = port === undefined ? (device === undefined ? 'neither' : 'device alone') : 'port alone';
    const rows = conductors.map(
      ({ pair, resistances: [first, second] }, index): ReadingRow => ({
        label: `pair ${pair} (${positive.includes(pair) ? 'positive' : 'negative'})`,
        values: {
          'Ra_#': first,
          'Rb_#': second,
          ...(port === undefined ? {} : { 'Rx_#': ofPair(port, pair) }),
          ...(device === undefined ? {} : { 'Ry_#': ofPair(device, pair) }),
        },
        links: { rail: positive.includes(pair) ? 'Gr_1' : 'Gr_2', own: `G_${index + 1}` },
      }),
    );
    const rail = (label: string, link: string): ReadingRow => {
      const own = rows.filter(({ links }) => links?.['rail'] === link).map(({ links }) => links?.['own']);
      return { label, values: {}, links: { sum: own.join(' + ') } };
    };
    return {
      values: { V, P },
      cases: [
        input.pseVoltage === undefined ? 'voltage of the type' : 'voltage stated',
        input.pdPower === undefined ? 'draw of the class' : 'draw stated',
        ...(port === undefined ? [] : ['port']),
        ...(device === undefined ? [] : ['device']),
        port !== undefined && device !== undefined ? 'port and device' : added,
        ...(conductors.length === 4 ? ['two pairs a rail'] : []),
      ],
      rows: { pair: rows, rail: [rail('positive rail', 'Gr_1'), rail('negative rail', 'Gr_2')], flow: rows },
      assumptions: [
        ...(port === undefined || device === undefined
          ? ['What port and device add evens the currents out; what is not stated is left out.']
          : []),
        ...(input.positive === undefined ? [`Positive are pairs ${positive.join(' and ')}.`] : []),
        ...(input.pseType === undefined ? [`The port is of Type ${limits.type}, the weakest that serves class ${input.poeClass}.`] : []),
      ],
    };
  },
};

/** What a port or a device adds to a pair. [Ω] */
function ofPair(added: PairResistance, pair: RunPair): number {
  return (typeof added === 'object' ? added[pair] : added) ?? 0;
}

