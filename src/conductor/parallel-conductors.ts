/** Several conductors joined at both ends: paralleled cores. @module */
import { requireArray } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Conductor } from './conductor.ts';
import { requireConductor } from './resistance-per-metre.ts';

/**
 * Conductors of one length, joined at both ends, as the one conductor they amount to.
 *
 * `1/r = 1/r1 + 1/r2 + …`, so the current divides by itself. All of one metal, or the sum would not follow one line with
 * temperature; the basis is the weakest of theirs, a nominal one making the whole nominal.
 *
 * @param conductors - Two or more conductors.
 * @returns One conductor: the areas added [mm²], the resistances in parallel [Ω/m].
 * @throws {@link InputError} If there is no conductor, or they are not of one metal, or of different bases.
 * @example Both cores of a pair as one
 * (parallelConductors([awg(24), awg(24)]).resistancePerMetre / awg(24).resistancePerMetre).toFixed(3); // => '0.500'
 */
export function parallelConductors(conductors: readonly Conductor[]): Conductor {
  requireArray(conductors, 'conductors', 'a list of conductors');
  const [first] = conductors;
  if (first === undefined) throw new InputError('missing', 'conductors', 'at least one conductor', conductors);
  let conductance = 0;
  let area = 0;
  for (const [index, conductor] of conductors.entries()) {
    requireConductor(conductor, `conductors[${index}]`);
    for (const same of ['material', 'basis'] as const) {
      if (conductor[same] === first[same]) continue;
      const expected = `the same ${same} as the first, '${first[same]}'`;
      throw new InputError('conflict', `conductors[${index}].${same}`, expected, conductor[same]);
    }
    conductance += 1 / conductor.resistancePerMetre;
    area += conductor.area;
  }
  const alike = conductors.every(({ name }) => name === first.name);
  return {
    ...first,
    name: alike ? `${conductors.length} × ${first.name}` : conductors.map(({ name }) => name).join(' + '),
    area,
    diameter: Math.sqrt((4 / Math.PI) * area),
    geometry: 'equivalent',
    resistancePerMetre: 1 / conductance,
  };
}
