import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ampacity, filmCoefficient, remotePowering } from '../../../src/cable/index.ts';
import {
  type BundleRiseInput,
  bundleRise,
  cable,
  defineCable,
  type Installation,
  operatingPoint,
  runResistance,
  type SettledBundle,
} from '../../../src/index.ts';
import { as, expectInputError, expectPlain, expectWithin, frozen, NOT_NUMBERS } from '../../helpers/expectations.ts';

const settled = (input: BundleRiseInput): SettledBundle => {
  const found = bundleRise(frozen(input));
  if (!found.feasible) throw new Error(found.reason);
  return found;
};
const fifty: BundleRiseInput = { cable: cable('cat6'), bundle: 50, pairCurrent: 0.6, ambient: 30, installation: 'open-air' };
const ways: readonly Installation[] = ['open-air', 'closed-conduit', { filmCoefficient: 3, thermalResistivity: 7 }];

describe('energy', () => {
  test.each(ways)('heat per metre times length is what the cable loses, in %o', (installation) => {
    const found = settled({ ...fifty, installation });
    const segments = [{ cable: fifty.cable, length: 80, temperature: found.conductorTemperature }];
    const { fourPair } = runResistance({ segments, basis: 'nominal' });
    // Both pairsets at 0.6 A: 1.2 A through the loop of four pairs.
    const point = operatingPoint({ supplyVoltage: 50, resistance: fourPair, load: { current: 1.2 } });
    expect(point.feasible).toBe(true);
    if (point.feasible) expectWithin(found.cableHeatPerMetre * 80, point.lineLoss, 1e-9);
    expectWithin(found.heatPerMetre, 50 * found.cableHeatPerMetre, 1e-12);
  });

  test.each(ways)('what is made is what leaves the surface, in %o', (installation) => {
    const found = settled({ ...fifty, installation });
    const leaves = (Math.PI * found.diameter * found.filmCoefficient * found.surfaceRise) / 1000;
    expectWithin(leaves, found.heatPerMetre, 1e-12);
    if (installation === 'open-air') {
      const film = filmCoefficient({ diameter: found.diameter, surfaceTemperature: 30 + found.surfaceRise, ambient: 30 });
      expectWithin(found.filmCoefficient, film, 1e-12);
    }
  });
});

describe('the closed form at a constant film coefficient', () => {
  test('is the fixed point that iteration reaches', () => {
    const found = settled({ ...fifty, installation: { filmCoefficient: 4, thermalResistivity: 8 } });
    const diameter = (1.15 * Math.sqrt(50) * 6) / 1000;
    const cold = 50 * 8 * 0.3 ** 2 * cable('cat6').nominalResistancePerMetre;
    let rise = 0;
    for (let i = 0; i < 200; i++) {
      rise = cold * (1 + 0.00393 * (30 + rise - 20)) * (8 / (4 * Math.PI) + 1 / (Math.PI * diameter * 4));
    }
    expectWithin(found.rise, rise, 1e-12);
  });

  test('no steady state where every kelvin adds more heat than it sheds', () => {
    const hot = bundleRise({ ...fifty, pairCurrent: 9, installation: { filmCoefficient: 4 } });
    expect(hot).toMatchObject({ feasible: false, reason: 'no-steady-state', conductorCurrent: 4.5 });
    expect(bundleRise({ ...fifty, pairCurrent: 9 })).toMatchObject({ feasible: false, reason: 'no-steady-state' });
  });
});

describe('laws', () => {
  const input = fc.record({
    cable: fc.constantFrom(cable('cat5e'), cable('cat6'), cable('cat6a')),
    bundle: fc.integer({ min: 2, max: 192 }),
    pairCurrent: fc.double({ min: 0, max: 1, noNaN: true }),
    ambient: fc.double({ min: -20, max: 50, noNaN: true }),
    installation: fc.constantFrom(...ways),
  });
  const riseOf = (found: ReturnType<typeof bundleRise>): number => (found.feasible ? found.rise : Number.POSITIVE_INFINITY);

  test('more cables, more current or more pairs are never cooler; a thinner cable of the same copper neither', () => {
    fc.assert(
      fc.property(input, (one) => {
        fc.pre(one.pairCurrent === 0 || one.pairCurrent > 1e-6);
        const rise = riseOf(bundleRise(one));
        const slack = 1 + 1e-12;
        expect(riseOf(bundleRise({ ...one, bundle: one.bundle + 1 })) * slack).toBeGreaterThanOrEqual(rise);
        expect(riseOf(bundleRise({ ...one, pairCurrent: one.pairCurrent * 1.01 })) * slack).toBeGreaterThanOrEqual(rise);
        expect(riseOf(bundleRise({ ...one, energisedPairs: 2 }))).toBeLessThanOrEqual(rise * slack);
        expect(riseOf(bundleRise({ ...one, outsideDiameter: 4 })) * slack).toBeGreaterThanOrEqual(rise);
        expect(riseOf(bundleRise({ ...one, basis: 'maximum' })) * slack).toBeGreaterThanOrEqual(rise);
      }),
    );
  });

  test('every result is plain data with its range, validity and caution', () => {
    fc.assert(
      fc.property(input, (one) => {
        fc.pre(one.pairCurrent === 0 || one.pairCurrent > 1e-6);
        const found = bundleRise(one);
        expectPlain(found);
        expect(found.caution).toMatch(/local code/);
        if (found.feasible) {
          expect(found.validated).toBe(one.bundle >= 7);
          expect(found.range?.low).toBeLessThanOrEqual(found.rise);
          expect(found.range?.high).toBeGreaterThanOrEqual(found.rise);
        }
      }),
    );
  });
});

describe('edges', () => {
  test('no current, no rise', () => {
    for (const installation of ways) expect(settled({ ...fifty, pairCurrent: 0, installation }).rise).toBe(0);
  });

  test('±10 % from 7 to 192 cables, bounded by seven below, no range above', () => {
    expect(settled({ ...fifty, bundle: 7 }).range?.high).toBeCloseTo(1.1 * settled({ ...fifty, bundle: 7 }).rise, 12);
    expect(settled({ ...fifty, bundle: 1 }).range?.low).toBe(0);
    expect(settled({ ...fifty, bundle: 1 }).range?.high).toBeCloseTo(1.1 * settled({ ...fifty, bundle: 7 }).rise, 12);
    const huge = settled({ ...fifty, bundle: 193 });
    expect(huge.validated).toBe(false);
    expect(Object.keys(huge)).not.toContain('range');
  });

  test('a cable on its drum has no figure', () => {
    expectPlain(bundleRise({ ...fifty, installation: 'wound-drum' }));
    expect(bundleRise({ ...fifty, installation: 'wound-drum' })).toMatchObject({ feasible: false, reason: 'wound-drum' });
  });

  test('insulation has no preset: the film coefficient is asked for', () => {
    expect(expectInputError(() => bundleRise({ ...fifty, installation: as('insulated') }), 'installation', 'unknown').expected).toContain(
      'filmCoefficient',
    );
    expectInputError(() => bundleRise(as({ ...fifty, installation: undefined })), 'installation', 'missing');
    expectInputError(() => bundleRise({ ...fifty, installation: as({}) }), 'installation.filmCoefficient', 'missing');
    expectInputError(() => bundleRise({ ...fifty, installation: as('constructor') }), 'installation', 'unknown');
  });

  test('a cable of unknown diameter asks for one', () => {
    const unknown = defineCable({ name: 'tie line', gauge: 23 });
    expectInputError(() => bundleRise({ ...fifty, cable: unknown }), 'outsideDiameter', 'missing');
    expect(settled({ ...fifty, cable: unknown, outsideDiameter: 6 }).rise).toBeCloseTo(settled(fifty).rise, 9);
  });

  test.each(NOT_NUMBERS)('%s is refused everywhere', (_label, value) => {
    for (const name of ['bundle', 'pairCurrent', 'ambient', 'energisedPairs'] as const) {
      expectInputError(() => bundleRise({ ...fifty, [name]: as(value) }), name);
    }
    expectInputError(() => ampacity({ code: 'NEC 2017', gauge: as(value), bundle: 7 }), 'gauge');
    expectInputError(() => filmCoefficient({ diameter: 60, surfaceTemperature: as(value), ambient: 20 }), 'surfaceTemperature');
    expectInputError(() => filmCoefficient({ diameter: 60, surfaceTemperature: 30, ambient: 20, emissivity: as(value) }), 'emissivity');
    expectInputError(() => remotePowering([0.1, as(value)]), 'conductorCurrents[1]');
  });
});

test('mean conductor current: 212 and 500 mA are the last of RP1 and RP2 (from memory)', () => {
  expect(remotePowering([0.212]).category).toBe('RP1');
  expect(remotePowering([0.2121]).category).toBe('RP2');
  expect(remotePowering([0.9, 0.1]).category).toBe('RP2');
  expect(remotePowering([0.9, 0.2]).category).toBe('beyond');
  expectInputError(() => remotePowering([]), 'conductorCurrents', 'missing');
});
