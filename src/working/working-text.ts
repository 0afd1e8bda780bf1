/** A worked example as plain text. @module */
import { source } from '../sources/source.ts';
import type { SourceKey } from '../sources/sources.ts';
import { DIGITS_NOTE, hasRounded, listedGivens, partsOf, relationsOf, resultsOf } from './parts.ts';
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
 * workingText(showWorking('uniformWire', { resistivity: 0.0172, length: 20, area: 3.31 })).split('\n')[14]; // => '       = 0.0172 Ω·mm²/m · 20 m / (3.31 mm²)'
 */
export function workingText(working: Working): string {
  const { title, no, assumptions, validity, cautions } = working;
  const givens = listedGivens(working);
  const lines: string[] = [title, '='.repeat(title.length), ''];
  if (givens.length > 0) lines.push('Given');
  const symbolWidth = Math.max(...givens.map(({ symbol }) => symbol.length), 1);
  const figureWidth = Math.max(...givens.map(({ shown }) => shown.length), 1);
  for (const { symbol, shown, meaning, rounded } of givens) {
    const head = `  ${symbol.padEnd(symbolWidth)} ${rounded ? '≈' : '='} ${shown.padEnd(figureWidth)}  `;
    lines.push(...wrapped(meaning, head, ' '.repeat(head.length)));
  }
  lines.push(...(givens.length > 0 ? [''] : []), 'Working');
  if (hasRounded(working)) lines.push(...wrapped(DIGITS_NOTE, '  ', '  '), '');
  for (const [index, { step, table }] of partsOf(working).entries()) {
    lines.push(...(step === undefined ? tableLines(table, index + 1) : stepLines(step, index + 1)), '');
  }
  if (no !== undefined) lines.push(...wrapped(`No: ${no}.`, '', '    '));
  const result = resultsOf(working);
  const ends = result.steps.map(({ symbol, shown, rounded }) => `${symbol} ${rounded ? '≈' : '='} ${shown}`.replaceAll(' ', '\u00a0'));
  const lead = ends.length > 1 ? 'between ' : '';
  if (ends.length > 0) lines.push(...wrapped(`${result.meaning}: ${lead}${ends.join(' and ')}`, 'Result  ', '        '));
  lines.push('', 'Assumed', ...[...assumptions, validity].flatMap((text) => wrapped(text, '  - ', '    ')));
  if (cautions.length > 0) lines.push('', 'Caution', ...cautions.flatMap((text) => wrapped(text, '  - ', '    ')));
  lines.push('', 'Sources');
  for (const key of sourcesOf(working)) {
    const { title: document, locus, status } = source(key);
    lines.push(...wrapped(`${document}: ${locus} (${status})`, '  - ', '    '));
  }
  return `${lines.map((line) => line.replaceAll('\u00a0', ' ').trimEnd()).join('\n')}\n`;
}

function stepLines(step: WorkingStep, number: number): string[] {
  const { symbol, meaning, source: key } = step;
  const lead = ' '.repeat(5);
  const under = `${lead}${' '.repeat(symbol.length)}`;
  const dotted = (text: string): string => text.replaceAll(' * ', ' · ');
  return [
    ...wrapped(meaning, `${String(number).padStart(3)}. `, lead),
    ...relationsOf(step, false).flatMap(({ sign, text }, index) =>
      wrapped(dotted(text), `${index === 0 ? `${lead}${symbol}` : under} ${sign} `, `${under}   `),
    ),
    ...wrapped(source(key).title, `${lead}from `, `${lead}     `),
  ];
}

/** The sources of a working, each once, in the order in which they are met. @internal */
export function sourcesOf({ givens, steps }: Working): SourceKey[] {
  const keys = [...givens, ...steps].flatMap((figure) => (figure.source === undefined ? [] : [figure.source]));
  return [...new Set(keys)];
}
