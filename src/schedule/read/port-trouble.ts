/** What keeps a run from its port, in words. @module */
import type { FindingCode } from '../../words/finding-words.ts';
import type { ScheduledPoweredRun, ScheduledSwitch } from '../schedule.ts';
import { listed } from './findings.ts';

/** Why a run has no place on a switch. */
export interface PortTrouble {
  /** The column that says so. */
  readonly key: 'switch' | 'port';
  readonly code: FindingCode;
  readonly allowed: string;
  /** What is wrong and what comes of it, without the name of the run. */
  readonly words: string;
}

const LEFT_OUT = 'left out of the budget';

/**
 * Why a run cannot be put on its port; nothing where it can.
 *
 * @param feed - The switch that it names, if that is listed.
 * @param holder - The run that has its port already.
 * @param names - The switches that are listed.
 * @param isUnusable - Whether the switch is listed in a row that cannot be used.
 * @internal
 */
export function portTrouble(
  run: Pick<ScheduledPoweredRun, 'switch' | 'port'>,
  feed: ScheduledSwitch | undefined,
  holder: string | undefined,
  names: readonly string[],
  isUnusable = false,
): PortTrouble | undefined {
  const { switch: name, port } = run;
  if (feed === undefined) {
    const why = isUnusable ? 'cannot be used: see its own row' : 'is not listed';
    return {
      key: 'switch',
      code: 'unknown-switch',
      allowed: names.length === 0 ? 'a switch of the switch file' : `one of ${listed(names)}`,
      words: `switch ${name} ${why}; the run is judged on the weakest type of port that serves its class, and is in no budget`,
    };
  }
  if (port > feed.ports) {
    const words = `switch ${name} has ports 1 to ${feed.ports}, not ${port}; the run is judged, and ${LEFT_OUT}`;
    return { key: 'port', code: 'no-such-port', allowed: `1 to ${feed.ports}`, words };
  }
  return holder === undefined ? undefined : portTaken(run, holder);
}

/** A port that another run has already. @internal */
export function portTaken({ switch: name, port }: Pick<ScheduledPoweredRun, 'switch' | 'port'>, holder: string): PortTrouble {
  return {
    key: 'port',
    code: 'duplicate',
    allowed: 'a port that no other run has',
    words: `port ${port} of switch ${name} is taken by run ${holder}; this run is judged, and ${LEFT_OUT}`,
  };
}
