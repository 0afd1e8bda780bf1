/** The largest double that still passes: rounding to the safe side. @module */
import { nextDown, nextUp } from '../quantity/exact.ts';
import { LARGEST, SMALLEST } from '../quantity/guards.ts';

/**
 * The largest length at which `passes` holds, found from a closed-form guess.
 *
 * The guess is off by the rounding of its own formula, a few ulp; stepping corrects that exactly, so the result put
 * back passes and the next double does not.
 * @returns The length, or `undefined` if not even 0 passes.
 * @internal
 */
export function longestPassing(guess: number, passes: (length: number) => boolean): number | undefined {
  if (!passes(0)) return undefined;
  if (guess < SMALLEST) return 0;
  let length = Math.min(guess, LARGEST);
  while (!passes(length)) {
    length = nextDown(length);
    if (length < SMALLEST) return 0;
  }
  while (length < LARGEST && passes(nextUp(length))) length = nextUp(length);
  return length;
}
