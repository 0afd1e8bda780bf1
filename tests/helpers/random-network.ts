/** Random DC networks: chains, trees, rings, meshes, several feeds, every kind of load. */
import type { NetworkInput, NetworkSection, NetworkTap } from '../../src/index.ts';

/** A network of 1 to `most` taps from a source of numbers in [0, 1). */
export function randomNetwork(random: () => number, most = 200): NetworkInput {
  const count = 1 + Math.floor(random() ** 2 * most);
  const between = (low: number, high: number): number => low * (high / low) ** random();
  const shape = random();
  const sections: NetworkSection[] = [];
  for (let node = 1; node <= count; node++) {
    const from = shape < 0.3 ? node - 1 : Math.floor(random() * node);
    sections.push({ from: `k${from}`, to: `k${node}`, resistance: between(0.01, 5) });
  }
  // Rings and meshes.
  const extra = shape < 0.6 ? 0 : 1 + Math.floor(random() * Math.min(6, count));
  for (let i = 0; i < extra && count > 1; i++) {
    const [a, b] = [Math.floor(random() * (count + 1)), Math.floor(random() * (count + 1))];
    if (a !== b) sections.push({ from: `k${a}`, to: `k${b}`, resistance: between(0.01, 5) });
  }
  const voltage = between(12, 57);
  const supplies = [{ at: 'k0', voltage }];
  if (random() < 0.35 && count > 1) supplies.push({ at: `k${count}`, voltage: voltage * (0.95 + 0.1 * random()) });
  const taps: NetworkTap[] = [];
  for (let node = 1; node <= count; node++) {
    const kind = random();
    const at = `k${node}`;
    if (kind < 0.6) taps.push({ at, load: { power: between(0.1, 20) } });
    else if (kind < 0.8) taps.push({ at, load: { current: between(0.001, 0.1) } });
    else taps.push({ at, load: { resistance: between(50, 5000) } });
  }
  return { supplies, sections, taps };
}

/** Every load of a network, `factor` times as much. */
export function scaledNetwork(network: NetworkInput, factor: number): NetworkInput {
  return {
    ...network,
    taps: network.taps.map(({ at, load }) => {
      if (load.power !== undefined) return { at, load: { power: load.power * factor } };
      if (load.current !== undefined) return { at, load: { current: load.current * factor } };
      return { at, load: { resistance: load.resistance / factor } };
    }),
  };
}
