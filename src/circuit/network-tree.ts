/** Linear solves on a tree of lines, each branch hanging from one supply: two passes, leaf to root and back. @module */
import type { NetworkProblem } from './network-problem.ts';

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
  const { start, section: sections } = problem.adjacency;
  const parent = new Int32Array(nodes).fill(-1);
  const via = new Int32Array(nodes).fill(-1);
  const order = new Int32Array(nodes);
  let count = 0;
  for (let node = 0; node < nodes; node++) if (held[node] === 1) order[count++] = node;
  for (let head = 0; head < count; head++) {
    const node = order[head] as number;
    for (let k = start[node] as number; k < (start[node + 1] as number); k++) {
      const section = sections[k] as number;
      if (section === via[node]) continue;
      const other = (from[section] as number) + (to[section] as number) - node;
      // Between two supplies the section carries what it carries, whatever the loads do.
      if (held[node] === 1 && held[other] === 1) continue;
      if (held[other] === 1 || parent[other] !== -1) return undefined;
      parent[other] = node;
      via[other] = section;
      order[count++] = other;
    }
  }
  const heldCount = order.findIndex((node) => held[node] === 0);
  const first = heldCount === -1 ? nodes : heldCount;
  const sectionResistance = new Float64Array(nodes);
  for (let node = 0; node < nodes; node++) if (via[node] !== -1) sectionResistance[node] = resistance[via[node] as number] as number;
  const share = new Float64Array(nodes);

  return {
    solve(drawn, slope, drop) {
      // Each node adds what its branch draws to what its parent's does.
      let pivot = Number.MAX_VALUE;
      let worst = -1;
      for (let i = nodes - 1; i >= first; i--) {
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
      for (let i = 0; i < first; i++) drop[order[i] as number] = reference - (heldVoltage[order[i] as number] as number);
      for (let i = first; i < nodes; i++) {
        const node = order[i] as number;
        const above = drop[parent[node] as number] as number;
        const current = ((drawn[node] as number) - (slope[node] as number) * above) * (share[node] as number);
        drop[node] = above + (sectionResistance[node] as number) * current;
      }
      return { pivot, node: worst };
    },
  };
}
