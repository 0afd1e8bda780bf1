/** A power class of IEEE 802.3 as one type of switch port serves it. @module */
import { requireInteger, requireKeys, requireObject, requireOneOf } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Ohms, Volts, Watts } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';
import { classRow, type PoeClassNumber, type PseType } from './class-table.ts';
import { PSE_TYPES, PSE_VOLTAGE_MAX, portRow } from './port-table.ts';

/** Which port serves the class. */
export interface PoeClassOptions {
  /** Type of the switch port; the weakest that may serve the class if absent (1 for 0 to 3, 2 for 4, 3 for 5 and 6, 4 for 7 and 8). */
  readonly pseType?: PseType | undefined;
  /** Pairs that carry power; 4 for classes 5 to 8, else 2. Types 3 and 4 may power classes 0 to 4 over 4. */
  readonly pairs?: 2 | 4 | undefined;
}

/** A power class with the limits that hold at its port, at its device and along its channel. */
export interface PoeClass {
  readonly poeClass: PoeClassNumber;
  readonly type: PseType;
  readonly pairs: 2 | 4;
  /** Least power that the port must be able to give, as printed. [W] */
  readonly psePower: Watts;
  /** Power limit applied at the port: as printed, or what `pdPower` takes at worst where that is more. [W] */
  readonly psePowerLimit: Watts;
  /** Most average power that the device may draw, as printed. [W] */
  readonly pdPower: Watts;
  /** Classes 0 and 3: the 13.0 W that later editions print for the same class. [W] */
  readonly pdPowerLater?: Watts;
  /** Lowest voltage at the port. [V] */
  readonly pseVoltageMin: Volts;
  /** Highest voltage at the port. [V] */
  readonly pseVoltageMax: Volts;
  /** Lowest voltage at which the device must work, as printed. [V] */
  readonly pdVoltageMin: Volts;
  /** Voltage limit applied at the device: as printed, or what arrives at worst where that is less. [V] */
  readonly pdVoltageLimit: Volts;
  /** Most resistance of the channel that the standard assumes, in the circuit that power sees. [Ω] */
  readonly channelResistance: Ohms;
  readonly source: SourceKey;
}

/**
 * A power class of IEEE 802.3 as served by one type of switch port.
 *
 * Single-signature classes 0 to 8. `psePowerLimit` and `pdVoltageLimit` are the limits at which the standard agrees
 * with its own rounded figures: a device at its printed power, on the worst channel at the lowest voltage, passes.
 * Class 0 exists for Types 1 and 2 only (memory): Types 3 and 4 treat such a device as class 3, so on any type it has
 * the powers of class 3.
 *
 * @param poeClass - Class, 0 to 8.
 * @param options - Type of the port and number of powered pairs.
 * @returns Powers [W], voltages [V] and channel resistance [Ω] of the class.
 * @throws {@link InputError} If the class or type does not exist, if the type grants less than the class, or if it
 *   cannot power that many pairs.
 * @example
 * const { psePower, pdPower, pseVoltageMin, channelResistance } = poeClass(4);
 * [psePower, pdPower, pseVoltageMin, channelResistance]; // => [30, 25.5, 50, 12.5]
 */
export function poeClass(poeClass: PoeClassNumber, options: PoeClassOptions = {}): PoeClass {
  requireObject(options, 'options', 'an object');
  requireKeys(options, ['pseType', 'pairs'], 'options');
  return classLimits(poeClass, options);
}

/** The same with options out of an input that has more. @internal */
export function classLimits(poeClass: PoeClassNumber, options: PoeClassOptions): PoeClass {
  requireInteger(poeClass, 0, 8, 'poeClass');
  const row = classRow(poeClass);
  const { pseType: type = row.type, pairs = row.pairs } = options;
  if (options.pseType !== undefined) requireOneOf(type, PSE_TYPES, 'pseType');
  if (options.pairs !== undefined) requireOneOf(pairs, [2, 4], 'pairs');
  if (type < row.type) {
    throw new InputError('conflict', 'pseType', `Type ${row.type} or higher for class ${poeClass}`, type);
  }
  if (pairs === 2 && row.pairs === 4) throw new InputError('conflict', 'pairs', `4 pairs for class ${poeClass}`, 2);
  if (pairs === 4 && type < 3) throw new InputError('conflict', 'pairs', `2 pairs for a Type ${type} port`, 4);

  // On a stronger type than the weakest the same device draws less from the port: the printed limit is enough.
  const weakest = type === row.type;
  const port = portRow(type);
  const limits: { -readonly [K in keyof PoeClass]: PoeClass[K] } = {
    poeClass: (poeClass + 0) as PoeClassNumber, // `+ 0`: no -0
    type,
    pairs,
    psePower: row.psePower,
    psePowerLimit: (weakest && row.psePowerLimit) || row.psePower,
    pdPower: row.pdPower,
    pseVoltageMin: port.pseVoltageMin,
    pseVoltageMax: PSE_VOLTAGE_MAX,
    pdVoltageMin: row.pdVoltageMin,
    pdVoltageLimit: row.pdVoltageMin,
    channelResistance: port.pairsetResistance / (pairs / 2),
    source: 'ieee-802.3-class',
  };
  if (row.pdPowerLater !== undefined) limits.pdPowerLater = row.pdPowerLater;
  return limits;
}

/** Most that a device of the class may draw on average: the later figure, where there is one. [W] @internal */
export function mostDraw({ pdPower, pdPowerLater = pdPower }: Pick<PoeClass, 'pdPower' | 'pdPowerLater'>): Watts {
  return pdPowerLater;
}
