/** How much: the highest load a run can carry. @module */

import type { Load } from '../circuit/operating-point.ts';
import type { CheckName } from '../limits/check.ts';
import { requireObject, requireOneOf } from '../quantity/guards.ts';
import { isPowered, poweredChecks, twoWireChecks } from './one-unknown.ts';
import type { PoweredRunInput } from './powered-run.ts';
import { solveUnknown, type UnknownLimit, type Unsolvable } from './solve-unknown.ts';
import type { TwoWireRunInput, UnequalTwoWireRunInput } from './two-wire-run.ts';

/** What the load of a two-wire run is counted in. */
export type LoadKind = 'power' | 'current' | 'resistance';

/** A two-wire run whose load is asked for. */
export type TwoWireHighestLoadInput = (Omit<TwoWireRunInput, 'load'> | Omit<UnequalTwoWireRunInput, 'load'>) & {
  /** What the device holds constant; `power` if absent. */
  readonly kind?: LoadKind | undefined;
};

/** The highest load, or that nothing limits it, or that not even an idle device is served. */
export type HighestLoad =
  | {
      readonly feasible: true;
      readonly unbounded?: undefined;
      /** Power [W], current [A], or the lowest load resistance [Ω]. */
      readonly load: Load;
      readonly governedBy: CheckName;
      readonly limits: readonly UnknownLimit[];
    }
  | { readonly feasible: true; readonly unbounded: true; readonly limits: readonly UnknownLimit[] }
  | Unsolvable;

/** Next to nothing, and more than any line carries: between them lies every load this is about. */
const IDLE = 1e-9;
const MOST = 1e9;

/**
 * The highest load at which no check of a run fails, and the one that each limit alone would allow.
 *
 * For a powered device its power [W], never above what its class allows; for a two-wire run a power, a current, or (as
 * the lowest that will do) a resistance.
 *
 * @param input - The run, as for {@link checkPoweredRun} without `pdPower`, or {@link checkTwoWireRun} without `load`.
 * @returns The load with the limit that governs; or `unbounded`; or the shortfall.
 * @throws {@link InputError} As the check of that run, or if `kind` is not one of the three.
 * @example What a class 4 device may draw at the end of 130 m, between Type 2 minimum voltage and its own 42.5 V
 * const most = highestLoad({ installed: [{ cable: cable('cat5e'), length: 130 }], poeClass: 4, cabling: 'none' });
 * most.feasible && !most.unbounded && [most.load.power?.toFixed(2), most.governedBy]; // => ['25.50', 'pd-power']
 */
export function highestLoad(input: Omit<PoweredRunInput, 'pdPower'> | TwoWireHighestLoadInput): HighestLoad {
  requireObject(input, 'input', 'a run to a powered device, or a two-wire run');
  if (isPowered<Omit<PoweredRunInput, 'pdPower'>, TwoWireHighestLoadInput>(input)) {
    const solved = solveUnknown(0, MOST, (value) => poweredChecks({ ...input, pdPower: value > 0 && value < IDLE ? 0 : value }));
    return named(solved, (power) => ({ power }));
  }
  const { kind = 'power', ...run } = input;
  requireOneOf(kind, ['power', 'current', 'resistance'], 'kind');
  if (kind === 'resistance') {
    const solved = solveUnknown(MOST, IDLE, (resistance) => twoWireChecks({ ...run, load: { resistance } } as TwoWireRunInput));
    return named(solved, (resistance) => ({ resistance }));
  }
  const loadOf = (value: number): Load => (kind === 'power' ? { power: value } : { current: value });
  return named(
    solveUnknown(0, MOST, (value) => twoWireChecks({ ...run, load: loadOf(value < IDLE ? 0 : value) } as TwoWireRunInput)),
    loadOf,
  );
}

function named(solved: ReturnType<typeof solveUnknown>, loadOf: (value: number) => Load): HighestLoad {
  if (!solved.feasible || solved.unbounded) return solved;
  const { value, ...rest } = solved;
  return { ...rest, load: loadOf(value) };
}
