/** A conductor from the ohms per kilometre on its data sheet. @module */
import { type Fields, readInput } from '../quantity/fields.ts';
import type { Celsius } from '../quantity/units.ts';
import {
  type Conductor,
  type CorrectableConductor,
  RESISTANCE_BASES,
  type ResistanceBasis,
  STRANDINGS,
  type Stranding,
} from './conductor.ts';
import { type CorrectableMaterial, type MaterialName, materialNames, wireMetal } from './material.ts';
import { CONDUCTOR_TEMPERATURE, requireTwenty } from './resistance-per-metre.ts';

/** What a data sheet says of one conductor. */
export interface ConductorFromResistanceInput {
  /** Resistance of one conductor, not of the loop. [Ω/km] */
  readonly ohmsPerKilometre: number;
  /** Temperature at which it is stated; 20 if absent. [°C] */
  readonly temperature?: Celsius | undefined;
  /** The metal, whose temperature coefficient is then used; `annealed-copper` if absent. */
  readonly material?: MaterialName | undefined;
  /** What the figure is; a data sheet states a `maximum` unless it says otherwise. */
  readonly basis?: ResistanceBasis | undefined;
  /** One wire or many strands; `solid` if absent. */
  readonly stranding?: Stranding | undefined;
  /** A name for reports; made from the resistance if absent. */
  readonly name?: string | undefined;
}

/** What a data sheet says of one conductor of a metal whose temperature coefficient is known. */
export interface CorrectableResistanceInput extends ConductorFromResistanceInput {
  /** The metal, whose temperature coefficient is then used; `annealed-copper` if absent. */
  readonly material?: CorrectableMaterial | undefined;
}

/** @internal */
export const CONDUCTOR_FROM_RESISTANCE_FIELDS: Fields<ConductorFromResistanceInput, 'temperature' | 'material' | 'basis' | 'stranding'> = {
  ohmsPerKilometre: { positive: 'Ω/km' },
  temperature: () => CONDUCTOR_TEMPERATURE,
  material: { oneOf: () => materialNames, default: 'annealed-copper' },
  basis: { oneOf: () => RESISTANCE_BASES, default: 'maximum' },
  stranding: { oneOf: () => STRANDINGS, default: 'solid' },
  name: { text: 'any', optional: true },
};

/**
 * A conductor whose resistance is known from a data sheet or a measurement.
 *
 * The figure is brought to 20 °C by the metal's own temperature coefficient. Area and diameter are those of the
 * solid conductor of that metal with that resistance (`geometry: 'equivalent'`), not a measured size. Of a metal that is
 * not one figure (tinned copper, clad aluminium of unknown make) the greatest resistivity is taken for them.
 *
 * @param input - Resistance of one conductor [Ω/km], the temperature it holds at [°C], and the metal.
 * @returns The conductor, its resistance at 20 °C [Ω/m].
 * @throws {@link InputError} If the resistance is not from 1e-12 to 1e12 Ω/km, a name is not known, or (code `conflict`) the
 *   temperature is not 20 °C and the metal's temperature coefficient is not known.
 * @example
 * conductorFromResistance({ ohmsPerKilometre: 96 }).resistancePerMetre; // => 0.096
 */
export function conductorFromResistance(input: CorrectableResistanceInput): CorrectableConductor;
export function conductorFromResistance(input: ConductorFromResistanceInput): Conductor;
export function conductorFromResistance(input: ConductorFromResistanceInput): Conductor {
  const { ohmsPerKilometre, temperature, material, basis, stranding, name } = readInput(CONDUCTOR_FROM_RESISTANCE_FIELDS, input);
  const { conductivity, ...line } = wireMetal(material, 'material');
  const { temperatureCoefficient = requireTwenty(temperature, material, 'temperature') } = line;

  const resistancePerMetre = ohmsPerKilometre / 1000 / (1 + temperatureCoefficient * (temperature - 20));
  const area = 1 / (conductivity * resistancePerMetre);
  return {
    name: name ?? `${ohmsPerKilometre} Ω/km`,
    area,
    diameter: Math.sqrt((4 / Math.PI) * area),
    geometry: 'equivalent',
    material,
    stranding,
    resistancePerMetre,
    ...line,
    basis,
    source: 'data-sheet',
  };
}
