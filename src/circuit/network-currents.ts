/** Currents along the sections of a solved network. @module */
import type { NetworkProblem } from './network-problem.ts';

/**
 * Current of each section, from its `from` end to its `to` end. [A]
 *
 * On a tree each section carries what hangs from it (Kirchhoff's current law), and so does a section of 0 Ω anywhere; where
 * several of those lie in parallel nothing decides between them, and the first carries all. In a mesh a section with a
 * resistance carries what Ohm's law says: to about 1e-16 of its two voltages over its resistance.
 * @internal
 */
export function sectionCurrents(problem: NetworkProblem, drop: Float64Array, tapCurrents: Float64Array, tree: boolean): Float64Array {
  const { from, to, resistance, names, held } = problem;
  // Between two supplies nothing hangs from a section: the voltages alone say what it carries.
  const byNeed = (i: number): boolean => resistance[i] === 0 || (tree && !(held[from[i] as number] === 1 && held[to[i] as number] === 1));
  const currents = new Float64Array(from.length);
  let bare = false;
  for (let i = 0; i < from.length; i++) {
    const R = resistance[i] as number;
    if (byNeed(i)) bare = true;
    else currents[i] = ((drop[to[i] as number] as number) - (drop[from[i] as number] as number)) / R;
  }
  if (!bare) return currents;

  // What flows out of each name, all but through the sections that are found by need.
  const need = new Float64Array(names.length);
  const { fromName, toName, tapName, holder, nodeOfName } = problem;
  const joins: number[][] = names.map(() => []);
  for (let i = 0; i < from.length; i++) {
    const [a, b] = [fromName[i] as number, toName[i] as number];
    if (byNeed(i)) {
      if (a !== b) {
        joins[a]?.push(i);
        joins[b]?.push(i);
      }
    } else {
      need[a] = (need[a] as number) + (currents[i] as number);
      need[b] = (need[b] as number) - (currents[i] as number);
    }
  }
  for (let i = 0; i < tapName.length; i++) {
    const name = tapName[i] as number;
    need[name] = (need[name] as number) + (tapCurrents[i] as number);
  }
  const via = new Int32Array(names.length).fill(-1);
  const seen = new Uint8Array(names.length);
  const order: number[] = [];
  const visit = (root: number): void => {
    if (seen[root] === 1) return;
    seen[root] = 1;
    const begin = order.length;
    order.push(root);
    for (let head = begin; head < order.length; head++) {
      const name = order[head] as number;
      for (const section of joins[name] as number[]) {
        const other = fromName[section] === name ? (toName[section] as number) : (fromName[section] as number);
        if (seen[other] === 1) continue;
        seen[other] = 1;
        via[other] = section;
        order.push(other);
      }
    }
  };
  // The supply is the root of its group, so that what the group needs comes from there.
  for (const name of holder) if (name !== -1) visit(name);
  for (let name = 0; name < nodeOfName.length; name++) visit(name);
  for (let i = order.length - 1; i >= 0; i--) {
    const name = order[i] as number;
    const section = via[name] as number;
    if (section === -1) continue;
    const inward = toName[section] === name;
    currents[section] = inward ? (need[name] as number) : -(need[name] as number);
    const up = inward ? (fromName[section] as number) : (toName[section] as number);
    need[up] = (need[up] as number) + (need[name] as number);
  }
  return currents;
}
