import { describe, expect, test } from 'vitest';
import {
  awg,
  cable,
  checkPoweredRun,
  checkTwoWireRun,
  maximumRun,
  type PoweredRunInput,
  remedies,
  type TwoWireRunInput,
} from '../../../src/index.ts';
import type { Check } from '../../../src/limits/check.ts';
import { type CordAllowanceInput, cordAllowance } from '../../../src/plan/cord-allowance.ts';
import { governingCheck } from '../../../src/plan/governing-check.ts';
import { judgement } from '../../../src/plan/judged-run.ts';
import { POWERED_RUN_FIELDS, type PoweredFacts } from '../../../src/plan/powered-input.ts';
import { judgePoweredRun } from '../../../src/plan/powered-run.ts';
import { as, expectInputError, expectPlain } from '../../helpers/expectations.ts';
import { expectHeld } from '../../helpers/held-to-fields.ts';

const camera: PoweredRunInput = { installed: [{ cable: cable('cat6'), length: 60 }], poeClass: 4 };
const cue: TwoWireRunInput = {
  supplyVoltage: { low: 21, high: 27.6 },
  conductor: awg(18),
  length: 60,
  load: { power: 6 },
  minimumVoltage: 19,
};

const check = (verdict: Check['verdict'], aspect: Check['aspect'], marginFraction = 0.5): Check => ({
  ...(checkPoweredRun(camera).checks[0] as Check),
  verdict,
  aspect,
  marginFraction,
});

describe('judgement', () => {
  test('each aspect has the worst of its own checks, and the run the worst of all', () => {
    const checks = [check('pass', 'power'), check('marginal', 'power'), check('fail', 'cabling')];
    expect(judgement(checks, [], true).verdict).toEqual({ power: 'marginal', cabling: 'fail', worst: 'fail' });
    expect(judgement(checks.slice(0, 2), [], false).verdict).toEqual({ power: 'marginal', worst: 'marginal' });
  });

  test('no verdict is better than uncertain while a doubt bears on it, and a fail stays a fail', () => {
    const doubt = { code: 'not-stated', parameter: 'minimumVoltage', aspect: 'power' } as const;
    const judged = judgement([check('pass', 'power'), check('pass', 'cabling')], [doubt], true);
    expect(judged.verdict).toEqual({ power: 'uncertain', cabling: 'pass', worst: 'uncertain' });
    expect(judged.deciding).toEqual([{ parameter: 'minimumVoltage' }]);
    const failed = judgement([check('fail', 'power')], [doubt], false);
    expect(failed.verdict).toEqual({ power: 'fail', worst: 'fail' });
    expect(failed).not.toHaveProperty('deciding');
    expect(judgement([], [doubt], false).verdict.power).toBe('uncertain');
  });

  test('the governing check fails, or is the closest', () => {
    const [close, far, failing] = [check('pass', 'cabling', 0.1), check('pass', 'cabling', 0.4), check('fail', 'power', -0.2)];
    expect(governingCheck([far, failing, close])).toBe(failing);
    expect(judgement([], [], false)).not.toHaveProperty('governing');
  });
});

describe('a run to a powered device', () => {
  test('is plain data of one shape, its governing check one of its checks', () => {
    const run = checkPoweredRun({ ...camera, label: 'CM-07' });
    expectPlain(run);
    expect(run).toMatchObject({ kind: 'powered', label: 'CM-07', verdict: { power: 'pass', cabling: 'pass', worst: 'pass' } });
    expect(run.checks).toContain(run.governing);
    expect(run.doubts).toEqual([]);
    expect(checkPoweredRun(camera)).not.toHaveProperty('label');
  });

  test('takes a cable by its name', () => {
    expect(checkPoweredRun({ ...camera, installed: [{ cable: 'cat6', length: 60 }] })).toEqual(checkPoweredRun(camera));
  });

  test('has no verdict of cabling where no standard applies', () => {
    expect(checkPoweredRun({ ...camera, cabling: 'none' }).verdict).toEqual({ power: 'pass', worst: 'pass' });
  });

  test('lists what was taken for what was left out', () => {
    const listed = ({ assumptions }: { assumptions: readonly { parameter: string; value: unknown }[] }) =>
      assumptions.map(({ parameter, value }) => [parameter, value]);
    expect(listed(checkPoweredRun(camera))).toEqual([
      ['installed[0].temperature', 20],
      ['cords', 'none'],
      ['connections', 0],
      ['connectionResistance', 0.2],
      ['pseType', 2],
      ['pseVoltage', 50],
      ['pdPower', 25.5],
    ]);
    const stated: PoweredRunInput = {
      installed: [{ cable: 'cat6', length: 60, temperature: 30 }],
      cords: [{ cable: 'cord-24', length: 3, temperature: 25 }],
      connections: 2,
      connectionResistance: 0.1,
      poeClass: 4,
      pseType: 2,
      pairs: 2,
      pseVoltage: 52,
      pdPower: 20,
    };
    expect(checkPoweredRun(stated).assumptions).toEqual([]);
    // A device that is granted less still wants what its own class allows.
    expect(listed(checkPoweredRun({ ...camera, pseType: 1 }))).toContainEqual(['pdPower', 25.5]);
  });

  test('judged without its fields it has the same guards', () => {
    const { label: _, ...fields } = POWERED_RUN_FIELDS;
    const facts = as<PoweredFacts>(camera);
    expectHeld(fields as never, facts as never, (input) => judgePoweredRun(input), { looks: false });
  });

  test('a figure that may be read two ways is a doubt', () => {
    const run = checkPoweredRun({
      ...camera,
      installed: [{ cable: 'cat6', length: 70 }],
      maximumResistance: { ohms: 13, loop: 'unstated' },
    });
    expect(run.verdict.power).toBe('uncertain');
    expect(run.doubts).toEqual([{ code: 'two-readings', parameter: 'maximumResistance.loop', aspect: 'power' }]);
    expect(run.deciding).toEqual([{ parameter: 'maximumResistance.loop' }]);
  });
});

describe('a two-wire run', () => {
  test('is of the same shape', () => {
    const run = checkTwoWireRun({ ...cue, label: 'Cue 3' });
    expectPlain(run);
    expect(run).toMatchObject({ kind: 'two-wire', label: 'Cue 3', verdict: { power: 'pass', worst: 'pass' }, cautions: [], doubts: [] });
    expect(run.assumptions.map(({ parameter, value }) => [parameter, value])).toEqual([
      ['temperature', 20],
      ['connections', 0],
      ['connectionResistance', 0],
    ]);
  });

  test('one supply figure, and nothing to hold it against, are doubts', () => {
    const { minimumVoltage: _, ...open } = cue;
    const run = checkTwoWireRun({ ...open, supplyVoltage: 24 });
    expect(run.doubts.map(({ code, parameter }) => [code, parameter])).toEqual([
      ['one-figure', 'supplyVoltage'],
      ['not-stated', 'minimumVoltage'],
    ]);
    expect(run.deciding).toEqual([{ parameter: 'supplyVoltage' }, { parameter: 'minimumVoltage' }]);
  });

  test('a constant power takes most from a low supply, a resistance from a high one: both are cautioned', () => {
    const strong = { ...cue, conductor: awg(12), supplyVoltage: { low: 40, high: 57 } };
    expect(checkTwoWireRun({ ...strong, length: 60, load: { power: 98 } }).cautions).toHaveLength(1);
    const { operating, atHighest, cautions } = checkTwoWireRun({ ...strong, length: 200, load: { power: 90 } });
    expect(operating.feasible && operating.supplyPower).toBeGreaterThan(100);
    expect(atHighest.feasible && atHighest.supplyPower).toBeLessThan(100);
    expect(cautions).toEqual([expect.stringContaining('More than 100 VA')]);
    expect(checkTwoWireRun({ ...strong, load: { resistance: 30 } }).cautions).toHaveLength(1);
    expect(checkTwoWireRun({ ...strong, load: { power: 90 }, length: 1 }).cautions).toEqual([]);
  });
});

describe('nothing is passed over', () => {
  test.each<[string, () => unknown, string]>([
    ['minVoltage', () => checkPoweredRun(as<PoweredRunInput>({ ...camera, minVoltage: 49 })), 'minimumVoltage'],
    ['conections', () => checkPoweredRun(as<PoweredRunInput>({ ...camera, conections: 9 })), 'connections'],
    [
      'installed[0].temprature',
      () =>
        checkPoweredRun({ ...camera, installed: [as<{ cable: 'cat6'; length: number }>({ cable: 'cat6', length: 60, temprature: 60 })] }),
      'temperature',
    ],
    ['temprature', () => checkTwoWireRun(as<TwoWireRunInput>({ ...cue, temprature: 60 })), 'temperature'],
    ['poeClas', () => checkTwoWireRun(as<TwoWireRunInput>({ ...cue, poeClas: 4 })), 'the keys are supplyVoltage, conductor'],
    ['cordloss', () => cordAllowance(as<CordAllowanceInput>({ installedLength: 80, cord: 'cord-26', cordloss: 0.3 })), 'cordLoss'],
    ['length', () => maximumRun(as<TwoWireRunInput>(cue)), 'the keys are'],
    ['minVoltage', () => remedies(as<TwoWireRunInput>({ ...cue, minVoltage: 60 })), 'minimumVoltage'],
    [
      'permittedDrop.percent',
      () => checkTwoWireRun({ ...cue, permittedDrop: as<{ volts: number }>({ volts: 3, percent: 4 }) }),
      'the keys are volts',
    ],
  ])('%s', (parameter, call, expected) => {
    expectInputError(call, parameter, 'unknown');
    expect(call).toThrow(expected);
  });

  test('a misspelt cable has its nearest name', () => {
    expect(() => checkPoweredRun({ ...camera, installed: [{ cable: as<'cat6'>('Cat6'), length: 5 }] })).toThrow('did you mean "cat6"?');
  });

  test('a run that is powered by a port and two-wire at once is neither', () => {
    expectInputError(() => remedies(as<TwoWireRunInput>({ ...cue, poeClass: 4 })), 'conductor', 'conflict');
  });
});
