/** A two-wire DC circuit: the drop along its conductors. @module */
import type { Conductor } from '../conductor/conductor.ts';
import { CONDUCTOR_TEMPERATURE, requireConductor, resistancePerMetre } from '../conductor/resistance-per-metre.ts';
import { type Fields, type OptionalField, readInput } from '../quantity/fields.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Celsius, Metres, OhmsPerMetre, Volts } from '../quantity/units.ts';
import { LOAD_FIELDS, type Load, type OperatingPoint, settle } from './operating-point.ts';

interface TwoWireCommon {
  /** Voltage at the supply. [V] */
  readonly supplyVoltage: Volts;
  /** Length of the run, one way. [m] */
  readonly length: Metres;
  /** Conductor temperature; 20 if absent. [°C] */
  readonly temperature?: Celsius | undefined;
  /** Power [W], current [A] or resistance [Ω] of the load. */
  readonly load: Load;
}

/** A two-wire circuit of equal conductors, or of an `out` and a `back` that differ. */
export type VoltageDropInput =
  | (TwoWireCommon & { readonly conductor: Conductor; readonly out?: undefined; readonly back?: undefined })
  | (TwoWireCommon & { readonly out: Conductor; readonly back: Conductor; readonly conductor?: undefined });

/** One of the conductors of a circuit: they are given in two ways. @internal */
export const LEG: OptionalField<Conductor> = { check: (value, path) => requireConductor(value, path), type: 'Conductor', optional: true };

/** @internal */
export const VOLTAGE_DROP_FIELDS: Fields<VoltageDropInput, 'temperature'> = {
  supplyVoltage: { positive: 'V' },
  conductor: () => LEG,
  out: () => LEG,
  back: () => LEG,
  length: { nonNegative: 'm' },
  temperature: () => CONDUCTOR_TEMPERATURE,
  load: { exactlyOne: () => LOAD_FIELDS },
};

/**
 * Voltage drop of a two-wire DC circuit, and all that follows from it.
 *
 * The conductors are taken as they are: a nominal conductor gives a nominal drop; wrap it in {@link toMaximum} for a
 * check. Joints are not included.
 *
 * @param input - Supply voltage [V], conductor (or `out` and `back`), length one way [m], temperature [°C], load.
 * @returns The operating point at the far end, or the most power [W] and current [A] that the line can deliver.
 * @throws {@link InputError} If a number is outside its domain, or both or neither of the conductor forms are given.
 * @example A 6 W cue light on 100 m of 18 AWG at 24 V
 * const point = voltageDrop({ supplyVoltage: 24, conductor: awg(18), length: 100, load: { power: 6 } });
 * point.feasible && point.voltageDrop.toFixed(2); // => '1.10'
 */
export function voltageDrop(input: VoltageDropInput): OperatingPoint {
  const { supplyVoltage, length, temperature, load, ...legs } = readInput(VOLTAGE_DROP_FIELDS, input);
  return settle(supplyVoltage, twoWirePerMetre(legsOf(legs), temperature) * length + 0, load);
}

/** What the current goes out on, and what it comes back on. @internal */
export type TwoWireLegs = readonly [out: Conductor, back: Conductor];

/** The conductors of a circuit, as given: one for both ways, or one for each. @internal */
export function legsOf({ conductor, out, back }: Pick<VoltageDropInput, 'conductor' | 'out' | 'back'>): TwoWireLegs {
  if (out === undefined && back === undefined) {
    requireConductor(conductor as Conductor, 'conductor');
    return [conductor as Conductor, conductor as Conductor];
  }
  if (conductor !== undefined) throw new InputError('conflict', 'conductor', 'either conductor, or out and back', conductor);
  requireConductor(out as Conductor, 'out');
  requireConductor(back as Conductor, 'back');
  return [out as Conductor, back as Conductor];
}

/** @internal */
export function twoWirePerMetre([out, back]: TwoWireLegs, temperature: Celsius | undefined): OhmsPerMetre {
  return resistancePerMetre(out, temperature) + resistancePerMetre(back, temperature);
}
