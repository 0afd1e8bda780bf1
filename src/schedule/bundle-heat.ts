/** What a bundle does to one run of a schedule. @module */
import type { Check } from '../limits/check.ts';
import type { Verdict } from '../limits/verdict.ts';
import { largestPassing } from '../plan/heat/bundle-remedies.ts';
import type { BundleFinding } from '../plan/heat/check-bundle.ts';
import { warmRun } from '../plan/heat/warm-run.ts';
import type { PoweredFacts } from '../plan/powered-input.ts';
import { judgePoweredRun, type PoweredRun } from '../plan/powered-run.ts';
import type { ReportedHeat } from './report.ts';
import type { ScheduledPoweredRun } from './schedule.ts';

/** A run as warm as its bundle makes it. */
export interface JudgedInBundle {
  readonly judged: PoweredRun;
  /** The run with its conductors as warm as they get, for what is asked of it next. */
  readonly input: PoweredFacts;
  readonly heat: ReportedHeat;
  /** Of heat; of several pieces those of the one that is nearest to its limits. */
  readonly checks: readonly Check[];
  /** Of heat. */
  readonly verdict: Verdict;
}

/** @internal */
export function judgedInBundle(input: PoweredFacts, { cables, installation }: NonNullable<ScheduledPoweredRun['bundle']>): JudgedInBundle {
  const warm = warmRun({ ...input, bundle: cables, installation });
  if (!warm.feasible) {
    const { reason } = warm;
    return {
      judged: reason === 'wound-drum' ? judgePoweredRun(input) : warm.run,
      input,
      heat: { cables, installation, findings: reason === 'collapse' ? [] : [reason] },
      checks: [],
      // Where the line collapses there is no current to make heat: power says it all.
      verdict: reason === 'collapse' ? 'pass' : warm.verdict,
    };
  }
  const { run: judged, pieces, verdict } = warm;
  const isGood = (verdict === 'pass' || verdict === 'marginal') && judged.verdict.worst !== 'fail';
  const largest = isGood ? undefined : largestBundle(input, cables, installation);
  return {
    judged,
    input: { ...input, installed: input.installed.map((piece, index) => ({ ...piece, temperature: pieces[index]?.temperature })) },
    heat: {
      cables,
      installation,
      rise: Math.max(...pieces.map(({ rise }) => rise)),
      temperature: Math.max(...pieces.map(({ temperature }) => temperature)),
      findings: [...new Set<BundleFinding>(pieces.flatMap(({ bundle }) => bundle.findings))],
      ...(largest === undefined ? {} : { largestBundle: largest }),
    },
    checks: pieces.map(({ bundle }) => bundle.checks).sort((a, b) => closest(a) - closest(b))[0] ?? [],
    verdict,
  };
}

function closest(checks: readonly Check[]): number {
  return Math.min(...checks.map(({ marginFraction }) => marginFraction));
}

/** The most cables with which the run passes everything: power, cabling and heat. */
function largestBundle(input: PoweredFacts, cables: number, installation: ReportedHeat['installation']): number | undefined {
  try {
    const largest = largestPassing(cables, (bundle) => {
      const warm = warmRun({ ...input, bundle, installation });
      if (!warm.feasible || (warm.verdict !== 'pass' && warm.verdict !== 'marginal')) return false;
      return warm.run.verdict.worst !== 'fail';
    });
    return largest > 0 ? largest : undefined;
  } catch {
    // A trial that goes wrong costs the advice, never the verdict.
    return undefined;
  }
}
