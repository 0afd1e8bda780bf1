/** Lengths as a signal sees them: warm cable and cords count for more metres than they have. @module */

import type { Cable } from '../cable/cable.ts';
import { cordLoss } from '../cable/cord-loss.ts';
import { lossFactor } from '../cable/insertion-loss.ts';
import type { Segment } from '../cable/run-resistance.ts';
import { CONDUCTOR_TEMPERATURE } from '../conductor/resistance-per-metre.ts';
import type { Celsius, Metres } from '../quantity/units.ts';
import type { CablingRules } from './cabling-rules.ts';

/** A metre of cord against a metre of cool installed cable. @internal */
export function cordFactor(gauge: number, rules: CablingRules): number {
  const factor = 1 + cordLoss(gauge).excess;
  return factor > rules.leastCordFactor ? factor : rules.leastCordFactor;
}

/** Everything as metres of cool installed cable with the same insertion loss. [m] @internal */
export function insertionLossLength(installed: readonly Segment[], cords: readonly Segment[], rules: CablingRules): Metres {
  let length = 0;
  for (const piece of installed) {
    // Cord cable that is installed for good is no less lossy for it.
    length += piece.length * (piece.cable.use === 'cord' ? cordFactor(piece.cable.gauge, rules) : 1) * lossFactorOf(piece);
  }
  for (const piece of cords) length += piece.length * cordFactor(piece.cable.gauge, rules) * lossFactorOf(piece);
  return length;
}

function lossFactorOf({ cable, temperature = CONDUCTOR_TEMPERATURE.default }: Segment): number {
  return lossFactor(temperature, isScreened(cable));
}

/** A cable that does not say is taken to be unscreened. @internal */
export function isScreened(cable: Cable): boolean {
  return cable.screened === true;
}

/** Average over the installed cable, by length. [°C] @internal */
export function averageTemperature(pieces: readonly Segment[]): Celsius {
  const first = pieces[0]?.temperature ?? CONDUCTOR_TEMPERATURE.default;
  // Divided by its own length, one temperature could come back as the double next to it.
  if (pieces.every(({ temperature = CONDUCTOR_TEMPERATURE.default }) => temperature === first)) return first;
  let total = 0;
  let weighted = 0;
  for (const { length, temperature = CONDUCTOR_TEMPERATURE.default } of pieces) {
    total += length;
    weighted += length * temperature;
  }
  return total > 0 ? weighted / total : hottestOf(pieces);
}

/** [°C] @internal */
export function hottestOf(pieces: readonly Segment[]): Celsius {
  return pieces.reduce((hottest, { temperature = CONDUCTOR_TEMPERATURE.default }) => (temperature > hottest ? temperature : hottest), 20);
}

/** Screened only if every piece is. @internal */
export function allScreened(pieces: readonly Segment[]): boolean {
  return pieces.length > 0 && pieces.every(({ cable }) => isScreened(cable));
}
