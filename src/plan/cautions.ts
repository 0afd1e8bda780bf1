/** What a person must know before building a two-wire circuit. @module */
import type { OperatingPoint } from '../circuit/operating-point.ts';
import type { Volts, Watts } from '../quantity/units.ts';

/** Extra-low voltage ends here (SELV, IEC 60950-1 as read in a public paper). [V] @internal */
export const EXTRA_LOW: Volts = 60;
/** Nameplate of a Class 2 source from 20 to 60 V DC, NFPA 70-2017 chapter 9 table 11(B). [VA] */
const CLASS_2_POWER: Watts = 100;

const CAUTIONS = {
  dangerous: 'Above 60 V DC: not extra-low voltage. It can kill; wiring and protection are for a licensed practitioner and the local code.',
  strong:
    'More than 100 VA: beyond a Class 2 source (NFPA 70-2017 table 11(B)). Wiring methods, fuses and gauge are then for the local code.',
} as const;

/** By the highest supply voltage, and the most that is taken from it at either end of its range. @internal */
export function cautionsOf(highest: Volts, points: readonly OperatingPoint[]): string[] {
  const isStrong = points.some((point) => point.feasible && point.supplyPower > CLASS_2_POWER);
  return [...(highest > EXTRA_LOW ? [CAUTIONS.dangerous] : []), ...(isStrong ? [CAUTIONS.strong] : [])];
}
