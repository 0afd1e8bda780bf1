/** Timing two things side by side. @module */

/** Median, least and most of a list. */
export interface Spread {
  readonly median: number;
  readonly least: number;
  readonly most: number;
}

/** Two things timed in turns. */
export interface Comparison {
  /** Time of the first over time of the second, round by round. */
  readonly ratio: Spread;
  /** Time of one call of each. [ns] */
  readonly first: Spread;
  readonly second: Spread;
}

/** Median, least and most. */
export function spreadOf(values: readonly number[]): Spread {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length / 2;
  const median = ((sorted[Math.floor(middle)] ?? Number.NaN) + (sorted[Math.ceil(middle) - 1] ?? Number.NaN)) / 2;
  return { median, least: sorted[0] ?? Number.NaN, most: sorted.at(-1) ?? Number.NaN };
}

/**
 * Times two functions in turns, so that both meet the same machine.
 *
 * @param first - Runs `calls` calls and returns something that depends on them all.
 * @param second - The same work to compare with.
 * @param calls - How many calls one run makes.
 * @param rounds - How many pairs of runs are timed, after a fifth as many to warm up.
 */
export function compare(first: () => number, second: () => number, calls: number, rounds: number): Comparison {
  let kept = 0;
  const time = (run: () => number): number => {
    const start = process.hrtime.bigint();
    kept += run();
    return Number(process.hrtime.bigint() - start) / calls;
  };
  for (let round = 0; round < Math.ceil(rounds / 5); round++) {
    time(first);
    time(second);
  }
  const times: (readonly [number, number])[] = [];
  for (let round = 0; round < rounds; round++) {
    if (round % 2 === 0) {
      const a = time(first);
      times.push([a, time(second)]);
    } else {
      const b = time(second);
      times.push([time(first), b]);
    }
  }
  // Reading the sum keeps the calls from being optimised away.
  if (Number.isNaN(kept)) throw new Error('a benchmark computed nothing');
  return {
    ratio: spreadOf(times.map(([a, b]) => a / b)),
    first: spreadOf(times.map(([a]) => a)),
    second: spreadOf(times.map(([, b]) => b)),
  };
}

/** Prints one line: what, the figure with its spread, its budget, a note. */
export function print(what: string, figure: Spread, unit: string, budget: number | undefined, note: string): void {
  const digits = (value: number): string => value.toFixed(value < 10 ? 2 : 0);
  const shown = `${digits(figure.median)}${unit} (${digits(figure.least)} to ${digits(figure.most)})`;
  const verdict = budget === undefined ? '' : `budget ${budget}${unit} ${figure.median <= budget ? 'ok' : 'OVER'}`;
  console.log(`${what.padEnd(52)} ${shown.padEnd(28)} ${verdict.padEnd(18)} ${note}`);
}

/** A repeatable stream of numbers from 0 to 1 (a linear congruential generator; nothing rests on its quality). */
export function stream(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1664525 + 1013904223) % 4294967296;
    return state / 4294967296;
  };
}

/** The built root entry, loaded by a path that the type check need not find. */
export async function builtCore(): Promise<typeof import('../../src/index.ts')> {
  return import(new URL('../../dist/index.js', import.meta.url).href);
}

/** The built schedule entry. */
export async function builtSchedule(): Promise<typeof import('../../src/schedule/index.ts')> {
  return import(new URL('../../dist/schedule.js', import.meta.url).href);
}

/** Throws unless two results have the same shape, the same texts, and numbers that agree to 1e-9. */
export function requireAlike(one: unknown, other: unknown, path = 'result'): void {
  if (typeof one === 'number' && typeof other === 'number') {
    if (Math.abs(one - other) > 1e-9 * Math.max(1, Math.abs(one))) throw new Error(`${path}: ${one} and ${other}`);
  } else if (typeof one === 'object' && typeof other === 'object' && one !== null && other !== null) {
    const keys = new Set([...Object.keys(one), ...Object.keys(other)]);
    for (const key of keys) requireAlike((one as Record<string, unknown>)[key], (other as Record<string, unknown>)[key], `${path}.${key}`);
  } else if (one !== other) throw new Error(`${path}: ${String(one)} and ${String(other)}`);
}
