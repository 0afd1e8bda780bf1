/** A network laid out for working by hand: which section feeds which node, and which sections close a ring. @module */
import type { NetworkInput, NetworkSection } from '../../circuit/index.ts';

/** A section that feeds a node: drawn from the side of the supply. @internal */
export interface Branch {
  /** Index of the section in the input. */
  readonly section: number;
  readonly from: string;
  readonly to: string;
  /** Whether the input names its ends in this order too. */
  readonly asDrawn: boolean;
}

/** A section that no node needs in order to be fed. @internal */
export interface RingSection {
  readonly section: number;
  readonly from: string;
  readonly to: string;
}

/** A network as trees that hang from its supplies, and what closes rings between their branches. @internal */
export interface NetworkTree {
  /** Every name, in order of first mention. */
  readonly names: readonly string[];
  /** Names that a supply holds, each once. [V] */
  readonly supplies: readonly { readonly at: string; readonly voltage: number }[];
  /** From the supplies outwards. */
  readonly branches: readonly Branch[];
  readonly rings: readonly RingSection[];
}

/** Lays a network out: a ring is cut at the section with the most resistance, the last of several alike. @internal */
export function networkTree({ supplies, sections }: NetworkInput, ohms: (section: NetworkSection) => number): NetworkTree {
  const ends = sections.map(({ from, to }) => [String(from), String(to)] as const);
  const names = [...new Set([...supplies.map(({ at }) => String(at)), ...ends.flat()])];
  const held = new Map(supplies.map(({ at, voltage }) => [String(at), voltage]));

  // All supplies are one group: a section between two of them closes a ring.
  const group = new Map(names.map((name) => [name, held.has(name) ? '' : name]));
  const joins: number[] = [];
  const rings: RingSection[] = [];
  const byResistance = sections.map((section, index) => ({ index, R: ohms(section) })).sort((a, b) => a.R - b.R);
  for (const { index } of byResistance) {
    const [from, to] = ends[index] as readonly [string, string];
    // What leads back to where it starts carries nothing.
    if (from === to) continue;
    const [one, other] = [group.get(from) as string, group.get(to) as string];
    if (one === other) rings.push({ section: index, from, to });
    else {
      joins.push(index);
      const [kept, lost] = other === '' ? [other, one] : [one, other];
      for (const [name, own] of group) if (own === lost) group.set(name, kept);
    }
  }

  const branches: Branch[] = [];
  const reached = [...held.keys()];
  for (const at of reached) {
    for (const section of joins) {
      const [from, to] = ends[section] as readonly [string, string];
      const next = from === at ? to : to === at ? from : undefined;
      if (next === undefined || reached.includes(next)) continue;
      reached.push(next);
      branches.push({ section, from: at, to: next, asDrawn: from === at });
    }
  }
  return {
    names,
    supplies: [...held].map(([at, voltage]) => ({ at, voltage })),
    branches,
    rings: rings.sort((a, b) => a.section - b.section),
  };
}
