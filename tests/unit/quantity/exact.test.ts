import { expect, test } from 'vitest';
import { differenceOfProducts, nextDown, nextUp } from '../../../src/quantity/exact.ts';
import { compare, neighbour, product } from '../../helpers/exact.ts';
import { logUniform, seeded, whole } from '../../helpers/random.ts';

test('keeps the part that a plain difference of products loses', () => {
  // (1 + 2^-27)(1 - 2^-27) - 1 = -2^-54 exactly; in plain doubles the product rounds to 1.
  const e = 2 ** -27;
  expect((1 + e) * (1 - e) - 1).toBe(0);
  expect(differenceOfProducts(1 + e, 1 - e, 1, 1)).toBe(-(2 ** -54));
});

test('is 0 exactly when the products are equal', () => {
  expect(differenceOfProducts(3, 4, 2, 6)).toBe(0);
  expect(differenceOfProducts(0.1, 0.3, 0.3, 0.1)).toBe(0);
});

test('has the sign of the exact difference, for products that differ in their last bits', () => {
  const random = seeded(11);
  const seen = { negative: 0, zero: 0, positive: 0 };
  for (let i = 0; i < 20_000; i++) {
    const a = logUniform(random, 1e-12, 1e12);
    const b = logUniform(random, 1e-12, 1e12);
    const c = logUniform(random, 1e-12, 1e12);
    const d = neighbour((a * b) / c, whole(random, -2, 2));
    const sign = compare(product(a, b), product(c, d));
    if (Math.sign(differenceOfProducts(a, b, c, d)) !== sign) expect.fail(`wrong sign for ${a} · ${b} - ${c} · ${d}`);
    if (sign < 0) seen.negative++;
    else if (sign > 0) seen.positive++;
    else seen.zero++;
  }
  expect(Math.min(seen.negative, seen.positive)).toBeGreaterThan(5000);
});

test('nextUp and nextDown are neighbours and undo each other', () => {
  expect(nextUp(1)).toBe(1 + Number.EPSILON);
  expect(nextDown(1)).toBe(1 - Number.EPSILON / 2);
  const random = seeded(12);
  for (let i = 0; i < 1000; i++) {
    const value = logUniform(random, 1e-30, 1e30);
    const above = nextUp(value);
    expect(above).toBeGreaterThan(value);
    expect(nextDown(above)).toBe(value);
    // Nothing lies between: the midpoint rounds to one of the two.
    expect([value, above]).toContain(value / 2 + above / 2);
  }
});

test('steps across a power of two', () => {
  expect(nextDown(2)).toBe(2 - Number.EPSILON);
  expect(nextUp(2)).toBe(2 + 2 * Number.EPSILON);
});
