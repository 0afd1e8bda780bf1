/** A value held against a limit: the one shape of every check. @module */
import { requireFraction } from '../quantity/guards.ts';
import type { Ohms } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';

/** Does power arrive? Checks of the electrical side. */
export type PowerCheckName =
  /** The device draws no more than its class allows. */
  | 'pd-power'
  /** The switch port sources no more than the class's power. */
  | 'pse-power'
  /** Voltage at the device is at least the class's minimum. */
  | 'pd-voltage'
  /** The line can carry the load at all. */
  | 'collapse'
  /** Voltage at the device is at least the minimum on its own data sheet. */
  | 'device-voltage'
  /** The line is under the resistance limit on the device's own data sheet. */
  | 'device-resistance'
  /** The voltage stated for a switch port lies within the window of its type. */
  | 'pse-voltage'
  /** The two conductors of a pair are alike enough. */
  | 'pair-unbalance'
  /** Two pairs of one polarity are alike enough. */
  | 'pair-to-pair-unbalance'
  /** The drop along a two-wire circuit is within what is permitted. */
  | 'voltage-drop'
  /** Voltage at the device, drawing nothing at the highest supply, is within the maximum on its data sheet. */
  | 'device-overvoltage'
  /** A short at the far end draws what opens the protective device. */
  | 'fault-current'
  /** Every piece of the run has copper conductors: the fraction of its pieces that do. */
  | 'material';

/** Is it an Ethernet channel? Checks of the cabling side. */
export type CablingCheckName =
  | 'channel-length'
  | 'permanent-link-length'
  | 'connections'
  /** Loop resistance of the channel, at 20 °C. */
  | 'channel-loop'
  /** Loop resistance of the permanent link, at 20 °C. */
  | 'permanent-link-loop'
  /** The resistance that IEEE 802.3 assumes between the two ends, as hot as it gets. */
  | 'channel-resistance'
  /** The category of cable that the type of port counts on. */
  | 'cable-category'
  /** Installed cable at its average temperature, against what the standard leaves of 90 m when it is warm. */
  | 'derated-length'
  /** Installed cable and cords as metres of cool installed cable that loses as much signal: the open-office rule of cords. */
  | 'insertion-loss-length'
  /** The longest single cord. */
  | 'cord-length'
  /** The thinnest conductor, by its gauge number. */
  | 'conductor-gauge'
  /** The hottest piece, where it is hotter than cabling may be. */
  | 'cable-temperature';

/** Does the bundle stay cool enough? Checks of heat. */
export type HeatCheckName =
  /** The middle of the bundle against what the cable is rated for. */
  | 'conductor-temperature'
  /** Its rise above the air against the rise that is recommended. */
  | 'bundle-rise'
  /** The current of each conductor against the table of a code. */
  | 'ampacity';

/** The name of a check, and of the limit it holds a value against. */
export type CheckName = PowerCheckName | CablingCheckName | HeatCheckName;

/** `uncertain`: it passes on one reading of the input and fails on another; `deciding` names the input. */
export type Verdict = 'pass' | 'marginal' | 'fail' | 'uncertain';

/** The unit of a check's value, limit and margin. */
export type CheckUnit = 'W' | 'V' | 'A' | 'Ω' | 'm' | '°C' | 'K' | 'AWG' | '1';

/** One value held against one limit. */
export interface Check {
  readonly name: CheckName;
  readonly value: number;
  /** The limit that was applied. */
  readonly limit: number;
  /** The limit as printed in its source, where that differs from the one applied. */
  readonly published?: number;
  readonly unit: CheckUnit;
  /** How far the value is on the good side of the limit; negative on the bad side. In `unit`. */
  readonly margin: number;
  /** The margin as a fraction of the limit. */
  readonly marginFraction: number;
  readonly verdict: Verdict;
  /** The inputs any one of which would settle an `uncertain` verdict. */
  readonly deciding?: readonly string[];
  /** The same limit as the most resistance of the circuit that power sees, and what is left of it; absent where resistance plays no part. [Ω] */
  readonly loop?: { readonly limit: Ohms; readonly margin: Ohms };
  /** A limit that does not say which loop it means, read both ways. [Ω] */
  readonly readings?: { readonly pairLoop: Ohms; readonly twoPair: Ohms };
  readonly source: SourceKey;
}

/** A margin under this fraction of the limit is `marginal`, unless the caller sets another. */
export const MARGINAL_BELOW = 0.05;

/** @internal */
export function requireMarginalBelow(value: number): void {
  requireFraction(value, 'marginalBelow', 'limit');
}

/** `pass`, `marginal` or `fail` by a margin and its limit. @internal */
export function verdictOf(margin: number, limit: number, marginalBelow: number): Verdict {
  if (!(margin >= 0)) return 'fail';
  return margin < marginalBelow * Math.abs(limit) ? 'marginal' : 'pass';
}

/** The worst of several verdicts: a fail outweighs a doubt, a doubt outweighs a narrow pass. @internal */
export function worstVerdict(checks: readonly Check[]): Verdict {
  let worst: Verdict = 'pass';
  for (const { verdict } of checks) {
    if (verdict === 'fail') return 'fail';
    if (verdict === 'uncertain' || (verdict === 'marginal' && worst === 'pass')) worst = verdict;
  }
  return worst;
}

/**
 * A check whose verdict was settled in ohms, its figures given in its own unit.
 *
 * Volts and watts at the limit carry the rounding of a square root; ohms do not. So the comparison is made once, in
 * ohms, and a margin that rounding has put on the other side of 0 is brought back to the side it is on.
 * @internal
 */
export function settledMargin(margin: number, limit: number, passes: boolean): number {
  if (passes) return margin > 0 ? margin : 0;
  return margin < 0 ? margin : -Number.EPSILON * Math.abs(limit);
}
