/** How little is still a remedy: the least cords, connections and resistance of a connection that a person can make. */
import { describe, expect, test } from 'vitest';
import { cable, defineCable } from '../../../src/cable/index.ts';
import { conductorFromResistance } from '../../../src/conductor/index.ts';
import { type PoweredRunInput, type RemedyName, remedies, type TwoWireRunInput } from '../../../src/plan/index.ts';

/** 0.1 Ω/m, so 0.2 Ω of pair loop for each metre. */
const patch = defineCable({ name: 'patch', use: 'cord', gauge: 24, maximumOhmsPerKilometre: 100 });
// 50 m of Category 5e are 2 · 0.0938 · 50 = 9.38 Ω of pair loop: the rest of `ohms` is for cords and connections.
const run = (ohms: number, change: Partial<PoweredRunInput>): PoweredRunInput => ({
  installed: [{ cable: cable('cat5e'), length: 50 }],
  poeClass: 2,
  cabling: 'none',
  maximumResistance: { ohms: 9.38 + ohms, loop: 'pairLoop' },
  ...change,
});
/** What one remedy of a powered run leads to; nothing where it is not offered. */
const to = (name: RemedyName, input: PoweredRunInput): number | undefined => remedies(input).find(({ remedy }) => remedy === name)?.to;
const toTwoWire = (name: RemedyName, input: TwoWireRunInput): number | undefined =>
  remedies(input).find(({ remedy }) => remedy === name)?.to;

describe('cords', () => {
  const cords = (length: number): Partial<PoweredRunInput> => ({ cords: [{ cable: patch, length }] });

  test('are cut to 2 m in all, a metre at each end, and no shorter', () => {
    // 0.41 Ω are 2.05 m, 0.39 Ω are 1.95 m.
    expect(to('shorter-cords', run(0.41, cords(5)))).toBe(2);
    expect(to('shorter-cords', run(0.39, cords(5)))).toBeUndefined();
  });

  test('of 2 m are not cut', () => {
    expect(to('shorter-cords', run(0.01, cords(2)))).toBeUndefined();
  });

  test('are rounded down to the tenth of a metre', () => {
    expect(to('shorter-cords', run(0.6199, cords(5)))).toBe(3);
    expect(to('shorter-cords', run(0.6201, cords(5)))).toBe(3.1);
  });
});

describe('connections', () => {
  test('are cleaned down to 0.05 Ω each, and no further', () => {
    // Four of them have 8 times the figure in the pair loop: 0.405 Ω are 0.0506 Ω each, 0.365 Ω are 0.0456 Ω.
    expect(to('better-connections', run(0.405, { connections: 4 }))).toBe(0.05);
    expect(to('better-connections', run(0.365, { connections: 4 }))).toBeUndefined();
  });

  test('are fewer down to two, one at each end', () => {
    // 0.4 Ω each: 0.82 Ω are two of them, 0.42 Ω are one.
    expect(to('fewer-connections', run(0.82, { connections: 4 }))).toBe(2);
    expect(to('fewer-connections', run(1.22, { connections: 4 }))).toBe(3);
    expect(to('fewer-connections', run(0.42, { connections: 4 }))).toBeUndefined();
  });

  test('that are not there are not bettered', () => {
    expect(to('better-connections', run(-1, {}))).toBeUndefined();
  });
});

describe('cores in parallel', () => {
  // 10 Ω/km: 100 m are a loop of 2 Ω, two cores each way 1 Ω, three 0.667 Ω.
  const line = (maximumResistance: number): TwoWireRunInput => ({
    supplyVoltage: { low: 24, high: 24 },
    conductor: conductorFromResistance({ ohmsPerKilometre: 10 }),
    length: 100,
    load: { current: 0.1 },
    minimumVoltage: 12,
    maximumResistance,
  });

  test('are at most three each way', () => {
    expect(toTwoWire('paralleled-cores', line(1.01))).toBe(2);
    expect(toTwoWire('paralleled-cores', line(0.67))).toBe(3);
    expect(toTwoWire('paralleled-cores', line(0.66))).toBeUndefined();
  });

  test('a shorter run, rounded down to the tenth of a metre: 0.02 Ω/m', () => {
    expect(toTwoWire('shorter-run', line(1.001))).toBe(50);
    expect(toTwoWire('shorter-run', line(0.999))).toBe(49.9);
  });
});

describe('a higher supply', () => {
  // 1 A over 2 Ω drops 2 V: for 57.5 V at the device the supply has to have 59.5 V.
  const line = (minimumVoltage: number): TwoWireRunInput => ({
    supplyVoltage: { low: 58, high: 58.5 },
    conductor: conductorFromResistance({ ohmsPerKilometre: 10 }),
    length: 100,
    load: { current: 1 },
    minimumVoltage,
    maximumVoltage: 100,
  });

  test('leads to 60 V at its highest, and not beyond', () => {
    // 1.5 V more takes 58.5 V to 60 V.
    expect(toTwoWire('higher-supply', line(57.45))).toBeCloseTo(59.5, 9);
    expect(toTwoWire('higher-supply', line(57.55))).toBeUndefined();
  });
});
