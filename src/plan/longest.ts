/** The largest double that still passes: rounding to the safe side. @module */
import { LARGEST, SMALLEST } from '../quantity/guards.ts';
import { edge } from './edge.ts';

/**
 * The largest length at which `passes` holds, found from a closed-form guess.
 *
 * The guess is off by the rounding of its own formula: mostly a few ulp, but a good deal where it is the small difference
 * of two large numbers. So the edge is bracketed by steps that double, then halved down to two neighbouring doubles.
 * @returns The length, or `undefined` if not even 0 passes.
 * @internal
 */
export function longestPassing(guess: number, passes: (length: number) => boolean): number | undefined {
  if (!passes(0)) return undefined;
  let good = 0;
  let bad = LARGEST;
  const start = Math.min(Math.max(guess, SMALLEST), LARGEST);
  const up = passes(start);
  if (up) good = start;
  else bad = start;
  for (let step = start * 2 ** -52; up ? good < LARGEST : good === 0 && bad > SMALLEST; step *= 2) {
    const tried = up ? Math.min(good + step, LARGEST) : bad - step;
    if (tried < SMALLEST) return 0;
    if (passes(tried)) {
      good = tried;
      if (!up) break;
    } else {
      bad = tried;
      if (up) break;
    }
  }
  if (good === LARGEST) return LARGEST;
  const found = edge(good, bad, passes);
  return found < SMALLEST ? 0 : found;
}
