/** `operatingPoint` against the same arithmetic written inline; argument `one` or `mixed` kinds of load. @module */
import type { Load, OperatingPoint, OperatingPointInput } from '../../src/circuit/operating-point.ts';
import { differenceOfProducts } from '../../src/quantity/exact.ts';
import { builtCore, compare, print, requireAlike, stream } from './measure.mts';

const kinds = process.argv[2] === 'mixed' ? 3 : 1;
const { operatingPoint } = await builtCore();

/** What a reader of the formulas would write: no guard, the same numbers, the same object. */
function inline({ supplyVoltage: V, resistance: R, load }: OperatingPointInput): OperatingPoint {
  if (load.power !== undefined) {
    const fourPR = 4 * load.power * R;
    const discriminant = fourPR > 0.25 * V * V ? differenceOfProducts(V, V, 4 * load.power, R) : V * V - fourPR;
    const twice = V + Math.sqrt(discriminant);
    const current = (2 * load.power) / twice;
    const voltageDrop = current * R;
    return {
      feasible: true,
      current,
      loadVoltage: twice / 2,
      loadPower: load.power,
      voltageDrop,
      dropFraction: voltageDrop / V,
      lineLoss: voltageDrop * current,
      supplyPower: V * current,
      efficiency: twice / (2 * V),
    };
  }
  if (load.current !== undefined) {
    const { current } = load;
    const loadVoltage = differenceOfProducts(V, 1, current, R);
    const voltageDrop = current * R;
    return {
      feasible: true,
      current,
      loadVoltage,
      loadPower: loadVoltage * current,
      voltageDrop,
      dropFraction: voltageDrop / V,
      lineLoss: voltageDrop * current,
      supplyPower: V * current,
      efficiency: loadVoltage / V,
    };
  }
  const total = R + load.resistance;
  const current = V / total;
  const voltageDrop = current * R;
  const loadVoltage = current * load.resistance;
  return {
    feasible: true,
    current,
    loadVoltage,
    loadPower: loadVoltage * current,
    voltageDrop,
    dropFraction: R / total,
    lineLoss: voltageDrop * current,
    supplyPower: V * current,
    efficiency: load.resistance / total,
  };
}

// Ports of 44 to 57 V, lines up to the 12.5 ohm of a pairset, loads that the line carries: the same objects for both.
const next = stream(1);
const inputs: OperatingPointInput[] = Array.from({ length: 1000 }, (_, index) => {
  const loads: readonly Load[] = [{ power: 1 + 24 * next() }, { current: 0.02 + 0.5 * next() }, { resistance: 40 + 400 * next() }];
  return { supplyVoltage: 44 + 13 * next(), resistance: 0.5 + 12 * next(), load: loads[index % kinds] as Load };
});
// Not to the last digit: the library's is the better.
for (const input of inputs) requireAlike(operatingPoint(input), inline(input));

const REPEATS = 300;
// Every result is kept for a while: an object that nobody keeps is never made, and the baseline would answer nothing.
const kept: OperatingPoint[] = inputs.map((input) => inline(input));
// Two loops of their own, so that each knows its one callee, as a caller's code would.
function runLibrary(): number {
  for (let repeat = 0; repeat < REPEATS; repeat++) {
    for (let index = 0; index < inputs.length; index++) kept[index] = operatingPoint(inputs[index] as OperatingPointInput);
  }
  return kept.length;
}
function runInline(): number {
  for (let repeat = 0; repeat < REPEATS; repeat++) {
    for (let index = 0; index < inputs.length; index++) kept[index] = inline(inputs[index] as OperatingPointInput);
  }
  return kept.length;
}

const { ratio, first, second } = compare(runLibrary, runInline, REPEATS * inputs.length, 41);
print(
  `operatingPoint over inline arithmetic, ${kinds === 1 ? 'one kind of load' : 'mixed kinds'}`,
  ratio,
  'x',
  kinds === 1 ? 1.25 : 1.5,
  `${first.median.toFixed(1)} against ${second.median.toFixed(1)} ns`,
);
