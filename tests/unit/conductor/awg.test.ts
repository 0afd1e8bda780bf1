import { describe, expect, test } from 'vitest';
import { AWG_FIELDS, type AwgOptions, type AwgSize, awg } from '../../../src/conductor/awg.ts';
import { source } from '../../../src/sources/source.ts';
import { as, expectInputError, expectPlain, expectWithin, frozen, NOT_NUMBERS } from '../../helpers/expectations.ts';
import { expectHeld } from '../../helpers/held-to-fields.ts';

test('36 AWG is 0.127 mm and 4/0 is 11.684 mm by definition (ASTM B258: 0.0050 in and 0.4600 in)', () => {
  expect(awg(36).diameter).toBe(0.127);
  expectWithin(awg('4/0').diameter, 11.684, 1e-15);
});

test('is plain data with everything a reader of it needs', () => {
  const conductor = awg(24);
  expectPlain(conductor);
  expect(conductor).toMatchObject({
    name: '24 AWG',
    geometry: 'nominal',
    material: 'annealed-copper',
    stranding: 'solid',
    temperatureCoefficient: 0.00393,
    basis: 'nominal',
  });
  expect(source(conductor.source).title).toContain('B258');
});

test('area, diameter and resistance belong together: r · A = 1/58 Ω·mm²/m (IACS)', () => {
  for (let gauge = -3; gauge <= 40; gauge++) {
    const { area, diameter, resistancePerMetre } = awg(gauge);
    expectWithin(area, (Math.PI * diameter ** 2) / 4, 1e-15);
    expectWithin(resistancePerMetre * area * 58, 1, 1e-15);
  }
});

test.each([
  ['1/0', 0],
  ['2/0', -1],
  ['3/0', -2],
  ['4/0', -3],
] as const)('%s is %d', (name, gauge) => {
  expect(awg(name)).toStrictEqual(awg(gauge));
  expect(awg(gauge).name).toBe(`${name} AWG`);
});

test('0 written as -0 is 1/0', () => {
  expect(awg(-0)).toStrictEqual(awg('1/0'));
});

test('stranding leaves the metal and adds 2 % for the lay (ASTM B496)', () => {
  for (const gauge of [-3, 0, 10, 24, 40]) {
    const solid = awg(gauge, { stranding: 'solid' });
    const stranded = awg(gauge, { stranding: 'stranded' });
    expect(stranded.area).toBe(solid.area);
    expectWithin(stranded.resistancePerMetre, 1.02 * solid.resistancePerMetre, 1e-15);
    expect(stranded.stranding).toBe('stranded');
    expect(stranded.name).toBe(`${solid.name} stranded`);
  }
});

test('absent and undefined options mean the defaults', () => {
  expect(awg(24, {})).toStrictEqual(awg(24));
  expect(awg(24, { stranding: undefined, material: undefined })).toStrictEqual(awg(24));
  expect(awg(24, { material: 'annealed-copper' })).toStrictEqual(awg(24));
});

test('hands out a fresh object every time, and leaves its options alone', () => {
  const options = frozen<AwgOptions>({ stranding: 'stranded' });
  const first = awg(24, options);
  expect(awg(24, options)).not.toBe(first);
  expect(Object.isFrozen(options)).toBe(true);
});

describe('refuses', () => {
  test.each([-4, 41, 24.5, 1e300, -1e300])('a gauge of %d', (size) => {
    expectInputError(() => awg(size), 'size', 'range');
  });

  test.each(['5/0', '0/0', '24', '1/0 ', '-1/0', '', 'constructor', '4/0/0'])('the name %j', (size) => {
    expectInputError(() => awg(as<AwgSize>(size)), 'size', 'unknown');
  });

  test.each(NOT_NUMBERS)('%s for a size', (_label, value) => {
    expectInputError(() => awg(as<AwgSize>(value)), 'size');
  });

  test('no size', () => {
    expectInputError(() => awg(as<AwgSize>(undefined)), 'size', 'missing');
  });

  test('a stranding or a metal it does not know', () => {
    for (const name of ['Solid', 'constructor', '', 7, null, Object.create(null)]) {
      expectInputError(() => awg(24, as<AwgOptions>({ stranding: name })), 'options.stranding', 'unknown');
    }
    for (const name of ['gold', 'constructor', '__proto__', '', 7, null]) {
      expectInputError(() => awg(24, as<AwgOptions>({ material: name })), 'options.material', 'unknown');
    }
  });

  test('options that are no object', () => {
    for (const options of [null, 'stranded', 7, ['stranded'], 50n]) {
      expectInputError(() => awg(24, as<AwgOptions>(options)), 'options', 'type');
    }
  });
});

test('the guards of awg accept and refuse what its fields do', () => {
  expectHeld(AWG_FIELDS, {}, (options) => awg(20, options), { path: 'options' });
});
