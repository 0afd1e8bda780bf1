/** From the resistance a conductor should have to the most it may have. @module */
import type { Conductor } from './conductor.ts';
import { requireConductor } from './resistance-per-metre.ts';

/** ASTM B3: ±1 % of diameter, so 2 % of resistance. */
const DIAMETER_TOLERANCE_FACTOR = 1.02;

/**
 * The same conductor at the most resistance its gauge tolerance allows: what a check uses.
 *
 * A nominal conductor is taken 2 % up for the tolerance of its diameter (stranding already carries its own 2 % for
 * the lay). A conductor whose basis is `maximum` or `measured` is returned as it is: nothing is added twice.
 *
 * @param conductor - Any conductor.
 * @returns A conductor with `basis: 'maximum'` (or `'measured'`), resistance at 20 °C [Ω/m].
 * @throws {@link InputError} If the conductor is not one.
 * @example
 * (toMaximum(awg(18)).resistancePerMetre / awg(18).resistancePerMetre).toFixed(2); // => '1.02'
 */
export function toMaximum(conductor: Conductor): Conductor {
  requireConductor(conductor, 'conductor');
  if (conductor.basis !== 'nominal') return { ...conductor };
  return {
    ...conductor,
    resistancePerMetre: conductor.resistancePerMetre * DIAMETER_TOLERANCE_FACTOR,
    basis: 'maximum',
    source: 'astm-b3',
  };
}
