/** How far: the longest run that every limit allows. @module */
import { type MaximumPoweredRunInput, maximumPoweredRun } from './maximum-powered-run.ts';
import { maximumTwoWireRun } from './maximum-two-wire-run.ts';
import { isPowered } from './open-run.ts';
import type { MaximumRun } from './run-limit.ts';
import type { TwoWireCircuit, UnequalTwoWireCircuit } from './two-wire-input.ts';

/** A run to a powered device, or a two-wire DC circuit, whose length is asked for. */
export type MaximumRunInput = MaximumPoweredRunInput | TwoWireCircuit | UnequalTwoWireCircuit;

/**
 * The longest installed cable that every limit allows, and what each limit alone would allow.
 *
 * Every electrical limit is first expressed as a resistance of the run, then as a length, rounded down: put back, the
 * length passes, and 1e-9 more of it fails. Power and cabling lengths are reported apart. A device sheet with one bare
 * resistance figure is judged as a pair loop; the length it allows as one pairset is listed beside it.
 *
 * @param input - For a powered device: cable, class, port, cords (length [m]), connections, temperature [°C], device
 *   limits [V, Ω]. For a two-wire circuit: supply voltage [V], conductor (or `out` and `back`), load, limits.
 * @returns The length [m] with the limit that governs; or `unbounded`; or `feasible: false` with the shortfall.
 * @throws {@link InputError} If a number is outside its domain, or class, type and pairs do not go together.
 * @example A data sheet that says 13 ohm and no more, on Category 5e
 * const run = maximumRun({
 *   cable: cable('cat5e'), poeClass: 2, cabling: 'none', maximumResistance: { ohms: 13, loop: 'unstated' },
 * });
 * run.feasible && !run.unbounded && [run.length.toFixed(1), run.governedBy]; // => ['69.3', 'device-resistance']
 */
export function maximumRun(input: MaximumRunInput): MaximumRun {
  return isPowered<MaximumPoweredRunInput, TwoWireCircuit | UnequalTwoWireCircuit>(input)
    ? maximumPoweredRun(input)
    : maximumTwoWireRun(input);
}
