/** Cautions that go with a two-wire circuit. @module */
import type { OperatingPoint } from '../circuit/operating-point.ts';
import type { Volts, Watts } from '../quantity/units.ts';

/** Extra-low voltage ends here (SELV, IEC 60950-1 as read in a public paper). [V] */
const EXTRA_LOW: Volts = 60;
/** Nameplate of a Class 2 source from 20 to 60 V DC, NFPA 70-2017 chapter 9 table 11(B). [VA] */
const CLASS_2_POWER: Watts = 100;

/** @internal */
export function twoWireCautions(highest: Volts, atHighest: OperatingPoint): string[] {
  const cautions: string[] = [];
  if (highest > EXTRA_LOW) {
    cautions.push(
      'Above 60 V DC: not extra-low voltage. It can kill; wiring and protection are for a licensed practitioner and the local code.',
    );
  }
  if (atHighest.feasible && atHighest.supplyPower > CLASS_2_POWER) {
    cautions.push(
      'More than 100 VA: beyond a Class 2 source (NFPA 70-2017 table 11(B)). Wiring methods, fuses and gauge are then for the local code.',
    );
  }
  return cautions;
}
