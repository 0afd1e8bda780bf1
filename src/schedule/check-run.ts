/** One run of a schedule, judged. @module */
import type { Segment } from '../cable/run-resistance.ts';
import { MARGINAL_BELOW, type Verdict } from '../circuit/check.ts';
import type { OperatingPoint } from '../circuit/operating-point.ts';
import type { PowerAtPd } from '../ethernet/power-at-pd.ts';
import type { CablingStandard } from '../plan/cabling-rules.ts';
import { checkPoweredRun, type PoweredRunInput } from '../plan/powered-run.ts';
import { poweredRunRemedies, twoWireRemedies } from '../plan/remedies.ts';
import { checkTwoWireRun, supplyRange } from '../plan/two-wire-run.ts';
import { requireObject, requireOneOf } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Watts } from '../quantity/units.ts';
import type { FarEnd, PoweredRunReport, ReportedPiece, RunReport, TwoWireRunReport } from './report.ts';
import type { ScheduledPoweredRun, ScheduledRun, ScheduledSwitch, ScheduledTwoWireRun } from './schedule.ts';

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
 * // => ['pass', 'fail', [['shorter-run', 90]]]
 */
export function checkRun(run: ScheduledRun, options: CheckRunOptions = {}): RunReport {
  requireObject(run, 'run', 'a run of a schedule');
  requireObject(options, 'options', 'an object with switch, cabling and marginalBelow');
  requireOneOf(run.kind, ['powered', 'two-wire'], 'run.kind');
  requireObject(run.input, 'run.input', 'the facts of the run');
  return run.kind === 'powered' ? poweredReport(run, options, undefined) : twoWireReport(run, options);
}

/** A powered run with what its switch's budget decided. @internal */
export function poweredReport(
  run: ScheduledPoweredRun,
  options: CheckRunOptions,
  allocation: PoweredRunReport['allocation'],
): PoweredRunReport {
  const { switch: source, cabling = 'TIA-568', marginalBelow = MARGINAL_BELOW } = options;
  if (source !== undefined && source.switch !== run.switch) {
    throw new InputError('conflict', 'options.switch', `the switch that the run names, '${run.switch}'`, source.switch);
  }
  const input: PoweredRunInput = { ...run.input, pseType: source?.type, pseVoltage: source?.minimumVoltage, cabling, marginalBelow };
  const judged = checkPoweredRun(input);
  const { power, resistance } = judged;
  const { type, pairs } = power.limits;
  const verdict = cabling === 'none' ? { power: judged.verdict.power } : judged.verdict;
  const fails = judged.verdict.power === 'fail' || judged.verdict.cabling === 'fail';
  const worst = worse(judged.verdict.power, judged.verdict.cabling);

  const notes: string[] = [];
  if (source === undefined)
    notes.push(`no switch is known: judged on a Type ${type} port, the weakest that serves class ${run.input.poeClass}`);
  if (judged.grantedClass !== run.input.poeClass) {
    notes.push(`a Type ${type} port grants class ${judged.grantedClass} to this class ${run.input.poeClass} device`);
  }
  return {
    kind: 'powered',
    ...named(run),
    switch: run.switch,
    port: run.port,
    priority: run.priority,
    ...(allocation === undefined ? {} : { allocation }),
    poeClass: run.input.poeClass,
    grantedClass: judged.grantedClass,
    pseType: type,
    pairs,
    supplyVoltage: { low: power.pseVoltage, high: power.pseVoltage },
    pieces: [...pieces(run.input.installed, 'installed'), ...pieces(run.input.cords ?? [], 'cord')],
    connections: run.input.connections ?? 0,
    installedLength: judged.installedLength,
    channelLength: judged.channelLength,
    loops: { pairLoop: resistance.pairLoop, twoPair: resistance.twoPair, fourPair: resistance.fourPair },
    pairLoopAt20: judged.at20.pairLoop,
    meterReading: judged.meterReading,
    farEnd: poweredFarEnd(power),
    availablePower: power.available,
    allowedPower: power.allowed,
    powerChecks: judged.powerChecks,
    cablingChecks: judged.cablingChecks,
    verdict,
    outcome: allocation === 'denied' && worst !== 'fail' ? 'denied' : worst,
    governing: judged.governing,
    remedies: fails ? poweredRunRemedies(input) : [],
    notes,
  };
}

/** @internal */
export function twoWireReport(run: ScheduledTwoWireRun, { marginalBelow = MARGINAL_BELOW }: CheckRunOptions): TwoWireRunReport {
  const input = { ...run.input, marginalBelow };
  const judged = checkTwoWireRun(input);
  const { low, high } = supplyRange(input.supplyVoltage);
  const { conductor, length, temperature = 20 } = input;
  return {
    kind: 'two-wire',
    ...named(run),
    supplyVoltage: { low, high },
    pieces: [{ cable: conductor.name, use: 'two-wire', length, temperature }],
    connections: input.connections ?? 0,
    installedLength: length,
    channelLength: length,
    loops: { pairLoop: judged.resistance },
    meterReading: judged.meterReading,
    farEnd: twoWireFarEnd(judged.atLowest, judged.atHighest),
    powerChecks: judged.checks,
    cablingChecks: [],
    verdict: { power: judged.verdict },
    outcome: judged.verdict,
    ...(judged.governing === undefined ? {} : { governing: judged.governing }),
    remedies: judged.verdict === 'fail' ? twoWireRemedies(input) : [],
    notes: [],
  };
}

const GRAVITY: Readonly<Record<Verdict, number>> = { pass: 0, marginal: 1, uncertain: 2, fail: 3 };

function worse(a: Verdict, b: Verdict): Verdict {
  return GRAVITY[b] > GRAVITY[a] ? b : a;
}

function named({ run, device, line }: ScheduledRun): { run: string; device?: string; line?: number } {
  return { run, ...(device === undefined ? {} : { device }), ...(line === undefined ? {} : { line }) };
}

function pieces(segments: readonly Segment[], use: ReportedPiece['use']): ReportedPiece[] {
  return segments.map(({ cable, length, temperature = 20 }) => ({ cable: cable.title, use, length, temperature }));
}

function poweredFarEnd(power: PowerAtPd): FarEnd {
  if (!power.feasible) return none(power.operating);
  return {
    feasible: true,
    voltage: power.operating.loadVoltage,
    power: power.operating.loadPower,
    totalCurrent: power.totalCurrent,
    pairsetCurrent: power.pairsetCurrent,
    conductorCurrent: power.conductorCurrent,
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
