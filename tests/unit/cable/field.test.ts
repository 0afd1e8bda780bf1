import { describe, expect, test } from 'vitest';
import { assessCableData, type Cable, loadedVoltage } from '../../../src/cable/index.ts';
import {
  awg,
  cable,
  defineCable,
  type ExplanationName,
  expectedReading,
  type FromMeasurement,
  type FromMeasurementInput,
  fromMeasurement,
  runResistance,
} from '../../../src/index.ts';
import { as, expectInputError, expectPlain, expectPrinted, frozen, NOT_NUMBERS } from '../../helpers/expectations.ts';

const cat5e = cable('cat5e');
const asked = (input: Partial<FromMeasurementInput>): FromMeasurement => {
  const found = fromMeasurement(frozen({ pairs: { '1,2': 15 }, scope: 'cable', cable: cat5e, ...input }));
  expectPlain(found);
  return found;
};
const explained = (found: FromMeasurement, name: ExplanationName) => {
  const explanation = found.explanations.find((one) => one.name === name);
  if (explanation === undefined) throw new Error(`no ${name}`);
  return explanation;
};
const consistent = (found: FromMeasurement): ExplanationName[] =>
  found.explanations.filter(({ status }) => status === 'consistent').map(({ name }) => name);

const awg24 = (use: 'horizontal' | 'cord'): Cable => cable(use === 'cord' ? 'cord-24' : 'cat5e');

describe('expectedReading', () => {
  test('bounds: a thick conductor without joints, and the limit with joints at their most', () => {
    const { permanentLink, channel } = expectedReading(
      frozen({ installed: [{ cable: cat5e, length: 90 }], cords: [{ cable: cable('cord-24'), length: 10 }], connections: 4 }),
    );
    // 90 m of 24 AWG, 84.22 Ω/km as computed from 1/58 Ω·mm²/m: 2 % thick, and of copper 2 % better than the standard's.
    expectPrinted(permanentLink.at20.low, '14.55');
    expect(permanentLink.at20.high).toBeCloseTo(2 * 90 * 0.0938 + 3 * 0.4, 12);
    expect(permanentLink.connections).toBe(3);
    // The budget of 90 m, 10 m of cords at 14 Ω/100 m and four connections: 21.3 Ω (arithmetic on the limits of ANSI/TIA-568.2-D).
    expectPrinted(channel.at20.high, '21.3');
    expect(channel.length).toBe(100);
    expect(channel.at20).toEqual(channel.atTemperature);
  });

  test('its nominal and its high bound are those of runResistance', () => {
    const installed = [{ cable: cat5e, length: 40, temperature: 50 }];
    const { channel } = expectedReading({ installed, connections: 2 });
    expect(channel.atTemperature.value).toBe(runResistance({ segments: installed, connections: 2, basis: 'nominal' }).pairLoop);
    expect(channel.atTemperature.high).toBeCloseTo(runResistance({ segments: installed, connections: 2 }).pairLoop, 12);
  });

  test('a spread of temperature widens both ends by 0.393 % a kelvin of what it is at 20 °C', () => {
    const installed = [{ cable: cat5e, length: 50, temperature: 30 }];
    const sharp = expectedReading({ installed }).channel;
    const wide = expectedReading({ installed, temperatureSpread: 5 }).channel;
    expect(wide.atTemperature.high - sharp.atTemperature.high).toBeCloseTo(sharp.at20.high * 0.00393 * 5, 12);
    expect(sharp.atTemperature.low - wide.atTemperature.low).toBeCloseTo(sharp.at20.low * 0.00393 * 5, 12);
    expect(wide.at20).toEqual(sharp.at20);
  });

  test('stranded cords of the trade may have more copper than their gauge, clad aluminium any make', () => {
    const cord = expectedReading({ installed: [{ cable: cable('cord-26'), length: 1 }] }).channel.at20;
    // 7/34: 12.24 Ω/100 m at 26 AWG (stranded wire chart), here twice for the loop, 2 % thick and of the purest copper.
    expect(cord.low).toBeLessThanOrEqual(2 * 0.1224 * 0.9612);
    expect(cord.low).toBeGreaterThan(2 * 0.1224 * 0.95);
    const clad = defineCable({ name: 'clad', gauge: 24, material: 'copper-clad-aluminium' });
    const { low, high } = expectedReading({ installed: [{ cable: clad, length: 100 }] }).channel.at20;
    expect(low / (200 * cat5e.nominalResistancePerMetre)).toBeCloseTo(1.4 * 0.96, 3);
    expect(high / (200 * cat5e.nominalResistancePerMetre)).toBeCloseTo(1.6 * 1.02, 3);
  });

  test('refuses what is no run', () => {
    expectInputError(() => expectedReading(as({})), 'installed');
    expectInputError(
      () => expectedReading({ installed: [{ cable: cat5e, length: 1 }], connections: 1, linkConnections: 2 }),
      'linkConnections',
    );
    expect(expectInputError(() => expectedReading({ installed: [] }), 'installed', 'missing').expected).toBe('at least one piece of cable');
    expectInputError(
      () => expectedReading({ installed: [{ cable: cat5e, length: 1, temperature: 395 }], temperatureSpread: as('5') }),
      'temperatureSpread',
    );
    // Under absolute zero the line of copper would have less than no resistance.
    const cold = { installed: [{ cable: cat5e, length: 10, temperature: -100 }] };
    expectInputError(() => expectedReading({ ...cold, temperatureSpread: 200 }), 'temperatureSpread', 'range');
    expect(expectedReading({ ...cold, temperatureSpread: 100 }).channel.atTemperature.low).toBeGreaterThan(0);
  });
});

describe('the least that a conductor can have', () => {
  test('is one figure: what a data sheet may claim, a reading may show', () => {
    for (const [use, most] of [
      ['horizontal', 0.96],
      ['cord', 0.86 * 1.02],
    ] as const) {
      const { nominalResistancePerMetre: nominal } = awg24(use);
      const low = 1000 * awg(24).resistancePerMetre * most;
      expect(assessCableData({ gauge: 24, use, nominalOhmsPerKilometre: low * 1.0001 }).verdict).toBe('plausible');
      expect(assessCableData({ gauge: 24, use, nominalOhmsPerKilometre: low * 0.9999 }).verdict).toBe('impossible');
      const reading = (ohmsPerKilometre: number) =>
        fromMeasurement({ pairs: { '1,2': (2 * 100 * ohmsPerKilometre) / 1000 }, knownLength: 100, cable: awg24(use), scope: 'cable' });
      expect(explained(reading(low * 1.0001), 'as-described').status).toBe('consistent');
      expect(explained(reading(low * 0.9999), 'as-described').status).toBe('inconsistent');
      expect(nominal).toBeGreaterThan(low / 1000);
    }
  });

  test('of tinned copper is that of the best the standard knows, in both', () => {
    const tinned = defineCable({ name: 'tinned', gauge: 24, material: 'tinned-copper' });
    const [finding] = assessCableData({ gauge: 24, material: 'tinned-copper', nominalOhmsPerKilometre: 60 }).findings;
    expect(expectedReading({ installed: [{ cable: tinned, length: 500 }] }).channel.at20.low).toBeCloseTo(finding?.allowed ?? 0, 9);
  });
});

describe('fromMeasurement', () => {
  test('length = reading / 2 r, after the reading is brought to 20 °C', () => {
    // 100 m of conductors at the limit, at 40 °C.
    const hot = 200 * 0.0938 * (1 + 0.00393 * 20);
    const { readings, lengths } = asked({ pairs: { '1,2': hot }, temperature: 40 });
    expect(readings[0]?.at20.value).toBeCloseTo(18.76, 12);
    expect(lengths[0]?.length?.low).toBeCloseTo(100, 9);
    // Telephone practice, from memory: 22, 24 and 26 AWG have 61.5, 38.5 and 24.0 ft to the ohm of one conductor.
    const by = (wire: string) => asked({ pairs: { '1,2': 20 } }).lengths.find((one) => one.wire === wire)?.length;
    for (const [wire, feet] of [
      ['22 AWG copper', 61.5],
      ['24 AWG copper', 38.5],
      ['26 AWG copper', 24.0],
    ] as const) {
      expect(by(wire)?.low).toBeLessThan(feet * 0.3048 * 10);
      expect(by(wire)?.high).toBeGreaterThan(feet * 0.3048 * 10);
    }
  });

  test('leads are taken off, accuracy is carried through: ±(1 % + 0.1 Ω) of 15.2 Ω', () => {
    const { readings } = asked({ pairs: { '1,2': 15.2 }, leadResistance: 0.2, accuracy: { fraction: 0.01, fixed: 0.1 } });
    expect(readings[0]?.measured.low).toBeCloseTo(15 - 0.252, 12);
    expect(readings[0]?.measured.value).toBeCloseTo(15, 12);
    expect(readings[0]?.measured.high).toBeCloseTo(15 + 0.252, 12);
  });

  test('joints do not cool: at 20 °C the bound holds copper alone and joints at their most', () => {
    const { readings } = asked({ pairs: { '1,2': 10 }, temperature: 60, scope: 'channel', connections: 2 });
    const warm = 1 + 0.00393 * 40;
    expect(readings[0]?.at20.low).toBeCloseTo(10 / warm, 12);
    expect(readings[0]?.at20.high).toBeCloseTo((10 - 0.8) / warm + 0.8, 12);
  });

  test('loops that power sees: a quarter of each pair, and both pairsets side by side', () => {
    const { loops } = asked({ pairs: { '1,2': 16, '3,6': 17, '4,5': 18, '7,8': 19 } });
    expect(loops?.at20.pairLoop.value).toBe(19);
    expect(loops?.at20.pairsetA.value).toBe(8.25);
    expect(loops?.at20.twoPair.value).toBe(9.25);
    expect(loops?.at20.fourPair.value).toBeCloseTo((8.25 * 9.25) / 17.5, 12);
    // One pair alone stands for all four.
    expect(asked({ pairs: { '4,5': 16 } }).loops?.at20).toMatchObject({ twoPair: { value: 8 }, fourPair: { value: 4 } });
  });

  test('copper of 90 m reads as described; the same length in clad aluminium does not', () => {
    const described = { knownLength: 90, scope: 'permanent-link', connections: 2 } as const;
    expect(consistent(asked({ pairs: { '1,2': 16 }, ...described }))).toContain('as-described');
    const clad = asked({ pairs: { '1,2': 22, '3,6': 22.2, '4,5': 22.1, '7,8': 22.4 }, ...described });
    // Clad aluminium of 1.40 to 1.60 makes 21.2 Ω and more of 90 m, copper at its limit 17.7 Ω with two connections.
    expect(explained(clad, 'as-described')).toMatchObject({ status: 'inconsistent' });
    expect(explained(clad, 'as-described').distance).toBeCloseTo(22.4 - (180 * 0.0938 + 0.8), 9);
    expect(explained(clad, 'clad-aluminium').status).toBe('consistent');
    expect(explained(clad, 'one-bad-joint').status).toBe('inconsistent');
    expect(explained(clad, 'longer').takes?.low).toBeCloseTo((22.4 - 0.8) / (2 * 0.0938), 9);
  });

  test('one bad joint: what it would have, and which pair', () => {
    const found = asked({ pairs: { '1,2': 8.6, '3,6': 8.7, '4,5': 12, '7,8': 8.8 }, knownLength: 50 });
    expect(explained(found, 'as-described').status).toBe('inconsistent');
    const joint = explained(found, 'one-bad-joint');
    expect(joint).toMatchObject({ status: 'consistent', pair: '4,5' });
    expect(joint.takes?.low).toBeCloseTo(12 - 100 * 0.0938, 9);
    expect(joint.takes?.high).toBeCloseTo(12 - 100 * 0.96 * cat5e.nominalResistancePerMetre, 9);
    expect(explained(found, 'one-pair-longer')).toMatchObject({ status: 'consistent', pair: '4,5' });
    expect(explained(found, 'longer').status).toBe('inconsistent');
    expect(explained(found, 'leads-not-nulled').status).toBe('inconsistent');
    expect(
      found.checks.filter(({ name, verdict }) => name === 'pair-to-pair-unbalance' && verdict === 'fail').map(({ pairs }) => pairs),
    ).toEqual([
      ['1,2', '4,5'],
      ['3,6', '4,5'],
      ['4,5', '7,8'],
    ]);
    expect(found.cannotTell.map(({ between }) => between)).toContainEqual(['one-bad-joint', 'one-pair-longer']);
  });

  test('hotter: from the temperature that the most copper would need to the one that the least would', () => {
    const found = asked({ pairs: { '1,2': 19.5 }, knownLength: 100 });
    const { takes } = explained(found, 'hotter');
    expect(takes?.low).toBeCloseTo(20 + (19.5 / 18.76 - 1) / 0.00393, 9);
    expect(takes?.high).toBeCloseTo(20 + (19.5 / (200 * 0.96 * cat5e.nominalResistancePerMetre) - 1) / 0.00393, 9);
    // 90 °C makes at most 23.9 Ω of 100 m.
    const beyond = asked({ pairs: { '1,2': 24.5 }, knownLength: 100 });
    expect(explained(beyond, 'hotter').distance).toBeCloseTo(24.5 - 18.76 * (1 + 0.00393 * 70), 9);
  });

  test('a pair that was not shorted reads open, or over 1 kΩ', () => {
    const found = asked({ pairs: { '1,2': 'open', '3,6': 15 } });
    expect(found.open).toEqual(['1,2']);
    expect(explained(found, 'not-shorted')).toMatchObject({ status: 'consistent', pair: '1,2' });
    expect(explained(asked({ pairs: { '1,2': 15 } }), 'not-shorted')).toMatchObject({ status: 'inconsistent', distance: 985 });
    const none = asked({ pairs: { '1,2': 'open' } });
    expect(none).toMatchObject({ readings: [], open: ['1,2'], explanations: [], checks: [], lengths: [] });
    expect(Object.keys(none)).not.toContain('loops');
  });

  test('leads that were not nulled are on every pair alike, and at most 1 Ω', () => {
    const pairs = { '1,2': 1.3, '3,6': 1.32, '4,5': 1.28, '7,8': 1.3 };
    expect(explained(asked({ pairs, knownLength: 3 }), 'leads-not-nulled')).toMatchObject({ status: 'consistent' });
    expect(explained(asked({ pairs: { '1,2': 2.3 }, knownLength: 3 }), 'leads-not-nulled').distance).toBeCloseTo(2.3 - 6 * 0.0938 - 1, 9);
  });

  test('without a length one reading leaves nearly everything open, and says what would tell', () => {
    const { knownLength: _none, ...found } = { knownLength: undefined, ...asked({}) };
    expect(found.cannotTell.length).toBeGreaterThan(1);
    expect(found.cannotTell[0]?.between).toContain('clad-aluminium');
    expect(found.cannotTell[0]?.tells).toMatch(/metre marks/);
    expect(found.assumptions).toContain('temperature: 20 °C');
  });

  test('limits: 25 Ω channel, 21 Ω permanent link (memory), and so much per length', () => {
    const check = (input: Partial<FromMeasurementInput>, name: string) => asked(input).checks.find((one) => one.name === name);
    expect(check({ pairs: { '1,2': 25.1 }, scope: 'channel' }, 'channel-loop')).toMatchObject({ limit: 25, verdict: 'fail' });
    expect(check({ pairs: { '1,2': 24 }, scope: 'channel' }, 'channel-loop')?.verdict).toBe('marginal');
    expect(check({ pairs: { '1,2': 20.9 }, scope: 'permanent-link', accuracy: { fraction: 0.01 } }, 'permanent-link-loop')).toMatchObject({
      limit: 21,
      verdict: 'uncertain',
      deciding: [{ parameter: 'accuracy' }],
    });
    expect(check({ pairs: { '1,2': 10 }, scope: 'permanent-link' }, 'permanent-link-loop')?.verdict).toBe('pass');
    expect(check({ pairs: { '1,2': 18.7 }, knownLength: 90 }, 'loop-per-length')).toMatchObject({ verdict: 'fail', limit: 180 * 0.0938 });
    expect(check({ pairs: { '1,2': 18.7 }, knownLength: { low: 90, high: 110 } }, 'loop-per-length')?.verdict).toBe('uncertain');
  });

  test('unbalance: the floor is what saves short links, and bounds that straddle it are uncertain', () => {
    const between = (one: number, other: number, accuracy?: FromMeasurementInput['accuracy']) =>
      asked({ pairs: { '1,2': one, '3,6': other }, accuracy }).checks.find(({ name }) => name === 'pair-to-pair-unbalance');
    // 20 % apart, and yet under 0.1 Ω as parallel values.
    expect(between(1, 1.2)).toMatchObject({ verdict: 'pass', limit: 0.1 });
    expect(between(10, 12)).toMatchObject({ verdict: 'fail' });
    expect(between(10, 11.4, { fixed: 0.2 })?.verdict).toBe('uncertain');
    expect(between(10, 10, { fixed: 0.2 })?.range.low).toBe(0);
    const within = asked({ conductors: { '1,2': [7, 8] } }).checks.find(({ name }) => name === 'pair-unbalance');
    expect(within).toMatchObject({ verdict: 'fail', value: 1 });
    expect(within?.limit).toBeCloseTo(0.45, 12);
  });

  test('cords that are known are counted as what they are', () => {
    const cords = [{ cable: cable('cord-26'), length: 5 }];
    const ohms = 2 * 60 * 0.09 + 2 * 5 * 0.137;
    const found = asked({ pairs: { '1,2': ohms }, scope: 'channel', connections: 0, cords, knownLength: 60 });
    expect(explained(found, 'as-described').status).toBe('consistent');
    expect(found.assumptions).not.toContain('cords: as the cable');
    expect(found.lengths[0]?.length?.low).toBeCloseTo((ohms - 1.4) / 0.1876, 9);
  });

  test('refuses what is no reading', () => {
    for (const [, value] of NOT_NUMBERS) {
      expectInputError(() => fromMeasurement({ pairs: { '1,2': as(value) }, scope: 'cable' }), "pairs['1,2']");
    }
    expectInputError(() => asked({ pairs: {} }), 'pairs', 'missing');
    expectInputError(() => asked({ pairs: as({ '2,1': 3 }) }), "pairs['2,1']", 'unknown');
    expectInputError(() => asked({ conductors: as({ '1,2': [3] }) }), "conductors['1,2']", 'range');
    expectInputError(() => asked(as({ knownLenght: 60 })), 'knownLenght', 'unknown');
    expectInputError(() => asked({ cable: as('Cat6') }), 'cable', 'unknown');
    expectInputError(() => asked({ scope: as('link') }), 'scope', 'unknown');
    expectInputError(() => asked({ leadResistance: 16 }), 'leadResistance', 'conflict');
    expectInputError(() => asked({ knownLength: { low: 3, high: 2 } }), 'knownLength.high', 'conflict');
    expectInputError(() => asked({ temperature: { low: -300, high: 2 } }), 'temperature.low', 'range');
    expectInputError(() => asked({ accuracy: { fraction: 0.6 } }), 'accuracy.fraction', 'range');
    expectInputError(() => asked({ accuracy: as(null) }), 'accuracy');
    expectInputError(() => asked({ cable: as(null) }), 'cable');
  });

  test('a reading of 0 Ω and cable of no length are answers too', () => {
    const nothing = asked({ pairs: { '1,2': 0 }, knownLength: 0 });
    expect(consistent(nothing)).toContain('as-described');
    expect(explained(asked({ pairs: { '1,2': 0 }, knownLength: 10 }), 'shorter').status).toBe('consistent');
  });
});

describe('loadedVoltage', () => {
  test('R = (V0 - V) / I, most power V0²/4R, and what is left', () => {
    const found = loadedVoltage({ openVoltage: 24, loadedVoltage: 21.6, current: 0.5, minimumVoltage: 18 });
    expect(found.resistance.value).toBeCloseTo(4.8, 12);
    expect(found.maximumPower?.value).toBeCloseTo(30, 12);
    expect(found.powerAtMinimum?.value).toBeCloseTo((6 / 4.8) * 18, 12);
    expect(found.powerLeft?.value).toBeCloseTo(22.5 - 10.8, 12);
    expectPlain(found);
  });

  test('bounds hold every source and line that meters within their accuracy could have read', () => {
    const voltageAccuracy = { fraction: 0.005, fixed: 0.02 };
    const currentAccuracy = { fraction: 0.01 };
    for (const [emf, line, current] of [
      [24, 5, 0.5],
      [48, 10, 1],
      [12, 6, 1.2],
      [54, 20, 1.9],
      [24, 60, 0.21],
    ] as const) {
      for (let i = 0; i < 27; i++) {
        const [a, b, c] = [(i % 3) - 1, (Math.floor(i / 3) % 3) - 1, Math.floor(i / 9) - 1];
        const shown = (truth: number, sign: number, fraction: number, fixed: number) => (truth + sign * fixed) / (1 - sign * fraction);
        const found = loadedVoltage({
          openVoltage: shown(emf, a, 0.005, 0.02),
          loadedVoltage: shown(emf - current * line, b, 0.005, 0.02),
          current: shown(current, c, 0.01, 0),
          minimumVoltage: emf * 0.8,
          voltageAccuracy,
          currentAccuracy,
        });
        const holds = (bounds: { low: number; high: number } | undefined, truth: number) => {
          if (bounds === undefined) return;
          expect(bounds.low).toBeLessThanOrEqual(truth * (1 + 1e-9));
          expect(bounds.high).toBeGreaterThanOrEqual(truth * (1 - 1e-9));
        };
        holds(found.resistance, line);
        holds(found.maximumPower, emf ** 2 / (4 * line));
        holds(found.powerAtMinimum, ((0.2 * emf) / line) * 0.8 * emf);
        holds(found.loadPower, (emf - current * line) * current);
        expectPlain(found);
      }
    }
  });

  test('voltages that accuracy cannot tell apart bound no power', () => {
    const found = loadedVoltage({ openVoltage: 24, loadedVoltage: 23.9, current: 0.5, voltageAccuracy: { fixed: 0.1 } });
    expect(found.resistance.low).toBe(0);
    expect(Object.keys(found)).toEqual(['resistance', 'loadPower']);
  });

  test('refuses a load that raises the voltage, and no current', () => {
    expectInputError(() => loadedVoltage({ openVoltage: 24, loadedVoltage: 24.5, current: 0.5 }), 'loadedVoltage', 'conflict');
    expectInputError(() => loadedVoltage({ openVoltage: 24, loadedVoltage: 23, current: 0 }), 'current', 'range');
    expectInputError(
      () => loadedVoltage({ openVoltage: 24, loadedVoltage: 23, current: 0.1, currentAccuracy: { fixed: 0.1 } }),
      'current',
      'conflict',
    );
  });
});
