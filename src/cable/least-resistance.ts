/** The least that a conductor of a gauge and a metal can have. @module */
import type { Conductor } from '../conductor/conductor.ts';
import { findMaterial } from '../conductor/material.ts';

/**
 * Least resistance over the nominal one of the gauge.
 *
 * Solid: ±1 % of diameter is 2 % of resistance, and the purest copper conducts 2 % better than the standard's. Stranded: the
 * trade's seven strands of a whole gauge hold up to 11 % more metal than the solid gauge (7/32 for 24 AWG: 448 against 404
 * circular mils), and the same. What lies below is called impossible, so nothing that can be bought may.
 * @internal
 */
export const LEAST_OF_NOMINAL = { solid: 0.96, stranded: 0.86 } as const;

/** The least resistance of a conductor that has so much at its nominal size; of a metal of unknown make that of the best. @internal */
export function leastResistance(
  nominal: number,
  { stranding, material = 'annealed-copper' }: Pick<Conductor, 'stranding' | 'material'>,
): number {
  const { resistivity, bestResistivity = resistivity } = findMaterial(material, 'material');
  return nominal * LEAST_OF_NOMINAL[stranding] * (bestResistivity / resistivity);
}
