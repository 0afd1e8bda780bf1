/** Verdicts and their order. @module */

/** `uncertain`: it passes on one reading of the input and fails on another; `deciding` names the input. */
export type Verdict = 'pass' | 'marginal' | 'fail' | 'uncertain';

/** Best first: a fail outweighs a doubt, a doubt outweighs a narrow pass. @internal */
export const VERDICTS: readonly Verdict[] = ['pass', 'marginal', 'uncertain', 'fail'];

/** The worse of two. @internal */
export function worse(one: Verdict, other: Verdict): Verdict {
  return VERDICTS.indexOf(other) > VERDICTS.indexOf(one) ? other : one;
}

/** The worst verdict of several checks; `pass` of none. @internal */
export function worstVerdict(checks: readonly { readonly verdict: Verdict }[]): Verdict {
  let worst: Verdict = 'pass';
  for (const { verdict } of checks) if (verdict !== worst) worst = worse(worst, verdict);
  return worst;
}
