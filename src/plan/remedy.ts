/** What a person can change about a failing run. @module */
import { largestOnGrid } from './grid.ts';
import type { RunVerdict } from './judged-run.ts';

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
  /** Connections with less resistance: cleaned, re-made or of a better kind. */
  | 'better-connections'
  /** A route, or a bundle, where the installed cable stays cooler. */
  | 'cooler-route'
  /** The installed cable replaced by one that is at hand. */
  | 'thicker-cable'
  /** Only so many metres of it replaced by one that is at hand. */
  | 'replace-part'
  /** A conductor of a thicker gauge. */
  | 'thicker-conductor'
  /** Several cores in parallel for each way. */
  | 'paralleled-cores'
  /** A supply of a higher voltage that the device still bears when it draws nothing. */
  | 'higher-supply'
  /** Less installed cable: a nearer switch, or a shorter route. */
  | 'shorter-run'
  /** A switch of its own at this distance along the installed cable, where both halves are alike. */
  | 'switch-between';

/** One thing to change: from what to what. */
export interface RemedyStep {
  readonly remedy: RemedyName;
  readonly from: number;
  readonly to: number;
  /** The unit of `from` and `to`: a port type, a number of pairs, connections or cores, a gauge, metres, degrees, ohms, volts. */
  readonly unit: 'type' | 'pairs' | 'connections' | 'cores' | 'AWG' | 'm' | '°C' | 'Ω' | 'V';
  /** The cable or conductor to use, where one was offered. */
  readonly use?: string;
}

/** One change that makes a failing run pass, computed and checked again by the same checks. */
export interface Remedy extends RemedyStep {
  /** What must be changed as well, where no single change is enough. */
  readonly also?: readonly RemedyStep[];
  /** The verdicts that the run then has. */
  readonly verdict: RunVerdict;
}

/** One of several things that are changed together. @internal */
export interface Step<Run> extends RemedyStep {
  readonly change: Partial<Run>;
}

/** One kind of change to a run, and how far it has to go. @internal */
export interface Change<Run> extends Pick<RemedyStep, 'remedy' | 'from' | 'unit'> {
  /** The least disturbing value that passes; `undefined` if none does. */
  readonly find: (passes: (value: number) => boolean) => number | undefined;
  /** What is put into the run, or into each of the runs that take its place. */
  readonly put: (value: number) => Partial<Run> | readonly Partial<Run>[];
  /** The value as a person is told it, if that is another. */
  readonly told?: (value: number) => number;
  readonly use?: (value: number) => string;
}

/** Makes one. @internal */
export function change<Run>(
  remedy: RemedyName,
  unit: RemedyStep['unit'],
  from: number,
  find: Change<Run>['find'],
  put: Change<Run>['put'],
): Change<Run> {
  return { remedy, unit, from, find, put };
}

/** Nothing to find. @internal */
export const NEVER = (): undefined => undefined;

/** The first of several values that passes. @internal */
export function firstOf<Run>(values: readonly number[]): Change<Run>['find'] {
  return (passes) => values.find(passes);
}

/** The largest value under `from` that passes, in so many steps per unit, and no less than `least`. @internal */
export function downTo<Run>(from: number, perUnit: number, least: number): Change<Run>['find'] {
  return (passes) => {
    const value = largestOnGrid(from, perUnit, passes);
    return value >= least ? value : undefined;
  };
}
