/** IEEE 802.3 power is for copper, whatever the ohms say. @module */
import { isCopper } from '../cable/copper.ts';
import type { Segment } from '../cable/run-resistance.ts';
import type { Check } from '../circuit/check.ts';

/** The fraction of the pieces whose conductors are copper; 1 where there is no piece. @internal */
export function copperFraction(pieces: readonly Segment[]): number {
  if (pieces.length === 0) return 1;
  return pieces.filter(({ cable }) => isCopper(cable.material)).length / pieces.length;
}

/** Copper or not: nothing lies between. @internal */
export function materialCheck(pieces: readonly Segment[]): Check {
  const value = copperFraction(pieces);
  const margin = value - 1;
  return {
    name: 'material',
    value,
    limit: 1,
    unit: '1',
    margin,
    marginFraction: margin,
    verdict: margin < 0 ? 'fail' : 'pass',
    source: 'copper-conductors',
  };
}
