import { build } from 'esbuild';
import katex from 'katex';
import { describe, expect, test } from 'vitest';
import { cable } from '../../../src/cable/cable.ts';
import { runResistance } from '../../../src/cable/run-resistance.ts';
import { awg } from '../../../src/conductor/awg.ts';
import { source } from '../../../src/sources/source.ts';
import { sheets } from '../../../src/working/book/sheets.ts';
import { showWorking, type Working, workingLatex, workingMarkdown, workingText } from '../../../src/working/index.ts';
import { as, expectInputError } from '../../helpers/expectations.ts';
import { seeded } from '../../helpers/random.ts';
import { NAMES, questionOf } from '../../helpers/random-workings.ts';
import { ROOT } from '../../support/files.ts';

const samples = (name: (typeof NAMES)[number], count: number): Working[] => {
  const random = seeded(21);
  return Array.from({ length: count }, () => showWorking(name, questionOf(name, random)));
};

describe('one working, line by line', () => {
  const working = showWorking('powerAtPd', { poeClass: 4, resistance: 12.5 });

  test('a class 4 device at its worst: 0.6 A, 42.5 V, 30 W at the port (IEEE 802.3 class table)', () => {
    const figure = (core: string): number | undefined => working.results.find((result) => result.core === core)?.value;
    expect(figure('totalCurrent')).toBe(0.6);
    expect(figure('operating.loadVoltage')).toBe(42.5);
    expect(figure('operating.supplyPower')).toBe(30);
    expect(working.result).toMatchObject({ symbol: 'P_av', value: 25.5, unit: 'W', shown: '25.5 W', core: 'available' });
  });

  test('each step has its formula, the figures in it, the result, and the rule', () => {
    expect(working.steps.find(({ symbol }) => symbol === 'D')).toMatchObject({
      formula: 'V^2 - 4 * P * R',
      substituted: '(50 V)^2 - 4 * 25.5 W * 12.5 Ω',
      shown: '1225 V²',
      rounded: false,
      source: 'constant-power',
    });
    expect(working.steps.find(({ symbol }) => symbol === 'I_PSE')).toMatchObject({ substituted: '30 W / (50 V)' });
  });

  test('says what it is about and what it takes for granted', () => {
    expect(working).toMatchObject({ name: 'powerAtPd', title: 'Power at a powered device', feasible: true });
    expect(working.assumptions).toContain('The port is of Type 2, the weakest that serves class 4.');
  });
});

describe('edges', () => {
  test('a run that was measured, its pairsets unlike: the loop of both is taken as it is', () => {
    const resistance = { ...runResistance({ segments: [{ cable: cable('cat6'), length: 30 }] }), fourPair: 1.2 };
    const working = showWorking('powerAtPd', { poeClass: 8, resistance, pseVoltage: 54, pdPower: 60 });
    expect(working.givens.find(({ symbol }) => symbol === 'R')?.value).toBe(1.2);
    expect(working.givens.some(({ symbol }) => symbol === 'R_w')).toBe(false);
  });

  test('a device that draws nothing at a supply below what it needs: no length, and the two voltages say why', () => {
    const line = { supplyVoltage: 24, conductor: awg(22), minimumVoltage: 25 };
    for (const load of [{ power: 0 }, { current: 0 }]) {
      const working = showWorking('maximumRun', { ...line, load });
      expect(working.no).toBe('no length meets the limit on the stated lowest voltage: the length plays no part in it');
      expect(working.result).toMatchObject({ value: -1, unit: 'V' });
    }
    const idle = { cable: cable('cat5e'), poeClass: 1, pdPower: 0, pseVoltage: 30 } as const;
    expect(showWorking('maximumRun', idle)).toMatchObject({ feasible: false, result: { unit: 'V' } });
  });

  test('a number with a power of ten is bracketed before it is raised', () => {
    const working = showWorking('filmCoefficient', { diameter: 1000, surfaceTemperature: 60, ambient: 20 });
    expect(working.steps.find(({ symbol }) => symbol === 'N_Ra')?.value).toBeGreaterThan(1e9);
    for (const { latex } of working.steps) katex.renderToString(latex.substituted, { throwOnError: true, strict: 'error' });
    expect(working.steps.find(({ symbol }) => symbol === 'N_Nu')?.latex.substituted).toMatch(/\\right\)\^\{\\frac\{1\}\{6\}\}/);
  });
});

describe('a physical no', () => {
  test('is the step before any root, and the figure that explains it is the last', () => {
    const working = showWorking('operatingPoint', { supplyVoltage: 50, resistance: 12.5, load: { power: 50.1 } });
    expect(working).toMatchObject({ feasible: false, no: 'the line cannot carry the load: there is no such current' });
    expect(working.steps.map(({ symbol }) => symbol)).toEqual(['D', 'P_max']);
    expect(working.result).toMatchObject({ value: 50, unit: 'W' });
    for (const page of [workingText(working), workingMarkdown(working), workingLatex(working)])
      expect(page).toContain('No: the line cannot');
  });

  test('just at the limit there is an answer', () => {
    expect(showWorking('operatingPoint', { supplyVoltage: 50, resistance: 12.5, load: { power: 50 } })).toMatchObject({
      feasible: true,
      result: { value: 25, unit: 'V' },
    });
  });

  test('a current that not even a short takes', () => {
    const working = showWorking('operatingPoint', { supplyVoltage: 24, resistance: 2, load: { current: 13 } });
    expect(working).toMatchObject({ feasible: false, result: { core: 'maximumCurrent', value: 12, unit: 'A' } });
  });

  test('no length at all, and no limit at all', () => {
    const common = { supplyVoltage: { low: 21, high: 28 }, conductor: awg(18), load: { power: 6 } } as const;
    expect(showWorking('maximumRun', { ...common, minimumVoltage: 22 })).toMatchObject({
      feasible: false,
      no: 'no length meets the limit on the stated lowest voltage: even a run of none misses it',
    });
    expect(showWorking('maximumRun', { ...common, load: { power: 0 } })).toMatchObject({
      feasible: false,
      no: 'nothing bounds the length of this run',
    });
  });
});

describe('a wrong question', () => {
  test('an unknown name, also one that every object has', () => {
    expectInputError(() => showWorking(as<'awg'>('ohmsLaw'), as({})), 'name', 'unknown');
    expectInputError(() => showWorking(as<'awg'>('constructor'), as({})), 'name', 'unknown');
    expectInputError(() => showWorking(as<'awg'>(undefined), as({})), 'name', 'missing');
  });

  test('what the core refuses', () => {
    expectInputError(() => showWorking('loopResistance', as({ conductor: awg(24) })), 'length', 'missing');
    expectInputError(() => showWorking('awg', { size: 41 }), 'size', 'range');
    expectInputError(() => showWorking('mostPower', { supplyVoltage: 24, resistance: 0, load: { power: 1 } }), 'resistance', 'range');
    expectInputError(() => showWorking('switchBudget', as({ capacity: 60, basis: 'guessed', ports: [] })), 'basis', 'unknown');
  });

  test.each(NAMES)('%s: nothing where an object should be', (name) => {
    for (const input of [undefined, null, 7, []]) expectInputError(() => showWorking(name, as(input)), 'input');
  });

  test('does not compile', () => {
    // @ts-expect-error a name that there is not
    expect(() => showWorking('ohmsLaw', {})).toThrow();
    // @ts-expect-error a given that is missing
    expect(() => showWorking('loopResistance', { conductor: awg(24) })).toThrow();
    // @ts-expect-error the input of another calculation
    expect(() => showWorking('awg', { supplyVoltage: 24, resistance: 1, load: { power: 1 } })).toThrow();
  });
});

describe.each(NAMES)('the sheet %s', (name) => {
  test('names each figure once, and each has words, a unit and LaTeX of its own', () => {
    for (const { givens, steps, results } of samples(name, 20)) {
      const cores = results.map(({ core }) => core);
      expect(cores.filter((core, index) => cores.indexOf(core) !== index)).toEqual([]);
      const symbols = [...givens, ...steps].map(({ symbol }) => symbol);
      expect(new Set(symbols).size).toBe(symbols.length);
      for (const { symbol, meaning, latex } of [...givens, ...steps]) {
        expect(symbol).toMatch(/^[A-Za-z]\w*$/);
        expect(meaning).not.toMatch(/[#@]/);
        expect(latex.symbol).not.toMatch(/\\_|#/);
        // Italic, as symbols are: a letter, or a Greek one, and only what stands under it may be upright.
        expect(latex.symbol).toMatch(/^(?:[A-Za-z]|\\(?:alpha|epsilon|mu|nu|rho|sigma|theta))(?:_\{.+\})?$/);
      }
    }
  });

  test('every rule and every table has its source', () => {
    for (const { givens, steps } of samples(name, 20)) {
      for (const { source: key } of [...givens, ...steps]) if (key !== undefined) expect(source(key).title).not.toBe('');
      for (const step of steps) expect(step.source).toBeDefined();
    }
  });

  test('fits 80 columns', () => {
    for (const working of samples(name, 60)) {
      const text = workingText(working);
      expect(text.endsWith('\n')).toBe(true);
      for (const line of text.split('\n')) expect([...line].length, line).toBeLessThanOrEqual(80);
      expect(text).toContain(working.result.shown);
    }
  });

  test('KaTeX reads every formula of its LaTeX and of its Markdown', () => {
    let read = 0;
    for (const working of samples(name, 15)) {
      const latex = workingLatex(working);
      const markdown = workingMarkdown(working);
      const displays = [
        ...[...latex.matchAll(/\\begin\{align\*\}[\s\S]*?\\end\{align\*\}/g)].map(([all]) => all),
        ...[...markdown.matchAll(/\$\$([\s\S]*?)\$\$/g)].map(([, inner = '']) => inner),
      ];
      const inline = [...latex.matchAll(/\$([^$]+)\$/g), ...markdown.replaceAll(/\$\$[\s\S]*?\$\$/g, '').matchAll(/\$([^$]+)\$/g)];
      for (const formula of displays)
        read += katex.renderToString(formula, { displayMode: true, throwOnError: true, strict: 'error' }).length;
      for (const [, formula = ''] of inline) read += katex.renderToString(formula, { throwOnError: true, strict: 'error' }).length;
      expect(displays).toHaveLength(2 * working.steps.filter(({ table }) => table === undefined).length);
      expect(`${latex}${markdown}`).not.toMatch(/undefined|NaN/);
      // LaTeX of any age reads ASCII; a list of nothing is an error, and a bare sign too.
      expect(latex).toMatch(/^[\n -~]*$/);
      expect(latex).not.toMatch(/\\begin\{itemize\}\n\\end/);
      expect(latex.replaceAll(/\$[^$]*\$|\\begin\{align\*\}[\s\S]*?\\end\{align\*\}|\\./g, '')).not.toMatch(/[_^#%~]/);
    }
    expect(read).toBeGreaterThan(1000);
  });

  test('is what the type says it is', () => {
    expect(sheets[name].validity).not.toBe('');
    expect(sheets[name].title).not.toBe('');
  });
});

describe('nobody pays for mathjs who does not ask for it', () => {
  const reached = async (entry: string): Promise<string[]> => {
    const { metafile } = await build({
      entryPoints: [`${ROOT}/${entry}`],
      bundle: true,
      packages: 'external',
      platform: 'node',
      format: 'esm',
      write: false,
      metafile: true,
      logLevel: 'silent',
    });
    return Object.values(metafile.outputs).flatMap(({ imports }) => imports.map(({ path }) => path));
  };

  test('farend and farend/schedule do not reach it; farend/working does', async () => {
    expect(await reached('src/index.ts')).toEqual([]);
    expect((await reached('src/schedule/index.ts')).filter((path) => path.includes('mathjs'))).toEqual([]);
    expect((await reached('src/working/index.ts')).filter((path) => path.includes('mathjs'))).not.toEqual([]);
  });
});

test('a half of the last place that is shown goes up: 328.15 K is 328.2 K', () => {
  const { steps } = showWorking('filmCoefficient', { diameter: 60, surfaceTemperature: 55, ambient: 45 });
  expect(steps.find(({ symbol }) => symbol === 'T_h')).toMatchObject({ value: 328.15, shown: '328.2 K', rounded: true });
  expect(steps.find(({ symbol }) => symbol === 'T_w')).toMatchObject({ value: 318.15, shown: '318.2 K' });
});
