/** The class table of IEEE 802.3, single-signature. Digits as printed. @module */
import type { Amperes, Volts, Watts } from '../quantity/units.ts';

/** A power class. */
export type PoeClassNumber = 0 | 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8;

/** A type of power sourcing equipment: 1 is 802.3af, 2 is 802.3at, 3 and 4 are 802.3bt. */
export type PseType = 1 | 2 | 3 | 4;

/** One row of the class table. */
export interface ClassRow {
  /** Weakest type of switch port that serves the class. */
  readonly type: PseType;
  readonly pairs: 2 | 4;
  /** Least power that the port must be able to give. [W] */
  readonly psePower: Watts;
  /** Most average power that the device may draw. [W] */
  readonly pdPower: Watts;
  /** The figure that later editions print for the same class. [W] */
  readonly pdPowerLater?: Watts;
  /** Most that the device may draw for up to 50 ms at 5 % duty. [W] */
  readonly pdPeakPower: Watts;
  /** Least voltage at which the device must work. [V] */
  readonly pdVoltageMin: Volts;
  /** What `pdPower` takes from the weakest type at its lowest voltage over the worst channel, where above `psePower`. [W] */
  readonly psePowerLimit?: Watts;
  /** The same for `pdPowerLater`. [W] */
  readonly psePowerLimitLater?: Watts;
  /** Voltage at the device in that case, for `pdPowerLater`, where under `pdVoltageMin`. [V] */
  readonly pdVoltageLimitLater?: Volts;
  /** Most current of one pairset where the pairs are unlike. [A] */
  readonly pairsetCurrentUnbalanced?: Amperes;
}

/**
 * Classes 0 to 8. Powers: IEEE Std 802.3-2022 clauses 33 and 145, as restated by the Ethernet Alliance and in
 * datasheets. Voltages of classes 5 to 7, peaks and unbalanced currents from memory. The limits that are not
 * printed follow from the printed ones, and a test derives each again.
 */
// biome-ignore format: columns
export const CLASS_TABLE: readonly ClassRow[] = [
  { type: 1, pairs: 2, psePower: 15.4, pdPower: 12.95, pdPowerLater: 13.0, pdPeakPower: 14.4, pdVoltageMin: 37, psePowerLimitLater: 15.473414996389318, pdVoltageLimitLater: 36.96662954709576 },
  { type: 1, pairs: 2, psePower: 4.0, pdPower: 3.84, pdPeakPower: 5.0, pdVoltageMin: 37, psePowerLimit: 4.0057661401843765 },
  { type: 1, pairs: 2, psePower: 7.0, pdPower: 6.49, pdPeakPower: 8.36, pdVoltageMin: 37 },
  { type: 1, pairs: 2, psePower: 15.4, pdPower: 12.95, pdPowerLater: 13.0, pdPeakPower: 14.4, pdVoltageMin: 37, psePowerLimitLater: 15.473414996389318, pdVoltageLimitLater: 36.96662954709576 },
  { type: 2, pairs: 2, psePower: 30, pdPower: 25.5, pdPeakPower: 28.3, pdVoltageMin: 42.5 },
  { type: 3, pairs: 4, psePower: 45, pdPower: 40, pdPeakPower: 42.0, pdVoltageMin: 44.3, psePowerLimit: 45.080666151703326, pairsetCurrentUnbalanced: 0.55 },
  { type: 3, pairs: 4, psePower: 60, pdPower: 51, pdPeakPower: 53.5, pdVoltageMin: 42.5, pairsetCurrentUnbalanced: 0.682 },
  { type: 4, pairs: 4, psePower: 75, pdPower: 62, pdPeakPower: 65.1, pdVoltageMin: 42.9, psePowerLimit: 75.00240590782762, pairsetCurrentUnbalanced: 0.781 },
  { type: 4, pairs: 4, psePower: 90, pdPower: 71.3, pdPeakPower: 74.9, pdVoltageMin: 41.1, psePowerLimit: 90.03813115098431, pairsetCurrentUnbalanced: 0.932 },
];

/** The row of a class. @internal */
export function classRow(number: PoeClassNumber): ClassRow {
  return CLASS_TABLE[number] as ClassRow;
}
