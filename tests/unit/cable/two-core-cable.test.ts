/** Out on a core, back on another, or on the screen. */
import { expect, test } from 'vitest';
import { type TwoCoreCableInput, twoCoreCable } from '../../../src/cable/two-core-cable.ts';
import { voltageDrop } from '../../../src/circuit/voltage-drop.ts';
import { awg } from '../../../src/conductor/awg.ts';
import { maximumRun } from '../../../src/plan/maximum-run.ts';
import { checkTwoWireRun } from '../../../src/plan/two-wire-run.ts';
import { as, expectInputError, expectPlain, expectWithin, frozen } from '../../helpers/expectations.ts';

const core = frozen(awg(22, { stranding: 'stranded' }));
const screen = frozen({ screen: { ohmsPerKilometre: 15 } });

test('back on the other core: two equal conductors', () => {
  const made = twoCoreCable({ conductor: core, use: 'speaker' });
  expectPlain(made);
  expect(made).toStrictEqual({ name: 'speaker cable, 22 AWG stranded', use: 'speaker', out: core, back: core });
  expect(made.out).not.toBe(core);
  expect(twoCoreCable({ conductor: core, use: 'speaker', return: 'conductor', cores: 1 })).toStrictEqual(made);
});

test('back on the screen: its own resistance, at its own temperature', () => {
  const made = twoCoreCable({ conductor: core, use: 'audio', return: screen });
  expectPlain(made);
  expect(made.name).toBe('audio cable, 22 AWG stranded, back on the screen');
  expectWithin(made.back.resistancePerMetre, 0.015, 1e-15);
  expect(made.back.basis).toBe('maximum');
  const hot = twoCoreCable({
    conductor: core,
    use: 'audio',
    return: { screen: { ohmsPerKilometre: 15 * (1 + 0.00393 * 10), temperature: 30, basis: 'measured' } },
  });
  expectWithin(hot.back.resistancePerMetre, 0.015, 1e-14);
  expect(hot.back.basis).toBe('measured');
});

test('both cores side by side, back on the screen: half the resistance, twice the metal', () => {
  const { out, name } = twoCoreCable({ conductor: core, use: 'audio', return: screen, cores: 2 });
  expectWithin(out.resistancePerMetre, core.resistancePerMetre / 2, 1e-15);
  expectWithin(out.area, core.area * 2, 1e-15);
  expectWithin(out.diameter ** 2, core.diameter ** 2 * 2, 1e-14);
  expect(name).toBe('audio cable, 2 × 22 AWG stranded, back on the screen');
});

test('no figure is assumed for a screen: it is asked for where it belongs', () => {
  const without =
    (path: unknown): unknown =>
    () =>
      twoCoreCable({ conductor: core, use: 'audio', return: as<'conductor'>(path) });
  for (const path of ['screen', {}, { screen: {} }, { screen: undefined }, { screen: { ohmsPerKilometre: undefined } }]) {
    const refused = expectInputError(as<() => unknown>(without(path)), 'return.screen.ohmsPerKilometre', 'missing');
    expect(refused.message).toContain('data sheet or measured');
  }
});

test.each<readonly [string, unknown, string]>([
  ['conductor', { use: 'audio' }, 'missing'],
  ['use', { conductor: core, use: 'dance' }, 'unknown'],
  ['cores', { conductor: core, use: 'audio', cores: 3 }, 'unknown'],
  ['cores', { conductor: core, use: 'audio', cores: 2 }, 'conflict'],
  ['return', { conductor: core, use: 'audio', return: 'earth' }, 'unknown'],
  ['return', { conductor: core, use: 'audio', return: 7 }, 'type'],
  ['return.screen', { conductor: core, use: 'audio', return: { screen: 15 } }, 'type'],
  ['return.screen.ohmsPerKilometre', { conductor: core, use: 'audio', return: { screen: { ohmsPerKilometre: '15' } } }, 'type'],
  ['return.screen.ohmsPerKilometre', { conductor: core, use: 'audio', return: { screen: { ohmsPerKilometre: -15 } } }, 'range'],
  ['return.screen.basis', { conductor: core, use: 'audio', return: { screen: { ohmsPerKilometre: 15, basis: 'nominal' } } }, 'unknown'],
  ['input', null, 'type'],
])('refuses nonsense in %s', (parameter, input, code) => {
  expectInputError(() => twoCoreCable(as<TwoCoreCableInput>(input)), parameter, as<'type'>(code));
});

test('goes as it is into voltageDrop, checkTwoWireRun and maximumRun, which agree', () => {
  const { out, back } = twoCoreCable({ conductor: core, use: 'audio', return: screen });
  const perMetre = core.resistancePerMetre + 0.015;
  const point = voltageDrop({ supplyVoltage: 24, out, back, length: 80, load: { current: 0.1 } });
  expectWithin(point.feasible ? point.voltageDrop : 0, 0.1 * 80 * perMetre, 1e-14);

  const circuit = { supplyVoltage: { low: 21, high: 27.6 }, out, back, load: { power: 3 }, minimumVoltage: 18, temperature: 35 };
  const run = checkTwoWireRun({ ...circuit, length: 80 });
  // The nominal core is taken 2 % up, the screen is at its maximum already.
  expectWithin(run.resistance, 80 * (core.resistancePerMetre * 1.02 + 0.015) * (1 + 0.00393 * 15), 1e-14);
  expectWithin(run.meterReading.nominal, 80 * perMetre * (1 + 0.00393 * 15), 1e-14);

  const longest = maximumRun(circuit);
  expect(longest).toMatchObject({ feasible: true, governedBy: 'device-voltage' });
  if (!longest.feasible || longest.unbounded) return;
  expect(checkTwoWireRun({ ...circuit, length: longest.length }).verdict.power).not.toBe('fail');
  expect(checkTwoWireRun({ ...circuit, length: longest.length * (1 + 1e-9) }).verdict.power).toBe('fail');
});

test('a two-wire circuit names what is missing: a leg, or which of the two forms', () => {
  const open = { supplyVoltage: 24, load: { power: 3 } };
  const circuit = { ...open, length: 10 };
  const asked = (more: object): unknown => checkTwoWireRun(as<Parameters<typeof checkTwoWireRun>[0]>({ ...circuit, ...more }));
  expectInputError(() => asked({}), 'conductor', 'missing');
  expectInputError(() => asked({ out: core }), 'back', 'missing');
  expectInputError(() => asked({ back: core }), 'out', 'missing');
  expectInputError(() => asked({ conductor: core, out: core, back: core }), 'conductor', 'conflict');
  expectInputError(() => maximumRun(as<Parameters<typeof maximumRun>[0]>({ ...open, out: core })), 'back', 'missing');
});
