/** Parts that the text and the Markdown report say in the same words. @module */

import { source } from '../sources/source.ts';
import type { SourceKey } from '../sources/sources.ts';
import { amount, count, percent } from '../words/amount.ts';
import { checkTitle } from '../words/check-words.ts';
import { VERDICT_WORDS } from '../words/verdict-words.ts';
import type { Report, ReportedPort, RunOutcome, SwitchReport } from './report.ts';
import type { VerdictWord } from './run-words.ts';

const OUTCOMES = /* @__PURE__ */ (() => Object.keys(VERDICT_WORDS) as RunOutcome[])();

/** How many runs have each outcome, from worst to best, with what it means. @internal */
export function outcomesInWords({ totals, settings }: Report): { number: number; word: VerdictWord; means: string }[] {
  return OUTCOMES.filter((outcome) => totals.outcomes[outcome] > 0).map((outcome) => {
    const { word, means } = VERDICT_WORDS[outcome];
    const narrow = `less than ${percent(settings.marginalBelow)} from a limit`;
    return { number: totals.outcomes[outcome], word, means: outcome === 'marginal' ? narrow : means };
  });
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
  const { runs, findings } = report.totals;
  const parts = outcomesInWords(report).map(({ number, word }) => `${number} ${word}`);
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
  return `${run}: ${checkTitle(check.name)}, ${percent(Math.abs(check.marginFraction))} ${side}`;
}

/** What the run of {@link worstInWords} is: close to a limit, or worse. @internal */
export function worstLabel({ worstRun }: Report['totals']): string {
  return worstRun?.check.verdict === 'fail' ? 'Worst' : 'Closest to a limit';
}

/** Every document a limit of this report comes from, with how sure that is. @internal */
export function sourcesOf(report: Report): string[] {
  const keys = new Set<SourceKey>();
  for (const { checks } of report.runs) for (const { source: key } of checks) keys.add(key);
  for (const { budget } of report.switches) if (budget !== undefined) keys.add(budget.source);
  return [...keys].sort().map((key) => {
    const { title, locus, status } = source(key);
    return `[${status}] ${title}: ${locus}`;
  });
}
