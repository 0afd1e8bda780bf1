/** Random questions, the core's answers and what people get wrong: one unknown of a run. @module */

import type { Cable } from '../../../src/cable/cable.ts';
import { runResistance } from '../../../src/cable/run-resistance.ts';
import { farEndFaultCurrent } from '../../../src/circuit/far-end-fault.ts';
import { operatingPoint } from '../../../src/circuit/operating-point.ts';
import { highestLoad } from '../../../src/plan/highest-load.ts';
import { highestTemperature } from '../../../src/plan/highest-temperature.ts';
import { leastPermittedDrop } from '../../../src/plan/least-permitted-drop.ts';
import { lowestSupplyVoltage } from '../../../src/plan/lowest-supply-voltage.ts';
import { maximumRun } from '../../../src/plan/maximum-run.ts';
import type { PoweredFacts as PoweredRunInput } from '../../../src/plan/powered-input.ts';
import { smallestConductor } from '../../../src/plan/smallest-conductor.ts';
import { withCables } from '../../../src/working/engine/with-cables.ts';
import type { WorkingInputs } from '../../../src/working/index.ts';
import { logUniform, pick, type Random, uniform, whole } from '../random.ts';
import { type Asked, again, conductor, figureOf, load, number, segment, temperature } from './kit.ts';
import { bounded, doubled, gaugesAround, greatest, limitsOf, ohms, openLine, openRun, someCables, wires } from './open-runs.ts';
import { coolness, coolnessOfLine, loadsOfLine, loadsOfRun, lowOf, remembered, suppliesOfLine, suppliesOfRun } from './scaled.ts';

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
      slip: 'voltage-for-drop',
      make: ({ supplyVoltage, load: { resistance } }, answer) => {
        if (resistance !== undefined) return undefined;
        const low = typeof supplyVoltage === 'object' ? supplyVoltage.low : supplyVoltage;
        return low - (number(figureOf(answer, 'volts')) ?? Number.NaN);
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

type Unsupplied = WorkingInputs['lowestSupplyVoltage'];
type Supplied = ReturnType<typeof lowestSupplyVoltage>;
/** The highest of what the limits ask for with so many times the ohms. */
const supplyWith = (input: Unsupplied, answer: unknown, times: number): number | undefined => {
  const isLine = 'load' in input;
  const volts = greatest(isLine ? suppliesOfLine(answer as Supplied, times, input) : suppliesOfRun(answer as Supplied, times, input));
  const most = isLine ? Math.min(input.maximumVoltage ?? 1000, 1000) : 57;
  return volts !== undefined && volts <= most ? volts : undefined;
};

const lowestSupplyAsked: Asked<'lowestSupplyVoltage'> = {
  question: (random) => {
    if (random() < 0.5) {
      const { supplyVoltage: _, ...line } = openLine(random);
      // A resistance meets these only up to some voltage: there is no lowest.
      if (line.load.resistance === undefined) return line as Unsupplied;
      const permittedDrop = random() < 0.2 ? uniform(random, 0.01, 0.6) : undefined;
      return { ...line, minimumVoltage: uniform(random, 5, 40), permittedDrop, ampacity: undefined } as Unsupplied;
    }
    const { pseVoltage: _, ...run } = openRun(random);
    // Mostly short enough that a port may give what is needed.
    const times = uniform(random, 0.2, 1);
    return { ...run, installed: run.installed.map((piece) => ({ ...piece, length: piece.length * times })) };
  },
  answer: (input) => bounded(lowestSupplyVoltage(input)),
  mistakes: [
    {
      slip: 'one-way-length',
      make: (input, answer) =>
        'load' in input && input.conductor !== undefined && (input.connections ?? 0) === 0 ? supplyWith(input, answer, 0.5) : undefined,
    },
    {
      slip: 'cold-resistance',
      make: (input, answer) => supplyWith(input, answer, 'load' in input ? coolnessOfLine(input) : coolness(input as PoweredRunInput)),
    },
    {
      slip: 'percent-of-wrong-voltage',
      make: (input, answer) => {
        if (!('load' in input) || typeof input.permittedDrop !== 'number' || input.load.resistance !== undefined) return undefined;
        const k = input.permittedDrop;
        const wrong = k / (1 + k);
        const { power } = input.load;
        const times = power === undefined ? k / wrong : Math.sqrt((k * (1 - k)) / (wrong * (1 - wrong)));
        // A power that may lose more than half bounds nothing, less than half of it does.
        return power !== undefined && k > 0.5
          ? undefined
          : greatest(
              (answer as Supplied).limits.flatMap(({ limit, value }) =>
                value === undefined ? [] : [limit === 'voltage-drop' ? value * times : value],
              ),
            );
      },
    },
    {
      slip: 'pair-loop-for-pairset',
      make: (input, answer) => ('installed' in input && limitsOf(input).pairs === 2 ? supplyWith(input, answer, 2) : undefined),
    },
    {
      slip: 'pairset-for-four-pair',
      make: (input, answer) => ('installed' in input && limitsOf(input).pairs === 4 ? supplyWith(input, answer, 2) : undefined),
    },
    {
      slip: 'class-power-for-pd-power',
      make: (input, answer) => {
        if (!('installed' in input)) return undefined;
        const names = ({ limits }: Supplied): string => limits.flatMap(({ limit, value }) => (value === undefined ? [] : [limit])).join();
        const mistaken = lowestSupplyVoltage({ ...input, pdPower: limitsOf(input).psePowerLimit });
        // What the port may source is then no limit of its own.
        const own = (of: Supplied): Supplied => ({ ...of, limits: of.limits.filter(({ limit }) => limit !== 'pse-power') });
        return names(own(mistaken)) === names(own(answer as Supplied))
          ? greatest(own(mistaken).limits.flatMap(({ value }) => value ?? []))
          : undefined;
      },
    },
  ],
};

type Unloaded = WorkingInputs['highestLoad'];
type Loaded = ReturnType<typeof highestLoad>;
/** The least of the limits, or of resistances the greatest. */
const mostOf = (input: Unloaded, values: readonly number[]): number | undefined => {
  if (values.length === 0) return undefined;
  return 'kind' in input && input.kind === 'resistance' ? Math.max(...values) : Math.min(...values);
};
const loadWith = (input: Unloaded, answer: unknown, times: number): number | undefined =>
  mostOf(input, 'length' in input ? loadsOfLine(answer as Loaded, times, input) : loadsOfRun(answer as Loaded, times, input));
/** The limits with each of those that are a voltage at the device changed by a rule. */
const valuesBy = (answer: unknown, rule: (limit: string, value: number) => number): readonly number[] =>
  (answer as Loaded).limits.flatMap(({ limit, value }) => (value === undefined ? [] : [rule(limit, value)]));

const highestLoadAsked: Asked<'highestLoad'> = {
  question: (random) => {
    if (random() < 0.42) {
      const { load: _, ...line } = openLine(random);
      return { ...line, kind: pick(random, [undefined, 'power', 'current', 'resistance']) } as Unloaded;
    }
    const { pdPower: _, ...run } = openRun(random);
    // Long enough that not the class alone bounds it.
    const times = run.cabling === 'none' ? uniform(random, 1, 4) : 1;
    return { ...run, installed: run.installed.map((piece) => ({ ...piece, length: piece.length * times })) };
  },
  answer: (input) => bounded(highestLoad(input)),
  mistakes: [
    {
      slip: 'one-way-length',
      make: (input, answer) =>
        'length' in input && input.conductor !== undefined && (input.connections ?? 0) === 0 ? loadWith(input, answer, 0.5) : undefined,
    },
    {
      slip: 'cold-resistance',
      make: (input, answer) => loadWith(input, answer, 'length' in input ? coolnessOfLine(input) : coolness(input as PoweredRunInput)),
    },
    {
      slip: 'power-at-wrong-end',
      make: (input, answer) => {
        if (!('length' in input) || (input.kind ?? 'power') !== 'power') return undefined;
        // The current that the drop allows, times the voltage of the supply.
        const low = lowOf(input.supplyVoltage);
        const { minimumVoltage = low, permittedDrop = 0 } = input;
        const left = typeof permittedDrop === 'object' ? low - permittedDrop.volts : low * (1 - permittedDrop);
        const times: Readonly<Record<string, number>> = { 'device-voltage': low / minimumVoltage, 'voltage-drop': low / left };
        return mostOf(
          input,
          valuesBy(answer, (limit, value) => value * (times[limit] ?? 1)),
        );
      },
    },
    {
      slip: 'percent-of-wrong-voltage',
      make: (input, answer) => {
        if (!('length' in input) || typeof input.permittedDrop !== 'number') return undefined;
        const { permittedDrop: k, kind = 'power' } = input;
        // A power that may lose more than half is bounded by the collapse alone.
        if (kind === 'power' && k > 0.5) return undefined;
        const wrong = k / (1 + k);
        const allowed = (share: number): number =>
          kind === 'power' ? share * (1 - share) : kind === 'current' ? share : (1 - share) / share;
        return mostOf(
          input,
          valuesBy(answer, (limit, value) => (limit === 'voltage-drop' ? (value * allowed(wrong)) / allowed(k) : value)),
        );
      },
    },
    {
      slip: 'pair-loop-for-pairset',
      make: (input, answer) => ('installed' in input && limitsOf(input).pairs === 2 ? loadWith(input, answer, 2) : undefined),
    },
    {
      slip: 'pairset-for-four-pair',
      make: (input, answer) => ('installed' in input && limitsOf(input).pairs === 4 ? loadWith(input, answer, 2) : undefined),
    },
    {
      slip: 'class-power-for-pd-power',
      make: (input, answer) =>
        'installed' in input
          ? mostOf(
              input,
              valuesBy(answer, (limit, value) => (limit === 'pd-power' ? limitsOf(input).psePowerLimit : value)),
            )
          : undefined,
    },
  ],
};

type Tempered = WorkingInputs['highestTemperature'];
type Hottest = ReturnType<typeof highestTemperature>;
const hottestOf = remembered((input: Tempered): Hottest => highestTemperature(input));
/** Near 0 °C a temperature has lost its figures to the difference from 20 °C: it is asked about from 1 K away. */
const isNearZero = (input: Tempered): boolean => hottestOf(input).limits.some(({ value }) => value !== undefined && Math.abs(value) < 1);

/** The ohms of the wire that changes, those of each kelvin of it, and those of all else, as the core has them. */
const partsOf = (input: Tempered): { readonly wire: number; readonly perKelvin: number; readonly rest: number } => {
  const at = (degrees: number): number => {
    if ('length' in input) return ohms({ ...input, temperature: degrees } as Parameters<typeof ohms>[0]);
    return runResistance({ segments: input.installed.map((piece) => ({ ...piece, temperature: degrees })), connections: 0 }).twoPair;
  };
  const wire = at(20);
  const perKelvin = (at(120) - wire) / 100;
  if ('length' in input) return { wire, perKelvin, rest: 2 * (input.connections ?? 0) * (input.connectionResistance ?? 0) };
  const { cords = [], connections, connectionResistance } = input;
  return { wire, perKelvin, rest: runResistance({ segments: cords, connections, connectionResistance }).twoPair };
};
/** The temperature at which the wire has so many ohms more than what the answer allows it, or so many times that. */
const temperatureWith = (input: Tempered, answer: unknown, mistaken: (allowed: number, rest: number) => number): number | undefined => {
  const { temperature: right } = answer as { readonly temperature?: number };
  if (right === undefined) return undefined;
  const { wire, perKelvin, rest } = partsOf(input);
  const wrong = 20 + (mistaken(wire + perKelvin * (right - 20), rest) - wire) / perKelvin;
  return wrong >= -100 && wrong <= 400 ? wrong : undefined;
};

/** A line whose limits lie near what it is at some temperature. */
const temperedLine = (random: Random): Tempered => {
  const input = openLine(random);
  const { connections = 0, connectionResistance = 0 } = input;
  const V = lowOf(input.supplyVoltage);
  const wire = conductor(random);
  const own = input.conductor === undefined ? { out: { ...input.out }, back: { ...input.back } } : { conductor: wire };
  const resistance =
    ohms({ ...own, length: input.length, temperature: uniform(random, -60, 200) }) + 2 * connections * connectionResistance;
  const drawn = random() < 0.6 ? { power: ((V * V) / (4 * resistance)) * uniform(random, 0.1, 0.9) } : load(random, V, resistance);
  const point = operatingPoint({ supplyVoltage: V, resistance, load: drawn });
  if (!point.feasible) throw new Error('a load that the line does not carry');
  const near = (): number => uniform(random, 0.9, 1.02);
  const fraction = Math.min(point.dropFraction / near(), 0.99);
  const most = point.current * (drawn.power === undefined ? uniform(random, 1, 3) : near());
  return {
    ...input,
    ...own,
    load: drawn,
    minimumVoltage: random() < 0.5 ? point.loadVoltage * near() : undefined,
    permittedDrop: pick(random, [undefined, fraction, fraction, { volts: point.voltageDrop / near() }]),
    ampacity: random() < 0.3 ? most : undefined,
    maximumResistance: random() < 0.3 ? resistance / near() : undefined,
  } as Tempered;
};

/** A run as long as its limits allow at some temperature. */
const temperedRun = (random: Random): Tempered => {
  const input: PoweredRunInput = { ...openRun(random), cabling: 'none' };
  const [{ cable: own } = segment(random)] = input.installed;
  const { installed: _, ...open } = input;
  const longest = maximumRun({ ...open, cable: own, temperature: uniform(random, pick(random, [-60, 310, 310]), 395) });
  if (!longest.feasible || longest.unbounded || longest.length < 1) return input;
  const length = longest.length * uniform(random, 0.97, 1);
  const share = pick(random, [1, uniform(random, 0.1, 0.9)]);
  const pieces = share === 1 ? [length] : [length * share, length * (1 - share)];
  return { ...input, installed: pieces.map((piece) => ({ cable: own, length: piece })) };
};

const highestTemperatureAsked: Asked<'highestTemperature'> = {
  question: (random) => {
    for (;;) {
      const input = random() < 0.5 ? temperedLine(random) : temperedRun(random);
      if (!isNearZero(input)) return input;
    }
  },
  answer: (input) => bounded(hottestOf(input)),
  mistakes: [
    {
      slip: 'one-way-length',
      make: (input, answer) =>
        'length' in input && input.conductor !== undefined ? temperatureWith(input, answer, (allowed) => 2 * allowed) : undefined,
    },
    {
      slip: 'cold-resistance',
      make: (input, answer) => {
        if (!('installed' in input) || input.cords === undefined) return undefined;
        const { connections, connectionResistance } = input;
        const segments = input.cords.map((cord) => ({ ...cord, temperature: 20 }));
        const cool = runResistance({ segments, connections, connectionResistance }).twoPair;
        return temperatureWith(input, answer, (allowed, rest) => allowed + rest - cool);
      },
    },
    {
      slip: 'power-at-wrong-end',
      make: (input) => {
        if (!('length' in input) || input.load.power === undefined) return undefined;
        const low = lowOf(input.supplyVoltage);
        const { power } = input.load;
        const { minimumVoltage, permittedDrop, ampacity } = input;
        const dropped =
          permittedDrop === undefined ? [] : [typeof permittedDrop === 'object' ? low - permittedDrop.volts : low * (1 - permittedDrop)];
        const leastVoltages = [minimumVoltage ?? [], dropped, ampacity === undefined ? [] : power / ampacity].flat();
        if (leastVoltages.length === 0 || leastVoltages.some((least) => least > low || 2 * least < low)) return undefined;
        // What the mistaken current leaves for the line, as if a data sheet had stated it.
        const ohmsLeft = Math.min(...leastVoltages.map((least) => ((low - least) * low) / power));
        if (!(ohmsLeft < low ** 2 / (4 * power))) return undefined;
        const { wire, perKelvin, rest } = partsOf(input);
        return 20 + (Math.min(ohmsLeft, input.maximumResistance ?? ohmsLeft) - rest - wire) / perKelvin;
      },
    },
    {
      slip: 'percent-of-wrong-voltage',
      make: (input, answer) => {
        if (!('length' in input) || typeof input.permittedDrop !== 'number' || input.permittedDrop > 0.5) return undefined;
        const k = input.permittedDrop;
        const allowed = (share: number): number =>
          input.load.power !== undefined ? share * (1 - share) : input.load.current !== undefined ? share : share / (1 - share);
        const times = allowed(k / (1 + k)) / allowed(k);
        const ofDrop = (answer as Hottest).limits.find(({ limit }) => limit === 'voltage-drop')?.value;
        const others = (answer as Hottest).limits.flatMap(({ limit, value }) =>
          value === undefined || limit === 'voltage-drop' ? [] : [value],
        );
        const mistaken = temperatureWith(input, { temperature: ofDrop }, (ohmsOf, rest) => times * (ohmsOf + rest) - rest);
        return mistaken === undefined ? undefined : Math.min(mistaken, ...others);
      },
    },
    {
      slip: 'pair-loop-for-pairset',
      make: (input, answer) =>
        'installed' in input && input.maximumResistance === undefined && limitsOf(input).pairs === 2
          ? temperatureWith(input, answer, (allowed, rest) => (allowed + rest) / 2 - rest)
          : undefined,
    },
    {
      slip: 'pairset-for-four-pair',
      make: (input, answer) =>
        'installed' in input && input.maximumResistance === undefined && limitsOf(input).pairs === 4
          ? temperatureWith(input, answer, (allowed, rest) => (allowed + rest) / 2 - rest)
          : undefined,
    },
  ],
};

type Undecided = WorkingInputs['smallestConductor'];
/** The thinnest that passes, by what it has at most. */
const thinnestOf = (input: Undecided): number | undefined =>
  smallestConductor(input).candidates.find(({ passes }) => passes)?.resistancePerMetre;

const smallestConductorAsked: Asked<'smallestConductor'> = {
  question: (random) => {
    if (random() < 0.5) {
      const { conductor: own = conductor(random), out: _out, back: _back, ...line } = openLine(random);
      // As much resistance as the length allows it, where it allows any.
      const { length: _, ...open } = line;
      const longest = maximumRun({ ...open, conductor: own });
      const times = longest.feasible && !longest.unbounded && random() < 0.9 ? longest.length / line.length : 1;
      return { ...line, candidates: gaugesAround(random, own.resistancePerMetre * times) };
    }
    const { installed: _, ...run } = openRun(random);
    const candidates = someCables(logUniform(random, 0.02, 0.15));
    const open = { ...run, cabling: 'none', temperature: temperature(random) } as const;
    // So long that mostly one of the thinner ones just passes.
    const longest = maximumRun({ ...open, cable: candidates[0] as Cable });
    const thinner = (4 / 3) ** uniform(random, 1.5, 5.5);
    const length = longest.feasible && !longest.unbounded && longest.length > 1 ? longest.length / thinner : uniform(random, 20, 200);
    return { ...open, candidates, length };
  },
  answer: smallestConductor,
  mistakes: [
    {
      slip: 'one-way-length',
      make: (input) => ('load' in input && (input.connections ?? 0) === 0 ? thinnestOf({ ...input, length: input.length / 2 }) : undefined),
    },
    {
      slip: 'cold-resistance',
      make: (input) => {
        if ('load' in input) return thinnestOf({ ...input, temperature: 20 });
        return thinnestOf({ ...input, temperature: 20, cords: input.cords?.map((cord) => ({ ...cord, temperature: 20 })) });
      },
    },
    {
      slip: 'pair-loop-for-pairset',
      make: (input) =>
        'load' in input || input.maximumResistance !== undefined || limitsOf(input).pairs === 4
          ? undefined
          : thinnestOf(doubled(withCables(input))),
    },
    {
      slip: 'pairset-for-four-pair',
      make: (input) =>
        'load' in input || input.maximumResistance !== undefined || limitsOf(input).pairs === 2
          ? undefined
          : thinnestOf(doubled(withCables(input))),
    },
  ],
};

/** By name. */
export const solving: {
  readonly [Name in
    | 'farEndFaultCurrent'
    | 'leastPermittedDrop'
    | 'lowestSupplyVoltage'
    | 'highestLoad'
    | 'highestTemperature'
    | 'smallestConductor']: Asked<Name>;
} = {
  farEndFaultCurrent: farEndFaultAsked,
  leastPermittedDrop: leastDropAsked,
  lowestSupplyVoltage: lowestSupplyAsked,
  highestLoad: highestLoadAsked,
  highestTemperature: highestTemperatureAsked,
  smallestConductor: smallestConductorAsked,
};
