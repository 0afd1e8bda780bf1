/** Whether one wire tells all of a run that power sees. @module */
import type { RunResistance } from '../../cable/run-resistance.ts';
import { loopThatPowerSees } from '../../ethernet/power-at-pd.ts';
import type { Ohms } from '../../quantity/units.ts';

/**
 * One wire of a run, end to end; nothing for a bare loop, or a run whose pairsets are unlike, as measured ones are: of those the
 * loop itself is the figure to begin with. [Ω]
 */
export function wireOfRun(resistance: Ohms | RunResistance | undefined, pairs: 2 | 4): Ohms | undefined {
  if (typeof resistance !== 'object') return undefined;
  const { twoPair } = resistance;
  const loop = loopThatPowerSees(resistance, pairs);
  return Math.abs(twoPair / (pairs / 2) - loop) <= 1e-14 * loop ? twoPair : undefined;
}

