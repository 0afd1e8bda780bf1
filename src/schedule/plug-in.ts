/** Which run sits on which port of which switch, and which runs have no place. @module */
import type { Finding } from './finding.ts';
import type { Schedule, ScheduledPoweredRun, ScheduledSwitch } from './schedule.ts';

/** The powered runs of a schedule on the switches that feed them. @internal */
export interface PluggedIn {
  /** The switch of each run, by its position in the schedule; absent for a two-wire run and a switch that is not listed. */
  readonly feeds: readonly (ScheduledSwitch | undefined)[];
  /** The runs that share the budget of each switch, by port; in the order of the schedule's switches. */
  readonly plugged: ReadonlyMap<ScheduledSwitch, ReadonlyMap<number, ScheduledPoweredRun>>;
  /** The runs that are in no budget. */
  readonly outside: ReadonlySet<number>;
  readonly findings: readonly Finding[];
}

/** Puts every powered run on its port: first come, first served. @internal */
export function plugIn({ runs, switches }: Schedule, file: string): PluggedIn {
  const byName = new Map<string, ScheduledSwitch>();
  const plugged = new Map<ScheduledSwitch, Map<number, ScheduledPoweredRun>>();
  for (const entry of switches) {
    if (byName.has(entry.switch)) continue;
    byName.set(entry.switch, entry);
    plugged.set(entry, new Map());
  }
  const findings: Finding[] = [];
  const outside = new Set<number>();
  const feeds = runs.map((run, index) => {
    if (run.kind !== 'powered') return undefined;
    const feed = byName.get(run.switch);
    const ports = feed === undefined ? undefined : plugged.get(feed);
    const holder = ports?.get(run.port);
    if (feed !== undefined && run.port <= feed.ports && holder === undefined) ports?.set(run.port, run);
    else {
      outside.add(index);
      // Without any list of switches no switch is missing from it.
      if (switches.length > 0)
        findings.push(
          feed === undefined ? unknownSwitch(run, file, byName) : holder ? portTaken(run, file, holder) : noSuchPort(run, file, feed),
        );
    }
    return feed;
  });
  return { feeds, plugged, outside, findings };
}

function unknownSwitch(run: ScheduledPoweredRun, file: string, byName: ReadonlyMap<string, ScheduledSwitch>): Finding {
  const names = [...byName.keys()];
  const more = names.length > 8 ? ` and ${names.length - 8} more` : '';
  return {
    ...at(run, file, 'unknown-switch', 'Switch'),
    received: run.switch,
    allowed: names.length === 0 ? 'a switch of the switch file; there is none' : `one of ${names.slice(0, 8).join(', ')}${more}`,
    message: `run ${run.run}: switch ${run.switch} is not listed; the run is judged on the weakest type of port that serves its class, and is in no budget`,
  };
}

function noSuchPort(run: ScheduledPoweredRun, file: string, feed: ScheduledSwitch): Finding {
  return {
    ...at(run, file, 'no-such-port', 'Port'),
    received: String(run.port),
    allowed: `1 to ${feed.ports}`,
    message: `run ${run.run}: switch ${run.switch} has ports 1 to ${feed.ports}, not ${run.port}; the run is judged, and left out of the budget`,
  };
}

function portTaken(run: ScheduledPoweredRun, file: string, holder: ScheduledPoweredRun): Finding {
  return {
    ...at(run, file, 'duplicate', 'Port'),
    received: String(run.port),
    allowed: 'a port that no other run has',
    message: `run ${run.run}: port ${run.port} of switch ${run.switch} is taken by run ${holder.run}; this run is judged, and left out of the budget`,
  };
}

function at(
  { line }: ScheduledPoweredRun,
  file: string,
  code: Finding['code'],
  column: string,
): Omit<Finding, 'received' | 'allowed' | 'message'> {
  return { code, severity: 'error', file, ...(line === undefined ? {} : { line }), column };
}
