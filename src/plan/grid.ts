/** Values a person can measure off: multiples of a tenth of a metre, a degree, a tenth of a volt. @module */

/** The largest multiple of `1/perUnit` under `from` that passes, by halving: longer, or hotter, is never better. @internal */
export function largestOnGrid(from: number, perUnit: number, passes: (value: number) => boolean): number {
  let low = 0;
  let high = Math.ceil(from * perUnit);
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (passes(middle / perUnit)) low = middle;
    else high = middle;
  }
  return low / perUnit;
}

/** The smallest multiple of `1/perUnit` up to `to` that passes; nothing if none does. @internal */
export function smallestOnGrid(to: number, perUnit: number, passes: (value: number) => boolean): number | undefined {
  let high = Math.floor(to * perUnit);
  if (high < 1 || !passes(high / perUnit)) return undefined;
  let low = 0;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (passes(middle / perUnit)) high = middle;
    else low = middle;
  }
  return high / perUnit;
}
