/** Which metals count as copper where copper is asked for. @module */
import type { MaterialName } from '../conductor/material.ts';

/** Copper clad on something else is not among them. */
const COPPERS: readonly MaterialName[] = ['annealed-copper', 'hard-drawn-copper', 'tinned-copper'];

/** A cable that does not say is taken to be copper, as one from an earlier version would be. @internal */
export function isCopper(material: MaterialName | undefined): boolean {
  return material === undefined || COPPERS.includes(material);
}
