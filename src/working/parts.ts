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

/** The givens that stand on their own. @internal */
export function listedGivens({ givens }: Working): WorkingGiven[] {
  return givens.filter(({ table }) => table === undefined);
}

/** Where the columns of a table come from, each once. @internal */
export function ruleTitles(columns: readonly WorkingColumn[]): string[] {
  return [...new Set(columns.flatMap(({ source: key }) => (key === undefined ? [] : [source(key).title])))];
}
