/** Conductors joined at both ends: areas add up, resistances are in parallel. */
import { describe, expect, test } from 'vitest';
import { awg, type Conductor, metric, parallelConductors } from '../../../src/conductor/index.ts';
import { expectInputError, expectPlain, frozen } from '../../helpers/expectations.ts';

/** A conductor with figures of its own. [mm², Ω/m] */
const wire = (name: string, area: number, resistancePerMetre: number): Conductor => ({ ...awg(24), name, area, resistancePerMetre });

describe('three unlike conductors of one metal', () => {
  const joined = parallelConductors(frozen([wire('a', 0.5, 0.04), wire('b', 0.75, 0.06), wire('c', 1.25, 0.12)]));

  test('areas add up', () => {
    expect(joined.area).toBeCloseTo(2.5, 12);
  });

  test('the diameter is that of one round wire of this area: √(4 · 2.5/π) mm', () => {
    expect(joined.diameter).toBeCloseTo(1.784124116, 8);
    expect(joined.geometry).toBe('equivalent');
  });

  test('conductances add up: 25 + 16.67 + 8.33 S·m is 50, so 0.02 Ω/m', () => {
    expect(joined.resistancePerMetre).toBeCloseTo(0.02, 12);
  });

  test('the name lists them, the rest is that of the first, and it is plain', () => {
    expect(joined).toMatchObject({ name: 'a + b + c', material: 'annealed-copper', basis: 'nominal' });
    expect(joined.temperatureCoefficient).toBe(awg(24).temperatureCoefficient);
    expectPlain(joined);
  });
});

test('three alike are counted: 3 of 24 AWG have 3 · 0.2047 mm², and a third of 84.2 Ω/km (ASTM B258)', () => {
  const joined = parallelConductors([awg(24), awg(24), awg(24)]);
  expect(joined.name).toBe('3 × 24 AWG');
  expect(joined.area).toBeCloseTo(3 * 0.2047, 3);
  expect(joined.resistancePerMetre * 1000).toBeCloseTo(84.2 / 3, 1);
});

test('one alone keeps its figures', () => {
  const { area, resistancePerMetre } = parallelConductors([awg(18)]);
  expect(area).toBe(awg(18).area);
  expect(resistancePerMetre).toBeCloseTo(awg(18).resistancePerMetre, 15);
});

test('none, two metals, two bases, or what is no conductor is refused', () => {
  expectInputError(() => parallelConductors([]), 'conductors', 'missing');
  const tinned = awg(24, { material: 'tinned-copper' });
  expectInputError(() => parallelConductors([awg(24), awg(24), tinned]), 'conductors[2].material', 'conflict');
  expectInputError(() => parallelConductors([awg(18), metric(0.75, { class: 5 })]), 'conductors[1].basis', 'conflict');
  expectInputError(() => parallelConductors([awg(24), {} as Conductor]), 'conductors[1].resistancePerMetre', 'missing');
  expectInputError(() => parallelConductors(awg(24) as unknown as Conductor[]), 'conductors', 'type');
});
