import { describe, expect, test } from 'vitest';
import { cable } from '../../../src/cable/cable.ts';
import { awg } from '../../../src/conductor/awg.ts';
import { reviewAnswer } from '../../../src/working/index.ts';
import { as, expectInputError, expectPlain } from '../../helpers/expectations.ts';

// 30 m of an 0.0938 Ω/m conductor at 20 °C: a pair loop of 5.628 Ω, one pairset of 2.814 Ω.
const run = { segments: [{ cable: cable('cat5e'), length: 30, temperature: 20 }] };
// 42.5 V at the device, 0.6 A, 30 W (IEEE 802.3 class table, class 4).
const worst = { supplyVoltage: 50, resistance: 12.5, load: { power: 25.5 } };

describe('right within the figures given', () => {
  test.each(['42.5', '42.5 V', '42.50V', '42', '43', '42500 mV', '0.0425 kV', 42.5, 4.25e1, '4.25e1 V', 42.5000000001])('%s', (answer) => {
    expect(reviewAnswer('operatingPoint', worst, answer)).toMatchObject({ verdict: 'right', slips: [] });
  });

  test.each(['42.4', '42.51 V', '44', '41 V', 42.500001])('not %s', (answer) => {
    expect(reviewAnswer('operatingPoint', worst, answer).verdict).toBe('wrong');
  });

  test('a fraction, also in percent', () => {
    expect(reviewAnswer('operatingPoint', worst, 0.15, { of: 'dropFraction' }).verdict).toBe('right');
    expect(reviewAnswer('operatingPoint', worst, '15 %', { of: 'dropFraction' }).verdict).toBe('right');
    expect(reviewAnswer('operatingPoint', worst, '17.6 %', { of: 'dropFraction' }).slips.map(({ slip }) => slip)).toEqual([
      'percent-of-wrong-voltage',
    ]);
  });

  test('a diameter in millimetres or thousandths of an inch (24 AWG: 0.5106 mm, 20.1 mil)', () => {
    expect(reviewAnswer('awg', { size: 24 }, '0.511 mm', { of: 'diameter' }).verdict).toBe('right');
    expect(reviewAnswer('awg', { size: 24 }, '20.1 mil', { of: 'diameter' }).verdict).toBe('right');
  });

  test('zeros at the end of a whole number count among its first three figures only', () => {
    const loop = { conductor: awg(24), length: 12_345 };
    expect(reviewAnswer('loopResistance', loop, '2080 ohm').verdict).toBe('right'); // 2079.4
    expect(reviewAnswer('loopResistance', loop, '2100 ohm').verdict).toBe('wrong');
  });
});

describe('wrong, and why', () => {
  test('one slip, its words, and the step to look at', () => {
    const review = reviewAnswer('operatingPoint', worst, '7.5 V');
    expect(review.slips).toMatchObject([{ slip: 'unstable-root', value: 7.5, shown: '7.5 V' }]);
    expect(review.message).toContain('the other root of the quadratic');
    expect(review.check?.symbol).toBe('I');
  });

  test('two slips that give the same figure are both named', () => {
    const review = reviewAnswer('runResistance', run, '2.814 ohm');
    expect(review.slips.map(({ slip }) => slip)).toEqual(['one-way-length', 'pairset-for-pair-loop']);
    expect(review.message).toMatch(/^Wrong\. 2 slips give this same figure: /);
  });

  test('none that fits: only that it is wrong, and the first step', () => {
    const review = reviewAnswer('runResistance', run, '1.234 ohm');
    expect(review.slips).toEqual([]);
    expect(review.message).toBe('Wrong. Check first: Category 5e: one metre at its temperature.');
    expect(review.check?.symbol).toBe('r_1');
  });

  test('a rounded step is named only where no other slip fits', () => {
    const loop = { conductor: awg(24), length: 100, temperature: 60 }; // 0.097450 Ω/m, 19.490 Ω
    expect(reviewAnswer('loopResistance', loop, '19.40 ohm').slips.map(({ slip }) => slip)).toEqual(['rounded-early']);
    expect(reviewAnswer('loopResistance', { ...loop, temperature: 20 }, '8.422 ohm').slips.map(({ slip }) => slip)).toEqual([
      'one-way-length',
    ]);
  });

  test('a figure for what cannot be, and a no for what can', () => {
    const over = { ...worst, load: { power: 60 } };
    expect(reviewAnswer('operatingPoint', over, 'no')).toMatchObject({ verdict: 'right' });
    expect(reviewAnswer('operatingPoint', over, '25 V')).toMatchObject({ verdict: 'wrong', slips: [], check: { symbol: 'D' } });
    expect(reviewAnswer('operatingPoint', worst, 'impossible')).toMatchObject({ verdict: 'wrong', slips: [] });
  });

  test('it is plain data', () => {
    for (const answer of ['42.5', '7.5 V', '1 V']) expectPlain(reviewAnswer('operatingPoint', worst, answer));
  });
});

describe('no answer at all', () => {
  test.each([
    ['nothing', undefined, 'missing'],
    ['an object', {}, 'type'],
    ['no number', 'about forty', 'unreadable'],
    ['not a finite number', Number.NaN, 'range'],
  ] as const)('%s', (_what, answer, code) => {
    expectInputError(() => reviewAnswer('operatingPoint', worst, as(answer)), 'answer', code);
  });

  test('a unit of another kind', () => {
    expectInputError(() => reviewAnswer('operatingPoint', worst, '0.6 A'), 'answer', 'unreadable');
    expectInputError(() => reviewAnswer('operatingPoint', worst, '0.15 V', { of: 'dropFraction' }), 'answer', 'unreadable');
  });

  test('a result that the calculation does not have', () => {
    expect(expectInputError(() => reviewAnswer('operatingPoint', worst, 1, { of: 'colour' }), 'options.of', 'unknown').expected).toContain(
      "'loadVoltage'",
    );
  });
});
