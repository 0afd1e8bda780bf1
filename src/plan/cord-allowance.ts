/** How long the cords may be, for the installed cable there is. @module */
import type { Cable } from '../cable/cable.ts';
import { requireNonNegative, requireObject, requireOneOf, requireTemperature } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Celsius, Metres } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';
import { CABLING_RULES, type CablingStandard } from './cabling-rules.ts';
import { cordFactor, insertionLossLength } from './signal-length.ts';

/** Installed cable whose cords are asked for. */
export interface CordAllowanceInput {
  /** The installed cable, H. [m] */
  readonly installedLength: Metres;
  /** The cable that the cords are made of, such as `cable('cord-26')`. */
  readonly cord: Cable;
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
      readonly governedBy: 'insertion-loss-length' | 'channel-length';
      readonly source: SourceKey;
    }
  | {
      readonly feasible: false;
      readonly governedBy: 'permanent-link-length' | 'insertion-loss-length';
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
 * @throws {@link InputError} If a number is outside its domain or the cord is no cable.
 * @example 90 m of installed cable and cords of 26 AWG
 * const allowed = cordAllowance({ installedLength: 90, cord: cable('cord-26') });
 * allowed.feasible && [allowed.cords, allowed.workArea, allowed.channelLength]; // => [8, 3, 98]
 */
export function cordAllowance(input: CordAllowanceInput): CordAllowance {
  requireObject(input, 'input', 'an object with installedLength and cord');
  const { installedLength, cord, cabling = 'TIA-568', telecomRoomCords = 5, cordLoss, temperature = 20 } = input;
  requireNonNegative(installedLength, 'installedLength', 'm');
  requireObject(cord, 'cord', "a cable, such as cable('cord-26')");
  requireOneOf(cabling, ['TIA-568', 'ISO/IEC 11801'], 'cabling');
  requireNonNegative(telecomRoomCords, 'telecomRoomCords', 'm');
  requireTemperature(temperature, 'temperature');
  if (cordLoss !== undefined) {
    requireNonNegative(cordLoss, 'cordLoss', '(a fraction)');
    if (cordLoss > 10) throw new InputError('range', 'cordLoss', 'a fraction from 0 to 10', cordLoss);
  }
  const rules = CABLING_RULES[cabling];
  const { permanentLinkLength, channelLength, insertionLossLength: loss, cordLength } = rules;
  if (installedLength > permanentLinkLength.limit) {
    const shortfall = installedLength - permanentLinkLength.limit;
    return { feasible: false, governedBy: 'permanent-link-length', shortfall, source: permanentLinkLength.source };
  }
  const horizontal = { ...cord, use: 'horizontal' as const, screened: false };
  const used = insertionLossLength([{ cable: horizontal, length: installedLength, temperature }], [], rules);
  if (used > loss.limit) {
    return { feasible: false, governedBy: 'insertion-loss-length', shortfall: used - loss.limit, source: loss.source };
  }
  const byLoss = (loss.limit - used) / (cordLoss === undefined ? cordFactor(cord.gauge, rules) : 1 + cordLoss);
  const byLength = channelLength.limit - installedLength;
  const cords = byLoss <= byLength ? byLoss : byLength;
  const longest = cord.gauge <= 24 ? cordLength.thick.limit : cordLength.thin.limit;
  const left = cords > telecomRoomCords ? cords - telecomRoomCords : 0;
  return {
    feasible: true,
    cords,
    workArea: left < longest ? left : longest,
    channelLength: installedLength + cords,
    governedBy: byLoss <= byLength ? 'insertion-loss-length' : 'channel-length',
    source: byLoss <= byLength ? loss.source : channelLength.source,
  };
}
