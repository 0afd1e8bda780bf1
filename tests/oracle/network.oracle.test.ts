/** solveNetwork against ngspice on random networks, up to 0.99 of collapse and beyond it. */
import { expect, test } from 'vitest';
import { loadability } from '../../src/circuit/index.ts';
import { type NetworkInput, solveNetwork } from '../../src/index.ts';
import { seeded } from '../helpers/random.ts';
import { randomNetwork, scaledNetwork } from '../helpers/random-network.ts';
import { sampleSize } from '../helpers/sample-size.ts';
import { spiceVoltages } from '../helpers/spice-network.ts';

// All agree in a sample of 1000 as well.
const NETWORKS = sampleSize(300, 75);
const BATCH = 25;

/** A random network brought to a share of the load at which it collapses. */
function atShare(random: () => number, share: number): NetworkInput {
  const network = randomNetwork(random);
  const growth = loadability(network);
  return growth.bounded ? scaledNetwork(network, growth.factor * share) : network;
}

test(`node voltages of ${NETWORKS} random networks agree to 1e-6`, async () => {
  const random = seeded(20_261_124);
  let worst = 0;
  for (let done = 0; done < NETWORKS; done += BATCH) {
    const networks = Array.from({ length: BATCH }, () => atShare(random, 0.02 + 0.97 * random() ** 0.5));
    const spice = await spiceVoltages(networks);
    expect(spice).toBeDefined();
    for (const [i, network] of networks.entries()) {
      const ours = solveNetwork(network);
      expect(ours.feasible).toBe(true);
      if (!ours.feasible) continue;
      for (const [node, voltage] of Object.entries(ours.voltages)) {
        const error = Math.abs(voltage / (spice?.[i]?.[node] as number) - 1);
        expect(error, `network ${done + i}, node ${node}`).toBeLessThan(1e-6);
        worst = Math.max(worst, error);
      }
    }
  }
  expect(worst).toBeGreaterThan(0);
});

test('where the network says it collapses, ngspice finds loads that fade below 1 % of the supply far down', async () => {
  const random = seeded(802);
  let collapsed = 0;
  for (let i = 0; i < 24; i++) {
    const share = i % 2 === 0 ? 1.01 : 0.99;
    const network = atShare(random, share);
    const ours = solveNetwork(network);
    const bounded = network.taps.some(({ load }) => load.resistance === undefined);
    expect(ours.feasible).toBe(share < 1 || !bounded);
    if (!ours.feasible) expect(ours.loadability).toBeCloseTo(1 / share, 6);

    const spice = await spiceVoltages([network], true);
    const nominal = Math.max(...network.supplies.map(({ voltage }) => voltage));
    if (spice === undefined) {
      // Now and then ngspice gives up on the way down; on a network that is carried it never may.
      expect(ours.feasible).toBe(false);
      continue;
    }
    const least = Math.min(...network.taps.map(({ at }) => spice[0]?.[String(at)] as number));
    // Up to collapse a line fed at V keeps V/2 at a power load; current and resistance loads may go lower, never to the fade.
    if (ours.feasible) expect(least).toBeGreaterThan(0.05 * nominal);
    else expect(least).toBeLessThan(0.03 * nominal);
    collapsed += ours.feasible ? 0 : 1;
  }
  expect(collapsed).toBeGreaterThan(0);
});
