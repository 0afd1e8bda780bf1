/** Every limit that something is held against, in the order in which they are listed. @module */
import { AMPACITY, AMPACITY_WORDS } from './ampacity.ts';
import { BUNDLE_RISE, BUNDLE_RISE_WORDS } from './bundle-rise.ts';
import { CABLE_CATEGORY, CABLE_CATEGORY_WORDS } from './cable-category.ts';
import { CABLE_TEMPERATURE, CABLE_TEMPERATURE_WORDS } from './cable-temperature.ts';
import { CHANNEL_LENGTH, CHANNEL_LENGTH_WORDS } from './channel-length.ts';
import { CHANNEL_LOOP, CHANNEL_LOOP_WORDS } from './channel-loop.ts';
import { CHANNEL_RESISTANCE, CHANNEL_RESISTANCE_WORDS } from './channel-resistance.ts';
import { COLLAPSE, COLLAPSE_WORDS } from './collapse.ts';
import { CONDUCTOR_GAUGE, CONDUCTOR_GAUGE_WORDS } from './conductor-gauge.ts';
import { CONDUCTOR_TEMPERATURE, CONDUCTOR_TEMPERATURE_WORDS } from './conductor-temperature.ts';
import { CONNECTIONS, CONNECTIONS_WORDS } from './connections.ts';
import { CORD_LENGTH, CORD_LENGTH_WORDS } from './cord-length.ts';
import { DERATED_LENGTH, DERATED_LENGTH_WORDS } from './derated-length.ts';
import { DEVICE_OVERVOLTAGE, DEVICE_OVERVOLTAGE_WORDS } from './device-overvoltage.ts';
import { DEVICE_RESISTANCE, DEVICE_RESISTANCE_WORDS } from './device-resistance.ts';
import { DEVICE_VOLTAGE, DEVICE_VOLTAGE_WORDS } from './device-voltage.ts';
import { FAULT_CURRENT, FAULT_CURRENT_WORDS } from './fault-current.ts';
import { INSERTION_LOSS_LENGTH, INSERTION_LOSS_LENGTH_WORDS } from './insertion-loss-length.ts';
import type { LimitWords } from './limit.ts';
import { MATERIAL, MATERIAL_WORDS } from './material.ts';
import { PAIR_TO_PAIR_UNBALANCE, PAIR_TO_PAIR_UNBALANCE_WORDS } from './pair-to-pair-unbalance.ts';
import { PAIR_UNBALANCE, PAIR_UNBALANCE_WORDS } from './pair-unbalance.ts';
import { PD_POWER, PD_POWER_WORDS } from './pd-power.ts';
import { PD_VOLTAGE, PD_VOLTAGE_WORDS } from './pd-voltage.ts';
import { PERMANENT_LINK_LENGTH, PERMANENT_LINK_LENGTH_WORDS } from './permanent-link-length.ts';
import { PERMANENT_LINK_LOOP, PERMANENT_LINK_LOOP_WORDS } from './permanent-link-loop.ts';
import { PSE_POWER, PSE_POWER_WORDS } from './pse-power.ts';
import { PSE_VOLTAGE, PSE_VOLTAGE_TOP, PSE_VOLTAGE_WORDS } from './pse-voltage.ts';
import { VOLTAGE_DROP, VOLTAGE_DROP_WORDS } from './voltage-drop.ts';

/** The name of a limit, and of the check that holds a value against it. */
export type LimitName = EveryLimit[number]['name'];

// biome-ignore format: one list
type EveryLimit = readonly [
  typeof PD_POWER, typeof PSE_POWER, typeof PD_VOLTAGE, typeof COLLAPSE, typeof DEVICE_VOLTAGE, typeof DEVICE_RESISTANCE,
  typeof PSE_VOLTAGE, typeof PAIR_UNBALANCE, typeof PAIR_TO_PAIR_UNBALANCE, typeof VOLTAGE_DROP, typeof DEVICE_OVERVOLTAGE,
  typeof FAULT_CURRENT, typeof CHANNEL_LENGTH, typeof PERMANENT_LINK_LENGTH, typeof CONNECTIONS, typeof CHANNEL_LOOP,
  typeof PERMANENT_LINK_LOOP, typeof CHANNEL_RESISTANCE, typeof CABLE_CATEGORY, typeof DERATED_LENGTH, typeof INSERTION_LOSS_LENGTH,
  typeof CORD_LENGTH, typeof CONDUCTOR_GAUGE, typeof CABLE_TEMPERATURE, typeof MATERIAL, typeof CONDUCTOR_TEMPERATURE,
  typeof BUNDLE_RISE, typeof AMPACITY,
];

/** Pure calls, so that a bundler drops the lists where only one limit is used. @internal */
// biome-ignore format: one list
export const LIMITS: EveryLimit = /* @__PURE__ */ (() => [
  PD_POWER, PSE_POWER, PD_VOLTAGE, COLLAPSE, DEVICE_VOLTAGE, DEVICE_RESISTANCE, PSE_VOLTAGE, PAIR_UNBALANCE, PAIR_TO_PAIR_UNBALANCE,
  VOLTAGE_DROP, DEVICE_OVERVOLTAGE, FAULT_CURRENT, CHANNEL_LENGTH, PERMANENT_LINK_LENGTH, CONNECTIONS, CHANNEL_LOOP,
  PERMANENT_LINK_LOOP, CHANNEL_RESISTANCE, CABLE_CATEGORY, DERATED_LENGTH, INSERTION_LOSS_LENGTH, CORD_LENGTH, CONDUCTOR_GAUGE,
  CABLE_TEMPERATURE, MATERIAL, CONDUCTOR_TEMPERATURE, BUNDLE_RISE, AMPACITY,
] as const)();

/**
 * Every name, in the same order.
 *
 * @example
 * checkNames.includes('pd-voltage'); // => true
 */
export const checkNames: readonly LimitName[] = /* @__PURE__ */ (() => LIMITS.map(({ name }) => name))();

/** What is said of each limit. @internal */
export const LIMIT_WORDS: Readonly<Record<LimitName, LimitWords>> = /* @__PURE__ */ (() => ({
  [PD_POWER.name]: PD_POWER_WORDS,
  [PSE_POWER.name]: PSE_POWER_WORDS,
  [PD_VOLTAGE.name]: PD_VOLTAGE_WORDS,
  [COLLAPSE.name]: COLLAPSE_WORDS,
  [DEVICE_VOLTAGE.name]: DEVICE_VOLTAGE_WORDS,
  [DEVICE_RESISTANCE.name]: DEVICE_RESISTANCE_WORDS,
  [PSE_VOLTAGE.name]: PSE_VOLTAGE_WORDS,
  [PAIR_UNBALANCE.name]: PAIR_UNBALANCE_WORDS,
  [PAIR_TO_PAIR_UNBALANCE.name]: PAIR_TO_PAIR_UNBALANCE_WORDS,
  [VOLTAGE_DROP.name]: VOLTAGE_DROP_WORDS,
  [DEVICE_OVERVOLTAGE.name]: DEVICE_OVERVOLTAGE_WORDS,
  [FAULT_CURRENT.name]: FAULT_CURRENT_WORDS,
  [CHANNEL_LENGTH.name]: CHANNEL_LENGTH_WORDS,
  [PERMANENT_LINK_LENGTH.name]: PERMANENT_LINK_LENGTH_WORDS,
  [CONNECTIONS.name]: CONNECTIONS_WORDS,
  [CHANNEL_LOOP.name]: CHANNEL_LOOP_WORDS,
  [PERMANENT_LINK_LOOP.name]: PERMANENT_LINK_LOOP_WORDS,
  [CHANNEL_RESISTANCE.name]: CHANNEL_RESISTANCE_WORDS,
  [CABLE_CATEGORY.name]: CABLE_CATEGORY_WORDS,
  [DERATED_LENGTH.name]: DERATED_LENGTH_WORDS,
  [INSERTION_LOSS_LENGTH.name]: INSERTION_LOSS_LENGTH_WORDS,
  [CORD_LENGTH.name]: CORD_LENGTH_WORDS,
  [CONDUCTOR_GAUGE.name]: CONDUCTOR_GAUGE_WORDS,
  [CABLE_TEMPERATURE.name]: CABLE_TEMPERATURE_WORDS,
  [MATERIAL.name]: MATERIAL_WORDS,
  [CONDUCTOR_TEMPERATURE.name]: CONDUCTOR_TEMPERATURE_WORDS,
  [BUNDLE_RISE.name]: BUNDLE_RISE_WORDS,
  [AMPACITY.name]: AMPACITY_WORDS,
}))();

// Whoever needs many of them imports them from here; hot code from the file of each.
// biome-ignore format: one list
export {
  AMPACITY, BUNDLE_RISE, CABLE_CATEGORY, CABLE_TEMPERATURE, CHANNEL_LENGTH, CHANNEL_LOOP, CHANNEL_RESISTANCE, COLLAPSE, CONDUCTOR_GAUGE, CONDUCTOR_TEMPERATURE, CONNECTIONS, CORD_LENGTH, DERATED_LENGTH, DEVICE_OVERVOLTAGE, DEVICE_RESISTANCE, DEVICE_VOLTAGE, FAULT_CURRENT, INSERTION_LOSS_LENGTH, MATERIAL, PAIR_TO_PAIR_UNBALANCE, PAIR_UNBALANCE, PD_POWER, PD_VOLTAGE, PERMANENT_LINK_LENGTH, PERMANENT_LINK_LOOP, PSE_POWER, PSE_VOLTAGE, PSE_VOLTAGE_TOP, VOLTAGE_DROP,
};
