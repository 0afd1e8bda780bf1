/** A DC network as its users write it, and as flat arrays that a solver can walk. @module */
import type { Conductor } from '../conductor/conductor.ts';
import { resistancePerMetre } from '../conductor/resistance-per-metre.ts';
import { refuse, requireArray, requireNonNegative, requireObject, requirePositive } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Celsius, Metres, Ohms, Volts } from '../quantity/units.ts';
import type { Load } from './operating-point.ts';

/** The name of a point of the network. */
export type NodeName = string | number;

/** A supply that holds its node at a voltage. */
export interface NetworkSupply {
  readonly at: NodeName;
  /** [V] */
  readonly voltage: Volts;
}

/** A stretch of line between two nodes: its loop resistance, or the two equal conductors it is made of. */
export type NetworkSection = { readonly from: NodeName; readonly to: NodeName } & (
  | {
      /** Out and back. [Ω] */
      readonly resistance: Ohms;
      readonly conductor?: undefined;
      readonly length?: undefined;
      readonly temperature?: undefined;
    }
  | {
      readonly conductor: Conductor;
      /** One way. [m] */
      readonly length: Metres;
      /** Conductor temperature; 20 if absent. [°C] */
      readonly temperature?: Celsius | undefined;
      readonly resistance?: undefined;
    }
);

/** A load somewhere along the line. */
export interface NetworkTap {
  readonly at: NodeName;
  /** Power [W], current [A] or resistance [Ω]. */
  readonly load: Load;
}

/** A network of two-wire lines: trees, rings, lines fed from both ends, several supplies. */
export interface NetworkInput {
  readonly supplies: readonly NetworkSupply[];
  readonly sections: readonly NetworkSection[];
  readonly taps: readonly NetworkTap[];
}

/**
 * The network as arrays. Nodes joined by a section of 0 Ω are one node here.
 *
 * Loads at one node are summed by kind: power, current, conductance.
 * @internal
 */
export interface NetworkProblem {
  readonly nodes: number;
  /** As the user wrote them, in order of first mention. */
  readonly names: readonly string[];
  /** Node of each name. */
  readonly nodeOfName: Int32Array;
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** By section; a section whose ends are one node is 0. [Ω] */
  readonly resistance: Float64Array;
  /** Ends of each section, and place of each tap, by name. */
  readonly fromName: Int32Array;
  readonly toName: Int32Array;
  readonly tapName: Int32Array;
  /** Name that holds each node at its voltage; -1 where none does. */
  readonly holder: Int32Array;
  /** 1 where a supply holds the node. */
  readonly held: Uint8Array;
  /** Voltage of the supply at a held node. [V] */
  readonly heldVoltage: Float64Array;
  /** Highest supply voltage: drops are counted from here. [V] */
  readonly reference: Volts;
  /** Sections at each node: those of node n are `neighbour[start[n]]` up to `neighbour[start[n + 1]]`. */
  readonly adjacency: { readonly start: Int32Array; readonly neighbour: Int32Array };
  readonly power: Float64Array;
  readonly current: Float64Array;
  readonly conductance: Float64Array;
}

/** Reads and checks a network. @internal */
export function networkProblem(input: NetworkInput): NetworkProblem {
  requireObject(input, 'input', 'an object with supplies, sections and taps');
  const { supplies, sections, taps } = input;
  requireArray(supplies, 'supplies', 'a list of { at, voltage }');
  requireArray(sections, 'sections', 'a list of { from, to, resistance }');
  requireArray(taps, 'taps', 'a list of { at, load }');
  if (supplies.length === 0) throw new InputError('missing', 'supplies', 'at least one supply', supplies);

  const byText = new Map<string, number>();
  const byNumber = new Map<number, number>();
  const names: string[] = [];
  const index = (name: NodeName, list: string, i: number, end: string): number => {
    let found = typeof name === 'number' ? byNumber.get(name) : byText.get(name);
    if (found !== undefined) return found;
    const text = nameOf(name, list, i, end);
    // Node 1 and node '1' are one node, whichever came first.
    const number = Number(text);
    found = typeof name === 'number' ? byText.get(text) : String(number) === text ? byNumber.get(number) : undefined;
    if (found === undefined) {
      found = names.length;
      names.push(text);
    }
    if (typeof name === 'number') byNumber.set(name, found);
    else byText.set(text, found);
    return found;
  };

  const supplyAt = supplies.map((supply, i) => {
    requireObject(supply, `supplies[${i}]`, 'an object with at and voltage');
    requirePositive(supply.voltage, `supplies[${i}].voltage`, 'V');
    return index(supply.at, 'supplies', i, 'at');
  });
  const count = sections.length;
  const from = new Int32Array(count);
  const to = new Int32Array(count);
  const resistance = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const section = sections[i] as NetworkSection;
    resistance[i] = sectionResistance(section, i);
    from[i] = index(section.from, 'sections', i, 'from');
    to[i] = index(section.to, 'sections', i, 'to');
  }
  const tapName = new Int32Array(taps.length);
  const reached = names.length;
  for (let i = 0; i < taps.length; i++) {
    const tap = taps[i] as NetworkTap;
    if (typeof tap !== 'object' || tap === null) requireObject(tap, `taps[${i}]`, 'an object with at and load');
    tapName[i] = index(tap.at, 'taps', i, 'at');
    if ((tapName[i] as number) >= reached) throw new InputError('unknown', `taps[${i}].at`, 'a node of a section or supply', tap.at);
  }

  const nodeOfName = joined(names.length, from, to, (i) => resistance[i] === 0);
  const nodes = 1 + nodeOfName.reduce((most, node) => Math.max(most, node), -1);
  const ends = [from, to].map((end) => end.map((name) => nodeOfName[name] as number)) as [Int32Array, Int32Array];
  const problem: NetworkProblem = {
    nodes,
    names,
    nodeOfName,
    from: ends[0],
    to: ends[1],
    adjacency: adjacency(nodes, ...ends),
    resistance,
    fromName: from,
    toName: to,
    tapName,
    holder: new Int32Array(nodes).fill(-1),
    held: new Uint8Array(nodes),
    heldVoltage: new Float64Array(nodes),
    reference: supplies.reduce((most, { voltage }) => Math.max(most, voltage), 0),
    power: new Float64Array(nodes),
    current: new Float64Array(nodes),
    conductance: new Float64Array(nodes),
  };
  for (let i = 0; i < supplies.length; i++) {
    const node = nodeOfName[supplyAt[i] as number] as number;
    const { voltage, at } = supplies[i] as NetworkSupply;
    if (problem.held[node] === 1 && problem.heldVoltage[node] !== voltage) {
      throw new InputError('conflict', `supplies[${i}].voltage`, `the voltage of the other supply that holds ${at}`, voltage);
    }
    if (problem.held[node] === 0) problem.holder[node] = supplyAt[i] as number;
    problem.held[node] = 1;
    problem.heldVoltage[node] = voltage;
  }
  for (let i = 0; i < taps.length; i++) addLoad(problem, nodeOfName[tapName[i] as number] as number, (taps[i] as NetworkTap).load, i);
  requireReach(
    names,
    joined(names.length, from, to, () => true),
    supplyAt,
  );
  return problem;
}

function nameOf(name: unknown, list: string, i: number, end: string): string {
  if (typeof name === 'string' && name !== '') return name;
  if (typeof name === 'number' && Number.isFinite(name)) return String(name);
  refuse(name, `${list}[${i}].${end}`, 'the name of a node, a text or a number', 'type');
}

function sectionResistance(section: NetworkSection, i: number): Ohms {
  if (typeof section !== 'object' || section === null) requireObject(section, `sections[${i}]`, 'an object with from, to and resistance');
  const { resistance, conductor } = section;
  if (conductor === undefined) {
    // The path is built only when it is needed: a network may have a hundred thousand sections.
    if (!(typeof resistance === 'number' && resistance >= 1e-12 && resistance <= 1e12)) {
      requireNonNegative(resistance as number, `sections[${i}].resistance`, 'Ω');
    }
    return resistance as number;
  }
  if (resistance !== undefined) {
    throw new InputError('conflict', `sections[${i}].resistance`, 'either a resistance, or a conductor with its length', resistance);
  }
  const { length, temperature } = section;
  try {
    requireNonNegative(length, 'length', 'm');
    return 2 * resistancePerMetre(conductor, temperature) * length + 0;
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError(error.code, `sections[${i}].${error.parameter}`, error.expected, error.received);
  }
}

function addLoad(problem: NetworkProblem, node: number, load: Load, i: number): void {
  // Paths are put together only where they are needed: there may be a hundred thousand taps.
  if (typeof load !== 'object' || load === null) requireObject(load, `taps[${i}].load`, 'an object with power, current or resistance');
  const { power, current, resistance } = load;
  const inDomain = (value: number): boolean => value >= 1e-12 && value <= 1e12;
  if (+(power === undefined) + +(current === undefined) + +(resistance === undefined) !== 2) {
    throw new InputError('conflict', `taps[${i}].load`, 'exactly one of power, current and resistance', load);
  }
  if (power !== undefined) {
    if (typeof power !== 'number' || !inDomain(power)) requireNonNegative(power, `taps[${i}].load.power`, 'W');
    (problem.power[node] as number) += power;
  } else if (current !== undefined) {
    if (typeof current !== 'number' || !inDomain(current)) requireNonNegative(current, `taps[${i}].load.current`, 'A');
    (problem.current[node] as number) += current;
  } else {
    requirePositive(resistance as Ohms, `taps[${i}].load.resistance`, 'Ω');
    (problem.conductance[node] as number) += 1 / (resistance as Ohms);
  }
}

/** One number for all names that certain sections join, in order of first mention. */
function joined(count: number, from: Int32Array, to: Int32Array, joins: (section: number) => boolean): Int32Array {
  const parent = new Int32Array(count);
  for (let name = 0; name < count; name++) parent[name] = name;
  const find = (name: number): number => {
    let root = name;
    while (parent[root] !== root) root = parent[root] as number;
    let walk = name;
    while (parent[walk] !== root) {
      const next = parent[walk] as number;
      parent[walk] = root;
      walk = next;
    }
    return root;
  };
  for (let i = 0; i < from.length; i++) {
    if (joins(i)) parent[find(from[i] as number)] = find(to[i] as number);
  }
  const number = new Int32Array(count).fill(-1);
  const node = new Int32Array(count);
  let next = 0;
  for (let name = 0; name < count; name++) {
    const root = find(name);
    if (number[root] === -1) number[root] = next++;
    node[name] = number[root] as number;
  }
  return node;
}

/** A node that no supply reaches has no voltage: that is a mistake in the drawing. */
function requireReach(names: readonly string[], part: Int32Array, supplyAt: readonly number[]): void {
  const fed = new Set(supplyAt.map((name) => part[name]));
  const lost = names.findIndex((_, name) => !fed.has(part[name]));
  if (lost >= 0) throw new InputError('conflict', 'sections', `a way from a supply to every node; '${names[lost]}' has none`, names[lost]);
}

function adjacency(nodes: number, from: Int32Array, to: Int32Array): NetworkProblem['adjacency'] {
  const start = new Int32Array(nodes + 1);
  for (let i = 0; i < from.length; i++) {
    if (from[i] === to[i]) continue;
    (start[(from[i] as number) + 1] as number)++;
    (start[(to[i] as number) + 1] as number)++;
  }
  for (let node = 0; node < nodes; node++) start[node + 1] = (start[node + 1] as number) + (start[node] as number);
  const fill = start.slice();
  const neighbour = new Int32Array(start[nodes] as number);
  for (let i = 0; i < from.length; i++) {
    if (from[i] === to[i]) continue;
    const [a, b] = [from[i] as number, to[i] as number];
    neighbour[(fill[a] as number)++] = i;
    neighbour[(fill[b] as number)++] = i;
  }
  return { start, neighbour };
}
