/** From the readings of shorted pairs to the loops that power sees, and to a length. @module */
import type { Cable } from '../../cable/cable.ts';
import { loopOf } from '../../cable/field/expected-reading.ts';
import { CONNECTIONS, type FromMeasurementInput, fromMeasurement } from '../../cable/field/from-measurement.ts';
import { readingBounds } from '../../cable/field/loaded-voltage.ts';
import { leastShare, loopPerMetre, wireOf } from '../../cable/field/wire.ts';
import { readCable } from '../../cable/read-cable.ts';
import { readSegments, type Segment } from '../../cable/run-resistance.ts';
import type { RunPair } from '../../cable/unbalance.ts';
import { awg } from '../../conductor/awg.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { FigureSources, Figures, ReadingRow, Sheet, SheetStep } from '../sheet.ts';
import * as length from './measured-length.ts';
import { measuredLoops, NONE, SOME } from './measured-loops.ts';
import { pieceRows, thickSource } from './piece-bounds.ts';
import { cableSource, coefficientSource, connectionAssumptions, twentyGiven } from './shared.ts';

const PAIRS: readonly RunPair[] = ['1,2', '3,6', '4,5', '7,8'];

/** The meter may be off; the temperature has two bounds; it is not 20 °C; a pair was not read. */
const OFF = 'meter with bounds';
const RANGE = 'two temperatures';
const WARM = 'warm';
const UNREAD = 'unread';
/** Leads have more than the meter shows: nothing is left of the reading. */
const HIDDEN = 'within the leads';

const bound = (symbol: 'ml_#' | 'mh_#', formula: string, meaning: string, core: string): SheetStep => ({
  symbol,
  meaning: `@: ${meaning}`,
  formula,
  unit: 'Ω',
  latex: symbol === 'ml_#' ? 'm_{l,#}' : 'm_{h,#}',
  source: 'data-sheet',
  core: `readings[@].measured.${core}`,
  each: 'read',
  when: OFF,
});
const pairStep = (symbol: 'm_#' | 'c_#', formula: string, meaning: string, more: Partial<SheetStep>): SheetStep => ({
  symbol,
  meaning: `@: ${meaning}`,
  formula,
  unit: 'Ω',
  latex: symbol === 'm_#' ? 'm_{#}' : 'c_{#}',
  source: 'field-loop-reading',
  each: 'read',
  ...more,
});
const meanStep = (symbol: 'M_m' | 'M_c', formula: string, meaning: string): SheetStep => ({
  symbol,
  meaning: `mean of the pairs that were read, ${meaning}`,
  formula,
  unit: 'Ω',
  latex: symbol === 'M_m' ? 'M_{m}' : 'M_{c}',
  source: 'field-loop-reading',
  when: UNREAD,
});

export const fromMeasurementSheet: Sheet<FromMeasurementInput> = {
  title: 'From a reading to the loops that power sees, and to a length',
  core: 'fromMeasurement',
  keys: [
    'pairs',
    'leadResistance',
    'temperature',
    'cable',
    'scope',
    'cords',
    'connections',
    'connectionResistance',
    'accuracyFraction',
    'accuracyFixed',
  ],
  givens: [
    { symbol: 'x_#', meaning: '@: as the meter shows it', unit: 'Ω', latex: 'x_{#}', core: 'pairs', each: 'read' },
    { symbol: 'R_lead', meaning: 'leads, in every reading', unit: 'Ω', latex: 'R_{\\mathrm{lead}}', core: 'leadResistance' },
    {
      symbol: 'k_a',
      meaning: 'meter may be off by this fraction of its reading',
      unit: '1',
      latex: 'k_{a}',
      core: 'accuracy.fraction',
      when: OFF,
    },
    { symbol: 'R_a', meaning: 'and by this besides', unit: 'Ω', latex: 'R_{a}', core: 'accuracy.fixed', when: OFF },
    { symbol: 'T', meaning: 'temperature of the conductors', unit: '°C', latex: 'T', core: 'temperature', when: 'one temperature' },
    { symbol: 'T_l', meaning: 'temperature of the conductors, at least', unit: '°C', latex: 'T_{l}', core: 'temperature.low', when: RANGE },
    { symbol: 'T_h', meaning: 'temperature of the conductors, at most', unit: '°C', latex: 'T_{h}', core: 'temperature.high', when: RANGE },
    {
      symbol: 'alpha',
      meaning: 'temperature coefficient of resistance at 20 °C',
      unit: '1/K',
      latex: '\\alpha',
      core: 'cable',
      source: 'row',
    },
    twentyGiven,
    { symbol: 'N', meaning: 'pairs that were read', unit: '1', latex: 'N', core: 'pairs', when: UNREAD },
    ...length.measuredLengthGivens,
  ],
  steps: [
    {
      symbol: 'T',
      meaning: 'temperature of the conductors, midway',
      formula: '(T_l + T_h) / 2',
      unit: '°C',
      latex: 'T',
      source: 'circuit-laws',
      when: RANGE,
    },
    {
      symbol: 'k_T',
      meaning: 'resistance at that temperature, in parts of what it is at 20 °C',
      formula: '1 + alpha * (T - T_ref)',
      unit: '1',
      latex: 'k_{T}',
      source: 'circuit-laws',
    },
    pairStep('m_#', 'x_# - R_lead', 'its loop, the reading less the leads', { core: 'readings[@].measured.value', when: 'clear' }),
    pairStep('m_#', '0', 'its loop, of which the leads leave nothing', { core: 'readings[@].measured.value', when: HIDDEN }),
    bound('ml_#', 'max(x_# - (k_a * x_# + R_a) - R_lead, 0)', 'its loop at least, by the meter', 'low'),
    bound('mh_#', 'x_# + (k_a * x_# + R_a) - R_lead', 'its loop at most, by the meter', 'high'),
    pairStep('c_#', 'm_# / k_T', 'its loop brought to 20 °C', { core: 'readings[@].at20.value', source: 'circuit-laws' }),
    ...length.extremeSteps,
    meanStep('M_m', '([m_#]) / N', 'as they were'),
    meanStep('M_c', '([c_#]) / N', 'at 20 °C'),
    pairStep('m_#', 'M_m', 'its loop, not read and taken to be the mean', { each: 'unread' }),
    pairStep('c_#', 'M_c', 'the same at 20 °C', { each: 'unread' }),
    ...measuredLoops('m', 'T', 'measured', 'as they were', WARM),
    ...measuredLoops('c', '20', 'at20', 'at 20 °C'),
    ...length.measuredLengthSteps,
  ],
  tables: [
    { title: 'Each pair that was read', row: 'pair', lists: ['read'] },
    { title: 'Pairs that were not read', row: 'pair', lists: ['unread'] },
    { title: 'Cords', row: 'cord', lists: ['cords'] },
  ],
  assumptions: ['Each pair is shorted at its far end; the two conductors of a pair are alike.'],
  validity:
    'Direct current. Shown are the figures that the readings give; of their bounds only those from which the length follows, if a cable is named. What readings are consistent with, the limits of cabling and other cables are no calculation of this kind: fromMeasurement says them.',
  cautions: ['Never put an ohmmeter on a powered pair.'],
  slips: [
    { slip: 'leads-left-in', givens: { R_lead: '0 * R_lead' } },
    { slip: 'reading-not-at-20', steps: { 'c_#': 'm_#' } },
    { slip: 'cold-resistance', steps: { z_l: '2 * r_t', z_h: '2 * r_m' } },
    { slip: 'one-way-length', steps: { L_l: '(m_high - X_h) / (z_h / 2)', L_h: '(m_low - X_l) / (z_l / 2)' } },
    { slip: 'pair-loop-for-pairset', steps: { R_pairset20: 'R_loop20', R_pairsetT: 'R_loopT' } },
    { slip: 'pairset-for-four-pair', steps: { R_four20: 'R_pairset20', R_fourT: 'R_pairsetT' } },
    { slip: 'series-for-parallel', steps: { R_four20: 'R_A20 + R_B20', R_fourT: 'R_AT + R_BT' } },
  ],
  guard: (input) => {
    const found = fromMeasurement(input);
    if (found.readings.length > 0) return found;
    throw new InputError('conflict', 'pairs', 'at least one pair with a reading: of open pairs there is nothing to reckon', input.pairs);
  },
  read: (input) => {
    const { pairs, leadResistance = 0, temperature = 20, accuracy, scope } = input;
    const cable = input.cable === undefined ? undefined : readCable(input.cable, 'cable');
    const cords = readSegments(input.cords ?? [], 'cords');
    const bounds = typeof temperature === 'number' ? { low: temperature, high: temperature } : temperature;
    const isOne = bounds.low === bounds.high;
    const read: ReadingRow[] = [];
    const unread: ReadingRow[] = [];
    for (const [index, pair] of PAIRS.entries()) {
      const x = pairs[pair];
      const row = { label: `pair ${pair}`, number: index + 1 };
      if (typeof x !== 'number') unread.push({ ...row, values: {} });
      else read.push({ ...row, values: { 'x_#': x }, core: String(read.length), cases: [x > leadResistance ? 'clear' : HIDDEN] });
    }
    const some = read.some(({ cases = [] }) => cases.includes('clear')) ? SOME : NONE;
    const named = cable === undefined ? { values: {}, cases: [], sources: {} } : lengthReading({ ...input, cable, cords }, bounds);
    // An unknown data cable is copper.
    const alpha = cable?.temperatureCoefficient ?? awg(24).temperatureCoefficient ?? 0;
    return {
      values: {
        R_lead: leadResistance,
        T: bounds.low,
        T_l: bounds.low,
        T_h: bounds.high,
        alpha,
        T_ref: 20,
        N: read.length,
        k_a: accuracy?.fraction ?? 0,
        R_a: accuracy?.fixed ?? 0,
        ...named.values,
      },
      sources: { ...named.sources, alpha: coefficientSource(alpha) },
      cases: [
        isOne ? 'one temperature' : RANGE,
        ...(accuracy === undefined ? [] : [OFF]),
        ...(unread.length > 0 ? [UNREAD] : []),
        some,
        ...(isOne && bounds.low === 20 ? [] : [WARM, `${WARM}, ${some}`]),
        ...named.cases,
      ],
      rows: { read, unread, cords: cable === undefined ? [] : pieceRows(cords) },
      assumptions: [
        ...(input.leadResistance === undefined ? ['The leads were nulled.'] : []),
        ...(input.temperature === undefined ? ['The conductors are at 20 °C: no temperature was stated.'] : []),
        ...(accuracy === undefined ? ['The meter is exact.'] : []),
        ...(cable === undefined ? ['The cable is copper; which one is not said, so there is no length.'] : []),
        ...(cable !== undefined && input.connections === undefined && CONNECTIONS[scope] > 0
          ? [`Connections: none to ${CONNECTIONS[scope]}, as many as the ${scope.replace('-', ' ')} may have.`]
          : []),
        ...(cable === undefined ? [] : connectionAssumptions(input.connections ?? CONNECTIONS[scope], input.connectionResistance)),
      ],
      ...(named.cases.includes(length.MISSES) ? { no: 'no length of this cable gives all of these readings' } : {}),
    };
  },
};

/** The cable as it is thought to be, and whether any length of it gives the readings. */
function lengthReading(
  input: FromMeasurementInput & { readonly cable: Cable; readonly cords: readonly Segment[] },
  temperature: { readonly low: number; readonly high: number },
): { values: Figures; sources: FigureSources; cases: string[] } {
  const { cable, cords, scope, accuracy, leadResistance = 0, connectionResistance = 0.2, knownLength } = input;
  const { connections = CONNECTIONS[scope] } = input;
  const known = typeof knownLength === 'number' ? { low: knownLength, high: knownLength } : knownLength;
  const readings = PAIRS.flatMap((pair) => {
    const x = input.pairs[pair];
    return typeof x === 'number' ? [readingBounds(x, accuracy)] : [];
  });
  const high = Math.max(...readings.map(({ low }) => Math.max(low - leadResistance, 0)));
  const low = Math.min(...readings.map((reading) => reading.high - leadResistance));
  const perMetre = loopPerMetre(wireOf(cable), temperature);
  const rest = loopOf(cords, 0);
  const shortest = (high - rest.high - 2 * connections * connectionResistance) / perMetre.high;
  const longest = (low - rest.low) / perMetre.low;
  const missed = Math.max(-longest * perMetre.low, (shortest - longest) / (1 / perMetre.low + 1 / perMetre.high));
  // What only rounding makes is no miss.
  const scale = Math.max(...readings.map((reading) => reading.high - leadResistance)) + 1;
  const fits = missed <= 1e-9 * scale;
  return {
    values: {
      r_n: cable.nominalResistancePerMetre,
      r_m: cable.maximumResistancePerMetre,
      t: leastShare(cable),
      n: connections,
      R_c: connectionResistance,
      R_0: 0,
      K_l: known?.low ?? 0,
      K_h: known?.high ?? 0,
    },
    sources: {
      r_n: cableSource(cable, 'nominal'),
      r_m: cableSource(cable, 'maximum'),
      t: thickSource(cable),
      R_c: input.connectionResistance === undefined ? 'tia-568.2-d-connection' : undefined,
    },
    cases: [
      length.CABLE,
      length.thickOf(thickSource(cable)),
      accuracy === undefined ? length.EXACT : length.METER,
      temperature.low === temperature.high ? length.ONE : length.RANGE,
      cords.length > 0 ? length.CORDS : length.BARE,
      ...(fits ? [length.FITS] : [length.MISSES, known === undefined ? length.UNKNOWN : length.KNOWN]),
    ],
  };
}
