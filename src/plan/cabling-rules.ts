/** The length, loop and connection rules of the two cabling standards. @module */
import type { Metres, Ohms } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';

/** Whose cabling rules a run is held against; `none` judges power alone. */
export type CablingStandard = 'TIA-568' | 'ISO/IEC 11801' | 'none';

/** One rule: a limit and where it comes from. */
interface Rule {
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
}

/** The two rule sets. */
export const CABLING_RULES: Readonly<Record<Exclude<CablingStandard, 'none'>, CablingRules>> = {
  'TIA-568': {
    channelLength: { limit: 100, source: 'tia-568-channel' },
    permanentLinkLength: { limit: 90, source: 'tia-568-permanent-link' },
    channelLoop: { limit: 25, source: 'tia-568.2-d-loop' },
    connections: { limit: 4, source: 'channel-connections' },
  },
  'ISO/IEC 11801': {
    channelLength: { limit: 100, source: 'iso-11801-channel' },
    permanentLinkLength: { limit: 90, source: 'iso-11801-permanent-link' },
    channelLoop: { limit: 25, source: 'iso-11801-channel-loop' },
    permanentLinkLoop: { limit: 21, source: 'iso-11801-permanent-link-loop' },
    connections: { limit: 4, source: 'channel-connections' },
  },
};
