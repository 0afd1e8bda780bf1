/** How long a battery carries a load, roughly. @module */
import { type Fields, readInput } from '../../quantity/fields.ts';
import type { Watts } from '../../quantity/units.ts';
import { SHARE_FIELD } from './share-field.ts';

/** A load on a battery. */
export interface BatteryAutonomyInput {
  /** Energy that the battery gives at this load before it is empty, not its nominal capacity. [Wh] */
  readonly usableEnergy: number;
  /** Load behind the inverter: the mains input of the switch. [W] */
  readonly load: Watts;
  /** Output over input power of the inverter, a fraction above 0 and up to 1; not included if absent. */
  readonly inverterEfficiency?: number | undefined;
}

/** @internal */
export const BATTERY_AUTONOMY_FIELDS: Fields<BatteryAutonomyInput> = {
  usableEnergy: { nonNegative: 'Wh' },
  load: { nonNegative: 'W' },
  inverterEfficiency: () => SHARE_FIELD,
};

/** How long it lasts. Always an estimate. */
export interface BatteryAutonomy {
  readonly estimate: true;
  /** Absent where there is no load. [h] */
  readonly hours?: number;
  /** The same, in whole minutes, rounded down; absent where there is no load. [min] */
  readonly minutes?: number;
  /** What the battery must give. [W] */
  readonly batteryPower: Watts;
  /** What is missing from the figure, in words: print it beside the figure. */
  readonly notIncluded: readonly string[];
  readonly caution: string;
}

/**
 * How long a battery carries a constant load: usable energy by the inverter's efficiency over the load. An estimate.
 *
 * A battery gives less at a high load, in the cold and when old; only its maker's table for the load, and a test, tell
 * how long it lasts. Emergency and life-safety systems have battery times of their own standards, which this is not.
 *
 * @param input - Usable energy [Wh], load behind the inverter [W], efficiency of the inverter as a fraction.
 * @returns Hours and minutes, marked as an estimate, with what is not in them.
 * @throws {@link InputError} If a number is outside its domain, or the efficiency is 0 or above 1.
 * @example 1 kWh for 400 W behind an inverter of 85 %
 * const { hours, minutes } = batteryAutonomy({ usableEnergy: 1000, load: 400, inverterEfficiency: 0.85 });
 * [hours, minutes]; // => [2.125, 127]
 */
export function batteryAutonomy(input: BatteryAutonomyInput): BatteryAutonomy {
  const { usableEnergy, load, inverterEfficiency } = readInput(BATTERY_AUTONOMY_FIELDS, input);
  const batteryPower = load / (inverterEfficiency ?? 1);
  const hours = (usableEnergy * (inverterEfficiency ?? 1)) / load;
  return {
    estimate: true,
    ...(load === 0 ? {} : { hours, minutes: Math.floor(hours * 60) }),
    batteryPower,
    notIncluded: inverterEfficiency === undefined ? ['inverter loss'] : [],
    caution:
      'An estimate: temperature, age and the rate of discharge shorten it. Test it, and do not rely on it for life safety, which has standards of its own.',
  };
}
