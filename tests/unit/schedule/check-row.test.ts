import { describe, expect, test } from 'vitest';
import { cable } from '../../../src/cable/cable.ts';
import { cableCores } from '../../../src/cable/cable-cores.ts';
import { awg } from '../../../src/conductor/awg.ts';
import { checkRow } from '../../../src/schedule/check-row.ts';
import type { PoweredRunReport, TwoWireRunReport } from '../../../src/schedule/report.ts';
import { cueLight, frozen, piece, powered, stageRack } from './check-samples.ts';

function check(...given: Parameters<typeof powered>): PoweredRunReport {
  return checkRow({ ...powered(...given), fedBy: stageRack() }) as PoweredRunReport;
}

describe('a powered run', () => {
  // 94 m at 9.38 Ω/100 m (ANSI/TIA-568.2-D) and two connections of 0.2 Ω (the same, from memory): one conductor 9.2172 Ω.
  const run = check({}, { installed: [piece('cat6', 94)] });

  test('has the three loops of its conductor', () => {
    expect(run.resistance.pairLoop).toBeCloseTo(2 * 9.2172, 10);
    expect(run.resistance.twoPair).toBeCloseTo(9.2172, 10);
    expect(run.resistance.fourPair).toBeCloseTo(9.2172 / 2, 10);
    expect(run.at20.pairLoop).toBeCloseTo(2 * 9.2172, 10);
  });

  test('says what a meter should show, from usual copper to the most allowed', () => {
    // 23 AWG at 66.8 Ω/km: ASTM B258 diameter, 1/58 Ω·mm²/m, as the handbook tables print it.
    expect(run.meterReading.nominal).toBeCloseTo(2 * (0.0668 * 94 + 0.4), 1);
    expect(run.meterReading.maximum).toBe(run.resistance.pairLoop);
  });

  test('is judged at the lowest voltage of its port, and obeys Ohm', () => {
    expect(run.supplyVoltage).toEqual({ low: 50, high: 50 });
    const { operating, cableHeat, totalCurrent = Number.NaN } = run;
    expect(operating.feasible && operating.loadVoltage).toBeCloseTo(50 - totalCurrent * 9.2172, 10);
    expect(operating.feasible && operating.loadPower).toBe(12.95);
    expect(cableHeat).toBeCloseTo(totalCurrent ** 2 * 9.2172, 10);
  });

  test.each([
    [3, 2, 1],
    [6, 4, 2],
  ] as const)('of class %i sends its current through %i pairs, so %i pairsets', (poeClass, pairs, pairsets) => {
    const { classLimits, totalCurrent = Number.NaN, ...run } = checkRow(powered({}, { poeClass })) as PoweredRunReport;
    expect(classLimits.pairs).toBe(pairs);
    expect(run.pairsetCurrent).toBe(totalCurrent / pairsets);
    expect(run.conductorCurrent).toBe(totalCurrent / pairsets / 2);
  });

  test('has two verdicts, and a limit that governs', () => {
    expect(run.verdict).toEqual({ power: 'pass', cabling: 'fail', worst: 'fail' });
    expect(run.outcome).toBe('fail');
    expect(run.governing?.name).toBe('permanent-link-length');
    expect(run.checks.map(({ name, aspect }) => [name, aspect])).toEqual(
      expect.arrayContaining([
        ['pd-voltage', 'power'],
        ['channel-loop', 'cabling'],
      ]),
    );
  });

  test('that fails has remedies, one that passes none', () => {
    expect(run.remedies.map(({ remedy, to }) => [remedy, to])).toContainEqual(['shorter-run', 90]);
    expect(check().remedies).toEqual([]);
  });

  test('has no cabling verdict where no cabling rules apply', () => {
    const bare = checkRow({ ...powered({}, { installed: [piece('cat6', 94)] }), cabling: 'none' });
    expect(bare.verdict).toEqual({ power: 'pass', worst: 'pass' });
    expect(bare.checks.filter(({ aspect }) => aspect !== 'power')).toEqual([]);
    expect(bare.outcome).toBe('pass');
  });

  test('on no known switch is judged on the weakest type that serves its class, and says so', () => {
    const run = checkRow(powered({}, { poeClass: 4 })) as PoweredRunReport;
    expect(run.classLimits.type).toBe(2);
    expect(run.notes).toEqual([expect.stringContaining('Type 2 port, the weakest that serves class 4')]);
    expect(check().notes).toEqual([]);
  });

  test('on a port of too weak a type is granted less than it wants: a failing check, and a stronger port as remedy', () => {
    const run = checkRow({ ...powered({}, { poeClass: 8 }), fedBy: stageRack({ type: 3 }) }) as PoweredRunReport;
    expect([run.poeClass, run.grantedClass]).toEqual([8, 6]);
    // IEEE 802.3: 51 W for class 6, 71.3 W for class 8.
    expect(run.checks.find(({ name }) => name === 'pd-power')).toMatchObject({ value: 71.3, limit: 51, verdict: 'fail' });
    expect(run.remedies).toContainEqual(expect.objectContaining({ remedy: 'higher-port-type', from: 3, to: 4 }));
    expect(run.notes).toEqual([expect.stringContaining('grants class 6')]);
  });

  test('takes the voltage that the switch states', () => {
    const run = checkRow({ ...powered(), fedBy: stageRack({ minimumVoltage: 53 }) });
    expect(run.supplyVoltage).toEqual({ low: 53, high: 53 });
  });

  test('that cannot carry its load says what the line could deliver', () => {
    const run = checkRow(powered({}, { poeClass: 4, installed: [piece('cat6', 400)] }));
    // One conductor of 400 m and two connections: 37.92 Ω; 50²/4R = 16.48 W, 50/R = 1.319 A.
    const { operating } = run;
    expect(operating.feasible).toBe(false);
    expect(!operating.feasible && operating.maximumLoadPower).toBeCloseTo(2500 / (4 * 37.92), 9);
    expect(!operating.feasible && operating.maximumCurrent).toBeCloseTo(50 / 37.92, 9);
    expect(run).not.toHaveProperty('cableHeat');
  });

  test('lists its pieces', () => {
    const run = check({}, { installed: [piece('cat6', 40, 35)], cords: [{ cable: piece('cord-28', 5).cable, length: 5 }] });
    expect(run.pieces).toEqual([
      { cable: 'Category 6', use: 'installed', length: 40, temperature: 35 },
      { cable: 'Cord, 28 AWG', use: 'cord', length: 5, temperature: 20 },
    ]);
    expect([run.installedLength, run.channelLength]).toEqual([40, 45]);
  });
});

describe('a two-wire run', () => {
  test('is judged at the lowest voltage of its supply', () => {
    const run = checkRow(cueLight()) as TwoWireRunReport;
    // 18 AWG is 20.95 Ω/km (ASTM B258, 1/58 Ω·mm²/m), taken 2 % up for the tolerance of its diameter.
    expect(run.resistance).toBeCloseTo(2 * 60 * 0.02095 * 1.02, 2);
    expect(run.supplyVoltage).toEqual({ low: 21, high: 27.6 });
    expect(run.verdict).toEqual({ power: 'pass', worst: 'pass' });
    expect(run.checks.filter(({ aspect }) => aspect !== 'power')).toEqual([]);
    expect(run).not.toHaveProperty('pairsetCurrent');
  });

  test('heats its cable most at the lowest voltage with a constant power, at the highest with a resistance', () => {
    const heat = (load: { power: number } | { resistance: number }): number => {
      const { cableHeat = Number.NaN, resistance } = checkRow(cueLight({}, { load })) as TwoWireRunReport;
      return cableHeat / resistance;
    };
    const { resistance, operating } = checkRow(cueLight()) as TwoWireRunReport;
    expect(heat({ power: 6 })).toBeCloseTo((operating.feasible ? operating.current : Number.NaN) ** 2, 12);
    expect(heat({ resistance: 96 })).toBeCloseTo((27.6 / (96 + resistance)) ** 2, 12);
  });

  test('on one supply figure is uncertain', () => {
    expect(checkRow(cueLight({}, { supplyVoltage: 24 })).outcome).toBe('uncertain');
  });

  test('that fails has a thicker conductor as remedy', () => {
    const run = checkRow(cueLight({}, { conductor: awg(22), length: 90 }));
    expect(run.outcome).toBe('fail');
    expect(run.remedies.map(({ remedy, to }) => [remedy, to])).toContainEqual(['thicker-conductor', 20]);
  });
});

describe('a two-wire run on pairs of a category cable', () => {
  const onPairs = (cores: number, length: number): ReturnType<typeof checkRow> =>
    checkRow(cueLight({ cores }, { conductor: cableCores({ cable: cable('cat5e'), cores }), length }));
  const joined = (run: ReturnType<typeof checkRow>): unknown =>
    run.remedies.filter(({ remedy }) => remedy === 'paralleled-cores').map(({ from, to }) => [from, to]);

  // (21 V - 19 V) of 6 W / 19 V leave 6.33 Ω out and back: 33 m on a core of 9.38 Ω/100 m each way, 67 m on two, 135 m on four.
  test('counts the cores that more are joined to', () => {
    expect(onPairs(1, 30).outcome).not.toBe('fail');
    expect(joined(onPairs(1, 60))).toEqual([[1, 2]]);
    expect(joined(onPairs(2, 90))).toEqual([[2, 4]]);
  });

  test('and is not told to join more than the cable has', () => {
    expect(joined(onPairs(2, 150))).toEqual([]);
    expect(onPairs(4, 150).outcome).toBe('fail');
    expect(joined(onPairs(4, 150))).toEqual([]);
  });

  test.each([0, 5, 1.5, '2'])('has no %s cores', (cores) => {
    expect(() => checkRow(cueLight({ cores: cores as number }))).toThrow(
      expect.objectContaining({ name: 'InputError', parameter: 'cores' }),
    );
  });
});

describe('checkRow', () => {
  test('leaves its input alone and shares nothing with it', () => {
    const input = frozen(powered({}, { cords: [piece('cord-24', 5)] }));
    const run = checkRow(frozen({ ...input, fedBy: stageRack() }));
    expect(JSON.parse(JSON.stringify(run))).toEqual(run);
    expect(structuredClone(run)).toEqual(run);
    expect(Object.isFrozen(run.pieces[0])).toBe(false);
  });

  test.each([
    ['no run', undefined, 'row'],
    ['a list', [], 'row'],
    ['an unknown kind', { ...powered(), kind: 'wireless' }, 'kind'],
    ['no facts', { ...powered(), input: null }, 'input'],
    ['a length below 0', powered({}, { installed: [piece('cat6', -1)] }), 'installed[0].length'],
  ])('refuses %s', (_what, run, parameter) => {
    expect(() => checkRow(run as never)).toThrow(
      expect.objectContaining({ name: 'InputError', parameter: expect.stringContaining(parameter) }),
    );
  });

  test('refuses a switch that is not the one the run names', () => {
    expect(() => checkRow({ ...powered(), fedBy: stageRack({ switch: 'Foyer' }) })).toThrow(
      "expected the switch that the run names, 'Stage rack'",
    );
  });
});
