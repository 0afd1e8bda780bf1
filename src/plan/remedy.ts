/** What a person can change about a failing run. @module */
import type { Verdict } from '../circuit/check.ts';

/** The kinds of change, least disturbance first. */
export type RemedyName =
  /** Move the device to a switch port of a higher type. */
  | 'higher-port-type'
  /** Power over four pairs, where the port and the device both support it. */
  | 'four-pair'
  /** Cords of thicker wire. */
  | 'thicker-cords'
  /** Fewer metres of cord. */
  | 'shorter-cords'
  /** Fewer plugs, jacks and couplers along the run. */
  | 'fewer-connections'
  /** A route, or a bundle, where the installed cable stays cooler. */
  | 'cooler-route'
  /** A conductor of a thicker gauge. */
  | 'thicker-conductor'
  /** Less installed cable: a nearer switch, or a shorter route. */
  | 'shorter-run';

/** One change that makes a failing run pass, computed and checked again by the same checks. */
export interface Remedy {
  readonly remedy: RemedyName;
  readonly from: number;
  readonly to: number;
  /** The unit of `from` and `to`: a port type, a number of pairs or connections, a gauge, metres or degrees. */
  readonly unit: 'type' | 'pairs' | 'connections' | 'AWG' | 'm' | '°C';
  /** The verdicts that the run then has. */
  readonly verdict: { readonly power: Verdict; readonly cabling: Verdict };
}
