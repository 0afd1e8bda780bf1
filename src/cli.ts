#!/usr/bin/env node
/** The command `farend`: a thin shell around the schedule and working rooms. @module */
import { fstatSync, readFileSync, realpathSync } from 'node:fs';
import { readFile, stat, writeFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import {
  type CheckScheduleOptions,
  checkSchedule,
  messageOf,
  parseSchedule,
  type Report,
  reportCsv,
  reportMarkdown,
  reportSummary,
  reportText,
} from './schedule/index.ts';

/** What the command needs of the world; a test hands over its own. */
export interface CommandWorld {
  /** Everything on standard input. */
  readonly readInput: () => Promise<Uint8Array>;
  readonly readFile: (path: string) => Promise<Uint8Array>;
  readonly writeFile: (path: string, pieces: Iterable<string>) => Promise<void>;
  /** The same text for two names of one file, links included; nothing where there is no such file. `-` is standard input. */
  readonly identify: (path: string) => Promise<string | undefined>;
  readonly print: (text: string) => void;
  readonly complain: (text: string) => void;
  /** Columns of the terminal that `print` goes to; absent where it is no terminal. */
  readonly columns?: number | undefined;
  readonly environment: Readonly<Record<string, string | undefined>>;
}

/** All pass; something fails or is denied; nothing could be judged. */
export type ExitCode = 0 | 1 | 2;

const HELP = `farend: what arrives at the far end of every run of a cable schedule

  farend check RUNS.csv [--switches SWITCHES.csv] [options]
  farend work NAME key=value ...     a calculation with every step shown; see
                                     farend work --help

RUNS.csv and SWITCHES.csv are delimited text: comma, semicolon or tab, with a
header line. One of the two may be - for standard input. Without a switch file
each run is judged on the weakest type of port that serves its class, and no
power budget is judged.

Options
  --switches FILE   the switches: type, ports, power budget or supplies
  --format FORMAT   text (default), markdown, csv or json
  --output FILE     write the report to FILE, and one line about it to the
                    terminal
  --full            text and markdown: the figures of every run, those of plain
                    passes too (csv and json always hold them)
  --cabling RULES   TIA-568 (default), ISO/IEC-11801, or none to judge power
                    alone
  --basis BASIS     what a switch sets aside for a port: class (default), or
                    requested for what the device itself draws
  --policy POLICY   who is shed: strict (default), or fill to admit again what
                    still fits
  --help, -h        this text
  --version, -v     the version

The exit code is
  0  every run passes and has power; marginal and uncertain runs do not count as
     failing
  1  a run fails, a port is denied power, or the files have an error in them
  2  nothing could be judged: a file is missing or holds no usable row, an
     option is wrong, or the report cannot be written

Colour only on a terminal, and never where NO_COLOR is set.

This is arithmetic, not a licence: the local code and a licensed practitioner
come first.
`;

/**
 * Runs the command.
 *
 * @param argv - Its arguments, without the program's own name.
 * @param world - Files, streams and environment.
 * @returns The exit code.
 */
export async function main(argv: readonly string[], world: CommandWorld): Promise<ExitCode> {
  // Loaded only when asked: the formula sheets bring an expression parser with them.
  if (argv[0] === 'work') return (await import('./working/index.ts')).work(argv.slice(1), world);
  try {
    const order = readOrder(argv);
    if (order === 'help') world.print(HELP);
    else if (order === 'version') world.print(`${version()}\n`);
    else return await check(order, world);
    return 0;
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    world.complain(`farend: ${error.message}\n`);
    return 2;
  }
}

/** Something that a person has to put right before anything can be judged. */
class Refusal extends Error {}

const FORMATS = ['text', 'markdown', 'csv', 'json'] as const;
const CABLING = { 'tia-568': 'TIA-568', 'iso/iec-11801': 'ISO/IEC 11801', 'iso/iec 11801': 'ISO/IEC 11801', none: 'none' } as const;
const BASES = ['class', 'requested'] as const;
const POLICIES = ['strict', 'fill'] as const;

/** What the command is asked to do. */
interface Order {
  readonly runs: string;
  readonly switches?: string | undefined;
  readonly output?: string | undefined;
  readonly full: boolean;
  readonly format: (typeof FORMATS)[number];
  readonly judging: Pick<CheckScheduleOptions, 'cabling' | 'budget'>;
}

function readOrder(argv: readonly string[]): Order | 'help' | 'version' {
  const { values, positionals } = parsed(argv);
  if (values.help === true) return 'help';
  if (values.version === true) return 'version';
  const [command, runs, ...others] = positionals;
  if (command === undefined) throw new Refusal(`say what to do, as in: farend check RUNS.csv\n${TRY_HELP}`);
  if (command !== 'check') throw new Refusal(`there is no command ${quoted(command)}; there are check and work\n${TRY_HELP}`);
  if (runs === undefined) throw new Refusal(`check needs the file of runs, as in: farend check RUNS.csv\n${TRY_HELP}`);
  if (others.length > 0) throw new Refusal(`check takes one file of runs; ${quoted(others[0] as string)} is one too many\n${TRY_HELP}`);
  if (runs === '-' && values.switches === '-') throw new Refusal('only one of the two files can be read from standard input');
  if (values.switches === '') throw new Refusal('--switches needs the name of a file');
  if (values.output === '') throw new Refusal('--output needs the name of a file');
  const cabling = (values.cabling ?? 'TIA-568').toLowerCase();
  if (!Object.hasOwn(CABLING, cabling)) {
    throw new Refusal(`--cabling is TIA-568, ISO/IEC-11801 or none, not ${quoted(values.cabling ?? '')}`);
  }
  return {
    runs,
    switches: values.switches,
    output: values.output,
    full: values.full ?? false,
    format: oneOf('--format', values.format ?? 'text', FORMATS),
    judging: {
      cabling: CABLING[cabling as keyof typeof CABLING],
      budget: { basis: oneOf('--basis', values.basis ?? 'class', BASES), policy: oneOf('--policy', values.policy ?? 'strict', POLICIES) },
    },
  };
}

const TRY_HELP = 'farend --help says more';

function parsed(argv: readonly string[]): ReturnType<typeof parseArgs<typeof OPTIONS>> {
  try {
    return parseArgs({ ...OPTIONS, args: [...argv] });
  } catch (error) {
    throw new Refusal(`${wrongOption(error)}; ${TRY_HELP}`);
  }
}

/** Our own words for what the reader of options says. */
function wrongOption(error: unknown): string {
  const { code, message } = error as NodeJS.ErrnoException;
  // It quotes the option, as in '--format <value>' or '-h, --help'.
  const option = /'(?:-\w, )?(-[^\s']*)/.exec(message)?.[1] ?? '';
  if (code === 'ERR_PARSE_ARGS_UNKNOWN_OPTION') return `there is no option ${option}`;
  if (code !== 'ERR_PARSE_ARGS_INVALID_OPTION_VALUE') return `the options cannot be read: ${message}`;
  const name = option.replace(/^--/, '');
  const takes = Object.hasOwn(OPTIONS.options, name) ? OPTIONS.options[name as keyof typeof OPTIONS.options].type : 'boolean';
  return takes === 'string' ? `${option} needs a value after it` : `${option} takes no value`;
}

const OPTIONS = {
  allowPositionals: true,
  options: {
    switches: { type: 'string' },
    format: { type: 'string' },
    output: { type: 'string' },
    full: { type: 'boolean' },
    cabling: { type: 'string' },
    basis: { type: 'string' },
    policy: { type: 'string' },
    help: { type: 'boolean', short: 'h' },
    version: { type: 'boolean', short: 'v' },
  },
} as const;

function oneOf<T extends string>(option: string, value: string, allowed: readonly T[]): T {
  const found = allowed.find((name) => name === value.toLowerCase());
  if (found === undefined) throw new Refusal(`${option} is ${allowed.slice(0, -1).join(', ')} or ${allowed.at(-1)}, not ${quoted(value)}`);
  return found;
}

async function check(order: Order, world: CommandWorld): Promise<ExitCode> {
  const { format, output, full } = order;
  const runsFile = nameOf(order.runs);
  const switchesFile = order.switches === undefined ? undefined : nameOf(order.switches);
  if (output !== undefined) await spareInputs(output, order, world);
  const runs = await read(order.runs, world);
  const switches = order.switches === undefined ? undefined : await read(order.switches, world);
  const { schedule, findings } = parseSchedule({ runs, switches, runsFile, switchesFile });
  const report = checkSchedule(schedule, { ...order.judging, findings, runsFile, switchesFile });

  const terminal = output === undefined ? world.columns : undefined;
  const pieces = format === 'json' ? jsonPieces(report) : [rendered(report, { format, full }, terminal, world)];
  if (output === undefined) for (const piece of pieces) world.print(piece);
  else {
    await write(output, pieces, world);
    world.complain(`${reportSummary(report)}\nThe report is in ${output}\n`);
  }
  // A table of runs has no room for what is wrong with the files.
  if (format === 'csv')
    world.complain(
      report.findings
        .filter(({ severity }) => severity === 'error')
        .map(inShort)
        .join(''),
    );
  if (report.runs.length === 0) {
    world.complain(`farend: no run of ${runsFile} could be judged\n`);
    return 2;
  }
  const { outcomes, findings: found } = report.totals;
  const isDenied = report.switches.some(({ budget }) => budget !== undefined && budget.denied.length > 0);
  return outcomes.fail > 0 || isDenied || found.error > 0 ? 1 : 0;
}

function rendered(
  report: Report,
  { format, full }: Pick<Order, 'format' | 'full'>,
  columns: number | undefined,
  { environment }: CommandWorld,
): string {
  if (format === 'markdown') return reportMarkdown(report, { full });
  if (format === 'csv') return reportCsv(report);
  if (columns === undefined) return reportText(report, { full });
  const colour = !environment['NO_COLOR'] && environment['TERM'] !== 'dumb';
  return reportText(report, { width: Math.min(Math.max(columns, 72), 140), colour, full });
}

/** A report as JSON, with the number of its shape and the version of the program, one run to a line: the text of a large one would be longer than a string can be. */
function* jsonPieces({ runs, ...rest }: Report): Generator<string> {
  const { file, settings, ...others } = rest;
  const head = { schema: 1, version: version(), file, settings };
  yield `${JSON.stringify(head).slice(0, -1)},\n"runs":[`;
  for (let index = 0; index < runs.length; index++) yield `${index === 0 ? '' : ','}\n${JSON.stringify(runs[index])}`;
  yield ']';
  for (const [key, value] of Object.entries(others)) yield `,\n${JSON.stringify(key)}:${JSON.stringify(value)}`;
  yield '}\n';
}

function inShort(finding: Report['findings'][number]): string {
  const { file, line } = finding;
  return `farend: ${line === undefined ? file : `${file}, line ${line}`}: ${messageOf(finding)}\n`;
}

async function read(path: string, world: CommandWorld): Promise<Uint8Array> {
  try {
    return path === '-' ? await world.readInput() : await world.readFile(path);
  } catch (error) {
    throw new Refusal(`${path === '-' ? 'standard input' : path} cannot be read: ${why(error)}`);
  }
}

/** A report that took the place of its own schedule could not be made twice. */
async function spareInputs(output: string, { runs, switches }: Order, world: CommandWorld): Promise<void> {
  const target = await world.identify(output);
  for (const input of switches === undefined ? [runs] : [runs, switches]) {
    if (target === undefined || target !== (await world.identify(input))) continue;
    throw new Refusal(`${output} is read by this command, so the report cannot be written over it; give --output another name`);
  }
}

async function write(path: string, pieces: Iterable<string>, world: CommandWorld): Promise<void> {
  try {
    await world.writeFile(path, pieces);
  } catch (error) {
    throw new Refusal(`${path} cannot be written: ${why(error)}`);
  }
}

/** The plain words for what a file system says in capitals. */
function why(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  const words: Readonly<Record<string, string>> = {
    ENOENT: 'there is no such file or folder',
    EISDIR: 'it is a folder',
    EACCES: 'it is not allowed',
    EPERM: 'it is not allowed',
    ENOTDIR: 'a part of its path is no folder',
    ENOSPC: 'the disk is full',
  };
  return Object.hasOwn(words, code) ? (words[code] as string) : error instanceof Error ? error.message : String(error);
}

function nameOf(path: string): string {
  return path === '-' ? 'standard input' : basename(path);
}

function quoted(text: string): string {
  return JSON.stringify(text);
}

function version(): string {
  // One folder up, from src as from dist.
  const { version } = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8')) as { version: string };
  return version;
}

/** Whether this file is what was started, by its own name or by a link to it. */
function isStarted(): boolean {
  const started = process.argv[1];
  if (started === undefined) return false;
  try {
    return pathToFileURL(realpathSync(started)).href === import.meta.url;
  } catch {
    return false;
  }
}

async function standardInput(): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of process.stdin) chunks.push(chunk as Uint8Array);
  return Buffer.concat(chunks);
}

/** Which file a name stands for; pipes and terminals are no files. */
async function fileIdentity(path: string): Promise<string | undefined> {
  try {
    const found = path === '-' ? fstatSync(0, { bigint: true }) : await stat(path, { bigint: true });
    return found.isFile() ? `${found.dev}:${found.ino}` : undefined;
  } catch {
    return undefined;
  }
}

if (isStarted()) {
  let isLost = false;
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    // Whoever reads the report may have seen enough; the exit code stays what it is.
    if (error.code === 'EPIPE' || isLost) return;
    isLost = true;
    process.stderr.write(`farend: standard output cannot be written: ${why(error)}\n`);
    process.exitCode = 2;
  });
  // With nowhere left to complain, the exit code has to do.
  process.stderr.on('error', () => {});
  const world: CommandWorld = {
    readInput: standardInput,
    readFile,
    writeFile,
    identify: fileIdentity,
    print: (text) => process.stdout.write(text),
    complain: (text) => process.stderr.write(text),
    columns: process.stdout.isTTY ? process.stdout.columns : undefined,
    environment: process.env,
  };
  const code = await main(process.argv.slice(2), world);
  process.exitCode = isLost ? 2 : code;
}
