/** Currents along the sections of a solved network. @module */
import type { NetworkProblem } from './network-problem.ts';
import { sectionsByNode, spanningOrder } from './spanning-order.ts';

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
  const byNeed = new Uint8Array(from.length);
  const currents = new Float64Array(from.length);
  for (let i = 0; i < from.length; i++) {
    const [R, a, b] = [resistance[i] as number, from[i] as number, to[i] as number];
    if (R === 0 || (tree && !(held[a] === 1 && held[b] === 1))) byNeed[i] = 1;
    else currents[i] = ((drop[b] as number) - (drop[a] as number)) / R;
  }
  if (!byNeed.includes(1)) return currents;

  // What flows out of each name, all but through the sections that are found by need.
  const need = new Float64Array(names.length);
  const { fromName, toName, tapName, holder } = problem;
  for (let i = 0; i < from.length; i++) {
    const [a, b] = [fromName[i] as number, toName[i] as number];
    if (byNeed[i] === 1) continue;
    (need[a] as number) += currents[i] as number;
    (need[b] as number) -= currents[i] as number;
  }
  for (let i = 0; i < tapName.length; i++) {
    const name = tapName[i] as number;
    (need[name] as number) += tapCurrents[i] as number;
  }
  // The supply is the root of its group, so that what the group needs comes from there; a group without one begins at any name.
  const roots = holder.filter((name) => name !== -1);
  const { order, via } = spanningOrder(sectionsByNode(names.length, fromName, toName, byNeed), fromName, toName, roots, true);
  for (let i = names.length - 1; i >= 0; i--) {
    const name = order[i] as number;
    const section = via[name] as number;
    if (section === -1) continue;
    const inward = toName[section] === name;
    currents[section] = inward ? (need[name] as number) : -(need[name] as number);
    const up = inward ? (fromName[section] as number) : (toName[section] as number);
    (need[up] as number) += need[name] as number;
  }
  return currents;
}
