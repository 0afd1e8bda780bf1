/** A judged run in sentences: what is the matter, what would put it right, what it is made of. @module */

import { BUNDLE_RISE_WORDS } from '../limits/bundle-rise.ts';
import { LIMIT_WORDS } from '../limits/limit-words.ts';
import { PD_POWER } from '../limits/pd-power.ts';
import type { Verdict } from '../limits/verdict.ts';
import { amount, count } from '../words/amount.ts';
import { failing } from '../words/check-words.ts';
import { askFor, DECIDING_WORDS } from '../words/deciding-words.ts';
import { describeRemedy } from '../words/remedy-words.ts';
import { VERDICT_WORDS } from '../words/verdict-words.ts';
import { bundleToDo, heatDoubt, heatOf } from './bundle-words.ts';
import type { ReportedCheck, ReportedPiece, RunReport } from './report.ts';
import type { UnreadCell } from './schedule.ts';

/** A run by its name and its device. @internal */
export function titleOf({ run, device }: RunReport): string {
  return device === undefined ? run : `${run}, ${device}`;
}

/** A verdict as a word that needs no colour: a failure stands out by its capitals. @internal */
export type VerdictWord = (typeof VERDICT_WORDS)[keyof typeof VERDICT_WORDS]['word'] | '-';

/** The two verdicts of a run as words; `DENIED` where power would do but the switch has none left. @internal */
export function verdictWords(run: RunReport): { power: VerdictWord; cabling: VerdictWord } {
  const { power, cabling } = run.verdict;
  return {
    power: isDenied(run) && power !== 'fail' ? VERDICT_WORDS.denied.word : word(power),
    cabling: cabling === undefined ? '-' : word(cabling),
  };
}

/** Whether a run passes every check with room to spare, whatever the switch has left for it. @internal */
export function isPlainPass(run: RunReport): boolean {
  const { verdict } = run;
  if ((heatOf(run)?.verdict ?? 'pass') !== 'pass') return false;
  return verdict.power === 'pass' && (verdict.cabling === undefined || verdict.cabling === 'pass');
}

/** Whether an answer is missing, whatever the switch has left for the run. @internal */
export function isUncertain({ outcome, verdict }: RunReport): boolean {
  return outcome === 'uncertain' || (outcome === 'denied' && (verdict.power === 'uncertain' || verdict.cabling === 'uncertain'));
}

/** @internal */
export function word(verdict: Verdict): VerdictWord {
  return VERDICT_WORDS[verdict].word;
}

/** @internal */
export function isDenied(run: RunReport): boolean {
  return run.kind === 'powered' && run.allocation === 'denied';
}

/** What is the matter with a run, worst first; nothing for a plain pass. @internal */
export function whatIsTheMatter(run: RunReport, standard: string): string[] {
  const sentences = [
    ...sideSentence('Power', run.verdict.power, run.powerChecks, run, standard),
    ...sideSentence('Cabling', run.verdict.cabling ?? 'pass', run.cablingChecks, run, standard),
  ];
  sentences.push(...heatSentences(run, standard));
  // Where it is not said already, as the reason of an uncertain verdict.
  const unsaid = (run.unread ?? []).filter(({ bearsOn }) => !bearsOn.some((side) => sideVerdict(run, side) === 'uncertain'));
  for (const { words } of unsaid) sentences.push(`${words}.`);
  if (run.kind === 'powered' && run.allocation === 'denied') {
    sentences.push(`Power is DENIED: ${run.switch} has none left for port ${run.port}, priority ${run.priority}.`);
  }
  return sentences;
}

function sideVerdict(run: RunReport, side: UnreadCell['bearsOn'][number]): Verdict | undefined {
  return side === 'heat' ? heatOf(run)?.verdict : run.verdict[side];
}

/** The words of the cells that could not be read and bear on a side. */
function unreadWords(run: RunReport, side: UnreadCell['bearsOn'][number]): string[] {
  return (run.unread ?? []).filter(({ bearsOn }) => bearsOn.includes(side)).map(({ words }) => words);
}

function heatSentences(run: RunReport, standard: string): string[] {
  const heat = heatOf(run);
  if (heat === undefined || heat.verdict === 'pass') return [];
  if (heat.verdict === 'uncertain') {
    const unread = unreadWords(run, 'heat');
    const isSettled = unread.length > 0 && heat.findings.length === 0 && heat.checks.every(({ verdict }) => verdict !== 'uncertain');
    return [`Heat is UNCERTAIN: ${[...unread, ...(isSettled ? [] : [heatDoubt(heat)])].join('; ')}.`];
  }
  const sentences = sideSentence('Heat', heat.verdict, heat.checks, run, standard);
  return sentences.length > 0 ? sentences : [`Heat FAILS: ${heatDoubt(heat)}.`];
}

function sideSentence(
  side: 'Power' | 'Cabling' | 'Heat',
  verdict: Verdict,
  checks: readonly ReportedCheck[],
  run: RunReport,
  standard: string,
): string[] {
  if (verdict === 'pass') return [];
  const concerned = checks.filter((check) => check.verdict === verdict);
  if (verdict === 'uncertain') {
    const unread = side === 'Heat' ? [] : unreadWords(run, side === 'Power' ? 'power' : 'cabling');
    const doubts = unread.length > 0 && concerned.length === 0 ? unread : [...unread, doubt(concerned, run, standard)];
    return [`${side} is UNCERTAIN: ${doubts.join('; ')}.`];
  }
  // A device that draws more than its port grants fails every other limit too: say the cause, not the effects.
  const [first, ...others] = concerned.sort(
    (a, b) => Number(b.name === PD_POWER.name) - Number(a.name === PD_POWER.name) || a.marginFraction - b.marginFraction,
  );
  if (first === undefined) return [];
  const more = others.length === 0 ? '' : ` (and ${count(others.length, 'more limit')}, below)`;
  return [`${side} ${verdict === 'fail' ? 'FAILS' : 'is marginal'}: ${reason(first, run, standard)}${more}.`];
}

function doubt(checks: readonly ReportedCheck[], run: RunReport, standard: string): string {
  const unstated = checks.find(({ readings }) => readings !== undefined);
  if (unstated !== undefined) return reason(unstated, run, standard);
  const deciding = new Set(checks[0]?.deciding?.map(({ parameter }) => parameter));
  const doubts = Object.entries(DECIDING_WORDS).flatMap(([parameter, words]) =>
    deciding.has(parameter) && words.doubt !== undefined ? [words.doubt] : [],
  );
  return doubts.length === 0 ? 'nothing is given that the voltage at the device could be held against' : doubts.join('; ');
}

function reason(check: ReportedCheck, run: RunReport, standard: string): string {
  return failing(check, run.kind === 'powered' ? { ...run, standard } : { standard });
}

/** What to do about a run: any one of these is enough. @internal */
export function whatToDo(run: RunReport): string[] {
  const heat = heatOf(run);
  const cooler = heat === undefined ? [] : bundleToDo(heat);
  // What is wrong with the bundle as well is not put right by anything else.
  if (run.remedies.length > 0 && heat?.verdict !== 'fail') return [...run.remedies.map(describeRemedy), ...cooler];
  if (run.outcome === 'fail') return cooler;
  const questions = new Set<string>((run.unread ?? []).map(({ column }) => `Put the cell ${column} right.`));
  for (const question of cooler) questions.add(question);
  for (const check of [...run.powerChecks, ...run.cablingChecks]) {
    if (check.verdict === 'uncertain') for (const deciding of check.deciding ?? []) questions.add(askFor(deciding));
  }
  if (run.outcome === 'uncertain' && questions.size === 0) questions.add(askFor({ parameter: 'minimumVoltage' }));
  return [...questions];
}

/** What to say of a failing run that no single change puts right. @internal */
export function combination(run: RunReport): string {
  const ways = new Set<string>();
  for (const { verdict, name } of checksOf(run)) if (verdict === 'fail') ways.add(LIMIT_WORDS[name].wayOut);
  if (heatOf(run)?.findings.includes('no-steady-state')) ways.add(BUNDLE_RISE_WORDS.wayOut);
  return `No single change that was tried puts it right; it takes ${[...ways].join(', and ')}${ways.size > 1 ? ', together' : ''}.`;
}

/** Every check of a run: power, cabling, heat. @internal */
export function checksOf(run: RunReport): ReportedCheck[] {
  return [...run.powerChecks, ...run.cablingChecks, ...(heatOf(run)?.checks ?? [])];
}

/** Where a run starts, and what it is asked to feed. @internal */
export function whereFrom(run: RunReport): string {
  if (run.kind === 'two-wire') {
    const { low, high } = run.supplyVoltage;
    return `Two-wire, supply ${low === high ? amount(low, 'V') : `${amount(low, 'V')} to ${amount(high, 'V')}`}`;
  }
  const granted = run.grantedClass === run.poeClass ? '' : ` (granted class ${run.grantedClass})`;
  return `${run.switch} port ${run.port}, Type ${run.pseType} at ${amount(run.supplyVoltage.low, 'V')}, class ${run.poeClass}${granted}, ${run.pairs} pairs, priority ${run.priority}`;
}

/** The pieces of a run, in order, as in `94 m Category 6 at 35 °C + 5 m Cord, 24 AWG at 20 °C; 2 connections`. @internal */
export function whatOf(run: RunReport): string {
  const pieces = run.pieces.map(pieceInWords).join(' + ');
  const channel = run.channelLength === run.installedLength ? '' : `; channel ${amount(run.channelLength, 'm')}`;
  return `${pieces}; ${count(run.connections, run.kind === 'powered' ? 'connection' : 'joint')}${channel}`;
}

function pieceInWords({ cable, length, temperature }: ReportedPiece): string {
  return `${amount(length, 'm')} ${cable} at ${amount(temperature, '°C')}`;
}

/** The loops of a run. @internal */
export function loopsInWords(run: RunReport): string {
  if (run.kind === 'two-wire') return `out and back ${amount(run.loops.pairLoop, 'Ω')}`;
  const { pairLoop, twoPair, fourPair } = run.loops;
  return `shorted pair ${amount(pairLoop, 'Ω')}, one pairset ${amount(twoPair, 'Ω')}, two pairsets ${amount(fourPair, 'Ω')}`;
}

/** What a meter should show. @internal */
export function meterInWords({ meterReading, kind }: RunReport): string {
  const what = kind === 'powered' ? 'one pair' : 'the pair';
  return `${amount(meterReading.nominal, 'Ω')} (usual copper) to ${amount(meterReading.maximum, 'Ω')} (the most allowed), ${what} shorted at the far end`;
}

/** What arrives at the far end. @internal */
export function farEndInWords(run: RunReport): string {
  const { farEnd } = run;
  if (!farEnd.feasible) {
    return `nothing lasting: the line can deliver at most ${amount(farEnd.maximumPower, 'W')}, and ${amount(farEnd.maximumCurrent, 'A')} into a short`;
  }
  const { voltage, power, totalCurrent, pairsetCurrent, conductorCurrent, cableHeat } = farEnd;
  const available = run.kind === 'powered' ? ` (${amount(run.availablePower, 'W')} available)` : '';
  const unasked = run.kind === 'powered' && run.grantedClass !== run.poeClass ? 'if it drew all it wants: ' : '';
  const currents =
    pairsetCurrent === undefined
      ? `${amount(totalCurrent, 'A')}`
      : `${amount(totalCurrent, 'A')} in all, ${amount(pairsetCurrent, 'A')} a pairset, ${amount(conductorCurrent, 'A')} a conductor`;
  return `${unasked}${amount(voltage, 'V')}, ${amount(power, 'W')}${available}; ${currents}; ${amount(cableHeat, 'W')} heat in the cable`;
}
