/** A report for a terminal: what fails first, one line for every run, figures where there is something to see. @module */
import { requireInteger, requireObject } from '../quantity/guards.ts';
import { amount, count, fixed, percent } from './amount.ts';
import { heatInWords, heatOf, measuredInWords, measuredOf } from './bundle-words.ts';
import { CHECK_WORDS, checkFigures } from './check-words.ts';
import { assumptions, faults, placeOf, rowsInWords } from './finding-words.ts';
import { left, plain, right, widthOf, wrap } from './plain-text.ts';
import type { Report, ReportedCheck, RunReport, SwitchReport } from './report.ts';
import { budgetInWords, deniedInWords, meaning, OUTCOMES, oneLine, settingsInWords, sourcesOf, worstInWords } from './report-words.ts';
import {
  checksOf,
  combination,
  farEndInWords,
  isDenied,
  isPlainPass,
  isUncertain,
  loopsInWords,
  meterInWords,
  type VerdictWord,
  verdictWords,
  whatIsTheMatter,
  whatOf,
  whatToDo,
  whereFrom,
  word,
} from './run-words.ts';

/** How a text report looks. */
export interface ReportTextOptions {
  /** Columns of the terminal, 72 to 400; 80 if absent. */
  readonly width?: number | undefined;
  /** Whether verdicts and headings are coloured as well; off if absent. Never the only signal. */
  readonly colour?: boolean | undefined;
}

const LOUD: Readonly<Record<string, keyof typeof SGR>> = { UNCERTAIN: 'uncertain' };

/** Escape sequences of ECMA-48: bold, and the colours of a verdict. */
const SGR = { heading: '1', FAIL: '1;31', DENIED: '1;31', uncertain: '33', marginal: '33', pass: '32', '-': '' } as const;

/**
 * A report as text for a terminal.
 *
 * In this order: how many runs pass and fail; what fails, why, and what puts it right; what is uncertain; one line for
 * every run; all figures of the runs that do not plainly pass; switches; totals; what was taken for granted; what is
 * wrong in the files; sources; cautions. Rounded for reading. Characters that a terminal would obey are left out.
 *
 * @param report - The report of `checkSchedule`.
 * @param options - Width in columns, colour.
 * @returns Lines that end in `\n`, none wider than `width` (a name that is too long for its column is cut).
 * @throws {@link InputError} If the width is not a whole number from 72 to 400.
 * @example
 * const report = checkSchedule({
 *   runs: [{ kind: 'two-wire', run: 'CL-01', input: {
 *     supplyVoltage: { low: 21, high: 27.6 }, conductor: awg(18), length: 60, load: { power: 6 }, minimumVoltage: 19,
 *   } }],
 *   switches: [],
 * });
 * reportText(report).split('\n')[2]; // => '1 run: 1 pass'
 */
export function reportText(report: Report, options: ReportTextOptions = {}): string {
  requireObject(report, 'report', 'a report of checkSchedule');
  requireObject(options, 'options', 'an object with width and colour');
  const { width = 80, colour = false } = options;
  requireInteger(width, 72, 400, 'options.width');
  const standard = report.settings.cabling;
  const titleWidth = Math.min(28, width - 52);
  const paint = (text: string, as: keyof typeof SGR): string => (colour && SGR[as] !== '' ? `\u001b[${SGR[as]}m${text}\u001b[0m` : text);
  const heading = (text: string): string => `\n${paint(text.toUpperCase(), 'heading')}\n\n`;
  const line = (text: string, first = '', indent = first): string => `${wrap(text, width, first, indent)}\n`;
  /** Verdicts within sentences, coloured after the lines are broken. */
  const loud = (text: string): string =>
    colour ? text.replace(/\b(?:FAILS?|DENIED|UNCERTAIN|ERROR)\b/g, (verdict) => paint(verdict, LOUD[verdict] ?? 'FAIL')) : text;
  const verdictCell = (verdict: VerdictWord, columns: number): string => paint(verdict, verdict) + ' '.repeat(columns - verdict.length);

  return [
    ...summary(),
    ...section('What fails, and what puts it right', report.runs.filter(({ outcome }) => outcome === 'fail').map(trouble)),
    ...section('What gets no power', report.switches.filter(({ budget }) => budget && budget.denied.length > 0).map(shedding)),
    ...section('What is uncertain, and what would settle it', report.runs.filter(isUncertain).map(trouble)),
    ...section('Every run', everyRun()),
    ...section('Figures of the runs that do not plainly pass', report.runs.filter((run) => !isPlainPass(run)).map(figures)),
    ...section(
      'Heat of bundles',
      report.runs.flatMap((run) => fact(run, heatOf(run), heatInWords)),
    ),
    ...section(
      'Measured beside expected',
      report.runs.flatMap((run) => fact(run, measuredOf(run), measuredInWords)),
    ),
    ...section('Switches', report.switches.map(switchLines)),
    ...section('Totals', totals()),
    ...section(
      'What was taken for granted',
      assumptions(report).map((entry) => line(`${entry.text} (${rowsInWords(entry)})`, '  - ', '    ')),
    ),
    ...section('What is wrong in the files', faults(report).map(fault)),
    ...section(
      'Where the limits come from',
      sourcesOf(report).map((text) => line(text, '  - ', '    ')),
    ),
    ...section(
      'Cautions',
      report.cautions.map((text) => line(text, '  - ', '    ')),
    ),
  ].join('');

  function section(title: string, parts: string[]): string[] {
    return parts.length === 0 ? [] : [heading(title), ...parts];
  }

  function summary(): string[] {
    const { outcomes, findings } = report.totals;
    const lines = [paint(plain(`SCHEDULE CHECKED: ${report.file}`), 'heading'), '\n\n', line(oneLine(report))];
    for (const entry of OUTCOMES) {
      const number = outcomes[entry.outcome];
      if (number === 0 || entry.outcome === 'pass') continue;
      const verdict = entry.word as VerdictWord;
      lines.push(`  ${right(String(number), 6)}  ${verdictCell(verdict, 11)}${meaning(entry, report)}\n`);
    }
    const wrong = [
      findings.error > 0 ? count(findings.error, 'error') : '',
      findings.warning > 0 ? count(findings.warning, 'warning') : '',
    ];
    if (findings.error + findings.warning > 0)
      lines.push(line(`In the files: ${wrong.filter((text) => text !== '').join(' and ')}, listed below.`));
    return report.runs.length === 0 ? lines : [...lines, '\n', line(settingsInWords(report))];
  }

  function title(run: RunReport): string {
    return `${run.run}${run.device === undefined ? '' : `, ${run.device}`}`;
  }

  function fact<T>({ run }: RunReport, about: T | undefined, words: (about: T) => string): string[] {
    return about === undefined ? [] : [line(`${run}: ${words(about)}`, '  - ', '    ')];
  }

  function trouble(run: RunReport, index: number): string {
    let text = (index === 0 ? '' : '\n') + line(title(run));
    for (const sentence of whatIsTheMatter(run, standard)) text += loud(line(sentence, '  '));
    const changes = whatToDo(run);
    if (run.outcome === 'fail') {
      text += line(
        changes.length === 0 ? combination(run) : changes.length === 1 ? 'This puts it right:' : 'Any one of these puts it right:',
        '  ',
      );
    }
    for (const change of changes) text += line(change, '  - ', '    ');
    return text;
  }

  function shedding({ switch: name, budget }: SwitchReport): string {
    if (budget === undefined) return '';
    let text = loud(
      line(`${name}: its ports want ${amount(budget.demand, 'W')}, it has ${amount(budget.capacity, 'W')}. DENIED, in this order:`),
    );
    for (const port of budget.denied) text += line(deniedInWords(port), '  - ', '    ');
    return text + line('Find a larger supply, move a device to another switch, or give what must stay on a higher priority.', '  ');
  }

  function everyRun(): string[] {
    if (report.runs.length === 0) return [];
    const wide = width >= 120;
    const runWidth = longestName(report.runs);
    const closest = wide ? 38 : 0;
    const deviceWidth = width - runWidth - 55 - closest;
    return [
      `${left('Run', runWidth)} ${left('Device', deviceWidth)}${right('Length', 7)}${right('Meter', 12)}${right('At far end', 14)}  ${left('Power', 10)}${wide ? `${left('Cabling', 11)}Closest limit` : 'Cabling'}\n`,
      `${right('m', runWidth + deviceWidth + 8)}${right('Ω', 12)}${right('V', 7)}${right('W', 7)}\n`,
      ...report.runs.map((run) => {
        const { power, cabling } = verdictWords(run);
        const { nominal, maximum } = run.meterReading;
        const [volts, watts] = run.farEnd.feasible ? [within(run.farEnd.voltage, 1, 6), within(run.farEnd.power, 2, 6)] : ['-', '-'];
        const row = `${left(run.run, runWidth)} ${left(run.device ?? '', deviceWidth)}${right(within(run.channelLength, 1, 6), 7)}${right(`${within(nominal, 1, 5)}-${within(maximum, 1, 5)}`, 12)}${right(volts, 7)}${right(watts, 7)}  ${verdictCell(power, 10)}`;
        if (!wide) return `${row}${paint(cabling, cabling)}\n`;
        return `${row}${verdictCell(cabling, 11)}${run.governing === undefined ? '' : closestLimit(run.governing)}`.trimEnd().concat('\n');
      }),
      '\n',
      line('Length: cords included. Meter: a shorted pair, from usual copper to the most allowed. Far end: at the lowest supply voltage.'),
    ];
  }

  function figures(run: RunReport, index: number): string {
    const { power, cabling } = verdictWords(run);
    let text = `${index === 0 ? '' : '\n'}${line(`${title(run)} (power ${power}, cabling ${cabling}${isDenied(run) ? ', denied' : ''})`)}`;
    for (const sentence of run.outcome === 'fail' ? [] : whatIsTheMatter(run, standard)) text += loud(line(sentence, '  '));
    const facts: readonly (readonly [string, string])[] = [
      ['Fed by', whereFrom(run)],
      ['Cable', whatOf(run)],
      ['Loops', loopsInWords(run)],
      ['Meter', meterInWords(run)],
      ['Far end', farEndInWords(run)],
    ];
    for (const [name, fact] of facts) text += line(fact, `  ${left(name, 8)}`, ' '.repeat(10));
    for (const note of run.notes) text += line(note, `  ${left('Note', 8)}`, ' '.repeat(10));
    const checks = checksOf(run);
    if (checks.length > 0)
      text += `  ${left('Check', titleWidth)}${right('Value', 12)}${right('Limit', 14)}${right('Margin', 13)}  Verdict\n`;
    for (const check of checks) text += checkLine(check);
    return text;
  }

  function checkLine(check: ReportedCheck): string {
    const { value, limit, margin } = checkFigures(check, 11);
    const verdict = word(check.verdict);
    return `  ${left(CHECK_WORDS[check.name].title, titleWidth)}${right(value, 12)}${right(limit, 14)}${right(margin, 13)}  ${paint(verdict, verdict)}\n`;
  }

  function switchLines(entry: SwitchReport): string {
    let text = line(`${entry.switch}: Type ${entry.type}, ${count(entry.ports, 'port')}`);
    for (const sentence of budgetInWords(entry)) text += line(sentence, '  ');
    for (const port of entry.budget?.denied ?? []) text += loud(line(`DENIED ${deniedInWords(port)}`, '  ', '    '));
    for (const note of entry.notes) text += line(`Note: ${note}.`, '  ', '    ');
    return text;
  }

  function totals(): string[] {
    const { runs, cables, cableHeat } = report.totals;
    if (runs === 0) return [];
    const worst = worstInWords(report.totals);
    return [
      ...cables.map(({ cable, use, length }) => `  ${right(fixed(length, 1), 10)} m  ${left(cable, 30)} ${use}\n`),
      ...(worst === undefined ? [] : [line(`Closest to a limit: ${worst}`, '  ', '    ')]),
      line(`Heat in all cables, every device at its full load: ${amount(cableHeat, 'W', 1)}`, '  ', '    '),
    ];
  }

  function fault(finding: Report['findings'][number]): string {
    const place = placeOf(finding);
    return loud(line(`${finding.severity === 'error' ? 'ERROR' : 'warning'}  ${place}: ${finding.message}`, '  - ', '    '));
  }
}

function closestLimit({ name, marginFraction }: ReportedCheck): string {
  return `${CHECK_WORDS[name].title}, ${percent(marginFraction)}`;
}

/** As many of the decimals as the columns hold. */
function within(value: number, decimals: number, columns: number): string {
  let text = fixed(value, decimals);
  for (let fewer = decimals - 1; text.length > columns && fewer >= 0; fewer--) text = fixed(value, fewer);
  return text.length > columns ? value.toExponential(0).replace('e+', 'e') : text;
}

/** Columns for the names of the runs: 3 to 12. */
function longestName(runs: readonly RunReport[]): number {
  let longest = 3;
  for (const { run } of runs) {
    const width = widthOf(run);
    if (width > longest) longest = width;
  }
  return longest < 12 ? longest : 12;
}
