/** R = ρ L / A, solved for whichever of the four is not known. @module */
import { type AnyField, type Fields, readInput, unitOf } from '../quantity/fields.ts';
import { requirePositive } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Metres, Ohms, SquareMillimetres } from '../quantity/units.ts';

/** Three of the four quantities of a uniform wire. */
export interface UniformWireInput {
  /** [Ω] */
  readonly resistance?: Ohms | undefined;
  /** Volume resistivity; 1 Ω·mm²/m is 1e-6 Ω·m. [Ω·mm²/m] */
  readonly resistivity?: number | undefined;
  /** Length of the conductor itself: out and back for a loop. [m] */
  readonly length?: Metres | undefined;
  /** Cross-section. [mm²] */
  readonly area?: SquareMillimetres | undefined;
}

/** All four quantities of a uniform wire. */
export interface UniformWire {
  /** [Ω] */
  readonly resistance: Ohms;
  /** [Ω·mm²/m] */
  readonly resistivity: number;
  /** [m] */
  readonly length: Metres;
  /** [mm²] */
  readonly area: SquareMillimetres;
}

/** @internal */
export const UNIFORM_WIRE_FIELDS: Fields<UniformWireInput> = {
  resistance: { positive: 'Ω', optional: true },
  resistivity: { positive: 'Ω·mm²/m', optional: true },
  length: { positive: 'm', optional: true },
  area: { positive: 'mm²', optional: true },
};

/**
 * The law of a uniform conductor, `R = ρ · L / A`: give three, have the fourth.
 *
 * For any metal and any shape of cross-section, with the resistivity at the conductor's own temperature.
 *
 * @param input - Three of resistance [Ω], resistivity [Ω·mm²/m], length [m] and area [mm²].
 * @returns All four.
 * @throws {@link InputError} If not exactly three are given, or one, or the answer, is not from 1e-12 to 1e12.
 * @example Twenty metres of 12 AWG
 * uniformWire({ resistivity: 0.0172, length: 20, area: 3.31 }).resistance.toFixed(3); // => '0.104'
 * @example The area that has a quarter of an ohm in 40 m
 * uniformWire({ resistance: 0.25, resistivity: 0.02, length: 40 }).area; // => 3.2
 */
export function uniformWire(input: UniformWireInput): UniformWire {
  const given = readInput(UNIFORM_WIRE_FIELDS, input);
  const { resistance = 0, resistivity = 0, length = 0, area = 0 } = given;
  const solve = {
    resistance: () => (resistivity * length) / area,
    resistivity: () => (resistance * area) / length,
    length: () => (resistance * area) / resistivity,
    area: () => (resistivity * length) / resistance,
  };
  const missing = (Object.keys(solve) as (keyof UniformWire)[]).filter((name) => given[name] === undefined);
  const [unknown] = missing;
  if (unknown === undefined) throw new InputError('conflict', 'input', 'three of the four: the fourth follows from them', input);
  if (missing.length > 1) throw new InputError('missing', unknown, 'three of resistance, resistivity, length and area', undefined);
  const solved = solve[unknown]();
  requirePositive(solved, unknown, unitOf(UNIFORM_WIRE_FIELDS[unknown] as AnyField) ?? '');
  return { resistance, resistivity, length, area, [unknown]: solved };
}
