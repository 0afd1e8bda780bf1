/** What every figure about heat says beside itself. @module */

/** @internal */
export const HEAT_CAUTION =
  'A model, not a measurement: hot cable can start a fire. The local code, the ratings of the cable and a licensed practitioner decide.';
