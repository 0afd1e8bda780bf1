/** Bundles and measurements in words. @module */
import type { ExplanationName } from '../cable/field/explanations.ts';
import type { BundleFinding } from '../plan/heat/check-bundle.ts';

/**
 * What no check says of a bundle.
 *
 * @example
 * BUNDLE_WORDS['no-ampacity']; // => 'the code has no figure for this bundle'
 */
export const BUNDLE_WORDS: Readonly<Record<BundleFinding, string>> = {
  'wound-drum': 'the cable lies wound on its drum: unwind it before it is powered',
  'no-steady-state': 'the bundle never settles: every kelvin adds more heat than it sheds',
  'beyond-validity': 'nothing is known of bundles of more than 192 cables',
  'engineering-supervision': 'the code leaves such a bundle to an engineer',
  'no-ampacity': 'the code has no figure for this bundle',
  'too-warm-for-code': 'the code has no figure for air this warm',
};

/**
 * What a reading may come from.
 *
 * @example
 * EXPLANATION_WORDS['one-bad-joint']; // => 'one bad connection'
 */
export const EXPLANATION_WORDS: Readonly<Record<ExplanationName, string>> = {
  'as-described': 'the run as described',
  longer: 'a longer cable',
  shorter: 'a shorter cable',
  hotter: 'a hotter cable',
  'clad-aluminium': 'clad aluminium',
  'thinner-gauge': 'a thinner gauge',
  'one-bad-joint': 'one bad connection',
  'many-joints': 'more or poorer connections',
  'one-pair-longer': 'one pair that is longer',
  'one-pair-shorter': 'one pair that is shorter',
  'not-shorted': 'a pair not shorted at the far end',
  'leads-not-nulled': 'leads that were not nulled',
};
