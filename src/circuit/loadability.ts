/** How much a network's loads could grow. @module */
import type { Fields } from '../quantity/fields.ts';
import { requireInteger, requirePositive } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import { refuseUnknown } from '../quantity/nearest.ts';
import type { Volts } from '../quantity/units.ts';
import { type Drops, scaledLoads, solverFor, stableDrops } from './network-newton.ts';
import { type NetworkInput, type NetworkProblem, networkProblem, SOLVE_NETWORK_FIELDS } from './network-problem.ts';
import { largestFactor } from './solve-network.ts';

/** A network, how its loads may grow, and where they must stop. */
export interface LoadabilityInput extends NetworkInput {
  /** Lowest voltage permitted at any tap; only collapse stops the growth if absent. [V] */
  readonly minimumVoltage?: Volts | undefined;
  /** Index of the one tap that grows; all grow together if absent. */
  readonly tap?: number | undefined;
}

/** The network is guarded by hand, as for `solveNetwork`. @internal */
export const LOADABILITY_FIELDS: Fields<LoadabilityInput> = {
  supplies: () => SOLVE_NETWORK_FIELDS.supplies,
  sections: () => SOLVE_NETWORK_FIELDS.sections,
  taps: () => SOLVE_NETWORK_FIELDS.taps,
  minimumVoltage: { positive: 'V', optional: true },
  tap: { whole: [0, 1e6], optional: true },
};

/** The largest factor on the loads, and what stops it there. */
export type Loadability =
  | {
      readonly bounded: true;
      /** Loads times this are still carried; times the next larger double they are not. 0: not even a trace of them. */
      readonly factor: number;
      readonly limitedBy: 'collapse' | 'minimum-voltage';
    }
  /** Nothing stops it: there is no load, or none of it flows through a resistance. */
  | { readonly bounded: false };

/** A factor that no limit was met by: the loads are then taken as unbounded. */
const UNBOUNDED = 1e12;

/**
 * How many times all loads of a network, or one of its taps, could grow before a minimum voltage or collapse.
 *
 * Growth multiplies power and current, and divides resistance. Factors under 1 mean that the loads are too much as they
 * are.
 *
 * @param input - The network, as for {@link solveNetwork}; the lowest permitted voltage at a tap [V], or the one tap that grows.
 * @returns The largest factor that is still carried and the limit that stops it, or that nothing does.
 * @throws {@link InputError} As {@link solveNetwork}, or if the tap does not exist.
 * @example A 25.5 W device behind 12.5 Ω at 50 V: the line collapses at 50 W
 * const growth = loadability({
 *   supplies: [{ at: 'switch', voltage: 50 }],
 *   sections: [{ from: 'switch', to: 'device', resistance: 12.5 }],
 *   taps: [{ at: 'device', load: { power: 25.5 } }],
 * });
 * growth.bounded && [growth.limitedBy, growth.factor.toFixed(4)]; // => ['collapse', '1.9608']
 */
export function loadability(input: LoadabilityInput): Loadability {
  const problem = networkProblem(input);
  refuseUnknown(input, Object.keys(LOADABILITY_FIELDS), '');
  const { minimumVoltage, tap } = input;
  if (minimumVoltage !== undefined) requirePositive(minimumVoltage, 'minimumVoltage', 'V');
  if (tap !== undefined) {
    if (problem.tapName.length === 0) throw new InputError('conflict', 'tap', 'no tap, in a network without any', tap);
    requireInteger(tap, 0, problem.tapName.length - 1, 'tap');
  }
  const solver = solverFor(problem);
  /** The network in which only some taps draw. */
  const drawing = (draws: (index: number) => boolean): NetworkProblem =>
    networkProblem({ ...input, taps: input.taps.map(({ at, load }, i) => ({ at, load: draws(i) ? load : { power: 0 } })) });
  const grown = tap === undefined ? problem : drawing((i) => i === tap);
  const fixed = tap === undefined ? undefined : drawing((i) => i !== tap);
  const tapNodes = [...new Set(Array.from(problem.tapName, (name) => problem.nodeOfName[name] as number))];

  const dropsAt = (factor: number): Drops => stableDrops(problem, solver, scaledLoads(grown, factor, fixed));
  const carries = (factor: number): boolean => {
    const found = dropsAt(factor);
    if (!found.feasible || minimumVoltage === undefined) return found.feasible;
    return tapNodes.every((node) => problem.reference - (found.drop[node] as number) >= minimumVoltage);
  };
  if (!carries(0)) return { bounded: true, factor: 0, limitedBy: dropsAt(0).feasible ? 'minimum-voltage' : 'collapse' };
  let bad = 1;
  while (carries(bad)) {
    bad *= 2;
    if (bad > UNBOUNDED) return { bounded: false };
  }
  const factor = largestFactor(carries, bad === 1 ? 0 : bad / 2, bad);
  return { bounded: true, factor, limitedBy: dropsAt(factor * (1 + 1e-9)).feasible ? 'minimum-voltage' : 'collapse' };
}
