/** What the values of a row may be: ranges and names, as one flat schema for each file. @module */
import * as z from 'zod';
import type { FindingCode } from './finding.ts';

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
    priority: z.enum(['critical', 'high', 'low']).optional(),
    supply: z.number().positive().optional(),
    load: z.number().positive().optional(),
  }))();

const SWITCH_ROW = /* @__PURE__ */ (() =>
  z.object({
    type: z.literal([1, 2, 3, 4]).optional(),
    ports: z.int().min(1).max(1_000_000).optional(),
    budget: z.number().min(0).max(1e6).optional(),
    leastSupply: z.number().positive().optional(),
    greatestSupply: z.number().max(1e6).optional(),
    systemLoad: z.number().min(0).max(1e6).optional(),
    minimumVoltage: z.number().positive().max(57).optional(),
  }))();

/** The values of a run's row that have a range or a list of names. */
export type RunValues = { [K in keyof z.input<typeof RUN_ROW>]-?: string | number | undefined };
/** The same of a switch's row. */
export type SwitchValues = { [K in keyof z.input<typeof SWITCH_ROW>]-?: string | number | undefined };

/** The values of a run's row that are not allowed, each with what kind of wrong it is; empty for a good row. @internal */
export function refusedRunValues(values: RunValues): readonly (readonly [keyof RunValues, FindingCode])[] {
  const result = RUN_ROW.safeParse(values);
  return result.success ? NONE : refusals<keyof RunValues>(result.error.issues);
}

/** The same for the row of a switch. @internal */
export function refusedSwitchValues(values: SwitchValues): readonly (readonly [keyof SwitchValues, FindingCode])[] {
  const result = SWITCH_ROW.safeParse(values);
  return result.success ? NONE : refusals<keyof SwitchValues>(result.error.issues);
}

const NONE: readonly never[] = [];

function refusals<K>(issues: readonly z.core.$ZodIssue[]): (readonly [K, FindingCode])[] {
  return issues.map(({ path, code }) => [path[0] as K, code === 'invalid_value' ? 'unknown-name' : 'value-out-of-range']);
}
