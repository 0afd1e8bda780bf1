/** Random questions for every formula sheet, and the core's answer to each. @module */
import { cable } from '../../src/cable/cable.ts';
import type { CableName } from '../../src/cable/cables.ts';
import { runResistance, type Segment } from '../../src/cable/run-resistance.ts';
import { type Load, operatingPoint } from '../../src/circuit/operating-point.ts';
import { voltageDrop } from '../../src/circuit/voltage-drop.ts';
import { awg } from '../../src/conductor/awg.ts';
import type { Conductor } from '../../src/conductor/conductor.ts';
import { conductorFromResistance } from '../../src/conductor/conductor-from-resistance.ts';
import { loopResistance } from '../../src/conductor/loop-resistance.ts';
import { resistancePerMetre } from '../../src/conductor/resistance-per-metre.ts';
import { resistanceAtTemperature } from '../../src/conductor/temperature-coefficient.ts';
import { uniformWire } from '../../src/conductor/uniform-wire.ts';
import type { PoeClassNumber, PseType } from '../../src/ethernet/class-table.ts';
import { type PoeClass, poeClass } from '../../src/ethernet/poe-class.ts';
import { powerAtPd } from '../../src/ethernet/power-at-pd.ts';
import { psePowerFor } from '../../src/ethernet/pse-power-for.ts';
import { maximumRun } from '../../src/plan/maximum-run.ts';
import { switchBudget } from '../../src/plan/switch-budget.ts';
import type { WorkingInputs, WorkingName } from '../../src/working/index.ts';
import { logUniform, pick, type Random, uniform, whole } from './random.ts';

const CABLES: readonly CableName[] = ['cat3', 'cat5e', 'cat6', 'cat6a', 'cat7a', 'cord-24', 'cord-26', 'cord-28'];

/** Where on the way to its collapse a line is loaded: often lightly, often close to the limit, up to 1e-6 of it. */
function loading(random: Random): number {
  return random() < 0.5 ? random() * 0.99 : 1 - logUniform(random, 1e-6, 1);
}

function temperature(random: Random): number | undefined {
  return random() < 0.2 ? undefined : uniform(random, -20, 75);
}

function conductor(random: Random): Conductor {
  if (random() < 0.3) return conductorFromResistance({ ohmsPerKilometre: logUniform(random, 0.5, 500) });
  return awg(whole(random, 6, 28), { stranding: pick(random, ['solid', 'stranded']) });
}

function segment(random: Random): Segment {
  return { cable: cable(pick(random, CABLES)), length: logUniform(random, 0.5, 150), temperature: temperature(random) };
}

/** A load of any kind that a line of that resistance carries. */
function load(random: Random, V: number, R: number): Load {
  const kind = random();
  if (kind < 0.5) return { power: (loading(random) * V * V) / (4 * R) };
  if (kind < 0.75) return { current: (random() * 0.99 * V) / R };
  return { resistance: R * logUniform(random, 0.01, 1000) };
}

function poe(random: Random): { readonly poeClass: PoeClassNumber; readonly pseType: PseType | undefined; readonly limits: PoeClass } {
  const number = whole(random, 0, 8) as PoeClassNumber;
  const weakest = poeClass(number).type;
  const pseType = random() < 0.5 ? undefined : (whole(random, weakest, 4) as PseType);
  return { poeClass: number, pseType, limits: poeClass(number, { pseType }) };
}

/** A run, or its bare loop, behind which the device draws up to 1e-6 short of collapse. */
function powered(random: Random): WorkingInputs['powerAtPd'] {
  const { poeClass: number, pseType, limits } = poe(random);
  const run = runResistance({ segments: [segment(random), segment(random)], connections: whole(random, 0, 6) });
  const loop = limits.pairs === 4 ? run.fourPair : run.twoPair;
  const pseVoltage = random() < 0.4 ? undefined : uniform(random, 40, 57);
  const V = pseVoltage ?? limits.pseVoltageMin;
  const pdPower = random() < 0.3 ? undefined : (loading(random) * V * V) / (4 * loop);
  return { poeClass: number, pseType, pseVoltage, pdPower, resistance: random() < 0.7 ? run : loop };
}

/** One random question for each sheet. */
export const questions: { readonly [Name in WorkingName]: (random: Random) => WorkingInputs[Name] } = {
  awg: (random) => ({
    size: whole(random, -3, 40),
    stranding: pick(random, ['solid', 'stranded', undefined]),
    family: pick(random, ['formula', 'astm-b258', undefined]),
    material: pick(random, ['annealed-copper', 'aluminium', undefined]),
  }),
  uniformWire: (random) => {
    const all = {
      resistance: logUniform(random, 1e-3, 1e3),
      resistivity: logUniform(random, 0.015, 1),
      length: logUniform(random, 0.1, 1e4),
      area: logUniform(random, 0.01, 300),
    };
    return { ...all, [pick(random, ['resistance', 'resistivity', 'length', 'area'])]: undefined };
  },
  resistancePerMetre: (random) => ({ conductor: conductor(random), temperature: temperature(random) }),
  resistanceAtTemperature: (random) => ({
    resistance: logUniform(random, 1e-3, 1e4),
    temperature: uniform(random, -20, 100),
    coefficient: uniform(random, 0.0001, 0.006),
    coefficientTemperature: pick(random, [undefined, 0, 18, 25]),
    at: uniform(random, -40, 150),
  }),
  loopResistance: (random) => ({ conductor: conductor(random), length: logUniform(random, 0.1, 5000), temperature: temperature(random) }),
  runResistance: (random) => ({
    segments: Array.from({ length: random() < 0.03 ? 25 : whole(random, 1, 4) }, () => segment(random)),
    connections: pick(random, [undefined, 0, 2, 6]),
    connectionResistance: pick(random, [undefined, 0, 0.02]),
    basis: pick(random, [undefined, 'nominal', 'maximum']),
  }),
  operatingPoint: (random) => {
    const supplyVoltage = logUniform(random, 3, 400);
    const resistance = logUniform(random, 1e-3, 1e3);
    return { supplyVoltage, resistance, load: load(random, supplyVoltage, resistance) };
  },
  mostPower: (random) => {
    const supplyVoltage = logUniform(random, 3, 400);
    const resistance = logUniform(random, 1e-3, 1e3);
    return { supplyVoltage, resistance, load: { power: Math.max(1e-3, (loading(random) * supplyVoltage ** 2) / (4 * resistance)) } };
  },
  voltageDrop: (random) => {
    const supplyVoltage = uniform(random, 5, 60);
    const length = logUniform(random, 1, 2000);
    const run = { length, temperature: temperature(random) };
    const out = conductor(random);
    const back = conductor(random);
    const legs = random() < 0.7 ? { conductor: out } : { out, back };
    const short = voltageDrop({ supplyVoltage, ...run, ...legs, load: { resistance: 0 } });
    if (!short.feasible) throw new Error('a short carries no power');
    return { supplyVoltage, ...run, ...legs, load: load(random, supplyVoltage, supplyVoltage / short.current) };
  },
  powerAtPd: powered,
  psePowerFor: (random) => {
    const { pseVoltage, ...input } = powered(random);
    return random() < 0.2
      ? { poeClass: input.poeClass }
      : { ...input, pseVoltage: pseVoltage === undefined ? undefined : { low: pseVoltage, high: 57 } };
  },
  maximumRun: (random) => {
    if (random() < 0.4) {
      const supplyVoltage = uniform(random, 5, 60);
      const out = conductor(random);
      return {
        supplyVoltage: random() < 0.5 ? supplyVoltage : { low: supplyVoltage, high: 70 },
        ...(random() < 0.7 ? { conductor: out } : { out, back: conductor(random) }),
        temperature: temperature(random),
        load: pick(random, [
          { power: logUniform(random, 0.1, 100) },
          { current: logUniform(random, 0.01, 5) },
          { resistance: logUniform(random, 1, 1e4) },
        ]),
        minimumVoltage: random() < 0.7 ? supplyVoltage * uniform(random, 0.4, 0.99) : undefined,
        permittedDrop: random() < 0.5 ? uniform(random, 0.01, 0.5) : undefined,
        maximumResistance: random() < 0.3 ? logUniform(random, 0.5, 50) : undefined,
        connections: whole(random, 0, 4),
        connectionResistance: pick(random, [undefined, 0.01]),
      };
    }
    const { poeClass: number, pseType, limits } = poe(random);
    return {
      cable: cable(pick(random, ['cat5e', 'cat6', 'cat6a', 'cat7a'])),
      poeClass: number,
      pseType,
      pdPower: random() < 0.5 ? undefined : limits.pdPower * random(),
      pseVoltage: random() < 0.5 ? undefined : uniform(random, 44, 57),
      temperature: random() < 0.2 ? undefined : uniform(random, 0, 60),
      cords: Array.from({ length: whole(random, 0, 3) }, () => ({
        cable: cable(pick(random, ['cord-24', 'cord-26'])),
        length: uniform(random, 0.5, 5),
      })),
      connections: whole(random, 0, 4),
      minimumVoltage: random() < 0.3 ? uniform(random, 36, 44) : undefined,
      maximumResistance:
        random() < 0.3 ? { ohms: uniform(random, 5, 25), loop: pick(random, ['pairLoop', 'twoPair', 'unstated']) } : undefined,
      cabling: pick(random, [undefined, 'ISO/IEC 11801', 'none']),
    };
  },
  switchBudget: (random) => ({
    capacity: whole(random, 60, 1500),
    basis: 'class',
    reserve: pick(random, [undefined, 0.1]),
    policy: pick(random, [undefined, 'fill']),
    ports: Array.from({ length: whole(random, 1, 48) }, (_, index) => ({
      port: index + 1,
      poeClass: whole(random, 0, 8) as PoeClassNumber,
      priority: pick(random, [undefined, 'critical', 'high', 'low']),
    })),
  }),
};

/** What the core makes of the same question; figures are found in it by the name that a step gives as `core`. */
export const coreAnswers: { readonly [Name in WorkingName]: (input: WorkingInputs[Name]) => unknown } = {
  awg: ({ size, ...options }) => awg(size, options),
  uniformWire,
  resistancePerMetre: ({ conductor: of, temperature: at }) => ({ resistancePerMetre: resistancePerMetre(of, at) }),
  resistanceAtTemperature: ({ at, ...line }) => ({ resistanceAtTemperature: resistanceAtTemperature(line, at) }),
  loopResistance: (input) => ({ loopResistance: loopResistance(input), resistancePerMetre: undefined }),
  runResistance,
  operatingPoint,
  mostPower: (input) => ({
    ...operatingPoint(input),
    maximumLoadPower: mostOf(input.supplyVoltage, input.resistance),
  }),
  voltageDrop,
  powerAtPd: (input) => {
    const answer = powerAtPd(input);
    return answer.feasible ? answer : { ...answer, ...answer.operating, feasible: false };
  },
  psePowerFor: (input) => {
    const answer = psePowerFor(input);
    const { average } = answer;
    return average.feasible || average.atLowest.feasible ? { ...answer, feasible: true } : { ...answer, ...average.atLowest };
  },
  maximumRun: (input) => {
    const answer = maximumRun(input);
    return answer.feasible && answer.unbounded ? { ...answer, feasible: false } : answer;
  },
  switchBudget,
};

function mostOf(supplyVoltage: number, resistance: number): number {
  const point = operatingPoint({ supplyVoltage, resistance, load: { power: 1e12 } });
  if (point.feasible) throw new Error('a line that carries a terawatt');
  return point.maximumLoadPower;
}

/** The figure of a dotted name. */
export function figureOf(answer: unknown, name: string): unknown {
  let found = answer;
  for (const part of name.split('.'))
    found = typeof found === 'object' && found !== null ? (found as Record<string, unknown>)[part] : undefined;
  return found;
}

/** Every name of a sheet. */
export const NAMES: readonly WorkingName[] = Object.keys(questions) as WorkingName[];

/** A question and the answer to it, of one name: the pair is typed together or not at all. */
export function asked(name: WorkingName, random: Random): { readonly input: never; readonly answer: unknown } {
  const input = questions[name](random) as never;
  return { input, answer: (coreAnswers[name] as (of: never) => unknown)(input) };
}
