/** What each type of switch port promises, in numbers. IEEE 802.3. @module */
import type { Ohms, Volts } from '../quantity/units.ts';
import type { PoeClassNumber, PseType } from './class-table.ts';

/** Every type of switch port. @internal */
export const PSE_TYPES: readonly PseType[] = [1, 2, 3, 4];

/** One type of switch port. @internal */
export interface PortRow {
  /** Lowest voltage at the port, when it powers a device. [V] */
  readonly pseVoltageMin: Volts;
  /** Most resistance of one pairset of the channel. [Ω] */
  readonly pairsetResistance: Ohms;
  /** The highest class that it grants. */
  readonly highestClass: PoeClassNumber;
  /** What it grants a device that asks for more; the highest class if absent. */
  readonly grantedBeyond?: PoeClassNumber;
}

/** Types 1 to 4: IEEE Std 802.3-2022, clauses 33 and 145, as restated in datasheets. Digits as printed. @internal */
// biome-ignore format: columns
export const PORT_TABLE: readonly PortRow[] = [
  { pseVoltageMin: 44, pairsetResistance: 20, highestClass: 3, grantedBeyond: 0 },
  { pseVoltageMin: 50, pairsetResistance: 12.5, highestClass: 4 },
  { pseVoltageMin: 50, pairsetResistance: 12.5, highestClass: 6 },
  { pseVoltageMin: 52, pairsetResistance: 12.5, highestClass: 8 },
];

/** Highest voltage at a port of any type, and the highest that a device must bear. [V] @internal */
export const PSE_VOLTAGE_MAX: Volts = 57;

/** The row of a type. @internal */
export function portRow(type: PseType): PortRow {
  return PORT_TABLE[type - 1] as PortRow;
}
