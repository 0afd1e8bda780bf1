/** The name that was probably meant by one that is not known, in the refusal of names and of keys. @module */
import { oneOf, refuse } from './guards.ts';
import { describe, InputError } from './input-error.ts';

/**
 * The nearest of some names, whatever the case: the shortest that has the typed letters in their order, as `temperature` has
 * those of `temp` and `temprature`; else one that at most two letters put in, left out or changed make of the typed one.
 *
 * @param typed - What was written.
 * @param names - The names there are.
 * @returns The nearest name; `undefined` where none is near.
 * @internal
 */
export function nearest(typed: string, names: readonly string[]): string | undefined {
  const byLength = [...names].sort((one, other) => one.length - other.length);
  // A single letter is in order in too many names.
  for (const [edits, price] of typed.length < 2 ? [] : STEPS) {
    const found = byLength.find((name) => isNear(typed.toLowerCase(), name.toLowerCase(), edits, price));
    if (found !== undefined) return found;
  }
  return undefined;
}

/** Edits that are allowed, and how many of them a letter that was left out counts for: none, then one. */
const STEPS = [
  [0, 0],
  [1, 1],
  [2, 1],
] as const;

function isNear(typed: string, name: string, edits: number, price: number): boolean {
  if (edits < 0) return false;
  if (typed === '' || name === '') return typed.length + price * name.length <= edits;
  const [less, rest] = [typed.slice(1), name.slice(1)];
  if (typed[0] === name[0]) return isNear(less, rest, edits, price);
  return isNear(typed, rest, edits - price, price) || isNear(less, name, edits - 1, price) || isNear(less, rest, edits - 1, price);
}

/** Requires one of a closed list of names, and suggests the nearest. @internal */
export function requireName(value: unknown, allowed: readonly (string | number)[], parameter: string): void {
  if (allowed.includes(value as string | number)) return;
  const near = typeof value === 'string' ? nearest(value, allowed.map(String)) : undefined;
  if (near === undefined) refuse(value, parameter, oneOf(allowed), 'unknown');
  throw new InputError(
    'unknown',
    parameter,
    oneOf(allowed),
    value,
    `${parameter}: ${describe(value)} is unknown; did you mean ${describe(near)}?`,
  );
}

/**
 * Refuses the first key that is not known, and suggests the nearest; a key that is `undefined` is absent.
 *
 * Where speed counts, this is called only if `hasMoreKeys` says so.
 * @internal
 */
export function refuseUnknown(input: object, known: readonly string[], path: string): void {
  for (const [key, value] of Object.entries(input)) {
    if (value === undefined || known.includes(key)) continue;
    const parameter = pathOf(path, key);
    const near = nearest(key, known);
    const expected = near ?? `one of ${known.join(', ')}`;
    const hint = near === undefined ? `the keys are ${known.join(', ')}` : `did you mean ${near}?`;
    throw new InputError('unknown', parameter, expected, value, `${parameter}: unknown; ${hint}`);
  }
}

/** `length`, `segments[3].length`, `pairs['1,2']`. @internal */
export function pathOf(path: string, key: string): string {
  if (!/^\w+$/.test(key)) return `${path}['${key}']`;
  return path === '' ? key : `${path}.${key}`;
}
