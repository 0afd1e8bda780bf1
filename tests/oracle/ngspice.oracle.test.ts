/** Circuits drawn wire by wire and solved by ngspice, against `operatingPoint`, `runResistance` and `powerAtPd`: 1e-6 relative. */
import { describe, expect, test } from 'vitest';
import { cable } from '../../src/cable/cable.ts';
import type { CableName } from '../../src/cable/cables.ts';
import { type RunResistance, runResistance, type Segment } from '../../src/cable/run-resistance.ts';
import { type FeasiblePoint, type Load, operatingPoint } from '../../src/circuit/operating-point.ts';
import { voltageDrop } from '../../src/circuit/voltage-drop.ts';
import { awg } from '../../src/conductor/awg.ts';
import type { PoeClassNumber } from '../../src/ethernet/class-table.ts';
import { poeClass } from '../../src/ethernet/poe-class.ts';
import { powerAtPd } from '../../src/ethernet/power-at-pd.ts';
import { expectWithin } from '../helpers/expectations.ts';
import { logUniform, pick, type Random, seeded, uniform, whole } from '../helpers/random.ts';
import { type Solution, solveDc, spiceNumber } from '../helpers/spice.ts';

const AGREEMENT = 1e-6;

/** A load between two nodes. A constant power starts near the supply voltage, else ngspice may settle on the lower root. */
function loadLines(id: string, plus: string, minus: string, load: Load, supplyVoltage: number): string[] {
  if (load.current !== undefined) return [`Il${id} ${plus} ${minus} ${spiceNumber(load.current)}`];
  if (load.resistance !== undefined) return [`Rl${id} ${plus} ${minus} ${spiceNumber(load.resistance)}`];
  return [
    `Bl${id} ${plus} ${minus} I=${spiceNumber(load.power)}/V(${plus},${minus})`,
    `.nodeset V(${plus})=${spiceNumber(supplyVoltage)}`,
    ...(minus === '0' ? [] : [`.nodeset V(${minus})=0`]),
  ];
}

function expectSame(point: FeasiblePoint, supplyVoltage: number, loadVoltage: number, current: number): void {
  const share = 1 - loadVoltage / supplyVoltage;
  expectWithin(point.current, current, AGREEMENT);
  expectWithin(point.loadVoltage, loadVoltage, AGREEMENT);
  expectWithin(point.supplyPower, supplyVoltage * current, AGREEMENT);
  expectWithin(point.loadPower, loadVoltage * current, AGREEMENT);
  expectWithin(point.efficiency, loadVoltage / supplyVoltage, AGREEMENT);
  // The drop is a small difference of two voltages there: ngspice has 1e-10 of the supply voltage to give.
  if (share > 1e-3) expectWithin(point.dropFraction, share, AGREEMENT);
}

const voltage = (solution: Solution, plus: string, minus: string): number =>
  (solution.get(`v(${plus})`) as number) - (minus === '0' ? 0 : (solution.get(`v(${minus})`) as number));

describe('operatingPoint', () => {
  const random = seeded(21);
  const cases = Array.from({ length: 300 }, (_, i) => {
    const supplyVoltage = uniform(random, 1, 1000);
    const resistance = logUniform(random, 1e-2, 1e3);
    const share = pick(random, [uniform(random, 0.01, 0.99), 0.99]);
    const load: Load =
      i % 3 === 0
        ? { power: (share * supplyVoltage ** 2) / (4 * resistance) }
        : i % 3 === 1
          ? { current: (share * supplyVoltage) / resistance }
          : { resistance: resistance * logUniform(random, 1e-2, 1e3) };
    return { supplyVoltage, resistance, load };
  });

  test('300 random lines, a third each of power (to 0.99 of collapse), current and resistance', async () => {
    const solution = await solveDc(
      cases.flatMap(({ supplyVoltage, resistance, load }, i) => [
        `V${i} s${i} 0 ${spiceNumber(supplyVoltage)}`,
        `R${i} s${i} d${i} ${spiceNumber(resistance)}`,
        ...loadLines(String(i), `d${i}`, '0', load, supplyVoltage),
      ]),
    );
    for (const [i, input] of cases.entries()) {
      const point = operatingPoint(input);
      if (!point.feasible) expect.fail(`not feasible: ${JSON.stringify(input)}`);
      expectSame(point, input.supplyVoltage, voltage(solution, `d${i}`, '0'), -(solution.get(`i(v${i})`) as number));
    }
  });
});

/** A random run: 1 to 5 pieces, each with its own cable, length and temperature, and connections between and around them. */
function randomRun(random: Random): { segments: Segment[]; connections: number; connectionResistance: number } {
  const names: readonly CableName[] = ['cat5e', 'cat6', 'cat6a', 'cord-24', 'cord-26', 'cord-28'];
  const segments = Array.from({ length: whole(random, 1, 5) }, () => ({
    cable: cable(pick(random, names)),
    length: uniform(random, 0.5, 40),
    temperature: uniform(random, -30, 70),
  }));
  return { segments, connections: whole(random, 0, segments.length + 1), connectionResistance: uniform(random, 0.01, 0.3) };
}

/** One conductor of the run from node to node, every piece and every connection a resistor of its own: r = r20 (1 + a (T - 20)). */
function conductorLines(id: string, from: string, to: string, run: ReturnType<typeof randomRun>): string[] {
  const ohms = [
    ...run.segments.map(
      ({ cable: { maximumResistancePerMetre, temperatureCoefficient }, length, temperature = 20 }) =>
        maximumResistancePerMetre * (1 + temperatureCoefficient * (temperature - 20)) * length,
    ),
    ...Array.from({ length: run.connections }, () => run.connectionResistance),
  ];
  return ohms.map((value, k) => {
    const start = k === 0 ? from : `${id}n${k}`;
    const end = k === ohms.length - 1 ? to : `${id}n${k + 1}`;
    return `R${id}x${k} ${start} ${end} ${spiceNumber(value)}`;
  });
}

/** The conductors of a twisted-pair cable that go out and come back: one pair shorted, one pairset, two pairsets (Alternatives A and B). */
const WIRING = {
  pairLoop: { out: [4], back: [5] },
  twoPair: { out: [3, 6], back: [1, 2] },
  fourPair: { out: [3, 6, 4, 5], back: [1, 2, 7, 8] },
} as const;

type LoopName = keyof typeof WIRING;

function runLines(id: string, loop: LoopName, run: ReturnType<typeof randomRun>): string[] {
  const { out, back } = WIRING[loop];
  return [
    ...out.flatMap((wire) => conductorLines(`${id}w${wire}`, `s${id}`, `p${id}`, run)),
    ...back.flatMap((wire) => conductorLines(`${id}w${wire}`, `m${id}`, '0', run)),
  ];
}

describe.each(['pairLoop', 'twoPair', 'fourPair'] as const)('%s drawn conductor by conductor', (loop) => {
  const random = seeded(22);
  const runs = Array.from({ length: 40 }, () => randomRun(random));

  test('an ohmmeter at the near end reads it: 1 A in, the far ends joined', async () => {
    const solution = await solveDc(
      runs.flatMap((run, i) => [`I${i} 0 s${i} 1`, `Vshort${i} p${i} m${i} 0`, ...runLines(String(i), loop, run)]),
    );
    for (const [i, run] of runs.entries()) {
      const computed: RunResistance = runResistance(run);
      expectWithin(computed[loop], voltage(solution, `s${i}`, '0'), AGREEMENT);
    }
  });

  test('a load at its far end settles where operatingPoint says', async () => {
    const drawn = runs.map((run, i) => {
      const resistance = runResistance(run)[loop];
      const supplyVoltage = uniform(random, 20, 57);
      const share = uniform(random, 0.01, 0.99);
      const load: Load =
        i % 3 === 0
          ? { power: (share * supplyVoltage ** 2) / (4 * resistance) }
          : i % 3 === 1
            ? { current: (share * supplyVoltage) / resistance }
            : { resistance: resistance * uniform(random, 0.1, 50) };
      return { run, supplyVoltage, resistance, load };
    });
    const solution = await solveDc(
      drawn.flatMap(({ run, supplyVoltage, load }, i) => [
        `V${i} s${i} 0 ${spiceNumber(supplyVoltage)}`,
        ...runLines(String(i), loop, run),
        ...loadLines(String(i), `p${i}`, `m${i}`, load, supplyVoltage),
      ]),
    );
    for (const [i, { supplyVoltage, resistance, load }] of drawn.entries()) {
      const point = operatingPoint({ supplyVoltage, resistance, load });
      if (!point.feasible) expect.fail('not feasible');
      expectSame(point, supplyVoltage, voltage(solution, `p${i}`, `m${i}`), -(solution.get(`i(v${i})`) as number));
    }
  });
});

test('every class at its lowest voltage over random runs: voltage and the three currents, an ammeter in one conductor', async () => {
  const random = seeded(23);
  const drawn = Array.from({ length: 90 }, (_, i) => {
    const number = (i % 9) as PoeClassNumber;
    const { pairs, pseVoltageMin, pdPower, channelResistance } = poeClass(number);
    const loop: LoopName = pairs === 4 ? 'fourPair' : 'twoPair';
    let run = randomRun(random);
    while (runResistance(run)[loop] > channelResistance) run = randomRun(random);
    return { number, pairs, pseVoltageMin, pdPower, loop, run };
  });
  const solution = await solveDc(
    drawn.flatMap(({ pseVoltageMin, pdPower, loop, run }, i) => {
      const [first, ...others] = WIRING[loop].out;
      return [
        `V${i} s${i} 0 ${spiceNumber(pseVoltageMin)}`,
        `Vmeter${i} s${i} a${i} 0`,
        ...conductorLines(`${i}w${first}`, `a${i}`, `p${i}`, run),
        ...others.flatMap((wire) => conductorLines(`${i}w${wire}`, `s${i}`, `p${i}`, run)),
        ...WIRING[loop].back.flatMap((wire) => conductorLines(`${i}w${wire}`, `m${i}`, '0', run)),
        ...loadLines(String(i), `p${i}`, `m${i}`, { power: pdPower }, pseVoltageMin),
      ];
    }),
  );
  for (const [i, { number, run, pseVoltageMin, pairs }] of drawn.entries()) {
    const result = powerAtPd({ poeClass: number, resistance: runResistance(run) });
    if (!result.feasible) expect.fail('not feasible');
    const total = -(solution.get(`i(v${i})`) as number);
    expectSame(result.operating, pseVoltageMin, voltage(solution, `p${i}`, `m${i}`), total);
    expectWithin(result.totalCurrent, total, AGREEMENT);
    expectWithin(result.pairsetCurrent, total / (pairs / 2), AGREEMENT);
    expectWithin(result.conductorCurrent, solution.get(`i(vmeter${i})`) as number, AGREEMENT);
  }
});

test('two-wire circuits of unlike out and back, 40 of them', async () => {
  const random = seeded(24);
  const drawn = Array.from({ length: 40 }, () => {
    const out = awg(whole(random, 10, 24));
    const back = awg(whole(random, 10, 24), { stranding: 'stranded' });
    const length = uniform(random, 5, 200);
    const temperature = uniform(random, -20, 70);
    const supplyVoltage = pick(random, [12, 24, 48]);
    const perMetre = (r20: number): number => r20 * (1 + 0.00393 * (temperature - 20));
    const legs = [perMetre(out.resistancePerMetre) * length, perMetre(back.resistancePerMetre) * length] as const;
    const load: Load = { power: (uniform(random, 0.05, 0.95) * supplyVoltage ** 2) / (4 * (legs[0] + legs[1])) };
    return { out, back, length, temperature, supplyVoltage, legs, load };
  });
  const solution = await solveDc(
    drawn.flatMap(({ supplyVoltage, legs, load }, i) => [
      `V${i} s${i} 0 ${spiceNumber(supplyVoltage)}`,
      `Rout${i} s${i} p${i} ${spiceNumber(legs[0])}`,
      `Rback${i} m${i} 0 ${spiceNumber(legs[1])}`,
      ...loadLines(String(i), `p${i}`, `m${i}`, load, supplyVoltage),
    ]),
  );
  for (const [i, { out, back, length, temperature, supplyVoltage, load }] of drawn.entries()) {
    const point = voltageDrop({ supplyVoltage, out, back, length, temperature, load });
    if (!point.feasible) expect.fail('not feasible');
    expectSame(point, supplyVoltage, voltage(solution, `p${i}`, `m${i}`), -(solution.get(`i(v${i})`) as number));
  }
});
