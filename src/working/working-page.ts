/** A worked example as a page, and as text, Markdown and LaTeX. @module */

import { type Block, type Maths, type Page, pageLatex, pageMarkdown, pageText, type Relation, type Words } from '../pages/index.ts';
import { source } from '../sources/source.ts';
import type { Working, WorkingStep, WorkingTable } from './engine/working.ts';
import { unitLatex } from './engine/working-unit.ts';

/** What is said above the working, where any figure was rounded to be shown. */
const DIGITS_NOTE =
  'Figures are shown to four digits, but each line is worked with all of them: the last digit of a line reworked from the page may differ.';

/**
 * A worked example as a page: what is given, every step (what it is, the formula, the figures in it, the result, where the rule
 * comes from), the result, what was assumed, the sources in full.
 *
 * @param working - What {@link showWorking} returned.
 * @returns The page, as plain data.
 * @example
 * workingPage(showWorking('operatingPoint', { supplyVoltage: 24, resistance: 8, load: { power: 6 } }))[0]?.kind; // => 'heading'
 */
export function workingPage(working: Working): Page {
  const { title, givens, steps, no, assumptions, validity, cautions } = working;
  const result = resultWords(working);
  const listed = givens.filter(({ table }) => table === undefined);
  const cited = [...givens, ...steps].flatMap(({ source: key }) => (key === undefined ? [] : [key]));
  const hasRounded = [...givens, ...steps].some(({ rounded }) => rounded);
  return [
    { kind: 'heading', level: 3, text: title },
    ...section('Given', {
      kind: 'terms',
      heads: ['given', 'what it is'],
      items: listed.map((given) => ({ term: [equation(given)], text: given.meaning })),
    }),
    { kind: 'heading', level: 4, text: 'Working' },
    ...(hasRounded ? ([{ kind: 'note', text: DIGITS_NOTE }] as const) : []),
    ...partsOf(working).map((part, index): Block => ({ kind: 'step', number: index + 1, ...part })),
    ...(no === undefined ? [] : ([{ kind: 'paragraph', text: `No: ${no}.`, strong: true }] as const)),
    ...(result === undefined ? [] : ([{ kind: 'paragraph', lead: 'Result', text: result }] as const)),
    ...section('Assumed', { kind: 'list', items: [...assumptions, validity] }),
    ...section('Caution', { kind: 'list', items: cautions }),
    ...section('Sources', { kind: 'list', items: [...new Set(cited)].map((key) => sourceWords(key)) }),
  ];
}

/**
 * A worked example as plain text of at most 80 columns; `≈` where a figure was rounded to be shown.
 *
 * @param working - What {@link showWorking} returned.
 * @returns The text, ending with a line feed.
 * @example
 * workingText(showWorking('uniformWire', { resistivity: 0.0172, length: 20, area: 3.31 })).includes('R = rho · L / A'); // => true
 */
export function workingText(working: Working): string {
  return pageText(workingPage(working));
}

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
  return pageMarkdown(workingPage(working));
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
  return pageLatex(workingPage(working));
}

/** A list under its word; nothing where it is empty. */
function section(text: string, list: Extract<Block, { readonly kind: 'list' | 'terms' }>): Page {
  return list.items.length === 0 ? [] : [{ kind: 'group', blocks: [{ kind: 'heading', level: 4, text }, list] }];
}

type Part = Omit<Extract<Block, { readonly kind: 'step' }>, 'kind' | 'number'>;

/** In the order in which it is read: tables of givens and passes first, then the steps; of steps that stand in a table, the table, once. */
function partsOf({ steps, tables }: Working): readonly Part[] {
  const places = [...tables.keys()].filter((index) => !steps.some(({ table }) => table === index));
  const shown = [...places, ...steps.map((step) => step.table ?? step)];
  return [...new Set(shown)].map((item) => (typeof item === 'number' ? tablePart(tables[item] as WorkingTable) : stepPart(item)));
}

function stepPart(step: WorkingStep): Part {
  const { symbol, meaning, latex } = step;
  const formula = {
    kind: 'formula',
    symbol: { text: symbol, latex: latex.symbol },
    text: relations(step, false),
    latex: relations(step, true),
  } as const;
  return {
    title: meaning,
    blocks: [{ kind: 'group', blocks: [formula, { kind: 'note', lead: 'from', text: source(step.source).title }] }],
  };
}

/** Formula, figures and result, of which one that says no more than the one before it is left out. */
function relations(step: WorkingStep, tex: boolean): Relation[] {
  const { formula, substituted } = tex ? step.latex : step;
  const shown = tex ? step.latex.value : step.shown;
  const approximate = step.rounded ? (tex ? '\\approx' : '≈') : '=';
  // Of a plain 0 there is no formula to show.
  return [...(formula === '0' ? [] : [formula]), substituted, shown]
    .map((text) => ({ sign: text === shown ? approximate : '=', text: tex ? text : dotted(text) }))
    .filter(({ text }, index, all) => text !== all[index - 1]?.text);
}

/** What each column is and by which formula, then the rows. */
function tablePart({ title, says, row, columns, rows }: WorkingTable): Part {
  const rules = new Set(columns.flatMap(({ sources }) => sources.map((key) => source(key).title)));
  const items = columns.map(({ symbol, formula, latex, meaning }): Words => {
    const by = (left: string, right: string | undefined): string => (right === undefined ? left : `${left} = ${right}`);
    return [
      { text: by(symbol, formula === undefined ? undefined : dotted(formula)), latex: by(latex.symbol, latex.formula) },
      `: ${meaning}`,
    ];
  });
  const heads = columns.map(({ symbol, latex, unit }) => ({
    head: [{ text: symbol, latex: latex.symbol }],
    ...(unit === '1' ? {} : { unit: [{ text: unit, latex: unitLatex(unit) }] }),
    align: 'right' as const,
  }));
  const cells = rows.map(({ label, cells: figures }) => [
    label,
    ...figures.map((cell) => (cell === null ? '' : [{ text: cell.shown, latex: cell.latex }])),
  ]);
  return {
    title,
    blocks: [
      { kind: 'list', items },
      { kind: 'table', columns: [{ head: row }, ...heads], rows: cells },
      ...(says === undefined ? [] : [{ kind: 'paragraph', text: says } as const]),
      ...(rules.size === 0 ? [] : [{ kind: 'note', lead: 'from', text: [...rules].join('; ') } as const]),
    ],
  };
}

/** What came out: one figure, or the two ends of a range; nothing where the words of a no say it all. */
function resultWords({ steps, range, isPlainNo }: Working): Words | undefined {
  const last = steps.at(-1);
  if (range !== undefined) return [`${range.meaning}: between `, equation(range.low), ' and ', equation(range.high)];
  return last === undefined || isPlainNo === true ? undefined : [`${last.meaning}: `, equation(last)];
}

function equation({
  symbol,
  shown,
  rounded,
  latex,
}: Pick<WorkingStep, 'symbol' | 'shown' | 'rounded'> & { readonly latex: { readonly symbol: string; readonly value: string } }): Maths {
  return { text: `${symbol} ${rounded ? '≈' : '='} ${shown}`, latex: `${latex.symbol} ${rounded ? '\\approx' : '='} ${latex.value}` };
}

function sourceWords(key: Parameters<typeof source>[0]): string {
  const { title, locus, status } = source(key);
  return `${title}: ${locus} (${status})`;
}

function dotted(text: string): string {
  return text.replaceAll(' * ', ' · ');
}
