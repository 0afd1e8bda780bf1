/** A report as Markdown: the same words as on a terminal, in tables. @module */
import { requireObject } from '../quantity/guards.ts';
import { amount, count, fixed } from './amount.ts';
import { bundleFindings, bundleInWords, heatOf, measuredInWords, measuredOf } from './bundle-words.ts';
import { CHECK_WORDS, checkFigures } from './check-words.ts';
import { assumptions, faults, placeOf, rowsInWords } from './finding-words.ts';
import { plain } from './plain-text.ts';
import type { Report, ReportedHeat, ReportedMeasurement, RunReport } from './report.ts';
import { budgetInWords, deniedInWords, meaning, OUTCOMES, oneLine, settingsInWords, sourcesOf, worstInWords } from './report-words.ts';
import {
  checksOf,
  combination,
  isPlainPass,
  isUncertain,
  verdictWords,
  whatIsTheMatter,
  whatOf,
  whatToDo,
  whereFrom,
  word,
} from './run-words.ts';

/**
 * A report as Markdown (CommonMark with the tables of GFM).
 *
 * Sections in the order of the text report; loops, currents and the governing check of every run, all checks of the
 * runs that do not plainly pass. Rounded for reading. Names from the files are escaped: pipes, backticks, HTML,
 * emphasis and links in them stay text.
 *
 * @param report - The report of `checkSchedule`.
 * @returns Markdown with `\n` line ends.
 * @throws {@link InputError} If the report is not an object.
 * @example
 * const report = checkSchedule({
 *   runs: [{ kind: 'two-wire', run: 'CL|01', input: {
 *     supplyVoltage: { low: 21, high: 27.6 }, conductor: awg(18), length: 60, load: { power: 6 }, minimumVoltage: 19,
 *   } }],
 *   switches: [],
 * });
 * reportMarkdown(report).includes('| CL\\|01 |'); // => true
 */
export function reportMarkdown(report: Report): string {
  requireObject(report, 'report', 'a report of checkSchedule');
  const standard = report.settings.cabling;
  const failing = report.runs.filter(({ outcome }) => outcome === 'fail');
  const uncertain = report.runs.filter(isUncertain);
  const notPlain = report.runs.filter((run) => !isPlainPass(run));

  return [
    `# Schedule checked: ${escaped(report.file)}\n\n`,
    `**${escaped(oneLine(report))}**\n\n`,
    ...table(
      ['Runs', 'Verdict', 'Meaning'],
      OUTCOMES.filter(({ outcome }) => report.totals.outcomes[outcome] > 0).map((entry) => [
        String(report.totals.outcomes[entry.outcome]),
        entry.word,
        meaning(entry, report),
      ]),
    ),
    report.runs.length === 0 ? '' : `\n${escaped(settingsInWords(report))}\n`,
    ...section(
      'What fails, and what puts it right',
      table(['Run', 'Device', 'Why', 'Any one of these puts it right'], failing.map(trouble)),
    ),
    ...section('What gets no power', deniedPorts()),
    ...section(
      'What is uncertain, and what would settle it',
      table(['Run', 'Device', 'Why', 'What would settle it'], uncertain.map(trouble)),
    ),
    ...section('Every run', table(RUN_HEADS, report.runs.map(runCells))),
    ...section('Checks of the runs that do not plainly pass', table(CHECK_HEADS, notPlain.flatMap(checkCells))),
    ...section(
      'Heat of bundles',
      table(
        ['Run', 'Bundle', 'Rise, K', 'Conductors, °C', 'Verdict'],
        report.runs.flatMap((run) => (heatOf(run) === undefined ? [] : [heatCells(run.run, heatOf(run) as ReportedHeat)])),
      ),
    ),
    ...section(
      'Measured beside expected',
      table(
        ['Run', 'What the meter read, and what that is consistent with'],
        report.runs.flatMap((run) =>
          measuredOf(run) === undefined ? [] : [[run.run, measuredInWords(measuredOf(run) as ReportedMeasurement)]],
        ),
      ),
    ),
    ...section('Switches', table(['Switch', 'Type', 'Ports', 'Power', 'Notes'], report.switches.map(switchCells))),
    ...section('Totals', totals()),
    ...section(
      'What was taken for granted',
      table(
        ['What', 'Where'],
        assumptions(report).map((entry) => [entry.text, rowsInWords(entry)]),
      ),
    ),
    ...section('What is wrong in the files', table(FAULT_HEADS, faults(report).map(faultCells))),
    ...section('Where the limits come from', sourcesOf(report).map(bullet)),
    ...section('Cautions', report.cautions.map(bullet)),
  ].join('');

  function trouble(run: RunReport): string[] {
    const changes = whatToDo(run);
    const todo = changes.length === 0 && run.outcome === 'fail' ? [combination(run)] : changes;
    return [run.run, run.device ?? '', lines(whatIsTheMatter(run, standard)), lines(todo)];
  }

  function deniedPorts(): string[] {
    return table(
      ['Switch', 'Denied, in this order'],
      report.switches
        .filter(({ budget }) => budget !== undefined && budget.denied.length > 0)
        .map(({ switch: name, budget }) => [name, lines((budget?.denied ?? []).map(deniedInWords))]),
    );
  }

  function totals(): string[] {
    const { runs, cables, cableHeat } = report.totals;
    if (runs === 0) return [];
    const worst = worstInWords(report.totals);
    return [
      ...table(
        ['Cable', 'Use', 'm'],
        cables.map(({ cable, use, length }) => [cable, use, fixed(length, 1)]),
      ),
      '\n',
      ...(worst === undefined ? [] : [bullet(`Closest to a limit: ${worst}`)]),
      bullet(`Heat in all cables, every device at its full load: ${amount(cableHeat, 'W', 1)}`),
    ];
  }
}

const RUN_HEADS = [
  'Run',
  'Device',
  'Fed by',
  'Cable',
  'Shorted pair, Ω',
  'One pairset, Ω',
  'Two pairsets, Ω',
  'Meter, Ω',
  'Far end, V',
  'Far end, W',
  'Total, A',
  'Pairset, A',
  'Conductor, A',
  'Power',
  'Cabling',
  'Closest limit',
] as const;
const CHECK_HEADS = ['Run', 'Check', 'Value', 'Limit', 'Margin', 'Of the limit', 'Verdict'] as const;
const FAULT_HEADS = ['Severity', 'Where', 'What'] as const;

function runCells(run: RunReport): string[] {
  const { farEnd, loops, meterReading, governing } = run;
  const { power, cabling } = verdictWords(run);
  const flow = farEnd.feasible
    ? [
        fixed(farEnd.voltage, 2),
        fixed(farEnd.power, 2),
        fixed(farEnd.totalCurrent, 3),
        farEnd.pairsetCurrent === undefined ? '-' : fixed(farEnd.pairsetCurrent, 3),
        fixed(farEnd.conductorCurrent, 3),
      ]
    : ['-', '-', '-', '-', '-'];
  return [
    run.run,
    run.device ?? '',
    whereFrom(run),
    whatOf(run),
    fixed(loops.pairLoop, 2),
    'twoPair' in loops ? fixed(loops.twoPair, 2) : '-',
    'fourPair' in loops ? fixed(loops.fourPair, 2) : '-',
    `${fixed(meterReading.nominal, 1)} to ${fixed(meterReading.maximum, 1)}`,
    ...flow,
    power,
    cabling,
    governing === undefined ? '-' : `${CHECK_WORDS[governing.name].title}, ${checkFigures(governing).share}`,
  ];
}

function checkCells(run: RunReport): string[][] {
  return checksOf(run).map((check) => {
    const { value, limit, margin, share } = checkFigures(check);
    return [run.run, CHECK_WORDS[check.name].title, value, limit, margin, share, word(check.verdict)];
  });
}

function heatCells(run: string, heat: ReportedHeat): string[] {
  const { rise, temperature, verdict } = heat;
  return [
    run,
    [bundleInWords(heat), ...bundleFindings(heat)].join('; '),
    rise === undefined ? '-' : fixed(rise, 1),
    temperature === undefined ? '-' : fixed(temperature, 1),
    word(verdict),
  ];
}

function switchCells(entry: Report['switches'][number]): string[] {
  return [entry.switch, String(entry.type), count(entry.ports, 'port'), lines(budgetInWords(entry)), lines(entry.notes)];
}

function faultCells(finding: Report['findings'][number]): string[] {
  return [finding.severity === 'error' ? 'ERROR' : finding.severity, placeOf(finding), finding.message];
}

function section(title: string, content: string[]): string[] {
  return content.length === 0 ? [] : [`\n## ${title}\n\n`, ...content];
}

/** A table, its cells escaped here; nothing where there is no row. */
function table(heads: readonly string[], rows: readonly (readonly string[])[]): string[] {
  if (rows.length === 0) return [];
  return [`| ${heads.join(' | ')} |\n`, `|${' --- |'.repeat(heads.length)}\n`, ...rows.map((row) => `| ${row.map(cell).join(' | ')} |\n`)];
}

/** Several lines of one cell; taken apart again by {@link cell}, which escapes each. */
function lines(texts: readonly string[]): string {
  return texts.map((text) => text.replace(/[\r\n]+/g, ' ')).join('\n');
}

function cell(text: string): string {
  return PLAIN_CELL.test(text) ? text : text.split('\n').map(escaped).join('<br>');
}

function bullet(text: string): string {
  return `- ${escaped(text)}\n`;
}

const PLAIN_CELL = /^[A-Za-z0-9 .,:;()/+%Ω°-]*$/;
const MARKUP = /[\\`*_{}[\]<>#|~!$&]/g;

/** Text that stays text in Markdown and in HTML. */
function escaped(text: string): string {
  return plain(text).replace(MARKUP, (sign) => (sign === '<' ? '&lt;' : sign === '>' ? '&gt;' : sign === '&' ? '&amp;' : `\\${sign}`));
}
