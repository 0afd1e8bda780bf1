/** Error-free arithmetic on doubles, for the places where a plain difference of products would cancel. @module */

const SPLITTER = 134217729; // 2^27 + 1

/**
 * The sign-exact value of `a·b - c·d`, within an ulp or so.
 *
 * Kahan's difference of products on Dekker's exact products: the plain expression loses every digit when the two
 * products are close, and then `p - q` is exact. For magnitudes between 1e-60 and 1e60, which the domain guards ensure.
 * @internal
 */
export function differenceOfProducts(a: number, b: number, c: number, d: number): number {
  const p = a * b;
  const q = c * d;
  const pError = productError(a, b, p);
  const qError = productError(c, d, q);
  const low = pError - qError;
  // Where p and q lie on the two sides of a power of two, the difference of their errors may itself need a 54th bit.
  const back = low + qError;
  return p - q + low + (pError - back + (back - low - qError));
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

/** A hair over half an ulp of 1, so that adding this share of a number rounds to just its neighbour (Rump et al. 2009). */
const HALF_ULP = 1.1102230246251568e-16;

/** The next double above a positive number. @internal */
export function nextUp(value: number): number {
  return value + value * HALF_ULP;
}

/** The next double below a positive number. @internal */
export function nextDown(value: number): number {
  return value - value * HALF_ULP;
}
