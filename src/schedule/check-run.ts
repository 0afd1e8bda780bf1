/** One run of a schedule, judged. @module */

import type { Segment } from '../cable/run-resistance.ts';
import type { OperatingPoint } from '../circuit/operating-point.ts';
import { CONDUCTOR_TEMPERATURE } from '../conductor/resistance-per-metre.ts';
import { MARGINAL_BELOW } from '../limits/held.ts';
import { type Verdict, worse } from '../limits/verdict.ts';
import type { CablingStandard } from '../plan/cabling-rules.ts';
import type { PoweredFacts as PoweredRunInput } from '../plan/powered-input.ts';
import { judgePoweredRun as checkPoweredRun, type PoweredRun } from '../plan/powered-run.ts';
import { remedies } from '../plan/remedies.ts';
import { supplyRange } from '../plan/two-wire-input.ts';
import { judgeTwoWireRun as checkTwoWireRun } from '../plan/two-wire-run.ts';
import { requireArray, requireInteger, requireObject, requireOneOf } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Watts } from '../quantity/units.ts';
import { asBuilt, beside } from './as-built.ts';
import { judgedInBundle } from './bundle-heat.ts';
import type { FarEnd, PoweredRunReport, ReportedCheck, ReportedPiece, RunReport, TwoWireRunReport } from './report.ts';
import type { ScheduledPoweredRun, ScheduledRun, ScheduledSwitch, ScheduledTwoWireRun, UnreadCell } from './schedule.ts';
import { emptyShelf, type Shelf } from './shelf.ts';

/** How one run is judged. */
export interface CheckRunOptions {
  /** The switch that feeds it; the weakest type of port that may serve the class if absent. */
  readonly switch?: ScheduledSwitch | undefined;
  /** Whose cabling rules apply; `TIA-568` if absent. */
  readonly cabling?: CablingStandard | undefined;
  /** A margin under this fraction of the limit is marginal; 0.05 if absent. */
  readonly marginalBelow?: number | undefined;
}

/**
 * Judges one run of a schedule, and for one that fails finds the single changes that would put it right.
 *
 * A powered run is judged at the lowest voltage of its port, hot, with every cable at its maximum; a two-wire run at
 * the lowest voltage of its supply. The budget of the switch is another question: see {@link checkSchedule}.
 *
 * @param run - The run, as a schedule holds it.
 * @param options - The switch that feeds it, cabling rules, what counts as marginal.
 * @returns Loops [Ω], lengths [m], what arrives at the far end [V, W, A], checks, verdicts, remedies and notes.
 * @throws {@link InputError} If the run is not one of a schedule, a number in it is outside its domain, or the switch
 *   is not the one that the run names.
 * @example
 * const run = checkRun({
 *   kind: 'powered', run: 'CM-07', device: 'Camera, loading dock', switch: 'Stage rack', port: 7, priority: 'low',
 *   input: { poeClass: 4, installed: [{ cable: cable('cat6'), length: 94 }], connections: 2 },
 * });
 * [run.verdict.power, run.verdict.cabling, run.remedies.map(({ remedy, to }) => [remedy, to])];
 * // => ['pass', 'fail', [['shorter-run', 90], ['switch-between', 47]]]
 */
export function checkRun(run: ScheduledRun, options: CheckRunOptions = {}): RunReport {
  requireObject(run, 'run', 'a run of a schedule');
  requireObject(options, 'options', 'an object with switch, cabling and marginalBelow');
  requireOneOf(run.kind, ['powered', 'two-wire'], 'run.kind');
  requireObject(run.input, 'run.input', 'the facts of the run');
  return run.kind === 'powered' ? poweredReport(run, options, undefined, emptyShelf()) : twoWireReport(run, options, emptyShelf());
}

type Draft<T> = { -readonly [K in keyof T]: T[K] };

const NO_REMEDIES: RunReport['remedies'] = [];
const NO_NOTES: RunReport['notes'] = [];

/** A powered run with what its switch's budget decided. @internal */
export function poweredReport(
  run: ScheduledPoweredRun,
  { switch: feed, cabling = 'TIA-568', marginalBelow = MARGINAL_BELOW }: CheckRunOptions,
  allocation: PoweredRunReport['allocation'],
  shelf: Shelf,
): PoweredRunReport {
  if (feed !== undefined && feed.switch !== run.switch) {
    throw new InputError('conflict', 'options.switch', `the switch that the run names, '${run.switch}'`, feed.switch);
  }
  const input: PoweredRunInput = { ...run.input, pseType: feed?.type, pseVoltage: feed?.minimumVoltage, cabling, marginalBelow };
  // Most runs are neither measured nor in a bundle that is known.
  const built = run.measured === undefined ? input : asBuilt(input, run.measured);
  const bundled = run.bundle === undefined ? undefined : judgedInBundle(built, run.bundle);
  const judged = bundled === undefined ? checkPoweredRun(built) : bundled.judged;
  const heat = bundled === undefined ? undefined : { ...bundled.heat, verdict: notBetter(bundled.heat.verdict, 'heat', run.unread) };
  const { resistance, grantedClass, classLimits } = judged;
  const powerVerdict = notBetter(judged.verdict.power, 'power', run.unread);
  const cablingVerdict = cabling === 'none' ? 'pass' : notBetter(judged.verdict.cabling ?? 'pass', 'cabling', run.unread);
  const { poeClass, installed, cords, connections = 0 } = run.input;
  const fails = powerVerdict === 'fail' || cablingVerdict === 'fail';
  const worst = heat === undefined ? worse(powerVerdict, cablingVerdict) : worse(worse(powerVerdict, cablingVerdict), heat.verdict);
  const powerChecks = shelf.checks(judged.checks.filter(({ aspect }) => aspect === 'power'));
  const cablingChecks = shelf.checks(judged.checks.filter(({ aspect }) => aspect === 'cabling'));
  const at = judged.checks.indexOf(judged.governing);

  // One literal, and what may be absent put in after it: pieced together by spreads it takes several times as long.
  const report: Draft<PoweredRunReport> = {
    kind: 'powered',
    run: run.run,
    switch: run.switch,
    port: run.port,
    priority: run.priority,
    poeClass,
    grantedClass,
    pseType: classLimits.type,
    pairs: classLimits.pairs,
    supplyVoltage: shelf.voltage(judged.pseVoltage, judged.pseVoltage),
    pieces: piecesOf(bundled === undefined ? installed : bundled.input.installed, cords, shelf),
    connections,
    installedLength: judged.installedLength,
    channelLength: judged.channelLength,
    loops: { pairLoop: resistance.pairLoop, twoPair: resistance.twoPair, fourPair: resistance.fourPair },
    pairLoopAt20: judged.at20.pairLoop,
    meterReading: run.measured === undefined ? judged.meterReading : checkPoweredRun(input).meterReading,
    farEnd: poweredFarEnd(judged),
    availablePower: judged.available,
    allowedPower: judged.allowed,
    powerChecks,
    cablingChecks,
    verdict: shelf.verdict(powerVerdict, cabling === 'none' ? undefined : cablingVerdict),
    outcome: allocation === 'denied' && worst !== 'fail' ? 'denied' : worst,
    governing: (powerChecks[at] ?? cablingChecks[at - powerChecks.length]) as ReportedCheck,
    remedies: NO_REMEDIES,
    notes: feed !== undefined && grantedClass === poeClass ? NO_NOTES : notesOn(run, feed, classLimits.type, grantedClass),
  };
  if (fails) addRemedies(report, () => remedies(bundled === undefined ? built : bundled.input));
  if (run.device !== undefined) report.device = run.device;
  if (run.line !== undefined) report.line = run.line;
  if (allocation !== undefined) report.allocation = allocation;
  if (heat !== undefined) {
    report.heat = heat;
    const [hottest] = [...heat.checks].sort((a, b) => a.marginFraction - b.marginFraction);
    if (heat.verdict === 'fail' && !fails && hottest !== undefined) report.governing = hottest;
  }
  if (run.unread !== undefined) report.unread = run.unread.map(copied);
  const { measured } = run;
  if (measured !== undefined) {
    const found = extra(() => beside(input, measured));
    if (found !== undefined) report.measured = found;
    else report.notes = [...report.notes, 'the reading could not be held beside what was expected; the run is judged by it'];
  }
  return report;
}

/** @internal */
export function twoWireReport(
  run: ScheduledTwoWireRun,
  { marginalBelow = MARGINAL_BELOW }: CheckRunOptions,
  shelf: Shelf,
): TwoWireRunReport {
  if (run.cores !== undefined) requireInteger(run.cores, 1, MOST_CORES, 'run.cores');
  const input = { ...run.input, marginalBelow };
  const judged = checkTwoWireRun(input);
  const verdict = notBetter(judged.verdict.power, 'power', run.unread);
  const { low, high } = supplyRange(input.supplyVoltage);
  const { conductor, length, temperature = CONDUCTOR_TEMPERATURE.default } = input;
  const powerChecks = shelf.checks(judged.checks);
  const report: Draft<TwoWireRunReport> = {
    kind: 'two-wire',
    run: run.run,
    supplyVoltage: shelf.voltage(low, high),
    pieces: [{ cable: conductor.name, use: 'two-wire', length, temperature }],
    connections: input.connections ?? 0,
    installedLength: length,
    channelLength: length,
    loops: { pairLoop: judged.resistance },
    meterReading: judged.meterReading,
    farEnd: twoWireFarEnd(judged.operating, judged.atHighest),
    powerChecks,
    cablingChecks: shelf.checks([]),
    verdict: shelf.verdict(verdict, undefined),
    outcome: verdict,
    remedies: NO_REMEDIES,
    notes: NO_NOTES,
  };
  if (verdict === 'fail') addRemedies(report, () => ofCores(remedies(input), run.cores));
  if (judged.governing !== undefined) report.governing = powerChecks[judged.checks.indexOf(judged.governing)] as ReportedCheck;
  if (run.device !== undefined) report.device = run.device;
  if (run.line !== undefined) report.line = run.line;
  if (run.unread !== undefined) report.unread = run.unread.map(copied);
  return report;
}

function notesOn({ input }: ScheduledPoweredRun, feed: ScheduledSwitch | undefined, type: number, grantedClass: number): string[] {
  const notes: string[] = [];
  if (feed === undefined) notes.push(`no switch is known: judged on a Type ${type} port, the weakest that serves class ${input.poeClass}`);
  if (grantedClass !== input.poeClass)
    notes.push(`a Type ${type} port grants class ${grantedClass} to this class ${input.poeClass} device`);
  return notes;
}

/** Puts in what would put a failing run right; a trial that goes wrong costs the remedies, never the verdict. */
function addRemedies(report: Draft<RunReport>, find: () => RunReport['remedies']): void {
  const remedies = extra(find);
  if (remedies !== undefined) report.remedies = remedies;
  else report.notes = [...report.notes, 'what would put it right could not be worked out'];
}

/** Cores each way in a four-pair cable. */
const MOST_CORES = 4;

/** Cores are counted from those that are joined already, and not beyond those there are. */
function ofCores(remedies: RunReport['remedies'], cores: number | undefined): RunReport['remedies'] {
  if (cores === undefined) return remedies;
  return remedies
    .map((remedy) => (remedy.remedy === 'paralleled-cores' ? { ...remedy, from: cores, to: cores * remedy.to } : remedy))
    .filter(({ remedy, to }) => remedy !== 'paralleled-cores' || to <= MOST_CORES);
}

/** Something beyond the verdict; nothing where it cannot be worked out, whatever the reason. */
function extra<T>(find: () => T): T | undefined {
  try {
    return find();
  } catch {
    return undefined;
  }
}

/** A verdict, at best uncertain where something that bears on it could not be read. */
function notBetter(verdict: Verdict, side: UnreadCell['bearsOn'][number], unread: readonly UnreadCell[] | undefined): Verdict {
  if (unread === undefined) return verdict;
  requireArray(unread, 'run.unread', 'a list of cells that could not be read');
  for (const [index, cell] of unread.entries()) {
    requireObject(cell, `run.unread[${index}]`, 'an object with column, words and bearsOn');
    requireArray(cell.bearsOn, `run.unread[${index}].bearsOn`, 'a list of verdicts');
  }
  return unread.some(({ bearsOn }) => bearsOn.includes(side)) ? worse(verdict, 'uncertain') : verdict;
}

function copied({ column, words, bearsOn }: UnreadCell): UnreadCell {
  return { column, words, bearsOn: [...bearsOn] };
}

function piecesOf(installed: readonly Segment[], cords: readonly Segment[] | undefined, shelf: Shelf): ReportedPiece[] {
  const pieces = installed.map((segment) => shelf.piece(segment, 'installed'));
  if (cords !== undefined) for (const segment of cords) pieces.push(shelf.piece(segment, 'cord'));
  return pieces;
}

function poweredFarEnd(power: PoweredRun): FarEnd {
  if (!power.operating.feasible) return none(power.operating);
  return {
    feasible: true,
    voltage: power.operating.loadVoltage,
    power: power.operating.loadPower,
    totalCurrent: power.operating.current,
    pairsetCurrent: power.pairsetCurrent as number,
    conductorCurrent: power.conductorCurrent as number,
    cableHeat: power.operating.lineLoss,
  };
}

function twoWireFarEnd(lowest: OperatingPoint, highest: OperatingPoint): FarEnd {
  if (!lowest.feasible) return none(lowest);
  // A constant power heats the cable most at the lowest voltage, a resistance at the highest.
  const atHighest: Watts = highest.feasible ? highest.lineLoss : 0;
  return {
    feasible: true,
    voltage: lowest.loadVoltage,
    power: lowest.loadPower,
    totalCurrent: lowest.current,
    conductorCurrent: lowest.current,
    cableHeat: lowest.lineLoss > atHighest ? lowest.lineLoss : atHighest,
  };
}

function none({ maximumLoadPower, maximumCurrent }: OperatingPoint & { readonly feasible: false }): FarEnd {
  return { feasible: false, maximumPower: maximumLoadPower, maximumCurrent };
}
