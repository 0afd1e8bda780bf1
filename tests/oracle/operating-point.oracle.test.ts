/** `operatingPoint` against 64-digit arithmetic on the exact binary inputs, and against integers for what is feasible. */
import { expect, test } from 'vitest';
import { type OperatingPointInput, operatingPoint } from '../../src/circuit/operating-point.ts';
import { neighbour } from '../helpers/exact.ts';
import { expectFinite } from '../helpers/expectations.ts';
import {
  carriesCurrent,
  carriesPower,
  exactPoint,
  pointErrors,
  randomCurrentCase,
  randomPowerCase,
  randomResistanceCase,
} from '../helpers/operating-point-oracle.ts';
import { type Random, seeded } from '../helpers/random.ts';

/** Asks the library and the oracle the same question many times; returns how often each said yes and no. */
function compareMany(cases: number, seed: number, draw: (random: Random) => OperatingPointInput): { yes: number; no: number } {
  const random = seeded(seed);
  const said = { yes: 0, no: 0 };
  for (let i = 0; i < cases; i++) {
    const input = draw(random);
    const point = operatingPoint(input);
    const exact = exactPoint(input);
    const asked = JSON.stringify(input);
    if (point.feasible !== (exact !== 'infeasible')) expect.fail(`feasible is wrong for ${asked}`);
    expectFinite(point, asked);
    if (!point.feasible || exact === 'infeasible') {
      said.no++;
      continue;
    }
    said.yes++;
    for (const [field, error] of Object.entries(pointErrors(point, exact))) {
      if (!(error <= (field === 'lineLoss' ? 6 : 4))) expect.fail(`${field} is ${error} ulp off for ${asked}`);
    }
  }
  return said;
}

test('constant power: 4 ulp, line loss 6, and exactly right about feasibility, up to and beyond collapse', () => {
  const said = compareMany(12_000, 1, randomPowerCase);
  expect(said.yes).toBeGreaterThan(4000);
  expect(said.no).toBeGreaterThan(3000);
});

test('constant current: 4 ulp, line loss 6, and exactly right about feasibility, up to and beyond a short', () => {
  const said = compareMany(5_000, 2, randomCurrentCase);
  expect(said.yes).toBeGreaterThan(1500);
  expect(said.no).toBeGreaterThan(1200);
});

test('resistance: 4 ulp, line loss 6, always feasible', () => {
  expect(compareMany(3_000, 3, randomResistanceCase)).toEqual({ yes: 3000, no: 0 });
});

test('maximumLoadPower is itself carried, by integers and by the library, and the next double is not', () => {
  const random = seeded(4);
  let checked = 0;
  while (checked < 10_000) {
    const { supplyVoltage, resistance, load } = randomPowerCase(random);
    const point = operatingPoint({ supplyVoltage, resistance, load });
    if (point.feasible) continue;
    checked++;
    const most = point.maximumLoadPower;
    const asked = `${supplyVoltage} V, ${resistance} ohm, ${most} W`;
    const next = neighbour(most, 1);
    if (!carriesPower(supplyVoltage, resistance, most)) expect.fail(`not carried: ${asked}`);
    if (carriesPower(supplyVoltage, resistance, next)) expect.fail(`not the largest: ${asked}`);
    if (!operatingPoint({ supplyVoltage, resistance, load: { power: most } }).feasible) expect.fail(`fed back, refused: ${asked}`);
    if (operatingPoint({ supplyVoltage, resistance, load: { power: next } }).feasible) expect.fail(`next double accepted: ${asked}`);
  }
});

test('maximumCurrent is itself carried, by integers and by the library, and the next double is not', () => {
  const random = seeded(5);
  let checked = 0;
  while (checked < 10_000) {
    const { supplyVoltage, resistance, load } = randomCurrentCase(random);
    const point = operatingPoint({ supplyVoltage, resistance, load });
    if (point.feasible) continue;
    checked++;
    const most = point.maximumCurrent;
    const asked = `${supplyVoltage} V, ${resistance} ohm, ${most} A`;
    const next = neighbour(most, 1);
    if (!carriesCurrent(supplyVoltage, resistance, most)) expect.fail(`not carried: ${asked}`);
    if (carriesCurrent(supplyVoltage, resistance, next)) expect.fail(`not the largest: ${asked}`);
    if (!operatingPoint({ supplyVoltage, resistance, load: { current: most } }).feasible) expect.fail(`fed back, refused: ${asked}`);
    if (operatingPoint({ supplyVoltage, resistance, load: { current: next } }).feasible) expect.fail(`next double accepted: ${asked}`);
  }
});

test('both figures of a no are the same whichever load was refused', () => {
  const line = { supplyVoltage: 49.7, resistance: 17.3 };
  const power = operatingPoint({ ...line, load: { power: 1000 } });
  expect(operatingPoint({ ...line, load: { current: 1000 } })).toStrictEqual(power);
  expect(power.feasible).toBe(false);
});
