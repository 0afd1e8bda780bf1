/** What every figure about heat says beside itself, and every figure out of a code. @module */

/** @internal */
export const HEAT_CAUTION =
  'A model, not a measurement: hot cable can start a fire. The local code, the ratings of the cable and a licensed practitioner decide.';

/** @internal */
export const CODE_CAUTION =
  'Figures of a code hold only where that code applies. The local code, the ratings of the cable and a licensed practitioner decide.';
