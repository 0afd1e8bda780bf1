import { describe, expect, test } from 'vitest';
import { type PsePowerForInput, poeClassDetail, powerStatement, psePowerFor } from '../../../src/ethernet/index.ts';
import { cable, type PoeClassNumber, poeClass, powerAtPd, runResistance } from '../../../src/index.ts';
import { big, math } from '../../helpers/big.ts';
import { as, expectInputError, expectPlain, expectWithin, frozen, NOT_NUMBERS } from '../../helpers/expectations.ts';

const CLASSES: readonly PoeClassNumber[] = [0, 1, 2, 3, 4, 5, 6, 7, 8];

/** V(V - sqrt(V² - 4RP))/2R at 64 digits: IEEE Std 802.3-2022, Equation 145-2 or near (from memory; the form follows from V·I = P + I²R). */
function exact(V: number, R: number, P: number): number {
  const v = big(V);
  const r = big(R);
  const root = math.sqrt(v.times(v).minus(r.times(big(P)).times(4)) as never) as unknown as ReturnType<typeof big>;
  return v.times(v.minus(root)).div(r.times(2)).toNumber();
}

describe('from a device back to its port', () => {
  test.each(CLASSES)('class %d over the worst case: the exact quadratic, average and peak', (number) => {
    const result = psePowerFor({ poeClass: number });
    expectPlain(result);
    const { pdPower, pdPeakPower, pseVoltageMin: V, channelResistance: R } = poeClassDetail(number);
    const { average, peak } = result;
    if (!average.feasible || !peak.feasible) expect.fail('not feasible');
    expectWithin(average.psePower, exact(V, R, pdPower), 1e-14);
    expectWithin(peak.psePower, exact(V, R, pdPeakPower), 1e-14);
    expect(average.psePowerLeast).toBe(average.psePower);
    expect(result).toMatchObject({ resistanceBasis: 'worst-case', voltageBasis: 'worst-case', pseVoltage: { low: V, high: V } });
    expect(result.checks.every(({ verdict }) => verdict !== 'fail')).toBe(true);
    expect(result.assumptions.map(({ parameter, value }) => [parameter, value])).toEqual([
      ['pdPower', pdPower],
      ['resistance', R],
      ['pseVoltage', V],
      ['pseType', result.limits.type],
      ['pdPeakPower', pdPeakPower],
    ]);
  });

  test('for classes 1 and 2 the peak takes more than the class power of the port', () => {
    for (const number of [1, 2] as const) {
      const { peak, limits } = psePowerFor({ poeClass: number });
      expect(peak.feasible && peak.psePower).toBeGreaterThan(limits.psePower);
    }
  });

  test('over an actual run at a stated voltage, it is the supply power of powerAtPd', () => {
    const run = runResistance({ segments: [{ cable: cable('cat6'), length: 60 }] });
    const { average, resistance, checks, assumptions } = psePowerFor({
      poeClass: 6,
      pdPower: 40,
      resistance: run,
      pseVoltage: 54,
      pdPeakPower: 44,
      pseType: 4,
    });
    const forward = powerAtPd({ poeClass: 6, pdPower: 40, resistance: run, pseVoltage: 54, pseType: 4 });
    expect(resistance).toBe(run.fourPair);
    if (!average.feasible || !forward.feasible) expect.fail('not feasible');
    expect(average.atLowest).toStrictEqual(forward.operating);
    expect([average.totalCurrent, average.pairsetCurrent, average.conductorCurrent]).toEqual([
      forward.totalCurrent,
      forward.pairsetCurrent,
      forward.conductorCurrent,
    ]);
    expect(checks.map(({ name }) => name)).toEqual([...forward.checks.map(({ name }) => name), 'pse-voltage']);
    expect(assumptions).toEqual([]);
  });

  test('a stated voltage is checked once, the whole range of it, also above the window', () => {
    const portChecks = (pseVoltage: PsePowerForInput['pseVoltage']) =>
      psePowerFor({ poeClass: 4, pseVoltage }).checks.filter(({ name }) => name === 'pse-voltage');
    for (const voltage of [48, 54, 57, 58]) expect(portChecks(voltage)).toHaveLength(1);
    expect(portChecks(58)).toMatchObject([{ value: 58, limit: 57, verdict: 'fail' }]);
    expect(portChecks({ low: 58, high: 59 })).toMatchObject([{ value: 59, limit: 57, verdict: 'fail' }]);
    expect(portChecks(undefined)).toEqual([]);
  });

  test('over a range, the lowest voltage takes the most', () => {
    const { average, voltageBasis } = psePowerFor({ poeClass: 4, pseVoltage: { low: 51, high: 57 } });
    if (!average.feasible) expect.fail('not feasible');
    expectWithin(average.psePower, exact(51, 12.5, 25.5), 1e-14);
    expectWithin(average.psePowerLeast, exact(57, 12.5, 25.5), 1e-14);
    expect(voltageBasis).toBe('range');
    expect(average.totalCurrent).toBe(average.atLowest.current);
  });

  test('a device at 13.0 W of class 3 is held against the later figures', () => {
    const { limits, checks } = psePowerFor({ poeClass: 3, pdPower: 13 });
    expect(limits.pdPower).toBe(13);
    expect(checks.filter(({ verdict }) => verdict === 'fail')).toEqual([]);
  });

  test('past collapse: a plain no', () => {
    const result = psePowerFor({ poeClass: 4, resistance: 30 });
    expectPlain(result);
    expect(result.average.feasible).toBe(false);
    expect(result.average.atLowest).toMatchObject({ feasible: false });
    // The peak alone may be too much.
    const narrow = psePowerFor({ poeClass: 4, resistance: 24, pdPeakPower: 28.3 });
    expect([narrow.average.feasible, narrow.peak.feasible]).toEqual([true, false]);
  });

  test('no load takes nothing, and a frozen input is left alone', () => {
    const input: PsePowerForInput = frozen({
      poeClass: 4,
      pdPower: 0,
      resistance: 5,
      pseVoltage: undefined,
      pseType: undefined,
      pairs: undefined,
    });
    const { average, peak } = psePowerFor(input);
    expect([average.feasible && average.psePower, peak.feasible && peak.psePower]).toEqual([0, 0]);
  });

  test('refuses', () => {
    for (const [, value, code] of NOT_NUMBERS) {
      expectInputError(() => psePowerFor({ poeClass: 4, pdPower: as<number>(value) }), 'pdPower', code);
      expectInputError(() => psePowerFor({ poeClass: 4, pdPeakPower: as<number>(value) }), 'pdPeakPower', code);
    }
    expectInputError(() => psePowerFor({ poeClass: 4, pdPower: 20, pdPeakPower: 19 }), 'pdPeakPower', 'conflict');
    expectInputError(() => psePowerFor({ poeClass: 4, resistance: -1 }), 'resistance', 'range');
    expectInputError(() => psePowerFor({ poeClass: 4, pseVoltage: { low: 57, high: 50 } }), 'pseVoltage.high', 'conflict');
    expectInputError(() => psePowerFor({ poeClass: 8, pairs: 2 }), 'pairs', 'conflict');
    expectInputError(() => psePowerFor({ poeClass: as<PoeClassNumber>(9) }), 'poeClass', 'range');
    expectInputError(() => psePowerFor(as<PsePowerForInput>(undefined)), 'input', 'missing');
  });
});

describe('powerStatement', () => {
  test('on a short run the class is the limit, on a long one the run', () => {
    expect(powerStatement(powerAtPd({ poeClass: 4, resistance: 2 }))).toBe(
      'Available over this run: 29.28 W. Allowed by class 4: 25.5 W. The class is the limit: a shorter run does not let the device draw more.',
    );
    expect(powerStatement(powerAtPd({ poeClass: 4, resistance: 15 }))).toBe(
      'Available over this run: 24.6 W. Allowed by class 4: 25.5 W. The run is the limit: the rest of the power of the port is lost in the cable.',
    );
    expect(powerStatement(powerAtPd({ poeClass: 4, resistance: 60 }))).toContain(
      'the line itself can bring no more, whatever the port gives',
    );
  });

  test('at the worst case both are the same figure', () => {
    const { pdPower } = poeClass(6);
    expect(powerStatement(powerAtPd({ poeClass: 6, resistance: 6.25 }))).toContain(
      `Available over this run: ${pdPower} W. Allowed by class 6: ${pdPower} W. The class`,
    );
  });

  test('refuses what is no result', () => {
    expectInputError(() => powerStatement(as(undefined)), 'result', 'missing');
    for (const value of [null, 4]) expectInputError(() => powerStatement(as(value)), 'result', 'type');
    expectInputError(() => powerStatement(as({})), 'result.limits', 'missing');
    const result = powerAtPd({ poeClass: 4, resistance: 5 });
    for (const [, value, code] of NOT_NUMBERS) {
      expectInputError(() => powerStatement({ ...result, available: as<number>(value) }), 'result.available', code);
      expectInputError(() => powerStatement({ ...result, allowed: as<number>(value) }), 'result.allowed', code);
      const limits = (more: object) => ({ ...result, limits: { ...result.limits, ...more } });
      expectInputError(() => powerStatement(limits({ psePower: value })), 'result.limits.psePower', code);
      expectInputError(() => powerStatement(limits({ poeClass: value })), 'result.limits.poeClass', code);
    }
    expectInputError(() => powerStatement({ ...result, available: -1 }), 'result.available', 'range');
  });
});
