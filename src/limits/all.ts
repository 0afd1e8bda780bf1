/** Every limit that something is held against, in the order in which they are listed. @module */
import type { Limit } from './limit.ts';
import * as records from './records.ts';

type Records = typeof records;

/** The name of a limit, and of the check that holds a value against it. */
export type LimitName = Extract<Records[keyof Records], Limit>['name'];

/** Pure calls, so that a bundler drops the lists where only one limit is used. @internal */
// biome-ignore format: one list
export const LIMITS: readonly Limit<LimitName>[] = /* @__PURE__ */ (() => [
  records.PD_POWER, records.PSE_POWER, records.PD_VOLTAGE, records.COLLAPSE, records.DEVICE_VOLTAGE, records.DEVICE_RESISTANCE,
  records.PSE_VOLTAGE, records.PAIR_UNBALANCE, records.PAIR_TO_PAIR_UNBALANCE, records.VOLTAGE_DROP, records.DEVICE_OVERVOLTAGE,
  records.FAULT_CURRENT, records.CHANNEL_LENGTH, records.PERMANENT_LINK_LENGTH, records.CONNECTIONS, records.CHANNEL_LOOP,
  records.PERMANENT_LINK_LOOP, records.CHANNEL_RESISTANCE, records.CABLE_CATEGORY, records.DERATED_LENGTH,
  records.INSERTION_LOSS_LENGTH, records.CORD_LENGTH, records.CONDUCTOR_GAUGE, records.CABLE_TEMPERATURE, records.MATERIAL,
  records.CONDUCTOR_TEMPERATURE, records.BUNDLE_RISE, records.AMPACITY,
])();

/**
 * Every name, in the same order.
 *
 * @example
 * checkNames.includes('pd-voltage'); // => true
 */
export const checkNames: readonly LimitName[] = /* @__PURE__ */ (() => LIMITS.map(({ name }) => name))();

// Whoever needs many of them imports them from here; hot code from the file of each.
export * from './records.ts';
