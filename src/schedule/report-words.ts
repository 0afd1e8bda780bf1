/** Parts that the text and the Markdown report say in the same words. @module */

import { source } from '../sources/source.ts';
import type { SourceKey } from '../sources/sources.ts';
import { amount, count, percent } from './amount.ts';
import { heatOf } from './bundle-words.ts';
import { CHECK_WORDS } from './check-words.ts';
import type { Report, ReportedPort, RunOutcome, SwitchReport } from './report.ts';

/** The outcomes from worst to best, with what they mean. @internal */
export const OUTCOMES: readonly { readonly outcome: RunOutcome; readonly word: string; readonly means: string }[] = [
  { outcome: 'fail', word: 'FAIL', means: 'a limit is not met' },
  { outcome: 'denied', word: 'DENIED', means: 'the switch has no power left for it' },
  { outcome: 'uncertain', word: 'uncertain', means: 'an answer is missing' },
  { outcome: 'marginal', word: 'marginal', means: 'close to a limit' },
  { outcome: 'pass', word: 'pass', means: '' },
];

/** What an outcome means, with the margin that was asked for. @internal */
export function meaning({ outcome, means }: (typeof OUTCOMES)[number], report: Report): string {
  return outcome === 'marginal' ? `less than ${percent(report.settings.marginalBelow)} from a limit` : means;
}

/** How the schedule was judged. @internal */
export function settingsInWords({ settings }: Report): string {
  const { cabling, budget } = settings;
  const rules = cabling === 'none' ? 'no cabling rules' : `cabling rules of ${cabling}`;
  const basis = budget.basis === 'class' ? 'the power of each class' : 'the power each device asks for';
  const policy =
    budget.policy === 'strict' ? 'lowest priority shed first' : 'lowest priority shed first, then what still fits admitted again';
  return `Judged hot, at the lowest supply voltage, every cable at its maximum; ${rules}; switches set aside ${basis}, ${policy}.`;
}

/** The whole report in one line. @internal */
export function oneLine(report: Report): string {
  const { runs, outcomes, findings } = report.totals;
  const parts = OUTCOMES.filter(({ outcome }) => outcomes[outcome] > 0).map(({ outcome, word }) => `${outcomes[outcome]} ${word}`);
  const errors = findings.error === 0 ? '' : `; ${count(findings.error, 'error')} in the files`;
  return `${count(runs, 'run')}${parts.length === 0 ? '' : `: ${parts.join(', ')}`}${errors}`;
}

/** Capacity, allocated and headroom of a switch; nothing where it has no budget. @internal */
export function budgetInWords({ budget }: SwitchReport): string[] {
  if (budget === undefined) return [];
  const { capacity, capacityBasis, allocated, headroom, use, demand, powered, denied } = budget;
  const basis = capacityBasis === 'published' ? 'published budget' : 'an ESTIMATE from supply ratings';
  const sentences = [
    `Capacity ${amount(capacity, 'W')} (${basis}); allocated ${amount(allocated, 'W')} to ${count(powered.length, 'port')}, ${percent(use)}; headroom ${amount(headroom, 'W')}.`,
  ];
  if (denied.length > 0) {
    sentences.push(`All its ports together want ${amount(demand, 'W')}: ${amount(demand - capacity, 'W')} more than there is.`);
  }
  return sentences;
}

/** A denied port, as in `port 24, Camera, foyer (CM-07): class 4, 30 W, priority low`. @internal */
export function deniedInWords({ port, run, device, grantedClass, power, priority }: ReportedPort): string {
  return `port ${port}, ${device === undefined ? run : `${device} (${run})`}: class ${grantedClass}, ${amount(power, 'W')}, priority ${priority}`;
}

/** The run closest to a limit. @internal */
export function worstInWords({ worstRun }: Report['totals']): string | undefined {
  if (worstRun === undefined) return undefined;
  const { run, check } = worstRun;
  const side = check.margin >= 0 ? 'left' : 'beyond the limit';
  return `${run}: ${CHECK_WORDS[check.name].title}, ${percent(Math.abs(check.marginFraction))} ${side}`;
}

/** Every document a limit of this report comes from, with how sure that is. @internal */
export function sourcesOf(report: Report): string[] {
  const keys = new Set<SourceKey>();
  for (const run of report.runs) {
    const { powerChecks, cablingChecks } = run;
    const heat = heatOf(run);
    for (const { source: key } of powerChecks) keys.add(key);
    for (const { source: key } of cablingChecks) keys.add(key);
    if (heat !== undefined) for (const { source: key } of heat.checks) keys.add(key);
  }
  for (const { budget } of report.switches) if (budget !== undefined) keys.add(budget.source);
  return [...keys].sort().map((key) => {
    const { title, locus, status } = source(key);
    return `[${status}] ${title}: ${locus}`;
  });
}
