/** How a bundle is installed, where a fit to published figures tells how it sheds its heat: one row each. @module */
import type { SourceKey } from '../../sources/sources.ts';

/** One way of installing. */
export interface InstallationRow {
  /** Effective thermal resistivity of the bundle, air between its cables included. [K·m/W] */
  readonly thermalResistivity: number;
  /** From its surface to the air; absent where it follows from the textbook correlation. [W/(m²·K)] */
  readonly filmCoefficient?: number;
  readonly source: SourceKey;
}

/** The ways that are known. */
export const INSTALLATIONS = {
  'open-air': { thermalResistivity: 6.05, source: 'bundle-model-open-air' },
  'closed-conduit': { thermalResistivity: 8, filmCoefficient: 4.5, source: 'bundle-model-conduit' },
} as const;
