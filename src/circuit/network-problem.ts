/** A DC network as its users write it, and as flat arrays that a solver can walk. @module */
import type { Conductor } from '../conductor/conductor.ts';
import { CONDUCTOR_TEMPERATURE, requireConductor, requireTwenty, resistancePerMetre } from '../conductor/resistance-per-metre.ts';
import type { Field, Fields } from '../quantity/fields.ts';
import { refuse, requireArray, requireNonNegative, requireObject, requirePositive, requireTemperature } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import { refuseUnknown } from '../quantity/nearest.ts';
import type { Celsius, Metres, Ohms, Volts } from '../quantity/units.ts';
import { isPlain, isPlainLoad, LOAD_FIELDS, type Load, requireLoad } from './operating-point.ts';
import { type SpanningOrder, sectionsByNode, spanningOrder } from './spanning-order.ts';
import { LEG } from './voltage-drop.ts';

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

/** @internal */
export const NODE_NAME: Field<NodeName> = { check: (name, path) => requireNodeName(name, path), type: 'NodeName' };

/** @internal */
export const SUPPLY_FIELDS: Fields<NetworkSupply> = {
  at: () => NODE_NAME,
  voltage: { positive: 'V' },
};

/** @internal */
export const SECTION_FIELDS: Fields<NetworkSection, 'temperature'> = {
  from: () => NODE_NAME,
  to: () => NODE_NAME,
  resistance: { nonNegative: 'Ω', optional: true },
  conductor: () => LEG,
  length: { nonNegative: 'm', optional: true },
  temperature: () => CONDUCTOR_TEMPERATURE,
};

/** @internal */
export const TAP_FIELDS: Fields<NetworkTap> = {
  at: () => NODE_NAME,
  load: { exactlyOne: () => LOAD_FIELDS },
};

/** Guarded by hand, for speed: there may be a hundred thousand taps. @internal */
export const SOLVE_NETWORK_FIELDS: Fields<NetworkInput> = {
  supplies: { list: { object: () => SUPPLY_FIELDS }, least: 'supply' },
  sections: { list: { object: () => SECTION_FIELDS } },
  taps: { list: { object: () => TAP_FIELDS } },
};

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
  /** The nodes from the supplies on. */
  readonly spanning: SpanningOrder;
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
  // Nodes are mostly numbered from 0, and then a list finds them several times as fast.
  const byCount = new Int32Array(2 * sections.length + supplies.length).fill(-1);
  const names: string[] = [];
  const numbered = (name: number): number | undefined => {
    const found = byCount[name];
    return found === undefined ? byNumber.get(name) : found === -1 ? undefined : found;
  };
  const index = (name: NodeName, list: string, i: number, end: string): number => {
    let found = typeof name === 'number' ? numbered(name) : byText.get(name);
    if (found !== undefined) return found;
    if (!isNodeName(name)) requireNodeName(name, `${list}[${i}].${end}`);
    const text = String(name);
    // Node 1 and node '1' are one node, whichever came first.
    if (typeof name === 'number') found = byText.size > 0 ? byText.get(text) : undefined;
    else if (String(Number(text)) === text) found = numbered(Number(text));
    if (found === undefined) {
      found = names.length;
      names.push(text);
    }
    if (typeof name !== 'number') byText.set(text, found);
    else if (byCount[name] === undefined) byNumber.set(name, found);
    else byCount[name] = found;
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

  const bare = resistance.includes(0);
  const nodeOfName = joinedNames(names.length, from, to, bare ? resistance : undefined);
  const nodes = bare ? 1 + nodeOfName.reduce((most, node) => Math.max(most, node), -1) : names.length;
  const nodesOf = (end: Int32Array): Int32Array => (bare ? end.map((name) => nodeOfName[name] as number) : end);
  const ends = [nodesOf(from), nodesOf(to)] as const;
  const holder = new Int32Array(nodes).fill(-1);
  const held = new Uint8Array(nodes);
  const heldVoltage = new Float64Array(nodes);
  for (let i = 0; i < supplies.length; i++) {
    const name = supplyAt[i] as number;
    const node = nodeOfName[name] as number;
    const { voltage, at } = supplies[i] as NetworkSupply;
    if (held[node] === 1 && heldVoltage[node] !== voltage) {
      throw new InputError('conflict', `supplies[${i}].voltage`, `the voltage of the other supply that holds ${at}`, voltage);
    }
    if (held[node] === 0) holder[node] = name;
    held[node] = 1;
    heldVoltage[node] = voltage;
  }
  const heldNodes = Int32Array.from(supplyAt, (name) => nodeOfName[name] as number).sort();
  const problem: NetworkProblem = {
    nodes,
    names,
    nodeOfName,
    from: ends[0],
    to: ends[1],
    spanning: spanningOrder(sectionsByNode(nodes, ...ends), ...ends, heldNodes),
    resistance,
    fromName: from,
    toName: to,
    tapName,
    holder,
    held,
    heldVoltage,
    reference: supplies.reduce((most, { voltage }) => Math.max(most, voltage), 0),
    power: new Float64Array(nodes),
    current: new Float64Array(nodes),
    conductance: new Float64Array(nodes),
  };
  for (let i = 0; i < taps.length; i++) addLoad(problem, nodeOfName[tapName[i] as number] as number, (taps[i] as NetworkTap).load, i);
  requireReach(problem);
  return problem;
}

function isNodeName(name: unknown): boolean {
  return typeof name === 'string' ? name !== '' : Number.isFinite(name);
}

function requireNodeName(name: unknown, path: string): void {
  if (!isNodeName(name)) refuse(name, path, 'the name of a node, a text or a number', 'type');
}

function sectionResistance(section: NetworkSection, i: number): Ohms {
  if (typeof section !== 'object' || section === null) requireObject(section, `sections[${i}]`, 'an object with from, to and resistance');
  const { resistance, conductor } = section;
  if (conductor === undefined) {
    // The path is built only when it is needed: a network may have a hundred thousand sections.
    if (!isPlain(resistance)) requireNonNegative(resistance as Ohms, `sections[${i}].resistance`, 'Ω');
    return resistance as Ohms;
  }
  if (resistance !== undefined) {
    throw new InputError('conflict', `sections[${i}].resistance`, 'either a resistance, or a conductor with its length', resistance);
  }
  const path = `sections[${i}]`;
  refuseUnknown(section, Object.keys(SECTION_FIELDS), path);
  const { length, temperature = CONDUCTOR_TEMPERATURE.default } = section;
  requireConductor(conductor, `${path}.conductor`);
  requireNonNegative(length, `${path}.length`, 'm');
  requireTemperature(temperature, `${path}.temperature`);
  if (conductor.temperatureCoefficient === undefined) requireTwenty(temperature, conductor.material, `${path}.temperature`);
  return 2 * resistancePerMetre(conductor, temperature) * length + 0;
}

function addLoad(problem: NetworkProblem, node: number, load: Load, i: number): void {
  // The path is put together only where it is needed: there may be a hundred thousand taps.
  if (!isPlainLoad(load)) requireLoad(load, 0, `taps[${i}].load`);
  if (load.power !== undefined) (problem.power[node] as number) += load.power;
  else if (load.current !== undefined) (problem.current[node] as number) += load.current;
  else (problem.conductance[node] as number) += 1 / load.resistance;
}

/** One node for all names that sections of 0 Ω join, in order of first mention. */
function joinedNames(count: number, from: Int32Array, to: Int32Array, resistance: Float64Array | undefined): Int32Array {
  const parent = new Int32Array(count);
  for (let name = 0; name < count; name++) parent[name] = name;
  if (resistance === undefined) return parent;
  const rootOf = (name: number): number => {
    let walk = name;
    while (parent[walk] !== walk) {
      // Each step halves the way to the root.
      parent[walk] = parent[parent[walk] as number] as number;
      walk = parent[walk] as number;
    }
    return walk;
  };
  for (let i = 0; i < from.length; i++) {
    if (resistance[i] === 0) parent[rootOf(from[i] as number)] = rootOf(to[i] as number);
  }
  const number = new Int32Array(count).fill(-1);
  let next = 0;
  return parent.map((_, name) => {
    const root = rootOf(name);
    if (number[root] === -1) number[root] = next++;
    return number[root] as number;
  });
}

/** A node that no supply reaches has no voltage: that is a mistake in the drawing. */
function requireReach({ nodes, names, nodeOfName, held, spanning: { via, count } }: NetworkProblem): void {
  if (count === nodes) return;
  const lost = names.find((_, name) => {
    const node = nodeOfName[name] as number;
    return held[node] === 0 && via[node] === -1;
  });
  throw new InputError('conflict', 'sections', `a way from a supply to every node; '${lost}' has none`, lost);
}
