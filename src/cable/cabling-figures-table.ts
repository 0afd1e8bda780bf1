/** Single figures about cables, connections and unbalance, each with its source: one row each, digits as printed. @module */
import type { SourceKey } from '../sources/sources.ts';

/** One figure. */
export interface FigureRow {
  /** What it is about, in words. */
  readonly about: string;
  readonly value: number;
  /** `1`: a fraction or a ratio. */
  readonly unit: 'Ω' | 'A' | '1';
  readonly source: SourceKey;
}

/** The figures. */
export const CABLING_FIGURES = {
  connection: { about: 'one mated connection, per conductor, at most', value: 0.2, unit: 'Ω', source: 'tia-568.2-d-connection' },
  contact: { about: 'one contact, plug blade to spring, when new, at most', value: 0.02, unit: 'Ω', source: 'iec-60603-7-contact' },
  'connector-model-low': {
    about: 'one connector, least in 802.3bt simulations',
    value: 0.03,
    unit: 'Ω',
    source: '802.3bt-connector-model',
  },
  'connector-model-high': {
    about: 'one connector, most in 802.3bt simulations',
    value: 0.05,
    unit: 'Ω',
    source: '802.3bt-connector-model',
  },
  'connector-current': { about: 'one contact of an 8P8C connector, typical', value: 1.3, unit: 'A', source: 'nec-725.144-connector' },
  'conductor-current': { about: 'one conductor of balanced cabling', value: 0.75, unit: 'A', source: 'iso-11801-conductor-current' },
  'remote-power-four-pair': { about: 'one conductor, remote powering over four pairs', value: 0.5, unit: 'A', source: 'iso-29125-scope' },
  'remote-power-one-pair': { about: 'one conductor, remote powering over one pair', value: 1, unit: 'A', source: 'iso-29125-scope' },
  'unbalance-within-pair-cable': {
    about: 'unbalance within a pair of cable',
    value: 0.05,
    unit: '1',
    source: 'tia-568-c.2-cable-unbalance',
  },
  'unbalance-between-pairs-2014': {
    about: 'unbalance between pairs, channel, proposal of 2014',
    value: 0.07,
    unit: '1',
    source: '802.3bt-unbalance-proposal',
  },
  'unbalance-between-pairs-2014-floor': {
    about: 'unbalance between pairs, always allowed, proposal of 2014',
    value: 0.1,
    unit: 'Ω',
    source: '802.3bt-unbalance-proposal',
  },
  'clad-aluminium-least': {
    about: 'copper-clad aluminium against copper of the same gauge, least',
    value: 1.4,
    unit: '1',
    source: 'clad-aluminium-40',
  },
  'clad-aluminium-low': { about: 'copper-clad aluminium, 10 % copper by area, from', value: 1.55, unit: '1', source: 'clad-aluminium-55' },
  'clad-aluminium-most': {
    about: 'copper-clad aluminium against copper of the same gauge, most',
    value: 1.6,
    unit: '1',
    source: 'clad-aluminium-55',
  },
} as const;

/** The names of the figures. */
export type CablingFigureName = keyof typeof CABLING_FIGURES;
