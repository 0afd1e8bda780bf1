/** Random questions, the core's answers and what people get wrong: networks. @module */
import { loadability } from '../../../src/circuit/loadability.ts';
import type { NetworkInput, NetworkSection, NetworkTap } from '../../../src/circuit/network-problem.ts';
import type { Load } from '../../../src/circuit/operating-point.ts';
import { solveNetwork } from '../../../src/circuit/solve-network.ts';
import { awg } from '../../../src/conductor/awg.ts';
import { logUniform, pick, type Random, uniform, whole } from '../random.ts';
import { type Asked, again, FOOT, loading } from './kit.ts';

/** A tree of up to eight nodes, one in four with sections that close rings, one in five with a second supply. */
function shape(random: Random): Pick<NetworkInput, 'supplies' | 'sections'> {
  const voltage = uniform(random, 12, 57);
  const nodes = whole(random, 1, 8);
  const byLength = random() < 0.4;
  const ends: (readonly [number, number])[] = Array.from({ length: nodes }, (_, index) => [whole(random, 0, index), index + 1]);
  if (random() < 0.25) for (let more = whole(random, 1, 2); more > 0; more--) ends.push([whole(random, 0, nodes), whole(random, 0, nodes)]);
  const sections = ends.map(([a, b]): NetworkSection => {
    const [from, to] = random() < 0.7 ? [a, b] : [b, a];
    if (!byLength) return { from, to, resistance: random() < 0.05 && a < b && ends.length === nodes ? 0 : logUniform(random, 0.05, 20) };
    const conductor = awg(whole(random, 12, 24));
    return { from, to, conductor, length: logUniform(random, 1, 300), temperature: pick(random, [undefined, uniform(random, -10, 60)]) };
  });
  const bare = sections.some(({ resistance }) => resistance === 0);
  const second = !bare && random() < 0.2 ? [{ at: nodes, voltage: voltage * uniform(random, 0.97, 1) }] : [];
  return { supplies: [{ at: 0, voltage }, ...second], sections };
}

function loadOf(random: Random, kind: 'power' | 'current' | 'resistance'): Load {
  if (kind === 'power') return { power: logUniform(random, 0.5, 20) };
  return kind === 'current' ? { current: logUniform(random, 0.01, 1) } : { resistance: logUniform(random, 50, 5000) };
}

/** The same loads, that many times as large; resistances stay as they are. */
function grown(taps: readonly NetworkTap[], factor: number): NetworkTap[] {
  return taps.map(({ at, load: { power, current, resistance } }) => {
    if (power !== undefined) return { at, load: { power: power * factor } };
    return { at, load: current === undefined ? { resistance: resistance as number } : { current: current * factor } };
  });
}

function isTree({ supplies, sections }: NetworkInput): boolean {
  const names = new Set([...supplies.map(({ at }) => at), ...sections.flatMap(({ from, to }) => [from, to])]);
  return sections.length === names.size - supplies.length;
}

function question(random: Random): NetworkInput {
  const { supplies, sections } = shape(random);
  const kinds = pick(random, [['power'], ['power'], ['current'], ['power', 'current', 'resistance']] as const);
  const nodes = Math.max(...sections.map(({ from, to }) => Math.max(Number(from), Number(to))));
  const taps = Array.from({ length: whole(random, 1, 6) }, () => ({
    at: whole(random, random() < 0.05 ? 0 : 1, nodes),
    load: loadOf(random, pick(random, kinds)),
  }));
  const growth = loadability({ supplies, sections, taps });
  // Trees up to 1e-6 short of collapse. Rings and several supplies are differences of like figures there, and currents bring a
  // voltage down to nothing, of which few digits are left. Now and then beyond collapse.
  const isSimple = kinds.length === 1 && kinds[0] === 'power' && supplies.length === 1 && isTree({ supplies, sections, taps });
  const near = isSimple ? loading(random) : random() * 0.9;
  const share = random() < 0.05 ? uniform(random, 1.01, 3) : near;
  // Resistances alone are never too much, whatever they are.
  const isBounded = growth.bounded && taps.some(({ load }) => load.resistance === undefined);
  return { supplies, sections, taps: isBounded ? grown(taps, Math.max(growth.factor * share, 1e-6)) : taps };
}

/** Each section of a tree with another length, or temperature. */
const withSections = (input: NetworkInput, change: (section: NetworkSection) => NetworkSection): NetworkInput => ({
  ...input,
  sections: input.sections.map(change),
});

const solveNetworkAsked: Asked<'solveNetwork'> = {
  question,
  answer: solveNetwork,
  mistakes: [
    {
      slip: 'power-at-wrong-end',
      make: (input) => {
        const [supply, second] = input.supplies;
        if (second !== undefined || supply === undefined || input.taps.some(({ at, load }) => load.power === undefined || at === supply.at))
          return undefined;
        const taps = input.taps.map(({ at, load }) => ({ at, load: { current: (load.power ?? 0) / supply.voltage } }));
        return isTree(input) ? again(solveNetworkAsked, { ...input, taps }, 'lowest.voltage') : undefined;
      },
    },
    {
      slip: 'own-tap-only',
      make: (input) => {
        const { supplies, sections, taps } = input;
        const kinds = new Set(taps.flatMap(({ load }) => Object.keys(load)));
        if (supplies.length > 1 || !isTree(input) || kinds.size > 1 || kinds.has('resistance')) return undefined;
        // Along the way from the supply to each node, every section as if it were alone, with what is tapped at its end.
        const end = (section: NetworkSection, far: unknown, voltage: number): number => {
          const own = taps.filter(({ at }) => at === far).map(({ load }) => ({ at: 'end', load }));
          const alone = solveNetwork({
            supplies: [{ at: 'start', voltage }],
            sections: [{ ...section, from: 'start', to: 'end' }],
            taps: own.length === 0 ? [{ at: 'end', load: { current: 0 } }] : own,
          });
          return alone.feasible ? (alone.nodes.find(({ node }) => node === 'end')?.voltage ?? Number.NaN) : Number.NaN;
        };
        const volts = new Map<unknown, number>(supplies.map(({ at, voltage }) => [at, voltage]));
        for (let turn = 0; turn < sections.length; turn++) {
          for (const section of sections) {
            for (const [near, far] of [
              [section.from, section.to],
              [section.to, section.from],
            ]) {
              const start = volts.get(near);
              if (start !== undefined && !volts.has(far)) volts.set(far, end(section, far, start));
            }
          }
        }
        return Math.min(...volts.values());
      },
    },
    {
      slip: 'cold-resistance',
      make: (input) =>
        again(
          solveNetworkAsked,
          withSections(input, (section) => (section.conductor === undefined ? section : { ...section, temperature: 20 })),
          'lowest.voltage',
        ),
    },
    {
      slip: 'one-way-length',
      make: (input) =>
        again(
          solveNetworkAsked,
          withSections(input, (section) => (section.conductor === undefined ? section : { ...section, length: section.length / 2 })),
          'lowest.voltage',
        ),
    },
    {
      slip: 'metres-for-feet',
      make: (input) =>
        again(
          solveNetworkAsked,
          withSections(input, (section) => (section.conductor === undefined ? section : { ...section, length: section.length * FOOT })),
          'lowest.voltage',
        ),
    },
  ],
};

/** By name. */
export const networks: { readonly [Name in 'solveNetwork']: Asked<Name> } = { solveNetwork: solveNetworkAsked };
