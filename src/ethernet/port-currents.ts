/** The three currents of a powered port. @module */
import type { Amperes } from '../quantity/units.ts';

/** The current of a port, of one pairset of it and of one wire, all pairs alike. */
export interface PortCurrents {
  /** Through the whole port. [A] */
  readonly totalCurrent: Amperes;
  /** Through one pairset: out on one pair, back on another. [A] */
  readonly pairsetCurrent: Amperes;
  /** Through one wire of a pair. [A] */
  readonly conductorCurrent: Amperes;
}

/** @internal */
export function portCurrents(totalCurrent: Amperes, pairs: 2 | 4): PortCurrents {
  const pairsetCurrent = totalCurrent / (pairs / 2);
  return { totalCurrent, pairsetCurrent, conductorCurrent: pairsetCurrent / 2 };
}
