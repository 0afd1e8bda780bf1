/** Annealed copper, as its standards state it at 20 °C. @module */

/** IEC 60028 (IACS). [1/K] @internal */
export const COPPER_COEFFICIENT = 0.00393;
/** IEC 60028 (IACS). [MS/m] @internal */
export const COPPER_CONDUCTIVITY = 58;
/** ASTM B496: the lay of the strands makes each longer than the cable, 2 % as the standard increment. @internal */
export const LAY_ALLOWANCE = 0.02;
