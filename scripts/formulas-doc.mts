/** Writes docs/formulas.md from the formula sheets: `npx tsx scripts/formulas-doc.mts`. @module */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { source } from '../src/sources/source.ts';
import type { SourceKey } from '../src/sources/sources.ts';
import { sheets } from '../src/working/book/sheets.ts';
import type { Sheet, SheetStep } from '../src/working/engine/sheet.ts';
import { SLIP_WORDS } from '../src/working/engine/slip-words.ts';

const PAGE = fileURLToPath(new URL('../docs/formulas.md', import.meta.url));

/** The whole page. */
export function formulasPage(): string {
  const all = Object.entries(sheets) as unknown as readonly (readonly [string, Sheet<never>])[];
  return [
    '# Formulas',
    '',
    '<!-- Written by scripts/formulas-doc.mts from src/working/book: change those, not this page. -->',
    '',
    'Every calculation that `showWorking` of `farend/working` can show, with its formulas and where each comes from. Formulas are in the',
    'notation in which they are evaluated: `*` for every product, units carried along. An `i` numbers the rows of a list (pieces of cable,',
    'limits, classes); `sum(R_i)` adds a figure over all of them. A temperature in °C enters only as a difference. Where a figure under 0',
    'means that there is no answer, the table says so.',
    '',
    ...all.map(([name, { title }]) => `- [\`${name}\`](#${name.toLowerCase()}): ${title}`),
    '',
    ...all.flatMap(([name, sheet]) => sheetLines(name, sheet)),
    '## Sources',
    '',
    ...[...new Set(all.flatMap(([, sheet]) => keysOf(sheet)))].sort().map((key) => {
      const { title, locus, status } = source(key);
      return `- \`${key}\`: ${title}: ${locus} (${status})`;
    }),
    '',
  ].join('\n');
}

function sheetLines(
  name: string,
  { title, core = name, givens, steps, assumptions, validity, cautions = [], slips }: Sheet<never>,
): string[] {
  const slipNames = [...new Set(slips.map(([slip]) => slip))];
  return [
    `## ${name}`,
    '',
    `${title}. The core function is \`${core}\`.`,
    '',
    '| given | unit | what it is | in the input | source |',
    '|---|---|---|---|---|',
    ...givens.map(
      ({ symbol, unit, meaning, core: from, source: key, when }) =>
        `| \`${rowed(symbol)}\` | ${unitOf(unit)} | ${rowed(meaning)}${caseOf(when)} | ${cell(from)} | ${keyOf(key)} |`,
    ),
    '',
    '| step | unit | what it is | source |',
    '|---|---|---|---|',
    ...steps.flatMap((step) => [
      stepLine(step),
      ...(step.no?.steps ?? []).map((inner) => stepLine(inner, `where ${rowed(step.symbol)} < 0: `)),
    ]),
    '',
    ...assumptions.map((text) => `- ${text}`),
    `- ${validity}`,
    ...cautions.map((text) => `- **Caution.** ${text}`),
    ...(slipNames.length === 0
      ? []
      : ['', 'Slips that a review of an answer knows here, besides those of units, of 20 °C left out, and of rounding:', '']),
    ...slipNames.map((slip) => `- \`${slip}\`: ${SLIP_WORDS[slip]}`),
    '',
  ];
}

function stepLine({ symbol, formula, general, unit, meaning, source: key, when, no }: SheetStep, lead = ''): string {
  const shown = general === undefined ? listed(formula) : cell(general.formula.replaceAll(/_k\b/g, '_i'));
  const refusal = no === undefined ? '' : `; under 0: ${rowed(no.says)}`;
  return `| \`${rowed(symbol)} = ${shown}\` | ${unitOf(unit)} | ${lead}${rowed(meaning)}${caseOf(when)}${refusal} | ${keyOf(key)} |`;
}

/** `[R_#]` as `sum(R_i)`, `[L_#,]` as `L_k`. */
function listed(formula: string): string {
  return rowed(formula.replaceAll(/\[([^\]]*),\]/g, '$1, ...').replaceAll(/\[([^\]]*)\]/g, 'sum($1)'));
}

function rowed(text: string): string {
  return cell(text.replaceAll('#', 'i').replaceAll('@', 'row i'));
}

function cell(text: string): string {
  return text.replaceAll('|', '\\|');
}

function caseOf(when: string | undefined): string {
  return when === undefined ? '' : ` (${when})`;
}

function unitOf(unit: string): string {
  return unit === '1' ? '' : unit;
}

function keyOf(key: SourceKey | 'row' | undefined): string {
  return key === undefined ? '' : key === 'row' ? 'of the limit' : `\`${key}\``;
}

function keysOf({ givens, steps }: Sheet<never>): SourceKey[] {
  const all = [...givens, ...steps, ...steps.flatMap(({ no }) => no?.steps ?? [])];
  return all.flatMap(({ source: key }) => (key === undefined || key === 'row' ? [] : [key]));
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(PAGE, formulasPage());
