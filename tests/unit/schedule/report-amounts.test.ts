import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cut, left, plain, right, widthOf, wrap } from '../../../src/pages/plain-text.ts';
import { amount, apart, brief, count, fixed, percent } from '../../../src/words/amount.ts';
import { describeRemedy } from '../../../src/words/remedy-words.ts';

describe('numbers for reading', () => {
  test.each([
    [12.95, 2, '12.95', '12.95'],
    [90, 1, '90.0', '90'],
    [-0.001, 2, '0.00', '0'],
    [0, 0, '0', '0'],
    [100, 0, '100', '100'],
    [1e9, 2, '1.00e9', '1.00e9'],
    [-2.5e6, 1, '-2.50e6', '-2.50e6'],
  ])('%d with %i decimals', (value, decimals, whole, short) => {
    expect(fixed(value, decimals)).toBe(whole);
    expect(brief(value, decimals)).toBe(short);
  });

  test.each([
    [44.30000001, 'V', '44.3 V'],
    [0.4328, 'A', '0.433 A'],
    [64.6176, 'm', '64.6 m'],
    [20, '°C', '20 °C'],
    [28, 'AWG', '28 AWG'],
  ])('%d %s', (value, unit, text) => {
    expect(amount(value, unit)).toBe(text);
  });

  test('two figures that differ look different', () => {
    expect(apart(13, 13, 'Ω')).toEqual(['13 Ω', '13 Ω']);
    expect(apart(13.001, 13, 'Ω')).toEqual(['13.001 Ω', '13 Ω']);
    const ohms = fc.double({ min: 0.01, max: 1e3, noNaN: true });
    fc.assert(
      fc.property(ohms, fc.double({ min: -0.1, max: 0.1, noNaN: true }), (value, step) => {
        fc.pre(Math.abs(step) > 1e-12);
        const [a, b] = apart(value, value + step, 'Ω');
        expect(a).not.toBe(b);
      }),
    );
  });

  test.each([
    [0.05, '5 %'],
    [-1, '-100 %'],
    [0, '0 %'],
    [0.0004, '0.04 %'],
    [-1e-9, '-0.0000001 %'],
  ])('the fraction %d', (fraction, text) => {
    expect(percent(fraction)).toBe(text);
  });

  test('counts', () => {
    expect([count(1, 'run'), count(2, 'run'), count(0, 'run')]).toEqual(['1 run', '2 runs', '0 runs']);
  });
});

describe('remedies in words', () => {
  const passes = { power: 'pass', cabling: 'pass', worst: 'pass' } as const;
  test.each([
    [{ remedy: 'shorter-run', from: 120, to: 88.96, unit: 'm' }, 'Shorten the installed cable from 120 m to at most 88.9 m'],
    [{ remedy: 'shorter-run', from: 120, to: 88.9, unit: 'm' }, 'Shorten the installed cable from 120 m to at most 88.9 m'],
    [{ remedy: 'shorter-cords', from: 14, to: 12.5, unit: 'm' }, 'Shorten the cords from 14 m to at most 12.5 m in all'],
    [{ remedy: 'cooler-route', from: 60, to: 43.9, unit: '°C' }, 'Keep the installed cable at 43 °C or cooler, in place of 60 °C'],
    [{ remedy: 'thicker-cords', from: 28, to: 24, unit: 'AWG' }, 'Use 24 AWG cords in place of 28 AWG'],
    [{ remedy: 'thicker-conductor', from: 22, to: 18, unit: 'AWG' }, 'Use 18 AWG copper or thicker, in place of 22 AWG'],
    [{ remedy: 'higher-port-type', from: 2, to: 4, unit: 'type' }, 'Move it to a Type 4 port, in place of Type 2'],
    [{ remedy: 'four-pair', from: 2, to: 4, unit: 'pairs' }, 'Power it over 4 pairs, if both the port and the device support that'],
    [{ remedy: 'fewer-connections', from: 6, to: 4, unit: 'connections' }, 'Make do with 4 connections in place of 6'],
  ] as const)('$0.remedy', (remedy, words) => {
    expect(describeRemedy({ ...remedy, verdict: passes })).toBe(words);
  });

  test('say what is left to doubt', () => {
    const remedy = { remedy: 'shorter-run', from: 120, to: 90, unit: 'm' } as const;
    expect(describeRemedy({ ...remedy, verdict: { power: 'pass', cabling: 'marginal', worst: 'marginal' } })).toMatch(
      /\(then close to a limit\)$/,
    );
    expect(describeRemedy({ ...remedy, verdict: { power: 'uncertain', cabling: 'marginal', worst: 'uncertain' } })).toMatch(
      /\(then still uncertain\)$/,
    );
  });
});

describe('text on a terminal', () => {
  // Unicode Standard Annex 11: wide and fullwidth characters take two columns, marks that combine none.
  test.each([
    ['abc', 3],
    ['窓口', 4],
    ['e\u0301', 1],
    ['ｆｕｌｌ', 8],
    ['🎭', 2],
    ['Ω °C', 4],
  ])('%j takes %i columns', (text, columns) => {
    expect(widthOf(text)).toBe(columns);
  });

  test('a column holds what fits, and marks what does not', () => {
    expect(left('abc', 5)).toBe('abc  ');
    expect(left('abcdef', 5)).toBe('abcd…');
    expect(cut('窓口案内', 4)).toBe('窓…');
    expect(right('abc', 5)).toBe('  abc');
    expect(right('abcdef', 5)).toBe('abcdef');
  });

  test('nothing that a terminal would obey is left', () => {
    expect(plain('a\u001b[2Jb\u0000\u0007c\u202ed')).toBe('a [2Jb c d');
  });

  test('lines break between words, never between a number and its unit', () => {
    expect(wrap('the line has 13 Ω and more', 15)).toBe('the line has\n13 Ω and more');
    expect(wrap('one two', 5, '- ', '  ')).toBe('- one\n  two');
  });

  test('no line is wider than asked, and no word is lost', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ minLength: 1, maxLength: 30 })), fc.integer({ min: 12, max: 60 }), (words, width) => {
        const text = words.join(' ');
        const lines = wrap(text, width, '  - ', '    ').split('\n');
        for (const line of lines) expect(widthOf(line)).toBeLessThanOrEqual(width);
        expect(
          lines
            .join('')
            .replace(/^ {2}- /, '')
            .replace(/\s/g, ''),
        ).toBe(plain(text).replace(/\s/g, ''));
      }),
    );
  });
});
