/** Devices that classify each pairset on its own: dual-signature classes. @module */
import { type Fields, readInput } from '../quantity/fields.ts';
import { requireInteger, requireKeys, requireObject, requireOneOf } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Amperes, Ohms, Volts, Watts } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';
import { classRow, type PseType } from './class-table.ts';
import { lldpValue } from './lldp.ts';
import { mostDraw } from './poe-class.ts';
import * as port from './port-fields.ts';
import { PSE_TYPES, PSE_VOLTAGE_MAX, portRow } from './port-table.ts';

/** A class of one pairset of a dual-signature device. */
export type DualSignatureClassNumber = 1 | 2 | 3 | 4 | 5;

/** Which port serves the device. */
export interface DualSignatureOptions {
  /** Type of the port, 3 or 4; the weakest that may serve the classes if absent: 3, or 4 for class 5. */
  readonly pseType?: PseType | undefined;
}

/** The class of each pairset of a dual-signature device, which need not be equal, and the port. */
export interface DualSignatureInput extends DualSignatureOptions {
  readonly a: DualSignatureClassNumber;
  readonly b: DualSignatureClassNumber;
}

/** @internal */
export const DUAL_SIGNATURE_FIELDS: Fields<DualSignatureInput> = {
  a: { whole: [1, 5] },
  b: { whole: [1, 5] },
  pseType: () => port.PSE_TYPE_FIELD,
};

/** One pairset of a dual-signature device, with the limits of its class. All of it from memory. */
export interface DualSignatureClass {
  readonly dualSignatureClass: DualSignatureClassNumber;
  readonly type: 3 | 4;
  /** Least power that the port must be able to give over this pairset. [W] */
  readonly psePower: Watts;
  /** Most average power that the device may draw over it. [W] */
  readonly pdPower: Watts;
  /** Lowest voltage at the port. [V] */
  readonly pseVoltageMin: Volts;
  /** Highest voltage at the port. [V] */
  readonly pseVoltageMax: Volts;
  /** Most resistance of the pairset. [Ω] */
  readonly channelResistance: Ohms;
  /** At the power of the port and its lowest voltage. [A] */
  readonly pairsetCurrent: Amperes;
  /** One wire of a pair, if both are alike. [A] */
  readonly conductorCurrent: Amperes;
  /** What the port's power leaves at the device, at the lowest voltage over the worst pairset. [W] */
  readonly availableAtWorst: Watts;
  /** Largest value that the pairset may request by LLDP, in 0.1 W, as a whole number. */
  readonly lldpLimit: number;
  readonly source: SourceKey;
}

/** Both pairsets of a dual-signature device, and what they come to. */
export interface DualSignature {
  readonly a: DualSignatureClass;
  readonly b: DualSignatureClass;
  /** Both pairsets. [W] */
  readonly psePower: Watts;
  /** Both pairsets. [W] */
  readonly pdPower: Watts;
  /** Both pairsets. [A] */
  readonly totalCurrent: Amperes;
  readonly source: SourceKey;
}

/** Class 5 over one pairset, where it differs from the single-signature class; classes 1 to 4 are as those. From memory. [W] */
const CLASS_5_PD_POWER: Watts = 35.6;

/**
 * The class of one pairset of a dual-signature device. From memory: check it in the standard.
 *
 * Not the single-signature class of the same number: class 5 is 45 W over one pairset of 12.5 Ω, so 35.6 W arrive, not
 * 40 W. Classes 1 to 3 keep the powers of Type 1, although a Type 3 port at 50 V could deliver more.
 *
 * @param dualSignatureClass - Class of the pairset, 1 to 5.
 * @param options - Type of the port; the weakest that may serve the class if absent: 3, or 4 for class 5.
 * @returns Powers [W], voltages [V], resistance [Ω] and currents [A] of the pairset.
 * @throws {@link InputError} If there is no such class or type, or the type is too weak for it.
 * @example
 * const { pdPower, availableAtWorst } = dualSignatureClass(5);
 * [pdPower, availableAtWorst.toFixed(2)]; // => [35.6, '35.64']
 */
export function dualSignatureClass(dualSignatureClass: DualSignatureClassNumber, options: DualSignatureOptions = {}): DualSignatureClass {
  requireObject(options, 'options', 'an object with pseType');
  requireKeys(options, ['pseType'], 'options');
  requireInteger(dualSignatureClass, 1, 5, 'dualSignatureClass');
  if (options.pseType !== undefined) requireOneOf(options.pseType, PSE_TYPES, 'pseType');
  return pairsetClass(dualSignatureClass, options.pseType);
}

/**
 * A dual-signature device: two pairsets, each detected, classified and powered on its own.
 *
 * @param input - Class of pairset A and of pairset B, 1 to 5 each, and the type of the port.
 * @returns Both pairsets, and the sums of power [W] and current [A].
 * @throws {@link InputError} If there is no such class or type, or the type is too weak for one of them.
 * @example Two pairsets of class 5
 * const device = dualSignature({ a: 5, b: 5 });
 * [device.psePower, device.pdPower]; // => [90, 71.2]
 */
export function dualSignature(input: DualSignatureInput): DualSignature {
  const classes = readInput(DUAL_SIGNATURE_FIELDS, input);
  const { pseType = classes.a === 5 || classes.b === 5 ? 4 : 3 } = classes;
  const [a, b] = [pairsetClass(classes.a, pseType), pairsetClass(classes.b, pseType)];
  return {
    a,
    b,
    psePower: a.psePower + b.psePower,
    pdPower: a.pdPower + b.pdPower,
    totalCurrent: a.pairsetCurrent + b.pairsetCurrent,
    source: 'ieee-802.3-dual-signature',
  };
}

function pairsetClass(number: DualSignatureClassNumber, pseType: PseType | undefined): DualSignatureClass {
  const weakest = number === 5 ? 4 : 3;
  const type = pseType ?? weakest;
  if (type < weakest) throw new InputError('conflict', 'pseType', `Type ${weakest} or higher for dual-signature class ${number}`, type);
  const row = classRow(number);
  const { psePower } = row;
  const pdPower = number === 5 ? CLASS_5_PD_POWER : mostDraw(row);
  const { pseVoltageMin, pairsetResistance: channelResistance } = portRow(type);
  const pairsetCurrent = psePower / pseVoltageMin;
  return {
    dualSignatureClass: number,
    type: type as 3 | 4,
    psePower,
    pdPower,
    pseVoltageMin,
    pseVoltageMax: PSE_VOLTAGE_MAX,
    channelResistance,
    pairsetCurrent,
    conductorCurrent: pairsetCurrent / 2,
    availableAtWorst: psePower - pairsetCurrent * pairsetCurrent * channelResistance,
    lldpLimit: lldpValue(pdPower),
    source: 'ieee-802.3-dual-signature',
  };
}
