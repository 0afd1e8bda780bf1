/** IEEE 802.3 power is for copper, whatever the ohms say. @module */
import { isCopper } from '../cable/copper.ts';
import type { Segment } from '../cable/run-resistance.ts';
import { MATERIAL } from '../limits/all.ts';
import type { Check } from '../limits/check.ts';
import { held } from '../limits/held.ts';

/** The fraction of the pieces whose conductors are copper; 1 where there is no piece. @internal */
export function copperFraction(pieces: readonly Segment[]): number {
  if (pieces.length === 0) return 1;
  return pieces.filter(({ cable }) => isCopper(cable.material)).length / pieces.length;
}

/** Copper or not: nothing lies between. @internal */
export function materialCheck(pieces: readonly Segment[]): Check {
  return held(MATERIAL, copperFraction(pieces), 1, 0);
}
