import { describe, expect, test } from 'vitest';
import { powerAtPd } from '../../../src/ethernet/power-at-pd.ts';
import { checkNames, LIMITS } from '../../../src/limits/all.ts';
import { LIMIT_WORDS } from '../../../src/limits/limit-words.ts';
import { checkTitle, describeCheck, failing, type WordedCheck } from '../../../src/words/check-words.ts';

const SAMPLE: Omit<WordedCheck, 'name' | 'aspect' | 'unit'> = {
  value: 1.5,
  limit: 1,
  margin: -0.5,
  marginFraction: -0.5,
  verdict: 'fail',
  source: 'collapse',
};

describe('every check', () => {
  test.each(LIMITS)('$name has a title, and a sentence with its figures and nothing left to fill in', ({ name, aspect, unit }) => {
    expect(checkTitle(name)).toBe(LIMIT_WORDS[name].title);
    for (const readings of [undefined, { pairLoop: 2, twoPair: 1 }]) {
      const check: WordedCheck = { ...SAMPLE, name, aspect, unit, ...(readings === undefined ? {} : { readings }) };
      const facts = { grantedClass: 3, poeClass: 4, pseType: 1, standard: 'TIA-568' };
      for (const sentence of [describeCheck(check), failing(check, facts)]) {
        expect(sentence).not.toMatch(/[{}]|undefined|NaN/);
        expect(sentence).toMatch(/1/);
      }
    }
  });

  test('has a title of its own', () => {
    expect(new Set(checkNames.map(checkTitle)).size).toBe(checkNames.length);
  });
});

describe('a check in words', () => {
  test('that passes has its figures alone', () => {
    const { checks } = powerAtPd({ poeClass: 3, resistance: 10 });
    // IEEE 802.3: class 3 may draw 12.95 W and needs 37 V.
    expect(checks.map(describeCheck)).toContain('Power the class allows, pass: 12.95 W (≤ 12.95 W)');
    expect(checks.map(describeCheck).join()).toMatch(/Voltage the class needs, pass: \d\d\.\d+ V \(≥ 37 V\)/);
  });

  test('that fails says why', () => {
    const length = { ...SAMPLE, name: 'permanent-link-length', aspect: 'cabling', unit: 'm', value: 94, limit: 90, margin: -4 } as const;
    expect(describeCheck(length)).toBe('Installed length, FAIL: the installed cable is 94 m long; the standard allows 90 m');
  });

  test('knows the end of a window that is nearer', () => {
    const port = { ...SAMPLE, name: 'pse-voltage', aspect: 'power', unit: 'V' } as const;
    expect(describeCheck({ ...port, value: 58, limit: 57, margin: -1 })).toBe(
      'Voltage of the port, FAIL: the port is stated to have 58 V; its type has at most 57 V',
    );
    expect(describeCheck({ ...port, value: 43, limit: 44, margin: -1 })).toContain('its type has at least 44 V');
  });

  test('a fraction is a percentage, a category and connections are numbers', () => {
    const drop = { ...SAMPLE, name: 'voltage-drop', aspect: 'power', unit: '1', value: 0.05, limit: 0.03 } as const;
    expect(describeCheck(drop)).toContain('5 % of the voltage is lost along the run; 3 % is permitted');
    expect(describeCheck({ ...drop, name: 'connections', aspect: 'cabling', value: 5, limit: 4 })).toContain('there are 5 connections');
  });
});

test.each<[string, unknown]>([
  ['nothing', undefined],
  ['a name', 'pd-power'],
  ['a check that nobody knows', { ...SAMPLE, name: 'colour', unit: 'V' }],
  ['a verdict that nobody knows', { ...SAMPLE, name: 'pd-power', unit: 'W', verdict: 'maybe' }],
])('describeCheck refuses %s', (_what, check) => {
  expect(() => describeCheck(check as WordedCheck)).toThrow(expect.objectContaining({ name: 'InputError' }));
});

test('a title of no check is refused', () => {
  expect(() => checkTitle('constructor' as 'pd-power')).toThrow(expect.objectContaining({ code: 'unknown', parameter: 'name' }));
});
