/** A two-wire DC circuit as it is described. @module */
import { requireJoints } from '../cable/run-resistance.ts';
import type { Load } from '../circuit/operating-point.ts';
import { legsOf, type TwoWireLegs } from '../circuit/voltage-drop.ts';
import type { Conductor } from '../conductor/conductor.ts';
import { atMaximum } from '../conductor/to-maximum.ts';
import { requireMarginalBelow } from '../limits/held.ts';
import { requireObject, requirePositive } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Amperes, Celsius, Metres, Ohms, Volts } from '../quantity/units.ts';

/** A voltage that is known, or known to stay between two others. [V] */
export type SupplyVoltage = Volts | { readonly low: Volts; readonly high: Volts };

/** A drop that is permitted: a fraction of the supply voltage, or volts. [V] */
export type PermittedDrop = number | { readonly volts: Volts };

interface TwoWireCommon {
  /** One figure [V], or a range: a nominal 24 V on battery is 21 to 27.6 V. One figure makes the verdict at best uncertain. */
  readonly supplyVoltage: SupplyVoltage;
  /** Conductor temperature; 20 if absent. [°C] */
  readonly temperature?: Celsius | undefined;
  /** Joints along the run, each through both conductors. 0 if absent. */
  readonly connections?: number | undefined;
  /** One joint, one conductor; 0 if absent. [Ω] */
  readonly connectionResistance?: Ohms | undefined;
  /** Power [W], current [A] or resistance [Ω] of the device. */
  readonly load: Load;
  /** Lowest voltage at which the device works. [V] */
  readonly minimumVoltage?: Volts | undefined;
  /** Highest voltage that the device bears. [V] */
  readonly maximumVoltage?: Volts | undefined;
  /** Most drop along the run that is permitted: a fraction of the supply voltage, 0 to 1, or volts [V]. */
  readonly permittedDrop?: PermittedDrop | undefined;
  /** Most current of its conductors as they are installed, from the table that applies. [A] */
  readonly ampacity?: Amperes | undefined;
  /** Most resistance out and back on the device's data sheet. [Ω] */
  readonly maximumResistance?: Ohms | undefined;
  /** A margin under this fraction of the limit is marginal; 0.05 if absent. */
  readonly marginalBelow?: number | undefined;
}

/** What a two-wire circuit of equal conductors is made of, its length apart. */
export interface TwoWireCircuit extends TwoWireCommon {
  /** Both conductors alike; a nominal one is taken at its maximum. */
  readonly conductor: Conductor;
  readonly out?: undefined;
  readonly back?: undefined;
}

/** What a two-wire circuit of unequal conductors is made of, such as a core and a screen, its length apart. */
export interface UnequalTwoWireCircuit extends TwoWireCommon {
  /** What the current goes out on; a nominal one is taken at its maximum. */
  readonly out: Conductor;
  /** What it comes back on. */
  readonly back: Conductor;
  readonly conductor?: undefined;
}

/** A two-wire run of equal conductors. */
export interface TwoWireRunInput extends TwoWireCircuit {
  /** Length of the run, one way. [m] */
  readonly length: Metres;
}

/** A two-wire run of unequal conductors. */
export interface UnequalTwoWireRunInput extends UnequalTwoWireCircuit {
  /** Length of the run, one way. [m] */
  readonly length: Metres;
}

/** @internal */
export function supplyRange(supplyVoltage: SupplyVoltage): { low: Volts; high: Volts; single: boolean } {
  if (typeof supplyVoltage === 'object' && supplyVoltage !== null) {
    requirePositive(supplyVoltage.low, 'supplyVoltage.low', 'V');
    requirePositive(supplyVoltage.high, 'supplyVoltage.high', 'V');
    if (supplyVoltage.high < supplyVoltage.low) {
      throw new InputError('conflict', 'supplyVoltage.high', `at least the low end, ${supplyVoltage.low} V`, supplyVoltage.high);
    }
    return { low: supplyVoltage.low, high: supplyVoltage.high, single: false };
  }
  requirePositive(supplyVoltage, 'supplyVoltage', 'V');
  return { low: supplyVoltage, high: supplyVoltage, single: true };
}

/** The conductors of a circuit, each at its maximum. @internal */
export function legsAtMaximum(input: TwoWireCircuit | UnequalTwoWireCircuit): TwoWireLegs {
  const [out, back] = legsOf(input);
  return [atMaximum(out), atMaximum(back)];
}

/** All the joints, out and back. [Ω] @internal */
export function twoWireJoints({ connections = 0, connectionResistance = 0 }: TwoWireCommon): Ohms {
  return 2 * connections * connectionResistance;
}

/** @internal */
export function requireTwoWire(input: TwoWireCircuit | UnequalTwoWireCircuit): void {
  requireObject(input, 'input', 'an object with supplyVoltage, conductor and load');
  const {
    connections = 0,
    connectionResistance = 0,
    minimumVoltage,
    maximumVoltage,
    permittedDrop,
    maximumResistance,
    ampacity,
    marginalBelow,
  } = input;
  requireJoints(connections, connectionResistance);
  if (minimumVoltage !== undefined) requirePositive(minimumVoltage, 'minimumVoltage', 'V');
  if (maximumVoltage !== undefined) requirePositive(maximumVoltage, 'maximumVoltage', 'V');
  if (typeof permittedDrop === 'object' && permittedDrop !== null) requirePositive(permittedDrop.volts, 'permittedDrop.volts', 'V');
  else if (permittedDrop !== undefined) {
    requirePositive(permittedDrop, 'permittedDrop', '(a fraction of the supply voltage)');
    if (permittedDrop >= 1) throw new InputError('range', 'permittedDrop', 'a fraction of the supply voltage under 1', permittedDrop);
  }
  if (ampacity !== undefined) requirePositive(ampacity, 'ampacity', 'A');
  if (maximumResistance !== undefined) requirePositive(maximumResistance, 'maximumResistance', 'Ω');
  if (marginalBelow !== undefined) requireMarginalBelow(marginalBelow);
}
