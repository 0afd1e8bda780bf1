import { describe, expect, test } from 'vitest';
import { type AwgOptions, awg } from '../../../src/conductor/awg.ts';
import { conductorFromResistance } from '../../../src/conductor/conductor-from-resistance.ts';
import { loopResistance } from '../../../src/conductor/loop-resistance.ts';
import { type MaterialName, material } from '../../../src/conductor/material.ts';
import { resistancePerMetre } from '../../../src/conductor/resistance-per-metre.ts';
import { MATERIALS } from '../../../src/conductor/tables/materials.ts';
import { source } from '../../../src/sources/source.ts';
import { as, expectInputError, expectPlain, expectWithin, frozen, NOT_NUMBERS } from '../../helpers/expectations.ts';

const NAMES = Object.keys(MATERIALS) as MaterialName[];

describe.each(NAMES)('%s', (name) => {
  test('is plain data with a source, and a fresh object every time', () => {
    const metal = material({ name });
    expectPlain(metal);
    expect(metal.name).toBe(name);
    expect(source(metal.source).title).not.toBe('');
    expect(material({ name })).not.toBe(metal);
  });

  test('makes wire by gauge: resistance, area and conductivity belong together', () => {
    const wire = awg(10, { material: name });
    expectPlain(wire);
    expectWithin(wire.resistancePerMetre * wire.area * material({ name, diameter: wire.diameter }).conductivity, 1, 1e-12);
    expect(wire.name).toBe(name === 'annealed-copper' ? '10 AWG' : `10 AWG ${name.replaceAll('-', ' ')}`);
  });

  test('is taken to another temperature by its own coefficient, or not at all', () => {
    const wire = awg(10, { material: name });
    const sheet = { ohmsPerKilometre: 100, temperature: 60, material: name };
    expect(resistancePerMetre(wire, 20)).toBe(wire.resistancePerMetre);
    expect(conductorFromResistance({ ohmsPerKilometre: 100, material: name }).resistancePerMetre).toBe(0.1);
    if (material({ name }).temperatureCoefficient === undefined) {
      expect(Object.hasOwn(wire, 'temperatureCoefficient')).toBe(false);
      expectInputError(() => resistancePerMetre(wire, 60), 'temperature', 'conflict');
      expectInputError(() => loopResistance({ conductor: wire, length: 1, temperature: 19 }), 'temperature', 'conflict');
      expectInputError(() => conductorFromResistance(sheet), 'temperature', 'conflict');
    } else {
      const coefficient = material({ name, diameter: wire.diameter }).temperatureCoefficient as number;
      expectWithin(resistancePerMetre(wire, 60), wire.resistancePerMetre * (1 + 40 * coefficient), 1e-12);
      expectWithin(resistancePerMetre(conductorFromResistance(sheet), 60), 0.1, 1e-12);
    }
  });
});

test('a metal graded by diameter is the worst and the best of its bands until the diameter is known', () => {
  const { resistivity, bestResistivity = 0 } = material({ name: 'tinned-copper' });
  expect(material({ name: 'tinned-copper', diameter: 0.1 })).toMatchObject({ resistivity });
  expect(material({ name: 'tinned-copper', diameter: 10 })).toMatchObject({ resistivity: bestResistivity });
  expect(Object.hasOwn(material({ name: 'tinned-copper', diameter: 10 }), 'bestResistivity')).toBe(false);
  expect(material({ name: 'annealed-copper', diameter: 10 })).toStrictEqual(material({ name: 'annealed-copper' }));
});

test('strands choose the band: fewer are thicker', () => {
  const seven = awg(10, { material: 'tinned-copper', strands: 7 });
  const many = awg(10, { material: 'tinned-copper', strands: 105 });
  expect(seven.stranding).toBe('stranded');
  expect(seven.strands).toBe(7);
  expect(many.resistancePerMetre).toBeGreaterThan(seven.resistancePerMetre);
  expect(awg(10, { material: 'tinned-copper', stranding: 'stranded' }).resistancePerMetre).toBe(seven.resistancePerMetre);
});

describe('refuses', () => {
  test.each(['Copper', 'constructor', '__proto__', '', 7, null])('the metal %j', (name) => {
    expectInputError(() => material({ name: as<MaterialName>(name) }), 'name', 'unknown');
    expectInputError(() => awg(24, as<AwgOptions>({ material: name })), 'options.material', 'unknown');
  });

  test('no metal, a key that is not known, and what is no object', () => {
    expectInputError(() => material({ name: as<MaterialName>(undefined) }), 'name', 'missing');
    expectInputError(() => material({ name: 'silver', ...as<object>({ diametre: 0.5 }) }), 'diametre', 'unknown');
    expect(expectInputError(() => material({ name: as<MaterialName>('aluminum') }), 'name', 'unknown').message).toBe(
      'name: "aluminum" is unknown; did you mean "aluminium"?',
    );
    for (const input of [null, 0.5, 'silver', []]) expectInputError(() => material(as<{ name: MaterialName }>(input)), 'input', 'type');
  });

  test.each(NOT_NUMBERS)('%s for a diameter', (_label, value, code) => {
    expectInputError(() => material({ name: 'tinned-copper', diameter: as<number>(value) }), 'diameter', code);
  });

  test('wire thinner than its standard goes', () => {
    expectInputError(() => material({ name: 'tinned-copper', diameter: 0.07 }), 'name', 'conflict');
    expectInputError(() => awg(20, { material: 'hard-drawn-copper' }), 'options.material', 'conflict');
    expectInputError(() => awg(36, { material: 'tinned-copper', stranding: 'stranded' }), 'options.material', 'conflict');
  });

  test('strands in a solid wire, and no whole number of them', () => {
    expectInputError(() => awg(24, { stranding: 'solid', strands: 7 }), 'options.strands', 'conflict');
    for (const strands of [0, 1, 2.5, -7, 1e6]) expectInputError(() => awg(24, { strands }), 'options.strands', 'range');
    expectInputError(() => awg(24, { strands: as<number>('7') }), 'options.strands', 'type');
  });

  test('a family of diameters it does not know', () => {
    expectInputError(() => awg(24, as<AwgOptions>({ family: 'metric' })), 'options.family', 'unknown');
  });
});

test('a conductor that says no metal must have a coefficient; one that does may lack it', () => {
  const { temperatureCoefficient: _dropped, ...wire } = frozen(awg(24));
  expect(resistancePerMetre(wire)).toBe(wire.resistancePerMetre);
  expectInputError(() => resistancePerMetre(wire, 21), 'temperature', 'conflict');
});
