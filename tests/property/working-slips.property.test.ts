/** Homework with one slip in it, on every sheet: found where it shows, and never claimed where the answer is right. */
import { describe, expect, test } from 'vitest';
import type { RunResistance } from '../../src/cable/run-resistance.ts';
import { type PowerAtPdInput, powerAtPd } from '../../src/ethernet/power-at-pd.ts';
import { psePowerFor } from '../../src/ethernet/pse-power-for.ts';
import { reviewAnswer, type SlipName, showWorking, type WorkingInputs, type WorkingName } from '../../src/working/index.ts';
import { pick, seeded } from '../helpers/random.ts';
import { asked, coreAnswers, figureOf, NAMES, questions } from '../helpers/random-workings.ts';

const INPUTS = 300;
/** What a student writes down. */
const written = (value: number): string => value.toPrecision(4);

/** A slip as the core would make it: the same question with the mistake in its input, or the core's own figures put together wrongly. */
interface Mistake<Name extends WorkingName> {
  readonly slip: SlipName;
  /** Which of the results is answered; the last if absent. */
  readonly of?: string;
  /** What one who slips would hand in; nothing where the slip does not apply. */
  readonly make: (input: WorkingInputs[Name], answer: unknown) => number | undefined;
}

const core = <Name extends WorkingName>(name: Name, input: WorkingInputs[Name], of: string): number | undefined => {
  try {
    const figure = figureOf(coreAnswers[name](input), of);
    return typeof figure === 'number' ? figure : undefined;
  } catch {
    return undefined;
  }
};
const FOOT = 0.3048;
const number = (value: unknown): number | undefined => (typeof value === 'number' ? value : undefined);
/** The core's answer with the loop that power sees that many times as large. */
const withLoop = (input: PowerAtPdInput, times: number): PowerAtPdInput | undefined => {
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

const mistakes: { readonly [Name in WorkingName]?: readonly Mistake<Name>[] } = {
  awg: [{ slip: 'diameter-for-radius', make: (_input, answer) => (number(figureOf(answer, 'resistancePerMetre')) ?? 0) / 4 }],
  resistancePerMetre: [
    { slip: 'cold-resistance', make: ({ conductor }) => conductor.resistancePerMetre },
    { slip: 'per-km-for-per-100-m', make: (_input, answer) => (number(figureOf(answer, 'resistancePerMetre')) ?? 0) * 10 },
  ],
  loopResistance: [
    { slip: 'one-way-length', make: (_input, answer) => (number(figureOf(answer, 'loopResistance')) ?? 0) / 2 },
    { slip: 'cold-resistance', make: (input) => core('loopResistance', { ...input, temperature: 20 }, 'loopResistance') },
    { slip: 'feet-for-metres', make: (input) => core('loopResistance', { ...input, length: input.length / FOOT }, 'loopResistance') },
    { slip: 'metres-for-feet', make: (input) => core('loopResistance', { ...input, length: input.length * FOOT }, 'loopResistance') },
    { slip: 'per-100-m-for-per-km', make: (_input, answer) => (number(figureOf(answer, 'loopResistance')) ?? 0) / 10 },
    {
      slip: 'rounded-early',
      make: (input, answer) => {
        const perMetre = (number(figureOf(answer, 'loopResistance')) ?? 0) / (2 * input.length);
        return 2 * Number(perMetre.toPrecision(2)) * input.length;
      },
    },
    { slip: 'times-thousand', make: (_input, answer) => (number(figureOf(answer, 'loopResistance')) ?? 0) * 1000 },
    { slip: 'over-thousand', make: (_input, answer) => (number(figureOf(answer, 'loopResistance')) ?? 0) / 1000 },
  ],
  runResistance: [
    { slip: 'pairset-for-pair-loop', make: (_input, answer) => number(figureOf(answer, 'twoPair')) },
    { slip: 'pair-loop-for-pairset', of: 'twoPair', make: (_input, answer) => number(figureOf(answer, 'pairLoop')) },
    { slip: 'pairset-for-four-pair', of: 'fourPair', make: (_input, answer) => number(figureOf(answer, 'twoPair')) },
    { slip: 'four-pair-for-pairset', of: 'twoPair', make: (_input, answer) => number(figureOf(answer, 'fourPair')) },
    {
      slip: 'cold-resistance',
      make: (input) =>
        core('runResistance', { ...input, segments: input.segments.map((piece) => ({ ...piece, temperature: 20 })) }, 'pairLoop'),
    },
    {
      slip: 'feet-for-metres',
      make: (input) =>
        core(
          'runResistance',
          { ...input, segments: input.segments.map((piece) => ({ ...piece, length: piece.length / FOOT })) },
          'pairLoop',
        ),
    },
  ],
  operatingPoint: [
    {
      slip: 'unstable-root',
      make: ({ supplyVoltage, load }, answer) =>
        load.power === undefined ? undefined : supplyVoltage - (number(figureOf(answer, 'loadVoltage')) ?? 0),
    },
    {
      slip: 'power-at-wrong-end',
      make: ({ supplyVoltage, resistance, load }) =>
        load.power === undefined ? undefined : supplyVoltage - (load.power / supplyVoltage) * resistance,
    },
    {
      slip: 'percent-of-wrong-voltage',
      of: 'dropFraction',
      make: (_input, answer) => (number(figureOf(answer, 'voltageDrop')) ?? 0) / (number(figureOf(answer, 'loadVoltage')) ?? 0),
    },
  ],
  voltageDrop: [
    {
      slip: 'unstable-root',
      make: ({ load }, answer) => (load.power === undefined ? undefined : number(figureOf(answer, 'loadVoltage'))),
    },
    {
      slip: 'one-way-length',
      make: (input) =>
        input.conductor === undefined ? undefined : core('voltageDrop', { ...input, length: input.length / 2 }, 'voltageDrop'),
    },
    { slip: 'cold-resistance', make: (input) => core('voltageDrop', { ...input, temperature: 20 }, 'voltageDrop') },
    { slip: 'metres-for-feet', make: (input) => core('voltageDrop', { ...input, length: input.length * FOOT }, 'voltageDrop') },
  ],
  powerAtPd: [
    { slip: 'class-power-for-pd-power', make: (input) => powerAtPd(input).limits.psePower },
    { slip: 'pair-loop-for-pairset', make: (input) => (pairsOf(input) === 2 ? available(withLoop(input, 2)) : undefined) },
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
      slip: 'unstable-root',
      of: 'operating.loadVoltage',
      make: (_input, answer) => (number(figureOf(answer, 'pseVoltage')) ?? 0) - (number(figureOf(answer, 'operating.loadVoltage')) ?? 0),
    },
  ],
  psePowerFor: [
    {
      slip: 'class-power-for-pd-power',
      make: (input) => {
        const { average } = psePowerFor({ ...input, pdPeakPower: undefined, pdPower: psePowerFor(input).limits.psePower });
        return average.feasible ? average.psePower : undefined;
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
  maximumRun: [
    {
      slip: 'cold-resistance',
      make: (input) => ('load' in input ? core('maximumRun', { ...input, temperature: 20 }, 'length') : undefined),
    },
  ],
};

describe.each(NAMES)('%s', (name) => {
  for (const mistake of (mistakes[name] ?? []) as readonly Mistake<never>[]) {
    test(`${mistake.slip}${mistake.of === undefined ? '' : ` in ${mistake.of}`} is found in ${INPUTS} answers that show it`, () => {
      const random = seeded(11);
      let found = 0;
      for (let tries = 0; found < INPUTS && tries < 20 * INPUTS; tries++) {
        const { input, answer } = asked(name, random);
        if (!showWorking(name, input).feasible) continue;
        const value = mistake.make(input, answer);
        if (value === undefined || !Number.isFinite(value) || !(value > 0)) continue;
        const review = reviewAnswer(name, input, written(value), { of: mistake.of });
        // Within the figures of the answer the mistake may not show; then the answer is right, and nothing is claimed.
        const shows = Math.abs(review.expected.value - Number(written(value))) > (review.tolerance ?? 0);
        expect(review.verdict).toBe(shows ? 'wrong' : 'right');
        if (!shows) continue;
        // A rounded step is named only where no other slip gives the same figure.
        if (mistake.slip === 'rounded-early' && !review.slips.some(({ slip }) => slip === 'rounded-early')) {
          expect(review.slips).not.toEqual([]);
          continue;
        }
        expect(
          review.slips.map(({ slip }) => slip),
          `${written(value)} for ${review.expected.shown} of ${JSON.stringify(input)}`,
        ).toContain(mistake.slip);
        found++;
      }
      expect(found).toBe(INPUTS);
    });
  }

  test(`a right answer is right and no slip is claimed, to two figures and to all, of ${INPUTS} inputs`, () => {
    const random = seeded(12);
    for (let index = 0; index < INPUTS; index++) {
      const input = questions[name](random) as never;
      const { feasible, results } = showWorking(name, input);
      if (!feasible) {
        expect(reviewAnswer(name, input, 'no')).toMatchObject({ verdict: 'right', slips: [] });
        continue;
      }
      for (const { core: of, value, unit } of [pick(random, results), results.at(-1) as (typeof results)[number]]) {
        for (const answer of [value.toPrecision(2), `${value.toPrecision(5)} ${unit === '1' ? '' : unit}`, value]) {
          const review = reviewAnswer(name, input, answer, { of });
          expect(review, `${answer} as ${of} of ${JSON.stringify(input)}`).toMatchObject({ verdict: 'right', slips: [] });
        }
      }
    }
  });
});
