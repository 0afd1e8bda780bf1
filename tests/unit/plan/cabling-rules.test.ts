/** The rules of the two cabling standards as checks of a run: copper, cords, warmth. */
import { describe, expect, test } from 'vitest';
import { deratedLength } from '../../../src/cable/index.ts';
import {
  type Check,
  type CheckName,
  cable,
  checkPoweredRun,
  defineCable,
  maximumRun,
  type PoweredRunInput,
  remedies,
} from '../../../src/index.ts';
import { type CordAllowanceInput, cordAllowance } from '../../../src/plan/index.ts';
import { as, expectInputError, expectPlain, expectWithin, frozen, NOT_NUMBERS } from '../../helpers/expectations.ts';

const cat6 = frozen(cable('cat6'));
const cord = (name: 'cord-24' | 'cord-26' | 'cord-28', length: number): NonNullable<PoweredRunInput['cords']>[number] => ({
  cable: cable(name),
  length,
});
const judge = (length: number, more: Partial<PoweredRunInput> = {}): ReturnType<typeof checkPoweredRun> =>
  checkPoweredRun({ installed: [{ cable: cat6, length }], poeClass: 3, ...more });
const named = (checks: readonly Check[], name: CheckName): Check | undefined => checks.find((check) => check.name === name);
const failing = (checks: readonly Check[]): string[] => checks.filter(({ verdict }) => verdict === 'fail').map(({ name }) => name);

describe('copper', () => {
  const clad = defineCable({ name: 'clad', gauge: 23, material: 'copper-clad-aluminium-10' });

  test('is kept by every named cable, without a narrow escape', () => {
    const check = named(
      judge(50).checks.filter(({ aspect }) => aspect === 'power'),
      'material',
    );
    expect(check).toMatchObject({ value: 1, limit: 1, margin: 0, verdict: 'pass', source: 'copper-conductors' });
    expect(judge(50).governing.name).not.toBe('material');
  });

  test('one piece of another metal fails the power of the run, under any cabling rules and none', () => {
    for (const cabling of ['TIA-568', 'ISO/IEC 11801', 'none'] as const) {
      const run = judge(10, {
        installed: [
          { cable: cat6, length: 10 },
          { cable: clad, length: 0 },
        ],
        cabling,
      });
      expect(failing(run.checks.filter(({ aspect }) => aspect === 'power'))).toEqual(['material']);
      expect(
        named(
          run.checks.filter(({ aspect }) => aspect === 'power'),
          'material',
        ),
      ).toMatchObject({ value: 0.5, margin: -0.5 });
      expect(run.governing.name).toBe('material');
      expectPlain(run);
    }
  });

  test('no length of it will do; copper in its place does', () => {
    const found = maximumRun({ cable: clad, poeClass: 1, cabling: 'none' });
    expect(found).toMatchObject({ feasible: false, governedBy: 'material', shortfall: 1, unit: '1' });
    expect(maximumRun({ cable: cat6, cords: [{ cable: clad, length: 1 }], poeClass: 1 })).toMatchObject({
      feasible: false,
      shortfall: 0.5,
    });
    expect(remedies({ installed: [{ cable: clad, length: 10 }], poeClass: 1 })).toMatchObject([
      { remedy: 'thicker-cable', use: 'Category 6' },
    ]);
  });

  test('tinned and hard-drawn copper are copper', () => {
    for (const made of [
      defineCable({ name: 'tinned', gauge: 24, material: 'tinned-copper' }),
      defineCable({ name: 'hard-drawn', nominalOhmsPerKilometre: 87, material: 'hard-drawn-copper' }),
    ]) {
      expect(judge(10, { installed: [{ cable: made, length: 10 }] }).verdict.power).toBe('pass');
    }
  });
});

describe('cords', () => {
  test('no cords, no cord rules', () => {
    const names = judge(90)
      .checks.filter(({ aspect }) => aspect === 'cabling')
      .map(({ name }) => name);
    for (const name of ['insertion-loss-length', 'cord-length', 'derated-length', 'cable-temperature']) expect(names).not.toContain(name);
  });

  test('10 m of 24 AWG cords beside 90 m are within the rule, however they are cut', () => {
    for (const lengths of [[10], [5, 5], [0.1, 0.1, 9.8], [1.3, 3.9, 4.8]]) {
      const run = judge(90, { cords: lengths.map((length) => cord('cord-24', length)) });
      expect(
        named(
          run.checks.filter(({ aspect }) => aspect === 'cabling'),
          'insertion-loss-length',
        ),
      ).toMatchObject({ value: 102, limit: 102, margin: 0 });
      expect(
        named(
          run.checks.filter(({ aspect }) => aspect === 'cabling'),
          'channel-length',
        ),
      ).toMatchObject({ value: 100, margin: 0 });
      expect(failing(run.checks.filter(({ aspect }) => aspect === 'cabling'))).toEqual([]);
    }
  });

  test('8 m of 26 AWG cords beside 90 m are, 9 m are not; 28 AWG leaves 82.5 m beside 10 m', () => {
    expect(failing(judge(90, { cords: [cord('cord-26', 8)] }).checks.filter(({ aspect }) => aspect === 'cabling'))).toEqual([]);
    expect(failing(judge(90, { cords: [cord('cord-26', 9)] }).checks.filter(({ aspect }) => aspect === 'cabling'))).toEqual([
      'insertion-loss-length',
    ]);
    const thin = maximumRun({ cable: cat6, poeClass: 1, cords: [cord('cord-28', 10)] });
    expect(thin).toMatchObject({ feasible: true, governedBy: 'insertion-loss-length' });
    if (thin.feasible && !thin.unbounded) expectWithin(thin.length, 82.5, 1e-14);
  });

  test('ISO/IEC 11801 takes 1.5 m of installed cable for each metre of cords over 10 m, whatever their gauge up to 26 AWG', () => {
    for (const [cords, length] of [
      [10, 90],
      [12, 87],
      [16, 81],
    ] as const) {
      for (const name of ['cord-24', 'cord-26'] as const) {
        const found = maximumRun({ cable: cat6, poeClass: 1, cords: [cord(name, cords)], cabling: 'ISO/IEC 11801' });
        if (!found.feasible || found.unbounded) expect.fail('some length will do');
        expect(found.limits.find(({ limit }) => limit === 'insertion-loss-length')?.length).toBeCloseTo(length, 10);
      }
    }
  });

  test('one cord is at most 22 m of 24 AWG or 17 m of thinner wire in TIA-568, 20 m in ISO/IEC 11801', () => {
    const one = (name: 'cord-24' | 'cord-26' | 'cord-28', length: number, cabling: 'TIA-568' | 'ISO/IEC 11801'): Check | undefined =>
      named(
        judge(10, { cords: [cord('cord-24', 1), cord(name, length)], cabling }).checks.filter(({ aspect }) => aspect === 'cabling'),
        'cord-length',
      );
    expect(one('cord-24', 22, 'TIA-568')).toMatchObject({ limit: 22, verdict: 'marginal' });
    expect(one('cord-24', 22.1, 'TIA-568')?.verdict).toBe('fail');
    expect(one('cord-26', 17.1, 'TIA-568')).toMatchObject({ limit: 17, verdict: 'fail' });
    expect(one('cord-28', 17.1, 'TIA-568')?.verdict).toBe('fail');
    expect(one('cord-24', 20.1, 'ISO/IEC 11801')).toMatchObject({ limit: 20, verdict: 'fail' });
    const found = maximumRun({ cable: cat6, poeClass: 1, cords: [cord('cord-24', 25)] });
    expect(found).toMatchObject({ feasible: false, governedBy: 'cord-length', shortfall: 3, unit: 'm' });
  });

  test('thinner than 24 AWG is not installed, thinner than 28 AWG is no cord: a rule of TIA-568', () => {
    const thin = cable('cord-26');
    const installed = judge(0, { installed: [{ cable: thin, length: 20 }] });
    expect(
      named(
        installed.checks.filter(({ aspect }) => aspect === 'cabling'),
        'conductor-gauge',
      ),
    ).toMatchObject({
      value: 26,
      limit: 24,
      unit: 'AWG',
      margin: -2,
      verdict: 'fail',
    });
    expect(
      named(
        judge(20, { cords: [cord('cord-28', 2)] }).checks.filter(({ aspect }) => aspect === 'cabling'),
        'conductor-gauge',
      ),
    ).toMatchObject({
      value: 28,
      verdict: 'pass',
    });
    const hair = defineCable({ name: 'hair', use: 'cord', gauge: 30 });
    expect(failing(judge(20, { cords: [{ cable: hair, length: 1 }] }).checks.filter(({ aspect }) => aspect === 'cabling'))).toEqual([
      'conductor-gauge',
    ]);
    expect(
      failing(
        judge(20, { cords: [{ cable: hair, length: 1 }], cabling: 'ISO/IEC 11801' }).checks.filter(({ aspect }) => aspect === 'cabling'),
      ),
    ).toEqual([]);
    expect(maximumRun({ cable: thin, poeClass: 1 })).toMatchObject({
      feasible: false,
      governedBy: 'conductor-gauge',
      shortfall: 2,
      unit: 'AWG',
    });
  });

  test('cord cable that is installed for good loses no less', () => {
    const made = { ...cable('cord-24'), title: 'Flexible, installed' };
    const check = named(
      judge(0, { installed: [{ cable: made, length: 50 }], cords: [cord('cord-24', 5)] }).checks.filter(
        ({ aspect }) => aspect === 'cabling',
      ),
      'insertion-loss-length',
    );
    expect(check?.value).toBeCloseTo(66, 10);
  });
});

describe('warm cable', () => {
  test('is derated by its average temperature, and what it and the cords lose is added up', () => {
    const run = judge(0, {
      installed: [
        { cable: cat6, length: 40, temperature: 20 },
        { cable: cat6, length: 40, temperature: 60 },
      ],
      cords: [cord('cord-24', 5)],
    });
    const at40 = deratedLength({ temperature: 40 });
    expect(
      named(
        run.checks.filter(({ aspect }) => aspect === 'cabling'),
        'derated-length',
      ),
    ).toMatchObject({ value: 80, limit: at40.feasible && at40.length });
    expect(
      named(
        run.checks.filter(({ aspect }) => aspect === 'cabling'),
        'insertion-loss-length',
      )?.value,
    ).toBeCloseTo(40 + 40 * 1.2 + 5 * 1.2, 10);
  });

  test('a screened run keeps more of its length; one unscreened piece takes that away', () => {
    const screened = cable('cat6a', { screened: true });
    const limit = (second: typeof screened): number | undefined =>
      named(
        judge(0, {
          installed: [
            { cable: screened, length: 30, temperature: 50 },
            { cable: second, length: 30, temperature: 50 },
          ],
        }).checks.filter(({ aspect }) => aspect === 'cabling'),
        'derated-length',
      )?.limit;
    expect(limit(screened)).toBeCloseTo(84.9, 1);
    expect(limit(cat6)).toBeCloseTo(78.9, 1);
  });

  test('90 m at 20 °C are 75 m at 60 °C: the longest run and the check agree on it', () => {
    const found = maximumRun({ cable: cat6, temperature: 60, poeClass: 3 });
    expect(found).toMatchObject({ feasible: true, governedBy: 'derated-length', cablingLength: 75 });
    expect(
      failing(judge(0, { installed: [{ cable: cat6, length: 75, temperature: 60 }] }).checks.filter(({ aspect }) => aspect === 'cabling')),
    ).toEqual([]);
    expect(
      failing(
        judge(0, { installed: [{ cable: cat6, length: 75.1, temperature: 60 }] }).checks.filter(({ aspect }) => aspect === 'cabling'),
      ),
    ).toEqual(['derated-length']);
  });

  test('a piece above 60 °C is no cabling of either standard, at any length; power is judged all the same', () => {
    for (const cabling of ['TIA-568', 'ISO/IEC 11801'] as const) {
      const run = judge(0, { installed: [{ cable: cat6, length: 10, temperature: 64 }], cabling });
      expect(
        named(
          run.checks.filter(({ aspect }) => aspect === 'cabling'),
          'cable-temperature',
        ),
      ).toMatchObject({
        value: 64,
        limit: 60,
        unit: '°C',
        margin: -4,
        verdict: 'fail',
      });
      expect(run.verdict).toEqual({ power: 'pass', cabling: 'fail', worst: 'fail' });
      const found = maximumRun({ cable: cat6, temperature: 64, poeClass: 3, cabling });
      expect(found).toMatchObject({ feasible: false, governedBy: 'cable-temperature', shortfall: 4, unit: '°C' });
    }
    expect(judge(0, { installed: [{ cable: cat6, length: 10, temperature: 64 }], cabling: 'none' }).verdict).toEqual({
      power: 'pass',
      worst: 'pass',
    });
    const hotCord = judge(10, { cords: [{ ...cord('cord-24', 2), temperature: 61 }] });
    expect(failing(hotCord.checks.filter(({ aspect }) => aspect === 'cabling'))).toEqual(['cable-temperature']);
  });

  test('cold is no bonus', () => {
    expect(maximumRun({ cable: cat6, temperature: -30, poeClass: 1 })).toMatchObject({ cablingLength: 90 });
  });

  test('a cooler route and a shorter one are remedies that pass', () => {
    const warm = { installed: [{ cable: cat6, length: 85, temperature: 45 }], poeClass: 3 } as const;
    const found = remedies(warm);
    expect(found.map(({ remedy, to }) => [remedy, to])).toEqual([
      ['cooler-route', 34],
      ['shorter-run', 81],
      ['switch-between', 42.5],
    ]);
  });
});

describe('cordAllowance', () => {
  const cord24 = cable('cord-24');

  test('is what the check allows: the cords it gives pass, more fail', () => {
    for (const cabling of ['TIA-568', 'ISO/IEC 11801'] as const) {
      for (const name of ['cord-24', 'cord-26', 'cord-28'] as const) {
        for (const [installedLength, temperature] of [
          [90, 20],
          [80, 20],
          [72, 45],
        ] as const) {
          const allowed = cordAllowance({ installedLength, cord: cable(name), cabling, temperature });
          expectPlain(allowed);
          if (!allowed.feasible) expect.fail('within 90 m there are always some');
          const run = (all: number): string[] =>
            failing(
              judge(0, {
                installed: [{ cable: cat6, length: installedLength, temperature }],
                cords: [cord(name, all / 2), cord(name, all / 2)],
                cabling,
              }).checks.filter(({ aspect }) => aspect === 'cabling'),
            );
          expect(run(allowed.cords)).toEqual([]);
          expect(run(allowed.cords + 1e-6)).toContain(allowed.governedBy);
        }
      }
    }
  });

  test('the cords at the switch come off, and no work-area cord is longer than the standard has it', () => {
    expect(cordAllowance({ installedLength: 60, cord: cord24 })).toMatchObject({ workArea: 22 });
    expect(cordAllowance({ installedLength: 60, cord: cord24, cabling: 'ISO/IEC 11801' })).toMatchObject({ workArea: 20 });
    expect(cordAllowance({ installedLength: 60, cord: cable('cord-26') })).toMatchObject({ workArea: 17 });
    expect(cordAllowance({ installedLength: 90, cord: cord24, telecomRoomCords: 12 })).toMatchObject({ cords: 10, workArea: 0 });
  });

  test('says no where the installed cable alone is too long, or too warm for its length', () => {
    expect(cordAllowance({ installedLength: 91, cord: cord24 })).toMatchObject({
      feasible: false,
      governedBy: 'permanent-link-length',
      shortfall: 1,
    });
    const warm = cordAllowance({ installedLength: 90, cord: cord24, temperature: 60 });
    expect(warm).toMatchObject({ feasible: false, governedBy: 'insertion-loss-length' });
    if (!warm.feasible) expectWithin(warm.shortfall, 6, 1e-12);
  });

  const good: CordAllowanceInput = { installedLength: 80, cord: cord24 };
  test.each<readonly [string, unknown, string]>([
    ['input', null, 'type'],
    ['cord', { installedLength: 80 }, 'missing'],
    ['cabling', { ...good, cabling: 'none' }, 'unknown'],
    ['cordLoss', { ...good, cordLoss: 11 }, 'range'],
  ])('refuses nonsense in %s', (parameter, input, code) => {
    expectInputError(() => cordAllowance(as<CordAllowanceInput>(input)), parameter, as<'type'>(code));
  });
  test.each(NOT_NUMBERS)('refuses %s for any number', (_label, value, code) => {
    for (const parameter of ['installedLength', 'telecomRoomCords', 'cordLoss', 'temperature']) {
      expectInputError(() => cordAllowance(as<CordAllowanceInput>({ ...good, [parameter]: value })), parameter, code);
    }
  });
});
