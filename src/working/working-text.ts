/** A worked example as plain text. @module */
import { source } from '../sources/source.ts';
import type { SourceKey } from '../sources/sources.ts';
import { listedGivens, partsOf } from './parts.ts';
import { tableLines } from './table-text.ts';
import type { Working, WorkingStep } from './working.ts';
import { wrapped } from './wrapped.ts';

/**
 * A worked example as plain text of at most 80 columns.
 *
 * Of each step: what it is, the formula, the figures in it, the result (`≈` where it was rounded to be shown), and where
 * the rule comes from; the sources in full at the end.
 *
 * @param working - What {@link showWorking} returned.
 * @returns The text, ending with a line feed.
 * @example
 * workingText(showWorking('uniformWire', { resistivity: 0.0172, length: 20, area: 3.31 })).split('\n')[11]; // => '       = 0.0172 Ω·mm²/m · 20 m / (3.31 mm²)'
 */
export function workingText(working: Working): string {
  const { title, no, result, assumptions, validity, cautions } = working;
  const givens = listedGivens(working);
  const lines: string[] = [title, '='.repeat(title.length), ''];
  if (givens.length > 0) lines.push('Given');
  const symbolWidth = Math.max(...givens.map(({ symbol }) => symbol.length), 1);
  const figureWidth = Math.max(...givens.map(({ shown }) => shown.length), 1);
  for (const { symbol, shown, meaning } of givens) {
    const head = `  ${symbol.padEnd(symbolWidth)} = ${shown.padEnd(figureWidth)}  `;
    lines.push(...wrapped(meaning, head, ' '.repeat(head.length)));
  }
  lines.push(...(givens.length > 0 ? [''] : []), 'Working');
  for (const [index, { step, table }] of partsOf(working).entries()) {
    lines.push(...(step === undefined ? tableLines(table, index + 1) : stepLines(step, index + 1)), '');
  }
  if (no !== undefined) lines.push(...wrapped(`No: ${no}.`, '', '    '));
  lines.push(...wrapped(`${result.meaning}: ${result.symbol} = ${result.shown.replaceAll(' ', '\u00a0')}`, 'Result  ', '        '));
  lines.push('', 'Taken for granted', ...[...assumptions, validity].flatMap((text) => wrapped(text, '  - ', '    ')));
  if (cautions.length > 0) lines.push('', 'Caution', ...cautions.flatMap((text) => wrapped(text, '  - ', '    ')));
  lines.push('', 'Sources');
  for (const key of sourcesOf(working)) {
    const { title: document, locus, status } = source(key);
    lines.push(...wrapped(`${document}: ${locus} (${status})`, '  - ', '    '));
  }
  return `${lines.map((line) => line.replaceAll('\u00a0', ' ').trimEnd()).join('\n')}\n`;
}

function stepLines(step: WorkingStep, number: number): string[] {
  const { symbol, meaning, formula, substituted, shown, rounded, source: key } = step;
  const lead = ' '.repeat(5);
  const under = `${lead}${' '.repeat(symbol.length)}`;
  const dotted = (text: string): string => text.replaceAll(' * ', ' · ');
  return [
    ...wrapped(meaning, `  ${number}. `.padEnd(5), lead),
    ...wrapped(dotted(formula), `${lead}${symbol} = `, `${under}   `),
    ...wrapped(dotted(substituted), `${under} = `, `${under}   `),
    `${under} ${rounded ? '≈' : '='} ${shown}`,
    ...wrapped(source(key).title, `${lead}from `, `${lead}     `),
  ];
}

/** The sources of a working, each once, in the order in which they are met. @internal */
export function sourcesOf({ givens, steps }: Working): SourceKey[] {
  const keys = [...givens, ...steps].flatMap((figure) => (figure.source === undefined ? [] : [figure.source]));
  return [...new Set(keys)];
}
