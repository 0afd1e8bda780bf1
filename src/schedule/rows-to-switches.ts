/** From the rows of a table to the switches of a schedule. @module */
import type { PseType } from '../ethernet/class-table.ts';
import { poeClass } from '../ethernet/poe-class.ts';
import type { QuantityName } from '../quantity/parse-quantity.ts';
import { type Cell, type CellReader, cellReader, holds, nameReader, refused } from './cell.ts';
import { SWITCH_COLUMNS, type SwitchColumn } from './columns.ts';
import type { FindingList } from './findings.ts';
import { type QuantityStyle, readPieces, readQuantity, readWhole } from './read-quantity.ts';
import { rowFindings } from './row-findings.ts';
import { allowedInSwitch, type SwitchValues } from './row-schema.ts';
import type { ScheduledSwitch } from './schedule.ts';
import { type SwitchList, switchList } from './switch-list.ts';
import type { Table } from './table.ts';

type Draft<T> = { -readonly [K in keyof T]: T[K] };

const NOT_USED = 'the switch is not used';

// In small letters without blanks and hyphens.
const TYPES: Readonly<Record<string, PseType>> = {
  '1': 1,
  '2': 2,
  '3': 3,
  '4': 4,
  type1: 1,
  type2: 2,
  type3: 3,
  type4: 4,
  '802.3af': 1,
  '802.3aftype1': 1,
  '802.3at': 2,
  '802.3attype1': 1,
  '802.3attype2': 2,
  '802.3bttype3': 3,
  '802.3bttype4': 4,
};

/**
 * The switches of a table.
 *
 * @param table - The rows.
 * @param findings - Where everything wrong, doubtful or assumed is noted.
 * @returns The switches that could be read, and the list in which runs look theirs up.
 * @internal
 */
export function rowsToSwitches(table: Table<SwitchColumn>, findings: FindingList): { switches: ScheduledSwitch[]; list: SwitchList } {
  const { columns, decimalComma } = table;
  const said = rowFindings(SWITCH_COLUMNS, columns, findings, table.headerDoubt);
  const style = (key: SwitchColumn): QuantityStyle => ({ decimalComma, unit: columns[key]?.unit });
  const quantity = (key: SwitchColumn & keyof SwitchValues, name: QuantityName): CellReader<number> =>
    cellReader(columns[key], (text) => allowedInSwitch(readQuantity(text, name, style(key)), (value) => ({ [key]: value })));
  const read = {
    switch: nameReader(columns.switch),
    type: cellReader(columns.type, readType),
    ports: cellReader(columns.ports, (text) => allowedInSwitch(readWhole(text), (ports) => ({ ports }))),
    budget: quantity('budget', 'power'),
    supplies: cellReader(columns.supplies, (text) =>
      allowedInSwitch(
        readPieces(text, (piece) => readQuantity(piece, 'power', style('supplies'))),
        (watts) => ({ leastSupply: Math.min(...watts), greatestSupply: Math.max(...watts) }),
      ),
    ),
    systemLoad: quantity('systemLoad', 'power'),
    minimumVoltage: quantity('minimumVoltage', 'voltage'),
  };
  const switches: ScheduledSwitch[] = [];
  const unusable = new Set<string>();
  const lines = new Map<string, number>();
  for (const key of ['switch', 'type', 'ports'] as const) {
    if (columns[key] === undefined) said.noColumn(key, 'no switch can be used');
  }

  for (const row of table.rows) {
    const name = read.switch(row.cells);
    const cells = {
      type: read.type(row.cells),
      ports: read.ports(row.cells),
      budget: read.budget(row.cells),
      supplies: read.supplies(row.cells),
      systemLoad: read.systemLoad(row.cells),
      minimumVoltage: read.minimumVoltage(row.cells),
    };
    const whose = name === undefined ? 'a switch without a name' : `switch ${name}`;
    if (name === undefined && columns.switch !== undefined) {
      said.say(row, 'switch', 'missing-value', 'error', `${whose}; it is not used`);
    }
    const type = said.needed(row, whose, 'type', cells.type, NOT_USED);
    const ports = said.needed(row, whose, 'ports', cells.ports, NOT_USED);
    const before = name === undefined ? undefined : lines.get(name);
    if (name !== undefined && before !== undefined) {
      const message = `${whose}: it is on line ${before} already; this row is not used`;
      said.say(row, 'switch', 'duplicate', 'error', message, 'a name that no other switch has');
      continue;
    }
    if (name !== undefined) lines.set(name, row.line);
    if (name === undefined || type === undefined || ports === undefined) {
      if (name !== undefined) unusable.add(name);
      continue;
    }
    const entry: Draft<ScheduledSwitch> = { switch: name, type, ports, line: row.line };
    const budget = said.optional(row, whose, 'budget', cells.budget, 'its budget is not judged by it');
    const ratings = said.optional(row, whose, 'supplies', cells.supplies, 'its budget is not judged by them');
    const systemLoad = said.optional(row, whose, 'systemLoad', cells.systemLoad, 'nothing is subtracted');
    if (budget !== undefined) {
      entry.budget = budget;
      const spare = ratings !== undefined ? 'supplies' : systemLoad !== undefined ? 'systemLoad' : undefined;
      if (spare !== undefined) {
        const message = `${whose}: it has a published budget for its ports; ${SWITCH_COLUMNS[spare].title} is not used`;
        said.say(row, spare, 'conflicting-values', 'warning', message, 'a budget, or supplies with a system load');
      }
    } else if (ratings !== undefined) {
      entry.supplies = ratings.map((watts) => ({ power: watts }));
      if (systemLoad !== undefined) entry.systemLoad = systemLoad;
      else if (cells.systemLoad.empty) said.byDefault(row, 'systemLoad', 'nothing is subtracted from the supplies');
    } else if (cells.budget.empty && cells.supplies.empty) {
      const message = `${whose}: neither a budget nor supplies; whether its power is enough is not judged`;
      said.say(row, undefined, 'missing-value', 'warning', message, 'a budget, or supplies');
    }
    const minimumVoltage = said.optional(row, whose, 'minimumVoltage', cells.minimumVoltage, 'the lowest of its type is used');
    if (minimumVoltage !== undefined) {
      entry.minimumVoltage = minimumVoltage;
      const lowest = LOWEST[type - 1] as number;
      if (minimumVoltage < lowest) {
        const message = `${whose}: IEEE 802.3 has at least ${lowest} V at a Type ${type} port; ${minimumVoltage} V is used as it stands`;
        said.say(row, 'minimumVoltage', 'voltage-outside-type', 'warning', message, `${lowest} V to 57 V for Type ${type}`);
      }
    } else if (cells.minimumVoltage.empty) said.byDefault(row, 'minimumVoltage', 'the lowest of its type is used');
    switches.push(entry);
  }
  return { switches, list: switchList(switches, unusable) };
}

/** Lowest voltage at the port by type, 1 to 4. */
const LOWEST: readonly number[] = /* @__PURE__ */ (() =>
  ([1, 2, 3, 4] as const).map((pseType) => poeClass(1, { pseType }).pseVoltageMin))();

function readType(text: string): Cell<PseType> {
  const name = text
    .toLowerCase()
    .replace(/^ieee\s*/, '')
    .replace(/[\s_-]+/g, '');
  if (Object.hasOwn(TYPES, name)) return holds(TYPES[name] as PseType);
  return refused('unknown-name', name === '802.3bt' ? '802.3bt has two types' : '');
}
