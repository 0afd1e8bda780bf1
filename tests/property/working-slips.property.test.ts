/** Homework with one slip in it, on every sheet: found where it shows, and never claimed where the answer is right. */
import { describe, expect, test } from 'vitest';
import { reviewAnswer, showWorking } from '../../src/working/index.ts';
import { sheets } from '../../src/working/sheets.ts';
import { pick, seeded } from '../helpers/random.ts';
import { asked, NAMES, questionOf, workings } from '../helpers/random-workings.ts';
import type { Mistake } from '../helpers/workings/kit.ts';

const INPUTS = 300;
/** What a student writes down. */
const written = (value: number): string => value.toPrecision(4);

describe.each(NAMES)('%s', (name) => {
  test('every slip that the sheet lists is made by other means, below', () => {
    const made = new Set<string>(workings[name].mistakes.map(({ slip }) => slip));
    expect(sheets[name].slips.map(({ slip }) => slip).filter((slip) => !made.has(slip))).toEqual([]);
  });

  for (const mistake of workings[name].mistakes as readonly Mistake<never>[]) {
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
      const input = questionOf(name, random);
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
