/** From the rows of a table to the switches of a schedule. @module */
import { poeClass } from '../../ethernet/poe-class.ts';
import { PSE_VOLTAGE_MAX } from '../../ethernet/port-table.ts';
import { keysOf } from '../columns/column-use.ts';
import { SWITCH_COLUMNS, type SwitchColumns } from '../columns/switch-columns.ts';
import type { Draft, ScheduledSwitch } from '../schedule.ts';
import type { FindingList } from './findings.ts';
import { type RowReader, rowReader } from './row-reader.ts';
import { type SwitchList, switchList } from './switch-list.ts';
import type { Table } from './table.ts';

/**
 * The switches of a table.
 *
 * @param table - The rows.
 * @param findings - Where everything wrong, doubtful or assumed is noted.
 * @returns The switches that could be read, and the list in which runs look theirs up.
 * @internal
 */
export function rowsToSwitches(table: Table<SwitchColumns>, findings: FindingList): { switches: ScheduledSwitch[]; list: SwitchList } {
  const reader = rowReader(SWITCH_COLUMNS, table, findings);
  const switches: ScheduledSwitch[] = [];
  const unusable = new Set<string>();
  const lines = new Map<string, number>();
  for (const key of keysOf(SWITCH_COLUMNS)) {
    if (SWITCH_COLUMNS[key].needed === 'always' && table.columns[key] === undefined) reader.noColumn(key, 'no switch can be used');
  }
  for (const row of table.rows) {
    reader.begin(row, 'a switch without a name');
    const name = reader.cell('switch').value;
    if (name !== undefined) reader.begin(row, `switch ${name}`);
    else if (table.columns.switch !== undefined) reader.say('switch', 'missing-value', 'error', 'it is not used');
    const type = reader.needed('type');
    const ports = reader.needed('ports');
    if (name === undefined) continue;
    const before = lines.get(name);
    if (before !== undefined) {
      const words = `it is on line ${before} already; this row is not used`;
      reader.say('switch', 'duplicate', 'error', words, 'a name that no other switch has');
      continue;
    }
    lines.set(name, row.line);
    if (type === undefined || ports === undefined) unusable.add(name);
    else switches.push(withFigures(reader, { switch: name, type, ports, line: row.line }));
  }
  return { switches, list: switchList(switches, unusable) };
}

/** Lowest voltage at the port by type, 1 to 4. */
const LOWEST: readonly number[] = /* @__PURE__ */ (() =>
  ([1, 2, 3, 4] as const).map((pseType) => poeClass(1, { pseType }).pseVoltageMin))();

/** A switch with its power and its voltage. */
function withFigures(reader: RowReader<SwitchColumns>, entry: Draft<ScheduledSwitch>): ScheduledSwitch {
  const budget = reader.optional('budget');
  const ratings = reader.optional('supplies');
  const systemLoad = reader.optional('systemLoad');
  if (budget !== undefined) {
    entry.budget = budget;
    const spare = ratings !== undefined ? 'supplies' : systemLoad !== undefined ? 'systemLoad' : undefined;
    if (spare !== undefined) {
      const words = `it has a published budget for its ports; ${SWITCH_COLUMNS[spare].title} is not used`;
      reader.say(spare, 'conflicting-values', 'warning', words, 'a budget, or supplies with a system load');
    }
  } else if (ratings !== undefined) {
    entry.supplies = ratings.map((power) => ({ power }));
    if (systemLoad !== undefined) entry.systemLoad = systemLoad;
    else if (reader.isEmpty('systemLoad')) reader.noteDefault('systemLoad');
  } else if (reader.isEmpty('budget') && reader.isEmpty('supplies')) {
    const words = 'neither a budget nor supplies; whether its power is enough is not judged';
    reader.say(undefined, 'missing-value', 'warning', words, 'a budget, or supplies');
  }
  const minimumVoltage = reader.orNoted('minimumVoltage');
  if (minimumVoltage === undefined) return entry;
  entry.minimumVoltage = minimumVoltage;
  const lowest = LOWEST[entry.type - 1] as number;
  if (minimumVoltage < lowest) {
    const words = `IEEE 802.3 has at least ${lowest} V at a Type ${entry.type} port; ${minimumVoltage} V is used as it stands`;
    reader.say('minimumVoltage', 'voltage-outside-type', 'warning', words, `${lowest} V to ${PSE_VOLTAGE_MAX} V for Type ${entry.type}`);
  }
  return entry;
}
