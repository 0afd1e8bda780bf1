/** Unlike conductors and pairs: how unlike they are, and how the current of a device divides between them. @module */
import { type RunPair, type UnbalanceInput, type UnbalanceLimits, unbalance } from '../../cable/index.ts';
import { conductorsOf, UNBALANCE_LIMIT_FIELDS } from '../../cable/unbalance.ts';
import { type PairResistance, type PairUnbalanceInput, pairUnbalance } from '../../ethernet/index.ts';
import { appliedLimits } from '../../ethernet/power-at-pd.ts';
import { type BookSheet, givens, steps } from '../engine/rows.ts';
import type { ReadingRow, Steps } from '../engine/sheet.ts';
import { quadraticSteps, reported } from './load.ts';
import { type DrawCase, drawCases, typeAssumption } from './powered.ts';

/** The two conductors of each pair. */
// biome-ignore format: one figure a row
const conductorGivens = givens([
  ['Ra_#', 'Ω', '@: first conductor, end to end', 'pairs, the first of each'],
  ['Rb_#', 'Ω', '@: second conductor, end to end', 'pairs, the second of each'],
], { each: 'pair' });
// biome-ignore format: one figure a row
const parallelSteps = (core: { readonly core?: string }): Steps<never> => steps([
  ['Rp_#', 'Ω', 'Ra_# * Rb_# / (Ra_# + Rb_#)', '@: its two conductors in parallel', { ...core, each: 'pair' }],
]);

/** The difference against what is permitted: the same within one pair and between two. */
const marginSteps = (each: 'pair' | 'two', core: 'pairs' | 'pairToPair', sub: 'p' | 't'): Steps<never> =>
  // biome-ignore format: one figure a row
  steps([
    ['u_#', '1', 'd_# / S_#', '@: unbalance, the difference as a fraction of the sum', { core: `${core}[@].fraction` }],
    [`D${sub}_#`, 'Ω', `max(k_${sub} * S_#, F_${sub})`, '@: largest difference permitted, the fraction of the sum or the fixed figure, whichever is more', { core: `${core}[@].limit` }],
    ['M_#', 'Ω', `D${sub}_# - d_#`, '@: margin, under 0 where the difference is too large', { core: `${core}[@].margin` }],
  ], { source: 'ieee-802.3-unbalance', each });

/** What is permitted, by its symbol. */
const LIMITS = { k_p: 'pairFraction', F_p: 'pairFloor', k_t: 'pairToPairFraction', F_t: 'pairToPairFloor' } as const satisfies Record<
  string,
  keyof UnbalanceLimits
>;

export const unbalanceSheet: BookSheet<UnbalanceInput, never> = {
  title: 'How unlike the conductors and the pairs of a run are',
  needs: ['pairs'],
  keys: Object.values(LIMITS),
  // From memory where the caller states none.
  // biome-ignore format: one figure a row
  givens: [
    givens([
    ['k_p', '1', 'difference permitted within a pair, as a fraction of the sum', 'limits.pairFraction', { latex: 'k_{\\mathrm{p}}', value: UNBALANCE_LIMIT_FIELDS.pairFraction.default }],
    ['F_p', 'Ω', 'difference permitted within a pair, whatever the fraction says', 'limits.pairFloor', { latex: 'F_{\\mathrm{p}}', value: UNBALANCE_LIMIT_FIELDS.pairFloor.default }],
    ['k_t', '1', 'difference permitted between two pairs, as a fraction of the sum', 'limits.pairToPairFraction', { latex: 'k_{\\mathrm{t}}', value: UNBALANCE_LIMIT_FIELDS.pairToPairFraction.default }],
    ['F_t', 'Ω', 'difference permitted between two pairs, whatever the fraction says', 'limits.pairToPairFloor', { latex: 'F_{\\mathrm{t}}', value: UNBALANCE_LIMIT_FIELDS.pairToPairFloor.default }],
  ], { source: 'row' }),
    conductorGivens,
  ],
  // biome-ignore format: one figure a row
  steps: [
    steps([
    ['d_#', 'Ω', 'abs(Ra_# - Rb_#)', '@: difference of its two conductors', { source: 'ieee-802.3-unbalance', core: 'pairs[@].difference' }],
    ['S_#', 'Ω', 'Ra_# + Rb_#', '@: sum of its two conductors'],
  ], { each: 'pair' }),
    marginSteps('pair', 'pairs', 'p'),
    parallelSteps({ core: 'pairs[@].parallel' }),
    ['d_#', 'Ω', 'abs(<one> - <other>)', '@: difference of the two pairs, each in parallel', { general: { formula: 'abs(Rp_i - Rp_j)', latex: '\\operatorname{abs}\\left(R_{p,i} - R_{p,j}\\right)' }, source: 'ieee-802.3-unbalance', core: 'pairToPair[@].difference', each: 'two' }],
    ['S_#', 'Ω', '<one> + <other>', '@: sum of the two pairs, each in parallel', { general: { formula: 'Rp_i + Rp_j', latex: 'R_{p,i} + R_{p,j}' }, each: 'two' }],
    marginSteps('two', 'pairToPair', 't'),
    ['M', 'Ω', 'min([M_#,])', 'the least margin of all: that of', { least: ['M_#'], source: 'ieee-802.3-unbalance', core: 'leastMargin' }],
  ],
  tables: [
    ['Within each pair', 'pair', 'pair'],
    ['Two pairs against each other', 'two pairs', 'two'],
  ],
  assumptions: [
    'Direct current. The conductors of the run alone, without what port and device add.',
    'Pairs are numbered in the order of the table; 12 is the first against the second.',
  ],
  validity:
    'All conductors at one temperature. A margin under 0: the pair is more unlike than is permitted, which does not by itself stop the power.',
  slips: [
    ['series-for-parallel', { 'Rp_#': 'Ra_# + Rb_#' }],
    ['unbalance-of-one', { 'u_#': 'd_# / ((S_# - d_#) / 2)' }],
    ['unbalance-of-one', { 'u_#': 'd_# / ((S_# + d_#) / 2)' }],
    ['difference-for-margin', { 'M_#': 'd_#' }],
    ['lesser-of-two-limits', { 'Dp_#': 'min(k_p * S_#, F_p)', 'Dt_#': 'min(k_t * S_#, F_t)' }],
  ],
  guard: unbalance,
  read: ({ pairs, limits = {} }) => {
    const rows = conductorsOf(pairs).map(({ pair, resistances: [first, second] }) => ({
      label: `pair ${pair}`,
      values: { 'Ra_#': first, 'Rb_#': second },
    }));
    const sources = Object.entries(LIMITS).map(([symbol, name]) => [
      symbol,
      limits[name] === undefined ? 'ieee-802.3-unbalance' : undefined,
    ]);
    return { sources: Object.fromEntries(sources), rows: { pair: rows, two: twoByTwo(rows) } };
  },
};

/** Every pair against every later one; the second and the fourth are number 24. */
function twoByTwo(pairs: readonly ReadingRow<never>[]): ReadingRow<never>[] {
  const couples = pairs.flatMap(({ label }, first) =>
    pairs.slice(first + 1).map((other, place) => ({ label, first, other, second: first + place + 1 })),
  );
  return couples.map(({ label, first, other, second }, place) => ({
    label: `${label.replace('pair', 'pairs')} and ${other.label.replace('pair ', '')}`,
    number: 10 * (first + 1) + second + 1,
    core: String(place),
    links: { one: `Rp_${first + 1}`, other: `Rp_${second + 1}` },
  }));
}

type DivisionCase = DrawCase | 'port' | 'device' | 'neither' | 'port alone' | 'device alone' | 'port and device' | 'two pairs a rail';

export const pairUnbalanceSheet: BookSheet<PairUnbalanceInput, DivisionCase> = {
  title: 'How the current of a device divides between unlike pairs',
  needs: ['poeClass', 'pairs'],
  keys: ['positive', 'psePairResistance', 'pdPairResistance', 'pseType', 'pseVoltage', 'pdPower'],
  // biome-ignore format: one figure a row
  givens: [
    ['V', 'V', 'voltage at the port', 'pseVoltage', { when: 'voltage stated' }],
    ['V', 'V', 'voltage at the port: the lowest of its type', 'pseVoltage', { source: 'ieee-802.3-pse-voltage', when: 'voltage of the type' }],
    ['P', 'W', 'power that the device draws', 'pdPower', { when: 'draw stated' }],
    ['P', 'W', 'power that the device draws: all that its class allows', 'pdPower', { source: 'ieee-802.3-class', when: 'draw of the class' }],
    conductorGivens,
    givens([
    ['Rx_#', 'Ω', '@: what the port adds', 'psePairResistance', { latex: 'R_{\\mathrm{PSE},#}', when: 'port' }],
    ['Ry_#', 'Ω', '@: what the device adds', 'pdPairResistance', { latex: 'R_{\\mathrm{PD},#}', when: 'device' }],
  ], { each: 'pair' }),
  ],
  // biome-ignore format: one figure a row
  steps: [
    parallelSteps({}),
    steps([
    ['R_#', 'Ω', 'Rp_#', '@: the same: nothing is added', { when: 'neither' }],
    ['R_#', 'Ω', 'Rp_# + Rx_#', '@: with what the port adds, in series', { when: 'port alone' }],
    ['R_#', 'Ω', 'Rp_# + Ry_#', '@: with what the device adds, in series', { when: 'device alone' }],
    ['R_#', 'Ω', 'Rp_# + Rx_# + Ry_#', '@: with what port and device add, in series', { when: 'port and device' }],
  ], { core: 'pairs[@].resistance', each: 'pair' }),
    ['G_#', 'S', '1 / R_#', '@: conductance', { each: 'pair' }],
    ['Gr_#', 'S', '<sum>', '@: conductance of its pairs in parallel', { latex: 'G_{\\mathrm{rail},#}', each: 'rail' }],
    ['R', 'Ω', '1 / Gr_1 + 1 / Gr_2', 'resistance of the whole loop: out on one rail, back on the other', { core: 'resistance' }],
    reported(quadraticSteps, 'operating.current'),
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
  ],
  tables: [
    ['The resistance of each pair', 'pair', 'pair'],
    ['The current of each pair, and of its two conductors', 'pair', 'flow'],
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
    ['series-for-parallel', { 'Rp_#': 'Ra_# + Rb_#' }],
    ['even-division', { 's_#': '1 / 2' }, 'two pairs a rail'],
    ['even-division', { 'Ia_#': 'I_# / 2', 'Ib_#': 'I_# / 2' }],
    ['direct-ratio', { 'Ia_#': 'I_# * Ra_# / (Ra_# + Rb_#)', 'Ib_#': 'I_# * Rb_# / (Ra_# + Rb_#)' }],
    ['power-at-wrong-end', { I: 'P / V', V_PD: 'V - P / V * R' }],
    ['drop-for-voltage', { V_PD: 'I * R' }],
    ['unstable-root', { I: '2 * P / (V - sqrt(D))', V_PD: '(V - sqrt(D)) / 2' }],
  ],
  guard: pairUnbalance,
  read: (input) => {
    const { psePairResistance: port, pdPairResistance: device } = input;
    const conductors = conductorsOf(input.pairs);
    const limits = appliedLimits({ ...input, pairs: conductors.length === 4 ? 4 : 2 });
    // As in the plug: the first pair of each pairset.
    const { positive = conductors.flatMap(({ pair }, index) => (index % 2 === 0 ? [pair] : [])) } = input;
    const rows = conductors.map(({ pair, resistances: [first, second] }, index) => ({
      label: `pair ${pair} (${positive.includes(pair) ? 'positive' : 'negative'})`,
      values: { 'Ra_#': first, 'Rb_#': second, 'Rx_#': addedTo(pair, port), 'Ry_#': addedTo(pair, device) },
      links: { rail: positive.includes(pair) ? 'Gr_1' : 'Gr_2', own: `G_${index + 1}` },
    }));
    const rails = Object.entries({ 'positive rail': 'Gr_1', 'negative rail': 'Gr_2' }).map(([label, rail]) => {
      const own = rows.filter(({ links }) => links.rail === rail).map(({ links }) => links.own);
      return { label, links: { sum: own.join(' + ') } };
    });
    return {
      values: { V: input.pseVoltage ?? limits.pseVoltageMin, P: input.pdPower ?? limits.pdPower },
      cases: [
        ...drawCases(input),
        port !== undefined && 'port',
        device !== undefined && 'device',
        port === undefined ? (device === undefined ? 'neither' : 'device alone') : device === undefined ? 'port alone' : 'port and device',
        conductors.length === 4 && 'two pairs a rail',
      ],
      rows: { pair: rows, rail: rails, flow: rows },
      assumptions: [
        (port === undefined || device === undefined) && 'What port and device add evens the currents out; what is not stated is left out.',
        input.positive === undefined && `Positive are pairs ${positive.join(' and ')}.`,
        typeAssumption(input, limits),
      ],
    };
  },
};

/** What a port or a device adds to a pair. [Ω] */
function addedTo(pair: RunPair, added: PairResistance | undefined): number {
  return (typeof added === 'object' ? added[pair] : added) ?? 0;
}
