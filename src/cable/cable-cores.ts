/** Cores of a category cable put to use as conductors of a two-wire DC circuit. @module */
import type { Conductor } from '../conductor/conductor.ts';
import { conductorFromResistance } from '../conductor/conductor-from-resistance.ts';
import { requireInteger, requireObject, requirePositive } from '../quantity/guards.ts';
import type { Cable } from './cable.ts';

/**
 * Several cores of a twisted-pair cable, joined at both ends, as one conductor for one way of a two-wire circuit.
 *
 * One pair out and another back is `cores: 2` each way: the same loop as 2-pair power. The cable's maximum resistance is
 * taken, so a check adds no tolerance to it.
 *
 * @param cable - The cable.
 * @param cores - Number of cores in parallel for this way, from 1 to all the cable has.
 * @returns A conductor with the cores' maximum resistance at 20 °C [Ω/m].
 * @throws {@link InputError} If the cable is not one, or has not that many cores.
 * @example One pair of Category 5e each way
 * (cableCores(cable('cat5e'), 2).resistancePerMetre * 100).toFixed(2); // => '4.69'
 */
export function cableCores(cable: Cable, cores: number): Conductor {
  requireObject(cable, 'cable', "a cable, such as cable('cat5e')");
  requirePositive(cable.maximumResistancePerMetre, 'cable.maximumResistancePerMetre', 'Ω/m');
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
