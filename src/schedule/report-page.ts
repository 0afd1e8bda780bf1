/** A report as a page: its summary, then its sections. @module */
import type { Block, Page } from '../pages/page.ts';
import { count } from '../words/amount.ts';
import type { Report } from './report.ts';
import { REPORT_SECTIONS } from './report-sections.ts';
import { group, paragraph, type ReportView, table } from './report-view.ts';
import { oneLine, outcomesInWords, settingsInWords } from './report-words.ts';

/** A report as a page of lines for a terminal, or of tables. @internal */
export function reportPage(view: ReportView, form: 'lines' | 'tables'): Page {
  const { report } = view;
  const settings =
    report.runs.length === 0 ? [] : group([paragraph(settingsInWords(report)), paragraph(`Figures of edition ${report.dataEdition}.`)]);
  return [
    { kind: 'heading', level: 1, text: `${form === 'lines' ? 'SCHEDULE CHECKED' : 'Schedule checked'}: ${report.file}` },
    ...(form === 'lines' ? outcomeLines(report) : outcomeTable(report)),
    ...settings,
    ...REPORT_SECTIONS.flatMap(({ title, [form]: write }): Block[] => {
      const blocks = write(view);
      if (blocks.length === 0) return [];
      return [{ kind: 'heading', level: 2, text: typeof title === 'string' ? title : title(view) }, ...blocks];
    }),
  ];
}

function outcomeLines(report: Report): Block[] {
  const { findings } = report.totals;
  const wrong = (['error', 'warning'] as const).flatMap((severity) =>
    findings[severity] > 0 ? [count(findings[severity], severity)] : [],
  );
  return [
    {
      kind: 'group',
      blocks: [
        paragraph(oneLine(report)),
        {
          kind: 'table',
          bare: true,
          columns: [
            { head: 'Runs', width: 8, align: 'right' },
            { head: 'Verdict', width: 11, gap: 2, loud: true },
            { head: 'Meaning', width: 'rest' },
          ],
          rows: outcomeRows(report).filter(([, verdict]) => verdict !== 'pass'),
        },
        ...(wrong.length === 0 ? [] : [paragraph(`In the files: ${wrong.join(' and ')}, listed below.`)]),
      ],
    },
  ];
}

function outcomeTable(report: Report): Block[] {
  return [paragraph(oneLine(report), 0, { strong: true }), ...table(['Runs', 'Verdict', 'Meaning'], outcomeRows(report))];
}

function outcomeRows(report: Report): string[][] {
  return outcomesInWords(report).map(({ number, word, means }) => [String(number), word, means]);
}
