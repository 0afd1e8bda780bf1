/** Runs with one quantity left open, at random, and what mistakes make of them. @module */
import { type Cable, cable } from '../../../src/cable/cable.ts';
import { operatingPoint } from '../../../src/circuit/operating-point.ts';
import { voltageDrop } from '../../../src/circuit/voltage-drop.ts';
import { awg } from '../../../src/conductor/awg.ts';
import type { Conductor } from '../../../src/conductor/conductor.ts';
import { toMaximum } from '../../../src/conductor/to-maximum.ts';
import type { PoeClass } from '../../../src/ethernet/poe-class.ts';
import type { PoweredFacts as PoweredRunInput } from '../../../src/plan/powered-input.ts';
import { checkPoweredRun } from '../../../src/plan/powered-run.ts';
import type { SmallestCableFacts as SmallestCableInput } from '../../../src/plan/smallest-conductor.ts';
import type { PermittedDrop, TwoWireRunInput, UnequalTwoWireRunInput } from '../../../src/plan/two-wire-input.ts';
import { logUniform, pick, type Random, uniform, whole } from '../random.ts';
import { conductor, load, poe, segment, temperature } from './kit.ts';

/** One wire for both ways, or one for each. */
export const wires = (random: Random): { conductor: Conductor } | { out: Conductor; back: Conductor } =>
  random() < 0.7 ? { conductor: conductor(random) } : { out: conductor(random), back: conductor(random) };

/** What the class of a device and its port goes by. */
export type Classed = Pick<PoweredRunInput, 'poeClass' | 'pseType' | 'pairs' | 'pdPower'>;

/** The limits of the class that the port grants. */
export const limitsOf = ({ poeClass, pseType, pairs, pdPower }: Classed): PoeClass =>
  checkPoweredRun({ poeClass, pseType, pairs, pdPower, installed: [{ cable: cable('cat5e'), length: 0 }], cabling: 'none' }).classLimits;

/** What a line comes to at its most, by the current into a short at its end. */
export const ohms = (line: { length: number; temperature?: number | undefined } & ReturnType<typeof wires>): number => {
  const most =
    'conductor' in line
      ? { conductor: toMaximum({ conductor: line.conductor }) }
      : { out: toMaximum({ conductor: line.out }), back: toMaximum({ conductor: line.back }) };
  const { length, temperature } = line;
  const short = voltageDrop({ ...most, length, temperature, supplyVoltage: 1, load: { resistance: 0 } } as Parameters<
    typeof voltageDrop
  >[0]);
  if (!short.feasible) throw new Error('a short carries no power');
  return 1 / short.current;
};

/** A run to a powered device: often as it comes without rules of cabling, now and then a short one that meets them. */
export const openRun = (random: Random): PoweredRunInput => {
  const { poeClass, pseType, limits } = poe(random);
  const common = {
    poeClass,
    pseType,
    pdPower: random() < 0.5 ? undefined : limits.pdPower * (random() < 0.9 ? random() : uniform(random, 1.01, 1.2)),
    pseVoltage: random() < 0.5 ? undefined : uniform(random, 44, 57),
    minimumVoltage: random() < 0.3 ? uniform(random, 34, 44) : undefined,
  };
  if (random() < 0.15) {
    return {
      ...common,
      installed: [{ cable: cable('cat6'), length: uniform(random, 5, 80) }],
      cabling: pick(random, [undefined, 'ISO/IEC 11801']),
    };
  }
  return {
    ...common,
    installed: Array.from({ length: whole(random, 1, 2) }, () => ({ ...segment(random), length: uniform(random, 5, 200) })),
    cords:
      random() < 0.4
        ? undefined
        : [{ cable: cable(pick(random, ['cord-24', 'cord-26'])), length: uniform(random, 0.5, 20), temperature: temperature(random) }],
    connections: pick(random, [undefined, 0, 2, 4]),
    connectionResistance: pick(random, [undefined, 0.05]),
    maximumResistance:
      random() < 0.2 ? { ohms: uniform(random, 3, 40), loop: pick(random, ['pairLoop', 'twoPair', 'fourPair', 'unstated']) } : undefined,
    cabling: 'none',
  };
};

/** Often a small fraction, which then governs; now and then volts, or none. */
const permittedDrop = (random: Random, V: number): PermittedDrop | undefined => {
  const kind = random();
  if (kind < 0.2) return undefined;
  return kind < 0.8 ? logUniform(random, 0.02, 0.6) : { volts: V * logUniform(random, 0.01, 1.3) };
};

/** A line of two wires, with a load that it carries at some supply voltage, and limits near by. */
export const openLine = (random: Random): TwoWireRunInput | UnequalTwoWireRunInput => {
  const V = uniform(random, 5, 60);
  const line = { ...wires(random), length: logUniform(random, 1, 2000), temperature: temperature(random) };
  const joints = { connections: pick(random, [undefined, 0, 0, 0, 2]), connectionResistance: pick(random, [undefined, 0.01]) };
  const R = ohms(line) + 2 * (joints.connections ?? 0) * (joints.connectionResistance ?? 0);
  const drawn = load(random, V, R);
  const point = operatingPoint({ supplyVoltage: V, resistance: R, load: drawn });
  if (!point.feasible) throw new Error('a load that the line does not carry');
  return {
    ...line,
    ...joints,
    supplyVoltage: random() < 0.5 ? V : { low: V, high: V * uniform(random, 1, 1.3) },
    load: drawn,
    minimumVoltage: random() < 0.5 ? V * uniform(random, 0.4, 1) : undefined,
    maximumVoltage: random() < 0.3 ? V * uniform(random, 0.9, 3) : undefined,
    permittedDrop: permittedDrop(random, V),
    ampacity: random() < 0.3 ? point.current * uniform(random, 0.9, 3) : undefined,
    maximumResistance: random() < 0.3 ? R * logUniform(random, 0.6, 10) : undefined,
  };
};

/** Without limits there is no answer, and the working says so. */
export const bounded = <Answer extends { readonly feasible: boolean; readonly unbounded?: boolean | undefined }>(answer: Answer): object =>
  answer.feasible && answer.unbounded === true ? { ...answer, feasible: false } : answer;

/** The greatest, or nothing of none. */
export const greatest = (values: readonly number[]): number | undefined => (values.length === 0 ? undefined : Math.max(...values));

/** The same question with every ohm of the run twice. */
export const doubled = (input: SmallestCableInput): SmallestCableInput => ({
  ...input,
  length: input.length * 2,
  cords: input.cords?.map((cord) => ({ ...cord, length: cord.length * 2 })),
  connectionResistance: (input.connectionResistance ?? 0.2) * 2,
});

/** Cables of no standard, as a maker might offer them: each with a third more resistance than the one before. */
export const someCables = (least: number): Cable[] =>
  Array.from({ length: 6 }, (_one, index) => ({
    ...cable('cat6'),
    name: `cable-${index + 1}`,
    title: `Cable ${index + 1}`,
    maximumResistancePerMetre: least * (4 / 3) ** index,
  }));

/** Wires one gauge apart, one thicker than one of so many ohms and the others thinner. */
export const gaugesAround = (random: Random, resistancePerMetre: number): Conductor[] => {
  const { resistancePerMetre: ofOne } = awg(18);
  const step = awg(19).resistancePerMetre / ofOne;
  const gauge = Math.round(18 + Math.log(resistancePerMetre / ofOne) / Math.log(step));
  const thickest = Math.min(Math.max(gauge - 1, 0), 31);
  return Array.from({ length: 6 }, (_one, index) => awg(thickest + index, { stranding: pick(random, ['solid', 'stranded']) }));
};
