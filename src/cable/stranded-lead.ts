/** Small stranded leads of low-voltage circuits. @module */

import type { Conductor } from '../conductor/conductor.ts';
import { conductorFromResistance } from '../conductor/conductor-from-resistance.ts';
import { feet } from '../quantity/convert-length.ts';
import { type Fields, readInput } from '../quantity/fields.ts';
import { InputError } from '../quantity/input-error.ts';
import { CABLE_BASES, type CableBasis } from './run-resistance.ts';
import { STRANDED_LEADS, type StrandedLeadRow } from './stranded-leads-table.ts';

/** A small stranded lead. */
export interface StrandedLeadInput {
  /** 20, 22, 24, 26 or 28. [AWG] */
  readonly gauge: number;
  /** `maximum` if absent. */
  readonly basis?: CableBasis | undefined;
}

/** @internal */
export const STRANDED_LEAD_FIELDS: Fields<StrandedLeadInput, 'basis'> = {
  gauge: { oneOf: () => STRANDED_LEADS.map(({ gauge }) => gauge) },
  basis: { oneOf: () => CABLE_BASES, default: 'maximum' },
};

/**
 * One conductor of a small stranded lead, by a published figure instead of by the geometry of its gauge.
 *
 * `maximum`: the USB 2.0 table of power conductors. `nominal`: a wire chart, 22 to 28 AWG. The trade's seven-strand wires
 * of 22, 24 and 26 AWG hold about 10 % more copper than the solid gauge, and so have less resistance than it.
 *
 * @param input - The gauge [AWG], and which of its figures.
 * @returns The conductor, its resistance at 20 °C [Ω/m].
 * @throws {@link InputError} If there is no row for the gauge, or the chart does not list it.
 * @example
 * strandedLead({ gauge: 24 }).resistancePerMetre.toFixed(4); // => '0.0909'
 */
export function strandedLead(input: StrandedLeadInput): Conductor {
  const { gauge, basis } = readInput(STRANDED_LEAD_FIELDS, input);
  const { maximum, chart, strands } = STRANDED_LEADS.find((row) => row.gauge === gauge) as StrandedLeadRow;
  if (basis === 'nominal' && chart === undefined) throw new InputError('unknown', 'gauge', 'a gauge of the chart, 22 to 28', gauge);
  const nominal = basis === 'nominal' && chart !== undefined;
  return {
    ...conductorFromResistance({
      ohmsPerKilometre: nominal ? chart / feet(1) : maximum * 10,
      basis,
      stranding: 'stranded',
      name: nominal ? `${gauge} AWG ${strands}` : `${gauge} AWG stranded`,
    }),
    source: nominal ? 'stranded-lead-chart' : 'usb-leads',
  };
}
