/** The nodes of a network, each after the one it hangs from. @module */

/** Sections at each node: those of node n are `section[start[n]]` up to `section[start[n + 1]]`. @internal */
export interface SectionsByNode {
  readonly start: Int32Array;
  readonly section: Int32Array;
}

/** The sections between two nodes, or those of them that count, by each of their ends. @internal */
export function sectionsByNode(nodes: number, from: Int32Array, to: Int32Array, counted?: Uint8Array): SectionsByNode {
  const start = new Int32Array(nodes + 1);
  const counts = (i: number): boolean => from[i] !== to[i] && (counted === undefined || counted[i] === 1);
  for (let i = 0; i < from.length; i++) {
    if (!counts(i)) continue;
    (start[(from[i] as number) + 1] as number)++;
    (start[(to[i] as number) + 1] as number)++;
  }
  for (let node = 0; node < nodes; node++) start[node + 1] = (start[node + 1] as number) + (start[node] as number);
  const next = start.slice();
  const section = new Int32Array(start[nodes] as number);
  for (let i = 0; i < from.length; i++) {
    if (!counts(i)) continue;
    section[(next[from[i] as number] as number)++] = i;
    section[(next[to[i] as number] as number)++] = i;
  }
  return { start, section };
}

/** @internal */
export interface SpanningOrder {
  /** The roots, then all that is reached from them, the nearest first. */
  readonly order: Int32Array;
  /** By node: the section that leads to it; -1 for a root and for what is not reached. */
  readonly via: Int32Array;
  /** How many are reached. */
  readonly count: number;
}

/** Breadth first from the roots; with `all`, on from any node that is left when they are through. @internal */
export function spanningOrder(
  sections: SectionsByNode,
  from: Int32Array,
  to: Int32Array,
  roots: Int32Array,
  all: boolean = false,
): SpanningOrder {
  const { start, section } = sections;
  const nodes = start.length - 1;
  const order = new Int32Array(nodes);
  const via = new Int32Array(nodes).fill(-1);
  const seen = new Uint8Array(nodes);
  let count = 0;
  let unseen = 0;
  const visit = (node: number): void => {
    seen[node] = 1;
    order[count++] = node;
  };
  for (const root of roots) if (seen[root] === 0) visit(root);
  for (let head = 0; head < nodes; head++) {
    if (head === count) {
      if (!all) break;
      while (seen[unseen] === 1) unseen++;
      visit(unseen);
    }
    const node = order[head] as number;
    for (let k = start[node] as number; k < (start[node + 1] as number); k++) {
      const i = section[k] as number;
      const other = otherEnd(i, node, from, to);
      if (seen[other] === 1) continue;
      visit(other);
      via[other] = i;
    }
  }
  return { order, via, count };
}

/** @internal */
export function otherEnd(section: number, node: number, from: Int32Array, to: Int32Array): number {
  return (from[section] as number) === node ? (to[section] as number) : (from[section] as number);
}
