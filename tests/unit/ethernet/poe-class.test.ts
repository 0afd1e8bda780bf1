import { describe, expect, test } from 'vitest';
import { assignedClass, type PoeClassNumber, type PoeClassOptions, type PseType, poeClass } from '../../../src/ethernet/index.ts';
import { source } from '../../../src/sources/source.ts';
import { as, expectInputError, expectPlain, frozen, NOT_NUMBERS } from '../../helpers/expectations.ts';

const CLASSES: readonly PoeClassNumber[] = [0, 1, 2, 3, 4, 5, 6, 7, 8];
const TYPES: readonly PseType[] = [1, 2, 3, 4];
const WEAKEST: readonly PseType[] = [1, 1, 1, 1, 2, 3, 3, 4, 4];

describe.each(CLASSES)('class %d', (number) => {
  const weakest = WEAKEST[number] as PseType;

  test('is plain data with a source that can be looked up', () => {
    const limits = poeClass(number);
    expectPlain(limits);
    expect(limits.poeClass).toBe(number);
    expect(source(limits.source).title).toContain('802.3');
  });

  test('is served by the weakest type that may, unless another is named', () => {
    expect(poeClass(number).type).toBe(weakest);
    expect(poeClass(number, {})).toStrictEqual(poeClass(number));
    expect(poeClass(number, frozen({ pseType: undefined, pairs: undefined }))).toStrictEqual(poeClass(number));
    expect(poeClass(number, { pseType: weakest })).toStrictEqual(poeClass(number));
  });

  test('is refused by every weaker type, and granted by every stronger one with the same powers', () => {
    for (const pseType of TYPES) {
      if (pseType < weakest) {
        expectInputError(() => poeClass(number, { pseType }), 'pseType', 'conflict');
      } else {
        const { psePower, pdPower, pdVoltageMin } = poeClass(number);
        expect(poeClass(number, { pseType })).toMatchObject({ type: pseType, psePower, pdPower, pdVoltageMin });
      }
    }
  });

  test('applied limits are never on the wrong side of the printed ones', () => {
    for (const pseType of TYPES.filter((type) => type >= weakest)) {
      const limits = poeClass(number, { pseType });
      expect(limits.psePowerLimit).toBeGreaterThanOrEqual(limits.psePower);
      expect(limits.pdVoltageLimit).toBeLessThanOrEqual(limits.pdVoltageMin);
    }
  });

  test('over four pairs the channel is half as many ohms; over two only up to class 4', () => {
    for (const pseType of [3, 4] as const) {
      if (pseType < weakest) continue;
      expect(poeClass(number, { pseType, pairs: 4 })).toMatchObject({ pairs: 4, channelResistance: 6.25 });
      if (number <= 4) expect(poeClass(number, { pseType, pairs: 2 })).toMatchObject({ pairs: 2, channelResistance: 12.5 });
      else expectInputError(() => poeClass(number, { pseType, pairs: 2 }), 'pairs', 'conflict');
    }
  });
});

test('types 1 and 2 have no four-pair power', () => {
  for (const pseType of [1, 2] as const) expectInputError(() => poeClass(3, { pseType, pairs: 4 }), 'pairs', 'conflict');
  expectInputError(() => poeClass(4, { pairs: 4 }), 'pairs', 'conflict');
});

test('only classes 0 and 3 carry a second printed power', () => {
  for (const number of CLASSES) expect(Object.hasOwn(poeClass(number), 'pdPowerLater')).toBe(number === 0 || number === 3);
});

describe('poeClass refuses', () => {
  test.each(NOT_NUMBERS)('%s for a class', (_label, value, code) => {
    expectInputError(() => poeClass(as<PoeClassNumber>(value)), 'poeClass', code);
  });

  test.each([-1, 9, 3.5, 1e300])('class %d', (number) => {
    expectInputError(() => poeClass(as<PoeClassNumber>(number)), 'poeClass', 'range');
  });

  test('no class', () => {
    expectInputError(() => poeClass(as<PoeClassNumber>(undefined)), 'poeClass', 'missing');
  });

  test('a type or number of pairs that does not exist', () => {
    for (const pseType of [0, 5, '3', null, 2.5, Number.NaN, Object.create(null)]) {
      expectInputError(() => poeClass(3, as<PoeClassOptions>({ pseType })), 'pseType', 'unknown');
    }
    for (const pairs of [0, 1, 3, 8, '4', null])
      expectInputError(() => poeClass(3, as<PoeClassOptions>({ pseType: 4, pairs })), 'pairs', 'unknown');
  });

  test('options that are no object', () => {
    for (const options of [null, 3, '3', [3]]) expectInputError(() => poeClass(3, as<PoeClassOptions>(options)), 'options', 'type');
  });
});

describe('assignedClass', () => {
  // Demotion: a class 8 device on a class 6 port is assigned class 6 (TI JAJSUD6, TPS23881B); a Type 1 PSE treats class 4 as class 0 (TI).
  test.each<readonly [PseType, readonly number[]]>([
    [1, [0, 1, 2, 3, 0, 0, 0, 0, 0]],
    [2, [0, 1, 2, 3, 4, 4, 4, 4, 4]],
    [3, [0, 1, 2, 3, 4, 5, 6, 6, 6]],
    [4, [0, 1, 2, 3, 4, 5, 6, 7, 8]],
  ])('a Type %d port grants classes 0 to 8 as %j', (pseType, granted) => {
    expect(CLASSES.map((requested) => assignedClass({ requestedClass: requested, pseType }))).toEqual(granted);
  });

  test('what it grants, the port may serve', () => {
    for (const pseType of TYPES) {
      for (const requested of CLASSES)
        expect(() => poeClass(assignedClass({ requestedClass: requested, pseType }), { pseType })).not.toThrow();
    }
  });

  test('refuses classes and types that do not exist', () => {
    for (const requested of [-1, 9, 0.5, '4', Number.NaN])
      expectInputError(() => assignedClass({ requestedClass: as<PoeClassNumber>(requested), pseType: 2 }), 'requestedClass');
    for (const pseType of [0, 5, '2', null])
      expectInputError(() => assignedClass({ requestedClass: 4, pseType: as<PseType>(pseType) }), 'pseType', 'unknown');
    expectInputError(() => assignedClass({ requestedClass: 4, pseType: as<PseType>(undefined) }), 'pseType', 'missing');
  });
});
