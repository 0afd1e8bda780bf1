/** Random questions, the core's answers and what people get wrong: one unknown of a run. @module */
import { farEndFaultCurrent } from '../../../src/circuit/far-end-fault.ts';
import { voltageDrop } from '../../../src/circuit/voltage-drop.ts';
import type { Conductor } from '../../../src/conductor/conductor.ts';
import { toMaximum } from '../../../src/conductor/to-maximum.ts';
import { leastPermittedDrop } from '../../../src/plan/least-permitted-drop.ts';
import { logUniform, pick, type Random, uniform, whole } from '../random.ts';
import { type Asked, again, conductor, figureOf, load, number, temperature } from './kit.ts';

/** One wire for both ways, or one for each. */
const wires = (random: Random): { conductor: Conductor } | { out: Conductor; back: Conductor } =>
  random() < 0.7 ? { conductor: conductor(random) } : { out: conductor(random), back: conductor(random) };

/** What a line comes to at its most, by the current into a short at its end. */
const ohms = (line: { length: number; temperature?: number | undefined } & ReturnType<typeof wires>): number => {
  const most = 'conductor' in line ? { conductor: toMaximum(line.conductor) } : { out: toMaximum(line.out), back: toMaximum(line.back) };
  const short = voltageDrop({ ...line, ...most, supplyVoltage: 1, load: { resistance: 0 } } as Parameters<typeof voltageDrop>[0]);
  if (!short.feasible) throw new Error('a short carries no power');
  return 1 / short.current;
};

const farEndFaultAsked: Asked<'farEndFaultCurrent'> = {
  question: (random) => {
    const supplyVoltage = uniform(random, 5, 60);
    const line = { ...wires(random), length: logUniform(random, 1, 2000), temperature: temperature(random) };
    const sourceResistance = pick(random, [undefined, 0, logUniform(random, 0.01, 2)]);
    const current = supplyVoltage / (ohms(line) + (sourceResistance ?? 0));
    // A margin of next to nothing keeps only the last places of two like currents: it is asked about from 1 % up.
    const times = logUniform(random, 1.01, 20);
    return { ...line, supplyVoltage, sourceResistance, tripCurrent: random() < 0.6 ? current / times : current * times };
  },
  answer: farEndFaultCurrent,
  mistakes: [
    {
      slip: 'one-way-length',
      of: 'faultCurrent',
      make: (input) =>
        input.conductor === undefined ? undefined : again(farEndFaultAsked, { ...input, length: input.length / 2 }, 'faultCurrent'),
    },
    {
      slip: 'one-way-length',
      of: 'longestProtected',
      make: (input, answer) => (input.conductor === undefined ? undefined : 2 * (number(figureOf(answer, 'longestProtected')) ?? 0)),
    },
    {
      slip: 'cold-resistance',
      of: 'faultCurrent',
      make: (input) => again(farEndFaultAsked, { ...input, temperature: 20 }, 'faultCurrent'),
    },
    {
      slip: 'cold-resistance',
      of: 'longestProtected',
      make: (input) => again(farEndFaultAsked, { ...input, temperature: 20 }, 'longestProtected'),
    },
    {
      slip: 'source-resistance-left-out',
      make: (input) => again(farEndFaultAsked, { ...input, sourceResistance: 0 }, 'check.margin'),
    },
  ],
};

const leastDropAsked: Asked<'leastPermittedDrop'> = {
  question: (random) => {
    const low = uniform(random, 5, 60);
    const line = { ...wires(random), length: logUniform(random, 1, 2000), temperature: temperature(random) };
    const joints = { connections: whole(random, 0, 4), connectionResistance: pick(random, [undefined, 0.01]) };
    const R = ohms(line) + 2 * joints.connections * (joints.connectionResistance ?? 0);
    const carried = load(random, low, R);
    // Now and then more than the line carries.
    const beyond = random() < 0.05 && carried.power !== undefined ? { power: (low ** 2 / (4 * R)) * uniform(random, 1.01, 2) } : carried;
    return { ...line, ...joints, supplyVoltage: random() < 0.4 ? low : { low, high: low * uniform(random, 1, 1.5) }, load: beyond };
  },
  answer: leastPermittedDrop,
  mistakes: [
    {
      slip: 'one-way-length',
      make: (input) =>
        input.conductor === undefined || (input.connections ?? 0) > 0
          ? undefined
          : again(leastDropAsked, { ...input, length: input.length / 2 }, 'volts'),
    },
    { slip: 'cold-resistance', make: (input) => again(leastDropAsked, { ...input, temperature: 20 }, 'volts') },
    {
      slip: 'power-at-wrong-end',
      make: ({ supplyVoltage, load: { power }, ...rest }) => {
        if (power === undefined) return undefined;
        // The same current, held whatever the voltage.
        const low = typeof supplyVoltage === 'object' ? supplyVoltage.low : supplyVoltage;
        return again(
          leastDropAsked,
          { ...rest, supplyVoltage, load: { current: power / low } } as typeof rest & { supplyVoltage: number; load: { current: number } },
          'volts',
        );
      },
    },
    {
      slip: 'unstable-root',
      make: ({ supplyVoltage, load: { power }, ...rest }) => {
        if (power === undefined) return undefined;
        // Both roots together are the supply voltage: the larger of what the other one leaves.
        const at = (V: number): number =>
          V - (again(leastDropAsked, { ...rest, supplyVoltage: V, load: { power } } as never, 'volts') ?? V);
        return typeof supplyVoltage === 'object' ? Math.max(at(supplyVoltage.low), at(supplyVoltage.high)) : at(supplyVoltage);
      },
    },
    {
      slip: 'percent-of-wrong-voltage',
      of: 'fraction',
      make: (_input, answer) => {
        const fraction = number(figureOf(answer, 'fraction')) ?? 0;
        return fraction / (1 - fraction);
      },
    },
  ],
};

/** By name. */
export const solving: { readonly [Name in 'farEndFaultCurrent' | 'leastPermittedDrop']: Asked<Name> } = {
  farEndFaultCurrent: farEndFaultAsked,
  leastPermittedDrop: leastDropAsked,
};
