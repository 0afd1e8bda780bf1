/** A whole schedule, judged: every run, every switch, the sums. @module */

import { MARGINAL_BELOW, requireMarginalBelow } from '../limits/held.ts';
import type { CablingStandard } from '../plan/cabling-rules.ts';
import { requireArray, requireObject, requireOneOf } from '../quantity/guards.ts';
import { isInputError } from '../quantity/input-error.ts';
import { refuseUnknown } from '../quantity/nearest.ts';
import { DATA_EDITION } from '../sources/data-edition.ts';
import { cautionsFor } from './cautions.ts';
import type { Finding } from './finding.ts';
import type { PoweredRunReport, Report, ReportSettings, RunReport, SwitchReport } from './report.ts';
import { poweredReport, twoWireReport } from './run-report.ts';
import { runsOnPorts } from './runs-on-ports.ts';
import type { Schedule, ScheduledRun, ScheduledSwitch } from './schedule.ts';
import { sharedValues } from './shared-values.ts';
import { bareSwitch, switchReport } from './switch-report.ts';
import { totalsOf } from './totals.ts';

/** How a schedule is judged. */
export interface CheckScheduleOptions {
  /** Whose cabling rules apply; `TIA-568` if absent. */
  readonly cabling?: CablingStandard | undefined;
  /** A margin under this fraction of the limit is marginal; 0.05 if absent. */
  readonly marginalBelow?: number | undefined;
  /** How the switches share out their power; by class and strictly if absent. */
  readonly budget?: Partial<ReportSettings['budget']> | undefined;
  /** What reading the schedule found; carried into the report. */
  readonly findings?: readonly Finding[] | undefined;
  /** Name of the file of runs, for findings; `runs` if absent. */
  readonly runsFile?: string | undefined;
  /** Name of the file of switches, for findings; `switches` if absent. */
  readonly switchesFile?: string | undefined;
}

/**
 * Judges every run of a schedule and every switch that feeds them.
 *
 * Every run that could be read is judged, whatever is wrong elsewhere: a run on a switch that is not listed is judged
 * on the weakest type of port that serves its class; a run on a port that is taken already, or that the switch does
 * not have, is judged and left out of the budget. Each such thing is a finding in the report.
 *
 * @param schedule - Runs and switches, as `parseSchedule` returns them.
 * @param options - Cabling rules, what counts as marginal, budget, the parser's findings.
 * @returns The report: plain data, unrounded, JSON-safe.
 * @throws {@link InputError} If the schedule is not one, or an option is not known.
 * @example Two cameras, and a switch with power for one
 * const input = { poeClass: 4, installed: [{ cable: cable('cat6'), length: 40 }], connections: 2 } as const;
 * const report = checkSchedule({
 *   runs: [
 *     { kind: 'powered', run: 'CM-01', switch: 'Foyer', port: 1, priority: 'low', input },
 *     { kind: 'powered', run: 'CM-02', switch: 'Foyer', port: 2, priority: 'high', input },
 *   ],
 *   switches: [{ switch: 'Foyer', type: 2, ports: 8, budget: 45 }],
 * });
 * report.runs.map(({ run, outcome }) => [run, outcome]); // => [['CM-01', 'denied'], ['CM-02', 'pass']]
 */
export function checkSchedule(schedule: Schedule, options: CheckScheduleOptions = {}): Report {
  requireObject(schedule, 'schedule', 'an object with runs and switches');
  requireArray(schedule.runs, 'schedule.runs', 'a list of runs');
  requireArray(schedule.switches, 'schedule.switches', 'a list of switches');
  requireObject(options, 'options', 'an object with cabling, marginalBelow, budget and findings');
  refuseUnknown(options, ['cabling', 'marginalBelow', 'budget', 'findings', 'runsFile', 'switchesFile'], 'options');
  const { findings: read = [], runsFile: file = 'runs', switchesFile = 'switches' } = options;
  requireArray(read, 'options.findings', 'a list of findings');
  const settings = settingsOf(options);

  const { feeds, onPorts, outside, findings: unplugged } = runsOnPorts(schedule, file);
  const findings = [...read];
  const known = new Set(read.map(place));
  for (const finding of unplugged) if (!known.has(place(finding))) findings.push(finding);

  const denied = new Map<ScheduledSwitch, Set<number>>();
  const switches: SwitchReport[] = [];
  for (const [entry, runs] of onPorts) {
    const report = attempt(
      () => switchReport(entry, runs, settings.budget),
      (why) => refused(`switch ${entry.switch}`, entry.line, switchesFile, why, 'its budget is not judged'),
    );
    switches.push(report ?? bareSwitch(entry, 'its power cannot be judged: see the findings'));
    if (report?.budget !== undefined) denied.set(entry, new Set(report.budget.denied.map(({ port }) => port)));
  }

  const shared = sharedValues();
  const runs: RunReport[] = [];
  for (let index = 0; index < schedule.runs.length; index++) {
    const run = schedule.runs[index] as ScheduledRun;
    const feed = feeds[index];
    const shed = feed === undefined || outside.has(index) ? undefined : denied.get(feed);
    const report = attempt(
      () => {
        if (run.kind !== 'powered') return twoWireReport(run, settings, shared);
        const allocation: PoweredRunReport['allocation'] = shed && (shed.has(run.port) ? 'denied' : 'allocated');
        return poweredReport(run, feed, settings, allocation, shared);
      },
      (why) => refused(`run ${run.run}`, run.line, file, why, 'the run is not judged'),
    );
    if (report !== undefined) runs.push(report);
  }
  return {
    file,
    settings,
    dataEdition: DATA_EDITION,
    runs,
    switches,
    totals: totalsOf(runs, findings),
    findings,
    cautions: cautionsFor(runs),
  };

  /** A figure that the arithmetic has no meaning for costs its own row and no other. */
  function attempt<T>(judge: () => T, finding: (why: string) => Finding): T | undefined {
    try {
      return judge();
    } catch (error) {
      if (!isInputError(error)) throw error;
      findings.push(finding(error.message));
      return undefined;
    }
  }
}

function settingsOf({ cabling = 'TIA-568', marginalBelow = MARGINAL_BELOW, budget = {} }: CheckScheduleOptions): ReportSettings {
  requireOneOf(cabling, ['TIA-568', 'ISO/IEC 11801', 'none'], 'options.cabling');
  requireMarginalBelow(marginalBelow);
  requireObject(budget, 'options.budget', 'an object with basis and policy');
  refuseUnknown(budget, ['basis', 'policy'], 'options.budget');
  const { basis = 'class', policy = 'strict' } = budget;
  requireOneOf(basis, ['class', 'requested'], 'options.budget.basis');
  requireOneOf(policy, ['strict', 'fill'], 'options.budget.policy');
  return { cabling, marginalBelow, budget: { basis, policy } };
}

/** The parser may have said it already, in its own file's words; without a line nothing tells two findings apart. */
function place({ code, file, line, allowed, message }: Finding): string {
  return line === undefined ? message : `${code} ${line} ${code === 'duplicate' ? allowed : ''} ${file}`;
}

function refused(who: string, line: number | undefined, file: string, why: string, so: string): Finding {
  return {
    code: 'value-out-of-range',
    severity: 'error',
    file,
    ...(line === undefined ? {} : { line }),
    received: who,
    allowed: 'figures that belong together',
    message: `${who}: ${why}; ${so}`,
  };
}
