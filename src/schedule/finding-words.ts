/** Findings for reading: located, and what was taken for granted gathered up. @module */
import { count } from '../words/amount.ts';
import type { Finding, FindingSeverity } from './finding.ts';
import type { Report } from './report.ts';

/** Something taken for granted, and all the rows it was taken for granted in. @internal */
export interface Assumption {
  readonly text: string;
  readonly rows: readonly string[];
}

const ORDER: readonly FindingSeverity[] = ['error', 'warning'];

/** Errors, then warnings, each in the order of the file. @internal */
export function faults(report: Report): Finding[] {
  return ORDER.flatMap((severity) => report.findings.filter((finding) => finding.severity === severity));
}

/** Where a finding is, as in `runs.csv, line 14, Length`. @internal */
export function placeOf({ file, line, column }: Finding): string {
  return [file, line === undefined ? undefined : `line ${line}`, column].filter((part) => part !== undefined && part !== '').join(', ');
}

/**
 * What a finding says, for a place that names its file already.
 *
 * @param finding - A finding of `parseSchedule` or of a report.
 * @returns Its message; that of a whole file without the name of the file in front.
 * @example
 * const [finding] = parseSchedule({ runs: '' }).findings;
 * finding && messageOf(finding); // => 'it is empty'
 */
export function messageOf(finding: Finding): string {
  const { file, message } = finding;
  return message.startsWith(`${file}: `) ? message.slice(file.length + 2) : message;
}

/** Every default and every note on a run, one entry for each, with the rows it holds for. @internal */
export function assumptions(report: Report): Assumption[] {
  const names = new Map(report.runs.map(({ run, line }) => [line, run]));
  const rowsOf = new Map<string, string[]>();
  const add = (text: string, row: string): void => {
    const rows = rowsOf.get(text);
    if (rows === undefined) rowsOf.set(text, [row]);
    else rows.push(row);
  };
  for (const finding of report.findings) {
    if (finding.severity !== 'note') continue;
    const { file, line, column, message } = finding;
    const run = file === report.file && line !== undefined ? names.get(line) : undefined;
    // The message names its row; without that, rows with the same default read alike.
    const text = run !== undefined && message.startsWith(`run ${run}: `) ? message.slice(`run ${run}: `.length) : message;
    const isNamed = column === undefined || text.includes(withoutUnit(column));
    add(isNamed ? text : `${column}: ${text}`, run ?? (line === undefined ? `every row of ${file}` : `${file} line ${line}`));
  }
  for (const { run, notes } of report.runs) for (const note of notes) add(note, run);
  return [...rowsOf].map(([text, rows]) => ({ text, rows }));
}

/** A header without the unit that stands in brackets after it. */
function withoutUnit(column: string): string {
  return column.replace(/\s*[([].*$/, '');
}

/** The first few of many names, and how many more there are. @internal */
export function someOf(names: readonly string[], most: number): string {
  const shown = names.slice(0, most).join(', ');
  return names.length > most ? `${shown} and ${names.length - most} more` : shown;
}

/** `3 rows: A, B and 1 more`. @internal */
export function rowsInWords({ rows }: Assumption): string {
  return rows.length === 1 ? (rows[0] as string) : `${count(rows.length, 'row')}: ${someOf(rows, 6)}`;
}
