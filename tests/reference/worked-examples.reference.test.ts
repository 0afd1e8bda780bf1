/**
 * Worked examples with published answers, to the digits of the answer.
 *
 * Inputs and answers of the textbooks other than OpenStax and Kuphaldt were read in the FOSSEE companion notebooks, which recompute them.
 * Where a book uses its own resistivity or coefficient, that is what goes in.
 */
import { expect, test } from 'vitest';
import { type FeasiblePoint, type OperatingPointInput, operatingPoint } from '../../src/circuit/operating-point.ts';
import { type VoltageDropInput, voltageDrop } from '../../src/circuit/voltage-drop.ts';
import { awg } from '../../src/conductor/awg.ts';
import type { Conductor } from '../../src/conductor/conductor.ts';
import { conductorFromResistance } from '../../src/conductor/conductor-from-resistance.ts';
import { loopResistance } from '../../src/conductor/loop-resistance.ts';
import { resistancePerMetre } from '../../src/conductor/resistance-per-metre.ts';
import { ohmsPerKilofoot } from '../../src/quantity/convert-electrical.ts';
import { feet } from '../../src/quantity/convert-length.ts';
import { expectPrinted } from '../helpers/expectations.ts';

function settles(input: OperatingPointInput): FeasiblePoint {
  const point = operatingPoint(input);
  if (!point.feasible) expect.fail('not feasible');
  return point;
}

function drops(input: VoltageDropInput): FeasiblePoint {
  const point = voltageDrop(input);
  if (!point.feasible) expect.fail('not feasible');
  return point;
}

/** One wire of a length: the loop is two of them. */
const oneWire = (conductor: Conductor, length: number): number => loopResistance({ conductor, length }) / 2;

/** A wire of the handbook rule R = ρL/A in ohm·cmil/ft. */
const perFoot = (resistivity: number, cmil: number): Conductor =>
  conductorFromResistance({ ohmsPerKilometre: ohmsPerKilofoot((resistivity / cmil) * 1000) * 1000 });

const withCoefficient = (temperatureCoefficient: number): Conductor => ({
  ...conductorFromResistance({ ohmsPerKilometre: 1000 }),
  temperatureCoefficient,
});

test('OpenStax College Physics (m42346): 20.0 m of 12 AWG copper is 0.104 Ω', () => {
  expectPrinted(oneWire(awg(12), 20), '0.104');
});

test('OpenStax University Physics (m58731): the same wire to two figures is 0.10 Ω', () => {
  expectPrinted(oneWire(awg(12), 20), '0.10');
});

test("Schultz, Grob's Basic Electronics ch. 11: 100 ft of 20 AWG is 1.02 Ω, of 23 AWG 2.04 Ω", () => {
  expectPrinted(oneWire(awg(20), feet(100)), '1.02');
  expectPrinted(oneWire(awg(23), feet(100)), '2.04');
});

test('Beiser, Basic Mathematics for Electricity and Electronics, problem 5.5: 14 AWG has 2.53 times the resistance of 10 AWG', () => {
  expectPrinted(awg(14).resistancePerMetre / awg(10).resistancePerMetre, '2.53');
});

test('Beiser, problem 5.14: 15 A over 12 AWG (6530 cmil, 10.4 Ω·cmil/ft) drops 5 V in 209 ft of wire, there and back', () => {
  const drop = (wire: number): number =>
    drops({ supplyVoltage: 120, conductor: perFoot(10.4, 6530), length: feet(wire / 2), load: { current: 15 } }).voltageDrop;
  expect(drop(209)).toBeLessThanOrEqual(5);
  expect(drop(210)).toBeGreaterThan(5);
});

test('Kuphaldt, Lessons in Electric Circuits I ch. 12: 230 V, 25 A, at least 220 V at the load: 0.2 Ω per wire', () => {
  expectPrinted(settles({ supplyVoltage: 230, resistance: 2 * 0.2, load: { current: 25 } }).loadVoltage, '220.0');
});

test('Kuphaldt: over 2300 ft that takes 2/0 (133 100 cmil); 1/0 (105 500 cmil) is too small (10.09 Ω·cmil/ft)', () => {
  const atLoad = (cmil: number): number =>
    drops({ supplyVoltage: 230, conductor: perFoot(10.09, cmil), length: feet(2300), load: { current: 25 } }).loadVoltage;
  expect(atLoad(133_100)).toBeGreaterThanOrEqual(220);
  expect(atLoad(105_500)).toBeLessThan(220);
});

test('Kuphaldt: 2300 ft of 14 AWG (4107 cmil) is 5.651 Ω a wire, 11.301 Ω a loop, and passes 20.352 A into a short at 230 V', () => {
  const conductor = perFoot(10.09, 4107);
  expectPrinted(oneWire(conductor, feet(2300)), '5.651');
  expectPrinted(loopResistance({ conductor, length: feet(2300) }), '11.301');
  expectPrinted(drops({ supplyVoltage: 230, conductor, length: feet(2300), load: { resistance: 0 } }).current, '20.352');
});

test('Kuphaldt: 14 V, wires of 15 Ω at 20 °C, 250 Ω at their end, 35 °C: 15.909 Ω a wire, 49.677 mA, 12.42 V', () => {
  const conductor = { ...conductorFromResistance({ ohmsPerKilometre: 150 }), temperatureCoefficient: 0.004041 };
  expectPrinted(resistancePerMetre(conductor, 35) * 100, '15.909');
  const point = drops({ supplyVoltage: 14, conductor, length: 100, temperature: 35, load: { resistance: 250 } });
  expectPrinted(point.current * 1000, '49.677');
  expectPrinted(point.loadVoltage, '12.42');
});

test('OpenStax College Physics (m42344, m42714): 5.00 A through cords of 0.0600 and 0.300 Ω drops 0.300 and 1.50 V, heats 1.50 and 7.50 W', () => {
  const good = settles({ supplyVoltage: 120, resistance: 0.06, load: { current: 5 } });
  const poor = settles({ supplyVoltage: 120, resistance: 0.3, load: { current: 5 } });
  expectPrinted(good.voltageDrop, '0.300');
  expectPrinted(poor.voltageDrop, '1.50');
  expectPrinted(good.lineLoss, '1.50');
  expectPrinted(poor.lineLoss, '7.50');
});

test('Electrician training page on NEC Table 8: 100 ft of 16 AWG at 4.99 ohm/kft and 75 °C drops 4.0 V at 4 A', () => {
  const conductor = conductorFromResistance({ ohmsPerKilometre: ohmsPerKilofoot(4.99) * 1000, temperature: 75 });
  expectPrinted(drops({ supplyVoltage: 24, conductor, length: feet(100), temperature: 75, load: { current: 4 } }).voltageDrop, '4.0');
});

test('OpenStax College Physics (m42356): 15.0 A over 0.400 Ω from 120 V leaves a 75.0 W bulb 67.7 W, and 1.64 kW for the motor beside it', () => {
  const point = settles({ supplyVoltage: 120, resistance: 0.4, load: { current: 15 } });
  const bulb = settles({ supplyVoltage: point.loadVoltage, resistance: 0, load: { resistance: 120 ** 2 / 75 } });
  expectPrinted(bulb.loadPower, '67.7');
  expectPrinted((point.loadPower - bulb.loadPower) / 1000, '1.64');
});

test('OpenStax University Physics (m58734): two aluminium wires of 10 km, 8.252 mm across at 2.65e-8 Ω·m, are 9.91 Ω', () => {
  const ohmsPerKilometre = (2.65e-8 / ((Math.PI / 4) * 8.252e-3 ** 2)) * 1000;
  expectPrinted(loopResistance({ conductor: conductorFromResistance({ ohmsPerKilometre }), length: 10_000 }), '9.91');
});

test('Kapoor, Electrical and Electronics Engineering Materials, example 15.2: 220 V sent, 200 V received at 40 A is 0.5 Ω', () => {
  expectPrinted(settles({ supplyVoltage: 220, resistance: 0.5, load: { current: 40 } }).loadVoltage, '200.0');
});

test('Mehta & Mehta, Principles of Power System, example 13.1: along a loaded run 300 V falls to 295, 291, 288, 287.6 V', () => {
  const conductor = conductorFromResistance({ ohmsPerKilometre: 0.01 });
  // Section by section: metres, and the current of everything beyond its start.
  const sections = [
    [500, 500, '295.0'],
    [500, 400, '291.0'],
    [600, 250, '288.0'],
    [400, 50, '287.6'],
  ] as const;
  let supplyVoltage = 300;
  for (const [length, current, printed] of sections) {
    supplyVoltage = drops({ supplyVoltage, conductor, length, load: { current } }).loadVoltage;
    expectPrinted(supplyVoltage, printed);
  }
});

test('Bird, Electrical Circuit Theory and Technology, example 11: 10 Ω of copper at 20 °C (0.004/K) is 13.2 Ω at 100 °C', () => {
  expectPrinted(resistancePerMetre(withCoefficient(0.004), 100) * 10, '13.2');
});

test('OpenStax University Physics (m58731): copper of 0.0039/K doubles at 276.4 °C', () => {
  const conductor = withCoefficient(0.0039);
  expect(resistancePerMetre(conductor, 276.35)).toBeLessThan(2);
  expect(resistancePerMetre(conductor, 276.45)).toBeGreaterThan(2);
});

test("Schultz, Grob's Basic Electronics, example 11-6: 14 Ω of 0.005/K at 20 °C is 21.00 Ω at 120 °C", () => {
  expectPrinted(resistancePerMetre(withCoefficient(0.005), 120) * 14, '21.00');
});
