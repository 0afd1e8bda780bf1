/** How many equal taps a line can hold: a chain of packs. @module */
import { type Fields, readInput } from '../quantity/fields.ts';
import type { Ohms, Volts } from '../quantity/units.ts';
import type { NetworkInput } from './network-problem.ts';
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
  const {
    supplyVoltage,
    spacingResistance,
    feedResistance = spacingResistance,
    load,
    minimumVoltage,
    most,
  } = readInput(MAXIMUM_TAPS_FIELDS, input);
  let limitedBy: TapCount['limitedBy'] = 'most';
  let lowestVoltage = supplyVoltage;
  const works = (count: number): boolean => {
    const chain = solveNetwork(chainOf(count));
    if (!chain.feasible || (minimumVoltage !== undefined && chain.lowest.voltage < minimumVoltage)) {
      limitedBy = chain.feasible ? 'minimum-voltage' : 'collapse';
      return false;
    }
    lowestVoltage = chain.lowest.voltage;
    return true;
  };
  let good = 0;
  let bad = 1;
  while (bad <= most && works(bad)) {
    good = bad;
    bad *= 2;
  }
  if (bad > most) {
    if (good === most || works(most)) return { count: most, limitedBy: 'most', lowestVoltage };
    bad = most;
  }
  while (bad - good > 1) {
    const middle = Math.floor((good + bad) / 2);
    if (works(middle)) good = middle;
    else bad = middle;
  }
  // What ends the chain is what the next tap would meet; both closures are put on that count and on the last good one.
  works(good + 1);
  lowestVoltage = supplyVoltage;
  const ends = limitedBy;
  if (good > 0) works(good);
  return { count: good, limitedBy: ends, lowestVoltage };

  function chainOf(count: number): NetworkInput {
    const sections = Array.from({ length: count }, (_, i) => ({
      from: i,
      to: i + 1,
      resistance: i === 0 ? feedResistance : spacingResistance,
    }));
    return {
      supplies: [{ at: 0, voltage: supplyVoltage }],
      sections,
      taps: sections.map(({ to }) => ({ at: to, load })),
    };
  }
}
