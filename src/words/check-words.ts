/** Checks in words: what they are called, their figures, and what to say when one is not met. @module */
import { checkNames, LIMITS } from '../limits/all.ts';
import { CABLE_CATEGORY } from '../limits/cable-category.ts';
import type { Check, CheckName } from '../limits/check.ts';
import { CONNECTIONS } from '../limits/connections.ts';
import { LIMIT_WORDS } from '../limits/limit-words.ts';
import { PSE_VOLTAGE } from '../limits/pse-voltage.ts';
import { requireObject, requireOneOf } from '../quantity/guards.ts';
import { amount, apart, brief, filled, percent } from './amount.ts';
import { UNIT_WORDS } from './unit-words.ts';
import { VERDICT_WORDS } from './verdict-words.ts';

/** A check as words need it: its limit in ohms is never spoken of. */
export type WordedCheck = Omit<Check, 'loop'>;

/** What a check does not know of its run. */
export interface RunFacts {
  /** The class that the port grants. */
  readonly grantedClass?: number | undefined;
  /** The class of the device. */
  readonly poeClass?: number | undefined;
  /** Type of the port. */
  readonly pseType?: number | undefined;
  /** Whose cabling rules apply. */
  readonly standard?: string | undefined;
}

/** Plain numbers without a unit. */
const COUNTED: readonly CheckName[] = /* @__PURE__ */ (() => [CONNECTIONS.name, CABLE_CATEGORY.name])();
const LIMIT_OF = /* @__PURE__ */ (() => new Map(LIMITS.map((limit) => [limit.name as CheckName, limit])))();

/**
 * What a check is called in reports.
 *
 * @param name - Its name, as in `pd-voltage`.
 * @returns Its title.
 * @throws {@link InputError} If there is no such check.
 * @example
 * checkTitle('pd-voltage'); // => 'Voltage the class needs'
 */
export function checkTitle(name: CheckName): string {
  requireOneOf(name, checkNames, 'name');
  return LIMIT_WORDS[name].title;
}

/**
 * A check as one line for a person: what it is called, its verdict and its figures; why, where it does not plainly pass.
 *
 * @param check - A check of any result.
 * @returns The line, rounded for reading.
 * @throws {@link InputError} If it is no check.
 * @example
 * const { checks } = powerAtPd({ poeClass: 3, resistance: 25 });
 * checks.map(describeCheck).at(-1); // => 'Voltage the class needs, FAIL: 34.66 V reach the device; its class needs at least 37 V'
 */
export function describeCheck(check: WordedCheck): string {
  requireObject(check, 'check', 'a check of a result');
  const title = checkTitle(check.name);
  requireOneOf(check.verdict, Object.keys(VERDICT_WORDS), 'check.verdict');
  const { value, limit } = checkFigures(check);
  const words = check.verdict === 'pass' ? `${value} (${limit})` : failing(check);
  return `${title}, ${VERDICT_WORDS[check.verdict].word}: ${words}`;
}

/** Value, limit and margin of a check for a table, each in no more columns than given (the sign of a limit apart). @internal */
export function checkFigures(check: WordedCheck, columns = 24): { value: string; limit: string; margin: string; share: string } {
  const [value, limit] = figures(check);
  return {
    value: within(value, check.value, check, columns),
    limit: `${sideOf(check) === 'at most' ? '≤' : '≥'} ${within(limit, check.limit, check, columns)}`,
    margin: within(difference(check), check.margin, check, columns),
    share: percent(check.marginFraction),
  };
}

/** Why a check is not plainly met, as the end of a sentence. @internal */
export function failing(
  check: WordedCheck,
  { grantedClass, poeClass = grantedClass, pseType, standard = 'the standard' }: RunFacts = {},
): string {
  const { name, unit, readings } = check;
  const { fails, failsElse = fails } = LIMIT_WORDS[name];
  // A port that grants less, a limit in another unit, a figure that may be read two ways.
  const isElse = failsElse.includes('{requestedClass}')
    ? poeClass !== grantedClass
    : readings !== undefined || unit !== LIMIT_OF.get(name)?.unit;
  const [value, limit] = figures(check);
  return filled(isElse ? failsElse : fails, {
    value,
    limit,
    class: grantedClass === undefined ? 'its class' : `class ${grantedClass}`,
    requestedClass: poeClass ?? '',
    type: pseType ?? '',
    standard,
    side: sideOf(check),
    ...(readings === undefined ? {} : { pairset: apart(readings.twoPair, readings.pairLoop, 'Ω')[0] }),
  });
}

/** A figure that is too long in full, rounded; what rounding hides the margin shows, as a power of ten. */
function within(text: string, value: number, { unit, margin }: WordedCheck, columns: number): string {
  if (text.length <= columns) return text;
  const { sign, factor } = UNIT_WORDS[unit];
  const power = (digits: number): string => `${(value * factor).toExponential(digits).replace('e+', 'e')} ${sign}`;
  if (value === margin) return power(0);
  const rounded = amount(value * factor, sign);
  return rounded.length <= columns ? rounded : power(1);
}

/** The voltage of a port has a window: the limit is whichever end is nearer. */
function sideOf({ name, value, limit, margin }: WordedCheck): 'at most' | 'at least' {
  if (name !== PSE_VOLTAGE.name) return LIMIT_OF.get(name)?.side ?? 'at most';
  return value <= limit === margin >= 0 ? 'at most' : 'at least';
}

/** Value and limit with their unit: a drop as a percentage, a count as it is. */
function figures({ name, value, limit, unit }: WordedCheck): [string, string] {
  if (COUNTED.includes(name)) return [String(value), String(limit)];
  const { sign, factor } = UNIT_WORDS[unit];
  return apart(value * factor, limit * factor, sign);
}

function difference({ name, margin, unit }: WordedCheck): string {
  if (COUNTED.includes(name)) return String(margin);
  if (unit === '1') return amount(margin * 100, '%');
  let decimals = unit === 'm' ? 1 : 2;
  while (margin !== 0 && decimals < 15 && Number(brief(margin, decimals)) === 0) decimals++;
  return amount(margin, unit, decimals);
}
