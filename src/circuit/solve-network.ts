/** Voltages, currents and losses of a DC network with many taps. @module */
import type { Amperes, Volts, Watts } from '../quantity/units.ts';
import { sectionCurrents } from './network-currents.ts';
import { scaledLoads, solverFor, stableDrops } from './network-newton.ts';
import { type NetworkInput, type NetworkProblem, type NetworkTap, networkProblem } from './network-problem.ts';

/** A solved network. */
export interface NetworkSolution {
  readonly feasible: true;
  /** Every node, in order of first mention. [V] */
  readonly nodes: readonly { readonly node: string; readonly voltage: Volts }[];
  /** The same by name. [V] */
  readonly voltages: Readonly<Record<string, Volts>>;
  /** By section, positive from its `from` to its `to`. [A] */
  readonly currents: readonly Amperes[];
  /** By tap: its voltage [V], current [A] and power [W]. */
  readonly taps: readonly {
    readonly at: string;
    readonly voltage: Volts;
    readonly current: Amperes;
    readonly power: Watts;
  }[];
  /** By node that a supply holds; negative where the supply is fed by another. [A] [W] */
  readonly supplies: readonly { readonly at: string; readonly current: Amperes; readonly power: Watts }[];
  /** The node with the least voltage. [V] */
  readonly lowest: { readonly node: string; readonly voltage: Volts };
  /** From all supplies. [W] */
  readonly supplyPower: Watts;
  /** To all taps. [W] */
  readonly loadPower: Watts;
  /** Heat in all sections. [W] */
  readonly lineLoss: Watts;
  /** Whether a billionth more load would be too much: then the answer may be either. */
  readonly nearCollapse: boolean;
}

/** A network that cannot carry its loads. */
export interface NetworkCollapse {
  readonly feasible: false;
  /** The node at which it shows first. */
  readonly at: string;
  /** The largest share of all its loads, 0 to 1, that the network does carry. */
  readonly loadability: number;
  /** Whether a billionth less load would be carried: then the answer may be either. */
  readonly nearCollapse: boolean;
}

/** A solved network; infeasible: where it gives way, and the share of its loads that it carries. */
export type Network = NetworkSolution | NetworkCollapse;

/**
 * Node voltages, section currents and losses of a DC network: trees, rings, lines fed from one end or both.
 *
 * Steady state. Loads of constant power are solved for the stable, high-voltage state by Newton's method from the
 * no-load side; a network without one is told by proof, not by running out of patience. Linear in the number of nodes
 * for trees. Section resistances are loops, out and back.
 *
 * @param input - Supplies [V], sections (loop resistance [Ω], or conductor with length [m] and temperature [°C]), taps.
 * @returns Voltages [V], currents [A] and powers [W]; or the node at which the network gives way and the share it carries.
 * @throws {@link InputError} If a node has no way to a supply, a tap is at no known node, two supplies of different
 *   voltage hold one node, or a number is outside its domain.
 * @example Two 5 W packs on one line at 24 V, 2 Ω apart
 * const line = solveNetwork({
 *   supplies: [{ at: 'rack', voltage: 24 }],
 *   sections: [{ from: 'rack', to: 'left', resistance: 2 }, { from: 'left', to: 'right', resistance: 2 }],
 *   taps: [{ at: 'left', load: { power: 5 } }, { at: 'right', load: { power: 5 } }],
 * });
 * line.feasible && [line.lowest.node, line.lowest.voltage.toFixed(2)]; // => ['right', '22.69']
 */
export function solveNetwork(input: NetworkInput): Network {
  const problem = networkProblem(input);
  const solver = solverFor(problem);
  const found = stableDrops(problem, solver);
  if (!found.feasible) {
    const carries = (factor: number): boolean => stableDrops(problem, solver, scaledLoads(problem, factor)).feasible;
    const loadability = largestFactor(carries, 0, 1);
    return { feasible: false, at: nameOfNode(problem, found.node), loadability, nearCollapse: carries(1 - 2e-9) };
  }
  // A small pivot, or a voltage near 0 under current loads, is how collapse announces itself; only then is it worth asking.
  const least = problem.reference - found.drop.reduce((most, drop) => Math.max(most, drop), 0);
  const nearCollapse =
    (found.pivot < 0.01 || least < 1e-6 * problem.reference) && !stableDrops(problem, solver, scaledLoads(problem, 1 + 1e-9)).feasible;
  return { ...solution(problem, input.taps, found.drop, solver.tree), nearCollapse };
}

function solution(
  problem: NetworkProblem,
  taps: readonly NetworkTap[],
  drop: Float64Array,
  tree: boolean,
): Omit<NetworkSolution, 'nearCollapse'> {
  const { names, nodeOfName, reference, tapName, resistance, fromName, toName, holder } = problem;
  const voltageOf = (name: number): Volts => reference - (drop[nodeOfName[name] as number] as number);
  const nodes = names.map((node, name) => ({ node, voltage: voltageOf(name) }));
  let lowest = nodes[0] as { node: string; voltage: Volts };
  const voltages: Record<string, Volts> = {};
  for (const node of nodes) {
    if (node.voltage < lowest.voltage) lowest = node;
    // Assigned, a node called `__proto__` would be lost.
    if (node.node === '__proto__') Object.defineProperty(voltages, node.node, { value: node.voltage, enumerable: true });
    else voltages[node.node] = node.voltage;
  }

  let loadPower = 0;
  const tapCurrents = new Float64Array(taps.length);
  const solvedTaps = taps.map(({ load }, i) => {
    const name = tapName[i] as number;
    const voltage = voltageOf(name);
    const drawn = load.power !== undefined ? load.power / voltage : load.current !== undefined ? load.current : voltage / load.resistance;
    const current = drawn + 0; // no -0
    const power = load.power !== undefined ? load.power + 0 : voltage * current;
    tapCurrents[i] = current;
    loadPower += power;
    return { at: names[name] as string, voltage, current, power };
  });

  const flow = sectionCurrents(problem, drop, tapCurrents, tree);
  const outflow = new Float64Array(names.length);
  let lineLoss = 0;
  for (let i = 0; i < flow.length; i++) {
    const I = flow[i] as number;
    lineLoss += I * I * (resistance[i] as number);
    const [a, b] = [nodeOfName[fromName[i] as number] as number, nodeOfName[toName[i] as number] as number];
    (outflow[a] as number) += I;
    (outflow[b] as number) -= I;
  }
  for (let i = 0; i < taps.length; i++) {
    const node = nodeOfName[tapName[i] as number] as number;
    (outflow[node] as number) += tapCurrents[i] as number;
  }
  let supplyPower = 0;
  const supplies: { at: string; current: Amperes; power: Watts }[] = [];
  for (let node = 0; node < holder.length; node++) {
    if (holder[node] === -1) continue;
    const current = outflow[node] as number;
    const power = (problem.heldVoltage[node] as number) * current;
    supplies.push({ at: names[holder[node] as number] as string, current, power });
    supplyPower += power;
  }
  return {
    feasible: true,
    nodes,
    voltages,
    currents: [...flow],
    taps: solvedTaps,
    supplies,
    lowest: { ...lowest },
    supplyPower,
    loadPower,
    lineLoss,
  };
}

/** @internal */
export function nameOfNode({ names, nodeOfName }: NetworkProblem, node: number): string {
  return names[nodeOfName.indexOf(node)] as string;
}

/** The largest factor that passes between one that does and one that does not, to the last bit. @internal */
export function largestFactor(passes: (factor: number) => boolean, good: number, bad: number): number {
  let low = good;
  let high = bad;
  for (;;) {
    const middle = low + (high - low) / 2;
    if (!(middle > low && middle < high)) return low;
    if (passes(middle)) low = middle;
    else high = middle;
  }
}
