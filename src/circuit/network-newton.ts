/** Node voltages of a DC network: Newton from the no-load side. @module */
import { meshSolver } from './network-mesh.ts';
import type { NetworkProblem } from './network-problem.ts';
import { type LinearSolver, treeSolver } from './network-tree.ts';

/** Drops below the reference voltage, or the node at which it is proved that there are none. @internal */
export type Drops =
  | { readonly feasible: true; readonly drop: Float64Array; readonly pivot: number; readonly iterations: number }
  | { readonly feasible: false; readonly node: number; readonly iterations: number };

/** More than ever needed: within 1e-9 of collapse the steps halve for some thirty iterations, then shrink at once. */
const MOST_ITERATIONS = 100;

/** The solver that fits the network. @internal */
export function solverFor(problem: NetworkProblem): LinearSolver & { readonly tree: boolean } {
  const tree = treeSolver(problem);
  return tree === undefined ? { ...meshSolver(problem), tree: false } : { ...tree, tree: true };
}

/** Loads by node and kind. @internal */
export type NodeLoads = Pick<NetworkProblem, 'power' | 'current' | 'conductance'>;

/** `fixed` loads (if any) and `factor` times the `grown` ones. @internal */
export function scaledLoads(grown: NodeLoads, factor: number, fixed?: NodeLoads): NodeLoads {
  const scale = (kind: keyof NodeLoads): Float64Array =>
    grown[kind].map((load, node) => (fixed === undefined ? 0 : (fixed[kind][node] as number)) + factor * load);
  return { power: scale('power'), current: scale('current'), conductance: scale('conductance') };
}

/**
 * The stable solution under the given loads, or the proof that there is none.
 *
 * From the no-load voltages down, each step lands on or above the stable solution (the load terms P/V are convex), so
 * the low-voltage root is never reached; a pivot or a voltage that is not positive proves that nothing is there.
 * @internal
 */
export function stableDrops(problem: NetworkProblem, solver: LinearSolver, loads: NodeLoads = problem): Drops {
  const { nodes, reference, held, heldVoltage } = problem;
  const { power, current, conductance } = loads;
  // The linear part: a load's current is `drawn - slope · drop`.
  const drawn = new Float64Array(nodes);
  let constantPower = false;
  // Whether anything but constant power moves the voltages from that of the one supply.
  let moved = false;
  for (let node = 0; node < nodes; node++) {
    drawn[node] = (current[node] as number) + (conductance[node] as number) * reference;
    constantPower ||= (power[node] as number) > 0;
    moved ||= drawn[node] !== 0 || (held[node] === 1 && heldVoltage[node] !== reference);
  }
  let drop: Float64Array = new Float64Array(nodes);
  if (moved || !constantPower) {
    const { pivot } = solver.solve(drawn.slice(), conductance.slice(), drop);
    const low = firstBelowZero(drop, reference, constantPower);
    if (low >= 0) return { feasible: false, node: low, iterations: 0 };
    if (!constantPower) return { feasible: true, drop, pivot, iterations: 0 };
  }

  let next: Float64Array = new Float64Array(nodes);
  const drawnNow = new Float64Array(nodes);
  const slopeNow = new Float64Array(nodes);
  let before = Number.MAX_VALUE;
  for (let iterations = 1; iterations <= MOST_ITERATIONS; iterations++) {
    for (let node = 0; node < nodes; node++) {
      // P/V about the present voltage, as a current less a slope times the drop.
      const perVolt = 1 / (reference - (drop[node] as number));
      const I = (power[node] as number) * perVolt;
      drawnNow[node] = (drawn[node] as number) + I * (2 - reference * perVolt);
      slopeNow[node] = (conductance[node] as number) - I * perVolt;
    }
    const { pivot, node } = solver.solve(drawnNow, slopeNow, next);
    if (!(pivot > 0)) return { feasible: false, node, iterations };
    let step = 0;
    let low = 0;
    for (let i = 0; i < nodes; i++) {
      const own = next[i] as number;
      if (own > (next[low] as number)) low = i;
      step = Math.max(step, Math.abs(own - (drop[i] as number)));
    }
    if (reference - (next[low] as number) <= 0) return { feasible: false, node: low, iterations };
    [drop, next] = [next, drop];
    // What is left after a step is its square over the pivot: once that is under the rounding, another would move nothing.
    const share = step / reference;
    if (share * share < 1e-17 * pivot) return { feasible: true, drop, pivot, iterations };
    // Near collapse rounding keeps the steps from shrinking further; while they are still large, the search is on its way out.
    if (step >= before && before < 1e-7 * reference) return { feasible: true, drop, pivot, iterations };
    before = step;
  }
  return { feasible: false, node: lowest(drop), iterations: MOST_ITERATIONS };
}

/** The node furthest under 0 V; for constant power 0 V itself is too low. -1 if there is none. */
function firstBelowZero(drop: Float64Array, reference: number, constantPower: boolean): number {
  const node = lowest(drop);
  const voltage = reference - (drop[node] as number);
  return voltage < 0 || (constantPower && voltage === 0) ? node : -1;
}

function lowest(drop: Float64Array): number {
  let node = 0;
  for (let i = 1; i < drop.length; i++) if ((drop[i] as number) > (drop[node] as number)) node = i;
  return node;
}
