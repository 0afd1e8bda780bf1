/** What a wire is. @module */
import type { Millimetres, OhmsPerMetre, SquareMillimetres } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';
import type { MaterialName } from './materials.ts';

/** Whether a resistance is the nominal one, the most a standard allows, or one that was measured. */
export type ResistanceBasis = 'nominal' | 'maximum' | 'measured';

/** One wire or many strands. */
export type Stranding = 'solid' | 'stranded';

/** One conductor, as plain data. */
export interface Conductor {
  /** How the trade calls it, as in `24 AWG`. */
  readonly name: string;
  /** Metal cross-section. [mm²] */
  readonly area: SquareMillimetres;
  /** Diameter of a solid wire of that area. [mm] */
  readonly diameter: Millimetres;
  /** `nominal`: from the gauge. `equivalent`: the solid conductor of this metal that has this resistance. */
  readonly geometry: 'nominal' | 'equivalent';
  readonly material: MaterialName;
  readonly stranding: Stranding;
  /** Resistance of this one conductor at 20 °C. [Ω/m] */
  readonly resistancePerMetre: OhmsPerMetre;
  /** Temperature coefficient of resistance at 20 °C. [1/K] */
  readonly temperatureCoefficient: number;
  readonly basis: ResistanceBasis;
  readonly source: SourceKey;
}
