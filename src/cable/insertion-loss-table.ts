/**
 * How much more signal a warm cable loses, against 20 °C: TIA-568-C.2, 6.4.7, digits as read (% per K).
 *
 * The pairing 0.2 then 0.4 % per K for unscreened cable is often repeated; it is not what the sources say.
 * @module
 */

/** One stretch of temperatures with one slope; it begins where the stretch before it ends. */
export interface LossStretch {
  /** Where it ends. [°C] */
  readonly to: number;
  readonly percentPerKelvin: number;
}

/** From 20 °C up. */
export const INSERTION_LOSS: Readonly<Record<'unscreened' | 'screened', readonly LossStretch[]>> = {
  unscreened: [
    { to: 40, percentPerKelvin: 0.4 },
    { to: 60, percentPerKelvin: 0.6 },
  ],
  screened: [{ to: 60, percentPerKelvin: 0.2 }],
};
