import { describe, expect, test } from 'vitest';
import { evaluateTo, formulaOf, measured, written } from '../../../src/working/engine/formula.ts';
import type { WorkingUnit } from '../../../src/working/engine/working-unit.ts';

const scope = {
  V: measured(50, 'V'),
  I: measured(0.6, 'A'),
  R: measured(12.5, 'Ω'),
  T: measured(45, '°C'),
  T_ref: measured(20, '°C'),
  A: measured(0.2, 'mm²'),
  n: 2,
};
const value = (formula: string, unit: WorkingUnit): number => evaluateTo(formulaOf(formula), scope, unit);

describe('a formula with units', () => {
  test('is a number of the declared unit', () => {
    expect(value('V * I', 'W')).toBe(30);
    expect(value('V / R', 'A')).toBe(4);
    expect(value('sqrt(V^2 - 4 * V * I * R)', 'V')).toBeCloseTo(Math.sqrt(1000), 12);
    expect(value('n * R', 'Ω')).toBe(25);
    expect(value('sqrt(4 * A / pi)', 'mm')).toBeCloseTo(0.5046, 4);
  });

  test('the least and the most of several, to the last bit and of one kind', () => {
    const close = {
      a: measured(1e-15, 'A'),
      b: measured(1.1e-15, 'A'),
      d: measured(3, 'mm'),
      l: measured(0.0031, 'm'),
      V: measured(1, 'V'),
    };
    expect(evaluateTo(formulaOf('max(a, b)'), close, 'A')).toBe(1.1e-15);
    expect(evaluateTo(formulaOf('min(l, d)'), close, 'mm')).toBe(3);
    expect(() => evaluateTo(formulaOf('max(a, V)'), close, 'A')).toThrow('is not of the kind of');
  });

  test('nothing is 0 and not -0', () => {
    expect(value('-(R - R)', 'Ω')).toBe(0);
  });

  test('the difference of two temperatures is a difference', () => {
    expect(value('T - T_ref', 'K')).toBe(25);
  });

  test('a symbol that is also a unit stands for the figure', () => {
    expect(value('V / 2', 'V')).toBe(25);
  });

  test.each<readonly [string, string, WorkingUnit]>([
    ['a power meant as a resistance', 'V * I', 'Ω'],
    ['a bare root', 'sqrt(V)', 'V'],
    ['the root of a negative number', 'sqrt(V * 0 * V - V^2)', 'V'],
    ['a number where a unit was declared', 'n', 'V'],
    ['a unit where a number was declared', 'V', '1'],
    ['volts and amperes added', 'V + I', 'V'],
    ['a division by nothing', 'V / (R - R)', 'A'],
    ['a unit that was not given, though mathjs knows it', 'V / ohm', 'A'],
    ['a symbol that was not given', 'V / R_L', 'A'],
  ])('%s is refused', (_what, formula, unit) => {
    expect(() => value(formula, unit)).toThrow();
  });

  test.each([
    ['a product without its sign', '2 R'],
    ['an assignment', 'R = 2'],
    ['a comparison', 'R > 2'],
    ['a conversion', 'R to kohm'],
    ['a function that is not among the few', 'sin(n)'],
    ['an index', 'R[1]'],
    ['a text', '"R"'],
  ])('%s is no formula of a sheet', (_what, formula) => {
    expect(() => {
      formulaOf(formula);
      evaluateTo(formulaOf(formula), scope, '1');
    }).toThrow();
  });
});

describe('a formula in writing', () => {
  const plain = (formula: string): string =>
    written(formulaOf(formula).node, { tex: false, symbol: (name) => `<${name}>`, isCompound: () => true });
  const tex = (formula: string): string =>
    written(formulaOf(formula).node, { tex: true, symbol: (name) => `${name}_{x}`, isCompound: () => true });

  test.each([
    ['a figure that is divided by stands in brackets', '1 / R', '1 / (<R>)', '\\frac{1}{R_{x}}'],
    ['so does one that is raised to a power', 'I^2 * R', '(<I>)^2 * <R>', '\\left(I_{x}\\right)^{2} \\cdot R_{x}'],
    [
      'brackets of the formula are kept',
      '(V - I) * (n / 2)',
      '(<V> - <I>) * (<n> / 2)',
      '\\left(V_{x} - I_{x}\\right) \\cdot \\left(\\frac{n_{x}}{2}\\right)',
    ],
    ['a fraction needs none', '(V - I) / (2 * R)', '(<V> - <I>) / (2 * <R>)', '\\frac{V_{x} - I_{x}}{2 \\cdot R_{x}}'],
    ['functions', 'min(V, sqrt(n))', 'min(<V>, sqrt(<n>))', '\\min\\left(V_{x}, \\sqrt{n_{x}}\\right)'],
    ['a number of mathematics', 'pi / 4', 'pi / 4', '\\frac{\\pi}{4}'],
    ['a sign', '-V', '-(<V>)', '-\\left(V_{x}\\right)'],
  ])('%s', (_what, formula, text, latex) => {
    expect(plain(formula)).toBe(text);
    expect(tex(formula)).toBe(latex);
  });
});

describe('nothing', () => {
  test('is a plain 0 in any unit', () => {
    expect(value('0', 'Ω')).toBe(0);
    expect(value('max(V - V - V, 0) / R', 'A')).toBe(0);
    expect(value('min(V, 0)', 'V')).toBe(0);
    expect(value('max(V, 0)', 'V')).toBe(50);
    expect(value('max(0, n)', '1')).toBe(2);
    expect(written(formulaOf('max(V, 0)').node, { tex: false, symbol: (name) => name, isCompound: () => false })).toBe('max(V, 0)');
  });

  test('but no other number without a unit is', () => {
    expect(() => value('max(V, 1)', 'V')).toThrow();
    expect(() => value('0 * n', 'V')).toThrow();
  });
});
