/** `solveNetwork` on a line of many constant-power taps at 0.6 of collapse, against one plain pass along the line. @module */
import { solverFor, stableDrops } from '../../src/circuit/network-newton.ts';
import { type NetworkInput, networkProblem } from '../../src/circuit/network-problem.ts';
import { builtCore, compare, print, spreadOf } from './measure.mts';

const { solveNetwork } = await builtCore();
const SUPPLY = 48;

/** One supply and a chain of `taps` alike, far enough apart that the whole line is 10 ohm. */
function line(taps: number, power: number): NetworkInput {
  return {
    supplies: [{ at: 0, voltage: SUPPLY }],
    sections: Array.from({ length: taps }, (_, index) => ({ from: index, to: index + 1, resistance: 10 / taps })),
    taps: Array.from({ length: taps }, (_, index) => ({ at: index + 1, load: { power } })),
  };
}

/** The same line with 0.6 of the load at which it collapses. */
function loadedLine(taps: number): NetworkInput {
  const tooMuch = (10 * SUPPLY * SUPPLY) / taps;
  const answer = solveNetwork(line(taps, tooMuch));
  if (answer.feasible) throw new Error('the line carries more than it can');
  return line(taps, 0.6 * answer.loadability * tooMuch);
}

/** What a first program does once: currents from the far end, voltages from the near end, on bare arrays. */
function plainPass(resistance: Float64Array, power: Float64Array, voltage: Float64Array, current: Float64Array): number {
  let sum = 0;
  for (let index = power.length - 1; index >= 0; index--) {
    sum += (power[index] as number) / (voltage[index] as number);
    current[index] = sum;
  }
  let volts = SUPPLY;
  for (let index = 0; index < power.length; index++) {
    volts -= (resistance[index] as number) * (current[index] as number);
    voltage[index] = volts;
  }
  return volts;
}

const network = loadedLine(10_000);
const resistance = Float64Array.from(network.sections, (section) => section.resistance ?? 0);
const power = Float64Array.from(network.taps, ({ load }) => load.power ?? 0);
const voltage = new Float64Array(power.length).fill(SUPPLY);
const current = new Float64Array(power.length);

const PASSES = 200;
const whole = (input: NetworkInput): number => {
  const answer = solveNetwork(input);
  return answer.feasible ? answer.lowest.voltage : 0;
};
const passes = (): number => {
  let sum = 0;
  for (let pass = 0; pass < PASSES; pass++) sum += plainPass(resistance, power, voltage.fill(SUPPLY), current);
  return sum;
};

/** Times something a hundred times as long as a plain pass, and prints how many passes it is worth. */
function againstPlainPass(what: string, budget: number, run: () => number): void {
  const { ratio, first, second } = compare(run, passes, 1, 21);
  const inPasses = spreadOf([ratio.least * PASSES, ratio.median * PASSES, ratio.most * PASSES]);
  print(what, inPasses, 'x', budget, `${(first.median / 1e6).toFixed(2)} against ${(second.median / 1e6 / PASSES).toFixed(3)} ms`);
}
const problem = networkProblem(network);
const solver = solverFor(problem);
againstPlainPass('network of 10,000 taps, the kernel over a plain pass', 50, () => {
  const answer = stableDrops(problem, solver);
  return answer.feasible ? 1 : 0;
});
againstPlainPass('network of 10,000 taps, the whole call over it', 150, () => whole(network));

const large = loadedLine(100_000);
const growth = compare(
  () => whole(large),
  () => whole(network),
  1,
  7,
);
print(
  'network of 100,000 taps over 10,000',
  growth.ratio,
  'x',
  20,
  `${(growth.first.median / 1e6).toFixed(0)} against ${(growth.second.median / 1e6).toFixed(1)} ms`,
);
