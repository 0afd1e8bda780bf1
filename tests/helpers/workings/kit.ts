/** What random questions are made of. @module */
import { cable } from '../../../src/cable/cable.ts';
import type { CableName } from '../../../src/cable/cables.ts';
import { runResistance, type Segment } from '../../../src/cable/run-resistance.ts';
import type { Load } from '../../../src/circuit/operating-point.ts';
import { awg } from '../../../src/conductor/awg.ts';
import type { Conductor } from '../../../src/conductor/conductor.ts';
import { conductorFromResistance } from '../../../src/conductor/conductor-from-resistance.ts';
import type { PoeClassNumber, PseType } from '../../../src/ethernet/class-table.ts';
import { type PoeClass, poeClass } from '../../../src/ethernet/poe-class.ts';
import type { SlipName, WorkingInputs, WorkingName } from '../../../src/working/index.ts';
import { logUniform, pick, type Random, uniform, whole } from '../random.ts';

const CABLES: readonly CableName[] = ['cat3', 'cat5e', 'cat6', 'cat6a', 'cat7a', 'cord-24', 'cord-26', 'cord-28'];

/** Where on the way to its collapse a line is loaded: often lightly, often close to the limit, up to 1e-6 of it. */
export function loading(random: Random): number {
  return random() < 0.5 ? random() * 0.99 : 1 - logUniform(random, 1e-6, 1);
}

export function temperature(random: Random): number | undefined {
  return random() < 0.2 ? undefined : uniform(random, -20, 75);
}

export function conductor(random: Random): Conductor {
  if (random() < 0.3) return conductorFromResistance({ ohmsPerKilometre: logUniform(random, 0.5, 500) });
  return awg(whole(random, 6, 28), { stranding: pick(random, ['solid', 'stranded']) });
}

export function segment(random: Random): Segment {
  return { cable: cable(pick(random, CABLES)), length: logUniform(random, 0.5, 150), temperature: temperature(random) };
}

/** A load of any kind that a line of that resistance carries. */
export function load(random: Random, V: number, R: number): Load {
  const kind = random();
  if (kind < 0.5) return { power: (loading(random) * V * V) / (4 * R) };
  if (kind < 0.75) return { current: (random() * 0.99 * V) / R };
  return { resistance: R * logUniform(random, 0.01, 1000) };
}

export function poe(random: Random): {
  readonly poeClass: PoeClassNumber;
  readonly pseType: PseType | undefined;
  readonly limits: PoeClass;
} {
  const number = whole(random, 0, 8) as PoeClassNumber;
  const weakest = poeClass(number).type;
  const pseType = random() < 0.5 ? undefined : (whole(random, weakest, 4) as PseType);
  return { poeClass: number, pseType, limits: poeClass(number, { pseType }) };
}

/** A run, or its bare loop, behind which the device draws up to 1e-6 short of collapse. */
export function poweredQuestion(random: Random): WorkingInputs['powerAtPd'] {
  const { poeClass: number, pseType, limits } = poe(random);
  const run = runResistance({ segments: [segment(random), segment(random)], connections: whole(random, 0, 6) });
  const loop = limits.pairs === 4 ? run.fourPair : run.twoPair;
  const pseVoltage = random() < 0.4 ? undefined : uniform(random, 40, 57);
  const V = pseVoltage ?? limits.pseVoltageMin;
  const pdPower = random() < 0.3 ? undefined : (loading(random) * V * V) / (4 * loop);
  return { poeClass: number, pseType, pseVoltage, pdPower, resistance: random() < 0.7 ? run : loop };
}

/** A slip as the core would make it: the same question with the mistake in its input, or the core's own figures put together wrongly. */
export interface Mistake<Name extends WorkingName> {
  readonly slip: SlipName;
  /** Which of the results is answered; the last if absent. */
  readonly of?: string;
  /** What one who slips would hand in; nothing where the slip does not apply. */
  readonly make: (input: WorkingInputs[Name], answer: unknown) => number | undefined;
}

/** Questions of one sheet, by other means than the sheet. */
export interface Asked<Name extends WorkingName> {
  readonly question: (random: Random) => WorkingInputs[Name];
  /** What the core makes of the same question; figures are found in it by the name that a step gives as `core`. */
  readonly answer: (input: WorkingInputs[Name]) => unknown;
  /** Every slip that the sheet lists, and of those that any sheet knows the ones that suit it best. */
  readonly mistakes: readonly Mistake<Name>[];
}

/** The figure of a dotted name, as in `pairs[0].margin` or `fields['operating.loadVoltage'].low`. */
export function figureOf(answer: unknown, name: string): unknown {
  let found = answer;
  for (const [, quoted, part] of name.matchAll(/\['([^']+)'\]|(\w+)/g)) {
    const key = quoted ?? part ?? '';
    found = typeof found === 'object' && found !== null ? (found as Record<string, unknown>)[key] : undefined;
  }
  return found;
}

/** A figure of what the core makes of another question; nothing where it refuses that. */
export function again<Name extends WorkingName>(asked: Asked<Name>, input: WorkingInputs[Name], of: string): number | undefined {
  try {
    return number(figureOf(asked.answer(input), of));
  } catch {
    return undefined;
  }
}

export const FOOT = 0.3048;

/** A number, or nothing. */
export function number(value: unknown): number | undefined {
  return typeof value === 'number' ? value : undefined;
}
