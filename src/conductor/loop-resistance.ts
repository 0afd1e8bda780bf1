/** Out and back through two equal conductors. @module */
import { type Fields, readInput } from '../quantity/fields.ts';
import type { Celsius, Metres, Ohms } from '../quantity/units.ts';
import type { Conductor } from './conductor.ts';
import { CONDUCTOR, CONDUCTOR_TEMPERATURE, resistancePerMetre } from './resistance-per-metre.ts';

/** A loop of two equal conductors. */
export interface LoopResistanceInput {
  readonly conductor: Conductor;
  /** Length of the run, one way. [m] */
  readonly length: Metres;
  /** Conductor temperature; 20 if absent. [°C] */
  readonly temperature?: Celsius | undefined;
}

/** @internal */
export const LOOP_RESISTANCE_FIELDS: Fields<LoopResistanceInput, 'temperature'> = {
  conductor: () => CONDUCTOR,
  length: { nonNegative: 'm', about: 'One way.' },
  temperature: () => CONDUCTOR_TEMPERATURE,
};

/**
 * Resistance of two equal conductors in series: one pair shorted at its far end, or a two-wire DC circuit.
 *
 * @param input - Conductor, length one way [m], conductor temperature [°C].
 * @returns `2 · r(T) · length`. [Ω]
 * @throws {@link InputError} If the length is neither 0 nor from 1e-12 to 1e12 m, or the temperature is out of range or, where
 *   the metal's temperature coefficient is not known (code `conflict`), not 20 °C.
 * @example
 * loopResistance({ conductor: awg(24), length: 100 }).toFixed(2); // => '16.84'
 */
export function loopResistance(input: LoopResistanceInput): Ohms {
  const { conductor, length, temperature } = readInput(LOOP_RESISTANCE_FIELDS, input);
  return 2 * resistancePerMetre(conductor, temperature) * length + 0; // `+ 0`: no -0
}
