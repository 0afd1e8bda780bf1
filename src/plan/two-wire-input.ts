/** A two-wire DC circuit as it is described. @module */
import { CONNECTION_COUNT } from '../cable/read-cable.ts';
import { requireJoints } from '../cable/run-resistance.ts';
import type { Load } from '../circuit/operating-point.ts';
import { legsOf, type TwoWireLegs } from '../circuit/voltage-drop.ts';
import type { Conductor } from '../conductor/conductor.ts';
import { CONDUCTOR_TEMPERATURE, requireConductor } from '../conductor/resistance-per-metre.ts';
import { atMaximum } from '../conductor/to-maximum.ts';
import { MARGINAL_BELOW_FIELD, requireMarginalBelow } from '../limits/held.ts';
import type { AnyFields, Fields, OptionalField } from '../quantity/fields.ts';
import { requireObject, requirePositive } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import { intervalOf } from '../quantity/interval.ts';
import { refuseUnknown } from '../quantity/nearest.ts';
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
  /** Comes back in the judged run; a search takes it and leaves it. */
  readonly label?: string | undefined;
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
  const { low, high } = intervalOf(supplyVoltage, 'supplyVoltage', (volts, path) => requirePositive(volts, path, 'V'));
  return { low, high, single: typeof supplyVoltage !== 'object' };
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
  const { connections = 0, connectionResistance = 0, permittedDrop, marginalBelow } = input;
  requireJoints(connections, connectionResistance);
  for (const [name, unit] of STATED) if (input[name] !== undefined) requirePositive(input[name], name, unit);
  if (permittedDrop !== undefined) requireDrop(permittedDrop, 'permittedDrop');
  if (marginalBelow !== undefined) requireMarginalBelow(marginalBelow);
}

const STATED = [
  ['minimumVoltage', 'V'],
  ['maximumVoltage', 'V'],
  ['ampacity', 'A'],
  ['maximumResistance', 'Ω'],
] as const;

function requireDrop(drop: PermittedDrop, path: string): void {
  if (typeof drop === 'object' && drop !== null) {
    requirePositive(drop.volts, `${path}.volts`, 'V');
    refuseUnknown(drop, ['volts'], path);
    return;
  }
  requirePositive(drop, path, '(a fraction of the supply voltage)');
  if (drop >= 1) throw new InputError('range', path, 'a fraction of the supply voltage under 1', drop);
}

/** Any two-wire run, whichever way its conductors are given. @internal */
export interface AnyTwoWireRun extends TwoWireCommon {
  readonly length: Metres;
  readonly conductor?: Conductor | undefined;
  readonly out?: Conductor | undefined;
  readonly back?: Conductor | undefined;
}

const ONE_CONDUCTOR: OptionalField<Conductor> = {
  check: (value, path) => requireConductor(value, path),
  type: 'Conductor',
  optional: true,
};
const STATED_VOLTAGE: OptionalField<Volts> = { positive: 'V', optional: true };

/** @internal */
export const LOAD_FIELDS: AnyFields = { power: { nonNegative: 'W' }, current: { nonNegative: 'A' }, resistance: { nonNegative: 'Ω' } };

/** @internal */
export const TWO_WIRE_RUN_FIELDS: Fields<AnyTwoWireRun, 'temperature' | 'connections' | 'connectionResistance' | 'marginalBelow'> = {
  supplyVoltage: { positive: 'V', range: true },
  conductor: () => ONE_CONDUCTOR,
  out: () => ONE_CONDUCTOR,
  back: () => ONE_CONDUCTOR,
  length: { nonNegative: 'm' },
  temperature: () => CONDUCTOR_TEMPERATURE,
  connections: () => CONNECTION_COUNT,
  connectionResistance: { nonNegative: 'Ω', default: 0, source: 'library-default' },
  load: { exactlyOne: () => LOAD_FIELDS as never },
  minimumVoltage: () => STATED_VOLTAGE,
  maximumVoltage: () => STATED_VOLTAGE,
  permittedDrop: { check: (drop, path) => requireDrop(drop, path), optional: true },
  ampacity: { positive: 'A', optional: true },
  maximumResistance: { positive: 'Ω', optional: true },
  marginalBelow: () => MARGINAL_BELOW_FIELD,
  label: { text: 'any', optional: true },
};
