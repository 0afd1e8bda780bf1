/** Single figures, and small stranded leads. */
import { expect, test } from 'vitest';
import { cablingFigure } from '../../../src/cable/cabling-figure.ts';
import { CABLING_FIGURES, type CablingFigureName, type FigureRow } from '../../../src/cable/cabling-figures-table.ts';
import { strandedLead } from '../../../src/cable/stranded-lead.ts';
import { source } from '../../../src/sources/source.ts';
import { as, expectInputError, expectPlain } from '../../helpers/expectations.ts';

const TABLE: Readonly<Record<string, FigureRow>> = CABLING_FIGURES;

test.each(Object.keys(TABLE))('%s has a value, a unit, words and a source', (name) => {
  const figure = cablingFigure(name as CablingFigureName);
  expectPlain(figure);
  const { about, value, unit, source: key } = figure;
  expect([about, value, unit, key]).toStrictEqual(TABLE[name]);
  expect(figure.value).toBeGreaterThan(0);
  expect(source(figure.source).title).not.toBe('');
});

test.each(['', 'constructor', 'Connection', 7, null])('there is no figure %o', (name) => {
  expectInputError(() => cablingFigure(as<CablingFigureName>(name)), 'name', 'unknown');
});

test('leads: a maximum for each gauge, a nominal figure where the chart has one', () => {
  expectPlain(strandedLead({ gauge: 24 }));
  expect(strandedLead({ gauge: 24 })).toMatchObject({
    name: '24 AWG stranded',
    basis: 'maximum',
    stranding: 'stranded',
    source: 'usb-leads',
  });
  expect(strandedLead({ gauge: 24, basis: 'nominal' })).toMatchObject({
    name: '24 AWG 7/32',
    basis: 'nominal',
    source: 'stranded-lead-chart',
  });
  for (const gauge of [22, 24, 26, 28]) {
    expect(strandedLead({ gauge, basis: 'nominal' }).resistancePerMetre).toBeLessThan(strandedLead({ gauge }).resistancePerMetre);
  }
  expectInputError(() => strandedLead({ gauge: 20, basis: 'nominal' }), 'gauge', 'unknown');
  for (const gauge of [23, 30, 2.4]) expectInputError(() => strandedLead({ gauge }), 'gauge', 'unknown');
  expectInputError(() => strandedLead({ gauge: as<number>('24') }), 'gauge', 'unknown');
  expectInputError(() => strandedLead({ gauge: 24, ...as<object>({ basis: 'measured' }) }), 'basis', 'unknown');
});
