/** Annealed copper of a gauge, for those who need no other metal: the same figures as awg(), without its table. @module */
import type { OhmsPerMetre } from '../quantity/units.ts';
import type { Stranding } from './conductor.ts';
import { COPPER_CONDUCTIVITY, LAY_ALLOWANCE } from './copper-standard.ts';
import { formulaDiameter } from './gauge.ts';

/** Nominal resistance of one conductor at 20 °C. [Ω/m] @internal */
export function annealedCopperPerMetre(gauge: number, stranding: Stranding): OhmsPerMetre {
  const diameter = formulaDiameter(gauge);
  return layFactor(stranding) / (COPPER_CONDUCTIVITY * ((Math.PI / 4) * diameter * diameter));
}

/** Length of the strands over that of the conductor. @internal */
export function layFactor(stranding: Stranding): number {
  return stranding === 'stranded' ? 1 + LAY_ALLOWANCE : 1;
}
