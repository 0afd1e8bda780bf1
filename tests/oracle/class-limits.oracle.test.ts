/** The limits of the class table that are not printed, derived again at 64 digits from the ones that are. */
import type { BigNumber } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { CLASS_TABLE, type PoeClassNumber } from '../../src/ethernet/class-table.ts';
import { poeClass } from '../../src/ethernet/poe-class.ts';
import { big, errorInUlp } from '../helpers/big.ts';

/** Power from the port and voltage at the device for a power drawn over the worst channel at the lowest voltage. */
function worstCase(number: PoeClassNumber, pdPower: number): { port: BigNumber; device: BigNumber } {
  const { pseVoltageMin, channelResistance } = poeClass(number);
  const V = big(pseVoltageMin);
  const R = big(channelResistance);
  const root = V.times(V)
    .minus(R.times(big(pdPower)).times(4))
    .sqrt();
  return { port: V.times(V.minus(root)).div(R.times(2)), device: V.plus(root).div(2) };
}

describe.each([0, 1, 2, 3, 4, 5, 6, 7, 8] as const)('class %d', (number) => {
  const row = CLASS_TABLE[number];
  if (row === undefined) throw new Error('no such row');

  test('the port limit is the printed power, or what the printed device power takes where that is more', () => {
    const { port } = worstCase(number, row.pdPower);
    const { psePowerLimit } = poeClass(number);
    // Never less than is taken, so that the printed device passes; 12.95 and 25.5 are doubles that a rounded 15.4 and 30 must cover.
    expect(errorInUlp(psePowerLimit, port) <= 2 || big(psePowerLimit).gte(port)).toBe(true);
    if (port.lte(big(row.psePower).times(1 + 1e-9))) {
      expect(row.psePowerLimit).toBeUndefined();
      expect(psePowerLimit).toBe(row.psePower);
    } else {
      expect(big(psePowerLimit).gte(port)).toBe(true);
      expect(errorInUlp(psePowerLimit, port)).toBeLessThanOrEqual(2);
    }
  });

  test('the device is never asked for more volts than arrive', () => {
    const { device } = worstCase(number, row.pdPower);
    const { pdVoltageLimit } = poeClass(number);
    expect(big(pdVoltageLimit).lte(device) || errorInUlp(pdVoltageLimit, device) <= 2).toBe(true);
  });

  test('the later figures of classes 0 and 3 follow from 13.0 W, and no other class has any', () => {
    if (row.pdPowerLater === undefined) {
      expect([row.psePowerLimitLater, row.pdVoltageLimitLater]).toEqual([undefined, undefined]);
      return;
    }
    const { port, device } = worstCase(number, row.pdPowerLater);
    const { psePowerLimitLater, pdVoltageLimitLater } = row;
    if (psePowerLimitLater === undefined || pdVoltageLimitLater === undefined) expect.fail('missing');
    expect(big(psePowerLimitLater).gte(port)).toBe(true);
    expect(errorInUlp(psePowerLimitLater, port)).toBeLessThanOrEqual(2);
    expect(big(pdVoltageLimitLater).lte(device)).toBe(true);
    expect(errorInUlp(pdVoltageLimitLater, device)).toBeLessThanOrEqual(2);
  });
});
