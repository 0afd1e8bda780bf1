/** `resistancePerMetre`, `loopResistance` and `toMaximum`: what they take, what they refuse, what they leave alone. */
import { describe, expect, test } from 'vitest';
import { awg } from '../../../src/conductor/awg.ts';
import type { Conductor } from '../../../src/conductor/conductor.ts';
import { conductorFromResistance } from '../../../src/conductor/conductor-from-resistance.ts';
import { type LoopResistanceInput, loopResistance } from '../../../src/conductor/loop-resistance.ts';
import { resistancePerMetre } from '../../../src/conductor/resistance-per-metre.ts';
import { toMaximum } from '../../../src/conductor/to-maximum.ts';
import { as, expectInputError, expectPlain, expectWithin, frozen, NOT_NUMBERS } from '../../helpers/expectations.ts';

const wire = frozen(awg(24));

describe('resistancePerMetre', () => {
  test('is the stated one at 20 °C, which is also the default', () => {
    expect(resistancePerMetre(wire)).toBe(wire.resistancePerMetre);
    expect(resistancePerMetre(wire, 20)).toBe(wire.resistancePerMetre);
    expect(resistancePerMetre(wire, undefined)).toBe(wire.resistancePerMetre);
  });

  test('rises by 0.393 % per kelvin, from -100 °C to 400 °C', () => {
    for (const temperature of [-100, -40, 0, 19, 60, 75, 400]) {
      expectWithin(resistancePerMetre(wire, temperature), wire.resistancePerMetre * (1 + 0.00393 * (temperature - 20)), 1e-15);
    }
    expect(resistancePerMetre(wire, -100)).toBeGreaterThan(0);
  });

  test('a conductor that does not change with temperature is allowed', () => {
    expect(resistancePerMetre({ ...wire, temperatureCoefficient: 0 }, 400)).toBe(wire.resistancePerMetre);
  });

  test.each(NOT_NUMBERS)('refuses %s for a temperature, a resistance or a coefficient', (_label, value, code) => {
    const number = as<number>(value);
    expectInputError(() => resistancePerMetre(wire, number), 'temperature', code);
    expectInputError(() => resistancePerMetre({ ...wire, resistancePerMetre: number }), 'conductor.resistancePerMetre', code);
  });

  test('refuses temperatures outside its range', () => {
    for (const temperature of [-100.1, -273.15, 400.1])
      expectInputError(() => resistancePerMetre(wire, temperature), 'temperature', 'range');
  });

  test('refuses what is no conductor', () => {
    for (const value of [null, 24, '24 AWG', [wire], 24n])
      expectInputError(() => resistancePerMetre(as<Conductor>(value)), 'conductor', 'type');
    expectInputError(() => resistancePerMetre(as<Conductor>(undefined)), 'conductor', 'missing');
    expectInputError(() => resistancePerMetre(as<Conductor>({})), 'conductor.resistancePerMetre', 'missing');
    expectInputError(() => resistancePerMetre(as<Conductor>(Object.create(null))), 'conductor.resistancePerMetre', 'missing');
    expectInputError(() => resistancePerMetre(as<Conductor>({ resistancePerMetre: 0.08 })), 'conductor.temperatureCoefficient', 'missing');
    expectInputError(() => resistancePerMetre({ ...wire, resistancePerMetre: 0 }), 'conductor.resistancePerMetre', 'range');
    expectInputError(() => resistancePerMetre({ ...wire, temperatureCoefficient: -0.001 }), 'conductor.temperatureCoefficient', 'range');
    expectInputError(
      () => resistancePerMetre({ ...wire, temperatureCoefficient: Number.NaN }),
      'conductor.temperatureCoefficient',
      'range',
    );
    expectInputError(
      () => resistancePerMetre({ ...wire, temperatureCoefficient: as<number>('0.004') }),
      'conductor.temperatureCoefficient',
      'type',
    );
  });
});

describe('loopResistance', () => {
  test('is out and back: two conductors of the length', () => {
    expectWithin(loopResistance({ conductor: wire, length: 100 }), 200 * wire.resistancePerMetre, 1e-15);
    expectWithin(loopResistance({ conductor: wire, length: 100, temperature: 60 }), 200 * resistancePerMetre(wire, 60), 1e-15);
  });

  test('of no length is 0', () => {
    expect(loopResistance({ conductor: wire, length: 0 })).toBe(0);
  });

  test('undefined means absent, and a frozen input is left alone', () => {
    expect(loopResistance(frozen({ conductor: wire, length: 100, temperature: undefined }))).toBe(
      loopResistance({ conductor: wire, length: 100 }),
    );
  });

  test.each(NOT_NUMBERS)('refuses %s for a length or a temperature', (_label, value, code) => {
    const number = as<number>(value);
    expectInputError(() => loopResistance({ conductor: wire, length: number }), 'length', code);
    expectInputError(() => loopResistance({ conductor: wire, length: 1, temperature: number }), 'temperature', code);
  });

  test('refuses a negative length, no length, no conductor, no input', () => {
    expectInputError(() => loopResistance({ conductor: wire, length: -1 }), 'length', 'range');
    expectInputError(() => loopResistance(as<LoopResistanceInput>({ conductor: wire })), 'length', 'missing');
    expectInputError(() => loopResistance(as<LoopResistanceInput>({ length: 1 })), 'conductor', 'missing');
    for (const input of [null, 7, 'x', []]) expectInputError(() => loopResistance(as<LoopResistanceInput>(input)), 'input', 'type');
    expectInputError(() => loopResistance(as<LoopResistanceInput>(undefined)), 'input', 'missing');
  });
});

describe('toMaximum', () => {
  test('adds 2 % to a nominal conductor for ±1 % of diameter, and says so', () => {
    const most = toMaximum({ conductor: wire });
    expectPlain(most);
    expectWithin(most.resistancePerMetre, 1.02 * wire.resistancePerMetre, 1e-15);
    expect(most).toStrictEqual({ ...wire, resistancePerMetre: most.resistancePerMetre, basis: 'maximum', source: 'astm-b3' });
  });

  test('2 % for the lay and 2 % for the tolerance: a stranded conductor carries both', () => {
    expectWithin(
      toMaximum({ conductor: awg(24, { stranding: 'stranded' }) }).resistancePerMetre,
      1.02 * 1.02 * wire.resistancePerMetre,
      1e-15,
    );
  });

  test('adds nothing twice, and nothing to a maximum or a measurement', () => {
    const most = toMaximum({ conductor: wire });
    expect(toMaximum({ conductor: most })).toStrictEqual(most);
    for (const basis of ['maximum', 'measured'] as const) {
      const given = frozen(conductorFromResistance({ ohmsPerKilometre: 96, basis }));
      expect(toMaximum({ conductor: given })).toStrictEqual(given);
      expect(toMaximum({ conductor: given })).not.toBe(given);
    }
  });

  test('refuses what is no conductor', () => {
    expectInputError(() => toMaximum({ conductor: as<Conductor>(null) }), 'conductor', 'type');
    expectInputError(() => toMaximum({ conductor: as<Conductor>(undefined) }), 'conductor', 'missing');
    expectInputError(() => toMaximum({ conductor: { ...wire, resistancePerMetre: Number.NaN } }), 'conductor.resistancePerMetre', 'range');
  });
});
