/** The lengths of a cable that give the readings of its pairs. @module */
import { givens, step } from '../rows.ts';
import type { SheetGiven, SheetStep } from '../sheet.ts';
import { pieceGivens, pieceSteps, THICK_SOURCES } from './piece-bounds.ts';

/** A cable is named; then one of each of the following goes with it. */
export const CABLE = 'cable';
export const EXACT = 'cable, exact meter';
export const METER = 'cable, meter with bounds';
export const ONE = 'cable, one temperature';
export const RANGE = 'cable, two temperatures';
export const CORDS = 'cable, cords';
export const BARE = 'cable, no cords';
export const FITS = 'a length fits';
export const MISSES = 'no length fits';
export const KNOWN = 'no length fits, length known';
export const UNKNOWN = 'no length fits, length not known';

/** How thick its conductor may be, by where that comes from. */
export const thickOf = (source: (typeof THICK_SOURCES)[number]): string => `cable, thick by ${source}`;

export const measuredLengthGivens: readonly SheetGiven[] = [
  ...givens([
    ['r_n', 'Ω/m', 'one metre of one usual conductor at 20 °C', 'cable', { source: 'row' }],
    ['r_m', 'Ω/m', 'the same at the highest resistance that its limit allows', 'cable', { source: 'row' }],
    ['t', '1', 'what a thick conductor of its gauge has of the usual resistance', 'cable', { source: 'row' }],
    ['n', '1', 'connections', 'connections'],
    ['R_c', 'Ω', 'one connection at most, one conductor', 'connectionResistance', { source: 'row' }],
    ['R_0', 'Ω', 'one connection at least: nothing', 'connectionResistance'],
  ], { when: CABLE }),
  ...pieceGivens('cords'),
  ...givens([
    ['K_l', 'm', 'length that is known, at least', 'knownLength'],
    ['K_h', 'm', 'length that is known, at most', 'knownLength'],
  ], { when: KNOWN }),
];

const ohms = (symbol: string, latex: string, when: string, formula: string, meaning: string): SheetStep => (step(symbol, 'Ω', formula, meaning, { latex, source: 'field-loop-reading', when }));
const perMetre = (symbol: string, latex: string, when: string, formula: string, meaning: string): SheetStep => ({
  ...ohms(symbol, latex, when, formula, meaning),
  unit: 'Ω/m',
  source: 'circuit-laws',
});
const metres = (symbol: string, latex: string, when: string, formula: string, meaning: string, core?: string): SheetStep => ({
  ...perMetre(symbol, latex, when, formula, meaning),
  unit: 'm',
  ...(core === undefined ? {} : { core }),
});
/** By how much all miss: both ways from each end of what may be, and where the two ends meet. */
const distance = (when: string, ends: string): SheetStep => ({
  ...ohms(
    'd',
    'd',
    when,
    `max(${ends}, (L_l - L_h) / (1 / z_l + 1 / z_h))`,
    'no length gives all of these readings: every one would have to be off by',
  ),
  core: 'lengths[0].distance',
});

const HIGH = 'the highest of the readings, at its least';
const LOW = 'the lowest of the readings, at its most';
const THICK = 'loop of one metre of cable at least, thick conductors';
const LIMIT = 'loop of one metre of cable at most, at the limit';
const LEAST = 'cords and connections at least';
const MOST = 'cords and connections at most';
const SHORTEST = 'length at least: what the highest reading has beyond the most of cords and connections, in conductors at the limit';
const LONGEST = 'length at most: what the lowest reading has beyond the least of cords and connections, in thick conductors';

/** Of the readings, what bounds the length. */
export const extremeSteps: readonly SheetStep[] = [
  ohms('m_high', 'm_{\\mathrm{high}}', EXACT, 'max([m_#,])', HIGH),
  ohms('m_high', 'm_{\\mathrm{high}}', METER, 'max([ml_#,])', HIGH),
  ohms('m_low', 'm_{\\mathrm{low}}', EXACT, 'min([m_#,])', LOW),
  ohms('m_low', 'm_{\\mathrm{low}}', METER, 'min([mh_#,])', LOW),
];

export const measuredLengthSteps: readonly SheetStep[] = [
  ...pieceSteps('cords', undefined),
  ohms('X_l', 'X_{l}', CORDS, '[Zl_#] + 2 * n * R_0', LEAST),
  ohms('X_l', 'X_{l}', BARE, '2 * n * R_0', LEAST),
  ohms('X_h', 'X_{h}', CORDS, '[Zh_#] + 2 * n * R_c', MOST),
  ohms('X_h', 'X_{h}', BARE, '2 * n * R_c', MOST),
  ...THICK_SOURCES.map((source) => ({
    ...perMetre('r_t', 'r_{t}', thickOf(source), 'min(t * r_n, r_m)', 'one metre of one thick conductor at 20 °C'),
    source,
  })),
  perMetre('z_l', 'z_{l}', ONE, '2 * r_t * (1 + alpha * (T - T_ref))', THICK),
  perMetre('z_l', 'z_{l}', RANGE, '2 * r_t * (1 + alpha * (T_l - T_ref))', THICK),
  perMetre('z_h', 'z_{h}', ONE, '2 * r_m * (1 + alpha * (T - T_ref))', LIMIT),
  perMetre('z_h', 'z_{h}', RANGE, '2 * r_m * (1 + alpha * (T_h - T_ref))', LIMIT),
  metres('L_l', 'L_{l}', FITS, 'max(m_high - X_h, 0) / z_h', SHORTEST, 'lengths[0].length.low'),
  metres('L_l', 'L_{l}', MISSES, '(m_high - X_h) / z_h', SHORTEST),
  {
    ...metres('L_h', 'L_{h}', FITS, '(m_low - X_l) / z_l', LONGEST, 'lengths[0].length.high'),
    range: { low: 'L_l', meaning: 'length of the cable' },
  },
  metres('L_h', 'L_{h}', MISSES, '(m_low - X_l) / z_l', LONGEST),
  distance(UNKNOWN, '-L_h * z_l'),
  distance(KNOWN, '(L_l - K_h) * z_h, (K_l - L_h) * z_l'),
];

