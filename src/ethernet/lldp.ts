/** Power in LLDP: tenths of a watt at the input of the device, and what they take at the port. @module */
import type { RunResistance } from '../cable/run-resistance.ts';
import { constantPower } from '../circuit/operating-point.ts';
import { type Fields, readInput } from '../quantity/fields.ts';
import { requireInteger, requireNonNegative } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Ohms, Volts, Watts } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';
import { classRow, type PoeClassNumber } from './class-table.ts';
import { classLimits, mostDraw, type PoeClassOptions } from './poe-class.ts';
import * as port from './port-fields.ts';
import { appliedLimits, loopThatPowerSees } from './power-at-pd.ts';
import { type PortVoltage, portVoltageRange } from './pse-voltage.ts';

/** A request that a device has sent. */
export interface LldpAllocationInput extends PoeClassOptions {
  /** Requested value: power at the input of the device, in 0.1 W, as a whole number from 0 to 999. */
  readonly requested: number;
  /** Class that the port has granted, 0 to 8. */
  readonly poeClass: PoeClassNumber;
  /** The loop that power sees [Ω], or a `runResistance` result; the worst channel of the type if absent. */
  readonly resistance?: Ohms | RunResistance | undefined;
  /** Voltage at the port, of which the low end counts; the lowest of its type if absent. [V] */
  readonly pseVoltage?: PortVoltage | undefined;
}

/** @internal */
export const LLDP_ALLOCATION_FIELDS: Fields<LldpAllocationInput> = {
  requested: { whole: [0, 999] },
  poeClass: () => port.POE_CLASS_FIELD,
  pseType: () => port.PSE_TYPE_FIELD,
  pairs: () => port.PAIRS_FIELD,
  resistance: () => port.RESISTANCE_FIELD,
  pseVoltage: () => port.PORT_VOLTAGE_FIELD,
};

/** What a port grants and sets aside. */
export interface LldpAllocation {
  /** In 0.1 W, as a whole number. */
  readonly requested: number;
  /** What the port can answer: the request, or the limit of the class where that is less. In 0.1 W, as a whole number. */
  readonly allocated: number;
  /** Largest value of the class (memory). In 0.1 W, as a whole number. */
  readonly classLimit: number;
  /** The allocated value as power at the device, and never more than the class allows: LLDP rounds the 6.49 W of class 2 up to 65. [W] */
  readonly pdPower: Watts;
  /** The loop that was used. [Ω] */
  readonly resistance: Ohms;
  readonly resistanceBasis: 'stated' | 'worst-case';
  /** The voltage that was used. [V] */
  readonly pseVoltage: Volts;
  readonly source: SourceKey;
  /**
   * What the port must set aside: {@link LldpAllocation.pdPower} and the loss of the line, and never more than the printed power
   * of the class; absent where the line cannot carry it. [W]
   */
  readonly psePower?: Watts;
  /** Whether the class cut the request or what is set aside for it; `notes` says which. */
  readonly limitedByClass: boolean;
  /** What the class cut, in words; empty where it cut nothing. */
  readonly notes: readonly string[];
  /** Whether the line carries the allocated power at all. */
  readonly feasible: boolean;
}

/** Largest value of the field. From memory; 802.3at allowed 1 to 255. */
const LARGEST_VALUE = 999;

/**
 * A power at the input of a device as the value of an LLDP field: tenths of a watt, rounded up.
 *
 * @param pdPower - Power at the input of the device, 0 to 99.9. [W]
 * @returns The value of the field, in 0.1 W, as a whole number.
 * @throws {@link InputError} If the power is outside 0 to 99.9 W.
 * @see IEEE Std 802.3-2022, 79.3.2 (clause from memory; resolution read in IEEE Std 802.3.2-2025).
 * @example
 * [lldpValue(25.5), lldpValue(6.49)]; // => [255, 65]
 */
export function lldpValue(pdPower: Watts): number {
  requireNonNegative(pdPower, 'pdPower', 'W');
  const nearest = Math.round(pdPower * 10);
  const value = nearest / 10 < pdPower ? nearest + 1 : nearest;
  if (value > LARGEST_VALUE) throw new InputError('range', 'pdPower', 'at most 99.9 W', pdPower);
  return value;
}

/**
 * The value of an LLDP field as power at the input of the device.
 *
 * @param value - Value of the field in 0.1 W, a whole number from 0 to 999.
 * @returns Power at the input of the device. [W]
 * @throws {@link InputError} If the value is not a whole number from 0 to 999.
 * @example A 15.4 W port that advertises 130 means the device's 13 W
 * lldpWatts(130); // => 13
 */
export function lldpWatts(value: number): Watts {
  requireInteger(value, 0, LARGEST_VALUE, 'value');
  return value / 10;
}

/**
 * The largest value that a device of a class may request. From memory: the device's class power, rounded up to 0.1 W.
 *
 * @param poeClass - Class, 0 to 8; dual-signature pairsets carry theirs in `dualSignatureClass`.
 * @returns The value of the field in 0.1 W, as a whole number.
 * @throws {@link InputError} If there is no such class.
 * @example
 * lldpClassLimit(8); // => 713
 */
export function lldpClassLimit(poeClass: PoeClassNumber): number {
  requireInteger(poeClass, 0, 8, 'poeClass');
  return lldpValue(mostDraw(classRow(poeClass)));
}

/**
 * What a port grants to a request, and what it must set aside for it over this run or over the worst channel.
 *
 * A request is power at the device; the port must source the loss of the line as well, by the exact quadratic
 * `V·(V - √(V² - 4·R·P))/2R`. A request above the limit of the class is granted up to that limit. Never more than the
 * class is allocated, at the device or at the port, although LLDP rounds its limits up and a poor line takes more: what
 * was cut is in `notes`.
 *
 * @param input - Requested value (0.1 W), class and type of the port, loop or run [Ω], voltage at the port [V].
 * @returns Granted value (0.1 W), the power it means at the device and at the port [W].
 * @throws {@link InputError} If the value is not a whole number from 0 to 999, or as `poeClass`.
 * @example 25.5 W over the worst channel, and over 20 m of Category 6
 * const worst = lldpAllocation({ requested: 255, poeClass: 4 });
 * const run = runResistance({ segments: [{ cable: cable('cat6'), length: 20 }] });
 * const near = lldpAllocation({ requested: 255, poeClass: 4, resistance: run });
 * [worst.psePower?.toFixed(2), near.psePower?.toFixed(2)]; // => ['30.00', '26.01']
 */
export function lldpAllocation(input: LldpAllocationInput): LldpAllocation {
  const { requested, ...stated } = readInput(LLDP_ALLOCATION_FIELDS, input);
  const limits = classLimits(stated.poeClass, stated);
  const resistance = loopThatPowerSees(stated.resistance ?? limits.channelResistance, limits.pairs);
  const pseVoltage = portVoltageRange(stated.pseVoltage ?? limits.pseVoltageMin).low;
  const classLimit = lldpClassLimit(stated.poeClass);
  const allocated = Math.min(requested, classLimit);
  const pdPower = Math.min(allocated / 10, mostDraw(limits));
  const point = constantPower(pseVoltage, resistance, pdPower);
  const notes: string[] = [];
  if (requested / 10 > pdPower) {
    notes.push(`class ${limits.poeClass} allows the device ${pdPower} W, not the ${requested / 10} W that it asks for`);
  }
  // A nanowatt is rounding: class 4 at its worst takes its 30 W.
  if (point.feasible && point.supplyPower - limits.psePower > 1e-9) {
    const { psePowerLimit } = appliedLimits({ ...stated, pdPower });
    const off = point.supplyPower > psePowerLimit ? ': the port may switch the device off' : '';
    const words = `class ${limits.poeClass} is set aside ${limits.psePower} W at the port, not the ${point.supplyPower.toFixed(3)} W that the line takes`;
    notes.push(words + off);
  }
  return {
    requested,
    allocated,
    classLimit,
    pdPower,
    resistance,
    resistanceBasis: stated.resistance === undefined ? 'worst-case' : 'stated',
    pseVoltage,
    source: 'ieee-802.3-lldp',
    ...(point.feasible ? { psePower: Math.min(point.supplyPower, limits.psePower) } : {}),
    limitedByClass: notes.length > 0,
    notes,
    feasible: point.feasible,
  };
}
