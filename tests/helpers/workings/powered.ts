import type { RunResistance } from '../../../src/cable/run-resistance.ts';
import { type PowerAtPdInput, powerAtPd } from '../../../src/ethernet/power-at-pd.ts';
import { type PsePowerForInput, psePowerFor } from '../../../src/ethernet/pse-power-for.ts';
import { type Asked, figureOf, number, poweredQuestion } from './kit.ts';

/** The same question, the loop that power sees that many times as large. */
const withLoop = <Input extends PowerAtPdInput | PsePowerForInput>(input: Input, times: number): Input | undefined => {
  const { resistance } = input;
  if (typeof resistance !== 'object') return undefined;
  const scaled: RunResistance = { ...resistance, twoPair: resistance.twoPair * times, fourPair: resistance.fourPair * times };
  return { ...input, resistance: scaled };
};
const pairsOf = (input: PowerAtPdInput): number => powerAtPd(input).limits.pairs;
const available = (input: PowerAtPdInput | undefined): number | undefined => {
  if (input === undefined) return undefined;
  const answer = powerAtPd(input);
  // Beyond half the voltage the sheet of that loop is another one: the slip is then not just this number.
  return answer.feasible && answer.available > (answer.limits.psePower / 2) * 1.0001 ? answer.available : undefined;
};

const powerAtPdAsked: Asked<'powerAtPd'> = {
  question: poweredQuestion,
  answer: (input) => {
    const answer = powerAtPd(input);
    return answer.feasible ? answer : { ...answer, ...answer.operating, feasible: false };
  },
  mistakes: [
    { slip: 'class-power-for-pd-power', make: (input) => powerAtPd(input).limits.psePower },
    {
      slip: 'allowed-for-available',
      make: (input) => (input.pdPower === undefined ? powerAtPd(input).limits.pdPower : undefined),
    },
    {
      slip: 'port-current-for-pairset-current',
      of: 'pairsetCurrent',
      make: (input, answer) => (pairsOf(input) === 4 ? number(figureOf(answer, 'totalCurrent')) : undefined),
    },
    {
      slip: 'pair-current-for-conductor-current',
      of: 'conductorCurrent',
      make: (_input, answer) => number(figureOf(answer, 'pairsetCurrent')),
    },
    { slip: 'pair-loop-for-pairset', make: (input) => available(withLoop(input, pairsOf(input))) },
    { slip: 'pairset-for-four-pair', make: (input) => (pairsOf(input) === 4 ? available(withLoop(input, 2)) : undefined) },
    { slip: 'four-pair-for-pairset', make: (input) => (pairsOf(input) === 2 ? available(withLoop(input, 0.5)) : undefined) },
    {
      slip: 'pse-power-over-pd-voltage',
      make: (input) => {
        const answer = powerAtPd(input);
        if (!answer.feasible) return undefined;
        const { psePower } = answer.limits;
        const current = psePower / answer.operating.loadVoltage;
        return available(input) === undefined ? undefined : psePower - current ** 2 * answer.resistance;
      },
    },
    {
      slip: 'power-at-wrong-end',
      of: 'operating.loadVoltage',
      make: (input) => {
        const { limits, pseVoltage, resistance } = powerAtPd(input);
        return pseVoltage - ((input.pdPower ?? limits.pdPower) / pseVoltage) * resistance;
      },
    },
    {
      slip: 'drop-for-voltage',
      of: 'operating.loadVoltage',
      make: (_input, answer) => number(figureOf(answer, 'operating.voltageDrop')),
    },
    {
      slip: 'unstable-root',
      of: 'operating.loadVoltage',
      make: (_input, answer) => (number(figureOf(answer, 'pseVoltage')) ?? 0) - (number(figureOf(answer, 'operating.loadVoltage')) ?? 0),
    },
  ],
};

/** What a port sources over a loop that many times as large. */
const sourced = (input: PsePowerForInput, times: number): number | undefined => {
  const scaled = withLoop(input, times);
  if (scaled === undefined) return undefined;
  const { average } = psePowerFor(scaled);
  return average.atLowest.feasible ? average.atLowest.supplyPower : undefined;
};

const psePowerForAsked: Asked<'psePowerFor'> = {
  question: (random) => {
    const { pseVoltage, ...input } = poweredQuestion(random);
    return random() < 0.2
      ? { poeClass: input.poeClass }
      : { ...input, pseVoltage: pseVoltage === undefined ? undefined : { low: pseVoltage, high: 57 } };
  },
  answer: (input) => {
    const answer = psePowerFor(input);
    const { average } = answer;
    return average.feasible || average.atLowest.feasible ? { ...answer, feasible: true } : { ...answer, ...average.atLowest };
  },
  mistakes: [
    {
      slip: 'class-power-for-pd-power',
      make: (input) => {
        const { average } = psePowerFor({ ...input, pdPeakPower: undefined, pdPower: psePowerFor(input).limits.psePower });
        return average.feasible ? average.psePower : undefined;
      },
    },
    { slip: 'run-loss-left-out', make: (input) => psePowerFor(input).average.pdPower },
    { slip: 'class-power-for-sourced-power', make: (input) => psePowerFor(input).limits.psePower },
    {
      slip: 'port-current-for-pairset-current',
      of: 'average.pairsetCurrent',
      make: (input, answer) => (psePowerFor(input).limits.pairs === 4 ? number(figureOf(answer, 'average.totalCurrent')) : undefined),
    },
    {
      slip: 'pair-current-for-conductor-current',
      of: 'average.conductorCurrent',
      make: (_input, answer) => number(figureOf(answer, 'average.pairsetCurrent')),
    },
    { slip: 'pair-loop-for-pairset', make: (input) => sourced(input, psePowerFor(input).limits.pairs) },
    { slip: 'pairset-for-four-pair', make: (input) => (psePowerFor(input).limits.pairs === 4 ? sourced(input, 2) : undefined) },
    { slip: 'four-pair-for-pairset', make: (input) => (psePowerFor(input).limits.pairs === 2 ? sourced(input, 0.5) : undefined) },
    {
      slip: 'pse-power-over-pd-voltage',
      make: (input) => {
        const { average, limits, resistance } = psePowerFor(input);
        if (!average.atLowest.feasible) return undefined;
        return average.pdPower + (limits.psePower / average.atLowest.loadVoltage) ** 2 * resistance;
      },
    },
    {
      slip: 'power-at-wrong-end',
      make: (input) => {
        const { average, pseVoltage, resistance } = psePowerFor(input);
        return average.pdPower + (average.pdPower / pseVoltage.low) ** 2 * resistance;
      },
    },
    {
      slip: 'unstable-root',
      make: (input) => {
        const { average, pseVoltage } = psePowerFor(input);
        if (!average.feasible) return undefined;
        // Both roots together are V/R, at the supply V²/R; of a line without resistance there is but one.
        const { resistance } = psePowerFor(input);
        return resistance === 0 ? undefined : pseVoltage.low ** 2 / resistance - average.psePower;
      },
    },
  ],
};

/** By name. */
export const powered: { readonly [Name in 'powerAtPd' | 'psePowerFor']: Asked<Name> } = {
  powerAtPd: powerAtPdAsked,
  psePowerFor: psePowerForAsked,
};
