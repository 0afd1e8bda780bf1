/** One switch of a schedule, judged: who gets power and who does not. @module */
import { grantedByType } from '../ethernet/assigned-class.ts';
import { poeClass } from '../ethernet/poe-class.ts';
import { type BudgetedPort, type BudgetPort, switchBudget } from '../plan/switch/switch-budget.ts';
import type { ReportedPort, ReportSettings, SwitchReport } from './report.ts';
import type { ScheduledPoweredRun, ScheduledSwitch } from './schedule.ts';

/**
 * A switch with the runs on its ports.
 *
 * @throws {@link InputError} If a power of the switch is outside its domain.
 * @internal
 */
export function switchReport(
  entry: ScheduledSwitch,
  plugged: ReadonlyMap<number, ScheduledPoweredRun>,
  settings: ReportSettings['budget'],
): SwitchReport {
  const { budget: capacity, supplies, systemLoad } = entry;
  const ports = [...plugged.values()].map((run) => wantedBy(run, entry, settings.basis));
  if (capacity !== undefined) return withBudget(switchBudget({ capacity, ports, ...settings }));
  if (supplies !== undefined) return withBudget(switchBudget({ supplies, systemLoad, ports, ...settings }));
  return bareSwitch(entry, 'neither a budget nor supplies are given: whether its power is enough is not judged');

  function withBudget({ assumptions, powered, denied, ...budget }: ReturnType<typeof switchBudget>): SwitchReport {
    return {
      ...facts(entry),
      budget: { ...budget, assumptions, powered: powered.map(withRun), denied: denied.map(withRun) },
      notes: assumptions,
    };
  }

  function withRun(port: BudgetedPort): ReportedPort {
    const { run, device } = plugged.get(port.port) as ScheduledPoweredRun;
    return { ...port, run, ...(device === undefined ? {} : { device }) };
  }
}

/** A switch whose budget is not judged, and why. @internal */
export function bareSwitch(entry: ScheduledSwitch, why: string): SwitchReport {
  return { ...facts(entry), notes: [why] };
}

function facts({ switch: name, type, ports, line }: ScheduledSwitch): Pick<SwitchReport, 'switch' | 'type' | 'ports' | 'line'> {
  return { switch: name, type, ports, ...(line === undefined ? {} : { line }) };
}

function wantedBy({ port, priority, input }: ScheduledPoweredRun, { type }: ScheduledSwitch, basis: 'class' | 'requested'): BudgetPort {
  const wanted = { port, priority, poeClass: input.poeClass, pseType: type };
  if (basis === 'class' || input.pdPower === undefined) return wanted;
  const granted = poeClass(grantedByType(input.poeClass, type), { pseType: type });
  // More than the class allows cannot be asked for: such a device is set aside its class, and fails its own check.
  return input.pdPower <= (granted.pdPowerLater ?? granted.pdPower) ? { ...wanted, requested: input.pdPower } : wanted;
}
