/** The thinnest conductor, or cable, at hand that will do. */
import { describe, expect, test } from 'vitest';
import { cable, defineCable } from '../../../src/cable/index.ts';
import { awg, conductorFromResistance } from '../../../src/conductor/index.ts';
import { type SmallestConductor, type SmallestTwoWireInput, smallestConductor } from '../../../src/plan/index.ts';
import { expectInputError } from '../../helpers/expectations.ts';

/** A conductor by its stated maximum. [Ω/km] */
const of = (ohmsPerKilometre: number) => conductorFromResistance({ ohmsPerKilometre, name: `${ohmsPerKilometre} Ω/km` });
// 2 A over 50 m out and back: 50, 20 and 10 Ω/km drop 10, 4 and 2 V of 24 V.
const line: SmallestTwoWireInput = {
  candidates: [of(10), of(50), of(20)],
  supplyVoltage: { low: 24, high: 24 },
  length: 50,
  load: { current: 2 },
};
const chosen = (found: SmallestConductor): string | undefined => (found.feasible ? (found.conductor ?? found.cable)?.name : undefined);
const listed = (found: SmallestConductor): (string | boolean)[][] => found.candidates.map(({ name, passes }) => [name, passes]);

describe('of three conductors', () => {
  test('the thinnest that leaves 19 V is the one that drops 4 V', () => {
    const found = smallestConductor({ ...line, minimumVoltage: 19 });
    expect(chosen(found)).toBe('20 Ω/km');
    expect(found).toMatchObject({ feasible: true, governedBy: 'device-voltage', unit: 'V' });
    expect(found.feasible && found.margin).toBeCloseTo(1, 9);
  });

  test('all are listed, thinnest first, in whatever order they came', () => {
    expect(listed(smallestConductor({ ...line, minimumVoltage: 19 }))).toEqual([
      ['50 Ω/km', false],
      ['20 Ω/km', true],
      ['10 Ω/km', true],
    ]);
  });

  test('one that leaves just the minimum will do', () => {
    expect(chosen(smallestConductor({ ...line, minimumVoltage: 20 }))).toBe('20 Ω/km');
    expect(chosen(smallestConductor({ ...line, minimumVoltage: 20.001 }))).toBe('10 Ω/km');
  });

  test('where none will do, it is told by how much the thickest misses', () => {
    const found = smallestConductor({ ...line, minimumVoltage: 23 });
    expect(found).toMatchObject({ feasible: false, governedBy: 'device-voltage', unit: 'V' });
    expect(!found.feasible && found.shortfall).toBeCloseTo(1, 9);
  });

  test('where nothing is asked of them, the thinnest', () => {
    const found = smallestConductor({ ...line, load: { resistance: 100 } });
    expect(chosen(found)).toBe('50 Ω/km');
    expect(found).toMatchObject({ margin: 0, unit: '1' });
    expect(found).not.toHaveProperty('governedBy');
  });
});

test('a gauge counts at its maximum: 24 AWG, 84.2 Ω/km and 2 % more, is thinner than a stated 85 Ω/km', () => {
  const found = smallestConductor({ ...line, candidates: [of(85), awg(24)] });
  expect(found.candidates.map(({ name }) => name)).toEqual(['24 AWG', '85 Ω/km']);
  expect(found.candidates[0]?.resistancePerMetre).toBeCloseTo(0.0859, 4);
});

describe('of cables to a powered device', () => {
  // By their data sheets 90 and 57 Ω/km.
  const thin = defineCable({ name: 'thin', gauge: 24, maximumOhmsPerKilometre: 90 });
  const thick = defineCable({ name: 'thick', gauge: 22, maximumOhmsPerKilometre: 57 });
  // 8 Ω as one pairset are 88.9 m of the one and 140 m of the other.
  const to = (length: number, temperature?: number) =>
    smallestConductor({
      candidates: [thick, thin],
      length,
      temperature,
      poeClass: 2,
      cabling: 'none',
      maximumResistance: { ohms: 8, loop: 'twoPair' },
    });

  test('the thinner as far as it goes', () => {
    expect(chosen(to(88))).toBe('thin');
    expect(chosen(to(90))).toBe('thick');
    expect(to(150)).toMatchObject({ feasible: false, governedBy: 'device-resistance', unit: 'Ω' });
  });

  test('at the temperature of the run: at 60 °C copper has 15.7 % more', () => {
    expect(chosen(to(76, 60))).toBe('thin');
    expect(chosen(to(77.5, 60))).toBe('thick');
  });

  test('with the gauge check of a cabling standard, and without it, the same one governs', () => {
    const run = { candidates: [cable('cat5e')], length: 50, poeClass: 3 } as const;
    expect(smallestConductor(run)).toMatchObject({ feasible: true, governedBy: 'pse-power' });
    expect(smallestConductor({ ...run, cabling: 'none' })).toMatchObject({ feasible: true, governedBy: 'pse-power' });
  });
});

test('nonsense is named', () => {
  expectInputError(() => smallestConductor({ ...line, candidates: [] }), 'candidates', 'missing');
  expectInputError(() => smallestConductor({ ...line, candidates: [7 as never] }), 'candidates[0]', 'type');
});
