/** What a reader must know before acting on a report. @module */
import { EXTRA_LOW } from '../plan/cautions.ts';
import type { RunReport } from './report.ts';

const BUNDLES_JUDGED =
  'Heat: bundles are judged by a model that may be off by 10 % or more, each as if all its cables were loaded like the run itself, and only where a bundle is stated; an ampacity table of the local code comes first. Hot cable can start a fire: keep bundles well within their limits, and measure the middle of a full one.';

/** The cautions that concern this schedule. @internal */
export function cautionsFor(runs: readonly RunReport[]): string[] {
  const cautions = [
    'This is arithmetic, not a licence: it judges the figures it was given. The local electrical code, the makers’ instructions and a licensed practitioner come first.',
    runs.some(({ heat }) => heat !== undefined)
      ? BUNDLES_JUDGED
      : 'Heat: cable runs at the temperatures stated here; how far a bundle warms itself, and the temperature and current ratings of the cable, are not judged. Measure or calculate them before filling a bundle with powered runs.',
    'Switches and supplies are fed from the mains: only a person licensed for it works on that side, with it switched off.',
  ];
  if (runs.some(({ kind }) => kind === 'two-wire')) {
    cautions.push(
      'Two-wire runs: whether a short at the far end opens the protective device is not judged here. A long thin line may never open it.',
    );
  }
  if (runs.some(({ kind, supplyVoltage }) => kind === 'two-wire' && supplyVoltage.high > EXTRA_LOW)) {
    cautions.push(
      `A supply of this schedule exceeds ${EXTRA_LOW} V DC: it can injure. Have it designed and installed by a licensed practitioner.`,
    );
  }
  if (runs.some(({ kind }) => kind === 'powered')) {
    cautions.push('A meter reading is taken with the run unplugged at both ends: never on a line that carries power.');
  }
  return cautions;
}
