/** One run to a powered device, judged: the cases an installer meets. */
import { describe, expect, test } from 'vitest';
import {
  type Check,
  type CheckName,
  cable,
  checkPoweredRun,
  InputError,
  isInputError,
  type PoweredRunInput,
  remedies,
} from '../../../src/index.ts';

const cat5e = cable('cat5e');
const run = (length: number, temperature = 20): PoweredRunInput['installed'] => [{ cable: cat5e, length, temperature }];
const named = (checks: readonly Check[], name: CheckName): Check => checks.find((check) => check.name === name) as Check;

describe('power and cabling are judged apart', () => {
  test('a full channel of compliant cable at 60 °C never fails on power, whatever the class', () => {
    for (const poeClass of [0, 1, 2, 3, 4, 5, 6, 7, 8] as const) {
      const full = checkPoweredRun({
        installed: run(90, 60),
        cords: [{ cable: cable('cord-24'), length: 10, temperature: 60 }],
        connections: 4,
        poeClass,
      });
      expect(['pass', 'marginal']).toContain(full.verdict.power);
      // It carries power and no longer the signal: at 60 °C the standard leaves 75 m of the 90.
      expect(full.verdict.cabling).toBe('fail');
      expect(
        named(
          full.checks.filter(({ aspect }) => aspect === 'cabling'),
          'derated-length',
        ),
      ).toMatchObject({ value: 90, limit: 75, verdict: 'fail' });
      expect(
        full.checks
          .filter(({ aspect }) => aspect === 'cabling')
          .filter(({ verdict }) => verdict === 'fail')
          .map(({ name }) => name),
      ).toEqual(['derated-length', 'insertion-loss-length']);
    }
  });

  test('120 m powers a class 3 device and is still no Ethernet channel', () => {
    const { verdict, governing } = checkPoweredRun({ installed: run(120), poeClass: 3 });
    expect(verdict).toEqual({ power: 'pass', cabling: 'fail', worst: 'fail' });
    expect(governing.name).toBe('permanent-link-length');
  });

  test('loop limits of the cabling standard are for 20 °C: heat does not change them', () => {
    const [cool, hot] = [20, 60].map((temperature) => checkPoweredRun({ installed: run(90, temperature), connections: 2, poeClass: 3 }));
    expect(named(hot?.checks.filter(({ aspect }) => aspect === 'cabling') ?? [], 'channel-loop')).toEqual(
      named(cool?.checks.filter(({ aspect }) => aspect === 'cabling') ?? [], 'channel-loop'),
    );
    expect(hot?.resistance.twoPair).toBeGreaterThan(cool?.resistance.twoPair as number);
  });

  test('the permanent-link loop is a rule of ISO/IEC 11801, and none applies under `none`', () => {
    const names = (cabling: PoweredRunInput['cabling']) =>
      checkPoweredRun({ installed: run(50), poeClass: 3, cabling })
        .checks.filter(({ aspect }) => aspect === 'cabling')
        .map(({ name }) => name);
    expect(names('TIA-568')).not.toContain('permanent-link-loop');
    expect(names('ISO/IEC 11801')).toContain('permanent-link-loop');
    expect(names('none')).toEqual([]);
  });

  test('four connections are a full house, five are one too many', () => {
    const count = (connections: number) =>
      named(
        checkPoweredRun({ installed: run(20), connections, poeClass: 3 }).checks.filter(({ aspect }) => aspect === 'cabling'),
        'connections',
      );
    expect(count(4).verdict).toBe('pass');
    expect(count(5)).toMatchObject({ verdict: 'fail', margin: -1 });
  });
});

describe('the limits of the device itself', () => {
  const bare = (length: number): Check =>
    named(
      checkPoweredRun({ installed: run(length), poeClass: 2, maximumResistance: { ohms: 13, loop: 'unstated' } }).checks.filter(
        ({ aspect }) => aspect === 'power',
      ),
      'device-resistance',
    );

  // Category 5e at 9.38 Ω/100 m: 13 Ω is 69.3 m as a pair loop and 138.6 m as one pairset.
  test('a bare 13 Ω passes under 69 m, is uncertain up to 138 m, and fails beyond', () => {
    expect(bare(65).verdict).toBe('pass');
    expect(bare(69).verdict).toBe('marginal');
    expect(bare(70)).toMatchObject({ verdict: 'uncertain', deciding: [{ parameter: 'maximumResistance.loop' }] });
    expect(bare(138).verdict).toBe('uncertain');
    expect(bare(139).verdict).toBe('fail');
    expect(bare(70).readings?.pairLoop).toBeCloseTo(13.132, 3);
    expect(bare(70).readings?.twoPair).toBeCloseTo(6.566, 3);
  });

  test('a stated loop is judged as stated', () => {
    const stated = (loop: 'pairLoop' | 'twoPair' | 'fourPair') =>
      named(
        checkPoweredRun({ installed: run(100), poeClass: 2, maximumResistance: { ohms: 9, loop } }).checks.filter(
          ({ aspect }) => aspect === 'power',
        ),
        'device-resistance',
      );
    expect(stated('pairLoop').verdict).toBe('fail');
    expect(stated('twoPair').verdict).toBe('fail');
    expect(stated('fourPair').verdict).toBe('pass');
  });

  test('its own minimum voltage is a check beside that of its class', () => {
    const { checks: powerChecks } = checkPoweredRun({ installed: run(90), poeClass: 3, minimumVoltage: 42 });
    expect(named(powerChecks, 'pd-voltage').verdict).toBe('pass');
    expect(named(powerChecks, 'device-voltage').verdict).toBe('fail');
  });
});

describe('a port that grants less than the device asks for', () => {
  test('a class 8 device on a Type 3 port is granted class 6 and misses 20.3 W', () => {
    const { grantedClass, checks: powerChecks, verdict } = checkPoweredRun({ installed: run(20), poeClass: 8, pseType: 3 });
    expect(grantedClass).toBe(6);
    expect(named(powerChecks, 'pd-power')).toMatchObject({ value: 71.3, limit: 51, verdict: 'fail' });
    expect(verdict.power).toBe('fail');
  });

  test('one that states it needs no more than that is content', () => {
    expect(checkPoweredRun({ installed: run(20), poeClass: 8, pseType: 3, pdPower: 45 }).verdict.power).toBe('pass');
  });
});

describe('remedies', () => {
  test('none for a run that does not fail', () => {
    expect(remedies({ installed: run(50), poeClass: 4 })).toEqual([]);
  });

  test('a demoted device goes to a port of a higher type, and shortening is not offered', () => {
    expect(remedies({ installed: run(40), poeClass: 8, pseType: 3 }).map(({ remedy, to }) => [remedy, to])).toEqual([
      ['higher-port-type', 4],
    ]);
  });

  test('94 m of installed cable is put right by 90 m of it', () => {
    const only = remedies({ installed: run(94), poeClass: 3 });
    expect(only).toMatchObject([
      { remedy: 'shorter-run', from: 94, to: 90, unit: 'm' },
      { remedy: 'switch-between', from: 94, to: 47, unit: 'm' },
    ]);
  });

  test('four pairs where the port can: a class 4 device on 140 m of a Type 3 port', () => {
    const found = remedies({ installed: run(140), poeClass: 4, pseType: 3, cabling: 'none' });
    expect(found.map(({ remedy }) => remedy)).toEqual(['higher-port-type', 'four-pair', 'shorter-run', 'switch-between']);
  });
});

test('inputs are left alone and results are plain data of their own', () => {
  const frozen = Object.freeze({ installed: Object.freeze(run(30).map((piece) => Object.freeze(piece))), poeClass: 3 as const });
  const result = checkPoweredRun(frozen);
  expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  expect(structuredClone(result)).toEqual(result);
});

test.each([
  ['installed', { installed: undefined }],
  ['installed[0]', { installed: [null] }],
  ['installed', { installed: [] }],
  ['installed[0].cable', { installed: [{ cable: 5, length: 3 }] }],
  ['label', { label: 7 }],
  ['installed[0].length', { installed: [{ cable: cat5e, length: -3 }] }],
  ['installed[0].temperature', { installed: [{ cable: cat5e, length: 3, temperature: '20' }] }],
  ['cords[1].length', { cords: [{ cable: cat5e, length: 3 }, { cable: cat5e }] }],
  ['connections', { connections: 1.5 }],
  ['poeClass', { poeClass: 9 }],
  ['pseType', { pseType: 5 }],
  ['pseVoltage', { pseVoltage: 0 }],
  ['pdPower', { pdPower: -1 }],
  ['pairs', { pairs: 3 }],
  ['pairs', { pairs: 4 }],
  ['minimumVoltage', { minimumVoltage: Number.POSITIVE_INFINITY }],
  ['maximumResistance.ohms', { maximumResistance: { ohms: '13', loop: 'pairLoop' } }],
  ['maximumResistance.loop', { maximumResistance: { ohms: 13 } }],
  ['cabling', { cabling: 'house rules' }],
  ['marginalBelow', { marginalBelow: 2 }],
])('nonsense in %s is named', (parameter, change) => {
  const input = { installed: run(30), poeClass: 3, ...change } as unknown as PoweredRunInput;
  const act = (): unknown => checkPoweredRun(input);
  expect(act).toThrow(InputError);
  expect(act).toThrow(expect.objectContaining({ parameter }));
  try {
    act();
  } catch (error) {
    expect(isInputError(error) && error.message).toContain(`${parameter}: expected`);
  }
});
