/** A short at the far end: does enough current flow to open what protects the line. @module */
import type { Conductor } from '../conductor/conductor.ts';
import { CONDUCTOR_TEMPERATURE } from '../conductor/resistance-per-metre.ts';
import { atMaximum } from '../conductor/to-maximum.ts';
import type { Check } from '../limits/check.ts';
import { FAULT_CURRENT } from '../limits/fault-current.ts';
import { held, MARGINAL_BELOW_FIELD } from '../limits/held.ts';
import { nextDown } from '../quantity/exact.ts';
import { type Assumption, assumptionsOf, type Fields, readInput } from '../quantity/fields.ts';
import { requirePositive, SMALLEST } from '../quantity/guards.ts';
import type { Amperes, Celsius, Metres, Ohms, Volts } from '../quantity/units.ts';
import { LEG, legsOf, twoWirePerMetre } from './voltage-drop.ts';

/** A two-wire line, its supply and its protective device. */
export interface FarEndFaultInput {
  /** Lowest voltage that the supply may have. [V] */
  readonly supplyVoltage: Volts;
  /** Both conductors; or `out` and `back` where they differ. A nominal one is taken at its maximum. */
  readonly conductor?: Conductor | undefined;
  readonly out?: Conductor | undefined;
  readonly back?: Conductor | undefined;
  /** One way. [m] */
  readonly length: Metres;
  /** Conductor temperature at its highest: a hot line carries the least fault current; 20 if absent. [°C] */
  readonly temperature?: Celsius | undefined;
  /** Inside the supply, where its data sheet states it; 0 if absent. [Ω] */
  readonly sourceResistance?: Ohms | undefined;
  /** Current that surely opens the fuse or trips the electronic limit. [A] */
  readonly tripCurrent: Amperes;
  /** A margin under this fraction of the limit is marginal; 0.05 if absent. */
  readonly marginalBelow?: number | undefined;
}

/** @internal */
export const FAR_END_FAULT_CURRENT_FIELDS: Fields<FarEndFaultInput, 'temperature' | 'sourceResistance' | 'marginalBelow'> = {
  supplyVoltage: { positive: 'V' },
  conductor: () => LEG,
  out: () => LEG,
  back: () => LEG,
  length: { nonNegative: 'm' },
  temperature: () => CONDUCTOR_TEMPERATURE,
  sourceResistance: { nonNegative: 'Ω', default: 0, source: 'library-default' },
  tripCurrent: { positive: 'A' },
  marginalBelow: () => MARGINAL_BELOW_FIELD,
};

/** Fault current at the far end, held against the trip current. */
export interface FarEndFault {
  /** Into a short at the far end. [A] */
  readonly faultCurrent: Amperes;
  /** Supply and line, out and back. [Ω] */
  readonly resistance: Ohms;
  /** Longest line whose far end still trips the device, 0 where none does. [m] */
  readonly longestProtected: Metres;
  readonly check: Check;
  /** What was taken for what the caller left out. */
  readonly assumptions: readonly Assumption[];
  readonly caution: string;
}

/**
 * Current into a short at the far end of a two-wire line, against the current that opens its protective device.
 *
 * The least current counts: lowest voltage, hottest and thinnest conductor. Steady state by Ohm's law; how fast a device
 * opens at that current is on its own curve. A short that does not open it heats the line for as long as it lasts.
 *
 * @param input - Supply voltage [V], conductors, length one way [m], temperature [°C], source resistance [Ω], trip current [A].
 * @returns Fault current [A], loop resistance [Ω], the longest protected line [m], and the check.
 * @throws {@link InputError} If a number is outside its domain, or supply and line together have no resistance.
 * @example 100 m of 22 AWG at 24 V behind a 4 A fuse that needs 8 A to open
 * const fault = farEndFaultCurrent({ supplyVoltage: 24, conductor: awg(22), length: 100, tripCurrent: 8 });
 * [fault.faultCurrent.toFixed(2), fault.check.verdict]; // => ['2.22', 'fail']
 */
export function farEndFaultCurrent(input: FarEndFaultInput): FarEndFault {
  const read = readInput(FAR_END_FAULT_CURRENT_FIELDS, input);
  const { supplyVoltage, length, temperature, sourceResistance, tripCurrent, marginalBelow } = read;
  const [out, back] = legsOf(read);
  const perMetre = twoWirePerMetre([atMaximum(out), atMaximum(back)], temperature);
  const resistance = perMetre * length + sourceResistance;
  requirePositive(resistance, 'length', 'Ω of line and supply together');

  const faultCurrent = supplyVoltage / resistance;
  let longestProtected = Math.max(0, (supplyVoltage / tripCurrent - sourceResistance) / perMetre);
  // Rounded up, the far end of just this line would not trip the device.
  while (longestProtected >= SMALLEST && supplyVoltage / (perMetre * longestProtected + sourceResistance) < tripCurrent) {
    longestProtected = nextDown(longestProtected);
  }
  if (longestProtected < SMALLEST) longestProtected = 0;
  return {
    faultCurrent,
    resistance,
    longestProtected,
    check: held(FAULT_CURRENT, faultCurrent, tripCurrent, marginalBelow),
    assumptions: assumptionsOf(FAR_END_FAULT_CURRENT_FIELDS, input),
    caution:
      'A fault that does not open its protective device can set a line on fire. The device, its curve and its place are for a licensed practitioner and the local code.',
  };
}
