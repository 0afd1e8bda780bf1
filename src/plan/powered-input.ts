/** A run from a switch port to a powered device as it is described. @module */
import { CONNECTION_COUNT, CONNECTION_RESISTANCE, CORDS, INSTALLED, type RunInput } from '../cable/read-cable.ts';
import type { Segment } from '../cable/run-resistance.ts';
import * as port from '../ethernet/port-fields.ts';
import type { PowerAtPdInput } from '../ethernet/power-at-pd.ts';
import { MARGINAL_BELOW_FIELD } from '../limits/held.ts';
import type { Fields, Read } from '../quantity/fields.ts';
import { CABLING_STANDARDS, type CablingStandard } from './cabling-rules.ts';
import { type ResistanceLimit, requireResistanceLimit } from './device-resistance.ts';

/** What a run to a powered device is made of, its installed cable apart. */
export interface PoweredCircuit extends Omit<PowerAtPdInput, 'resistance'>, Omit<RunInput, 'installed'> {
  /** Line-resistance limit on the device's data sheet. */
  readonly maximumResistance?: ResistanceLimit | undefined;
  /** Whose cabling rules apply; `TIA-568` if absent. */
  readonly cabling?: CablingStandard | undefined;
  /** Comes back in the judged run; a search takes it and leaves it. */
  readonly label?: string | undefined;
}

/** A run from a switch port to a powered device. */
export interface PoweredRunInput extends PoweredCircuit, Pick<RunInput, 'installed'> {}

/** The same with its cables looked up. @internal */
export interface PoweredFacts extends Omit<PoweredCircuit, 'cords'> {
  readonly installed: readonly Segment[];
  readonly cords?: readonly Segment[] | undefined;
}

/** What has a default. @internal */
export type PoweredFilled = 'cords' | 'connections' | 'connectionResistance' | 'cabling' | 'marginalBelow';
/** What is read as something else. @internal */
export interface LookedUp {
  readonly installed: readonly Segment[];
  readonly cords: readonly Segment[];
}

/** The same as it is read: what has a default is filled in. @internal */
export type PoweredRead = Read<PoweredRunInput, PoweredFilled, LookedUp>;

/** @internal */
export const POWERED_RUN_FIELDS: Fields<PoweredRunInput, PoweredFilled, LookedUp> = {
  installed: () => INSTALLED,
  cords: () => CORDS,
  connections: () => CONNECTION_COUNT,
  connectionResistance: () => CONNECTION_RESISTANCE,
  poeClass: () => port.POE_CLASS_FIELD,
  pseType: () => port.PSE_TYPE_FIELD,
  pseVoltage: () => port.PSE_VOLTAGE_FIELD,
  pdPower: () => port.PD_POWER_FIELD,
  pairs: () => port.PAIRS_FIELD,
  minimumVoltage: { positive: 'V', optional: true },
  maximumResistance: { check: (limit, path) => requireResistanceLimit(limit, path), optional: true },
  cabling: { oneOf: () => CABLING_STANDARDS, default: 'TIA-568' },
  marginalBelow: () => MARGINAL_BELOW_FIELD,
  label: { text: 'any', optional: true },
};
