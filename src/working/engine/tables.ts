/** Lists of a sheet as tables, and the passes by which a figure was found. @module */

import { latexNumber, shownNumber } from './figures.ts';
import { formulaOf, written } from './formula.ts';
import type { Givens, ReadingPasses, SheetFigure, SheetGiven, SheetStep, Steps, TableRow } from './sheet.ts';
import type { WorkedGiven, WorkedStep } from './worked.ts';
import type { WorkingCell, WorkingColumn, WorkingTable } from './working.ts';

/** What a table stands for until its rows are numbered. */
const ROW = 'k';

/** The rows of the lists of a table, each figure in the column of its template; nothing where the lists are empty. */
export function tableOf(
  [title, row, ...lists]: TableRow,
  sheet: { readonly givens: Givens; readonly steps: Steps },
  figures: readonly (WorkedGiven | WorkedStep)[],
): WorkingTable | undefined {
  const own = figures.filter(({ each }) => each !== undefined && lists.includes(each));
  if (own.length === 0) return undefined;
  const isUsed = ({ symbol, each }: SheetFigure, isStep: boolean): boolean =>
    lists.includes(each ?? '') && own.some((figure) => figure.template === symbol && 'formula' in figure === isStep);
  const items = [...sheet.givens.filter((item) => isUsed(item, false)), ...sheet.steps.filter((item) => isUsed(item, true))];
  const templates = [...new Set(items.map(({ symbol }) => symbol))];
  const numbers = [...new Set(own.map(({ number = 0 }) => number))].sort((a, b) => a - b);
  const latexOf = new Map([...sheet.givens, ...sheet.steps].map(({ symbol, latex }) => [general(symbol), general(latex)]));
  return {
    title,
    row,
    columns: templates.map((template) => {
      const figures = own.filter((figure) => figure.template === template);
      return columnOf(figures, items, latexOf);
    }),
    rows: numbers.map((number) => ({
      label: own.find((figure) => figure.number === number)?.label ?? '',
      cells: templates.map((template) => {
        const figure = own.find((one) => one.number === number && one.template === template);
        return figure === undefined ? null : cellOf(figure.value, false);
      }),
    })),
  };
}

/** The passes, as they are. */
export function passesTable({ title, says, columns, rows }: ReadingPasses): WorkingTable {
  return {
    title,
    says,
    row: 'pass',
    columns: columns.map(({ symbol, meaning, unit, latex }) => ({ symbol, meaning, unit, sources: [], latex: { symbol: latex } })),
    rows: rows.map(({ label, values }) => ({ label, cells: values.map((value) => cellOf(value, true)) })),
  };
}

/** The column of a figure, its formula as it reads in any row: one that is given in some rows and computed in others has it too. */
function columnOf(
  own: readonly (WorkedGiven | WorkedStep)[],
  items: readonly (SheetGiven | SheetStep)[],
  latexOf: ReadonlyMap<string, string>,
): WorkingColumn {
  const figure = (own.find((one) => 'formula' in one) ?? own[0]) as WorkedGiven | WorkedStep;
  const { template, unit, when } = figure;
  const item = items.find((one) => one.symbol === template && one.when === when && 'formula' in one === 'formula' in figure) as SheetFigure;
  const common = {
    symbol: general(template),
    // The label of a row stands in the row.
    meaning: general(item.meaning).replace(/^@[:,] /, ''),
    unit,
    sources: [...new Set(own.flatMap(({ source }) => (source === undefined ? [] : [source])))],
  };
  if (!('formula' in figure)) return { ...common, latex: { symbol: general(item.latex) } };
  return { ...common, ...formulaIn(item as SheetStep, latexOf) };
}

function formulaIn(
  { formula, latex, general: spelt }: SheetStep,
  latexOf: ReadonlyMap<string, string>,
): Pick<WorkingColumn, 'formula' | 'latex'> {
  if (spelt !== undefined) return { formula: spelt.formula, latex: { symbol: general(latex), formula: spelt.latex } };
  const { node } = formulaOf(general(formula));
  const print = (tex: boolean): string =>
    written(node, { tex, symbol: (name) => (tex ? (latexOf.get(name) ?? name) : name), isCompound: () => false });
  return { formula: print(false), latex: { symbol: general(latex), formula: print(true) } };
}

function general(text: string): string {
  return text.replaceAll('#', ROW);
}

function cellOf(value: number, isFine: boolean): WorkingCell {
  return { value, shown: shownNumber(value, isFine), latex: latexNumber(value, isFine) };
}
