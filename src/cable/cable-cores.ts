/** Cores of a category cable put to use as conductors of a two-wire DC circuit. @module */
import type { Conductor } from '../conductor/conductor.ts';
import { conductorFromResistance } from '../conductor/conductor-from-resistance.ts';
import { type Fields, readInput } from '../quantity/fields.ts';
import { requireInteger } from '../quantity/guards.ts';
import type { Cable } from './cable.ts';
import { CABLE, type CableOrName } from './read-cable.ts';

/** Cores of a cable, joined at both ends. */
export interface CableCoresInput {
  readonly cable: CableOrName;
  /** Number of cores in parallel, from 1 to all the cable has. */
  readonly cores: number;
}

/** @internal */
export const CABLE_CORES_FIELDS: Fields<CableCoresInput, never, { cable: Cable }> = { cable: () => CABLE, cores: { whole: [1, 200] } };

/**
 * Several cores of a twisted-pair cable, joined at both ends, as one conductor for one way of a two-wire circuit.
 *
 * One pair out and another back is `cores: 2` each way: the same loop as 2-pair power. The cable's maximum resistance is
 * taken, so a check adds no tolerance to it.
 *
 * @param input - The cable, and the number of its cores for this way.
 * @returns A conductor with the cores' maximum resistance at 20 °C [Ω/m].
 * @throws {@link InputError} If the cable is not one, or has not that many cores.
 * @example One pair of Category 5e each way
 * (cableCores({ cable: 'cat5e', cores: 2 }).resistancePerMetre * 100).toFixed(2); // => '4.69'
 */
export function cableCores(input: CableCoresInput): Conductor {
  const { cable, cores } = readInput(CABLE_CORES_FIELDS, input);
  requireInteger(cores, 1, 2 * cable.pairs, 'cores');
  return {
    ...conductorFromResistance({
      ohmsPerKilometre: (cable.maximumResistancePerMetre * 1000) / cores,
      name: `${cores} of ${cable.name}`,
      stranding: cable.stranding,
    }),
    temperatureCoefficient: cable.temperatureCoefficient,
    source: cable.source,
  };
}
