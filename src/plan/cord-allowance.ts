/** How long the cords may be, for the installed cable there is. @module */
import type { Cable } from '../cable/cable.ts';
import { lossFactor } from '../cable/insertion-loss.ts';
import { CABLE, type CableOrName } from '../cable/read-cable.ts';
import { CONDUCTOR_TEMPERATURE } from '../conductor/resistance-per-metre.ts';
import { CHANNEL_LENGTH, INSERTION_LOSS_LENGTH, PERMANENT_LINK_LENGTH } from '../limits/all.ts';
import { type Fields, readInput } from '../quantity/fields.ts';
import type { Celsius, Metres } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';
import { CABLING_RULES, type CablingStandard, longestCord, type Rule } from './cabling-rules.ts';
import { cordFactor } from './signal-length.ts';

/** Installed cable whose cords are asked for. */
export interface CordAllowanceInput {
  /** The installed cable, H. [m] */
  readonly installedLength: Metres;
  /** The cable that the cords are made of, or its name, such as `cord-26`. */
  readonly cord: CableOrName;
  /** Whose rule; `TIA-568` if absent. */
  readonly cabling?: Exclude<CablingStandard, 'none'> | undefined;
  /** Cords at the switch end, T; 5 if absent. [m] */
  readonly telecomRoomCords?: Metres | undefined;
  /** How much more a metre of cord loses than one of installed cable, D, as a fraction from 0 to 10; by its gauge if absent. */
  readonly cordLoss?: number | undefined;
  /** Average temperature of unscreened installed cable; 20 if absent. [°C] */
  readonly temperature?: Celsius | undefined;
}

/** How long the cords may be; or that the installed cable alone is too long. */
export type CordAllowance =
  | {
      readonly feasible: true;
      /** All cords together, C. [m] */
      readonly cords: Metres;
      /** The cord in the work area, W: what is left after those at the switch, and no more than one cord may have. [m] */
      readonly workArea: Metres;
      /** Installed cable and all cords. [m] */
      readonly channelLength: Metres;
      /** Which rule gives `cords`: the loss of signal, or the length of the channel. */
      readonly governedBy: (typeof INSERTION_LOSS_LENGTH | typeof CHANNEL_LENGTH)['name'];
      readonly source: SourceKey;
    }
  | {
      readonly feasible: false;
      readonly governedBy: (typeof PERMANENT_LINK_LENGTH | typeof INSERTION_LOSS_LENGTH)['name'];
      /** How much installed cable is too much. [m] */
      readonly shortfall: Metres;
      readonly source: SourceKey;
    };

/**
 * The longest cords for an installed length: the open-office rule, `C = (102 - H)/(1 + D)` and `W = C - T`.
 *
 * D is 0.20, 0.50 and 0.95 for 24, 26 and 28 AWG. ISO/IEC 11801 in its rule of thumb takes 1.5 m of installed cable for
 * each metre of cords over 10 m. One work-area cord is at most 22 m (24 AWG) or 17 m (26 AWG) in TIA-568, 20 m in
 * ISO/IEC 11801. Data only: power has its own limits.
 *
 * @param input - Installed cable [m], what the cords are made of, whose rule, cords at the switch [m], temperature [°C].
 * @returns All cords together, the work-area cord and the channel [m]; or by how much the installed cable is too long.
 * @throws {@link InputError} If a key is not known, a number is outside its domain or the cord is no cable.
 * @example 90 m of installed cable and cords of 26 AWG
 * const allowed = cordAllowance({ installedLength: 90, cord: 'cord-26' });
 * allowed.feasible && [allowed.cords, allowed.workArea, allowed.channelLength]; // => [8, 3, 98]
 */
export function cordAllowance(input: CordAllowanceInput): CordAllowance {
  const { installedLength, cord, cabling, telecomRoomCords, cordLoss, temperature } = readInput(CORD_ALLOWANCE_FIELDS, input);
  const rules = CABLING_RULES[cabling];
  const { permanentLinkLength, channelLength, insertionLossLength: loss } = rules;
  const missed = (limit: typeof PERMANENT_LINK_LENGTH | typeof INSERTION_LOSS_LENGTH, excess: Metres, { source }: Rule): CordAllowance => ({
    feasible: false,
    governedBy: limit.name,
    shortfall: excess,
    source,
  });
  const tooLong = installedLength - permanentLinkLength.limit;
  if (tooLong > 0) return missed(PERMANENT_LINK_LENGTH, tooLong, permanentLinkLength);
  const used = installedLength * lossFactor(temperature, false);
  if (used > loss.limit) return missed(INSERTION_LOSS_LENGTH, used - loss.limit, loss);
  const byLoss = (loss.limit - used) / (cordLoss === undefined ? cordFactor(cord.gauge, rules) : 1 + cordLoss);
  const byLength = channelLength.limit - installedLength;
  const isLossy = byLoss <= byLength;
  const cords = isLossy ? byLoss : byLength;
  const left = cords > telecomRoomCords ? cords - telecomRoomCords : 0;
  return {
    feasible: true,
    cords,
    workArea: Math.min(left, longestCord(cord.gauge, rules).limit),
    channelLength: installedLength + cords,
    governedBy: isLossy ? INSERTION_LOSS_LENGTH.name : CHANNEL_LENGTH.name,
    source: (isLossy ? loss : channelLength).source,
  };
}

/** @internal */
export const CORD_ALLOWANCE_FIELDS: Fields<CordAllowanceInput, 'cabling' | 'telecomRoomCords' | 'temperature', { readonly cord: Cable }> = {
  installedLength: { nonNegative: 'm' },
  cord: () => CABLE,
  cabling: { oneOf: () => ['TIA-568', 'ISO/IEC 11801'], default: 'TIA-568' },
  telecomRoomCords: { nonNegative: 'm', default: 5, source: 'library-default' },
  cordLoss: { between: [0, 10], is: 'a fraction', optional: true },
  temperature: () => CONDUCTOR_TEMPERATURE,
};
