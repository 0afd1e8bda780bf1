import { describe, expect, test } from 'vitest';
import { awg } from '../../../src/conductor/awg.ts';
import { type ConductorFromResistanceInput, conductorFromResistance } from '../../../src/conductor/conductor-from-resistance.ts';
import { resistancePerMetre } from '../../../src/conductor/resistance-per-metre.ts';
import { as, expectInputError, expectPlain, expectWithin, frozen, NOT_NUMBERS } from '../../helpers/expectations.ts';

test('is plain data, a maximum of annealed copper at 20 °C unless told otherwise', () => {
  const conductor = conductorFromResistance({ ohmsPerKilometre: 96 });
  expectPlain(conductor);
  expect(conductor).toMatchObject({
    name: '96 Ω/km',
    geometry: 'equivalent',
    material: 'annealed-copper',
    stranding: 'solid',
    resistancePerMetre: 0.096,
    temperatureCoefficient: 0.00393,
    basis: 'maximum',
    source: 'data-sheet',
  });
});

test('area and diameter are those of the solid wire with that resistance', () => {
  const { area, diameter } = conductorFromResistance({ ohmsPerKilometre: 1000 / 58 });
  expectWithin(area, 1, 1e-15); // 1/58 Ω·mm²/m
  expectWithin(diameter, 2 / Math.sqrt(Math.PI), 1e-15);
});

test('a figure at another temperature is brought to 20 °C, and back', () => {
  for (const temperature of [-100, -40, 0, 20, 25, 75, 400]) {
    const conductor = conductorFromResistance({ ohmsPerKilometre: 96, temperature });
    expectWithin(resistancePerMetre(conductor, temperature), 0.096, 1e-15);
  }
  expect(conductorFromResistance({ ohmsPerKilometre: 96, temperature: 75 }).resistancePerMetre).toBeLessThan(0.096);
  expect(conductorFromResistance({ ohmsPerKilometre: 96, temperature: 0 }).resistancePerMetre).toBeGreaterThan(0.096);
});

test('fed with the resistance of a gauge, finds its diameter', () => {
  for (let gauge = -3; gauge <= 40; gauge++) {
    const wire = awg(gauge);
    expectWithin(conductorFromResistance({ ohmsPerKilometre: wire.resistancePerMetre * 1000 }).diameter, wire.diameter, 1e-14);
  }
});

test('keeps the name, stranding and basis that are given', () => {
  const conductor = conductorFromResistance({ ohmsPerKilometre: 53, name: 'row 7', stranding: 'stranded', basis: 'measured' });
  expect(conductor).toMatchObject({ name: 'row 7', stranding: 'stranded', basis: 'measured' });
  expect(conductorFromResistance({ ohmsPerKilometre: 53, name: '' }).name).toBe('');
});

test('undefined means absent, and the input is left alone', () => {
  const bare = conductorFromResistance({ ohmsPerKilometre: 53 });
  const input: ConductorFromResistanceInput = frozen({
    ohmsPerKilometre: 53,
    temperature: undefined,
    material: undefined,
    basis: undefined,
    stranding: undefined,
    name: undefined,
  });
  expect(conductorFromResistance(input)).toStrictEqual(bare);
});

describe('refuses', () => {
  test.each(NOT_NUMBERS)('%s for a resistance or a temperature', (_label, value, code) => {
    const number = as<number>(value);
    expectInputError(() => conductorFromResistance({ ohmsPerKilometre: number }), 'ohmsPerKilometre', code);
    expectInputError(() => conductorFromResistance({ ohmsPerKilometre: 96, temperature: number }), 'temperature', code);
  });

  test('0, negative and absent resistances', () => {
    for (const ohmsPerKilometre of [0, -0, -96, 1e13])
      expectInputError(() => conductorFromResistance({ ohmsPerKilometre }), 'ohmsPerKilometre', 'range');
    expectInputError(() => conductorFromResistance(as<ConductorFromResistanceInput>({})), 'ohmsPerKilometre', 'missing');
  });

  test('temperatures colder than -100 °C and hotter than 400 °C', () => {
    for (const temperature of [-100.1, 400.1]) {
      expectInputError(() => conductorFromResistance({ ohmsPerKilometre: 96, temperature }), 'temperature', 'range');
    }
  });

  test('names that are not on the list', () => {
    const with_ = (more: object): ConductorFromResistanceInput => as<ConductorFromResistanceInput>({ ohmsPerKilometre: 96, ...more });
    expectInputError(() => conductorFromResistance(with_({ material: 'constructor' })), 'material', 'unknown');
    expectInputError(() => conductorFromResistance(with_({ basis: 'typical' })), 'basis', 'unknown');
    expectInputError(() => conductorFromResistance(with_({ stranding: 'braided' })), 'stranding', 'unknown');
    expectInputError(() => conductorFromResistance(with_({ name: 7 })), 'name', 'type');
  });

  test('an input that is no object', () => {
    for (const input of [null, 96, '96', [96], 96n])
      expectInputError(() => conductorFromResistance(as<ConductorFromResistanceInput>(input)), 'input', 'type');
    expectInputError(() => conductorFromResistance(as<ConductorFromResistanceInput>(undefined)), 'input', 'missing');
  });
});
