/** The sections of a report, each as lines for a terminal and as tables. @module */
import type { Block, Page } from '../pages/page.ts';
import { amount, count, fixed } from '../words/amount.ts';
import { checkFigures, checkTitle } from '../words/check-words.ts';
import { bundleFindings, bundleInWords, heatInWords, measuredInWords } from './bundle-words.ts';
import { RUN_COLUMNS } from './columns/run-columns.ts';
import { SWITCH_COLUMNS } from './columns/switch-columns.ts';
import { assumptions, faults, messageOf, placeOf, rowsInWords } from './finding-words.ts';
import type { ReportedHeat, RunReport, SwitchReport } from './report.ts';
import { figures, runLines, runTable } from './report-runs.ts';
import { group, list, paragraph, type ReportView, several, table } from './report-view.ts';
import { budgetInWords, deniedInWords, sourcesOf, worstInWords, worstLabel } from './report-words.ts';
import { combination, isPlainPass, isUncertain, titleOf, whatIsTheMatter, whatToDo, word } from './run-words.ts';

const { run: RUN, device: DEVICE, switch: SWITCH } = RUN_COLUMNS;

/** A section of a report; left out where it has no block. */
export interface ReportSection {
  readonly title: string | ((view: ReportView) => string);
  readonly lines: (view: ReportView) => Page;
  readonly tables: (view: ReportView) => Page;
}

/** The sections in the order in which they are read. @internal */
export const REPORT_SECTIONS: readonly ReportSection[] = [
  troubles('What fails, and what puts it right', 'Any one of these puts it right', ({ outcome }) => outcome === 'fail'),
  {
    title: 'What gets no power',
    lines: ({ report }) => group(report.switches.filter(isShort).flatMap(shortLines)),
    tables: ({ report }) =>
      table(
        [SWITCH.title, 'Denied, in this order'],
        report.switches.filter(isShort).map(({ switch: name, budget }) => [name, several((budget?.denied ?? []).map(deniedInWords))]),
      ),
  },
  troubles('What is uncertain, and what would settle it', 'What would settle it', isUncertain),
  { title: 'Every run', lines: runLines, tables: ({ report }) => runTable(report.runs) },
  {
    title: ({ full }) => (full ? 'Figures of every run' : 'Figures of the runs that do not plainly pass'),
    lines: (view) => shown(view).map((run) => figures(run, view)),
    tables: () => [],
  },
  {
    title: ({ full }) => (full ? 'Checks of every run' : 'Checks of the runs that do not plainly pass'),
    lines: () => [],
    tables: (view) => table([RUN.title, 'Check', 'Value', 'Limit', 'Margin', 'Of the limit', 'Verdict'], shown(view).flatMap(checkCells)),
  },
  {
    title: 'Heat of bundles',
    lines: ({ report }) => list(withHeat(report.runs).map(({ run, heat }) => `${run}: ${heatInWords(heat)}`)),
    tables: ({ report }) =>
      table(
        [RUN.title, RUN_COLUMNS.bundle.title, 'Rise, K', 'Conductors, °C', 'Verdict'],
        withHeat(report.runs).map(({ run, heat, verdict }) => [
          run,
          [bundleInWords(heat), ...bundleFindings(heat)].join('; '),
          heat.rise === undefined ? '-' : fixed(heat.rise, 1),
          heat.temperature === undefined ? '-' : fixed(heat.temperature, 1),
          word(verdict.heat ?? 'pass'),
        ]),
      ),
  },
  rows(
    'Measured beside expected',
    [RUN.title, 'What the meter read, and what that is consistent with'],
    ({ report }) => report.runs.flatMap(({ run, measured }) => (measured === undefined ? [] : [[run, measuredInWords(measured)]])),
    ([run, words]) => `${run}: ${words}`,
  ),
  {
    title: 'Switches',
    lines: ({ report }) => group(report.switches.flatMap(switchLines)),
    tables: ({ report }) =>
      table(
        [SWITCH.title, SWITCH_COLUMNS.type.title, SWITCH_COLUMNS.ports.title, 'Power', 'Notes'],
        report.switches.map((entry) => [
          entry.switch,
          String(entry.type),
          count(entry.ports, 'port'),
          several(budgetInWords(entry)),
          several(entry.notes),
        ]),
      ),
  },
  {
    title: 'Totals',
    lines: (view) => group([...cableMetres(view), ...sums(view).map((text) => paragraph(text, 2, { hang: 2 }))]),
    tables: ({ report, ...view }) => [
      ...table(
        [RUN_COLUMNS.cable.title, 'Use', 'm'],
        report.totals.cables.map(({ cable, use, length }) => [cable, use, fixed(length, 1)]),
      ),
      ...list(sums({ report, ...view })),
    ],
  },
  rows(
    'What was taken for granted',
    ['What', 'Where'],
    ({ report }) => assumptions(report).map((entry) => [entry.text, rowsInWords(entry)]),
    ([what, where]) => `${what} (${where})`,
  ),
  rows(
    'What is wrong in the files',
    ['Severity', 'Where', 'What'],
    ({ report }) =>
      faults(report).map((finding) => [finding.severity === 'error' ? 'ERROR' : finding.severity, placeOf(finding), messageOf(finding)]),
    ([severity, where, what]) => `${severity}  ${where}: ${what}`,
    true,
  ),
  bullets('Where the limits come from', ({ report }) => sourcesOf(report)),
  bullets('Cautions', ({ report }) => report.cautions),
];

/** A section of the same facts in rows: a table, or a line for each. */
function rows(
  title: string,
  heads: readonly string[],
  cells: (view: ReportView) => readonly (readonly string[])[],
  line: (cells: readonly string[]) => string,
  loud = false,
): ReportSection {
  return {
    title,
    lines: (view) => list(cells(view).map(line), loud),
    tables: (view) => table(heads, cells(view)),
  };
}

/** A section that is a list in every form. */
function bullets(title: string, items: (view: ReportView) => readonly string[]): ReportSection {
  const write = (view: ReportView): Page => list(items(view));
  return { title, lines: write, tables: write };
}

/** A section of runs with what is the matter with them, and what to do. */
function troubles(title: string, cure: string, isOne: (run: RunReport) => boolean): ReportSection {
  return {
    title,
    lines: ({ report }) => report.runs.filter(isOne).map((run): Block => troubleLines(run, report.settings.cabling)),
    tables: ({ report }) =>
      table(
        [RUN.title, DEVICE.title, 'Why', cure],
        report.runs.filter(isOne).map((run) => {
          const changes = whatToDo(run);
          const todo = changes.length === 0 && run.outcome === 'fail' ? [combination(run)] : changes;
          return [run.run, run.device ?? '', several(whatIsTheMatter(run, report.settings.cabling)), several(todo)];
        }),
      ),
  };
}

function troubleLines(run: RunReport, standard: string): Block {
  const changes = whatToDo(run);
  const lead = changes.length === 0 ? combination(run) : changes.length === 1 ? 'This puts it right:' : 'Any one of these puts it right:';
  return {
    kind: 'group',
    blocks: [
      paragraph(titleOf(run)),
      ...whatIsTheMatter(run, standard).map((sentence) => paragraph(sentence, 2, { loud: true })),
      ...(run.outcome === 'fail' ? [paragraph(lead, 2)] : []),
      ...list(changes),
    ],
  };
}

/** Runs whose figures are shown. */
function shown({ report, full }: ReportView): RunReport[] {
  return report.runs.filter((run) => full || !isPlainPass(run));
}

function checkCells(run: RunReport): string[][] {
  return run.checks.map((check) => {
    const { value, limit, margin, share } = checkFigures(check);
    return [run.run, checkTitle(check.name), value, limit, margin, share, word(check.verdict)];
  });
}

function withHeat(runs: readonly RunReport[]): { run: string; heat: ReportedHeat; verdict: RunReport['verdict'] }[] {
  return runs.flatMap(({ run, heat, verdict }) => (heat === undefined ? [] : [{ run, heat, verdict }]));
}

/** Whether a switch has too little power for its ports. */
function isShort({ budget }: SwitchReport): boolean {
  return budget !== undefined && budget.denied.length > 0;
}

function shortLines({ switch: name, budget }: SwitchReport): Block[] {
  if (budget === undefined) return [];
  const { demand, capacity, denied } = budget;
  return [
    paragraph(`${name}: its ports want ${amount(demand, 'W')}, it has ${amount(capacity, 'W')}. DENIED, in this order:`, 0, { loud: true }),
    ...list(denied.map(deniedInWords)),
    paragraph('Find a larger supply, move a device to another switch, or give what must stay on a higher priority.', 2),
  ];
}

function switchLines(entry: SwitchReport): Block[] {
  return [
    paragraph(`${entry.switch}: Type ${entry.type}, ${count(entry.ports, 'port')}`),
    ...budgetInWords(entry).map((sentence) => paragraph(sentence, 2)),
    ...(entry.budget?.denied ?? []).map((port) => paragraph(`DENIED ${deniedInWords(port)}`, 2, { hang: 2, loud: true })),
    ...entry.notes.map((note) => paragraph(`Note: ${note}.`, 2, { hang: 2 })),
  ];
}

function cableMetres({ report }: ReportView): Block[] {
  if (report.totals.cables.length === 0) return [];
  return [
    {
      kind: 'table',
      bare: true,
      columns: [
        { head: RUN_COLUMNS.length.title, width: 14, align: 'right' },
        { head: RUN_COLUMNS.cable.title, width: 30, gap: 2 },
        { head: 'Use', width: 'rest', gap: 1 },
      ],
      rows: report.totals.cables.map(({ cable, use, length }) => [`${fixed(length, 1)} m`, cable, use]),
    },
  ];
}

/** What is said below the lengths of cable. */
function sums({ report: { totals } }: ReportView): string[] {
  if (totals.runs === 0) return [];
  const worst = worstInWords(totals);
  return [
    ...(worst === undefined ? [] : [`${worstLabel(totals)}: ${worst}`]),
    `Heat in all cables, every device at its full load: ${amount(totals.cableHeat, 'W', 1)}`,
  ];
}
