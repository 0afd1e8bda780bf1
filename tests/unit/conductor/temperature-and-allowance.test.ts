/** Temperature coefficients and the allowance between nominal and maximum: what they take and refuse. */
import { describe, expect, test } from 'vitest';
import { awg } from '../../../src/conductor/awg.ts';
import type { Conductor } from '../../../src/conductor/conductor.ts';
import { conductorFromResistance } from '../../../src/conductor/conductor-from-resistance.ts';
import { metric } from '../../../src/conductor/metric.ts';
import {
  resistanceAtTemperature,
  type TemperatureLine,
  temperatureCoefficientAt,
  temperatureCoefficientFrom,
  temperatureFromResistance,
  zeroResistanceTemperature,
} from '../../../src/conductor/temperature-coefficient.ts';
import { type AllowanceOptions, diameterAllowance, toMaximum, toNominal } from '../../../src/conductor/to-maximum.ts';
import { as, expectInputError, expectPlain, expectWithin, frozen, NOT_NUMBERS } from '../../helpers/expectations.ts';

describe('temperature coefficients', () => {
  test('move along one line, there and back', () => {
    for (const at of [-200, -40, 0, 75, 300]) {
      const moved = temperatureCoefficientAt(0.00393, at);
      expectWithin(temperatureCoefficientAt(moved, 20, at), 0.00393, 1e-12);
      expectWithin(zeroResistanceTemperature(moved, at), 20 - 1 / 0.00393, 1e-12);
      expectWithin(1 / moved, 1 / 0.00393 + at - 20, 1e-12);
    }
    expect(temperatureCoefficientAt(0.00393, 20)).toBe(0.00393);
    expect(temperatureCoefficientAt(0, 100)).toBe(0);
  });

  test('a resistance goes hot and its temperature comes back', () => {
    const line = frozen<TemperatureLine>({ resistance: 7, temperature: 15, coefficient: 0.00427, coefficientTemperature: 0 });
    for (const at of [-100, 0, 15, 60, 250]) {
      const resistance = resistanceAtTemperature(line, at);
      expect(Math.abs(temperatureFromResistance(line, resistance) - at)).toBeLessThan(1e-9);
      if (at !== 15) expectWithin(temperatureCoefficientFrom(line, { resistance, temperature: at }, 0), 0.00427, 1e-9);
    }
    expectWithin(resistanceAtTemperature({ ...line, coefficientTemperature: undefined }, 15), 7, 1e-15);
  });

  test.each(NOT_NUMBERS)('refuse %s', (_label, value, code) => {
    const number = as<number>(value);
    const line = { resistance: 1, temperature: 20, coefficient: 0.004 };
    expectInputError(() => temperatureCoefficientAt(number, 0), 'coefficient', code);
    expectInputError(() => temperatureCoefficientAt(0.004, number), 'at', code);
    expectInputError(() => temperatureCoefficientAt(0.004, 0, number), 'from', code);
    expectInputError(() => zeroResistanceTemperature(number), 'coefficient', code);
    expectInputError(() => resistanceAtTemperature({ ...line, resistance: number }, 0), 'line.resistance', code);
    expectInputError(() => resistanceAtTemperature({ ...line, temperature: number }, 0), 'line.temperature', code);
    expectInputError(() => resistanceAtTemperature({ ...line, coefficient: number }, 0), 'line.coefficient', code);
    expectInputError(() => resistanceAtTemperature(line, number), 'at', code);
    expectInputError(() => temperatureFromResistance(line, number), 'resistance', code);
    expectInputError(() => temperatureCoefficientFrom({ resistance: number, temperature: 0 }, line), 'first.resistance', code);
    expectInputError(() => temperatureCoefficientFrom(line, { resistance: 1, temperature: number }), 'second.temperature', code);
  });

  test('refuse what has no answer', () => {
    const line = { resistance: 1, temperature: 20, coefficient: 0.004 };
    expectInputError(() => temperatureCoefficientAt(0.00393, -240), 'at', 'conflict'); // past the inferred zero
    expectInputError(() => resistanceAtTemperature(line, -250), 'at', 'conflict');
    expectInputError(() => zeroResistanceTemperature(0), 'coefficient', 'range');
    expectInputError(() => zeroResistanceTemperature(-0.004), 'coefficient', 'range');
    expectInputError(() => temperatureFromResistance(line, 1e6), 'resistance', 'range');
    expectInputError(() => temperatureFromResistance({ ...line, coefficient: 0 }, 2), 'resistance', 'range');
    expectInputError(() => temperatureFromResistance({ ...line, coefficient: 0 }, 1), 'resistance', 'range');
    expectInputError(() => temperatureCoefficientFrom(line, line), 'second.temperature', 'conflict');
    expectInputError(() => resistanceAtTemperature(as<TemperatureLine>(null), 0), 'line', 'type');
    expectInputError(() => resistanceAtTemperature(as<TemperatureLine>(undefined), 0), 'line', 'missing');
  });
});

describe('nominal and maximum', () => {
  test('toNominal undoes toMaximum, with the allowance that was used', () => {
    const wire = frozen(awg(24));
    expectWithin(toNominal(toMaximum(wire)).resistancePerMetre, wire.resistancePerMetre, 1e-15);
    expect(toNominal(toMaximum(wire)).basis).toBe('nominal');
    const wide = toMaximum(wire, { allowance: 1.1 });
    expectWithin(wide.resistancePerMetre, 1.1 * wire.resistancePerMetre, 1e-15);
    expectPlain(wide);
    expectWithin(toNominal(wide, { allowance: 1.1 }).resistancePerMetre, wire.resistancePerMetre, 1e-15);
    expect(toNominal(wire)).toStrictEqual(wire);
    expect(toNominal(wire)).not.toBe(wire);
    expect(toMaximum(wire, { allowance: undefined })).toStrictEqual(toMaximum(wire));
  });

  test('the maximum of a table does not say what it allows, and a measurement allows nothing', () => {
    for (const conductor of [
      metric(1, { class: 5 }),
      conductorFromResistance({ ohmsPerKilometre: 96 }),
      toMaximum(awg(24), { allowance: 1.1 }),
    ]) {
      expectInputError(() => toNominal(conductor), 'options.allowance', 'missing');
      expectWithin(toNominal(conductor, { allowance: 1.05 }).resistancePerMetre, conductor.resistancePerMetre / 1.05, 1e-15);
    }
    const read = conductorFromResistance({ ohmsPerKilometre: 96, basis: 'measured' });
    expectInputError(() => toNominal(read, { allowance: 1.05 }), 'conductor.basis', 'conflict');
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
    expectInputError(() => toMaximum(awg(24), options), 'options.allowance', code);
    expectInputError(() => toNominal(awg(24), options), 'options.allowance', code);
  });

  test('refuse an allowance below 1 or over 2, and what is no conductor', () => {
    for (const allowance of [0, 0.99, 2.01, -1]) expectInputError(() => toMaximum(awg(24), { allowance }), 'options.allowance', 'range');
    for (const options of [null, 1.02, '2 %', []])
      expectInputError(() => toNominal(awg(24), as<AllowanceOptions>(options)), 'options', 'type');
    for (const call of [toNominal, diameterAllowance]) {
      expectInputError(() => call(as<Conductor>(null)), 'conductor', 'type');
      expectInputError(() => call(as<Conductor>(undefined)), 'conductor', 'missing');
    }
  });
});
