/** Single figures about cables, connections and unbalance, each with its source: one row each, digits as printed. @module */
import type { SourceKey } from '../sources/sources.ts';

/** One figure: what it is about, in words; its unit, `1` for a fraction or a ratio; and where it is from. */
export type FigureRow = readonly [about: string, value: number, unit: 'Ω' | 'A' | '1', source: SourceKey];

/** The figures. */
// biome-ignore format: one row a line
export const CABLING_FIGURES = {
  connection: ['one mated connection, per conductor, at most', 0.2, 'Ω', 'tia-568.2-d-connection'],
  contact: ['one contact, plug blade to spring, when new, at most', 0.02, 'Ω', 'iec-60603-7-contact'],
  'connector-model-low': ['one connector, least in 802.3bt simulations', 0.03, 'Ω', '802.3bt-connector-model'],
  'connector-model-high': ['one connector, most in 802.3bt simulations', 0.05, 'Ω', '802.3bt-connector-model'],
  'connector-current': ['one contact of an 8P8C connector, typical', 1.3, 'A', 'nec-725.144-connector'],
  'conductor-current': ['one conductor of balanced cabling', 0.75, 'A', 'iso-11801-conductor-current'],
  'remote-power-four-pair': ['one conductor, remote powering over four pairs', 0.5, 'A', 'iso-29125-scope'],
  'remote-power-one-pair': ['one conductor, remote powering over one pair', 1, 'A', 'iso-29125-scope'],
  'unbalance-within-pair-cable': ['unbalance within a pair of cable', 0.05, '1', 'tia-568-c.2-cable-unbalance'],
  'unbalance-between-pairs-2014': ['unbalance between pairs, channel, proposal of 2014', 0.07, '1', '802.3bt-unbalance-proposal'],
  'unbalance-between-pairs-2014-floor': ['unbalance between pairs, always allowed, proposal of 2014', 0.1, 'Ω', '802.3bt-unbalance-proposal'],
  'clad-aluminium-least': ['copper-clad aluminium against copper of the same gauge, least', 1.4, '1', 'clad-aluminium-40'],
  'clad-aluminium-low': ['copper-clad aluminium, 10 % copper by area, from', 1.55, '1', 'clad-aluminium-55'],
  'clad-aluminium-most': ['copper-clad aluminium against copper of the same gauge, most', 1.6, '1', 'clad-aluminium-55'],
} as const;

/** The names of the figures. */
export type CablingFigureName = keyof typeof CABLING_FIGURES;
