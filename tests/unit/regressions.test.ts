/** Faults that were once there, each with the input that showed it. */
import { expect, test } from 'vitest';
import { cable, runResistance } from '../../src/cable/index.ts';
import { operatingPoint, solveNetwork, voltageDrop } from '../../src/circuit/index.ts';
import { awg, conductorFromResistance, loopResistance, resistancePerMetre } from '../../src/conductor/index.ts';
import { powerAtPd } from '../../src/ethernet/index.ts';
import { checkPoweredRun, checkTwoWireRun, switchBudget } from '../../src/plan/index.ts';
import { parseQuantity } from '../../src/quantity/index.ts';
import { as, expectInputError, expectPlain } from '../helpers/expectations.ts';
import { exactPoint, pointErrors } from '../helpers/operating-point-oracle.ts';

const wire = awg(24);

test('resistance load: loadPower within 4 ulp', () => {
  const input = { supplyVoltage: 765.4032823617881, resistance: 2.2498756318356032, load: { resistance: 2.2498756318356037 } };
  const point = operatingPoint(input);
  const exact = exactPoint(input);
  if (!point.feasible || exact === 'infeasible') expect.fail('feasible');
  expect(pointErrors(point, exact).loadPower).toBeLessThanOrEqual(4);
});

test('a temperature coefficient that crosses zero in the range, or is infinite, is refused', () => {
  for (const temperatureCoefficient of [0.02, Number.POSITIVE_INFINITY]) {
    expectInputError(() => resistancePerMetre({ ...wire, temperatureCoefficient }, -100), 'conductor.temperatureCoefficient', 'range');
    expectInputError(
      () => runResistance({ segments: [{ cable: { ...cable('cat5e'), temperatureCoefficient }, length: 10, temperature: -100 }] }),
      'segments[0].cable.temperatureCoefficient',
      'range',
    );
  }
});

test('voltageDrop without an input is an InputError', () => {
  for (const input of [undefined, null]) expectInputError(() => voltageDrop(as(input)), 'input');
});

test('a bad `out` or `back` is named', () => {
  const rest = { supplyVoltage: 24, length: 1, load: { power: 1 } };
  expectInputError(() => voltageDrop(as({ ...rest, out: {}, back: wire })), 'out.resistancePerMetre', 'missing');
  expectInputError(() => voltageDrop(as({ ...rest, out: wire, back: {} })), 'back.resistancePerMetre', 'missing');
});

test('a -0 that goes in does not come out (JSON would make it 0)', () => {
  expectPlain(operatingPoint({ supplyVoltage: 50, resistance: 1, load: { power: -0 } }));
  expectPlain(operatingPoint({ supplyVoltage: 50, resistance: -0, load: { power: 1 } }));
  expectPlain(runResistance({ segments: [{ cable: cable('cat5e'), length: -0 }], connections: -0 }));
  expectPlain(loopResistance({ conductor: wire, length: -0 }));
  expectPlain(parseQuantity('-0 m'));
});

test('a voltage at the port above 57 V is refused or fails', () => {
  let verdict = 'refused';
  try {
    verdict = powerAtPd({ poeClass: 4, resistance: 1, pseVoltage: 1000 }).verdict;
  } catch {}
  expect(verdict).not.toBe('pass');
});

test('no limit of -1 ohm in a result', () => {
  for (const { loop } of powerAtPd({ poeClass: 4, resistance: 12.5, pdPower: 0, minimumVoltage: 60 }).checks) {
    expect(loop?.limit ?? 0).toBeGreaterThanOrEqual(0);
  }
});

test('what one function makes, the next accepts', () => {
  expect(() => resistancePerMetre(conductorFromResistance({ ohmsPerKilometre: 1e-12 }))).not.toThrow();
  expect(() =>
    powerAtPd({ poeClass: 4, resistance: runResistance({ segments: [{ cable: cable('cat5e'), length: 1e-12 }] }) }),
  ).not.toThrow();
  expect(() => voltageDrop({ supplyVoltage: 24, conductor: wire, length: 1e-12, load: { power: 1 } })).not.toThrow();
});

test('null is not absent', () => {
  expectInputError(
    () => runResistance(as({ segments: [{ cable: cable('cat5e'), length: 1, temperature: null }] })),
    'segments[0].temperature',
  );
  expectInputError(() => conductorFromResistance(as({ ohmsPerKilometre: 1, material: null })), 'material');
});

test('options of parseQuantity are guarded', () => {
  for (const quantity of ['mass', 'constructor'])
    expectInputError(() => parseQuantity('12', as({ quantity })), 'options.quantity', 'unknown');
  expectInputError(() => parseQuantity('5 m', as(null)), 'options', 'type');
});

test('a number too small to hold is not 0', () => {
  expectInputError(() => parseQuantity('1e-400 m'), 'text', 'range');
});

test('a text far too long for a quantity is refused before it is looked through', () => {
  for (const text of [`5${' '.repeat(40_000)}x`, `${'5'.repeat(40_000)}x\ny`])
    expectInputError(() => parseQuantity(text), 'text', 'unreadable');
});

test('a -0 comes out of no judged run, network or budget', () => {
  const piece = { cable: cable('cat5e'), length: -0 };
  expectPlain(powerAtPd({ poeClass: 4, resistance: -0, pdPower: -0 }));
  expectPlain(checkPoweredRun({ installed: [piece], poeClass: 3, pdPower: -0, connections: -0 }));
  expectPlain(checkTwoWireRun({ supplyVoltage: { low: 21, high: 27 }, conductor: wire, length: -0, load: { power: -0 } }));
  expectPlain(switchBudget({ capacity: -0, basis: 'class', ports: [] }));
  const at = { supplies: [{ at: 'a', voltage: 24 }], sections: [{ from: 'a', to: 'b', resistance: -0 }] };
  expectPlain(
    solveNetwork({
      ...at,
      taps: [
        { at: 'b', load: { power: -0 } },
        { at: 'b', load: { current: -0 } },
      ],
    }),
  );
});
