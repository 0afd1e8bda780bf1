/** The switches that a schedule lists, found by name. @module */
import type { ScheduledSwitch } from '../schedule.ts';

/** A list of switches. */
export interface SwitchList {
  readonly names: readonly string[];
  /** The switch of that name; letter case does not tell two apart where only one fits. */
  readonly find: (name: string) => ScheduledSwitch | undefined;
  /** Whether the list has a row of that name which cannot be used. */
  readonly isUnusable: (name: string) => boolean;
}

/** @internal */
export function switchList(switches: readonly ScheduledSwitch[], unusable: ReadonlySet<string>): SwitchList {
  const exact = new Map<string, ScheduledSwitch>();
  const loose = new Map<string, ScheduledSwitch | undefined>();
  for (const entry of switches) {
    if (exact.has(entry.switch)) continue;
    exact.set(entry.switch, entry);
    const small = entry.switch.toLowerCase();
    loose.set(small, loose.has(small) ? undefined : entry);
  }
  return {
    names: [...exact.keys()],
    find: (name) => exact.get(name) ?? loose.get(name.toLowerCase()),
    isUnusable: (name) => unusable.has(name),
  };
}
