import { describe, expect, test } from 'vitest';
import { cable } from '../../../src/cable/cable.ts';
import { type RunResistance, runResistance } from '../../../src/cable/run-resistance.ts';
import { operatingPoint } from '../../../src/circuit/operating-point.ts';
import { poeClass } from '../../../src/ethernet/poe-class.ts';
import { POWER_AT_PD_FIELDS, type PowerAtPd, type PowerAtPdInput, powerAtPd } from '../../../src/ethernet/power-at-pd.ts';
import type { Check, CheckName } from '../../../src/limits/check.ts';
import { source } from '../../../src/sources/source.ts';
import { as, expectInputError, expectPlain, expectWithin, frozen, NOT_NUMBERS } from '../../helpers/expectations.ts';
import { expectHeld } from '../../helpers/held-to-fields.ts';

function check(result: PowerAtPd, name: CheckName): Check {
  const found = result.checks.find((one) => one.name === name);
  if (found === undefined) expect.fail(`no check ${name}`);
  return found;
}

const names = (result: PowerAtPd): CheckName[] => result.checks.map(({ name }) => name);

test('its guards are those of its fields, and a key that is not known is refused', () => {
  expectHeld(POWER_AT_PD_FIELDS, { poeClass: 4, resistance: 12.5 }, powerAtPd);
});

describe('a class 4 device on the worst channel at the lowest voltage', () => {
  const result = powerAtPd({ poeClass: 4, resistance: 12.5 });

  test('is plain data', () => {
    expectPlain(result);
  });

  test('draws all that its class allows, and just that is available', () => {
    expect(result).toMatchObject({ available: 25.5, allowed: 25.5, pseVoltage: 50, resistance: 12.5, feasible: true });
    expect(result.operating).toStrictEqual(operatingPoint({ supplyVoltage: 50, resistance: 12.5, load: { power: 25.5 } }));
    expect(result.limits).toStrictEqual(poeClass(4));
  });

  test('three currents: the port, the pairset, the conductor', () => {
    expect(result).toMatchObject({ totalCurrent: 0.6, pairsetCurrent: 0.6, conductorCurrent: 0.3 });
  });

  test('every check holds with nothing to spare', () => {
    expect(names(result)).toEqual(['pd-power', 'collapse', 'pse-power', 'pd-voltage']);
    expect(check(result, 'pd-power')).toMatchObject({ value: 25.5, limit: 25.5, unit: 'W', margin: 0, verdict: 'pass' });
    expect(check(result, 'pse-power')).toMatchObject({ value: 30, limit: 30, unit: 'W', margin: 0, verdict: 'marginal' });
    expect(check(result, 'pd-voltage')).toMatchObject({ value: 42.5, limit: 42.5, unit: 'V', margin: 0, verdict: 'marginal' });
    expect(check(result, 'collapse')).toMatchObject({ value: 25.5, limit: 50, unit: 'W', margin: 24.5, verdict: 'pass' });
    expect(result.verdict).toBe('marginal');
  });

  test('the same limits in ohms: 12.5 for power and voltage, V²/4P for collapse', () => {
    expectWithin(check(result, 'pse-power').loop?.limit as number, 12.5, 1e-15);
    expectWithin(check(result, 'pd-voltage').loop?.limit as number, 12.5, 1e-15);
    expectWithin(check(result, 'collapse').loop?.limit as number, 2500 / 102, 1e-15);
  });
});

test('class 8 at its worst: 1.731 A in total, 0.865 A in a pairset, 0.433 A in a conductor (90 W at 52 V)', () => {
  const result = powerAtPd({ poeClass: 8, resistance: 6.25 });
  expect(result.feasible).toBe(true);
  if (!result.feasible) return;
  expect(result.totalCurrent.toFixed(2)).toBe('1.73');
  expect(result.pairsetCurrent).toBe(result.totalCurrent / 2);
  expect(result.conductorCurrent).toBe(result.totalCurrent / 4);
});

test('every check carries a margin in its unit and as a fraction, and a source that can be looked up', () => {
  for (const poeClass of [0, 1, 2, 3, 4, 5, 6, 7, 8] as const) {
    for (const one of powerAtPd({ poeClass, resistance: 5, minimumVoltage: 40 }).checks) {
      expect(one.marginFraction).toBe(one.margin / one.limit);
      expect(one.verdict === 'fail').toBe(one.margin < 0);
      expect(source(one.source).title).not.toBe('');
    }
  }
});

test('the pairs pick the loop of a run: one pairset, or two in parallel', () => {
  const run: RunResistance = frozen(runResistance({ segments: [{ cable: cable('cat5e'), length: 60 }], connections: 2 }));
  expect(powerAtPd({ poeClass: 4, resistance: run })).toStrictEqual(powerAtPd({ poeClass: 4, resistance: run.twoPair }));
  expect(powerAtPd({ poeClass: 4, pseType: 3, pairs: 4, resistance: run })).toStrictEqual(
    powerAtPd({ poeClass: 4, pseType: 3, pairs: 4, resistance: run.fourPair }),
  );
  expect(powerAtPd({ poeClass: 6, resistance: run }).resistance).toBe(run.fourPair);
});

test('no line: everything the port gives is available, the class still allows no more', () => {
  const result = powerAtPd({ poeClass: 4, resistance: 0 });
  expect(result).toMatchObject({ available: 30, allowed: 25.5, verdict: 'pass' });
  expect(names(result)).toEqual(['pd-power', 'pse-power', 'pd-voltage']);
});

test('available falls with the run as P - (P/V)²R up to R = V²/2P, and as V²/4R beyond', () => {
  const available = (resistance: number): number => powerAtPd({ poeClass: 4, resistance, pdPower: 1 }).available;
  expectWithin(available(10), 30 - 0.6 ** 2 * 10, 1e-15);
  expectWithin(available(2500 / 60), 15, 1e-14); // half of the 30 W is lost in the line
  expectWithin(available(50), 2500 / 200, 1e-15);
});

test('no load: nothing drops, every check passes', () => {
  const result = powerAtPd({ poeClass: 4, resistance: 12.5, pdPower: 0 });
  expectPlain(result);
  expect(result).toMatchObject({ feasible: true, totalCurrent: 0, conductorCurrent: 0, verdict: 'pass' });
});

test('a device that asks for more than its class fails on that, however short the run', () => {
  const result = powerAtPd({ poeClass: 4, resistance: 0, pdPower: 26 });
  expect(check(result, 'pd-power')).toMatchObject({ margin: -0.5, verdict: 'fail' });
  expect(result.verdict).toBe('fail');
});

test('classes 0 and 3 at exactly 13.0 W are held against the later figures, at anything else against 12.95 W', () => {
  for (const number of [0, 3] as const) {
    const later = powerAtPd({ poeClass: number, resistance: 20, pdPower: 13 });
    expect(later.allowed).toBe(13);
    expect(check(later, 'pse-power')).toMatchObject({ published: 15.4 });
    expect(check(later, 'pd-voltage')).toMatchObject({ published: 37 });
    expect(powerAtPd({ poeClass: number, resistance: 20, pdPower: 12.97 })).toMatchObject({ allowed: 12.95, verdict: 'fail' });
    expect(powerAtPd({ poeClass: number, resistance: 20 })).toMatchObject({ allowed: 12.95, verdict: 'marginal' });
    expect(Object.hasOwn(check(powerAtPd({ poeClass: number, resistance: 20 }), 'pse-power'), 'published')).toBe(false);
  }
});

test('`published` is there just where the applied limit differs from the printed one', () => {
  const differing = ([0, 1, 2, 3, 4, 5, 6, 7, 8] as const).filter((poeClass) =>
    Object.hasOwn(check(powerAtPd({ poeClass, resistance: 5 }), 'pse-power'), 'published'),
  );
  expect(differing).toEqual([1, 5, 7, 8]);
});

test('past collapse: a plain no, with what the line could deliver and what was asked', () => {
  const result = powerAtPd({ poeClass: 4, resistance: 30 });
  expectPlain(result);
  expect(result.feasible).toBe(false);
  expect(result.verdict).toBe('fail');
  expect(result.operating).toStrictEqual(operatingPoint({ supplyVoltage: 50, resistance: 30, load: { power: 25.5 } }));
  expect(names(result)).toEqual(['pd-power', 'collapse']);
  expect(check(result, 'collapse').verdict).toBe('fail');
  expectWithin(check(result, 'collapse').margin, 2500 / 120 - 25.5, 1e-12);
  expect(Object.hasOwn(result, 'totalCurrent')).toBe(false);
});

test("the device's own minimum voltage is one more check", () => {
  const result = powerAtPd({ poeClass: 3, resistance: 10, minimumVoltage: 42 });
  expect(names(result)).toContain('device-voltage');
  expect(check(result, 'device-voltage')).toMatchObject({ limit: 42, unit: 'V', source: 'data-sheet', verdict: 'fail' });
  expect(check(powerAtPd({ poeClass: 3, resistance: 10, minimumVoltage: 36 }), 'device-voltage').verdict).toBe('pass');
});

test('marginal is within 5 % of the limit, or within what the caller says', () => {
  const verdict = (marginalBelow?: number): string =>
    check(powerAtPd({ poeClass: 4, resistance: 10, marginalBelow }), 'pd-voltage').verdict;
  const spare = check(powerAtPd({ poeClass: 4, resistance: 10 }), 'pd-voltage').marginFraction;
  expect(spare).toBeGreaterThan(0.04);
  expect(spare).toBeLessThan(0.05);
  expect(verdict()).toBe('marginal');
  expect(verdict(0.05)).toBe('marginal');
  expect(verdict(0.04)).toBe('pass');
  expect(verdict(0)).toBe('pass');
  expect(verdict(1)).toBe('marginal');
});

test('a higher voltage at the port, or a stronger type, leaves more', () => {
  const at = (more: Partial<PowerAtPdInput>): number => check(powerAtPd({ poeClass: 3, resistance: 12.5, ...more }), 'pd-voltage').margin;
  expect(at({ pseVoltage: 54 })).toBeGreaterThan(at({}));
  expect(at({ pseType: 4 })).toBeGreaterThan(at({ pseType: 2 }));
});

test('undefined means absent, and a frozen input is left alone', () => {
  const input: PowerAtPdInput = frozen({
    poeClass: 4,
    resistance: 12.5,
    pseType: undefined,
    pseVoltage: undefined,
    pdPower: undefined,
    pairs: undefined,
    minimumVoltage: undefined,
    marginalBelow: undefined,
  });
  expect(powerAtPd(input)).toStrictEqual(powerAtPd({ poeClass: 4, resistance: 12.5 }));
});

describe('refuses', () => {
  const base = { poeClass: 4, resistance: 5 } as const;

  test.each(NOT_NUMBERS)('%s for any number', (_label, value, code) => {
    const number = as<number>(value);
    for (const field of ['pseVoltage', 'pdPower', 'minimumVoltage', 'marginalBelow']) {
      expectInputError(() => powerAtPd(as<PowerAtPdInput>({ ...base, [field]: number })), field, code);
    }
    expectInputError(() => powerAtPd(as<PowerAtPdInput>({ ...base, poeClass: number })), 'poeClass', code);
    if (typeof value !== 'object' || value === null) expectInputError(() => powerAtPd({ ...base, resistance: number }), 'resistance', code);
    expectInputError(() => powerAtPd(as<PowerAtPdInput>({ ...base, resistance: { twoPair: value } })), 'resistance.twoPair', code);
    expectInputError(() => powerAtPd(as<PowerAtPdInput>({ poeClass: 6, resistance: { fourPair: value } })), 'resistance.fourPair', code);
  });

  test('what lies outside the domain', () => {
    expectInputError(() => powerAtPd({ ...base, resistance: -1 }), 'resistance', 'range');
    expectInputError(() => powerAtPd({ ...base, pdPower: -1 }), 'pdPower', 'range');
    expectInputError(() => powerAtPd({ ...base, pseVoltage: 0 }), 'pseVoltage', 'range');
    expectInputError(() => powerAtPd({ ...base, minimumVoltage: 0 }), 'minimumVoltage', 'range');
    for (const marginalBelow of [-0.1, 1.1]) expectInputError(() => powerAtPd({ ...base, marginalBelow }), 'marginalBelow', 'range');
  });

  test('class, type and pairs that do not go together', () => {
    expectInputError(() => powerAtPd({ ...base, pseType: 1 }), 'pseType', 'conflict');
    expectInputError(() => powerAtPd({ ...base, pairs: 4 }), 'pairs', 'conflict');
    expectInputError(() => powerAtPd({ ...base, poeClass: 6, pairs: 2 }), 'pairs', 'conflict');
    expectInputError(() => powerAtPd(as<PowerAtPdInput>({ ...base, poeClass: 9 })), 'poeClass', 'range');
  });

  test('no resistance, an empty run, no class, no input', () => {
    expectInputError(() => powerAtPd(as<PowerAtPdInput>({ poeClass: 4 })), 'resistance', 'missing');
    for (const run of [{}, [], Object.create(null)]) {
      expectInputError(() => powerAtPd(as<PowerAtPdInput>({ poeClass: 4, resistance: run })), 'resistance.twoPair', 'missing');
    }
    expectInputError(() => powerAtPd(as<PowerAtPdInput>({ resistance: 5 })), 'poeClass', 'missing');
    for (const input of [null, 7, 'x', []]) expectInputError(() => powerAtPd(as<PowerAtPdInput>(input)), 'input', 'type');
    expectInputError(() => powerAtPd(as<PowerAtPdInput>(undefined)), 'input', 'missing');
  });
});
