/** How heavily a bundle is loaded on average, as installation standards sort it. @module */
import { requireArray, requireNonNegative } from '../../quantity/guards.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { Amperes } from '../../quantity/units.ts';
import type { SourceKey } from '../../sources/sources.ts';

/** A bundle by the mean current of its conductors. */
export interface RemotePowering {
  /** Over every conductor, those without current included. [A] */
  readonly meanConductorCurrent: Amperes;
  /** The lowest category that the mean allows; `beyond` above 500 mA. */
  readonly category: 'RP1' | 'RP2' | 'beyond';
  readonly source: SourceKey;
}

/** Greatest mean conductor current of category RP1. [A] @internal */
export const RP1 = 0.212;
/** The same of RP2. [A] @internal */
export const RP2 = 0.5;

/**
 * Mean conductor current of a bundle, and the remote-powering category that it implies.
 *
 * 212 and 500 mA are from memory (EN 50174-2, ISO/IEC 14763-2), as is that the plain mean is meant: check both before you
 * rely on them. A third category, for bundles managed so that 500 mA is never passed, is a matter of management.
 *
 * @param conductorCurrents - One figure for each conductor, or for each cable its mean where all have as many conductors. [A]
 * @returns The mean [A] and the category.
 * @throws {@link InputError} If the list is empty or a number is outside its domain.
 * @example Three cables at 0.3 A a conductor, and one without power
 * remotePowering([0.3, 0.3, 0.3, 0]); // => { meanConductorCurrent: 0.22499999999999998, category: 'RP2', source: 'remote-powering-categories' }
 */
export function remotePowering(conductorCurrents: readonly Amperes[]): RemotePowering {
  requireArray(conductorCurrents, 'conductorCurrents', 'a list of currents');
  if (conductorCurrents.length === 0) throw new InputError('missing', 'conductorCurrents', 'at least one current', 0);
  let sum = 0;
  for (const [index, current] of conductorCurrents.entries()) {
    requireNonNegative(current, `conductorCurrents[${index}]`, 'A');
    sum += current;
  }
  const meanConductorCurrent = sum / conductorCurrents.length + 0;
  const category = meanConductorCurrent <= RP1 ? 'RP1' : meanConductorCurrent <= RP2 ? 'RP2' : 'beyond';
  return { meanConductorCurrent, category, source: 'remote-powering-categories' };
}
