/** Available and allowed power, told apart in words. @module */
import { refuse, requireInteger, requireObject } from '../quantity/guards.ts';
import type { PowerAtPd } from './power-at-pd.ts';

/**
 * What a run brings and what the standard lets a device draw, in plain sentences.
 *
 * The two are often taken for one. The class limits the device however short the run; the run limits it however high
 * the class. Powers are rounded down to 0.01 W. Extended power (a port that knows its channel may let a device of class 6
 * or 8 draw more; from memory) is not counted.
 *
 * @param result - A result of `powerAtPd`.
 * @returns Two or three sentences in English.
 * @throws {@link InputError} If it is no such result.
 * @example
 * powerStatement(powerAtPd({ poeClass: 4, resistance: 8.44 }));
 * // => 'Available over this run: 26.96 W. Allowed by class 4: 25.5 W. The class is the limit: a shorter run does not let the device draw more.'
 */
export function powerStatement(result: PowerAtPd): string {
  requireObject(result, 'result', 'a result of powerAtPd');
  const { available, allowed, limits } = result;
  requireObject(limits, 'result.limits', 'the limits of a result of powerAtPd');
  requirePower(available, 'result.available');
  requirePower(allowed, 'result.allowed');
  requirePower(limits.psePower, 'result.limits.psePower');
  requireInteger(limits.poeClass, 0, 8, 'result.limits.poeClass');
  const figures = `Available over this run: ${shown(available)} W. Allowed by class ${limits.poeClass}: ${shown(allowed)} W.`;
  if (available >= allowed) return `${figures} The class is the limit: a shorter run does not let the device draw more.`;
  const why =
    available < limits.psePower / 2
      ? 'the line itself can bring no more, whatever the port gives'
      : 'the rest of the power of the port is lost in the cable';
  return `${figures} The run is the limit: ${why}.`;
}

/** Any power, however small: a long line at a low voltage brings less than the domain of an input knows. */
function requirePower(watts: unknown, parameter: string): void {
  if (Number.isFinite(watts) && (watts as number) >= 0) return;
  refuse(watts, parameter, 'a power of a result of powerAtPd, in W');
}

/** Down, never up, to 0.01 W, without trailing zeros; a figure that is 0.01 W less by rounding alone is kept. */
function shown(watts: number): string {
  return String(Math.floor(watts * 100 + 1e-6) / 100);
}
