/** Linear solves on any network: star-mesh elimination in minimum-degree order. @module */
import type { NetworkProblem } from './network-problem.ts';
import type { LinearSolver } from './network-tree.ts';

/**
 * Eliminates the free nodes one by one, fewest neighbours first: a node with conductances `g` to its neighbours becomes
 * conductances `g·g/G` between them. Every term is a sum of like signs, so nothing cancels but the loads themselves.
 * @internal
 */
export function meshSolver(problem: NetworkProblem): LinearSolver {
  const { nodes, held, heldVoltage, reference } = problem;
  const { order, neighbours, conductance, targets } = eliminationPlan(problem);
  const value = conductance.map((row) => Float64Array.from(row));
  const total = new Float64Array(nodes);

  return {
    solve(drawn, slope, drop) {
      for (const node of order) (value[node] as Float64Array).set(conductance[node] as Float64Array);
      let pivot = Number.MAX_VALUE;
      let worst = -1;
      for (const node of order) {
        const g = value[node] as Float64Array;
        const ends = neighbours[node] as Int32Array;
        let sum = 0;
        for (let i = 0; i < g.length; i++) sum += g[i] as number;
        const G = sum + (slope[node] as number);
        const ownPivot = G / sum;
        if (!(ownPivot > 0)) return { pivot: ownPivot, node };
        if (ownPivot < pivot) {
          pivot = ownPivot;
          worst = node;
        }
        total[node] = G;
        const plan = targets[node] as Int32Array;
        let t = 0;
        for (let i = 0; i < g.length; i++) {
          const k = (g[i] as number) / G;
          const end = ends[i] as number;
          (drawn[end] as number) += k * (drawn[node] as number);
          (slope[end] as number) += k * (slope[node] as number);
          for (let j = i + 1; j < g.length; j++) {
            const row = plan[t++] as number;
            const column = plan[t++] as number;
            if (row >= 0) {
              const target = value[row] as Float64Array;
              (target[column] as number) += k * (g[j] as number);
            }
          }
        }
      }
      for (let node = 0; node < nodes; node++) if (held[node] === 1) drop[node] = reference - (heldVoltage[node] as number);
      for (let o = order.length - 1; o >= 0; o--) {
        const node = order[o] as number;
        const g = value[node] as Float64Array;
        const ends = neighbours[node] as Int32Array;
        let sum = drawn[node] as number;
        for (let i = 0; i < g.length; i++) sum += (g[i] as number) * (drop[ends[i] as number] as number);
        drop[node] = sum / (total[node] as number);
      }
      return { pivot, node: worst };
    },
  };
}

/** The order of elimination, and where each product of it is added: found once, used by every solve. */
function eliminationPlan({ nodes, from, to, resistance, held }: NetworkProblem) {
  const joined: Map<number, number>[] = Array.from({ length: nodes }, () => new Map());
  for (let i = 0; i < from.length; i++) {
    const [a, b] = [from[i] as number, to[i] as number];
    if (a === b || (held[a] === 1 && held[b] === 1)) continue;
    const g = 1 / (resistance[i] as number);
    joined[a]?.set(b, (joined[a]?.get(b) ?? 0) + g);
    joined[b]?.set(a, (joined[b]?.get(a) ?? 0) + g);
  }
  const buckets: Set<number>[] = [];
  const move = (node: number, degree: number, before?: number): void => {
    if (before !== undefined) buckets[before]?.delete(node);
    while (buckets.length <= degree) buckets.push(new Set());
    buckets[degree]?.add(node);
  };
  for (let node = 0; node < nodes; node++) if (held[node] === 0) move(node, (joined[node] as Map<number, number>).size);

  const order: number[] = [];
  /** By node: the nodes it is still joined to when its turn comes. */
  const neighbours: Int32Array[] = Array.from({ length: nodes }, () => new Int32Array(0));
  /** By node: the conductances to them before anything is eliminated. */
  const conductance: Float64Array[] = Array.from({ length: nodes }, () => new Float64Array(0));
  let least = 0;
  for (;;) {
    while (least < buckets.length && buckets[least]?.size === 0) least++;
    const node = buckets[least]?.values().next().value;
    if (node === undefined) break;
    buckets[least]?.delete(node);
    order.push(node);
    const own = joined[node] as Map<number, number>;
    const ends = [...own.keys()];
    neighbours[node] = Int32Array.from(ends);
    conductance[node] = Float64Array.from(own.values());
    for (const end of ends) {
      if (held[end] === 1) continue;
      const others = joined[end] as Map<number, number>;
      const before = others.size;
      others.delete(node);
      // A place for the product, empty until the numbers are known.
      for (const other of ends) if (other !== end && !others.has(other)) others.set(other, 0);
      move(end, others.size, before);
    }
    // A neighbour that lost a join may now be the one with the fewest.
    least = Math.max(0, least - 1);
  }

  const turn = new Int32Array(nodes).fill(nodes);
  for (const [i, node] of order.entries()) turn[node] = i;
  const column = neighbours.map((ends) => new Map([...ends].map((end, i) => [end, i])));
  /** By node: for each pair of its neighbours, the row and column that their product is added to. */
  const targets = neighbours.map((ends) => {
    const plan: number[] = [];
    for (let i = 0; i < ends.length; i++) {
      for (let j = i + 1; j < ends.length; j++) {
        const [a, b] = [ends[i] as number, ends[j] as number];
        // The product is kept by whichever of the two is eliminated first; two supplies need none.
        const row = (turn[a] as number) < (turn[b] as number) ? a : b;
        const place = held[row] === 1 ? -1 : (column[row]?.get(row === a ? b : a) as number);
        plan.push(place === -1 ? -1 : row, place);
      }
    }
    return Int32Array.from(plan);
  });
  return { order, neighbours, conductance, targets };
}
