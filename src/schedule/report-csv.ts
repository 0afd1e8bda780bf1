/** A report as CSV: one line for every run, unrounded, safe to open in a spreadsheet. @module */
import type { CheckName } from '../limits/check.ts';
import { heatOf, measuredOf } from './bundle-words.ts';
import { CHECK_WORDS } from './check-words.ts';
import type { Report, RunReport } from './report.ts';
import { requireReport } from './require-report.ts';
import { combination, whatIsTheMatter, whatOf, whatToDo } from './run-words.ts';

/**
 * A report as CSV (RFC 4180): a header line, then one line for every run.
 *
 * For data, so nothing is rounded: numbers are written with a point, as the shortest text that reads back as the same
 * number. Every check has four columns: value, limit, margin and verdict; they are empty where the check does not
 * apply. Cells with a comma, a quote or a line end are quoted. A text that a spreadsheet would run as a formula (its
 * first character, after any blanks, is `=`, `+`, `-` or `@`, or it begins with a tab or a line end) gets an
 * apostrophe in front; numbers of this library, negative ones too, stay numbers. Line ends are `\r\n`; the text is
 * meant to be written as UTF-8, without a byte-order mark.
 *
 * @param report - The report of `checkSchedule`.
 * @returns The text of the file.
 * @throws {@link InputError} If it is no report.
 * @example
 * const report = checkSchedule({
 *   runs: [{ kind: 'two-wire', run: '=1+1', input: {
 *     supplyVoltage: { low: 21, high: 27.6 }, conductor: awg(18), length: 60, load: { power: 6 }, minimumVoltage: 19,
 *   } }],
 *   switches: [],
 * });
 * reportCsv(report).split('\r\n')[1]?.startsWith("'=1+1,,two-wire,"); // => true
 */
export function reportCsv(report: Report): string {
  requireReport(report);
  const standard = report.settings.cabling;
  // Columns of bundles and measurements only where there are any, so that files without them stay as they were.
  const isWarm = report.runs.some((run) => heatOf(run) !== undefined || measuredOf(run) !== undefined);
  const heads = isWarm ? [...HEADS, ...WARM_HEADS] : HEADS;
  const lines = [`${heads.map(textCell).join(',')}\r\n`];
  for (const run of report.runs) {
    const row = cells(run, standard);
    if (isWarm) row.push(...warmCells(run));
    lines.push(`${row.join(',')}\r\n`);
  }
  return lines.join('');
}

const HEAT_CHECKS: readonly CheckName[] = ['conductor-temperature', 'bundle-rise', 'ampacity'];
const CHECKS = (Object.keys(CHECK_WORDS) as CheckName[]).filter((name) => !HEAT_CHECKS.includes(name));

const HEADS: readonly string[] = [
  'Run',
  'Device',
  'Kind',
  'Line',
  'Outcome',
  'Power',
  'Cabling',
  'Allocation',
  'Switch',
  'Port',
  'Priority',
  'PoE class',
  'Granted class',
  'Port type',
  'Pairs',
  'Supply low (V)',
  'Supply high (V)',
  'Cable',
  'Connections',
  'Installed length (m)',
  'Channel length (m)',
  'Pair loop (ohm)',
  'One pairset (ohm)',
  'Two pairsets (ohm)',
  'Pair loop at 20 degC (ohm)',
  'Meter, usual copper (ohm)',
  'Meter, most allowed (ohm)',
  'Far end (V)',
  'Far end (W)',
  'Available (W)',
  'Allowed (W)',
  'Total current (A)',
  'Pairset current (A)',
  'Conductor current (A)',
  'Heat in cable (W)',
  'Governing check',
  'Governing margin',
  'Governing margin of limit',
  'Why',
  'What to do',
  'Notes',
  ...CHECKS.flatMap(checkHeads),
];

const WARM_HEADS: readonly string[] = [
  'Bundle (cables)',
  'Installation',
  'Bundle rise (K)',
  'Conductors (degC)',
  'Heat',
  'Largest bundle (cables)',
  'Measured (ohm)',
  'Expected, least (ohm)',
  'Expected, most (ohm)',
  'Measured is',
  'Consistent with',
  ...HEAT_CHECKS.flatMap(checkHeads),
];

function checkHeads(name: CheckName): string[] {
  return [`${name}: value`, `${name}: limit`, `${name}: margin`, `${name}: verdict`];
}

function warmCells(run: RunReport): string[] {
  const heat = heatOf(run);
  const measured = measuredOf(run);
  const way = heat?.installation;
  return [
    numberCell(heat?.cables),
    way === undefined ? '' : typeof way === 'string' ? way : textCell(`${way.filmCoefficient} W/(m²·K)`),
    numberCell(heat?.rise),
    numberCell(heat?.temperature),
    heat?.verdict ?? '',
    numberCell(heat?.largestBundle),
    measured?.readings.map(({ ohms }) => ohms).join(' ') ?? '',
    numberCell(measured?.expected.low),
    numberCell(measured?.expected.high),
    measured?.status ?? '',
    measured?.consistentWith.join(' ') ?? '',
    ...HEAT_CHECKS.flatMap((name) => {
      const check = heat?.checks.find((other) => other.name === name);
      return check === undefined
        ? ['', '', '', '']
        : [numberCell(check.value), numberCell(check.limit), numberCell(check.margin), check.verdict];
    }),
  ];
}

function cells(run: RunReport, standard: string): string[] {
  const { farEnd, governing } = run;
  const powered = run.kind === 'powered' ? run : undefined;
  const flow = farEnd.feasible ? farEnd : undefined;
  const row = [
    textCell(run.run),
    textCell(run.device ?? ''),
    run.kind,
    numberCell(run.line),
    run.outcome,
    run.verdict.power,
    run.verdict.cabling ?? '',
    powered?.allocation ?? '',
    textCell(powered?.switch ?? ''),
    numberCell(powered?.port),
    powered?.priority ?? '',
    numberCell(powered?.poeClass),
    numberCell(powered?.grantedClass),
    numberCell(powered?.pseType),
    numberCell(powered?.pairs),
    numberCell(run.supplyVoltage.low),
    numberCell(run.supplyVoltage.high),
    textCell(whatOf(run)),
    numberCell(run.connections),
    numberCell(run.installedLength),
    numberCell(run.channelLength),
    numberCell(run.loops.pairLoop),
    numberCell(powered?.loops.twoPair),
    numberCell(powered?.loops.fourPair),
    numberCell(powered?.pairLoopAt20),
    numberCell(run.meterReading.nominal),
    numberCell(run.meterReading.maximum),
    numberCell(flow?.voltage),
    numberCell(flow?.power),
    numberCell(powered?.availablePower),
    numberCell(powered?.allowedPower),
    numberCell(flow?.totalCurrent),
    numberCell(flow?.pairsetCurrent),
    numberCell(flow?.conductorCurrent),
    numberCell(flow?.cableHeat),
    governing?.name ?? '',
    numberCell(governing?.margin),
    numberCell(governing?.marginFraction),
    textCell(whatIsTheMatter(run, standard).join(' ')),
    textCell(todo(run)),
    textCell(run.notes.join('; ')),
  ];
  for (const name of CHECKS) {
    const check = run.powerChecks.find((other) => other.name === name) ?? run.cablingChecks.find((other) => other.name === name);
    if (check === undefined) row.push('', '', '', '');
    else row.push(numberCell(check.value), numberCell(check.limit), numberCell(check.margin), check.verdict);
  }
  return row;
}

/** What to do about a run; for a failing one, at the least what it takes. */
function todo(run: RunReport): string {
  const changes = whatToDo(run);
  return changes.length === 0 && run.outcome === 'fail' ? combination(run) : changes.join('; ');
}

function numberCell(value: number | undefined): string {
  return value === undefined ? '' : String(value);
}

const RUNS_AS_FORMULA = /^(?:[\s\u00a0\ufeff]*[=+\-@\uff1d\uff0b\uff0d\uff20]|[\t\r\n])/;
const NEEDS_QUOTES = /[",\r\n]|^\s|\s$/;

function textCell(text: string): string {
  const harmless = RUNS_AS_FORMULA.test(text) ? `'${text}` : text;
  return NEEDS_QUOTES.test(harmless) ? `"${harmless.replace(/"/g, '""')}"` : harmless;
}
