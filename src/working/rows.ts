/** Figures of a sheet, one a row: the notation in which a sheet is written. @module */
import type { SheetGiven, SheetStep } from './sheet.ts';
import type { WorkingUnit } from './working-unit.ts';

type More<Figure> = Partial<Omit<Figure, 'symbol' | 'unit' | 'meaning' | 'formula'>>;
export type GivenRow = readonly [symbol: string, unit: WorkingUnit, meaning: string, core: string, more?: More<SheetGiven>];
export type StepRow = readonly [symbol: string, unit: WorkingUnit, formula: string, meaning: string, more?: More<SheetStep>];

export function given(...[symbol, unit, meaning, core, more]: GivenRow): SheetGiven {
  return { symbol, unit, meaning, core, latex: texOf(symbol), ...more };
}
export function step(...[symbol, unit, formula, meaning, more]: StepRow): SheetStep {
  return { symbol, unit, formula, meaning, latex: texOf(symbol), source: 'circuit-laws', ...more };
}
export function givens(rows: readonly GivenRow[], all: More<SheetGiven> = {}): SheetGiven[] {
  return rows.map((row) => ({ ...all, ...given(...row), ...all, ...row[4] }));
}
export function steps(rows: readonly StepRow[], all: More<SheetStep> = {}): SheetStep[] {
  return rows.map((row) => ({ ...step(...row), ...all, ...row[4] }));
}

const GREEK = ['alpha', 'beta', 'epsilon', 'lambda', 'mu', 'nu', 'rho', 'sigma', 'tau', 'theta', 'kappa'];
const OPERATORS = ['max', 'min', 'lim'];

/** `P_PSE` is `P_{\mathrm{PSE}}`, `r20_#` is `r_{20,#}`, `Ra_#` is `R_{a,#}`, `rho` is `\rho`. */
export function texOf(symbol: string): string {
  const [head = '', ...rest] = symbol.split('_');
  const [, stem = head, digits = ''] = /^(\D+)(\d*)$/.exec(head) ?? [];
  const greek = GREEK.find((name) => stem.startsWith(name) && stem.length - name.length < 2);
  const letter = greek ?? stem.slice(0, /^[A-Za-z][a-z]$/.test(stem) ? 1 : undefined);
  const subs = [digits, stem.slice(letter.length), ...rest]
    .filter((part) => part !== '')
    .map((part) => (OPERATORS.includes(part) ? `\\${part}` : /^[A-Za-z]{2,}\d*$/.test(part) ? `\\mathrm{${part}}` : part));
  const base = greek === undefined ? letter : `\\${greek}`;
  return subs.length === 0 ? base : `${base}_{${subs.join(',')}}`;
}
