/** A judged run in sentences: what is the matter, what would put it right, what it is made of. @module */

import { BUNDLE_RISE_WORDS } from '../limits/bundle-rise.ts';
import type { Check } from '../limits/check.ts';
import { LIMIT_WORDS } from '../limits/limit-words.ts';
import { PD_POWER } from '../limits/pd-power.ts';
import type { Verdict } from '../limits/verdict.ts';
import type { Amperes, Metres } from '../quantity/units.ts';
import { amount, count } from '../words/amount.ts';
import { failing } from '../words/check-words.ts';
import { askFor, DECIDING_WORDS } from '../words/deciding-words.ts';
import { describeRemedy } from '../words/remedy-words.ts';
import { VERDICT_WORDS } from '../words/verdict-words.ts';
import { bundleToDo, heatDoubt } from './bundle-words.ts';
import type { RunReport } from './report.ts';

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
export function isPlainPass({ verdict }: RunReport): boolean {
  return verdict.worst === 'pass';
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

const SIDES = { power: 'Power', cabling: 'Cabling', heat: 'Heat' } as const;
type Side = keyof typeof SIDES;

/** What is the matter with a run, worst first; nothing for a plain pass. @internal */
export function whatIsTheMatter(run: RunReport, standard: string): string[] {
  const sentences = (Object.keys(SIDES) as Side[]).flatMap((side) => sideSentence(side, run, standard));
  // Where it is not said already, as the reason of an uncertain verdict.
  const unsaid = (run.unread ?? []).filter(({ bearsOn }) => !bearsOn.some((side) => run.verdict[side] === 'uncertain'));
  for (const { words } of unsaid) sentences.push(`${words}.`);
  if (run.kind === 'powered' && run.allocation === 'denied') {
    sentences.push(`Power is DENIED: ${run.switch} has none left for port ${run.port}, priority ${run.priority}.`);
  }
  return sentences;
}

function sideSentence(side: Side, run: RunReport, standard: string): string[] {
  const verdict = run.verdict[side];
  if (verdict === undefined || verdict === 'pass') return [];
  const name = SIDES[side];
  const concerned = run.checks.filter((check) => check.aspect === side && check.verdict === verdict);
  if (verdict === 'uncertain') return [`${name} is UNCERTAIN: ${doubts(side, concerned, run, standard).join('; ')}.`];
  // A device that draws more than its port grants fails every other limit too: say the cause, not the effects.
  const [first, ...others] = concerned.sort(
    (a, b) => Number(b.name === PD_POWER.name) - Number(a.name === PD_POWER.name) || a.marginFraction - b.marginFraction,
  );
  const more = others.length === 0 ? '' : ` (and ${count(others.length, 'more limit')}, below)`;
  const does = verdict === 'fail' ? 'FAILS' : 'is marginal';
  if (first !== undefined) return [`${name} ${does}: ${reason(first, run, standard)}${more}.`];
  return run.heat === undefined ? [] : [`${name} ${does}: ${heatDoubt(run.heat)}.`];
}

/** Why a verdict is open: cells that could not be read, and what the checks leave open. */
function doubts(side: Side, concerned: readonly Check[], run: RunReport, standard: string): string[] {
  const unread = (run.unread ?? []).filter(({ bearsOn }) => bearsOn.includes(side)).map(({ words }) => words);
  const isSettled = unread.length > 0 && concerned.length === 0;
  if (side !== 'heat' || run.heat === undefined) return isSettled ? unread : [...unread, doubt(concerned, run, standard)];
  return isSettled && run.heat.findings.length === 0 ? unread : [...unread, heatDoubt(run.heat)];
}

function doubt(checks: readonly Check[], run: RunReport, standard: string): string {
  const unstated = checks.find(({ readings }) => readings !== undefined);
  if (unstated !== undefined) return reason(unstated, run, standard);
  const deciding = new Set(checks[0]?.deciding?.map(({ parameter }) => parameter));
  const doubts = Object.entries(DECIDING_WORDS).flatMap(([parameter, words]) =>
    deciding.has(parameter) && words.doubt !== undefined ? [words.doubt] : [],
  );
  return doubts.length === 0 ? 'nothing is given that the voltage at the device could be held against' : doubts.join('; ');
}

function reason(check: Check, run: RunReport, standard: string): string {
  return failing(check, run.kind === 'powered' ? { ...run, pseType: run.classLimits.type, standard } : { standard });
}

/** What to do about a run: any one of these is enough. @internal */
export function whatToDo(run: RunReport): string[] {
  const { heat, verdict, outcome } = run;
  const cooler = heat === undefined ? [] : bundleToDo(heat, verdict.heat);
  // What is wrong with the bundle as well is not put right by anything else.
  if (run.remedies.length > 0 && verdict.heat !== 'fail') return [...run.remedies.map(describeRemedy), ...cooler];
  if (outcome === 'fail') return cooler;
  const questions = new Set<string>((run.unread ?? []).map(({ column }) => `Put the cell ${column} right.`));
  for (const question of cooler) questions.add(question);
  for (const check of run.checks) {
    if (check.verdict === 'uncertain' && check.aspect !== 'heat')
      for (const deciding of check.deciding ?? []) questions.add(askFor(deciding));
  }
  if (outcome === 'uncertain' && questions.size === 0) questions.add(askFor({ parameter: 'minimumVoltage' }));
  return [...questions];
}

/** What to say of a failing run that no single change puts right. @internal */
export function combination(run: RunReport): string {
  const ways = new Set<string>();
  for (const { verdict, name } of run.checks) if (verdict === 'fail') ways.add(LIMIT_WORDS[name].wayOut);
  if (run.heat?.findings.includes('no-steady-state')) ways.add(BUNDLE_RISE_WORDS.wayOut);
  return `No single change that was tried puts it right; it takes ${[...ways].join(', and ')}${ways.size > 1 ? ', together' : ''}.`;
}

/** Where a run starts, and what it is asked to feed. @internal */
export function whereFrom(run: RunReport): string {
  if (run.kind === 'two-wire') {
    const { low, high } = run.supplyVoltage;
    return `Two-wire, supply ${low === high ? amount(low, 'V') : `${amount(low, 'V')} to ${amount(high, 'V')}`}`;
  }
  const granted = run.grantedClass === run.poeClass ? '' : ` (granted class ${run.grantedClass})`;
  return `${run.switch} port ${run.port}, Type ${run.classLimits.type} at ${amount(run.supplyVoltage.low, 'V')}, class ${run.poeClass}${granted}, ${run.classLimits.pairs} pairs, priority ${run.priority}`;
}

/** Installed cable and cords of a run, one way. [m] @internal */
export function wholeLength(run: RunReport): Metres {
  return run.kind === 'powered' ? run.channelLength : run.length;
}

/** Through one conductor; nothing where the line does not carry the load. [A] @internal */
export function conductorCurrent(run: RunReport): Amperes | undefined {
  if (run.kind === 'powered') return run.conductorCurrent;
  return run.operating.feasible ? run.operating.current : undefined;
}

/** The pieces of a run, in order, as in `94 m Category 6 at 35 °C + 5 m Cord, 24 AWG at 20 °C; 2 connections`. @internal */
export function whatOf(run: RunReport): string {
  const pieces = run.pieces.map(({ cable, length, temperature }) => `${amount(length, 'm')} ${cable} at ${amount(temperature, '°C')}`);
  const hasCords = run.kind === 'powered' && run.channelLength !== run.installedLength;
  const channel = hasCords ? `; channel ${amount(run.channelLength, 'm')}` : '';
  return `${pieces.join(' + ')}; ${count(run.connections, run.kind === 'powered' ? 'connection' : 'joint')}${channel}`;
}

/** The loops of a run. @internal */
export function loopsInWords(run: RunReport): string {
  if (run.kind === 'two-wire') return `out and back ${amount(run.resistance, 'Ω')}`;
  const { pairLoop, twoPair, fourPair } = run.resistance;
  return `shorted pair ${amount(pairLoop, 'Ω')}, one pairset ${amount(twoPair, 'Ω')}, two pairsets ${amount(fourPair, 'Ω')}`;
}

/** What a meter should show. @internal */
export function meterInWords({ meterReading, kind }: RunReport): string {
  const what = kind === 'powered' ? 'one pair' : 'the pair';
  return `${amount(meterReading.nominal, 'Ω')} (usual copper) to ${amount(meterReading.maximum, 'Ω')} (the most allowed), ${what} shorted at the far end`;
}

/** What arrives at the far end. @internal */
export function farEndInWords(run: RunReport): string {
  const { operating, cableHeat = 0 } = run;
  if (!operating.feasible) {
    return `nothing lasting: the line can deliver at most ${amount(operating.maximumLoadPower, 'W')}, and ${amount(operating.maximumCurrent, 'A')} into a short`;
  }
  const { loadVoltage, loadPower, current } = operating;
  const available = run.kind === 'powered' ? ` (${amount(run.available, 'W')} available)` : '';
  const unasked = run.kind === 'powered' && run.grantedClass !== run.poeClass ? 'if it drew all it wants: ' : '';
  const shares =
    run.kind === 'powered' && run.pairsetCurrent !== undefined && run.conductorCurrent !== undefined
      ? ` in all, ${amount(run.pairsetCurrent, 'A')} a pairset, ${amount(run.conductorCurrent, 'A')} a conductor`
      : '';
  return `${unasked}${amount(loadVoltage, 'V')}, ${amount(loadPower, 'W')}${available}; ${amount(current, 'A')}${shares}; ${amount(cableHeat, 'W')} heat in the cable`;
}
