/** Powers as whole nanowatts, so that sums of them are exact. @module */
import { requireNonNegative } from '../../quantity/guards.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { Watts } from '../../quantity/units.ts';

/** Powers are added as whole nanowatts: 24 ports of 15.4 W are 369.6 W, not 369.6000000000001 W. @internal */
export const PER_WATT = 1e9;
const MOST_WATTS = 1e6;

/** A power that stays exact as nanowatts. @internal */
export function requireWatts(value: number, parameter: string): void {
  requireNonNegative(value, parameter, 'W');
  if (value > MOST_WATTS) throw new InputError('range', parameter, 'at most 1e6 W', value);
}

/** A power as whole nanowatts that never overstate what there is (`down`) or understate what is drawn (`up`). @internal */
export function wholeNanowatts(watts: Watts, safeSide: 'up' | 'down'): number {
  const nearest = Math.round(watts * PER_WATT);
  if (safeSide === 'down') return nearest / PER_WATT > watts ? nearest - 1 : nearest;
  return nearest / PER_WATT < watts ? nearest + 1 : nearest;
}
