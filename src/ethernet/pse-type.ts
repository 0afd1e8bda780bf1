/** The four types of power sourcing equipment, and what a device may rely on from each. @module */
import { requireOneOf } from '../quantity/guards.ts';
import type { Amperes, Ohms, Volts, Watts } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';
import type { PseType } from './class-table.ts';
import { PSE_TYPES, PSE_VOLTAGE_MAX, portRow } from './port-table.ts';

/** One type of switch port (power sourcing equipment) of IEEE 802.3. */
export interface PseTypeFacts {
  readonly type: PseType;
  /** The amendment that brought it. */
  readonly amendment: '802.3af' | '802.3at' | '802.3bt';
  /** Date on which the amendment was approved. */
  readonly approved: string;
  readonly clause: 33 | 145;
  /** Numbers of pairs that it may power. */
  readonly pairs: readonly (2 | 4)[];
  /** Most class power over one pairset. [W] */
  readonly psePowerTwoPair: Watts;
  /** Most class power over both pairsets; absent where the type powers one. [W] */
  readonly psePowerFourPair?: Watts;
  /** The most that the interface may give at all, which no class promises; Type 4. [W] */
  readonly interfacePowerMax?: Watts;
  /** Window of the voltage at the port, when it powers a device. [V] */
  readonly pseVoltageMin: Volts;
  /** [V] */
  readonly pseVoltageMax: Volts;
  /** Voltage at the port when off, at most (memory). [V] */
  readonly pseOffVoltageMax: Volts;
  /** Most resistance of one pairset of the channel: out on a pair in parallel, back on another. [Ω] */
  readonly pairsetResistance: Ohms;
  /** The same over all the pairs it may power. [Ω] */
  readonly channelResistance: Ohms;
  /** Continuous current of one pairset, which is that of each of its pairs, at most. [A] */
  readonly pairsetCurrent: Amperes;
  /** Continuous current of all pairsets together, at most. [A] */
  readonly totalCurrent: Amperes;
  /** Half of `pairsetCurrent`: one wire of a pair, if both are alike. [A] */
  readonly conductorCurrent: Amperes;
  /** A device has turned on when its voltage has risen so far. [V] */
  readonly pdTurnOnVoltage: Volts;
  /** A device has turned off when its voltage has fallen so far. [V] */
  readonly pdTurnOffVoltage: Volts;
  /** Voltage that a device must bear at its input. [V] */
  readonly pdVoltageMax: Volts;
  /** Least voltage at the device during overload; Type 1, from a draft. [V] */
  readonly pdVoltageMinOverload?: Volts;
  /** Most that a device may draw while it starts, before a higher class is granted. [W] */
  readonly startUpPower: Watts;
  /** How long that holds after power-up. [s] */
  readonly startUpTime: number;
  /** The cabling that the type assumes. */
  readonly cabling: string;
  /** Where each figure comes from. */
  readonly sources: Readonly<Record<'power' | 'pseVoltage' | 'resistance' | 'current' | 'turnOn' | 'startUp', SourceKey>>;
}

type Row = Pick<PseTypeFacts, 'amendment' | 'approved' | 'clause' | 'psePowerTwoPair' | 'psePowerFourPair' | 'pairsetCurrent' | 'cabling'>;

// biome-ignore format: columns
const TYPES: readonly Row[] = [
  { amendment: '802.3af', approved: '2003-06-12', clause: 33, psePowerTwoPair: 15.4, pairsetCurrent: 0.35, cabling: 'ISO/IEC 11801 Class C (Category 3)' },
  { amendment: '802.3at', approved: '2009-09-11', clause: 33, psePowerTwoPair: 30, pairsetCurrent: 0.6, cabling: 'ISO/IEC 11801 Class D (Category 5 or better)' },
  { amendment: '802.3bt', approved: '2018-09-27', clause: 145, psePowerTwoPair: 30, psePowerFourPair: 60, pairsetCurrent: 0.6, cabling: 'ISO/IEC 11801 Class D (Category 5 or better)' },
  { amendment: '802.3bt', approved: '2018-09-27', clause: 145, psePowerTwoPair: 30, psePowerFourPair: 90, pairsetCurrent: 0.96, cabling: 'ISO/IEC 11801 Class D (Category 5 or better)' },
];

/**
 * One of the four types of switch port: its voltage window, channel, currents, and when a device turns on and off.
 *
 * The currents are the nominal ones. Over unequal pairs one pairset may carry more than its half: the standard allows
 * for it in classes 5 to 8, in figures that were not read, so nothing is judged by them.
 *
 * @param type - Type of the port, 1 to 4.
 * @returns Powers [W], voltages [V], resistances [Ω] and currents [A], and the source of each group of figures.
 * @throws {@link InputError} If there is no such type.
 * @example
 * const { pseVoltageMin, pseVoltageMax, channelResistance, totalCurrent } = pseType(4);
 * [pseVoltageMin, pseVoltageMax, channelResistance, totalCurrent]; // => [52, 57, 6.25, 1.92]
 */
export function pseType(type: PseType): PseTypeFacts {
  requireOneOf(type, PSE_TYPES, 'type');
  const row = TYPES[type - 1] as Row;
  const { pseVoltageMin, pairsetResistance } = portRow(type);
  const pairsets = row.psePowerFourPair === undefined ? 1 : 2;
  return {
    type,
    ...row,
    pseVoltageMin,
    pairsetResistance,
    pairs: pairsets === 1 ? [2] : [2, 4],
    ...(type === 4 ? { interfacePowerMax: 99.9 } : {}),
    pseVoltageMax: PSE_VOLTAGE_MAX,
    pseOffVoltageMax: 2.8,
    channelResistance: pairsetResistance / pairsets,
    totalCurrent: row.pairsetCurrent * pairsets,
    conductorCurrent: row.pairsetCurrent / 2,
    pdTurnOnVoltage: 42,
    pdTurnOffVoltage: 30,
    pdVoltageMax: PSE_VOLTAGE_MAX,
    ...(type === 1 ? { pdVoltageMinOverload: 36 } : {}),
    startUpPower: START_UP_POWER,
    startUpTime: 0.08,
    sources: {
      power: 'ieee-802.3-class',
      pseVoltage: 'ieee-802.3-pse-voltage',
      resistance: 'ieee-802.3-channel',
      current: 'ieee-802.3-current',
      turnOn: 'ieee-802.3-turn-on',
      startUp: 'ieee-802.3-start-up',
    },
  };
}

/** Most that any device draws before a higher class is granted. [W] @internal */
export const START_UP_POWER: Watts = 13;
