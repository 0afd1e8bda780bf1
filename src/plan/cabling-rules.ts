/** The length, loop and connection rules of the two cabling standards. @module */
import type { Celsius, Metres, Ohms } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';

/** Whose cabling rules a run is held against; `none` judges power alone. */
export const CABLING_STANDARDS = ['TIA-568', 'ISO/IEC 11801', 'none'] as const;

/** One of them. */
export type CablingStandard = (typeof CABLING_STANDARDS)[number];

/** One rule: a limit and where it comes from. @internal */
export interface Rule {
  readonly limit: number;
  readonly source: SourceKey;
}

/** The rules of one standard. Loop limits are for a pair loop at 20 °C. */
export interface CablingRules {
  readonly channelLength: Rule & { readonly limit: Metres };
  readonly permanentLinkLength: Rule & { readonly limit: Metres };
  readonly channelLoop: Rule & { readonly limit: Ohms };
  readonly permanentLinkLoop?: Rule & { readonly limit: Ohms };
  readonly connections: Rule;
  /** Installed cable and cords as metres of cool installed cable with the same insertion loss. */
  readonly insertionLossLength: Rule & { readonly limit: Metres };
  /** The least that a metre of cord counts for in it, against a metre of installed cable: a factor. */
  readonly leastCordFactor: number;
  /** One cord, of 24 AWG or thicker, and of thinner wire. */
  readonly cordLength: { readonly thick: Rule & { readonly limit: Metres }; readonly thin: Rule & { readonly limit: Metres } };
  /** Thinnest conductors, by gauge number, of installed cable and of cords. [AWG] */
  readonly thinnestGauge?: { readonly installed: Rule; readonly cords: Rule };
  /** Hottest cable. */
  readonly temperature: Rule & { readonly limit: Celsius };
}

/** The longest cord of a gauge. @internal */
export function longestCord(gauge: number, { cordLength }: CablingRules): Rule {
  return gauge <= 24 ? cordLength.thick : cordLength.thin;
}

/** The two rule sets. */
export const CABLING_RULES: Readonly<Record<Exclude<CablingStandard, 'none'>, CablingRules>> = {
  'TIA-568': {
    channelLength: { limit: 100, source: 'tia-568-channel' },
    permanentLinkLength: { limit: 90, source: 'tia-568-permanent-link' },
    channelLoop: { limit: 25, source: 'tia-568.2-d-loop' },
    connections: { limit: 4, source: 'channel-connections' },
    insertionLossLength: { limit: 102, source: 'tia-568-open-office' },
    leastCordFactor: 1,
    cordLength: { thick: { limit: 22, source: 'tia-568-work-area-cord' }, thin: { limit: 17, source: 'tia-568-work-area-cord-26' } },
    thinnestGauge: { installed: { limit: 24, source: 'tia-568-gauge' }, cords: { limit: 28, source: 'tia-568-gauge' } },
    temperature: { limit: 60, source: 'cabling-temperature' },
  },
  'ISO/IEC 11801': {
    channelLength: { limit: 100, source: 'iso-11801-channel' },
    permanentLinkLength: { limit: 90, source: 'iso-11801-permanent-link' },
    channelLoop: { limit: 25, source: 'iso-11801-channel-loop' },
    permanentLinkLoop: { limit: 21, source: 'iso-11801-permanent-link-loop' },
    connections: { limit: 4, source: 'channel-connections' },
    // 90 m and 10 m of cords at 1.5: from there on, 1.5 m of installed cable for each metre of cords.
    insertionLossLength: { limit: 105, source: 'iso-11801-cord-rule' },
    leastCordFactor: 1.5,
    cordLength: { thick: { limit: 20, source: 'iso-11801-work-area-cord' }, thin: { limit: 20, source: 'iso-11801-work-area-cord' } },
    temperature: { limit: 60, source: 'cabling-temperature' },
  },
};
