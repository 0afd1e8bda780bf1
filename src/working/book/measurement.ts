/** From the readings of shorted pairs to the loops that power sees, and to the lengths of a cable that give them. @module */

import { loopOf } from '../../cable/field/expected-reading.ts';
import { CONNECTIONS } from '../../cable/field/from-measurement.ts';
import { readingBounds } from '../../cable/field/loaded-voltage.ts';
import { loopPerMetre, wireOf } from '../../cable/field/wire.ts';
import { type Cable, type FromMeasurementInput, fromMeasurement, type RunPair } from '../../cable/index.ts';
import { COPPER_COEFFICIENT } from '../../conductor/copper-standard.ts';
import { InputError } from '../../quantity/input-error.ts';
import { type BookSheet, givens, steps } from '../engine/rows.ts';
import type { Reading, ReadingRow, Steps } from '../engine/sheet.ts';
import type { WithCables } from '../engine/with-cables.ts';
import { boundedCable, boundedPieceGivens, boundedPieceRows, boundedPieceSteps } from './bounded-pieces.ts';
import { coefficientSource, TWENTY, twentyGiven } from './conductors.ts';
import { connectionAssumption, connectionSource, MOST_OF_CONNECTION } from './joints.ts';

const PAIRS: readonly RunPair[] = ['1,2', '3,6', '4,5', '7,8'];

type Case =
  | 'exact meter'
  | 'meter with bounds'
  | 'one temperature'
  | 'two temperatures'
  // Not at 20 °C.
  | 'warm'
  | 'unread'
  // Leads have more than the meter shows: nothing is left of the reading.
  | 'within the leads'
  | 'clear'
  // Two loops of no resistance in parallel are one of none.
  | 'some resistance'
  | 'no resistance'
  | 'cable'
  | 'cords'
  | 'no cords'
  | 'a length fits'
  | 'no length fits'
  | 'length known'
  | 'length not known';

/** The loops that power sees, from those of four pairs: `c_1` to `c_4` at 20 °C, `m_1` to `m_4` as they were. */
function loopSteps(pair: 'c' | 'm', end: '20' | 'T', core: 'at20' | 'measured', words: string): Steps<Case> {
  const rows = [
    ['loop', `max([${pair}_#,])`, 'the highest pair, as a meter sees it', 'pairLoop'],
    ['A', `${pair}_1 / 4 + ${pair}_2 / 4`, 'pairset on 1,2 and 3,6, a pair in parallel being a quarter of its loop', 'pairsetA'],
    ['B', `${pair}_3 / 4 + ${pair}_4 / 4`, 'pairset on 4,5 and 7,8', 'pairsetB'],
    ['pairset', `max(R_A${end}, R_B${end})`, 'the higher pairset, which power over two pairs must reckon with', 'twoPair'],
    [
      'four',
      `R_A${end} * R_B${end} / (R_A${end} + R_B${end})`,
      'both pairsets in parallel, for power over four pairs',
      'fourPair',
      'some resistance',
    ],
    ['four', `R_A${end} / 2`, 'both pairsets in parallel, of which each is nothing', 'fourPair', 'no resistance'],
  ] as const;
  return rows.flatMap(([name, formula, meaning, loop, when]) => {
    const own = { latex: `R_{\\mathrm{${name}},${end}}`, core: `loops.${core}.${loop}.value`, source: 'three-loops' } as const;
    const cases =
      end === 'T' ? { when: when === undefined ? ('warm' as const) : (`warm, ${when}` as const) } : when === undefined ? {} : { when };
    return steps<Case>([[`R_${name}${end}`, 'Ω', formula, `${words}: ${meaning}`, { ...own, ...cases }]]);
  });
}

const MISSED = 'no length gives all of these readings: every one would have to be off by';
const SHORTEST = 'length at least: what the highest reading has beyond the most of cords and connections, in conductors at the limit';
const LONGEST = 'length at most: what the lowest reading has beyond the least of cords and connections, in thick conductors';

/** The lengths, from the readings, what cords and connections have of them, and one metre of cable. */
// biome-ignore format: one figure a row
const lengthSteps = [...boundedPieceSteps('cords', '', ''), ...steps<Case>([
  ['X_l', 'Ω', '[Zl_#] + 2 * n * R_0', 'cords and connections at least', { source: 'field-loop-reading', when: 'cable, cords' }],
  ['X_l', 'Ω', '2 * n * R_0', 'cords and connections at least', { source: 'field-loop-reading', when: 'cable, no cords' }],
  ['X_h', 'Ω', '[Zh_#] + 2 * n * R_c', 'cords and connections at most', { source: 'field-loop-reading', when: 'cable, cords' }],
  ['X_h', 'Ω', '2 * n * R_c', 'cords and connections at most', { source: 'field-loop-reading', when: 'cable, no cords' }],
  ['r_t', 'Ω/m', 'min(t * r_n, r_m)', 'one metre of one thick conductor at 20 °C', { source: 'row', when: 'cable' }],
  ['z_l', 'Ω/m', '2 * r_t * (1 + alpha * (T - T_ref))', 'loop of one metre of cable at least, thick conductors', { when: 'cable, one temperature' }],
  ['z_l', 'Ω/m', '2 * r_t * (1 + alpha * (T_l - T_ref))', 'loop of one metre of cable at least, thick conductors', { when: 'cable, two temperatures' }],
  ['z_h', 'Ω/m', '2 * r_m * (1 + alpha * (T - T_ref))', 'loop of one metre of cable at most, at the limit', { when: 'cable, one temperature' }],
  ['z_h', 'Ω/m', '2 * r_m * (1 + alpha * (T_h - T_ref))', 'loop of one metre of cable at most, at the limit', { when: 'cable, two temperatures' }],
  ['L_l', 'm', 'max(m_high - X_h, 0) / z_h', SHORTEST, { core: 'lengths[0].length.low', when: 'a length fits' }],
  ['L_l', 'm', '(m_high - X_h) / z_h', SHORTEST, { when: 'no length fits' }],
  ['L_h', 'm', '(m_low - X_l) / z_l', LONGEST, { core: 'lengths[0].length.high', when: 'a length fits', range: { low: 'L_l', meaning: 'length of the cable' } }],
  ['L_h', 'm', '(m_low - X_l) / z_l', LONGEST, { when: 'no length fits' }],
  // By how much all miss: both ways from each end of what may be, and where the two ends meet.
  ['d', 'Ω', 'max(-L_h * z_l, (L_l - L_h) / (1 / z_l + 1 / z_h))', MISSED, { source: 'field-loop-reading', core: 'lengths[0].distance', when: 'no length fits, length not known' }],
  ['d', 'Ω', 'max((L_l - K_h) * z_h, (K_l - L_h) * z_l, (L_l - L_h) / (1 / z_l + 1 / z_h))', MISSED, { source: 'field-loop-reading', core: 'lengths[0].distance', when: 'no length fits, length known' }],
])];

export const fromMeasurementSheet: BookSheet<FromMeasurementInput, Case> = {
  title: 'From a reading to the loops that power sees, and to a length',
  needs: ['pairs', 'scope'],
  keys: ['leadResistance', 'temperature', 'cable', 'cords', 'connections', 'connectionResistance', 'accuracyFraction', 'accuracyFixed'],
  // biome-ignore format: one figure a row
  givens: [
    ['x_#', 'Ω', '@: as the meter shows it', 'pairs', { each: 'read' }],
    ['R_lead', 'Ω', 'leads, in every reading', 'leadResistance', { value: 0 }],
    ['k_a', '1', 'meter may be off by this fraction of its reading', 'accuracy.fraction', { when: 'meter with bounds', value: 0 }],
    ['R_a', 'Ω', 'and by this besides', 'accuracy.fixed', { when: 'meter with bounds', value: 0 }],
    ['T', '°C', 'temperature of the conductors', 'temperature', { when: 'one temperature' }],
    ['T_l', '°C', 'temperature of the conductors, at least', 'temperature.low', { when: 'two temperatures' }],
    ['T_h', '°C', 'temperature of the conductors, at most', 'temperature.high', { when: 'two temperatures' }],
    ['alpha', '1/K', 'temperature coefficient of resistance at 20 °C', 'cable', { source: 'row' }],
    twentyGiven,
    ['N', '1', 'pairs that were read', 'pairs', { when: 'unread' }],
    givens([
    ['r_n', 'Ω/m', 'one metre of one usual conductor at 20 °C', 'cable', { source: 'row' }],
    ['r_m', 'Ω/m', 'the same at the highest resistance that its limit allows', 'cable', { source: 'row' }],
    ['t', '1', 'what a thick conductor of its gauge has of the usual resistance', 'cable', { source: 'row' }],
    ['n', '1', 'connections', 'connections'],
    ['R_c', 'Ω', 'one connection at most, one conductor', 'connectionResistance', { source: 'row' }],
    ['R_0', 'Ω', 'one connection at least: nothing', 'connectionResistance'],
  ], { when: 'cable' }),
    boundedPieceGivens('cords'),
    givens([
    ['K_l', 'm', 'length that is known, at least', 'knownLength'],
    ['K_h', 'm', 'length that is known, at most', 'knownLength'],
  ], { when: 'no length fits, length known' }),
  ],
  // biome-ignore format: one figure a row
  steps: [
    ['T', '°C', '(T_l + T_h) / 2', 'temperature of the conductors, midway', { when: 'two temperatures' }],
    ['k_T', '1', '1 + alpha * (T - T_ref)', 'resistance at that temperature, in parts of what it is at 20 °C'],
    steps([
    ['m_#', 'Ω', 'x_# - R_lead', '@: its loop, the reading less the leads', { core: 'readings[@].measured.value', source: 'field-loop-reading', when: 'clear' }],
    ['m_#', 'Ω', '0', '@: its loop, of which the leads leave nothing', { core: 'readings[@].measured.value', source: 'field-loop-reading', when: 'within the leads' }],
    ['ml_#', 'Ω', 'max(x_# - (k_a * x_# + R_a) - R_lead, 0)', '@: its loop at least, by the meter', { core: 'readings[@].measured.low', source: 'data-sheet', when: 'meter with bounds' }],
    ['mh_#', 'Ω', 'x_# + (k_a * x_# + R_a) - R_lead', '@: its loop at most, by the meter', { core: 'readings[@].measured.high', source: 'data-sheet', when: 'meter with bounds' }],
    ['c_#', 'Ω', 'm_# / k_T', '@: its loop brought to 20 °C', { core: 'readings[@].at20.value' }],
  ], { each: 'read' }),
    steps([
    ['m_high', 'Ω', 'max([m_#,])', 'the highest of the readings, at its least', { when: 'cable, exact meter' }],
    ['m_high', 'Ω', 'max([ml_#,])', 'the highest of the readings, at its least', { when: 'cable, meter with bounds' }],
    ['m_low', 'Ω', 'min([m_#,])', 'the lowest of the readings, at its most', { when: 'cable, exact meter' }],
    ['m_low', 'Ω', 'min([mh_#,])', 'the lowest of the readings, at its most', { when: 'cable, meter with bounds' }],
    ['M_m', 'Ω', '([m_#]) / N', 'mean of the pairs that were read, as they were', { when: 'unread' }],
    ['M_c', 'Ω', '([c_#]) / N', 'mean of the pairs that were read, at 20 °C', { when: 'unread' }],
    ['m_#', 'Ω', 'M_m', '@: its loop, not read and taken to be the mean', { each: 'unread' }],
    ['c_#', 'Ω', 'M_c', '@: the same at 20 °C', { each: 'unread' }],
  ], { source: 'field-loop-reading' }),
    loopSteps('m', 'T', 'measured', 'as they were'),
    loopSteps('c', '20', 'at20', 'at 20 °C'),
    lengthSteps,
  ],
  tables: [
    ['Each pair that was read', 'pair', 'read'],
    ['Pairs that were not read', 'pair', 'unread'],
    ['Cords', 'cord', 'cords'],
  ],
  assumptions: ['Each pair is shorted at its far end; the two conductors of a pair are alike.'],
  validity:
    'Direct current. Shown are the figures that the readings give; of their bounds only those from which the length follows, if a cable is named. What readings are consistent with, the limits of cabling and other cables are no calculation of this kind: fromMeasurement says them.',
  cautions: ['Never put an ohmmeter on a powered pair.'],
  slips: [
    ['leads-left-in', { R_lead: '0 * R_lead' }],
    ['reading-not-at-20', { 'c_#': 'm_#' }],
    ['cold-resistance', { z_l: '2 * r_t', z_h: '2 * r_m' }],
    ['one-way-length', { L_l: '(m_high - X_h) / (z_h / 2)', L_h: '(m_low - X_l) / (z_l / 2)' }],
    ['pair-loop-for-pairset', { R_pairset20: 'R_loop20', R_pairsetT: 'R_loopT' }],
    ['pairset-for-four-pair', { R_four20: 'R_pairset20', R_fourT: 'R_pairsetT' }],
    ['series-for-parallel', { R_four20: 'R_A20 + R_B20', R_fourT: 'R_AT + R_BT' }],
  ],
  guard: (input) => {
    const found = fromMeasurement(input);
    if (found.readings.length > 0) return found;
    throw new InputError('conflict', 'pairs', 'at least one pair with a reading: of open pairs there is nothing to reckon', input.pairs);
  },
  read: (input) => {
    const { pairs, leadResistance = 0, temperature = TWENTY, cable, accuracy, cords = [], scope } = input;
    const bounds = typeof temperature === 'number' ? { low: temperature, high: temperature } : temperature;
    const isOne = bounds.low === bounds.high;
    const read: ReadingRow<Case>[] = [];
    const unread: ReadingRow<Case>[] = [];
    for (const [index, pair] of PAIRS.entries()) {
      const x = pairs[pair];
      const row = { label: `pair ${pair}`, number: index + 1 };
      if (typeof x !== 'number') unread.push(row);
      else
        read.push({ ...row, values: { 'x_#': x }, core: String(read.length), cases: [x > leadResistance ? 'clear' : 'within the leads'] });
    }
    // An unknown data cable is copper.
    const { temperatureCoefficient: alpha = COPPER_COEFFICIENT } = cable ?? {};
    const named = cable === undefined ? undefined : lengthReading(cable, input, bounds);
    return {
      values: { T: bounds.low, alpha, N: read.length, ...named?.values },
      sources: { ...named?.sources, alpha: coefficientSource(alpha) },
      cases: [
        isOne ? 'one temperature' : 'two temperatures',
        accuracy === undefined ? 'exact meter' : 'meter with bounds',
        unread.length > 0 && 'unread',
        read.some(({ cases }) => cases?.includes('clear')) ? 'some resistance' : 'no resistance',
        !(isOne && bounds.low === 20) && 'warm',
        ...(named?.cases ?? []),
      ],
      rows: { read, unread, cords: cable === undefined ? [] : boundedPieceRows(cords) },
      assumptions: [
        input.leadResistance === undefined && 'The leads were nulled.',
        input.temperature === undefined && 'The conductors are at 20 °C: no temperature was stated.',
        accuracy === undefined && 'The meter is exact.',
        cable === undefined && 'The cable is copper; which one is not said, so there is no length.',
        cable !== undefined &&
          input.connections === undefined &&
          CONNECTIONS[scope] > 0 &&
          `Connections: none to ${CONNECTIONS[scope]}, as many as the ${scope.replace('-', ' ')} may have.`,
        cable !== undefined && connectionAssumption({ ...input, connections: input.connections ?? CONNECTIONS[scope] }),
      ],
      no: named?.cases?.includes('no length fits') ? 'no length of this cable gives all of these readings' : undefined,
    };
  },
};

/** The cable as it is thought to be, and whether any length of it gives the readings. */
function lengthReading(
  cable: Cable,
  input: WithCables<FromMeasurementInput>,
  temperature: { readonly low: number; readonly high: number },
): Reading<Case> {
  const { cords = [], scope, accuracy, leadResistance = 0, connectionResistance = MOST_OF_CONNECTION, knownLength } = input;
  const { connections = CONNECTIONS[scope] } = input;
  const known = typeof knownLength === 'number' ? { low: knownLength, high: knownLength } : knownLength;
  const readings = Object.values(input.pairs).flatMap((x) => (typeof x === 'number' ? [readingBounds(x, accuracy)] : []));
  const high = Math.max(...readings.map(({ low }) => Math.max(low - leadResistance, 0)));
  const low = Math.min(...readings.map((reading) => reading.high - leadResistance));
  const perMetre = loopPerMetre(wireOf(cable), temperature);
  const rest = loopOf(cords, 0);
  const shortest = (high - rest.high - 2 * connections * connectionResistance) / perMetre.high;
  const longest = (low - rest.low) / perMetre.low;
  const missed = Math.max(-longest * perMetre.low, (shortest - longest) / (1 / perMetre.low + 1 / perMetre.high));
  // What only rounding makes is no miss.
  const scale = Math.max(...readings.map((reading) => reading.high - leadResistance)) + 1;
  const { values, sources } = boundedCable(cable, ['r_n', 'r_m', 't']);
  return {
    values: { ...values, n: connections, R_c: connectionResistance, R_0: 0, K_l: known?.low ?? 0, K_h: known?.high ?? 0 },
    sources: { ...sources, r_t: sources['t'], R_c: connectionSource(input.connectionResistance) },
    cases: [
      'cable',
      cords.length > 0 ? 'cords' : 'no cords',
      missed <= 1e-9 * scale ? 'a length fits' : 'no length fits',
      known === undefined ? 'length not known' : 'length known',
    ],
  };
}
