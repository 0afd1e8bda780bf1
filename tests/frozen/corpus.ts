/**
 * The frozen corpus: questions put to version 0.1 and what it answered, one JSON record a line, gzipped, a file for each room.
 *
 * A record is plain data. What a function of the library has to make (a cable, a conductor, a run) stands in it as the call that makes it:
 * `{ $: ['awg', 24, { stranding: 'solid' }] }`, or one part of what that call gives: `{ $: [...], part: 'out' }`. Doubles are written as
 * JSON writes them, which gives the same double back; the few values that JSON lacks are `{ number: '-0' }` and the like.
 * @module
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';

/** Everything that the rooms export, by name. */
export type Library = Readonly<Record<string, unknown>>;

/** One question and its answer. */
export interface FrozenRecord {
  /** Name of the function in 0.1, or of one of the calls in {@link CALLS}. */
  readonly name: string;
  readonly args: readonly unknown[];
  /** What it returned, without prose. */
  readonly result?: unknown;
  /** Or the code and the parameter of the `InputError` that it threw. */
  readonly error?: readonly [code: string, parameter: string];
}

/** The function that answers to a name of 0.1 today, and its arguments as it takes them today. */
export type Translate = (name: string, args: readonly unknown[]) => { readonly name: string; readonly args: readonly unknown[] };

/** What holds sentences: what they say is not frozen, only what is counted, decided and named. */
const PROSE =
  /^(?:message|statement|notes?|cautions?|assumptions|tells|title|of|says|meaning|words|allowed|received|notIncluded|cabling|approved|locus)$/;

/** The records of one file, in order. */
export function frozenRecords(file: string): FrozenRecord[] {
  const lines = gunzipSync(readFileSync(join(import.meta.dirname, file)))
    .toString('utf8')
    .trimEnd()
    .split('\n');
  return lines.map((line) => JSON.parse(line) as FrozenRecord);
}

/** The files of the corpus. */
export function frozenFiles(): string[] {
  return readdirSync(import.meta.dirname).filter((name) => name.endsWith('.jsonl.gz'));
}

/** Calls a function by its name in 0.1, with the objects in its arguments made by the library under test. */
export function ask(library: Library, name: string, args: readonly unknown[], translate: Translate): unknown {
  const made = args.map((arg) => makeObjects(library, arg, translate));
  const composed = CALLS[name];
  return composed === undefined ? callTranslated(library, name, made, translate) : composed(library, made, translate);
}

/** What more than one function answers, or what is too much to keep whole. */
const CALLS: Readonly<Record<string, (library: Library, args: readonly unknown[], translate: Translate) => unknown>> = {
  /** A function by its name, and its input with ranges. */
  bounds: (library, [of, input], translate) => {
    const { name, args } = translate(String(of), [input]);
    return callTranslated(library, 'bounds', [library[name], ...args], translate);
  },
  /** Texts of the files and options, to the report. */
  schedule: (library, [texts, options], translate) => reportOf(library, 'parseSchedule', texts, options, translate),
  /** Rows and options, to the report. */
  scheduleOfRows: (library, [rows, options], translate) => reportOf(library, 'scheduleFromRows', rows, options, translate),
  /** Texts of the files, to the report of each run alone, every other with its switch. */
  checkRun: (library, [texts, options], translate) => {
    const { schedule } = callTranslated(library, 'parseSchedule', [texts], translate) as {
      readonly schedule: {
        readonly runs: readonly { readonly switch?: string }[];
        readonly switches: readonly { readonly switch: string }[];
      };
    };
    return schedule.runs.map((run, index) => {
      const fed = index % 2 === 0 ? undefined : schedule.switches.find((one) => one.switch === run.switch);
      return callTranslated(library, 'checkRun', [run, { ...(options as object | undefined), switch: fed }], translate);
    });
  },
  /** A name, to the constant of that name. */
  constant: (library, [name]) => library[String(name)],
  /** A sheet and its input, to its figures. */
  working: (library, [sheet, input], translate) => {
    const { name, args } = translate(String(sheet), [input]);
    const { feasible, isPlainNo, result, results, steps, givens, range } = callTranslated(
      library,
      'showWorking',
      [name, ...args],
      translate,
    ) as {
      readonly [Key in 'feasible' | 'isPlainNo']?: unknown;
    } & { readonly [Key in 'result' | 'results' | 'steps' | 'givens' | 'range']?: unknown };
    return figuresOnly({ feasible, isPlainNo, result, results, steps, givens, range });
  },
  /** A sheet, its input, an answer and options, to the verdict and the slips. */
  review: (library, [sheet, input, answer, options], translate) => {
    const { name, args } = translate(String(sheet), [input]);
    const review = callTranslated(library, 'reviewAnswer', [name, ...args, answer, options], translate) as {
      readonly verdict: unknown;
      readonly answer?: unknown;
      readonly expected: { readonly value: unknown; readonly unit: unknown };
      readonly slips: readonly { readonly slip: unknown; readonly value: unknown }[];
    };
    const { verdict, expected, slips } = review;
    return {
      verdict,
      answer: review.answer,
      expected: { value: expected.value, unit: expected.unit },
      slips: slips.map(({ slip, value }) => ({ slip, value })),
    };
  },
};

function reportOf(library: Library, reader: string, texts: unknown, options: unknown, translate: Translate): unknown {
  const read = callTranslated(library, reader, [texts], translate) as { readonly schedule: unknown; readonly findings: unknown };
  const judged = { ...(options as object | undefined), findings: read.findings };
  return callTranslated(library, 'checkSchedule', [read.schedule, judged], translate);
}

function callTranslated(library: Library, name: string, args: readonly unknown[], translate: Translate): unknown {
  const today = translate(name, args);
  const call = library[today.name];
  if (typeof call !== 'function') throw new Error(`the library has no function ${today.name}`);
  return call(...today.args) as unknown;
}

function makeObjects(library: Library, value: unknown, translate: Translate): unknown {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map((part) => makeObjects(library, part, translate));
  if ('number' in value && typeof value.number === 'string') return Number(value.number);
  if ('$' in value && Array.isArray(value.$)) {
    const [name, ...args] = value.$ as [string, ...unknown[]];
    const made = ask(library, name, args, translate);
    return 'part' in value ? (made as Record<string, unknown>)[String(value.part)] : made;
  }
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, makeObjects(library, part, translate)]));
}

/** Of the rows of a sheet the symbol, the figure and its unit. */
function figuresOnly(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(figuresOnly);
  const row = Object.entries(value).filter(
    ([key, part]) => part !== undefined && !/^(?:latex|shown|formula|substituted|core|source|table)$/.test(key),
  );
  return Object.fromEntries(row.map(([key, part]) => [key, figuresOnly(part)]));
}

/** A result as a record holds it: without prose, and with every number in a form that JSON gives back exactly. */
export function withoutProse(value: unknown): unknown {
  if (typeof value === 'number' && (Object.is(value, -0) || !Number.isFinite(value)))
    return { number: Object.is(value, -0) ? '-0' : `${value}` };
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(withoutProse);
  const kept = Object.entries(value).filter(([key, part]) => part !== undefined && !(PROSE.test(key) && isProse(part)));
  return Object.fromEntries(kept.map(([key, part]) => [key, withoutProse(part)]));
}

/** One word is a name, as in `of: 'conductor'`. */
function isProse(value: unknown): boolean {
  return typeof value === 'string' ? value.includes(' ') : Array.isArray(value) && value.every((part) => typeof part === 'string');
}

/** The code and the parameter of an error of the library; any other error is thrown on. */
export function errorWords(error: unknown): [code: string, parameter: string] {
  if (error instanceof RangeError && 'code' in error && 'parameter' in error) return [String(error.code), String(error.parameter)];
  throw error;
}
