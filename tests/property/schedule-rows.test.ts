import { expect, test } from 'vitest';
import * as z from 'zod';
import type { Columns } from '../../src/schedule/columns/column.ts';
import { keysOf } from '../../src/schedule/columns/column-use.ts';
import { RUN_COLUMNS, type RunColumns } from '../../src/schedule/columns/run-columns.ts';
import { SWITCH_COLUMNS, type SwitchColumns } from '../../src/schedule/columns/switch-columns.ts';
import { findingList } from '../../src/schedule/read/findings.ts';
import { rowReader } from '../../src/schedule/read/row-reader.ts';
import { tableFromRecords } from '../../src/schedule/read/table.ts';
import { pick, type Random, seeded, whole } from '../helpers/random.ts';

// What a cell may hold, said a second time and judged by zod: the columns must accept the same cells and no other.
// Cells are bare numbers and names here, so that nothing but the range and the list of names is judged.

const positive = z.number().positive();
const RUN_ROW = z.object({
  port: z.int().min(1).max(1_000_000),
  poeClass: z.int().min(0).max(8),
  pdPower: positive,
  minimumVoltage: positive,
  maximumResistance: positive,
  resistanceLoop: z.enum(['pair loop', 'one pairset', 'two pairsets', 'unstated']),
  length: z.number().min(0).max(100_000),
  connections: z.int().min(0).max(1000),
  ambient: z.number().min(-100).max(400),
  bundle: z.int().min(1).max(10_000),
  installation: z.enum(['open air', 'closed conduit', 'conduit', 'drum', 'wound drum']),
  measuredLoop: positive.max(100_000),
  priority: z.enum(['critical', 'high', 'low']),
} satisfies Partial<Record<keyof RunColumns, z.ZodType>>);
const SWITCH_ROW = z.object({
  type: z.literal([1, 2, 3, 4]),
  ports: z.int().min(1).max(1_000_000),
  budget: z.number().min(0).max(1e6),
  supplies: positive.max(1e6),
  systemLoad: z.number().min(0).max(1e6),
  minimumVoltage: positive.max(57),
} satisfies Partial<Record<keyof SwitchColumns, z.ZodType>>);

const NAMES = ['pair loop', 'One Pairset', 'ring', 'open air', 'attic', 'conduit', 'wound-drum', 'critical', 'Low', 'urgent', 'unstated'];
const EDGES = [-101, -100, -1, 0, 1, 4, 5, 8, 9, 30, 57, 57.5, 400, 401, 1000, 1001, 10_000, 10_001, 100_000, 100_001, 1e6, 1_000_001, 0.5];

function cellOf(random: Random): string | number {
  if (random() < 0.2) return pick(random, NAMES);
  return random() < 0.6 ? pick(random, EDGES) : random() < 0.5 ? whole(random, -200, 1200) : Math.round((random() - 0.3) * 1e5) / 100;
}

/** The keys that a schema refuses; a name is compared as people tell names apart. */
function refusedBy(schema: z.ZodObject, row: Readonly<Record<string, string | number>>): string[] {
  const plain = Object.entries(row).map(([key, cell]) => [key, typeof cell === 'string' ? cell.toLowerCase().replace('-', ' ') : cell]);
  const { error } = schema.safeParse(Object.fromEntries(plain));
  return [...new Set(error?.issues.map(({ path }) => String(path[0])))].sort();
}

function randomRow(random: Random, keys: readonly string[]): Record<string, string | number> {
  return Object.fromEntries(keys.map((key) => [key, cellOf(random)]));
}

const ROWS = 5000;

/** The keys whose cells the columns refuse. */
function refusedByColumns<C extends Columns<C>>(columns: C, row: Readonly<Record<string, string | number>>): string[] {
  const findings = findingList('rows');
  const titled = Object.fromEntries(keysOf(columns).map((key) => [columns[key].title, row[key] ?? '']));
  const table = tableFromRecords([titled], columns, findings);
  if (table === undefined) throw new Error('the rows make no table');
  const reader = rowReader(columns, table, findings);
  for (const record of table.rows) reader.begin(record, 'a row');
  return Object.keys(row)
    .filter((key) => reader.cell(key as keyof C).code !== undefined)
    .sort();
}

test(`${ROWS} random rows of runs: a cell is refused where zod refuses it, and nowhere else`, () => {
  const random = seeded(20261130);
  for (let round = 0; round < ROWS; round++) {
    const row = randomRow(random, Object.keys(RUN_ROW.shape));
    expect(refusedByColumns(RUN_COLUMNS, row), JSON.stringify(row)).toEqual(refusedBy(RUN_ROW, row));
  }
});

test(`${ROWS} random rows of switches`, () => {
  const random = seeded(7);
  for (let round = 0; round < ROWS; round++) {
    const row = randomRow(random, Object.keys(SWITCH_ROW.shape));
    expect(refusedByColumns(SWITCH_COLUMNS, row), JSON.stringify(row)).toEqual(refusedBy(SWITCH_ROW, row));
  }
});
