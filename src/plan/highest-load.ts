/** How much: the highest load a run can carry. @module */

import type { Load } from '../circuit/operating-point.ts';
import type { AnyField, DefaultField } from '../quantity/fields.ts';
import { isPowered, openRun } from './open-run.ts';
import type { PoweredRunInput } from './powered-input.ts';
import { type Answered, answered, solveUnknown } from './solve-unknown.ts';
import type { TwoWireRunInput, UnequalTwoWireRunInput } from './two-wire-input.ts';

/** What the load of a two-wire run is counted in. */
export type LoadKind = 'power' | 'current' | 'resistance';

/** A two-wire run whose load is asked for. */
export type TwoWireHighestLoadInput = (Omit<TwoWireRunInput, 'load'> | Omit<UnequalTwoWireRunInput, 'load'>) & {
  /** What the device holds constant; `power` if absent. */
  readonly kind?: LoadKind | undefined;
};

/** The highest load, or that nothing limits it, or that not even an idle device is served. */
export type HighestLoad = Answered<{
  /** Power [W], current [A], or the lowest load resistance [Ω]. */
  readonly load: Load;
}>;

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
  const isKindAsked = !isPowered(input);
  const open = openRun<{ kind: LoadKind }>(input, {
    powered: ['pdPower'],
    twoWire: ['load'],
    others: isKindAsked ? { kind: KIND as AnyField } : {},
  });
  const idleAsNone = (value: number): number => (value < IDLE ? 0 : value);
  if (open.kind === 'powered') {
    return answered(
      solveUnknown(0, MOST, (value) => open.checksWith({ pdPower: idleAsNone(value) })),
      (power) => ({ load: { power } }),
    );
  }
  const { kind } = open.run;
  const [best, worst] = kind === 'resistance' ? [MOST, IDLE] : [0, MOST];
  const loadOf = (value: number): Load => ({ [kind]: value }) as unknown as Load;
  return answered(
    solveUnknown(best, worst, (value) => open.checksWith({ load: loadOf(kind === 'resistance' ? value : idleAsNone(value)) })),
    (value) => ({ load: loadOf(value) }),
  );
}

const KIND: DefaultField<LoadKind> = { oneOf: () => ['power', 'current', 'resistance'], default: 'power' };
