/** Is the voltage of a port one that its type may have? @module */
import type { Check } from '../limits/check.ts';
import { held } from '../limits/held.ts';
import { PSE_VOLTAGE, PSE_VOLTAGE_TOP } from '../limits/pse-voltage.ts';
import { type Fields, readInput } from '../quantity/fields.ts';
import { requirePositive } from '../quantity/guards.ts';
import { type Interval, intervalOf } from '../quantity/interval.ts';
import type { Volts } from '../quantity/units.ts';
import type { PseType } from './class-table.ts';
import { PSE_TYPES, PSE_VOLTAGE_MAX, portRow } from './port-table.ts';

/** The voltage at a port: one figure, or the range within which it lies. [V] */
export type PortVoltage = Volts | Interval;

/** A voltage at a port, and the type of the port. */
export interface PseVoltageCheckInput {
  /** Voltage stated or measured at the port, or its range. [V] */
  readonly pseVoltage: PortVoltage;
  /** Type of the port, 1 to 4. */
  readonly pseType: PseType;
}

/** @internal */
export const PSE_VOLTAGE_CHECK_FIELDS: Fields<PseVoltageCheckInput> = {
  pseVoltage: { positive: 'V', range: true },
  pseType: { oneOf: () => PSE_TYPES },
};

/**
 * Holds the stated voltage of a port against the window of its type: 44, 50, 50 or 52 V to 57 V.
 *
 * Below the window the powers of the classes no longer follow; above 57 V a device may come to harm. A range that lies
 * partly outside is `uncertain`, with `deciding: ['pseVoltage']`. The window is kept or not: no margin is asked for.
 *
 * @param input - Voltage stated or measured at the port, or its range [V], and the type of the port.
 * @returns The check against the end of the window that is nearer, or that is overstepped. [V]
 * @throws {@link InputError} If the type does not exist, or a voltage is outside its domain.
 * @example 48 V is not enough for Type 2
 * const check = pseVoltageCheck({ pseVoltage: 48, pseType: 2 });
 * [check.verdict, check.limit, check.margin]; // => ['fail', 50, -2]
 */
export function pseVoltageCheck(input: PseVoltageCheckInput): Check {
  const { pseVoltage, pseType } = readInput(PSE_VOLTAGE_CHECK_FIELDS, input);
  return portVoltageCheck(portVoltageRange(pseVoltage), pseType);
}

/** The check against the end of the window that is nearer, or that is overstepped further. [V] @internal */
export function portVoltageCheck({ low, high }: Interval, pseType: PseType): Check {
  const { pseVoltageMin: lowest } = portRow(pseType);
  const check =
    low - lowest <= PSE_VOLTAGE_MAX - high ? held(PSE_VOLTAGE, low, lowest, 0) : held(PSE_VOLTAGE_TOP, high, PSE_VOLTAGE_MAX, 0);
  if (check.verdict === 'pass' || low > PSE_VOLTAGE_MAX || high < lowest || low === high) return check;
  return { ...check, verdict: 'uncertain', deciding: [{ parameter: 'pseVoltage' }] };
}

/** One figure as the range of that figure. @internal */
export function portVoltageRange(pseVoltage: PortVoltage): Interval {
  return intervalOf(pseVoltage, 'pseVoltage', (volts, parameter) => requirePositive(volts, parameter, 'V'));
}
