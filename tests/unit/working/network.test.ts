/** A small network as a worked example: passes, tables, rings, and what is no worked example. */
import { describe, expect, test } from 'vitest';
import type { NetworkInput } from '../../../src/circuit/network-problem.ts';
import { awg } from '../../../src/conductor/awg.ts';
import { reviewAnswer, showWorking, workingMarkdown, workingText } from '../../../src/working/index.ts';
import { expectInputError, expectPlain } from '../../helpers/expectations.ts';

const line: NetworkInput = {
  supplies: [{ at: 'rack', voltage: 24 }],
  sections: [
    { from: 'rack', to: 'left', resistance: 2 },
    { from: 'left', to: 'right', conductor: awg(18), length: 60 },
  ],
  taps: [
    { at: 'left', load: { power: 5 } },
    { at: 'right', load: { power: 5 } },
  ],
};
const ring: NetworkInput = {
  ...line,
  sections: [...line.sections, { from: 'right', to: 'rack', resistance: 5 }],
};

describe('a line with two taps', () => {
  const working = showWorking('solveNetwork', line);

  test('the passes start without load and end at the voltages of the table', () => {
    const [passes, table] = working.tables;
    expect(passes?.rows[0]?.cells.map((cell) => cell?.value)).toEqual([24, 24]);
    const last = passes?.rows.at(-1)?.cells.map((cell) => cell?.value) ?? [];
    const at = table?.columns.findIndex(({ symbol }) => symbol === 'V_k') ?? -1;
    // What was found, and what follows from the currents that it gives: the same.
    table?.rows.forEach(({ cells }, index) => {
      expect(cells[at]?.value).toBeCloseTo(last[index] as number, 12);
    });
  });

  test('what leaves the supply is what the taps and the sections take', () => {
    const value = (symbol: string): number => working.steps.find((step) => step.symbol === symbol)?.value ?? Number.NaN;
    expect(value('P_S') - value('P_loss')).toBeCloseTo(10, 10);
    expect(value('Is_1')).toBeCloseTo(value('It_1') + value('It_2'), 12);
  });

  test('a row of the table is a typed step with the figures in it', () => {
    const step = working.steps.find(({ symbol }) => symbol === 'Is_1');
    expect(step).toMatchObject({ formula: 'It_1 + Is_2', unit: 'A', core: 'currents[0]', table: 1 });
    expect(step?.substituted).toBe('0.2162 A + 0.2216 A');
  });

  test('is read as two tables, and is plain data', () => {
    const text = workingText(working);
    expect(text).toContain('Node voltages, pass by pass');
    expect(text).toContain('left to right');
    expect(text.match(/^ +rack to left/gm)).toHaveLength(2);
    expect(workingMarkdown(working)).toContain('| rack to left |');
    expectPlain(working);
  });

  test('the tap that was reckoned at the voltage of the supply is found', () => {
    // 5 W at 24 V is 0.2083 A a tap: 24 - 0.4167 · 2 - 0.2083 · 2.514 = 22.64.
    expect(reviewAnswer('solveNetwork', line, '22.64 V').slips.map(({ slip }) => slip)).toEqual(['power-at-wrong-end']);
    expect(reviewAnswer('solveNetwork', line, '22.57 V').verdict).toBe('right');
  });
});

describe('a ring', () => {
  test('is cut at its section of most resistance, whose current follows from its two voltages', () => {
    const working = showWorking('solveNetwork', ring);
    const step = working.steps.find(({ symbol }) => symbol === 'Ix_1');
    expect(step?.meaning).toContain('right to rack');
    expect(step?.formula).toBe('(W_2 - V0_1) / Rx_1');
    // Fed both ways, the far end stands higher.
    expect(working.result.value).toBeGreaterThan(showWorking('solveNetwork', line).result.value);
  });

  test('two supplies without a tap: what one gives the other takes', () => {
    const working = showWorking('solveNetwork', {
      supplies: [
        { at: 'a', voltage: 25 },
        { at: 'b', voltage: 24 },
      ],
      sections: [{ from: 'a', to: 'b', resistance: 2 }],
      taps: [],
    });
    expect(working.steps.find(({ symbol }) => symbol === 'Ix_1')?.value).toBe(0.5);
    expect(working.result.value).toBe(24);
  });
});

describe('no worked example', () => {
  test('what the network cannot carry, and the share of it that it can', () => {
    const working = showWorking('solveNetwork', { ...line, taps: line.taps.map(({ at }) => ({ at, load: { power: 50 } })) });
    expect(working.feasible).toBe(false);
    expect(working.no).toContain('cannot carry these loads');
    expect(working.result).toMatchObject({ symbol: 'P_most', unit: 'W' });
  });

  test('sections of no length: a bridge is shown, a ring of them is refused, and one back to its start carries nothing', () => {
    const bare = { from: 'rack', to: 'left', conductor: awg(18), length: 0 };
    const taps = [{ at: 'left', load: { current: 1 } }];
    const supplies = [{ at: 'rack', voltage: 24 }];
    expect(showWorking('solveNetwork', { supplies, sections: [bare], taps }).result.value).toBe(24);
    expectInputError(() => showWorking('solveNetwork', { supplies, sections: [bare, bare], taps }), 'sections[1].length', 'conflict');
    const loop = { from: 'left', to: 'left', resistance: 0 };
    const working = showWorking('solveNetwork', { supplies, sections: [{ from: 'rack', to: 'left', resistance: 1 }, loop], taps });
    expect(working.result.value).toBe(23);
  });

  test('a supply alone, and names with signs of other languages', () => {
    expect(showWorking('solveNetwork', { supplies: [{ at: 'rack', voltage: 24 }], sections: [], taps: [] }).result.value).toBe(24);
    const named = showWorking('solveNetwork', {
      supplies: [{ at: '$&', voltage: 24 }],
      sections: [{ from: '$&', to: 'road to $$ nowhere', resistance: 1 }],
      taps: [],
    });
    const far = 'camera-building-7-floor-2-north-corridor-by-the-second-door';
    const long = showWorking('solveNetwork', {
      supplies: [{ at: 'rack', voltage: 24 }],
      sections: [
        { from: 'rack', to: far, resistance: 1 },
        { from: 'rack', to: 'a $|b\nc', resistance: 1 },
      ],
      taps: [{ at: far, load: { power: 3 } }],
    });
    for (const text of workingText(long).split('\n')) expect([...text].length, text).toBeLessThanOrEqual(80);
    expect(workingText(long)).toContain('rack to a $|b c');
    // Escaped, a dollar begins no formula and a bar ends no cell.
    expect(workingMarkdown(long)).toContain('| rack to a \\$\\|b c |');
    expect(workingText(named)).toContain('voltage at road to $$ nowhere');
    expect(named.steps.find(({ symbol }) => symbol === 'Is_1')?.meaning).toContain('$& to road to $$ nowhere');
  });

  test('a network that is too large to read, and a ring of nothing', () => {
    const sections = Array.from({ length: 25 }, (_, index) => ({ from: index, to: index + 1, resistance: 1 }));
    expectInputError(() => showWorking('solveNetwork', { supplies: [{ at: 0, voltage: 24 }], sections, taps: [] }), 'sections', 'range');
    const bare = [
      { from: 'a', to: 'b', resistance: 0 },
      { from: 'b', to: 'a', resistance: 0 },
    ];
    expectInputError(
      () => showWorking('solveNetwork', { supplies: [{ at: 'a', voltage: 24 }], sections: bare, taps: [] }),
      'sections[1].resistance',
      'conflict',
    );
  });
});
