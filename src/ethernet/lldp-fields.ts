/** Values of the fields of Power via MDI in LLDP, as on the wire. @module */
import { requireInteger, requireObject } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import { requireName } from '../quantity/nearest.ts';

/**
 * The fields of Power via MDI and the names of their values, as bits on the wire.
 *
 * IEEE Std 802.3-2022, clause 79, as read in a packet dissector. The enumerations of the IEEE YANG modules count from 0
 * in another order: never use them here. `powerClass` is class + 1, `powerClassExt` the class itself.
 *
 * @example
 * [LLDP_FIELDS.powerClass.class4, LLDP_FIELDS.powerClassExt.class4]; // => [5, 4]
 */
// biome-ignore format: a field a line
export const LLDP_FIELDS = {
  pairs: { signal: 1, spare: 2 },
  powerClass: { class0: 1, class1: 2, class2: 3, class3: 4, class4: 5 },
  powerType: { 'Type 2 PSE': 0, 'Type 2 PD': 1, 'Type 1 PSE': 2, 'Type 1 PD': 3 },
  powerSourcePd: { unknown: 0, PSE: 1, local: 2, 'PSE and local': 3 },
  powerSourcePse: { unknown: 0, primary: 1, backup: 2 },
  priority: { unknown: 0, critical: 1, high: 2, low: 3 },
  psePoweringStatus: { ignore: 0, '2-pair': 1, '4-pair single-signature': 2, '4-pair dual-signature': 3 },
  pdPoweredStatus: { ignore: 0, 'single-signature': 1, '2-pair dual-signature': 2, '4-pair dual-signature': 3 },
  pairsExt: { ignore: 0, 'Alternative A': 1, 'Alternative B': 2, both: 3 },
  powerClassExt: { class1: 1, class2: 2, class3: 3, class4: 4, class5: 5, class6: 6, class7: 7, class8: 8, 'dual-signature': 15 },
  powerClassAB: { class1: 1, class2: 2, class3: 3, class4: 4, class5: 5, 'single-signature or 2-pair': 7 },
  powerTypeExt: {
    'Type 3 PSE': 0, 'Type 4 PSE': 1, 'Type 3 single-signature PD': 2, 'Type 3 dual-signature PD': 3,
    'Type 4 single-signature PD': 4, 'Type 4 dual-signature PD': 5,
  },
} as const;

/** The name of a field of Power via MDI. */
export type LldpField = keyof typeof LLDP_FIELDS;

/** The names of the values of one field. */
export type LldpFieldName<F extends LldpField> = Extract<keyof (typeof LLDP_FIELDS)[F], string>;

/**
 * Sizes and codes of Power via MDI, as on the wire.
 *
 * Lengths: an excerpt of IEEE P802.3cv. Code and time of the power down request: IEEE Std 802.3.2-2025.
 *
 * @example
 * LLDP_CODES.powerDownRequest; // => 0x1d
 */
// biome-ignore format: one fact a line
export const LLDP_CODES = {
  /** Watts to one unit of requested and allocated power. [W] */
  resolution: 0.1,
  /** Octets after the subtype header, as Type 2 sends it. */
  lengthType2: 12,
  /** Octets with the extension that Types 3 and 4 send, and Types 1 and 2 must not. */
  lengthType3And4: 29,
  powerDownRequest: 0x1d,
  /** The time of a power down request, in seconds, that means for good. [s] */
  powerDownIndefinitely: 0,
} as const;

/** A field of Power via MDI and its value. */
export interface LldpFieldNameInput<F extends LldpField> {
  readonly field: F;
  /** Number on the wire. */
  readonly value: number;
}

/**
 * The name of a value of a field.
 *
 * @param input - Field of Power via MDI, and the number on the wire.
 * @returns Its name.
 * @throws {@link InputError} If there is no such field, or the field has no such value.
 * @example
 * lldpFieldName({ field: 'priority', value: 2 }); // => 'high'
 */
export function lldpFieldName<F extends LldpField>(input: LldpFieldNameInput<F>): LldpFieldName<F> {
  requireObject(input, 'input', 'an object with field and value');
  requireName(input.field, Object.keys(LLDP_FIELDS), 'field');
  return nameOfValue(LLDP_FIELDS[input.field], input.value) as LldpFieldName<F>;
}

/** @internal */
export function nameOfValue(values: Readonly<Record<string, number>>, value: number): string {
  requireInteger(value, 0, 65535, 'value');
  const found = Object.entries(values).find(([, number]) => number === value);
  if (found === undefined) throw new InputError('unknown', 'value', `one of ${Object.values(values).join(', ')}`, value);
  return found[0];
}
