import { describe, expect, test } from 'vitest';
import { cable } from '../../../src/cable/cable.ts';
import { awg } from '../../../src/conductor/awg.ts';
import { conductorFromResistance } from '../../../src/conductor/conductor-from-resistance.ts';
import { showWorking, workingLatex, workingMarkdown, workingText } from '../../../src/working/index.ts';

describe('a line that says no more than the one before', () => {
  const working = showWorking('solveNetwork', {
    supplies: [
      { at: 'a', voltage: 24 },
      { at: 'b', voltage: 25 },
    ],
    sections: [
      { from: 'a', to: 'm', resistance: 1 },
      { from: 'm', to: 'b', resistance: 1 },
    ],
    taps: [{ at: 'm', load: { current: 0.2 } }],
  });

  test('is left out, and the sign is that of the rounding', () => {
    const single = showWorking('solveNetwork', {
      supplies: [{ at: 'a', voltage: 24 }],
      sections: [{ from: 'a', to: 'm', resistance: 3 }],
      taps: [{ at: 'm', load: { resistance: 97 } }],
    });
    // 24 V over 100 ohm is 0.24 A.
    expect(workingText(single)).toMatch(/^ +I0_1 = Is_1\n +[≈=] 0\.24(00)? A\n +from/m);
    expect(workingText(showWorking('awg', { size: 24 }))).toContain(
      '     A = pi / 4 · d^2\n       = pi / 4 · (0.5106 mm)^2\n       ≈ 0.2047 mm²\n',
    );
  });

  test('a supply that is fed backwards is no ordinary one', () => {
    // The middle is at (24 + 25 - 0.2)/2 = 24.4 V: 0.4 A flow back into the supply of 24 V.
    expect(working.steps.find(({ symbol }) => symbol === 'I0_1')?.value).toBeCloseTo(-0.4, 12);
    expect(working.cautions.join()).toContain('flows back into that supply');
    const { cautions } = showWorking('solveNetwork', {
      supplies: [{ at: 'a', voltage: 24 }],
      sections: [{ from: 'a', to: 'm', resistance: 1 }],
      taps: [{ at: 'm', load: { current: 0.2 } }],
    });
    expect(cautions).toEqual([]);
  });

  test('a network without constant powers speaks of none, and names the node that is lowest', () => {
    expect(JSON.stringify(working)).not.toContain('network-newton');
    expect(working.tables[0]?.says).toContain('Without constant powers');
    expect(working.result).toMatchObject({ meaning: 'the lowest voltage of any node, at a', shown: '24 V' });
  });

  test('a column of several kinds of load has those that there are', () => {
    const { tables } = showWorking('solveNetwork', {
      supplies: [{ at: 'a', voltage: 24 }],
      sections: [
        { from: 'a', to: 'm', resistance: 1 },
        { from: 'm', to: 'n', resistance: 1 },
      ],
      taps: [
        { at: 'm', load: { current: 0.2 } },
        { at: 'n', load: { resistance: 96 } },
      ],
    });
    const column = tables.at(-1)?.columns.find(({ symbol }) => symbol === 'It_k');
    expect(column).toMatchObject({ formula: 'J_k + G_k * W_k', latex: { formula: 'J_{k} + G_{k} \\cdot W_{k}' } });
  });
});

describe('nothing', () => {
  test('is written as 0 with its unit', () => {
    const working = showWorking('farEndFaultCurrent', {
      supplyVoltage: 24,
      conductor: awg(18),
      length: 10,
      tripCurrent: 8,
      sourceResistance: 5,
    });
    expect(working.steps.find(({ symbol }) => symbol === 'L_max')).toMatchObject({
      formula: '0',
      substituted: '0 m',
      shown: '0 m',
      value: 0,
    });
    expect(workingText(working)).toContain('\n     L_max = 0 m\n');
    expect(workingLatex(working)).toContain('L_{\\max} &= 0\\,\\mathrm{m}\n\\end{align*}');
    expect(workingMarkdown(working)).toContain('   L_{\\max} &= 0\\,\\mathrm{m}\n   \\end{aligned}');
  });

  test('has no largest', () => {
    const conductors = { '1,2': [9, 9], '3,6': [9.1, 9.1] } as const;
    const bias = (pairs: Parameters<typeof showWorking<'pairUnbalance'>>[1]['pairs']): string | undefined =>
      showWorking('pairUnbalance', { poeClass: 4, pairs }).steps.find(({ symbol }) => symbol === 'B_most')?.meaning;
    expect(bias(conductors)).toBe('largest bias current of a pair');
    expect(bias({ ...conductors, '3,6': [9.1, 9.3] })).toBe('largest bias current of a pair: that of pair 3,6 (negative)');
  });
});

describe('where a given comes from', () => {
  const sourceOf = (working: ReturnType<typeof showWorking>, symbol: string): string | undefined =>
    working.givens.find((given) => given.symbol === symbol)?.source;

  test('a conductor by its gauge, and one by its data sheet', () => {
    const gauge = showWorking('loopResistance', { conductor: awg(24), length: 10 });
    expect([sourceOf(gauge, 'r_20'), sourceOf(gauge, 'alpha'), sourceOf(gauge, 'L')]).toEqual(['astm-b258', 'iec-60028', undefined]);
    const sheet = showWorking('loopResistance', { conductor: conductorFromResistance({ ohmsPerKilometre: 96 }), length: 10 });
    expect(sourceOf(sheet, 'r_20')).toBe('data-sheet');
  });

  test('each piece of a run, and a connection only if none was stated', () => {
    const segments = [
      { cable: cable('cat5e'), length: 90 },
      { cable: cable('cord-26'), length: 5 },
    ];
    const working = showWorking('runResistance', { segments, connections: 2 });
    expect(sourceOf(working, 'r20_1')).toBe(cable('cat5e').source);
    expect(sourceOf(working, 'r20_2')).toBe(cable('cord-26').source);
    expect(sourceOf(working, 'R_c')).toBe('tia-568.2-d-connection');
    expect(sourceOf(showWorking('runResistance', { segments, connections: 2, connectionResistance: 0.1 }), 'R_c')).toBeUndefined();
    expect(sourceOf(showWorking('runResistance', { segments, basis: 'nominal' }), 'r20_1')).toBe('astm-b258');
  });

  test('a column has the source of each of its rows', () => {
    const { tables } = showWorking('expectedReading', {
      installed: [{ cable: cable('cat5e'), length: 50 }],
      cords: [{ cable: cable('cord-26'), length: 5 }],
      connections: 2,
    });
    const column = tables[0]?.columns.find(({ symbol }) => symbol === 'rm_k');
    expect(column?.sources).toEqual([cable('cat5e').source, cable('cord-26').source]);
    expect(tables[0]?.columns.find(({ symbol }) => symbol === 'L_k')?.sources).toEqual([]);
  });
});

describe('what was not stated is said', () => {
  const segments = [{ cable: cable('cat5e'), length: 90 }];

  test('connections', () => {
    expect(showWorking('runResistance', { segments }).assumptions).toContain('There are no connections: none were stated.');
    const { assumptions } = showWorking('runResistance', { segments, connections: 2 });
    expect(assumptions.join()).toContain('0.2 Ω in each conductor');
    expect(showWorking('runResistance', { segments, connections: 2, connectionResistance: 0.1 }).assumptions.join()).not.toContain(
      'connection',
    );
  });

  test('air and rating of a bundle under a code', () => {
    const bundle = { code: 'NEC 2017', gauge: 23, bundle: 7 } as const;
    expect(showWorking('ampacity', bundle).assumptions).toEqual(
      expect.arrayContaining(['The air is at 30 °C: no temperature was stated.', 'Cable rated for 60 °C: no rating was stated.']),
    );
    expect(showWorking('ampacity', { ...bundle, ambient: 30, temperatureRating: 60 }).assumptions.join()).not.toContain('was stated');
  });
});

describe('what comes of it', () => {
  test('a class that does not cover the run is seen: 25.5 W behind 20 ohm at 50 V take 35.69 W, and class 4 has 30', () => {
    const { steps, result } = showWorking('psePowerFor', { poeClass: 4, resistance: 20 });
    expect(steps.find(({ symbol }) => symbol === 'P_left')).toMatchObject({ shown: '-5.690 W' });
    expect(result).toMatchObject({ symbol: 'P_PSE', shown: '35.69 W' });
  });

  test('what is available beyond the draw', () => {
    const left = (resistance: number, pdPower?: number): number | undefined =>
      showWorking('powerAtPd', { poeClass: 4, resistance, ...(pdPower === undefined ? {} : { pdPower }) }).steps.find(
        ({ symbol }) => symbol === 'P_left',
      )?.value;
    // IEEE 802.3: at the worst channel of 12.5 ohm class 4 has 25.5 W, all that its device may draw.
    expect(left(12.5)).toBeCloseTo(0, 12);
    expect(left(12.5, 20)).toBeCloseTo(5.5, 12);
  });

  test('a reading gives a length between two ends', () => {
    const working = showWorking('fromMeasurement', { pairs: { '1,2': 14.1 }, cable: cable('cat5e'), scope: 'cable' });
    const { range, result } = working;
    expect([range?.low.symbol, range?.high.symbol, result.symbol]).toEqual(['L_l', 'L_h', 'L_h']);
    expect(workingText(working)).toContain('Result  length of the cable: between L_l ≈ 75.16 m and L_h ≈ 87.20 m');
    const inLatex = ': between $L_{l} \\approx 75.16\\,\\mathrm{m}$ and $L_{h} \\approx 87.20\\,\\mathrm{m}$';
    expect(workingMarkdown(working)).toContain(`**Result.** Length of the cable${inLatex}`);
    expect(workingLatex(working)).toContain(`\\textbf{Result.} Length of the cable${inLatex}`);
  });

  test('where a table has no figure, nothing else is the result', () => {
    const working = showWorking('ampacity', { code: 'NEC 2017', gauge: 25, bundle: 7 });
    expect(working).toMatchObject({ feasible: false, isPlainNo: true });
    for (const page of [workingText(working), workingMarkdown(working), workingLatex(working)]) {
      expect(page).toContain('the table has no figure for 25 AWG in a bundle of 7');
      expect(page).not.toContain('Result');
    }
  });

  test('the category of a bundle is named', () => {
    // 212 and 500 mA (EN 50174-2, from memory).
    const meaning = (current: number): string => showWorking('remotePowering', { conductorCurrents: [current, current] }).result.meaning;
    expect([0, 0.212, 0.213, 0.5, 0.501].map(meaning)).toEqual([
      'mean current of every conductor: none carries any, which is category RP1',
      'mean current of every conductor: category RP1',
      'mean current of every conductor: category RP2',
      'mean current of every conductor: category RP2',
      'mean current of every conductor: beyond category RP2',
    ]);
  });
});
