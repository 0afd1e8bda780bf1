/**
 * Small values that many runs of a schedule have in common, kept once.
 *
 * Not for time, but for room: a hundred thousand runs have a dozen checks each, and most of what these say is the same
 * few hundred times over. Sharing a value between runs is safe because a report is read-only.
 * @module
 */

import type { Segment } from '../cable/run-resistance.ts';
import { CONDUCTOR_TEMPERATURE } from '../conductor/resistance-per-metre.ts';
import type { Check, CheckName } from '../limits/check.ts';
import type { Verdict } from '../limits/verdict.ts';
import type { ReportedCheck, ReportedPiece, RunReport } from './report.ts';

/** Where values are kept while one schedule is judged. */
export interface Shelf {
  /** The checks of one run as a report has them, in exactly as much room as they need. */
  readonly checks: (checks: readonly Check[]) => readonly ReportedCheck[];
  readonly piece: (segment: Segment, use: ReportedPiece['use']) => ReportedPiece;
  readonly voltage: (low: number, high: number) => RunReport['supplyVoltage'];
  readonly verdict: (power: Verdict, cabling: Verdict | undefined) => RunReport['verdict'];
}

/** More different values than this are hardly shared by anything. */
const MOST_KEPT = 4096;

const NO_CHECKS: readonly ReportedCheck[] = [];

/** @internal */
export function emptyShelf(): Shelf {
  const checksByName = new Map<CheckName, Map<number, ReportedCheck>>();
  const cords = new Map<string, Map<number, ReportedPiece>>();
  const voltages = new Map<number, RunReport['supplyVoltage']>();
  const verdicts = new Map<string, RunReport['verdict']>();
  return { checks: shelvedChecks, piece, voltage, verdict };

  function shelvedChecks(checks: readonly Check[]): readonly ReportedCheck[] {
    return checks.length === 0 ? NO_CHECKS : checks.map(shelvedCheck);
  }

  function shelvedCheck(check: Check): ReportedCheck {
    if (!isOftenAlike(check.name)) return reported(check);
    let kept = checksByName.get(check.name);
    if (kept === undefined) {
      kept = new Map();
      checksByName.set(check.name, kept);
    }
    const known = kept.get(check.value);
    if (known !== undefined && known.limit === check.limit && known.verdict === check.verdict && known.published === check.published)
      return known;
    const fresh = reported(check);
    if (kept.size < MOST_KEPT) kept.set(check.value, fresh);
    return fresh;
  }

  function piece(
    { cable: { title }, length, temperature = CONDUCTOR_TEMPERATURE.default }: Segment,
    use: ReportedPiece['use'],
  ): ReportedPiece {
    if (use !== 'cord') return { cable: title, use, length, temperature };
    let kept = cords.get(title);
    if (kept === undefined) {
      kept = new Map();
      cords.set(title, kept);
    }
    const known = kept.get(length);
    if (known !== undefined && known.temperature === temperature) return known;
    const fresh: ReportedPiece = { cable: title, use, length, temperature };
    if (kept.size < MOST_KEPT) kept.set(length, fresh);
    return fresh;
  }

  function voltage(low: number, high: number): RunReport['supplyVoltage'] {
    const known = voltages.get(low);
    if (known !== undefined && known.high === high) return known;
    const fresh = { low, high };
    if (voltages.size < MOST_KEPT) voltages.set(low, fresh);
    return fresh;
  }

  function verdict(power: Verdict, cabling: Verdict | undefined): RunReport['verdict'] {
    const key = `${power} ${cabling}`;
    let known = verdicts.get(key);
    if (known === undefined) {
      known = cabling === undefined ? { power } : { power, cabling };
      verdicts.set(key, known);
    }
    return known;
  }
}

/** Checks about what is chosen from a list, rather than what follows from ohms. */
function isOftenAlike(name: CheckName): boolean {
  switch (name) {
    case 'pd-power':
    case 'material':
    case 'connections':
    case 'channel-length':
    case 'permanent-link-length':
    case 'cord-length':
    case 'conductor-gauge':
    case 'cable-temperature':
    case 'pse-voltage':
      return true;
    default:
      return false;
  }
}

/** The check without its limit in ohms, which the report has no use for. */
function reported({
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
}: Check): ReportedCheck {
  // Nearly all checks are of the first shape, and one literal takes less room than one with parts added to it.
  if (published === undefined && deciding === undefined && readings === undefined) {
    return { name, aspect, value, limit, unit, margin, marginFraction, verdict, source };
  }
  return {
    name,
    aspect,
    value,
    limit,
    ...(published === undefined ? {} : { published }),
    unit,
    margin,
    marginFraction,
    verdict,
    ...(deciding === undefined ? {} : { deciding }),
    ...(readings === undefined ? {} : { readings }),
    source,
  };
}
