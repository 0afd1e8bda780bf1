/** What a device draws. @module */
import type { Amperes, Ohms, Watts } from '../quantity/units.ts';

/** What a device draws: a power (most electronics) [W], a current [A], or as a resistance [Ω]. Exactly one of the three. */
export type Load =
  | { readonly power: Watts; readonly current?: undefined; readonly resistance?: undefined }
  | { readonly current: Amperes; readonly power?: undefined; readonly resistance?: undefined }
  | { readonly resistance: Ohms; readonly power?: undefined; readonly current?: undefined };
