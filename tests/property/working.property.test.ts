/** The working against the core: the same figures, by other means. */
import { describe, expect, test } from 'vitest';
import { showWorking } from '../../src/working/index.ts';
import { expectPlain, frozen } from '../helpers/expectations.ts';
import { seeded } from '../helpers/random.ts';
import { asked, NAMES } from '../helpers/random-workings.ts';
import { sampleSize } from '../helpers/sample-size.ts';
import { figureOf } from '../helpers/workings/kit.ts';

const INPUTS = sampleSize(2000, 200);
const REPORTED = sampleSize(300, 100);

describe.each(NAMES)('%s', (name) => {
  test(`the last step is the core's result, to 1e-12, of ${INPUTS} inputs up to 1e-6 short of collapse`, () => {
    const random = seeded(6);
    const feasible = new Set<boolean>();
    for (let index = 0; index < INPUTS; index++) {
      const { input, answer } = asked(name, random);
      const working = showWorking(name, input);
      expect(working.feasible, JSON.stringify(input)).toBe(figureOf(answer, 'feasible') ?? true);
      feasible.add(working.feasible);
      const { result } = working;
      if (!working.feasible && result.core === undefined) continue;
      const core = figureOf(answer, result.core ?? '');
      if (typeof core !== 'number') expect.fail(`the core has no ${result.core}`);
      const off = Math.abs(result.value - core);
      expect(off, `${result.core}: ${result.value} against ${core} of ${JSON.stringify(input)}`).toBeLessThanOrEqual(
        1e-12 * Math.abs(core),
      );
    }
    expect(feasible.has(true)).toBe(true);
  });

  test('so is every other figure that the core reports', () => {
    const random = seeded(7);
    let held = 0;
    for (let index = 0; index < REPORTED; index++) {
      const { input, answer } = asked(name, random);
      const { results, feasible } = showWorking(name, input);
      if (!feasible) continue;
      for (const { core = '', value } of results) {
        const figure = figureOf(answer, core);
        if (figure === undefined) continue;
        if (typeof figure !== 'number') expect.fail(`${core} is ${String(figure)}`);
        // A difference of like figures, such as the headroom of a full switch, keeps the last places of what it came from. Close to
        // collapse a loss moves several times as much as the voltages that it follows from.
        const size = core === 'headroom' ? 1e5 : core === 'lineLoss' ? 4 * Math.abs(figure) : Math.abs(figure);
        expect(Math.abs(value - figure), `${core} of ${JSON.stringify(input)}`).toBeLessThanOrEqual(1e-12 * size);
        held++;
      }
    }
    expect(held).toBeGreaterThanOrEqual(REPORTED / 3);
  });

  test('it is plain data, and its input is left alone', () => {
    const random = seeded(8);
    for (let index = 0; index < 20; index++) expectPlain(showWorking(name, frozen(asked(name, random).input)));
  });
});
