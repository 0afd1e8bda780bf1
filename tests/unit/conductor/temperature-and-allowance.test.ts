/** Temperature coefficients and the allowance between nominal and maximum: what they take and refuse. */
import { describe, expect, test } from 'vitest';
import { awg } from '../../../src/conductor/awg.ts';
import type { Conductor } from '../../../src/conductor/conductor.ts';
import { conductorFromResistance } from '../../../src/conductor/conductor-from-resistance.ts';
import { metric } from '../../../src/conductor/metric.ts';
import {
  type LineAtTemperature,
  resistanceAtTemperature,
  type TemperatureLine,
  temperatureCoefficientAt,
  temperatureCoefficientFrom,
  temperatureFromResistance,
  zeroResistanceTemperature,
} from '../../../src/conductor/temperature-coefficient.ts';
import { type AllowanceInput, diameterAllowance, toMaximum, toNominal } from '../../../src/conductor/to-maximum.ts';
import { as, expectInputError, expectPlain, expectWithin, frozen, NOT_NUMBERS } from '../../helpers/expectations.ts';

describe('temperature coefficients', () => {
  test('move along one line, there and back', () => {
    for (const at of [-200, -40, 0, 75, 300]) {
      const moved = temperatureCoefficientAt({ coefficient: 0.00393, at });
      expectWithin(temperatureCoefficientAt({ coefficient: moved, at: 20, from: at }), 0.00393, 1e-12);
      expectWithin(zeroResistanceTemperature({ coefficient: moved, from: at }), 20 - 1 / 0.00393, 1e-12);
      expectWithin(1 / moved, 1 / 0.00393 + at - 20, 1e-12);
    }
    expect(temperatureCoefficientAt({ coefficient: 0.00393, at: 20 })).toBe(0.00393);
    expect(temperatureCoefficientAt({ coefficient: 0, at: 100 })).toBe(0);
  });

  test('a resistance goes hot and its temperature comes back', () => {
    const line = frozen<TemperatureLine>({ resistance: 7, temperature: 15, coefficient: 0.00427, coefficientTemperature: 0 });
    for (const at of [-100, 0, 15, 60, 250]) {
      const resistance = resistanceAtTemperature({ ...line, at });
      expect(Math.abs(temperatureFromResistance({ ...line, laterResistance: resistance }) - at)).toBeLessThan(1e-9);
      if (at !== 15)
        expectWithin(
          temperatureCoefficientFrom({ first: { resistance: 7, temperature: 15 }, second: { resistance, temperature: at }, at: 0 }),
          0.00427,
          1e-9,
        );
    }
    expectWithin(resistanceAtTemperature({ ...line, coefficientTemperature: undefined, at: 15 }), 7, 1e-15);
  });

  test.each(NOT_NUMBERS)('refuse %s', (_label, value, code) => {
    const number = as<number>(value);
    const reading = { resistance: 1, temperature: 20 };
    const line = { ...reading, coefficient: 0.004 };
    expectInputError(() => temperatureCoefficientAt({ coefficient: number, at: 0 }), 'coefficient', code);
    expectInputError(() => temperatureCoefficientAt({ coefficient: 0.004, at: number }), 'at', code);
    expectInputError(() => temperatureCoefficientAt({ coefficient: 0.004, at: 0, from: number }), 'from', code);
    expectInputError(() => zeroResistanceTemperature({ coefficient: number }), 'coefficient', code);
    expectInputError(() => resistanceAtTemperature({ ...line, resistance: number, at: 0 }), 'resistance', code);
    expectInputError(() => resistanceAtTemperature({ ...line, temperature: number, at: 0 }), 'temperature', code);
    expectInputError(() => resistanceAtTemperature({ ...line, coefficient: number, at: 0 }), 'coefficient', code);
    expectInputError(() => resistanceAtTemperature({ ...line, at: number }), 'at', code);
    expectInputError(() => temperatureFromResistance({ ...line, laterResistance: number }), 'laterResistance', code);
    expectInputError(
      () => temperatureCoefficientFrom({ first: { resistance: number, temperature: 0 }, second: reading }),
      'first.resistance',
      code,
    );
    expectInputError(
      () => temperatureCoefficientFrom({ first: reading, second: { resistance: 1, temperature: number } }),
      'second.temperature',
      code,
    );
  });

  test('refuse what has no answer', () => {
    const reading = { resistance: 1, temperature: 20 };
    const line = { ...reading, coefficient: 0.004 };
    expectInputError(() => temperatureCoefficientAt({ coefficient: 0.00393, at: -240 }), 'at', 'conflict'); // past the inferred zero
    expectInputError(() => resistanceAtTemperature({ ...line, at: -250 }), 'at', 'conflict');
    expectInputError(() => zeroResistanceTemperature({ coefficient: 0 }), 'coefficient', 'range');
    expectInputError(() => zeroResistanceTemperature({ coefficient: -0.004 }), 'coefficient', 'range');
    expectInputError(() => temperatureFromResistance({ ...line, laterResistance: 1e6 }), 'laterResistance', 'range');
    expectInputError(() => temperatureFromResistance({ ...line, coefficient: 0, laterResistance: 2 }), 'laterResistance', 'range');
    expectInputError(() => temperatureFromResistance({ ...line, coefficient: 0, laterResistance: 1 }), 'laterResistance', 'range');
    expectInputError(() => temperatureCoefficientFrom({ first: reading, second: reading }), 'second.temperature', 'conflict');
    for (const input of [null, 7, []]) expectInputError(() => resistanceAtTemperature(as<LineAtTemperature>(input)), 'input', 'type');
    expectInputError(() => resistanceAtTemperature({ ...line, at: 0, ...as<object>({ temprature: 3 }) }), 'temprature', 'unknown');
  });
});

describe('nominal and maximum', () => {
  test('toNominal undoes toMaximum, with the allowance that was used', () => {
    const wire = frozen(awg(24));
    expectWithin(toNominal({ conductor: toMaximum({ conductor: wire }) }).resistancePerMetre, wire.resistancePerMetre, 1e-15);
    expect(toNominal({ conductor: toMaximum({ conductor: wire }) }).basis).toBe('nominal');
    const wide = toMaximum({ conductor: wire, allowance: 1.1 });
    expectWithin(wide.resistancePerMetre, 1.1 * wire.resistancePerMetre, 1e-15);
    expectPlain(wide);
    expectWithin(toNominal({ conductor: wide, allowance: 1.1 }).resistancePerMetre, wire.resistancePerMetre, 1e-15);
    expect(toNominal({ conductor: wire })).toStrictEqual(wire);
    expect(toNominal({ conductor: wire })).not.toBe(wire);
    expect(toMaximum({ conductor: wire, allowance: undefined })).toStrictEqual(toMaximum({ conductor: wire }));
  });

  test('the maximum of a table does not say what it allows, and a measurement allows nothing', () => {
    for (const conductor of [
      metric(1, { class: 5 }),
      conductorFromResistance({ ohmsPerKilometre: 96 }),
      toMaximum({ conductor: awg(24), allowance: 1.1 }),
    ]) {
      expectInputError(() => toNominal({ conductor }), 'allowance', 'missing');
      expectWithin(toNominal({ conductor, allowance: 1.05 }).resistancePerMetre, conductor.resistancePerMetre / 1.05, 1e-15);
    }
    const read = conductorFromResistance({ ohmsPerKilometre: 96, basis: 'measured' });
    expectInputError(() => toNominal({ conductor: read, allowance: 1.05 }), 'conductor.basis', 'conflict');
  });

  test('diameter tolerance (ASTM B3, memory): 2 % from 30 AWG up, wider below, without a step', () => {
    expect(diameterAllowance(awg(18))).toStrictEqual({ factor: 1.02, source: 'astm-b3' });
    expect(diameterAllowance(awg(30)).factor).toBe(1.02);
    expectWithin(diameterAllowance(awg(36)).factor, 1.04, 1e-12); // 0.0001 in on 0.0050 in
    for (let gauge = 0; gauge < 40; gauge++) {
      expect(diameterAllowance(awg(gauge + 1)).factor).toBeGreaterThanOrEqual(diameterAllowance(awg(gauge)).factor);
    }
  });

  test.each(NOT_NUMBERS)('refuse %s for an allowance', (_label, value, code) => {
    const options = { allowance: as<number>(value) };
    expectInputError(() => toMaximum({ conductor: awg(24), ...options }), 'allowance', code);
    expectInputError(() => toNominal({ conductor: awg(24), ...options }), 'allowance', code);
  });

  test('refuse an allowance below 1 or over 2, and what is no conductor', () => {
    for (const allowance of [0, 0.99, 2.01, -1]) expectInputError(() => toMaximum({ conductor: awg(24), allowance }), 'allowance', 'range');
    for (const input of [null, 1.02, '2 %', []]) expectInputError(() => toNominal(as<AllowanceInput>(input)), 'input', 'type');
    expectInputError(() => toNominal({ conductor: as<Conductor>(null) }), 'conductor', 'type');
    expectInputError(() => toNominal({ conductor: as<Conductor>(undefined) }), 'conductor', 'missing');
    expectInputError(() => toMaximum({ conductor: awg(24), ...as<object>({ alowance: 1.1 }) }), 'alowance', 'unknown');
    expectInputError(() => diameterAllowance(as<Conductor>(null)), 'conductor', 'type');
    expectInputError(() => diameterAllowance(as<Conductor>(undefined)), 'conductor', 'missing');
  });
});
