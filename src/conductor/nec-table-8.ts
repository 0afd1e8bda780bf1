/** A conductor from Chapter 9 Table 8 of the National Electrical Code. @module */
import { type Fields, readInput } from '../quantity/fields.ts';
import { InputError } from '../quantity/input-error.ts';
import { type CorrectableConductor, STRANDINGS, type Stranding } from './conductor.ts';
import { type AwgSize, gaugeName, gaugeNumber, tabulatedDiameter } from './gauge.ts';
import { TABULATED_METALS } from './metric.ts';
import { NEC_COEFFICIENT_AT_75, NEC_TABLE_8, NEC_TABLE_8_COATED_SOURCE, NEC_TABLE_8_SOURCE } from './tables/nec-table-8.ts';

/** Which figure of the table. */
export interface NecTable8Input {
  /** Gauge number from -3 (4/0) to 18, or `'1/0'` to `'4/0'`. */
  readonly size: AwgSize;
  /** `solid` (18 to 8 AWG) if absent, or `stranded` (18 to 4/0). */
  readonly stranding?: Stranding | undefined;
  /** Copper only; `uncoated` if absent. The coated column is remembered, not re-read. */
  readonly coating?: 'uncoated' | 'coated' | undefined;
  /** `copper` if absent. */
  readonly material?: 'copper' | 'aluminium' | undefined;
}

/** @internal */
export const NEC_TABLE_8_FIELDS: Fields<NecTable8Input, 'stranding' | 'coating' | 'material', { size: number }> = {
  size: { read: (value, path) => gaugeNumber(value, path), type: 'AwgSize' },
  stranding: { oneOf: () => STRANDINGS, default: 'solid' },
  coating: { oneOf: () => ['uncoated', 'coated'], default: 'uncoated' },
  material: { oneOf: () => TABULATED_METALS, default: 'copper' },
};

/**
 * A conductor with the resistance that NEC Chapter 9 Table 8 prints for 75 °C, brought to 20 °C.
 *
 * By the table's own coefficients, 0.00323/K for copper and 0.00330/K for aluminium at 75 °C, so that the resistance at
 * 75 °C is the printed one. 18 AWG to 4/0, the sizes printed; computed from nominal diameters, so `basis` is `nominal`.
 * For design under a code use the edition in force where you build, and a licensed practitioner.
 *
 * @param input - Size, stranding, coating, metal.
 * @returns The conductor: area [mm²], diameter [mm], resistance per metre at 20 °C [Ω/m].
 * @throws {@link InputError} If the size is not a gauge, an option is not known, or (code `conflict`) the table does not print
 *   that figure.
 * @example At 75 °C, in ohms per thousand feet
 * const wire = necTable8({ size: 16, stranding: 'stranded' });
 * (resistancePerMetre(wire, 75) * 304.8).toFixed(2); // => '4.99'
 * @example
 * source(necTable8({ size: 18, coating: 'coated' }).source).status; // => 'memory'
 */
export function necTable8(input: NecTable8Input): CorrectableConductor {
  const { size: gauge, stranding, coating, material } = readInput(NEC_TABLE_8_FIELDS, input);
  const row = NEC_TABLE_8.find(([listed, strands]) => listed === gauge && (stranding === 'solid') === (strands === 1));
  if (row === undefined) throw new InputError('conflict', 'size', `a gauge that the table prints for ${stranding} conductors`, input.size);
  const isCoated = coating === 'coated';
  const isAluminium = material === 'aluminium';
  if (isCoated && isAluminium) {
    throw new InputError('conflict', 'coating', 'uncoated: the table prints no coated aluminium', coating);
  }
  const coefficientAt75 = NEC_COEFFICIENT_AT_75[material];
  const at75 = row[isAluminium ? 4 : isCoated ? 3 : 2] / 304.8;
  const toTwenty = 1 + coefficientAt75 * (20 - 75);
  const diameter = tabulatedDiameter(gauge);
  const metal = isAluminium ? ' aluminium' : isCoated ? ' coated copper' : '';
  return {
    name: `${gaugeName(gauge)} AWG${stranding === 'stranded' ? ' stranded' : ''}${metal}`,
    area: (Math.PI / 4) * diameter * diameter,
    diameter,
    geometry: 'nominal',
    material: isAluminium ? 'aluminium' : isCoated ? 'tinned-copper' : 'annealed-copper',
    stranding,
    ...(stranding === 'stranded' && { strands: row[1] }),
    resistancePerMetre: at75 * toTwenty,
    temperatureCoefficient: coefficientAt75 / toTwenty,
    basis: 'nominal',
    source: isCoated ? NEC_TABLE_8_COATED_SOURCE : NEC_TABLE_8_SOURCE,
  };
}
