/** The edition of the figures moves whenever one of them does. */
import { describe, expect, test } from 'vitest';
import { changedFigures, editionRecord, figuresOf, writtenRecord } from '../../../scripts/data-edition.mts';
import { DATA_EDITION } from '../../../src/sources/data-edition.ts';
import { sourceTexts } from '../../support/files.ts';

const texts = sourceTexts();

test('no figure changed since the edition was named; if one did: a new DATA_EDITION, then npx tsx scripts/data-edition.mts', () => {
  expect(editionRecord()).toEqual(writtenRecord());
});

test('an edition is a year and a month', () => {
  expect(DATA_EDITION).toMatch(/^20\d\d-(?:0[1-9]|1[0-2])$/);
});

describe('the figures', () => {
  const figures = figuresOf(texts);

  test.each([
    ['cable/CABLES', 'cat6[5][0] = 0.0938'],
    ['conductor/COPPER_COEFFICIENT', ' = 0.00393'],
    ['ethernet/PSE_VOLTAGE_MAX', ' = 57'],
    ['plan/CABLING_RULES', '.TIA-568.channelLength.limit = 100'],
  ])('hold those of %s', (name, line) => {
    expect(figures[name]?.some((found) => found.endsWith(line))).toBe(true);
  });

  test('of every cable, gauge, class and port type', () => {
    for (const [name, least] of [
      ['cable/CABLES', 24],
      ['conductor/IEC_60228', 100],
      ['conductor/NEC_TABLE_8', 100],
      ['ethernet/CLASS_TABLE', 60],
      ['ethernet/PORT_TABLE', 12],
    ] as const) {
      expect(figures[name]?.length, name).toBeGreaterThanOrEqual(least);
    }
  });

  test('a changed digit of any of them changes the record', () => {
    const before = editionRecord();
    const file = 'cable/cables.ts';
    const now = editionRecord({ ...texts, [file]: (texts[file] as string).replace('0.0938', '0.0939') });
    expect(changedFigures(before, now)).toEqual(['cable/CABLES']);
  });

  test.each([
    ['a default', "export const A: DefaultField<Ohms> = { nonNegative: 'Ω', default: 0.2, source: 'x' };", ['.default = 0.2']],
    ['no range of a field', 'export const A: Fields<In> = { n: { whole: [0, 1000], default: 0 } };', undefined],
    ['a negative number', 'const A = [-3] as const;', ['[0] = -3']],
    ['trailing zeros aside', 'const A = { b: 0.20 };', ['.b = 0.2']],
    ['no local variable', 'const a = 5;', undefined],
  ])('%s', (_what, text, lines) => {
    expect(figuresOf({ 'cable/a.ts': text })['cable/A']).toEqual(lines);
  });

  test('what reads figures has none of its own', () => {
    expect(figuresOf({ 'schedule/a.ts': 'const A = [1];' })).toEqual({});
  });
});
