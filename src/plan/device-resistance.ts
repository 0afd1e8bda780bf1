/** The resistance limit on a device's own data sheet, which often does not say which loop it means. @module */
import type { Loop, RunResistance } from '../cable/run-resistance.ts';
import { DEVICE_RESISTANCE } from '../limits/all.ts';
import type { Check } from '../limits/check.ts';
import { held } from '../limits/held.ts';
import { requireObject, requireOneOf, requirePositive } from '../quantity/guards.ts';
import type { Ohms } from '../quantity/units.ts';

/** A line-resistance limit as a data sheet states it. */
export interface ResistanceLimit {
  /** [Ω] */
  readonly ohms: Ohms;
  /** The circuit it is about; `unstated` when the sheet gives one bare figure. */
  readonly loop: Loop | 'unstated';
}

/** @internal */
export function requireResistanceLimit(limit: ResistanceLimit, parameter: string): void {
  requireObject(limit, parameter, 'an object with ohms and loop');
  requirePositive(limit.ohms, `${parameter}.ohms`, 'Ω');
  requireOneOf(limit.loop, ['pairLoop', 'twoPair', 'fourPair', 'unstated'], `${parameter}.loop`);
}

/** The loop a limit is judged by: a bare figure by the stricter reading, the pair loop. @internal */
export function judgedLoop(limit: ResistanceLimit): Loop {
  return limit.loop === 'unstated' ? 'pairLoop' : limit.loop;
}

/** `uncertain` when a bare figure fails as a pair loop and passes as one pairset. @internal */
export function deviceResistanceCheck(run: RunResistance, limit: ResistanceLimit, marginalBelow: number): Check {
  const check = held(DEVICE_RESISTANCE, run[judgedLoop(limit)], limit.ohms, marginalBelow);
  if (limit.loop !== 'unstated') return check;
  check.readings = { pairLoop: run.pairLoop, twoPair: run.twoPair };
  if (check.margin >= 0 || run.twoPair > limit.ohms) return check;
  return { ...check, verdict: 'uncertain', deciding: [{ parameter: 'maximumResistance.loop' }] };
}
