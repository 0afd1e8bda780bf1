/**
 * Published worked examples, worked again line by line, to the digits of the printed answer.
 *
 * OpenStax and Kuphaldt: read in the books' own sources. Other textbooks: read in the FOSSEE companion notebooks, which recompute the book's
 * example; the printed book was not seen. IEEE 802.3: TI SLVS885G Table 2 and the 802.3af task-force reflector; the standard was not read.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { cable } from '../../src/cable/cable.ts';
import type { CableName } from '../../src/cable/cables.ts';
import { conductorFromResistance } from '../../src/conductor/conductor-from-resistance.ts';
import { ohmsPerKilofoot } from '../../src/quantity/convert-electrical.ts';
import { circularMils, feet } from '../../src/quantity/convert-length.ts';
import { reviewAnswer, showWorking, type Working } from '../../src/working/index.ts';
import { expectPrinted } from '../helpers/expectations.ts';

const disc = (diameter: number): number => (Math.PI / 4) * diameter ** 2;
/** Ω·mm²/m of a resistivity in Ω·cmil/ft. */
const perMilFoot = (resistivity: number): number => (resistivity * circularMils(1)) / feet(1);
const figure = ({ results }: Working, core: string): number => {
  const found = results.find((result) => result.core === core);
  if (found === undefined) expect.fail(`there is no ${core}`);
  return found.value;
};

test.each<readonly [string, Parameters<typeof showWorking<'uniformWire'>>[1], string]>([
  ['OpenStax College Physics m42346: 20.0 m of 12 AWG, 1.72e-8 Ω·m', { resistivity: 0.0172, length: 20, area: disc(2.053) }, '0.104'],
  ['OpenStax University Physics m58731: the same with 1.68e-8 Ω·m', { resistivity: 0.0168, length: 20, area: disc(2.053) }, '0.10'],
  ['Bird, example 4, p. 25: 100 mm², 2000 m, 0.03e-6 Ω·m', { resistivity: 0.03, length: 2000, area: 100 }, '0.6'],
  ['Bird, example 5, p. 25: the area of 40 m with 0.25 Ω, 0.02e-6 Ω·m', { resistance: 0.25, resistivity: 0.02, length: 40 }, '3.2'],
  ['Bird, example 6, p. 25: the resistivity of 1500 m, 0.17 mm², 150 Ω', { resistance: 150, length: 1500, area: 0.17 }, '0.017'],
  ['Robertson, example 1.16, p. 22: 200 m, 8e-7 m², 2e-8 Ω·m', { resistivity: 0.02, length: 200, area: 0.8 }, '5'],
  [
    "Schultz, Grob's Basic Electronics 11-3: 100 ft of 1022 cmil, 10.4 Ω·cmil/ft",
    { resistivity: perMilFoot(10.4), length: feet(100), area: circularMils(1022) },
    '1.02',
  ],
  [
    'Kuphaldt: 2300 ft of 14 AWG, 4107 cmil, 10.09 Ω·cmil/ft',
    { resistivity: perMilFoot(10.09), length: feet(2300), area: circularMils(4107) },
    '5.651',
  ],
])('%s: %s', (_example, input, printed) => {
  const { result } = showWorking('uniformWire', input);
  expectPrinted(result.value, printed);
  expect(reviewAnswer('uniformWire', input, printed).verdict).toBe('right');
});

test.each<readonly [string, Parameters<typeof showWorking<'resistanceAtTemperature'>>[1], string]>([
  [
    'Bird, example 8, p. 27: 100 Ω at 0 °C, 0.0043/°C, at 70 °C',
    { resistance: 100, temperature: 0, coefficient: 0.0043, coefficientTemperature: 0, at: 70 },
    '130.1',
  ],
  [
    'Bird, example 9, p. 27: 27 Ω at 35 °C, 0.0038/°C at 0 °C, at 0 °C',
    { resistance: 27, temperature: 35, coefficient: 0.0038, coefficientTemperature: 0, at: 0 },
    '23.83',
  ],
  ['Bird, example 11, p. 28: 10 Ω at 20 °C, 0.004/°C, at 100 °C', { resistance: 10, temperature: 20, coefficient: 0.004, at: 100 }, '13.2'],
  [
    'Robertson, example 1.18, p. 23: 250 Ω at 15 °C, 4.28e-3/°C at 0 °C, at 45 °C',
    { resistance: 250, temperature: 15, coefficient: 0.00428, coefficientTemperature: 0, at: 45 },
    '280.2',
  ],
  [
    'OpenStax College Physics m42346: a filament, 0.350 Ω at 20 °C, 4.5e-3/°C, at 2850 °C',
    { resistance: 0.35, temperature: 20, coefficient: 0.0045, at: 2850 },
    '4.8',
  ],
  ['Kuphaldt: 15 Ω at 20 °C, 0.004041/°C, at 35 °C', { resistance: 15, temperature: 20, coefficient: 0.004041, at: 35 }, '15.909'],
])('%s: %s', (_example, input, printed) => {
  expectPrinted(showWorking('resistanceAtTemperature', input).result.value, printed);
});

test('Kuphaldt: 14 V, wires of 15 Ω at 20 °C, 250 Ω at their end, 35 °C: 49.677 mA, 12.42 V', () => {
  const conductor = { ...conductorFromResistance({ ohmsPerKilometre: 150 }), temperatureCoefficient: 0.004041 };
  const working = showWorking('voltageDrop', { supplyVoltage: 14, conductor, length: 100, temperature: 35, load: { resistance: 250 } });
  expectPrinted(figure(working, 'current') * 1000, '49.677');
  expectPrinted(figure(working, 'loadVoltage'), '12.42');
});

test('Kuphaldt: 2300 ft of 14 AWG is a loop of 11.301 Ω and passes 20.352 A into a short at 230 V', () => {
  const conductor = conductorFromResistance({ ohmsPerKilometre: ohmsPerKilofoot((10.09 / 4107) * 1000) * 1000 });
  expectPrinted(showWorking('loopResistance', { conductor, length: feet(2300) }).result.value, '11.301');
  const short = showWorking('voltageDrop', { supplyVoltage: 230, conductor, length: feet(2300), load: { resistance: 0 } });
  expectPrinted(figure(short, 'current'), '20.352');
});

test('Kuphaldt: 230 V, 25 A over 0.2 Ω a wire leaves 220 V', () => {
  expectPrinted(showWorking('operatingPoint', { supplyVoltage: 230, resistance: 0.4, load: { current: 25 } }).result.value, '220.0');
});

test('OpenStax College Physics (m42344, m42714): 5.00 A through a cord of 0.300 Ω drops 1.50 V and heats 7.50 W', () => {
  const working = showWorking('operatingPoint', { supplyVoltage: 120, resistance: 0.3, load: { current: 5 } });
  expectPrinted(figure(working, 'voltageDrop'), '1.50');
  expectPrinted(figure(working, 'lineLoss'), '7.50');
});

test('OpenStax University Physics (m58734): two aluminium wires of 10 km, 8.252 mm across at 2.65e-8 Ω·m, are 9.91 Ω', () => {
  const ohmsPerKilometre = (2.65e-8 / ((Math.PI / 4) * 8.252e-3 ** 2)) * 1000;
  const { result } = showWorking('loopResistance', { conductor: conductorFromResistance({ ohmsPerKilometre }), length: 10_000 });
  expectPrinted(result.value, '9.91');
});

test('Beiser, problem 5.14: 12 AWG (6530 cmil, 10.4 Ω·cmil/ft) drops 5 V of 15 A in 209 ft of wire, there and back (cut from 209.3)', () => {
  const conductor = conductorFromResistance({ ohmsPerKilometre: ohmsPerKilofoot((10.4 / 6530) * 1000) * 1000 });
  const { result } = showWorking('maximumRun', { supplyVoltage: 120, conductor, load: { current: 15 }, minimumVoltage: 115 });
  expect(Math.floor((2 * result.value) / feet(1))).toBe(209);
});

test('ASTM B258: 24 AWG is 0.0201 in across', () => {
  expectPrinted(figure(showWorking('awg', { size: 24 }), 'diameter') / 25.4, '0.0201');
  expectPrinted(figure(showWorking('awg', { size: 24, family: 'astm-b258' }), 'diameter') / 25.4, '0.0201');
});

test('TI SLVS885G Table 2: 50 V, 12.5 Ω, 30 W gives 25.5 W and 42.5 V; 44 V, 20 Ω, 15.4 W gives 12.95 W and 37 V', () => {
  const type2 = showWorking('powerAtPd', { poeClass: 4, resistance: 12.5 });
  expectPrinted(type2.result.value, '25.5');
  expectPrinted(figure(type2, 'operating.loadVoltage'), '42.5');
  const type1 = showWorking('powerAtPd', { poeClass: 3, resistance: 20 });
  expectPrinted(type1.result.value, '12.95');
  expectPrinted(figure(type1, 'operating.loadVoltage'), '37.0');
  expectPrinted(showWorking('psePowerFor', { poeClass: 4 }).result.value, '30.0');
  expectPrinted(showWorking('psePowerFor', { poeClass: 3 }).result.value, '15.4');
});

test('IEEE 802.3af reflector, power_study msg00509: 12.95 W at 37 V is 350 mA, a drop of 7 V from 44 V', () => {
  const working = showWorking('operatingPoint', { supplyVoltage: 44, resistance: 20, load: { power: 12.95 } });
  expectPrinted(figure(working, 'current') * 1000, '350');
  expectPrinted(figure(working, 'voltageDrop'), '7');
  expectPrinted(working.result.value, '37');
});

test.each<readonly [string, number, number, readonly (readonly [string, number, number])[], readonly string[]]>([
  [
    'example 13.1, p. 313: 300 V, 0.01 Ω per 1000 m of each conductor',
    300,
    0.02 / 1000,
    [
      ['C', 500, 100],
      ['D', 1000, 150],
      ['E', 1600, 200],
      ['B', 2000, 50],
    ],
    ['295.0', '291.0', '288.0', '287.6'],
  ],
  [
    'example 13.3, p. 315: two trams at 2 km and 6 km, 0.28 Ω/km of wire and track',
    600,
    0.28 / 1000,
    [
      ['tram A', 2000, 40],
      ['tram B', 6000, 20],
    ],
    ['566.4', '544.0'],
  ],
])('Mehta & Mehta, Principles of Power System (by the FOSSEE notebook), %s', (_example, voltage, loop, taps, printed) => {
  const working = showWorking('solveNetwork', {
    supplies: [{ at: 'A', voltage }],
    sections: taps.map(([to, metres], i) => ({
      from: taps[i - 1]?.[0] ?? 'A',
      to,
      resistance: loop * (metres - (taps[i - 1]?.[1] ?? 0)),
    })),
    taps: taps.map(([at, , current]) => ({ at, load: { current } })),
  });
  for (const [i, digits] of printed.entries()) expectPrinted(figure(working, `nodes[${i + 1}].voltage`), digits);
  expectPrinted(working.result.value, printed.at(-1) as string);
});

test('NFPA 70-2017 (NEC), 725.144: 1.2 A for 23 AWG in a bundle of 7, cable for 60 °C', () => {
  expectPrinted(showWorking('ampacity', { code: 'NEC 2017', gauge: 23, bundle: 7 }).result.value, '1.2');
});

// A contribution to IEEE 802.3at on current de-rating against temperature: 100 cables in air of 23 °C. The last column is the model, fitted apart.
const bundles = readFileSync(join(import.meta.dirname, 'bundle-heating-points.csv'), 'utf8')
  .trim()
  .split('\n')
  .slice(1)
  .map((line) => line.split(',') as [CableName, string, string, string, string]);

test.each(bundles)('%s, %s cables, %s A a pair: %s K published, %s K by the model', (name, bundle, pairCurrent, _published, model) => {
  const input = {
    cable: cable(name),
    bundle: Number(bundle),
    pairCurrent: Number(pairCurrent),
    ambient: 23,
    installation: 'open-air',
  } as const;
  expectPrinted(showWorking('bundleRise', input).result.value, model);
});

test('a guide to interoperability of power over Ethernet, 9.7: a branch 6 % above the other is 3 % of unbalance, 2.91 % unrounded', () => {
  const working = showWorking('unbalance', { pairs: { '1,2': [1.06, 1] } });
  expectPrinted(figure(working, 'pairs[0].fraction') * 100, '3');
  expectPrinted(figure(working, 'pairs[0].fraction') * 100, '2.91');
  expect(reviewAnswer('unbalance', { pairs: { '1,2': [1.06, 1] } }, '6.0 %', { of: 'pairs[0].fraction' }).slips).toMatchObject([
    { slip: 'unbalance-of-one' },
  ]);
});

test('TI SLVS885G Table 2, put the other way round: 25.5 W behind 12.5 Ω needs 50 V and is all that may be drawn; 12.95 W behind 20 Ω, 44 V', () => {
  for (const [poeClass, ohms, volts, watts] of [
    [4, 12.5, '50.0', '25.50'],
    [3, 20, '44.0', '12.95'],
  ] as const) {
    const own = { ...cable('cat5e'), maximumResistancePerMetre: ohms / 100 };
    const run = { installed: [{ cable: own, length: 100 }], poeClass, cabling: 'none' } as const;
    expectPrinted(showWorking('lowestSupplyVoltage', run).result.value, volts);
    expectPrinted(showWorking('highestLoad', run).result.value, watts);
    expectPrinted(showWorking('highestTemperature', run).result.value, '20', 1);
  }
});

test('Kuphaldt: a short at the end of 2300 ft of 14 AWG at 230 V is 20.352 A', () => {
  const conductor = conductorFromResistance({ ohmsPerKilometre: ohmsPerKilofoot((10.09 / 4107) * 1000) * 1000 });
  const fault = showWorking('farEndFaultCurrent', { supplyVoltage: 230, conductor, length: feet(2300), tripCurrent: 15 });
  expectPrinted(figure(fault, 'faultCurrent'), '20.352');
});

test('Kuphaldt: 15 Ω at 20 °C with 0.004041/°C is 15.909 Ω at 35 °C', () => {
  const conductor = { ...conductorFromResistance({ ohmsPerKilometre: 150 }), temperatureCoefficient: 0.004041 };
  const run = { supplyVoltage: 14, conductor, length: 50, load: { resistance: 250 }, maximumResistance: 15.909 };
  expectPrinted(showWorking('highestTemperature', run).result.value, '35.0');
});

test('Beiser, problem 5.14: 209.3 ft of 12 AWG wire, there and back, drop 5 V of 15 A', () => {
  const conductor = conductorFromResistance({ ohmsPerKilometre: ohmsPerKilofoot((10.4 / 6530) * 1000) * 1000 });
  const run = { supplyVoltage: 120, conductor, length: feet(209.3) / 2, load: { current: 15 } };
  expectPrinted(showWorking('leastPermittedDrop', run).result.value, '5.00');
});
