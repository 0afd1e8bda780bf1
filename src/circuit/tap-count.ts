/** How many equal taps a line can hold: a chain of packs. @module */
import { type Fields, readInput } from '../quantity/fields.ts';
import type { Ohms, Volts } from '../quantity/units.ts';
import { LOAD_FIELDS, type Load } from './operating-point.ts';
import { solveNetwork } from './solve-network.ts';

/** A line with equal taps at equal spacing, fed at one end. */
export interface TapCountInput {
  /** [V] */
  readonly supplyVoltage: Volts;
  /** Loop resistance from one tap to the next, out and back. [Ω] */
  readonly spacingResistance: Ohms;
  /** Loop resistance from the supply to the first tap; that of one spacing if absent. [Ω] */
  readonly feedResistance?: Ohms | undefined;
  /** Each tap. */
  readonly load: Load;
  /** Lowest voltage at which a tap still works; only collapse ends the chain if absent. [V] */
  readonly minimumVoltage?: Volts | undefined;
  /** Count at which to stop looking; 10 000 if absent, at most 100 000. */
  readonly most?: number | undefined;
}

/** @internal */
export const MAXIMUM_TAPS_FIELDS: Fields<TapCountInput, 'most'> = {
  supplyVoltage: { positive: 'V' },
  spacingResistance: { nonNegative: 'Ω' },
  feedResistance: { nonNegative: 'Ω', optional: true },
  load: { exactlyOne: () => LOAD_FIELDS },
  minimumVoltage: { positive: 'V', optional: true },
  most: { whole: [1, 100_000], default: 10_000 },
};

/** The largest count of taps, and what ends the chain there. */
export interface TapCount {
  /** 0 if not even one tap works. */
  readonly count: number;
  /** `most`: the count asked for is carried, and more might be. */
  readonly limitedBy: 'minimum-voltage' | 'collapse' | 'most';
  /** Voltage at the furthest of them; that of the supply for none. [V] */
  readonly lowestVoltage: Volts;
}

/**
 * The largest count of equal taps at equal spacing on a line fed at one end, all of them drawing at once.
 *
 * More taps never help, so the count is found by halving. DC, steady state; start-up is not considered.
 *
 * @param input - Supply voltage [V], loop resistance of one spacing and of the feed [Ω], the load of one tap, minimum [V].
 * @returns The count, what ends it, and the voltage at the furthest tap [V].
 * @throws {@link InputError} If a number is outside its domain, or the load names none or two of its kinds.
 * @example 3 W packs every 2 Ω on a 30 V line, each needing 20 V
 * maximumTaps({ supplyVoltage: 30, spacingResistance: 2, load: { power: 3 }, minimumVoltage: 20 }).count; // => 7
 */
export function maximumTaps(input: TapCountInput): TapCount {
  const read = readInput(MAXIMUM_TAPS_FIELDS, input);
  const { supplyVoltage, spacingResistance, feedResistance = spacingResistance, minimumVoltage = 0, load, most } = read;
  /** Voltage at the last of so many taps, or why they are too many. */
  const last = (count: number): Volts | 'collapse' | 'minimum-voltage' => {
    const sections = Array.from({ length: count }, (_, from) => ({
      from,
      to: from + 1,
      resistance: from === 0 ? feedResistance : spacingResistance,
    }));
    const taps = sections.map(({ to }) => ({ at: to, load }));
    const chain = solveNetwork({ supplies: [{ at: 0, voltage: supplyVoltage }], sections, taps });
    if (!chain.feasible) return 'collapse';
    return chain.lowest.voltage < minimumVoltage ? 'minimum-voltage' : chain.lowest.voltage;
  };
  let [count, tooMany, lowestVoltage] = [0, most + 1, supplyVoltage];
  let limitedBy: TapCount['limitedBy'] = 'most';
  // Doubled until they are too many, then halved between.
  while (tooMany - count > 1) {
    const tried = tooMany > most ? Math.min(2 * count || 1, most) : Math.floor((count + tooMany) / 2);
    const found = last(tried);
    if (typeof found === 'number') [count, lowestVoltage] = [tried, found];
    else [tooMany, limitedBy] = [tried, found];
  }
  return { count, limitedBy, lowestVoltage };
}
