/** Random questions, the core's answers and what people get wrong: readings, and pairs that are unlike. @module */
import { type ConductorsByPair, type RunPair, type RunUnbalance, type UnbalanceInput, unbalance } from '../../../src/cable/unbalance.ts';
import { logUniform, pick, type Random, uniform } from '../random.ts';
import type { Asked } from './kit.ts';

const PAIRS: readonly RunPair[] = ['1,2', '3,6', '4,5', '7,8'];

/** Conductors of some pairs, unlike by a few percent as true ones are. */
function conductorsOf(random: Random, pairs: readonly RunPair[]): ConductorsByPair {
  const usual = logUniform(random, 0.5, 20);
  const one = (): number => usual * uniform(random, 0.95, 1.05);
  return Object.fromEntries(pairs.map((pair) => [pair, [one(), one()]]));
}

function unbalanceOf(input: UnbalanceInput): RunUnbalance & { readonly leastMargin: number } {
  const answer = unbalance(input);
  return { ...answer, leastMargin: Math.min(...[...answer.pairs, ...answer.pairToPair].map(({ margin }) => margin)) };
}

const unbalanceAsked: Asked<'unbalance'> = {
  question: (random) => {
    const some = PAIRS.filter(() => random() < 0.8);
    return {
      pairs: conductorsOf(random, some.length === 0 ? ['4,5'] : some),
      limits: pick(random, [undefined, {}, { pairFraction: 0.02 }, { pairFloor: 0, pairToPairFloor: 0.05, pairToPairFraction: 0.03 }]),
    };
  },
  answer: unbalanceOf,
  mistakes: [
    {
      slip: 'series-for-parallel',
      of: 'pairs[0].parallel',
      make: (input) => {
        const [first, second] = unbalance(input).pairs[0]?.conductors ?? [0, 0];
        return first + second;
      },
    },
    {
      slip: 'unbalance-of-one',
      of: 'pairs[0].fraction',
      make: (input) => {
        const [first = 0, second = 0] = unbalance(input).pairs[0]?.conductors ?? [];
        return (Math.max(first, second) - Math.min(first, second)) / Math.max(first, second);
      },
    },
    {
      slip: 'unbalance-of-one',
      of: 'pairs[0].fraction',
      make: (input) => {
        const [first = 0, second = 0] = unbalance(input).pairs[0]?.conductors ?? [];
        return Math.max(first, second) / Math.min(first, second) - 1;
      },
    },
    {
      slip: 'lesser-of-two-limits',
      of: 'pairs[0].limit',
      make: (input) => {
        const least = (limits: UnbalanceInput['limits']): number => unbalance({ ...input, limits }).pairs[0]?.limit ?? Number.NaN;
        // What the fraction alone permits, and the fixed figure alone.
        return Math.min(least({ ...input.limits, pairFloor: 0 }), least({ ...input.limits, pairFraction: 0 }));
      },
    },
  ],
};

/** By name. */
export const field: { readonly [Name in 'unbalance']: Asked<Name> } = {
  unbalance: unbalanceAsked,
};
