/** Which run sits on which port of which switch, and which runs have no place. @module */
import { RUN_COLUMNS } from './columns/run-columns.ts';
import type { Finding } from './finding.ts';
import { type PortTrouble, portTrouble } from './read/port-trouble.ts';
import type { Schedule, ScheduledPoweredRun, ScheduledSwitch } from './schedule.ts';

/** The powered runs of a schedule on the switches that feed them. @internal */
export interface RunsOnPorts {
  /** The switch of each run, by its position in the schedule; absent for a two-wire run and a switch that is not listed. */
  readonly feeds: readonly (ScheduledSwitch | undefined)[];
  /** The runs that share the budget of each switch, by port; in the order of the schedule's switches. */
  readonly onPorts: ReadonlyMap<ScheduledSwitch, ReadonlyMap<number, ScheduledPoweredRun>>;
  /** The runs that are in no budget. */
  readonly outside: ReadonlySet<number>;
  readonly findings: readonly Finding[];
}

/** Puts every powered run on its port: first come, first served. @internal */
export function runsOnPorts({ runs, switches }: Schedule, file: string): RunsOnPorts {
  const byName = new Map<string, ScheduledSwitch>();
  const onPorts = new Map<ScheduledSwitch, Map<number, ScheduledPoweredRun>>();
  for (const entry of switches) {
    if (byName.has(entry.switch)) continue;
    byName.set(entry.switch, entry);
    onPorts.set(entry, new Map());
  }
  const names = [...byName.keys()];
  const findings: Finding[] = [];
  const outside = new Set<number>();
  const feeds = runs.map((run, index) => {
    if (run.kind !== 'powered') return undefined;
    const feed = byName.get(run.switch);
    const ports = feed === undefined ? undefined : onPorts.get(feed);
    const trouble = portTrouble(run, feed, ports?.get(run.port)?.run, names);
    if (trouble === undefined) ports?.set(run.port, run);
    else {
      outside.add(index);
      // Without any list of switches no switch is missing from it.
      if (switches.length > 0) findings.push(findingOf(run, file, trouble));
    }
    return feed;
  });
  return { feeds, onPorts, outside, findings };
}

function findingOf(run: ScheduledPoweredRun, file: string, { key, code, allowed, words }: PortTrouble): Finding {
  return {
    code,
    severity: 'error',
    file,
    ...(run.line === undefined ? {} : { line: run.line }),
    column: RUN_COLUMNS[key].title,
    received: String(run[key]),
    allowed,
    message: `run ${run.run}: ${words}`,
  };
}
