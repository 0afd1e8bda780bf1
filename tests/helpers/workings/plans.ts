/** Random questions, the core's answers and what people get wrong: plans. @module */
import { cable } from '../../../src/cable/cable.ts';
import type { PoeClassNumber } from '../../../src/ethernet/class-table.ts';
import { maximumRun } from '../../../src/plan/maximum-run.ts';
import { switchBudget } from '../../../src/plan/switch-budget.ts';
import { logUniform, pick, uniform, whole } from '../random.ts';
import { type Asked, again, conductor, poe, temperature } from './kit.ts';

const maximumRunAsked: Asked<'maximumRun'> = {
  question: (random) => {
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
  answer: (input) => {
    const answer = maximumRun(input);
    return answer.feasible && answer.unbounded ? { ...answer, feasible: false } : answer;
  },
  mistakes: [
    {
      slip: 'cold-resistance',
      make: (input) => ('load' in input ? again(maximumRunAsked, { ...input, temperature: 20 }, 'length') : undefined),
    },
  ],
};

const switchBudgetAsked: Asked<'switchBudget'> = {
  question: (random) => ({
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
  answer: switchBudget,
  mistakes: [],
};

/** By name. */
export const plans: { readonly [Name in 'maximumRun' | 'switchBudget']: Asked<Name> } = {
  maximumRun: maximumRunAsked,
  switchBudget: switchBudgetAsked,
};
