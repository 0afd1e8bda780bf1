/** Annealed copper of a gauge, for those who need no other metal: the same figures as awg(), without its table. @module */
import type { OhmsPerMetre } from '../quantity/units.ts';
import type { Stranding } from './conductor.ts';
import { formulaDiameter } from './gauge.ts';

/** IEC 60028 (IACS), at 20 °C. [1/K] @internal */
export const COPPER_COEFFICIENT = 0.00393;
/** IEC 60028 (IACS), at 20 °C. [MS/m] @internal */
export const COPPER_CONDUCTIVITY = 58;
/** ASTM B496: the lay of the strands makes each longer than the cable, 2 % as the standard increment. @internal */
export const LAY_ALLOWANCE = 0.02;

/** Nominal resistance of one conductor at 20 °C. [Ω/m] @internal */
export function annealedCopperPerMetre(gauge: number, stranding: Stranding): OhmsPerMetre {
  const diameter = formulaDiameter(gauge);
  return layFactor(stranding) / (COPPER_CONDUCTIVITY * ((Math.PI / 4) * diameter * diameter));
}

/** Length of the strands over that of the conductor. @internal */
export function layFactor(stranding: Stranding): number {
  return stranding === 'stranded' ? 1 + LAY_ALLOWANCE : 1;
}
