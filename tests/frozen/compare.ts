/** Puts a frozen record to a library and tells every difference, path by path. @module */
import { ask, errorWords, type FrozenRecord, type Library, withoutProse } from './corpus.ts';
import { type Gone, LANDED, MOVED, MOVES, type Move, type Moved, partsOf } from './moves.ts';

/** What a comparison found: differences in words, and the entries of `MOVED` that were needed. */
export interface Comparison {
  readonly differences: readonly string[];
  readonly needed: readonly Moved[];
}

const fits = (functions: readonly string[], name: string): boolean => functions.includes(name) || functions.includes('*');
const MOVES_BY_NOW: readonly Move[] = MOVES.filter(({ shape }) => LANDED.includes(shape));
const movesFor = (name: string): readonly Move[] => MOVES_BY_NOW.filter(({ functions }) => fits(functions, name));

/** The entries of `MOVED` that hold by now. */
export const MOVED_BY_NOW: readonly Moved[] = MOVED.filter(({ shape }) => shape === undefined || LANDED.includes(shape));

/** Name and arguments of today. */
export function translated(name: string, args: readonly unknown[]): { readonly name: string; readonly args: readonly unknown[] } {
  return movesFor(name).reduce((now, { to, args: change }) => ({ name: to ?? now.name, args: change?.(now.args) ?? now.args }), {
    name,
    args,
  });
}

/** What the library of today answers to a record, against what 0.1 answered. */
export function compared(library: Library, record: FrozenRecord): Comparison {
  const differences: string[] = [];
  const needed: Moved[] = [];
  const { outcome, now } = askedToday(library, record);
  const differ = (path: string, to: string, was: unknown, is: unknown): void => {
    const moved = MOVED_BY_NOW.find(
      (entry) => fits(entry.functions, record.name) && pattern(entry.path).test(path) && entry.holds({ was, is, record, now }),
    );
    if (moved !== undefined) needed.push(moved);
    else differences.push(`${path}${to === path ? '' : ` (now ${to})`}: was ${shown(was)}, is ${shown(is)}`);
  };

  const expected = record.error === undefined ? 'result' : errorNow(record.name, record.error.join(' '));
  if (expected !== outcome) differ('outcome', 'outcome', record.error?.join(' ') ?? 'result', outcome);
  else if (record.error === undefined) {
    for (const { path, value } of leaves(record.result, '')) {
      const to = movedPath(record, path, MOVES_BY_NOW);
      if (typeof to !== 'string') continue;
      const found = resolved(now, to);
      // Of a list the number of its elements.
      const is = Array.isArray(value) && Array.isArray(found) ? found.length : found;
      const was = Array.isArray(value) ? value.length : value;
      if (!Object.is(is, was)) differ(path, to, was, is);
    }
  }
  return { differences, needed };
}

function askedToday(library: Library, record: FrozenRecord): { readonly outcome: string; readonly now: unknown } {
  try {
    return { outcome: 'result', now: ask(library, record.name, record.args, translated) };
  } catch (error) {
    return { outcome: wordsOf(error), now: error };
  }
}

/** Of an error of any other kind its message: it is a difference, not the end of the comparison. */
function wordsOf(error: unknown): string {
  try {
    return errorWords(error).join(' ');
  } catch {
    return `a thrown ${String(error)}`;
  }
}

function errorNow(name: string, words: string): string {
  return movesFor(name).reduce((now, { errors = [] }) => {
    const rule = errors.find(([from]) => pattern(from).test(now));
    return rule === undefined ? now : rewritten(now, rule[0], rule[1]);
  }, words);
}

/** Where a path of 0.1 stands after some moves. A part that another function answers is moved by the moves of that function first. */
export function movedPath(record: FrozenRecord, path: string, moves: readonly Move[]): string | Gone {
  return movedWithin(record, record.name, path, record.result, moves);
}

function movedWithin(record: FrozenRecord, name: string, path: string, result: unknown, moves: readonly Move[]): string | Gone {
  const isWhole = name === record.name;
  let now = path;
  const parts = partsOf({ ...record, name });
  const part = Object.keys(parts).find((prefix) => pattern(`${prefix}.`).test(now));
  if (part !== undefined) {
    const start = (pattern(`${part}.`).exec(now)?.[0] ?? '').length;
    const inner = movedWithin(record, parts[part] as string, now.slice(start), resolved(result, now.slice(0, start - 1)), moves);
    if (typeof inner !== 'string') return inner;
    now = now.slice(0, start) + inner;
  }
  // What moved in every function is moved once, from the top.
  for (const { functions, paths = [] } of moves) {
    if (!functions.includes(name) && !(isWhole && functions.includes('*'))) continue;
    const rule = paths.find(([from, , when]) => pattern(from).test(now) && (when === undefined || when(record, now)));
    if (rule === undefined) continue;
    const [from, to] = rule;
    if (typeof to !== 'string') return to;
    const rest = now.length - (pattern(from).exec(now)?.[0] ?? '').length;
    const named = (): string => `[name=${String(resolved(result, `${path.slice(0, path.length - rest)}.name`))}]`;
    now = rewritten(now, from, to).replace('[=name]', named);
  }
  return now;
}

const PATTERNS = new Map<string, RegExp>();

/** The beginning of a path that a rule asks for; `$` at the end, and no rest is left. */
function pattern(from: string): RegExp {
  const known = PATTERNS.get(from);
  if (known !== undefined) return known;
  const whole = from.endsWith('$') ? from.slice(0, -1) : from;
  const source = whole
    .replace(/[.[\]()+?^$|\\]/g, '\\$&')
    .replaceAll('**', '\u0000')
    .replaceAll('\\[*\\]', '\\[(\\d+)\\]')
    .replaceAll('*', '([^.[\\]]+)')
    .replaceAll('\u0000', '((?:.*[.\\]])?)');
  const end = from.endsWith('$') ? '$' : /[.\]]$/.test(whole) ? '' : '(?=$|[.[ ])';
  const made = new RegExp(`^${source}${end}`);
  PATTERNS.set(from, made);
  return made;
}

function rewritten(path: string, from: string, to: string): string {
  return path.replace(pattern(from), (_whole, ...found: unknown[]) => {
    let next = 0;
    return to.replace(/\*\*|\*/g, () => String(found[next++]));
  });
}

/** Every value of a result, and every list, by its path. */
function* leaves(value: unknown, path: string): Generator<{ readonly path: string; readonly value: unknown }> {
  if (Array.isArray(value)) {
    yield { path, value };
    for (const [index, part] of value.entries()) yield* leaves(part, `${path}[${index}]`);
  } else if (typeof value === 'object' && value !== null) {
    if (isNumberWord(value)) yield { path, value: Number(value.number) };
    else for (const [key, part] of Object.entries(value)) yield* leaves(part, path === '' ? key : `${path}.${key}`);
  } else yield { path, value };
}

/** The value at a path; nothing where there is none. A key may have dots in it. */
export function resolved(value: unknown, path: string): unknown {
  if (path === '') return value;
  if (Array.isArray(value)) {
    const [step = '', inside = ''] = /^\[([^\]]+)\]/.exec(path) ?? [];
    if (step === '') return undefined;
    const [key = '', wanted] = inside.split('=');
    const kept = (part: unknown): boolean => String((part as Record<string, unknown> | null)?.[key]) === wanted;
    const found: unknown = wanted === undefined ? value[Number(inside)] : key === 'name' ? value.find(kept) : value.filter(kept);
    return resolved(found, path.slice(step.length).replace(/^\./, ''));
  }
  if (typeof value !== 'object' || value === null) return undefined;
  const keys = Object.keys(value).filter((key) => path === key || path.startsWith(`${key}.`) || path.startsWith(`${key}[`));
  const key = keys.sort((a, b) => b.length - a.length)[0];
  return key === undefined ? undefined : resolved((value as Record<string, unknown>)[key], path.slice(key.length).replace(/^\./, ''));
}

const isNumberWord = (value: object): value is { readonly number: string } =>
  'number' in value && typeof value.number === 'string' && Object.keys(value).length === 1;

function shown(value: unknown): string {
  return Object.is(value, -0) ? '-0' : (JSON.stringify(withoutProse(value)) ?? 'nothing').slice(0, 120);
}
