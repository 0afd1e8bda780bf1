import { expect, test } from 'vitest';
import { type FarEndFaultInput, farEndFaultCurrent } from '../../../src/circuit/far-end-fault.ts';
import { loadability } from '../../../src/circuit/loadability.ts';
import { type NetworkInput, SOLVE_NETWORK_FIELDS, SUPPLY_FIELDS } from '../../../src/circuit/network-problem.ts';
import { LOAD_FIELDS, OPERATING_POINT_FIELDS, operatingPoint } from '../../../src/circuit/operating-point.ts';
import { SHED_TAPS_FIELDS, shedTaps } from '../../../src/circuit/shed-taps.ts';
import { solveNetwork } from '../../../src/circuit/solve-network.ts';
import { voltageDrop } from '../../../src/circuit/voltage-drop.ts';
import { awg } from '../../../src/conductor/awg.ts';
import { as, expectInputError } from '../../helpers/expectations.ts';
import { expectHeld } from '../../helpers/held-to-fields.ts';

const load = { power: 3 };
const network: NetworkInput = {
  supplies: [{ at: 'A', voltage: 48 }],
  sections: [{ from: 'A', to: 'B', resistance: 2 }],
  taps: [{ at: 'A', load }],
};
const drop = { supplyVoltage: 24, conductor: awg(18), length: 10, load };
const fault: FarEndFaultInput = { supplyVoltage: 24, conductor: awg(18), length: 10, tripCurrent: 8 };

test('the inputs of a line are held to their fields', () => {
  expectHeld(OPERATING_POINT_FIELDS, { supplyVoltage: 24, resistance: 1, load }, operatingPoint, { looks: false });
  const loaded = (one: object): unknown => operatingPoint({ supplyVoltage: 24, resistance: 1, load: as(one) });
  for (const kind of Object.keys(LOAD_FIELDS)) {
    for (const value of [-1, Number.NaN, '3', 1e13]) expectInputError(() => loaded({ [kind]: value }), `load.${kind}`);
  }
});

test('the inputs of a network are held to their fields', () => {
  expectHeld(SOLVE_NETWORK_FIELDS, network, solveNetwork, { looks: false });
  const [supply, section, tap] = [network.supplies[0], network.sections[0], network.taps[0]];
  const first = (key: string, one: unknown): NetworkInput => ({ ...network, [key]: [one] });
  expectHeld(SUPPLY_FIELDS, as(supply), (one) => solveNetwork(first('supplies', one)), { path: 'supplies[0]', looks: false });
  for (const at of ['', Number.NaN, null, {}]) {
    expectInputError(() => solveNetwork(first('taps', { ...tap, at })), 'taps[0].at', 'type');
    expectInputError(() => solveNetwork(first('sections', { ...section, to: at })), 'sections[0].to', 'type');
  }
  for (const one of ['3', 3, []]) expectInputError(() => solveNetwork(first('taps', { ...tap, load: one })), 'taps[0].load', 'type');
  for (const one of [{}, { power: 3, current: 1 }]) {
    expectInputError(() => solveNetwork(first('taps', { ...tap, load: one })), 'taps[0].load', 'conflict');
  }
  for (const turnOff of [0, -1, '30', Number.NaN]) {
    expectInputError(() => shedTaps({ ...network, taps: [as({ ...tap, turnOff })], shed: 'allBelow' }), 'taps[0].turnOff');
  }
  for (const value of [-1, Number.NaN, '3', 1e13]) {
    expectInputError(() => solveNetwork(first('sections', { ...section, resistance: value })), 'sections[0].resistance');
  }
  for (const minimumVoltage of [0, '40', Number.NaN]) {
    expectInputError(() => loadability(as({ ...network, minimumVoltage })), 'minimumVoltage');
  }
  for (const tap of [-1, 1, 0.5, '0']) expectInputError(() => loadability(as({ ...network, tap })), 'tap');
  expectInputError(() => loadability({ ...network, taps: [], tap: 0 }), 'tap', 'conflict');
  expectHeld(SHED_TAPS_FIELDS, { ...network, shed: 'allBelow' }, shedTaps, { looks: false });
});

test('a misspelt key is refused with the one that was meant', () => {
  const refused = (call: () => unknown, parameter: string): string => expectInputError(call, parameter, 'unknown').message;
  expect(refused(() => voltageDrop(as({ ...drop, temprature: 60 })), 'temprature')).toContain('did you mean temperature?');
  expect(refused(() => loadability(as({ ...network, minVoltage: 40 })), 'minVoltage')).toContain('did you mean minimumVoltage?');
  const taps = [{ at: 'B', load, turnof: 30 }];
  expect(refused(() => shedTaps(as({ ...network, taps, shed: 'allBelow' })), 'taps[0].turnof')).toContain('did you mean turnOff?');
  const sections = [{ from: 'A', to: 'B', conductor: awg(18), length: 10, temprature: 60 }];
  expect(refused(() => solveNetwork(as({ ...network, sections })), 'sections[0].temprature')).toContain('did you mean temperature?');
});

test('what was taken for what was left out is listed', () => {
  expect(farEndFaultCurrent(fault).assumptions).toEqual([
    { parameter: 'temperature', value: 20, unit: '°C', source: 'library-default' },
    { parameter: 'sourceResistance', value: 0, unit: 'Ω', source: 'library-default' },
  ]);
  expect(farEndFaultCurrent({ ...fault, temperature: 20, sourceResistance: 0 }).assumptions).toEqual([]);
});
