/** The class that a limit on the power of a port leaves room for. @module */
import type { Watts } from '../quantity/units.ts';
import { classRow, type PoeClassNumber, type PseType } from './class-table.ts';

/**
 * The highest class up to the one that the type grants whose printed power at the port is within the limit.
 *
 * What is granted 15.4 W for a higher class is class 0 on Types 1 and 2, which know no demotion to class 3, and class 3 else.
 * `undefined` where not even class 1 fits.
 * @internal
 */
export function classWithin(granted: PoeClassNumber, pseType: PseType | undefined, limit: Watts): PoeClassNumber | undefined {
  if (fits(granted, limit)) return granted;
  for (let lower = granted === 0 ? 2 : granted - 1; lower > 0; lower--) {
    if (fits(lower as PoeClassNumber, limit)) return lower === 3 && pseType !== undefined && pseType < 3 ? 0 : (lower as PoeClassNumber);
  }
  return undefined;
}

function fits(number: PoeClassNumber, limit: Watts): boolean {
  return classRow(number).psePower <= limit;
}
