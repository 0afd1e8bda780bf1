import { describe, expect, test } from 'vitest';
import {
  type ClassAssignmentInput,
  classAssignment,
  type DualSignatureClassNumber,
  type DualSignatureInput,
  type DualSignatureOptions,
  dualSignature,
  dualSignatureClass,
  poeClassDetail,
} from '../../../src/ethernet/index.ts';
import { type PoeClassNumber, type PseType, poeClass } from '../../../src/index.ts';
import { source } from '../../../src/sources/index.ts';
import { as, expectInputError, expectPlain, expectWithin, NOT_NUMBERS } from '../../helpers/expectations.ts';

const CLASSES: readonly PoeClassNumber[] = [0, 1, 2, 3, 4, 5, 6, 7, 8];

describe('poeClassDetail', () => {
  test.each(CLASSES)('class %d is poeClass and more, plain, each figure with a source', (number) => {
    const detail = poeClassDetail(number);
    expectPlain(detail);
    expect(detail).toMatchObject(poeClass(number));
    for (const key of Object.values(detail.sources)) expect(source(key).title).not.toBe('');
    expect(detail.pdPeakPower).toBeGreaterThan(detail.pdPowerLater ?? detail.pdPower);
    expectWithin(detail.totalCurrent, detail.psePower / detail.pseVoltageMin, 1e-15);
    expectWithin(detail.conductorCurrent * 2 * (detail.pairs / 2), detail.totalCurrent, 1e-15);
  });

  test('sources differ where the figures do: read for the powers, memory for the peaks', () => {
    const { sources } = poeClassDetail(3);
    expect(source(sources.pdPower).status).toBe('published');
    expect(source(sources.pdPowerLater as 'ieee-802.3-power-later').status).toBe('published');
    expect(source(sources.pdPeakPower).status).toBe('memory');
    expect(Object.hasOwn(poeClassDetail(4).sources, 'pdPowerLater')).toBe(false);
    expect(source(poeClassDetail(8).sources.pairsetCurrentUnbalanced as 'ieee-802.3-unbalanced-current').status).toBe('memory');
  });

  test('a stronger type and four pairs carry over', () => {
    expect(poeClassDetail(4, { pseType: 4, pairs: 4 })).toMatchObject({ type: 4, pairs: 4, pairsetCurrent: 30 / 52 / 2 });
  });

  test('refuses what poeClass refuses', () => {
    expectInputError(() => poeClassDetail(as<PoeClassNumber>(9)), 'poeClass', 'range');
    expectInputError(() => poeClassDetail(8, { pseType: 3 }), 'pseType', 'conflict');
  });
});

describe('dual-signature classes', () => {
  test('class 5 is not the single-signature class 5: one pairset at 52 V leaves 35.64 W', () => {
    const pairset = dualSignatureClass(5);
    expectPlain(pairset);
    expect(pairset).toMatchObject({ type: 4, psePower: 45, pdPower: 35.6, channelResistance: 12.5 });
    expect(pairset.availableAtWorst.toFixed(2)).toBe('35.64');
    expect(pairset.pairsetCurrent.toFixed(4)).toBe('0.8654');
  });

  test('two pairsets need not be equal: the type is the one that serves both', () => {
    const device = dualSignature({ a: 2, b: 5 });
    expectPlain(device);
    expect(device.a.type).toBe(4);
    expect(device).toMatchObject({ psePower: 52, a: { pdPower: 6.49 }, b: { pdPower: 35.6 } });
    expectWithin(device.totalCurrent, 52 / 52, 1e-15);
    expect(dualSignature({ a: 4, b: 4 }).a.type).toBe(3);
  });

  test('refuses classes 0 and 6, and types too weak', () => {
    for (const number of [0, 6, 2.5, '3', null, Number.NaN]) {
      const code = typeof number === 'number' ? 'range' : 'type';
      expectInputError(() => dualSignatureClass(as<DualSignatureClassNumber>(number)), 'dualSignatureClass', code);
      expectInputError(() => dualSignature({ a: 1, b: as<DualSignatureClassNumber>(number) }), 'b', code);
    }
    expectInputError(() => dualSignatureClass(3, { pseType: 2 }), 'pseType', 'conflict');
    expectInputError(() => dualSignatureClass(5, { pseType: 3 }), 'pseType', 'conflict');
    expectInputError(() => dualSignatureClass(5, { pseType: as<PseType>(5) }), 'pseType', 'unknown');
    expectInputError(() => dualSignature(as<DualSignatureInput>(null)), 'input', 'type');
    expectInputError(() => dualSignature(as({ a: 1, b: 1, type: 3 })), 'type', 'unknown');
    expectInputError(() => dualSignatureClass(3, as<DualSignatureOptions>({ type: 3 })), 'options.type', 'unknown');
    expectInputError(() => dualSignatureClass(3, as<DualSignatureOptions>(null)), 'options', 'type');
  });
});

describe('classAssignment', () => {
  test('a class 8 device on a 60 W port is granted class 6, and starts at 13 W', () => {
    const settled = classAssignment({ requestedClass: 8, pseType: 3 });
    expectPlain(settled);
    expect(settled).toMatchObject({ granted: 6, demoted: true, startUpPower: 13, pdPower: 51, requestedPdPower: 71.3, psePower: 60 });
  });

  test('a class 4 device on a Type 1 port is treated as class 0', () => {
    expect(classAssignment({ requestedClass: 4, pseType: 1 })).toMatchObject({
      granted: 0,
      demoted: true,
      pdPower: 13,
      psePower: 15.4,
    });
    expect(classAssignment({ requestedClass: 4, pseType: 1 }).statement).toBe(
      'A Type 1 port grants class 0 to this class 4 device: it may draw 13 W, not 25.5 W.',
    );
  });

  test('a port that powers one pairset grants class 4 at most', () => {
    expect(classAssignment({ requestedClass: 6, pseType: 4, pairs: 2 })).toMatchObject({ granted: 4, demoted: true });
    expect(classAssignment({ requestedClass: 3, pseType: 4, pairs: 2 })).toMatchObject({ granted: 3, demoted: false });
  });

  // The printed powers of the classes at the port: 90, 75, 60, 45, 30, 15.4, 7 and 4 W.
  test('a port with a power limit grants the highest class within it', () => {
    const of = (portLimit: number, pseType: PseType = 4): PoeClassNumber | null =>
      classAssignment({ requestedClass: 8, pseType, portLimit }).granted;
    expect([100, 90, 75, 74.9, 60, 45, 30, 15.4, 15, 7, 4].map((limit) => of(limit))).toEqual([8, 8, 7, 6, 6, 5, 4, 3, 2, 2, 1]);
    // Type 3 grants class 6 at most; Types 1 and 2 treat a higher class as class 0.
    expect([of(90, 3), of(30, 2), of(15.4, 2), of(15.4, 1), of(7, 1)]).toEqual([6, 4, 0, 0, 2]);
    const limited = classAssignment({ requestedClass: 8, pseType: 4, portLimit: 75 });
    expectPlain(limited);
    expect(limited).toMatchObject({ demoted: true, psePower: 75, pdPower: 62 });
    expect(limited.statement).toBe(
      'A Type 4 port limited to 75 W grants class 7 to this class 8 device: it may draw 62 W, not 71.3 W, and 13 W while it starts.',
    );
    // A limit that cuts nothing is not spoken of.
    expect(classAssignment({ requestedClass: 3, pseType: 4, portLimit: 75 })).toEqual(classAssignment({ requestedClass: 3, pseType: 4 }));
    for (const [, value, code] of NOT_NUMBERS) expectInputError(() => of(as<number>(value)), 'portLimit', code);
  });

  test('a limit under every class grants none, and says why', () => {
    const none = classAssignment({ requestedClass: 8, pseType: 4, portLimit: 3.99 });
    expectPlain(none);
    expect(none).toEqual({
      requestedClass: 8,
      pseType: 4,
      granted: null,
      reason: 'port-limit',
      requestedPdPower: 71.3,
      statement: 'A Type 4 port limited to 3.99 W grants no class to this class 8 device.',
      source: 'ieee-802.3-start-up',
    });
  });

  test('the pairs are those that carry the class granted', () => {
    for (const requestedClass of CLASSES) {
      const pairs = requestedClass > 4 ? 4 : 2;
      expect(classAssignment({ requestedClass, pseType: 4 })).toMatchObject({ pairs });
      expect(classAssignment({ requestedClass, pseType: 4, pairs: 4 })).toMatchObject({ pairs });
    }
  });

  test('nobody starts with more than its class, and nothing is demoted where the port can give it', () => {
    for (const requestedClass of CLASSES) {
      const settled = classAssignment({ requestedClass, pseType: 4 });
      expect(settled).toMatchObject({ granted: requestedClass, demoted: false });
      if (settled.granted === null) expect.fail('nothing is granted');
      expect(settled.startUpPower).toBe(Math.min(13, settled.pdPower));
    }
  });

  test('refuses what does not exist or does not go together', () => {
    expectInputError(() => classAssignment({ requestedClass: as<PoeClassNumber>(9), pseType: 1 }), 'requestedClass', 'range');
    for (const pseType of [0, Symbol('two'), Object.create(null)])
      expectInputError(() => classAssignment({ requestedClass: 4, pseType: as<PseType>(pseType) }), 'pseType', 'unknown');
    expectInputError(() => classAssignment({ requestedClass: 4, pseType: 2, pairs: 4 }), 'pairs', 'conflict');
    expectInputError(() => classAssignment(as<ClassAssignmentInput>(undefined)), 'input', 'missing');
  });
});
