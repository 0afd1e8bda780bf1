/** Random questions, the core's answers and what people get wrong: one unknown of a run. @module */
import { farEndFaultCurrent } from '../../../src/circuit/far-end-fault.ts';
import { operatingPoint } from '../../../src/circuit/operating-point.ts';
import { awg } from '../../../src/conductor/awg.ts';
import { highestLoad } from '../../../src/plan/highest-load.ts';
import { highestTemperature } from '../../../src/plan/highest-temperature.ts';
import { leastPermittedDrop } from '../../../src/plan/least-permitted-drop.ts';
import { lowestSupplyVoltage } from '../../../src/plan/lowest-supply-voltage.ts';
import { maximumRun } from '../../../src/plan/maximum-run.ts';
import type { PoweredRunInput } from '../../../src/plan/powered-run.ts';
import { smallestConductor } from '../../../src/plan/smallest-conductor.ts';
import type { WorkingInputs } from '../../../src/working/index.ts';
import { logUniform, pick, type Random, uniform, whole } from '../random.ts';
import { type Asked, again, conductor, figureOf, load, number, segment, temperature } from './kit.ts';
import {
  bounded,
  cooled,
  doubled,
  greatest,
  ohms,
  openLine,
  openRun,
  pairsOf,
  portPower,
  someCable,
  stretched,
  valuesOf,
  wires,
} from './open-runs.ts';

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
const supplyOf = (input: Unsupplied, mistaken: Unsupplied, without: readonly string[] = []): number | undefined =>
  greatest(valuesOf(lowestSupplyVoltage(input), lowestSupplyVoltage(mistaken), without));

const lowestSupplyAsked: Asked<'lowestSupplyVoltage'> = {
  question: (random) => {
    if (random() < 0.5) {
      const { supplyVoltage: _, ...line } = openLine(random);
      return line as Unsupplied;
    }
    const { pseVoltage: _, ...run } = openRun(random);
    return run;
  },
  answer: (input) => bounded(lowestSupplyVoltage(input)),
  mistakes: [
    {
      slip: 'one-way-length',
      make: (input) =>
        'load' in input && input.conductor !== undefined && (input.connections ?? 0) === 0
          ? supplyOf(input, { ...input, length: input.length / 2 })
          : undefined,
    },
    { slip: 'cold-resistance', make: (input) => supplyOf(input, cooled(input)) },
    {
      slip: 'percent-of-wrong-voltage',
      make: (input) => {
        if (!('load' in input) || typeof input.permittedDrop !== 'number') return undefined;
        return supplyOf(input, { ...input, permittedDrop: input.permittedDrop / (1 + input.permittedDrop) });
      },
    },
    {
      slip: 'pair-loop-for-pairset',
      make: (input) => ('installed' in input && pairsOf(input) === 2 ? supplyOf(input, stretched(input, 2)) : undefined),
    },
    {
      slip: 'pairset-for-four-pair',
      make: (input) => ('installed' in input && pairsOf(input) === 4 ? supplyOf(input, stretched(input, 2)) : undefined),
    },
    {
      slip: 'class-power-for-pd-power',
      make: (input) => ('installed' in input ? supplyOf(input, { ...input, pdPower: portPower(input) }, ['pse-power']) : undefined),
    },
  ],
};

type Unloaded = WorkingInputs['highestLoad'];
/** The least of the limits, or of resistances the greatest; those whose names are given are looked at another way. */
const loadOf = (input: Unloaded, mistaken: Unloaded): number | undefined => {
  const values = valuesOf(highestLoad(input), highestLoad(mistaken));
  if (values.length === 0) return undefined;
  return 'kind' in input && input.kind === 'resistance' ? Math.max(...values) : Math.min(...values);
};

const highestLoadAsked: Asked<'highestLoad'> = {
  question: (random) => {
    if (random() < 0.5) {
      const { load: _, ...line } = openLine(random);
      return { ...line, kind: pick(random, [undefined, 'power', 'current', 'resistance']) } as Unloaded;
    }
    const { pdPower: _, ...run } = openRun(random);
    return run;
  },
  answer: (input) => bounded(highestLoad(input)),
  mistakes: [
    {
      slip: 'one-way-length',
      make: (input) =>
        'length' in input && input.conductor !== undefined && (input.connections ?? 0) === 0
          ? loadOf(input, { ...input, length: input.length / 2 })
          : undefined,
    },
    { slip: 'cold-resistance', make: (input) => loadOf(input, cooled(input)) },
    {
      slip: 'power-at-wrong-end',
      make: (input) => {
        if (!('length' in input) || (input.kind ?? 'power') !== 'power') return undefined;
        // The current that the drop allows, times the voltage of the supply.
        const { low } = typeof input.supplyVoltage === 'object' ? input.supplyVoltage : { low: input.supplyVoltage };
        const { limits } = highestLoad({ ...input, kind: 'current' });
        const values = highestLoad(input).limits.flatMap(({ limit, value }) => {
          if (value === undefined || limit === 'collapse') return value ?? [];
          return low * (limits.find((one) => one.limit === limit)?.value ?? Number.NaN);
        });
        return values.length === 0 ? undefined : Math.min(...values);
      },
    },
    {
      slip: 'percent-of-wrong-voltage',
      make: (input) => {
        if (!('length' in input) || typeof input.permittedDrop !== 'number') return undefined;
        return loadOf(input, { ...input, permittedDrop: input.permittedDrop / (1 + input.permittedDrop) });
      },
    },
    {
      slip: 'pair-loop-for-pairset',
      make: (input) => ('installed' in input && pairsOf(input) === 2 ? loadOf(input, stretched(input, 2)) : undefined),
    },
    {
      slip: 'pairset-for-four-pair',
      make: (input) => ('installed' in input && pairsOf(input) === 4 ? loadOf(input, stretched(input, 2)) : undefined),
    },
    {
      slip: 'class-power-for-pd-power',
      make: (input) => {
        if (!('installed' in input)) return undefined;
        const { limits } = highestLoad(input);
        return Math.min(
          portPower(input),
          ...limits.flatMap(({ limit, value }) => (value === undefined || limit === 'pd-power' ? [] : [value])),
        );
      },
    },
  ],
};

type Tempered = WorkingInputs['highestTemperature'];
/** The limits are as many resistances whatever the run: only a mistake that leaves no temperature at all is another sheet. */
const temperatureOf = (mistaken: Tempered): number | undefined => {
  const answer = highestTemperature(mistaken);
  return answer.feasible && answer.unbounded !== true ? answer.temperature : undefined;
};
/** Near 0 °C a temperature has lost its figures to the difference from 20 °C: it is asked about from 1 K away. */
const isNearZero = (input: Tempered): boolean =>
  highestTemperature(input).limits.some(({ value }) => value !== undefined && Math.abs(value) < 1);

/** A line whose limits lie near what it is at some temperature. */
const temperedLine = (random: Random): Tempered => {
  const input = openLine(random);
  const { connections = 0, connectionResistance = 0 } = input;
  const V = typeof input.supplyVoltage === 'object' ? input.supplyVoltage.low : input.supplyVoltage;
  const wire = conductor(random);
  const own = input.conductor === undefined ? { out: { ...input.out }, back: { ...input.back } } : { conductor: wire };
  const resistance =
    ohms({ ...own, length: input.length, temperature: uniform(random, -60, 200) }) + 2 * connections * connectionResistance;
  const drawn = load(random, V, resistance);
  const point = operatingPoint({ supplyVoltage: V, resistance, load: drawn });
  if (!point.feasible) throw new Error('a load that the line does not carry');
  const near = (): number => uniform(random, 0.9, 1.02);
  return {
    ...input,
    ...own,
    load: drawn,
    minimumVoltage: random() < 0.6 ? point.loadVoltage * near() : undefined,
    permittedDrop: random() < 0.5 ? Math.min(point.dropFraction / near(), 0.99) : undefined,
    maximumResistance: random() < 0.3 ? resistance / near() : undefined,
  } as Tempered;
};

/** A run as long as its limits allow at some temperature. */
const temperedRun = (random: Random): Tempered => {
  const input: PoweredRunInput = { ...openRun(random), cabling: 'none' };
  const [{ cable: own } = segment(random)] = input.installed;
  const longest = maximumRun({ ...input, cable: own, temperature: uniform(random, pick(random, [-60, 240]), 390) });
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
  answer: (input) => bounded(highestTemperature(input)),
  mistakes: [
    {
      slip: 'one-way-length',
      make: (input) =>
        'length' in input && input.conductor !== undefined && (input.connections ?? 0) === 0
          ? temperatureOf({ ...input, length: input.length / 2 })
          : undefined,
    },
    {
      slip: 'cold-resistance',
      make: (input) =>
        'installed' in input && input.cords !== undefined
          ? temperatureOf({ ...input, cords: input.cords.map((cord) => ({ ...cord, temperature: 20 })) })
          : undefined,
    },
    {
      slip: 'power-at-wrong-end',
      make: (input) => {
        if (!('length' in input) || input.load.power === undefined || typeof input.permittedDrop === 'object') return undefined;
        const { low } = typeof input.supplyVoltage === 'object' ? input.supplyVoltage : { low: input.supplyVoltage };
        const { minimumVoltage, permittedDrop } = input;
        const leastVoltages = [minimumVoltage ?? [], permittedDrop === undefined ? [] : low * (1 - permittedDrop)].flat();
        if (leastVoltages.length === 0 || leastVoltages.some((least) => least > low || 2 * least < low)) return undefined;
        // What the mistaken current leaves for the line, as if a data sheet had stated it.
        const ohmsLeft = Math.min(...leastVoltages.map((least) => ((low - least) * low) / Number(input.load.power)));
        if (!(ohmsLeft < low ** 2 / (4 * input.load.power))) return undefined;
        const maximumResistance = Math.min(ohmsLeft, input.maximumResistance ?? ohmsLeft);
        const mistaken = highestTemperature({ ...input, minimumVoltage: undefined, permittedDrop: undefined, maximumResistance });
        return mistaken.feasible && mistaken.unbounded !== true ? mistaken.temperature : undefined;
      },
    },
    {
      slip: 'percent-of-wrong-voltage',
      make: (input) => {
        if (!('length' in input) || typeof input.permittedDrop !== 'number' || input.permittedDrop > 0.5) return undefined;
        return temperatureOf({ ...input, permittedDrop: input.permittedDrop / (1 + input.permittedDrop) });
      },
    },
    {
      slip: 'pair-loop-for-pairset',
      make: (input) =>
        'installed' in input && input.maximumResistance === undefined && pairsOf(input) === 2
          ? temperatureOf(stretched(input, 2))
          : undefined,
    },
    {
      slip: 'pairset-for-four-pair',
      make: (input) =>
        'installed' in input && input.maximumResistance === undefined && pairsOf(input) === 4
          ? temperatureOf(stretched(input, 2))
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
      const { conductor: _c, out: _o, back: _b, ...line } = openLine(random);
      const gauges = Array.from({ length: whole(random, 1, 12) }, () =>
        awg(whole(random, 4, 30), { stranding: pick(random, ['solid', 'stranded']) }),
      );
      return { ...line, candidates: gauges };
    }
    const { installed: _, ...run } = openRun(random);
    return {
      ...run,
      cabling: 'none',
      candidates: Array.from({ length: whole(random, 1, 12) }, (_one, index) => someCable(random, index)),
      length: logUniform(random, 20, 500),
      temperature: temperature(random),
    };
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
        'load' in input || input.maximumResistance !== undefined || pairsOf(input) === 4 ? undefined : thinnestOf(doubled(input)),
    },
    {
      slip: 'pairset-for-four-pair',
      make: (input) =>
        'load' in input || input.maximumResistance !== undefined || pairsOf(input) === 2 ? undefined : thinnestOf(doubled(input)),
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
