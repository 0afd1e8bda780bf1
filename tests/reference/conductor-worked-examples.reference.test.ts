/**
 * Published worked examples about wire: resistance, area, length, circular mils, temperature, drop and loss.
 *
 * Textbook examples from the FOSSEE companion notebooks: the inputs and the answer were read in the notebook, which recomputes the book's
 * example; the printed book was not seen. OpenStax: read in the books' own sources. An answer in brackets after a name is what is printed.
 */
import { describe, expect, test } from 'vitest';
import { operatingPoint } from '../../src/circuit/operating-point.ts';
import { awgFromArea } from '../../src/conductor/awg-from-size.ts';
import { conductorFromResistance } from '../../src/conductor/conductor-from-resistance.ts';
import { loopResistance } from '../../src/conductor/loop-resistance.ts';
import { material } from '../../src/conductor/material.ts';
import { necTable8 } from '../../src/conductor/nec-table-8.ts';
import { resistancePerMetre } from '../../src/conductor/resistance-per-metre.ts';
import {
  resistanceAtTemperature,
  temperatureCoefficientAt,
  temperatureCoefficientFrom,
  temperatureFromResistance,
} from '../../src/conductor/temperature-coefficient.ts';
import { uniformWire } from '../../src/conductor/uniform-wire.ts';
import { circularMils, feet, toCircularMils, toFeet, toMils } from '../../src/quantity/convert-length.ts';
import { expectPrinted } from '../helpers/expectations.ts';

const disc = (diameter: number): number => (Math.PI / 4) * diameter ** 2;
/** Ω·mm²/m of a resistivity in Ω·cmil/ft. */
const perMilFoot = (resistivity: number): number => (resistivity * circularMils(1)) / feet(1);
/** A wire to or from Ω·m, the unit of physics books: 1e-8 Ω·m is 0.01 Ω·mm²/m. */
const MICRO = 1e-6;

describe('R = ρ L / A', () => {
  const resistance = (resistivity: number, length: number, area: number): number => uniformWire({ resistivity, length, area }).resistance;

  test.each<readonly [example: string, computed: number, printed: string]>([
    ['OpenStax College Physics m42346: 20.0 m of 12 AWG, 1.72e-8 Ω·m', resistance(0.0172, 20, disc(2.053)), '0.104'],
    ['OpenStax University Physics m58731: the same with 1.68e-8 Ω·m; two figures hide it', resistance(0.0168, 20, disc(2.053)), '0.10'],
    ['OpenStax University Physics m58731: 5 m of 12 AWG, 3.31 mm², as the text reckons', resistance(0.0168, 5, 3.31), '0.025'],
    ['Bird, example 4, p. 25: 100 mm², 2000 m, 0.03e-6 Ω·m', resistance(0.03, 2000, 100), '0.6'],
    ['Robertson, example 1.16, p. 22: 200 m, 8e-7 m², 2e-8 Ω·m', resistance(0.02, 200, 0.8), '5'],
    ['Nagsarkar & Sukhija, example 1.6, p. 16: 200 m, 25 mm², 1.72e-8 Ω·m', resistance(0.0172, 200, 25), '0.1376'],
    ['Beiser, problem 5.15, p. 52: 80 m, 2.5 mm², 0.0175 Ω·mm²/m', resistance(0.0175, 80, 2.5), '0.56'],
    [
      "Schultz, Grob's Basic Electronics 11-3: 100 ft of 1022 cmil, 10.4 Ω·cmil/ft",
      resistance(perMilFoot(10.4), feet(100), circularMils(1022)),
      '1.02',
    ],
    ["Schultz, Grob's Basic Electronics 11-4: 100 ft of 509.5 cmil", resistance(perMilFoot(10.4), feet(100), circularMils(509.5)), '2.04'],
    ['Kuphaldt: 2300 ft of 14 AWG, 4107 cmil, 10.09 Ω·cmil/ft', resistance(perMilFoot(10.09), feet(2300), circularMils(4107)), '5.651'],
    [
      'OpenStax University Physics m58735: 60 km of 42.40 mm², called 0 gauge there (it is 1 AWG)',
      resistance(0.0168, 60_000, 42.4),
      '23.77',
    ],
    ['OpenStax University Physics m58735: nichrome rod, 3.00 mm long, 1.00 mm², 100e-8 Ω·m', resistance(1, 0.003, 1), '0.003'],
    ['OpenStax College Physics m42346: stretched to three times its length, 2 Ω becomes', resistance(2, 3, 1 / 3), '18'],
    ['Kuphaldt: aluminium bar 4 × 3 × 125 cm, 2.65e-6 Ω·cm [µΩ]', resistance(0.0265, 1.25, 1200) / MICRO, '27.604'],
    ['Kapoor, example 15.10, p. 398: copper tube 80 mm, wall 5 mm, 5 m [µΩ]', resistance(0.017, 5, disc(80) - disc(70)) / MICRO, '72.15'],
    ['A Treatise on Architecture and Building Construction 3: 1530 ft of No. 4 at 0.259 Ω/1000 ft', (0.259 * 1530) / 1000, '0.396'],
  ])('%s: %s → %s Ω', (_example, computed, printed) => expectPrinted(computed, printed));

  test('that old table has 4 AWG 4 % above the 20 °C figure of 0.2485 Ω/1000 ft, at a temperature it does not state', () => {
    expect(0.259 / 0.2485).toBeGreaterThan(1.04);
  });

  test('area: Bird, example 5, p. 25: 40 m of 0.25 Ω, 0.02e-6 Ω·m (3.2 mm²)', () => {
    expectPrinted(uniformWire({ resistance: 0.25, resistivity: 0.02, length: 40 }).area, '3.2');
  });

  test('resistivity: Bird, example 6, p. 25: 1500 m, 0.17 mm², 150 Ω (0.017 µΩ·m)', () => {
    expectPrinted(uniformWire({ resistance: 150, length: 1500, area: 0.17 }).resistivity, '0.017');
  });

  test('resistivity: OpenStax University Physics m58735: 5 AWG, 16.8 mm², 5.00 m, 5.10 mΩ (1.71e-8 Ω·m)', () => {
    expectPrinted(uniformWire({ resistance: 0.0051, length: 5, area: 16.8 }).resistivity * MICRO, '1.71e-8');
    expect(awgFromArea(16.8).name).toBe('5 AWG');
  });

  test('resistivity: OpenStax m42346: two wires alike, 3 Ω of 2.65e-8 Ω·m and 11 Ω (9.72e-8 Ω·m)', () => {
    const { area } = uniformWire({ resistance: 3, resistivity: 0.0265, length: 1 });
    expectPrinted(uniformWire({ resistance: 11, length: 1, area }).resistivity * MICRO, '9.72e-8');
  });

  test('resistivity, then hot: OpenStax University Physics m58731: 25.0 m of 0.100 mm is 77.7 Ω: gold (2.44e-8 Ω·m), 112 Ω at 150 °C', () => {
    expectPrinted(uniformWire({ resistance: 77.7, length: 25, area: disc(0.1) }).resistivity * MICRO, '2.44e-8');
    expectPrinted(resistanceAtTemperature({ resistance: 77.7, temperature: 20, coefficient: 0.0034, at: 150 }), '112');
  });

  test('length: OpenStax University Physics m58735: silver as good as 1 m of gold, 12 AWG (1.53 m); 0.0094 and 0.0096 Ω at 100 °C', () => {
    const gold = uniformWire({ resistivity: 0.0244, length: 1, area: 3.31 });
    const { length, resistance } = uniformWire({ resistance: gold.resistance, resistivity: 0.0159, area: 3.31 });
    expectPrinted(length, '1.53');
    expectPrinted(gold.resistance, '0.0074');
    expectPrinted(resistanceAtTemperature({ resistance, temperature: 20, coefficient: 0.0034, at: 100 }), '0.0094');
    expectPrinted(resistanceAtTemperature({ resistance, temperature: 20, coefficient: 0.0038, at: 100 }), '0.0096');
  });

  test('length: Beiser, problem 5.16, p. 52: 3 Ω of 0.1 mm², 0.0175 Ω·mm²/m (17 m, cut from 17.14)', () => {
    expectPrinted(Math.floor(uniformWire({ resistance: 3, resistivity: 0.0175, area: 0.1 }).length), '17');
  });

  test('length: Beiser, problem 5.14, p. 51: 15 A, 5 V, 6530 cmil (209 ft of wire, there and back; cut from 209.3)', () => {
    const { length } = uniformWire({ resistance: 5 / 15, resistivity: perMilFoot(10.4), area: circularMils(6530) });
    expectPrinted(Math.floor(toFeet(length)), '209');
  });

  test('length: OpenStax University Physics m58734: nichrome, 2.08 mm², 300 W at 110 V (83 m, from R rounded to 40 Ω; 83.9 m in truth)', () => {
    expectPrinted(Math.floor(uniformWire({ resistance: 40, resistivity: 1, area: 2.08 }).length), '83');
    expectPrinted(uniformWire({ resistance: 110 ** 2 / 300, resistivity: 1, area: 2.08 }).length, '83.9');
  });

  test('length: OpenStax College Physics m42346: tungsten 0.010 mm across, 0.200 Ω (2.81e-4 m, 5.6e-8 Ω·m)', () => {
    expectPrinted(uniformWire({ resistance: 0.2, resistivity: 0.056, area: disc(0.01) }).length, '2.81e-4', 0.51); // 2.805 in truth
  });

  test('diameter: OpenStax College Physics m42346: headlight filament 4.00 cm, 0.350 Ω (6.40e-9 m², 9.0e-5 m)', () => {
    const { area } = uniformWire({ resistance: 0.35, resistivity: 0.056, length: 0.04 });
    expectPrinted(area * MICRO, '6.40e-9');
    expectPrinted(Math.sqrt((4 * area) / Math.PI) / 1000, '9.0e-5');
  });

  test('diameter: Beiser, problem 5.8, p. 48: 400 ft, 1.5 Ω, 10.4 Ω·cmil/ft (52.7 mil)', () => {
    const { area } = uniformWire({ resistance: 1.5, resistivity: perMilFoot(10.4), length: feet(400) });
    expectPrinted(toMils(Math.sqrt((4 * area) / Math.PI)), '52.7');
  });

  test("stranded area: Schultz, Grob's Basic Electronics 11-2: 16 strands of 201.5 cmil (3224 cmil)", () => {
    expectPrinted(toCircularMils(16 * circularMils(201.5)), '3224');
  });

  test('gauges: Beiser, problem 5.5, p. 48: 14 AWG (4106 cmil) over 10 AWG (10380 cmil) (2.53)', () => {
    const of = (cmil: number): number => resistance(perMilFoot(10.4), 1, circularMils(cmil));
    expectPrinted(of(4106) / of(10_380), '2.53');
  });

  test.each([
    ['aluminium, 2.65e-8 Ω·m, 2700 kg/m³', 0.0265, 2700, '1.23e3'],
    ['copper, 1.72e-8 Ω·m, 8.9e3 kg/m³ (density assumed: it is not stated)', 0.0172, 8900, '2.64e3'],
  ])('mass of 1 km of 0.0580 Ω: OpenStax College Physics m42714, %s', (_metal, resistivity, density, printed) => {
    const { area } = uniformWire({ resistance: 0.058, resistivity, length: 1000 });
    expectPrinted(area * MICRO * 1000 * density, printed);
  });
});

describe('temperature', () => {
  test.each<readonly [example: string, computed: number, printed: string]>([
    ['Bird, example 8, p. 27: 100 Ω at 0 °C, 0.0043/K at 0 °C, to 70 °C', hot(100, 0, 0.0043, 0, 70), '130.1'],
    ['Bird, example 9, p. 27: aluminium 27 Ω at 35 °C, 0.0038/K at 0 °C, to 0 °C', hot(27, 35, 0.0038, 0, 0), '23.83'],
    ['Bird, example 11, p. 28: copper 10 Ω at 20 °C, 0.004/K, to 100 °C', hot(10, 20, 0.004, 20, 100), '13.2'],
    ['Robertson, example 1.18, p. 23: 250 Ω at 15 °C, 4.28e-3/K at 0 °C, to 45 °C', hot(250, 15, 0.00428, 0, 45), '280.2'],
    ['Robertson, example 1.19, p. 24: 350 Ω at 0 °C, 4.26e-3/K, to 60 °C', hot(350, 0, 0.00426, 0, 60), '439.5'],
    ["Schultz, Grob's Basic Electronics 11-6: tungsten 14 Ω at 20 °C, 0.005/K, to 120 °C", hot(14, 20, 0.005, 20, 120), '21.00'],
    ['OpenStax College Physics m42346: filament 0.350 Ω at 20 °C, 4.5e-3/K, to 2850 °C', hot(0.35, 20, 0.0045, 20, 2850), '4.8'],
    ['OpenStax College Physics m42346: carbon, -0.5e-3/K, from -10 to 55 °C: by 1/1.03', 1 / hot(1, -10, -0.0005, 20, 55), '1.03'],
    ['OpenStax University Physics m58735: nichrome rod 0.003 Ω at 20 °C, 0.4e-3/K, to 37 °C', hot(0.003, 20, 0.0004, 20, 37), '0.00302'],
    ['Kuphaldt: wire of 15 Ω at 20 °C, copper 0.004041/K, to 35 °C', hot(15, 20, 0.004041, 20, 35), '15.909'],
  ])('%s', (_example, computed, printed) => expectPrinted(computed, printed));

  test.each<readonly [example: string, computed: number, printed: string]>([
    ['Bird, example 12, p. 28: 200 Ω at 18 °C becomes 240 Ω, 0.0039/K at 18 °C', warmTo(200, 18, 0.0039, 18, 240), '69.28'],
    ['OpenStax University Physics m58731: copper 0.0039/K doubles', warmTo(1, 20, 0.0039, 20, 2), '276.4'],
    ['OpenStax University Physics m58735: thermistor, -0.06/K at 37 °C, falls to 82 %', warmTo(1, 37, -0.06, 37, 0.82), '40'],
    ['OpenStax College Physics m42346: nichrome 0.4e-3/K, +1 %', warmTo(1, 20, 0.0004, 20, 1.01), '45'],
    ['OpenStax College Physics m42346: nichrome 0.4e-3/K, -1 %', warmTo(1, 20, 0.0004, 20, 0.99), '-5'],
    [
      'Muthusubramanian & Salivahanan 1.7, p. 22: 45 Ω at 20 °C becomes 48.5 Ω, 0.004/K at 0 °C (41, cut)',
      warmTo(45, 20, 0.004, 0, 48.5),
      '41',
    ],
  ])('%s', (_example, computed, printed) => expectPrinted(computed, printed));

  test('Muthusubramanian & Salivahanan 1.8, p. 22: a 180 V coil takes 4 A at 20 °C, later 3.4 A, 0.0043/K at 0 °C (rise 44.57 K)', () => {
    expectPrinted(warmTo(180 / 4, 20, 0.0043, 0, 180 / 3.4) - 20, '44.57');
  });

  test('Muthusubramanian & Salivahanan 1.5, p. 21: platinum 3.146 Ω at 40 °C, 3.767 Ω at 100 °C (0.003788/K at 0 °C, 2.732 Ω, 0.003290/K at 40 °C)', () => {
    const at0 = temperatureCoefficientFrom({
      first: { resistance: 3.146, temperature: 40 },
      second: { resistance: 3.767, temperature: 100 },
      at: 0,
    });
    expectPrinted(at0, '0.003788');
    expectPrinted(hot(3.146, 40, at0, 0, 0), '2.732');
    expectPrinted(temperatureCoefficientAt({ coefficient: at0, at: 40, from: 0 }), '0.003290');
  });

  test.each([
    ['OpenStax College Physics m42346, iron 0.0050/K', 0.005, '-17'],
    ['OpenStax University Physics m58731, iron 0.0065/K: only the tabulated coefficient differs', 0.0065, '2.91'],
  ])('copper of 0.500 Ω and iron of 0.525 Ω at 20 °C are equal: %s', (_example, iron, printed) => {
    const equalAt = 20 + (0.525 - 0.5) / (0.5 * 0.0039 - 0.525 * iron);
    expectPrinted(equalAt, printed);
    expect(hot(0.525, 20, iron, 20, equalAt)).toBeCloseTo(hot(0.5, 20, 0.0039, 20, equalAt), 12);
  });
});

describe('drop and loss over two wires', () => {
  test('Kuphaldt: 230 V, 25 A, at least 220 V, 2300 ft each way (0.2 Ω a wire, 116 035 cmil; 2/0 will do, 1/0 will not)', () => {
    const perWire = (230 - 220) / 25 / 2;
    expectPrinted(perWire, '0.2');
    const { area } = uniformWire({ resistance: perWire, resistivity: perMilFoot(10.09), length: feet(2300) });
    expectPrinted(toCircularMils(area), '116035');
    expect(awgFromArea(area).fractional).toBeLessThan(0);
    expect(awgFromArea(area).fractional).toBeGreaterThan(-1);
  });

  test('Kuphaldt: 14 AWG there and back shorted at 230 V (11.301 Ω, 20.352 A)', () => {
    const loop = 2 * uniformWire({ resistivity: perMilFoot(10.09), length: feet(2300), area: circularMils(4107) }).resistance;
    expectPrinted(loop, '11.301');
    expectPrinted(230 / loop, '20.352');
  });

  test('Kuphaldt: 14 V over two such wires at 35 °C into 250 Ω (49.677 mA)', () => {
    const point = operatingPoint({ supplyVoltage: 14, resistance: 2 * hot(15, 20, 0.004041, 20, 35), load: { resistance: 250 } });
    if (!point.feasible) throw new Error('a resistance can always be fed');
    expectPrinted(1000 * point.current, '49.677');
  });

  test.each([
    [0.06, '0.300', '1.50'],
    [0.3, '1.50', '7.50'],
  ])('OpenStax College Physics m42344, m42714: 5.00 A through a cord of %s Ω (%s V, %s W)', (resistance, volts, watts) => {
    const point = operatingPoint({ supplyVoltage: 120, resistance, load: { current: 5 } });
    if (!point.feasible) throw new Error('the cord carries 5 A');
    expectPrinted(point.voltageDrop, volts);
    expectPrinted(point.lineLoss, watts);
  });

  test('electrician2.com on NEC Table 8: 100 ft of 16 AWG stranded at 75 °C, 4 A (4.0 V)', () => {
    const wire = necTable8({ size: 16, stranding: 'stranded' });
    expectPrinted(4 * loopResistance({ conductor: wire, length: feet(100), temperature: 75 }), '4.0');
    expectPrinted((100 * 4 * 200 * 0.00499) / 24, '16.6', 1); // printed as 16.7 % of 24 V, from the rounded 4.0 V
  });

  test('OpenStax University Physics m58734: two aluminium wires of 10 km, 8.252 mm (9.91 Ω; 4.48 A loses 200 W, 40 % of 493 W)', () => {
    const loop = 2 * uniformWire({ resistivity: 0.0265, length: 10_000, area: disc(8.252) }).resistance;
    expectPrinted(loop, '9.91');
    expectPrinted((4.48 ** 2 * loop) / 10, '20'); // 199 W from the rounded current: printed as 200. W
    expectPrinted((100 * 4.48 ** 2 * loop) / 493, '40');
  });

  test('OpenStax University Physics m58735: 100 A through 60 km of 42.40 mm² (2.377e5 W)', () => {
    expectPrinted(100 ** 2 * uniformWire({ resistivity: 0.0168, length: 60_000, area: 42.4 }).resistance, '2.377e5');
  });

  test('PRINTED ANSWER WRONG. OpenStax College Physics m42714: 100 A through 1 km of 9.266 mm is 2.55 kW; the 25.5 printed as watts is the drop in volts', () => {
    const { resistance } = uniformWire({ resistivity: 0.0172, length: 1000, area: disc(9.266) });
    expectPrinted((100 ** 2 * resistance) / 1000, '2.55');
    expectPrinted(100 * resistance, '25.5');
  });

  test('OpenStax College Physics m42356: 120 V over 0.400 Ω at 15.0 A leaves a 75.0 W bulb (67.7 W)', () => {
    const voltage = 120 - 15 * 0.4;
    expectPrinted(voltage ** 2 / (120 ** 2 / 75), '67.7');
  });

  test('Kapoor, example 15.2, p. 393: 220 V sent, 200 V received, 40 A (0.5 Ω)', () => {
    expectPrinted((220 - 200) / 40, '0.5');
    const point = operatingPoint({ supplyVoltage: 220, resistance: 0.5, load: { current: 40 } });
    if (!point.feasible) throw new Error('the line carries 40 A');
    expectPrinted(point.loadVoltage, '200');
  });
});

describe('how books differ from wire', () => {
  test('OpenStax counts 1.72e-8 Ω·m, the standard of wire 1/58: the same 0.104 Ω', () => {
    const wire = conductorFromResistance({ ohmsPerKilometre: 1000 * (material({ name: 'annealed-copper' }).resistivity / disc(2.053)) });
    expectPrinted(resistancePerMetre(wire) * 20, '0.104');
  });
});

/** A resistance at another temperature. */
function hot(resistance: number, temperature: number, coefficient: number, coefficientTemperature: number, at: number): number {
  return resistanceAtTemperature({ resistance, temperature, coefficient, coefficientTemperature, at });
}

/** The temperature at which a resistance has become another. */
function warmTo(resistance: number, temperature: number, coefficient: number, coefficientTemperature: number, later: number): number {
  return temperatureFromResistance({ resistance, temperature, coefficient, coefficientTemperature, laterResistance: later });
}
