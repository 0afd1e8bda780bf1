/**
 * Small values that many runs of a schedule have in common, kept once.
 *
 * Not for time, but for room: a hundred thousand runs have a dozen checks each, and most of what these say is the same
 * few hundred times over. Sharing a value between runs is safe because a report is read-only.
 * @module
 */

import type { Segment } from '../cable/run-resistance.ts';
import { CONDUCTOR_TEMPERATURE } from '../conductor/resistance-per-metre.ts';
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
const OFTEN_ALIKE: readonly CheckName[] = /* @__PURE__ */ (() =>
  LIMITS.filter((limit: Limit) => limit.asResistance === undefined && limit.unit !== 'Ω').map(({ name }) => name))();

/** @internal */
export function sharedValues(): SharedValues {
  const checksByName = new Map<CheckName, Map<number, Check>>(OFTEN_ALIKE.map((name) => [name, new Map()]));
  const cords = new Map<string, Map<number, ReportedPiece>>();
  const voltages = new Map<number, RunReport['supplyVoltage']>();
  const verdicts = new Map<string, RunVerdict>();
  const classes = new Map<number, PoeClass>();
  return {
    checks: (checks) => checks.map(sharedCheck),
    piece: ({ cable: { title }, length, temperature = CONDUCTOR_TEMPERATURE.default }, use) =>
      use === 'cord' ? sharedCord(title, length, temperature) : { cable: title, use, length, temperature },
    voltage: (low, high) => {
      const known = voltages.get(low);
      if (known !== undefined && known.high === high) return known;
      const fresh = { low, high };
      if (voltages.size < MOST_KEPT) voltages.set(low, fresh);
      return fresh;
    },
    verdict: (verdict) => {
      const { power, cabling = '', heat = '' } = verdict;
      return once(verdicts, `${power} ${cabling} ${heat}`, () => verdict);
    },
    classLimits: (limits) => once(classes, limits.poeClass * 100 + limits.type * 10 + limits.pairs, () => limits),
  };

  function sharedCheck(check: Check): Check {
    const values = checksByName.get(check.name);
    if (values === undefined) return compact(check);
    const known = values.get(check.value);
    if (known !== undefined && known.limit === check.limit && known.verdict === check.verdict && known.published === check.published)
      return known;
    const fresh = compact(check);
    if (values.size < MOST_KEPT) values.set(check.value, fresh);
    return fresh;
  }

  function sharedCord(cable: string, length: number, temperature: number): ReportedPiece {
    const lengths = once(cords, cable, () => new Map<number, ReportedPiece>());
    const known = lengths.get(length);
    if (known !== undefined && known.temperature === temperature) return known;
    const fresh: ReportedPiece = { cable, use: 'cord', length, temperature };
    if (lengths.size < MOST_KEPT) lengths.set(length, fresh);
    return fresh;
  }
}

function once<Key, Value>(known: Map<Key, Value>, key: Key, make: () => Value): Value {
  const found = known.get(key);
  if (found !== undefined) return found;
  const made = make();
  if (known.size < MOST_KEPT) known.set(key, made);
  return made;
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
