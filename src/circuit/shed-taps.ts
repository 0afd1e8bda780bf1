/** Which taps stay on when some of them turn off under a voltage. @module */
import type { Fields } from '../quantity/fields.ts';
import { LARGEST, requireArray, requireObject, requireOneOf, requirePositive, SMALLEST } from '../quantity/guards.ts';
import { refuseUnknown } from '../quantity/nearest.ts';
import type { Volts } from '../quantity/units.ts';
import { type NetworkInput, type NetworkTap, SOLVE_NETWORK_FIELDS, TAP_FIELDS } from './network-problem.ts';
import { type NetworkSolution, solveNetwork } from './solve-network.ts';

/** A tap that turns itself off under a voltage. */
export type SheddingTap = NetworkTap & {
  /** Voltage under which it turns off; it never does if absent. [V] */
  readonly turnOff?: Volts | undefined;
};

/** A network whose taps turn off, and the rule by which they do. */
export interface ShedTapsInput extends Omit<NetworkInput, 'taps'> {
  readonly taps: readonly SheddingTap[];
  /** Each round, all taps under their turn-off voltage go, or only the one that is furthest under it. */
  readonly shed: 'allBelow' | 'furthestBelow';
}

/** @internal */
export const SHEDDING_TAP_FIELDS: Fields<SheddingTap> = {
  at: () => TAP_FIELDS.at,
  load: () => TAP_FIELDS.load,
  turnOff: { positive: 'V', optional: true },
};

/** The network is guarded by hand, as for `solveNetwork`. @internal */
export const SHED_TAPS_FIELDS: Fields<ShedTapsInput> = {
  supplies: () => SOLVE_NETWORK_FIELDS.supplies,
  sections: () => SOLVE_NETWORK_FIELDS.sections,
  taps: { list: { object: () => SHEDDING_TAP_FIELDS } },
  shed: { oneOf: () => ['allBelow', 'furthestBelow'] },
};

/** What is left running. */
export type ShedTaps =
  | {
      readonly feasible: true;
      /** Indices of the taps that went, in the order they did. */
      readonly off: readonly number[];
      /** The network with the others; its `taps` are in their order, those that are off left out. */
      readonly network: NetworkSolution;
      readonly note: string;
    }
  /** The network gives way with no tap left that would turn off. */
  | { readonly feasible: false; readonly off: readonly number[]; readonly at: string; readonly note: string };

const NOTE = 'The real order depends on start-up: how fast each device rises, and which one turns off first.';

/**
 * Which taps of a network stay on, when each turns off under a voltage of its own.
 *
 * Rounds: solve, turn off by the stated rule, solve again. Where the network collapses outright, every tap that can turn off
 * is under its turn-off voltage sooner or later; the voltages just before collapse (all loads scaled down together until
 * it carries them) then say which is first. Taps that went stay off.
 *
 * @param input - The network, turn-off voltages [V], and the rule.
 * @returns The taps that turn off, in order, and the network that is left.
 * @throws {@link InputError} As {@link solveNetwork}, or if the rule is not one of the two.
 * @example Two 40 W devices behind 10 Ω at 48 V: one too many
 * const left = shedTaps({
 *   supplies: [{ at: 'A', voltage: 48 }],
 *   sections: [{ from: 'A', to: 'B', resistance: 10 }, { from: 'B', to: 'C', resistance: 1 }],
 *   taps: [{ at: 'B', load: { power: 40 }, turnOff: 30 }, { at: 'C', load: { power: 40 }, turnOff: 30 }],
 *   shed: 'furthestBelow',
 * });
 * left.off; // => [1]
 */
export function shedTaps(input: ShedTapsInput): ShedTaps {
  requireObject(input, 'input', 'an object with supplies, sections, taps and shed');
  const { supplies, sections, taps, shed } = input;
  requireOneOf(shed, ['allBelow', 'furthestBelow'], 'shed');
  requireArray(taps, 'taps', 'a list of { at, load, turnOff }');
  for (const [i, tap] of taps.entries()) {
    requireObject(tap, `taps[${i}]`, 'an object with at and load');
    refuseUnknown(tap, Object.keys(SHEDDING_TAP_FIELDS), `taps[${i}]`);
    if (tap.turnOff !== undefined) requirePositive(tap.turnOff, `taps[${i}].turnOff`, 'V');
  }

  const off: number[] = [];
  const on = taps.map((_, i) => i);
  for (;;) {
    const running = on.map((i) => taps[i] as SheddingTap);
    const whole = solveNetwork({ supplies, sections, taps: running });
    const shown = whole.feasible ? whole : justBeforeCollapse(input, running, whole.loadability);
    const shortages = shown.taps
      .map(({ voltage }, k) => ({ tap: on[k] as number, turnOff: running[k]?.turnOff, voltage }))
      .filter((one): one is typeof one & { turnOff: Volts } => one.turnOff !== undefined)
      .map(({ tap, turnOff, voltage }) => ({ tap, short: turnOff - voltage }))
      // The furthest below goes first; of equals, the one listed last.
      .sort((a, b) => b.short - a.short || b.tap - a.tap);
    // A line that gives way falls through every turn-off voltage, also one that it stands above just before.
    const below = whole.feasible ? shortages.filter(({ short }) => short > 0) : shortages;
    const going = (shed === 'allBelow' ? below : below.slice(0, 1)).map(({ tap }) => tap);
    if (going.length === 0) {
      return whole.feasible ? { feasible: true, off, network: whole, note: NOTE } : { feasible: false, off, at: whole.at, note: NOTE };
    }
    off.push(...going);
    for (const tap of going) on.splice(on.indexOf(tap), 1);
  }
}

/** The network with its loads scaled down to just below collapse. */
function justBeforeCollapse({ supplies, sections }: ShedTapsInput, taps: readonly NetworkTap[], share: number): NetworkSolution {
  // A billionth less, so that rounding cannot make it collapse.
  const factor = share * (1 - 1e-9);
  const scaled = taps.map(({ at, load }): NetworkTap => {
    if (load.power !== undefined) return { at, load: { power: shrunk(load.power, factor) } };
    if (load.current !== undefined) return { at, load: { current: shrunk(load.current, factor) } };
    return { at, load: { resistance: Math.min(load.resistance / factor, LARGEST) } };
  });
  const network = solveNetwork({ supplies, sections, taps: scaled });
  if (!network.feasible) return solveNetwork({ supplies, sections, taps: [] }) as NetworkSolution;
  return network;
}

/** A share of a load; 0 where it is under the smallest number accepted. */
function shrunk(load: number, factor: number): number {
  return load * factor < SMALLEST ? 0 : load * factor;
}
