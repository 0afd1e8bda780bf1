/** Sums over a judged schedule. @module */
import type { Check } from '../limits/check.ts';
import type { Verdict } from '../limits/verdict.ts';
import type { Finding, FindingSeverity } from './finding.ts';
import type { ReportedPiece, ReportTotals, RunOutcome, RunReport } from './report.ts';

/** @internal */
export function totalsOf(runs: readonly RunReport[], findings: readonly Finding[]): ReportTotals {
  const outcomes: Record<RunOutcome, number> = { pass: 0, marginal: 0, uncertain: 0, fail: 0, denied: 0 };
  const power: Record<Verdict, number> = { pass: 0, marginal: 0, uncertain: 0, fail: 0 };
  const cabling: Record<Verdict, number> = { pass: 0, marginal: 0, uncertain: 0, fail: 0 };
  const severities: Record<FindingSeverity, number> = { error: 0, warning: 0, note: 0 };
  const cables = new Map<string, { cable: string; use: ReportedPiece['use']; length: number }>();
  let worst: { run: RunReport; check: Check } | undefined;
  let cableHeat = 0;

  for (const run of runs) {
    outcomes[run.outcome]++;
    power[run.verdict.power]++;
    if (run.verdict.cabling !== undefined) cabling[run.verdict.cabling]++;
    cableHeat += run.cableHeat ?? 0;
    for (const { cable, use, length } of run.pieces) {
      const key = `${use} ${cable}`;
      const sum = cables.get(key);
      if (sum === undefined) cables.set(key, { cable, use, length });
      else sum.length += length;
    }
    if (run.governing !== undefined && (worst === undefined || closer(run.governing, worst.check))) worst = { run, check: run.governing };
  }
  for (const { severity } of findings) severities[severity]++;
  return {
    runs: runs.length,
    outcomes,
    power,
    cabling,
    cables: [...cables.values()].sort((a, b) => USES.indexOf(a.use) - USES.indexOf(b.use) || (a.cable < b.cable ? -1 : 1)),
    ...(worst === undefined ? {} : { worstRun: worstRun(worst.run, worst.check) }),
    cableHeat,
    findings: severities,
  };
}

const USES: readonly ReportedPiece['use'][] = ['installed', 'cord', 'two-wire'];

/** A failing check before any other, then the smaller margin as a fraction of its limit. */
function closer(a: Check, b: Check): boolean {
  if ((a.verdict === 'fail') !== (b.verdict === 'fail')) return a.verdict === 'fail';
  return a.marginFraction < b.marginFraction;
}

function worstRun({ run, line }: RunReport, check: Check): ReportTotals['worstRun'] & {} {
  return { run, ...(line === undefined ? {} : { line }), check };
}
