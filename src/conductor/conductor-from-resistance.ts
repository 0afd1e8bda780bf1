/** A conductor from the ohms per kilometre on its data sheet. @module */
import { requireObject, requireOneOf, requirePositive, requireTemperature } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Celsius } from '../quantity/units.ts';
import type { Conductor, CorrectableConductor, ResistanceBasis, Stranding } from './conductor.ts';
import { type CorrectableMaterial, type MaterialName, wireMetal } from './material.ts';
import { requireTwenty } from './resistance-per-metre.ts';

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
  requireObject(input, 'input', 'an object with ohmsPerKilometre');
  const { ohmsPerKilometre, temperature = 20, basis = 'maximum', stranding = 'solid', name } = input;
  const { material: materialName = 'annealed-copper' } = input;
  requirePositive(ohmsPerKilometre, 'ohmsPerKilometre', 'Ω/km');
  requireTemperature(temperature, 'temperature');
  requireOneOf(basis, ['nominal', 'maximum', 'measured'], 'basis');
  requireOneOf(stranding, ['solid', 'stranded'], 'stranding');
  const { conductivity, temperatureCoefficient } = wireMetal(materialName, 'material');
  if (name !== undefined && typeof name !== 'string') throw new InputError('type', 'name', 'a text', name);
  if (temperatureCoefficient === undefined) requireTwenty(temperature, materialName, 'temperature');

  const resistancePerMetre = ohmsPerKilometre / 1000 / (1 + (temperatureCoefficient ?? 0) * (temperature - 20));
  const area = 1 / (conductivity * resistancePerMetre);
  return {
    name: name ?? `${ohmsPerKilometre} Ω/km`,
    area,
    diameter: Math.sqrt((4 / Math.PI) * area),
    geometry: 'equivalent',
    material: materialName,
    stranding,
    resistancePerMetre,
    ...(temperatureCoefficient === undefined ? {} : { temperatureCoefficient }),
    basis,
    source: 'data-sheet',
  };
}
