/** The class that a port grants to a device, by its type, its pairs and its limit, and what the device wants all the same. @module */
import type { Watts } from '../quantity/units.ts';
import { grantedByType } from './assigned-class.ts';
import { classRow, type PoeClassNumber, type PseType } from './class-table.ts';
import { poeClass } from './poe-class.ts';

/** What a port may give. @internal */
export interface PortLimits {
  /** The weakest that serves the class if absent. */
  readonly pseType?: PseType | undefined;
  /** Pairs that the port can power; all that the class needs if absent. */
  readonly pairs?: 2 | 4 | undefined;
  /** Most power that the port may give; as much as its type's if absent. [W] */
  readonly limit?: Watts | undefined;
}

/** The class granted; `anyClass` is false where the limit leaves room for none, and the class is the one granted without it. @internal */
export function grantedClass(
  requested: PoeClassNumber,
  { pseType, pairs, limit }: PortLimits,
): { readonly grantedClass: PoeClassNumber; readonly anyClass: boolean } {
  const byType = pseType === undefined ? requested : grantedByType(requested, pseType);
  // One pairset carries class 4 at most.
  const byPairs = pairs === 2 && byType > 4 ? 4 : byType;
  const within = limit === undefined ? byPairs : classWithin(byPairs, pseType, limit);
  return { grantedClass: within ?? byPairs, anyClass: within !== undefined };
}

/**
 * What a device wants: the figure stated, or all that the class it asks for allows where it is granted less. [W]
 *
 * `undefined` where it is granted what it asks for and nothing is stated: all that this class allows.
 * @internal
 */
export function wantedPower(requested: PoeClassNumber, granted: PoeClassNumber, stated: Watts | undefined): Watts | undefined {
  if (stated !== undefined) return stated;
  return granted === requested ? undefined : poeClass(requested).pdPower;
}

/**
 * The highest class up to the one that the type grants whose printed power at the port is within the limit.
 *
 * What is granted 15.4 W for a higher class is class 0 on Types 1 and 2, which know no demotion to class 3, and class 3 else.
 * `undefined` where not even class 1 fits.
 */
function classWithin(granted: PoeClassNumber, pseType: PseType | undefined, limit: Watts): PoeClassNumber | undefined {
  if (fits(granted, limit)) return granted;
  for (let lower = granted === 0 ? 2 : granted - 1; lower > 0; lower--) {
    if (fits(lower as PoeClassNumber, limit)) return lower === 3 && pseType !== undefined && pseType < 3 ? 0 : (lower as PoeClassNumber);
  }
  return undefined;
}

function fits(number: PoeClassNumber, limit: Watts): boolean {
  return classRow(number).psePower <= limit;
}
