/** Exact arithmetic on doubles, written apart from the library: integers times powers of two, nothing rounded. @module */

/** `mantissa · 2^exponent`, exactly the double it was made from. */
export interface Dyadic {
  readonly mantissa: bigint;
  readonly exponent: number;
}

const view = new DataView(new ArrayBuffer(8));

/** The exact value of a finite double. */
export function dyadic(value: number): Dyadic {
  if (!Number.isFinite(value)) throw new Error(`${value} is not finite`);
  view.setFloat64(0, value);
  const bits = view.getBigUint64(0);
  const biased = Number((bits >> 52n) & 0x7ffn);
  const fraction = bits & 0xf_ffff_ffff_ffffn;
  const magnitude = biased === 0 ? fraction : fraction | 0x10_0000_0000_0000n;
  return { mantissa: bits >> 63n === 1n ? -magnitude : magnitude, exponent: Math.max(biased, 1) - 1075 };
}

/** The exact product of any number of doubles. */
export function product(...values: readonly number[]): Dyadic {
  let mantissa = 1n;
  let exponent = 0;
  for (const value of values) {
    const factor = dyadic(value);
    mantissa *= factor.mantissa;
    exponent += factor.exponent;
  }
  return { mantissa, exponent };
}

/** The sign of `a - b`, exactly. */
export function compare(a: Dyadic, b: Dyadic): -1 | 0 | 1 {
  const exponent = Math.min(a.exponent, b.exponent);
  const difference = (a.mantissa << BigInt(a.exponent - exponent)) - (b.mantissa << BigInt(b.exponent - exponent));
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
}

/** The double `steps` places above a positive one (below for negative `steps`). */
export function neighbour(value: number, steps: number): number {
  view.setFloat64(0, value);
  view.setBigInt64(0, view.getBigInt64(0) + BigInt(steps));
  return view.getFloat64(0);
}

/** Spacing of doubles at the size of a finite, non-zero value. */
export function ulp(value: number): number {
  const size = Math.abs(value);
  return neighbour(size, 1) - size;
}
