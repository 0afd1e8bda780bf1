/** Cores of a category cable as conductors of a two-wire circuit. */
import { describe, expect, test } from 'vitest';
import { type Cable, cable, cableCores } from '../../../src/cable/index.ts';
import { resistancePerMetre } from '../../../src/conductor/index.ts';
import { expectInputError, expectPlain } from '../../helpers/expectations.ts';

describe('of Category 5e, 9.38 Ω/100 m for each core (TIA-568.2-D)', () => {
  test.each([
    [1, 0.0938],
    [2, 0.0469],
    [4, 0.02345],
    [8, 0.011725],
  ])('%d in parallel have %d Ω/m', (cores, ohms) => {
    const conductor = cableCores({ cable: cable('cat5e'), cores });
    expect(conductor.resistancePerMetre).toBeCloseTo(ohms, 12);
    expect(conductor).toMatchObject({ name: `${cores} of cat5e`, basis: 'maximum', material: 'annealed-copper', stranding: 'solid' });
    expect(conductor.source).toBe(cable('cat5e').source);
    expectPlain(conductor);
  });

  test('hot, by the coefficient of the cable: 0.393 % for each kelvin', () => {
    expect(resistancePerMetre(cableCores({ cable: cable('cat5e'), cores: 2 }), 60)).toBeCloseTo(0.0469 * (1 + 0.00393 * 40), 12);
    const odd: Cable = { ...cable('cat5e'), temperatureCoefficient: 0.004 };
    expect(resistancePerMetre(cableCores({ cable: odd, cores: 2 }), 60)).toBeCloseTo(0.0469 * 1.16, 12);
  });
});

test('of a cord they are stranded', () => {
  expect(cableCores({ cable: cable('cord-24'), cores: 2 }).stranding).toBe('stranded');
});

test('as many as the cable has, and no more', () => {
  expect(cableCores({ cable: { ...cable('cat6'), pairs: 2 }, cores: 4 }).resistancePerMetre).toBeCloseTo(0.02345, 12);
  expectInputError(() => cableCores({ cable: { ...cable('cat6'), pairs: 2 }, cores: 5 }), 'cores', 'range');
  expectInputError(() => cableCores({ cable: cable('cat6'), cores: 9 }), 'cores', 'range');
  expectInputError(() => cableCores({ cable: cable('cat6'), cores: 0 }), 'cores', 'range');
  expectInputError(() => cableCores({ cable: cable('cat6'), cores: 1.5 }), 'cores');
});

test('what is no cable is refused', () => {
  expectInputError(() => cableCores({ cable: 7 as unknown as Cable, cores: 2 }), 'cable', 'type');
});
