/** The notation of the book: rows, cases, LaTeX of a symbol, names of cables. */
import { describe, expect, test } from 'vitest';
import { cable } from '../../../src/cable/cable.ts';
import { evaluateSheet } from '../../../src/working/engine/evaluate-sheet.ts';
import { type BookSheet, givens, sheetOf, steps } from '../../../src/working/engine/rows.ts';
import { texOf } from '../../../src/working/engine/tex-of.ts';
import { showWorking } from '../../../src/working/index.ts';

interface Wire {
  readonly ohms: number;
  readonly temperature?: number;
}

const wire: BookSheet<Wire, 'warm' | 'cold' | 'long'> = {
  title: 'A wire',
  givens: [
    ['R', 'Ω', 'resistance', 'ohms'],
    ['T', '°C', 'temperature', 'temperature', { value: 20, when: 'warm' }],
    ['T_most', '°C', 'the hottest', 'the domain', { value: 60, ifUsed: true }],
  ],
  steps: [
    ['X', 'Ω', '2 * R', 'out and back', { when: 'cold' }],
    steps([['X', 'Ω', '3 * R', 'out and back, long', { when: 'warm, long' }]]),
    ['D', 'K', 'T_most - T', 'left', { when: 'warm', no: { says: 'too hot', steps: [], isQuiet: true } }],
    ['Y', 'Ω', 'R', 'all of it'],
  ],
  assumptions: [],
  validity: '',
  slips: [],
  guard: () => undefined,
  read: ({ temperature = 20 }) => ({ cases: [temperature === 20 ? 'cold' : 'warm', 'long'] }),
};

const symbolsOf = (input: Wire): readonly (readonly string[])[] => {
  const sheet = sheetOf(wire);
  const { givens: given, steps: step, no } = evaluateSheet(sheet, { ...sheet.read(input, undefined), input });
  return [given.map(({ symbol }) => symbol), step.map(({ formula }) => formula), no === undefined ? [] : [no]];
};

describe('a sheet of rows', () => {
  test('reads a figure where the input has it, or takes its default; a case picks its rows', () => {
    expect(symbolsOf({ ohms: 2 })).toEqual([['R'], ['2 * R', 'R'], []]);
  });

  test('two cases must both apply, and a quiet step is shown only where it says no', () => {
    expect(symbolsOf({ ohms: 2, temperature: 50 })).toEqual([['R', 'T'], ['3 * R', 'R'], []]);
    expect(symbolsOf({ ohms: 2, temperature: 70 })).toEqual([['R', 'T', 'T_most'], ['3 * R', 'T_most - T'], ['too hot']]);
  });

  test('a case that is misspelt does not compile', () => {
    // @ts-expect-error: there is no such case
    const misspelt: BookSheet<Wire, 'warm'>['steps'] = [['X', 'Ω', 'R', 'out', { when: 'wram' }]];
    // @ts-expect-error: nor one of two
    const pair: BookSheet<Wire, 'warm' | 'long'>['steps'] = [['X', 'Ω', 'R', 'out', { when: 'warm, lnog' }]];
    // @ts-expect-error: nor in a group
    const group: BookSheet<Wire, 'warm'>['givens'] = [givens([['X', 'Ω', 'out', 'ohms', { when: 'wram' }]])];
    // @ts-expect-error: nor in what a reading says
    const read: BookSheet<Wire, 'warm'>['read'] = () => ({ cases: ['wram'] });
    expect([misspelt, pair, group].map(({ length }) => length)).toEqual([1, 1, 1]);
    expect(read({ ohms: 1 }, undefined)).toEqual({ cases: ['wram'] });
  });
});

test.each([
  ['P_PSE', 'P_{\\mathrm{PSE}}'],
  ['r20_#', 'r_{20,#}'],
  ['Ra_#', 'R_{a,#}'],
  ['P_max', 'P_{\\max}'],
  ['rho', '\\rho'],
  ['theta_s', '\\theta_{s}'],
  ['I_RP1', 'I_{\\mathrm{RP1}}'],
  ['V', 'V'],
])('%s is %s in LaTeX', (symbol, latex) => {
  expect(texOf(symbol)).toBe(latex);
});

test('a cable may be called by its name', () => {
  const rest = { poeClass: 4, temperature: 45 } as const;
  const named = showWorking('maximumRun', { ...rest, cable: 'cat6', cords: [{ cable: 'cord-26', length: 5 }] });
  expect(named).toEqual(showWorking('maximumRun', { ...rest, cable: cable('cat6'), cords: [{ cable: cable('cord-26'), length: 5 }] }));
});

describe('figures that the core has as well are reckoned', () => {
  test('the capacity of a switch from its supplies, the largest of two failed', () => {
    const ports = [{ port: 1, poeClass: 4 }] as const;
    const supplies = [{ power: 370 }, { power: 150 }, { power: 200 }];
    const { steps: lines } = showWorking('switchBudget', { supplies, failed: 1, systemLoad: 50, basis: 'class', ports });
    // 150 W and 200 W are left, less 50 W.
    expect(lines.find(({ symbol }) => symbol === 'C')?.value).toBeCloseTo(300, 9);
  });

  test('the length of a warm link: the table between 45 and 50 °C, against the percentage rule', () => {
    const { steps: lines } = showWorking('maximumRun', { cable: 'cat6', poeClass: 2, temperature: 48 });
    const of = (name: string): number | undefined => lines.find(({ symbol }) => symbol === name)?.value;
    // 81.7 m at 45 °C, 79.5 m at 50 °C; 0.4 % for each of 20 K and 0.6 % for each of 8 K.
    expect(of('L_t')).toBeCloseTo(81.7 - (2.2 * 3) / 5, 9);
    expect(of('k_s')).toBeCloseTo(1.128, 12);
    expect(of('L_p')).toBeCloseTo(90 / 1.128, 9);
  });

  test('what warm cords lose: 0.5 more for 26 AWG, and 0.4 % for each of 10 K', () => {
    const { steps: lines } = showWorking('maximumRun', {
      cable: 'cat6',
      poeClass: 2,
      cords: [{ cable: 'cord-26', length: 5, temperature: 30 }],
    });
    expect(lines.find(({ symbol }) => symbol === 'kc_1')?.value).toBeCloseTo(1.5 * 1.04, 12);
  });
});
