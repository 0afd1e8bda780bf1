/** Every limit that something is held against, in the order in which they are listed. @module */
import { AMPACITY, AMPACITY_WORDS } from './ampacity.ts';
import { BUNDLE_RISE, BUNDLE_RISE_WORDS } from './bundle-rise.ts';
import { CABLE_CATEGORY, CABLE_CATEGORY_WORDS } from './cable-category.ts';
import { CABLE_TEMPERATURE, CABLE_TEMPERATURE_WORDS } from './cable-temperature.ts';
import { CHANNEL_LENGTH, CHANNEL_LENGTH_WORDS } from './channel-length.ts';
import { CHANNEL_LOOP, CHANNEL_LOOP_WORDS } from './channel-loop.ts';
import { CHANNEL_RESISTANCE, CHANNEL_RESISTANCE_WORDS } from './channel-resistance.ts';
import type { CheckName } from './check-names.ts';
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
import type { Limit, LimitWords } from './limit.ts';
import { MATERIAL, MATERIAL_WORDS } from './material.ts';
import { PAIR_TO_PAIR_UNBALANCE, PAIR_TO_PAIR_UNBALANCE_WORDS } from './pair-to-pair-unbalance.ts';
import { PAIR_UNBALANCE, PAIR_UNBALANCE_WORDS } from './pair-unbalance.ts';
import { PD_POWER, PD_POWER_WORDS } from './pd-power.ts';
import { PD_VOLTAGE, PD_VOLTAGE_WORDS } from './pd-voltage.ts';
import { PERMANENT_LINK_LENGTH, PERMANENT_LINK_LENGTH_WORDS } from './permanent-link-length.ts';
import { PERMANENT_LINK_LOOP, PERMANENT_LINK_LOOP_WORDS } from './permanent-link-loop.ts';
import { PSE_POWER, PSE_POWER_WORDS } from './pse-power.ts';
import { PSE_VOLTAGE, PSE_VOLTAGE_WORDS } from './pse-voltage.ts';
import { VOLTAGE_DROP, VOLTAGE_DROP_WORDS } from './voltage-drop.ts';

/** Pure calls, so that a bundler drops the lists where only one limit is used. @internal */
// biome-ignore format: one list
export const LIMITS: readonly Limit[] = /* @__PURE__ */ (() => [
  PD_POWER, PSE_POWER, PD_VOLTAGE, COLLAPSE, DEVICE_VOLTAGE, DEVICE_RESISTANCE, PSE_VOLTAGE, PAIR_UNBALANCE,
  PAIR_TO_PAIR_UNBALANCE, VOLTAGE_DROP, DEVICE_OVERVOLTAGE, FAULT_CURRENT, CHANNEL_LENGTH, PERMANENT_LINK_LENGTH, CONNECTIONS,
  CHANNEL_LOOP, PERMANENT_LINK_LOOP, CHANNEL_RESISTANCE, CABLE_CATEGORY, DERATED_LENGTH, INSERTION_LOSS_LENGTH, CORD_LENGTH,
  CONDUCTOR_GAUGE, CABLE_TEMPERATURE, MATERIAL, CONDUCTOR_TEMPERATURE, BUNDLE_RISE, AMPACITY,
])();

/** What is said of each limit. @internal */
export const LIMIT_WORDS: Readonly<Record<CheckName, LimitWords>> = /* @__PURE__ */ (() => ({
  'pd-power': PD_POWER_WORDS,
  'pse-power': PSE_POWER_WORDS,
  'pd-voltage': PD_VOLTAGE_WORDS,
  collapse: COLLAPSE_WORDS,
  'device-voltage': DEVICE_VOLTAGE_WORDS,
  'device-resistance': DEVICE_RESISTANCE_WORDS,
  'pse-voltage': PSE_VOLTAGE_WORDS,
  'pair-unbalance': PAIR_UNBALANCE_WORDS,
  'pair-to-pair-unbalance': PAIR_TO_PAIR_UNBALANCE_WORDS,
  'voltage-drop': VOLTAGE_DROP_WORDS,
  'device-overvoltage': DEVICE_OVERVOLTAGE_WORDS,
  'fault-current': FAULT_CURRENT_WORDS,
  'channel-length': CHANNEL_LENGTH_WORDS,
  'permanent-link-length': PERMANENT_LINK_LENGTH_WORDS,
  connections: CONNECTIONS_WORDS,
  'channel-loop': CHANNEL_LOOP_WORDS,
  'permanent-link-loop': PERMANENT_LINK_LOOP_WORDS,
  'channel-resistance': CHANNEL_RESISTANCE_WORDS,
  'cable-category': CABLE_CATEGORY_WORDS,
  'derated-length': DERATED_LENGTH_WORDS,
  'insertion-loss-length': INSERTION_LOSS_LENGTH_WORDS,
  'cord-length': CORD_LENGTH_WORDS,
  'conductor-gauge': CONDUCTOR_GAUGE_WORDS,
  'cable-temperature': CABLE_TEMPERATURE_WORDS,
  material: MATERIAL_WORDS,
  'conductor-temperature': CONDUCTOR_TEMPERATURE_WORDS,
  'bundle-rise': BUNDLE_RISE_WORDS,
  ampacity: AMPACITY_WORDS,
}))();
