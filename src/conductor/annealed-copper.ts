/** Annealed copper of a gauge, for those who need no other metal: the same figures as awg(), without its table. @module */
import type { OhmsPerMetre } from '../quantity/units.ts';
import type { Stranding } from './conductor.ts';
import { formulaDiameter } from './gauge.ts';

/** IEC 60028 (IACS), at 20 °C. [1/K] @internal */
export const COPPER_COEFFICIENT = 0.00393;
/** IEC 60028 (IACS), at 20 °C. [m/(Ω·mm²)] */
const COPPER_CONDUCTIVITY = 58;
/** ASTM B496: the standard increment for the lay of the strands. */
const LAY_FACTOR = 1.02;

/** Nominal resistance of one conductor at 20 °C. [Ω/m] @internal */
export function annealedCopperPerMetre(gauge: number, stranding: Stranding): OhmsPerMetre {
  const diameter = formulaDiameter(gauge);
  return (stranding === 'stranded' ? LAY_FACTOR : 1) / (COPPER_CONDUCTIVITY * ((Math.PI / 4) * diameter * diameter));
}
