/** What a bundle does to one run of a schedule. @module */
import { worstVerdict } from '../limits/verdict.ts';
import { largestPassing } from '../plan/heat/bundle-remedies.ts';
import type { BundleFinding } from '../plan/heat/check-bundle.ts';
import { type WarmRun, warmRun } from '../plan/heat/warm-run.ts';
import type { PoweredFacts as PoweredRunInput } from '../plan/powered-input.ts';
import { judgePoweredRun as checkPoweredRun, type PoweredRun } from '../plan/powered-run.ts';
import type { ReportedHeat } from './report.ts';
import type { ScheduledPoweredRun } from './schedule.ts';

/** A run as warm as its bundle makes it. */
export interface JudgedInBundle {
  readonly judged: PoweredRun;
  /** The run with its conductors as warm as they get, for what is asked of it next. */
  readonly input: PoweredRunInput;
  readonly heat: ReportedHeat;
}

/** @internal */
export function judgedInBundle(
  input: PoweredRunInput,
  { cables, installation }: NonNullable<ScheduledPoweredRun['bundle']>,
): JudgedInBundle {
  const warm = warmRun({ ...input, bundle: cables, installation });
  if (!warm.feasible) return unsettled(warm, input, cables, installation);
  const { run: judged, pieces, checks, verdict } = warm;
  const hottest = pieces.reduce(
    (most, piece) => (piece.temperature > most.temperature ? piece : most),
    pieces[0] as (typeof pieces)[number],
  );
  const { power, cabling } = judged.verdict;
  const isGood = (verdict === 'pass' || verdict === 'marginal') && power !== 'fail' && cabling !== 'fail';
  const largest = isGood ? undefined : largestBundle(input, cables, installation);
  return {
    judged,
    input: { ...input, installed: input.installed.map((piece, index) => ({ ...piece, temperature: pieces[index]?.temperature })) },
    heat: {
      cables,
      installation,
      ...(pieces.length === 0 ? {} : { rise: Math.max(...pieces.map(({ rise }) => rise)), temperature: hottest.temperature }),
      // Of several pieces the one that is nearest to its limits.
      checks: (pieces.map(({ bundle }) => bundle.checks).sort((a, b) => closest(a) - closest(b))[0] ?? []).map(
        ({ loop: _loop, ...check }) => check,
      ),
      verdict: pieces.length === 0 ? worstVerdict(checks) : verdict,
      findings: [...new Set<BundleFinding>(pieces.flatMap(({ bundle }) => bundle.findings))],
      ...(largest === undefined ? {} : { largestBundle: largest }),
    },
  };
}

function closest(checks: readonly { readonly marginFraction: number }[]): number {
  return Math.min(...checks.map(({ marginFraction }) => marginFraction));
}

function unsettled(
  warm: WarmRun & { readonly feasible: false },
  input: PoweredRunInput,
  cables: number,
  installation: ReportedHeat['installation'],
): JudgedInBundle {
  const findings: BundleFinding[] = warm.reason === 'collapse' ? [] : [warm.reason];
  // Where the line collapses there is no current to make heat: power says it all.
  const verdict = warm.reason === 'collapse' ? 'pass' : warm.verdict;
  const judged = warm.reason === 'wound-drum' ? checkPoweredRun(input) : warm.run;
  return { judged, input, heat: { cables, installation, checks: [], verdict, findings } };
}

/** The most cables with which the run passes everything: power, cabling and heat. */
function largestBundle(input: PoweredRunInput, cables: number, installation: ReportedHeat['installation']): number | undefined {
  try {
    const largest = largestPassing(cables, (bundle) => {
      const warm = warmRun({ ...input, bundle, installation });
      if (!warm.feasible || (warm.verdict !== 'pass' && warm.verdict !== 'marginal')) return false;
      return warm.run.verdict.power !== 'fail' && warm.run.verdict.cabling !== 'fail';
    });
    return largest > 0 ? largest : undefined;
  } catch {
    // A trial that goes wrong costs the advice, never the verdict.
    return undefined;
  }
}
