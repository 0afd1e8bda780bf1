/** Homework with one slip in it, on every sheet: found where it shows, and never claimed where the answer is right. */
import { afterAll, describe, expect, test } from 'vitest';
import { sheets } from '../../src/working/book/sheets.ts';
import { type Reviewer, reviewerOf } from '../../src/working/review-answer.ts';
import { pick, seeded } from '../helpers/random.ts';
import { asked, NAMES, workings } from '../helpers/random-workings.ts';
import { sampleSize } from '../helpers/sample-size.ts';
import type { Mistake } from '../helpers/workings/kit.ts';

const INPUTS = sampleSize(300, 40);
/** What a student writes down. */
const written = (value: number): string => value.toPrecision(4);

/** One question, the core's answer to it, and whoever reviews what others answer. */
interface Question {
  readonly input: never;
  readonly answer: unknown;
  readonly reviewer: Reviewer;
}

describe.each(NAMES)('%s', (name) => {
  // The same questions for every slip of the sheet: what they come to is worked out once.
  const random = seeded(11);
  const questions: Question[] = [];
  const questionAt = (place: number): Question => {
    while (questions.length <= place) {
      const one = asked(name, random);
      questions.push({ ...one, reviewer: reviewerOf(name, one.input) });
    }
    return questions[place] as Question;
  };
  afterAll(() => {
    questions.length = 0;
  });

  test('every slip that the sheet lists is made by other means, below', () => {
    const made = new Set<string>(workings[name].mistakes.map(({ slip }) => slip));
    expect(sheets[name].slips.map(([slip]) => slip).filter((slip) => !made.has(slip))).toEqual([]);
  });

  for (const mistake of workings[name].mistakes as readonly Mistake<never>[]) {
    test(`${mistake.slip}${mistake.of === undefined ? '' : ` in ${mistake.of}`} is found in ${INPUTS} answers that show it`, () => {
      let found = 0;
      for (let tries = 0; found < INPUTS && tries < 20 * INPUTS; tries++) {
        const { input, answer, reviewer } = questionAt(tries);
        if (!reviewer.working.feasible) continue;
        const value = mistake.make(input, answer);
        if (value === undefined || !Number.isFinite(value) || !(value > 0)) continue;
        const review = reviewer.review(written(value), { of: mistake.of });
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

  test(`every slip, on every result where it shows, is found by its own figure, of ${INPUTS} inputs that show it`, () => {
    const choice = seeded(13);
    const listed = new Set<string>(sheets[name].slips.map(([slip]) => slip));
    const seen = new Map<string, number>();
    const isDone = (slip: string): boolean => (seen.get(slip) ?? 0) >= INPUTS;
    for (let tries = 0; tries < 20 * INPUTS && (tries < INPUTS || ![...listed].every(isDone)); tries++) {
      const { working, slips, review } = questionAt(tries).reviewer;
      if (!working.feasible) continue;
      const shown = new Set<string>();
      for (const [place, result] of working.results.entries()) {
        const found = slips.slipped(result).filter(({ slip }) => !isDone(slip));
        const rounded = tries < INPUTS && place === tries % working.results.length ? [...slips.rounded(result)] : [];
        for (const { slip, value } of rounded.length > 0 ? [...found, pick(choice, rounded)] : found) {
          const answer = written(value);
          const { verdict, expected, tolerance = 0, slips: claimed } = review(answer, { of: result.core });
          const shows = Math.abs(expected.value - Number(answer)) > tolerance;
          expect(verdict, `${answer} for ${expected.shown}`).toBe(shows ? 'wrong' : 'right');
          if (!shows) {
            expect(claimed).toEqual([]);
            continue;
          }
          shown.add(slip);
          const names = claimed.map((one) => one.slip);
          // A rounded step is named only where no other slip gives the same figure.
          if (slip === 'rounded-early') expect(names, `${answer} for ${expected.shown}`).not.toEqual([]);
          else expect(names, `${answer} for ${expected.shown}`).toContain(slip);
        }
      }
      for (const slip of shown) seen.set(slip, (seen.get(slip) ?? 0) + 1);
    }
    expect([...listed].filter((slip) => !isDone(slip))).toEqual([]);
    // Of the answer alone: every sheet has a result that these show on.
    expect(isDone('wrong-sign')).toBe(true);
  });

  test(`a right answer is right and no slip is claimed, to two figures and to all, of ${INPUTS} inputs`, () => {
    const choice = seeded(12);
    for (let index = 0; index < INPUTS; index++) {
      const { input, reviewer } = questionAt(index);
      const { feasible, results } = reviewer.working;
      if (!feasible) {
        expect(reviewer.review('no')).toMatchObject({ verdict: 'right', slips: [] });
        continue;
      }
      for (const { core: of, value, unit } of [pick(choice, results), results.at(-1) as (typeof results)[number]]) {
        for (const answer of [value.toPrecision(2), `${value.toPrecision(5)} ${unit === '1' ? '' : unit}`, value]) {
          const review = reviewer.review(answer, { of });
          expect(review, `${answer} as ${of} of ${JSON.stringify(input)}`).toMatchObject({ verdict: 'right', slips: [] });
        }
      }
    }
  });
});
