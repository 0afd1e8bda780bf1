/** Linear solves on a tree of lines, each branch hanging from one supply: two passes, leaf to root and back. @module */
import type { NetworkProblem } from './network-problem.ts';
import { otherEnd } from './spanning-order.ts';

/**
 * One linear solve: every load taken as a current `drawn - slope · drop`, drops counted from the reference voltage.
 *
 * Fills the drops and returns the smallest pivot, with its node; a pivot that is not positive proves that the loads
 * have no operating point. Works on `drawn` and `slope` in place.
 * @internal
 */
export interface LinearSolver {
  solve(drawn: Float64Array, slope: Float64Array, drop: Float64Array): { pivot: number; node: number };
}

/** The tree, its nodes in an order where parents come first; `undefined` if the network is not one. @internal */
export function treeSolver(problem: NetworkProblem): LinearSolver | undefined {
  const { nodes, from, to, resistance, held, heldVoltage, reference } = problem;
  const { order, via } = problem.spanning;
  const heldCount = held.reduce((sum, one) => sum + one, 0);
  // Between two supplies a section carries what it carries, whatever the loads do. Of the others a tree has one to each node.
  let lines = 0;
  for (let i = 0; i < from.length; i++) {
    const [a, b] = [from[i] as number, to[i] as number];
    if (a !== b && !(held[a] === 1 && held[b] === 1)) lines++;
  }
  if (lines !== nodes - heldCount) return undefined;
  const parent = new Int32Array(nodes).fill(-1);
  const sectionResistance = new Float64Array(nodes);
  for (let i = heldCount; i < nodes; i++) {
    const node = order[i] as number;
    const section = via[node] as number;
    parent[node] = otherEnd(section, node, from, to);
    sectionResistance[node] = resistance[section] as number;
  }
  const share = new Float64Array(nodes);

  return {
    solve(drawn, slope, drop) {
      // Each node adds what its branch draws to what its parent's does.
      let pivot = Number.MAX_VALUE;
      let worst = -1;
      for (let i = nodes - 1; i >= heldCount; i--) {
        const node = order[i] as number;
        const up = parent[node] as number;
        const ownPivot = 1 + (sectionResistance[node] as number) * (slope[node] as number);
        if (!(ownPivot > 0)) return { pivot: ownPivot, node };
        if (ownPivot < pivot) {
          pivot = ownPivot;
          worst = node;
        }
        const k = 1 / ownPivot;
        share[node] = k;
        (drawn[up] as number) += (drawn[node] as number) * k;
        (slope[up] as number) += (slope[node] as number) * k;
      }
      for (let i = 0; i < heldCount; i++) drop[order[i] as number] = reference - (heldVoltage[order[i] as number] as number);
      for (let i = heldCount; i < nodes; i++) {
        const node = order[i] as number;
        const above = drop[parent[node] as number] as number;
        const current = ((drawn[node] as number) - (slope[node] as number) * above) * (share[node] as number);
        drop[node] = above + (sectionResistance[node] as number) * current;
      }
      return { pivot, node: worst };
    },
  };
}
