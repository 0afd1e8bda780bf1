/** How much a network's loads could grow. @module */
import { requireInteger, requireObject, requirePositive } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Volts } from '../quantity/units.ts';
import { scaledLoads, solverFor, stableDrops } from './network-newton.ts';
import { type NetworkInput, type NetworkTap, networkProblem } from './network-problem.ts';
import { largestFactor } from './solve-network.ts';

/** How loads may grow, and where they must stop. */
export interface LoadabilityOptions {
  /** Lowest voltage permitted at any tap; only collapse stops the growth if absent. [V] */
  readonly minimumVoltage?: Volts | undefined;
  /** Index of the one tap that grows; all grow together if absent. */
  readonly tap?: number | undefined;
}

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
 * @param input - The network, as for {@link solveNetwork}.
 * @param options - Lowest permitted voltage at a tap [V], or the one tap that grows.
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
export function loadability(input: NetworkInput, options: LoadabilityOptions = {}): Loadability {
  const problem = networkProblem(input);
  requireObject(options, 'options', 'an object');
  const { minimumVoltage, tap } = options;
  if (minimumVoltage !== undefined) requirePositive(minimumVoltage, 'options.minimumVoltage', 'V');
  if (tap !== undefined) {
    if (problem.tapName.length === 0) throw new InputError('conflict', 'options.tap', 'no tap, in a network without any', tap);
    requireInteger(tap, 0, problem.tapName.length - 1, 'options.tap');
  }
  const solver = solverFor(problem);
  const grown = tap === undefined ? problem : networkProblem({ ...input, taps: input.taps.map((one, i) => (i === tap ? one : idle(one))) });
  const fixed =
    tap === undefined ? undefined : networkProblem({ ...input, taps: input.taps.map((one, i) => (i === tap ? idle(one) : one)) });
  const tapNodes = [...new Set(Array.from(problem.tapName, (name) => problem.nodeOfName[name] as number))];

  const carries = (factor: number): boolean => {
    const found = stableDrops(problem, solver, scaledLoads(grown, factor, fixed));
    if (!found.feasible || minimumVoltage === undefined) return found.feasible;
    return tapNodes.every((node) => problem.reference - (found.drop[node] as number) >= minimumVoltage);
  };
  if (!carries(0))
    return {
      bounded: true,
      factor: 0,
      limitedBy: stableDrops(problem, solver, scaledLoads(grown, 0, fixed)).feasible ? 'minimum-voltage' : 'collapse',
    };
  let bad = 1;
  while (carries(bad)) {
    bad *= 2;
    if (bad > UNBOUNDED) return { bounded: false };
  }
  const factor = largestFactor(carries, bad === 1 ? 0 : bad / 2, bad);
  const atCollapse = !stableDrops(problem, solver, scaledLoads(grown, factor * (1 + 1e-9), fixed)).feasible;
  return { bounded: true, factor, limitedBy: atCollapse ? 'collapse' : 'minimum-voltage' };
}

/** A tap that stays in its place and draws nothing. */
function idle({ at }: NetworkTap): NetworkTap {
  return { at, load: { power: 0 } };
}
