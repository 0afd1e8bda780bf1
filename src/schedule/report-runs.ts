/** The runs of a report: one line for each, and the figures of some. @module */

import type { Check } from '../limits/check.ts';
import type { Block, Page, PageColumn } from '../pages/page.ts';
import { widthOf } from '../pages/plain-text.ts';
import { fixed, percent } from '../words/amount.ts';
import { checkFigures, checkTitle } from '../words/check-words.ts';
import { RUN_COLUMNS } from './columns/run-columns.ts';
import type { RunReport } from './report.ts';
import { paragraph, type ReportView, table } from './report-view.ts';
import {
  conductorCurrent,
  farEndInWords,
  isDenied,
  loopsInWords,
  meterInWords,
  titleOf,
  verdictWords,
  whatIsTheMatter,
  whatOf,
  whereFrom,
  wholeLength,
  word,
} from './run-words.ts';

const { run: RUN, device: DEVICE } = RUN_COLUMNS;

/** One line for every run. @internal */
export function runLines({ report: { runs }, width }: ReportView): Page {
  if (runs.length === 0) return [];
  const wide = width >= 120;
  const columns: PageColumn[] = [
    { head: RUN.title, width: longestName(runs) },
    { head: DEVICE.title, width: 'rest', gap: 1 },
    { head: RUN_COLUMNS.length.title, unit: 'm', width: 7, align: 'right' },
    { head: 'Meter', unit: 'Ω', width: 12, align: 'right' },
    { head: 'At ', unit: 'V', width: 7, align: 'right' },
    { head: 'far end', unit: 'W', width: 7, align: 'right' },
    { head: 'Power', width: 9, gap: 2, loud: true },
    { head: 'Cabling', width: 9, gap: 1, loud: true },
    ...(wide ? [{ head: 'Closest limit', width: 36, gap: 2 }] : []),
  ];
  const note =
    'Length: cords included. Meter: a shorted pair, from usual copper to the most allowed. Far end: at the lowest supply voltage.';
  return [
    {
      kind: 'table',
      columns,
      rows: runs.map((run) => {
        const { operating, governing, meterReading } = run;
        const { power, cabling } = verdictWords(run);
        return [
          run.run,
          run.device ?? '',
          within(wholeLength(run), 1, 6),
          `${within(meterReading.nominal, 1, 5)}-${within(meterReading.maximum, 1, 5)}`,
          operating.feasible ? within(operating.loadVoltage, 1, 6) : '-',
          operating.feasible ? within(operating.loadPower, 2, 6) : '-',
          power,
          cabling,
          governing === undefined || !wide ? '' : closestLimit(governing),
        ];
      }),
    },
    paragraph(note),
  ];
}

/** The figures of one run. @internal */
export function figures(run: RunReport, { report, full, width }: ReportView): Block {
  const { power, cabling } = verdictWords(run);
  const facts: readonly (readonly [string, string])[] = [
    ['Fed by', whereFrom(run)],
    [RUN_COLUMNS.cable.title, whatOf(run)],
    ['Loops', loopsInWords(run)],
    ['Meter', meterInWords(run)],
    ['Far end', farEndInWords(run)],
    ...(full && run.governing !== undefined ? [['Closest', closestLimit(run.governing)] as const] : []),
    ...run.notes.map((note) => ['Note', note] as const),
  ];
  const matters = run.outcome === 'fail' ? [] : whatIsTheMatter(run, report.settings.cabling);
  return {
    kind: 'group',
    blocks: [
      paragraph(`${titleOf(run)} (power ${power}, cabling ${cabling}${isDenied(run) ? ', denied' : ''})`),
      ...matters.map((sentence) => paragraph(sentence, 2, { loud: true })),
      { kind: 'terms', items: facts.map(([term, text]) => ({ term, text })) },
      {
        kind: 'table',
        indent: 2,
        columns: [
          { head: 'Check', width: Math.min(28, width - 52) },
          { head: 'Value', width: 12, align: 'right' },
          { head: 'Limit', width: 14, align: 'right' },
          { head: 'Margin', width: 13, align: 'right' },
          { head: 'Verdict', width: 9, gap: 2, loud: true },
        ],
        rows: run.checks.map((check) => {
          const { value, limit, margin } = checkFigures(check, 11);
          return [checkTitle(check.name), value, limit, margin, word(check.verdict)];
        }),
      },
    ],
  };
}

/** Every run with its loops and currents. @internal */
export function runTable(runs: readonly RunReport[]): Page {
  return table(
    CELLS.map(([head]) => head),
    runs.map((run) => CELLS.map(([, cell]) => cell(run) ?? '-')),
  );
}

const CELLS: readonly (readonly [string, (run: RunReport) => string | undefined])[] = [
  [RUN.title, ({ run }) => run],
  [DEVICE.title, ({ device }) => device ?? ''],
  ['Fed by', whereFrom],
  [RUN_COLUMNS.cable.title, whatOf],
  ['Shorted pair, Ω', (run) => fixed(run.kind === 'powered' ? run.resistance.pairLoop : run.resistance, 2)],
  ['One pairset, Ω', (run) => (run.kind === 'powered' ? fixed(run.resistance.twoPair, 2) : undefined)],
  ['Two pairsets, Ω', (run) => (run.kind === 'powered' ? fixed(run.resistance.fourPair, 2) : undefined)],
  ['Meter, Ω', ({ meterReading: { nominal, maximum } }) => `${fixed(nominal, 1)} to ${fixed(maximum, 1)}`],
  ['Far end, V', ({ operating }) => figure(operating.feasible ? operating.loadVoltage : undefined, 2)],
  ['Far end, W', ({ operating }) => figure(operating.feasible ? operating.loadPower : undefined, 2)],
  ['Total, A', ({ operating }) => figure(operating.feasible ? operating.current : undefined, 3)],
  ['Pairset, A', (run) => figure(run.kind === 'powered' ? run.pairsetCurrent : undefined, 3)],
  ['Conductor, A', (run) => figure(conductorCurrent(run), 3)],
  ['Power', (run) => verdictWords(run).power],
  ['Cabling', (run) => verdictWords(run).cabling],
  [
    'Closest limit',
    ({ governing }) => (governing === undefined ? undefined : `${checkTitle(governing.name)}, ${checkFigures(governing).share}`),
  ],
];

function figure(value: number | undefined, decimals: number): string | undefined {
  return value === undefined ? undefined : fixed(value, decimals);
}

function closestLimit({ name, marginFraction }: Check): string {
  return `${checkTitle(name)}, ${percent(marginFraction)}`;
}

/** As many of the decimals as the columns hold. */
function within(value: number, decimals: number, columns: number): string {
  let text = fixed(value, decimals);
  for (let fewer = decimals - 1; text.length > columns && fewer >= 0; fewer--) text = fixed(value, fewer);
  return text.length > columns ? value.toExponential(0).replace('e+', 'e') : text;
}

/** Columns for the names of the runs: 3 to 12. */
function longestName(runs: readonly RunReport[]): number {
  return runs.reduce((most, { run }) => (most >= 12 ? 12 : Math.max(most, Math.min(widthOf(run), 12))), 3);
}
