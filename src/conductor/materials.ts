/** Conductor metals: conductivity and temperature coefficient at 20 °C. @module */
import type { SourceKey } from '../sources/sources.ts';

/** The name of a conductor metal. */
export type MaterialName = 'annealed-copper';

/** A conductor metal. */
export interface ConductorMaterial {
  readonly name: MaterialName;
  /** Volume conductivity at 20 °C. [m/(Ω·mm²)] */
  readonly conductivity: number;
  /** Temperature coefficient of resistance at 20 °C, constant mass. [1/K] */
  readonly temperatureCoefficient: number;
  readonly source: SourceKey;
}

/** IEC 60028 (IACS): 58 m/(Ω·mm²) exactly, so 1/58 Ω·mm²/m, and 0.00393/K. */
export const MATERIALS: Readonly<Record<MaterialName, ConductorMaterial>> = {
  'annealed-copper': { name: 'annealed-copper', conductivity: 58, temperatureCoefficient: 0.00393, source: 'iec-60028' },
};
