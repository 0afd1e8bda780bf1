/** One run of a schedule, judged: what the core says of it, and what the schedule adds. @module */
import { CONDUCTOR_TEMPERATURE } from '../conductor/resistance-per-metre.ts';
import type { Aspect } from '../limits/limit.ts';
import { type Verdict, worse } from '../limits/verdict.ts';
import type { JudgedRun, RunVerdict } from '../plan/judged-run.ts';
import type { PoweredFacts } from '../plan/powered-input.ts';
import { judgePoweredRun } from '../plan/powered-run.ts';
import { remedies } from '../plan/remedies.ts';
import { supplyRange } from '../plan/two-wire-input.ts';
import { judgeTwoWireRun } from '../plan/two-wire-run.ts';
import { requireArray, requireInteger, requireObject } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import { asBuilt, measuredAgainstExpected } from './as-built.ts';
import { judgedInBundle } from './bundle-heat.ts';
import type { PoweredRunReport, ReportSettings, RunReport, TwoWireRunReport } from './report.ts';
import type { Draft, ScheduledPoweredRun, ScheduledRun, ScheduledSwitch, ScheduledTwoWireRun, UnreadCell } from './schedule.ts';
import type { SharedValues } from './shared-values.ts';

/** How every run of a schedule is judged. */
export type RunSettings = Pick<ReportSettings, 'cabling' | 'marginalBelow'>;

/** A powered run with what its switch's budget decided. @internal */
export function poweredReport(
  run: ScheduledPoweredRun,
  feed: ScheduledSwitch | undefined,
  settings: RunSettings,
  allocation: PoweredRunReport['allocation'],
  shared: SharedValues,
): PoweredRunReport {
  if (feed !== undefined && feed.switch !== run.switch) {
    throw new InputError('conflict', 'fedBy', `the switch that the run names, '${run.switch}'`, feed.switch);
  }
  const { cabling, marginalBelow } = settings;
  const described: PoweredFacts = { ...run.input, pseType: feed?.type, pseVoltage: feed?.minimumVoltage, cabling, marginalBelow };
  // Most runs are neither measured nor in a bundle that is known.
  const built = run.measured === undefined ? described : asBuilt(described, run.measured);
  const bundled = run.bundle === undefined ? undefined : judgedInBundle(built, run.bundle);
  const judged = bundled?.judged ?? judgePoweredRun(built);
  const input = bundled?.input ?? built;
  const { pseVoltage, operating, grantedClass } = judged;
  const verdict = withUnread(bundled === undefined ? judged.verdict : { ...judged.verdict, heat: bundled.verdict }, run.unread);
  const checks = shared.checks(bundled === undefined ? judged.checks : [...judged.checks, ...bundled.checks]);
  const pieces = input.installed.map((segment) => shared.piece(segment, 'installed'));
  for (const segment of input.cords ?? []) pieces.push(shared.piece(segment, 'cord'));
  const classLimits = shared.classLimits(judged.classLimits);
  const { poeClass, connections = 0 } = run.input;
  // One literal, and what may be absent put in after it: pieced together by spreads it takes several times the room.
  const report: Draft<PoweredRunReport> = {
    kind: 'powered',
    run: run.run,
    outcome: allocation === 'denied' && verdict.worst !== 'fail' ? 'denied' : verdict.worst,
    verdict: shared.verdict(verdict),
    switch: run.switch,
    port: run.port,
    priority: run.priority,
    poeClass,
    grantedClass,
    classLimits,
    supplyVoltage: shared.voltage(pseVoltage, pseVoltage),
    pseVoltage,
    pieces,
    connections,
    installedLength: judged.installedLength,
    channelLength: judged.channelLength,
    resistance: judged.resistance,
    at20: judged.at20,
    poweredLoop: judged.poweredLoop,
    meterReading: judged.meterReading,
    operating,
    available: judged.available,
    allowed: judged.allowed,
    checks,
    governing: checks[judged.checks.indexOf(judged.governing)] ?? judged.governing,
    assumptions: judged.assumptions,
    cautions: judged.cautions,
    doubts: judged.doubts,
    remedies: NONE,
    notes: NONE,
  };
  addRowFacts(report, run, judged);
  if (judged.pairsetCurrent !== undefined) report.pairsetCurrent = judged.pairsetCurrent;
  if (judged.conductorCurrent !== undefined) report.conductorCurrent = judged.conductorCurrent;
  if (judged.totalCurrent !== undefined) report.totalCurrent = judged.totalCurrent;
  if (judged.portVoltage !== undefined) report.portVoltage = judged.portVoltage;
  if (feed === undefined || grantedClass !== poeClass) report.notes = notesOn(poeClass, feed, classLimits.type, grantedClass);
  if (operating.feasible) report.cableHeat = operating.lineLoss;
  if (allocation !== undefined) report.allocation = allocation;
  const fails = verdict.power === 'fail' || verdict.cabling === 'fail';
  if (fails) addRemedies(report, () => remedies(input));
  if (bundled !== undefined) {
    report.heat = bundled.heat;
    const [hottest] = [...bundled.checks].sort((a, b) => a.marginFraction - b.marginFraction);
    if (verdict.heat === 'fail' && !fails && hottest !== undefined) report.governing = hottest;
  }
  const { measured } = run;
  if (measured !== undefined) {
    report.meterReading = judgePoweredRun(described).meterReading;
    const found = ifAny(() => measuredAgainstExpected(described, measured));
    if (found !== undefined) report.measured = found;
    else report.notes = [...report.notes, 'the reading could not be held beside what was expected; the run is judged by it'];
  }
  return report;
}

/** @internal */
export function twoWireReport(run: ScheduledTwoWireRun, { marginalBelow }: RunSettings, shared: SharedValues): TwoWireRunReport {
  const { cores } = run;
  if (cores !== undefined) requireInteger(cores, 1, MOST_CORES, 'cores');
  const input = { ...run.input, marginalBelow };
  const judged = judgeTwoWireRun(input);
  const { low, high } = supplyRange(input.supplyVoltage);
  const { conductor, length, temperature = CONDUCTOR_TEMPERATURE.default } = input;
  const verdict = withUnread(judged.verdict, run.unread);
  const checks = shared.checks(judged.checks);
  const { governing, operating, atHighest } = judged;
  const report: Draft<TwoWireRunReport> = {
    ...judged,
    run: run.run,
    outcome: verdict.worst,
    verdict: shared.verdict(verdict),
    supplyVoltage: shared.voltage(low, high),
    pieces: [{ cable: conductor.name, use: 'two-wire', length, temperature }],
    connections: run.input.connections ?? 0,
    checks,
    remedies: NONE,
    notes: NONE,
  };
  addRowFacts(report, run, judged);
  if (governing !== undefined) report.governing = checks[judged.checks.indexOf(governing)] ?? governing;
  // A constant power heats the cable most at the lowest voltage, a resistance at the highest.
  if (operating.feasible) report.cableHeat = Math.max(operating.lineLoss, atHighest.feasible ? atHighest.lineLoss : 0);
  if (verdict.power === 'fail') addRemedies(report, () => withCores(remedies(input), cores));
  return report;
}

const NONE: readonly never[] = [];

/** Puts in what may be absent. */
function addRowFacts(report: Draft<RunReport>, { device, line, unread }: ScheduledRun, { deciding }: JudgedRun): void {
  if (device !== undefined) report.device = device;
  if (line !== undefined) report.line = line;
  if (deciding !== undefined) report.deciding = deciding;
  if (unread !== undefined) report.unread = unread.map(({ column, words, bearsOn }) => ({ column, words, bearsOn: [...bearsOn] }));
}

function notesOn(poeClass: number, feed: ScheduledSwitch | undefined, type: number, grantedClass: number): string[] {
  const notes: string[] = [];
  if (feed === undefined) notes.push(`no switch is known: judged on a Type ${type} port, the weakest that serves class ${poeClass}`);
  if (grantedClass !== poeClass) notes.push(`a Type ${type} port grants class ${grantedClass} to this class ${poeClass} device`);
  return notes;
}

/** Puts in what would put a failing run right; a trial that goes wrong costs the remedies, never the verdict. */
function addRemedies(report: Draft<RunReport>, find: () => RunReport['remedies']): void {
  const found = ifAny(find);
  if (found !== undefined) report.remedies = found;
  else report.notes = [...report.notes, 'what would put it right could not be worked out'];
}

/** Cores each way in a four-pair cable. */
const MOST_CORES = 4;

/** Cores are counted from those that are joined already, and not beyond those there are. */
function withCores(found: RunReport['remedies'], cores: number | undefined): RunReport['remedies'] {
  if (cores === undefined) return found;
  return found
    .map((remedy) => (remedy.remedy === 'paralleled-cores' ? { ...remedy, from: cores, to: cores * remedy.to } : remedy))
    .filter(({ remedy, to }) => remedy !== 'paralleled-cores' || to <= MOST_CORES);
}

/** Something beyond the verdict; nothing where it cannot be worked out, whatever the reason. */
function ifAny<T>(find: () => T): T | undefined {
  try {
    return find();
  } catch {
    return undefined;
  }
}

/** The verdicts, at best uncertain where a cell that bears on them could not be read; and the worst of them. */
function withUnread(verdict: RunVerdict, unread: readonly UnreadCell[] | undefined): RunVerdict {
  if (unread === undefined && verdict.heat === undefined) return verdict;
  const bearing = new Set(bearingOf(unread ?? []));
  const judged: Draft<RunVerdict> = { ...verdict };
  let worst: Verdict = 'pass';
  for (const aspect of ['power', 'cabling', 'heat'] as const) {
    const known = verdict[aspect];
    if (known === undefined) continue;
    judged[aspect] = bearing.has(aspect) ? worse(known, 'uncertain') : known;
    worst = worse(worst, judged[aspect] as Verdict);
  }
  judged.worst = worst;
  return judged;
}

function bearingOf(unread: readonly UnreadCell[]): Aspect[] {
  requireArray(unread, 'unread', 'a list of cells that could not be read');
  return unread.flatMap((cell, index) => {
    requireObject(cell, `unread[${index}]`, 'an object with column, words and bearsOn');
    requireArray(cell.bearsOn, `unread[${index}].bearsOn`, 'a list of verdicts');
    return cell.bearsOn;
  });
}
