/** One two-wire DC run, judged. */
import { describe, expect, test } from 'vitest';
import { parallelConductors } from '../../../src/conductor/index.ts';
import {
  awg,
  checkTwoWireRun,
  conductorFromResistance,
  highestLoad,
  InputError,
  lowestSupplyVoltage,
  maximumRun,
  type TwoWireRunInput,
} from '../../../src/index.ts';
import { leastPermittedDrop, remedies } from '../../../src/plan/index.ts';
import { expectInputError } from '../../helpers/expectations.ts';

const cue: TwoWireRunInput = {
  supplyVoltage: { low: 21, high: 27.6 },
  conductor: awg(18),
  length: 60,
  load: { power: 6 },
  minimumVoltage: 19,
};

describe('the supply', () => {
  test('is judged at its lowest voltage', () => {
    const { operating, atHighest, checks } = checkTwoWireRun(cue);
    expect(operating).toMatchObject({ feasible: true });
    expect(checks.find(({ name }) => name === 'device-voltage')?.value).toBe(operating.feasible && operating.loadVoltage);
    expect(atHighest.feasible && operating.feasible && atHighest.loadVoltage > operating.loadVoltage).toBe(true);
  });

  test('given as one figure leaves a pass uncertain, and a fail a fail', () => {
    const one = checkTwoWireRun({ ...cue, supplyVoltage: 24 });
    expect(one.verdict).toEqual({ power: 'uncertain', worst: 'uncertain' });
    expect(one.checks.every(({ deciding }) => deciding?.some(({ parameter }) => parameter === 'supplyVoltage'))).toBe(true);
    expect(checkTwoWireRun({ ...cue, supplyVoltage: 24, length: 2000 }).verdict.power).toBe('fail');
  });

  test('without any limit of the device a pass is uncertain: its minimum voltage would settle it', () => {
    const { minimumVoltage: _, ...open } = cue;
    expect(checkTwoWireRun(open)).toMatchObject({
      verdict: { power: 'uncertain', worst: 'uncertain' },
      checks: [{ name: 'collapse', deciding: [{ parameter: 'minimumVoltage' }] }],
    });
  });
});

describe('the conductor', () => {
  test('of a gauge is taken 2 % up for its diameter; one from a data sheet is taken as stated', () => {
    const { meterReading } = checkTwoWireRun(cue);
    expect(meterReading.maximum / meterReading.nominal).toBeCloseTo(1.02, 12);
    const sheet = checkTwoWireRun({ ...cue, conductor: conductorFromResistance({ ohmsPerKilometre: 39 }) });
    expect(sheet.resistance).toBeCloseTo(2 * 0.039 * 60, 12);
    expect(sheet.meterReading.nominal).toBe(sheet.meterReading.maximum);
  });

  test('joints add out and back', () => {
    const plain = checkTwoWireRun(cue).resistance;
    expect(checkTwoWireRun({ ...cue, connections: 3, connectionResistance: 0.05 }).resistance).toBeCloseTo(plain + 0.3, 12);
  });
});

describe('limits', () => {
  test('a load the line cannot carry is a fail with the figures that explain it', () => {
    const far = checkTwoWireRun({ ...cue, length: 2000 });
    expect(far.operating).toMatchObject({ feasible: false });
    expect(far.governing).toMatchObject({ name: 'collapse', verdict: 'fail' });
    expect(far.governing?.margin).toBeLessThan(0);
  });

  test('a permitted drop and a resistance limit are checks of their own', () => {
    const names = checkTwoWireRun({ ...cue, permittedDrop: 0.05, maximumResistance: 10 }).checks.map(({ name }) => name);
    expect(names).toEqual(['collapse', 'device-voltage', 'voltage-drop', 'device-resistance']);
  });

  test('a resistance load without limits has nothing to be judged by, and nothing bounds its run', () => {
    const lamp = { supplyVoltage: { low: 21, high: 27.6 }, conductor: awg(18), load: { resistance: 96 } } as const;
    expect(checkTwoWireRun({ ...lamp, length: 60 })).toMatchObject({ checks: [], verdict: { power: 'uncertain' } });
    expect(checkTwoWireRun({ ...lamp, length: 60 })).not.toHaveProperty('governing');
    expect(maximumRun(lamp)).toMatchObject({ feasible: true, unbounded: true });
  });

  test('a minimum above the supply is met by no length', () => {
    const { length: _, ...open } = cue;
    expect(maximumRun({ ...open, minimumVoltage: 22 })).toMatchObject({ feasible: false, governedBy: 'device-voltage' });
    expect(maximumRun({ ...open, minimumVoltage: 22, load: { current: 0 } })).toMatchObject({ feasible: false });
    expect(maximumRun({ ...open, minimumVoltage: 22, load: { power: 0 } })).toMatchObject({ feasible: false });
  });
});

test('remedies are thicker wire or less of it, each passing the same checks', () => {
  const failing = { ...cue, conductor: awg(22), length: 90 };
  for (const { remedy, to } of remedies(failing)) {
    const changed =
      remedy === 'shorter-run'
        ? { ...failing, length: to }
        : {
            ...failing,
            conductor: remedy === 'paralleled-cores' ? parallelConductors(Array.from({ length: to }, () => awg(22))) : awg(to),
          };
    expect(checkTwoWireRun(changed).verdict.power).not.toBe('fail');
  }
  expect(remedies(failing).map(({ remedy }) => remedy)).toEqual(['thicker-conductor', 'paralleled-cores', 'shorter-run']);
  expect(remedies(cue)).toEqual([]);
});

test.each([
  ['supplyVoltage', { supplyVoltage: '24' }],
  ['supplyVoltage.low', { supplyVoltage: { high: 24 } }],
  ['supplyVoltage.high', { supplyVoltage: { low: 24, high: 21 } }],
  ['conductor', { conductor: undefined }],
  ['length', { length: -1 }],
  ['temperature', { temperature: 1000 }],
  ['load', { load: {} }],
  ['load', { load: { power: 6, current: 1 } }],
  ['load.power', { load: { power: Number.NaN } }],
  ['connections', { connections: -1 }],
  ['connectionResistance', { connectionResistance: -1 }],
  ['minimumVoltage', { minimumVoltage: 0 }],
  ['permittedDrop', { permittedDrop: 1 }],
  ['maximumResistance', { maximumResistance: 0 }],
  ['marginalBelow', { marginalBelow: -0.1 }],
])('nonsense in %s is named', (parameter, change) => {
  const act = (): unknown => checkTwoWireRun({ ...cue, ...change } as unknown as TwoWireRunInput);
  expect(act).toThrow(InputError);
  expect(act).toThrow(expect.objectContaining({ parameter }));
});

describe('a drop in volts, and the current of the conductors', () => {
  const line = { supplyVoltage: { low: 21, high: 27.6 }, conductor: awg(18), load: { power: 6 } } as const;

  test('the least permitted drop, put back, is met; a hair less is not', () => {
    for (const load of [{ power: 6 }, { current: 0.3 }, { resistance: 90 }]) {
      const run = { ...line, load, length: 60 };
      const least = leastPermittedDrop(run);
      if (!least.feasible) throw new Error('the line carries it');
      for (const [met, missed] of [
        [least.fraction, least.fraction * (1 - 1e-9)],
        [{ volts: least.volts }, { volts: least.volts * (1 - 1e-9) }],
      ]) {
        expect(checkTwoWireRun({ ...run, permittedDrop: met }).verdict.power).not.toBe('fail');
        expect(checkTwoWireRun({ ...run, permittedDrop: missed }).verdict.power).toBe('fail');
      }
    }
    expect(leastPermittedDrop({ ...line, length: 5000 })).toEqual({ feasible: false });
  });

  test('next to nothing out of a large voltage is found as well, and put back it is met', () => {
    const short = { supplyVoltage: { low: 26.2, high: 26.8 }, conductor: awg(7), length: 1e-9, load: { power: 1147 } };
    const least = leastPermittedDrop(short);
    if (!least.feasible) throw new Error('a nanometre carries it');
    expect(least.volts).toBeGreaterThan(0);
    expect(least.volts).toBeLessThan(1e-9);
    for (const permittedDrop of [least.fraction, { volts: least.volts }]) {
      const drop = checkTwoWireRun({ ...short, permittedDrop }).checks.find(({ name }) => name === 'voltage-drop');
      expect(drop?.margin).toBeGreaterThanOrEqual(0);
    }
  });

  test('in volts a resistance drops most at the highest supply', () => {
    const lamp = checkTwoWireRun({ ...line, load: { resistance: 90 }, length: 60, permittedDrop: { volts: 1 } });
    const drop = lamp.checks.find(({ name }) => name === 'voltage-drop');
    expect(drop?.value).toBe(lamp.atHighest.feasible && lamp.atHighest.voltageDrop);
  });

  test.each([
    ['a power, which a long line makes draw more', { power: 6 }, 0.3],
    ['a current, which no line changes', { current: 0.3 }, 0.3],
  ] as const)('the ampacity holds %s', (_, load, ampacity) => {
    const found = maximumRun({ ...line, load, ampacity, minimumVoltage: 12 });
    if (!found.feasible || found.unbounded) throw new Error('there is a longest run');
    expect(
      checkTwoWireRun({ ...line, load, ampacity, minimumVoltage: 12, length: found.length }).checks.every(({ margin }) => margin >= 0),
    ).toBe(true);
    const less = checkTwoWireRun({ ...line, load, ampacity: 0.28, length: found.length });
    expect(less.checks.find(({ name }) => name === 'ampacity')).toMatchObject({ verdict: 'fail', limit: 0.28, unit: 'A' });
  });

  test('the highest power is the one that draws the ampacity, not the one at which the line gives way', () => {
    // 1 A leaves 21 V - 2.56 Ω · 1 A at the far end of 60 m of 18 AWG at its maximum.
    const run = { supplyVoltage: { low: 21, high: 21 }, conductor: awg(18), length: 60, ampacity: 1 };
    const most = highestLoad(run);
    expect(most).toMatchObject({ feasible: true, governedBy: 'ampacity' });
    if (!most.feasible || most.unbounded) throw new Error('the ampacity bounds it');
    const { operating } = checkTwoWireRun({ ...run, load: most.load });
    expect(operating.feasible && operating.current).toBeCloseTo(1, 12);
  });

  test('of a load in ohms an ampacity, or a drop in volts, bounds the supply from above', () => {
    const { supplyVoltage: _supply, ...run } = { ...line, length: 60, load: { resistance: 48 } };
    for (const limit of [{ ampacity: 0.5 }, { permittedDrop: { volts: 1 } }]) {
      const least = lowestSupplyVoltage({ ...run, ...limit, minimumVoltage: 12 });
      expect(least).toMatchObject({ feasible: true, governedBy: 'device-voltage' });
      if (!least.feasible || least.unbounded) throw new Error('the device needs 12 V');
      const V = least.supplyVoltage;
      const { checks } = checkTwoWireRun({ ...run, ...limit, minimumVoltage: 12, supplyVoltage: { low: V, high: V } });
      expect(checks.every(({ margin }) => margin >= 0)).toBe(true);
    }
    // 0.5 A through 48 Ω leaves 24 V at most, whatever the supply.
    expect(lowestSupplyVoltage({ ...run, ampacity: 0.5, minimumVoltage: 25 })).toMatchObject({
      feasible: false,
      governedBy: 'device-voltage',
    });
  });

  test('a load of 0 Ω has no longest run', () => {
    expectInputError(() => maximumRun({ ...line, load: { resistance: 0 }, ampacity: 1 }), 'load.resistance', 'range');
  });

  test('a load over the ampacity at any length is told in amperes', () => {
    expect(maximumRun({ ...line, ampacity: 0.2 })).toMatchObject({ feasible: false, governedBy: 'ampacity', unit: 'A' });
    expect(maximumRun({ ...line, load: { resistance: 90 }, ampacity: 0.2 })).toMatchObject({ feasible: false, governedBy: 'ampacity' });
  });

  test.each([
    ['permittedDrop.volts', { permittedDrop: { volts: -1 } }],
    ['ampacity', { ampacity: 0 }],
  ])('nonsense in %s is named', (parameter, change) => {
    expect(() => checkTwoWireRun({ ...line, length: 10, ...change })).toThrow(expect.objectContaining({ parameter }));
  });
});
