/** The rules of a cabling standard as limits of an installed length. @module */

import { cordLoss } from '../../cable/cord-loss.ts';
import { deratingRules } from '../../cable/derated-length.ts';
import type { Cable, Segment } from '../../cable/index.ts';
import { INSERTION_LOSS } from '../../cable/insertion-loss-table.ts';
import { LENGTH_DERATING } from '../../cable/length-derating-table.ts';
import type { PoeClass } from '../../ethernet/index.ts';
import {
  CABLE_CATEGORY,
  CABLE_TEMPERATURE,
  CHANNEL_LENGTH,
  CHANNEL_LOOP,
  CHANNEL_RESISTANCE,
  CONDUCTOR_GAUGE,
  CONNECTIONS,
  CORD_LENGTH,
  DERATED_LENGTH,
  INSERTION_LOSS_LENGTH,
  PERMANENT_LINK_LENGTH,
  PERMANENT_LINK_LOOP,
} from '../../limits/all.ts';
import type { Limit, LimitName } from '../../limits/index.ts';
import { closestCord, closestGauge, deratedRule, type Held, weakCategory } from '../../plan/cabling-limits.ts';
import type { CablingRules } from '../../plan/cabling-rules.ts';
import { hottestOf, isScreened } from '../../plan/signal-length.ts';
import { givens, steps } from '../engine/rows.ts';
import type { FigureSources, Figures, Givens, ReadingRow, Some, Steps } from '../engine/sheet.ts';
import { TWENTY } from './conductors.ts';
import { type FixedCase, type FixedRow, type LimitCase, limitRow, loopRow, poweredLoop } from './limits.ts';

/** How a rule in metres is met: by the length alone, less the cords as they are or by their loss, and where a metre counts for more. */
export type CablingCase =
  | LimitCase
  | 'stated in metres'
  | 'warm link'
  | 'cords as they are'
  | 'cords by their loss'
  | 'all of it'
  | 'less the cords'
  | 'counted'
  | 'not counted'
  // Of the run: its link is warm; signal is lost in warm cable or in cords; a cord is warm.
  | 'derated'
  | 'lossy cable'
  | 'lossy cords'
  | 'warm cord'
  | 'cool cord';

/** What is known of the loss of signal of a cable: by how much it grows with temperature, up to where, and from there on. */
// biome-ignore format: one figure a row
export const lossGivens: Givens<CablingCase> = givens([
  ['s_a', '1/K', 'signal: how much more is lost for each kelvin above 20 °C', 'cable', { source: 'insertion-loss-temperature', when: 'lossy cable' }],
  ['T_s', '°C', 'signal: up to where it is so much', 'cable', { source: 'insertion-loss-temperature', when: 'lossy cable' }],
  ['s_b', '1/K', 'signal: how much more for each kelvin above that', 'cable', { source: 'insertion-loss-temperature', when: 'lossy cable' }],
  ['k_own', '1', 'signal: metres of installed cable that lose as much as one metre of it, both cool', 'cable', { source: 'row', when: 'lossy cable' }],
  ['k_least', '1', 'signal: the least that a metre of cord counts for', 'cabling', { source: 'row', when: 'lossy cords' }],
  ['L_cool', 'm', 'length of a cool permanent link', 'cabling', { source: 'tia-568-permanent-link', when: 'derated', value: 90 }],
  ['T_c', '°C', 'row of the table for warm cable under this temperature', 'temperature', { source: 'row', when: 'derated' }],
  ['L_c', 'm', 'its length', 'the table for warm cable', { source: 'row', when: 'derated' }],
  ['T_w', '°C', 'row of the table at or above it', 'temperature', { source: 'row', when: 'derated' }],
  ['L_w', 'm', 'its length', 'the table for warm cable', { source: 'row', when: 'derated' }],
]);

/** The rules in metres. */
// biome-ignore format: one figure a row
export const lengthGivens: Givens<CablingCase> = givens([
  ['a_#', 'm', '@: most length', 'cabling', { source: 'row', when: 'stated in metres' }],
], { each: 'limit' });

/** How much signal each cord loses. */
// biome-ignore format: one figure a row
export const cordLossGivens: Givens<CablingCase> = givens([
  ['ec_#', '1', 'cord #: how much more signal a metre of it loses than one of installed cable', 'cords[].cable', { latex: 'e_{c#}', source: 'row', when: 'lossy cords' }],
  ['sac_#', '1/K', 'cord #: how much more for each kelvin above 20 °C', 'cords[].cable', { latex: 's_{a,c#}', source: 'insertion-loss-temperature', when: 'lossy cords, warm cord' }],
  ['Tsc_#', '°C', 'cord #: up to where it is so much', 'cords[].cable', { latex: 'T_{s,c#}', source: 'insertion-loss-temperature', when: 'lossy cords, warm cord' }],
  ['sbc_#', '1/K', 'cord #: how much more for each kelvin above that', 'cords[].cable', { latex: 's_{b,c#}', source: 'insertion-loss-temperature', when: 'lossy cords, warm cord' }],
], { each: 'cord' });

/** What warm cable and cords lose, and the length that is left of a warm link. */
// biome-ignore format: one figure a row
export const lossSteps: Steps<CablingCase> = [...steps<CablingCase>([
  ['k_s', '1', '1 + s_a * max(min(T, T_s) - T_ref, 0) + s_b * max(T - T_s, 0)', 'signal that a metre of this cable loses, over what it loses at 20 °C', { when: 'lossy cable' }],
  ['L_t', 'm', 'L_c + (L_w - L_c) * (T - T_c) / (T_w - T_c)', 'length of a warm link by the table, on a straight line between its rows', { source: 'row', when: 'derated' }],
  ['L_p', 'm', 'L_cool / k_s', 'length of a warm link that loses as much as a cool one', { when: 'derated' }],
], { source: 'insertion-loss-temperature' }), ...steps<CablingCase>([
  ['kc_#', '1', 'max(1 + ec_#, k_least)', 'cord #: metres of cool installed cable that lose as much signal as one metre of it', { when: 'lossy cords, cool cord' }],
  ['kc_#', '1', 'max(1 + ec_#, k_least) * (1 + sac_# * max(min(Tc_#, Tsc_#) - T_ref, 0) + sbc_# * max(Tc_# - Tsc_#, 0))', 'cord #: metres of cool installed cable that lose as much signal as one metre of it', { when: 'lossy cords, warm cord' }],
], { latex: 'k_{c#}', source: 'tia-568-open-office', each: 'cord' })];

/** The length that each rule in metres allows. */
export function lengthSteps(says: string): Steps<CablingCase> {
  // biome-ignore format: one figure a row
  return [...steps<CablingCase>([
    ['a_#', 'm', 'min(L_t, L_p)', '@: the shorter of the two', { when: 'warm link' }],
    ['c_#', '1', 'k_own * k_s', '@: how much of the limit one metre of this cable uses up', { when: 'counted' }],
    ['b_#', 'm', '[Lc_#]', '@: length of the cords', { when: 'cords as they are' }],
    ['b_#', 'm', '[kc_# * Lc_#]', '@: what the cords use up of it', { when: 'cords by their loss' }],
  ], { source: 'row', each: 'limit' }), ...steps<CablingCase>([
    ['L_#', 'm', 'a_#', '@: the length it allows', { when: 'not counted, all of it' }],
    ['L_#', 'm', 'a_# - b_#', '@: the length it allows', { when: 'not counted, less the cords' }],
    ['L_#', 'm', 'a_# / c_#', '@: the length it allows', { when: 'counted, all of it' }],
    ['L_#', 'm', '(a_# - b_#) / c_#', '@: the length it allows', { when: 'counted, less the cords' }],
  ], { source: 'row', each: 'limit', no: { says, steps: [] } })];
}

/** What an installed cable is held to as a least. */
// biome-ignore format: one figure a row
export const categoryGivens: Givens<FixedCase> = givens([
  ['v_#', '1', '@: value here', 'the input'],
    ['w_#', '1', '@: least', 'poeClass', { source: 'row' }],
], { each: 'fixed', when: 'at least' });

/** And how far it is above it. */
export function categorySteps(says: string): Steps<FixedCase> {
  return steps<FixedCase>([
    [
      's_#',
      '1',
      'v_# - w_#',
      '@: what there is over the least',
      { source: 'row', each: 'fixed', when: 'at least', no: { says, steps: [] } },
    ],
  ]);
}

/** Every rule of a run: those that bound the length, those that are met or missed whatever it is, and what the cords lose. */
export interface Ruled {
  readonly limit: readonly ReadingRow<CablingCase>[];
  readonly fixed: readonly FixedRow[];
  readonly cases: Some<CablingCase>;
  readonly values: Figures;
  readonly sources: FigureSources;
  readonly cords: readonly Pick<ReadingRow<CablingCase>, 'values' | 'sources' | 'cases'>[];
}

export function cablingRows(rules: CablingRules, own: Segment, cords: readonly Segment[], connections: number, limits: PoeClass): Ruled {
  const { cable, temperature = TWENTY } = own;
  const hasCords = cords.length > 0;
  const derated = deratedRule({ installed: [own] }, rules);
  const isLossy = hasCords || derated !== undefined;
  // Cord cable that is installed for good is no less lossy for it.
  const { excess, source } = cordLoss(cable.gauge);
  const isCord = cable.use === 'cord';
  const isCounted = isLossy && (temperature > 20 || isCord);
  const { channelLength, permanentLinkLength, channelLoop, permanentLinkLoop, insertionLossLength } = rules;
  const [s_a, T_s, s_b] = lossOf(cable);
  const [T_c, L_c, T_w, L_w] = tableRows(temperature, isScreened(cable));
  const table = deratingRules(temperature > rules.temperature.limit ? rules.temperature.limit : temperature, isScreened(cable)).table
    .source;

  const metres = (
    name: Limit<LimitName>,
    rule: { readonly limit: number; readonly source: Held['source'] },
    cases: Some<CablingCase>,
  ): ReadingRow<CablingCase> =>
    limitRow(name, ['stated in metres', ...cases.filter((one) => one !== false && one !== undefined)], { 'a_#': rule.limit }, rule.source);
  const cordsTaken = (how: 'cords as they are' | 'cords by their loss'): Some<CablingCase> =>
    hasCords ? [how, 'less the cords'] : ['all of it'];
  const limit: ReadingRow<CablingCase>[] = [
    metres(CHANNEL_LENGTH, channelLength, ['not counted', ...cordsTaken('cords as they are')]),
    metres(PERMANENT_LINK_LENGTH, permanentLinkLength, ['not counted', 'all of it']),
    loopRow(CHANNEL_LOOP, 'pairLoop', ['stated in ohms', 'at 20 °C'], { 'X_#': channelLoop.limit }, channelLoop.source),
  ];
  if (permanentLinkLoop !== undefined) {
    const { limit: ohms, source: from } = permanentLinkLoop;
    limit.push(loopRow(PERMANENT_LINK_LOOP, 'pairLoop', ['stated in ohms', 'without cords'], { 'X_#': ohms }, from));
  }
  limit.push(loopRow(CHANNEL_RESISTANCE, poweredLoop(limits.pairs), ['stated in ohms'], { 'X_#': limits.channelResistance }));
  if (derated !== undefined) limit.push(limitRow(DERATED_LENGTH, ['warm link', 'not counted', 'all of it'], {}, derated.source));
  if (isLossy) {
    limit.push(
      metres(INSERTION_LOSS_LENGTH, insertionLossLength, [isCounted ? 'counted' : 'not counted', ...cordsTaken('cords by their loss')]),
    );
  }
  return {
    limit,
    fixed: missed(),
    cases: [derated !== undefined && 'derated', isCounted && 'lossy cable', isLossy && hasCords && 'lossy cords'],
    values: {
      s_a,
      T_s,
      s_b,
      T_c,
      L_c,
      T_w,
      L_w,
      k_own: isCord ? Math.max(1 + excess, rules.leastCordFactor) : 1,
      k_least: rules.leastCordFactor,
    },
    sources: {
      k_own: isCord ? source : 'insertion-loss-temperature',
      k_least: insertionLossLength.source,
      T_c: table,
      L_c: table,
      T_w: table,
      L_w: table,
    },
    cords: cords.map((cord) => {
      const loss = cordLoss(cord.cable.gauge);
      const [sac, Tsc, sbc] = lossOf(cord.cable);
      return {
        values: { 'ec_#': loss.excess, 'sac_#': sac, 'Tsc_#': Tsc, 'sbc_#': sbc },
        sources: { 'ec_#': loss.source },
        cases: [(cord.temperature ?? TWENTY) > 20 ? 'warm cord' : 'cool cord'],
      };
    }),
  };

  function missed(): readonly FixedRow[] {
    const rows: FixedRow[] = [];
    const hold = (
      name: Limit<LimitName>,
      held: Held | undefined,
      unit: FixedCase,
      isMissed: boolean = held !== undefined && held.value > held.limit,
    ): void => {
      if (held !== undefined && isMissed) rows.push(limitRow(name, [unit], { 'v_#': held.value, 'w_#': held.limit }, held.source));
    };
    hold(CABLE_CATEGORY, weakCategory([own, ...cords], limits), 'at least', true);
    hold(CONNECTIONS, { value: connections, ...rules.connections }, '1');
    hold(CORD_LENGTH, closestCord(cords, rules), 'm');
    hold(CONDUCTOR_GAUGE, closestGauge([own], cords, rules), '1');
    hold(CABLE_TEMPERATURE, { value: hottestOf([own, ...cords]), ...rules.temperature }, '°C');
    return rows;
  }
}

/** By how much the loss of a cable grows with temperature, up to where, and from there on: past its end the last slope goes on. */
function lossOf(cable: Cable): readonly [slope: number, end: number, after: number] {
  const stretches = INSERTION_LOSS[isScreened(cable) ? 'screened' : 'unscreened'];
  const [first = { to: 20, percentPerKelvin: 0 }, last = first] = stretches;
  return [first.percentPerKelvin / 100, first.to, last.percentPerKelvin / 100];
}

/** The two rows of the table for warm cable that a temperature lies between, each a temperature and a length. */
function tableRows(temperature: number, screened: boolean): readonly [number, number, number, number] {
  const above = Math.max(
    1,
    LENGTH_DERATING.findIndex(([row]) => row >= temperature),
  );
  const [[T_c, unscreened, shielded], [T_w, ...lengths]] = LENGTH_DERATING.slice(above - 1, above + 1) as [
    (typeof LENGTH_DERATING)[number],
    (typeof LENGTH_DERATING)[number],
  ];
  return [T_c, screened ? shielded : unscreened, T_w, lengths[screened ? 1 : 0] as number];
}
