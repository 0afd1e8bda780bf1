/** A worked example in LaTeX, alone and within Markdown. @module */
import { source } from '../sources/source.ts';
import { cell, plain, sentence } from './latex-words.ts';
import { DIGITS_NOTE, hasRounded, listedGivens, partsOf, relationsOf, resultsOf } from './parts.ts';
import { tableLatex, tableMarkdown } from './table-latex.ts';
import type { Working, WorkingStep } from './working.ts';
import { sourcesOf } from './working-text.ts';

/**
 * A worked example as Markdown, its formulas in LaTeX between dollar signs.
 *
 * @param working - What {@link showWorking} returned.
 * @returns The Markdown, ending with a line feed.
 * @example
 * const page = workingMarkdown(showWorking('uniformWire', { resistivity: 0.0172, length: 20, area: 3.31 }));
 * page.includes('R &= \\frac{\\rho \\cdot L}{A} \\\\'); // => true
 */
export function workingMarkdown(working: Working): string {
  const { title, no, assumptions, validity, cautions } = working;
  const lines: string[] = [`### ${title}`, ''];
  const givens = listedGivens(working);
  if (givens.length > 0) lines.push('| given | | what it is |', '|---|---|---|');
  for (const { latex, meaning, rounded } of givens)
    lines.push(`| $${latex.symbol}$ | $${rounded ? '\\approx ' : ''}${latex.value}$ | ${cell(meaning)} |`);
  if (givens.length > 0) lines.push('');
  if (hasRounded(working)) lines.push(`*${DIGITS_NOTE}*`, '');
  for (const [index, { step, table }] of partsOf(working).entries()) {
    if (step === undefined) {
      lines.push(...tableMarkdown(table, index + 1));
      continue;
    }
    lines.push(`${index + 1}. ${cell(sentence(step.meaning))}`, '', '   $$', ...aligned(step).map((line) => `   ${line}`), '   $$', '');
    lines.push(`   *${source(step.source).title}*`, '');
  }
  if (no !== undefined) lines.push(`**No: ${cell(no)}.**`, '');
  if (resultsOf(working).steps.length > 0) lines.push(`**Result.** ${resultLatex(working, cell)}`, '');
  lines.push(
    'Assumed:',
    '',
    ...[...assumptions, validity].map((text) => `- ${text}`),
    ...cautions.map((text) => `- **Caution.** ${text}`),
    '',
  );
  lines.push('Sources:', '');
  for (const key of sourcesOf(working)) {
    const { title: document, locus, status } = source(key);
    lines.push(`- ${document}: ${locus} (${status})`);
  }
  return `${lines.join('\n')}\n`;
}

/**
 * A worked example as LaTeX, to be set within a document that loads amsmath.
 *
 * @param working - What {@link showWorking} returned.
 * @returns The LaTeX, ending with a line feed.
 * @example
 * const page = workingLatex(showWorking('uniformWire', { resistivity: 0.0172, length: 20, area: 3.31 }));
 * page.split('\n')[0]; // => '\\subsection*{The law of a uniform wire}'
 */
export function workingLatex(working: Working): string {
  const { title, no, assumptions, validity, cautions } = working;
  const lines: string[] = [`\\subsection*{${plain(title)}}`];
  const givens = listedGivens(working);
  // A list of nothing is an error in LaTeX.
  if (givens.length > 0) {
    const items = givens.map(
      ({ latex, meaning, rounded }) => `  \\item $${latex.symbol} ${rounded ? '\\approx' : '='} ${latex.value}$, ${plain(meaning)}`,
    );
    lines.push('', '\\begin{itemize}', ...items, '\\end{itemize}');
  }
  if (hasRounded(working)) lines.push('', `\\noindent \\emph{${plain(DIGITS_NOTE)}}`);
  for (const { step, table } of partsOf(working)) {
    if (step === undefined) {
      lines.push('', ...tableLatex(table));
      continue;
    }
    const [, ...inner] = aligned(step);
    lines.push('', `\\noindent ${plain(sentence(step.meaning))}:`, '\\begin{align*}', ...inner.slice(0, -1), '\\end{align*}');
    lines.push(`\\emph{${plain(source(step.source).title)}}`);
  }
  if (no !== undefined) lines.push('', `\\noindent \\textbf{No: ${plain(no)}.}`);
  if (resultsOf(working).steps.length > 0) lines.push('', `\\noindent \\textbf{Result.} ${resultLatex(working, plain)}`);
  lines.push('', '\\begin{itemize}');
  for (const text of [...assumptions, validity, ...cautions.map((caution) => `Caution: ${caution}`)]) lines.push(`  \\item ${plain(text)}`);
  lines.push('\\end{itemize}');
  return `${lines.join('\n')}\n`;
}

/** Formula, figures, result, one below the other. */
function aligned(step: WorkingStep): string[] {
  const relations = relationsOf(step, true);
  const lines = relations.map(({ sign, text }, index) => {
    const left = index === 0 ? `${step.latex.symbol} ` : '';
    return `${left}&${sign} ${text}${index === relations.length - 1 ? '' : ' \\\\'}`;
  });
  return ['\\begin{aligned}', ...lines, '\\end{aligned}'];
}

/** What came out: one figure, or the two ends of a range. */
function resultLatex(working: Working, words: (text: string) => string): string {
  const { meaning, steps } = resultsOf(working);
  const ends = steps.map(({ latex, rounded }) => `$${latex.symbol} ${rounded ? '\\approx' : '='} ${latex.value}$`);
  return `${words(sentence(meaning))}: ${ends.length > 1 ? 'between ' : ''}${ends.join(' and ')}`;
}
