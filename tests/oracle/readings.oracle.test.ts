/** Readings of four-pair runs drawn conductor by conductor, by ngspice: each pair shorted at the far end, then the loops that power sees. */
import { expect, test } from 'vitest';
import { cable, expectedReading, fromMeasurement, type RunPair } from '../../src/index.ts';
import { expectWithin } from '../helpers/expectations.ts';
import { type Random, seeded, uniform } from '../helpers/random.ts';
import { sampleSize } from '../helpers/sample-size.ts';
import { solveDc, spiceNumber } from '../helpers/spice.ts';

const RUNS = sampleSize(60, 15);
const PINS: Readonly<Record<RunPair, readonly [number, number]>> = { '1,2': [1, 2], '3,6': [3, 6], '4,5': [4, 5], '7,8': [7, 8] };
/** In series with the loops of power, and taken off again; far less costs ngspice digits. [Ω] */
const LEADS = 0.01;
const PAIRS = Object.keys(PINS) as RunPair[];

/** Eight conductors, each a near joint, so many metres of wire, and a far joint. [Ω] */
type Conductors = Readonly<Record<number, readonly [near: number, wire: number, far: number]>>;

/** One copy of the run for each measurement, its names marked by a letter, all in one netlist. */
interface Measurement {
  readonly from: string;
  readonly to: string;
  /** Node names that are tied together, two by two. */
  readonly ties: readonly (readonly [string, string])[];
  /** In series with `from`. [Ω] */
  readonly leads: number;
}

/** One ampere in and out again: the voltage between is the resistance. */
async function ohms(conductors: Conductors, measurements: readonly Measurement[]): Promise<number[]> {
  const lines = measurements.flatMap(({ from, to, ties, leads }, index) => [
    ...Object.entries(conductors).flatMap(([pin, [near, wire, far]]) => [
      `Rn${pin}x${index} n${pin}x${index} a${pin}x${index} ${spiceNumber(near)}`,
      `Rw${pin}x${index} a${pin}x${index} b${pin}x${index} ${spiceNumber(wire)}`,
      `Rf${pin}x${index} b${pin}x${index} f${pin}x${index} ${spiceNumber(far)}`,
      // Conductors that touch nothing else would float.
      `Rg${pin}x${index} n${pin}x${index} 0 1e12`,
    ]),
    ...ties.map(([one, other], tie) => `Vt${tie}x${index} ${one}x${index} ${other}x${index} 0`),
    `Rl${index} lead${index} ${from}x${index} ${spiceNumber(leads)}`,
    `Im${index} ${to}x${index} lead${index} 1`,
    `Vg${index} ${to}x${index} 0 0`,
  ]);
  const solution = await solveDc(lines);
  return measurements.map((_, index) => solution.get(`v(lead${index})`) as number);
}

function conductorsOf(random: Random, length: number, temperature: number): Conductors {
  const warm = 1 + 0.00393 * (temperature - 20);
  return Object.fromEntries(
    PAIRS.flatMap((pair) => {
      // Pairs differ, the two conductors of one do not: only their sum is read.
      const wire = uniform(random, 0.085, 0.0938) * length * warm;
      const near = uniform(random, 0.01, 0.2);
      const far = uniform(random, 0.01, 0.2);
      return PINS[pair].map((pin) => [pin, [near, wire, far]]);
    }),
  ) as Conductors;
}

test(`${RUNS} runs: readings, pairsets and both together`, async () => {
  const random = seeded(1_125_568);
  // Power goes out on both conductors of one pair and back on both of another, tied at either end.
  const tied = PAIRS.flatMap((pair) => {
    const [one, other] = PINS[pair];
    return [[`n${one}`, `n${other}`] as const, [`f${one}`, `f${other}`] as const];
  });
  for (let run = 0; run < RUNS; run++) {
    const length = uniform(random, 5, 95);
    const temperature = uniform(random, 0, 60);
    const leads = uniform(random, 0.05, 0.5);
    const [one, two, three, four, setA, setB, both] = (await ohms(conductorsOf(random, length, temperature), [
      ...PAIRS.map((pair) => ({
        from: `n${PINS[pair][0]}`,
        to: `n${PINS[pair][1]}`,
        ties: [[`f${PINS[pair][0]}`, `f${PINS[pair][1]}`] as const],
        leads,
      })),
      { from: 'n1', to: 'n3', ties: [...tied, ['f1', 'f3']], leads: LEADS },
      { from: 'n4', to: 'n7', ties: [...tied, ['f4', 'f7']], leads: LEADS },
      { from: 'n1', to: 'n3', ties: [...tied, ['f1', 'f3'], ['f4', 'f7'], ['n1', 'n4'], ['n3', 'n7']], leads: LEADS },
    ])) as [number, number, number, number, number, number, number];
    const found = fromMeasurement({
      pairs: { '1,2': one, '3,6': two, '4,5': three, '7,8': four },
      leadResistance: leads,
      temperature,
      knownLength: length,
      cable: cable('cat5e'),
      scope: 'channel',
      connections: 2,
    });
    expect(found.explanations.find(({ name }) => name === 'as-described')?.status).toBe('consistent');
    const { measured } = found.loops as NonNullable<typeof found.loops>;
    expectWithin(measured.pairsetA.value, setA - LEADS, 1e-7);
    expectWithin(measured.pairsetB.value, setB - LEADS, 1e-7);
    expectWithin(measured.fourPair.value, both - LEADS, 1e-7);
  }
});

test('the expected reading is what ngspice has for conductors at the limit of the cable and connections at theirs', async () => {
  const run = { installed: [{ cable: cable('cat5e'), length: 80, temperature: 40 }], connections: 2 };
  const wire = 0.0938 * 80 * (1 + 0.00393 * 20);
  const conductors = Object.fromEntries([1, 2, 3, 6, 4, 5, 7, 8].map((pin) => [pin, [0.2, wire, 0.2]])) as Conductors;
  const [reading] = await ohms(conductors, [{ from: 'n1', to: 'n2', ties: [['f1', 'f2']], leads: LEADS }]);
  expectWithin(expectedReading(run).channel.atTemperature.high, (reading as number) - LEADS, 1e-7);
});
