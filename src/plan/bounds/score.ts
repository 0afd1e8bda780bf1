/** What makes one result better than another. @module */
import type { Check } from '../../limits/check.ts';
import { MARGINAL_BELOW, verdictOf } from '../../limits/held.ts';
import type { Verdict } from '../../limits/verdict.ts';
import { InputError } from '../../quantity/input-error.ts';
import { governingCheck } from '../governing-check.ts';

/** What is looked at in a result of any of the functions. */
interface AnyResult {
  readonly feasible?: boolean;
  readonly unbounded?: boolean;
  readonly check?: Check;
  readonly checks?: readonly Check[];
  readonly powerChecks?: readonly Check[];
  readonly cablingChecks?: readonly Check[];
  readonly maximumLoadPower?: number;
  readonly shortfall?: number;
  readonly loadVoltage?: number;
  readonly pairLoop?: number;
  readonly length?: number;
  readonly temperature?: number;
  readonly supplyVoltage?: number;
  readonly load?: { readonly power?: number; readonly current?: number; readonly resistance?: number };
  readonly margin?: number;
  readonly bounded?: boolean;
  readonly factor?: number;
  readonly count?: number;
  readonly lowest?: { readonly voltage: number };
  readonly loadability?: number;
}

/** Every check of a result, or `undefined` if it is not one that judges. @internal */
export function checksOf(result: unknown): readonly Check[] | undefined {
  const { check, checks, powerChecks, cablingChecks = [] } = result as AnyResult;
  if (check !== undefined) return [check];
  return checks ?? (powerChecks === undefined ? undefined : [...powerChecks, ...cablingChecks]);
}

/**
 * A verdict with the doubts taken out that the ranges themselves answer.
 *
 * A two-wire run at one supply figure is `uncertain` because it has one figure; here that figure is an end of a range.
 * @internal
 */
export function settledVerdict({ verdict, deciding, margin, limit }: Check, ranged: ReadonlySet<string>): Verdict {
  if (verdict !== 'uncertain' || !deciding?.every(({ parameter }) => ranged.has(parameter))) return verdict;
  return verdictOf(margin, limit, MARGINAL_BELOW);
}

/** Higher is better: what can be done before how well. @internal */
export function scoreOf(result: unknown): number {
  if (typeof result !== 'object' || result === null)
    throw new InputError('type', 'fn', 'a function of this library that returns a result', result);
  const {
    feasible,
    unbounded,
    maximumLoadPower,
    shortfall,
    loadVoltage,
    pairLoop,
    length,
    temperature,
    supplyVoltage,
    load,
    margin,
    bounded,
    factor,
    count,
    lowest,
    loadability,
  } = result as AnyResult;
  // What cannot be done at all is worse than anything that can, and less bad the nearer it comes.
  const checks = checksOf(result);
  if (feasible === false && checks === undefined) return -1e30 * (1 + (shortfall ?? 1 / (1 + (maximumLoadPower ?? loadability ?? 0))));
  if (unbounded || bounded === false) return Number.MAX_VALUE;
  if (checks !== undefined) {
    if (feasible === false) return -1e30;
    return checks.length === 0 ? 0 : governingCheck(checks).marginFraction;
  }
  const score =
    loadVoltage ??
    lowest?.voltage ??
    factor ??
    count ??
    length ??
    temperature ??
    (pairLoop === undefined ? undefined : -pairLoop) ??
    (supplyVoltage === undefined ? undefined : -supplyVoltage) ??
    load?.power ??
    load?.current ??
    (load?.resistance === undefined ? undefined : -load.resistance) ??
    margin;
  if (score === undefined)
    throw new InputError('type', 'fn', 'a function of this library that judges, solves or measures a run', 'another');
  return score;
}
