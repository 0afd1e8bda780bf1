/** Laws of a DC network, on random ones. */
import { describe, expect, test } from 'vitest';
import { loadability, maximumTaps, shedTaps } from '../../src/circuit/index.ts';
import { type NetworkInput, operatingPoint, solveNetwork } from '../../src/index.ts';
import { seeded } from '../helpers/random.ts';
import { randomNetwork, scaledNetwork } from '../helpers/random-network.ts';

/** A random network at a share of the load at which it collapses. */
function atShare(random: () => number, share: number, most = 60): NetworkInput {
  const network = randomNetwork(random, most);
  const growth = loadability(network);
  return growth.bounded ? scaledNetwork(network, growth.factor * share) : network;
}

function solved(network: NetworkInput): Extract<ReturnType<typeof solveNetwork>, { feasible: true }> {
  const found = solveNetwork(network);
  if (!found.feasible) throw new Error(`collapsed at ${found.at}`);
  return found;
}

describe('on 400 random networks', () => {
  const random = seeded(145);
  const networks = Array.from({ length: 400 }, () => atShare(random, 0.05 + 0.94 * random()));

  test('what the supplies give is what the taps and the lines take, to 1e-9', () => {
    for (const network of networks) {
      const { supplyPower, loadPower, lineLoss, taps } = solved(network);
      expect(Math.abs(supplyPower - loadPower - lineLoss)).toBeLessThan(1e-9 * (loadPower + lineLoss));
      for (const { voltage, current, power } of taps) expect(Math.abs(voltage * current - power)).toBeLessThanOrEqual(1e-14 * power);
    }
  });

  test('what flows into a node flows out of it', () => {
    for (const network of networks) {
      const { currents, taps, supplies } = solved(network);
      const sum = new Map<string, number>();
      const add = (node: string | number, amperes: number) => sum.set(String(node), (sum.get(String(node)) ?? 0) + amperes);
      for (const [i, { from, to }] of network.sections.entries()) {
        add(from, currents[i] as number);
        add(to, -(currents[i] as number));
      }
      for (const { at, current } of taps) add(at, current);
      for (const { at, current } of supplies) add(at, -current);
      const scale = taps.reduce((total, { current }) => total + current, 0);
      for (const residue of sum.values()) expect(Math.abs(residue)).toBeLessThan(1e-9 * scale);
    }
  });

  test('splitting a section in two changes nothing beyond 1e-12', () => {
    for (const network of networks.slice(0, 100)) {
      const [first, ...rest] = network.sections;
      if (first?.resistance === undefined) throw new Error('every section here has a resistance');
      const halves = [
        { from: first.from, to: 'between', resistance: first.resistance * 0.25 },
        { from: 'between', to: first.to, resistance: first.resistance * 0.75 },
      ];
      const before = solved(network);
      const after = solved({ ...network, sections: [...halves, ...rest] });
      for (const { node, voltage } of before.nodes) expect(Math.abs((after.voltages[node] as number) / voltage - 1)).toBeLessThan(1e-12);
    }
  });

  test('the order of sections and taps does not matter beyond rounding', () => {
    for (const network of networks.slice(0, 100)) {
      const before = solved(network);
      const after = solved({ ...network, sections: [...network.sections].reverse(), taps: [...network.taps].reverse() });
      for (const { node, voltage } of before.nodes) expect(Math.abs((after.voltages[node] as number) / voltage - 1)).toBeLessThan(1e-11);
    }
  });

  test('more load never raises a voltage', () => {
    for (const network of networks) {
      const before = solved(scaledNetwork(network, 0.9));
      const after = solved(network);
      for (const { node, voltage } of before.nodes) expect(after.voltages[node] as number).toBeLessThanOrEqual(voltage * (1 + 1e-13));
    }
  });

  test('put back, the loadability is carried and 1e-6 more is not', () => {
    for (const network of networks.slice(0, 150)) {
      const growth = loadability(network);
      if (!growth.bounded) continue;
      expect(solveNetwork(scaledNetwork(network, growth.factor * (1 - 1e-9))).feasible).toBe(true);
      expect(solveNetwork(scaledNetwork(network, growth.factor * (1 + 1e-6))).feasible).toBe(false);
    }
  });
});

test('superposition: drops of current taps add up', () => {
  const random = seeded(33);
  for (let i = 0; i < 100; i++) {
    const { sections, supplies } = randomNetwork(random, 40);
    const [first] = supplies;
    if (first === undefined) throw new Error('every network has a supply');
    const nodes = [...new Set(sections.map(({ to }) => to))];
    const tapsOf = (): NetworkInput['taps'] => nodes.map((at) => ({ at, load: { current: 1e-4 * random() } }));
    const [a, b] = [tapsOf(), tapsOf()];
    const drops = (taps: NetworkInput['taps']) =>
      solved({ supplies: [first], sections, taps }).nodes.map(({ voltage }) => first.voltage - voltage);
    const [one, other, both] = [drops(a), drops(b), drops([...a, ...b])];
    for (const [node, drop] of (both ?? []).entries()) {
      expect(Math.abs(drop - (one?.[node] as number) - (other?.[node] as number))).toBeLessThan(1e-12);
    }
  }
});

test('one tap behind one section is the operating point', () => {
  const random = seeded(7);
  for (let i = 0; i < 2000; i++) {
    const [V, R, share] = [10 + 50 * random(), 0.1 + 20 * random(), random()];
    const kind = random();
    const load =
      kind < 0.5
        ? { power: (0.999 * share * (V * V)) / (4 * R) }
        : kind < 0.75
          ? { current: (0.999 * share * V) / R }
          : { resistance: 1 + 100 * share };
    const line = solved({
      supplies: [{ at: 'A', voltage: V }],
      sections: [{ from: 'A', to: 'B', resistance: R }],
      taps: [{ at: 'B', load }],
    });
    const point = operatingPoint({ supplyVoltage: V, resistance: R, load });
    if (!point.feasible) throw new Error('under the limit');
    expect(Math.abs(line.lowest.voltage / point.loadVoltage - 1)).toBeLessThan(1e-12);
    expect(Math.abs((line.currents[0] as number) / point.current - 1)).toBeLessThan(1e-12);
  }
});

describe('at a hair from collapse', () => {
  // V²/4R = 50 W.
  const line = (power: number): NetworkInput => ({
    supplies: [{ at: 'A', voltage: 50 }],
    sections: [{ from: 'A', to: 'B', resistance: 12.5 }],
    taps: [{ at: 'B', load: { power } }],
  });

  test('1e-6 under it is carried, 1e-6 over it is not', () => {
    expect(solveNetwork(line(50 * (1 - 1e-6)))).toMatchObject({ feasible: true, nearCollapse: false });
    expect(solveNetwork(line(50 * (1 + 1e-6)))).toMatchObject({ feasible: false, at: 'B', nearCollapse: false });
  });

  test('within 1e-9 it says so', () => {
    expect(solveNetwork(line(50 * (1 - 1e-11)))).toMatchObject({ nearCollapse: true });
    expect(solveNetwork(line(50 * (1 + 1e-11)))).toMatchObject({ nearCollapse: true });
  });
});

test('a chain of one tap more than maximumTaps falls below the minimum or collapses', () => {
  const random = seeded(90);
  for (let i = 0; i < 60; i++) {
    const input = {
      supplyVoltage: 20 + 30 * random(),
      spacingResistance: 0.2 + 3 * random(),
      load: { power: 0.5 + 5 * random() },
      minimumVoltage: 8 + 8 * random(),
    };
    const { count } = maximumTaps(input);
    const works = (taps: number): boolean => {
      const sections = Array.from({ length: taps }, (_, k) => ({ from: k, to: k + 1, resistance: input.spacingResistance }));
      const chain = solveNetwork({
        supplies: [{ at: 0, voltage: input.supplyVoltage }],
        sections,
        taps: sections.map(({ to }) => ({ at: to, load: input.load })),
      });
      return chain.feasible && chain.lowest.voltage >= input.minimumVoltage;
    };
    if (count > 0) expect(works(count)).toBe(true);
    expect(works(count + 1)).toBe(false);
  }
});

test('after shedding, every tap that is left is at its turn-off voltage or above', () => {
  const random = seeded(61);
  for (let i = 0; i < 100; i++) {
    const network = atShare(random, 0.7 + 0.6 * random(), 20);
    const voltage = Math.max(...network.supplies.map((supply) => supply.voltage));
    const taps = network.taps.map((tap) => ({ ...tap, turnOff: voltage * (0.5 + 0.4 * random()) }));
    for (const shed of ['allBelow', 'furthestBelow'] as const) {
      const left = shedTaps({ ...network, taps, shed });
      expect(left.feasible).toBe(true);
      if (!left.feasible) continue;
      const on = taps.filter((_, k) => !left.off.includes(k));
      expect(left.network.taps).toHaveLength(on.length);
      for (const [k, tap] of left.network.taps.entries()) expect(tap.voltage).toBeGreaterThanOrEqual(on[k]?.turnOff as number);
    }
  }
});
