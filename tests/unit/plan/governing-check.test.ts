/** Which check governs a run: with and without the rules that are kept or not and never come close. */
import { describe, expect, test } from 'vitest';
import { cable, defineCable } from '../../../src/cable/index.ts';
import { checkPoweredRun, type PoweredRunInput } from '../../../src/plan/index.ts';

const cat5e = cable('cat5e');
const cat6 = cable('cat6');

function judged(length: number, change: Partial<PoweredRunInput> = {}) {
  const run = checkPoweredRun({ installed: [{ cable: cat5e, length }], poeClass: 3, ...change });
  const { checks } = run;
  const limitOf = (name: string): number | undefined => checks.find((check) => check.name === name)?.limit;
  return { governing: run.governing.name, names: checks.map(({ name }) => name), limitOf };
}
const governing = (length: number, change?: Partial<PoweredRunInput>): string => judged(length, change).governing;

describe('a run that passes', () => {
  // 50 m of Category 5e are 4.69 Ω: at 44 V the port gives 13.4 W of 15.4 W, 13 % less, and the device sees 42.6 V of 37 V, 15 %
  // more. Half the length rules are left. The device takes all that its class allows, and 24 AWG is the thinnest there may be.
  test('is governed by what comes close, however full class, connections and gauge are', () => {
    expect(judged(50).names).toEqual(expect.arrayContaining(['pd-power', 'material', 'connections', 'conductor-gauge']));
    expect(governing(50)).toBe('pse-power');
    expect(governing(50, { connections: 4, connectionResistance: 0 })).toBe('pse-power');
    expect(governing(50, { installed: [{ cable: cat6, length: 50 }] })).toBe('pse-power');
  });

  test('is governed by the same without the gauge check, and without any rule of cabling', () => {
    expect(judged(50, { cabling: 'ISO/IEC 11801' }).names).not.toContain('conductor-gauge');
    expect(governing(50, { cabling: 'ISO/IEC 11801' })).toBe('pse-power');
    expect(governing(50, { cabling: 'none' })).toBe('pse-power');
  });

  test('is governed by a length rule where that is closest: 88 of 90 m', () => {
    expect(governing(88)).toBe('permanent-link-length');
    expect(governing(88, { cabling: 'ISO/IEC 11801' })).toBe('permanent-link-length');
  });

  test('is governed by the first of two that are equally close', () => {
    // 10 W leave a class 4 port far from its limit: only the voltage at the device is near one, here twice the same.
    const light = { poeClass: 4, pdPower: 10, cabling: 'none' } as const;
    const minimumVoltage = judged(100, light).limitOf('pd-voltage');
    expect(minimumVoltage).toBeCloseTo(42.5, 3);
    expect(governing(100, { ...light, minimumVoltage })).toBe('pd-voltage');
    expect(governing(100, { ...light, minimumVoltage: 43 })).toBe('device-voltage');
    expect(governing(100, { ...light, minimumVoltage: 42 })).toBe('pd-voltage');
  });
});

describe('a run that fails', () => {
  test('on a rule that never comes close is governed by that rule', () => {
    expect(governing(50, { connections: 5 })).toBe('connections');
    const thin = defineCable({ name: 'thin', use: 'horizontal', gauge: 26, maximumOhmsPerKilometre: 150 });
    expect(governing(20, { installed: [{ cable: thin, length: 20 }] })).toBe('conductor-gauge');
    expect(governing(50, { pdPower: 13.5 })).toBe('pd-power');
    const clad = { ...cat6, material: 'copper-clad-aluminium' } as const;
    expect(governing(50, { installed: [{ cable: clad, length: 50 }] })).toBe('material');
  });

  test('on two is governed by the larger miss, as a fraction of its limit', () => {
    // 94 m of 90 is 4.4 % too long, 120 m is a third; five connections of four are a quarter too many.
    expect(governing(94, { connections: 5 })).toBe('connections');
    expect(governing(120, { connections: 5 })).toBe('permanent-link-length');
    // 20 W of 12.95 W is 54 % too much for the class; the port would give a third more than it may.
    expect(governing(94, { pdPower: 20 })).toBe('pd-power');
  });

  test('is governed by what fails, not by a larger doubt', () => {
    // A bare 13 Ω against 18.76 Ω as a pair loop is missed by 44 %, and met as one pairset. 100 m of 90 is missed by 11 %.
    const doubtful = { poeClass: 2, maximumResistance: { ohms: 13, loop: 'unstated' } } as const;
    expect(governing(100, doubtful)).toBe('permanent-link-length');
    expect(governing(100, { ...doubtful, cabling: 'none' })).toBe('device-resistance');
  });
});
