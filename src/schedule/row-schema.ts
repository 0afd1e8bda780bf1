/** What the values of a row may be: ranges and names, as one flat schema for each file. @module */
import * as z from 'zod';
import { type Cell, refused } from './cell.ts';

type RunValue =
  | 'port'
  | 'poeClass'
  | 'pdPower'
  | 'minimumVoltage'
  | 'maximumResistance'
  | 'resistanceLoop'
  | 'shortest'
  | 'longest'
  | 'connections'
  | 'coldest'
  | 'hottest'
  | 'bundle'
  | 'installation'
  | 'leastReading'
  | 'greatestReading'
  | 'readings'
  | 'priority'
  | 'supply'
  | 'load';
type SwitchValue = 'type' | 'ports' | 'budget' | 'leastSupply' | 'greatestSupply' | 'systemLoad' | 'minimumVoltage';

// Built once, flat: zod then compiles each to one function. Lists are given by their least and greatest piece.
const RUN_ROW = /* @__PURE__ */ (() =>
  z.object({
    port: z.int().min(1).max(1_000_000).optional(),
    poeClass: z.int().min(0).max(8).optional(),
    pdPower: z.number().positive().optional(),
    minimumVoltage: z.number().positive().optional(),
    maximumResistance: z.number().positive().optional(),
    resistanceLoop: z.enum(['pairLoop', 'twoPair', 'fourPair', 'unstated']).optional(),
    shortest: z.number().min(0).optional(),
    longest: z.number().max(100_000).optional(),
    connections: z.int().min(0).max(1000).optional(),
    coldest: z.number().min(-100).optional(),
    hottest: z.number().max(400).optional(),
    bundle: z.int().min(1).max(10_000).optional(),
    installation: z.enum(['open-air', 'closed-conduit', 'wound-drum']).optional(),
    leastReading: z.number().positive().optional(),
    greatestReading: z.number().max(100_000).optional(),
    readings: z.int().max(4).optional(),
    priority: z.enum(['critical', 'high', 'low']).optional(),
    supply: z.number().positive().optional(),
    load: z.number().positive().optional(),
  } satisfies Record<RunValue, z.ZodType>))();

const SWITCH_ROW = /* @__PURE__ */ (() =>
  z.object({
    type: z.literal([1, 2, 3, 4]).optional(),
    ports: z.int().min(1).max(1_000_000).optional(),
    budget: z.number().min(0).max(1e6).optional(),
    leastSupply: z.number().positive().optional(),
    greatestSupply: z.number().max(1e6).optional(),
    systemLoad: z.number().min(0).max(1e6).optional(),
    minimumVoltage: z.number().positive().max(57).optional(),
  } satisfies Record<SwitchValue, z.ZodType>))();

/** Values of a run's row that have a range or a list of names. */
export type RunValues = { readonly [K in RunValue]?: string | number };
/** The same of a switch's row. */
export type SwitchValues = { readonly [K in SwitchValue]?: string | number };

/** The cell itself, or what is wrong with its values. A cell that is read once is judged once. @internal */
export function allowedInRun<T>(cell: Cell<T>, values: (value: T) => RunValues): Cell<T> {
  return cell.value === undefined ? cell : judged(cell, RUN_ROW.safeParse(values(cell.value)));
}

/** The same for a switch. @internal */
export function allowedInSwitch<T>(cell: Cell<T>, values: (value: T) => SwitchValues): Cell<T> {
  return cell.value === undefined ? cell : judged(cell, SWITCH_ROW.safeParse(values(cell.value)));
}

function judged<T>(cell: Cell<T>, { error }: z.ZodSafeParseResult<unknown>): Cell<T> {
  if (error === undefined) return cell;
  return refused(error.issues[0]?.code === 'invalid_value' ? 'unknown-name' : 'value-out-of-range');
}
