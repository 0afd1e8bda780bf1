/** How current divides between unlike conductors and unlike pairs. @module */
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
    { symbol: 'V', meaning: 'voltage at the port', unit: 'V', latex: 'V', core: 'pseVoltage', when: 'voltage stated' },
    {
      symbol: 'V',
      meaning: 'voltage at the port: the lowest of its type',
      unit: 'V',
      latex: 'V',
      core: 'pseVoltage',
      source: 'ieee-802.3-pse-voltage',
      when: 'voltage of the type',
    },
    { symbol: 'P', meaning: 'power that the device draws', unit: 'W', latex: 'P', core: 'pdPower', when: 'draw stated' },
    {
      symbol: 'P',
      meaning: 'power that the device draws: all that its class allows',
      unit: 'W',
      latex: 'P',
      core: 'pdPower',
      source: 'ieee-802.3-class',
      when: 'draw of the class',
    },
    ...conductorGivens,
    {
      symbol: 'Rx_#',
      meaning: '@: what the port adds',
      unit: 'Ω',
      latex: 'R_{\\mathrm{PSE},#}',
      core: 'psePairResistance',
      each: 'pair',
      when: 'port',
    },
    {
      symbol: 'Ry_#',
      meaning: '@: what the device adds',
      unit: 'Ω',
      latex: 'R_{\\mathrm{PD},#}',
      core: 'pdPairResistance',
      each: 'pair',
      when: 'device',
    },
  ],
  steps: [
    {
      symbol: 'Rp_#',
      meaning: '@: its two conductors in parallel',
      formula: 'Ra_# * Rb_# / (Ra_# + Rb_#)',
      unit: 'Ω',
      latex: 'R_{p,#}',
      source: 'circuit-laws',
      each: 'pair',
    },
    ...(
      [
        ['neither', '', 'the same: nothing is added'],
        ['port alone', ' + Rx_#', 'with what the port adds, in series'],
        ['device alone', ' + Ry_#', 'with what the device adds, in series'],
        ['port and device', ' + Rx_# + Ry_#', 'with what port and device add, in series'],
      ] as const
    ).map(([when, added, words]) => ({
      symbol: 'R_#',
      meaning: `@: ${words}`,
      formula: `Rp_#${added}`,
      unit: 'Ω' as const,
      latex: 'R_{#}',
      source: 'circuit-laws' as const,
      core: 'pairs[@].resistance',
      each: 'pair',
      when,
    })),
    {
      symbol: 'G_#',
      meaning: '@: conductance',
      formula: '1 / R_#',
      unit: 'S',
      latex: 'G_{#}',
      source: 'circuit-laws',
      each: 'pair',
    },
    {
      symbol: 'Gr_#',
      meaning: '@: conductance of its pairs in parallel',
      formula: '<sum>',
      unit: 'S',
      latex: 'G_{\\mathrm{rail},#}',
      source: 'circuit-laws',
      each: 'rail',
    },
    {
      symbol: 'R',
      meaning: 'resistance of the whole loop: out on one rail, back on the other',
      formula: '1 / Gr_1 + 1 / Gr_2',
      unit: 'Ω',
      latex: 'R',
      source: 'circuit-laws',
      core: 'resistance',
    },
    discriminantStep,
    { ...currentStep, core: 'operating.current' },
    {
      symbol: 'V_PD',
      meaning: 'voltage at the device',
      formula: '(V + sqrt(D)) / 2',
      unit: 'V',
      latex: 'V_{\\mathrm{PD}}',
      source: 'constant-power',
      core: 'operating.loadVoltage',
    },
    {
      symbol: 's_#',
      meaning: '@: share of the current of its rail, in the ratio of the conductances',
      formula: 'G_# / <rail>',
      general: { formula: 'G_k / Gr', latex: '\\frac{G_{k}}{G_{\\mathrm{rail}}}' },
      unit: '1',
      latex: 's_{#}',
      source: 'circuit-laws',
      core: 'pairs[@].share',
      each: 'flow',
    },
    {
      symbol: 'I_#',
      meaning: '@: current',
      formula: 'I * s_#',
      unit: 'A',
      latex: 'I_{#}',
      source: 'circuit-laws',
      core: 'pairs[@].current',
      each: 'flow',
    },
    {
      symbol: 'Ia_#',
      meaning: '@: current of its first conductor, the more the larger the other is',
      formula: 'I_# * Rb_# / (Ra_# + Rb_#)',
      unit: 'A',
      latex: 'I_{a,#}',
      source: 'circuit-laws',
      core: 'pairs[@].conductorCurrents[0]',
      each: 'flow',
    },
    {
      symbol: 'Ib_#',
      meaning: '@: current of its second conductor',
      formula: 'I_# * Ra_# / (Ra_# + Rb_#)',
      unit: 'A',
      latex: 'I_{b,#}',
      source: 'circuit-laws',
      core: 'pairs[@].conductorCurrents[1]',
      each: 'flow',
    },
    {
      symbol: 'B_#',
      meaning: '@: bias, half of the difference of the two, as its transformer sees it',
      formula: 'abs(Ia_# - Ib_#) / 2',
      unit: 'A',
      latex: 'B_{#}',
      source: 'circuit-laws',
      each: 'flow',
    },
    {
      symbol: 'H_#',
      meaning: '@: heat in the cable',
      formula: 'I_#^2 * Rp_#',
      unit: 'W',
      latex: 'H_{#}',
      source: 'circuit-laws',
      core: 'pairs[@].cableHeat',
      each: 'flow',
    },
    {
      symbol: 'B_most',
      meaning: 'largest bias current of a pair: that of',
      least: ['B_#'],
      formula: 'max([B_#,])',
      unit: 'A',
      latex: 'B_{\\max}',
      source: 'circuit-laws',
      core: 'largestBiasCurrent',
    },
    {
      symbol: 'I_wire',
      meaning: 'largest current of a conductor',
      formula: 'max([Ia_#,], [Ib_#,])',
      unit: 'A',
      latex: 'I_{\\mathrm{wire}}',
      source: 'circuit-laws',
      core: 'largestConductorCurrent',
    },
    {
      symbol: 'I_pair',
      meaning: 'largest current of a pair: that of',
      least: ['I_#'],
      formula: 'max([I_#,])',
      unit: 'A',
      latex: 'I_{\\mathrm{pair}}',
      source: 'circuit-laws',
      core: 'largestPairCurrent',
    },
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
