/** Heat and measurements in words. @module */
import type { Verdict } from '../limits/verdict.ts';
import { amount, count } from '../words/amount.ts';
import { BUNDLE_WORDS, EXPLANATION_WORDS } from '../words/heat-words.ts';
import type { ReportedHeat, ReportedMeasurement } from './report.ts';

/** What no check says of the bundle. @internal */
export function bundleFindings({ findings }: ReportedHeat): string[] {
  return findings.map((finding) => BUNDLE_WORDS[finding]);
}

/** `61 cables in open air`. @internal */
export function bundleInWords({ cables, installation }: ReportedHeat): string {
  const how =
    typeof installation === 'object'
      ? `at ${installation.filmCoefficient} W/(m²·K)`
      : { 'open-air': 'in open air', 'closed-conduit': 'in closed conduit', 'wound-drum': 'on its drum' }[installation];
  return `${count(cables, 'cable')} ${how}`;
}

/** @internal */
export function heatInWords(heat: ReportedHeat): string {
  const { rise, temperature } = heat;
  const figures =
    rise === undefined || temperature === undefined
      ? 'no steady figure'
      : `${amount(rise, 'K', 1)} above the air, ${amount(temperature, '°C', 1)}`;
  return `${bundleInWords(heat)}: ${figures}`;
}

/** @internal */
export function measuredInWords({ readings, expected, status, distance, consistentWith }: ReportedMeasurement): string {
  const read = readings.map(({ ohms }) => amount(ohms, 'Ω')).join(', ');
  const expectation = `expected ${amount(expected.low, 'Ω')} to ${amount(expected.high, 'Ω')}`;
  if (status === 'consistent') return `${read}; ${expectation}: consistent with the run as described`;
  const could =
    consistentWith.length === 0 ? 'nothing that is known of' : consistentWith.map((name) => EXPLANATION_WORDS[name]).join(', or ');
  return `${read}; ${expectation}: NOT as described, by ${amount(distance, 'Ω')}; consistent with ${could}`;
}

/** What is the matter with the heat of a run, where its checks do not say it. @internal */
export function heatDoubt(heat: ReportedHeat): string {
  const findings = bundleFindings(heat);
  return findings.length > 0 ? findings.join('; ') : 'a limit lies within the ±10 % of the model';
}

/** What to do about a bundle: where the run fails, with fewer cables it passes. @internal */
export function bundleToDo({ largestBundle, findings }: ReportedHeat, verdict: Verdict | undefined): string[] {
  if (findings.includes('wound-drum')) return ['Unwind the cable.'];
  const smaller =
    largestBundle === undefined
      ? []
      : [`Make bundles of at most ${count(largestBundle, 'cable')}, with a bundle's width of free air between them.`];
  return verdict === 'uncertain' ? [...smaller, 'Measure the middle of the bundle at full load.'] : smaller;
}
