/** Every remedy, put into the run by hand, makes it pass: and a step less would not. */
import { describe, expect, test } from 'vitest';
import {
  awg,
  type Cable,
  cable,
  checkPoweredRun,
  checkTwoWireRun,
  defineCable,
  type PoweredRunInput,
  type Remedy,
  type RemedyName,
  type TwoWireRunInput,
} from '../../../src/index.ts';
import { remedies } from '../../../src/plan/index.ts';

const cat6 = cable('cat6');
const fails = (input: PoweredRunInput): boolean => Object.values(checkPoweredRun(input).verdict).includes('fail');
const remedy = (found: readonly Remedy[], name: RemedyName): Remedy => {
  const one = found.find((candidate) => candidate.remedy === name);
  if (one === undefined) throw new Error(`${name} is not among ${found.map((each) => each.remedy).join(', ')}`);
  return one;
};

describe('what is in the van', () => {
  // 22 AWG copper by its data sheet: 5.5 Ω/100 m, against the 9.38 of the category.
  const thick: Cable = defineCable({ name: 'Category 6, 22 AWG', use: 'horizontal', pairs: 4, gauge: 22, maximumOhmsPerKilometre: 57 });
  const long: PoweredRunInput = { installed: [{ cable: cat6, length: 150 }], poeClass: 4, cabling: 'none' };

  test('a thicker cable for the whole', () => {
    const found = remedy(remedies(long, { cables: [cat6, thick] }), 'thicker-cable');
    expect(found).toMatchObject({ from: 23, to: 22, unit: 'AWG', use: 'Category 6, 22 AWG' });
    expect(fails({ ...long, installed: [{ cable: thick, length: 150 }] })).toBe(false);
  });

  test('or for the fewest metres that will do', () => {
    const { to, from } = remedy(remedies(long, { cables: [thick] }), 'replace-part');
    const replaced = (metres: number): PoweredRunInput => ({
      ...long,
      installed: [
        { cable: cat6, length: 150 - metres },
        { cable: thick, length: metres },
      ],
    });
    expect(from).toBe(150);
    expect(fails(replaced(to))).toBe(false);
    expect(fails(replaced(to - 0.1))).toBe(true);
  });

  test('clad aluminium is never offered, nor anything thinner', () => {
    const clad: Cable = { ...thick, name: 'clad', material: 'copper-clad-aluminium' };
    const names = remedies(long, { cables: [clad, cable('cord-26')] }).map((each) => each.remedy);
    expect(names).not.toContain('thicker-cable');
    expect(names).not.toContain('replace-part');
  });
});

test('better connections, to the hundredth of an ohm', () => {
  const worn: PoweredRunInput = { installed: [{ cable: cat6, length: 90 }], connections: 4, connectionResistance: 1.2, poeClass: 4 };
  const { to } = remedy(remedies(worn), 'better-connections');
  expect(fails(worn)).toBe(true);
  expect(fails({ ...worn, connectionResistance: to })).toBe(false);
  expect(fails({ ...worn, connectionResistance: to + 0.01 })).toBe(true);
});

test('a switch between: both halves pass, each with the cords and connections of the whole', () => {
  const run: PoweredRunInput = {
    installed: [
      { cable: cat6, length: 100, temperature: 50 },
      { cable: cat6, length: 40 },
    ],
    connections: 2,
    poeClass: 4,
  };
  const { to, from } = remedy(remedies(run), 'switch-between');
  expect(from).toBe(140);
  // The warm part weighs more: the middle of the resistance lies before the middle of the length.
  expect(to).toBeLessThan(70);
  expect(fails({ ...run, installed: [{ cable: cat6, length: to, temperature: 50 }] })).toBe(false);
  expect(
    fails({
      ...run,
      installed: [
        { cable: cat6, length: 100 - to, temperature: 50 },
        { cable: cat6, length: 40 },
      ],
    }),
  ).toBe(false);
});

describe('a two-wire run', () => {
  const cue: TwoWireRunInput = {
    supplyVoltage: { low: 21, high: 27.6 },
    conductor: awg(22),
    length: 90,
    load: { power: 6 },
    minimumVoltage: 19,
    maximumVoltage: 30,
  };

  test('a higher supply, to the tenth of a volt, within what the device bears', () => {
    const { from, to } = remedy(remedies(cue), 'higher-supply');
    const by = to - from;
    const raised = (volts: number): TwoWireRunInput => ({ ...cue, supplyVoltage: { low: 21 + volts, high: 27.6 + volts } });
    expect(checkTwoWireRun(raised(by)).verdict.worst).not.toBe('fail');
    expect(checkTwoWireRun(raised(by - 0.1)).verdict.worst).toBe('fail');
    expect(27.6 + by).toBeLessThanOrEqual(30);
  });

  test('none where the device does not say what it bears, or would not bear it, or above 60 V', () => {
    const { maximumVoltage: _, ...silent } = cue;
    const names = (input: TwoWireRunInput): RemedyName[] => remedies(input).map((each) => each.remedy);
    expect(names(silent)).not.toContain('higher-supply');
    expect(names({ ...cue, maximumVoltage: 27.7 })).not.toContain('higher-supply');
    expect(names({ ...cue, supplyVoltage: { low: 59, high: 60 }, minimumVoltage: 58.5, maximumVoltage: 100 })).not.toContain(
      'higher-supply',
    );
  });

  test('a maximum voltage that the supply exceeds is put right by none of them', () => {
    expect(checkTwoWireRun({ ...cue, length: 1, maximumVoltage: 27 })).toMatchObject({
      verdict: { power: 'fail' },
      governing: { name: 'device-overvoltage' },
    });
    expect(remedies({ ...cue, length: 1, maximumVoltage: 27 })).toEqual([]);
  });

  test('conductors that are at hand, and no others', () => {
    const found = remedy(remedies(cue, { conductors: [awg(24), awg(14), awg(18)] }), 'thicker-conductor');
    expect(found).toMatchObject({ from: 22, to: 18, use: '18 AWG' });
  });
});
