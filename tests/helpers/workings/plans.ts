/** Random questions, the core's answers and what people get wrong: plans. @module */
import { cable } from '../../../src/cable/cable.ts';
import { runResistance, type Segment } from '../../../src/cable/run-resistance.ts';
import type { Load } from '../../../src/circuit/operating-point.ts';
import { resistancePerMetre } from '../../../src/conductor/resistance-per-metre.ts';
import { atMaximum } from '../../../src/conductor/to-maximum.ts';
import { grantedByType } from '../../../src/ethernet/assigned-class.ts';
import type { PoeClassNumber } from '../../../src/ethernet/class-table.ts';
import { type PoeClass, poeClass } from '../../../src/ethernet/poe-class.ts';
import { appliedLimits } from '../../../src/ethernet/power-at-pd.ts';
import type { MaximumPoweredFacts as MaximumPoweredRunInput } from '../../../src/plan/maximum-powered-run.ts';
import { maximumRun } from '../../../src/plan/maximum-run.ts';
import type { RunLimit } from '../../../src/plan/run-limit.ts';
import { type BudgetPort, type SwitchBudgetInput, switchBudget } from '../../../src/plan/switch/switch-budget.ts';
import type { WorkingInputs } from '../../../src/working/index.ts';
import { logUniform, pick, type Random, uniform, whole } from '../random.ts';
import { type Asked, again, conductor, figureOf, number, poe, temperature } from './kit.ts';

const FACTOR = { pairLoop: 2, twoPair: 1, fourPair: 0.5 } as const;

/** Of the class that the port grants. */
const limitsOf = (input: MaximumPoweredRunInput): PoeClass =>
  appliedLimits(input.pseType === undefined ? input : { ...input, poeClass: grantedByType(input.poeClass, input.pseType) });

const pairsOf = (input: WorkingInputs['maximumRun']): number | undefined =>
  'load' in input ? undefined : limitsOf(input as MaximumPoweredRunInput).pairs;

/** The least length, those of the limits that are resistances by another rule. */
const shortest = (limits: readonly RunLimit[], ofResistance: (limit: RunLimit) => number): number => {
  const lengths = limits.flatMap((limit) =>
    limit.length === undefined ? [] : [limit.resistance === undefined ? limit.length : ofResistance(limit)],
  );
  return Math.min(...lengths);
};

/** The longest run with other loops, or other resistances, than the core's: X = f (L r + R0). */
const ofLoops = (
  input: WorkingInputs['maximumRun'],
  factor: (loop: NonNullable<RunLimit['loop']>) => number,
  scale: (name: RunLimit['limit']) => number = () => 1,
): number | undefined => {
  if ('load' in input) return undefined;
  const { cable: of, temperature: at, cords = [], connections, connectionResistance } = input as MaximumPoweredRunInput;
  const without = (pieces: readonly Segment[]): number => runResistance({ segments: pieces, connections, connectionResistance }).twoPair;
  const metre = (degrees: number | undefined): number =>
    runResistance({ segments: [{ cable: of, length: 1, temperature: degrees }], connections: 0 }).twoPair;
  return shortest(maximumRun(input).limits, ({ limit, loop = 'pairLoop', resistance = Number.NaN }) => {
    const ohms = (resistance * scale(limit)) / factor(loop);
    if (limit === 'permanent-link-loop') return (ohms - without([])) / metre(20);
    if (limit === 'channel-loop') return (ohms - without(cords.map((cord) => ({ ...cord, temperature: 20 })))) / metre(20);
    return (ohms - without(cords)) / metre(at);
  });
};

/** The current of a load without any line. */
const draw = ({ power, current, resistance = Number.POSITIVE_INFINITY }: Load, volts: number): number =>
  current ?? (power ?? volts ** 2 / resistance) / volts;

const maximumRunAsked: Asked<'maximumRun'> = {
  question: (random) => {
    if (random() < 0.4) {
      const supplyVoltage = uniform(random, 5, 60);
      const out = conductor(random);
      const of: Load = pick(random, [
        { power: logUniform(random, 0.1, 100) },
        { current: logUniform(random, 0.01, 5) },
        { resistance: logUniform(random, 1, 1e4) },
      ]);
      return {
        supplyVoltage: random() < 0.5 ? supplyVoltage : { low: supplyVoltage, high: 70 },
        ...(random() < 0.7 ? { conductor: out } : { out, back: conductor(random) }),
        temperature: temperature(random),
        load: of,
        minimumVoltage: random() < 0.7 ? supplyVoltage * uniform(random, 0.4, 0.99) : undefined,
        permittedDrop: pick(random, [undefined, uniform(random, 0.01, 0.5), { volts: supplyVoltage * uniform(random, 0.01, 1.2) }]),
        ampacity: pick(random, [undefined, logUniform(random, 0.05, 20), draw(of, supplyVoltage) * uniform(random, 0.9, 2.2)]),
        maximumVoltage: random() < 0.2 ? uniform(random, 40, 90) : undefined,
        maximumResistance: random() < 0.3 ? logUniform(random, 0.5, 50) : undefined,
        connections: whole(random, 0, 4),
        connectionResistance: pick(random, [undefined, 0.01]),
      };
    }
    const { poeClass: number, pseType, limits } = poe(random);
    return {
      cable: cable(pick(random, ['cat5e', 'cat6', 'cat6a', 'cat7a', 'cat3'])),
      poeClass: number,
      // Now and then a port too weak for the class, and a voltage above the window.
      pseType: random() < 0.05 ? 1 : pseType,
      pdPower: random() < 0.4 ? undefined : limits.pdPower * random() * pick(random, [0.5, 1]),
      pseVoltage: random() < 0.5 ? undefined : uniform(random, 44, 57.5),
      temperature: random() < 0.2 ? undefined : uniform(random, 0, 60),
      cords: Array.from({ length: whole(random, 0, 3) }, () => ({
        cable: cable(pick(random, ['cord-24', 'cord-26'])),
        length: uniform(random, 0.5, 5),
      })),
      connections: whole(random, 0, 4),
      minimumVoltage: random() < 0.3 ? uniform(random, 36, 44) : undefined,
      maximumResistance:
        random() < 0.5 ? { ohms: uniform(random, 5, 25), loop: pick(random, ['pairLoop', 'twoPair', 'unstated']) } : undefined,
      cabling: pick(random, [undefined, 'ISO/IEC 11801', 'none', 'none']),
    };
  },
  answer: (input) => {
    const answer = maximumRun(input);
    return answer.feasible && answer.unbounded ? { ...answer, feasible: false } : answer;
  },
  mistakes: [
    {
      slip: 'cold-resistance',
      make: (input) => ('load' in input ? again(maximumRunAsked, { ...input, temperature: 20 }, 'length') : undefined),
    },
    { slip: 'connections-left-out', make: (input) => again(maximumRunAsked, { ...input, connections: 0 }, 'length') },
    {
      slip: 'one-way-length',
      make: (input) => {
        if (!('load' in input)) return undefined;
        const perMetre = resistancePerMetre(atMaximum(input.conductor ?? input.out), input.temperature);
        const joints = 2 * (input.connections ?? 0) * (input.connectionResistance ?? 0);
        return shortest(maximumRun(input).limits, ({ resistance = Number.NaN }) => (resistance - joints) / perMetre);
      },
    },
    {
      slip: 'cabling-rule-left-out',
      make: (input) => {
        if ('load' in input || input.cabling === 'none') return undefined;
        const lengths = maximumRun(input).limits.flatMap(({ resistance, length }) => (resistance === undefined ? [] : (length ?? [])));
        return Math.min(...lengths);
      },
    },
    {
      slip: 'nominal-for-maximum',
      make: (input) => {
        if (!('load' in input)) return undefined;
        const [out, back] = [input.conductor ?? input.out, input.conductor ?? input.back];
        if (out.basis !== 'nominal' || back.basis !== 'nominal') return undefined;
        const perMetre = resistancePerMetre(out, input.temperature) + resistancePerMetre(back, input.temperature);
        const joints = 2 * (input.connections ?? 0) * (input.connectionResistance ?? 0);
        return shortest(maximumRun(input).limits, ({ resistance = Number.NaN }) => (resistance - joints) / perMetre);
      },
    },
    { slip: 'pair-loop-for-pairset', make: (input) => ofLoops(input, () => 2) },
    { slip: 'pairset-for-pair-loop', make: (input) => ofLoops(input, (loop) => FACTOR[loop === 'pairLoop' ? 'twoPair' : loop]) },
    {
      slip: 'pairset-for-four-pair',
      make: (input) => (pairsOf(input) === 4 ? ofLoops(input, (loop) => FACTOR[loop === 'fourPair' ? 'twoPair' : loop]) : undefined),
    },
    {
      slip: 'four-pair-for-pairset',
      make: (input) => (pairsOf(input) === 2 ? ofLoops(input, (loop) => FACTOR[loop === 'twoPair' ? 'fourPair' : loop]) : undefined),
    },
    {
      slip: 'class-power-for-pd-power',
      make: (input) => {
        if ('load' in input) return undefined;
        const { pdPower, psePowerLimit } = limitsOf(input as MaximumPoweredRunInput);
        const drawn = input.pdPower ?? pdPower;
        if (2 * drawn > psePowerLimit) return undefined;
        // What bounds a constant power does so in proportion to it.
        return ofLoops(
          input,
          (loop) => FACTOR[loop],
          (name) => (['collapse', 'pd-voltage', 'device-voltage'].includes(name) ? drawn / psePowerLimit : 1),
        );
      },
    },
  ],
};

/** A sum over the ports, each with the class that it grants. */
const sum = (input: SwitchBudgetInput, of: (port: BudgetPort, granted: PoeClass) => number): number => {
  const { powered, denied } = switchBudget(input);
  return [...powered, ...denied].reduce((total, { port, grantedClass }) => {
    const entry = input.ports.find((one) => one.port === port) as BudgetPort;
    return total + of(entry, poeClass(grantedClass));
  }, 0);
};

/** A port, whose figures a basis may or may not look at; the first has them all. */
const budgetPort = (random: Random, port: number): BudgetPort => {
  const number = whole(random, 0, 8) as PoeClassNumber;
  const most = poeClass(number).pdPower;
  const some = (value: number): number | undefined => (port === 1 || random() < 0.8 ? value : undefined);
  return {
    port,
    poeClass: number,
    // Now and then a port too weak for the class.
    pseType: random() < 0.1 ? 2 : undefined,
    priority: pick(random, [undefined, 'critical', 'high', 'low']),
    requested: some(most * random()),
    pdPower: some(random() < 0.2 ? most : most * random()),
    measured: some(most * random()),
    resistance: some(uniform(random, 0.5, 20)),
    pseVoltage: some(uniform(random, 44, 57)),
  };
};

const switchBudgetAsked: Asked<'switchBudget'> = {
  question: (random) => {
    const basis = pick(random, ['class', 'class', 'requested', 'calculated', 'measured'] as const);
    // By class many ports are a few rows; by draw each is a row of its own.
    const count = whole(random, 1, basis === 'class' ? 48 : 4);
    return {
      capacity: whole(random, basis === 'class' ? 60 : 20, basis === 'class' ? 1500 : 300),
      basis,
      reserve: pick(random, [undefined, 0.1]),
      policy: pick(random, [undefined, 'fill']),
      ports: Array.from({ length: count }, (_, index) => budgetPort(random, index + 1)),
    };
  },
  answer: switchBudget,
  mistakes: [
    {
      slip: 'pd-power-for-class-power',
      of: 'demand',
      make: (input) => (input.basis === 'class' ? sum(input, (_port, granted) => granted.pdPower) : undefined),
    },
    {
      slip: 'run-loss-left-out',
      of: 'demand',
      make: (input) => {
        if (input.basis !== 'requested' && input.basis !== 'calculated') return undefined;
        return sum(input, ({ requested, pdPower }, granted) => {
          const stated = input.basis === 'requested' ? (requested ?? pdPower) : pdPower;
          // A device that is granted less than it asks for keeps to that.
          return Math.min(stated ?? granted.pdPower, granted.pdPowerLater ?? granted.pdPower);
        });
      },
    },
    {
      slip: 'demand-for-allocated',
      make: (input, answer) => (switchBudget(input).denied.length > 0 ? number(figureOf(answer, 'demand')) : undefined),
    },
    {
      slip: 'reserve-left-out',
      of: 'headroom',
      make: (input) => (switchBudget(input).denied.length > 0 ? undefined : switchBudget({ ...input, reserve: 0 }).headroom),
    },
  ],
};

/** By name. */
export const plans: { readonly [Name in 'maximumRun' | 'switchBudget']: Asked<Name> } = {
  maximumRun: maximumRunAsked,
  switchBudget: switchBudgetAsked,
};
