/** Explanations that readings leave side by side, and the reading that would tell them apart. @module */
import type { Explanation, ExplanationName } from './explanations.ts';

/** Explanations that the readings cannot tell apart, and what would. */
export interface Ambiguity {
  readonly between: readonly ExplanationName[];
  /** The reading that would tell. */
  readonly tells: string;
}

/** Where a reading tells: everywhere, or where no length is known, one pair was read, or several pairs but no conductor alone. */
type Circumstance = 'unknown-length' | 'one-pair' | 'loops-alone';

const TELLING: readonly (Ambiguity & { readonly where?: Circumstance })[] = [
  {
    between: ['as-described', 'hotter', 'clad-aluminium', 'thinner-gauge', 'many-joints'],
    tells: 'A length found in another way: the metre marks on the sheath, or the time a pulse takes.',
    where: 'unknown-length',
  },
  {
    between: ['longer', 'hotter'],
    tells: 'The temperature along the run, or the same reading on a day that is much cooler or warmer.',
  },
  {
    between: ['longer', 'clad-aluminium', 'thinner-gauge'],
    tells: 'An end of the conductor: its diameter, and whether it is copper all through where it is cut.',
  },
  {
    between: ['longer', 'many-joints', 'leads-not-nulled'],
    tells: 'The reading with the leads shorted together, and the same pair without its cords.',
  },
  {
    between: ['as-described', 'longer', 'hotter', 'one-bad-joint', 'many-joints'],
    tells: 'Readings of the other pairs: what all share is cable, what one has is a joint.',
    where: 'one-pair',
  },
  {
    between: ['one-bad-joint', 'one-pair-longer'],
    tells: 'Each conductor of that pair against one of another: a joint is on one of them, a length on both.',
    where: 'loops-alone',
  },
];

/** @internal */
export function ambiguities(explanations: readonly Explanation[], holds: Readonly<Record<Circumstance, boolean>>): Ambiguity[] {
  const consistent = explanations.filter(({ status }) => status === 'consistent').map(({ name }) => name);
  return TELLING.flatMap(({ between: names, tells, where }) => {
    const between = where === undefined || holds[where] ? names.filter((name) => consistent.includes(name)) : [];
    return between.length > 1 ? { between, tells } : [];
  });
}
