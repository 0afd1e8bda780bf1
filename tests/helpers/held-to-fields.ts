/** Hand-written guards held to the fields of their input: the same values accepted, and the rest refused alike. @module */
import { expect } from 'vitest';
import { type AnyField, type AnyFields, type Fields, fieldsIn, readInput } from '../../src/quantity/fields.ts';
import { InputError } from '../../src/quantity/input-error.ts';

/** Values on both sides of every edge that a guard may have, and of every type. */
const VALUES: readonly unknown[] = [
  ...[null, true, false, '', ' ', '50', 'nobody', 7n, {}, [], [7], () => 7, Object.create(null), Number.NaN, Number.POSITIVE_INFINITY],
  ...[
    -1e13, -1e12, -300, -101, -100, -1, -1e-12, 0, -0, 1e-31, 1e-30, 1e-13, 1e-12, 0.008, 0.009, 0.5, 0.99, 1, 1.5, 2, 2.5, 3, 4, 5, 6, 8,
    9,
  ],
  ...[20, 100, 101, 400, 401, 1000, 1001, 4000, 4001, 10_000, 10_001, 1e12, 1e13, 1e30, 1e31],
];

/** What a call throws, if it is an InputError. */
function refusal(call: () => unknown): InputError | undefined {
  try {
    call();
  } catch (error) {
    if (error instanceof InputError) return error;
    throw error;
  }
  return undefined;
}

/** The edges of one field, and a step beyond each. */
function edges({ between, whole, oneOf }: AnyField): readonly unknown[] {
  const [low, high] = between ?? whole ?? [0, 0];
  return [low - 1, low, (low + high) / 2, high, high + 1, ...(oneOf?.() ?? [])];
}

/**
 * Holds a function to the fields of its input.
 *
 * @param fields - The record of every key.
 * @param good - An input that is accepted.
 * @param call - Calls the function with an input.
 * @param options - Where the input stands; whether the function looks for unknown keys.
 */
export function expectHeld<T, Defaulted extends keyof T, Made>(
  fields: Fields<T, Defaulted, Made>,
  good: T,
  call: (input: T) => unknown,
  { path = '', looks = true }: { readonly path?: string; readonly looks?: boolean } = {},
): void {
  expect(refusal(() => call(good))?.message).toBeUndefined();
  for (const [key, field] of fieldsIn(fields as unknown as AnyFields)) {
    for (const value of [undefined, ...VALUES, ...edges(field)]) {
      const input = { ...good, [key]: value };
      const expected = refusal(() => readInput(fields, input, path));
      const actual = refusal(() => call(input));
      const label = `${key}: ${typeof value === 'object' ? JSON.stringify(value) : String(value)}`;
      // What each key allows says nothing of two keys that contradict each other.
      if (expected === undefined) expect(actual?.code ?? 'conflict', label).toBe('conflict');
      else expect([actual?.code, actual?.parameter], label).toEqual([expected.code, expected.parameter]);
    }
  }
  if (!looks) return;
  for (const key of ['colour', 'lenght', 'toString', '__proto__x']) {
    expect(refusal(() => call({ ...good, [key]: 1 }))?.code, key).toBe('unknown');
    expect(
      refusal(() => call({ ...good, [key]: undefined })),
      key,
    ).toBeUndefined();
  }
}
