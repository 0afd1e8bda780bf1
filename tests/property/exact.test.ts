/** Error-free arithmetic against exact integers. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { differenceOfProducts, nextDown, nextUp } from '../../src/quantity/exact.ts';

const BITS = new DataView(new ArrayBuffer(8));

/** The neighbour of a positive double, by its bits. */
function neighbour(value: number, by: bigint): number {
  BITS.setFloat64(0, value);
  BITS.setBigInt64(0, BITS.getBigInt64(0) + by);
  return BITS.getFloat64(0);
}

const positive = fc.double({ min: 1e-30, max: 1e30, noNaN: true });
const powersOfTwo = fc.integer({ min: -90, max: 90 }).map((exponent) => 2 ** exponent);
const edges = fc.oneof(
  positive,
  powersOfTwo,
  powersOfTwo.map((value) => neighbour(value, -1n)),
  powersOfTwo.map((value) => neighbour(value, 1n)),
);

test('nextUp and nextDown are the neighbouring doubles', () => {
  fc.assert(
    fc.property(edges, (value) => {
      expect(nextUp(value)).toBe(neighbour(value, 1n));
      expect(nextDown(value)).toBe(neighbour(value, -1n));
    }),
    { numRuns: 20_000 },
  );
});

/** A double from 1 to 2^20 as an integer of 2^-60ths. */
const scaled = (value: number): bigint =>
  BigInt(Math.round(value * 2 ** 30)) * 2n ** 30n + BigInt((value * 2 ** 30 - Math.round(value * 2 ** 30)) * 2 ** 30);

test('the sign of a difference of nearly equal products is the exact one', () => {
  // d = a·b/c and its neighbours: the products then agree in all but their last bits.
  const factor = fc.double({ min: 1, max: 2 ** 20, noNaN: true });
  fc.assert(
    fc.property(factor, factor, factor, fc.integer({ min: -2, max: 2 }), (a, b, c, steps) => {
      const d = neighbour((a * b) / c, BigInt(steps));
      fc.pre(d >= 1 && d <= 2 ** 20);
      const exact = scaled(a) * scaled(b) - scaled(c) * scaled(d);
      expect(Math.sign(differenceOfProducts(a, b, c, d))).toBe(exact === 0n ? 0 : exact > 0n ? 1 : -1);
    }),
    { numRuns: 20_000 },
  );
});
