import { describe, expect, test } from 'vitest';
import {
  LLDP_FIELDS,
  type LldpAllocationInput,
  type LldpField,
  lldpAllocation,
  lldpClassLimit,
  lldpFieldName,
  lldpValue,
  lldpWatts,
  psePowerFor,
  RFC_3621,
  type Rfc3621Object,
  rfc3621Class,
  rfc3621Classification,
  rfc3621Name,
} from '../../../src/ethernet/index.ts';
import { cable, type PoeClassNumber, poeClass, runResistance } from '../../../src/index.ts';
import { source } from '../../../src/sources/index.ts';
import { as, expectInputError, expectPlain, NOT_NUMBERS } from '../../helpers/expectations.ts';

const CLASSES: readonly PoeClassNumber[] = [0, 1, 2, 3, 4, 5, 6, 7, 8];

describe('tenths of a watt', () => {
  test('every value is its own watts and back, 0.0 to 99.9 W', () => {
    for (let value = 0; value <= 999; value++) {
      expect(lldpWatts(value)).toBe(Number(`${Math.floor(value / 10)}.${value % 10}`));
      expect(lldpValue(lldpWatts(value))).toBe(value);
    }
  });

  test('a power between two values is rounded up', () => {
    expect([6.49, 3.84, 12.95, 25.41, 1e-9, 0].map((watts) => lldpValue(watts))).toEqual([65, 39, 130, 255, 1, 0]);
  });

  test('the limit of a class is its power at the device, rounded up', () => {
    for (const number of CLASSES) expect(lldpClassLimit(number)).toBe(lldpValue(poeClass(number).pdPowerLater ?? poeClass(number).pdPower));
  });

  test('refuses', () => {
    for (const [, value, code] of NOT_NUMBERS) expectInputError(() => lldpValue(as<number>(value)), 'pdPower', code);
    expectInputError(() => lldpValue(99.91), 'pdPower', 'range');
    expectInputError(() => lldpValue(-1), 'pdPower', 'range');
    for (const value of [-1, 1000, 25.5]) expectInputError(() => lldpWatts(value), 'value', 'range');
    expectInputError(() => lldpClassLimit(as<PoeClassNumber>(9)), 'poeClass', 'range');
  });
});

describe('allocation', () => {
  test('over the worst case it is what psePowerFor says, over a run less', () => {
    const run = runResistance({ segments: [{ cable: cable('cat6'), length: 30 }] });
    for (const number of CLASSES) {
      const requested = lldpClassLimit(number) - 5;
      const worst = lldpAllocation({ requested, poeClass: number });
      const near = lldpAllocation({ requested, poeClass: number, resistance: run });
      expectPlain(worst);
      const { average } = psePowerFor({ poeClass: number, pdPower: requested / 10 });
      expect(worst.psePower).toBe(average.feasible && average.psePower);
      expect(near.psePower).toBeLessThan(worst.psePower as number);
      expect([worst.resistanceBasis, near.resistanceBasis]).toEqual(['worst-case', 'stated']);
      expect(source(worst.source).title).toContain('802.3');
    }
  });

  test('a request above the class is granted up to the class', () => {
    expect(lldpAllocation({ requested: 400, poeClass: 4 })).toMatchObject({
      requested: 400,
      allocated: 255,
      classLimit: 255,
      pdPower: 25.5,
    });
    expect(lldpAllocation({ requested: 254, poeClass: 4 })).toMatchObject({ requested: 254, allocated: 254, pdPower: 25.4 });
  });

  test.each(CLASSES)(
    'class %d is never allocated more than its printed powers, however much is asked for and however long the run',
    (number) => {
      const { pdPower, pdPowerLater = pdPower, psePower, channelResistance } = poeClass(number);
      for (const requested of [lldpClassLimit(number), 999]) {
        for (const resistance of [undefined, channelResistance / 3, channelResistance, channelResistance * 1.2]) {
          const grant = lldpAllocation({ requested, poeClass: number, resistance });
          expectPlain(grant);
          expect(grant.pdPower).toBeLessThanOrEqual(pdPowerLater);
          expect(grant.psePower).toBeLessThanOrEqual(psePower);
          expect(grant.limitedByClass).toBe(grant.notes.length > 0);
          expect(grant.notes.some((note) => note.includes('may switch'))).toBe(resistance === channelResistance * 1.2);
        }
      }
    },
  );

  test('what the class cut is told: LLDP rounds the limits of classes 1 and 2 up, and the power of class 1 is rounded down', () => {
    expect(lldpAllocation({ requested: 65, poeClass: 2 })).toMatchObject({
      allocated: 65,
      pdPower: 6.49,
      limitedByClass: true,
      notes: ['class 2 allows the device 6.49 W, not the 6.5 W that it asks for'],
    });
    expect(lldpAllocation({ requested: 39, poeClass: 1 })).toMatchObject({
      pdPower: 3.84,
      psePower: 4,
      notes: [
        'class 1 allows the device 3.84 W, not the 3.9 W that it asks for',
        'class 1 is set aside 4 W at the port, not the 4.006 W that the line takes',
      ],
    });
    expect(lldpAllocation({ requested: 255, poeClass: 4 })).toMatchObject({ limitedByClass: false, notes: [] });
    // 50(50 - sqrt(2500 - 4·20·25.5))/40 = 35.69 W.
    expect(lldpAllocation({ requested: 255, poeClass: 4, resistance: 20 })).toMatchObject({
      psePower: 30,
      notes: ['class 4 is set aside 30 W at the port, not the 35.690 W that the line takes: the port may switch the device off'],
    });
  });

  test('of a range of voltage the low end counts; past collapse there is no figure', () => {
    const at = (pseVoltage: LldpAllocationInput['pseVoltage']) => lldpAllocation({ requested: 255, poeClass: 4, pseVoltage });
    expect(at({ low: 51, high: 57 })).toStrictEqual(at(51));
    const none = lldpAllocation({ requested: 255, poeClass: 4, resistance: 40 });
    expectPlain(none);
    expect([none.feasible, Object.hasOwn(none, 'psePower')]).toEqual([false, false]);
  });

  test('refuses', () => {
    for (const requested of [-1, 1000, 25.5, Number.NaN])
      expectInputError(() => lldpAllocation({ requested, poeClass: 4 }), 'requested', 'range');
    expectInputError(() => lldpAllocation({ requested: 1, poeClass: as<PoeClassNumber>(9) }), 'poeClass', 'range');
    expectInputError(() => lldpAllocation(as<LldpAllocationInput>(null)), 'input', 'type');
  });
});

describe('names on the wire', () => {
  test('every name of every field is found again by its number, and no number stands twice', () => {
    for (const field of Object.keys(LLDP_FIELDS) as LldpField[]) {
      const values: Readonly<Record<string, number>> = LLDP_FIELDS[field];
      expect(new Set(Object.values(values)).size).toBe(Object.keys(values).length);
      for (const [name, value] of Object.entries(values)) expect(lldpFieldName({ field, value })).toBe(name);
      expectInputError(() => lldpFieldName({ field, value: 14 }), 'value', 'unknown');
    }
    for (const field of ['constructor', 'powerclass', ''])
      expectInputError(() => lldpFieldName({ field: as<LldpField>(field), value: 1 }), 'field', 'unknown');
    expectInputError(() => lldpFieldName({ field: 'pairs', value: as<number>('1') }), 'value', 'type');
  });

  test('the same for RFC 3621', () => {
    for (const object of Object.keys(RFC_3621) as Rfc3621Object[]) {
      for (const [name, value] of Object.entries(RFC_3621[object])) expect(rfc3621Name({ object, value })).toBe(name);
      expectInputError(() => rfc3621Name({ object, value: 0 }), 'value', 'unknown');
    }
    expectInputError(() => rfc3621Name({ object: as<Rfc3621Object>('toString'), value: 1 }), 'object', 'unknown');
  });

  test('a classification is the class and 1; classes 5 to 8 have none', () => {
    for (const number of [0, 1, 2, 3, 4] as const) expect(rfc3621Class(rfc3621Classification(number))).toBe(number);
    expectInputError(() => rfc3621Classification(5), 'poeClass', 'range');
    for (const value of [0, 6, 9, 2.5]) expectInputError(() => rfc3621Class(value), 'value', 'range');
  });
});
