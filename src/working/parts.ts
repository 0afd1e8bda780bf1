/** A working in the order in which it is read: tables where their figures come up, steps between them. @module */
import { source } from '../sources/source.ts';
import type { Working, WorkingColumn, WorkingGiven, WorkingStep, WorkingTable } from './working.ts';

/** One thing to read: a step, or a table. */
export type Part = { readonly step: WorkingStep; readonly table?: undefined } | { readonly table: WorkingTable; readonly step?: undefined };

/** Tables of givens and passes first, then the steps; of steps that stand in a table, the table, once. @internal */
export function partsOf({ steps, tables }: Working): Part[] {
  const parts: Part[] = [];
  const begun = new Set<number>();
  const later = new Set(steps.map(({ table }) => table));
  const begin = (index: number): void => {
    const table = tables[index];
    if (table === undefined || begun.has(index)) return;
    begun.add(index);
    parts.push({ table });
  };
  for (const index of tables.keys()) if (!later.has(index)) begin(index);
  for (const step of steps) {
    if (step.table === undefined) parts.push({ step });
    else begin(step.table);
  }
  return parts;
}

/** What is said above the working, where any figure was rounded to be shown. @internal */
export const DIGITS_NOTE =
  'Figures are shown to four digits, but each line is worked with all of them: the last digit of a line reworked from the page may differ.';

/** Whether any figure was rounded to be shown. @internal */
export function hasRounded({ givens, steps }: Working): boolean {
  return [...givens, ...steps].some(({ rounded }) => rounded);
}

/** The ends of the answer: one figure, or two; none where the words of a no say it all. @internal */
export function resultsOf({ steps, range, isPlainNo }: Working): { readonly meaning: string; readonly steps: readonly WorkingStep[] } {
  if (range !== undefined) return { meaning: range.meaning, steps: [range.low, range.high] };
  const last = steps.at(-1);
  return last === undefined || isPlainNo === true ? { meaning: '', steps: [] } : { meaning: last.meaning, steps: [last] };
}

/** Formula, figures and result, of which one that says no more than the one before it is left out. @internal */
export function relationsOf(step: WorkingStep, tex: boolean): readonly { readonly sign: string; readonly text: string }[] {
  const { formula, substituted } = tex ? step.latex : step;
  const shown = tex ? step.latex.value : step.shown;
  const approximate = step.rounded ? (tex ? '\\approx' : '≈') : '=';
  // Of a plain 0 there is no formula to show.
  return [...(formula === '0' ? [] : [formula]), substituted, shown]
    .map((text) => ({ sign: text === shown ? approximate : '=', text }))
    .filter(({ text }, index, all) => text !== all[index - 1]?.text);
}

/** The givens that stand on their own. @internal */
export function listedGivens({ givens }: Working): WorkingGiven[] {
  return givens.filter(({ table }) => table === undefined);
}

/** Where the columns of a table come from, each once. @internal */
export function ruleTitles(columns: readonly WorkingColumn[]): string[] {
  return [...new Set(columns.flatMap(({ sources }) => sources.map((key) => source(key).title)))];
}
