/** Data sheets, believed and refused. */
import { describe, expect, test } from 'vitest';
import { assessCableData, type CableData } from '../../../src/cable/assess-cable-data.ts';
import { cable } from '../../../src/cable/cable.ts';
import { cablingFigure } from '../../../src/cable/cabling-figure.ts';
import { type CableSheet, defineCable } from '../../../src/cable/define-cable.ts';
import { runResistance } from '../../../src/cable/run-resistance.ts';
import { awg } from '../../../src/conductor/awg.ts';
import { conductorFromResistance } from '../../../src/conductor/conductor-from-resistance.ts';
import { checkPoweredRun } from '../../../src/plan/powered-run.ts';
import { as, expectInputError, expectPlain, expectPrinted, expectWithin, frozen, NOT_NUMBERS } from '../../helpers/expectations.ts';

describe('a sheet that can be true', () => {
  test('becomes a cable like any other', () => {
    const made = defineCable(
      frozen({
        name: 'tie line',
        title: 'Tie line, 8 pairs',
        pairs: 8,
        gauge: 23,
        screened: true,
        nominalOhmsPerKilometre: 67,
        maximumOhmsPerKilometre: 75,
        outsideDiameter: 11.2,
      }),
    );
    expectPlain(made);
    expect(made).toMatchObject({
      name: 'tie line',
      title: 'Tie line, 8 pairs',
      use: 'horizontal',
      pairs: 8,
      gauge: 23,
      stranding: 'solid',
      material: 'annealed-copper',
      screened: true,
      temperatureCoefficient: 0.00393,
      source: 'data-sheet',
      outsideDiameter: 11.2,
      outsideDiameterSource: 'data-sheet',
    });
    expectWithin(made.nominalResistancePerMetre, 0.067, 1e-15);
    expectWithin(made.maximumResistancePerMetre, 0.075, 1e-15);
    expectWithin(runResistance({ segments: [{ cable: made, length: 100 }] }).pairLoop, 15, 1e-14);
  });

  test('says no more than a gauge: nominal copper, and 2 % more for its diameter', () => {
    const made = defineCable({ name: 'plain', gauge: 24 });
    expect(made.nominalResistancePerMetre).toBe(awg(24).resistancePerMetre);
    expectWithin(made.maximumResistancePerMetre, awg(24).resistancePerMetre * 1.02, 1e-15);
    expect(defineCable({ name: 'plain', title: undefined, gauge: 24, pairs: undefined })).toStrictEqual(made);
    expect(defineCable({ name: 'cord', use: 'cord', gauge: 26 })).toMatchObject({ stranding: 'stranded', use: 'cord' });
  });

  test('states its resistance hot: it is brought to 20 °C by the metal it claims', () => {
    const made = defineCable({ name: 'hot', gauge: 24, maximumOhmsPerKilometre: 93.8 * (1 + 0.00393 * 40), temperature: 60 });
    expectWithin(made.maximumResistancePerMetre, 0.0938, 1e-14);
  });

  test('gives mm² or a bare resistance instead of a gauge', () => {
    // 0.52 mm, 23.8 AWG: the nearest whole gauge is named.
    const metric = conductorFromResistance({ ohmsPerKilometre: 81.2, basis: 'nominal', name: '0.52 mm' });
    expect(defineCable({ name: 'metric', conductor: metric }).gauge).toBe(24);
    const bare = defineCable({ name: 'bare', maximumOhmsPerKilometre: 55 });
    expect(bare).toMatchObject({ gauge: 22, material: 'annealed-copper' });
    expectWithin(bare.maximumResistancePerMetre, 0.055, 1e-15);
    expectWithin(bare.nominalResistancePerMetre, 0.055, 1e-15);
  });

  test('of another metal is accepted as what it is, and fails 802.3 power on its material, whatever its ohms', () => {
    const clad = defineCable({ name: 'clad', gauge: 24, material: 'copper-clad-aluminium', nominalOhmsPerKilometre: 126 });
    expect(clad.material).toBe('copper-clad-aluminium');
    const run = checkPoweredRun({ installed: [{ cable: clad, length: 1 }], poeClass: 1 });
    expect(
      run.checks
        .filter(({ aspect }) => aspect === 'power')
        .filter(({ verdict }) => verdict === 'fail')
        .map(({ name }) => name),
    ).toEqual(['material']);
    expect(run.verdict.power).toBe('fail');
  });

  test('every named cable passes its own data sheet', () => {
    for (const name of ['cat3', 'cat5e', 'cat6', 'cat6a', 'cat7a', 'cord-24', 'cord-26', 'cord-28'] as const) {
      const { gauge, use, nominalResistancePerMetre, maximumResistancePerMetre } = cable(name);
      const sheet = {
        gauge,
        use,
        nominalOhmsPerKilometre: nominalResistancePerMetre * 1000,
        maximumOhmsPerKilometre: maximumResistancePerMetre * 1000,
      };
      expect(assessCableData(sheet), name).toMatchObject({ verdict: 'plausible', findings: [] });
    }
  });
});

describe('a sheet that cannot be true', () => {
  const finding = (data: CableData): string[] => assessCableData(data).findings.map(({ code, severity }) => `${severity} ${code}`);

  // Copper-clad aluminium is 1.40 to 1.60 of copper (two trade sources that disagree): 24 AWG copper is 84.2 ohm/km.
  test.each([1.4, 1.45, 1.5, 1.541, 1.6])('24 AWG copper with %d times its resistance is clad aluminium', (ratio) => {
    const ohms = 84.22 * ratio + (ratio === 1.4 ? 0.1 : -0.1);
    expect(finding({ gauge: 24, nominalOhmsPerKilometre: ohms })).toEqual(['impossible consistent-with-clad-aluminium']);
    expect(finding({ gauge: 24, maximumOhmsPerKilometre: ohms })).toEqual(['impossible consistent-with-clad-aluminium']);
    const refused = expectInputError(
      () => defineCable({ name: 'bargain', gauge: 24, nominalOhmsPerKilometre: ohms }),
      'nominalOhmsPerKilometre',
      'conflict',
    );
    expect(refused.received).toBe(ohms);
    expect(refused.message).toContain('clad aluminium');
  });

  test('the bounds of clad aluminium are the published ones', () => {
    expect([cablingFigure('clad-aluminium-least').value, cablingFigure('clad-aluminium-most').value]).toEqual([1.4, 1.6]);
  });

  test('less than copper of the gauge can have: thinner tolerance for one wire than for strands', () => {
    expect(finding({ gauge: 24, nominalOhmsPerKilometre: 81.5 })).toEqual([]);
    expect(finding({ gauge: 24, nominalOhmsPerKilometre: 80 })).toEqual(['impossible below-the-metal']);
    expect(finding({ gauge: 24, maximumOhmsPerKilometre: 75 })).toEqual(['impossible below-the-metal']);
    // The 7/32 "24 AWG" of a public wire chart: 76.4 ohm/km.
    expect(finding({ gauge: 24, stranding: 'stranded', nominalOhmsPerKilometre: 76.4 })).toEqual([]);
    expect(finding({ gauge: 24, stranding: 'stranded', nominalOhmsPerKilometre: 70 })).toEqual(['impossible below-the-metal']);
    expectInputError(() => defineCable({ name: 'x', gauge: 24, maximumOhmsPerKilometre: 60 }), 'maximumOhmsPerKilometre', 'conflict');
  });

  test('a thinner wire, a loop given as one conductor, a maximum given as usual, and a usual figure above the maximum', () => {
    expect(finding({ gauge: 24, nominalOhmsPerKilometre: 106 })).toEqual(['impossible above-the-metal']);
    expect(finding({ gauge: 24, maximumOhmsPerKilometre: 187.6 })).toEqual(['impossible above-the-metal']);
    expect(finding({ gauge: 24, maximumOhmsPerKilometre: 170 })).toEqual(['impossible consistent-with-a-loop']);
    expect(finding({ gauge: 24, nominalOhmsPerKilometre: 93.8 })).toEqual(['doubtful high-nominal']);
    expect(finding({ gauge: 24, nominalOhmsPerKilometre: 88, maximumOhmsPerKilometre: 86 })).toEqual(['impossible nominal-above-maximum']);
  });

  test("a maximum as high as the standard's own accuses nobody, however thick the wire", () => {
    expect(finding({ gauge: 23, maximumOhmsPerKilometre: 93.8 })).toEqual([]);
    expect(finding({ gauge: 22, maximumOhmsPerKilometre: 95 })).toEqual([]);
    expect(finding({ gauge: 24, use: 'cord', maximumOhmsPerKilometre: 140 })).toEqual([]);
    expect(finding({ gauge: 24, maximumOhmsPerKilometre: 140 })).toEqual(['impossible above-the-metal']);
  });

  test('clad aluminium that claims to be clad aluminium is held against clad aluminium, best to worst', () => {
    const clad = (ohms: number): string[] => finding({ gauge: 24, material: 'copper-clad-aluminium', nominalOhmsPerKilometre: ohms });
    expect(clad(84.22 * 1.4)).toEqual([]);
    expect(clad(84.22 * 1.6)).toEqual([]);
    expect(clad(84.22)).toEqual(['impossible below-the-metal']);
  });

  test('the assessment is plain, says what to expect, and how far off it is', () => {
    const assessed = assessCableData(frozen({ gauge: 24, nominalOhmsPerKilometre: 126, temperature: 20 }));
    expectPlain(assessed);
    expect(assessed.verdict).toBe('impossible');
    expectPrinted(assessed.expectedOhmsPerKilometre, '84.2');
    expectPrinted(assessed.findings[0]?.ratio ?? 0, '1.50');
    expect(assessed.findings[0]?.message).toBe(
      '126.0 Ω/km at 20 °C is 1.50 of 24 AWG copper: too high for copper: consistent with clad aluminium',
    );
    expect(assessCableData({ gauge: 24, nominalOhmsPerKilometre: 95 }).verdict).toBe('doubtful');
  });

  test('against a conductor in mm² as against a gauge', () => {
    // 0.2047 mm² is 24 AWG.
    const claimed = { ...awg(24), name: '0.205 mm²' };
    expect(finding({ conductor: claimed, nominalOhmsPerKilometre: 126 })).toEqual(['impossible consistent-with-clad-aluminium']);
    const stated = { ...claimed, basis: 'maximum' as const, resistancePerMetre: 0.0938 };
    expect(finding({ conductor: stated, nominalOhmsPerKilometre: 84 })).toEqual([]);
    expectInputError(
      () => defineCable({ name: 'x', conductor: claimed, nominalOhmsPerKilometre: 126 }),
      'nominalOhmsPerKilometre',
      'conflict',
    );
  });
});

describe('refuses', () => {
  const sheet: CableSheet = { name: 'x', gauge: 24 };
  test.each<readonly [string, unknown, string]>([
    ['name', { ...sheet, name: '' }, 'type'],
    ['name', { gauge: 24 }, 'missing'],
    ['title', { ...sheet, title: ' ' }, 'type'],
    ['use', { ...sheet, use: 'aerial' }, 'unknown'],
    ['pairs', { ...sheet, pairs: 0 }, 'range'],
    ['gauge', { ...sheet, gauge: 41 }, 'range'],
    ['gauge', { name: 'x' }, 'missing'],
    ['stranding', { ...sheet, stranding: 'tinsel' }, 'unknown'],
    ['material', { ...sheet, material: 'unobtainium' }, 'unknown'],
    ['material', { ...sheet, material: 'copper-clad-steel-40' }, 'conflict'],
    ['material', { ...sheet, material: 'hard-drawn-copper' }, 'conflict'],
    ['screened', { ...sheet, screened: 1 }, 'type'],
    ['conductor', { ...sheet, conductor: awg(24) }, 'conflict'],
    ['conductor', { name: 'x', conductor: 24 }, 'type'],
    ['temperature', { ...sheet, temperature: 500 }, 'range'],
    ['outsideDiameter', { ...sheet, outsideDiameter: 0 }, 'range'],
    ['maximumOhmsPerKilometre', { name: 'x', nominalOhmsPerKilometre: 84, maximumOhmsPerKilometre: '94' }, 'type'],
    ['nominalOhmsPerKilometre', { name: 'x', nominalOhmsPerKilometre: -1 }, 'range'],
  ])('%s in %o', (parameter, input, code) => {
    expectInputError(() => defineCable(as<CableSheet>(input)), parameter, as<'type'>(code));
  });

  test.each(NOT_NUMBERS)('%s for a resistance', (_label, value, code) => {
    const number = as<number>(value);
    expectInputError(() => assessCableData({ gauge: 24, nominalOhmsPerKilometre: number }), 'nominalOhmsPerKilometre', code);
    expectInputError(() => defineCable({ name: 'x', gauge: 24, maximumOhmsPerKilometre: number }), 'maximumOhmsPerKilometre', code);
  });

  test('what is no sheet at all', () => {
    for (const input of [null, 7, 'cat6', []]) {
      expectInputError(() => defineCable(as<CableSheet>(input)), 'input', 'type');
      expectInputError(() => assessCableData(as<CableData>(input)), 'input', 'type');
    }
    expectInputError(() => assessCableData({}), 'gauge', 'missing');
  });
});
