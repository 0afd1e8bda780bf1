/**
 * The cables that have a name: one row each, and a new cable is a new row.
 *
 * Maxima at 20 °C, digits as printed (Ω/100 m / 100). `conductorMaximum` is the limit of ANSI/TIA-568.2-D for one conductor,
 * `loopMaximum` the limit of IEC 61156 for the two of a pair in series: kept apart, never averaged.
 * @module
 */
import type { CableLimit, CableUse } from './cable-limit.ts';

/** One row of the cable table. */
export interface CableRow {
  readonly title: string;
  readonly use: CableUse;
  /** Usual gauge in the trade. [AWG] */
  readonly gauge: number;
  /** Whether a screened form is the only one there is. */
  readonly screened: boolean;
  /** Limits at 20 °C, the one that applies unless asked otherwise first. [Ω/m] */
  readonly limits: readonly CableLimit[];
  /** Outside diameter, an assumption. [mm] */
  readonly outsideDiameter?: number;
}

/** Named cables. */
export const CABLES = {
  cat3: {
    title: 'Category 3',
    use: 'horizontal',
    gauge: 24,
    screened: false,
    limits: [{ standard: 'TIA-568', of: 'conductor', perMetre: 0.0938, source: 'tia-568-cat3-cable' }],
  },
  cat5e: {
    title: 'Category 5e',
    use: 'horizontal',
    gauge: 24,
    screened: false,
    limits: [
      { standard: 'TIA-568', of: 'conductor', perMetre: 0.0938, source: 'tia-568.2-d-cable' },
      { standard: 'IEC 61156', of: 'pairLoop', perMetre: 0.19, source: 'iec-61156-5-loop' },
    ],
    outsideDiameter: 5.2,
  },
  cat6: {
    title: 'Category 6',
    use: 'horizontal',
    gauge: 23,
    screened: false,
    limits: [
      { standard: 'TIA-568', of: 'conductor', perMetre: 0.0938, source: 'tia-568.2-d-cable' },
      { standard: 'IEC 61156', of: 'pairLoop', perMetre: 0.19, source: 'iec-61156-5-loop' },
    ],
    outsideDiameter: 6,
  },
  cat6a: {
    title: 'Category 6A',
    use: 'horizontal',
    gauge: 23,
    screened: false,
    limits: [
      { standard: 'TIA-568', of: 'conductor', perMetre: 0.0938, source: 'tia-568.2-d-cable' },
      { standard: 'IEC 61156', of: 'pairLoop', perMetre: 0.19, source: 'iec-61156-5-loop' },
    ],
    outsideDiameter: 7.8,
  },
  cat7a: {
    title: 'Category 7A',
    use: 'horizontal',
    gauge: 23,
    screened: true,
    limits: [{ standard: 'IEC 61156', of: 'pairLoop', perMetre: 0.19, source: 'iec-61156-5-loop' }],
  },
  'cord-24': {
    title: 'Cord, 24 AWG',
    use: 'cord',
    gauge: 24,
    screened: false,
    limits: [
      { standard: 'TIA-568', of: 'conductor', perMetre: 0.14, source: 'tia-568.2-d-cord' },
      { standard: 'IEC 61156', of: 'pairLoop', perMetre: 0.29, source: 'iec-61156-6-loop' },
    ],
  },
  'cord-26': {
    title: 'Cord, 26 AWG',
    use: 'cord',
    gauge: 26,
    screened: false,
    limits: [
      { standard: 'TIA-568', of: 'conductor', perMetre: 0.14, source: 'tia-568.2-d-cord' },
      { standard: 'IEC 61156', of: 'pairLoop', perMetre: 0.29, source: 'iec-61156-6-loop' },
    ],
  },
  'cord-28': {
    title: 'Cord, 28 AWG',
    use: 'cord',
    gauge: 28,
    screened: false,
    limits: [{ standard: 'TIA-568', of: 'conductor', perMetre: 0.232, source: 'usb-28-awg' }],
  },
} as const;

/** The names of the cables in the table. */
export type CableName = keyof typeof CABLES;
