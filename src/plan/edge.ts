/** The edge between what passes and what does not. @module */

/** The last double that passes between one that does and one that does not. @internal */
export function edge(good: number, bad: number, passes: (value: number) => boolean): number {
  let inside = good;
  let outside = bad;
  for (;;) {
    const middle = inside + (outside - inside) / 2;
    if (middle === inside || middle === outside) return inside;
    if (passes(middle)) inside = middle;
    else outside = middle;
  }
}
