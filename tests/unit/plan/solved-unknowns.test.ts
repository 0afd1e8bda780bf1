/** The highest load, the highest temperature and the lowest supply voltage: every limit, and the edge where the line gives way. */
import { describe, expect, test } from 'vitest';
import { cable } from '../../../src/cable/index.ts';
import { conductorFromResistance } from '../../../src/conductor/index.ts';
import {
  type HighestLoad,
  type HighestTemperature,
  highestLoad,
  highestTemperature,
  type LowestSupplyVoltage,
  lowestSupplyVoltage,
  type PoweredRunInput,
} from '../../../src/plan/index.ts';

/** A loop of 1 Ω: 50 m of 10 Ω/km, a stated maximum. */
const line = { conductor: conductorFromResistance({ ohmsPerKilometre: 10 }), length: 50 };
const at24 = { ...line, supplyVoltage: { low: 24, high: 24 } };

type Answer = HighestLoad | HighestTemperature | LowestSupplyVoltage;

/** What was asked for, whatever it is called. */
function answerOf(found: Answer): number {
  if (!found.feasible || found.unbounded) expect.fail('there is a value');
  if ('load' in found) return (found.load.power ?? found.load.current ?? found.load.resistance) as number;
  return 'temperature' in found ? found.temperature : found.supplyVoltage;
}
const limitOf = (found: Answer, name: string) => found.limits.find(({ limit }) => limit === name);

function expectGoverned(found: Answer, by: string, value: number): void {
  expect(found).toMatchObject({ feasible: true, governedBy: by });
  expect(answerOf(found)).toBeCloseTo(value, 6);
  expect(limitOf(found, by)?.value).toBe(answerOf(found));
}

/** Holds if a limit is listed and bounds nothing by itself: the line gives way first. */
function expectLeftToCollapse(found: Answer, name: string): void {
  expect(limitOf(found, name)).toBeDefined();
  expect(limitOf(found, name)).not.toHaveProperty('value');
  expect(limitOf(found, name)).not.toHaveProperty('shortfall');
}

describe('the highest power, behind 1 Ω on 24 V: at most 24²/4 = 144 W, at 12 V', () => {
  test('is that of collapse where the device bears less than half the supply', () => {
    const found = highestLoad({ ...at24, minimumVoltage: 10 });
    expectGoverned(found, 'collapse', 144);
    expectLeftToCollapse(found, 'device-voltage');
  });

  test('is what leaves the minimum voltage: 8 V dropped at 16 V are 128 W', () => {
    const found = highestLoad({ ...at24, minimumVoltage: 16 });
    expectGoverned(found, 'device-voltage', 128);
    expect(limitOf(found, 'collapse')?.value).toBeCloseTo(144, 9);
  });

  test('is what drops the permitted share, or volts', () => {
    // 6 V of 24 V dropped: 18 V · 6 A.
    expectGoverned(highestLoad({ ...at24, permittedDrop: 0.25 }), 'voltage-drop', 108);
    expectGoverned(highestLoad({ ...at24, permittedDrop: { volts: 6 } }), 'voltage-drop', 108);
    expectLeftToCollapse(highestLoad({ ...at24, permittedDrop: 0.6 }), 'voltage-drop');
  });

  test('is what draws the ampacity; 12 A are drawn at collapse', () => {
    expectGoverned(highestLoad({ ...at24, ampacity: 6 }), 'ampacity', 108);
    const found = highestLoad({ ...at24, ampacity: 13 });
    expectGoverned(found, 'collapse', 144);
    expectLeftToCollapse(found, 'ampacity');
  });

  test('of two limits the nearer governs, and each has its own value', () => {
    const found = highestLoad({ ...at24, minimumVoltage: 16, ampacity: 6 });
    expectGoverned(found, 'ampacity', 108);
    expect(limitOf(found, 'device-voltage')?.value).toBeCloseTo(128, 6);
  });

  test('of one supply figure is the same: that a pass is uncertain then is not asked', () => {
    expectGoverned(highestLoad({ ...line, supplyVoltage: 24, minimumVoltage: 16 }), 'device-voltage', 128);
  });

  test('is none where the supply is under the minimum: by how much', () => {
    const found = highestLoad({ ...at24, minimumVoltage: 25 });
    expect(found).toMatchObject({ feasible: false, governedBy: 'device-voltage', unit: 'V' });
    expect(!found.feasible && found.shortfall).toBeCloseTo(1, 9);
  });
});

describe('the highest current and the lowest resistance', () => {
  test('a current leaves nothing at 24 A, and 16 V at 8 A', () => {
    expectGoverned(highestLoad({ ...at24, kind: 'current' }), 'collapse', 24);
    expectGoverned(highestLoad({ ...at24, kind: 'current', minimumVoltage: 16 }), 'device-voltage', 8);
  });

  test('a resistance of 2 Ω leaves 16 V; without a limit none is too low', () => {
    expectGoverned(highestLoad({ ...at24, kind: 'resistance', minimumVoltage: 16 }), 'device-voltage', 2);
    // 24 V over 1 Ω and 3 Ω are 6 A.
    expectGoverned(highestLoad({ ...at24, kind: 'resistance', minimumVoltage: 16, ampacity: 6 }), 'ampacity', 4);
    expect(highestLoad({ ...at24, kind: 'resistance' })).toMatchObject({ feasible: true, unbounded: true });
  });
});

describe('the lowest supply voltage for 36 W behind 1 Ω', () => {
  const { supplyVoltage: _, ...open } = { ...at24, load: { power: 36 } };

  test('is that of collapse, 2 · √36 V, where the device bears half of it', () => {
    const found = lowestSupplyVoltage({ ...open, minimumVoltage: 4 });
    expectGoverned(found, 'collapse', 12);
    expectLeftToCollapse(found, 'device-voltage');
  });

  test('is the minimum voltage and the drop: 9 V and 4 A · 1 Ω', () => {
    const found = lowestSupplyVoltage({ ...open, minimumVoltage: 9 });
    expectGoverned(found, 'device-voltage', 13);
    expect(limitOf(found, 'collapse')?.value).toBeCloseTo(12, 9);
  });

  test('is what keeps the current: 3 A at 12 V and 3 V dropped', () => {
    expectGoverned(lowestSupplyVoltage({ ...open, ampacity: 3 }), 'ampacity', 15);
  });
});

describe('the highest temperature for 72 W on 24 V, 1 Ω at 20 °C and 0.393 % more for each kelvin', () => {
  const hot = (ohms: number): number => 20 + (ohms - 1) / 0.00393;

  test('is that of collapse, 24²/(4 · 72) = 2 Ω, where the device bears half the supply', () => {
    const found = highestTemperature({ ...at24, load: { power: 72 }, minimumVoltage: 6 });
    expectGoverned(found, 'collapse', hot(2));
    expectLeftToCollapse(found, 'device-voltage');
  });

  test('is what leaves the minimum voltage: 6 V dropped by 4 A', () => {
    expectGoverned(highestTemperature({ ...at24, load: { power: 72 }, minimumVoltage: 18 }), 'device-voltage', hot(1.5));
  });

  test('is none where the line is too hot at any: 20 °C and below count as well', () => {
    const found = highestTemperature({ ...at24, load: { current: 4 }, minimumVoltage: 20.5 });
    expectGoverned(found, 'device-voltage', hot(0.875));
  });
});

describe('a run to a powered device', () => {
  const run = (length: number, change: Partial<PoweredRunInput> = {}): PoweredRunInput => ({
    installed: [{ cable: cable('cat6'), length }],
    poeClass: 2,
    ...change,
  });

  test('a bare figure counts as a pair loop: 65 m of Category 6 are 12.194 Ω at 20 °C, and reach 13 Ω hotter', () => {
    const found = highestTemperature(run(65, { cabling: 'none', maximumResistance: { ohms: 13, loop: 'unstated' } }));
    expectGoverned(found, 'device-resistance', 20 + (13 / (2 * 65 * 0.0938) - 1) / 0.00393);
  });

  test('cabling ends at 60 °C, whatever the length', () => {
    const found = highestTemperature(run(40));
    expectGoverned(found, 'cable-temperature', 60);
    expect(limitOf(found, 'permanent-link-length')).not.toHaveProperty('value');
  });

  test('a warm link may be shorter: 90 m less 0.4 % for each kelvin to 40 °C and 0.6 % from there on', () => {
    // 90 m / (1 + 20 · 0.004 + 10 · 0.006) = 78.947 m at 50 °C (TIA-568, unscreened; the table allows a little more there).
    expectGoverned(highestTemperature(run(90 / 1.14)), 'derated-length', 50);
  });

  test('the length rules of a cool cable are missed at any temperature', () => {
    const found = highestTemperature(run(91));
    expect(found).toMatchObject({ feasible: false, governedBy: 'permanent-link-length', unit: 'm' });
    expect(!found.feasible && found.shortfall).toBeCloseTo(1, 9);
  });

  test('of class 4 on 13 Ω: the port reaches its 30 W before the device its 42.5 V', () => {
    const found = lowestSupplyVoltage({ ...run(13 / 0.0938, { cabling: 'none' }), poeClass: 4 });
    // (30 W - 25.5 W) · (V/30 W)² = 13 Ω; 25.5 W/42.5 V · 13 Ω more than 42.5 V.
    expectGoverned(found, 'pse-power', 30 * Math.sqrt(13 / 4.5));
    expect(limitOf(found, 'pd-voltage')?.value).toBeCloseTo(42.5 + 7.8, 3);
  });

  test('its load is never above what its class allows', () => {
    expectGoverned(highestLoad(run(20, { cabling: 'none' })), 'pd-power', 6.49);
  });
});
