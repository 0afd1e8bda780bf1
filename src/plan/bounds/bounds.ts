/** Results of inputs that are only known between limits. @module */

import type { Check, CheckName, Deciding } from '../../limits/check.ts';
import { MARGINAL_BELOW, verdictOf } from '../../limits/held.ts';
import { type Verdict, worstVerdict } from '../../limits/verdict.ts';
import { requireObject } from '../../quantity/guards.ts';
import { isLostToCollapse } from '../absent-checks.ts';
import { boundedFunction, scoreOf } from './bounded-functions.ts';
import { addPeaks, type FieldBounds, fieldBounds, leavesOf } from './field-bounds.ts';
import { type Corner, type FoundRange, filledIn, type Ranged, rangesIn } from './ranges.ts';

/** Least and most of one number of the result, in its own unit, and the corners that give them. */
export interface Bounded {
  readonly low: number;
  readonly high: number;
  /** The corner; absent where the extreme is a peak inside the ranges. */
  readonly lowAt?: Corner;
  readonly highAt?: Corner;
}

/** One check over all corners, each end with its own corner. */
export interface BoundedCheck {
  readonly name: CheckName;
  readonly best: Check;
  readonly bestAt: Corner;
  /** Absent where some corner carries no load at all, and has nothing to hold against this limit. */
  readonly worst?: Check;
  readonly worstAt?: Corner;
  /** That of the worst if it does not fail, `fail` if the best fails, else `uncertain`. */
  readonly verdict: Verdict;
}

/** A result over all that its input may be. */
export interface Bounds<R> {
  /** The result at the best corner. */
  readonly best: R;
  /** The result with every range at its middle, or its nominal value. */
  readonly nominal: R;
  /** The result at the worst corner. */
  readonly worst: R;
  /** The values of the ranged inputs that give them. */
  readonly corners: { readonly best: Corner; readonly nominal: Corner; readonly worst: Corner };
  /** Bounds of every number of the result that all corners have, by path. Checks and limits are bounded by name, in `checks`. */
  readonly fields: Readonly<Record<string, Bounded>>;
  /** Every check with its own best and worst; empty for a result that holds nothing against a limit. */
  readonly checks: readonly BoundedCheck[];
  /** `pass` or `marginal` if the worst is, `fail` if the best fails, else `uncertain`. */
  readonly verdict: Verdict;
  /** For `uncertain`: the ranged inputs that, known at either end, would give a verdict whatever the others are; failing such, at one end. */
  readonly deciding?: readonly Deciding[];
}

/**
 * Best, nominal and worst result of a function whose input is only known between limits.
 *
 * Exact, not sampled: results are monotone in every number of the input, so their extremes lie at corners of the box
 * that the ranges span, and all corners are tried; the two powers that peak inside a range are added in closed form.
 * Each number and each check of the result is bounded by itself. It knows `operatingPoint`, `voltageDrop`,
 * `runResistance`, `powerAtPd`, `checkPoweredRun`, `checkTwoWireRun`, `maximumRun`, `smallestConductor`,
 * `highestTemperature`, `lowestSupplyVoltage`, `highestLoad`, `farEndFaultCurrent`, `solveNetwork`, `loadability`,
 * `maximumTaps`, and refuses any other function. At most 12 ranges. The supply of a two-wire run keeps its own
 * `{ low, high }`: such a run is judged at both. A device of class 0 or 3 is held against 12.95 W unless its power is just
 * 13.0 W, also where that lies inside a range.
 *
 * @param fn - One of those functions.
 * @param input - Its input, with `{ low, high }` or `{ nominal, plusMinus }` in place of any number.
 * @returns Results at the best corner, the middle and the worst corner; bounds by field and by check; the verdict.
 * @throws {@link InputError} If it does not know `fn`, as `fn` at a corner, or if a range is upside down, not of numbers, or one of too many.
 * @example A camera at the end of 80 to 95 m, the roof anywhere from 20 to 60 °C
 * const camera = bounds(checkPoweredRun, {
 *   installed: [{ cable: cable('cat6'), length: { low: 80, high: 95 }, temperature: { low: 20, high: 60 } }],
 *   poeClass: 4,
 *   cabling: 'none',
 * });
 * [camera.verdict, camera.corners.worst['installed[0].length'], camera.fields['resistance.twoPair']?.high.toFixed(2)]; // => ['marginal', 95, '10.31']
 */
export function bounds<I, R>(fn: (input: I) => R, input: Ranged<I>): Bounds<R> {
  const record = boundedFunction(fn);
  requireObject(input, 'input', 'the input of that function');
  const ranges = rangesIn(input, record.judgesSupply ? ['supplyVoltage'] : []);
  const at = (values: readonly number[]): R => fn(filledIn(input, new Map(ranges.map(({ path }, i) => [path, values[i] as number]))) as I);

  const count = 2 ** ranges.length;
  const values = Array.from({ length: count }, (_, corner) => ranges.map(({ low, high }, i) => ((corner >> i) & 1 ? high : low)));
  const results = values.map(at);
  const middle = ranges.map(({ nominal }) => nominal);
  const nominal = at(middle);

  const scores = results.map((result) => scoreOf(record, result));
  const [best, worst] = [indexOf(scores, Math.max), indexOf(scores, Math.min)];
  const cornerOf = (numbers: readonly number[]): Corner => Object.fromEntries(ranges.map(({ path }, i) => [path, numbers[i] as number]));
  const corner = (index: number): Corner => cornerOf(values[index] as readonly number[]);

  const leaves = results.map((result) => leavesOf(result, record.unbounded));
  const found = fieldBounds(leaves);
  addPeaks(found, leaves, ranges);
  const ranged = new Set(ranges.map(({ path }) => path));
  const lists = results.map((result) => (record.checks?.(result) ?? []).map((check) => withoutRangedDoubt(check, ranged)));
  const checks = boundedChecks(lists, corner);
  const judge = (corners: readonly number[]): Verdict =>
    verdictOver(
      corners.map((index) => results[index]),
      corners.map((index) => lists[index] as readonly Check[]),
    );
  const every = results.map((_, index) => index);
  const verdict = judge(every);
  return {
    best: results[best] as R,
    nominal,
    worst: results[worst] as R,
    corners: { best: corner(best), nominal: cornerOf(middle), worst: corner(worst) },
    fields: Object.fromEntries([...found].map(([path, field]) => [path, bounded(field, corner)])),
    checks,
    verdict,
    ...(verdict === 'uncertain' ? { deciding: decidingInputs(ranges, every, judge) } : {}),
  };
}

function indexOf(scores: readonly number[], extreme: (...numbers: number[]) => number): number {
  return scores.indexOf(scores.reduce((a, b) => extreme(a, b)));
}

function bounded({ low, high, lowAt, highAt }: FieldBounds, corner: (index: number) => Corner): Bounded {
  return {
    low,
    high,
    ...(lowAt === undefined ? {} : { lowAt: corner(lowAt) }),
    ...(highAt === undefined ? {} : { highAt: corner(highAt) }),
  };
}

/**
 * A check with the doubt taken out that the ranges themselves answer.
 *
 * A two-wire run at one supply figure is `uncertain` because it has one figure; here that figure is an end of a range.
 */
function withoutRangedDoubt(check: Check, ranged: ReadonlySet<string>): Check {
  const { verdict, deciding, margin, limit } = check;
  if (verdict !== 'uncertain' || !deciding?.every(({ parameter }) => ranged.has(parameter))) return check;
  return { ...check, verdict: verdictOf(margin, limit, MARGINAL_BELOW) };
}

function boundedChecks(lists: readonly (readonly Check[])[], corner: (index: number) => Corner): BoundedCheck[] {
  const names = [...new Set(lists.flatMap((checks) => checks.map(({ name }) => name)))];
  return names.map((name) => {
    const found = lists.flatMap((checks, at) => checks.filter((check) => check.name === name).map((check) => ({ check, at })));
    const worst = found.reduce((a, b) => (b.check.marginFraction < a.check.marginFraction ? b : a));
    const best = found.reduce((a, b) => (b.check.marginFraction > a.check.marginFraction ? b : a));
    // Where a corner has no such check, the line carries nothing there, or the rule has nothing to say.
    const verdicts = lists.map((checks): Verdict => {
      const check = checks.find((one) => one.name === name);
      return check?.verdict ?? (isLostToCollapse(name, checks) ? 'fail' : 'pass');
    });
    const gone = lists.some((checks) => isLostToCollapse(name, checks) && !checks.some((one) => one.name === name));
    return {
      name,
      best: best.check,
      bestAt: corner(best.at),
      ...(gone ? {} : { worst: worst.check, worstAt: corner(worst.at) }),
      verdict: joinedVerdict(verdicts),
    };
  });
}

/** All good: the narrowest of them. All bad: `fail`. Anything else is not known. */
function joinedVerdict(verdicts: readonly Verdict[]): Verdict {
  if (verdicts.every((verdict) => verdict === 'fail')) return 'fail';
  if (verdicts.some((verdict) => verdict === 'fail' || verdict === 'uncertain')) return 'uncertain';
  return verdicts.includes('marginal') ? 'marginal' : 'pass';
}

/** Over some corners: the worst of what can be done at all, and of every check. */
function verdictOver(results: readonly unknown[], lists: readonly (readonly Check[])[]): Verdict {
  const feasible = joinedVerdict(results.map((result) => ((result as { feasible?: boolean }).feasible === false ? 'fail' : 'pass')));
  return worstVerdict([{ verdict: feasible }, ...boundedChecks(lists, () => ({}))]);
}

function decidingInputs(
  ranges: readonly FoundRange[],
  every: readonly number[],
  judge: (corners: readonly number[]) => Verdict,
): Deciding[] {
  const found = ranges.map(({ path }, i) => {
    const ends = [0, 1].map((end) => judge(every.filter((corner) => ((corner >> i) & 1) === end)) !== 'uncertain');
    return { path, ends: ends.filter(Boolean).length };
  });
  const both = found.filter(({ ends }) => ends === 2);
  return (both.length > 0 ? both : found.filter(({ ends }) => ends === 1)).map(({ path }) => ({ parameter: path }));
}
