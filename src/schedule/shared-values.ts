/**
 * Small values that many runs of a schedule have in common, kept once.
 *
 * Not for time, but for room: a hundred thousand runs have a dozen checks each, and most of what these say is the same
 * few hundred times over. Sharing a value between runs is safe because a report is read-only.
 * @module
 */
import type { Segment } from '../cable/run-resistance.ts';
import type { PoeClass } from '../ethernet/poe-class.ts';
import { LIMITS } from '../limits/all.ts';
import type { Check, CheckName } from '../limits/check.ts';
import type { Limit } from '../limits/limit.ts';
import type { RunVerdict } from '../plan/judged-run.ts';
import type { ReportedPiece, RunReport } from './report.ts';
import type { Draft } from './schedule.ts';

/** Values that are kept while one schedule is judged. */
export interface SharedValues {
  readonly checks: (checks: readonly Check[]) => readonly Check[];
  readonly piece: (segment: Segment, use: ReportedPiece['use']) => ReportedPiece;
  readonly voltage: (low: number, high: number) => RunReport['supplyVoltage'];
  readonly verdict: (verdict: RunVerdict) => RunVerdict;
  readonly classLimits: (limits: PoeClass) => PoeClass;
}

/** More different values than this are hardly shared by anything. */
const MOST_KEPT = 4096;
/** Checks about what is chosen from a list, rather than what follows from ohms. */
const OFTEN_ALIKE: ReadonlySet<CheckName> = /* @__PURE__ */ (() =>
  new Set(LIMITS.filter((limit: Limit) => limit.asResistance === undefined).map(({ name }) => name)))();

/** @internal */
export function sharedValues(): SharedValues {
  const checksByName = new Map<CheckName, Map<number, Check>>();
  const cords = new Map<string, Map<number, ReportedPiece>>();
  const voltages = new Map<number, Map<number, RunReport['supplyVoltage']>>();
  const verdicts = new Map<string, RunVerdict>();
  const classes = new Map<number, PoeClass>();
  return {
    checks: (checks) =>
      checks.map((check) =>
        OFTEN_ALIKE.has(check.name) ? kept(checksByName, check.name, check.value, compact(check), isAlike) : compact(check),
      ),
    piece: ({ cable: { title }, length, temperature = 20 }, use) => {
      const piece = { cable: title, use, length, temperature };
      return use === 'cord' ? kept(cords, title, length, piece, (known) => known.temperature === temperature) : piece;
    },
    voltage: (low, high) => kept(voltages, low, high, { low, high }, () => true),
    verdict: (verdict) => once(verdicts, Object.values(verdict).join(' ') + (verdict.heat ?? ''), verdict),
    classLimits: (limits) => once(classes, limits.poeClass * 100 + limits.type * 10 + limits.pairs, limits),
  };
}

function once<Key, Value>(known: Map<Key, Value>, key: Key, value: Value): Value {
  const found = known.get(key);
  if (found !== undefined) return found;
  if (known.size < MOST_KEPT) known.set(key, value);
  return value;
}

/** The value that is kept under two keys, if it is the same; else the fresh one, which is then kept. */
function kept<Key, Inner, Value>(
  known: Map<Key, Map<Inner, Value>>,
  key: Key,
  inner: Inner,
  fresh: Value,
  isSame: (known: Value, fresh: Value) => boolean,
): Value {
  const values = once(known, key, new Map<Inner, Value>());
  const found = values.get(inner);
  if (found !== undefined && isSame(found, fresh)) return found;
  if (values.size < MOST_KEPT) values.set(inner, fresh);
  return fresh;
}

function isAlike(one: Check, other: Check): boolean {
  return one.limit === other.limit && one.verdict === other.verdict && one.published === other.published && one.aspect === other.aspect;
}

/** The check without its limit in ohms, which no report has a use for, in exactly as much room as it needs. */
function compact({
  name,
  aspect,
  value,
  limit,
  published,
  unit,
  margin,
  marginFraction,
  verdict,
  deciding,
  readings,
  source,
}: Check): Check {
  const check: Draft<Check> = { name, aspect, value, limit, unit, margin, marginFraction, verdict, source };
  if (published !== undefined) check.published = published;
  if (deciding !== undefined) check.deciding = deciding;
  if (readings !== undefined) check.readings = readings;
  return check;
}
