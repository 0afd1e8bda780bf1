/** What a conductor metal is: resistivity, temperature coefficient, density. @module */
import { type Fields, readInput } from '../quantity/fields.ts';
import { requireOneOf } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Millimetres } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';
import { COPPER_COEFFICIENT, COPPER_CONDUCTIVITY } from './copper-standard.ts';
import { MATERIAL_FACTS, MATERIALS } from './tables/materials.ts';
import { RESISTIVITY_BANDS } from './tables/resistivity-bands.ts';

/** The name of a conductor metal. */
export type MaterialName = keyof typeof MATERIALS;

/**
 * Every name of a conductor metal.
 *
 * @example
 * materialNames.slice(0, 3); // => ['annealed-copper', 'hard-drawn-copper', 'tinned-copper']
 */
export const materialNames: readonly MaterialName[] = /* @__PURE__ */ Object.keys(MATERIALS) as MaterialName[];

/** A metal whose resistance can be brought to another temperature: one with a known temperature coefficient. */
export type CorrectableMaterial = {
  [Name in MaterialName]: (typeof MATERIALS)[Name][1] extends null ? never : Name;
}[MaterialName];

/** A conductor metal at 20 °C, as plain data. */
export interface ConductorMaterial {
  readonly name: MaterialName;
  /** Volume resistivity; where the make or the wire's diameter is not known, the most it may be. [Ω·mm²/m] */
  readonly resistivity: number;
  /** The least the resistivity may be, where it is not one figure. [Ω·mm²/m] */
  readonly bestResistivity?: number;
  /** Volume conductivity, `1 / resistivity`. [MS/m] */
  readonly conductivity: number;
  /** Conductivity against the annealed copper standard of 58 MS/m. [%] */
  readonly iacs: number;
  /** Temperature coefficient of resistance, constant mass; absent where no source gives one. [1/K] */
  readonly temperatureCoefficient?: number;
  /** Absent where no source gives one. [g/cm³] */
  readonly density?: number;
  readonly source: SourceKey;
}

/** A metal, and what is known of the wire that it is drawn into. */
export interface MaterialInput {
  readonly name: MaterialName;
  /** Diameter of the wire, or of one strand; tinned and hard-drawn copper are graded by it. [mm] */
  readonly diameter?: Millimetres | undefined;
}

/** @internal */
export const MATERIAL_FIELDS: Fields<MaterialInput> = {
  name: { oneOf: () => materialNames },
  diameter: { positive: 'mm', optional: true },
};

/** Density of copper, IACS. [g/cm³] */
const COPPER_DENSITY = 8.89;

/**
 * A conductor metal by name: resistivity at 20 °C, its own temperature coefficient, density where known.
 *
 * Copper grades have 0.00393/K times their conductivity as a fraction of IACS; every other metal carries its own
 * coefficient, or none where none was found: then nothing made of it is ever taken to another temperature.
 * Standards for drawn and coated wire state limits, so `resistivity` is a greatest value except for `annealed-copper`,
 * the copper-clad steels, phosphor bronze and silver. `copper-clad-steel-40` and `-30` are the trade's names: their true
 * conductivities are 39.2 and 29.4 % IACS. `copper-clad-aluminium` is clad wire of unknown make.
 *
 * @param input - The metal, and the diameter of the wire or strand [mm], for tinned and hard-drawn copper.
 * @returns The metal at 20 °C.
 * @throws {@link InputError} If the metal is not known, or the wire is thinner than its standard goes.
 * @example
 * material({ name: 'aluminium' }).temperatureCoefficient; // => 0.00403
 * @example Tinned 24 AWG (ASTM B33), in percent of annealed copper
 * material({ name: 'tinned-copper', diameter: 0.511 }).iacs.toFixed(2); // => '96.16'
 * @example The trade's "40 %"
 * material({ name: 'copper-clad-steel-40' }).iacs.toFixed(1); // => '39.2'
 */
export function material(input: MaterialInput): ConductorMaterial {
  const { name, diameter } = readInput(MATERIAL_FIELDS, input);
  return findMaterial(name, 'name', diameter);
}

/** @internal */
export function findMaterial(name: MaterialName, parameter: string, diameter?: Millimetres | undefined): ConductorMaterial {
  const metal = wireMetal(name, parameter, diameter);
  const [source, density, least] = MATERIAL_FACTS[name];
  const [figure] = MATERIALS[name];
  const best = figure === null && diameter === undefined ? (bandsOf(name)[0]?.[1] ?? 0) / COPPER_DENSITY : least;
  return {
    name,
    resistivity: figure !== null && figure < 1 ? figure : 1 / metal.conductivity,
    ...(best && { bestResistivity: best }),
    ...metal,
    iacs: (100 * metal.conductivity) / COPPER_CONDUCTIVITY,
    ...(density && { density }),
    source,
  };
}

/** What a wire of the metal is computed from, at 20 °C. @internal */
export interface WireMetal {
  /** [MS/m] */
  readonly conductivity: number;
  /** [1/K] */
  readonly temperatureCoefficient?: number;
}

/** @internal */
export function wireMetal(name: MaterialName, parameter: string, diameter?: Millimetres | undefined): WireMetal {
  if (typeof name !== 'string' || !Object.hasOwn(MATERIALS, name)) requireOneOf(name, Object.keys(MATERIALS), parameter);
  const [figure, coefficient] = MATERIALS[name];
  let conductivity: number;
  if (figure === null) conductivity = conductivityByDiameter(name, parameter, diameter);
  else conductivity = figure < 1 ? 1 / figure : (figure * COPPER_CONDUCTIVITY) / 100;
  if (coefficient === null) return { conductivity };
  return {
    conductivity,
    temperatureCoefficient: coefficient === 'copper' ? (COPPER_COEFFICIENT * conductivity) / COPPER_CONDUCTIVITY : coefficient,
  };
}

/** Conductivity of a wire of that diameter; without one, the least that the metal has at any. [MS/m] */
function conductivityByDiameter(name: MaterialName, parameter: string, diameter: Millimetres | undefined): number {
  const bands = bandsOf(name);
  // The bounds are printed to 0.0001 in: a diameter is brought to the same.
  const inches = diameter === undefined ? undefined : Math.round(diameter / 0.00254) / 10_000;
  const band = inches === undefined ? bands.at(-1) : bands.find(([from]) => inches >= from);
  if (band === undefined) {
    throw new InputError('conflict', parameter, `a wire of at least ${bands.at(-1)?.[0]} in: ${name} has no limit below`, name);
  }
  return COPPER_DENSITY / band[1];
}

function bandsOf(name: MaterialName): readonly (readonly [from: number, massResistivity: number])[] {
  return RESISTIVITY_BANDS[name as keyof typeof RESISTIVITY_BANDS];
}
