/** What a wire is. @module */
import type { Millimetres, OhmsPerMetre, SquareMillimetres } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';
import type { MaterialName } from './material.ts';

/** Whether a resistance is the nominal one, the most a standard allows, or one that was measured. */
export type ResistanceBasis = (typeof RESISTANCE_BASES)[number];

/** @internal */
export const RESISTANCE_BASES = ['nominal', 'maximum', 'measured'] as const;

/** One wire or many strands. */
export type Stranding = (typeof STRANDINGS)[number];

/** @internal */
export const STRANDINGS = ['solid', 'stranded'] as const;

/** One conductor, as plain data. */
export interface Conductor {
  /** How the trade calls it, as in `24 AWG`. */
  readonly name: string;
  /** Metal cross-section. [mm²] */
  readonly area: SquareMillimetres;
  /** Diameter of a solid wire of that area. [mm] */
  readonly diameter: Millimetres;
  /**
   * `nominal`: from the gauge, the strands, or the size printed on the cable.
   * `equivalent`: the solid conductor of this metal that has this resistance.
   */
  readonly geometry: 'nominal' | 'equivalent';
  readonly material: MaterialName;
  readonly stranding: Stranding;
  /** Number of strands, where it is known. */
  readonly strands?: number;
  /** Resistance of this one conductor at 20 °C. [Ω/m] */
  readonly resistancePerMetre: OhmsPerMetre;
  /** Temperature coefficient of resistance at 20 °C; absent where none is known, and then the 20 °C figure is all there is. [1/K] */
  readonly temperatureCoefficient?: number;
  readonly basis: ResistanceBasis;
  readonly source: SourceKey;
}

/** A conductor whose resistance can be brought to another temperature. */
export interface CorrectableConductor extends Conductor {
  /** Temperature coefficient of resistance at 20 °C. [1/K] */
  readonly temperatureCoefficient: number;
}
