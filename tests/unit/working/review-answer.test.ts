import { describe, expect, test } from 'vitest';
import { cable } from '../../../src/cable/cable.ts';
import { runResistance } from '../../../src/cable/run-resistance.ts';
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

describe('too few figures', () => {
  test('1 A may be 0.6 A, and much else', () => {
    const { verdict, slips, check, message } = reviewAnswer('operatingPoint', worst, '1 A', { of: 'current' });
    expect([verdict, slips, check]).toEqual(['wrong', [], undefined]);
    expect(message).toBe('Wrong: too few figures to tell. It may stand for anything from 0.5 A to 1.5 A: give two figures or more.');
    expect(reviewAnswer('operatingPoint', worst, '0.2', { of: 'dropFraction' }).message).toContain('from 0.15 to 0.25');
  });

  test('one figure is enough within a tenth of it', () => {
    expect(reviewAnswer('operatingPoint', worst, '0.6 A', { of: 'current' }).verdict).toBe('right');
    expect(reviewAnswer('operatingPoint', { ...worst, load: { power: 25 } }, '4 W', { of: 'lineLoss' }).verdict).toBe('right'); // 4.29 W
  });

  test('no slip is claimed that is far from the answer', () => {
    // 0.36 Ω is the loop; one way 0.18 Ω would round to 0.2 Ω, but a tenth of it is less than what is between.
    const question = { segments: [{ cable: cable('cat5e'), length: 1.9189, temperature: 20 }] };
    expect(reviewAnswer('runResistance', question, '0.2 ohm').slips).toEqual([]);
  });

  test('a step that was rounded shows in three figures or more', () => {
    // 57.29 m with the usual 18 AWG, 56.17 m with the thinnest.
    const question = { supplyVoltage: 24, conductor: awg(18), load: { current: 1 }, permittedDrop: { volts: 2.4 } };
    expect(reviewAnswer('maximumRun', question, '57 m').slips.map(({ slip }) => slip)).toEqual(['nominal-for-maximum']);
    expect(reviewAnswer('maximumRun', question, '55.8 m').slips.map(({ slip }) => slip)).toEqual(['rounded-early']);
    expect(reviewAnswer('maximumRun', question, '55.8 m').message).toMatch(/^Wrong: perhaps a step/);
    expect(reviewAnswer('maximumRun', question, '55 m').slips).toEqual([]);
  });
});

describe('wrong, and why', () => {
  test('one slip, its words, and the step to look at', () => {
    // 50 V less 0.51 A through 12.5 Ω.
    const review = reviewAnswer('operatingPoint', worst, '43.625 V');
    expect(review.slips).toMatchObject([{ slip: 'power-at-wrong-end', value: 43.625 }]);
    expect(review.message).toMatch(
      /^Wrong: the power of the load was divided by the voltage of the supply: .*\. Check first: voltage at the load/,
    );
    expect(review.check?.symbol).toBe('V_L');
  });

  test('the other root and the drop are one figure: the plain mistake is named first', () => {
    const names = (answer: string, of?: string): string[] =>
      reviewAnswer('operatingPoint', worst, answer, { of }).slips.map(({ slip }) => slip);
    expect(names('7.5 V')).toEqual(['drop-for-voltage', 'unstable-root']);
    expect(names('42.5 V', 'voltageDrop')).toEqual(['voltage-for-drop', 'unstable-root']);
    // A current has but one root: 24 V less 0.6 A through 4 Ω.
    const held = { supplyVoltage: 24, resistance: 4, load: { current: 0.6 } };
    expect(reviewAnswer('operatingPoint', held, '2.4 V').slips).toMatchObject([{ slip: 'drop-for-voltage' }]);
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

describe('as people write it', () => {
  const of = (answer: string | number): ReturnType<typeof reviewAnswer> => reviewAnswer('operatingPoint', worst, answer);

  test.each([
    '42,5 V',
    '42,5',
    '4.25 × 10^1 V',
    '4.25x10^1',
    '4,25·10¹ V',
    '42 500 mV',
    '42\u202f500 mV',
    '42,500.0 mV',
    '≈ 42.5 V',
    '42.5 V.',
  ])('%s is 42.5 V', (answer) => {
    expect(of(answer)).toMatchObject({ verdict: 'right', answer: 42.5 });
  });

  const far = { conductor: awg(24), length: 15_000 }; // 2526.5 Ω
  test.each(['2 526.5 ohm', "2'526.5", '2.526,5', '2.5265 kΩ', '2.5265 kohm', '2526', '2.53 kΩ', '2.5265e3', '0.0025265 MΩ'])(
    '%s is 2526.5 Ω',
    (answer) => {
      expect(reviewAnswer('loopResistance', far, answer).verdict).toBe('right');
    },
  );

  test('a comma that may part thousands or decimals is refused, and both readings are named', () => {
    const { expected } = expectInputError(() => reviewAnswer('loopResistance', far, '2,527 ohm'), 'answer', 'unreadable');
    expect(expected).toContain('2527 or 2.527');
    // No number of thousands begins with a nought.
    expect(reviewAnswer('operatingPoint', worst, '0,150', { of: 'dropFraction' }).verdict).toBe('right');
  });

  test('the sign counts, whichever sign is typed', () => {
    for (const answer of ['-42.5 V', '\u221242.5 V', -42.5]) {
      expect(of(answer)).toMatchObject({ verdict: 'wrong', answer: -42.5, slips: [{ slip: 'wrong-sign', value: -42.5 }] });
    }
    expect(of('+42.5 V').verdict).toBe('right');
  });

  test('0 is no rounded figure, however it is written', () => {
    for (const answer of ['0', '0 V', '0.0', '-0', 0, -0]) expectPlain(of(answer));
    // 0.15, which rounds to 0.
    for (const answer of ['0', '0.', 0, '0 %']) {
      expect(reviewAnswer('operatingPoint', worst, answer, { of: 'dropFraction' })).toMatchObject({
        verdict: 'wrong',
        answer: 0,
        slips: [],
      });
    }
    const idle = { ...worst, load: { power: 0 } };
    for (const answer of ['0', '0 %', 0, -0])
      expect(reviewAnswer('operatingPoint', idle, answer, { of: 'dropFraction' }).verdict).toBe('right');
  });

  test('more digits than a number holds are as good as all of them', () => {
    expect(of('42.500000000000000000000000000001 V').verdict).toBe('right');
    expect(of('42.50000100000000000000000000 V').verdict).toBe('wrong');
    expectInputError(() => of('1e400'), 'answer', 'range');
    expect(of('1e-400')).toMatchObject({ verdict: 'wrong', slips: [] });
  });

  test('percent and fraction', () => {
    const drop = { of: 'dropFraction' };
    for (const answer of ['15 %', '15%', '15 percent', '15 per cent', '0.15'])
      expect(reviewAnswer('operatingPoint', worst, answer, drop).verdict).toBe('right');
    expect(reviewAnswer('operatingPoint', worst, '15', drop).slips).toMatchObject([{ slip: 'percent-for-fraction', value: 15 }]);
    expect(reviewAnswer('operatingPoint', worst, '0.15 %', drop).slips).toMatchObject([{ slip: 'fraction-for-percent' }]);
  });

  test('a current in mA, and one that does not say so', () => {
    const current = { of: 'current' };
    expect(reviewAnswer('operatingPoint', worst, '600 mA', current).verdict).toBe('right');
    expect(reviewAnswer('operatingPoint', worst, '600', current).slips).toMatchObject([{ slip: 'times-thousand', value: 600 }]);
  });

  test('a length in feet, and one that does not say so', () => {
    const question = { cable: cable('cat5e'), poeClass: 2, cabling: 'none', maximumResistance: { ohms: 13, loop: 'pairLoop' } } as const;
    expect(reviewAnswer('maximumRun', question, '227.4 ft').verdict).toBe('right'); // 69.296 m
    expect(reviewAnswer('maximumRun', question, '227.4').slips).toMatchObject([{ slip: 'feet-in-answer' }]);
  });

  test('no, in a few words', () => {
    const over = { ...worst, load: { power: 60 } };
    for (const answer of [
      'No.',
      'none',
      'no, the line cannot carry it',
      'Not possible',
      'cannot be',
      'never',
      'It is impossible.',
      "it doesn't work",
      'It will not work!',
      'no solution',
      'there is no such current',
      "can't be done",
    ])
      expect(reviewAnswer('operatingPoint', over, answer).verdict, answer).toBe('right');
  });

  test('words that begin with no and do not say it', () => {
    const over = { ...worst, load: { power: 60 } };
    for (const answer of [
      'nothing to say',
      'no idea',
      'cannot say',
      'never mind',
      'None of the above',
      'impossible to tell',
      'no, wait',
      'not sure',
      'any idea',
      'no clue',
      "can't work it out",
    ]) {
      for (const question of [worst, over]) {
        const { expected } = expectInputError(() => reviewAnswer('operatingPoint', question, answer), 'answer', 'unreadable');
        expect(expected).toMatch(/or the word no$/);
      }
    }
  });
});

describe('any length at all', () => {
  const circuit = { supplyVoltage: { low: 21, high: 28 }, conductor: awg(18) } as const;
  const ANY = ['any length', 'no limit', 'unlimited', 'Infinite.'];

  test('is right where nothing bounds it', () => {
    for (const answer of [...ANY, 'none'])
      expect(reviewAnswer('maximumRun', { ...circuit, load: { power: 0 } }, answer).verdict).toBe('right');
  });

  test('is wrong where none will do, and where there is a longest', () => {
    const none = { ...circuit, load: { power: 6 }, minimumVoltage: 22 };
    for (const answer of ANY) {
      expect(reviewAnswer('maximumRun', none, answer).verdict).toBe('wrong');
      expect(reviewAnswer('maximumRun', { ...none, minimumVoltage: 19 }, answer)).toMatchObject({ verdict: 'wrong', slips: [] });
    }
    expect(reviewAnswer('maximumRun', none, 'no').verdict).toBe('right');
  });
});

describe('the step to look at', () => {
  test('is the one that is under 0, where that is what says no', () => {
    const checked = (bundle: number, ambient: number): string | undefined =>
      reviewAnswer('ampacity', { code: 'NEC 2017', gauge: 24, bundle, ambient }, '0.5 A').check?.symbol;
    expect([checked(200, 30), checked(20, 70)]).toEqual(['m_N', 'm_T']);
    const hot = { cable: cable('cat6'), bundle: 100, pairCurrent: 5 } as const;
    expect(reviewAnswer('bundleRise', { ...hot, installation: 'closed-conduit' }, '30 K').check?.symbol).toBe('b');
    expect(reviewAnswer('bundleRise', { ...hot, installation: 'open-air' }, '30 K').check?.symbol).toBe('B');
  });

  test('is none where no figure says no', () => {
    const review = reviewAnswer('bundleRise', { cable: cable('cat6'), bundle: 9, pairCurrent: 1, installation: 'wound-drum' }, '30 K');
    expect(review).toMatchObject({ verdict: 'wrong', slips: [] });
    expect(review.check).toBeUndefined();
    expect(review.message).toBe('Wrong: a cable left wound on its drum has no steady figure: unwind it before it is powered.');
  });

  test('is of the row that governs', () => {
    const input = { supplyVoltage: { low: 22, high: 26 }, resistance: { low: 3.8, high: 4.2 }, load: { power: 10 } };
    for (const answer of ['19.3 V', '30 V'])
      expect(reviewAnswer('bounds', { fn: 'operatingPoint', input }, answer).check?.symbol).toBe('D_3');
    // The drop at the worst end, 2.11 V, is what 19.9 V leaves of 22 V.
    const { slips, check } = reviewAnswer('bounds', { fn: 'operatingPoint', input }, '2.11 V');
    expect(slips.map(({ slip }) => slip)).toEqual(['drop-for-voltage', 'unstable-root']);
    expect(check?.symbol).toBe('U_3');
  });

  test('is one that the result rests on', () => {
    const question = { cable: cable('cat5e'), poeClass: 2, cabling: 'none', maximumResistance: { ohms: 13, loop: 'pairLoop' } } as const;
    // Not the power of the class, which comes first on the page.
    expect(reviewAnswer('maximumRun', question, '50 m').check?.symbol).toBe('r');
    expect(reviewAnswer('operatingPoint', worst, '0.9 A', { of: 'current' }).check?.symbol).toBe('D');
    expect(reviewAnswer('runResistance', { segments: [], connections: 2 }, '3 ohm', { of: 'twoPair' }).check?.symbol).toBe('R_w');
  });

  test('is the figure itself where only the answer went wrong', () => {
    expect(reviewAnswer('operatingPoint', worst, '600', { of: 'current' }).check?.symbol).toBe('I');
  });
});

describe('slips that are told apart', () => {
  const slipsOf = (...asked: Parameters<typeof reviewAnswer>): string[] => reviewAnswer(...asked).slips.map(({ slip }) => slip);

  test('a reading that was not brought to 20 °C is no cold resistance', () => {
    const reading = { pairs: { '1,2': 14.6 }, leadResistance: 0.5, temperature: 35, scope: 'cable' } as const;
    expect(slipsOf('fromMeasurement', reading, '14.1 ohm', { of: 'loops.at20.pairLoop.value' })).toEqual(['reading-not-at-20']);
  });

  test('the open voltage times the current', () => {
    const readings = { openVoltage: 24, loadedVoltage: 21.6, current: 0.5 };
    expect(slipsOf('loadedVoltage', readings, '12 W', { of: 'loadPower.value' })).toEqual(['open-for-loaded']);
  });

  test('a run that is as long as its resistance allows, and longer than a link may be', () => {
    // (12.5 Ω - 2 · 0.2 Ω) / 0.0938 Ω/m = 129.0 m.
    const { slips } = reviewAnswer('maximumRun', { cable: cable('cat5e'), poeClass: 4, connections: 2 }, '129.0 m');
    expect(slips.find(({ slip }) => slip === 'cabling-rule-left-out')?.value).toBeCloseTo(12.1 / 0.0938, 9);
  });

  test('own tap alone, of powers too', () => {
    const network = {
      supplies: [{ at: 'rack', voltage: 24 }],
      sections: [
        { from: 'rack', to: 'left', resistance: 2 },
        { from: 'left', to: 'right', conductor: awg(18), length: 60 },
      ],
      taps: [
        { at: 'left', load: { power: 5 } },
        { at: 'right', load: { power: 5 } },
      ],
    };
    expect(slipsOf('solveNetwork', network, '23.03 V')).toEqual(['own-tap-only']);
  });

  test('20 °C that was not subtracted', () => {
    // 0.08422 Ω/m (1 + 0.00393 · 55).
    expect(slipsOf('resistancePerMetre', { conductor: awg(24), temperature: 55 }, '102 mohm/m')).toEqual(['twenty-left-out']);
  });
});

describe('a figure beside a no', () => {
  // No length of it has 2 Ω on one pair and 30 Ω on another.
  const unlike = { pairs: { '1,2': 2, '3,6': 30 }, cable: cable('cat6'), scope: 'permanent-link', connections: 2 } as const;

  test('the answer is no', () => {
    expect(reviewAnswer('fromMeasurement', unlike, 'no').message).toBe('Right: no length of this cable gives all of these readings.');
    expect(reviewAnswer('fromMeasurement', unlike, '30 m').verdict).toBe('wrong');
  });

  test('and what the readings do come to can be asked about', () => {
    // The highest pair, as a meter sees it.
    expect(reviewAnswer('fromMeasurement', unlike, '30 ohm', { of: 'loops.at20.pairLoop.value' }).verdict).toBe('right');
    expect(reviewAnswer('operatingPoint', { ...worst, load: { power: 60 } }, '50 W', { of: 'maximumLoadPower' }).verdict).toBe('right');
    expect(reviewAnswer('operatingPoint', { ...worst, load: { power: 60 } }, 'no', { of: 'maximumLoadPower' }).verdict).toBe('wrong');
  });
});

describe('slips that cannot be meant', () => {
  const claimed = (of: Parameters<typeof reviewAnswer<'maximumRun'>>[1], answer: string): string[] =>
    reviewAnswer('maximumRun', of, answer).slips.map(({ slip }) => slip);

  test('no pairs in a two-wire circuit: half and twice the length', () => {
    const question = { supplyVoltage: 24, conductor: awg(18), load: { current: 1 }, permittedDrop: { volts: 2.4 } }; // 57.3 m
    const { value } = reviewAnswer('maximumRun', question, 'no').expected;
    expect(claimed(question, (value / 2).toPrecision(5))).toEqual([]);
    expect(claimed(question, (value * 2).toPrecision(5))).toEqual(['one-way-length']);
  });

  test('a limit that is stated as a pair loop stays one where the loop of the power is mistaken', () => {
    const loop = { cable: cable('cat5e'), poeClass: 4, cabling: 'none', maximumResistance: { ohms: 5, loop: 'pairLoop' } } as const;
    const { value } = reviewAnswer('maximumRun', loop, 'no').expected;
    expect(claimed(loop, (value * 2).toPrecision(5))).toEqual(['pairset-for-pair-loop']);
    expect(claimed(loop, (value / 2).toPrecision(5))).toEqual([]);
  });

  test('two pairsets that are not there', () => {
    // 2.814 Ω of one pairset: half of it over one pairset, and the whole over two.
    expect(
      reviewAnswer('powerAtPd', { poeClass: 4, resistance: runResistance(run) }, '1.407 ohm', { of: 'resistance' }).slips,
    ).toMatchObject([{ slip: 'four-pair-for-pairset' }]);
    expect(
      reviewAnswer('powerAtPd', { poeClass: 8, resistance: runResistance(run) }, '2.814 ohm', { of: 'resistance' }).slips,
    ).toMatchObject([{ slip: 'pairset-for-four-pair' }]);
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

  test('a step by its symbol is a figure that may be asked for', () => {
    const line = { supplyVoltage: 24, resistance: 4, load: { power: 30 } };
    expect(reviewAnswer('mostPower', line, '4.22 A', { of: 'I_2' }).verdict).toBe('right');
    expect(reviewAnswer('mostPower', line, '1.78 A', { of: 'I_2' }).verdict).toBe('wrong');
  });

  test('a result that the calculation does not have', () => {
    expect(expectInputError(() => reviewAnswer('operatingPoint', worst, 1, { of: 'colour' }), 'options.of', 'unknown').expected).toContain(
      "'loadVoltage'",
    );
  });
});
