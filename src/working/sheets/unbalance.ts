/** How unlike the conductors of each pair are, and the pairs of a run among each other. @module */
import { given, givens, steps } from '../rows.ts';
import { conductorsOf, type UnbalanceInput, type UnbalanceLimits, unbalance } from '../../cable/unbalance.ts';
import type { ReadingRow, Sheet, SheetGiven, SheetStep } from '../sheet.ts';

const SOURCE = 'ieee-802.3-unbalance';

/** Keys of the command for what is permitted. */
const limitKeys: readonly (keyof UnbalanceLimits)[] = ['pairFraction', 'pairFloor', 'pairToPairFraction', 'pairToPairFloor'];
/** Of the standard, where the caller states none (memory). */
const LIMITS: Readonly<Record<keyof UnbalanceLimits, number>> = {
  pairFraction: 0.03,
  pairFloor: 0.2,
  pairToPairFraction: 0.07,
  pairToPairFloor: 0.1,
};

/** What is permitted, and where it comes from. */
const permitted = (name: keyof UnbalanceLimits, symbol: string, meaning: string): SheetGiven[] => {
  const [letter = '', of = ''] = symbol.split('_');
  const base: SheetGiven = given(symbol, letter === 'k' ? '1' : 'Ω', meaning, `limits.${name}`, { latex: `${letter}_{\\mathrm{${of}}}` });
  return [
    { ...base, when: `${name} stated` },
    { ...base, source: SOURCE, when: `${name} of the standard` },
  ];
};

/** The two conductors of each pair. */
export const conductorGivens: readonly SheetGiven[] = givens([
  ['Ra_#', 'Ω', '@: first conductor, end to end', 'pairs, the first of each'],
  ['Rb_#', 'Ω', '@: second conductor, end to end', 'pairs, the second of each'],
], { each: 'pair' });

/** The difference against what is permitted: the same for one pair and for two. */
const held = (each: 'pair' | 'two', core: 'pairs' | 'pairToPair', of: 'p' | 't'): SheetStep[] => steps([
  ['u_#', '1', 'd_# / S_#', '@: unbalance, the difference as a fraction of the sum', { core: `${core}[@].fraction` }],
  [`D${of}_#`, 'Ω', `max(k_${of} * S_#, F_${of})`, '@: largest difference permitted, the fraction of the sum or the fixed figure, whichever is more', { latex: `D_{${of},#}`, core: `${core}[@].limit` }],
  ['M_#', 'Ω', `D${of}_# - d_#`, '@: margin, under 0 where the difference is too large', { core: `${core}[@].margin` }],
], { source: SOURCE, each });

export const unbalanceSheet: Sheet<UnbalanceInput> = {
  title: 'How unlike the conductors and the pairs of a run are',
  core: 'unbalance',
  keys: ['pairs', ...limitKeys],
  givens: [
    ...permitted('pairFraction', 'k_p', 'difference permitted within a pair, as a fraction of the sum'),
    ...permitted('pairFloor', 'F_p', 'difference permitted within a pair, whatever the fraction says'),
    ...permitted('pairToPairFraction', 'k_t', 'difference permitted between two pairs, as a fraction of the sum'),
    ...permitted('pairToPairFloor', 'F_t', 'difference permitted between two pairs, whatever the fraction says'),
    ...conductorGivens,
  ],
  steps: [
    ...steps([
      ['d_#', 'Ω', 'abs(Ra_# - Rb_#)', '@: difference of its two conductors', { source: SOURCE, core: 'pairs[@].difference' }],
      ['S_#', 'Ω', 'Ra_# + Rb_#', '@: sum of its two conductors'],
    ], { each: 'pair' }),
    ...held('pair', 'pairs', 'p'),
    ...steps([
      ['Rp_#', 'Ω', 'Ra_# * Rb_# / (Ra_# + Rb_#)', '@: its two conductors in parallel', { core: 'pairs[@].parallel', each: 'pair' }],
      ['d_#', 'Ω', 'abs(<one> - <other>)', '@: difference of the two pairs, each in parallel', { general: { formula: 'abs(Rp_i - Rp_j)', latex: '\\operatorname{abs}\\left(R_{p,i} - R_{p,j}\\right)' }, source: SOURCE, core: 'pairToPair[@].difference', each: 'two' }],
      ['S_#', 'Ω', '<one> + <other>', '@: sum of the two pairs, each in parallel', { general: { formula: 'Rp_i + Rp_j', latex: 'R_{p,i} + R_{p,j}' }, each: 'two' }],
    ]),
    ...held('two', 'pairToPair', 't'),
    ...steps([
      ['M', 'Ω', 'min([M_#,])', 'the least margin of all: that of', { least: ['M_#'], source: SOURCE, core: 'leastMargin' }],
    ]),
  ],
  tables: [
    { title: 'Within each pair', row: 'pair', lists: ['pair'] },
    { title: 'Two pairs against each other', row: 'two pairs', lists: ['two'] },
  ],
  assumptions: [
    'Direct current. The conductors of the run alone, without what port and device add.',
    'Pairs are numbered in the order of the table; 12 is the first against the second.',
  ],
  validity:
    'All conductors at one temperature. A margin under 0: the pair is more unlike than is permitted, which does not by itself stop the power.',
  cautions: [],
  slips: [
    { slip: 'series-for-parallel', steps: { 'Rp_#': 'Ra_# + Rb_#' } },
    { slip: 'unbalance-of-one', steps: { 'u_#': 'd_# / ((S_# - d_#) / 2)' } },
    { slip: 'unbalance-of-one', steps: { 'u_#': 'd_# / ((S_# + d_#) / 2)' } },
    { slip: 'difference-for-margin', steps: { 'M_#': 'd_#' } },
    { slip: 'lesser-of-two-limits', steps: { 'Dp_#': 'min(k_p * S_#, F_p)', 'Dt_#': 'min(k_t * S_#, F_t)' } },
  ],
  guard: unbalance,
  read: ({ pairs, limits = {} }) => {
    const of = (name: keyof UnbalanceLimits): number => limits[name] ?? LIMITS[name];
    const rows = conductorsOf(pairs).map(
      ({ pair, resistances: [first, second] }): ReadingRow => ({
        label: `pair ${pair}`,
        values: { 'Ra_#': first, 'Rb_#': second },
      }),
    );
    return {
      values: { k_p: of('pairFraction'), F_p: of('pairFloor'), k_t: of('pairToPairFraction'), F_t: of('pairToPairFloor') },
      cases: limitKeys.map((name) => `${name} ${limits[name] === undefined ? 'of the standard' : 'stated'}`),
      rows: { pair: rows, two: twoByTwo(rows) },
    };
  },
};

/** Every pair against every later one; the second and the fourth are number 24. */
function twoByTwo(pairs: readonly ReadingRow[]): ReadingRow[] {
  const found: ReadingRow[] = [];
  for (const [first, { label }] of pairs.entries()) {
    for (const [second, other] of pairs.entries()) {
      if (second <= first) continue;
      found.push({
        label: `${label.replace('pair', 'pairs')} and ${other.label.replace('pair ', '')}`,
        values: {},
        number: 10 * (first + 1) + second + 1,
        core: String(found.length),
        links: { one: `Rp_${first + 1}`, other: `Rp_${second + 1}` },
      });
    }
  }
  return found;
}

