/** A conductor from its metric size. @module */
import type { Fields } from '../quantity/fields.ts';
import { refuse, requireKeys, requireObject, requireOneOf } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { SquareMillimetres } from '../quantity/units.ts';
import type { CorrectableConductor } from './conductor.ts';
import { BELOW_IEC_60228, BELOW_IEC_60228_SOURCE } from './tables/below-iec-60228.ts';
import { IEC_60228, IEC_60228_COEFFICIENT, IEC_60228_SOURCE } from './tables/iec-60228.ts';

/** How a metric conductor is made. */
export interface MetricOptions {
  /**
   * Class of IEC 60228: 1 solid, 2 stranded, 5 flexible, 6 more flexible. Needed from 0.5 mm² up; the sizes below are no
   * IEC sizes and take 5, 6 or nothing.
   */
  readonly class?: 1 | 2 | 5 | 6 | undefined;
  /** Plain or tinned wires; `plain` if absent. */
  readonly coating?: 'plain' | 'tinned' | undefined;
  /** `copper` if absent; aluminium in classes 1 and 2 from 10 mm². */
  readonly material?: 'copper' | 'aluminium' | undefined;
}

const CLASSES = [1, 2, 5, 6] as const;
const COATINGS = ['plain', 'tinned'] as const;
/** The metals of the tables that print copper and aluminium. @internal */
export const TABULATED_METALS = ['copper', 'aluminium'] as const;

/** @internal */
export const METRIC_FIELDS: Fields<MetricOptions, 'coating' | 'material'> = {
  class: { oneOf: () => CLASSES, optional: true },
  coating: { oneOf: () => COATINGS, default: 'plain' },
  material: { oneOf: () => TABULATED_METALS, default: 'copper' },
};

/**
 * A conductor of a metric size at the most resistance IEC 60228 allows it: 0.5 to 95 mm², classes 1, 2, 5 and 6.
 *
 * Also the sizes from 0.05 to 0.34 mm² that are printed beside the standard. `basis` is `maximum`. The size is a label: the
 * maxima lie 4 to 16 % above resistivity over that area, and a cable of that size need not contain it. For the area of a
 * known construction see {@link strandConstruction}. Hot, tinned copper is taken like plain copper, as the standard does (memory).
 *
 * @param size - Nominal size. [mm²]
 * @param options - Class, coating, metal.
 * @returns The conductor: its size as area [mm²], greatest resistance per metre at 20 °C [Ω/m].
 * @throws {@link InputError} If the size is not in the table, the class is missing, or (code `conflict`) the table has no
 *   figure for that class, coating and metal at that size.
 * @example Ohms per kilometre
 * metric(0.5, { class: 5 }).resistancePerMetre * 1000; // => 39
 * @example
 * metric(0.22).resistancePerMetre; // => 0.096
 */
export function metric(size: SquareMillimetres, options: MetricOptions = {}): CorrectableConductor {
  requireObject(options, 'options', 'an object');
  requireKeys(options, ['class', 'coating', 'material'], 'options');
  const { coating = 'plain', material = 'copper' } = options;
  requireOneOf(coating, COATINGS, 'options.coating');
  requireOneOf(material, TABULATED_METALS, 'options.material');
  if (options.class !== undefined) requireOneOf(options.class, CLASSES, 'options.class');

  const small: readonly number[] | undefined = BELOW_IEC_60228.find(([listed]) => listed === size);
  const row: readonly (number | null)[] | undefined = small ?? IEC_60228.find(([listed]) => listed === size);
  if (row === undefined) {
    const sizes = [...BELOW_IEC_60228, ...IEC_60228].map(([listed]) => listed).join(', ');
    refuse(size, 'size', `a size of the table: ${sizes} mm²`);
  }
  const flexible = options.class === 5 || options.class === 6;
  if (small === undefined) requireOneOf(options.class, CLASSES, 'options.class');
  else if (options.class !== undefined && !flexible) {
    const expected = '5, 6 or none: sizes under 0.5 mm² are printed for bunched wires only';
    throw new InputError('conflict', 'options.class', expected, options.class);
  }
  const ohmsPerKilometre = row[column(small !== undefined, options.class, coating, material)];
  if (typeof ohmsPerKilometre !== 'number') {
    throw new InputError('conflict', 'options', `a class, coating and metal that the table has at ${size} mm²`, options);
  }
  return {
    name: `${size} mm²${small === undefined ? ` class ${options.class}` : ''}${coating === 'tinned' ? ' tinned' : ''}${material === 'aluminium' ? ' aluminium' : ''}`,
    area: size,
    diameter: Math.sqrt((4 / Math.PI) * size),
    geometry: 'nominal',
    material: material === 'aluminium' ? 'aluminium' : coating === 'tinned' ? 'tinned-copper' : 'annealed-copper',
    stranding: options.class === 1 ? 'solid' : 'stranded',
    resistancePerMetre: ohmsPerKilometre / 1000,
    temperatureCoefficient: IEC_60228_COEFFICIENT[material],
    basis: 'maximum',
    source: small === undefined ? IEC_60228_SOURCE : BELOW_IEC_60228_SOURCE,
  };
}

/** Column of the figure; one that the table does not have for what it does not print. */
function column(small: boolean, conductorClass: 1 | 2 | 5 | 6 | undefined, coating: string, material: string): number {
  const coated = coating === 'tinned' ? 1 : 0;
  if (material === 'aluminium') return !small && coated === 0 && (conductorClass === 1 || conductorClass === 2) ? 7 : -1;
  if (small || conductorClass === 1) return 1 + coated;
  return (conductorClass === 2 ? 3 : 5) + coated;
}
