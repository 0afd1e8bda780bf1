/** Looking up a single published figure. @module */
import { requireName } from '../quantity/nearest.ts';
import type { SourceKey } from '../sources/sources.ts';
import { CABLING_FIGURES, type CablingFigureName, type FigureRow } from './cabling-figures-table.ts';

/** One published figure about cables, connections or unbalance. */
export interface CablingFigure {
  readonly name: CablingFigureName;
  /** What it is about, in words. */
  readonly about: string;
  readonly value: number;
  /** `1`: a fraction or a ratio. */
  readonly unit: FigureRow[2];
  readonly source: SourceKey;
}

/**
 * A published figure about connections, currents, unbalance or clad aluminium, with its source.
 *
 * Kept for those who build their own check: where sources disagree, each has its own name.
 *
 * @param name - A name such as `'connection'` or `'unbalance-within-pair'`.
 * @returns The figure, its unit and the key of its source.
 * @throws {@link InputError} If there is no figure of that name.
 * @example
 * const { value, unit, about } = cablingFigure('contact');
 * [value, unit, about]; // => [0.02, 'Ω', 'one contact, plug blade to spring, when new, at most']
 */
export function cablingFigure(name: CablingFigureName): CablingFigure {
  requireName(name, Object.keys(CABLING_FIGURES), 'name');
  const [about, value, unit, source]: FigureRow = CABLING_FIGURES[name];
  return { name, about, value, unit, source };
}
