/** Is the voltage of a port one that its type may have? @module */
import type { Check } from '../limits/check.ts';
import { requireObject, requireOneOf, requirePositive } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Volts } from '../quantity/units.ts';
import type { PseType } from './class-table.ts';
import { PSE_TYPES, PSE_VOLTAGE_MAX, portRow } from './port-table.ts';
import { voltageWindowCheck } from './voltage-window.ts';

/** The voltage at a port: one figure, or the range within which it lies. */
export type PortVoltage = Volts | PortVoltageRange;

/** A range of the voltage at a port. */
export interface PortVoltageRange {
  /** [V] */
  readonly low: Volts;
  /** [V] */
  readonly high: Volts;
}

/**
 * Holds the stated voltage of a port against the window of its type: 44, 50, 50 or 52 V to 57 V.
 *
 * Below the window the powers of the classes no longer follow; above 57 V a device may come to harm. A range that lies
 * partly outside is `uncertain`, with `deciding: ['pseVoltage']`. The window is kept or not: no margin is asked for.
 *
 * @param pseVoltage - Voltage stated or measured at the port, or its range. [V]
 * @param pseType - Type of the port, 1 to 4.
 * @returns The check against the end of the window that is nearer, or that is overstepped. [V]
 * @throws {@link InputError} If the type does not exist, or a voltage is outside its domain.
 * @example 48 V is not enough for Type 2
 * const check = pseVoltageCheck(48, 2);
 * [check.verdict, check.limit, check.margin]; // => ['fail', 50, -2]
 */
export function pseVoltageCheck(pseVoltage: PortVoltage, pseType: PseType): Check {
  requireOneOf(pseType, PSE_TYPES, 'pseType');
  const { low, high } = portVoltageRange(pseVoltage);
  return voltageWindowCheck(low, high, portRow(pseType).pseVoltageMin, PSE_VOLTAGE_MAX);
}

/** One figure as the range of that figure. @internal */
export function portVoltageRange(pseVoltage: PortVoltage): PortVoltageRange {
  if (typeof pseVoltage !== 'object' || pseVoltage === null) {
    requirePositive(pseVoltage, 'pseVoltage', 'V');
    return { low: pseVoltage, high: pseVoltage };
  }
  requireObject(pseVoltage, 'pseVoltage', 'a voltage, or an object with low and high');
  const { low, high } = pseVoltage;
  requirePositive(low, 'pseVoltage.low', 'V');
  requirePositive(high, 'pseVoltage.high', 'V');
  if (high < low) throw new InputError('conflict', 'pseVoltage.high', `at least the ${low} V of pseVoltage.low`, high);
  return { low, high };
}
