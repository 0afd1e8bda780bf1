/** Error-free arithmetic on doubles, for the places where a plain difference of products would cancel. @module */

const SPLITTER = 134217729; // 2^27 + 1

/**
 * The sign-exact, nearly correctly rounded value of `a·b - c·d`.
 *
 * Kahan's difference of products on Dekker's exact products: the plain expression loses every digit when the
 * two products are close. Exact for magnitudes between 1e-60 and 1e60, which the domain guards ensure.
 * @internal
 */
export function differenceOfProducts(a: number, b: number, c: number, d: number): number {
  const p = a * b;
  const q = c * d;
  const pError = productError(a, b, p);
  const qError = productError(c, d, q);
  const high = p - q;
  // The rounding of `high`, zero whenever p and q are within a factor of two of each other.
  const pBack = high + q;
  const highError = p - pBack + (pBack - high - q);
  // The difference of the two product errors, and what its own rounding loses: without it the sign may be wrong.
  const low = pError - qError;
  const lowBack = low + qError;
  const lowError = pError - lowBack + (lowBack - low - qError);
  return high + low + (highError + lowError);
}

/** `a·b - fl(a·b)`, exactly (Dekker 1971). */
function productError(a: number, b: number, product: number): number {
  const aScaled = SPLITTER * a;
  const aHigh = aScaled - (aScaled - a);
  const aLow = a - aHigh;
  const bScaled = SPLITTER * b;
  const bHigh = bScaled - (bScaled - b);
  const bLow = b - bHigh;
  return aLow * bLow - (product - aHigh * bHigh - aLow * bHigh - aHigh * bLow);
}

/** The next double above a positive number. @internal */
export function nextUp(value: number): number {
  return step(value, 1);
}

/** The next double below a positive number. @internal */
export function nextDown(value: number): number {
  return step(value, -1);
}

function step(value: number, by: 1 | -1): number {
  const bits = new DataView(new ArrayBuffer(8));
  bits.setFloat64(0, value);
  bits.setBigInt64(0, bits.getBigInt64(0) + BigInt(by));
  return bits.getFloat64(0);
}
